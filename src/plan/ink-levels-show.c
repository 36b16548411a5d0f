#include "plan/ink-levels-private.h"

#include <math.h>
#include <stdint.h>
#include <string.h>

/* The window is shown in squares of so many px, between whose corners the map is followed straight, and these in strips downwards. */
enum { SQUARE = 16, STRIP_SQUARES = 64 };

typedef struct { const InkLevels *levels; const InkWindow *window; int left, width, height; size_t stride; unsigned char *shown; } Strip;

/* A square of the window: where its corners lie in the file, in steps from the upper left one. */
typedef struct { Point from, right, down, both; bool whole; } Square;

/* Places in the file of the corners along an edge of a row of squares. */
static void
find_corners (const Strip *strip, int y, Point corners[STRIP_SQUARES + 1])
{
  for (int i = 0; i * SQUARE < strip->width + SQUARE; i++)
    corners[i] = strip->window->to_file ((Point) { strip->left + i * SQUARE, y }, strip->window->data);
}

static Square
square_between (const Point *upper, const Point *lower)
{
  return (Square) { .from = upper[0], .right = point_scale (point_sub (upper[1], upper[0]), 1.0 / SQUARE),
                    .down = point_scale (point_sub (lower[0], upper[0]), 1.0 / SQUARE),
                    .both = point_scale (point_sub (point_sub (lower[1], lower[0]), point_sub (upper[1], upper[0])),
                                         1.0 / (SQUARE * SQUARE)),
                    .whole = point_is_finite (upper[0]) && point_is_finite (upper[1]) && point_is_finite (lower[0])
                             && point_is_finite (lower[1]) };
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

/* A row of a square through a copy, in 65536ths of its pixels. */
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

/* Two neighbours in one, as they lie in memory. */
static inline uint16_t
two_at (const unsigned char *at)
{
  uint16_t two;

  memcpy (&two, at, sizeof two);
  return two;
}

static const int LEFT = __BYTE_ORDER__ == __ORDER_LITTLE_ENDIAN__ ? 0 : 8, RIGHT = __BYTE_ORDER__ == __ORDER_LITTLE_ENDIAN__ ? 8 : 0;

/* `from` and `to` in their shares of 256; 16 bits are just enough. */
static inline uint16_t
mixed (uint16_t from, uint16_t to, uint16_t share)
{
  return (uint16_t) ((uint16_t) (from * (uint16_t) (256 - share)) + (uint16_t) (to * share) + 128) >> 8;
}

/* The same for a whole row that lies inside. First each place's four pixels are fetched, then all are mixed, which goes eight at a time. */
static void
show_inner_row (const Level *level, Row row, unsigned char *shown)
{
  const unsigned char *first = level->pixels + (row.y >> 16) * level->width + (row.x >> 16);
  int x = (int) (row.x & 65535), y = (int) (row.y & 65535);
  uint16_t above[SQUARE], below[SQUARE], across[SQUARE], down[SQUARE];

#pragma GCC unroll 4             /* all sixteen at once, as it is done else, take longer */
  for (int i = 0; i < SQUARE; i++, x += row.step_x, y += row.step_y)
    {
      const unsigned char *at = first + (ptrdiff_t) (y >> 16) * level->width + (x >> 16);
      above[i] = two_at (at);
      below[i] = two_at (at + level->width);
      across[i] = (uint16_t) x >> 8;
      down[i] = (uint16_t) y >> 8;
    }
  for (int i = 0; i < SQUARE; i++)
    {
      const uint16_t left = mixed (above[i] >> LEFT & 255, below[i] >> LEFT & 255, down[i]);
      const uint16_t right = mixed (above[i] >> RIGHT & 255, below[i] >> RIGHT & 255, down[i]);
      shown[i] = (unsigned char) mixed (left, right, across[i]);
    }
}

/* Straight through: where both ends are inside, all of it is. Nothing is shown outside. */
static void
show_row (const Level *level, Row row, int width, unsigned char *shown)
{
  const long end_x = row.x + (long) (SQUARE - 1) * row.step_x, end_y = row.y + (long) (SQUARE - 1) * row.step_y;

  if (width == SQUARE && is_inside (level, row.x, row.y) && is_inside (level, end_x, end_y))
    show_inner_row (level, row, shown);
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
show_square (const Level *level, double scale, const Square *square, int width, int height, size_t stride, unsigned char *shown)
{
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

static int
block_of (double px, int size)
{
  return (int) (fmin (fmax (px, 0), size - 1) / INK_BLOCK);
}

/* Whether there is any ink in the blocks that the corners' box meets, a pixel more on every side. */
static bool
has_ink (const Level *level, double per_px, const Point *upper, const Point *lower)
{
  const double left = fmin (fmin (upper[0].x, upper[1].x), fmin (lower[0].x, lower[1].x));
  const double right = fmax (fmax (upper[0].x, upper[1].x), fmax (lower[0].x, lower[1].x));
  const double top = fmin (fmin (upper[0].y, upper[1].y), fmin (lower[0].y, lower[1].y));
  const double bottom = fmax (fmax (upper[0].y, upper[1].y), fmax (lower[0].y, lower[1].y));
  const int to_x = block_of (right * per_px + 1, level->width), to_y = block_of (bottom * per_px + 1, level->height);

  for (int y = block_of (top * per_px - 1, level->height); y <= to_y; y++)
    for (int x = block_of (left * per_px - 1, level->width); x <= to_x; x++)
      if (level->inked[y * level->blocks_across + x])
        return true;
  return false;
}

/* One square, `x` and `y` its first pixel in the strip, which is blank so far. */
static void
show_between (const Strip *strip, const Point *upper, const Point *lower, int x, int y)
{
  const InkLevels *levels = strip->levels;
  const Square square = square_between (upper, lower);
  const int width = strip->width - x < SQUARE ? strip->width - x : SQUARE, height = strip->height - y < SQUARE ? strip->height - y : SQUARE;

  if (!square.whole)
    return;
  const int number = level_for (levels, &square);
  const double per_px = 1 / (ink_reduced (levels->ink) * (double) (1 << number));
  if (has_ink (&levels->levels[number], per_px, upper, lower))
    show_square (&levels->levels[number], 256 * per_px, &square, width, height, strip->stride,
                 strip->shown + (size_t) y * strip->stride + x);
}

static void
show_strip (const Strip *strip)
{
  Point corners[2][STRIP_SQUARES + 1];

  find_corners (strip, 0, corners[0]);
  for (int row = 0; row * SQUARE < strip->height; row++)
    {
      const Point *upper = corners[row % 2];
      Point *lower = corners[1 - row % 2];

      find_corners (strip, (row + 1) * SQUARE, lower);
      for (int i = 0; i * SQUARE < strip->width; i++)
        show_between (strip, upper + i, lower + i, i * SQUARE, row * SQUARE);
    }
}

void
ink_levels_show (const InkLevels *self, const InkWindow *window, int width, int height, size_t stride, unsigned char *shown)
{
  const int most = STRIP_SQUARES * SQUARE;

  for (int y = 0; y < height; y++)
    memset (shown + (size_t) y * stride, 0, (size_t) width);
  for (int left = 0; left < width; left += most)
    show_strip (&(Strip) { .levels = self, .window = window, .left = left, .width = width - left < most ? width - left : most,
                           .height = height, .stride = stride, .shown = shown + left });
}
