#include <math.h>
#include "drawing/line-kind.h"
#include "drawing/symbols.h"

static void
hatch_line (cairo_t *cr, double width)
{
  cairo_set_line_width (cr, width);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
}

/* The lines through the part of the box that is seen: much enlarged, most of them are not. */
static void
hatch_lines (cairo_t *cr, const Look *look, Box box)
{
  const double width = box.max.x - box.min.x, height = box.max.y - box.min.y, step = look->hatch_step;
  double left, top, right, bottom;

  cairo_clip_extents (cr, &left, &top, &right, &bottom);
  hatch_line (cr, look->hatch_width);
  for (double x = box.min.x - height + fmod (height, step); x < box.min.x + width + step; x += step)
    {
      const double from = fmax (box.min.y, top) - step, to = fmin (box.max.y, bottom) + step;
      const double at_from = x + box.max.y - from, at_to = x + box.max.y - to;     /* rising to the right */

      if (at_from < left - step || at_to > right + step)
        continue;
      cairo_move_to (cr, at_to, to);
      cairo_line_to (cr, at_from, from);
    }
  cairo_stroke (cr);
}

/* One step of the lines each way, in whole pixels, which repeats without a seam: a line from corner to corner, and what its neighbours
 * reach into the other corners. */
static cairo_surface_t *
hatch_tile (int step, double line_width, Colour colour)
{
  cairo_surface_t *tile = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, step, step);
  cairo_t *cr = cairo_create (tile);

  look_set_source (cr, colour);
  hatch_line (cr, line_width);
  for (int i = 0; i <= 2; i++)
    {
      cairo_move_to (cr, (i + 1) * step, -step);
      cairo_line_to (cr, (i - 2) * step, 2 * step);
    }
  cairo_stroke (cr);
  cairo_destroy (cr);
  return tile;
}

/* On a screen the box is papered with one tile: dozens of slanting lines took longer than all else on the sheet. Steps and the box's edges
 * come to whole pixels. */
static void
hatch_tiled (cairo_t *cr, const Look *look, Box box, Colour colour, const DeviceAxis axes[2])
{
  const double scale = axes[0].scale, x = round (box.min.x * scale + axes[0].shift), y = round (box.max.y * scale + axes[1].shift);
  cairo_surface_t *tile = hatch_tile ((int) fmax (1, round (look->hatch_step * scale)), look->hatch_width * scale, colour);
  cairo_pattern_t *pattern = cairo_pattern_create_for_surface (tile);
  cairo_matrix_t matrix;

  cairo_matrix_init (&matrix, scale, 0, 0, scale, axes[0].shift - x, axes[1].shift - y);
  cairo_pattern_set_matrix (pattern, &matrix);
  cairo_pattern_set_extend (pattern, CAIRO_EXTEND_REPEAT);
  cairo_pattern_set_filter (pattern, CAIRO_FILTER_NEAREST);
  cairo_set_source (cr, pattern);
  cairo_rectangle (cr, (x - axes[0].shift) / scale, (round (box.min.y * scale + axes[1].shift) - axes[1].shift) / scale,
                   round (box.max.x * scale + axes[0].shift - x) / scale,
                   (y - round (box.min.y * scale + axes[1].shift)) / scale);
  cairo_fill (cr);
  cairo_pattern_destroy (pattern);
  cairo_surface_destroy (tile);
}

static void
hatch_drawn (cairo_t *cr, const Look *look, Box box, Colour colour)
{
  cairo_rectangle (cr, box.min.x, box.min.y, box.max.x - box.min.x, box.max.y - box.min.y);
  cairo_clip (cr);
  look_set_source (cr, colour);
  hatch_lines (cr, look, box);
}

void
draw_hatch (cairo_t *cr, const Look *look, Box box, Colour colour)
{
  DeviceAxis axes[2];

  cairo_save (cr);
  cairo_new_path (cr);
  if (look->hatch_width >= look->hatch_step * M_SQRT1_2)       /* lines that leave nothing between them */
    {
      look_set_source (cr, colour);
      cairo_rectangle (cr, box.min.x, box.min.y, box.max.x - box.min.x, box.max.y - box.min.y);
      cairo_fill (cr);
    }
  else if (!look->paper && device_axis (cr, true, &axes[0]) && device_axis (cr, false, &axes[1]) && axes[0].scale == axes[1].scale)
    hatch_tiled (cr, look, box, colour, axes);
  else
    hatch_drawn (cr, look, box, colour);
  cairo_restore (cr);
}
