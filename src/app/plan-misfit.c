#include "app/plan-misfit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* %: what a person would call a difference; a span and a length nearer than this are meant to be one. */
static const double SPAN_DIFFERS = 0.25, SPAN_MEANT = 5;
/* mm: a longer side beyond these is a slip of the pen more likely than a plan; rolls of two metres are sold, and parts of a hand's width. */
static const double LARGEST_SHEET = 2500, SMALLEST_SHEET = 60;

static char *
percent (double value)
{
  return units_number (fabs (value), fabs (value) < 10 ? 1 : 0);
}

/* The known length furthest off, against what the others make of it. */
static char *
words_disagree (const Plan *plan, const MappingMisfit *misfit, Units units)
{
  size_t worst = 0, second;
  double most = 0;
  g_autofree char *length = NULL, *other = NULL, *by = NULL;

  for (size_t i = 0; i < misfit->length_count; i++)
    if (misfit->lengths[i].disagrees && fabs (misfit->lengths[i].residual_percent) > most) {
      most = fabs (misfit->lengths[i].residual_percent);
      worst = i;
    }
  length = units_length_known (units, plan->lengths[worst].mm);
  if (misfit->length_count == 2 && misfit->maker == MADE_BY_LENGTHS) {
    second = 1 - worst;
    other = units_length_known (units, plan->lengths[second].mm);
    by = percent (misfit->lengths[worst].residual_percent - misfit->lengths[second].residual_percent);
    /* Translators: two known lengths with their units, and a percentage. */
    return g_strdup_printf (_("The lengths %s and %s disagree by %s\u00a0%%. Look at their ends and figures."), length, other, by);
  }
  by = percent (misfit->lengths[worst].residual_percent);
  if (misfit->lengths[worst].residual_percent > 0)
    /* Translators: a known length with its unit, and a percentage. */
    return g_strdup_printf (_("The length %s measures %s\u00a0%% more on the plan. Look at its ends and its figure."), length, by);
  return g_strdup_printf (_("The length %s measures %s\u00a0%% less on the plan. Look at its ends and its figure."), length, by);
}

/* A larger scale down the picture: fewer pixels for the same millimetres, so the paper is longer the other way. */
static char *
words_stretched (const MappingMisfit *misfit)
{
  g_autofree char *by = percent (misfit->difference_percent);

  if (misfit->difference_percent > 0)
    return g_strdup_printf (_("Paper has stretched: across %s\u00a0%% more than along. Both are used."), by);
  return g_strdup_printf (_("Paper has stretched: along %s\u00a0%% more than across. Both are used."), by);
}

/* One scale is used both ways. */
static char *
words_agree (const MappingMisfit *misfit)
{
  g_autofree char *by = percent (misfit->difference_percent);

  if (fabs (misfit->difference_percent) < SPAN_DIFFERS)
    return g_strdup (_("The lengths agree, as nearly as they were clicked."));
  /* Translators: a percentage. */
  return g_strdup_printf (_("Across and along differ by %s %%, no more than clicks at that zoom may: zoom in and drag the ends."), by);
}

char *
plan_misfit_picture (const Plan *plan, const MappingMisfit *misfit, Units units)
{
  g_autofree char *width = NULL, *height = NULL;

  if (!(plan->width > 0 && plan->height > 0) || plan->has_corners)
    return NULL;
  width = units_length_figure (units, plan->width * misfit->scale_x);
  height = units_length (units, plan->height * misfit->scale_y);
  if (misfit->maker == MADE_BY_TRUE_SIZE)
    /* Translators: the width and the height of a page, the height with its unit. */
    return g_strdup_printf (_("The page is true to size: it is %s × %s."), width, height);
  /* Translators: the width and the height of a picture, which may have margins about its sheet; the height with its unit. */
  return g_strdup_printf (_("By that length the whole picture is %s × %s, margins and all."), width, height);
}

