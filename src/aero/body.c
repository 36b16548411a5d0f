#include "aero/body.h"

#include <math.h>
#include <stdbool.h>

enum { gauss_points = 8, search_steps = 8, search_halvings = 40, most_pieces = 2 * search_steps + 2,
       most_places = 64 };

/* Gauss–Legendre on 0..1, the lower half; the upper mirrors it. Eight places take w² of a quarter-ellipse to 1e-11. */
static const double gauss_place[gauss_points / 2] = {
  0.01985507175123188, 0.10166676129318664, 0.23723379504183550, 0.40828267875217511 };
static const double gauss_weight[gauss_points / 2] = {
  0.05061426814518813, 0.11119051722668724, 0.15685332293894364, 0.18134189168918100 };

/* ∫ w² (1 + upwash) dx so far, and the quadrature's places that still want their flow: asked for many at a time. */
typedef struct {
  BodyFlow flow;
  const void *data;
  double sum;
  double x[most_places], weight[most_places];
  size_t count;
} Integral;

/* What the integral is made over: one segment of the body's outline, as far as it lies in a stretch clear of surfaces. */
typedef struct {
  Point from;
  const Segment *segment;
  double from_x, to_x;          /* -INFINITY ahead of all surfaces, INFINITY behind them */
} Strip;

static void
integral_flush (Integral *integral)
{
  double flow[most_places];

  for (size_t i = 0; i < integral->count; i++)
    flow[i] = 1;
  if (integral->flow && integral->count)
    integral->flow (integral->data, integral->x, integral->count, flow);
  for (size_t i = 0; i < integral->count; i++)
    integral->sum += integral->weight[i] * flow[i];
  integral->count = 0;
}

static void
integral_add (Integral *integral, double x, double weight)
{
  if (integral->count == most_places)
    integral_flush (integral);
  integral->x[integral->count] = x;
  integral->weight[integral->count++] = weight;
}

static double
strip_x (const Strip *strip, double t)
{
  return segment_at (strip->from, strip->segment, t).x;
}

/* Ahead of a surface the flow grows like 1/√distance towards its leading edge; t runs from the end that is nearer like
 * the square of the quadrature's place, which takes the root out. */
static double
piece_parameter (const Strip *strip, const double ends[2], double place, double *stretch)
{
  const double x0 = strip_x (strip, ends[0]), x1 = strip_x (strip, ends[1]);
  const double near = x0 > x1 ? ends[0] : ends[1], length = x0 > x1 ? ends[1] - ends[0] : ends[0] - ends[1];

  if (isinf (strip->to_x))
    {
      *stretch = ends[1] - ends[0];
      return ends[0] + (ends[1] - ends[0]) * place;
    }
  *stretch = fabs (2 * length * place);
  return near + length * place * place;
}

/* A piece that lies clear of surfaces as a whole. */
static void
add_piece (const Strip *strip, const double ends[2], Integral *integral)
{
  for (size_t i = 0; i < gauss_points; i++)
    {
      const size_t mirrored = i < gauss_points / 2 ? i : gauss_points - 1 - i;
      const double place = mirrored == i ? gauss_place[i] : 1 - gauss_place[mirrored];
      double stretch;
      const double t = piece_parameter (strip, ends, place, &stretch);
      const Point at = segment_at (strip->from, strip->segment, t);

      integral_add (integral, at.x,
                    4 * at.y * at.y * segment_slope (strip->from, strip->segment, t).x * gauss_weight[mirrored] * stretch);
    }
}

/* The place between a and b at which the segment passes x; it lies on either side of x at the two. */
static double
strip_crossing (const Strip *strip, double a, double b, double x)
{
  const bool rising = strip_x (strip, a) < x;

  for (int i = 0; i < search_halvings; i++)
    {
      const double middle = (a + b) / 2;

      if ((strip_x (strip, middle) < x) == rising)
        a = middle;
      else
        b = middle;
    }
  return (a + b) / 2;
}

