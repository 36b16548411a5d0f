#include "figures/stability.h"

#include <math.h>
#include "aero/propeller.h"
#include "figures/contribution.h"
#include "figures/section-figures.h"

/* One standard deviation each; see the header. */
static const double pressure_sigma = 0.05, given_pressure_sigma = 0.03, downwash_sigma = 0.04;
static const double body_share = 0.25, undrawn_body_share_of_mac = 0.025, rest_share_of_mac = 0.015, least_share_of_mac = 0.025;

/* The sum being made. Lifts are per radian on the reference area, sections counted. */
typedef struct {
  const Aerodynamics *aerodynamics;
  const NeutralPointSolution *solution;
  const SurfaceFigures *surfaces, *reference;
  double lift, moment, plain_lift;
  NeutralPointFigures *point;
} Sum;

static double
factor_of (const Sum *sum, const LiftShare *share)
{
  return sum->surfaces[share->surface].section_factor;
}

static void
add_shares (Sum *sum)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    {
      const LiftShare *share = &sum->solution->shares[i];
      const double lift = share->lift * factor_of (sum, share);

      sum->lift += lift;
      sum->plain_lift += share->lift;
      sum->moment += lift * share->centre_x;
    }
}

/* What the neutral point moves by when this surface's lift grows by all of itself. */
static double
leverage (const Sum *sum, const LiftShare *share)
{
  return share->lift * factor_of (sum, share) / sum->lift * (share->centre_x - sum->point->x_mm);
}

static bool
stands_behind_another (const Sum *sum, const LiftShare *share)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (share->centre_x > sum->solution->shares[i].centre_x + sum->reference->planform.mac / 2)
      return true;
  return false;
}

static void
share_of_surface (Sum *sum, const LiftShare *share)
{
  const SurfaceFigures *surface = &sum->surfaces[share->surface];
  const Piece *piece = &surface->surface->piece;
  Contributions *owed = &sum->point->owed;
  const double all = leverage (sum, share), factor = factor_of (sum, share);
  const double spread = section_figures_factor (surface, surface->section_slope + surface->section_slope_sigma) - factor;

  contribution_add (owed, CONTRIBUTION_SECTION, piece, all * spread / factor);
  if (surface->surface->role == ROLE_TAILPLANE)
    contribution_add (owed, CONTRIBUTION_PRESSURE, piece,
                      all * (isnan (surface->surface->pressure_ratio) ? pressure_sigma : given_pressure_sigma)
                      / surface_pressure_ratio (surface->surface));
  if (stands_behind_another (sum, share))
    contribution_add (owed, CONTRIBUTION_DOWNWASH, piece, all * downwash_sigma / (1 - share->downwash_gradient));
}

static void
share_of_body (Sum *sum)
{
  const BodyShift *body = &sum->solution->body;
  const double scale = sum->solution->lattice.lift_slope / sum->lift;

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

static void
add_propellers (Sum *sum, const Aeroplane *aeroplane)
{
  NeutralPointFigures *point = sum->point;
  double least = 0, greatest = 0;

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    if (is_propeller (aeroplane_piece (aeroplane, i)))
      {
        const Part *part = (const Part *) aeroplane_piece (aeroplane, i);
        const PropellerBound force = propeller_cross_force (part->width);
        const double flow = part->x < point->x_mm ? sum->solution->nose_flow : 1;      /* behind the wing the downwash only lessens it */
        const double arm = (part->x - point->x_mm) * flow / (sum->reference->area_mm2 * sum->lift);

        least += force.least * arm;
        greatest += force.greatest * arm;
      }
  point->propeller_from_mm = least;
  point->propeller_to_mm = greatest;
  contribution_add (&point->owed, CONTRIBUTION_PROPELLER, NULL, greatest / 2);
}

static double
first_tailplanes_downwash (const Sum *sum)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (sum->surfaces[sum->solution->shares[i].surface].surface->role == ROLE_TAILPLANE)
      return sum->solution->shares[i].downwash_gradient;
  return NAN;
}

