#include "drawing/symbols.h"
#include <math.h>

/* A symbol's solid line of so many px or mm. */
static void
symbol_line (cairo_t *cr, const Look *look, double px, double mm)
{
  cairo_set_line_width (cr, look_size (look, px, mm) * look->symbol_line);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
}

static void
fill_circle (cairo_t *cr, Point at, double radius)
{
  cairo_new_path (cr);
  cairo_arc (cr, at.x, at.y, radius, 0, 2 * M_PI);
  cairo_fill (cr);
}

static void
stroke_circle (cairo_t *cr, Point at, double radius)
{
  cairo_new_path (cr);
  cairo_arc (cr, at.x, at.y, radius, 0, 2 * M_PI);
  cairo_stroke (cr);
}

static Colour
opaque (Colour colour)
{
  colour.alpha = 1;
  return colour;
}

double
balance_disc_radius (const Look *look, DiscPlace where)
{
  return where == DISC_ON_CHORD ? look_size (look, 8.5, 3) : look_size (look, 7.5, 2.6);
}

static void
fill_quarter (cairo_t *cr, Point at, double radius, double from)
{
  cairo_move_to (cr, at.x, at.y);
  cairo_arc (cr, at.x, at.y, radius, from, from + M_PI / 2);
  cairo_close_path (cr);
  cairo_fill (cr);
}

static void
draw_disc_arms (cairo_t *cr, const Look *look, Point at, double radius)
{
  symbol_line (cr, look, 1, 0.25);
  for (int i = 0; i < 4; i++)
    {
      const Point out = { (i == 0) - (i == 1), (i == 2) - (i == 3) };

      line_stroke (cr, point_add (at, point_scale (out, radius)), point_add (at, point_scale (out, 1.55 * radius)));
    }
}

void
draw_balance_disc (cairo_t *cr, const Look *look, Point at, DiscPlace where)
{
  const double r = balance_disc_radius (look, where);

  cairo_save (cr);
  at = (Point) { line_crisp_x (cr, at.x, look->u), line_crisp_y (cr, at.y, look->u) };
  look_set_source (cr, look->sheet);
  fill_circle (cr, at, r + look_size (look, 2.6, 0.8));
  look_set_source (cr, look->balance);
  if (where == DISC_ON_SHEET)
    draw_disc_arms (cr, look, at, r);
  look_set_source (cr, opaque (look->part_fill));
  fill_circle (cr, at, r);
  look_set_source (cr, look->balance);
  fill_quarter (cr, at, r, -M_PI / 2);
  fill_quarter (cr, at, r, M_PI / 2);
  symbol_line (cr, look, 1.3, 0.35);
  stroke_circle (cr, at, r);
  cairo_restore (cr);
}

double
neutral_diamond_half (const Look *look)
{
  return look_size (look, 8.5, 2.9);
}

static void
add_diamond (cairo_t *cr, Point at, double half)
{
  cairo_move_to (cr, at.x, at.y - half);
  cairo_line_to (cr, at.x + 0.8 * half, at.y);
  cairo_line_to (cr, at.x, at.y + half);
  cairo_line_to (cr, at.x - 0.8 * half, at.y);
  cairo_close_path (cr);
}

