#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/power-figures.h"

/* Watts of input to the kilogram of all-up mass, from which a kind of flying is usual. Common practice, no source. */
static const struct { double from; const char *words; } kinds[] = {
  { 0,   N_("less than floaters and trainers have, 80 to 110 W/kg") },
  { 80,  N_("as floaters and trainers have") },
  { 110, N_("as sport models have") },
  { 170, N_("as scale fighters have") },
  { 250, N_("more than scale fighters have, 160 to 250 W/kg") },
  { 300, N_("enough to climb without end") },
};

static const char *
kind_words (double w_kg)
{
  size_t kind = 0;

  while (kind + 1 < G_N_ELEMENTS (kinds) && w_kg >= kinds[kind + 1].from)
    kind++;
  return _(kinds[kind].words);
}

char *
power_text (const PowerFigures *power, Units units)
{
  g_autofree char *watts = units_number (power->input_w_kg, 0), *pull = units_number (power->thrust_ratio, 1);
  g_autofree char *speed = units_speed (units, power->pitch_speed_m_s), *times = units_number (power->pitch_ratio, 1);

  if (!isfinite (power->thrust_ratio))
    return NULL;
  if (!isfinite (power->pitch_ratio))
    return g_strdup_printf (_("At full throttle it takes about %s W/kg, %s, and pulls with %s of the weight."), watts,
                            kind_words (power->input_w_kg), pull);
  return g_strdup_printf (_("At full throttle it takes about %s W/kg, %s, and pulls with %s of the weight. The pitch speed of %s is %s times "
                            "the stalling speed; 2 to 3.2 is usual."), watts, kind_words (power->input_w_kg), pull, speed, times);
}

static void
add (TextTable *table, const char *label, char *takes, const char *remark)
{
  text_table_cell (table, g_strdup (label));
  text_table_cell (table, takes);
  text_table_cell (table, g_strdup (remark));
}

/* "1,200 ± 90 rpm"; decimals for both. */
static char *
known (double value, double sigma, int decimals, const char *unit)
{
  g_autofree char *figure = units_number (value, decimals), *deviation = units_number (sigma, decimals);

  return isfinite (value) ? g_strdup_printf ("%s ± %s\u00a0%s", figure, deviation, unit) : g_strdup ("–");
}

static char *
thrust_cell (const PowerFigures *power, Units units)
{
  g_autofree char *thrust = units_mass (units, power->thrust_g), *sigma = units_mass (units, power->thrust_sigma_g);

  return g_strdup_printf ("%s ± %s", thrust, sigma);
}

static char *
speed_cell (const PowerFigures *power, Units units)
{
  g_autofree char *speed = units_speed (units, power->pitch_speed_m_s), *sigma = units_speed (units, power->pitch_speed_sigma_m_s);

  return isfinite (power->pitch_speed_m_s) ? g_strdup_printf ("%s ± %s", speed, sigma) : g_strdup ("–");
}

static void
add_use (TextTable *table, const PowerFigures *power, Units units)
{
  if (isfinite (power->current_a))
    add (table, _("Current out of the battery"), known (power->current_a, power->current_sigma_a, 1, "A"), _("at 3.6 V a cell"));
  if (isfinite (power->minutes))
    add (table, _("In the air, about"), known (power->minutes, power->minutes_sigma, 0, _("min")),
         _("four fifths of the capacity at half of that current"));
  if (isfinite (power->clearance_mm))
    add (table, _("Propeller clears the ground by"), units_length (units, power->clearance_mm), _("level on its wheels"));
}

TextTable
report_power (const Figures *figures, Units units)
{
  const char *const by[] = { [POWER_MEASURED] = _("by the meter"), [POWER_BY_VOLTS] = _("by rpm per volt and cells"),
                             [POWER_USUAL] = _("as is usual for the motor's class") };
  const PowerFigures *power = &figures->power;
  TextTable table = text_table_new (3, 1 << 2);

  if (!isfinite (power->thrust_g))
    return table;
  add (&table, _("Propeller turns at"), known (round (power->rpm / 100) * 100, round (power->rpm_sigma / 100) * 100, 0, _("rpm")), by[power->by]);
  add (&table, _("Input"), known (power->input_w, power->input_sigma_w, 0, "W"), _("at full throttle, held still"));
  if (isfinite (power->input_w_kg))
    add (&table, _("to the all-up mass"), known (power->input_w_kg, power->input_w_kg * power->input_sigma_w / power->input_w, 0, "W/kg"),
         kind_words (power->input_w_kg));
  add (&table, _("Thrust, standing"), thrust_cell (power, units), NULL);
  if (isfinite (power->thrust_ratio))
    add (&table, _("to the weight"), units_number (power->thrust_ratio, 2), _("0.35 to 0.9 is common practice, no source"));
  add (&table, _("Pitch speed"), speed_cell (power, units), _("pitch × revolutions"));
  if (isfinite (power->pitch_ratio))
    add (&table, _("to the stalling speed"), units_number (power->pitch_ratio, 1), _("2 to 3.2 is common practice, no source"));
  add_use (&table, power, units);
  return table;
}

void
power_write (JsonText *json, const PowerFigures *power)
{
  static const char *const by[] = { "measured", "volts", "usual" };

  if (!isfinite (power->thrust_g))
    return;
  json_text_open_object (json, "power");
  json_text_string (json, "motor", power->motor->piece.id);
  json_text_string (json, "propeller", power->propeller->piece.id);
  json_text_string (json, "by", by[power->by]);
  json_text_number (json, "rpm", power->rpm);
  json_text_number (json, "rpm_sigma", power->rpm_sigma);
  json_text_number (json, "input_w", power->input_w);
  json_text_number (json, "input_sigma_w", power->input_sigma_w);
  json_text_number (json, "input_w_kg", power->input_w_kg);
  json_text_number (json, "thrust_g", power->thrust_g);
  json_text_number (json, "thrust_sigma_g", power->thrust_sigma_g);
  json_text_number (json, "thrust_ratio", power->thrust_ratio);
  json_text_number (json, "pitch_speed_m_s", power->pitch_speed_m_s);
  json_text_number (json, "pitch_speed_sigma_m_s", power->pitch_speed_sigma_m_s);
  json_text_number (json, "pitch_ratio", power->pitch_ratio);
  json_text_number (json, "current_a", power->current_a);
  json_text_number (json, "current_sigma_a", power->current_sigma_a);
  json_text_number (json, "minutes", power->minutes);
  json_text_number (json, "minutes_sigma", power->minutes_sigma);
  json_text_number (json, "clearance_mm", power->clearance_mm);
  json_text_number (json, "clearance_least_mm", power->clearance_least_mm);
  json_text_close_object (json);
}
