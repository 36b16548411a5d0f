#include "aero/lattice-private.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>
#include "aero/influence.h"
#include "aero/linear.h"

/* Up to the first of these sweeps of the quarter-chord line at the centre the panels' own answer stands, from the second
 * on it is extrapolated from two sets of panels, and between them gradually. */
static const double plain_sweep = 15 * M_PI / 180, extrapolated_sweep = 25 * M_PI / 180;

LatticeOptions
lattice_default_options (void)
{
  return (LatticeOptions) { .spanwise = 20, .chordwise = 6, .spacing = LATTICE_COSINE, .most_panels = 2500 };
}

Lattice *
lattice_new (void)
{
  linear_use_one_thread ();
  return calloc (1, sizeof (Lattice));
}

void
lattice_free (Lattice *self)
{
  if (!self)
    return;
  mesh_clear (&self->mesh);
  free (self->fine.surfaces);
  free (self->coarse.surfaces);
  free (self->slab);
  free (self->pivots);
  free (self);
}

static double
quarter_chord_x (const MeshStrip *strip)
{
  return 0.75 * strip->leading_x + 0.25 * strip->trailing_x;
}

/* How much of the extrapolation the kink of a surface's quarter-chord line at the centre asks for, 0 to 1, without a
 * step. A curved wing has none there, however far its tips trail. */
static double
extrapolated_part (const Mesh *mesh, const MeshSurface *surface, LatticeSpacing spacing)
{
  const MeshStrip *root = &mesh->strips[surface->strip], *next = root + 1;
  double sweep, part;

  if (spacing == LATTICE_EVEN || surface->strip_count < 2)
    return 0;
  sweep = fabs (atan2 (quarter_chord_x (next) - quarter_chord_x (root), next->control_y - root->control_y));
  part = fmin (fmax ((sweep - plain_sweep) / (extrapolated_sweep - plain_sweep), 0), 1);
  return part * part * (3 - 2 * part);
}

static void
load_extrapolate (Load *fine, const Load *coarse, double part)
{
  fine->lift += part * (fine->lift - coarse->lift);
  fine->moment += part * (fine->moment - coarse->moment);
}

/* The kink of a swept wing at its centre line leaves an error in proportion to the panels' size; half as many strips and
 * panels tell twice that error. In company the first surface's kink is felt by all; by itself a further surface has its own
 * or none. */
static void
solution_extrapolate (const Mesh *mesh, LatticeSpacing spacing, Solution *fine, const Solution *coarse, double part)
{
  for (size_t i = 0; i < mesh->surface_count; i++)
    {
      const double own = i ? part * extrapolated_part (mesh, &mesh->surfaces[i], spacing) : part;

      load_extrapolate (&fine->surfaces[i].company, &coarse->surfaces[i].company, part);
      load_extrapolate (&fine->surfaces[i].alone, &coarse->surfaces[i].alone, own);
      load_extrapolate (&fine->surfaces[i].pitching, &coarse->surfaces[i].pitching, part);
      fine->surfaces[i].roll_moment += part * (fine->surfaces[i].roll_moment - coarse->surfaces[i].roll_moment);
    }
  fine->span_efficiency += part * (fine->span_efficiency - coarse->span_efficiency);
}

/* The fine panels last, for they are what lattice_upwash looks at. */
static CoreStatus
solve_question (Lattice *self, const Question *question)
{
  const LatticeSurface *surfaces = question->surfaces;
  CoreStatus status = mesh_build (&self->mesh, surfaces, question->count, question->options, 1);
  double part;

  if (status)
    return status;
  if ((part = extrapolated_part (&self->mesh, self->mesh.surfaces, question->options.spacing)) > 0
      && ((status = mesh_build (&self->mesh, surfaces, question->count, question->options, 2))
          || (status = lattice_solve_panels (self, question, &self->coarse))
          || (status = mesh_build (&self->mesh, surfaces, question->count, question->options, 1))))
    return status;
  if ((status = lattice_solve_panels (self, question, &self->fine)))
    return status;
  if (part > 0)
    solution_extrapolate (&self->mesh, question->options.spacing, &self->fine, &self->coarse, part);
  return CORE_OK;
}

static void
load_add (Load *sum, const Load *load, double pressure_ratio)
{
  sum->lift += load->lift * pressure_ratio;
  sum->moment += load->moment * pressure_ratio;
}

