#include "app/plan-misfit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* %: what a person would call a difference; a span and a length nearer than this are meant to be one. */
static const double SPAN_DIFFERS = 0.25, SPAN_MEANT = 5;

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
  length = units_length (units, plan->lengths[worst].mm);
  if (misfit->length_count == 2 && misfit->maker == MADE_BY_LENGTHS) {
    second = 1 - worst;
    other = units_length (units, plan->lengths[second].mm);
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

static char *
words_scale (const MappingMisfit *misfit)
{
  const double scale = misfit->scale_x;
  g_autofree char *figure = units_number (scale, scale < 1 ? 4 : 3);

  /* Translators: a scale: "0.1014 mm a pixel." */
  return g_strdup_printf (_("%s\u00a0mm a pixel."), figure);
}

static char *
words_lens (const MappingMisfit *misfit)
{
  g_autofree char *before = units_number (misfit->bend_before_px, 1), *after = units_number (misfit->bend_after_px, 1);

  return g_strdup_printf (_("The lens bent straight lines by %s\u00a0pixels; corrected, %s are left."), before, after);
}

char *
plan_misfit_words (const Plan *plan, const MappingMisfit *misfit, bool is_true, Units units)
{
  if (!is_true)
    return NULL;
  if (misfit->any_disagrees)
    return words_disagree (plan, misfit, units);
  if (misfit->maker == MADE_BY_LENGTHS && misfit->length_count > 1 && misfit->badly_conditioned)
    return g_strdup (_("The lengths run too nearly one way to tell a stretch: one scale is used. Add one at right angles."));
  if (misfit->lens_used)
    return words_lens (misfit);
  if (misfit->maker == MADE_BY_LENGTHS && misfit->each_way)
    return words_stretched (misfit);
  if (misfit->maker == MADE_BY_LENGTHS && misfit->length_count > 1)
    return g_strdup (_("The lengths agree, as nearly as they were clicked."));
  return words_scale (misfit);
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
