#include "plan/trace-aside.h"

#include <math.h>
#include <stdlib.h>
#include "plan/line-steps.h"

/* Of its way over so much shows no line: a step of the outline itself, or one that two lines near each other make of one, shows more. */
static const double BARE = 0.4;
/* mm */
static const double LEAST = 2.5;

static Point
to_own (const TraceRequest *request, Point px)
{
  return axis_frame_own (&request->frame, mapping_to_mm (request->mapping, px));
}

CoreStatus
trace_look_aside (const TraceRequest *request, const FollowedLine *line, Trace *trace)
{
  Point *places = malloc (line->count * sizeof *places);
  double *along = malloc (line->count * sizeof *along);
  const DrawnRun run = { .places = places, .weights = line->weights, .along = along, .count = line->count };
  const CoreStatus status = places && along ? CORE_OK : CORE_NO_MEMORY;
  LineStep step;
  double at = 0;

  trace->aside = 0;
  for (size_t i = 0; !status && i < line->count; i++)
    places[i] = to_own (request, line->places[i]);
  if (!status)
    drawn_run_lengths (places, line->count, along);
  while (!status && line_step_next (&run, 1, &at, &step))
    if (fabs (step.aside) >= LEAST && step.seen < BARE && fabs (step.aside) > trace->aside)
      {
        trace->aside = fabs (step.aside);
        trace->aside_at = point_mix (places[step.before], places[step.behind], 0.5);
      }
  free (places);
  free (along);
  return status;
}
