#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/handles.h"
#include "drawing/part-symbols.h"
#include "drawing/room-edges.h"
#include "drawing/runs.h"
#include "figures/lead-need.h"

/* mm; a lead that lacks no more is not told of. */
static const double LEAD_TOLERANCE = 0.5;

static Box
part_px (const SheetDraft *draft, const Part *part)
{
  return part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part)));
}

/* Where the way from the box's middle to `to` leaves the box: leads end at an edge. */
static Point
box_edge_towards (Box box, Point to)
{
  const Point middle = point_mix (box.min, box.max, 0.5), way = point_sub (to, middle);
  const double across = fabs (way.x) > 0 ? (box.max.x - box.min.x) / 2 / fabs (way.x) : INFINITY;
  const double along = fabs (way.y) > 0 ? (box.max.y - box.min.y) / 2 / fabs (way.y) : INFINITY;

  return point_add (middle, point_scale (way, fmin (1, fmin (across, along))));
}

static double
route_length (const Point places[], size_t count)
{
  double length = 0;

  for (size_t i = 1; i < count; i++)
    length += point_distance (places[i - 1], places[i]);
  return length;
}

static void
draw_shortage (SheetDraft *draft, Point end, double missing)
{
  g_autofree char *length = units_length (draft->scene->units, missing);
  /* Translators: how much too short a lead is, "short by 112 mm" */
  g_autofree char *text = g_strdup_printf (_("short by %s"), length);
  const Letters tries[] = {
    { .text = text, .place = { end.x + 10, end.y }, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->warning },
    { .text = text, .place = { end.x, end.y + 12 }, .across = 0.5, .rise = LETTERS_BELOW, .colour = draft->look->warning },
    { .text = text, .place = { end.x - 10, end.y }, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->warning } };

  sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
}

static void
draw_one_lead (SheetDraft *draft, const Lead *lead)
{
  const Part *from = aeroplane_part_by_id (draft->aeroplane, lead->from), *to = aeroplane_part_by_id (draft->aeroplane, lead->to);
  const size_t count = lead->via_count + 2;
  g_autofree Point *places = g_new (Point, count);
  double reach = INFINITY;

  if (!from || !to)
    return;
  for (size_t i = 0; i < lead->via_count; i++)
    places[i + 1] = view_to_screen (draft->view, lead->via[i]);
  places[0] = sheet_px (draft->view, from->x, from->y);
  places[count - 1] = sheet_px (draft->view, to->x, to->y);
  const LeadNeed need = lead_need_of (draft->aeroplane, lead);
  if (need.missing > LEAD_TOLERANCE)
    reach = route_length (places, count) * fmax (lead_longest_route (draft->aeroplane, lead, lead->length), 0) / need.route;
  places[0] = box_edge_towards (part_px (draft, from), places[1]);
  places[count - 1] = box_edge_towards (part_px (draft, to), places[count - 2]);
  draw_lead (draft->cr, draft->look, places, count, reach);
  if (isfinite (reach))
    draw_shortage (draft, places[count - 1], need.missing);
}

void
sheet_draw_leads (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_LEAD); i++)
    draw_one_lead (draft, aeroplane_lead (draft->aeroplane, i));
}

static void
draw_part_rail (const SheetDraft *draft, const Part *part, bool selected)
{
  const Solution *solution = part->piece.id ? figures_solution (draft->figures, part->piece.id) : NULL;
  const SheetView *view = draft->view;
  RailLine rail = {
    .x = sheet_rail_px (draft->look, view, part), .from = view->origin_y + part->rail_from * view->scale,
    .to = view->origin_y + part->rail_to * view->scale, .band_from = NAN, .band_to = NAN,
    .colour = selected ? draft->look->selection : draft->look->graphite };

  if (solution && isfinite (solution->band_from_mm) && isfinite (solution->band_to_mm))
    {
      rail.band_from = view->origin_y + solution->band_from_mm * view->scale;
      rail.band_to = view->origin_y + solution->band_to_mm * view->scale;
    }
  draw_rail (draft->cr, draft->look, &rail);
}

static void
draw_one_part (const SheetDraft *draft, const Part *part, bool selected)
{
  const PartSymbol symbol = {
    .class_word = part->class_name, .box = box_to_screen (draft->view, sheet_part_own_box (part)), .turn = part->turn,
    .state = part_state_of (part, selected) };

  draw_part_symbol (draft->cr, draft->look, &symbol);
}

/* Where the selected part should be for the aim: a broken box, and an arrow beside it. */
static void
draw_proposal (const SheetDraft *draft, const Part *part)
{
  const Box around = part_px (draft, part);
  Box box = part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_own_box (part)));
  double x, shift;

  if (!sheet_proposed_x (draft->figures, part, &x))
    return;
  shift = (x - part->x) * draft->view->scale;
  if (fabs (shift) >= 10)
    {
      const double beside = around.max.x + 5 * draft->look->u, y = (box.min.y + box.max.y) / 2, reach = fmin (fabs (shift), 20);

      draw_proposal_arrow (draft->cr, draft->look, (Point) { beside, y }, (Point) { beside, y + copysign (reach, shift) });
    }
  box.min.y += shift;
  box.max.y += shift;
  draw_part_symbol (draft->cr, draft->look, &(PartSymbol) { .class_word = part->class_name, .box = box, .turn = part->turn,
                                                                .state = PART_PROPOSED });
}

void
sheet_draw_parts (const SheetDraft *draft)
{
  const size_t count = aeroplane_count (draft->aeroplane, PIECE_PART);
  const bool one = selection_single (draft->selection) != NULL;

  for (int selected = 0; selected < 2; selected++)
    for (size_t i = 0; i < count; i++)
      {
        const Part *part = aeroplane_part (draft->aeroplane, i);

        if (selection_has (draft->selection, part->piece.id) != selected)
          continue;
        if (selected && one && !draft->look->paper)
          draw_proposal (draft, part);
        draw_one_part (draft, part, selected);
        if (part->has_rail)
          draw_part_rail (draft, part, selected);
      }
  if (!draft->look->paper)
    draw_room_edges (draft->cr, draft->look, draft->view, draft->figures, false);
}
