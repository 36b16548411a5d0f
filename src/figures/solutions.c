#include "figures/balance-figures.h"

#include <math.h>
#include "balance/slide.h"

static const double metre = 1e-3, kilogram = 1e-3;        /* of a mm, of a g */

static SlideCase
case_of (const Part *part, const Aerodynamics *aerodynamics, const Loads *loads, const BalanceFigures *balance)
{
  const double mass = part->mass * kilogram, x = part->x * metre;
  SlideCase made = {
    .part_mass = mass, .part_x = x, .rail_from = part->rail_from * metre, .rail_to = part->rail_to * metre,
    .total_mass = loads->sum.mass, .total_x = loads->sum.x,
    .target_x = balance->advised_x_mm * metre, .forward_limit_x = balance->forward_limit_x_mm * metre,
    .aft_limit_x = balance->aft_limit_x_mm * metre,
    .nose_x = aerodynamics->nose_x * metre, .tail_x = aerodynamics->tail_x * metre,
  };

  if (!part->aboard)
    {
      made.total_mass += mass;
      made.total_x = (loads->sum.mass * loads->sum.x + mass * x) / made.total_mass;
    }
  return made;
}

/* The part must make good what balance point and neutral point are out by, with as much longer a way as it is lighter than all. */
static double
place_deviation (const SlideCase *wanted, const SurfaceFigures *reference, const BalanceFigures *balance)
{
  return balance->static_margin_sigma_percent / 100 * reference->planform.mac * wanted->total_mass / wanted->part_mass;
}

static Solution
solution_for (const Part *part, const Aerodynamics *aerodynamics, const Loads *loads, const BalanceFigures *balance)
{
  Solution made = { part, NAN, false, NAN, NAN, NAN, NAN, NAN };
  SlideCase wanted;
  SlideAnswer answer;

  if (loads->status != CORE_OK || isnan (balance->target_x_mm))
    return made;
  wanted = case_of (part, aerodynamics, loads, balance);
  if (slide_solve (&wanted, &answer) != CORE_OK && isnan (answer.x))
    return made;
  return (Solution) { .part = part, .x_mm = answer.x / metre, .reachable = answer.reachable,
                      .ballast_g = answer.ballast / kilogram, .ballast_x_mm = answer.ballast_x / metre,
                      .band_from_mm = answer.band_from / metre, .band_to_mm = answer.band_to / metre,
                      .x_sigma_mm = place_deviation (&wanted, aerodynamics_reference (aerodynamics), balance) };
}

Solution *
solutions_of (const Aeroplane *aeroplane, const Aerodynamics *aerodynamics, const Loads *loads, const BalanceFigures *balance,
              size_t *count)
{
  const size_t all = aeroplane_piece_count (aeroplane);
  Solution *made = g_new (Solution, aeroplane_count (aeroplane, PIECE_PART));
  size_t met = 0;

  for (size_t i = 0; i < all; i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);
      const Part *part = (const Part *) piece;

      if (piece->kind == PIECE_PART && part->has_rail)
        made[met++] = solution_for (part, aerodynamics, loads, balance);
    }
  *count = met;
  return made;
}
