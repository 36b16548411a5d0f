#include "drawing/rulers.h"
#include <math.h>
#include "drawing/lettering.h"
#include "drawing/line-kind.h"

static const double inch = 25.4, least_label_px = 60, least_tick_px = 4;

/* The least 1, 2, 5 × 10ⁿ that is not under `least`. */
static double
round_up (double least)
{
  const double decade = pow (10, floor (log10 (least)));

  for (int i = 0; i < 2; i++)
    if ((i == 0 ? 1 : 2) * decade >= least * (1 - 1e-9))
      return (i == 0 ? 1 : 2) * decade;
  return (5 * decade >= least * (1 - 1e-9) ? 5 : 10) * decade;
}

/* In inches: 1/32, 1/16 … 1/2, then 1, 2, 5 × 10ⁿ. */
static double
round_up_inches (double least)
{
  for (double step = 1 / 32.0; step < 1; step *= 2)
    if (step >= least)
      return step;
  return round_up (fmax (least, 1));
}

double
ruler_step (Units units, double scale)
{
  const double least = least_label_px / scale;

  return units.length == LENGTH_MM ? fmax (1, round_up (least)) : inch * round_up_inches (least / inch);
}

/* Into how many parts ticks divide a step, and every how many one of middle length stands. */
typedef struct { int parts, middle; } TickDivision;

static TickDivision
metric_division (double step)
{
  const long leading = lround (step / pow (10, floor (log10 (step) + 1e-9)));

  return leading == 5 ? (TickDivision) { 5, 5 } : leading == 2 ? (TickDivision) { 4, 2 } : (TickDivision) { 10, 5 };
}

static TickDivision
inch_division (double inches)
{
  const long whole = lround (inches);

  if (inches < 1.5)
    return (TickDivision) { 8, 4 };
  return whole % 5 == 0 ? (TickDivision) { whole % 10 == 0 ? 10 : 5, 5 } : (TickDivision) { 4, 2 };
}

/* Coarser where the finest ticks would run together. */
static TickDivision
tick_division (Units units, double step, double scale)
{
  TickDivision d = units.length == LENGTH_MM ? metric_division (step) : inch_division (step / inch);

  while (d.parts > 1 && step * scale / d.parts < least_tick_px)
    d = d.parts % 2 == 0 ? (TickDivision) { d.parts / 2, d.middle > 1 ? d.middle / 2 : 1 } : (TickDivision) { 1, 1 };
  return d;
}

/* One ruler being drawn. Along the page everything is the same with x and y exchanged. */
typedef struct {
  cairo_t *cr;
  const Ruler *ruler;
  const Look *look;
  Lettering lettering;
  bool across;
  double length, depth;       /* px: along the ruler, and from its outer edge to the sheet */
  double origin;              /* px along the ruler of 0 */
} RulerDraft;

static Point
at (const RulerDraft *d, double along, double from_edge)
{
  return d->across ? (Point) { along, from_edge } : (Point) { from_edge, along };
}

static void
draw_ground (const RulerDraft *d)
{
  const double edge = d->depth - 0.5;
  Colour faint = d->look->construction;

  look_set_source (d->cr, d->look->ruler_ground);
  cairo_rectangle (d->cr, 0, 0, d->across ? d->length : d->depth, d->across ? d->depth : d->length);
  cairo_fill (d->cr);
  faint.alpha = 0.45;
  look_set_source (d->cr, faint);
  cairo_set_line_width (d->cr, 1);
  cairo_set_dash (d->cr, NULL, 0, 0);
  line_stroke (d->cr, at (d, 0, edge), at (d, d->length, edge));
}

static void
draw_label (RulerDraft *d, double along, double mm)
{
  g_autofree char *text = units_length_figure (d->ruler->units, d->across ? fabs (mm) : mm);
  const double line = round (d->depth * 0.42) + d->look->ruler_size * d->look->cap_height / 2;
  const Letters letters = {
    .text = text, .size = d->look->ruler_size, .colour = d->look->dim_text, .turned = !d->across,
    .place = at (d, along + (d->across ? 4 : -4), line) };
  const Box box = lettering_box (&d->lettering, &letters);

  if ((d->across ? box.min.x : box.min.y) < 0 || (d->across ? box.max.x : box.max.y) > d->length)      /* cut, it would be another */
    return;
  lettering_draw (&d->lettering, &letters);
}

