#include "trammel-config.h"
#include "drawing/wall-sheet-title.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/wall-sheet-battery.h"
#include "drawing/wall-sheet-frame.h"

static const double width = 180, height = 40;
static const double upper = 24, side = 62;           /* of the upper row, of the column at its right */
static const double indent = 2, field_foot = 3.2;
static const double border = 0.7, firm = 0.35;

Box
wall_title_box (const WallSheet *sheet)
{
  const Box frame = wall_frame_box (sheet);

  return (Box) { { frame.max.x - width, frame.max.y - height }, frame.max };
}

char *
wall_scale_text (double scale)
{
  return g_strdup_printf ("1\u00A0:\u00A0%.3g", 1 / scale);
}

void
wall_title_cell (const SheetPen *pen, Box cell, const char *field, const char *words)
{
  const double room = box_width (cell) - 2 * indent;

  pen_box (pen, firm, cell);
  pen_write_within (pen, (Script) { { cell.min.x + indent, cell.min.y + field_foot }, caps_field, 0 }, caps_field, room, field);
  pen_write_within (pen, (Script) { { cell.min.x + indent, cell.max.y - 2.4 }, caps_figure, 0 }, caps_small, room, words);
}

static char *
mark_words (const WallSheet *sheet)
{
  const BalanceFigures *balance = &sheet->figures->balance;
  g_autofree char *aft = NULL, *station = NULL;

  if (balance->mark_count == 0 || isnan (balance->marks[0].target_mm))
    return g_strdup (_("not yet"));
  aft = paper_length (sheet->units, balance->marks[0].target_mm);
  station = paper_length_figure (sheet->units, balance->marks[0].station_mm);
  /* Translators: the balance mark, "36 mm at station 40" */
  return g_strdup_printf (_("%s at station %s"), aft, station);
}

/* "span 640 mm, all-up mass 151 g" */
static char *
subtitle_words (const WallSheet *sheet)
{
  const Figures *figures = sheet->figures;
  const bool has_span = figures->reference != NULL && isfinite (figures->reference->planform.span), has_mass = figures->mass.total_g > 0;
  g_autofree char *span = has_span ? paper_length (sheet->units, figures->reference->planform.span) : NULL;
  g_autofree char *mass = has_mass ? units_mass (sheet->units, figures->mass.total_g) : NULL;

  if (has_span && has_mass)
    return g_strdup_printf (_("span %s, all-up mass %s"), span, mass);
  if (has_span)
    return g_strdup_printf (_("span %s"), span);
  return has_mass ? g_strdup_printf (_("all-up mass %s"), mass) : g_strdup ("");
}

static void
draw_name (const SheetPen *pen, Box cell)
{
  const double room = box_width (cell) - 10;
  g_autofree char *capitals = g_utf8_strup (wall_sheet_title (pen->sheet), -1);
  g_autofree char *subtitle = subtitle_words (pen->sheet);

  pen_box (pen, firm, cell);
  pen_write (pen, (Script) { { cell.min.x + indent, cell.min.y + field_foot }, caps_field, 0 }, _("title"));
  pen_write_within (pen, (Script) { { cell.min.x + 5, cell.min.y + 14.5 }, caps_title, 0 }, caps_figure, room, capitals);
  pen_write_within (pen, (Script) { { cell.min.x + 5, cell.max.y - 3.2 }, caps_text, 0 }, caps_small, room, subtitle);
}

static char *
scale_words (double scale, bool section)
{
  g_autofree char *plan = scale > 0 ? wall_scale_text (scale) : g_strdup ("–"), *full = wall_scale_text (1);

  return section && scale != 1 ? g_strdup_printf ("%s  (%s)", plan, full) : g_strdup (plan);
}