static void
place_point (Sum *sum)
{
  const NeutralPointSolution *solution = sum->solution;
  const Planform *wing = &sum->reference->planform;
  NeutralPointFigures *point = sum->point;
  double counted;

  point->body_shift_mm = solution->body.shift_mm * solution->lattice.lift_slope / sum->lift;
  point->body_moment_mm3 = solution->body.moment;
  counted = isfinite (point->body_shift_mm) ? point->body_shift_mm : 0;
  point->lattice_x_mm = sum->moment / sum->lift;
  point->section_shift_mm = sum->lift == sum->plain_lift ? 0 : point->lattice_x_mm - solution->lattice.neutral_point_x;
  point->x_mm = point->lattice_x_mm + counted;
  point->percent_mac = 100 * (point->x_mm - wing->mac_leading_edge_x) / wing->mac;
  point->handbook_x_mm = solution->handbook_x + point->section_shift_mm + counted;
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
    share_of_surface (sum, &sum->solution->shares[i]);
  share_of_body (sum);
  add_propellers (sum, aeroplane);
  contribution_add (&point->owed, CONTRIBUTION_METHODS, NULL, (point->x_mm - point->handbook_x_mm) / 2);
  contribution_add (&point->owed, CONTRIBUTION_REST, NULL, rest_of (sum));
  point->sigma_mm = contribution_sigma (&point->owed);
}

static void
fill_surface (SurfaceFigures *surface, const LiftShare *share)
{
  const double factor = section_figures_factor (surface, surface->section_slope);

  surface->lift_slope_per_rad = share->own_slope * factor;
  surface->section_factor = factor;
  surface->company_lift_per_rad = share->lift * factor;
  surface->company_lift_x_mm = share->centre_x;
  surface->downwash_gradient = share->downwash_gradient;
}

NeutralPointFigures
stability_of (const Aerodynamics *aerodynamics, const Aeroplane *aeroplane, SurfaceFigures surfaces[], double stall_speed)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  NeutralPointFigures point = { .x_mm = NAN, .percent_mac = NAN, .lattice_x_mm = NAN, .handbook_x_mm = NAN, .body_shift_mm = NAN,
                                .body_moment_mm3 = NAN, .nose_flow = solution->nose_flow,
                                .downwash_gradient = NAN, .section_shift_mm = NAN, .propeller_from_mm = NAN,
                                .propeller_to_mm = NAN,
                                .sigma_mm = NAN, .wing_alone = aerodynamics->wing_alone, .status = solution->status,
                                .at_fault = { solution->at_fault[0], solution->at_fault[1] } };
  Sum sum = { .aerodynamics = aerodynamics, .solution = solution, .surfaces = surfaces,
              .reference = aerodynamics_reference (aerodynamics), .point = &point };

  for (size_t i = 0; i < aerodynamics->surface_count; i++)
    section_figures_fill (&surfaces[i], stall_speed);
  for (size_t i = 0; i < solution->share_count; i++)
    fill_surface (&surfaces[solution->shares[i].surface], &solution->shares[i]);
  if (solution->status != CORE_OK)
    return point;
  add_shares (&sum);
  place_point (&sum);
  share_deviations (&sum, aeroplane);
  return point;
}

MotionFigures
motion_figures_of (const Aerodynamics *aerodynamics, const SurfaceFigures surfaces[], double axis_x)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  Sum sum = { .solution = solution, .surfaces = surfaces };

  if (solution->status != CORE_OK)
    return (MotionFigures) { NAN, NAN, NAN, NAN, NAN, NAN, NULL };
  add_shares (&sum);
  return (MotionFigures) { .lift_slope_per_rad = sum.lift, .roll_damping = solution->lattice.roll_damping,
                           .pitch_damping = lattice_pitch_damping (&solution->lattice, axis_x, reference->planform.mac),
                           .span_efficiency = solution->lattice.span_efficiency,
                           .first_stall_station_mm = solution->stall_station, .first_stall_ratio = solution->stall_ratio,
                           .loading = g_array_ref (solution->loading) };
}