static void
add_tick (const RulerDraft *d, double along, double length)
{
  const Point from = at (d, d->across ? line_crisp_x (d->cr, along, 1) : line_crisp_y (d->cr, along, 1), d->depth - length);
  const Point to = d->across ? (Point) { from.x, d->depth } : (Point) { d->depth, from.y };

  cairo_move_to (d->cr, from.x, from.y);
  cairo_line_to (d->cr, to.x, to.y);
}

static void
draw_ticks (RulerDraft *d)
{
  const double scale = d->ruler->view->scale, step = ruler_step (d->ruler->units, scale);
  const TickDivision division = tick_division (d->ruler->units, step, scale);
  const double pitch = step * scale / division.parts;
  const long first = lround (floor (-d->origin / pitch)) - division.parts, last = lround (ceil ((d->length - d->origin) / pitch)) + division.parts;

  for (long i = first; i <= last; i++)
    {
      const double along = d->origin + i * pitch;
      const bool labelled = i % division.parts == 0;

      add_tick (d, along, labelled ? 10 : i % division.middle == 0 ? 7 : 4);
    }
  look_set_source (d->cr, d->look->construction);
  cairo_set_line_width (d->cr, 1);
  cairo_stroke (d->cr);
  for (long i = first; i <= last; i++)
    if (i % division.parts == 0)
      draw_label (d, d->origin + i * pitch, i / division.parts * step);
}

/* The selection's extent, as a bar on the sheet's edge. */
static void
draw_extent (const RulerDraft *d)
{
  const Ruler *r = d->ruler;
  const double from = d->origin + r->extent_from * r->view->scale, to = d->origin + r->extent_to * r->view->scale;
  const Point a = at (d, from, d->depth - 2.5), b = at (d, to, d->depth);

  if (isnan (r->extent_from) || isnan (r->extent_to))
    return;
  look_set_source (d->cr, d->look->selection);
  cairo_rectangle (d->cr, fmin (a.x, b.x), fmin (a.y, b.y), fmax (fabs (b.x - a.x), 2.5), fmax (fabs (b.y - a.y), 2.5));
  cairo_fill (d->cr);
}

/* A triangle of 8 × 6 px that points to the sheet. */
static void
draw_pointer (const RulerDraft *d)
{
  const double along = d->origin + d->ruler->pointer * d->ruler->view->scale;
  const Point tip = at (d, along, d->depth), left = at (d, along - 4, d->depth - 6), right = at (d, along + 4, d->depth - 6);

  if (isnan (d->ruler->pointer))
    return;
  look_set_source (d->cr, d->look->selection);
  cairo_move_to (d->cr, tip.x, tip.y);
  cairo_line_to (d->cr, left.x, left.y);
  cairo_line_to (d->cr, right.x, right.y);
  cairo_close_path (d->cr);
  cairo_fill (d->cr);
}

static void
draw_ruler (cairo_t *cr, RulerDraft *draft)
{
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_rectangle (cr, 0, 0, draft->across ? draft->length : draft->depth, draft->across ? draft->depth : draft->length);
  cairo_clip (cr);
  draw_ground (draft);
  draft->lettering = lettering_begin (cr, draft->look);
  draw_ticks (draft);
  draw_extent (draft);
  draw_pointer (draft);
  cairo_restore (cr);
}

void
draw_ruler_across (cairo_t *cr, const Ruler *ruler, double width, double height)
{
  RulerDraft draft = { .cr = cr, .ruler = ruler, .look = ruler->look, .across = true, .length = width, .depth = height,
                       .origin = ruler->view->origin_x };

  draw_ruler (cr, &draft);
}

void
draw_ruler_along (cairo_t *cr, const Ruler *ruler, double width, double height)
{
  RulerDraft draft = { .cr = cr, .ruler = ruler, .look = ruler->look, .length = height, .depth = width,
                       .origin = ruler->view->origin_y };

  draw_ruler (cr, &draft);
}

void
draw_ruler_corner (cairo_t *cr, const Ruler *ruler, double width, double height)
{
  Lettering lettering;

  cairo_save (cr);
  look_set_source (cr, ruler->look->ruler_ground);
  cairo_rectangle (cr, 0, 0, width, height);
  cairo_fill (cr);
  lettering = lettering_begin (cr, ruler->look);
  lettering_draw (&lettering, &(Letters) {
    .text = units_length_name (ruler->units), .place = { width / 2, height / 2 }, .size = ruler->look->ruler_size,
    .colour = ruler->look->dim_text, .across = 0.5, .rise = LETTERS_AT_MIDDLE });
  cairo_restore (cr);
}