void
draw_neutral_halo (cairo_t *cr, const Look *look, Point at)
{
  cairo_save (cr);
  cairo_new_path (cr);
  look_set_source (cr, look->sheet);
  add_diamond (cr, at, neutral_diamond_half (look) + look_size (look, 2.6, 0.8));
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_neutral_diamond (cairo_t *cr, const Look *look, Point at, bool broken)
{
  const double half = neutral_diamond_half (look), dash[] = { 3 * look->u, 2 * look->u };

  cairo_save (cr);
  cairo_new_path (cr);
  look_set_source (cr, look->neutral);
  symbol_line (cr, look, broken ? 1.2 : 1.6, broken ? 0.25 : 0.35);
  if (broken)
    cairo_set_dash (cr, dash, 2, 0);
  add_diamond (cr, at, half);
  cairo_stroke (cr);
  cairo_restore (cr);
}

void
draw_mean_chord (cairo_t *cr, const Look *look, double x, double from, double to)
{
  const double end = look_size (look, 7, 2.1), tick = look_size (look, 4.5, 1.4), quarter = from + (to - from) / 4;

  cairo_save (cr);
  look_set_source (cr, look->graphite);
  symbol_line (cr, look, 2.4, 0.7);
  line_stroke (cr, (Point) { x, from }, (Point) { x, to });
  symbol_line (cr, look, 1.4, 0.35);
  line_stroke (cr, (Point) { x - end, from }, (Point) { x + end, from });
  line_stroke (cr, (Point) { x - end, to }, (Point) { x + end, to });
  line_stroke (cr, (Point) { x - tick, quarter }, (Point) { x + tick, quarter });
  cairo_restore (cr);
}

void
draw_wanted_band (cairo_t *cr, const Look *look, Box box, BandDirection direction)
{
  const Point a = box.min, b = box.max;

  draw_hatch (cr, look, box, look->band);
  cairo_save (cr);
  look_set_source (cr, look->band);
  symbol_line (cr, look, 1.5, 0.35);
  if (direction == BAND_ACROSS)
    {
      line_stroke (cr, a, (Point) { b.x, a.y });
      line_stroke (cr, (Point) { a.x, b.y }, b);
    }
  else
    {
      line_stroke (cr, a, (Point) { a.x, b.y });
      line_stroke (cr, (Point) { b.x, a.y }, b);
    }
  cairo_restore (cr);
}

static void
add_mark (cairo_t *cr, Point at, double u)
{
  cairo_rectangle (cr, at.x - 9 * u, at.y - 1.1 * u, 18 * u, 2.2 * u);
  cairo_move_to (cr, at.x, at.y + 1.1 * u);
  cairo_line_to (cr, at.x + 4.6 * u, at.y + 10.1 * u);
  cairo_line_to (cr, at.x - 4.6 * u, at.y + 10.1 * u);
  cairo_close_path (cr);
}

static Point
mark_place (cairo_t *cr, const Look *look, Point at)
{
  return (Point) { line_crisp_x (cr, at.x, look->u), line_crisp_y (cr, at.y, 2 * look->u) };
}

void
draw_balance_mark_halo (cairo_t *cr, const Look *look, Point at)
{
  cairo_save (cr);
  symbol_line (cr, look, 1, 0.25);
  cairo_set_line_width (cr, 5 * look->u);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  look_set_source (cr, look->sheet);
  add_mark (cr, mark_place (cr, look, at), look->u);
  cairo_stroke_preserve (cr);
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_balance_mark (cairo_t *cr, const Look *look, Point at)
{
  cairo_save (cr);
  look_set_source (cr, look->balance);
  add_mark (cr, mark_place (cr, look, at), look->u);
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_section_mark (cairo_t *cr, const Look *look, Point touched, Point other)
{
  const double u = look->u, far = point_distance (touched, other);
  const Point out = point_scale (point_sub (touched, other), 1 / fmax (far, 1e-9)), side = { -out.y, out.x };
  const Point base = point_add (touched, point_scale (out, 9 * u));

  cairo_save (cr);
  look_set_source (cr, look->balance);
  symbol_line (cr, look, 2.2, 0.5);
  line_stroke (cr, touched, point_sub (other, point_scale (out, 6 * u)));
  cairo_move_to (cr, touched.x, touched.y);
  cairo_line_to (cr, base.x + 4.6 * u * side.x, base.y + 4.6 * u * side.y);
  cairo_line_to (cr, base.x - 4.6 * u * side.x, base.y - 4.6 * u * side.y);
  cairo_close_path (cr);
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_aim (cairo_t *cr, const Look *look, Point tip, bool up)
{
  const double u = look->u, away = (up ? 7.5 : -7.5) * u;

  cairo_save (cr);
  look_set_source (cr, look->band);
  cairo_move_to (cr, tip.x, tip.y);
  cairo_line_to (cr, tip.x + 4.5 * u, tip.y + away);
  cairo_line_to (cr, tip.x - 4.5 * u, tip.y + away);
  cairo_close_path (cr);
  cairo_fill (cr);
  cairo_restore (cr);
}

void
draw_whiskers (cairo_t *cr, const Look *look, const Whiskers *whiskers)
{
  const double half_end = 4.5 * look->u;

  if (!(whiskers->reach > whiskers->clear))
    return;
  cairo_save (cr);
  look_set_source (cr, whiskers->colour);
  symbol_line (cr, look, 1.6, 0.35);
  for (int side = -1; side <= 1; side += 2)
    {
      const Point along = whiskers->along_page ? (Point) { 0, side } : (Point) { side, 0 };
      const Point end = point_add (whiskers->at, point_scale (along, whiskers->reach));
      const Point across = point_scale ((Point) { along.y, along.x }, half_end);

      line_stroke (cr, point_add (whiskers->at, point_scale (along, whiskers->clear)), end);
      line_stroke (cr, point_sub (end, across), point_add (end, across));
    }
  cairo_restore (cr);
}

void
draw_warning (cairo_t *cr, const Look *look, Point at)
{
  const double r = look_size (look, 10, 3);

  cairo_save (cr);
  cairo_new_path (cr);
  symbol_line (cr, look, 1.8, 0.5);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_move_to (cr, at.x, at.y - r);
  cairo_line_to (cr, at.x + 0.95 * r, at.y + 0.7 * r);
  cairo_line_to (cr, at.x - 0.95 * r, at.y + 0.7 * r);
  cairo_close_path (cr);
  look_set_source (cr, look->sheet);
  cairo_fill_preserve (cr);
  look_set_source (cr, look->warning);
  cairo_stroke (cr);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_move_to (cr, at.x, at.y - 0.4 * r);
  cairo_line_to (cr, at.x, at.y + 0.12 * r);
  cairo_stroke (cr);
  fill_circle (cr, (Point) { at.x, at.y + 0.42 * r }, 0.11 * r);
  cairo_restore (cr);
}
