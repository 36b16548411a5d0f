#include "app/trace-unseen.h"
#include <math.h>
#include "plan/compare.h"

/* mm: how far apart places of the outline are looked at; how near one a line must have been seen; how much at each end of it is not compared,
 * for the axis and the ribs are printed there, too; the shortest run worth showing. */
static const double STEP = 0.5, NEAR = 1.5, AT_ENDS = 8, SHORTEST = 2;

static bool
goes_on (double done, void *data)
{
  return !g_cancellable_is_cancelled (data);
}

static bool
is_seen (const Comparison *comparison, Point place)
{
  for (size_t i = 0; i < comparison->count; i++)
    if (point_distance (comparison->spots[i].drawn, place) <= NEAR)
      return true;
  return false;
}

/* Ends the run that began at place number `from`, or forgets it where it is too short to be worth a word. */
static void
end_run (GArray *runs, guint from)
{
  const Point none = { NAN, NAN };

  if ((runs->len - from) * STEP < SHORTEST)
    g_array_set_size (runs, from);
  else
    g_array_append_val (runs, none);
}

static double
outline_length (const Outline *outline)
{
  double length = 0;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    length += segment_length (outline_node (outline, i), outline_segment (outline, i));
  return length;
}

static GArray *
find_runs (const Comparison *comparison, const Outline *outline)
{
  GArray *runs = g_array_new (FALSE, FALSE, sizeof (Point));
  const double whole = outline_length (outline);
  double before = 0;
  guint from = 0;

  for (size_t i = 0; i < outline_segment_count (outline); i++) {
    const Segment *segment = outline_segment (outline, i);
    const Point start = outline_node (outline, i);
    const double length = segment_length (start, segment);
    const int steps = (int) ceil (length / STEP) + 1;

    for (int k = 0; k < steps; k++) {
      const Point place = segment_at (start, segment, (double) k / steps);
      const double along = before + length * k / steps;

      if (along < AT_ENDS || along > whole - AT_ENDS || is_seen (comparison, place)) {
        if (runs->len > from)
          end_run (runs, from);
        from = runs->len;
      } else
        g_array_append_val (runs, place);
    }
    before += length;
  }
  if (runs->len > from)
    end_run (runs, from);
  return runs;
}

static double
share_of (const GArray *runs, const Outline *outline)
{
  guint places = 0;

  for (guint i = 0; i < runs->len; i++)
    places += point_is_finite (g_array_index (runs, Point, i));
  return fmin (places * STEP / outline_length (outline), 1);
}

GArray *
trace_unseen (const TraceOrder *order, const Outline *outline, GCancellable *cancellable, double *share)
{
  CompareRequest request = { .mapping = &order->ground->placing.mapping, .frame = order->ground->placing.frame, .outline = outline,
                             .half = trace_ground_is_half (order->ground), .goes_on = goes_on, .data = cancellable };
  Comparison comparison;
  GArray *runs;

  request.frame.side *= order->side;
  *share = NAN;
  if (compare_outline (ink_levels_ink (order->ground->ink), &request, &comparison) != CORE_OK)
    return g_array_new (FALSE, FALSE, sizeof (Point));
  runs = find_runs (&comparison, outline);
  *share = share_of (runs, outline);
  comparison_clear (&comparison);
  return runs;
}
