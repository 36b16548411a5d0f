#include "drawing/runs.h"
#include <math.h>
#include "drawing/dimension.h"
#include "drawing/symbols.h"

/* Signs that run from place to place: rail, lead, break, leader. */

void
draw_rail (cairo_t *cr, const Look *look, const RailLine *rail)
{
  const double stop = look_size (look, 4, 1.2), hatch = look_size (look, 4.5, 1.4);

  cairo_save (cr);
  cairo_new_path (cr);
  line_kind_set (cr, look, LINE_INNER);
  if (!isnan (rail->band_from))
    draw_hatch (cr, look, (Box) { { rail->x - hatch, rail->band_from }, { rail->x, rail->band_to } }, look->band);
  look_set_source (cr, rail->colour);
  cairo_set_line_width (cr, look_size (look, 1.1, 0.25) * look->symbol_line);
  line_stroke (cr, (Point) { rail->x, rail->from }, (Point) { rail->x, rail->to });
  cairo_set_line_width (cr, look_size (look, 1.4, 0.35) * look->symbol_line);
  line_stroke (cr, (Point) { rail->x - stop, rail->from }, (Point) { rail->x + stop, rail->from });
  line_stroke (cr, (Point) { rail->x - stop, rail->to }, (Point) { rail->x + stop, rail->to });
  cairo_restore (cr);
}

/* Rounds a corner as far as its shorter side allows. */
static void
add_rounded (cairo_t *cr, const Point before, const Point corner, const Point after, double radius)
{
  const double a = point_distance (before, corner), b = point_distance (corner, after), r = fmin (radius, fmin (a, b) / 2);
  const Point in = a > 0 ? point_mix (corner, before, r / a) : corner, out = b > 0 ? point_mix (corner, after, r / b) : corner;

  cairo_line_to (cr, in.x, in.y);
  cairo_curve_to (cr, (in.x + 2 * corner.x) / 3, (in.y + 2 * corner.y) / 3,
                  (out.x + 2 * corner.x) / 3, (out.y + 2 * corner.y) / 3, out.x, out.y);
}

/* Adds that stretch of a flattened path, measured along it, to cr's path. */
static void
add_stretch (cairo_t *cr, const cairo_path_t *flat, double from, double to)
{
  Point last = { 0, 0 };
  double run = 0;

  for (int i = 0; i < flat->num_data; i += flat->data[i].header.length)
    {
      const Point here = { flat->data[i + 1].point.x, flat->data[i + 1].point.y };
      const double step = flat->data[i].header.type == CAIRO_PATH_LINE_TO ? point_distance (last, here) : 0;

      if (step > 0 && run < to && run + step > from)
        {
          const Point a = point_mix (last, here, fmax (0, (from - run) / step)), b = point_mix (last, here, fmin (1, (to - run) / step));

          if (run <= from)
            cairo_move_to (cr, a.x, a.y);
          else
            cairo_line_to (cr, a.x, a.y);
          cairo_line_to (cr, b.x, b.y);
        }
      run += step;
      last = here;
    }
}

/* Dotted as far as it reaches, firm and in the warning colour where it is missing. */
static void
stroke_lead (cairo_t *cr, const Look *look, double reach, bool selected)
{
  cairo_path_t *flat = cairo_copy_path_flat (cr);

  cairo_new_path (cr);
  if (flat->status == CAIRO_STATUS_SUCCESS)
    {
      line_kind_set (cr, look, LINE_LEAD);
      look_set_source (cr, selected ? look->selection : look->construction);
      if (selected)
        cairo_set_line_width (cr, 1.5 * cairo_get_line_width (cr));
      add_stretch (cr, flat, 0, reach);
      cairo_stroke (cr);
      cairo_set_dash (cr, NULL, 0, 0);
      look_set_source (cr, look->warning);
      add_stretch (cr, flat, reach, INFINITY);
      cairo_stroke (cr);
    }
  cairo_path_destroy (flat);
}

