#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

enum { LABEL_VALUE_REMARK = 3, REMARK_LEFT = 1 << 2 };

/* A row; what is said of a figure that cannot be had is left out. Takes value and remark. */
static void
add (TextTable *table, const char *label, char *value, char *remark)
{
  const bool had = !g_str_equal (value, "–");

  text_table_cell (table, g_strdup (label));
  text_table_cell (table, value);
  text_table_cell (table, had ? remark : NULL);
  if (!had)
    g_free (remark);
}

static char *
percent_of_chord (double percent)
{
  g_autofree char *figure = units_percent (percent);

  return isfinite (percent) ? g_strdup_printf (_("%s of the mean chord"), figure) : NULL;
}

static void
add_marks (TextTable *table, const BalanceFigures *balance, Units units)
{
  for (size_t i = 0; i < balance->mark_count; i++)
    {
      const MarkFigures *mark = &balance->marks[i];
      g_autofree char *station = units_length_figure (units, mark->station_mm);
      g_autofree char *label = g_strdup_printf (_("Balance mark at station %s"), station);

      add (table, label, units_length (units, mark->target_mm), g_strdup (_("aft of the leading edge there")));
      add (table, _("its forward limit"), units_length (units, mark->forward_mm), NULL);
      add (table, _("its aft limit"), units_length (units, mark->aft_mm), NULL);
    }
}

static char *
margin_remark (const Figures *figures)
{
  const Target target = aeroplane_traits (figures->aeroplane).target;
  const double sigma = figures->balance.static_margin_sigma_percent;
  g_autofree char *from = units_number_exact (target.from), *to = units_number_exact (target.to), *aim = units_number_exact (target.aim);

  if (figures->neutral_point.wing_alone)
    return g_strdup (_("of the wing alone"));
  if (!isfinite (sigma))
    return g_strdup_printf (_("wanted %s to %s, aim %s"), from, to, aim);
  return g_strdup_printf (_("± %.0f; wanted %s to %s, aim %s"), fmax (1, round (sigma)), from, to, aim);
}

static char *
place_remark (double sigma, double percent, Units units)
{
  g_autofree char *deviation = units_length (units, sigma);
  g_autofree char *share = percent_of_chord (percent);

  if (!isfinite (sigma))
    return g_steal_pointer (&share);
  if (!share)
    return g_strdup_printf (_("± %s"), deviation);
  return g_strdup_printf (_("± %s; %s"), deviation, share);
}

TextTable
report_balance (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const BalanceFigures *balance = &figures->balance;

  add_marks (&table, balance, units);
  add (&table, _("Static margin"), units_percent (balance->static_margin_percent), margin_remark (figures));
  add (&table, _("Balance point, aft of the datum"), units_length (units, figures->mass.x_mm),
       place_remark (figures->mass.x_sigma_mm, balance->percent_mac, units));
  if (isfinite (balance->target_x_mm))
    {
      add (&table, _("Forward limit, aft of the datum"), units_length (units, balance->forward_limit_x_mm), NULL);
      add (&table, _("Aim, aft of the datum"), units_length (units, balance->target_x_mm), NULL);
      add (&table, _("Aft limit, aft of the datum"), units_length (units, balance->aft_limit_x_mm), NULL);
    }
  return table;
}

/* "± 9 g; and more". Takes the deviation; `more` may be NULL. */
static char *
deviation_remark (char *takes, const char *more)
{
  g_autofree char *deviation = takes;

  if (!deviation_is_told (deviation))
    return g_strdup (more);
  return more ? g_strdup_printf (_("± %s; %s"), deviation, more) : g_strdup_printf (_("± %s"), deviation);
}

/* "± 1.27 kg cm²", behind a figure whose unit stands behind both. Takes the deviation. */
static char *
unit_remark (char *takes, const char *unit)
{
  g_autofree char *deviation = takes;

  return deviation_is_told (deviation) ? g_strdup_printf (_("± %s %s"), deviation, unit) : g_strdup (unit);
}

/* "−1 to −3 mm": bounds, not a figure. */
static char *
propeller_shift (const NeutralPointFigures *point, Units units)
{
  g_autofree char *from = units_length_figure (units, point->propeller_from_mm), *to = units_length (units, point->propeller_to_mm);

  /* TRANSLATORS: a range of lengths, the first without its unit */
  return g_strdup_printf (_("%s to %s"), from, to);
}

TextTable
report_neutral_point (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const NeutralPointFigures *point = &figures->neutral_point;
  const bool drawn = aeroplane_count (figures->aeroplane, PIECE_BODY) > 0;

  add (&table, _("Neutral point, aft of the datum"), units_length (units, point->x_mm),
       place_remark (point->sigma_mm, point->percent_mac, units));
  if (!isfinite (point->x_mm))
    return table;
  add (&table, _("by the vortex lattice, without body"), units_length (units, point->lattice_x_mm),
       deviation_remark (units_length (units, point->lattice_sigma_mm), NULL));
  if (point->section_shift_mm != 0)
    add (&table, _("of it the sections' shift"), units_length (units, point->section_shift_mm), g_strdup (_("by class and Reynolds number")));
  add (&table, _("the body's shift"), units_length (units, point->body_shift_mm),
       deviation_remark (units_length (units, point->body_shift_sigma_mm), drawn ? _("by Multhopp's strips") : _("no body is drawn")));
  if (point->propeller_to_mm != 0)
    add (&table, _("the propeller's shift"), propeller_shift (point, units), g_strdup (_("not counted; held in the deviation")));
  add (&table, drawn ? _("by handbook formulas, with body") : _("by handbook formulas"), units_length (units, point->handbook_x_mm),
       deviation_remark (units_length (units, point->handbook_sigma_mm), NULL));
  add (&table, _("Downwash gradient at the tailplane"), units_number (point->downwash_gradient, 2),
       deviation_remark (units_number (point->downwash_gradient_sigma, 2), _("by the lattice")));
  return table;
}

