#include "trammel-config.h"
#include "app/field-text.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

const char *
field_text_unit (FieldKind kind, Units units)
{
  switch (kind) {
  case FIELD_LENGTH:  return units_length_name (units);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_mass_name (units);
  case FIELD_AREA:    return units_area_name (units);
  case FIELD_ANGLE:   return "°";
  case FIELD_PERCENT: return "%";
  case FIELD_SPEED:   return units.length == LENGTH_INCH ? _("mph") : _("m/s");
  default:            return "";
  }
}

/* Less than a gram is not nothing. */
char *
field_text_deviation (Units units, double grams)
{
  return units.mass == MASS_G && grams < 9.95 && grams != round (grams) ? units_number (grams, 1) : units_mass_figure (units, grams);
}

char *
field_text_rounded (FieldKind kind, Units units, double value)
{
  const double mile_an_hour = 0.44704;      /* m/s, exactly */

  if (isnan (value))
    return g_strdup (field_no_figure);
  switch (kind) {
  case FIELD_LENGTH:  return units_length_figure (units, value);
  case FIELD_MASS:    return units_mass_figure (units, value);
  case FIELD_DEVIATION: return field_text_deviation (units, value);
  case FIELD_AREA:    return units_area_figure (units, value);
  case FIELD_LOADING: return units_loading (units, value);
  case FIELD_SPEED:   return units_number (units.length == LENGTH_INCH ? value / mile_an_hour : value, 1);
  case FIELD_RATIO:   return units_number (value, 2);
  case FIELD_NUMBER:  return units_number (value, 0);
  default:            return units_number_exact (value);
  }
}

char *
field_text_exact (FieldKind kind, Units units, double value)
{
  if (isnan (value))
    return g_strdup ("");
  switch (kind) {
  case FIELD_LENGTH: return units_length_exact (units, value);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_mass_exact (units, value);
  default:           return units_number_exact (value);
  }
}

bool
field_text_parse (FieldKind kind, Units units, const char *text, double *value, GError **error)
{
  switch (kind) {
  case FIELD_LENGTH: return units_parse_length (units, text, value, error);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_parse_mass (units, text, value, error);
  default:           return units_parse_number (text, value, error);
  }
}

bool
field_text_parse_known (FieldKind kind, Units units, const char *text, double *value, double *deviation, GError **error)
{
  static const char *const signs[] = { "±", "+/-", "+-" };

  for (size_t i = 0; i < G_N_ELEMENTS (signs); i++) {
    const char *sign = strstr (text, signs[i]);
    g_autofree char *before = sign != NULL ? g_strndup (text, (size_t) (sign - text)) : NULL;

    if (sign != NULL)
      return field_text_parse (kind, units, before, value, error)
             && field_text_parse (kind, units, sign + strlen (signs[i]), deviation, error);
  }
  *deviation = NAN;
  return field_text_parse (kind, units, text, value, error);
}

bool
field_text_is_blank (const char *text)
{
  return text[strspn (text, " \t\u00a0")] == '\0';
}
