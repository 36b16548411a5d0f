#include "trammel-config.h"
#include "drawing/control-lines.h"
#include <glib/gi18n-lib.h>

static const double tick = 1.4, end_tick = 2.4;        /* mm */
static const double length_of_metric = 100, length_of_inch = 4 * 25.4;
static const double depth = 16;                        /* of the whole */

/* Ticks every `step`, taller at both ends. */
static void
draw_scale (const SheetPen *pen, Point at, double length, int steps)
{
  pen_line (pen, 0.25, at, (Point) { at.x + length, at.y });
  for (int i = 0; i <= steps; i++)
    {
      const double x = at.x + length * i / steps, high = i == 0 || i == steps ? end_tick : tick;

      pen_line (pen, 0.18, (Point) { x, at.y - high }, (Point) { x, at.y });
    }
}

static void
draw_scales (const SheetPen *pen, Point at, bool wide)
{
  const double first = at.y + end_tick, second = first + 6.5, beside = at.x + length_of_inch + 2;
  const Point words = wide ? (Point) { beside + 16, second + 0.6 } : (Point) { at.x, second + 5 };

  draw_scale (pen, (Point) { at.x, first }, length_of_metric, 10);
  pen_write (pen, (Script) { { beside, first + 0.6 }, caps_small, 0 }, "100\u00A0mm");
  draw_scale (pen, (Point) { at.x, second }, length_of_inch, 16);
  pen_write (pen, (Script) { { beside, second + 0.6 }, caps_small, 0 }, "4\u00A0in");
  pen_write (pen, (Script) { words, caps_small, 0 }, _("Print at 100 %, no fitting."));
}

void
control_lines_draw (const SheetPen *pen, Point at, ControlLinesWay way)
{
  if (way != CONTROL_LINES_ALONG)
    {
      draw_scales (pen, at, way == CONTROL_LINES_WIDE);
      return;
    }
  cairo_save (pen->cr);
  cairo_translate (pen->cr, at.x, at.y + length_of_inch + depth);
  cairo_rotate (pen->cr, -G_PI / 2);
  draw_scales (pen, (Point) { 0, 0 }, false);
  cairo_restore (pen->cr);
}

void
control_line_draw_down (const SheetPen *pen, Point at)
{
  const double right = at.x + 5;

  cairo_save (pen->cr);
  cairo_translate (pen->cr, right, at.y + length_of_metric);
  cairo_rotate (pen->cr, -G_PI / 2);
  draw_scale (pen, (Point) { 0, 0 }, length_of_metric, 10);
  pen_write (pen, (Script) { { length_of_metric / 2, -end_tick - 0.4 }, caps_small, 0.5 }, "100\u00A0mm");
  cairo_restore (pen->cr);
}
