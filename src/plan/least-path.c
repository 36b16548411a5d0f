#include "plan/least-path.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/stretch.h"

/* What holds still while the path is looked for. */
typedef struct {
  const Corridor *corridor;
  const float *strength;
  const LeastPathOptions *options;
  int rows, slopes;             /* slopes: 2 steepest + 1 */
  size_t nodes;
  double *bends;                /* of each node: how far the spine itself turns there, in rows a node */
  float *cost;                  /* rows × slopes: of the best way that arrives so */
  float *turned;                /* the same, when the slope has changed to the one that leaves */
  signed char *came;            /* nodes × rows × slopes: the slope it arrived with, of the one that leaves */
} Search;

static const float NEVER = 1e30f;
enum { MOST_SLOPES = 127 };
/* A click pulls this much at one sigma. */
static const double PULL = 0.5;
/* A pull grows no further: nobody clicks without meaning it, but a click may lie on lettering. Where the line is to end or begin, though, each
 * mm further off than lettering is high costs so much again: that is another line. */
static const double MOST_PULL = 10, LETTERING = 3, FURTHER = 2;

static float
pull_at (const Search *self, size_t first, size_t last, int row)
{
  double pull = 0;

  for (size_t i = 0; i < self->options->pull_count; i++)
    {
      const LeastPathPull *one = &self->options->pulls[i];
      if (one->column >= first && one->column < last)
        pull += fmin (PULL * pow ((row - one->row) / one->sigma, 2), MOST_PULL)
                + FURTHER * fmax (fabs (row - one->row) / one->rows_per_mm - LETTERING, 0);
    }
  return (float) pull;
}

/* What the stretch from a node to the next costs: from that row, at that slope. */
static float
stretch_cost (const Search *self, size_t node, int row, int slope)
{
  const int stride = self->options->stride;
  const size_t from = node * (size_t) stride;
  float line = 0;

  for (int i = 1; i <= stride; i++)
    {
      const int at = row + (slope * i + (slope < 0 ? -stride : stride) / 2) / stride;
      const float here = self->strength[(from + (size_t) i) * (size_t) self->rows + (size_t) at];
      line += here > 1 ? 1 : here;
    }
  line /= (float) stride;
  return 1 - line * line;
}

/* For one row: the cheapest way to leave at each slope with the spine going straight on, by running over the slopes up and down once. */
static void
turn (const Search *self, const float *cost, float *turned, signed char *came)
{
  const float turning = (float) self->options->turning;

  for (int k = 0; k < self->slopes; k++)
    {
      turned[k] = cost[k];
      came[k] = (signed char) k;
      if (k > 0 && turned[k - 1] + turning < turned[k])
        {
          turned[k] = turned[k - 1] + turning;
          came[k] = came[k - 1];
        }
    }
  for (int k = self->slopes - 2; k >= 0; k--)
    if (turned[k + 1] + turning < turned[k])
      {
        turned[k] = turned[k + 1] + turning;
        came[k] = came[k + 1];
      }
}

/* The same where the spine turns: a path that goes straight on leaves at another slope to it. Costs rise evenly away from each slope, so
 * that between two of them the nearer way counts. */
static void
turn_with_spine (const Search *self, double bend, float *turned, signed char *came)
{
  const float turning = (float) self->options->turning;
  float shifted[MOST_SLOPES];
  signed char from[MOST_SLOPES];

  for (int k = 0; k < self->slopes; k++)
    {
      const double at = fmin (fmax (k + bend, 0), self->slopes - 1);
      const int below = (int) at, above = below + 1 < self->slopes ? below + 1 : below;
      const float rest = (float) (at - below), beyond = (float) fabs (k + bend - at) * turning;
      const float lower = turned[below] + rest * turning, upper = turned[above] + (1 - rest) * turning;
      shifted[k] = (upper < lower && above > below ? upper : lower) + beyond;
      from[k] = upper < lower && above > below ? came[above] : came[below];
    }
  memcpy (turned, shifted, (size_t) self->slopes * sizeof *turned);
  memcpy (came, from, (size_t) self->slopes);
}

