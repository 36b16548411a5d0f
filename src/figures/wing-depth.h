#pragma once
#include "document/piece.h"

/** How deep a wing is inside, mm, between its skins at that station and x, mm: what a servo lies in. 0 ahead of or behind it; NAN where no
 *  thickness is given or nothing can be cut there.
 *  method  section_half_thickness of the thickness given, everywhere along the span */
double wing_depth (const Surface *surface, double station, double x);
/** The least depth over a box seen from above: its middle, mm, and size along x and y. The station counts on either side of the centre line. */
double wing_depth_over (const Surface *surface, Point middle, double length, double width);
