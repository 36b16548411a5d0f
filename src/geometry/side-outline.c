#include "geometry/drawn-line.h"

static Segment
turned_about (const Segment *segment)
{
  Segment turned = *segment;

  turned.to = (Point) { segment->to.y, segment->to.x };
  turned.control1 = (Point) { segment->control1.y, segment->control1.x };
  turned.control2 = (Point) { segment->control2.y, segment->control2.x };
  return turned;
}

/* The foremost place of the run: of several the uppermost, so that a flat nose begins above. */
typedef struct { size_t segment; double t; Point place; } Foremost;

static void
consider (Foremost *best, const Run *run, size_t segment, double t)
{
  const Point place = segment_at (run_node (run, segment), &run->segments[segment], t);

  if (place.x < best->place.x || (place.x == best->place.x && place.y > best->place.y))
    *best = (Foremost) { segment, t, place };
}

static Foremost
find_foremost (const Run *run)
{
  Foremost best = { .place = { INFINITY, 0 } };

  for (size_t i = 0; i < run->count; i++)
    {
      const Point from = run_node (run, i);
      const Segment turned = turned_about (&run->segments[i]);
      double t[2];
      const size_t turns = segment_y_turns ((Point) { from.y, from.x }, &turned, t);
      consider (&best, run, i, 0);
      for (size_t k = 0; k < turns; k++)
        consider (&best, run, i, t[k]);
    }
  return best;
}

/* Twice the area on the left of its way, x to the right and y up; good enough to tell which way round it runs. */
static double
area_to_the_left (const Run *run)
{
  enum { STEPS = 8 };
  double area = 0;

  for (size_t i = 0; i < run->count; i++)
    for (int k = 0; k < STEPS; k++)
      {
        const Point from = run_node (run, i);
        const Point a = segment_at (from, &run->segments[i], (double) k / STEPS);
        const Point b = segment_at (from, &run->segments[i], (double) (k + 1) / STEPS);
        area += (a.x - run->start.x) * (b.y - run->start.y) - (b.x - run->start.x) * (a.y - run->start.y);
      }
  return area;
}

static CoreStatus
begin_at_the_nose (Run *run)
{
  const Foremost nose = find_foremost (run);
  CoreStatus status = nose.t > 0 ? run_cut (run, nose.segment, nose.t) : CORE_OK;

  if (!status)
    status = run_begin_at (run, nose.segment + (nose.t > 0 ? 1 : 0));
  if (!status && area_to_the_left (run) > 0)
    run_reverse (run);
  return status;
}

CoreStatus
side_outline_make (const DrawnLine *line, Outline **made)
{
  Outline *outline = NULL;
  Run run;
  CoreStatus status = run_begin (&run, line);

  if (!status && !run.closed)
    status = CORE_OPEN;
  if (!status)
    status = begin_at_the_nose (&run);
  if (!status)
    {
      run_shift (&run, (Point) { -run.start.x, -(run.box.min.y + run.box.max.y) / 2 });
      status = outline_new (run.start, run.segments, run.count, NULL, &outline);
    }
  if (!status)
    status = outline_check (outline, NULL);
  run_clear (&run);
  if (status == CORE_OK || status == CORE_MULTI_VALUED)
    {
      *made = outline;
      return CORE_OK;
    }
  outline_unref (outline);
  return status;
}
