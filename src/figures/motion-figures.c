#include "figures/motion-figures.h"

#include <math.h>
#include "figures/contribution.h"
#include "figures/outline-tolerance.h"
#include "figures/section-figures.h"
#include "figures/stability.h"

/* Share of a damping that linear theory does not know. Common practice, no source. */
static const double damping_rest = 0.05;

static double
pitch_damping_of (const LiftShare *share, double axis_x, double mac)
{
  const LatticeResult alone = { .lift_slope = share->lift, .neutral_point_x = share->centre_x, .pitching_lift = share->pitching_lift,
                                .pitching_moment = share->pitching_moment };

  return lattice_pitch_damping (&alone, axis_x, mac);
}

/* One surface's share of a damping, a thin plate's: what is left of it, and its deviations. */
static double
add_surface (Contributions *owed, const SurfaceFigures *surface, double thin)
{
  const double left = thin * surface->section_factor;
  const double pressure = section_figures_pressure_sigma (surface->surface) / surface_pressure_ratio (surface->surface);

  contribution_add (owed, CONTRIBUTION_SECTION, &surface->surface->piece, thin * surface->section_factor_sigma);
  contribution_add (owed, CONTRIBUTION_PRESSURE, &surface->surface->piece, left * pressure);
  return left;
}

static double
damping_deviation (Contributions *owed, double damping)
{
  contribution_add (owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_lift * damping);
  contribution_add (owed, CONTRIBUTION_REST, NULL, damping_rest * damping);
  return contribution_sigma (owed);
}

static void
find_roll (MotionFigures *made, const NeutralPointSolution *solution, const SurfaceFigures surfaces[])
{
  made->roll_damping = 0;
  for (size_t i = 0; i < solution->share_count; i++)
    made->roll_damping += add_surface (&made->roll_owed, &surfaces[solution->shares[i].surface], solution->shares[i].roll_damping);
  made->roll_damping_sigma = damping_deviation (&made->roll_owed, made->roll_damping);
}

static void
find_pitch (MotionFigures *made, const NeutralPointSolution *solution, const SurfaceFigures surfaces[], double mac, Spreading axis)
{
  double shifted = 0;

  made->pitch_damping = 0;
  for (size_t i = 0; i < solution->share_count; i++)
    {
      const LiftShare *share = &solution->shares[i];
      const SurfaceFigures *surface = &surfaces[share->surface];

      made->pitch_damping += add_surface (&made->pitch_owed, surface, pitch_damping_of (share, axis.value, mac));
      shifted += surface->section_factor * pitch_damping_of (share, axis.value + axis.sigma, mac);
    }
  contribution_add (&made->pitch_owed, CONTRIBUTION_BALANCE_POINT, NULL, shifted - made->pitch_damping);
  made->pitch_damping_sigma = damping_deviation (&made->pitch_owed, made->pitch_damping);
}

static void
find_span_efficiency (MotionFigures *made, const NeutralPointSolution *solution, const SurfaceFigures *reference)
{
  made->span_efficiency = solution->lattice.span_efficiency;
  contribution_add (&made->span_owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_lift * made->span_efficiency);
  contribution_add (&made->span_owed, CONTRIBUTION_OUTLINE, &reference->surface->piece, outline_tolerance * made->span_efficiency);
  made->span_efficiency_sigma = contribution_sigma (&made->span_owed);
}

MotionFigures
motion_figures_of (const Aerodynamics *aerodynamics, const SurfaceFigures surfaces[], const NeutralPointFigures *point,
                   const MassFigures *mass)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  const Spreading axis = isnan (mass->x_mm) ? (Spreading) { point->x_mm, point->sigma_mm } : (Spreading) { mass->x_mm, mass->x_sigma_mm };
  MotionFigures made = { .lift_slope_per_rad = NAN, .roll_damping = NAN, .pitch_damping = NAN, .span_efficiency = NAN,
                         .first_stall_station_mm = NAN, .first_stall_ratio = NAN, .lift_slope_sigma = NAN, .roll_damping_sigma = NAN,
                         .pitch_damping_sigma = NAN, .span_efficiency_sigma = NAN };

  if (solution->status != CORE_OK)
    return made;
  made.lift_slope_per_rad = point->lift_slope_per_rad;
  made.lift_slope_sigma = point->lift_slope_sigma;
  find_roll (&made, solution, surfaces);
  find_pitch (&made, solution, surfaces, reference->planform.mac, axis);
  find_span_efficiency (&made, solution, reference);
  made.first_stall_station_mm = solution->stall_station;
  made.first_stall_ratio = solution->stall_ratio;
  made.loading = g_array_ref (solution->loading);
  return made;
}
