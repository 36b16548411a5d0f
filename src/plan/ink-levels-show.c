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

/* A whole row that lies inside, fetched: for each place its two pixels above, and the two below. */
typedef struct { Row row; uint16_t above[SQUARE], below[SQUARE]; } Fetched;

typedef int Four __attribute__ ((vector_size (16)));

/* Where a row's pixels lie after that of its first, reckoned four at a time: by itself the compiler takes one after the other. */
static inline void
find_offsets (const Row *row, int width, Four offsets[SQUARE / 4])
{
  Four x = (int) (row->x & 65535) + (Four) { 0, 1, 2, 3 } * row->step_x, y = (int) (row->y & 65535) + (Four) { 0, 1, 2, 3 } * row->step_y;

  for (int i = 0; i < SQUARE / 4; i++, x += 4 * row->step_x, y += 4 * row->step_y)
    offsets[i] = (y >> 16) * width + (x >> 16);
}

static void
fetch_row (const Level *level, Fetched *to)
{
  const unsigned char *above = level->pixels + (to->row.y >> 16) * level->width + (to->row.x >> 16), *below = above + level->width;
  Four fours[SQUARE / 4];
  int offsets[SQUARE];

  find_offsets (&to->row, level->width, fours);
  memcpy (offsets, fours, sizeof offsets);
  for (int i = 0; i < SQUARE; i++)
    {
      to->above[i] = two_at (above + offsets[i]);
      to->below[i] = two_at (below + offsets[i]);
    }
}

/* The same as `sample`, eight at a time. Of a place what lies between two pixels is its lower 16 bits, which need no others. */
static void
mix_row (const Fetched *from, unsigned char *shown)
{
  const uint16_t x = (uint16_t) from->row.x, y = (uint16_t) from->row.y;
  const uint16_t step_x = (uint16_t) from->row.step_x, step_y = (uint16_t) from->row.step_y;

  for (uint16_t i = 0; i < SQUARE; i++)
    {
      const uint16_t across = (uint16_t) (x + i * step_x) >> 8, down = (uint16_t) (y + i * step_y) >> 8;
      const uint16_t left = mixed (from->above[i] >> LEFT & 255, from->below[i] >> LEFT & 255, down);
      const uint16_t right = mixed (from->above[i] >> RIGHT & 255, from->below[i] >> RIGHT & 255, down);

      shown[i] = (unsigned char) mixed (left, right, across);
    }
}

static bool
row_is_inside (const Level *level, const Row *row)
{
  return is_inside (level, row->x, row->y)
         && is_inside (level, row->x + (long) (SQUARE - 1) * row->step_x, row->y + (long) (SQUARE - 1) * row->step_y);
}

/* Nothing is shown outside. */
static void
show_row (const Level *level, Row row, int width, unsigned char *shown)
{
  for (int i = 0; i < width; i++, row.x += row.step_x, row.y += row.step_y)
    shown[i] = is_inside (level, row.x, row.y) ? sample (level, row.x, row.y) : 0;
}

/* The rows of a square, in 65536ths of a copy's pixels: where the first begins, its step, and what both grow by from row to row. */
typedef struct { Point at, at_grows, step, step_grows; } Rows;

static Rows
rows_of (const Square *square, double scale)
{
  const double fine = scale * 256;
  const Point step = point_scale (point_add (square->right, point_scale (square->both, 0.5)), fine);
  const Point down = point_scale (square->down, fine), step_grows = point_scale (square->both, fine);
  const Point at = point_add (point_scale (square->from, fine), point_scale (point_add (down, step), 0.5));

  return (Rows) { .at = { at.x - 32768, at.y - 32768 }, .at_grows = point_add (down, point_scale (step_grows, 0.5)),
                  .step = step, .step_grows = step_grows };
}

/* The same in whole numbers, a row's own divided by 65536 once more: from row to row there is only to add. */
typedef struct { long x, y, step_x, step_y; } Fine;

static Fine
fine_of (Point at, Point step)
{
  return (Fine) { (long) (at.x * 65536), (long) (at.y * 65536), (long) (step.x * 65536), (long) (step.y * 65536) };
}

static inline Row
fine_row (const Fine *from, const Fine *grows, int rows)
{
  return (Row) { (from->x + rows * grows->x + 32768) >> 16, (from->y + rows * grows->y + 32768) >> 16,
                 (int) ((from->step_x + rows * grows->step_x + 32768) >> 16), (int) ((from->step_y + rows * grows->step_y + 32768) >> 16) };
}

static bool
is_near (Point at)
{
  const double limit = 65536.0 * (1 << 22);

  return fabs (at.x) < limit && fabs (at.y) < limit;
}

/* What was fetched of a row cannot be mixed at once without waiting for it: so first all rows are fetched. */
static void
show_whole (const Level *level, const Fine *first, const Fine *grows, int height, size_t stride, unsigned char *shown)
{
  Fetched fetched[SQUARE];

  for (int y = 0; y < height; y++)
    {
      fetched[y].row = fine_row (first, grows, y);
      fetch_row (level, &fetched[y]);
    }
  for (int y = 0; y < height; y++)
    mix_row (&fetched[y], shown + (size_t) y * stride);
}

static void
show_in_part (const Level *level, Row row, int width, unsigned char *shown)
{
  Fetched fetched = { .row = row };

  if (width == SQUARE && row_is_inside (level, &row))
    {
      fetch_row (level, &fetched);
      mix_row (&fetched, shown);
    }
  else
    show_row (level, row, width, shown);
}

/* Both ways straight from row to row: where the ends of the first and of the last are inside, all of it is. */
static void
show_square (const Level *level, const Rows *rows, int width, int height, size_t stride, unsigned char *shown)
{
  if (!is_near (rows->at) || !is_near (point_add (rows->at, point_scale (rows->at_grows, SQUARE))))
    return;
  const Fine first = fine_of (rows->at, rows->step), grows = fine_of (rows->at_grows, rows->step_grows);
  const Row upper = fine_row (&first, &grows, 0), lower = fine_row (&first, &grows, SQUARE - 1);

  if (width == SQUARE && row_is_inside (level, &upper) && row_is_inside (level, &lower))
    show_whole (level, &first, &grows, height, stride, shown);
  else
    for (int y = 0; y < height; y++)
      show_in_part (level, fine_row (&first, &grows, y), width, shown + (size_t) y * stride);
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
    {
      const Rows rows = rows_of (&square, 256 * per_px);
      show_square (&levels->levels[number], &rows, width, height, strip->stride, strip->shown + (size_t) y * strip->stride + x);
    }
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
