#include "aero/stations.h"

#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include "geometry/ascending.h"

/* Steps to both sides of a station at which an edge's slope is taken, in parts of the span. */
static const double slope_step = 1e-5;
/* A break of less than three degrees is no kink: it costs less than a strip edge out of its place. */
static const double least_kink = 0.05;
/* Tips nearer than a tenth of the outermost strip share one edge; a strip's width there is about 1.2 / n² of the span. */
static const double merged_part = 0.12;
/* More panels along the span or the chord of one surface are a slip of the pen. */
static const int most_wished = 1000;
/* Steeper is no lifting surface seen from above. */
static const double steepest_dihedral = 80 * M_PI / 180;

bool
stations_reserve (void *memory, size_t *room, size_t count, size_t size)
{
  void **place = memory;
  void *made;

  if (count <= *room)
    return true;
  if (count > SIZE_MAX / size || !(made = realloc (*place, count * size)))
    return false;
  *place = made;
  *room = count;
  return true;
}

void
stations_clear (Stations *self)
{
  free (self->spans);
  free (self->wishes);
  free (self->ends);
  free (self->kinks);
  free (self->breaks);
  *self = (Stations) { 0 };
}

double
station_height (const LatticeSurface *surface, double root, double y)
{
  double z = surface->z, from = root, angle = surface->dihedral;

  for (size_t i = 0; i < surface->bend_count && surface->bends[i].station < y; i++)
    {
      const double to = fmax (from, surface->bends[i].station);

      z += tan (angle) * (to - from);
      from = to;
      angle = surface->bends[i].angle;
    }
  return z + tan (angle) * fmax (0, y - from);
}

static bool
angle_is_sound (double angle)
{
  return fabs (angle) <= steepest_dihedral;
}

static CoreStatus
check_surface (const LatticeSurface *surface)
{
  const CoreStatus status = outline_check (surface->outline, NULL);

  if (status && status != CORE_MULTI_VALUED)
    return status;
  if (!isfinite (surface->z) || !isfinite (surface->dihedral) || !isfinite (surface->pressure_ratio))
    return CORE_NOT_FINITE;
  if (!angle_is_sound (surface->dihedral) || surface->pressure_ratio < 0 || surface->spanwise < 0
      || surface->spanwise > most_wished || surface->chordwise < 0 || surface->chordwise > most_wished)
    return CORE_OUT_OF_RANGE;
  for (size_t i = 0; i < surface->bend_count; i++)
    if (!angle_is_sound (surface->bends[i].angle) || !isfinite (surface->bends[i].station))
      return CORE_OUT_OF_RANGE;
  return CORE_OK;
}

/* Further surfaces are smaller: three fifths of the strips and two thirds of the panels along the chord. */
static void
take_surface (Stations *self, size_t index, const LatticeSurface *surface, LatticeOptions options, int coarseness)
{
  const Box box = outline_bounds (surface->outline);
  const int spanwise = index == 0 ? options.spanwise : (3 * options.spanwise + 4) / 5;
  const int chordwise = index == 0 ? options.chordwise : (2 * options.chordwise + 2) / 3;
  const int strips = surface->spanwise ? surface->spanwise : spanwise;
  const int panels = surface->chordwise ? surface->chordwise : chordwise;
  StationSpan *span = &self->spans[index];

  span->root = surface->sides == PLANFORM_OPEN ? fmax (0, box.min.y) : 0;
  span->tip = box.max.y;
  span->chordwise = (panels + coarseness - 1) / coarseness;
  self->wishes[index].strips = (strips + coarseness - 1) / coarseness;
  self->ends[2 * index] = span->root;
  self->ends[2 * index + 1] = span->tip;
}

/* The edge's x just beside y, NaN beyond the surface. */
static void
edges_beside (const LatticeSurface *surface, double y, double edges[2])
{
  StationCut cut;

  edges[0] = edges[1] = NAN;
  if (planform_cut (surface->outline, surface->sides, y, &cut) == CORE_OK)
    {
      edges[0] = cut.leading_x;
      edges[1] = cut.trailing_x;
    }
}

