#include "plan/ink-ground.h"

#include <stdlib.h>
#include <string.h>
#include "geometry/ascending.h"

/* Every second pixel each way is enough for a median. */
enum { STRIDE = 2, GREATEST = 255 };

static int
smaller (int a, int b)
{
  return a < b ? a : b;
}

static float
median_of_square (const Raster *raster, InkChannel channel, int column, int row)
{
  const int channels = raster_channels (raster), right = smaller ((column + 1) * GROUND_SQUARE, raster_width (raster)),
            bottom = smaller ((row + 1) * GROUND_SQUARE, raster_height (raster));
  int histogram[GREATEST + 1] = { 0 }, count = 0, seen = 0, level = 0;

  for (int y = row * GROUND_SQUARE; y < bottom; y += STRIDE)
    for (int x = column * GROUND_SQUARE; x < right; x += STRIDE, count++)
      histogram[channel_value (raster_row (raster, y) + (size_t) x * (size_t) channels, channel)]++;
  while (level < GREATEST && (seen += histogram[level]) * 2 < count)
    level++;
  return level > 0 ? (float) level : 1.0f;
}

static float
median_about (const InkGround *self, const float *level, int column, int row)
{
  float about[9];
  size_t count = 0;

  for (int y = row - 1; y <= row + 1; y++)
    for (int x = column - 1; x <= column + 1; x++)
      if (x >= 0 && y >= 0 && x < self->columns && y < self->rows)
        about[count++] = level[y * self->columns + x];
  qsort (about, count, sizeof *about, ascending_floats);
  return about[count / 2];
}

bool
ink_ground_make (const Raster *raster, InkChannel channel, InkGround *made)
{
  InkGround self = { .columns = (raster_width (raster) + GROUND_SQUARE - 1) / GROUND_SQUARE,
                     .rows = (raster_height (raster) + GROUND_SQUARE - 1) / GROUND_SQUARE, .channel = channel };
  const size_t count = (size_t) self.columns * (size_t) self.rows;
  float *rough = malloc (count * sizeof *rough);

  self.level = malloc (count * sizeof *self.level);
  if (rough && self.level)
    {
      for (int row = 0; row < self.rows; row++)
        for (int column = 0; column < self.columns; column++)
          rough[row * self.columns + column] = median_of_square (raster, channel, column, row);
      for (int row = 0; row < self.rows; row++)
        for (int column = 0; column < self.columns; column++)
          self.level[row * self.columns + column] = median_about (&self, rough, column, row);
      *made = self;
    }
  else
    free (self.level);
  const bool done = rough && self.level;
  free (rough);
  return done;
}

void
ink_ground_clear (InkGround *self)
{
  free (self->level);
  *self = (InkGround) { 0 };
}

/* The square before the place and the share of the next. */
static float
place_in_squares (int pixel, int count, int *before)
{
  const float place = ((float) pixel + 0.5f) / GROUND_SQUARE - 0.5f;

  *before = place < 0 ? 0 : smaller ((int) place, count - 1);
  return place < 0 ? 0 : smaller ((int) place, count - 1) == count - 1 ? 0 : place - (float) *before;
}

void
ink_ground_row (const InkGround *self, int y, int width, float *levels)
{
  int row;
  const float down = place_in_squares (y, self->rows, &row);
  const float *above = self->level + (size_t) row * (size_t) self->columns;
  const float *below = row + 1 < self->rows ? above + self->columns : above;

  for (int x = 0; x < width; x++)
    {
      int column;
      const float along = place_in_squares (x, self->columns, &column);
      const int next = column + 1 < self->columns ? column + 1 : column;
      const float upper = above[column] + (above[next] - above[column]) * along;
      const float lower = below[column] + (below[next] - below[column]) * along;
      levels[x] = upper + (lower - upper) * down;
    }
}
