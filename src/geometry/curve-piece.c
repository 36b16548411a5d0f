#include "geometry/curve-piece.h"

#include <math.h>
#include "geometry/stretch.h"

enum { SAMPLES = 160, ROUNDS = 8, NEWTON = 3 };
/* A window in which less is trusted says little: a twentieth of its miss counts. */
static const double LEAST_TRUST = 0.3, LITTLE = 0.05;
/* Handles in parts of the chord: no shorter, no longer (a loop), and drawn to a third of it as by so much of the places' weight, since
 * nearly straight pieces leave them open. */
static const double SHORTEST_HANDLE = 0.05, LONGEST_HANDLE = 1.2, DRAWN = 1e-5;

/* The run's places between two nodes, thinned out, and where on the curve each is nearest. */
typedef struct {
  Point places[SAMPLES];
  double weights[SAMPLES], t[SAMPLES];
  size_t count;
} Samples;

static void
take_samples (const DrawnRun *run, const CurvePiece *piece, Samples *samples)
{
  const size_t first = drawn_run_at (run, piece->from), last = drawn_run_at (run, piece->to);
  const size_t each = (last - first) / SAMPLES + 1;

  samples->count = 0;
  for (size_t i = first; i <= last && samples->count < SAMPLES; i += each)
    {
      samples->places[samples->count] = run->places[i];
      samples->weights[samples->count] = run->weights[i];
      samples->t[samples->count++] = fmin (fmax ((run->along[i] - piece->from) / fmax (piece->to - piece->from, 1e-12), 0), 1);
    }
}

/* Least squares for the two handle lengths with the feet held: normal equations of the two unknowns. */
static void
solve_handles (const Samples *samples, const CurvePiece *piece, double length[2])
{
  const double chord = point_distance (piece->begin.place, piece->end.place);
  double aa = 1e-30, ab = 0, bb = 1e-30, ra = 0, rb = 0;

  for (size_t i = 0; i < samples->count; i++)
    {
      const double t = samples->t[i], s = 1 - t, weight = samples->weights[i];
      const Point a = point_scale (piece->begin.direction, 3 * s * s * t), b = point_scale (piece->end.direction, -3 * s * t * t);
      const Point fixed = point_mix (piece->begin.place, piece->end.place, t * t * (3 - 2 * t));
      const Point rest = point_sub (samples->places[i], fixed);

      aa += weight * (point_dot (a, a) + DRAWN);
      ab += weight * point_dot (a, b);
      bb += weight * (point_dot (b, b) + DRAWN);
      ra += weight * (point_dot (a, rest) + DRAWN * chord / 3);
      rb += weight * (point_dot (b, rest) + DRAWN * chord / 3);
    }
  const double determinant = aa * bb - ab * ab;
  length[0] = fmin (fmax ((ra * bb - rb * ab) / determinant, SHORTEST_HANDLE * chord), LONGEST_HANDLE * chord);
  length[1] = fmin (fmax ((rb * aa - ra * ab) / determinant, SHORTEST_HANDLE * chord), LONGEST_HANDLE * chord);
}

static double
nearer_foot (const Stretch *curve, Point place, double t)
{
  const Point miss = point_sub (stretch_at (curve, t), place), slope = stretch_slope (curve, t);
  const Point bend = { 2 * curve->power[2].x + 6 * curve->power[3].x * t, 2 * curve->power[2].y + 6 * curve->power[3].y * t };
  const double curvature = point_dot (slope, slope) + point_dot (miss, bend);

  return curvature > 0 ? fmin (fmax (t - point_dot (miss, slope) / curvature, 0), 1) : t;
}

Segment
curve_piece_cubic (const DrawnRun *run, const CurvePiece *piece)
{
  Segment curve = segment_line (piece->end.place);
  Samples samples;

  take_samples (run, piece, &samples);
  for (int round = 0; round < ROUNDS; round++)
    {
      double length[2];
      solve_handles (&samples, piece, length);
      curve = segment_curve (point_add (piece->begin.place, point_scale (piece->begin.direction, length[0])),
                             point_sub (piece->end.place, point_scale (piece->end.direction, length[1])), piece->end.place);
      const Stretch stretch = stretch_make (piece->begin.place, &curve);
      for (size_t i = 0; i < samples.count; i++)
        samples.t[i] = nearer_foot (&stretch, samples.places[i], samples.t[i]);
    }
  return curve;
}

/* How far the place lies to the left of the curve, and where its foot is (from where the last one was). */
static double
signed_miss (const Stretch *curve, Point place, double *t)
{
  for (int i = 0; i < NEWTON; i++)
    *t = nearer_foot (curve, place, *t);
  const Point slope = stretch_slope (curve, *t);
  return point_cross (slope, point_sub (place, stretch_at (curve, *t))) / fmax (point_length (slope), 1e-12);
}

double
curve_piece_miss (const DrawnRun *run, const CurvePiece *piece, const Segment *segment, double window)
{
  const Stretch curve = stretch_make (piece->begin.place, segment);
  const size_t last = drawn_run_at (run, piece->to);
  double sum = 0, weight = 0, begun = piece->from, worst = 0;
  size_t count = 0;

  for (size_t i = drawn_run_at (run, piece->from); i <= last; i++)
    {
      double t = fmin (fmax ((run->along[i] - piece->from) / fmax (piece->to - piece->from, 1e-12), 0), 1);
      sum += run->weights[i] * signed_miss (&curve, run->places[i], &t);
      weight += run->weights[i];
      count++;
      if (run->along[i] - begun < window && i < last)
        continue;
      if (weight > 0)
        worst = fmax (worst, fabs (sum / weight) * (weight > LEAST_TRUST * (double) count ? 1 : LITTLE));
      begun = run->along[i];
      sum = weight = 0;
      count = 0;
    }
  return worst;
}

double
curve_piece_cost (const DrawnRun *run, const CurvePiece *piece, const Segment *segment)
{
  const Stretch curve = stretch_make (piece->begin.place, segment);
  Samples samples;
  double sum = 0;

  take_samples (run, piece, &samples);
  for (size_t i = 0; i < samples.count; i++)
    sum += samples.weights[i] * pow (signed_miss (&curve, samples.places[i], &samples.t[i]), 2);
  return samples.count ? sum / (double) samples.count * (piece->to - piece->from) : 0;
}
