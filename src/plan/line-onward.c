#include "plan/line-onward.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/stretch.h"
#include "plan/line-strength.h"
#include "plan/sureness.h"

/* mm: the pieces that are looked at; how far off the way straight on a line is at most, and how much more for each mm that was passed over. */
static const double PIECE = 3, OFF = 0.45, OFF_A_MM = 0.05;
/* mm: what may be passed over; how near it has come back to the other line, and how far from it is no pair's. */
static const double GAP = 25, BACK = 0.8, FAR = 8;
/* Of the strength before: a piece so faint is none. Pieces in a row make it a line again. */
static const double FAINT = 0.45;
/* Of its way so far, what a piece seen changes. */
static const double BENDS = 0.35;
enum { SURE = 2, MOST = 400 };

typedef struct { double row_off, strength; } Seen;

/* The strongest line along a piece, no further than `off` px from it; strength NAN without memory. */
static Seen
look_along (const Ink *ink, Point from, Point to, double off, double half_width)
{
  const Point run[2] = { from, to };
  Seen seen = { 0, NAN };
  Corridor corridor;

  if (corridor_along (ink, run, 2, off + 4 * half_width, 0.5, 1, &corridor))
    return seen;
  const int rows = corridor_rows (&corridor), reach = (int) ceil (off / corridor.pitch);
  float *strength = malloc (corridor.columns * (size_t) rows * sizeof *strength);
  if (strength)
    {
      line_strength (&corridor, half_width, strength);
      seen.strength = 0;
      for (int row = corridor.half - reach; row <= corridor.half + reach; row++)
        {
          double sum = 0;
          for (size_t column = 0; column < corridor.columns; column++)
            sum += strength[column * (size_t) rows + (size_t) row];
          if (sum / (double) corridor.columns > seen.strength)
            seen = (Seen) { (row - corridor.half) * corridor.pitch, sum / (double) corridor.columns };
        }
      free (strength);
    }
  corridor_clear (&corridor);
  return seen;
}

double
line_print_strength (const Ink *ink, Point from, Point to, double half_width, double px_per_mm)
{
  return look_along (ink, from, to, OFF * px_per_mm, half_width).strength;
}

/* A line on its way: where it is, along what, what was passed over since it was seen, and how many pieces were seen since. */
typedef struct { Point at, way; double lost; int seen, back; size_t sure; } Onward;

static Point
unit (Point way)
{
  return point_scale (way, 1 / point_length (way));
}

static void
take_piece (const Seen *seen, Point straight, Onward *self, LineOnward *made)
{
  const Point across = { -self->way.y, self->way.x }, to = point_add (straight, point_scale (across, seen->row_off));

  if (self->lost == 0)
    self->way = unit (point_mix (self->way, unit (point_sub (to, self->at)), BENDS));
  self->at = to;
  self->seen++;
  made->strength += seen->strength;
  made->places[made->count++] = to;
  if (self->seen >= SURE)
    {
      self->lost = 0;
      self->sure = made->count;
    }
}

/* Takes the next piece; false at its end. */
static bool
go_on (const Ink *ink, const FollowedLine *beside, double px_per_mm, double usual, Onward *self, LineOnward *made)
{
  const Point straight = point_add (self->at, point_scale (self->way, PIECE * px_per_mm));
  const Seen seen = look_along (ink, self->at, straight, (OFF + OFF_A_MM * self->lost) * px_per_mm, beside->half_width);

  if (seen.strength >= FAINT * usual)
    take_piece (&seen, straight, self, made);
  else
    {
      self->lost += PIECE;
      self->seen = 0;
      self->at = straight;
    }
  const double apart = point_distance (self->at, beside->places[followed_line_nearest (beside, self->at)]) / px_per_mm;
  self->back = apart < BACK ? self->back + 1 : 0;
  return self->lost <= GAP && apart <= FAR && self->back <= 2 && made->count < MOST;
}

CoreStatus
line_onward (const Ink *ink, const RunPassage *from, const FollowedLine *beside, double px_per_mm, LineOnward *made)
{
  const Point behind = point_sub (from->place, point_scale (from->direction, 2 * PIECE * px_per_mm));
  const double usual = line_print_strength (ink, behind, from->place, beside->half_width, px_per_mm);
  Onward self = { .at = from->place, .way = from->direction };

  *made = (LineOnward) { .places = malloc (MOST * sizeof *made->places) };
  if (!made->places || isnan (usual))
    {
      line_onward_clear (made);
      return CORE_NO_MEMORY;
    }
  while (go_on (ink, beside, px_per_mm, usual, &self, made))
    ;
  made->strength = made->count ? made->strength / (double) made->count : 0;
  made->count = self.sure;
  return CORE_OK;
}

void
line_onward_clear (LineOnward *self)
{
  free (self->places);
  *self = (LineOnward) { .count = 0 };
}