static void
draw_plug (cairo_t *cr, const Look *look, Point at)
{
  const double half = look_size (look, 1.8, 0.55);

  cairo_rectangle (cr, at.x - half, at.y - half, 2 * half, 2 * half);
  cairo_fill (cr);
}

void
draw_lead (cairo_t *cr, const Look *look, const Point places[], size_t count, double reach, bool selected)
{
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_move_to (cr, places[0].x, places[0].y);
  for (size_t i = 1; i + 1 < count; i++)
    add_rounded (cr, places[i - 1], places[i], places[i + 1], look_size (look, 7, 2));
  cairo_line_to (cr, places[count - 1].x, places[count - 1].y);
  stroke_lead (cr, look, reach, selected);
  look_set_source (cr, selected ? look->selection : look->construction);
  draw_plug (cr, look, places[0]);
  draw_plug (cr, look, places[count - 1]);
  cairo_restore (cr);
}

double
lead_reach (const Point places[], size_t count, double share)
{
  double length = 0;

  for (size_t i = 1; i < count; i++)
    length += point_distance (places[i - 1], places[i]);
  return isfinite (share) ? share * length : INFINITY;
}

Point
lead_box_edge (Box box, Point to)
{
  const Point middle = point_mix (box.min, box.max, 0.5), way = point_sub (to, middle);
  const double across = fabs (way.x) > 0 ? (box.max.x - box.min.x) / 2 / fabs (way.x) : INFINITY;
  const double along = fabs (way.y) > 0 ? (box.max.y - box.min.y) / 2 / fabs (way.y) : INFINITY;

  return point_add (middle, point_scale (way, fmin (1, fmin (across, along))));
}

void
draw_lead_joint (cairo_t *cr, const Look *look, Point at)
{
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_arc (cr, at.x, at.y, look_size (look, 3.2, 0.9), 0, 2 * M_PI);
  look_set_source (cr, look->construction);
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_break (cairo_t *cr, const Look *look, double x, double from, double to)
{
  const double swing = 4 * look->u, third = (to - from) / 3;

  cairo_save (cr);
  cairo_new_path (cr);
  line_kind_set (cr, look, LINE_INNER);
  look_set_source (cr, look->graphite);
  cairo_move_to (cr, x, from);
  cairo_curve_to (cr, x - 2 * swing, from + third, x - swing, from + 1.5 * third, x, from + 1.5 * third);
  cairo_curve_to (cr, x + 2 * swing, from + 2 * third, x + swing, to - third / 2, x, to);
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_leader (cairo_t *cr, const Look *look, Point on_thing, Point to, LeaderEnd end)
{
  const double far = point_distance (on_thing, to);

  cairo_save (cr);
  cairo_new_path (cr);
  look_set_source (cr, look->graphite);
  line_kind_set (cr, look, LINE_CONSTRUCTION);
  line_stroke (cr, on_thing, to);
  if (end == LEADER_ARROW && far > 0)
    draw_arrowhead (cr, look, on_thing, point_scale (point_sub (on_thing, to), 1 / far));
  else
    {
      cairo_arc (cr, on_thing.x, on_thing.y, look_size (look, 1.8, 0.55), 0, 2 * M_PI);
      cairo_fill (cr);
    }
  cairo_restore (cr);
}

double
number_radius (const Look *look)
{
  return look_size (look, 11, 3.4);
}

void
draw_number (const Lettering *lettering, Point at, const char *number)
{
  cairo_t *cr = lettering->cr;
  const Look *look = lettering->look;
  const Letters letters = { .text = number, .place = at, .across = 0.5, .rise = LETTERS_AT_MIDDLE };

  cairo_save (cr);
  cairo_new_path (cr);
  line_kind_set (cr, look, LINE_INNER);
  cairo_arc (cr, at.x, at.y, number_radius (look), 0, 2 * M_PI);
  look_set_source (cr, look->sheet);
  cairo_fill_preserve (cr);
  look_set_source (cr, look->graphite);
  cairo_stroke (cr);
  lettering_draw (lettering, &letters);
  cairo_restore (cr);
}
