#include "geometry/drawn-line.h"

#include <stdlib.h>

/* Common practice, no source: shares of the box's larger side, of the box's length, and of the largest chord. */
static const double MEANT_TO_BE_STRAIGHT = 1e-3;
static const double LEAST_ROOT = 0.2;
static const double MOST_ASYMMETRY = 0.03;
static const double STEEPEST_ROOT = 0.1;         /* rise over run of a piece of the root */
static const double MOST_BEHIND_ROOT = 0.01;     /* how much of an open half's width may lie on the other side of its root */
enum { STATIONS = 48 };

static double
hair (const Run *run)
{
  return MEANT_TO_BE_STRAIGHT * fmax (run->box.max.x - run->box.min.x, run->box.max.y - run->box.min.y);
}

static bool
may_meet (Point from, const Segment *segment, double y)
{
  const double handles[] = { segment->kind == SEGMENT_CURVE ? segment->control1.y : from.y,
                             segment->kind == SEGMENT_CURVE ? segment->control2.y : from.y };

  return fmin (fmin (from.y, segment->to.y), fmin (handles[0], handles[1])) <= y
         && fmax (fmax (from.y, segment->to.y), fmax (handles[0], handles[1])) >= y;
}

/* The foremost and the aftmost place at a station. */
static bool
edges_at (const Run *run, double y, double *leading, double *trailing)
{
  *leading = INFINITY;
  *trailing = -INFINITY;
  for (size_t i = 0; i < run->count; i++)
    {
      double t[3];
      const Point from = run_node (run, i);
      const size_t meetings = may_meet (from, &run->segments[i], y) ? segment_at_station (from, &run->segments[i], y, t) : 0;
      for (size_t k = 0; k < meetings; k++)
        {
          const double x = segment_at (from, &run->segments[i], t[k]).x;
          *leading = fmin (*leading, x);
          *trailing = fmax (*trailing, x);
        }
    }
  return *leading <= *trailing;
}

/* Whether both sides of station y are the same, and by how much their chords differ. */
static bool
is_symmetrical (const Run *run, double y, double *asymmetry)
{
  const double half = (run->box.max.y - run->box.min.y) / 2;
  double chord = 0, apart = 0;

  *asymmetry = 0;
  for (int i = 0; i < STATIONS; i++)
    {
      const double out = half * (i + 0.5) / STATIONS;
      double ahead[2], behind[2];
      if (!edges_at (run, y + out, &ahead[0], &behind[0]) || !edges_at (run, y - out, &ahead[1], &behind[1]))
        return false;
      chord = fmax (chord, behind[0] - ahead[0]);
      apart = fmax (apart, fmax (fabs (ahead[0] - ahead[1]), fabs (behind[0] - behind[1])));
      *asymmetry = fmax (*asymmetry, fabs (behind[0] - ahead[0] - behind[1] + ahead[1]));
    }
  return apart <= MOST_ASYMMETRY * chord;
}

/* Whether segment i lies along station y. */
static bool
is_along (const Run *run, size_t i, double y)
{
  const Point from = run_node (run, i), to = run->segments[i].to;
  const Box box = segment_bounds (from, &run->segments[i]);
  const double near = hair (run);

  return box.min.y >= y - near && box.max.y <= y + near && box.max.y - box.min.y <= STEEPEST_ROOT * fabs (to.x - from.x);
}

static double
straight_at (const Run *run, double y)
{
  double length = 0;

  for (size_t i = 0; i < run->count; i++)
    length += is_along (run, i, y) ? fabs (run->segments[i].to.x - run_node (run, i).x) : 0;
  return length;
}

typedef bool (*IsKept) (const Run *run, size_t i, double y);

static bool
is_off_the_root (const Run *run, size_t i, double y)
{
  return !is_along (run, i, y);
}

static bool
is_to_starboard (const Run *run, size_t i, double y)
{
  return segment_at (run_node (run, i), &run->segments[i], 0.5).y > y;
}

/* Keeps what is to be kept of a closed run, which must be one stretch of it, and ends it at the station. */
static CoreStatus
keep_one_stretch (Run *run, IsKept is_kept, double y)
{
  size_t kept = 0, stretches = 0, first = 0;
  CoreStatus status;

  for (size_t i = 0; i < run->count; i++)
    {
      if (!is_kept (run, i, y))
        continue;
      kept++;
      if (is_kept (run, (i + run->count - 1) % run->count, y))
        continue;
      stretches++;
      first = i;
    }
  if (stretches != 1)
    return CORE_OUT_OF_RANGE;
  if ((status = run_begin_at (run, first)))
    return status;
  run->count = kept;
  run_end_at_station (run, y);
  return CORE_OK;
}

static CoreStatus
take_closed (Run *run, bool half_only, double *root, HalfOutline *made)
{
  const double middle = (run->box.min.y + run->box.max.y) / 2;

  if (!half_only && is_symmetrical (run, middle, &made->asymmetry))
    {
      CoreStatus status = run_cut_at_station (run, middle);
      made->drawn = HALF_DRAWN_WHOLE;
      *root = middle;
      return status ? status : keep_one_stretch (run, is_to_starboard, middle);
    }
  made->asymmetry = 0;
  made->drawn = HALF_DRAWN_WITH_ROOT;
  const double inner = straight_at (run, run->box.min.y), outer = straight_at (run, run->box.max.y);
  if (!(fmax (inner, outer) >= LEAST_ROOT * (run->box.max.x - run->box.min.x)))
    return CORE_OUT_OF_RANGE;
  if (outer > inner)
    run_mirror (run);
  *root = run->box.min.y;
  return keep_one_stretch (run, is_off_the_root, *root);
}

static CoreStatus
take_open (Run *run, double *root, HalfOutline *made)
{
  const Point end = run_node (run, run->count);

  made->drawn = HALF_DRAWN_OPEN;
  made->asymmetry = 0;
  if (fabs (end.y - run->start.y) > hair (run))
    return CORE_OPEN;
  *root = (run->start.y + end.y) / 2;
  if (run->box.max.y - *root < *root - run->box.min.y)
    {
      run_mirror (run);
      *root = -*root;
    }
  if (*root - run->box.min.y > MOST_BEHIND_ROOT * (run->box.max.y - *root))
    return CORE_OUT_OF_RANGE;
  run_end_at_station (run, *root);
  return CORE_OK;
}

static CoreStatus
finish (Run *run, double root, HalfOutline *made)
{
  CoreStatus status;

  if (run->start.x > run_node (run, run->count).x)
    run_reverse (run);
  made->root_x = run->start.x;
  run_shift (run, (Point) { -run->start.x, -root });
  if ((status = outline_new (run->start, run->segments, run->count, NULL, &made->outline)))
    return status;
  status = outline_check (made->outline, NULL);
  if (status == CORE_OK || status == CORE_MULTI_VALUED)
    return CORE_OK;
  outline_unref (made->outline);
  return status;
}

CoreStatus
half_outline_make (const DrawnLine *line, HalfOutline *made)
{
  HalfOutline found = { 0 };
  Run run;
  double root = 0;
  CoreStatus status = run_begin (&run, line);

  if (!status)
    status = run.closed ? take_closed (&run, line->half_only, &root, &found) : take_open (&run, &root, &found);
  if (!status)
    status = finish (&run, root, &found);
  run_clear (&run);
  if (!status)
    *made = found;
  return status;
}
