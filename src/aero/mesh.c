#include "aero/mesh.h"

#include <math.h>
#include <stdlib.h>

/* Strips are cut this part of their width inside their edges, so that a step in the chord falls to the right strip. */
static const double cut_inside = 1e-9;
/* Less chord than this part of the span is none; nearer than this in height, two surfaces that overlap are one. */
static const double no_length = 1e-9;
/* Beyond it the matrix would not fit a machine. */
static const size_t machine_panels = 20000;

void
mesh_clear (Mesh *self)
{
  stations_clear (&self->stations);
  free (self->surfaces);
  free (self->strips);
  free (self->slab);
  free (self->edges);
  free (self->strip_counts);
  *self = (Mesh) { 0 };
}

static CoreStatus
share_out_strips (Mesh *self, size_t surface_count, LatticeSpacing kind)
{
  const Stations *stations = &self->stations;

  if (!stations_reserve (&self->strip_counts, &self->count_room, stations->end_count, sizeof *self->strip_counts))
    return CORE_NO_MEMORY;
  spacing_share_out (stations->ends, stations->end_count, kind, stations->wishes, surface_count, self->strip_counts);
  return CORE_OK;
}

static size_t
strips_before_end (const Mesh *self, size_t end)
{
  size_t sum = 0;

  for (size_t i = 0; i < end; i++)
    sum += (size_t) self->strip_counts[i];
  return sum;
}

/* The common edges and control stations; edges first in the memory, then controls, then what the filling needs. */
static CoreStatus
fill_edges (Mesh *self, LatticeSpacing kind)
{
  Stations *stations = &self->stations;
  const size_t count = strips_before_end (self, stations->end_count - 1) + 1;
  const Spacing spacing = { .ends = stations->ends, .strips = self->strip_counts, .end_count = stations->end_count,
                            .kinks = stations->kinks, .kink_count = stations->kink_count, .kind = kind };

  if (!stations_reserve (&self->edges, &self->edge_room, 3 * count, sizeof *self->edges))
    return CORE_NO_MEMORY;
  spacing_fill (&spacing, self->edges + 2 * count, self->edges, self->edges + count);
  return CORE_OK;
}

static CoreStatus
make_room (Mesh *self, size_t surface_count, size_t most_panels)
{
  size_t strips = 0, panels = 0;

  if (!stations_reserve (&self->surfaces, &self->surface_room, surface_count, sizeof *self->surfaces))
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < surface_count; i++)
    {
      const SpacingWish *wish = &self->stations.wishes[i];
      const size_t chordwise = (size_t) self->stations.spans[i].chordwise;
      const size_t own = strips_before_end (self, wish->last) - strips_before_end (self, wish->first);

      self->surfaces[i] = (MeshSurface) { .strip = strips, .strip_count = own, .panel = panels,
                                          .panel_count = own * chordwise };
      strips += own;
      panels += own * chordwise;
    }
  if (panels > (most_panels ? most_panels : machine_panels))
    return CORE_TOO_MANY;
  if (!stations_reserve (&self->strips, &self->strip_room, strips, sizeof *self->strips)
      || !stations_reserve (&self->slab, &self->slab_room, 7 * panels, sizeof *self->slab))
    return CORE_NO_MEMORY;
  self->surface_count = surface_count;
  self->strip_count = strips;
  self->panel_count = panels;
  self->inner_x = self->slab;
  self->outer_x = self->slab + panels;
  self->x = self->slab + 2 * panels;
  self->y = self->slab + 3 * panels;
  self->z = self->slab + 4 * panels;
  self->ny = self->slab + 5 * panels;
  self->nz = self->slab + 6 * panels;
  return CORE_OK;
}

/* Edges and control of the surface's strip i. Where tips were merged, the surface keeps its own. */
static MeshStrip
strip_between (const Mesh *self, size_t surface, size_t i)
{
  const StationSpan *span = &self->stations.spans[surface];
  const size_t at = strips_before_end (self, self->stations.wishes[surface].first) + i;
  const size_t edge_count = strips_before_end (self, self->stations.end_count - 1) + 1;
  const double inner = i == 0 ? span->root : self->edges[at];
  const double outer = i + 1 == self->surfaces[surface].strip_count ? span->tip : self->edges[at + 1];
  const double part = (self->edges[edge_count + at] - self->edges[at]) / (self->edges[at + 1] - self->edges[at]);

  return (MeshStrip) { .surface = surface, .inner_y = inner, .outer_y = outer, .control_y = inner + part * (outer - inner) };
}

