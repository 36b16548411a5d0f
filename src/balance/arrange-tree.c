#include "balance/arrange-branch.h"

#include <float.h>
#include <math.h>
#include <stdlib.h>

/* How well a lead's length is known before boxes are put apart, mm. */
static const double rough = 0.5;
/* How many choices are tried before one is taken. */
static const size_t looks = 3;
/* Every branching decides one thing more; no search that ends in time comes so far down. */
static const size_t deepest = 600;
/* How often it is asked whether to go on, s. */
static const double pause_s = 0.02;

double
tree_clock (void)
{
  struct timespec time;

  clock_gettime (CLOCK_MONOTONIC, &time);
  return (double) time.tv_sec + 1e-9 * (double) time.tv_nsec;
}

bool
tree_is_stopped (const Tree *self)
{
  return self->late || self->cancelled || self->no_memory;
}

bool
tree_is_proved (const Tree *self)
{
  return !tree_is_stopped (self) && !self->failed && !self->too_many;
}

static bool
tree_stops (Tree *self)
{
  self->too_many = self->too_many || self->nodes >= self->most_nodes;
  if (tree_is_stopped (self) || self->too_many)
    return true;
  const double now = tree_clock ();
  self->late = now >= self->until;
  if (self->goes_on && now >= self->next_asked)
    {
      self->next_asked = now + pause_s;
      self->cancelled = !self->goes_on (fmin (self->done_before + self->done_part * self->done, 1), self->data);
    }
  return self->cancelled || self->late;
}

static double
cutoff_of (const Tree *self)
{
  return fmin (self->value - self->accuracy, DBL_MAX);
}

static void
take (Tree *self, double places[][AXES])
{
  self->found = true;
  self->value = program_value (self->program);
  for (size_t i = 0; i < self->space->part_count; i++)
    for (size_t axis = 0; axis < AXES; axis++)
      self->places[i][axis] = places[i][axis];
}

/* What the solver could not do is left unsearched. */
static void
give_up (Tree *self, const Node *node)
{
  self->failed = true;
  self->open = fmin (self->open, node->bound);
}

/* Bounds each branch from where the node was solved, drops those without hope and puts the most hopeful first. */
static void
order_branches (Tree *self, const Basis *basis, Branches *branches)
{
  size_t kept = 0;

  for (size_t i = 0; i < branches->count; i++)
    {
      Node *branch = branches->nodes[i];
      size_t k = kept;
      bool failed = false;

      if (tree_stops (self))
        {
          branches->nodes[kept++] = branch;
          continue;
        }
      basis_take (basis, self->program);
      if (!program_bound (self->program, branch, cutoff_of (self), &failed))
        {
          if (failed)
            give_up (self, branch);
          node_free (branch);
          continue;
        }
      branch->bound = fmax (branch->bound, program_value (self->program));
      for (; k > 0 && branches->nodes[k - 1]->bound > branch->bound; k--)
        branches->nodes[k] = branches->nodes[k - 1];
      branches->nodes[k] = branch;
      kept++;
    }
  branches->count = kept;
}

/* Of the choices the one whose branches promise least: it is searched soonest to its end. */
static void
choose_branches (Tree *self, const Node *node, const Choices *choices, const Basis *basis, Branches *best)
{
  double most = -INFINITY;

  for (size_t i = 0; i < choices->count && i < looks && !self->no_memory; i++)
    {
      Branches branches;
      double hope;

      self->no_memory = !branches_make (self, node, &choices->choices[i], &branches);
      order_branches (self, basis, &branches);
      hope = branches.count ? branches.nodes[0]->bound : INFINITY;
      if (hope > most)
        {
          branches_free (best);
          *best = branches;
          most = hope;
        }
      else
        branches_free (&branches);
      if (!best->count)
        return;
    }
}

static void search (Tree *self, const Node *node, const Basis *basis, double part);

static void
search_choices (Tree *self, const Node *node, const Choices *choices, double part)
{
  Basis *basis = basis_keep (self->program);
  Branches branches = { .count = 0 };

  self->no_memory = self->no_memory || !basis;
  if (!basis)
    return;
  choose_branches (self, node, choices, basis, &branches);
  if (!branches.count)
    self->done += part;
  for (size_t i = 0; i < branches.count; i++)
    search (self, branches.nodes[i], basis, part / (double) branches.count);
  branches_free (&branches);
  basis_let_go (basis, self->program);
}

/* First roughly, which is enough to see what is in whose way; to the end only where nothing is. */
static void
solve_node (Tree *self, const Node *node, double part)
{
  const double rounding[] = { fmax (rough, self->accuracy / 4), self->accuracy / 4 };
  double places[PARTS_MOST][AXES];
  Choices choices = { .count = 0 };
  bool failed = false, below = true;

  for (size_t i = 0; choices.count == 0 && below && !failed && i < 2; i++)
    if ((below = program_solve (self->program, node, cutoff_of (self), rounding[i], &failed)) && !failed)
      {
        program_places (self->program, places);
        choices_find (self, node, places, &choices);
      }
  if (failed)
    give_up (self, node);
  else if (below && !choices.count)
    take (self, places);
  if (choices.count && !failed)
    search_choices (self, node, &choices, part);
  else
    self->done += part;
}

static void
search (Tree *self, const Node *node, const Basis *basis, double part)
{
  const bool hopeless = node->bound >= cutoff_of (self);

  if (hopeless || tree_stops (self))
    {
      if (!hopeless)
        self->open = fmin (self->open, node->bound);
      self->done += part;
      return;
    }
  self->depth++;
  self->nodes++;
  if (basis)
    basis_take (basis, self->program);
  if (self->depth <= deepest)
    solve_node (self, node, part);
  else
    give_up (self, node);
  self->depth--;
}

void
tree_search (Tree *self, const Node *root, size_t most_nodes)
{
  self->failed = self->too_many = false;
  self->open = INFINITY;
  self->done = 0;
  self->depth = self->nodes = 0;
  self->most_nodes = most_nodes;
  search (self, root, NULL, 1);
}
