#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/dimension.h"
#include "drawing/handles.h"
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/runs.h"
#include "drawing/sheet-plan-marks.h"

static void
proposal_line (const SheetDraft *draft)
{
  line_kind_set (draft->cr, draft->look, LINE_PROPOSAL);
  look_set_source (draft->cr, draft->look->selection);
}

/* What has been drawn of an outline, the way to the next node, and both once more to port, broken. */
static void
draw_unfinished (const SheetDraft *draft, const SheetOverlay *overlay)
{
  cairo_t *cr = draft->cr;
  const Outline *outline = overlay->draft;
  const Point last = outline_node (outline, outline_node_count (outline) - 1), end = overlay->draft_end;

  outline_path_half (cr, draft->view, outline, HALF_STARBOARD);
  line_kind_set (cr, draft->look, LINE_OUTLINE);
  look_set_source (cr, draft->look->graphite);
  cairo_stroke (cr);
  proposal_line (draft);
  outline_path_half (cr, draft->view, outline, HALF_PORT);
  cairo_stroke (cr);
  if (overlay->has_draft_end)
    {
      line_stroke (cr, view_to_screen (draft->view, last), view_to_screen (draft->view, end));
      line_stroke (cr, sheet_px (draft->view, last.x, -last.y), sheet_px (draft->view, end.x, -end.y));
    }
  for (size_t i = 0; i < outline_node_count (outline); i++)
    draw_node (cr, draft->look, view_to_screen (draft->view, outline_node (outline, i)), outline_node_kind (outline, i),
               i + 1 == outline_node_count (outline));
}

/* A ring on the centre line: here the outline ends when it is carried there. */
static void
draw_closing_ring (const SheetDraft *draft, Point end)
{
  const Point at = view_to_screen (draft->view, end);

  proposal_line (draft);
  cairo_new_path (draft->cr);
  cairo_arc (draft->cr, at.x, at.y, 9, 0, 2 * M_PI);
  cairo_stroke (draft->cr);
}

static void
draw_next_node (const SheetDraft *draft, const SheetOverlay *overlay)
{
  if (!overlay->has_draft_end)
    return;
  if (fabs (overlay->draft_end.y) < 1e-6)
    draw_closing_ring (draft, overlay->draft_end);
  draw_node (draft->cr, draft->look, view_to_screen (draft->view, overlay->draft_end), NODE_SMOOTH, true);
}

static void
draw_guides (const SheetDraft *draft, const SheetOverlay *overlay)
{
  const SheetView *view = draft->view;
  const Point at = sheet_px (view, overlay->guide_x, overlay->guide_y);

  proposal_line (draft);
  if (!isnan (overlay->guide_x))
    line_stroke (draft->cr, (Point) { 0, at.y }, (Point) { view->width, at.y });
  if (!isnan (overlay->guide_y))
    line_stroke (draft->cr, (Point) { at.x, 0 }, (Point) { at.x, view->height });
}

static void
draw_rubber_band (const SheetDraft *draft, Box band)
{
  const Box px = box_to_screen (draft->view, band);
  Colour wash = draft->look->selection;

  if (box_is_empty (band))
    return;
  wash.alpha = 0.12;
  line_kind_set (draft->cr, draft->look, LINE_INNER);
  line_add_box (draft->cr, px);
  look_set_source (draft->cr, wash);
  cairo_fill_preserve (draft->cr);
  look_set_source (draft->cr, draft->look->selection);
  cairo_stroke (draft->cr);
}

static void
draw_cursor (const SheetDraft *draft, Point place)
{
  const Point at = view_to_screen (draft->view, place);

  line_kind_set (draft->cr, draft->look, LINE_INNER);
  look_set_source (draft->cr, draft->look->selection);
  for (int i = 0; i < 4; i++)
    {
      const Point out = { (i == 0) - (i == 1), (i == 2) - (i == 3) };

      line_stroke (draft->cr, point_add (at, point_scale (out, 4)), point_add (at, point_scale (out, 13)));
    }
}

static void
draw_measured (const SheetDraft *draft, const SheetOverlay *o)
{
  const Point from = { o->dimension_from_x, o->dimension_from_y }, to = { o->dimension_to_x, o->dimension_to_y };
  const Point a = view_to_screen (draft->view, from), b = view_to_screen (draft->view, to);
  g_autofree char *text = units_length_figure (draft->scene->units, point_distance (from, to));

  dimension_draw (&draft->lettering, &(Dimension) {
    .from = a, .to = b, .foot_from = a, .foot_to = b, .figure = text, .line = draft->look->selection });
}

