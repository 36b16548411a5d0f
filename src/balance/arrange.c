#include "balance/arrange.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "balance/arrange-alike.h"
#include "balance/arrange-guard.h"
#include "balance/arrange-order.h"
#include "balance/arrange-polish.h"
#include "balance/slide.h"

static const double mm = 1000;
/* Below this share of all mass it is the rounding of the linear program. */
static const double least_ballast = 1e-6;

/* One after the other; what an earlier one reached, a later one keeps. In the program's units: thousandths of all mass, mm. */
static const struct { Goal goal; double accuracy, time; } steps[] = {
  { GOAL_BALLAST, 1e-4, 0.5 }, { GOAL_AIM, 1e-4, 0.3 }, { GOAL_LEADS, 2e-3, 0.6 },
};
enum { STEPS = sizeof steps / sizeof *steps };

/* s: nobody waits longer for leads that may be a little shorter. */
static const double leads_time = 2;

/* All that one call works with. */
typedef struct {
  const ArrangeCase *wanted;
  size_t most;
  Arrangements *made;
  Space *space;
  Node *root;
  Program *program;
  Tree tree;
  Taken taken[ARRANGE_MOST];
  double until, leads_left;       /* of tree_clock(); s */
} Course;

void
arrangements_clear (Arrangements *made)
{
  for (size_t i = 0; i < made->count; i++)
    {
      free (made->found[i].places);
      free (made->found[i].ranges);
      free (made->found[i].needed);
    }
  *made = (Arrangements) { .status = ARRANGE_NOT_FOUND };
}

/* What is known already, in the terms of the next goal: only what is better is searched for. */
static double
value_of_known (Course *self)
{
  Node *node = node_dup (self->space, self->root);
  bool failed = false;
  double value = INFINITY;

  if (!node)
    return INFINITY;
  for (size_t i = 0; i < self->space->part_count; i++)
    for (size_t axis = 0; axis < AXES; axis++)
      node->spans[i].low[axis] = node->spans[i].high[axis] = self->tree.places[i][axis];
  memset (node->ways, WAY_SETTLED, self->space->pair_count);
  if (program_solve (self->program, node, INFINITY, self->tree.accuracy / 4, &failed) && !failed)
    value = program_value (self->program);
  node_free (node);
  return value;
}

/* The share of the time left that a step may take: the last one of the last arrangement all of it. */
static double
step_ends (const Course *self, size_t step, size_t index)
{
  const double now = tree_clock (), share = steps[step].time;
  const bool last = index + 1 == self->most;

  if (!isfinite (self->until))
    return INFINITY;
  if (steps[step].goal == GOAL_LEADS)
    return fmin (now + self->leads_left * (last ? 1 : share), last ? self->until : now + (self->until - now) * share);
  return now + (self->until - now) * share;
}

/* What is not soon searched to its end is worth some polish first. Only the search for good tells how much of it is done. */
static void
search_goal (Course *self)
{
  const size_t soon = 400;
  Tree *tree = &self->tree;
  const double part = tree->done_part;
  double open;

  tree->found = tree->late = false;
  tree->done_part = 0;
  tree_search (tree, self->root, soon);
  open = tree->open;
  if (tree->too_many)
    {
      if (isfinite (tree->value))
        tree_polish (tree, self->root);
      tree->done_part = part;
      tree_search (tree, self->root, SIZE_MAX);
      tree->open = fmax (tree->open, open);
    }
}

/* Whether anything is found after it, be it from a step before. */
static bool
take_step (Course *self, size_t step, size_t index, Arrangement *made)
{
  Tree *tree = &self->tree;

  const double begun = tree_clock ();

  program_set_goal (self->program, steps[step].goal);
  tree->accuracy = steps[step].accuracy;
  tree->value = step > 0 ? value_of_known (self) : INFINITY;
  tree->until = step_ends (self, step, index);
  tree->done_part = 1.0 / (double) (self->most * STEPS);
  tree->done_before = (double) (index * STEPS + step) * tree->done_part;
  search_goal (self);
  if (steps[step].goal == GOAL_LEADS)
    self->leads_left = fmax (0, self->leads_left - (tree_clock () - begun));
  if (steps[step].goal == GOAL_LEADS && !tree_is_proved (tree) && made->status == ARRANGE_PROVED)
    made->leads_gap = fmin (tree->value, fmax (0, tree->value - fmax (tree->open, 0))) / mm;
  if (!tree_is_proved (tree))
    made->status = ARRANGE_BEST_FOUND;
  if (step == 0 && tree->found && !tree_is_proved (tree) && tree->value > 0)
    made->gap = fmin (1, fmax (0, (tree->value - fmax (tree->open, 0)) / tree->value));
  if ((step == 0 && !tree->found) || tree->cancelled || tree->no_memory)
    return false;
  program_hold (self->program, steps[step].goal, tree->value + steps[step].accuracy);
  return true;
}

