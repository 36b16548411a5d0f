#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/symbols.h"

static void
draw_band (SheetDraft *draft)
{
  SheetBand band;

  if (!sheet_band (draft->figures, &band))
    return;
  for (int side = -1; side <= 1; side += 2)
    {
      const Point a = sheet_px (draft->view, band.forward_x, side * band.inner), b = sheet_px (draft->view, band.aft_x, side * band.outer);

      draw_wanted_band (draft->cr, draft->look, (Box) { { fmin (a.x, b.x), a.y }, { fmax (a.x, b.x), b.y } }, BAND_ACROSS);
    }
}

static void
draw_reference_chord (SheetDraft *draft)
{
  const SurfaceFigures *reference = draft->figures->reference;
  Point from, to;

  if (!reference || !isfinite (reference->planform.mac))
    return;
  from = sheet_px (draft->view, reference->planform.mac_leading_edge_x, reference->planform.mac_station);
  to = sheet_px (draft->view, reference->planform.mac_leading_edge_x + reference->planform.mac, reference->planform.mac_station);
  draw_mean_chord (draft->cr, draft->look, from.x, from.y, to.y);
}

/* Tied to the body (or the centre line) by a line in its colour, with a little air at both ends. */
static void
draw_neutral_point (SheetDraft *draft)
{
  const NeutralPointFigures *np = &draft->figures->neutral_point;
  const double air = 2 * draft->look->u, half_width = neutral_diamond_half (draft->look) * 0.8;
  Point place, at, edge;

  if (!sheet_neutral_point (draft->figures, &place))
    return;
  at = view_to_screen (draft->view, place);
  edge = sheet_px (draft->view, place.x, -sheet_half_width (draft->aeroplane, place.x));
  look_set_source (draft->cr, draft->look->neutral);
  line_kind_set (draft->cr, draft->look, LINE_INNER);
  line_stroke (draft->cr, (Point) { at.x + half_width + air, at.y }, (Point) { edge.x - air, at.y });
  if (isfinite (np->handbook_x_mm) && fabs (np->handbook_x_mm - np->x_mm) > np->sigma_mm)
    draw_neutral_diamond (draft->cr, draft->look, sheet_px (draft->view, np->handbook_x_mm, place.y), true);
  draw_neutral_diamond (draft->cr, draft->look, at, false);
}

static void
draw_marks (SheetDraft *draft)
{
  Point place;

  for (size_t i = 0; i < draft->figures->balance.mark_count; i++)
    {
      Look look = *draft->look;

      if (!sheet_mark_place (draft->figures, i, &place))
        continue;
      if (draft->selection->mark == (int) i)
        look.balance = look.selection;
      draw_balance_mark (draft->cr, &look, sheet_px (draft->view, place.x, place.y));
      draw_balance_mark (draft->cr, &look, sheet_px (draft->view, place.x, -place.y));
    }
}

void
sheet_draw_signs (SheetDraft *draft)
{
  const MassFigures *mass = &draft->figures->mass;

  draw_band (draft);
  draw_reference_chord (draft);
  draw_neutral_point (draft);
  draw_marks (draft);
  if (isfinite (mass->x_mm) && isfinite (mass->y_mm))
    draw_balance_disc (draft->cr, draft->look, sheet_px (draft->view, mass->x_mm, mass->y_mm), DISC_ON_SHEET);
}
