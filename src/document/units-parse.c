#include "document/quantity.h"
#include "document/units.h"

bool
units_parse_length (Units units, const char *text, double *mm, GError **error)
{
  const Quantity quantity = { QUANTITY_LENGTH, units.length == LENGTH_INCH ? "in" : "mm" };

  return quantity_parse (&quantity, number_signs_of_locale (), text, mm, error);
}

bool
units_parse_mass (Units units, const char *text, double *grams, GError **error)
{
  const Quantity quantity = { QUANTITY_MASS, units.mass == MASS_OZ ? "oz" : "g" };

  return quantity_parse (&quantity, number_signs_of_locale (), text, grams, error);
}

bool
units_parse_number (const char *text, double *value, GError **error)
{
  const Quantity quantity = { QUANTITY_NUMBER, "1" };

  return quantity_parse (&quantity, number_signs_of_locale (), text, value, error);
}

/* A number of such units. */
static bool
parse_units (double unit, const char *text, double *value, GError **error)
{
  double number;

  if (!units_parse_number (text, &number, error))
    return false;
  *value = number * unit;
  return true;
}

bool
units_parse_area (Units units, const char *text, double *mm2, GError **error)
{
  return parse_units (units_area_unit (units), text, mm2, error);
}

bool
units_parse_loading (Units units, const char *text, double *g_per_dm2, GError **error)
{
  return parse_units (units_loading_unit (units), text, g_per_dm2, error);
}
