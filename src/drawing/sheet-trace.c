#include "drawing/sheet-trace.h"
#include <math.h>
#include "drawing/sheet-draft.h"

/* px: the corridor that the proposal is looked for in, as drawn; its wash. */
static const double CORRIDOR = 17, WASH = 0.16, HALO = 4, DOT = 2.6, RING = 9;
/* px: from bar to bar; how far a bar stands out on the line's side at least, and on the other. */
static const double BARS_APART = 7, LEAST_BAR = 6, BACK = 2.5;
/* px: on and off. */
static const double DOUBT_DASH[] = { 5, 4 };

static void
add_run (const SheetDraft *draft, const Point places[], size_t count, double side)
{
  cairo_new_path (draft->cr);
  for (size_t i = 0; i < count; i++)
    {
      const Point at = sheet_px (draft->view, places[i].x, side * places[i].y);

      cairo_line_to (draft->cr, at.x, at.y);
    }
}

static void
stroke_run (const SheetDraft *draft, const Point places[], size_t count, double width, Colour colour)
{
  if (count < 2)
    return;
  add_run (draft, places, count, 1);
  cairo_set_dash (draft->cr, NULL, 0, 0);
  cairo_set_line_width (draft->cr, width);
  cairo_set_line_join (draft->cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_cap (draft->cr, CAIRO_LINE_CAP_ROUND);
  look_set_source (draft->cr, colour);
  cairo_stroke (draft->cr);
}

static void
stroke_broken (const SheetDraft *draft, const Point places[], size_t count, double side, Colour colour)
{
  if (count < 2)
    return;
  add_run (draft, places, count, side);
  line_kind_set (draft->cr, draft->look, LINE_PROPOSAL);
  look_set_source (draft->cr, colour);
  cairo_stroke (draft->cr);
}

static Colour
halo_of (const Look *look)
{
  Colour ground = look->sheet;

  ground.alpha = 0.92;
  return ground;
}

static void
draw_other_half (const SheetDraft *draft, const SheetTrace *trace)
{
  if (trace->one_sided)
    return;
  stroke_broken (draft, trace->accepted, trace->accepted_count, -1, draft->look->selection);
  stroke_broken (draft, trace->proposal, trace->proposal_count, -1, draft->look->selection);
}

static void
draw_proposal (const SheetDraft *draft, const SheetTrace *trace)
{
  Colour wash = draft->look->selection;

  wash.alpha = WASH;
  if (!trace->by_hand)
    stroke_run (draft, trace->proposal, trace->proposal_count, CORRIDOR, wash);
  stroke_broken (draft, trace->proposal, trace->proposal_count, 1, trace->lost ? draft->look->warning : draft->look->selection);
}

static void
draw_dot (const SheetDraft *draft, Point place, bool open)
{
  const Point at = view_to_screen (draft->view, place);

  cairo_new_path (draft->cr);
  cairo_arc (draft->cr, at.x, at.y, DOT, 0, 2 * M_PI);
  look_set_source (draft->cr, draft->look->selection);
  if (!open)
    {
      cairo_fill (draft->cr);
      return;
    }
  cairo_set_dash (draft->cr, NULL, 0, 0);
  cairo_set_line_width (draft->cr, draft->look->inner_width);
  cairo_stroke (draft->cr);
}

static void
draw_ring (const SheetDraft *draft, Point place)
{
  const Point at = view_to_screen (draft->view, place);

  for (int pass = 0; pass < 2; pass++)
    {
      cairo_new_path (draft->cr);
      cairo_arc (draft->cr, at.x, at.y, RING, 0, 2 * M_PI);
      cairo_set_dash (draft->cr, NULL, 0, 0);
      cairo_set_line_width (draft->cr, pass == 0 ? draft->look->selected_width + HALO : draft->look->selected_width);
      look_set_source (draft->cr, pass == 0 ? halo_of (draft->look) : draft->look->selection);
      cairo_stroke (draft->cr);
    }
}

/* A hairline with open dots and no halo: it is compared with the print beneath, which must be seen on both its sides. */
void
sheet_draw_trace (const SheetDraft *draft, const SheetTrace *trace)
{
  cairo_save (draft->cr);
  draw_other_half (draft, trace);
  draw_proposal (draft, trace);
  stroke_run (draft, trace->accepted, trace->accepted_count, draft->look->inner_width, draft->look->selection);
  for (size_t i = 0; i < trace->click_count; i++)
    draw_dot (draft, trace->clicks[i], true);
  if (trace->has_ring)
    draw_ring (draft, trace->ring);
  if (trace->has_aim)
    draw_dot (draft, trace->aim, false);
  cairo_restore (draft->cr);
}

/* The print beneath is looked at: no halo, and no line firmer than it must be. */
static bool
shows_print (const SheetDraft *draft)
{
  return draft->scene->plan && draft->scene->print;
}

/* Across the outline to the printed line, and a little to the other side. */
static void
draw_departure (const SheetDraft *draft, const SheetDeparture *spot)
{
  const Point at = view_to_screen (draft->view, spot->drawn), to = view_to_screen (draft->view, spot->printed);
  const double length = point_distance (at, to);
  const Point way = length > 0 ? point_scale (point_sub (to, at), 1 / length) : (Point) { 0, 0 };
  const Point end = point_add (at, point_scale (way, fmax (length, LEAST_BAR)));

  if (!shows_print (draft))
    {
      cairo_set_line_width (draft->cr, 2 * draft->look->selected_width + HALO);
      look_set_source (draft->cr, halo_of (draft->look));
      line_stroke (draft->cr, at, end);
    }
  cairo_set_line_width (draft->cr, shows_print (draft) ? draft->look->part_width : 1.5 * draft->look->selected_width);
  look_set_source (draft->cr, draft->look->warning);
  line_stroke (draft->cr, point_sub (at, point_scale (way, BACK)), end);
}

void
sheet_draw_departures (const SheetDraft *draft, const SheetDepartures *departures)
{
  Point last = { NAN, NAN };

  cairo_save (draft->cr);
  cairo_set_dash (draft->cr, NULL, 0, 0);
  for (size_t i = 0; i < departures->count; i++)
    {
      const Point at = view_to_screen (draft->view, departures->spots[i].drawn);

      if (!departures->spots[i].far_off || point_distance (at, last) < BARS_APART)
        continue;
      draw_departure (draft, &departures->spots[i]);
      last = at;
    }
  cairo_restore (draft->cr);
}

/* Over the outline's own line, which is hidden beneath the halo so that the dashes are seen; a hairline leaves them to be seen as it is. */
void
sheet_draw_doubt (const SheetDraft *draft, const SheetDoubt *doubt)
{
  cairo_save (draft->cr);
  for (size_t from = 0, i = 0; i < doubt->count; i++)
    {
      if (point_is_finite (doubt->places[i]))
        continue;
      if (!shows_print (draft))
        stroke_run (draft, doubt->places + from, i - from, draft->look->selected_width + HALO, halo_of (draft->look));
      if (i - from > 1)
        {
          add_run (draft, doubt->places + from, i - from, 1);
          cairo_set_dash (draft->cr, DOUBT_DASH, 2, 0);
          cairo_set_line_cap (draft->cr, CAIRO_LINE_CAP_BUTT);
          cairo_set_line_width (draft->cr, (shows_print (draft) ? 1 : 1.5) * draft->look->selected_width);
          look_set_source (draft->cr, draft->look->warning);
          cairo_stroke (draft->cr);
        }
      from = i + 1;
    }
  cairo_restore (draft->cr);
}
