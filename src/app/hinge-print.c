#include "app/hinge-print.h"
#include <math.h>
#include "plan/ink-corner.h"
#include "plan/ink-line.h"
#include "plan/straight-run.h"

/* mm: a line whose stations differ by less runs fore and aft. */
static const double LEAST_ACROSS = 1;
/* Of the reach: a corner is meant only by a hand that is near it. */
static const double CORNER = 0.7;
/* mm: about a printed line's width. */
static const double ON_LINE = 0.5;
/* px of the file, and of the way's length: how far beside the straight way ink counts, where a lens bends it. The share that is printed. */
static const double BESIDE = 3, BEND = 0.003, LEAST_PRINTED = 0.45;

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
  ink_corner (ink_of (ground), px, CORNER * reach, &made.corner);
  return made;
}

Point
hinge_print_spot (const HingeSpots *spots)
{
  return point_is_finite (spots->corner) ? spots->corner : spots->line;
}

/* The straight line in mm that lies best along these places, px: the lens has been undone by then. */
static bool
fit (const TraceGround *ground, const HingeSeat *seat, const Point places[], int count, PrintedHinge *line)
{
  double y = 0, x = 0, yy = 0, xy = 0;

  for (int i = 0; i < count; i++) {
    const Point own = hinge_seat_printed (seat, placing_sheet (&ground->placing, places[i]));

    y += own.y / count;
    x += own.x / count;
    yy += own.y * own.y / count;
    xy += own.x * own.y / count;
  }
  if (!(yy - y * y > LEAST_ACROSS * LEAST_ACROSS / 4))
    return false;
  line->slope = (xy - x * y) / (yy - y * y);
  line->at_root = x - line->slope * y;
  return isfinite (line->at_root);
}

/* What looks like a line and cannot be followed is taken from spot to spot. */
static bool
line_between (const TraceGround *ground, const HingeSeat *seat, Point a, Point b, bool exactly, PrintedHinge *line)
{
  const double beside = BESIDE + BEND * point_distance (a, b);
  const Point ends[] = { a, b };
  StraightRun run;

  if (ink_share_between (ink_of (ground), a, b, beside) < LEAST_PRINTED)
    return false;
  if (exactly && straight_run (ink_of (ground), a, b, trace_ground_scale (ground, a), &run))
    return fit (ground, seat, run.places, STRAIGHT_RUN_PLACES, line);
  return fit (ground, seat, ends, 2, line);
}

/* A corner beside the line belongs to something else. */
static double
station_on (const TraceGround *ground, const HingeSeat *seat, const PrintedHinge *line, Point corner)
{
  const Point own = point_is_finite (corner) ? hinge_seat_printed (seat, placing_sheet (&ground->placing, corner)) : corner;

  return fabs (line->at_root + line->slope * own.y - own.x) <= ON_LINE ? own.y : NAN;
}

bool
hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second, bool exactly,
                  PrintedHinge *line)
{
  const Point from[] = { hinge_print_spot (first), first->line }, to[] = { hinge_print_spot (second), second->line };
  bool found = false;

  for (int i = 0; i < 4 && !found; i++)
    found = line_between (ground, seat, from[i % 2], to[i / 2], exactly, line);
  if (!found)
    return false;
  line->first = station_on (ground, seat, line, first->corner);
  line->second = station_on (ground, seat, line, second->corner);
  return true;
}