static void
raise_strip (MeshStrip *strip, const LatticeSurface *surface, double root)
{
  double slope;

  strip->inner_z = station_height (surface, root, strip->inner_y);
  strip->outer_z = station_height (surface, root, strip->outer_y);
  slope = (strip->outer_z - strip->inner_z) / (strip->outer_y - strip->inner_y);
  strip->control_z = strip->inner_z + slope * (strip->control_y - strip->inner_y);
  strip->cosine = 1 / sqrt (1 + slope * slope);
  strip->sine = slope * strip->cosine;
}

/* Leading and trailing edge are those of the outline at the control station; the panels' straight edges go through them
 * with the slope of the outline's chord over the strip. Vortices that ended on the outline itself would at a round tip
 * not lie in one plane panel with the control points, and could run through one. */
static CoreStatus
fill_panels (Mesh *self, MeshStrip *strip, const LatticeSurface *surface)
{
  const double width = strip->outer_y - strip->inner_y, inside = cut_inside * width;
  StationCut inner, middle, outer;
  CoreStatus status;

  if ((status = planform_cut (surface->outline, surface->sides, strip->control_y, &middle))
      || (status = planform_cut (surface->outline, surface->sides, strip->inner_y + inside, &inner))
      || (status = planform_cut (surface->outline, surface->sides, strip->outer_y - inside, &outer)))
    return status;
  strip->leading_x = middle.leading_x;
  strip->trailing_x = middle.trailing_x;
  if (!(strip->trailing_x - strip->leading_x > no_length * self->span))
    return CORE_SINGULAR;
  for (size_t i = 0; i < strip->panel_count; i++)
    {
      const size_t panel = strip->panel + i;
      const double quarter = (i + 0.25) / strip->panel_count, three_quarters = (i + 0.75) / strip->panel_count;
      const double chord = strip->trailing_x - strip->leading_x, vortex_x = strip->leading_x + quarter * chord;
      const double slope = ((1 - quarter) * (outer.leading_x - inner.leading_x)
                            + quarter * (outer.trailing_x - inner.trailing_x)) / (width - 2 * inside);

      self->inner_x[panel] = vortex_x + slope * (strip->inner_y - strip->control_y);
      self->outer_x[panel] = vortex_x + slope * (strip->outer_y - strip->control_y);
      self->x[panel] = strip->leading_x + three_quarters * chord;
      self->y[panel] = strip->control_y;
      self->z[panel] = strip->control_z;
      self->ny[panel] = -strip->sine;
      self->nz[panel] = strip->cosine;
    }
  return CORE_OK;
}

static CoreStatus
fill_surface (Mesh *self, size_t index, const LatticeSurface *surface)
{
  const MeshSurface *mine = &self->surfaces[index];
  const StationSpan *span = &self->stations.spans[index];
  const double root = surface->sides == PLANFORM_OPEN ? span->root : fmax (0, outline_bounds (surface->outline).min.y);
  AreaMoments moments;
  CoreStatus status = planform_moments (surface->outline, surface->sides, &moments);

  if (status)
    return status;
  self->surfaces[index].area = moments.area;
  for (size_t i = 0; i < mine->strip_count && !status; i++)
    {
      MeshStrip strip = strip_between (self, index, i);

      strip.panel_count = (size_t) span->chordwise;
      strip.panel = mine->panel + i * strip.panel_count;
      raise_strip (&strip, surface, root);
      status = fill_panels (self, &strip, surface);
      self->strips[mine->strip + i] = strip;
    }
  return status;
}

/* Two surfaces one above the other nearer than this part of a panel's length are one to a lattice: the vortices of the one run past
 * the control points of the other at a distance that the panels cannot resolve, and what comes out is no figure. */
static const double too_near = 1.0 / 3;

