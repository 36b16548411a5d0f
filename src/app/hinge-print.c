#include "app/hinge-print.h"
#include <math.h>
#include "plan/ink-corner.h"
#include "plan/ink-line.h"
#include "plan/straight-run.h"

/* mm: a line whose stations differ by less runs fore and aft. */
static const double LEAST_ACROSS = 1;
/* mm: about a printed line's width. */
static const double ON_LINE = 0.5;

static const Ink *
ink_of (const TraceGround *ground)
{
  return ink_levels_ink (ground->ink);
}

HingeSpots
hinge_print_spots (const TraceGround *ground, Point place, double reach)
{
  const Point px = placing_px (&ground->placing, place);
  HingeSpots made = HINGE_NO_SPOTS;

  ink_line (ink_of (ground), px, reach, &made.line);
  ink_corner (ink_of (ground), px, reach, &made.corner);
  return made;
}

Point
hinge_print_near (const TraceGround *ground, const HingeSpots *spots, Point place, double reach)
{
  const Point px = placing_px (&ground->placing, place);

  return point_distance (spots->corner, px) <= reach / 2 ? spots->corner : spots->line;
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

static bool
run_between (const TraceGround *ground, const HingeSeat *seat, Point a, Point b, PrintedHinge *line)
{
  StraightRun run;

  return point_is_finite (a) && point_is_finite (b) && straight_run (ink_of (ground), a, b, trace_ground_scale (ground, a), &run)
         && fit (ground, seat, &run, line);
}

/* A corner beside the line belongs to something else. */
static double
station_on (const TraceGround *ground, const HingeSeat *seat, const PrintedHinge *line, Point corner)
{
  const Point own = point_is_finite (corner) ? hinge_seat_own (seat, placing_sheet (&ground->placing, corner)) : corner;

  return fabs (line->at_root + line->slope * own.y - own.x) <= ON_LINE ? own.y : NAN;
}

bool
hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second, PrintedHinge *line)
{
  if (!run_between (ground, seat, first->line, second->line, line) && !run_between (ground, seat, first->corner, second->line, line)
      && !run_between (ground, seat, first->line, second->corner, line) && !run_between (ground, seat, first->corner, second->corner, line))
    return false;
  line->first = station_on (ground, seat, line, first->corner);
  line->second = station_on (ground, seat, line, second->corner);
  return true;
}
