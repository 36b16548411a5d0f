#include "drawing/template-search.h"
#include <math.h>
#include <string.h>
#include "drawing/template-keep.h"

static const double carried_cost = 0.04;                 /* of a mm */
static const size_t most_work = 8000000, most_tries = 1600;      /* tenths of a second */
static const double dearer = 1;                          /* what is gone on from may cost so much more at first, and less and less */

/* What is tried: an order, beside one of the shapes that the notes may have. */
typedef struct { TemplateTake *takes; guint shape; } Way;

/* How far words are carried off edges: further from what they tell of. */
static double
words_carried (const SheetPen *pen, const TemplateCell *cell)
{
  double sum = 0;

  for (guint i = 0; i < cell->piece->words->len; i++)
    {
      const Point by = template_keep_shift (pen, cell, i);
      sum += fabs (by.x) + fabs (by.y);
    }
  return sum;
}

static void
found_clear (TemplateFound *found)
{
  g_free (found->places);
  *found = (TemplateFound) { .cost = INFINITY };
}

/* Among the best in the order of their costs, unless it costs what another does: most orders give places that others gave. Takes the places. */
static void
keep (TemplateSearch *self, TemplateFound found)
{
  size_t at = 0;

  while (at < self->count && self->found[at].cost < found.cost - 1e-6)
    at++;
  if (at == G_N_ELEMENTS (self->found) || (at < self->count && self->found[at].cost < found.cost + 1e-6))
    {
      found_clear (&found);
      return;
    }
  if (self->count == G_N_ELEMENTS (self->found))
    found_clear (&self->found[--self->count]);
  memmove (&self->found[at + 1], &self->found[at], (self->count - at) * sizeof *self->found);
  self->found[at] = found;
  self->count++;
}

/* Gives what it costs. */
static double
try_way (TemplateSearch *self, const TemplatePack *pack, const Way *way, size_t *work)
{
  TemplateFound found = { .places = g_new0 (TemplateCell, pack->upright->len + 1), .taken = pack->shapes[way->shape] };

  template_pack (pack, found.taken, way->takes, found.places, work);
  found.cost = template_pack_cost (pack, found.taken, found.places);
  keep (self, found);
  return found.cost;
}

/* Larger pieces first: by what they need at least, their longer side or their area. */
static double
size_of (const TemplatePack *pack, guint piece, bool by_area)
{
  const Box box = g_array_index (pack->upright, TemplateCell, piece).box;

  return by_area ? box_width (box) * box_height (box) : fmax (box_width (box), box_height (box));
}

static void
sort_takes (const TemplatePack *pack, TemplateTake takes[], bool by_area)
{
  const guint count = pack->upright->len;

  for (guint i = 0; i < count; i++)
    {
      guint k = i;

      for (; k > 0 && size_of (pack, takes[k - 1].piece, by_area) < size_of (pack, i, by_area); k--)
        takes[k] = takes[k - 1];
      takes[k] = (TemplateTake) { i, TEMPLATE_EITHER };
    }
}

/* The same numbers on every machine. */
static guint
next_number (guint32 *seed, guint below)
{
  *seed = *seed * 1664525u + 1013904223u;
  return (guint) (((guint64) *seed * below) >> 32);
}

/* A piece is taken earlier or later, or lies otherwise. */
static void
vary_takes (TemplateTake takes[], guint count, guint32 *seed)
{
  const guint from = next_number (seed, count), to = next_number (seed, count);
  const TemplateTake moved = takes[from];

  if (next_number (seed, 3) == 0)
    {
      takes[from].turn = (TemplateTurn) next_number (seed, 3);
      return;
    }
  if (from < to)
    memmove (takes + from, takes + from + 1, (to - from) * sizeof *takes);
  else
    memmove (takes + to + 1, takes + to, (from - to) * sizeof *takes);
  takes[to] = moved;
}

/* Another way that differs a little; now and then beside notes of another shape. */
static void
vary (Way *way, const TemplatePack *pack, guint32 *seed)
{
  const guint so_often = 6;

  for (guint changes = 1 + next_number (seed, 2); changes > 0; changes--)
    vary_takes (way->takes, pack->upright->len, seed);
  if (next_number (seed, so_often) == 0)
    way->shape = next_number (seed, pack->shape_count);
}

static void
take_over (Way *to, const Way *from, guint count)
{
  memcpy (to->takes, from->takes, count * sizeof *to->takes);
  to->shape = from->shape;
}

/* From each way to one that differs a little; what costs a little more is gone on from too, lest the search ends in the first dip. */
static void
wander (TemplateSearch *self, const TemplatePack *pack, Way *way, Way *other)
{
  const guint fineness = 1000, count = pack->upright->len;
  guint32 seed = 26;
  size_t work = 0;
  double least = try_way (self, pack, way, &work);

  for (size_t i = 0; i < most_tries && work < most_work; i++)
    {
      const double cost = try_way (self, pack, other, &work), left = 1 - (double) i / (double) most_tries;

      if (cost <= least + dearer * left * next_number (&seed, fineness) / fineness)
        {
          take_over (way, other, count);
          least = cost;
        }
      take_over (other, way, count);
      vary (other, pack, &seed);
    }
}

void
template_search (TemplateSearch *self, const TemplatePack *pack)
{
  const guint count = pack->upright->len;
  g_autofree TemplateTake *takes = g_new0 (TemplateTake, count + 1), *others = g_new0 (TemplateTake, count + 1);
  Way way = { takes, 0 }, other = { others, pack->shape_count - 1 };

  sort_takes (pack, takes, false);
  sort_takes (pack, others, true);
  wander (self, pack, &way, &other);
}

TemplateFound
template_search_end (TemplateSearch *self, const SheetPen *pen, guint pieces)
{
  TemplateFound best = { .cost = INFINITY };

  for (size_t i = 0; i < self->count; i++)
    {
      TemplateFound *found = &self->found[i];

      for (guint k = 0; k < pieces; k++)
        found->cost += carried_cost * words_carried (pen, &found->places[k]);
      if (found->cost < best.cost - 1e-9)
        {
          found_clear (&best);
          best = *found;
          found->places = NULL;
        }
      found_clear (found);
    }
  self->count = 0;
  return best;
}
