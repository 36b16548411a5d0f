#include "plan/halves.h"

#include <math.h>
#include <stdlib.h>
#include "plan/trace-fit.h"

/* mm from place to place */
static const double STEP = 0.3;

static size_t
steps_of (const Outline *outline, size_t segment)
{
  return (size_t) ceil (segment_length (outline_node (outline, segment), outline_segment (outline, segment)) / STEP) + 1;
}

static Point
end_of (const Outline *outline)
{
  return outline_node (outline, outline_node_count (outline) - 1);
}

static void
take_place (const Outline *b, Point place, Point *mean, HalvesDifference *difference)
{
  size_t segment;
  double t;
  const double apart = outline_nearest (b, place, &segment, &t);

  *mean = point_mix (place, segment_at (outline_node (b, segment), outline_segment (b, segment), t), 0.5);
  difference->mean += apart;
  if (apart > difference->most)
    {
      difference->most = apart;
      difference->at = *mean;
    }
}

static size_t
mean_places (const Outline *a, const Outline *b, Point *places, HalvesDifference *difference)
{
  size_t count = 0;

  take_place (b, outline_node (a, 0), &places[count++], difference);
  for (size_t i = 0; i < outline_segment_count (a); i++)
    for (size_t step = 1, steps = steps_of (a, i); step <= steps; step++)
      take_place (b, segment_at (outline_node (a, i), outline_segment (a, i), (double) step / (double) steps), &places[count++],
                  difference);
  places[0] = point_mix (outline_node (a, 0), outline_node (b, 0), 0.5);
  places[count - 1] = point_mix (end_of (a), end_of (b), 0.5);
  difference->mean /= (double) count;
  return count;
}

CoreStatus
halves_mean (const Outline *a, const Outline *b, double tolerance, Outline **made, HalvesDifference *difference)
{
  HalvesDifference found = { .at = outline_node (a, 0) };
  size_t room = 1;

  for (size_t i = 0; i < outline_segment_count (a); i++)
    room += steps_of (a, i);
  Point *places = malloc (room * sizeof *places);
  double *weights = malloc (room * sizeof *weights), *along = malloc (room * sizeof *along);
  CoreStatus status = places && weights && along ? CORE_OK : CORE_NO_MEMORY;
  if (!status)
    {
      const size_t count = mean_places (a, b, places, &found);
      for (size_t i = 0; i < count; i++)
        weights[i] = 1;
      drawn_run_lengths (places, count, along);
      const DrawnRun run = { .places = places, .weights = weights, .along = along, .count = count };
      status = trace_fit (&run, places, true, tolerance, made);
    }
  if (!status)
    *difference = found;
  free (places);
  free (weights);
  free (along);
  return status;
}
