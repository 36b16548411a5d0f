#include "drawing/handles.h"
#include <math.h>

/* What only a screen shows: nodes, handles, grips, focus, proposals. */

static void
handle_line (cairo_t *cr, const Look *look, double px)
{
  cairo_set_line_width (cr, px * look->u * look->symbol_line);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
}

static void
add_square (cairo_t *cr, Point at, double half)
{
  cairo_rectangle (cr, at.x - half, at.y - half, 2 * half, 2 * half);
}

void
draw_node (cairo_t *cr, const Look *look, Point at, NodeKind kind, bool selected)
{
  const double r = (selected ? 5.4 : 4.6) * look->u;
  Colour fill = selected ? look->selection : look->part_fill;

  cairo_save (cr);
  cairo_new_path (cr);
  fill.alpha = 1;
  handle_line (cr, look, 1.4);
  if (kind == NODE_CORNER)
    add_square (cr, at, r * 0.9);
  else
    cairo_arc (cr, at.x, at.y, r, 0, 2 * M_PI);
  look_set_source (cr, fill);
  cairo_fill_preserve (cr);
  look_set_source (cr, selected ? look->selection : look->graphite);
  cairo_stroke (cr);
  if (kind == NODE_SYMMETRIC)
    {
      look_set_source (cr, selected ? look->sheet : look->graphite);
      cairo_arc (cr, at.x, at.y, 1.6 * look->u, 0, 2 * M_PI);
      cairo_fill (cr);
    }
  cairo_restore (cr);
}

void
draw_handle (cairo_t *cr, const Look *look, Point node, Point handle)
{
  cairo_save (cr);
  cairo_new_path (cr);
  handle_line (cr, look, 1.2);
  look_set_source (cr, look->selection);
  line_stroke (cr, node, handle);
  cairo_arc (cr, handle.x, handle.y, 3.6 * look->u, 0, 2 * M_PI);
  look_set_source (cr, look->sheet);
  cairo_fill_preserve (cr);
  look_set_source (cr, look->selection);
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_grip (cairo_t *cr, const Look *look, Point at)
{
  cairo_save (cr);
  cairo_new_path (cr);
  handle_line (cr, look, 1.4);
  at = (Point) { line_crisp_x (cr, at.x, look->u), line_crisp_y (cr, at.y, look->u) };
  add_square (cr, at, 4 * look->u);
  look_set_source (cr, look->sheet);
  cairo_fill_preserve (cr);
  look_set_source (cr, look->selection);
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_brackets (cairo_t *cr, const Look *look, Box box)
{
  const double arm = fmin (8 * look->u, fmin (box.max.x - box.min.x, box.max.y - box.min.y) / 3);

  cairo_save (cr);
  cairo_new_path (cr);
  handle_line (cr, look, 1.4);
  look_set_source (cr, look->graphite);
  for (int i = 0; i < 4; i++)
    {
      const double x = i % 2 ? box.max.x : box.min.x, y = i / 2 ? box.max.y : box.min.y;

      cairo_move_to (cr, x, y + (i / 2 ? -arm : arm));
      cairo_line_to (cr, x, y);
      cairo_line_to (cr, x + (i % 2 ? -arm : arm), y);
    }
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_focus_ring (cairo_t *cr, const Look *look, Box box)
{
  const double out = 4 * look->u, dash[] = { 4 * look->u, 3 * look->u };

  cairo_save (cr);
  cairo_new_path (cr);
  handle_line (cr, look, 2);
  cairo_rectangle (cr, box.min.x - out, box.min.y - out, box.max.x - box.min.x + 2 * out, box.max.y - box.min.y + 2 * out);
  cairo_set_line_width (cr, 4 * look->u);
  look_set_source (cr, look->sheet);
  cairo_stroke_preserve (cr);
  cairo_set_line_width (cr, 2 * look->u);
  cairo_set_dash (cr, dash, 2, 0);
  look_set_source (cr, look->selection);
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_proposal_arrow (cairo_t *cr, const Look *look, Point from, Point to)
{
  const double far = point_distance (from, to), length = 8 * look->u, half = 3.5 * look->u;
  const Point along = point_scale (point_sub (to, from), 1 / fmax (far, 1e-9));
  const Point base = point_sub (to, point_scale (along, length)), side = point_scale ((Point) { -along.y, along.x }, half);

  cairo_save (cr);
  cairo_new_path (cr);
  handle_line (cr, look, 1.4);
  look_set_source (cr, look->selection);
  line_stroke (cr, from, base);
  cairo_move_to (cr, to.x, to.y);
  cairo_line_to (cr, base.x + side.x, base.y + side.y);
  cairo_line_to (cr, base.x - side.x, base.y - side.y);
  cairo_close_path (cr);
  cairo_fill (cr);
  cairo_restore (cr);
}
