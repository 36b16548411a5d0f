#pragma once
#include <stdbool.h>
#include <stddef.h>

/** Plots of the convergence study as SVG: graphite on paper, each mark of a shape of its own, so that nothing is said by colour. */

typedef enum { MARK_DISC, MARK_RING, MARK_SQUARE, MARK_BOX, MARK_TRIANGLE, MARK_TENT, MARK_WEDGE, MARK_FUNNEL, MARK_DIAMOND,
               MARK_KITE } PlotMark;

/** A line across the plot at a value, named. */
typedef struct { double value; const char *name; } PlotRule;

/** One line of marks: a value a step. */
typedef struct { const char *name; const double *values; PlotMark mark; bool is_dashed; } PlotSeries;

/** Amounts against steps of growing cost, both axes logarithmic. Amounts beyond `least` and `most` stand on the edge. */
typedef struct {
  const char *title, *description, *cost_name, *amount_name;
  const double *costs;
  const char *const *step_names;
  size_t step_count;
  const PlotSeries *series;
  size_t series_count;
  const PlotRule *rules;
  size_t rule_count;
  double least, most;           /* powers of ten */
} LinePlot;

/** One row of marks: a value a kind. NAN leaves a mark out. */
typedef struct { const char *name; const double *values; } PlotRow;

/** Amounts of several kinds in named rows, the amount's axis logarithmic. Amounts under `least` stand on the left edge. */
typedef struct {
  const char *title, *description, *amount_name;
  const char *const *kind_names;
  const PlotMark *marks;        /* a kind each */
  size_t kind_count;
  const PlotRow *rows;
  size_t row_count;
  const PlotRule *rules;
  size_t rule_count;
  double least, most;
} RowPlot;

/** Write the plot; false when the file cannot be written. */
bool line_plot_write (const LinePlot *self, const char *path);
bool row_plot_write (const RowPlot *self, const char *path);
