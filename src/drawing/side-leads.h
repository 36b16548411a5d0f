#pragma once
#include "drawing/side-places.h"

/** Leads seen from the side: they run as lead_route_from_side tells, from edge to edge of the parts at their ends. */
void draw_side_leads (cairo_t *cr, const SideScene *side, const SheetView *view);

/** How far a place of the strip is from a lead's line, pixels; INFINITY where an end of it is not there. */
double side_px_to_lead (const SideScene *side, const SheetView *view, const Lead *lead, Point px);
