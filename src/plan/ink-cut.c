#include "plan/ink-cut.h"

#include <math.h>
#include <stdlib.h>

static unsigned char
mean_at (const Ink *ink, int left, int top, int side)
{
  unsigned sum = 0;

  for (int y = top; y < top + side; y++)
    for (int x = left; x < left + side; x++)
      sum += ink_row (ink, y)[x];
  return (unsigned char) ((sum + (unsigned) (side * side) / 2) / (unsigned) (side * side));
}

CoreStatus
ink_cut (const Ink *ink, Box box, int coarser, InkCut *made)
{
  const int left = (int) fmax (floor (box.min.x), 0), top = (int) fmax (floor (box.min.y), 0);
  const int width = ((int) fmin (ceil (box.max.x), ink_width (ink)) - left) / coarser;
  const int height = ((int) fmin (ceil (box.max.y), ink_height (ink)) - top) / coarser;

  if (width < 1 || height < 1)
    return CORE_OUT_OF_RANGE;
  unsigned char *pixels = malloc ((size_t) width * (size_t) height);
  if (!pixels)
    return CORE_NO_MEMORY;
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      pixels[(size_t) y * (size_t) width + (size_t) x] = mean_at (ink, left + coarser * x, top + coarser * y, coarser);
  Raster *raster = raster_new (width, height, 1, 1, pixels);
  Ink *piece = raster ? ink_of_channel (raster, 0) : NULL;
  if (raster)
    raster_unref (raster);
  else
    free (pixels);
  if (!piece)
    return CORE_NO_MEMORY;
  *made = (InkCut) { .ink = piece, .corner = { left, top }, .coarser = coarser };
  return CORE_OK;
}