static void
add_inertia (TextTable *table, const char *label, double kgm2, double sigma_kgm2)
{
  add (table, label, units_number (kgm2 * 1e4, 2), unit_remark (units_number (sigma_kgm2 * 1e4, 2), _("kg cm²")));
}

/* What rounds to nothing is on neither side. */
static bool
is_to_port (double y_mm, Units units)
{
  g_autofree char *shown = units_length_figure (units, y_mm), *nothing = units_length_figure (units, 0);

  return y_mm < 0 && strcmp (shown, nothing) != 0;
}

TextTable
report_mass (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const MassFigures *mass = &figures->mass;

  if (!(mass->total_g > 0))
    return table;
  add (&table, _("All-up mass"), units_mass (units, mass->total_g), deviation_remark (units_mass_deviation (units, mass->total_sigma_g), NULL));
  add (&table, is_to_port (mass->y_mm, units) ? _("Balance point, to port") : _("Balance point, to starboard"),
       units_length (units, fabs (mass->y_mm)),
       deviation_remark (units_length (units, mass->y_sigma_mm), NULL));
  add (&table, _("Balance point, above the side view's line"), units_length (units, mass->z_mm),
       deviation_remark (units_length (units, mass->z_sigma_mm), NULL));
  add_inertia (&table, _("Moment of inertia in roll"), mass->inertia_roll_kgm2, mass->inertia_roll_sigma_kgm2);
  add_inertia (&table, _("Moment of inertia in pitch"), mass->inertia_pitch_kgm2, mass->inertia_pitch_sigma_kgm2);
  add_inertia (&table, _("Moment of inertia in yaw"), mass->inertia_yaw_kgm2, mass->inertia_yaw_sigma_kgm2);
  return table;
}

TextTable
report_flight (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const FlightFigures *flight = &figures->flight;
  const Surface *wing = figures->reference ? figures->reference->surface : NULL;

  if (!wing || !isfinite (flight->wing_loading_g_dm2))
    return table;
  add (&table, _("Wing loading"), units_loading (units, flight->wing_loading_g_dm2),
       deviation_remark (units_loading (units, flight->wing_loading_sigma_g_dm2), _("on the area of all wings")));
  add (&table, _("Cubic loading"), units_number (flight->cube_loading_kg_m3, 1),
       unit_remark (units_number (flight->cube_loading_sigma_kg_m3, 1), _("kg/m³")));
  add (&table, _("Stalling speed"), units_speed (units, flight->stall_speed_m_s),
       deviation_remark (units_speed (units, flight->stall_speed_sigma_m_s), NULL));
  add (&table, _("Greatest lift coefficient"), units_number (flight->lift_max, 2),
       deviation_remark (units_number (flight->lift_max_sigma, 2), isnan (wing->lift_max) ? _("by the section's class") : _("as given")));
  add (&table, _("Reynolds number there"), units_number (round (flight->reynolds_mac / 1000) * 1000, 0),
       deviation_remark (units_number (round (flight->reynolds_mac_sigma / 1000) * 1000, 0), _("of the mean chord")));
  add (&table, _("Pitch speed"), units_speed (units, flight->pitch_speed_m_s), NULL);
  return table;
}

/* Where the lift is spread nearly evenly, a station would claim what nobody can know. */
static void
add_first_stall (TextTable *table, const MotionFigures *motion, Units units)
{
  if (motion_stalls_somewhere (motion))
    add (table, _("The wing stalls first at station"), units_length (units, motion->first_stall_station_mm),
         g_strdup (_("untwisted; washout moves it inboard")));
  else if (isfinite (motion->first_stall_station_mm))
    add (table, _("The wing stalls first"), g_strdup (""), g_strdup (_("nowhere in particular")));
}

TextTable
report_motion (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const MotionFigures *motion = &figures->motion;

  if (!isfinite (motion->lift_slope_per_rad))
    return table;
  add (&table, _("Lift slope of the aeroplane"), units_number (motion->lift_slope_per_rad, 2),
       deviation_remark (units_number (motion->lift_slope_sigma, 2), _("per radian, on the reference area")));
  add (&table, _("Damping in roll"), units_number (motion->roll_damping, 2),
       deviation_remark (units_number (motion->roll_damping_sigma, 2), _("per unit of p b / 2V")));
  add (&table, _("Damping in pitch"), units_number (motion->pitch_damping, 1),
       deviation_remark (units_number (motion->pitch_damping_sigma, 1), _("per unit of q c / 2V")));
  add (&table, _("Span efficiency of the wing"), units_number (motion->span_efficiency, 2),
       deviation_remark (units_number (motion->span_efficiency_sigma, 2), _("without the friction's share")));
  add_first_stall (&table, motion, units);
  return table;
}