static CoreStatus
give_result (const Question *question, const Solution *solution, LatticeResult *result)
{
  const bool pitches = question->wants & LATTICE_PITCH;
  Load sum = { 0 }, pitching = { 0 };
  double rolling = 0;

  for (size_t i = 0; i < question->count; i++)
    {
      load_add (&sum, &solution->surfaces[i].company, question->surfaces[i].pressure_ratio);
      load_add (&pitching, &solution->surfaces[i].pitching, question->surfaces[i].pressure_ratio);
      rolling += solution->surfaces[i].roll_moment * question->surfaces[i].pressure_ratio;
    }
  if (!(sum.lift > 0) || !isfinite (sum.lift) || !isfinite (sum.moment))
    return CORE_SINGULAR;
  *result = (LatticeResult) { .lift_slope = sum.lift / question->reference_area, .neutral_point_x = sum.moment / sum.lift,
                              .roll_damping = rolling / (question->reference_area * question->reference_span),
                              .span_efficiency = solution->span_efficiency,
                              .pitching_lift = pitches ? pitching.lift / question->reference_area : NAN,
                              .pitching_moment = pitches ? pitching.moment / question->reference_area : NAN };
  return CORE_OK;
}

static LatticeShare
share_of (const Question *question, const Solved *solved, size_t i, double own_area)
{
  const double part = question->surfaces[i].pressure_ratio / question->reference_area;
  const bool pitches = question->wants & LATTICE_PITCH;
  LatticeShare share = { .lift_slope = solved->company.lift * part,
                         .centre_x = solved->company.moment / solved->company.lift,
                         .roll_damping = solved->roll_moment * part / question->reference_span,
                         .pitching_lift = pitches ? solved->pitching.lift * part : NAN,
                         .pitching_moment = pitches ? solved->pitching.moment * part : NAN,
                         .alone_lift_slope = NAN, .alone_centre_x = NAN, .downwash_gradient = NAN };

  if (question->wants & LATTICE_ALONE)
    {
      share.alone_lift_slope = solved->alone.lift / own_area;
      share.alone_centre_x = solved->alone.moment / solved->alone.lift;
      share.downwash_gradient = 1 - solved->company.lift / solved->alone.lift;
    }
  return share;
}

CoreStatus
lattice_solve (Lattice *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, unsigned wants,
               double reference_area, double reference_span, LatticeShare shares[], LatticeResult *result)
{
  const Question question = { .surfaces = surfaces, .count = count, .options = options, .wants = wants,
                              .reference_area = reference_area, .reference_span = reference_span };
  CoreStatus status;

  assert (count > 0);
  if (!(reference_area > 0 && reference_span > 0))
    return CORE_OUT_OF_RANGE;
  self->is_solved = false;
  if ((status = solve_question (self, &question)) || (status = give_result (&question, &self->fine, result)))
    return status;
  for (size_t i = 0; i < count; i++)
    shares[i] = share_of (&question, &self->fine.surfaces[i], i, self->mesh.surfaces[i].area);
  self->is_solved = true;
  return CORE_OK;
}

/* Turning about another place than x = 0 is turning about x = 0 at less incidence; so is the moment's. */
double
lattice_pitch_damping (const LatticeResult *result, double axis_x, double chord)
{
  const double lift = result->pitching_lift - axis_x * result->lift_slope;
  const double moment = result->pitching_moment - axis_x * result->lift_slope * result->neutral_point_x;

  return -2 * (moment - axis_x * lift) / (chord * chord);
}

size_t
lattice_span_loading (const Lattice *self, size_t surface, LatticeStation stations[], size_t room)
{
  assert (self->is_solved && surface < self->mesh.surface_count);
  const MeshSurface *asked = &self->mesh.surfaces[surface];
  const double own = lattice_load_of_surface (&self->mesh, asked, self->company).lift / asked->area;
  size_t count = 0;

  for (size_t s = asked->strip; s < asked->strip + asked->strip_count && count < room; s++)
    {
      const MeshStrip *strip = &self->mesh.strips[s];
      double circulation = 0;

      for (size_t i = strip->panel; i < strip->panel + strip->panel_count; i++)
        circulation += self->company[i];
      stations[count++] = (LatticeStation) { .station = strip->control_y, .chord = strip->trailing_x - strip->leading_x,
                                             .lift_ratio = 8 * M_PI * circulation / ((strip->trailing_x - strip->leading_x) * own) };
    }
  return asked->strip_count;
}

void
lattice_upwash (const Lattice *self, const double x[], size_t count, double z, double upwash[])
{
  assert (self->is_solved);
  for (size_t i = 0; i < count; i++)
    upwash[i] = 0;
  influence_upwash (&self->mesh, self->company, x, count, z, upwash);
}
