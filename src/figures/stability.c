#include "figures/stability.h"

#include <math.h>
#include "aero/propeller.h"
#include "figures/contribution.h"
#include "figures/section-figures.h"

/* One standard deviation each; see the header. */
static const double pressure_sigma = 0.05, given_pressure_sigma = 0.03, downwash_sigma = 0.04;
static const double body_share = 0.25, undrawn_body_share_of_mac = 0.025, rest_share_of_mac = 0.015, least_share_of_mac = 0.025;

/* Lift on the reference area per radian, and its moment about the datum. */
typedef struct { double lift, moment; } Lever;

/* The sum being made. */
typedef struct {
  const Aerodynamics *aerodynamics;
  const NeutralPointSolution *solution;
  const SurfaceFigures *surfaces, *reference;
  double *factors;              /* κ of each share */
  Lever all;
  NeutralPointFigures *point;
} Sum;

static bool
stands_behind (const Sum *sum, const LiftShare *rear, const LiftShare *front)
{
  return rear->centre_x > front->centre_x + sum->reference->planform.mac / 2;
}

/* The κ of what stands ahead, by its lift: so much of the lattice's downwash is left. 1 where nothing does. */
static double
front_factor (const Sum *sum, const LiftShare *share)
{
  double lift = 0, kept = 0;

  for (size_t i = 0; i < sum->solution->share_count; i++)
    {
      const LiftShare *front = &sum->solution->shares[i];

      if (!stands_behind (sum, share, front))
        continue;
      lift += fabs (front->lift);
      kept += fabs (front->lift) * sum->factors[i];
    }
  return lift > 0 ? kept / lift : 1;
}

/* What is left of a surface's lift in the lattice: by its own section, and by how much less those ahead wash it down. */
static double
lift_of (const Sum *sum, size_t i)
{
  const LiftShare *share = &sum->solution->shares[i];
  const double free_flow = 1 - share->downwash_gradient, front = front_factor (sum, share);

  if (front == 1 || free_flow < 0.05)
    return share->lift * sum->factors[i];
  return share->lift * sum->factors[i] * (1 - front * share->downwash_gradient) / free_flow;
}

static Lever
lever_of (const Sum *sum)
{
  Lever all = { 0, 0 };

  for (size_t i = 0; i < sum->solution->share_count; i++)
    {
      const double lift = lift_of (sum, i);

      all.lift += lift;
      all.moment += lift * sum->solution->shares[i].centre_x;
    }
  return all;
}

/* Lattice and body together. */
static double
neutral_x (const Sum *sum, Lever all)
{
  const NeutralPointSolution *solution = sum->solution;
  const double shift = isfinite (solution->body.shift_mm) ? solution->body.shift_mm * solution->lattice.lift_slope / all.lift : 0;

  return all.moment / all.lift + shift;
}

/* What the neutral point moves by when this surface's lift grows by all of itself. */
static double
leverage (const Sum *sum, size_t i)
{
  return lift_of (sum, i) / sum->all.lift * (sum->solution->shares[i].centre_x - sum->point->x_mm);
}

static bool
stands_behind_another (const Sum *sum, const LiftShare *share)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (stands_behind (sum, share, &sum->solution->shares[i]))
      return true;
  return false;
}

/* A section's slope tells on its own surface and on the downwash behind it: both at once, by reckoning again. */
static double
moved_by_section (const Sum *sum, size_t i)
{
  const SurfaceFigures *surface = &sum->surfaces[sum->solution->shares[i].surface];
  const double kept = sum->factors[i];
  double moved;

  sum->factors[i] = section_figures_factor (surface, surface->section_slope + surface->section_slope_sigma);
  moved = neutral_x (sum, lever_of (sum)) - sum->point->x_mm;
  sum->factors[i] = kept;
  return moved;
}

