#include "document/units.h"
#include <math.h>
#include <string.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

#define NO_BREAK_SPACE "\u00a0"
#define TRUE_MINUS "\u2212"
#define NO_FIGURE "\u2013"

static const double mm_in_inch = 25.4, g_in_oz = 28.349523125, mile_an_hour = 0.44704;      /* the last in m/s */

/* Rounded away from zero at the half, with the locale's decimal sign and a true minus; nothing is "minus nought". */
static char *
figure_text (double value, int decimals)
{
  const double scale = pow (10, decimals);
  const double rounded = round (fabs (value) * scale) / scale;

  if (!isfinite (value))
    return g_strdup (NO_FIGURE);
  return g_strdup_printf ("%s%.*f", value < 0 && rounded > 0 ? TRUE_MINUS : "", decimals, rounded);
}

/* Whole inches and thirty-seconds: the finest that a steel rule at the bench shows. A whole space between: in small lettering a thin
 * one vanishes, and 1 25/32 reads 125/32. */
static char *
inch_text (double mm)
{
  const double count = round (fabs (mm) / mm_in_inch * 32);
  const char *sign = mm < 0 && count > 0 ? TRUE_MINUS : "";
  int up, down = 32;
  double whole;

  if (!isfinite (mm))
    return g_strdup (NO_FIGURE);
  whole = floor (count / 32);
  up = (int) (count - 32 * whole);
  while (up > 0 && up % 2 == 0)
    up /= 2, down /= 2;
  if (up == 0)
    return g_strdup_printf ("%s%.0f", sign, whole);
  if (whole == 0)
    return g_strdup_printf ("%s%d/%d", sign, up, down);
  return g_strdup_printf ("%s%.0f" NO_BREAK_SPACE "%d/%d", sign, whole, up, down);
}

/* A figure and its unit belong to one another: they do not part at a line's end. */
static char *
with_unit (char *takes, const char *unit)
{
  char *text = strcmp (takes, NO_FIGURE) == 0 ? g_strdup (takes) : g_strconcat (takes, NO_BREAK_SPACE, unit, NULL);

  g_free (takes);
  return text;
}

/* About three figures that count. */
static int
decimals_for (double value)
{
  const double size = fabs (value);

  return size < 9.995 ? 2 : size < 99.95 ? 1 : 0;
}

char *
units_length_figure (Units units, double mm)
{
  return units.length == LENGTH_INCH ? inch_text (mm) : figure_text (mm, 0);
}

char *
units_length (Units units, double mm)
{
  return with_unit (units_length_figure (units, mm), units_length_name (units));
}

char *
units_length_known (Units units, double mm)
{
  const bool whole = fabs (mm - round (mm)) < 0.05;

  return units.length == LENGTH_INCH || whole ? units_length (units, mm) : with_unit (figure_text (mm, 1), units_length_name (units));
}

static double
rounded_to (double value, int decimals)
{
  const double scale = pow (10, decimals);

  return round (fabs (value) * scale) / scale;
}

/* A tenth of a gram tells in a servo, and is nothing in a battery. */
static int
gram_decimals (double grams)
{
  const double tenths = rounded_to (grams, 1);

  return tenths < 10 && tenths != round (tenths) ? 1 : 0;
}

char *
units_mass_figure (Units units, double grams)
{
  const double ounces = grams / g_in_oz;

  if (units.mass == MASS_OZ)
    return figure_text (ounces, rounded_to (ounces, 2) < 10 ? 2 : 1);
  return figure_text (grams, gram_decimals (grams));
}

char *
units_mass_deviation_figure (Units units, double grams)
{
  const double least = units.mass == MASS_OZ ? g_in_oz / 100 : 0.1;

  return units_mass_figure (units, grams > 0 ? fmax (grams, least) : grams);
}

char *
units_mass_deviation (Units units, double grams)
{
  g_autofree char *figure = units_mass_deviation_figure (units, grams);

  if (fabs (grams) >= 999.5 || !isfinite (grams))
    return units_mass (units, grams);
  return with_unit (g_steal_pointer (&figure), units_mass_name (units));
}