char *
plan_misfit_size (const Plan *plan, const MappingMisfit *misfit, Units units)
{
  const double across = plan->width * misfit->scale_x, down = plan->height * misfit->scale_y;
  g_autofree char *width = NULL, *height = NULL;

  if (!(fmax (across, down) > LARGEST_SHEET || fmax (across, down) < SMALLEST_SHEET))
    return NULL;
  width = units_length_figure (units, across);
  height = units_length (units, down);
  if (misfit->maker == MADE_BY_TRUE_SIZE)
    /* Translators: the width and the height of a page, the height with its unit. */
    return g_strdup_printf (_("This page says that it is %s × %s: click a length you know, if that cannot be."), width, height);
  return g_strdup_printf (_("By that the whole picture would be %s × %s: look at the figure you typed, and its unit."), width, height);
}

static char *
words_lens (const MappingMisfit *misfit)
{
  g_autofree char *before = units_number (misfit->bend_before_px, 1), *after = units_number (misfit->bend_after_px, 1);

  return g_strdup_printf (_("The lens bent straight lines by %s\u00a0pixels; corrected, %s are left."), before, after);
}

/* The length that fits the rectangle worst, and by how much. */
static char *
words_checked (const Plan *plan, const MappingMisfit *misfit, Units units)
{
  size_t worst = 0;
  g_autofree char *length = NULL, *by = NULL;

  for (size_t i = 1; i < misfit->length_count; i++)
    if (fabs (misfit->lengths[i].residual_percent) > fabs (misfit->lengths[worst].residual_percent))
      worst = i;
  length = units_length_known (units, plan->lengths[worst].mm);
  by = percent (misfit->lengths[worst].residual_percent);
  if (misfit->lengths[worst].residual_percent < 0)
    /* Translators: a known length with its unit, and a percentage. */
    return g_strdup_printf (_("By the rectangle the length %s measures %s\u00a0%% less, no more than clicks there may."), length, by);
  return g_strdup_printf (_("By the rectangle the length %s measures %s\u00a0%% more, no more than clicks there may."), length, by);
}

char *
plan_misfit_words (const Plan *plan, const MappingMisfit *misfit, bool is_true, Units units)
{
  char *size;

  if (!is_true)
    return NULL;
  if (misfit->any_disagrees)
    return words_disagree (plan, misfit, units);
  size = plan_misfit_size (plan, misfit, units);
  if (size != NULL)
    return size;
  if (misfit->maker == MADE_BY_LENGTHS && misfit->length_count > 1 && misfit->badly_conditioned)
    return g_strdup (_("The lengths run too nearly one way to tell a stretch: one scale is used. Add one at right angles."));
  if (misfit->maker == MADE_BY_RECTANGLE && misfit->length_count > 0)
    return words_checked (plan, misfit, units);
  if (misfit->lens_used)
    return words_lens (misfit);
  if (misfit->maker == MADE_BY_LENGTHS && misfit->each_way)
    return words_stretched (misfit);
  if (misfit->maker == MADE_BY_LENGTHS && misfit->length_count > 1)
    return words_agree (misfit);
  return NULL;
}

/* Of the known lengths the one nearest `span` or its half, %, signed; NAN: none is meant to be it. */
static double
span_difference (const Plan *plan, double span)
{
  double nearest = NAN;

  for (size_t i = 0; i < plan->length_count; i++)
    for (int half = 0; half < 2; half++) {
      const double off = 100 * (plan->lengths[i].mm * (half ? 2 : 1) / span - 1);

      if (fabs (off) <= SPAN_MEANT && !(fabs (off) >= fabs (nearest)))
        nearest = off;
    }
  return nearest;
}

char *
plan_misfit_span (const Aeroplane *aeroplane, const Plan *plan)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const double off = wing != NULL && plan != NULL ? span_difference (plan, 2 * outline_bounds (wing->outline).max.y) : NAN;
  g_autofree char *by = NULL;

  if (!(fabs (off) > SPAN_DIFFERS))
    return NULL;
  by = percent (off);
  if (wing->traced != NULL)
    return g_strdup_printf (_("The span as traced and the span known on the plan differ by %s\u00a0%%."), by);
  return g_strdup_printf (_("The span you typed and the span on the plan differ by %s\u00a0%%."), by);
}
