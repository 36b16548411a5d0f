#pragma once
#include "drawing/hit.h"

/** The slim side view: nose up, top of the aeroplane to the right; its x runs down with the sheet's own scale and origin_y. */
typedef struct {
  const SheetScene *scene;   /* look, figures, selection; scene->view gives scale and origin_y */
  double width, height;      /* px of the strip */
} SideScene;

/** On paper neither ground nor grid nor clip: z = 0 stands at side_view_px_of_z (side, 0). */
void   draw_side_view (cairo_t *cr, const SideScene *side);
/** What lies under a place of the strip, pixels, caught within `radius` pixels: ends of the selected rudder's hinge line, parts, nodes
 *  and lines of the selected body's side outline or fin, leads, hinge lines, fins, sections, bodies, the datum. The index of a body's node is
 *  its side outline's. */
Hit    side_view_hit  (const SideScene *side, double x, double y, double radius);
/** Where a height z, mm, stands: pixels from the strip's left. */
double side_view_px_of_z (const SideScene *side, double z);
/** And back: the height z, mm, at so many pixels from the left. */
double side_view_z_at_px (const SideScene *side, double px);
/** How wide the strip wants to be at this zoom: whole pixels, between 110 and 320. */
double side_view_wanted_width (const SheetScene *scene);
