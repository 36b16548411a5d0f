#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/symbols.h"
#include "figures/part-places.h"

/* Bays matter while one is selected, or a part that may be in some, and while parts are arranged. */
static bool
bays_are_asked_for (const SheetDraft *draft)
{
  if (draft->scene->arranging)
    return true;
  for (char **id = draft->selection->ids; id && *id; id++)
    {
      const Piece *piece = aeroplane_find (draft->aeroplane, *id);

      if (piece && (piece->kind == PIECE_BAY || (piece->kind == PIECE_PART && ((const Part *) piece)->bays)))
        return true;
    }
  return false;
}

static double
greatest_half_width (const Aeroplane *aeroplane, double from, double to)
{
  enum { PLACES = 9 };
  double most = 0;

  for (int i = 0; i < PLACES; i++)
    most = fmax (most, sheet_half_width (aeroplane, from + (to - from) * i / (PLACES - 1)));
  return most;
}

/* A bracket along the body's side, its ends turned to it, and its name outside. */
static void
draw_bay (SheetDraft *draft, const Bay *bay, double from, double to)
{
  const bool selected = selection_has (draft->selection, bay->piece.id);
  const double away = look_size (draft->look, 8, 2.4), tick = look_size (draft->look, 5, 1.5);
  const double beside = greatest_half_width (draft->aeroplane, from, to);
  const Point first = sheet_px (draft->view, from, beside), last = sheet_px (draft->view, to, beside);
  const double x = first.x + away;
  const Letters tries[] = {
    { .text = bay->piece.id, .place = { x + tick, (first.y + last.y) / 2 }, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->graphite },
    { .text = bay->piece.id, .place = { x + tick, last.y }, .rise = LETTERS_BELOW, .colour = draft->look->graphite } };

  line_kind_set (draft->cr, draft->look, selected ? LINE_SELECTED : LINE_CONSTRUCTION);
  look_set_source (draft->cr, selected ? draft->look->selection : draft->look->construction);
  cairo_move_to (draft->cr, x - tick, first.y);
  cairo_line_to (draft->cr, x, first.y);
  cairo_line_to (draft->cr, x, last.y);
  cairo_line_to (draft->cr, x - tick, last.y);
  cairo_stroke (draft->cr);
  sheet_put_word_anyway (draft, tries, G_N_ELEMENTS (tries));
}

bool
sheet_bays_name_former (const SheetDraft *draft, const Body *body, const NamedPlace *former)
{
  if (!draft->scene->arranging || draft->look->paper || !former->name)
    return false;
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BAY); i++)
    {
      const Bay *bay = (const Bay *) aeroplane_nth (draft->aeroplane, PIECE_BAY, i);
      const Body *of;
      double from, to;

      if (bay_reach (draft->aeroplane, bay, &of, &from, &to) && of == body
          && (g_strcmp0 (bay->from_former, former->name) == 0 || g_strcmp0 (bay->to_former, former->name) == 0))
        return true;
    }
  return false;
}

/* Beside its end on the port side, where no bracket stands, else further off; a thin line then leads from the former to its name. */
static void
put_former_name (SheetDraft *draft, const Body *body, const NamedPlace *former)
{
  static const double steps[] = { 0, -0.6, 0.6, -1.2, 1.2 };
  static const double ways[] = { 6, 20, 44 };
  const double reach = fmax (0, outline_reach_at (body->outline, former->place)), u = draft->look->u, line = 1.25 * draft->look->text_size;
  const Point at = sheet_px (draft->view, former->place, -reach);
  Letters tries[G_N_ELEMENTS (steps) * G_N_ELEMENTS (ways)];
  int taken;

  for (size_t i = 0; i < G_N_ELEMENTS (tries); i++)
    tries[i] = (Letters) {
      .text = former->name, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->graphite,
      .place = { at.x - ways[i / G_N_ELEMENTS (steps)] * u, at.y + steps[i % G_N_ELEMENTS (steps)] * line } };
  taken = sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
  if (taken <= 0)
    return;
  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  look_set_source (draft->cr, draft->look->construction);
  line_stroke (draft->cr, at, (Point) { tries[taken].place.x + 2 * u, tries[taken].place.y });
}

/* Former by former along each body, lest one that bounds two bays is named twice. */
static void
put_former_names (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (draft->aeroplane, i);

      for (size_t j = 0; body->outline && j < body->former_count; j++)
        if (sheet_bays_name_former (draft, body, &body->formers[j]))
          put_former_name (draft, body, &body->formers[j]);
    }
}

void
sheet_draw_bays (SheetDraft *draft)
{
  if (!bays_are_asked_for (draft))
    return;
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BAY); i++)
    {
      const Bay *bay = (const Bay *) aeroplane_nth (draft->aeroplane, PIECE_BAY, i);
      const Body *body;
      double from, to;

      if (bay->piece.id && bay_reach (draft->aeroplane, bay, &body, &from, &to))
        draw_bay (draft, bay, from, to);
    }
  if (!draft->scene->overlay || !draft->scene->overlay->named_places)
    put_former_names (draft);
}
