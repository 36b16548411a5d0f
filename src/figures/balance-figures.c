#include "figures/balance-figures.h"

#include <math.h>
#include "figures/surface-figures.h"

/* Where fingers reach a wing whose document names no station: beside the body, else a sixteenth of the span out, in whole 5 mm, and
 * never further out than half way to the tip. Common practice, no source. */
static double
usual_station (const Aeroplane *aeroplane, const SurfaceFigures *reference, double target_x)
{
  const double beside_body = 15, step = 5;
  double station = reference->planform.span / 16;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);

      if (body->outline && target_x > outline_bounds (body->outline).min.x && target_x < outline_bounds (body->outline).max.x)
        station = fmax (station, outline_bounds (body->outline).max.y + beside_body);
    }
  return fmin (fmax (step, step * round (station / step)), reference->planform.span / 4);
}

static MarkFigures
mark_at (double station, const SurfaceFigures *reference, const BalanceFigures *balance, double sigma)
{
  MarkFigures mark = { station, NAN, NAN, NAN, NAN, NAN, NAN };
  StationCut cut;

  if (planform_cut (reference->surface->outline, surface_sides (reference->surface), station, &cut) != CORE_OK)
    return mark;
  mark.target_mm = balance->target_x_mm - cut.leading_x;
  mark.forward_mm = balance->forward_limit_x_mm - cut.leading_x;
  mark.aft_mm = balance->aft_limit_x_mm - cut.leading_x;
  mark.leading_edge_x_mm = cut.leading_x;
  mark.chord_mm = cut.chord;
  mark.sigma_mm = sigma;
  return mark;
}

static void
fill_marks (BalanceFigures *balance, const Aeroplane *aeroplane, const SurfaceFigures *reference, double sigma)
{
  const size_t stated = aeroplane_count (aeroplane, PIECE_MARK);

  balance->mark_count = stated ? stated : 1;
  balance->marks = g_new (MarkFigures, balance->mark_count);
  for (size_t i = 0; i < stated; i++)
    balance->marks[i] = mark_at (aeroplane_mark (aeroplane, i)->station, reference, balance, sigma);
  if (!stated)
    balance->marks[0] = mark_at (usual_station (aeroplane, reference, balance->target_x_mm), reference, balance, sigma);
}

/* How much further forward than the aim the balance point is to be, so that it keeps one deviation clear of the aft limit, but no further
 * than the forward limit: poor knowledge moves the advice forward and never widens the band. Percent of MAC, not negative. */
static double
kept_clear (Target target, double sigma)
{
  const double wanted = fmin (target.from + (isnan (sigma) ? 0 : sigma), target.to);

  return fmax (wanted - target.aim, 0);
}

BalanceFigures
balance_figures_of (const Aeroplane *aeroplane, const Aerodynamics *aerodynamics, const Loads *loads, const NeutralPointFigures *point)
{
  BalanceFigures made = { NAN, NAN, NAN, NAN, NAN, NAN, NAN, NULL, 0 };
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  const Target target = aeroplane_traits (aeroplane).target;

  if (!reference)
    return made;
  const double mac = reference->planform.mac;
  made.percent_mac = 100 * (loads->figures.x_mm - reference->planform.mac_leading_edge_x) / mac;
  made.static_margin_percent = 100 * (point->x_mm - loads->figures.x_mm) / mac;
  made.static_margin_sigma_percent = 100 * hypot (point->sigma_mm, loads->figures.x_sigma_mm) / mac;
  if (isnan (point->x_mm) || point->wing_alone)
    return made;
  made.target_x_mm = point->x_mm - target.aim / 100 * mac;
  made.forward_limit_x_mm = point->x_mm - target.to / 100 * mac;
  made.aft_limit_x_mm = point->x_mm - target.from / 100 * mac;
  made.advised_x_mm = made.target_x_mm - kept_clear (target, made.static_margin_sigma_percent) / 100 * mac;
  fill_marks (&made, aeroplane, reference, point->sigma_mm);
  return made;
}
