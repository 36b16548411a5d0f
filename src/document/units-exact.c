#include "document/units.h"
#include <math.h>
#include <string.h>
#include "document/number-text.h"
#include "document/quantity.h"

/* Fractions of an inch down to this one are shown as such when they are exact. */
enum { FINEST = 64 };

char *
units_number_exact (double value)
{
  char text[NUMBER_ROOM];

  if (!isfinite (value))
    return g_strdup ("");
  number_write (value, text);
  return number_with_sign (text, number_signs_of_locale ().decimal);
}

/* "1 7/16" when that many sixty-fourths are the length to the last bit, as reading makes them; else NULL. */
static char *
exact_fraction (double mm)
{
  const double count = rint (mm / 25.4 * FINEST);
  gint64 whole, up = (gint64) fabs (count), down = FINEST;
  const char *sign = count < 0 ? "-" : "";

  if (!(fabs (count) < 1e9) || count * 254 / (10 * FINEST) != mm)
    return NULL;
  whole = up / down;
  up %= down;
  while (up > 0 && up % 2 == 0)
    up /= 2, down /= 2;
  if (up == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT, sign, whole);
  if (whole == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT "/%" G_GINT64_FORMAT, sign, up, down);
  return g_strdup_printf ("%s%" G_GINT64_FORMAT " %" G_GINT64_FORMAT "/%" G_GINT64_FORMAT, sign, whole, up, down);
}

/* The shortest decimal that is read back to the same bits, without an exponent unless it is very small ("100", not "1e+02"). A long
 * double's digits reach every value. */
static char *
exact_decimal (const Quantity *quantity, double value)
{
  const Unit *unit = quantity_unit (quantity->kind, quantity->usual, strlen (quantity->usual));
  const long double count = (long double) value * unit->down / unit->up;
  const bool small = fabs (value) < 1e-3;
  char *text = NULL;

  for (int digits = small; digits <= 24; digits++)
    {
      double back;

      g_free (text);
      text = small ? g_strdup_printf ("%.*Lg", digits, count) : g_strdup_printf ("%.*Lf", digits, count);
      if (quantity_parse (quantity, number_signs_of_locale (), text, &back, NULL) && back == value)
        break;
    }
  return text;
}

char *
units_length_exact (Units units, double mm)
{
  char *text;

  if (units.length == LENGTH_MM || !isfinite (mm))
    return units_number_exact (mm);
  text = exact_fraction (mm);
  return text ? text : exact_decimal (&(Quantity) { QUANTITY_LENGTH, "in" }, mm);
}

char *
units_mass_exact (Units units, double grams)
{
  if (units.mass == MASS_G || !isfinite (grams))
    return units_number_exact (grams);
  return exact_decimal (&(Quantity) { QUANTITY_MASS, "oz" }, grams);
}

/* Of a unit that is no whole number of the document's: the last digits are the division's. */
static char *
quotient_exact (double value)
{
  double rounded = value;
  char text[NUMBER_ROOM];

  g_ascii_formatd (text, sizeof text, "%.9g", value);
  number_read (text, strlen (text), &rounded);
  return units_number_exact (rounded);
}

char *
units_area_exact (Units units, double mm2)
{
  return quotient_exact (mm2 / units_area_unit (units));
}

char *
units_loading_exact (Units units, double g_per_dm2)
{
  return quotient_exact (g_per_dm2 / units_loading_unit (units));
}