static void
take_balance (const Course *self, Arrangement *made)
{
  const ArrangeCase *wanted = self->wanted;
  SlideCase ballast = { .nose_x = fmin (wanted->nose_x, wanted->tail_x), .tail_x = fmax (wanted->nose_x, wanted->tail_x) };
  double x = self->space->other / mm, at;

  for (size_t i = 0; i < wanted->part_count; i++)
    x += self->space->parts[i].share * made->places[i].x;
  ballast.target_x = fmin (fmax (x, wanted->forward_limit_x), wanted->aft_limit_x);
  made->x = x;
  made->ballast_x = NAN;
  if (x == ballast.target_x || ballast_solve (&ballast, self->space->mass, x, &made->ballast, &at) != CORE_OK
      || made->ballast < least_ballast * self->space->mass)
    {
      made->ballast = 0;
      return;
    }
  made->ballast_x = at;
  made->x = ballast.target_x;
}

static bool
take_result (Course *self, Arrangement *made)
{
  const ArrangeCase *wanted = self->wanted;
  double (*places)[AXES] = self->tree.places;
  Taken *taken = &self->taken[self->made->count];

  made->places = calloc (wanted->part_count + 1, sizeof *made->places);
  made->ranges = calloc (wanted->part_count + 1, sizeof *made->ranges);
  made->needed = calloc (wanted->lead_count + 1, sizeof *made->needed);
  self->made->count++;
  if (!made->places || !made->ranges || !made->needed)
    return false;
  for (size_t i = 0; i < wanted->part_count; i++)
    {
      const size_t range = node_range_at (self->space, self->root, i, places[i]);

      made->places[i] = (ArrangePlace) { places[i][0] / mm, places[i][1] / mm, places[i][2] / mm };
      made->ranges[i] = self->space->parts[i].numbers[range];
      taken->rooms[i] = self->space->parts[i].rooms[range];
      memcpy (taken->places[i], places[i], sizeof places[i]);
    }
  exchange_parts_alike (wanted, made);
  for (size_t i = 0; i < wanted->lead_count; i++)
    made->needed[i] = arrange_lead_needed (&wanted->leads[i], made->places[wanted->leads[i].from], made->places[wanted->leads[i].to]);
  take_balance (self, made);
  return true;
}

/* With the least ballast the balance stands at a limit, as near to the aim as that lets it: the second step has nothing to do. */
static CoreStatus
find_each (Course *self)
{
  Arrangements *all = self->made;

  all->status = ARRANGE_IMPOSSIBLE;
  for (size_t index = 0; index < self->most; index++)
    {
      Arrangement *made = &all->found[index];
      size_t step = 0;

      *made = (Arrangement) { .status = ARRANGE_PROVED };
      self->tree.taken_count = index;
      program_hold_nothing (self->program);
      while (step < STEPS && take_step (self, step, index, made))
        step += steps[step].goal == GOAL_BALLAST && self->tree.value > 2 * steps[step].accuracy ? 2 : 1;
      if (self->tree.cancelled || self->tree.no_memory)
        return self->tree.cancelled ? CORE_CANCELLED : CORE_NO_MEMORY;
      if (index == 0)
        all->status = step ? made->status : made->status == ARRANGE_PROVED ? ARRANGE_IMPOSSIBLE : ARRANGE_NOT_FOUND;
      if (step == 0)
        return CORE_OK;
      if (!take_result (self, made))
        return CORE_NO_MEMORY;
    }
  return CORE_OK;
}

static CoreStatus
run_course (void *data)
{
  Course *self = data;
  CoreStatus status;

  if (!node_settle (self->space, self->root))
    return CORE_OK;
  if (!(self->program = program_new (self->space, self->root)))
    return CORE_NO_MEMORY;
  self->tree = (Tree) { .space = self->space, .program = self->program, .taken = self->taken, .goes_on = self->wanted->goes_on,
                        .data = self->wanted->data };
  self->until = tree_clock () + self->wanted->seconds;
  self->leads_left = leads_time;
  status = find_each (self);
  arrangements_put_best_first (self->wanted, self->made);
  program_free (self->program);
  return status;
}

CoreStatus
arrange (const ArrangeCase *wanted, size_t most, Arrangements *made)
{
  Arrangements found = { .status = ARRANGE_IMPOSSIBLE };
  CoreStatus status = most >= 1 && most <= ARRANGE_MOST ? arrange_check (wanted) : CORE_OUT_OF_RANGE;
  Course *course;

  if (status)
    return status;
  if (!(course = calloc (1, sizeof *course)))
    return CORE_NO_MEMORY;
  *course = (Course) { .wanted = wanted, .most = most, .made = &found, .space = space_new (wanted) };
  course->root = course->space ? node_new (course->space) : NULL;
  status = course->root ? guarded (run_course, course) : CORE_NO_MEMORY;
  if (status)
    arrangements_clear (&found);
  else
    *made = found;
  node_free (course->root);
  space_free (course->space);
  free (course);
  return status;
}
