#include "drawing/dimension.h"
#include <math.h>

static double arrow_length (const Look *look) { return look_size (look, 9, 3); }

void
draw_arrowhead (cairo_t *cr, const Look *look, Point tip, Point along)
{
  const double length = arrow_length (look), half = look_size (look, 3, 0.9) / 2;
  const Point base = point_sub (tip, point_scale (along, length)), side = { -along.y * half, along.x * half };

  cairo_move_to (cr, tip.x, tip.y);
  cairo_line_to (cr, base.x + side.x, base.y + side.y);
  cairo_line_to (cr, base.x - side.x, base.y - side.y);
  cairo_close_path (cr);
  cairo_fill (cr);
}

/* The dimension line in the direction in which its figure is read: to the right, or up the page. */
typedef struct {
  Point from, to, along;
  double length;
  bool turned;
  bool arrows_outside, figure_outside;
} DimensionRun;

static DimensionRun
dimension_run (const Look *look, const Dimension *d)
{
  DimensionRun run = { .from = d->from, .to = d->to };
  const double dx = d->to.x - d->from.x, dy = d->to.y - d->from.y, tiny = 1e-6;

  if (dx < -tiny || (fabs (dx) <= tiny && dy > 0))
    {
      run.from = d->to;
      run.to = d->from;
    }
  run.length = hypot (dx, dy);
  run.along = run.length > 0 ? point_scale (point_sub (run.to, run.from), 1 / run.length) : (Point) { 1, 0 };
  run.turned = run.along.y < -0.99;
  run.arrows_outside = run.figure_outside = run.length < 3.5 * arrow_length (look);
  return run;
}

static Letters
dimension_letters (const Look *look, const Dimension *d, const DimensionRun *run)
{
  const double size = d->size > 0 ? d->size : look->figure_size, gap = 0.24 * size;
  const Point above = { run->along.y, -run->along.x };      /* left of the way it is read */
  const double past = 2 * arrow_length (look);
  const Point beside = run->figure_outside ? point_add (run->to, point_scale (run->along, past)) : point_mix (run->from, run->to, 0.5);

  return (Letters) {
    .text = d->figure, .place = point_add (beside, point_scale (above, gap)), .size = size, .colour = d->letters,
    .across = run->figure_outside ? 0 : run->turned ? 0.5 : 0.5 - above.x / 2, .turned = run->turned, .halo = 0.26 * size };
}

/* The room that the figure takes along its line. */
static double
figure_length (const DimensionRun *run, Box figure)
{
  return run->turned ? figure.max.y - figure.min.y : figure.max.x - figure.min.x;
}

/* A figure longer than its line stands beyond it, like one whose arrows have no room. */
static Letters
dimension_place_figure (const Lettering *lettering, const Dimension *d, DimensionRun *run)
{
  const Letters between = dimension_letters (lettering->look, d, run);
  const bool straight = fabs (run->along.x) > 0.99 || run->turned;

  if (straight && figure_length (run, lettering_box (lettering, &between)) > run->length)
    run->figure_outside = true;
  return dimension_letters (lettering->look, d, run);
}

static void
draw_extension (cairo_t *cr, const Look *look, Point foot, Point end)
{
  const double gap = look_size (look, 3, 1), past = look_size (look, 4, 1.6), far = point_distance (foot, end);
  const Point along = far > 0 ? point_scale (point_sub (end, foot), 1 / far) : (Point) { 0, 0 };

  if (far > gap)
    line_stroke (cr, point_add (foot, point_scale (along, gap)), point_add (end, point_scale (along, past)));
}

static void
draw_arrows (cairo_t *cr, const Look *look, const DimensionRun *run)
{
  const Point back = point_scale (run->along, -1);

  draw_arrowhead (cr, look, run->from, run->arrows_outside ? run->along : back);
  draw_arrowhead (cr, look, run->to, run->arrows_outside ? back : run->along);
}

/* Beyond arrows that stand outside, and under a figure that does. */
static void
draw_tails (cairo_t *cr, const Look *look, const DimensionRun *run, double under)
{
  const double tail = 2 * arrow_length (look), beyond = run->figure_outside ? tail + under : run->arrows_outside ? tail : 0;

  if (run->arrows_outside)
    line_stroke (cr, point_sub (run->from, point_scale (run->along, tail)), run->from);
  if (beyond > 0)
    line_stroke (cr, run->to, point_add (run->to, point_scale (run->along, beyond)));
}

/* The line's end where line_stroke will put it, so that the arrow stands on it. */
static Point
crisp_end (cairo_t *cr, Point end, Point along)
{
  const double width = cairo_get_line_width (cr);

  if (fabs (along.x) < 1e-9)
    end.x = line_crisp_x (cr, end.x, width);
  if (fabs (along.y) < 1e-9)
    end.y = line_crisp_y (cr, end.y, width);
  return end;
}

void
dimension_draw (const Lettering *lettering, const Dimension *d)
{
  cairo_t *cr = lettering->cr;
  const Look *look = lettering->look;
  DimensionRun run = dimension_run (look, d);
  const Letters letters = dimension_place_figure (lettering, d, &run);
  const double under = figure_length (&run, lettering_box (lettering, &letters));

  cairo_save (cr);
  lettering_draw (lettering, &letters);       /* first: its halo must not eat its own line */
  look_set_source (cr, d->line.alpha > 0 ? d->line : look->construction);
  line_kind_set (cr, look, d->feet == LINE_OUTLINE ? LINE_CONSTRUCTION : d->feet);
  draw_extension (cr, look, d->foot_from, d->from);
  draw_extension (cr, look, d->foot_to, d->to);
  line_kind_set (cr, look, LINE_CONSTRUCTION);
  run.from = crisp_end (cr, run.from, run.along);
  run.to = crisp_end (cr, run.to, run.along);
  draw_arrows (cr, look, &run);
  draw_tails (cr, look, &run, under);
  line_stroke (cr, run.from, run.to);
  cairo_restore (cr);
}

Box
dimension_figure_box (const Lettering *lettering, const Dimension *d)
{
  DimensionRun run = dimension_run (lettering->look, d);
  const Letters letters = dimension_place_figure (lettering, d, &run);

  return lettering_box (lettering, &letters);
}