static void
draw_ghost (const SheetDraft *draft, const Part *part)
{
  draw_part_symbol (draft->cr, draft->look, &(PartSymbol) {
    .class_word = part->class_name, .box = box_to_screen (draft->view, sheet_part_own_box (part)), .turn = part->turn,
    .state = PART_PROPOSED });
}

/* Over the plan's view of it a fin lies on its side, with the hinge lines that it has. */
static void
draw_fin_laid_down (const SheetDraft *draft, const SheetHinge *hinge, double side)
{
  cairo_t *cr = draft->cr;
  const Surface *fin = hinge->surface;
  Outline *outline = NULL;

  if (outline_mapped (fin->outline, (Point) { 1, 1 }, (Point) { 0, hinge->lift }, &outline) != CORE_OK)
    return;
  outline_path_half (cr, draft->view, outline, side > 0 ? HALF_STARBOARD : HALF_PORT);
  line_kind_set (cr, draft->look, LINE_INNER);
  look_set_source (cr, draft->look->graphite);
  cairo_stroke (cr);
  for (size_t i = 0; i < fin->control_count; i++)
    hinge_stroke (cr, draft->view, fin, &fin->controls[i], hinge->lift, side);
  outline_unref (outline);
}

static void
draw_lead_being_laid (const SheetDraft *draft, const Point mm[], size_t count)
{
  g_autofree Point *places = g_new (Point, count);

  for (size_t i = 0; i < count; i++)
    places[i] = view_to_screen (draft->view, mm[i]);
  draw_lead (draft->cr, draft->look, places, count, INFINITY, true);
}

static void
draw_hinge (const SheetDraft *draft, const SheetHinge *hinge)
{
  if (hinge->laid_down)
    {
      draw_fin_laid_down (draft, hinge, hinge->port ? -1 : 1);
      hinge_draw_proposal (draft->cr, draft->look, draft->view, hinge, hinge->lift, hinge->port ? -1 : 1);
      return;
    }
  if (!surface_is_horizontal (hinge->surface))
    return;                       /* it is drawn in the side view */
  hinge_draw_proposal (draft->cr, draft->look, draft->view, hinge, 0, 1);
  hinge_draw_proposal (draft->cr, draft->look, draft->view, hinge, 0, -1);
}

/* What lies over the print of a plan. */
static void
draw_over_plan (const SheetDraft *draft, const SheetOverlay *overlay)
{
  if (draft->scene->plan && draft->scene->print && draft->scene->print->bare)
    return;
  if (overlay->plan_marks)
    sheet_draw_plan_marks (draft, overlay->plan_marks);
  if (overlay->doubt)
    sheet_draw_doubt (draft, overlay->doubt);
  if (overlay->departures)
    sheet_draw_departures (draft, overlay->departures);
  if (overlay->trace)
    sheet_draw_trace (draft, overlay->trace);
}

void
sheet_draw_overlay (SheetDraft *draft)
{
  const SheetOverlay *overlay = draft->scene->overlay;

  sheet_draw_offer (draft);
  if (!overlay)
    return;
  draw_guides (draft, overlay);
  draw_over_plan (draft, overlay);
  if (overlay->hinge)
    draw_hinge (draft, overlay->hinge);
  if (overlay->draft)
    draw_unfinished (draft, overlay);
  draw_next_node (draft, overlay);
  if (overlay->lead && overlay->lead_count > 1)
    draw_lead_being_laid (draft, overlay->lead, overlay->lead_count);
  if (overlay->part_ghost)
    draw_ghost (draft, overlay->part_ghost);
  if (overlay->has_dimension)
    draw_measured (draft, overlay);
  draw_rubber_band (draft, overlay->band);
  if (overlay->has_cursor)
    draw_cursor (draft, overlay->cursor);
  if (overlay->has_magnified && draft->scene->plan)
    sheet_draw_magnifier (draft, overlay->magnified);
  if (overlay->focus)
    {
      const Box box = sheet_selection_extent (draft->figures, draft->selection);

      if (!box_is_empty (box))
        draw_focus_ring (draft->cr, draft->look, box_grown (box_to_screen (draft->view, box), 4));
    }
}
