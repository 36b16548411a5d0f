#include "app/hinge-print.h"
#include <math.h>
#include "plan/ink-corner.h"
#include "plan/ink-line.h"
#include "plan/straight-run.h"

/* mm: a line whose stations differ by less runs fore and aft. */
static const double LEAST_ACROSS = 1;

static const Ink *
ink_of (const TraceGround *ground)
{
  return ink_levels_ink (ground->ink);
}

HingeSpots
hinge_print_spots (const TraceGround *ground, Point place, double reach)
{
  const Point px = placing_px (&ground->placing, place);
  HingeSpots made = { .count = 0 };
  Point found;

  if (ink_corner (ink_of (ground), px, reach, &found))
    made.spots[made.count++] = (HingeSpot) { found, true };
  if (ink_line (ink_of (ground), px, reach, &found))
    made.spots[made.count++] = (HingeSpot) { found, false };
  return made;
}

/* The straight line in mm that lies best along the run: the lens has been undone by then. */
static bool
fit (const TraceGround *ground, const HingeSeat *seat, const StraightRun *run, PrintedHinge *line)
{
  double y = 0, x = 0, yy = 0, xy = 0;

  for (int i = 0; i < STRAIGHT_RUN_PLACES; i++) {
    const Point own = hinge_seat_own (seat, placing_sheet (&ground->placing, run->places[i]));

    y += own.y / STRAIGHT_RUN_PLACES;
    x += own.x / STRAIGHT_RUN_PLACES;
    yy += own.y * own.y / STRAIGHT_RUN_PLACES;
    xy += own.x * own.y / STRAIGHT_RUN_PLACES;
  }
  if (!(yy - y * y > LEAST_ACROSS * LEAST_ACROSS / 12))
    return false;
  line->slope = (xy - x * y) / (yy - y * y);
  line->at_root = x - line->slope * y;
  return isfinite (line->at_root);
}

bool
hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second, PrintedHinge *line)
{
  for (size_t i = 0; i < first->count; i++)
    for (size_t j = 0; j < second->count; j++) {
      const Point a = first->spots[i].px, b = second->spots[j].px;
      StraightRun run;

      if (straight_run (ink_of (ground), a, b, trace_ground_scale (ground, a), &run) && fit (ground, seat, &run, line)) {
        line->first = &first->spots[i];
        line->second = &second->spots[j];
        return true;
      }
    }
  return false;
}
