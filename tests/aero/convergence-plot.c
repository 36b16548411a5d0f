#include "convergence-plot.h"

#include <math.h>
#include <stdio.h>

static const char paper[] = "#f7f2e8", graphite[] = "#36332f", pencil[] = "#6b665e", rule_line[] = "#d9d0bf";

/* A place on the sheet, in its units. */
typedef struct { double x, y; } Spot;

/* The rectangle between the axes, and what it spans. */
typedef struct { double left, right, top, bottom; } Frame;

enum { most_labels = 16 };

static void
begin (FILE *file, double width, double height, const char *title, const char *description)
{
  fprintf (file, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %g %g\" width=\"%g\" height=\"%g\" role=\"img\" "
           "aria-labelledby=\"title desc\" font-family=\"Cantarell, 'Noto Sans', 'DejaVu Sans', sans-serif\" font-size=\"13\" "
           "fill=\"%s\">\n", width, height, width, height, graphite);
  fprintf (file, "<title id=\"title\">%s</title>\n<desc id=\"desc\">%s</desc>\n", title, description);
  fprintf (file, "<rect width=\"%g\" height=\"%g\" fill=\"%s\"/>\n", width, height, paper);
  fprintf (file, "<text x=\"20\" y=\"28\" font-size=\"16\" font-weight=\"bold\">%s</text>\n", title);
}

static bool
end (FILE *file)
{
  fprintf (file, "</svg>\n");
  return !ferror (file) & !fclose (file);
}

static void
draw_line (FILE *file, Spot from, Spot to, const char *colour, double width, const char *dashes)
{
  fprintf (file, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%g\"%s%s%s/>\n",
           from.x, from.y, to.x, to.y, colour, width, dashes ? " stroke-dasharray=\"" : "", dashes ? dashes : "", dashes ? "\"" : "");
}

