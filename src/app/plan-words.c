#include "trammel-config.h"
#include "app/plan-words.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Four digits of a number well below one, in the locale's own way: 0.08467. */
static char *
four_digits (double value)
{
  const int decimals = isfinite (value) && value > 0 ? (int) CLAMP (3 - floor (log10 (value)), 0, 8) : 0;

  return units_number (value, decimals);
}

static bool
has_size (const Plan *plan, const DecodeFacts *facts, double size[2])
{
  size[0] = plan->width > 0 ? plan->width : facts != NULL ? facts->width_px : NAN;
  size[1] = plan->height > 0 ? plan->height : facts != NULL ? facts->height_px : NAN;
  return size[0] > 0 && size[1] > 0;
}

char *
plan_words_size (TrammelPlanStore *store, Units units)
{
  const Plan *plan = trammel_plan_store_plan (store);
  double px[2];
  Mapping mapping;
  bool is_true;

  if (plan == NULL || !has_size (plan, trammel_plan_store_facts (store), px))
    return g_strdup ("");
  if (!trammel_plan_store_mapping (store, &mapping, NULL, &is_true) || !is_true || plan->has_corners)
    /* Translators: the width and the height of a picture in pixels. */
    return g_strdup_printf (_("%.0f × %.0f px"), px[0], px[1]);
  const Point middle = { px[0] / 2, px[1] / 2 };
  g_autofree char *width = units_length_figure (units, px[0] * mapping_mm_per_px (&mapping, middle, (Point) { 1, 0 }));
  g_autofree char *height = units_length (units, px[1] * mapping_mm_per_px (&mapping, middle, (Point) { 0, 1 }));

  /* Translators: the width and the height of a sheet, the height with its unit: "594 × 420 mm". */
  return g_strdup_printf (_("%s × %s"), width, height);
}

char *
plan_words_scale (TrammelPlanStore *store)
{
  MappingMisfit misfit;
  bool is_true;

  if (!trammel_plan_store_mapping (store, NULL, &misfit, &is_true) || !is_true)
    return g_strdup (_("not known"));
  g_autofree char *across = four_digits (misfit.scale_x);
  g_autofree char *along = four_digits (misfit.scale_y);

  /* Translators: millimetres a pixel across a picture, and down it: "0.08467 × 0.08472". */
  return g_str_equal (across, along) ? g_strdup (across) : g_strdup_printf (_("%s × %s"), across, along);
}

char *
plan_words_length (TrammelPlanStore *store, size_t index, Units units)
{
  return units_length_known (units, trammel_plan_store_plan (store)->lengths[index].mm);
}

char *
plan_words_length_off (TrammelPlanStore *store, size_t index, Units units)
{
  g_autofree char *length = plan_words_length (store, index, units);
  g_autofree char *off = NULL;
  MappingMisfit misfit;

  if (!trammel_plan_store_mapping (store, NULL, &misfit, NULL) || index >= misfit.length_count || !misfit.lengths[index].disagrees)
    return g_steal_pointer (&length);
  off = units_number (fabs (misfit.lengths[index].residual_percent), 1);
  /* Translators: a known length with its unit, and by how many per cent it disagrees with the others. */
  return g_strdup_printf (_("%s, %s %% off"), length, off);
}

/* By what it shows; a second one of that is numbered. */
static char *
view_name (const Plan *plan, size_t index)
{
  unsigned number = 1;

  for (size_t i = 0; i < index; i++)
    number += plan->views[i].shows == plan->views[index].shows;
  if (number == 1)
    return g_strdup (view_shows_name (plan->views[index].shows));
  /* Translators: what a view of a plan shows, and its number: "Wing 2". */
  return g_strdup_printf (_("%s %u"), view_shows_name (plan->views[index].shows), number);
}

char **
plan_words_views (const Plan *plan)
{
  char **words = g_new0 (char *, plan->view_count + 2);

  words[0] = g_strdup (_("Whole sheet"));
  for (size_t i = 0; i < plan->view_count; i++)
    words[i + 1] = view_name (plan, i);
  return words;
}
