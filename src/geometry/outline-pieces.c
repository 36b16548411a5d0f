#include "geometry/outline-private.h"

#include <stdlib.h>
#include "geometry/ascending.h"

/* y runs one way, so its ends bound it: the same numbers, to the last bit, that decide whether a station is passed. */
static Piece
piece_between (const Outline *self, size_t stretch, double t_from, double t_to)
{
  const Stretch *run = &self->stretches[stretch];
  Piece piece = { .stretch = stretch, .t_from = t_from, .t_to = t_to, .from = stretch_at (run, t_from), .to = stretch_at (run, t_to),
                  .box = stretch_bounds (run, t_from, t_to) };

  piece.box.min.y = fmin (piece.from.y, piece.to.y);
  piece.box.max.y = fmax (piece.from.y, piece.to.y);
  return piece;
}

static size_t
cut_stretch (const Outline *self, size_t stretch, Piece pieces[3])
{
  const Stretch *run = &self->stretches[stretch];
  double ends[4] = { 0 };
  const size_t count = stretch_y_turns (run, ends + 1) + 1;

  ends[count] = 1;
  for (size_t i = 0; i < count; i++)
    pieces[i] = piece_between (self, stretch, ends[i], ends[i + 1]);
  return count;
}

static CoreStatus
build_tree (Outline *self)
{
  BoxTree *tree = &self->tree;
  size_t total = 0;

  for (size_t count = self->piece_count; ; count = (count + 1) / 2)
    {
      tree->first[tree->levels] = total;
      tree->count[tree->levels++] = count;
      total += count;
      if (count == 1)
        break;
    }
  tree->boxes = malloc (total * sizeof *tree->boxes);
  if (!tree->boxes)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < self->piece_count; i++)
    tree->boxes[i] = self->pieces[i].box;
  for (size_t level = 1; level < tree->levels; level++)
    for (size_t i = 0; i < tree->count[level]; i++)
      {
        const Box *below = tree->boxes + tree->first[level - 1] + 2 * i;
        const bool two = 2 * i + 1 < tree->count[level - 1];
        tree->boxes[tree->first[level] + i] = two ? box_join (below[0], below[1]) : below[0];
      }
  return CORE_OK;
}

CoreStatus
outline_cut_into_pieces (Outline *self)
{
  self->pieces = malloc (3 * (self->count + 1) * sizeof *self->pieces);
  if (!self->pieces)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i <= self->count; i++)
    self->piece_count += cut_stretch (self, i, self->pieces + self->piece_count);
  return build_tree (self);
}

static bool
piece_passes (const Piece *piece, double y, bool outermost)
{
  const double low = fmin (piece->from.y, piece->to.y), high = fmax (piece->from.y, piece->to.y);

  return outermost ? low < y && y <= high : low <= y && y < high;
}

static bool
box_spans (const BoxTree *tree, size_t level, size_t i, double y)
{
  const Box *box = &tree->boxes[tree->first[level] + i];

  return box->min.y <= y && y <= box->max.y;
}

size_t
outline_piece_at_station (const Outline *self, double y, bool outermost, size_t piece)
{
  const BoxTree *tree = &self->tree;

  while (piece < self->piece_count)
    {
      size_t level = 0;

      if (piece_passes (&self->pieces[piece], y, outermost))
        return piece;
      /* The highest box that begins with this piece and does not reach the station is passed over at once. */
      while (level + 1 < tree->levels && piece % ((size_t) 2 << level) == 0 && !box_spans (tree, level + 1, piece >> (level + 1), y))
        level++;
      piece += (size_t) 1 << level;
    }
  return self->piece_count;
}

double
outline_piece_x (const Outline *self, const Piece *piece, double y)
{
  const Stretch *run = &self->stretches[piece->stretch];

  if (y == piece->from.y)
    return piece->from.x;
  if (y == piece->to.y)
    return piece->to.x;
  if (run->kind == SEGMENT_LINE)
    return piece->from.x + (y - piece->from.y) / (piece->to.y - piece->from.y) * (piece->to.x - piece->from.x);
  if (run->kind == SEGMENT_ARC)
    {
      const double up = (y - run->centre.y) / run->ry, reach = sqrt (fmax ((1 - up) * (1 + up), 0));
      const double middle = run->begin + run->sweep * (piece->t_from + piece->t_to) / 2;
      return run->centre.x + copysign (run->rx * reach, cos (middle));
    }
  const bool rises = piece->to.y > piece->from.y;
  return stretch_at (run, stretch_t_at_station (run, rises ? piece->t_from : piece->t_to, rises ? piece->t_to : piece->t_from, y)).x;
}

size_t
outline_levels (const Outline *self, double levels[])
{
  size_t count = 0, kept = 1;

  for (size_t i = 0; i < self->piece_count; i++)
    {
      levels[count++] = self->pieces[i].from.y;
      levels[count++] = self->pieces[i].to.y;
    }
  qsort (levels, count, sizeof *levels, ascending_doubles);
  for (size_t i = 1; i < count; i++)
    if (levels[i] > levels[kept - 1])
      levels[kept++] = levels[i];
  return kept;
}
