#include "plan/ink-levels-private.h"

#include <stdlib.h>
#include <string.h>

enum { SMALLEST = 64 };

static int
stronger (int a, int b)
{
  return a > b ? a : b;
}

/* Between the mean of four and the strongest of them, at the right and lower edge of what there is: a thin line seen from afar fades, but
 * not so much as to be lost. `even`: the mean alone. */
static void
halve (const Level *from, Level *to, bool even, unsigned char *pixels)
{
  for (int y = 0; y < to->height; y++)
    {
      const unsigned char *above = from->pixels + (size_t) (2 * y) * (size_t) from->width;
      const unsigned char *below = 2 * y + 1 < from->height ? above + from->width : above;
      unsigned char *row = pixels + (size_t) y * (size_t) to->width;

      for (int x = 0; x < to->width; x++)
        {
          const int left = 2 * x, right = left + 1 < from->width ? left + 1 : left;
          const int sum = above[left] + above[right] + below[left] + below[right];
          const int most = stronger (stronger (above[left], above[right]), stronger (below[left], below[right]));
          row[x] = (unsigned char) ((sum + (even ? sum : 4 * most) + 4) / 8);
        }
    }
  to->pixels = pixels;
}

static Level
level_of_size (int width, int height)
{
  return (Level) { .width = width, .height = height, .blocks_across = (width + INK_BLOCK - 1) / INK_BLOCK };
}

static size_t
level_blocks (const Level *level)
{
  return (size_t) level->blocks_across * (size_t) ((level->height + INK_BLOCK - 1) / INK_BLOCK);
}

/* How many bytes all the copies and blocks take. */
static size_t
find_sizes (InkLevels *self)
{
  size_t bytes;

  self->levels[0] = level_of_size (ink_width (self->ink), ink_height (self->ink));
  self->levels[0].pixels = ink_row (self->ink, 0);
  bytes = level_blocks (&self->levels[0]);
  for (self->count = 1; self->count < INK_LEVELS_MOST; self->count++)
    {
      const Level *last = &self->levels[self->count - 1];
      if (last->width <= SMALLEST && last->height <= SMALLEST)
        break;
      const Level next = level_of_size ((last->width + 1) / 2, (last->height + 1) / 2);
      self->levels[self->count] = next;
      bytes += (size_t) next.width * (size_t) next.height + level_blocks (&next);
    }
  return bytes;
}

static void
find_inked (Level *level, unsigned char *inked)
{
  memset (inked, 0, level_blocks (level));
  for (int y = 0; y < level->height; y++)
    for (int block = 0; block < level->blocks_across; block++)
      {
        const unsigned char *row = level->pixels + (size_t) y * (size_t) level->width;
        const int from = block * INK_BLOCK, to = from + INK_BLOCK < level->width ? from + INK_BLOCK : level->width;
        unsigned char any = 0;

        for (int x = from; x < to; x++)
          any |= row[x];
        inked[(size_t) (y / INK_BLOCK) * (size_t) level->blocks_across + (size_t) block] |= any;
      }
  level->inked = inked;
}

static void
fill_levels (InkLevels *self, bool even)
{
  unsigned char *next = self->copies;

  for (int i = 0; i < self->count; i++)
    {
      Level *level = &self->levels[i];
      if (i > 0)
        {
          halve (&self->levels[i - 1], level, even, next);
          next += (size_t) level->width * (size_t) level->height;
        }
      find_inked (level, next);
      next += level_blocks (level);
    }
}

static InkLevels *
levels_of (Ink *takes, bool even)
{
  InkLevels *self = calloc (1, sizeof *self);

  if (self)
    {
      self->ink = takes;
      atomic_init (&self->references, 1);
      self->copies = malloc (find_sizes (self));
    }
  if (!self || !self->copies)
    {
      ink_unref (takes);
      free (self);
      return NULL;
    }
  fill_levels (self, even);
  return self;
}

InkLevels *
ink_levels_new (Ink *takes)
{
  return levels_of (takes, false);
}

InkLevels *
ink_levels_new_even (Ink *takes)
{
  return levels_of (takes, true);
}

InkLevels *
ink_levels_ref (const InkLevels *self)
{
  InkLevels *mine = (InkLevels *) self;

  atomic_fetch_add (&mine->references, 1);
  return mine;
}

void
ink_levels_unref (InkLevels *self)
{
  if (!self || atomic_fetch_sub (&self->references, 1) > 1)
    return;
  ink_unref (self->ink);
  free (self->copies);
  free (self);
}

const Ink *
ink_levels_ink (const InkLevels *self)
{
  return self->ink;
}
