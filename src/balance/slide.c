#include "balance/slide.h"

#include <math.h>

/* A rail that ends a nanometre short still reaches: less than the rounding of a written millimetre. */
static const double reach_slack = 1e-9;

CoreStatus
ballast_solve (const SlideCase *wanted, double mass, double x, double *ballast, double *place)
{
  const double target = wanted->target_x;
  const bool tail_heavy = x > target;
  const double at = tail_heavy ? wanted->nose_x : wanted->tail_x;

  if (!(mass > 0) || !isfinite (x) || !isfinite (at) || !(tail_heavy ? at < target : at > target))
    return CORE_OUT_OF_RANGE;
  *ballast = mass * (x - target) / (target - at);
  *place = at;
  return CORE_OK;
}

/* Where the part's centre must be so that all of it balances at `balance_x`. */
static double
part_place_for (const SlideCase *wanted, double balance_x)
{
  return wanted->part_x + wanted->total_mass * (balance_x - wanted->total_x) / wanted->part_mass;
}

/* The places between both limits, as far as the rail has them. */
static void
solve_band (const SlideCase *wanted, SlideAnswer *answer)
{
  const double from = fmax (part_place_for (wanted, wanted->forward_limit_x), wanted->rail_from);
  const double to = fmin (part_place_for (wanted, wanted->aft_limit_x), wanted->rail_to);

  if (from <= to)
    {
      answer->band_from = from;
      answer->band_to = to;
    }
}

CoreStatus
slide_solve (const SlideCase *wanted, SlideAnswer *answer)
{
  double end, balance_x;

  *answer = (SlideAnswer) { .x = NAN, .ballast = NAN, .ballast_x = NAN, .band_from = NAN, .band_to = NAN };
  if (!(wanted->part_mass > 0) || !(wanted->total_mass >= wanted->part_mass))
    return CORE_OUT_OF_RANGE;

  answer->x = part_place_for (wanted, wanted->target_x);
  answer->reachable = answer->x >= wanted->rail_from - reach_slack && answer->x <= wanted->rail_to + reach_slack;
  solve_band (wanted, answer);
  if (answer->reachable)
    {
      answer->ballast = 0;
      return CORE_OK;
    }
  end = answer->x < wanted->rail_from ? wanted->rail_from : wanted->rail_to;
  balance_x = wanted->total_x + wanted->part_mass * (end - wanted->part_x) / wanted->total_mass;
  return ballast_solve (wanted, wanted->total_mass, balance_x, &answer->ballast, &answer->ballast_x);
}
