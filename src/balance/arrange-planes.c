#include "balance/arrange-program-private.h"

#include <math.h>
#include <stdlib.h>

#include "balance/arrange-fill.h"

/* A lead's limit may be passed by this share of what its length may be wrong by: a little of it moves parts far where the ballast holds
 * them at its limit. */
static const double limit_share = 0.1;
/* A bound on moments is added where it is wrong by more, mm. */
static const double moment_rounding = 1e-2;

static void
unit_between (const double from[AXES], const double to[AXES], double unit[AXES])
{
  const double distance = distance_between (from, to);

  for (size_t axis = 0; axis < AXES; axis++)
    unit[axis] = distance > 0 ? (to[axis] - from[axis]) / distance : 0;
}

/* needed >= fixed + Σ unit (place − where it is measured from), with equality here. */
static void
add_plane (Program *self, size_t index, double from[AXES], double to[AXES])
{
  const SpaceLead *lead = &self->space->leads[index];
  double at_from[AXES], at_to[AXES], values[2 * AXES + 2] = { 0, 1 }, least = lead->fixed;
  int columns[2 * AXES + 2] = { 0, column_of_lead (self, index) };

  unit_between (lead->over ? lead->first : to, from, at_from);
  unit_between (lead->over ? lead->last : from, to, at_to);
  for (size_t axis = 0; axis < AXES; axis++)
    {
      columns[2 + axis] = column_of_part (lead->from, axis);
      values[2 + axis] = -at_from[axis];
      columns[2 + AXES + axis] = column_of_part (lead->to, axis);
      values[2 + AXES + axis] = -at_to[axis];
      if (lead->over)
        least -= at_from[axis] * lead->first[axis] + at_to[axis] * lead->last[axis];
    }
  program_add_plane (self, columns, values, 1 + 2 * AXES, least);
}

int
program_add_lead_planes (Program *self, double rounding)
{
  const Space *space = self->space;
  double places[PARTS_MOST][AXES];
  bool wrong[LEADS_MOST];
  int added = 0;

  program_places (self, places);
  for (size_t i = 0; i < space->lead_count; i++)
    {
      const SpaceLead *lead = &space->leads[i];
      const double needed = space_lead_needed (lead, places[lead->from], places[lead->to]);
      const double length = glp_get_col_prim (self->lp, column_of_lead (self, i));
      const double longer = glp_get_col_prim (self->lp, column_of_lead (self, i) + 1);

      wrong[i] = needed > lead->limit + longer + limit_share * rounding || (self->goal == GOAL_LEADS && needed > length + rounding);
    }
  /* Only now: a row that is added takes the solution with it. */
  for (size_t i = 0; i < space->lead_count; i++)
    if (wrong[i])
      {
        add_plane (self, i, places[space->leads[i].from], places[space->leads[i].to]);
        added++;
      }
  return added;
}

/* What fills a length E from x₀ on has at least the moment E²/2 about x₀, and so from the other end: `sign` −1. */
static bool
add_moment (Program *self, const Fill *fill, double places[][AXES], double sign)
{
  double filled[PARTS_MOST], values[PARTS_MOST + 1], all = fill_lengths (fill, self->space, filled), moment = 0;
  int columns[PARTS_MOST + 1];
  const double least = sign * (sign > 0 ? fill->around.low[0] : fill->around.high[0]) + all / 2;

  if (!(all > 0))
    return false;
  for (size_t i = 0; i < fill->count; i++)
    {
      columns[i + 1] = column_of_part (fill->parts[i], 0);
      values[i + 1] = sign * filled[i] / all;
      moment += values[i + 1] * places[fill->parts[i]][0];
    }
  if (!(moment < least - moment_rounding))
    return false;
  program_add_plane (self, columns, values, (int) fill->count, least);
  return true;
}

/* The parts in the order in which they stand along x, or against it. */
static void
order_along (double places[][AXES], size_t count, double sign, size_t order[])
{
  for (size_t i = 0; i < count; i++)
    {
      size_t k = i;

      for (; k > 0 && sign * places[order[k - 1]][0] > sign * places[i][0]; k--)
        order[k] = order[k - 1];
      order[k] = i;
    }
}

int
program_add_moments (Program *self)
{
  const Space *space = self->space;
  double places[PARTS_MOST][AXES];
  size_t order[PARTS_MOST];
  int added = 0;

  if (self->without_moments)
    return 0;
  program_places (self, places);
  for (int end = 0; end < 2; end++)
    {
      const double sign = end == 0 ? 1 : -1;
      Fill fill = { .count = 0 };

      order_along (places, space->part_count, sign, order);
      for (size_t i = 0; i < space->part_count; i++)
        {
          /* Of parts that move as one, and may overlap, the largest stands for all. */
          if (!space->parts[order[i]].moves || space->parts[order[i]].leader != order[i])
            continue;
          fill_add (&fill, space, order[i], &self->whole->spans[order[i]]);
          added += fill.count > 1 && add_moment (self, &fill, places, sign);
        }
    }
  return added;
}
