#include "plan/trace.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "plan/trace-aside.h"
#include "plan/trace-ends.h"
#include "plan/trace-fit.h"
#include "plan/trace-round.h"
#include "plan/trace-run.h"
#include "plan/trace-spur.h"
#include "plan/wiggles.h"

/* mm, and of a click's deviation: an outline that passes a click by more than both took another line. */
static const double ASTRAY = 1.2, ASTRAY_SIGMAS = 3;
/* mm */
static const double TOLERANCE = 0.07, POLYLINE_STEP = 0.4;
/* Even where no line is to be seen the path counts for something, else nothing would hold a curve across a long gap. */
static const double LEAST_WEIGHT = 0.01;

/* The followed line in the view's own axes. */
typedef struct {
  Point *places;
  double *weights, *along;
  size_t count;
  bool is_cut;               /* its last place is the corner of a cut that goes straight across to the axis */
} Measured;

static void
measured_clear (Measured *self)
{
  free (self->places);
  free (self->weights);
  free (self->along);
}

static Point
to_own (const TraceRequest *request, Point px)
{
  return axis_frame_own (&request->frame, mapping_to_mm (request->mapping, px));
}

static double
mm_per_px (const TraceRequest *request)
{
  double mm = 0, px = 0;

  for (size_t i = 1; i < request->click_count; i++)
    {
      mm += point_distance (to_own (request, request->clicks[i]), to_own (request, request->clicks[i - 1]));
      px += point_distance (request->clicks[i], request->clicks[i - 1]);
    }
  return mm / px;
}

/* Whether it was clicked the way an outline runs. */
static bool
runs_forward (const TraceRequest *request, const FollowedLine *line)
{
  double area = 0;

  if (!request->goes_round)
    return to_own (request, line->places[0]).x <= to_own (request, line->places[line->count - 1]).x;
  for (size_t i = 1; i < line->count; i++)
    {
      const Point from = to_own (request, line->places[i - 1]), to = to_own (request, line->places[i]);
      area += from.x * to.y - to.x * from.y;
    }
  return area <= 0;
}

static void
finish_ends (const TraceRequest *request, Measured *made)
{
  const size_t last = made->count - 1;

  if (request->goes_round)
    made->places[0] = made->places[last] = point_mix (made->places[0], made->places[last], 0.5);
  else if (request->ends_on_axis)
    made->count = carry_ends_to_station (made->places, made->weights, made->count, request->root);
  if (request->is_body && request->ends_on_axis)
    made->count = leave_out_cut (made->places, made->weights, made->count, request->root, &made->is_cut);
}

static CoreStatus
measure (const FollowedLine *line, const TraceRequest *request, Measured *made)
{
  const size_t room = line->count + 2, last = line->count - 1;
  Measured self = { .places = malloc (room * sizeof *self.places), .weights = malloc (room * sizeof *self.weights),
                    .along = malloc (room * sizeof *self.along), .count = line->count };

  *made = self;
  if (!self.places || !self.weights || !self.along)
    return CORE_NO_MEMORY;
  const bool forward = runs_forward (request, line);
  for (size_t i = 0; i <= last; i++)
    {
      const size_t from = forward ? i : last - i;
      self.places[i] = to_own (request, line->places[from]);
      self.weights[i] = fmax (line->weights[from], LEAST_WEIGHT);
      if (!point_is_finite (self.places[i]))
        return CORE_OUT_OF_RANGE;
    }
  finish_ends (request, made);
  drawn_run_lengths (made->places, made->count, made->along);
  const DrawnRun run = { .places = made->places, .weights = made->weights, .along = made->along, .count = made->count };
  return distrust_wiggles (&run, made->weights) ? CORE_OK : CORE_NO_MEMORY;
}

/* The cut itself is a straight line: so short a one no fit would find. */
static CoreStatus
add_cut (Outline **outline, double root)
{
  const size_t count = outline_segment_count (*outline);
  const Point corner = outline_node (*outline, count);
  Segment *segments = malloc ((count + 1) * sizeof *segments);
  NodeKind *kinds = malloc ((count + 2) * sizeof *kinds);
  Outline *made = NULL;
  CoreStatus status = segments && kinds ? CORE_OK : CORE_NO_MEMORY;

  for (size_t i = 0; !status && i < count; i++)
    {
      segments[i] = *outline_segment (*outline, i);
      kinds[i] = outline_node_kind (*outline, i);
    }
  if (!status)
    {
      segments[count] = segment_line ((Point) { corner.x, root });
      kinds[count] = kinds[count + 1] = NODE_CORNER;
      status = outline_new (outline_node (*outline, 0), segments, count + 1, kinds, &made);
    }
  if (!status)
    {
      outline_unref (*outline);
      *outline = made;
    }
  free (segments);
  free (kinds);
  return status;
}