/* By how much the slope of either edge changes at y; a step in the chord is a very great change. */
static double
kink_at (const LatticeSurface *surface, double y, double step)
{
  double before[2], near_before[2], near_after[2], after[2], strength = 0;

  edges_beside (surface, y - step, before);
  edges_beside (surface, y - step / 1024, near_before);
  edges_beside (surface, y + step / 1024, near_after);
  edges_beside (surface, y + step, after);
  for (int i = 0; i < 2; i++)
    {
      const double slopes = (after[i] - near_after[i] - near_before[i] + before[i]) / step;

      strength = fmax (strength, fabs (slopes) + fabs (near_after[i] - near_before[i]) / step);
    }
  return strength;
}

static CoreStatus
add_kink (Stations *self, double station, double strength)
{
  if (!(strength > least_kink))
    return CORE_OK;
  if (!stations_reserve (&self->kinks, &self->kink_room, self->kink_count + 1, sizeof *self->kinks))
    return CORE_NO_MEMORY;
  self->kinks[self->kink_count++] = (SpacingKink) { .station = station, .strength = strength };
  return CORE_OK;
}

static CoreStatus
add_outline_kinks (Stations *self, const LatticeSurface *surface, const StationSpan *span)
{
  const size_t count = planform_breaks (surface->outline, surface->sides, self->breaks, self->break_room);
  const double step = slope_step * span->tip;
  CoreStatus status = CORE_OK;

  if (count > self->break_room)
    {
      if (!stations_reserve (&self->breaks, &self->break_room, count, sizeof *self->breaks))
        return CORE_NO_MEMORY;
      planform_breaks (surface->outline, surface->sides, self->breaks, self->break_room);
    }
  for (size_t i = 0; i < count && !status; i++)
    if (self->breaks[i] > span->root + 2 * step && self->breaks[i] < span->tip - 2 * step)
      status = add_kink (self, self->breaks[i], kink_at (surface, self->breaks[i], step));
  return status;
}

static CoreStatus
add_bends (Stations *self, const LatticeSurface *surface, const StationSpan *span)
{
  double slope = tan (surface->dihedral);
  CoreStatus status = CORE_OK;

  for (size_t i = 0; i < surface->bend_count && !status; i++)
    {
      const double outboard = tan (surface->bends[i].angle);

      if (surface->bends[i].station > span->root && surface->bends[i].station < span->tip)
        status = add_kink (self, surface->bends[i].station, fabs (outboard - slope));
      slope = outboard;
    }
  return status;
}

/* The place in ends of the end that stands for station. */
static size_t
end_of_station (const Stations *self, double station)
{
  size_t end = 0;

  while (end + 1 < self->end_count && self->ends[end + 1] <= station)
    end++;
  return end;
}

static CoreStatus
merge_ends (Stations *self, size_t count)
{
  const double widest = self->ends[2 * count - 1];
  const double apart = merged_part * widest / ((double) self->wishes[0].strips * self->wishes[0].strips);

  self->end_count = 1;
  for (size_t i = 1; i < 2 * count; i++)
    if (self->ends[i] - self->ends[self->end_count - 1] > apart)
      self->ends[self->end_count++] = self->ends[i];
  for (size_t i = 0; i < count; i++)
    {
      self->wishes[i].first = end_of_station (self, self->spans[i].root);
      self->wishes[i].last = end_of_station (self, self->spans[i].tip);
      if (self->wishes[i].first >= self->wishes[i].last)
        return CORE_OUT_OF_RANGE;
    }
  return CORE_OK;
}

CoreStatus
stations_gather (Stations *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, int coarseness)
{
  CoreStatus status;

  if (options.spanwise < 1 || options.spanwise > most_wished || options.chordwise < 1 || options.chordwise > most_wished)
    return CORE_OUT_OF_RANGE;
  if (!stations_reserve (&self->spans, &self->span_room, count, sizeof *self->spans)
      || !stations_reserve (&self->wishes, &self->wish_room, count, sizeof *self->wishes)
      || !stations_reserve (&self->ends, &self->end_room, 2 * count, sizeof *self->ends))
    return CORE_NO_MEMORY;
  self->kink_count = 0;
  for (size_t i = 0; i < count; i++)
    {
      if ((status = check_surface (&surfaces[i])))
        return status;
      take_surface (self, i, &surfaces[i], options, coarseness);
      if ((status = add_outline_kinks (self, &surfaces[i], &self->spans[i]))
          || (status = add_bends (self, &surfaces[i], &self->spans[i])))
        return status;
    }
  qsort (self->ends, 2 * count, sizeof *self->ends, ascending_doubles);
  return merge_ends (self, count);
}
