#include "plan/line-beside.h"

#include <math.h>
#include <stdlib.h>
#include "plan/cornered.h"
#include "plan/line-strength.h"
#include "plan/sureness.h"

/* mm: with no click further off, nothing is looked for. Lanes lie so far apart; a line is in one that strays no further from it. */
static const double ON_LINE = 0.6, STEP = 0.5, STRAYS = 0.5;
/* Lanes to each side of the line followed; nearer than the least is that line. */
enum { LANES = 10, LANE_COUNT = 2 * LANES + 1, LEAST_LANE = 3 };
/* mm: the pieces in which lanes are chosen; a place that leads along a piece keeps so far from a click. */
static const double PIECE = 10, CLEAR = 4;
/* mm of clicks: what going over to another lane costs, and what a piece without any line does; what another lane costs that is as good. */
static const double CHANGE = 0.8, UNSEEN = 0.35, LEAVING = 0.03;
/* mm of clicks: what a stretch in a lane costs at either end where no line is seen there: a click alone is no line. */
static const double BARE = 1.5;
/* Of the usual strength: a line so faint is still one. */
static const double FAINT = 0.45;
/* mm: where a line's usual strength is looked for; how far off a place on the line beside is, one standard deviation. */
static const double NEAR = 0.7, SIGMA = 0.4;

/* A click as the corridor along the line has it: how far off towards greater rows, mm. */
typedef struct { size_t column; double off; } Foot;

typedef struct {
  double seen[LANE_COUNT];            /* the share of it that shows a line in each lane */
  double cost[LANE_COUNT];            /* up to its end at least, in each lane */
  int before[LANE_COUNT];             /* and the lane before that */
  int lane;                           /* the one taken */
} Piece;

typedef struct {
  size_t click_count, piece_count;
  double px_per_mm;
  Corridor corridor;                  /* along the line followed */
  float *strength;
  Foot *feet;
  Piece *pieces;
} Beside;

static double
lane_off (int lane)
{
  return (lane - LANES) * STEP;
}

static bool
are_on_line (const Point clicks[], size_t count, const FollowedLine *line, double px_per_mm)
{
  for (size_t i = 0; i < count; i++)
    if (point_distance (clicks[i], line->places[followed_line_nearest (line, clicks[i])]) > ON_LINE * px_per_mm)
      return false;
  return true;
}

static size_t
piece_of (const Beside *self, size_t column)
{
  return column * self->piece_count / self->corridor.columns;
}

static size_t
piece_start (const Beside *self, size_t piece)
{
  return (piece * self->corridor.columns + self->piece_count - 1) / self->piece_count;
}

static CoreStatus
look_beside (Beside *self, const Ink *ink, const FollowedLine *line)
{
  CoreStatus status = corridor_along (ink, line->places, line->count, (LANES * STEP + STRAYS) * self->px_per_mm, 1,
                                      (int) round (self->px_per_mm), &self->corridor);

  if (status)
    return status;
  self->strength = malloc (self->corridor.columns * (size_t) corridor_rows (&self->corridor) * sizeof *self->strength);
  status = self->strength ? line_strength (&self->corridor, line->half_width, self->strength) : CORE_NO_MEMORY;
  return status ? status : line_strength_even (&self->corridor, NEAR * self->px_per_mm, self->corridor.columns, self->strength);
}

static void
find_feet (Beside *self, const Point clicks[])
{
  for (size_t i = 0; i < self->click_count; i++)
    {
      const size_t column = corridor_nearest (&self->corridor, clicks[i]);
      const Point off = point_sub (clicks[i], self->corridor.spine[column]), across = self->corridor.across[column];
      self->feet[i] = (Foot) { column, (off.x * across.x + off.y * across.y) / self->px_per_mm };
    }
}

/* How strong a line is at most in a lane, 0 to 1. */
static double
strength_in (const Beside *self, size_t column, int lane)
{
  const int rows = corridor_rows (&self->corridor);
  const int from = self->corridor.half + (int) ceil ((lane_off (lane) - STRAYS) * self->px_per_mm);
  const int to = self->corridor.half + (int) floor ((lane_off (lane) + STRAYS) * self->px_per_mm);
  double most = 0;

  for (int row = from > 0 ? from : 0; row <= to && row < rows; row++)
    most = fmax (most, self->strength[column * (size_t) rows + (size_t) row]);
  return fmin (most / FAINT, 1);
}

/* The share of a piece that shows a line in a lane. */
static double
seen_in (const Beside *self, size_t piece, int lane)
{
  const size_t from = piece_start (self, piece), to = piece_start (self, piece + 1);
  double sum = 0;

  for (size_t column = from; column < to; column++)
    sum += strength_in (self, column, lane);
  return sum / (double) (to - from);
}

/* What a piece costs in a lane by itself, mm. */
static double
own_cost (const Beside *self, size_t piece, int lane)
{
  double cost = UNSEEN * (1 - self->pieces[piece].seen[lane]);

  for (size_t i = 0; i < self->click_count; i++)
    if (piece_of (self, self->feet[i].column) == piece)
      cost += fabs (self->feet[i].off - lane_off (lane));
  if (lane == LANES)
    return cost;
  return abs (lane - LANES) < LEAST_LANE ? INFINITY : cost + LEAVING;
}

