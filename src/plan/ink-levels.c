#include "plan/ink-levels.h"

#include <stdatomic.h>
#include <stdlib.h>
#include <string.h>

typedef struct { int width, height; const unsigned char *pixels; } Level;

struct InkLevels {
  atomic_int references;
  Ink *ink;
  Level levels[INK_LEVELS_MOST];
  int count;
  unsigned char *copies;       /* all but the first level */
};

enum { SQUARE = 16, SMALLEST = 64 };

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

static size_t
find_sizes (InkLevels *self)
{
  size_t bytes = 0;

  self->levels[0] = (Level) { ink_width (self->ink), ink_height (self->ink), ink_row (self->ink, 0) };
  for (self->count = 1; self->count < INK_LEVELS_MOST; self->count++)
    {
      const Level *last = &self->levels[self->count - 1];
      if (last->width <= SMALLEST && last->height <= SMALLEST)
        break;
      self->levels[self->count] = (Level) { (last->width + 1) / 2, (last->height + 1) / 2, NULL };
      bytes += (size_t) ((last->width + 1) / 2) * (size_t) ((last->height + 1) / 2);
    }
  return bytes;
}

static InkLevels *
levels_of (Ink *takes, bool even)
{
  InkLevels *self = calloc (1, sizeof *self);

  if (self)
    {
      self->ink = takes;
      atomic_init (&self->references, 1);
      const size_t bytes = find_sizes (self);
      self->copies = malloc (bytes ? bytes : 1);
    }
  if (!self || !self->copies)
    {
      ink_unref (takes);
      free (self);
      return NULL;
    }
  unsigned char *next = self->copies;
  for (int i = 1; i < self->count; i++)
    {
      halve (&self->levels[i - 1], &self->levels[i], even, next);
      next += (size_t) self->levels[i].width * (size_t) self->levels[i].height;
    }
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

/* A square of the window: where its corners lie in the file, in steps from the upper left one. */
typedef struct { Point from, right, down, both; bool whole; } Square;

static Square
square_at (const InkWindow *window, int x, int y)
{
  const Point corner = window->to_file ((Point) { x, y }, window->data);
  const Point right = window->to_file ((Point) { x + SQUARE, y }, window->data);
  const Point down = window->to_file ((Point) { x, y + SQUARE }, window->data);
  const Point far = window->to_file ((Point) { x + SQUARE, y + SQUARE }, window->data);

  return (Square) { .from = corner, .right = point_scale (point_sub (right, corner), 1.0 / SQUARE),
                    .down = point_scale (point_sub (down, corner), 1.0 / SQUARE),
                    .both = point_scale (point_sub (point_sub (far, down), point_sub (right, corner)), 1.0 / (SQUARE * SQUARE)),
                    .whole = point_is_finite (corner) && point_is_finite (right) && point_is_finite (down) && point_is_finite (far) };
}

/* The copy of which a screen pixel shows about one. */
static int
level_for (const InkLevels *self, const Square *square)
{
  double shown = fmax (point_distance ((Point) { 0, 0 }, square->right), point_distance ((Point) { 0, 0 }, square->down))
                 / ink_reduced (self->ink);
  int level = 0;

  while (shown > 1.4 && level + 1 < self->count)
    {
      shown /= 2;
      level++;
    }
  return level;
}

/* A row of the window through a copy, in 65536ths of its pixels. */
typedef struct { long x, y; int step_x, step_y; } Row;

static bool
is_inside (const Level *level, long x, long y)
{
  return x >= 0 && y >= 0 && x >> 16 < level->width - 1 && y >> 16 < level->height - 1;
}

/* The four pixels' mean by nearness, in 256ths. All four are there. */
static inline unsigned char
sample (const Level *level, long x, long y)
{
  const unsigned char *above = level->pixels + (y >> 16) * level->width + (x >> 16), *below = above + level->width;
  const int across = (x >> 8) & 255, down = (y >> 8) & 255;
  const int upper = above[0] * (256 - across) + above[1] * across, lower = below[0] * (256 - across) + below[1] * across;

  return (unsigned char) ((upper * (256 - down) + lower * down + 32768) >> 16);
}

/* Straight through: where both ends are inside, all of it is. Nothing is shown outside. */
static void
show_row (const Level *level, Row row, int width, unsigned char *shown)
{
  const long end_x = row.x + (long) (width - 1) * row.step_x, end_y = row.y + (long) (width - 1) * row.step_y;

  if (is_inside (level, row.x, row.y) && is_inside (level, end_x, end_y))
    for (int i = 0; i < width; i++)
      shown[i] = sample (level, row.x + (long) i * row.step_x, row.y + (long) i * row.step_y);
  else
    for (int i = 0; i < width; i++, row.x += row.step_x, row.y += row.step_y)
      shown[i] = is_inside (level, row.x, row.y) ? sample (level, row.x, row.y) : 0;
}

/* As lround, which costs more than the pixels of a row. */
static inline long
nearest (double value)
{
  return (long) (value + (value < 0 ? -0.5 : 0.5));
}

static void
show_square (const InkLevels *self, const Square *square, int width, int height, size_t stride, unsigned char *shown)
{
  const int number = level_for (self, square);
  const Level *level = &self->levels[number];
  const double scale = 256.0 / (ink_reduced (self->ink) * (double) (1 << number));

  for (int y = 0; y < height; y++, shown += stride)
    {
      const Point row = point_add (point_add (square->from, point_scale (square->down, y + 0.5)),
                                   point_scale (point_add (square->right, point_scale (square->both, y + 0.5)), 0.5));
      const Point along = point_add (square->right, point_scale (square->both, y + 0.5));
      const double limit = 1 << 22;
      if (!(fabs (row.x * scale) < 256 * limit) || !(fabs (row.y * scale) < 256 * limit))
        continue;
      show_row (level, (Row) { nearest ((row.x * scale - 128) * 256), nearest ((row.y * scale - 128) * 256),
                               (int) nearest (along.x * scale * 256), (int) nearest (along.y * scale * 256) }, width, shown);
    }
}

void
ink_levels_show (const InkLevels *self, const InkWindow *window, int width, int height, size_t stride, unsigned char *shown)
{
  for (int y = 0; y < height; y += SQUARE)
    for (int x = 0; x < width; x += SQUARE)
      {
        const Square square = square_at (window, x, y);
        const int across = width - x < SQUARE ? width - x : SQUARE, down = height - y < SQUARE ? height - y : SQUARE;
        unsigned char *corner = shown + (size_t) y * stride + x;

        for (int row = 0; row < down; row++)
          memset (corner + (size_t) row * stride, 0, (size_t) across);
        if (square.whole)
          show_square (self, &square, across, down, stride, corner);
      }
}