/* The sign of first-angle projection: a cone cut off, from the side and from its small end. */
static void
draw_projection (const SheetPen *pen, Box cell)
{
  const double large = 3.7, small = 1.9, length = 8.4, y = cell.max.y - 6.3, left = cell.min.x + 9.5;
  const Point eye = { left + length + 7.6, y };

  pen_box (pen, firm, cell);
  pen_write (pen, (Script) { { cell.min.x + indent, cell.min.y + field_foot }, caps_field, 0 }, _("projection"));
  pen_set_line (pen, firm);
  cairo_move_to (pen->cr, left, y - small);
  cairo_line_to (pen->cr, left + length, y - large);
  cairo_line_to (pen->cr, left + length, y + large);
  cairo_line_to (pen->cr, left, y + small);
  cairo_close_path (pen->cr);
  cairo_new_sub_path (pen->cr);
  cairo_arc (pen->cr, eye.x, eye.y, small, 0, 2 * M_PI);
  cairo_new_sub_path (pen->cr);
  cairo_arc (pen->cr, eye.x, eye.y, large, 0, 2 * M_PI);
  cairo_stroke (pen->cr);
  line_kind_set (pen->cr, pen->look, LINE_CENTRE);
  cairo_set_dash (pen->cr, (const double[]) { 4, 0.8, 0.8, 0.8 }, 4, 0);
  line_stroke (pen->cr, (Point) { left - 2, y }, (Point) { left + length + 2, y });
  line_stroke (pen->cr, (Point) { eye.x - large - 1.6, y }, (Point) { eye.x + large + 1.6, y });
  line_stroke (pen->cr, (Point) { eye.x, y - large - 1.6 }, (Point) { eye.x, y + large + 1.6 });
}

void
wall_title_date (const SheetPen *pen, Box cell)
{
  wall_title_cell (pen, cell, _("last change"), pen->sheet->date);
  if (pen->sheet->date[0] == '\0')
    pen_line (pen, 0.18, (Point) { cell.min.x + indent, cell.max.y - 2.4 }, (Point) { cell.max.x - indent, cell.max.y - 2.4 });
}

static void
draw_lower_row (const SheetPen *pen, Box row, double scale, bool section)
{
  static const double widths[] = { 38, 33, 30, 38, 41 };
  const WallSheet *sheet = pen->sheet;
  g_autofree char *scales = scale_words (scale, section);
  g_autofree char *paper = g_strdup_printf ("%s  1\u200A/\u200A1", sheet->paper->title);
  g_autofree char *units = g_strdup_printf ("%s, %s", units_length_name (sheet->units), units_mass_name (sheet->units));
  const char *const words[] = { scales, paper, units };
  const char *const fields[] = { _("scale"), _("sheet"), _("units") };
  double x = row.min.x;

  for (size_t i = 0; i < G_N_ELEMENTS (widths); i++)
    {
      const Box cell = { { x, row.min.y }, { x + widths[i], row.max.y } };

      if (i < G_N_ELEMENTS (words))
        wall_title_cell (pen, cell, fields[i], words[i]);
      else if (i == G_N_ELEMENTS (words))
        wall_title_date (pen, cell);
      else
        draw_projection (pen, cell);
      x += widths[i];
    }
}

void
wall_title_draw (const SheetPen *pen, double scale, bool section)
{
  const Box box = wall_title_box (pen->sheet);
  const double column = box.max.x - side, row = box.min.y + upper, middle = box.min.y + upper / 2;
  g_autofree char *mark = mark_words (pen->sheet);
  BatteryWords battery = battery_words_of (pen->sheet);

  draw_name (pen, (Box) { box.min, { column, row } });
  wall_title_cell (pen, (Box) { { column, box.min.y }, { box.max.x, middle } }, _("balance mark"), mark);
  wall_title_cell (pen, (Box) { { column, middle }, { box.max.x, row } }, battery.field, battery.words);
  draw_lower_row (pen, (Box) { { box.min.x, row }, box.max }, scale, section);
  pen_box (pen, border, box);
  battery_words_clear (&battery);
}