static void
share_of_surface (Sum *sum, size_t i)
{
  const LiftShare *share = &sum->solution->shares[i];
  const Surface *surface = sum->surfaces[share->surface].surface;
  Contributions *owed = &sum->point->owed;
  const double all = leverage (sum, i);

  contribution_add (owed, CONTRIBUTION_SECTION, &surface->piece, moved_by_section (sum, i));
  if (surface->role == ROLE_TAILPLANE)
    contribution_add (owed, CONTRIBUTION_PRESSURE, &surface->piece,
                      all * (isnan (surface->pressure_ratio) ? pressure_sigma : given_pressure_sigma) / surface_pressure_ratio (surface));
  if (stands_behind_another (sum, share))
    contribution_add (owed, CONTRIBUTION_DOWNWASH, &surface->piece, all * downwash_sigma / (1 - share->downwash_gradient));
}

static void
share_of_body (Sum *sum)
{
  const BodyShift *body = &sum->solution->body;
  const double scale = sum->solution->lattice.lift_slope / sum->all.lift;

  if (body->bodies)
    contribution_add (&sum->point->owed, CONTRIBUTION_BODY, NULL, hypot (body_share * body->shift_mm, body->plane_mm / 2) * scale);
  else if (!sum->aerodynamics->tailless)
    contribution_add (&sum->point->owed, CONTRIBUTION_BODY, NULL, undrawn_body_share_of_mac * sum->reference->planform.mac);
}

/* Where the propeller is no fin but a weight: not aboard, or of no size. */
static bool
is_propeller (const Piece *piece)
{
  const Part *part = (const Part *) piece;

  return piece->kind == PIECE_PART && part->aboard && g_strcmp0 (part->class_name, "propeller") == 0 && part->width > 0;
}

double
stability_propeller_flow (const NeutralPointFigures *point, double x_mm)
{
  return x_mm < point->x_mm ? point->nose_flow : 1;
}

static void
add_propellers (Sum *sum, const Aeroplane *aeroplane)
{
  NeutralPointFigures *point = sum->point;

  point->propeller_from_mm = point->propeller_to_mm = 0;
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    if (is_propeller (aeroplane_piece (aeroplane, i)))
      {
        const Part *part = (const Part *) aeroplane_piece (aeroplane, i);
        const PropellerBound force = propeller_cross_force (part->width);
        const double flow = stability_propeller_flow (point, part->x);
        const double arm = (part->x - point->x_mm) * flow / (sum->reference->area_mm2 * sum->all.lift);

        point->propeller_from_mm += force.least * arm;
        point->propeller_to_mm += force.greatest * arm;
        contribution_add (&point->owed, CONTRIBUTION_PROPELLER, &part->piece, force.greatest * arm / 2);
      }
}

static double
first_tailplanes_downwash (const Sum *sum)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (sum->surfaces[sum->solution->shares[i].surface].surface->role == ROLE_TAILPLANE)
      return sum->surfaces[sum->solution->shares[i].surface].downwash_gradient;
  return NAN;
}

static bool
sections_are_plain (const Sum *sum)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (sum->factors[i] != 1)
      return false;
  return true;
}

static void
place_point (Sum *sum)
{
  const NeutralPointSolution *solution = sum->solution;
  const Planform *wing = &sum->reference->planform;
  NeutralPointFigures *point = sum->point;
  const bool plain = sections_are_plain (sum);

  point->body_shift_mm = solution->body.shift_mm * solution->lattice.lift_slope / sum->all.lift;
  point->body_moment_mm3 = solution->body.moment;
  point->lattice_x_mm = sum->all.moment / sum->all.lift;
  point->section_shift_mm = plain ? 0 : point->lattice_x_mm - solution->lattice.neutral_point_x;
  point->x_mm = neutral_x (sum, sum->all);
  point->percent_mac = 100 * (point->x_mm - wing->mac_leading_edge_x) / wing->mac;
  point->handbook_x_mm = solution->handbook_x + point->section_shift_mm + point->x_mm - point->lattice_x_mm;
  point->downwash_gradient = first_tailplanes_downwash (sum);
}

/* What brings the whole to the least that experience allows, if it is not there already. */
static double
rest_of (const Sum *sum)
{
  const double mac = sum->reference->planform.mac, least = least_share_of_mac * mac;

  return fmax (rest_share_of_mac * mac, sqrt (fmax (least * least - sum->point->owed.variance_mm2, 0)));
}