static double
panel_length (const MeshStrip *strip)
{
  return (strip->trailing_x - strip->leading_x) / strip->panel_count;
}

/* Whether two strips stand over the same stations and the same places along the chord. */
static bool
strips_overlap (const MeshStrip *a, const MeshStrip *b, double tolerance)
{
  const double from = fmax (a->leading_x, b->leading_x), to = fmin (a->trailing_x, b->trailing_x);

  return a->surface != b->surface && fabs (a->control_y - b->control_y) < (a->outer_y - a->inner_y) / 4 && to - from > tolerance;
}

/* Whether two strips over the same stations lie one in the other. */
static bool
strips_coincide (const MeshStrip *a, const MeshStrip *b, double tolerance)
{
  const double apart = fmax (tolerance, too_near * fmin (panel_length (a), panel_length (b)));

  return strips_overlap (a, b, tolerance) && fabs (a->control_z - b->control_z) < apart;
}

static CoreStatus
check_apart (const Mesh *self)
{
  for (size_t i = 0; i < self->strip_count; i++)
    for (size_t j = i + 1; j < self->strip_count; j++)
      if (strips_coincide (&self->strips[i], &self->strips[j], no_length * self->span))
        return CORE_SINGULAR;
  return CORE_OK;
}

/* Two surfaces over each other nearer than this part of the shorter chord see each other's single vortices: they get more panels along
 * the chord, in proportion as they are nearer, up to so many times those of the first surface. */
static const double close_gap = 0.75, finest = 8.0 / 3;

/* How near the surface comes to another that it overlaps, in parts of the shorter chord; INFINITY where it overlaps none. */
static double
closest_gap (const Mesh *self, size_t surface)
{
  const MeshSurface *mine = &self->surfaces[surface];
  double closest = INFINITY;

  for (size_t i = mine->strip; i < mine->strip + mine->strip_count; i++)
    for (size_t j = 0; j < self->strip_count; j++)
      {
        const MeshStrip *a = &self->strips[i], *b = &self->strips[j];
        const double chord = fmin (a->trailing_x - a->leading_x, b->trailing_x - b->leading_x);

        if (strips_overlap (a, b, no_length * self->span))
          closest = fmin (closest, fabs (a->control_z - b->control_z) / chord);
      }
  return closest;
}

/* Whether any surface is to be laid out anew. Where there is no room for more panels they stay as they are. */
static bool
refine_close_surfaces (Mesh *self, size_t most_panels)
{
  StationSpan *spans = self->stations.spans;
  const int usual = spans[0].chordwise;
  size_t panels = 0;

  for (size_t i = 0; i < self->surface_count; i++)
    {
      const double times = fmin (close_gap / closest_gap (self, i), finest);

      spans[i].finer = times > 1 ? (int) fmax (ceil (usual * times), spans[i].chordwise) : spans[i].chordwise;
      panels += self->surfaces[i].strip_count * (size_t) spans[i].finer;
    }
  if (panels == self->panel_count || panels > (most_panels ? most_panels : machine_panels))
    return false;
  for (size_t i = 0; i < self->surface_count; i++)
    spans[i].chordwise = spans[i].finer;
  return true;
}

static CoreStatus
lay_out (Mesh *self, const LatticeSurface surfaces[], size_t count, size_t most_panels)
{
  CoreStatus status = make_room (self, count, most_panels);

  for (size_t i = 0; i < count && !status; i++)
    status = fill_surface (self, i, &surfaces[i]);
  return status;
}

/* Even strips are those of published tables, and stay as they are asked for. */
CoreStatus
mesh_build (Mesh *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, int coarseness)
{
  CoreStatus status;

  if ((status = stations_gather (&self->stations, surfaces, count, options, coarseness))
      || (status = share_out_strips (self, count, options.spacing)) || (status = fill_edges (self, options.spacing)))
    return status;
  self->span = 2 * self->stations.ends[self->stations.end_count - 1];
  if ((status = lay_out (self, surfaces, count, options.most_panels)))
    return status;
  if (options.spacing == LATTICE_COSINE && refine_close_surfaces (self, options.most_panels)
      && (status = lay_out (self, surfaces, count, options.most_panels)))
    return status;
  return check_apart (self);
}
