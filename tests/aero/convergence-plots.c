#include "convergence-plots.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include "convergence-plot.h"

enum { most_path = 4096, most_wings = 40, most_companies = 12 };

static const char panels_axis[] = "panels on a half-wing: along the span × along the chord";
static const char error_axis[] = "error of the neutral point, % of MAC";
static const char *const step_names[study_steps] = { "6×2", "10×4", "14×4", "20×6", "28×8", "36×10" };
static const PlotRule rules[] = { { .value = 0.15, .name = "0.15 %" }, { .value = 0.4, .name = "0.4 %" } };
static const PlotMark company_marks[] = { MARK_DISC, MARK_TENT, MARK_TRIANGLE, MARK_FUNNEL, MARK_WEDGE, MARK_BOX, MARK_KITE };

/* Wings that the plots by panel number show. */
static const char *const shown[] = { "straight", "cranked", "elliptical 45 + 85", "square notch at the root", "swept 28, tapered" };
static const PlotMark shown_marks[] = { MARK_DISC, MARK_RING, MARK_TRIANGLE, MARK_BOX, MARK_DIAMOND };
enum { shown_count = sizeof shown / sizeof *shown };

static size_t
wing_named (const char *name)
{
  for (size_t w = 0; w < study_wing_count; w++)
    if (!strcmp (study_wings[w].name, name))
      return w;
  abort ();
}

static size_t
company_named (const char *name)
{
  for (size_t c = 0; c < study_company_count; c++)
    if (!strcmp (study_companies[c].name, name))
      return c;
  abort ();
}

static void
take_amounts (const double errors[], double amounts[])
{
  for (int i = 0; i < study_steps; i++)
    amounts[i] = fabs (errors[i]);
}

static bool
write_lines (const char *folder, const char *file, const char *title, const char *description, double least,
             const PlotSeries series[], size_t count)
{
  double costs[study_steps];
  const LinePlot plot = { .title = title, .description = description, .cost_name = panels_axis, .amount_name = error_axis,
                          .costs = costs, .step_names = step_names, .step_count = study_steps, .series = series,
                          .series_count = count, .rules = rules, .rule_count = 2, .least = least, .most = 10 };
  char path[most_path];

  for (int i = 0; i < study_steps; i++)
    costs[i] = study_panels[i].spanwise * study_panels[i].chordwise;
  snprintf (path, sizeof path, "%s/convergence/%s", folder, file);
  return line_plot_write (&plot, path);
}

static bool
write_wings (const StudyFindings *findings, const char *folder, const char *file, const char *title, const char *company)
{
  double amounts[shown_count][study_steps];
  PlotSeries series[shown_count];

  for (int i = 0; i < shown_count; i++)
    {
      take_amounts (study_row (findings, wing_named (shown[i]), company_named (company))->neutral, amounts[i]);
      series[i] = (PlotSeries) { .name = shown[i], .values = amounts[i], .mark = shown_marks[i] };
    }
  return write_lines (folder, file, title, "Error of the neutral point in percent of the mean aerodynamic chord against the number of "
                      "panels, for five wings; both axes logarithmic. Where a line dips, the error changes its sign.",
                      0.001, series, shown_count);
}

static bool
write_groups (const StudyFindings *findings, const char *folder)
{
  static const char *const names[study_groups] = { "alone", "with a tail", "foreplane, biplane", "swept past 15°" };
  static const PlotMark marks[study_groups] = { MARK_DISC, MARK_TRIANGLE, MARK_BOX, MARK_DIAMOND };
  double amounts[study_groups][study_steps];
  PlotSeries series[study_groups];
  size_t count = 0;

  for (int group = 0; group < study_groups; group++)
    {
      for (int i = 0; i < study_steps; i++)
        amounts[group][i] = study_greatest (findings, (StudyGroup) group, i, false);
      series[count++] = (PlotSeries) { .name = names[group], .values = amounts[group], .mark = marks[group] };
    }
  return write_lines (folder, "greatest.svg", "The greatest error of each group of wings", "The greatest error of the neutral point in "
                      "percent of the mean aerodynamic chord among the wings of each group against the number of panels; both axes "
                      "logarithmic, and what is more than ten percent stands on the upper end.", 0.01, series, count);
}

static bool
write_spacing (const StudyFindings *findings, const char *folder)
{
  static const struct { const char *wing, *company, *name; PlotMark cosine, even; } cases[] = {
    { "tapered 150 to 90", "alone", "tapered", MARK_DISC, MARK_RING },
    { "elliptical 45 + 85", "alone", "elliptical", MARK_TRIANGLE, MARK_TENT },
    { "tapered 150 to 90", "tail", "tapered with a tail", MARK_SQUARE, MARK_BOX },
  };
  enum { case_count = sizeof cases / sizeof *cases };
  double amounts[2 * case_count][study_steps];
  char names[2 * case_count][64];
  PlotSeries series[2 * case_count];

  for (int i = 0; i < case_count; i++)
    {
      const StudyRow *row = study_row (findings, wing_named (cases[i].wing), company_named (cases[i].company));

      take_amounts (row->neutral, amounts[2 * i]);
      take_amounts (row->even, amounts[2 * i + 1]);
      snprintf (names[2 * i], sizeof *names, "%s, cosine", cases[i].name);
      snprintf (names[2 * i + 1], sizeof *names, "%s, even", cases[i].name);
      series[2 * i] = (PlotSeries) { .name = names[2 * i], .values = amounts[2 * i], .mark = cases[i].cosine };
      series[2 * i + 1] = (PlotSeries) { .name = names[2 * i + 1], .values = amounts[2 * i + 1], .mark = cases[i].even, .is_dashed = true };
    }
  return write_lines (folder, "spacing.svg", "Strips that narrow towards tips, and strips of one width", "Error of the neutral point in "
                      "percent of the mean aerodynamic chord against the number of panels: cosine spacing with whole lines and filled "
                      "marks, even spacing with broken lines and open marks; both axes logarithmic.", 0.001, series, 2 * case_count);
}

static bool
write_promise (const StudyFindings *findings, const char *folder)
{
  double amounts[most_wings][most_companies];
  const char *names[most_companies];
  PlotRow rows[most_wings];
  const RowPlot plot = { .title = "What 20 by 6 panels leave, wing by wing", .description = "Error of the neutral point in percent of the "
                         "mean aerodynamic chord at 20 by 6 panels: a row for each wing, a mark for each company it flies in; the axis is "
                         "logarithmic, and what is less than a thousandth of a percent stands on its left end.",
                         .amount_name = error_axis, .kind_names = names, .marks = company_marks, .kind_count = study_company_count,
                         .rows = rows, .row_count = study_wing_count, .rules = rules, .rule_count = 2, .least = 0.001, .most = 1 };
  char path[most_path];

  for (size_t c = 0; c < study_company_count; c++)
    names[c] = study_companies[c].name;
  for (size_t w = 0; w < study_wing_count; w++)
    {
      for (size_t c = 0; c < study_company_count; c++)
        amounts[w][c] = fabs (study_row (findings, w, c)->neutral[study_working]);
      rows[w] = (PlotRow) { .name = study_wings[w].name, .values = amounts[w] };
    }
  snprintf (path, sizeof path, "%s/convergence/promise.svg", folder);
  return row_plot_write (&plot, path);
}

bool
plots_write (const StudyFindings *findings, const char *folder)
{
  return write_wings (findings, folder, "alone.svg", "Five wings alone", "alone")
    && write_wings (findings, folder, "tailed.svg", "The same wings with a tail", "tail")
    && write_groups (findings, folder) && write_spacing (findings, folder) && write_promise (findings, folder);
}