static void
draw_text (FILE *file, Spot at, const char *anchor, const char *text)
{
  fprintf (file, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>\n", at.x, at.y, anchor, text);
}

/* Filled marks are graphite, the others paper with a graphite edge. */
static void
draw_mark (FILE *file, PlotMark mark, Spot at)
{
  const bool filled = mark == MARK_DISC || mark == MARK_SQUARE || mark == MARK_TRIANGLE || mark == MARK_WEDGE || mark == MARK_DIAMOND;
  const char *path;

  switch (mark)
    {
    case MARK_DISC: case MARK_RING: path = "M-4.5,0a4.5,4.5 0 1 1 9,0a4.5,4.5 0 1 1 -9,0z"; break;
    case MARK_SQUARE: case MARK_BOX: path = "M-4,-4h8v8h-8z"; break;
    case MARK_TRIANGLE: case MARK_TENT: path = "M0,-5.5l5.2,9h-10.4z"; break;
    case MARK_WEDGE: case MARK_FUNNEL: path = "M0,5.5l5.2,-9h-10.4z"; break;
    default: path = "M0,-6l5,6l-5,6l-5,-6z";
    }
  fprintf (file, "<path transform=\"translate(%.1f %.1f)\" d=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.4\"/>\n", at.x, at.y, path,
           filled ? graphite : paper, graphite);
}

/* Where an amount stands between `from` and `to`, on a logarithmic axis. */
static double
place (double amount, double least, double most, double from, double to)
{
  return from + (to - from) * log (fmin (fmax (amount, least), most) / least) / log (most / least);
}

/* Half the digit's place down for text that stands beside a line. */
static Spot
beside (double x, double y)
{
  return (Spot) { x, y + 4.5 };
}

static double
line_x (const LinePlot *self, const Frame *frame, size_t step)
{
  return place (self->costs[step], self->costs[0], self->costs[self->step_count - 1], frame->left + 12, frame->right - 12);
}

static double
line_y (const LinePlot *self, const Frame *frame, double amount)
{
  return place (amount, self->least, self->most, frame->bottom, frame->top);
}

static void
draw_line_axes (FILE *file, const LinePlot *self, const Frame *frame)
{
  char label[32];

  for (double decade = self->least; decade < 1.5 * self->most; decade *= 10)
    {
      const double y = line_y (self, frame, decade);

      draw_line (file, (Spot) { frame->left, y }, (Spot) { frame->right, y }, rule_line, 1, NULL);
      snprintf (label, sizeof label, "%g", decade);
      draw_text (file, beside (frame->left - 8, y), "end", label);
    }
  for (size_t i = 0; i < self->step_count; i++)
    {
      const double x = line_x (self, frame, i);

      draw_line (file, (Spot) { x, frame->bottom }, (Spot) { x, frame->bottom + 5 }, graphite, 1, NULL);
      draw_text (file, (Spot) { x, frame->bottom + 20 }, "middle", self->step_names[i]);
    }
  draw_line (file, (Spot) { frame->left, frame->bottom }, (Spot) { frame->right, frame->bottom }, graphite, 1.2, NULL);
  draw_line (file, (Spot) { frame->left, frame->top }, (Spot) { frame->left, frame->bottom }, graphite, 1.2, NULL);
  draw_text (file, (Spot) { (frame->left + frame->right) / 2, frame->bottom + 44 }, "middle", self->cost_name);
  fprintf (file, "<text transform=\"translate(24 %.1f) rotate(-90)\" text-anchor=\"middle\">%s</text>\n",
           (frame->top + frame->bottom) / 2, self->amount_name);
}

static void
draw_line_rules (FILE *file, const LinePlot *self, const Frame *frame)
{
  for (size_t i = 0; i < self->rule_count; i++)
    {
      const double y = line_y (self, frame, self->rules[i].value);

      draw_line (file, (Spot) { frame->left, y }, (Spot) { frame->right, y }, pencil, 1.2, "2 3");
      draw_text (file, beside (frame->left - 8, y), "end", self->rules[i].name);
    }
}

/* Names stand at the lines' ends, pushed apart where those are close. */
static void
place_names (const LinePlot *self, const Frame *frame, double y[])
{
  size_t order[most_labels];

  for (size_t i = 0; i < self->series_count; i++)
    {
      size_t at = i;

      y[i] = line_y (self, frame, self->series[i].values[self->step_count - 1]);
      for (; at > 0 && y[order[at - 1]] > y[i]; at--)
        order[at] = order[at - 1];
      order[at] = i;
    }
  for (size_t i = 1; i < self->series_count; i++)
    y[order[i]] = fmax (y[order[i]], y[order[i - 1]] + 17);
  for (size_t i = self->series_count; i-- > 0; )
    {
      const double lowest = i + 1 < self->series_count ? y[order[i + 1]] - 17 : frame->bottom;

      y[order[i]] = fmin (y[order[i]], lowest);
    }
}

static void
draw_series (FILE *file, const LinePlot *self, const Frame *frame, const PlotSeries *series, double name_y)
{
  const size_t last = self->step_count - 1;
  const Spot tip = { line_x (self, frame, last), line_y (self, frame, series->values[last]) };

  fprintf (file, "<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"1.6\"%s points=\"", graphite,
           series->is_dashed ? " stroke-dasharray=\"6 4\"" : "");
  for (size_t i = 0; i <= last; i++)
    fprintf (file, "%s%.1f,%.1f", i ? " " : "", line_x (self, frame, i), line_y (self, frame, series->values[i]));
  fprintf (file, "\"/>\n");
  for (size_t i = 0; i <= last; i++)
    draw_mark (file, series->mark, (Spot) { line_x (self, frame, i), line_y (self, frame, series->values[i]) });
  draw_line (file, (Spot) { tip.x + 8, tip.y }, (Spot) { frame->right + 10, name_y }, pencil, 0.8, NULL);
  draw_mark (file, series->mark, (Spot) { frame->right + 18, name_y });
  draw_text (file, beside (frame->right + 28, name_y), "start", series->name);
}

bool
line_plot_write (const LinePlot *self, const char *path)
{
  const Frame frame = { .left = 92, .right = 604, .top = 50, .bottom = 370 };
  FILE *file = fopen (path, "w");
  double name_y[most_labels];

  if (!file)
    return false;
  begin (file, 820, 430, self->title, self->description);
  draw_line_axes (file, self, &frame);
  draw_line_rules (file, self, &frame);
  place_names (self, &frame, name_y);
  for (size_t i = 0; i < self->series_count; i++)
    draw_series (file, self, &frame, &self->series[i], name_y[i]);
  return end (file);
}

static double
row_x (const RowPlot *self, const Frame *frame, double amount)
{
  return place (amount, self->least, self->most, frame->left, frame->right);
}

static void
draw_row_axes (FILE *file, const RowPlot *self, const Frame *frame)
{
  char label[32];

  for (double decade = self->least; decade < 1.5 * self->most; decade *= 10)
    {
      const double x = row_x (self, frame, decade);

      draw_line (file, (Spot) { x, frame->top }, (Spot) { x, frame->bottom }, rule_line, 1, NULL);
      snprintf (label, sizeof label, "%g", decade);
      draw_text (file, (Spot) { x, frame->bottom + 20 }, "middle", label);
    }
  draw_line (file, (Spot) { frame->left, frame->bottom }, (Spot) { frame->right, frame->bottom }, graphite, 1.2, NULL);
  draw_text (file, (Spot) { (frame->left + frame->right) / 2, frame->bottom + 44 }, "middle", self->amount_name);
  for (size_t i = 0; i < self->rule_count; i++)
    {
      const double x = row_x (self, frame, self->rules[i].value);

      draw_line (file, (Spot) { x, frame->top }, (Spot) { x, frame->bottom }, pencil, 1.2, "2 3");
      draw_text (file, (Spot) { x, frame->top - 6 }, "middle", self->rules[i].name);
    }
}

static void
draw_kinds (FILE *file, const RowPlot *self, const Frame *frame)
{
  for (size_t i = 0; i < self->kind_count; i++)
    {
      const double y = frame->top + 12 + 24 * (double) i;

      draw_mark (file, self->marks[i], (Spot) { frame->right + 24, y });
      draw_text (file, beside (frame->right + 36, y), "start", self->kind_names[i]);
    }
}

bool
row_plot_write (const RowPlot *self, const char *path)
{
  const double step = 24;
  const Frame frame = { .left = 230, .right = 640, .top = 74, .bottom = 74 + step * (double) self->row_count };
  FILE *file = fopen (path, "w");

  if (!file)
    return false;
  begin (file, 860, frame.bottom + 60, self->title, self->description);
  draw_row_axes (file, self, &frame);
  draw_kinds (file, self, &frame);
  for (size_t i = 0; i < self->row_count; i++)
    {
      const double y = frame.top + step * ((double) i + 0.5);

      draw_line (file, (Spot) { frame.left, y }, (Spot) { frame.right, y }, rule_line, 0.7, NULL);
      draw_text (file, beside (frame.left - 14, y), "end", self->rows[i].name);
      for (size_t k = 0; k < self->kind_count; k++)
        if (!isnan (self->rows[i].values[k]))
          draw_mark (file, self->marks[k], (Spot) { row_x (self, &frame, self->rows[i].values[k]), y });
    }
  return end (file);
}
