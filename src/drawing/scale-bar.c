#include <math.h>
#include "drawing/lettering.h"
#include "drawing/rulers.h"
#include "drawing/sheet-places.h"

static const double inch = 25.4;

/* The least length of at least 90 px whose fifth is a round figure. Steps never more than double, so it stays under 180 px. */
double
scale_bar_length (Units units, double scale)
{
  static const double factors[] = { 1, 2, 2.5, 5 };
  const double least = 90 / scale;
  double length = pow (10, floor (log10 (least)));

  if (units.length == LENGTH_INCH)
    return 5 * inch * exp2 (ceil (log2 (least / (5 * inch))));
  for (int i = 0; i < 4; i++)
    if (factors[i] * length >= least)
      return factors[i] * length;
  return 10 * length;
}

static Point
bar_place (const SheetView *view)
{
  return (Point) { 22, round (view->height - 20) };
}

static double
bar_length (const Ruler *ruler)
{
  return scale_bar_length (ruler->units, ruler->view->scale) * ruler->view->scale;
}

/* The two figures over its ends. */
static Letters
bar_figure (const Ruler *ruler, const char *text, double along)
{
  const Point at = bar_place (ruler->view);

  return (Letters) { .text = text, .place = { at.x + along, at.y - 5 }, .size = ruler->look->ruler_size, .across = 0.5, .halo = 2 };
}

Box
scale_bar_box (const Ruler *ruler)
{
  const Point at = bar_place (ruler->view);
  const double length = bar_length (ruler);
  g_autofree char *text = units_length (ruler->units, scale_bar_length (ruler->units, ruler->view->scale));
  const Letters last = bar_figure (ruler, text, length);
  Lettering lettering = lettering_begin (NULL, ruler->look);
  const Box bar = { { at.x - 3, at.y - 3 }, { at.x + length + 3, at.y + 8 } }, both = box_joined (bar, lettering_box (&lettering, &last));

  return both;
}

/* Five fields, the first black, the second white; a halo keeps it clear of whatever it meets. */
static void
draw_fields (cairo_t *cr, const Look *look, Point at, double length)
{
  const double height = 5, field = length / 5;

  look_set_source (cr, look->sheet);
  cairo_rectangle (cr, at.x - 3, at.y - 3, length + 6, height + 6);
  cairo_fill (cr);
  look_set_source (cr, look->graphite);
  for (int i = 0; i < 5; i += 2)
    {
      cairo_rectangle (cr, at.x + i * field, at.y, field, height);
      cairo_fill (cr);
    }
  cairo_set_line_width (cr, 1);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_rectangle (cr, at.x + 0.5, at.y + 0.5, round (length) - 1, height - 1);
  cairo_stroke (cr);
}

void
draw_scale_bar (cairo_t *cr, const Ruler *ruler)
{
  const Look *look = ruler->look;
  const double length = bar_length (ruler);
  g_autofree char *text = units_length (ruler->units, scale_bar_length (ruler->units, ruler->view->scale));
  const Letters first = bar_figure (ruler, "0", 0), last = bar_figure (ruler, text, length);
  Lettering lettering;

  cairo_save (cr);
  cairo_new_path (cr);
  draw_fields (cr, look, bar_place (ruler->view), length);
  lettering = lettering_begin (cr, look);
  lettering_draw (&lettering, &first);
  lettering_draw (&lettering, &last);
  cairo_restore (cr);
}
