#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/symbols.h"

static void
draw_band (const SheetDraft *draft)
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
draw_reference_chord (const SheetDraft *draft)
{
  const SurfaceFigures *reference = draft->figures->reference;
  Point from, to;

  if (!reference || !isfinite (reference->planform.mac))
    return;
  from = sheet_px (draft->view, reference->planform.mac_leading_edge_x, reference->planform.mac_station);
  to = sheet_px (draft->view, reference->planform.mac_leading_edge_x + reference->planform.mac, reference->planform.mac_station);
  draw_mean_chord (draft->cr, draft->look, from.x, from.y, to.y);
}

/* The other method's place, where it differs by more than is told as the deviation. */
static bool
has_second_opinion (const NeutralPointFigures *np)
{
  return isfinite (np->handbook_x_mm) && fabs (np->handbook_x_mm - np->x_mm) > np->sigma_mm;
}

/* Tied to the body (or the centre line) by a line in its colour, with a little air at both ends. */
static void
draw_neutral_point (const SheetDraft *draft)
{
  const NeutralPointFigures *np = &draft->figures->neutral_point;
  const double air = 2 * draft->look->u, half_width = neutral_diamond_half (draft->look) * 0.8;
  Look look = *draft->look;
  Point place, at, edge;

  if (draft->selection->point == SHEET_POINT_NEUTRAL)
    look.neutral = look.selection;
  if (!sheet_neutral_point (draft->figures, &place))
    return;
  at = view_to_screen (draft->view, place);
  edge = sheet_px (draft->view, place.x, -sheet_half_width (draft->aeroplane, place.x));
  look_set_source (draft->cr, look.neutral);
  line_kind_set (draft->cr, draft->look, LINE_INNER);
  line_stroke (draft->cr, (Point) { at.x + half_width + air, at.y }, (Point) { edge.x - air, at.y });
  if (has_second_opinion (np))
    draw_neutral_diamond (draft->cr, &look, sheet_px (draft->view, np->handbook_x_mm, place.y), true);
  draw_neutral_diamond (draft->cr, &look, at, false);
}

/* How far a point may be out, fore and aft; only where it is asked for by selecting it. Beside the sign, which is mostly the larger. */
static void
draw_deviation (const SheetDraft *draft, Point at, double half_width, double sigma_mm)
{
  const double beside = half_width + 7 * draft->look->u;

  draw_whiskers (draft->cr, draft->look, &(Whiskers) {
    .at = { at.x - beside, at.y }, .reach = sigma_mm * draft->view->scale, .along_page = true, .colour = draft->look->selection });
}

static void
draw_selected_points_deviation (const SheetDraft *draft)
{
  const Figures *figures = draft->figures;
  Point place;

  if (draft->selection->point == SHEET_POINT_BALANCE && isfinite (figures->mass.x_mm))
    draw_deviation (draft, sheet_px (draft->view, figures->mass.x_mm, figures->mass.y_mm), balance_disc_radius (draft->look, DISC_ON_SHEET),
                    figures->mass.x_sigma_mm);
  if (draft->selection->point == SHEET_POINT_NEUTRAL && sheet_neutral_point (figures, &place))
    draw_deviation (draft, view_to_screen (draft->view, place), neutral_diamond_half (draft->look), figures->neutral_point.sigma_mm);
}

static void
draw_marks (const SheetDraft *draft)
{
  Point place;

  for (size_t i = 0; i < draft->figures->balance.mark_count; i++)
    {
      Look look = *draft->look;

      if (!sheet_mark_place (draft->figures, i, &place))
        continue;
      if (draft->selection->mark == (int) i)
        {
          look.balance = look.selection;
          draw_deviation (draft, sheet_px (draft->view, place.x, -place.y), 9 * look.u, draft->figures->balance.marks[i].sigma_mm);
        }
      draw_balance_mark (draft->cr, &look, sheet_px (draft->view, place.x, place.y));
      draw_balance_mark (draft->cr, &look, sheet_px (draft->view, place.x, -place.y));
    }
}

/* Signs may stand close together: none rubs out another. */
static void
draw_halos (const SheetDraft *draft)
{
  const NeutralPointFigures *np = &draft->figures->neutral_point;
  Point place;

  if (sheet_neutral_point (draft->figures, &place))
    {
      draw_neutral_halo (draft->cr, draft->look, view_to_screen (draft->view, place));
      if (has_second_opinion (np))
        draw_neutral_halo (draft->cr, draft->look, sheet_px (draft->view, np->handbook_x_mm, place.y));
    }
  for (size_t i = 0; i < draft->figures->balance.mark_count; i++)
    if (sheet_mark_place (draft->figures, i, &place))
      for (int side = -1; side <= 1; side += 2)
        draw_balance_mark_halo (draft->cr, draft->look, sheet_px (draft->view, place.x, side * place.y));
}

static void
draw_balance_point (const SheetDraft *draft)
{
  const MassFigures *mass = &draft->figures->mass;
  Look look = *draft->look;

  if (!isfinite (mass->x_mm) || !isfinite (mass->y_mm))
    return;
  if (draft->selection->point == SHEET_POINT_BALANCE)
    look.balance = look.selection;
  draw_balance_disc (draft->cr, &look, sheet_px (draft->view, mass->x_mm, mass->y_mm), DISC_ON_SHEET);
}

void
sheet_draw_signs (const SheetDraft *draft)
{
  draw_band (draft);
  draw_reference_chord (draft);
  draw_halos (draft);
  draw_neutral_point (draft);
  draw_marks (draft);
  draw_selected_points_deviation (draft);
  draw_balance_point (draft);
}
