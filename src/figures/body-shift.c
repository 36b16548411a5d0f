#include "figures/body-shift.h"

#include <math.h>
#include "aero/body.h"
#include "figures/surface-figures.h"

typedef struct {
  const Lattice *lattice;
  double z;
} Plane;

static void
cross_flow_in_plane (const void *data, const double x[], size_t count, double cross_flow[])
{
  const Plane *plane = data;

  lattice_upwash (plane->lattice, x, count, plane->z, cross_flow);
  for (size_t i = 0; i < count; i++)
    cross_flow[i] += 1;
}

/* The chord that the body meets: the wing's at its innermost station. */
static StationCut
root_chord (const SurfaceFigures *wing)
{
  const PlanformSides sides = surface_sides (wing->surface);
  StationCut cut = { 0 };
  double first = 0;

  if (sides == PLANFORM_OPEN)
    planform_breaks (wing->surface->outline, sides, &first, 1);
  if (planform_cut (wing->surface->outline, sides, first, &cut) != CORE_OK)
    return (StationCut) { 0 };
  return cut;
}

static CoreStatus
moment_in_plane (const Body *body, const SurfaceFigures *wing, Plane plane, double *moment)
{
  const StationCut root = root_chord (wing);

  return body_pitching_moment (body->outline, cross_flow_in_plane, &plane, root.leading_x, root.trailing_x, moment);
}

BodyShift
body_shift_of (const Lattice *lattice, const Aeroplane *aeroplane, const SurfaceFigures *reference, double lift_slope)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_BODY);
  const double per_moment = -1 / (reference->area_mm2 * lift_slope);
  BodyShift made = { .left_out = g_ptr_array_new () };

  for (size_t i = 0; i < count; i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);
      double moment, at_axis;

      if (!body->outline
          || moment_in_plane (body, reference, (Plane) { lattice, reference->surface->z }, &moment) != CORE_OK
          || moment_in_plane (body, reference, (Plane) { lattice, 0 }, &at_axis) != CORE_OK)
        {
          g_ptr_array_add (made.left_out, (Body *) body);
          continue;
        }
      made.moment += moment;
      made.shift_mm += moment * per_moment;
      made.plane_mm += (at_axis - moment) * per_moment;
      made.bodies++;
    }
  if (count && !made.bodies)
    made.shift_mm = made.moment = NAN;
  return made;
}
