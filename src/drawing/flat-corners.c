#include "drawing/flat-corners.h"
#include <math.h>
#include "geometry/stretch.h"

static const double one_place = 1e-6;      /* mm */

bool
flat_line_is_closed (const FlatLine *line)
{
  return line->closed || (line->count > 1 && point_distance (line->start, line->segments[line->count - 1].to) < one_place);
}

static void
add_corner (GArray *corners, guint first, Point corner)
{
  if (corners->len == first || point_distance (g_array_index (corners, Point, corners->len - 1), corner) >= one_place)
    g_array_append_val (corners, corner);
}

void
flat_line_corners (const FlatLine *line, double within, GArray *corners)
{
  const guint first = corners->len;
  Point from = line->start;

  add_corner (corners, first, from);
  for (size_t i = 0; i < line->count; i++)
    {
      const Stretch stretch = stretch_make (from, &line->segments[i]);
      const double sides = fmax (1, ceil (sqrt (stretch_sagitta (&stretch, 0, 1) / within)));
      for (double k = 1; k <= sides; k++)
        add_corner (corners, first, stretch_at (&stretch, k / sides));
      from = line->segments[i].to;
    }
  if (flat_line_is_closed (line) && corners->len > first + 1
      && point_distance (g_array_index (corners, Point, first), g_array_index (corners, Point, corners->len - 1)) < one_place)
    g_array_set_size (corners, corners->len - 1);
}
