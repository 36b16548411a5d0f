#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/symbols.h"
#include "figures/part-places.h"

/* Bays matter while one is selected, or a part that may be in some. */
static bool
bays_are_asked_for (const SheetDraft *draft)
{
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
}
