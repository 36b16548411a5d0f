#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/chord-figure.h"
#include "drawing/lettering.h"
#include "drawing/symbols.h"

static const double margin = 24, knob = 10;      /* px */

/* The rail lies across the picture, forward at the left. */
typedef struct {
  const RailFigure *rail;
  cairo_t *cr;
  const Look *look;
  Lettering lettering;
  double width, y;
} RailDraft;

static double
px_of (const RailDraft *d, double mm)
{
  const double length = d->rail->part->rail_to - d->rail->part->rail_from;

  return margin + (length > 0 ? (mm - d->rail->part->rail_from) / length : 0.5) * (d->width - 2 * margin);
}

double
rail_figure_place (const Part *part, double width, double x)
{
  return part->rail_from + (x - margin) / (width - 2 * margin) * (part->rail_to - part->rail_from);
}

static void
draw_line (const RailDraft *d)
{
  const double from = px_of (d, d->rail->part->rail_from), to = px_of (d, d->rail->part->rail_to), stop = 12;

  look_set_source (d->cr, d->look->graphite);
  cairo_set_dash (d->cr, NULL, 0, 0);
  cairo_set_line_width (d->cr, 1.1 * d->look->symbol_line);
  line_stroke (d->cr, (Point) { from, d->y }, (Point) { to, d->y });
  cairo_set_line_width (d->cr, 2);
  line_stroke (d->cr, (Point) { from, d->y - stop }, (Point) { from, d->y + stop });
  line_stroke (d->cr, (Point) { to, d->y - stop }, (Point) { to, d->y + stop });
}

/* The places that keep the margin in its band; a firm edge where the band ends before the rail does. */
static void
draw_band (const RailDraft *d)
{
  const Solution *solution = d->rail->solution;
  const double half = 9;
  double ends[2];

  if (!solution || !isfinite (solution->band_from_mm) || !isfinite (solution->band_to_mm))
    return;
  ends[0] = px_of (d, solution->band_from_mm);
  ends[1] = px_of (d, solution->band_to_mm);
  draw_hatch (d->cr, d->look, (Box) { { ends[0], d->y - half }, { ends[1], d->y + half } }, d->look->band);
  look_set_source (d->cr, d->look->band);
  cairo_set_line_width (d->cr, 1.5 * d->look->symbol_line);
  cairo_set_dash (d->cr, NULL, 0, 0);
  for (int i = 0; i < 2; i++)
    line_stroke (d->cr, (Point) { ends[i], d->y - half }, (Point) { ends[i], d->y + half });
}

static void
draw_knob (const RailDraft *d)
{
  const double x = fmin (fmax (px_of (d, d->rail->part->x), margin - knob), d->width - margin + knob);
  Colour fill = d->look->part_fill;

  fill.alpha = 1;
  cairo_new_path (d->cr);
  cairo_arc (d->cr, x, d->y, knob - 1, 0, 2 * G_PI);
  look_set_source (d->cr, fill);
  cairo_fill_preserve (d->cr);
  look_set_source (d->cr, d->look->selection);
  cairo_set_line_width (d->cr, 2 * d->look->symbol_line);
  cairo_stroke (d->cr);
}

/* Puts a figure at x, kept inside the picture. */
static Box
put_figure (RailDraft *d, const char *text, double x, double below)
{
  Letters letters = {
    .text = text, .place = { x, d->y + below }, .across = 0.5, .rise = below > 0 ? LETTERS_BELOW : LETTERS_ON_LINE, .bold = true };
  const Box box = lettering_box (&d->lettering, &letters);

  letters.place.x += fmax (0, 1 - box.min.x) - fmax (0, box.max.x - d->width + 1);
  lettering_draw (&d->lettering, &letters);
  return lettering_box (&d->lettering, &letters);
}

/* The ends' figures give way to the aim's. */
static void
put_end (RailDraft *d, double mm, Box aim)
{
  g_autofree char *text = units_length_figure (d->rail->units, mm);
  const Letters letters = {
    .text = text, .place = { px_of (d, mm), d->y + 20 }, .across = 0.5, .rise = LETTERS_BELOW, .colour = d->look->dim_text };
  const Box box = lettering_box (&d->lettering, &letters);

  if (box.max.x + 4 < aim.min.x || box.min.x - 4 > aim.max.x)
    lettering_draw (&d->lettering, &letters);
}

static void
draw_figures (RailDraft *d)
{
  const Part *part = d->rail->part;
  const Solution *solution = d->rail->solution;
  g_autofree char *place = units_length_figure (d->rail->units, part->x);
  Box aim = { { INFINITY, 0 }, { -INFINITY, 0 } };

  put_figure (d, place, px_of (d, part->x), -17);
  if (solution && solution->reachable)
    {
      g_autofree char *length = units_length_figure (d->rail->units, solution->x_mm);
      /* Translators: where a part should stand on its rail, "aim 105" */
      g_autofree char *text = g_strdup_printf (_("aim %s"), length);

      draw_aim (d->cr, d->look, (Point) { px_of (d, solution->x_mm), d->y + 2 }, true);
      aim = put_figure (d, text, px_of (d, solution->x_mm), 20);
    }
  put_end (d, part->rail_from, aim);
  put_end (d, part->rail_to, aim);
}

void
draw_rail_figure (cairo_t *cr, const RailFigure *rail, double width, double height)
{
  RailDraft draft = { .rail = rail, .cr = cr, .look = rail->look, .width = width, .y = round (height / 2) };

  cairo_save (cr);
  cairo_new_path (cr);
  draft.lettering = lettering_begin (cr, rail->look);
  draw_band (&draft);
  draw_line (&draft);
  draw_figures (&draft);
  draw_knob (&draft);
  cairo_restore (cr);
}