static CoreStatus
draw_polyline (const TraceRequest *request, Trace *trace)
{
  const Outline *outline = trace->outline;
  size_t room = 1;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    room += (size_t) ceil (3 * segment_length (outline_node (outline, i), outline_segment (outline, i)) / POLYLINE_STEP) + 1;
  trace->polyline = malloc (room * sizeof *trace->polyline);
  trace->polyline_px = malloc (room * sizeof *trace->polyline_px);
  if (!trace->polyline || !trace->polyline_px)
    return CORE_NO_MEMORY;
  trace->polyline[trace->count++] = outline_node (outline, 0);
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Point from = outline_node (outline, i);
      const Segment *segment = outline_segment (outline, i);
      const size_t steps = (size_t) ceil (3 * segment_length (from, segment) / POLYLINE_STEP) + 1;
      for (size_t step = 1; step <= steps; step++)
        trace->polyline[trace->count++] = segment_at (from, segment, (double) step / (double) steps);
    }
  for (size_t i = 0; i < trace->count; i++)
    trace->polyline_px[i] = mapping_to_px (request->mapping, axis_frame_paper (&request->frame, trace->polyline[i]));
  return CORE_OK;
}

/* How the line lies about what was made of it. */
static void
look_back (const DrawnRun *run, Trace *trace)
{
  double squares = 0, weights = 0, lost = 0;

  for (size_t i = 0; i < run->count; i++)
    {
      size_t segment;
      double t;
      if (run->weights[i] > LEAST_WEIGHT)
        squares += run->weights[i] * pow (outline_nearest (trace->outline, run->places[i], &segment, &t), 2);
      else
        lost++;
      weights += run->weights[i];
    }
  trace->sigma = weights > 0 ? sqrt (squares / weights) : NAN;
  trace->lost = lost / (double) run->count;
}

static bool
is_followed (const TraceRequest *request, size_t click)
{
  return !request->drawn || (click > 0 && !request->drawn[click - 1]) || (click + 1 < request->click_count && !request->drawn[click]);
}

static void
look_at_clicks (const TraceRequest *request, Trace *trace)
{
  for (size_t i = 0; i < request->click_count; i++)
    {
      const Point click = to_own (request, request->clicks[i]);
      size_t segment;
      double t;
      const double off = outline_nearest (trace->outline, click, &segment, &t);
      if (is_followed (request, i) && off > trace->astray)
        {
          trace->astray = off;
          trace->astray_at = click;
        }
    }
}

double
trace_astray (double mm, double click_sigma)
{
  return mm > fmax (ASTRAY, ASTRAY_SIGMAS * click_sigma) ? mm : 0;
}

double
trace_usual_tolerance (double mm_per_px)
{
  return fmax (TOLERANCE, mm_per_px / 2);
}

static CoreStatus
follow_round (const Ink *ink, const TraceRequest *request, double mm_a_px, FollowedLine *line)
{
  TraceRequest ready = *request;
  RoundClicks clicks;
  CoreStatus status = round_clicks (ink, request, mm_a_px, &clicks);

  if (status)
    return status;
  ready.clicks = clicks.clicks;
  ready.drawn = clicks.drawn;
  ready.click_count = clicks.count;
  status = trace_run (ink, &ready, mm_a_px, line);
  round_clicks_clear (&clicks);
  return status;
}

CoreStatus
trace_outline (const Ink *ink, const TraceRequest *request, Trace *made)
{
  Trace trace = { .mm_per_px = mm_per_px (request) };
  FollowedLine line = { 0 };
  Measured measured = { 0 };

  if (!(trace.mm_per_px > 0) || !isfinite (trace.mm_per_px))
    return CORE_OUT_OF_RANGE;
  CoreStatus status = request->goes_round && request->click_count > 3 ? follow_round (ink, request, trace.mm_per_px, &line)
                                                                      : trace_run (ink, request, trace.mm_per_px, &line);
  if (!status)
    status = trace_look_aside (request, &line, &trace);
  if (!status)
    status = measure (&line, request, &measured);
  const DrawnRun run = { .places = measured.places, .weights = measured.weights, .along = measured.along, .count = measured.count };
  const double tolerance = isnan (request->tolerance) ? trace_usual_tolerance (trace.mm_per_px) : request->tolerance;
  if (!status)
    status = trace_fit (&run, measured.places, !request->goes_round, tolerance, &trace.outline);
  if (!status && measured.is_cut && outline_node (trace.outline, outline_segment_count (trace.outline)).y > request->root)
    status = add_cut (&trace.outline, request->root);
  if (!status)
    status = draw_polyline (request, &trace);
  if (!status && request->goes_round)
    status = trace_look_for_spur (&trace);
  if (!status)
    {
      look_back (&run, &trace);
      look_at_clicks (request, &trace);
    }
  measured_clear (&measured);
  followed_line_clear (&line);
  if (status)
    trace_clear (&trace);
  else
    *made = trace;
  return status;
}

void
trace_clear (Trace *self)
{
  if (self->outline)
    outline_unref (self->outline);
  free (self->polyline);
  free (self->polyline_px);
  *self = (Trace) { 0 };
}