static void
step (Search *self, size_t node)
{
  const size_t states = (size_t) self->rows * (size_t) self->slopes;
  const size_t stride = (size_t) self->options->stride;

  for (int row = 0; row < self->rows; row++)
    {
      float *turned = self->turned + row * self->slopes;
      signed char *came = self->came + node * states + row * self->slopes;
      turn (self, self->cost + row * self->slopes, turned, came);
      turn_with_spine (self, self->bends[node], turned, came);
    }
  for (size_t i = 0; i < states; i++)
    self->cost[i] = NEVER;
  for (int row = 0; row < self->rows; row++)
    for (int k = 0; k < self->slopes; k++)
      {
        const int slope = k - self->options->steepest, to = row + slope;
        if (to >= 0 && to < self->rows && self->turned[row * self->slopes + k] < NEVER)
          self->cost[to * self->slopes + k] = self->turned[row * self->slopes + k] + stretch_cost (self, node, row, slope);
      }
  for (int row = 0; row < self->rows; row++)
    {
      const float pull = pull_at (self, (node + 1) * stride, (node + 2) * stride, row);
      for (int k = 0; k < self->slopes; k++)
        self->cost[row * self->slopes + k] += pull;
    }
}

/* Fills in the rows from the last node backwards, straight between nodes. */
static void
read_back (const Search *self, double *rows)
{
  const size_t states = (size_t) self->rows * (size_t) self->slopes, stride = (size_t) self->options->stride;
  size_t best = 0;

  for (size_t i = 1; i < states; i++)
    if (self->cost[i] < self->cost[best])
      best = i;
  int row = (int) best / self->slopes, k = (int) best % self->slopes;
  for (size_t column = self->nodes * stride; column < self->corridor->columns; column++)
    rows[column] = row;
  for (size_t node = self->nodes; node-- > 0;)
    {
      const int slope = k - self->options->steepest;
      row -= slope;
      for (size_t i = 0; i < stride; i++)
        rows[node * stride + i] = row + (double) slope * (double) i / (double) stride;
      k = self->came[node * states + (size_t) (row * self->slopes + k)];
    }
}

static void
find_bends (Search *self)
{
  const Corridor *corridor = self->corridor;
  const size_t stride = (size_t) self->options->stride;
  const double a_row = corridor->pitch / self->options->stride;      /* radians */

  for (size_t node = 0; node < self->nodes; node++)
    {
      const Point before = corridor->across[node > 0 ? (node - 1) * stride + stride / 2 : 0];
      const Point after = corridor->across[node * stride + stride / 2];
      self->bends[node] = node > 0 ? atan2 (point_cross (before, after), point_dot (before, after)) / a_row : 0;
    }
}

CoreStatus
least_path (const Corridor *corridor, const float *strength, const LeastPathOptions *options, double *rows)
{
  Search self = { .corridor = corridor, .strength = strength, .options = options, .rows = corridor_rows (corridor),
                  .slopes = 2 * options->steepest + 1, .nodes = (corridor->columns - 1) / (size_t) options->stride };
  const size_t states = (size_t) self.rows * (size_t) self.slopes;
  CoreStatus status = CORE_NO_MEMORY;

  self.cost = malloc (states * sizeof *self.cost);
  self.turned = malloc (states * sizeof *self.turned);
  self.came = malloc (self.nodes * states + 1);
  self.bends = malloc ((self.nodes + 1) * sizeof *self.bends);
  if (self.cost && self.turned && self.came && self.bends)
    {
      find_bends (&self);
      for (int row = 0; row < self.rows; row++)
        for (int k = 0; k < self.slopes; k++)
          self.cost[row * self.slopes + k] = pull_at (&self, 0, (size_t) options->stride, row);
      for (size_t node = 0; node < self.nodes; node++)
        step (&self, node);
      read_back (&self, rows);
      status = CORE_OK;
    }
  free (self.cost);
  free (self.turned);
  free (self.came);
  free (self.bends);
  return status;
}
