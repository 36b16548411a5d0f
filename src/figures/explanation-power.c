#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/flight.h"
#include "aero/thrust.h"

/* "0.74 ± 0.04" */
static void
add_spreading (Reckoning *self, const char *label, Spreading known, int decimals)
{
  g_autofree char *value = units_number (known.value, decimals), *sigma = units_number (known.sigma, decimals);

  reckoning_pair (self, label, g_strdup_printf (_("%s ± %s"), value, sigma), known.value, NAN);
}

static void
add_air (Reckoning *self)
{
  reckoning_number (self, _("Density of air at sea level ρ"), air_at (0).density, 3, _("kg/m³"));
}

static Spreading
power_coefficient_of (const PowerFigures *power)
{
  return power_coefficient (power->propeller->pitch / power->propeller->width);
}

static void
add_propeller_power (Reckoning *self, const PowerFigures *power)
{
  add_spreading (self, _("Efficiency of motor and controller η"), power_practice.efficiency, 2);
  add_spreading (self, _("Power coefficient of the propeller C"), power_coefficient_of (power), 3);
  add_air (self);
  reckoning_length (self, _("Diameter D"), power->propeller->width);
}

static char *
rpm_text (const PowerFigures *power)
{
  const double whole = round (power->rpm / 100) * 100, sigma = fmax (100, round (power->rpm_sigma / 100) * 100);
  g_autofree char *figure = units_number (whole, 0), *deviation = units_number (sigma, 0);

  return g_strdup_printf (_("%s ± %s rpm"), figure, deviation);
}

/* What the first motor takes, W: by the meter, or what its class usually does. */
static double
watts_of_first (const PowerFigures *power)
{
  return power->by == POWER_MEASURED ? power->motor->input : power_practice.class_share.value * power->motor->power;
}

bool
reckon_revolutions (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;

  if (!isfinite (power->rpm))
    return false;
  if (power->by == POWER_BY_VOLTS)
    {
      reckoning_by (self, _("share under load × turns per volt × volts of a cell × cells"));
      add_spreading (self, _("Share under load"), power_practice.loaded, 2);
      reckoning_number (self, _("Turns per volt"), power->motor->rpm_per_volt, 0, _("rpm"));
      reckoning_number (self, _("Volts of a cell"), power_practice.cell_volts, 1, _("V"));
      reckoning_number (self, _("Cells"), power->battery->cells, 0, "");
      reckoning_owes_words (self, _("It is that of the share under load: how far battery and motor give way."));
    }
  else
    {
      reckoning_number (self, _("Input of the motor P"), watts_of_first (power), 0, _("W"));
      add_propeller_power (self, power);
      reckoning_owes_words (self, _("It is a third of those of input, efficiency and coefficient together."));
    }
  reckoning_gives (self, rpm_text (power), power->rpm);
  return true;
}

/* What is left of a sum when the first motor's share is taken off. */
static double
of_others (double all, double first)
{
  const double rounding = 1e-6 * fabs (all);

  return all - first > rounding ? all - first : NAN;
}

static double
input_of_first (Reckoning *self, const PowerFigures *power)
{
  double shaft;

  if (power->by == POWER_BY_VOLTS)
    {
      reckoning_by (self, _("P = C ρ n³ D⁵ / η"));
      reckoning_number (self, _("Turns a second n"), power->rpm / 60, 1, "");
      add_propeller_power (self, power);
      shaft = shaft_power_of (power_coefficient_of (power).value, air_at (0).density, power->rpm / 60, power->propeller->width * 1e-3);
      reckoning_owes_words (self, _("It is three times that of the revolutions, with those of coefficient and efficiency."));
      return shaft / power_practice.efficiency.value;
    }
  if (power->by == POWER_MEASURED)
    {
      reckoning_by (self, _("as the meter says"));
      reckoning_number (self, _("By the meter"), power->motor->input, 0, _("W"));
      /* xgettext:no-c-format */
      reckoning_owes_words (self, _("It is a meter's, 3 % of what it says."));
    }
  else
    {
      reckoning_number (self, _("Greatest input of the motor"), power->motor->power, 0, _("W"));
      add_spreading (self, _("Usual share of it"), power_practice.class_share, 2);
      reckoning_owes_words (self, _("It is that of the usual share: hold a meter between battery and controller, and it shrinks."));
    }
  return watts_of_first (power);
}

bool
reckon_input (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;

  if (!isfinite (power->input_w))
    return false;
  reckoning_number (self, _("All other motors"), of_others (power->input_w, input_of_first (self, power)), 0, _("W"));
  reckoning_gives_number (self, power->input_w, power->input_sigma_w, 0, _("W"));
  return true;
}

bool
reckon_thrust (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;
  double first;

  if (!isfinite (power->thrust_g))
    return false;
  first = 1e3 / flight_gravity * thrust_of (thrust_coefficient ().value, air_at (0).density, power->rpm / 60, power->propeller->width * 1e-3);
  add_spreading (self, _("Thrust coefficient of the propeller C"), thrust_coefficient (), 3);
  add_air (self);
  reckoning_number (self, _("Turns a second n"), power->rpm / 60, 1, "");
  reckoning_length (self, _("Diameter D"), power->propeller->width);
  reckoning_number (self, _("Gravity g"), flight_gravity, 2, _("m/s²"));
  reckoning_mass (self, _("All other propellers"), of_others (power->thrust_g, first));
  reckoning_gives_mass (self, power->thrust_g, power->thrust_sigma_g);
  reckoning_owes_words (self, _("It is that of the coefficient, with twice that of the revolutions."));
  return true;
}

bool
reckon_pitch_speed (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;

  if (!isfinite (power->pitch_speed_m_s))
    return false;
  reckoning_length (self, _("Pitch"), power->propeller->pitch);
  reckoning_number (self, _("Turns a second n"), power->rpm / 60, 1, "");
  reckoning_gives (self, reckoning_deviating (units_speed (self->units, power->pitch_speed_m_s),
                                              units_speed (self->units, power->pitch_speed_sigma_m_s), units_speed (self->units, 0),
                                              units_speed (self->units, power->pitch_speed_m_s)), power->pitch_speed_m_s);
  reckoning_owes_words (self, _("It is that of the revolutions."));
  return true;
}

bool
reckon_current (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;

  if (!isfinite (power->current_a))
    return false;
  reckoning_number (self, _("Input of all motors"), power->input_w, 0, _("W"));
  reckoning_number (self, _("Volts of a cell"), power_practice.cell_volts, 1, _("V"));
  reckoning_number (self, _("Cells"), power->battery->cells, 0, "");
  reckoning_gives_number (self, power->current_a, power->current_sigma_a, 1, _("A"));
  reckoning_owes_words (self, _("It is that of the input."));
  return true;
}

bool
reckon_minutes (Reckoning *self)
{
  const PowerFigures *power = &self->figures->power;

  if (!isfinite (power->minutes))
    return false;
  reckoning_number (self, _("Capacity"), power->battery->capacity, 0, _("mAh"));
  reckoning_number (self, _("Of it used"), power_practice.capacity_used, 1, "");
  reckoning_number (self, _("Greatest current"), power->current_a, 1, _("A"));
  add_spreading (self, _("Of it at half throttle"), power_practice.current_used, 1);
  reckoning_gives_number (self, power->minutes, power->minutes_sigma, 0, _("min"));
  reckoning_owes_words (self, _("It is that of the current, and of how the throttle is used, which makes a fifth."));
  return true;
}
