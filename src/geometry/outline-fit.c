#include "geometry/outline-fit.h"

enum { SAMPLES = 48, ROUNDS = 40 };

/* Of the pair's size: a segment this near to both is the one that they were cut from. */
static const double SAME_SHAPE = 1e-7;

typedef struct {
  Point places[SAMPLES + 1];
  double t[SAMPLES + 1];      /* where on the fitted curve each is nearest */
  double size;
} Samples;

static Samples
samples_of (const Stretch *first, const Stretch *second)
{
  Samples samples = { .size = point_distance (first->from, second->segment.to) };
  double along = 0;

  for (size_t i = 0; i <= SAMPLES; i++)
    {
      const double t = 2.0 * (double) i / SAMPLES;
      samples.places[i] = t <= 1 ? stretch_at (first, t) : stretch_at (second, t - 1);
      if (i > 0)
        along += point_distance (samples.places[i], samples.places[i - 1]);
      samples.t[i] = along;
    }
  for (size_t i = 0; i <= SAMPLES; i++)
    samples.t[i] = along > 0 ? samples.t[i] / along : (double) i / SAMPLES;
  samples.size = fmax (samples.size, along);
  return samples;
}

static double
farthest (const Samples *samples, Point from, const Segment *fitted)
{
  double farthest = 0;

  for (size_t i = 0; i <= SAMPLES; i++)
    {
      double distance;
      segment_nearest (from, fitted, samples->places[i], &distance);
      farthest = fmax (farthest, distance);
    }
  return farthest;
}

/* A curve cut at t has handles at its cut whose lengths are as t to 1 - t, and outer handles shortened by t and 1 - t. */
static Segment
curve_before_the_cut (const Stretch *first, const Stretch *second)
{
  const Segment *a = &first->segment, *b = &second->segment;
  const double before = point_distance (a->control2, a->to), after = point_distance (b->control1, a->to);
  const double t = fmin (fmax (before / (before + after), 1e-3), 1 - 1e-3);

  return segment_curve (point_add (first->from, point_scale (point_sub (a->control1, first->from), 1 / t)),
                        point_add (b->to, point_scale (point_sub (b->control2, b->to), 1 / (1 - t))), b->to);
}

static bool
find_what_was_cut (const Samples *samples, const Stretch *first, const Stretch *second, Segment *whole)
{
  if (first->segment.kind != second->segment.kind)
    return false;
  if (first->segment.kind == SEGMENT_LINE)
    *whole = segment_line (second->segment.to);
  else if (first->segment.kind == SEGMENT_ARC)
    *whole = segment_arc (first->centre, first->rx, first->ry, second->segment.to);
  else
    *whole = curve_before_the_cut (first, second);
  return first->segment.kind == SEGMENT_LINE || farthest (samples, first->from, whole) <= SAME_SHAPE * samples->size;
}

/* Least squares for the two handle lengths with the parameters held: normal equations of the two unknowns. */
static bool
solve_handles (const Samples *samples, const Point ends[2], const Point along[2], double length[2])
{
  double aa = 0, ab = 0, bb = 0, ra = 0, rb = 0;

  for (size_t i = 0; i <= SAMPLES; i++)
    {
      const double t = samples->t[i], s = 1 - t;
      const Point a = point_scale (along[0], 3 * s * s * t), b = point_scale (along[1], -3 * s * t * t);
      const Point fixed = point_mix (ends[0], ends[1], t * t * (3 - 2 * t)), rest = point_sub (samples->places[i], fixed);

      aa += point_dot (a, a);
      ab += point_dot (a, b);
      bb += point_dot (b, b);
      ra += point_dot (a, rest);
      rb += point_dot (b, rest);
    }
  const double determinant = aa * bb - ab * ab;
  if (!(determinant > 1e-12 * aa * bb))
    return false;
  length[0] = (ra * bb - rb * ab) / determinant;
  length[1] = (rb * aa - ra * ab) / determinant;
  return length[0] > 0 && length[1] > 0;
}

/* One of Newton's steps for each place towards the nearest parameter. */
static void
refine_parameters (Samples *samples, const Stretch *curve)
{
  for (size_t i = 1; i < SAMPLES; i++)
    {
      const double t = samples->t[i];
      const Point miss = point_sub (stretch_at (curve, t), samples->places[i]), slope = stretch_slope (curve, t);
      const Point bend = { 2 * curve->power[2].x + 6 * curve->power[3].x * t, 2 * curve->power[2].y + 6 * curve->power[3].y * t };
      const double curvature = point_dot (slope, slope) + point_dot (miss, bend);

      if (curvature > 0)
        samples->t[i] = fmin (fmax (t - point_dot (miss, slope) / curvature, 0), 1);
    }
}

static Segment
fit_curve (Samples *samples, const Stretch *first, const Stretch *second)
{
  const Point ends[2] = { first->from, second->segment.to };
  const Point along[2] = { stretch_leaves (first), stretch_arrives (second) };
  double length[2] = { samples->size / 3, samples->size / 3 };
  Segment fitted = segment_line (ends[1]);

  for (int i = 0; i < ROUNDS; i++)
    {
      const bool solved = solve_handles (samples, ends, along, length);

      if (!solved)
        length[0] = length[1] = point_distance (ends[0], ends[1]) / 3;
      fitted = segment_curve (point_add (ends[0], point_scale (along[0], length[0])),
                              point_sub (ends[1], point_scale (along[1], length[1])), ends[1]);
      if (!solved)
        break;
      const Stretch curve = stretch_make (ends[0], &fitted);
      refine_parameters (samples, &curve);
    }
  return fitted;
}

Segment
segment_fitted (const Stretch *first, const Stretch *second)
{
  Samples samples = samples_of (first, second);
  Segment whole;

  if (find_what_was_cut (&samples, first, second, &whole))
    return whole;
  return fit_curve (&samples, first, second);
}