/* The segment's parameters at the stretch's two ends, rising, between 0 and 1; a curve's middle as well, for the quadrature. */
static size_t
strip_pieces (const Strip *strip, double ends[most_pieces + 1])
{
  const double edges[2] = { strip->from_x, strip->to_x };
  const int steps = strip->segment->kind == SEGMENT_LINE ? 1 : search_steps;
  double before = strip->from.x;
  size_t count = 0;

  ends[count++] = 0;
  for (int step = 0; step < steps; step++)
    {
      const double a = step / (double) steps, b = (step + 1) / (double) steps, after = strip_x (strip, b);

      if (2 * step == steps)
        ends[count++] = a;
      for (int edge = 0; edge < 2; edge++)
        {
          const double x = edges[before > after ? 1 - edge : edge];

          if ((before < x) != (after < x))
            ends[count++] = strip_crossing (strip, a, b, x);
        }
      before = after;
    }
  ends[count] = 1;
  return count;
}

static void
add_strip (const Strip *strip, Integral *integral)
{
  double ends[most_pieces + 1];
  size_t count;

  if (strip->segment->kind == SEGMENT_LINE && strip->segment->to.x == strip->from.x)
    return;                     /* a blunt end has no length */
  count = strip_pieces (strip, ends);
  for (size_t i = 0; i < count; i++)
    {
      const double middle = strip_x (strip, (ends[i] + ends[i + 1]) / 2);

      if (middle > strip->from_x && middle < strip->to_x)
        add_piece (strip, ends + i, integral);
    }
}

/* An outline that ends at a blunt nose or tail is open in the wing's sense, and a bare stick's two nodes stand at one station: as good
 * as any here, if only it is long and wide. */
static CoreStatus
body_check (const Outline *outline)
{
  const CoreStatus status = outline_check (outline, NULL);
  const Box box = outline_bounds (outline);

  if (status != CORE_OPEN && status != CORE_MULTI_VALUED && status != CORE_NO_SPAN && status != CORE_NO_AREA)
    return status;
  return box.max.y > 0 && box.max.x > box.min.x ? CORE_OK : CORE_NO_AREA;
}

/* From x aft, past every chord that x lies in. */
static double
behind_chords (const BodyChord chords[], size_t count, double x)
{
  bool moved = true;

  while (moved)
    {
      moved = false;
      for (size_t i = 0; i < count; i++)
        if (chords[i].leading_x <= x && x < chords[i].trailing_x)
          {
            x = chords[i].trailing_x;
            moved = true;
          }
    }
  return x;
}

/* The nearest leading edge behind x; INFINITY without one. */
static double
next_chord (const BodyChord chords[], size_t count, double x)
{
  double nearest = INFINITY;

  for (size_t i = 0; i < count; i++)
    if (chords[i].leading_x > x && chords[i].leading_x < chords[i].trailing_x)
      nearest = fmin (nearest, chords[i].leading_x);
  return nearest;
}

static void
add_stretch (const Outline *outline, double from_x, double to_x, Integral *integral)
{
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Strip strip = { .from = outline_node (outline, i), .segment = outline_segment (outline, i), .from_x = from_x, .to_x = to_x };

      add_strip (&strip, integral);
    }
}

CoreStatus
body_pitching_moment (const Outline *outline, BodyFlow flow, const void *data,
                      const BodyChord chords[], size_t chord_count, double *moment)
{
  const bool backward = outline_node (outline, outline_segment_count (outline)).x < outline_node (outline, 0).x;
  const CoreStatus status = body_check (outline);
  Integral integral = { .flow = flow, .data = data };
  double from_x = -INFINITY, to_x;

  if (status)
    return status;
  do
    {
      from_x = behind_chords (chords, chord_count, from_x);
      to_x = next_chord (chords, chord_count, from_x);
      add_stretch (outline, from_x, to_x, &integral);
      from_x = to_x;
    }
  while (isfinite (to_x));
  integral_flush (&integral);
  if (!isfinite (integral.sum))
    return CORE_NOT_FINITE;
  *moment = M_PI / 2 * (backward ? -integral.sum : integral.sum);
  return CORE_OK;
}
