#include "figures/stability.h"

#include <math.h>
#include "aero/propeller.h"
#include "document/part-class.h"
#include "figures/contribution.h"
#include "figures/section-figures.h"

/* One standard deviation each; see the header. */
static const double downwash_sigma = 0.04;
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

static const LiftShare *
first_tailplane (const Sum *sum)
{
  for (size_t i = 0; i < sum->solution->share_count; i++)
    if (sum->surfaces[sum->solution->shares[i].surface].surface->role == ROLE_TAILPLANE)
      return &sum->solution->shares[i];
  return NULL;
}

static double
downwash_at (const Sum *sum, const LiftShare *share)
{
  return share ? front_factor (sum, share) * share->downwash_gradient : NAN;
}

/* One change's effect on every figure that rests on the lift. */
static void
add_to_all (Sum *sum, ContributionKind kind, const Piece *piece, Lever moved)
{
  NeutralPointFigures *point = sum->point;

  contribution_add (&point->owed, kind, piece, neutral_x (sum, moved) - point->x_mm);
  contribution_add (&point->lattice_owed, kind, piece, moved.moment / moved.lift - point->lattice_x_mm);
  contribution_add (&point->lift_owed, kind, piece, moved.lift - sum->all.lift);
}

/* The same for one surface's lift that grows by so much of itself, to the first order. */
static void
add_growth (Sum *sum, ContributionKind kind, size_t i, double growth)
{
  NeutralPointFigures *point = sum->point;
  const LiftShare *share = &sum->solution->shares[i];
  const Piece *piece = &sum->surfaces[share->surface].surface->piece;
  const double lift = lift_of (sum, i) * growth;

  contribution_add (&point->owed, kind, piece, lift / sum->all.lift * (share->centre_x - point->x_mm));
  contribution_add (&point->lattice_owed, kind, piece, lift / sum->all.lift * (share->centre_x - point->lattice_x_mm));
  contribution_add (&point->lift_owed, kind, piece, lift);
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
static void
share_of_section (Sum *sum, size_t i)
{
  const SurfaceFigures *surface = &sum->surfaces[sum->solution->shares[i].surface];
  const double kept = sum->factors[i];

  sum->factors[i] = kept + surface->section_factor_sigma;
  add_to_all (sum, CONTRIBUTION_SECTION, &surface->surface->piece, lever_of (sum));
  contribution_add (&sum->point->downwash_owed, CONTRIBUTION_SECTION, &surface->surface->piece,
                    downwash_at (sum, first_tailplane (sum)) - sum->point->downwash_gradient);
  sum->factors[i] = kept;
}

static void
share_of_surface (Sum *sum, size_t i)
{
  const LiftShare *share = &sum->solution->shares[i];
  const Surface *surface = sum->surfaces[share->surface].surface;

  share_of_section (sum, i);
  add_growth (sum, CONTRIBUTION_PRESSURE, i, section_figures_pressure_sigma (surface) / surface_pressure_ratio (surface));
  if (!stands_behind_another (sum, share))
    return;
  add_growth (sum, CONTRIBUTION_DOWNWASH, i, downwash_sigma / (1 - share->downwash_gradient));
  if (share == first_tailplane (sum))
    contribution_add (&sum->point->downwash_owed, CONTRIBUTION_DOWNWASH, &surface->piece, downwash_sigma);
}

/* The body's shift goes with one over the lift. */
static void
share_of_body (Sum *sum)
{
  NeutralPointFigures *point = sum->point;
  const BodyShift *body = &sum->solution->body;
  const double scale = sum->solution->lattice.lift_slope / sum->all.lift;

  double sigma = 0;

  if (body->bodies)
    sigma = hypot (body_share * body->shift_mm, body->plane_mm / 2) * scale;
  else if (!sum->aerodynamics->tailless)
    sigma = undrawn_body_share_of_mac * sum->reference->planform.mac;
  contribution_add (&point->owed, CONTRIBUTION_BODY, NULL, sigma);
  if (isnan (point->body_shift_mm))
    return;
  point->body_own_sigma_mm = sigma;
  point->body_shift_sigma_mm = hypot (sigma, point->lift_slope_sigma * point->body_shift_mm / sum->all.lift);
}

Contributions
stability_body_owed (const NeutralPointFigures *point)
{
  Contributions owed = contributions_scaled (&point->lift_owed, point->body_shift_mm / point->lift_slope_per_rad);

  contribution_add (&owed, CONTRIBUTION_BODY, NULL, point->body_own_sigma_mm);
  return owed;
}

/* Where the propeller is no fin but a weight: not aboard, or of no size. */
static bool
is_propeller (const Piece *piece)
{
  const Part *part = (const Part *) piece;

  return piece->kind == PIECE_PART && part->aboard && part_is_a (part, "propeller") && part->width > 0;
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
  point->downwash_gradient = downwash_at (sum, first_tailplane (sum));
}

/* What the panels leave, and what either method owes to the other. */
static void
share_of_lattice (Sum *sum)
{
  NeutralPointFigures *point = sum->point;

  contribution_add (&point->lattice_owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_place * sum->reference->planform.mac);
  contribution_add (&point->lattice_owed, CONTRIBUTION_METHODS, NULL, (point->x_mm - point->handbook_x_mm) / 2);
  contribution_add (&point->lift_owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_lift * sum->all.lift);
  contribution_add (&point->downwash_owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_lift * (1 - point->downwash_gradient));
  point->lattice_sigma_mm = contribution_sigma (&point->lattice_owed);
  point->lift_slope_sigma = contribution_sigma (&point->lift_owed);
  if (isfinite (point->downwash_gradient))
    point->downwash_gradient_sigma = contribution_sigma (&point->downwash_owed);
}

/* The handbook errs by all that the two methods part by, of which half stands in the variance already, and by what both do not know. */
static double
handbook_variance (const NeutralPointFigures *point)
{
  const double parting = point->x_mm - point->handbook_x_mm;

  return point->owed.variance + 0.75 * parting * parting;
}

Contributions
stability_handbook_owed (const NeutralPointFigures *point)
{
  Contributions owed = { .count = 0 };

  for (size_t i = 0; i < point->owed.count; i++)
    if (point->owed.of[i].kind != CONTRIBUTION_METHODS)
      contribution_add (&owed, point->owed.of[i].kind, point->owed.of[i].piece, point->owed.of[i].sigma);
  contribution_add (&owed, CONTRIBUTION_METHODS, NULL, point->x_mm - point->handbook_x_mm);
  owed.variance = handbook_variance (point);
  return owed;
}

/* What brings the whole to the least that experience allows, if it is not there already. */
static double
rest_of (const Sum *sum)
{
  const double mac = sum->reference->planform.mac, least = least_share_of_mac * mac;

  return fmax (rest_share_of_mac * mac, sqrt (fmax (least * least - sum->point->owed.variance, 0)));
}

static void
share_deviations (Sum *sum, const Aeroplane *aeroplane)
{
  NeutralPointFigures *point = sum->point;

  for (size_t i = 0; i < sum->solution->share_count; i++)
    share_of_surface (sum, i);
  share_of_lattice (sum);
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
      surface->section_factor_sigma = section_figures_factor (surface, surface->section_slope + surface->section_slope_sigma) - sum->factors[i];
      surface->lift_slope_per_rad = solution->shares[i].own_slope * sum->factors[i];
      surface->lift_slope_sigma = solution->shares[i].own_slope * hypot (surface->section_factor_sigma, stability_lattice_lift * sum->factors[i]);
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
stability_of (const Aerodynamics *aerodynamics, const Aeroplane *aeroplane, SurfaceFigures surfaces[], const FlightFigures *flight)
{
  const NeutralPointSolution *solution = &aerodynamics->solution;
  NeutralPointFigures point = { .x_mm = NAN, .percent_mac = NAN, .lattice_x_mm = NAN, .handbook_x_mm = NAN, .body_shift_mm = NAN,
                                .body_moment_mm3 = NAN, .nose_flow = solution->nose_flow, .lift_slope_per_rad = NAN,
                                .downwash_gradient = NAN, .section_shift_mm = NAN, .propeller_from_mm = NAN,
                                .propeller_to_mm = NAN, .sigma_mm = NAN, .lattice_sigma_mm = NAN, .handbook_sigma_mm = NAN,
                                .body_shift_sigma_mm = NAN, .downwash_gradient_sigma = NAN, .lift_slope_sigma = NAN,
                                .wing_alone = aerodynamics->wing_alone, .status = solution->status,
                                .at_fault = { solution->at_fault[0], solution->at_fault[1] } };
  Sum sum = { .aerodynamics = aerodynamics, .solution = solution, .surfaces = surfaces,
              .reference = aerodynamics_reference (aerodynamics), .point = &point,
              .factors = g_newa (double, solution->share_count + 1) };

  for (size_t i = 0; i < aerodynamics->surface_count; i++)
    section_figures_fill (&surfaces[i], flight->stall_speed_m_s, flight->stall_speed_sigma_m_s);
  fill_surfaces (&sum, surfaces);
  if (solution->status != CORE_OK)
    return point;
  sum.all = lever_of (&sum);
  point.lift_slope_per_rad = sum.all.lift;
  place_point (&sum);
  share_deviations (&sum, aeroplane);
  point.handbook_sigma_mm = sqrt (handbook_variance (&point));
  return point;
}
