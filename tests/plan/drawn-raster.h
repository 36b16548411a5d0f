#pragma once
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "plan/ink.h"
#include "plan/raster.h"

/* Lines drawn pixel by pixel, each as dark as the part of it that the line covers: what a fit is judged against is known exactly. */
typedef struct { Point a, b; double width, strength; } DrawnLine;

static inline double
drawn_distance (Point place, const DrawnLine *line)
{
  const Point way = point_sub (line->b, line->a), off = point_sub (place, line->a);
  const double t = fmin (fmax ((off.x * way.x + off.y * way.y) / (way.x * way.x + way.y * way.y), 0), 1);

  return point_distance (place, point_add (line->a, point_scale (way, t)));
}

/* How much of a pixel is inked, 0 to 1. */
static inline double
drawn_cover (const DrawnLine lines[], size_t count, int x, int y)
{
  double cover = 0;

  for (size_t i = 0; i < count; i++)
    {
      const double inside = lines[i].width / 2 - drawn_distance ((Point) { x + 0.5, y + 0.5 }, &lines[i]) + 0.5;
      cover = fmax (cover, lines[i].strength * fmin (fmax (inside, 0), 1));
    }
  return cover;
}

/* Dark lines on light paper, one channel. One reference. */
static inline Ink *
drawn_ink (const DrawnLine lines[], size_t count, int width, int height)
{
  unsigned char *pixels = malloc ((size_t) width * (size_t) height);
  Ink *ink;

  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      pixels[y * width + x] = (unsigned char) lround (240 - 200 * drawn_cover (lines, count, x, y));
  Raster *raster = raster_new (width, height, 1, 1, pixels);
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  raster_unref (raster);
  return ink;
}