/* What it costs that a stretch in a lane begins or ends with that piece, mm. */
static double
end_cost (const Piece *piece, int lane)
{
  return lane == LANES ? 0 : BARE * (1 - piece->seen[lane]);
}

static double
change_cost (const Piece *last, int before, const Piece *next, int lane)
{
  const int aside = abs (before - lane);

  return aside < 2 ? LEAVING * aside : CHANGE + end_cost (last, before) + end_cost (next, lane);
}

static void
find_cost (Beside *self, size_t i, int lane)
{
  Piece *piece = &self->pieces[i];
  double least = i == 0 ? end_cost (piece, lane) : INFINITY;

  for (int before = 0; i > 0 && before < LANE_COUNT; before++)
    {
      const double cost = piece[-1].cost[before] + change_cost (piece - 1, before, piece, lane);
      if (cost < least)
        {
          least = cost;
          piece->before[lane] = before;
        }
    }
  piece->cost[lane] = least + own_cost (self, i, lane) + (i + 1 == self->piece_count ? end_cost (piece, lane) : 0);
}

/* Whether any piece leaves the line followed. */
static bool
choose_lanes (Beside *self)
{
  const Piece *last = &self->pieces[self->piece_count - 1];
  bool leaves = false;
  int best = LANES;

  for (size_t i = 0; i < self->piece_count; i++)
    {
      for (int lane = 0; lane < LANE_COUNT; lane++)
        self->pieces[i].seen[lane] = seen_in (self, i, lane);
      for (int lane = 0; lane < LANE_COUNT; lane++)
        find_cost (self, i, lane);
    }
  for (int lane = 0; lane < LANE_COUNT; lane++)
    if (last->cost[lane] < last->cost[best])
      best = lane;
  for (size_t i = self->piece_count; i-- > 0; best = self->pieces[i].before[best])
    {
      self->pieces[i].lane = best;
      leaves |= best != LANES;
    }
  return leaves;
}

static Point
place_in (const Beside *self, size_t column)
{
  const int lane = self->pieces[piece_of (self, column)].lane;

  return corridor_place (&self->corridor, column, self->corridor.half + lane_off (lane) * self->px_per_mm);
}

/* Places that lead along the lanes from one click to the next, where they leave the line. */
static size_t
guide_between (const Beside *self, size_t from, size_t to, Point *places)
{
  const size_t clear = (size_t) (CLEAR * self->px_per_mm);
  size_t made = 0;

  for (size_t piece = piece_of (self, from); piece <= piece_of (self, to); piece++)
    {
      const size_t middle = (piece_start (self, piece) + piece_start (self, piece + 1)) / 2;
      if (self->pieces[piece].lane != LANES && middle > from + clear && middle + clear < to)
        places[made++] = place_in (self, middle);
    }
  return made;
}

static size_t
guide (const Beside *self, Point *places)
{
  size_t made = 0;

  for (size_t i = 0; i < self->click_count; i++)
    {
      places[made++] = place_in (self, self->feet[i].column);
      if (i + 1 < self->click_count && self->feet[i].column < self->feet[i + 1].column)
        made += guide_between (self, self->feet[i].column, self->feet[i + 1].column, places + made);
    }
  return made;
}

static CoreStatus
follow_lanes (const Beside *self, const Ink *ink, const FollowOptions *options, FollowedLine *line)
{
  FollowOptions sure = *options;
  FollowedLine found;
  Point *places = malloc ((2 * self->click_count + self->piece_count) * sizeof *places);

  sure.click_sigma = SIGMA * self->px_per_mm;
  const CoreStatus status = places ? follow_cornered (ink, places, guide (self, places), &sure, &found) : CORE_NO_MEMORY;
  free (places);
  if (!status)
    {
      followed_line_clear (line);
      *line = found;
    }
  return status;
}

static CoreStatus
take_beside (Beside *self, const Ink *ink, const Point clicks[], const FollowOptions *options, FollowedLine *line)
{
  CoreStatus status = look_beside (self, ink, line);

  if (status)
    return status;
  self->piece_count = (size_t) ceil ((double) self->corridor.columns / (PIECE * self->px_per_mm));
  self->pieces = calloc (self->piece_count, sizeof *self->pieces);
  self->feet = malloc (self->click_count * sizeof *self->feet);
  if (!self->pieces || !self->feet)
    return CORE_NO_MEMORY;
  find_feet (self, clicks);
  return choose_lanes (self) ? follow_lanes (self, ink, options, line) : CORE_OK;
}

CoreStatus
take_line_beside (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *line)
{
  Beside self = { .click_count = count, .px_per_mm = options->px_per_mm };

  if (are_on_line (clicks, count, line, options->px_per_mm))
    return CORE_OK;
  const CoreStatus status = take_beside (&self, ink, clicks, options, line);
  corridor_clear (&self.corridor);
  free (self.strength);
  free (self.pieces);
  free (self.feet);
  return status;
}
