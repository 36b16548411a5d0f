#include "plan/trace-ends.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/drawn-run.h"

/* mm: what is left out beside the axis; over how much the line is looked at; how far it is carried on at most before it goes straight
 * across. */
static const double LEFT_OUT = 0.6, LOOKED_AT = 6, CARRIED = 3;

/* Where the run goes on to cross the station y = root. */
static Point
meets_station (const DrawnRun *run, PassageSides side, double along, double root)
{
  const Point end = run->places[side == PASSAGE_AHEAD ? 0 : run->count - 1];
  RunPassage passage;

  if (drawn_run_passage (run, along, LOOKED_AT, side, &passage) || !(fabs (passage.direction.y) > 0))
    return (Point) { end.x, root };
  const double way = (root - passage.place.y) / passage.direction.y;
  if (fabs (way) > CARRIED)
    return (Point) { end.x, root };
  return (Point) { passage.place.x + way * passage.direction.x - passage.curvature * way * way / 2 * passage.direction.y, root };
}

size_t
carry_ends_to_station (Point places[], double weights[], size_t count, double root)
{
  size_t first = 0, last = count - 1;
  double *along = malloc (count * sizeof *along);

  while (first + 2 < last && places[first].y < root + LEFT_OUT)
    first++;
  while (last > first + 2 && places[last].y < root + LEFT_OUT)
    last--;
  if (!along)
    return count;
  const size_t kept = last - first + 1;
  memmove (places + 1, places + first, kept * sizeof *places);
  memmove (weights + 1, weights + first, kept * sizeof *weights);
  drawn_run_lengths (places + 1, kept, along);
  const DrawnRun run = { .places = places + 1, .weights = weights + 1, .along = along, .count = kept };
  places[kept + 1] = meets_station (&run, PASSAGE_BEHIND, along[kept - 1], root);
  places[0] = meets_station (&run, PASSAGE_AHEAD, 0, root);
  weights[0] = weights[kept + 1] = 0;
  free (along);
  return kept + 2;
}
