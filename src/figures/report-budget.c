#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/budget.h"

/* g: a kitchen scale shows no less. */
static const double NOTHING_G = 1;
/* Nor do fingers feel less. */
static const double NOTHING_MM = 1;

static char *
known (Units units, double grams, double sigma)
{
  g_autofree char *mass = units_mass (units, grams), *deviation = units_mass_deviation_figure (units, sigma);

  return sigma > 0 ? g_strdup_printf (_("%s ± %s"), mass, deviation) : g_steal_pointer (&mass);
}

/* What is too much or to spare is no better known than both that it is the difference of. */
static char *
over_text (const Budget *budget, Units units)
{
  return known (units, fabs (budget->over_g), hypot (budget->left_sigma_g, budget->gear_sigma_g));
}

static char *
gear_text (const Budget *budget, Units units)
{
  g_autofree char *left = units_mass (units, budget->left_g), *gear = units_mass (units, budget->gear_g);
  g_autofree char *over = over_text (budget, units);

  if (!(budget->left_g > 0))
    return g_strdup (_("That leaves nothing for the gear: build lighter, or want more all-up."));
  if (!(budget->gear_g > 0))
    return g_strdup_printf (_("That leaves %s for the gear."), left);
  if (fabs (budget->over_g) < NOTHING_G)
    return g_strdup_printf (_("That leaves %s for the gear, just what is aboard."), left);
  if (budget->over_g > 0)
    return g_strdup_printf (_("That leaves %s for the gear; what is aboard weighs %s, %s too much."), left, gear, over);
  return g_strdup_printf (_("That leaves %s for the gear; what is aboard weighs %s, %s less."), left, gear, over);
}

/* The scale's verdict on what was reckoned. */
static char *
weighed_text (const Budget *budget, Units units)
{
  const double more = budget->airframe_g - budget->reckoned_g;
  g_autofree char *by = units_mass (units, fabs (more));

  if (budget->airframe_by != AIRFRAME_WEIGHED || !(budget->reckoned_g > 0) || fabs (more) < NOTHING_G)
    return NULL;
  return g_strdup_printf (more > 0 ? _("It weighs %s more than its structures are reckoned to: each is taken to weigh its share of that.")
                                   : _("It weighs %s less than its structures are reckoned to: each is taken to weigh its share of that."), by);
}

/* And on where that is. */
static char *
balanced_text (const Budget *budget, Units units)
{
  const double aft = budget->airframe_x_mm - budget->reckoned_x_mm;
  g_autofree char *by = units_length (units, fabs (aft));

  if (budget->airframe_by != AIRFRAME_WEIGHED || !(fabs (aft) >= NOTHING_MM))
    return NULL;
  return g_strdup_printf (aft > 0 ? _("It balances %s further aft than they would: what is known least is taken to lie further aft.")
                                  : _("It balances %s further forward than they would: what is known least is taken to lie further forward."),
                          by);
}

char *
budget_text (const Budget *budget, Units units)
{
  g_autofree char *wanted = units_mass (units, budget->wanted_g), *airframe = units_mass (units, budget->airframe_g);
  g_autofree char *sigma = units_mass_deviation_figure (units, budget->airframe_sigma_g);
  g_autofree char *first = g_strdup_printf (_("Of %s all-up the airframe takes %s ± %s."), wanted, airframe, sigma);
  g_autofree char *gear = gear_text (budget, units), *weighed = weighed_text (budget, units), *balanced = balanced_text (budget, units);
  g_autofree char *all = g_strjoin (" ", first, gear, weighed ? weighed : "", balanced ? balanced : "", NULL);

  return g_strdup (g_strchomp (all));
}

static void
add (TextTable *table, const char *label, char *takes, const char *remark)
{
  text_table_cell (table, g_strdup (label));
  text_table_cell (table, takes);
  text_table_cell (table, g_strdup (remark));
}

TextTable
report_budget (const Figures *figures, Units units)
{
  const char *const wanted[] = { [WANTED_USUAL] = _("common practice for the span, no source"),
                                 [WANTED_ALL_UP] = _("as wanted"), [WANTED_LOADING] = _("by the loading wanted") };
  const char *const airframe[] = { [AIRFRAME_USUAL] = _("48 %: common practice, no source"),
                                   [AIRFRAME_RECKONED] = _("structures, cowl, canopy, wheels"),
                                   [AIRFRAME_WEIGHED] = _("as weighed") };
  TextTable table = text_table_new (3, 1 << 2);
  Budget budget;

  if (!budget_of (figures, &budget))
    return table;
  add (&table, _("Wanted all-up"), units_mass (units, budget.wanted_g), wanted[budget.wanted_by]);
  add (&table, _("that is a loading of"), units_loading (units, budget.loading_g_dm2), NULL);
  add (&table, _("Airframe"), known (units, budget.airframe_g, budget.airframe_sigma_g), airframe[budget.airframe_by]);
  if (isfinite (budget.airframe_x_mm))
    add (&table, _("balances at"), units_length (units, budget.airframe_x_mm),
         figures->airframe.balanced ? _("aft of the datum, as found") : _("aft of the datum, as reckoned"));
  add (&table, _("Left for the gear"), known (units, budget.left_g, budget.left_sigma_g), NULL);
  add (&table, _("Gear aboard"), known (units, budget.gear_g, budget.gear_sigma_g), NULL);
  add (&table, budget.over_g > 0 ? _("too much") : _("to spare"), over_text (&budget, units), NULL);
  return table;
}

void
budget_write (JsonText *json, const Figures *figures)
{
  static const char *const wanted[] = { "usual", "all-up", "loading" }, *const airframe[] = { "usual", "reckoned", "weighed" };
  Budget budget;

  if (!budget_of (figures, &budget))
    return;
  json_text_open_object (json, "budget");
  json_text_string (json, "wanted_by", wanted[budget.wanted_by]);
  json_text_number (json, "wanted_g", budget.wanted_g);
  json_text_number (json, "loading_g_dm2", budget.loading_g_dm2);
  json_text_string (json, "airframe_by", airframe[budget.airframe_by]);
  json_text_number (json, "airframe_g", budget.airframe_g);
  json_text_number (json, "airframe_sigma_g", budget.airframe_sigma_g);
  json_text_number (json, "reckoned_g", budget.reckoned_g);
  if (isfinite (budget.airframe_x_mm))
    json_text_number (json, "airframe_x_mm", budget.airframe_x_mm);
  if (isfinite (budget.reckoned_x_mm))
    json_text_number (json, "reckoned_x_mm", budget.reckoned_x_mm);
  json_text_number (json, "left_g", budget.left_g);
  json_text_number (json, "left_sigma_g", budget.left_sigma_g);
  json_text_number (json, "gear_g", budget.gear_g);
  json_text_number (json, "gear_sigma_g", budget.gear_sigma_g);
  json_text_number (json, "over_g", budget.over_g);
  json_text_close_object (json);
}