static void
share_deviations (Sum *sum, const Aeroplane *aeroplane)
{
  NeutralPointFigures *point = sum->point;

  for (size_t i = 0; i < sum->solution->share_count; i++)
    share_of_surface (sum, i);
  share_of_body (sum);
  add_propellers (sum, aeroplane);
  contribution_add (&point->owed, CONTRIBUTION_METHODS, NULL, (point->x_mm - point->handbook_x_mm) / 2);
  contribution_add (&point->owed, CONTRIBUTION_REST, NULL, rest_of (sum));
  point->sigma_mm = contribution_sigma (&point->owed);
}

/* What each surface has of lift by itself and in company, its section counted. */
static void
fill_surfaces (Sum *sum, SurfaceFigures surfaces[])
{
  const NeutralPointSolution *solution = sum->solution;

  for (size_t i = 0; i < solution->share_count; i++)
    {
      SurfaceFigures *surface = &surfaces[solution->shares[i].surface];

      sum->factors[i] = section_figures_factor (surface, surface->section_slope);
      surface->section_factor = sum->factors[i];
      surface->lift_slope_per_rad = solution->shares[i].own_slope * sum->factors[i];
      surface->company_lift_x_mm = solution->shares[i].centre_x;
    }
  if (solution->status != CORE_OK)
    return;
  for (size_t i = 0; i < solution->share_count; i++)
    {
      SurfaceFigures *surface = &surfaces[solution->shares[i].surface];

      surface->company_lift_per_rad = lift_of (sum, i);
      surface->downwash_gradient = front_factor (sum, &solution->shares[i]) * solution->shares[i].downwash_gradient;
    }
}

NeutralPointFigures
stability_of (const Aerodynamics *aerodynamics, const Aeroplane *aeroplane, SurfaceFigures surfaces[], double stall_speed)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  NeutralPointFigures point = { .x_mm = NAN, .percent_mac = NAN, .lattice_x_mm = NAN, .handbook_x_mm = NAN, .body_shift_mm = NAN,
                                .body_moment_mm3 = NAN, .nose_flow = solution->nose_flow, .lift_slope_per_rad = NAN,
                                .downwash_gradient = NAN, .section_shift_mm = NAN, .propeller_from_mm = NAN,
                                .propeller_to_mm = NAN,
                                .sigma_mm = NAN, .wing_alone = aerodynamics->wing_alone, .status = solution->status,
                                .at_fault = { solution->at_fault[0], solution->at_fault[1] } };
  Sum sum = { .aerodynamics = aerodynamics, .solution = solution, .surfaces = surfaces,
              .reference = aerodynamics_reference (aerodynamics), .point = &point,
              .factors = g_newa (double, solution->share_count + 1) };

  for (size_t i = 0; i < aerodynamics->surface_count; i++)
    section_figures_fill (&surfaces[i], stall_speed);
  fill_surfaces (&sum, surfaces);
  if (solution->status != CORE_OK)
    return point;
  sum.all = lever_of (&sum);
  point.lift_slope_per_rad = sum.all.lift;
  place_point (&sum);
  share_deviations (&sum, aeroplane);
  return point;
}

MotionFigures
motion_figures_of (const Aerodynamics *aerodynamics, const NeutralPointFigures *point, double axis_x)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);

  if (solution->status != CORE_OK)
    return (MotionFigures) { NAN, NAN, NAN, NAN, NAN, NAN, NULL };
  return (MotionFigures) { .lift_slope_per_rad = point->lift_slope_per_rad, .roll_damping = solution->lattice.roll_damping,
                           .pitch_damping = lattice_pitch_damping (&solution->lattice, axis_x, reference->planform.mac),
                           .span_efficiency = solution->lattice.span_efficiency,
                           .first_stall_station_mm = solution->stall_station, .first_stall_ratio = solution->stall_ratio,
                           .loading = g_array_ref (solution->loading) };
}
