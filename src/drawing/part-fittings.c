#include "drawing/part-draft.h"
#include <math.h>
#include "drawing/line-kind.h"

/* A nose cone: round ahead, straight behind. */
void
part_draw_spinner (const PartDraft *d)
{
  cairo_t *cr = d->cr;
  const Box b = d->box;

  cairo_move_to (cr, b.min.x, b.max.y);
  cairo_curve_to (cr, b.min.x, b.min.y + d->half_y * 0.6, d->middle.x - d->half_x * 0.5, b.min.y, d->middle.x, b.min.y);
  cairo_curve_to (cr, d->middle.x + d->half_x * 0.5, b.min.y, b.max.x, b.min.y + d->half_y * 0.6, b.max.x, b.max.y);
  cairo_close_path (cr);
  part_ink (d);
  cairo_stroke (cr);
}

static void
add_wheel (const PartDraft *d, double x, double half_width)
{
  const double r = fmin (half_width, d->half_y);

  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, x + half_width - r, d->box.min.y + r, r, -M_PI / 2, 0);
  cairo_arc (d->cr, x + half_width - r, d->box.max.y - r, r, 0, M_PI / 2);
  cairo_arc (d->cr, x - half_width + r, d->box.max.y - r, r, M_PI / 2, M_PI);
  cairo_arc (d->cr, x - half_width + r, d->box.min.y + r, r, M_PI, 3 * M_PI / 2);
  cairo_close_path (d->cr);
}

/* A wheel at either end of the box's width, a quarter as wide as long. */
void
part_draw_wheels (const PartDraft *d)
{
  const double half_width = fmin (d->half_y / 4, d->half_x / 3);

  add_wheel (d, d->box.min.x + half_width, half_width);
  add_wheel (d, d->box.max.x - half_width, half_width);
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill_preserve (d->cr);
  part_ink (d);
  cairo_stroke (d->cr);
}

/* Wheels, and the legs that carry them from the middle. */
void
part_draw_undercarriage (const PartDraft *d)
{
  const double half_width = fmin (d->half_y / 4, d->half_x / 3);

  part_detail_line (d);
  cairo_move_to (d->cr, d->box.min.x + 2 * half_width, d->middle.y);
  cairo_line_to (d->cr, d->middle.x, d->middle.y - d->half_y / 2);
  cairo_line_to (d->cr, d->box.max.x - 2 * half_width, d->middle.y);
  cairo_stroke (d->cr);
  part_draw_wheels (d);
}

void
part_draw_wheel_side (const PartDraft *d)
{
  const double radius = fmin (d->half_x, d->half_y);
  const Point hub = { d->box.min.x + radius, d->middle.y };

  part_ink (d);
  cairo_arc (d->cr, hub.x, hub.y, radius, 0, 2 * M_PI);
  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, hub.x, hub.y, radius * 0.15, 0, 2 * M_PI);
  cairo_stroke (d->cr);
  part_detail_line (d);
  line_stroke (d->cr, hub, (Point) { d->box.max.x, d->middle.y });
}

/* A cowl or canopy: its rounded edge, broken, since it covers what is inside. */
void
part_draw_shell (const PartDraft *d)
{
  const double r = fmin (d->half_x, d->half_y) * 0.6;
  const Box b = d->box;

  line_kind_set (d->cr, d->look, LINE_HIDDEN);
  part_ink (d);
  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, b.max.x - r, b.min.y + r, r, -M_PI / 2, 0);
  cairo_arc (d->cr, b.max.x - r, b.max.y - r, r, 0, M_PI / 2);
  cairo_arc (d->cr, b.min.x + r, b.max.y - r, r, M_PI / 2, M_PI);
  cairo_arc (d->cr, b.min.x + r, b.min.y + r, r, M_PI, 3 * M_PI / 2);
  cairo_close_path (d->cr);
  cairo_stroke (d->cr);
}

/* Shoulders and a head. */
void
part_draw_pilot (const PartDraft *d)
{
  const double head = fmin (d->half_x, d->half_y) * 0.45;

  part_detail_line (d);
  cairo_save (d->cr);
  cairo_translate (d->cr, d->middle.x, d->middle.y);
  cairo_scale (d->cr, d->half_x, d->half_y * 0.6);
  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, 0, 0, 1, 0, 2 * M_PI);
  cairo_restore (d->cr);
  cairo_stroke (d->cr);
  cairo_arc (d->cr, d->middle.x, d->middle.y, head, 0, 2 * M_PI);
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill_preserve (d->cr);
  part_ink (d);
  cairo_stroke (d->cr);
}

/* One line along its longer way, with an eye at either end. */
void
part_draw_pushrod (const PartDraft *d)
{
  const bool tall = d->half_y >= d->half_x;
  const Point from = tall ? (Point) { d->middle.x, d->box.min.y } : (Point) { d->box.min.x, d->middle.y };
  const Point to = tall ? (Point) { d->middle.x, d->box.max.y } : (Point) { d->box.max.x, d->middle.y };
  const double eye = look_size (d->look, 1.8, 0.5);

  part_detail_line (d);
  line_stroke (d->cr, from, to);
  cairo_arc (d->cr, from.x, from.y, eye, 0, 2 * M_PI);
  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, to.x, to.y, eye, 0, 2 * M_PI);
  cairo_fill (d->cr);
}

/* A slide in its slot. */
void
part_draw_switch (const PartDraft *d)
{
  const Point half = { d->half_x * 0.45, d->half_y * 0.6 };

  part_detail_line (d);
  line_add_box (d->cr, (Box) { point_sub (d->middle, half), point_add (d->middle, half) });
  cairo_stroke (d->cr);
  cairo_rectangle (d->cr, d->middle.x - half.x, d->middle.y - half.y, 2 * half.x, half.y);
  cairo_fill (d->cr);
}