char *
units_mass (Units units, double grams)
{
  if (units.mass == MASS_G && fabs (grams) >= 999.5)
    return with_unit (figure_text (grams / 1000, 2), _("kg"));
  return with_unit (units_mass_figure (units, grams), units_mass_name (units));
}

char *
units_area_figure (Units units, double mm2)
{
  const double area = mm2 / units_area_unit (units);

  return figure_text (area, decimals_for (area));
}

char *
units_area (Units units, double mm2)
{
  return with_unit (units_area_figure (units, mm2), units_area_name (units));
}

char *
units_loading_figure (Units units, double g_per_dm2)
{
  const double loading = g_per_dm2 / units_loading_unit (units);

  return figure_text (loading, loading < 9.95 ? 1 : 0);
}

char *
units_loading (Units units, double g_per_dm2)
{
  return with_unit (units_loading_figure (units, g_per_dm2), units_loading_name (units));
}

char *
units_moment_figure (Units units, double g_mm)
{
  const bool ounces = units.mass == MASS_OZ, inches = units.length == LENGTH_INCH;

  return figure_text (g_mm / (ounces ? g_in_oz : 1) / (inches ? mm_in_inch : 1), ounces ? 2 : inches ? 1 : 0);
}

char *
units_moment (Units units, double g_mm)
{
  return with_unit (units_moment_figure (units, g_mm), units_moment_name (units));
}

char *
units_size (Units units, double a_mm, double b_mm, double c_mm)
{
  g_autofree char *a = units_length_figure (units, a_mm);
  g_autofree char *b = units_length_figure (units, b_mm);
  g_autofree char *c = units_length_figure (units, c_mm);

  return g_strdup_printf ("%s × %s × %s", a, b, c);
}

char *
units_angle (double degrees)
{
  const bool whole = round (fabs (degrees) * 10) == 10 * round (fabs (degrees));
  g_autofree char *figure = figure_text (degrees, whole ? 0 : 1);

  return isfinite (degrees) ? g_strconcat (figure, "°", NULL) : g_steal_pointer (&figure);
}

char *
units_percent (double percent)
{
  return with_unit (figure_text (percent, 0), "%");
}

char *
units_number (double value, int decimals)
{
  return figure_text (value, decimals);
}

char *
units_speed_figure (Units units, double m_s)
{
  return figure_text (units.length == LENGTH_INCH ? m_s / mile_an_hour : m_s, 1);
}

char *
units_speed (Units units, double m_s)
{
  return with_unit (units_speed_figure (units, m_s), units_speed_name (units));
}

const char *
units_length_name (Units units)
{
  return units.length == LENGTH_INCH ? _("in") : _("mm");
}

const char *
units_mass_name (Units units)
{
  return units.mass == MASS_OZ ? _("oz") : _("g");
}

const char *
units_moment_name (Units units)
{
  if (units.length == LENGTH_INCH)
    return units.mass == MASS_OZ ? _("oz·in") : _("g·in");
  return units.mass == MASS_OZ ? _("oz·mm") : _("g·mm");
}

const char *
units_area_name (Units units)
{
  return units.length == LENGTH_INCH ? _("in²") : _("dm²");
}

const char *
units_loading_name (Units units)
{
  if (units.length == LENGTH_INCH)
    return units.mass == MASS_OZ ? _("oz/ft²") : _("g/ft²");
  return units.mass == MASS_OZ ? _("oz/dm²") : _("g/dm²");
}

double
units_area_unit (Units units)
{
  return units.length == LENGTH_INCH ? mm_in_inch * mm_in_inch : 1e4;
}

double
units_loading_unit (Units units)
{
  const double dm_in_ft = 12 * mm_in_inch / 100;

  return (units.mass == MASS_OZ ? g_in_oz : 1) / (units.length == LENGTH_INCH ? dm_in_ft * dm_in_ft : 1);
}

const char *
units_speed_name (Units units)
{
  return units.length == LENGTH_INCH ? _("mph") : _("m/s");
}
