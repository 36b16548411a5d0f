#include "drawing/sheet-construction.h"
#include <math.h>
#include "drawing/sheet-draft.h"

/* Three straight lines from the centre line and back to it: leading edge, tip, trailing edge. */
static bool
is_straight_taper (const Surface *surface)
{
  const Outline *outline = surface->outline;

  if (surface->root_open || outline_segment_count (outline) != 3)
    return false;
  for (size_t i = 0; i < 3; i++)
    if (outline_segment (outline, i)->kind != SEGMENT_LINE)
      return false;
  return fabs (outline_node (outline, 0).y) < 1e-6 && fabs (outline_node (outline, 3).y) < 1e-6
         && fabs (outline_node (outline, 1).y - outline_node (outline, 2).y) < 1e-6;
}

bool
sheet_taper_construction (const Figures *figures, TaperConstruction *construction)
{
  const Outline *outline;
  Point root_leading, tip_leading, tip_trailing, root_trailing;

  if (!figures->reference || !is_straight_taper (figures->reference->surface))
    return false;
  outline = figures->reference->surface->outline;
  root_leading = outline_node (outline, 0);
  tip_leading = outline_node (outline, 1);
  tip_trailing = outline_node (outline, 2);
  root_trailing = outline_node (outline, 3);
  *construction = (TaperConstruction) {
    .middle_root = point_mix (root_leading, root_trailing, 0.5), .middle_tip = point_mix (tip_leading, tip_trailing, 0.5),
    .aft_of_root = { root_trailing.x + tip_trailing.x - tip_leading.x, root_trailing.y },
    .ahead_of_tip = { tip_leading.x - (root_trailing.x - root_leading.x), tip_leading.y } };
  return true;
}

static void
draw_between (const SheetDraft *draft, Point from, Point to)
{
  line_stroke (draft->cr, view_to_screen (draft->view, from), view_to_screen (draft->view, to));
}

/* While the reference wing is at hand: where its mean chord comes from, and where its ends and quarter stand at the centre line. */
void
sheet_draw_construction (const SheetDraft *draft)
{
  const SurfaceFigures *reference = draft->figures->reference;
  TaperConstruction taper;

  if (!reference || !isfinite (reference->planform.mac) || !selection_has (draft->selection, reference->surface->piece.id)
      || draft->selection->control)
    return;
  line_kind_set (draft->cr, draft->look, LINE_CENTRE);
  look_set_source (draft->cr, draft->look->construction);
  for (int quarter = 0; quarter <= 4; quarter += quarter == 0 ? 1 : 3)
    {
      const double x = reference->planform.mac_leading_edge_x + quarter / 4.0 * reference->planform.mac;

      draw_between (draft, (Point) { x, reference->planform.mac_station }, (Point) { x, 0 });
    }
  if (!sheet_taper_construction (draft->figures, &taper))
    return;
  draw_between (draft, taper.middle_root, taper.middle_tip);
  draw_between (draft, taper.aft_of_root, taper.ahead_of_tip);
}
