#include <stdlib.h>
#include <string.h>
#include "geometry/curve-fitting.h"

/* How many pieces on either side feel a node that is gone: the one beside, and the curve that takes a line's direction. */
enum { FELT = 2 };

static double
length_of (const CurvePiece *piece)
{
  return piece->to - piece->from;
}

/* A node may go between two curves, and where a line stands in a longer curve. */
static bool
may_go (const CurveFitting *self, size_t node)
{
  const CurvePiece *before = &self->pieces[node - 1], *after = &self->pieces[node];

  if (self->corner[node - 1] || (self->line[node - 1] && self->line[node]))
    return false;
  if (self->line[node - 1])
    return length_of (before) < length_of (after);
  return !self->line[node] || length_of (after) < length_of (before);
}

static void
take_node_out (CurveFitting *self, size_t node)
{
  const size_t behind = self->count - node;

  self->pieces[node - 1].to = self->pieces[node].to;
  self->pieces[node - 1].end = self->pieces[node].end;
  self->line[node - 1] = false;
  self->corner[node - 1] = self->corner[node];
  memmove (self->pieces + node, self->pieces + node + 1, (behind - 1) * sizeof *self->pieces);
  memmove (self->line + node, self->line + node + 1, (behind - 1) * sizeof *self->line);
  memmove (self->corner + node, self->corner + node + 1, (behind - 1) * sizeof *self->corner);
  self->count--;
}

static double
miss_of (const CurveFitting *self, size_t piece)
{
  const Segment segment = curve_fitting_segment (self, piece);

  return curve_piece_miss (self->run, &self->pieces[piece], &segment, self->options->window);
}

/* The worst miss of the pieces near a node. */
static double
worst_about (const CurveFitting *self, size_t node)
{
  double worst = 0;

  for (size_t i = node > FELT ? node - FELT : 0; i < self->count && i < node + FELT; i++)
    {
      const double miss = miss_of (self, i);
      worst = miss > worst ? miss : worst;
    }
  return worst;
}

static bool
copy_of (const CurveFitting *self, CurveFitting *copy)
{
  *copy = *self;
  copy->pieces = malloc (self->count * sizeof *copy->pieces);
  copy->line = malloc (self->count * sizeof *copy->line);
  copy->corner = malloc (self->count * sizeof *copy->corner);
  if (!copy->pieces || !copy->line || !copy->corner)
    return false;
  memcpy (copy->pieces, self->pieces, self->count * sizeof *copy->pieces);
  memcpy (copy->line, self->line, self->count * sizeof *copy->line);
  memcpy (copy->corner, self->corner, self->count * sizeof *copy->corner);
  copy->room = self->count;
  return true;
}

static void
fitting_clear (CurveFitting *self)
{
  free (self->pieces);
  free (self->line);
  free (self->corner);
}

/* The fit without one of its nodes, if it keeps the tolerance then. */
static bool
goes_without (CurveFitting *self, size_t node)
{
  CurveFitting tried;
  bool better = copy_of (self, &tried);

  if (better)
    {
      take_node_out (&tried, node);
      curve_fitting_polish (&tried, node > FELT ? node - FELT : 0, node + FELT - 1);
      better = worst_about (&tried, node) <= self->options->tolerance;
    }
  if (better)
    {
      const CurveFitting was = *self;

      *self = tried;
      tried = was;
    }
  fitting_clear (&tried);
  return better;
}

void
curve_fitting_merge (CurveFitting *self)
{
  bool gone = true;

  while (gone)
    {
      gone = false;
      for (size_t node = 1; node < self->count; node++)
        if (may_go (self, node) && goes_without (self, node))
          {
            gone = true;
            node--;
          }
    }
}
