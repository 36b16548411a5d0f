#include "support/drawn-ink.h"
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { PAPER = 238, LINE = 40 };

static double
distance_to_stretch (Point place, Point from, Point to)
{
  const Point way = point_sub (to, from), off = point_sub (place, from);
  const double length = way.x * way.x + way.y * way.y;
  const double t = length > 0 ? fmin (fmax ((off.x * way.x + off.y * way.y) / length, 0), 1) : 0;

  return point_distance (place, point_mix (from, to, t));
}

static void
draw_stretch (unsigned char *paper, int width, int height, Point from, Point to, double line_width)
{
  const double reach = line_width / 2 + 1;
  const int left = (int) fmax (floor (fmin (from.x, to.x) - reach), 0), right = (int) fmin (ceil (fmax (from.x, to.x) + reach), width - 1);
  const int top = (int) fmax (floor (fmin (from.y, to.y) - reach), 0), foot = (int) fmin (ceil (fmax (from.y, to.y) + reach), height - 1);

  for (int y = top; y <= foot; y++)
    for (int x = left; x <= right; x++)
      {
        const double off = distance_to_stretch ((Point) { x + 0.5, y + 0.5 }, from, to);
        const double covered = fmin (fmax (line_width / 2 + 0.5 - off, 0), 1);
        const double grey = PAPER - covered * (PAPER - LINE);
        unsigned char *at = paper + (size_t) y * (size_t) width + x;

        if (grey < *at)
          *at = (unsigned char) grey;
      }
}

unsigned char *
paper_with_lines (int width, int height, const DrawnLine lines[], size_t count)
{
  unsigned char *paper = malloc ((size_t) width * (size_t) height);

  memset (paper, PAPER, (size_t) width * (size_t) height);
  for (size_t i = 0; i < count; i++)
    for (size_t at = 1; at < lines[i].count; at++)
      draw_stretch (paper, width, height, lines[i].places[at - 1], lines[i].places[at], lines[i].width);
  return paper;
}

Ink *
ink_of_lines (int width, int height, const DrawnLine lines[], size_t count)
{
  Raster *raster = raster_new (width, height, 1, 1, paper_with_lines (width, height, lines, count));
  Ink *ink = NULL;

  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  raster_unref (raster);
  return ink;
}

size_t
places_of_outline (const Outline *outline, double scale, Point shift, Point *places)
{
  size_t count = 0;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Point from = outline_node (outline, i);
      const Segment *segment = outline_segment (outline, i);
      const size_t steps = (size_t) ceil (2 * scale * segment_length (from, segment)) + 1;
      for (size_t step = i > 0; step <= steps; step++)
        {
          const Point own = segment_at (from, segment, (double) step / (double) steps);
          ck_assert_uint_lt (count, DRAWN_ROOM);
          places[count++] = (Point) { own.y * scale + shift.x, own.x * scale + shift.y };
        }
    }
  return count;
}
