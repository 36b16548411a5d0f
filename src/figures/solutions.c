#include "figures/balance-figures.h"

#include <math.h>
#include "balance/slide.h"
#include "figures/ballast-deviation.h"
#include "figures/contribution.h"

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

/* An end of the band that is the rail's own is known. */
static void
fill_band (Solution *made, const SlideCase *wanted, const SlideAnswer *answer)
{
  made->band_from_mm = answer->band_from / metre;
  made->band_to_mm = answer->band_to / metre;
  if (isnan (answer->band_from))
    return;
  made->band_from_sigma_mm = answer->band_from > wanted->rail_from ? made->x_sigma_mm : 0;
  made->band_to_sigma_mm = answer->band_to < wanted->rail_to ? made->x_sigma_mm : 0;
}

static void
fill_ballast (Solution *made, const Figures *figures, const SlideAnswer *answer)
{
  const Part *part = made->part;

  made->ballast_g = answer->ballast / kilogram;
  made->ballast_x_mm = answer->ballast_x / metre;
  made->ballast_sigma_g = isnan (answer->ballast) ? NAN : 0;
  if (!(made->ballast_g > 0))
    return;
  const BallastCase wanted = { .loads = figures->loads, .count = figures->load_count, .part = part,
                               .part_x_mm = made->x_mm < part->rail_from ? part->rail_from : part->rail_to,
                               .target_x_mm = figures->balance.advised_x_mm, .ballast_x_mm = made->ballast_x_mm,
                               .ballast_g = made->ballast_g, .target_owed = &figures->neutral_point.owed };
  made->ballast_owed = ballast_owed (&wanted);
  made->ballast_sigma_g = contribution_sigma (&made->ballast_owed);
}

static AimSolution
aim_solution_of (const SlideAnswer *answer)
{
  return (AimSolution) { .x_mm = answer->x / metre, .reachable = answer->reachable, .ballast_g = answer->ballast / kilogram,
                         .ballast_x_mm = answer->ballast_x / metre };
}

/* The aim is mostly what is advised, and solved for already. */
static AimSolution
solve_for_aim (SlideCase wanted, const BalanceFigures *balance, const SlideAnswer *advised)
{
  SlideAnswer answer;

  if (balance->advised_x_mm == balance->target_x_mm)
    return aim_solution_of (advised);
  wanted.target_x = balance->target_x_mm * metre;
  if (slide_solve (&wanted, &answer) != CORE_OK && isnan (answer.x))
    return (AimSolution) { NAN, false, NAN, NAN };
  return aim_solution_of (&answer);
}

static Solution
solution_for (const Part *part, const Figures *figures, const Aerodynamics *aerodynamics, const Loads *loads)
{
  const BalanceFigures *balance = &figures->balance;
  Solution made = { .part = part, .at_aim = { NAN, false, NAN, NAN },
                    .x_mm = NAN, .ballast_g = NAN, .ballast_x_mm = NAN, .band_from_mm = NAN, .band_to_mm = NAN, .x_sigma_mm = NAN,
                    .band_from_sigma_mm = NAN, .band_to_sigma_mm = NAN, .ballast_sigma_g = NAN };
  SlideCase wanted;
  SlideAnswer answer;

  if (loads->status != CORE_OK || isnan (balance->target_x_mm))
    return made;
  wanted = case_of (part, aerodynamics, loads, balance);
  if (slide_solve (&wanted, &answer) != CORE_OK && isnan (answer.x))
    return made;
  made.at_aim = solve_for_aim (wanted, balance, &answer);
  made.x_mm = answer.x / metre;
  made.reachable = answer.reachable;
  made.x_sigma_mm = place_deviation (&wanted, aerodynamics_reference (aerodynamics), balance);
  fill_band (&made, &wanted, &answer);
  fill_ballast (&made, figures, &answer);
  return made;
}

Solution *
solutions_of (const Figures *figures, const Aerodynamics *aerodynamics, const Loads *loads, size_t *count)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  const size_t all = aeroplane_piece_count (aeroplane);
  Solution *made = g_new (Solution, aeroplane_count (aeroplane, PIECE_PART));
  size_t met = 0;

  for (size_t i = 0; i < all; i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);
      const Part *part = (const Part *) piece;

      if (piece->kind == PIECE_PART && part->has_rail)
        made[met++] = solution_for (part, figures, aerodynamics, loads);
    }
  *count = met;
  return made;
}
