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

/* The chord that the body meets: a surface's at its innermost station; none (nought) where it cannot be cut. */
static BodyChord
root_chord (const SurfaceFigures *figures)
{
  const PlanformSides sides = surface_sides (figures->surface);
  StationCut cut = { 0 };
  double first = 0;

  if (sides == PLANFORM_OPEN)
    planform_breaks (figures->surface->outline, sides, &first, 1);
  if (planform_cut (figures->surface->outline, sides, first, &cut) != CORE_OK)
    return (BodyChord) { 0, 0 };
  return (BodyChord) { cut.leading_x, cut.trailing_x };
}

/* Of all that lies flat: what follows them adds nothing, and a tail in the plane of the flow would be met vortex by vortex. */
static GArray *
root_chords (const SurfaceFigures surfaces[], size_t count)
{
  GArray *chords = g_array_new (FALSE, FALSE, sizeof (BodyChord));

  for (size_t i = 0; i < count; i++)
    if (surface_is_horizontal (surfaces[i].surface) && isfinite (surfaces[i].area_mm2))
      {
        const BodyChord chord = root_chord (&surfaces[i]);

        g_array_append_val (chords, chord);
      }
  return chords;
}

static CoreStatus
moment_in_plane (const Body *body, const GArray *chords, Plane plane, double *moment)
{
  return body_pitching_moment (body->outline, cross_flow_in_plane, &plane, (const BodyChord *) (void *) chords->data, chords->len, moment);
}

BodyShift
body_shift_of (const Lattice *lattice, const Aeroplane *aeroplane, const BodyCompany *company, double lift_slope)
{
  const SurfaceFigures *reference = company->reference;
  const size_t count = aeroplane_count (aeroplane, PIECE_BODY);
  const double per_moment = -1 / (reference->area_mm2 * lift_slope);
  g_autoptr (GArray) chords = root_chords (company->surfaces, company->count);
  BodyShift made = { .left_out = g_ptr_array_new () };

  for (size_t i = 0; i < count; i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);
      double moment, at_axis;

      if (!body->outline
          || moment_in_plane (body, chords, (Plane) { lattice, reference->surface->z }, &moment) != CORE_OK
          || moment_in_plane (body, chords, (Plane) { lattice, 0 }, &at_axis) != CORE_OK)
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
