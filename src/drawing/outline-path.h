#pragma once
#include <cairo.h>
#include "document/piece.h"
#include "drawing/view.h"

/** Outlines as paths on cr: lines and curves as they are, arcs as true arcs of a scaled circle. The view places millimetres: px on screen,
 *  mm on paper (there its scale is the drawing's, 0.4 for 1 : 2.5). Nothing is stroked, and cr's matrix is as before. */

typedef enum { HALF_STARBOARD, HALF_PORT } OutlineHalf;
/** One half as it stands, open, from its first node to its last. For a side view the view's origin_x is where z = 0 stands. */
void outline_path_half   (cairo_t *cr, const SheetView *view, const Outline *outline, OutlineHalf half);
/** The stretch of one segment. */
void outline_path_segment (cairo_t *cr, const SheetView *view, const Outline *outline, size_t segment, OutlineHalf half);
/** Both halves as one closed shape, the roots carried to the centre line by straight lines. */
void outline_path_whole  (cairo_t *cr, const SheetView *view, const Outline *outline);
/** A surface as the plan shows it: carried, with an open root, or, when `closes` is false, as two open halves. Not for fins. */
void outline_path_surface (cairo_t *cr, const SheetView *view, const Surface *surface, bool closes);
/** One half closed by a straight line: a side outline, a fin. */
void outline_path_closed (cairo_t *cr, const SheetView *view, const Outline *outline);

/** Segments one after the other, open, in cr's own user units. */
void outline_path_stretch (cairo_t *cr, Point from, const Segment segments[], size_t count);

/** The place of greatest y: a wing's tip. */
Point outline_tip (const Outline *outline);
/** The greatest y, mm, at which the outline passes x, mm; NAN where it does not. Half the width of a body there. */
double outline_reach_at (const Outline *outline, double x);
/** The least and the greatest y, mm, at which the outline (not its closing line) passes x, mm: a side outline's foot and top. False where
 *  it does not; both are untouched then. */
bool  outline_span_at (const Outline *outline, double x, double *low, double *high);
