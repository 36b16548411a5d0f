#pragma once
#include "drawing/side-view.h"

/** Whether the hatch to cut is to be shown: it is there, and the battery that it is for, or another pack in its place, is looked at. */
bool hatch_is_asked_for (const Figures *figures, const Selection *selection);

/** The hatch from the side, once it is chosen where it opens: a broken line along that side of the body, with both its edges. On paper always, in the
 *  window while it is asked for. */
void draw_side_hatch (cairo_t *cr, const SideScene *side, const SheetView *view);
