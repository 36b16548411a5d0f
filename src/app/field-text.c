#include "trammel-config.h"
#include "app/field-text.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* As propellers are everywhere. */
static const Units in_inches = { LENGTH_INCH, MASS_G };

const char *
field_text_unit (FieldKind kind, Units units)
{
  switch (kind) {
  case FIELD_LENGTH:
  case FIELD_THIN:    return units_length_name (units);
  case FIELD_INCHES:  return units_length_name (in_inches);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_mass_name (units);
  case FIELD_AREA:    return units_area_name (units);
  case FIELD_LOADING: return units_loading_name (units);
  case FIELD_ANGLE:   return "°";
  case FIELD_PERCENT: return "%";
  case FIELD_SPEED:   return units_speed_name (units);
  default:            return "";
  }
}

char *
field_text_rounded (FieldKind kind, Units units, double value)
{
  if (isnan (value))
    return g_strdup (field_no_figure);
  switch (kind) {
  case FIELD_LENGTH:  return units_length_figure (units, value);
  case FIELD_INCHES:  return units_length_figure (in_inches, value);
  case FIELD_THIN:    return units.length == LENGTH_INCH ? units_length_figure (units, value) : units_number (value, 1);
  case FIELD_MASS:    return units_mass_figure (units, value);
  case FIELD_DEVIATION: return units_mass_deviation_figure (units, value);
  case FIELD_AREA:    return units_area_figure (units, value);
  case FIELD_LOADING: return units_loading_figure (units, value);
  case FIELD_SPEED:   return units_speed_figure (units, value);
  case FIELD_RATIO:   return units_number (value, 2);
  case FIELD_NUMBER:  return units_number (value, 0);
  default:            return units_number_exact (value);
  }
}

static char *
field_text_exact (FieldKind kind, Units units, double value)
{
  switch (kind) {
  case FIELD_LENGTH:
  case FIELD_THIN:   return units_length_exact (units, value);
  case FIELD_INCHES: return units_length_exact (in_inches, value);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_mass_exact (units, value);
  case FIELD_AREA:   return units_area_exact (units, value);
  case FIELD_LOADING: return units_loading_exact (units, value);
  default:           return units_number_exact (value);
  }
}

/* A scale's tenths are what somebody typed; what was reckoned has more digits than fit. */
char *
field_text_standing (FieldKind kind, Units units, double value)
{
  enum { FIT = 5 };             /* letters of a row */
  g_autofree char *exact = NULL;

  if ((kind != FIELD_MASS && kind != FIELD_THIN) || isnan (value))
    return field_text_rounded (kind, units, value);
  exact = field_text_exact (kind, units, value);
  return g_utf8_strlen (exact, -1) <= FIT ? g_steal_pointer (&exact) : field_text_rounded (kind, units, value);
}

/* Nobody types more decimals, nor an exponent. */
static bool
is_as_typed (const char *exact)
{
  enum { TYPED = 3 };
  const char *decimals = strpbrk (exact, ".,");

  return strchr (exact, 'e') == NULL && (decimals == NULL || strlen (decimals + 1) <= TYPED);
}

char *
field_text_edited (FieldKind kind, Units units, double value)
{
  g_autofree char *exact = isnan (value) ? g_strdup ("") : field_text_exact (kind, units, value);

  return is_as_typed (exact) ? g_steal_pointer (&exact) : field_text_rounded (kind, units, value);
}

char *
field_text_with_unit (FieldKind kind, Units units, double value)
{
  const char *unit = field_text_unit (kind, units);
  g_autofree char *figure = isnan (value) ? NULL : field_text_standing (kind, units, value);

  if (figure == NULL)
    return NULL;
  return *unit == '\0' || g_str_equal (unit, "°") ? g_strconcat (figure, unit, NULL) : g_strconcat (figure, "\u00a0", unit, NULL);
}

bool
field_text_is_edited (FieldKind kind, Units units, double value, const char *text)
{
  g_autofree char *edited = field_text_edited (kind, units, value);

  return g_str_equal (text, edited);
}

bool
field_text_parse (FieldKind kind, Units units, const char *text, double *value, GError **error)
{
  switch (kind) {
  case FIELD_LENGTH:
  case FIELD_THIN:   return units_parse_length (units, text, value, error);
  case FIELD_INCHES: return units_parse_length (in_inches, text, value, error);
  case FIELD_MASS:
  case FIELD_DEVIATION: return units_parse_mass (units, text, value, error);
  case FIELD_AREA:   return units_parse_area (units, text, value, error);
  case FIELD_LOADING: return units_parse_loading (units, text, value, error);
  default:           return units_parse_number (text, value, error);
  }
}

bool
field_text_parse_known (FieldKind kind, Units units, const char *text, double *value, double *deviation, GError **error)
{
  static const char *const signs[] = { "±", "+/-", "+-" };
  const char *sign = NULL, *behind = NULL;
  double known = NAN, off = NAN;

  for (size_t i = 0; sign == NULL && i < G_N_ELEMENTS (signs); i++) {
    sign = strstr (text, signs[i]);
    behind = sign != NULL ? sign + strlen (signs[i]) : NULL;
  }
  g_autofree char *before = sign != NULL ? g_strndup (text, (size_t) (sign - text)) : g_strdup (text);
  if (!field_text_parse (kind, units, before, &known, error) || (sign != NULL && !field_text_parse (kind, units, behind, &off, error)))
    return false;
  *value = known;
  *deviation = off;
  return true;
}

bool
field_text_is_blank (const char *text)
{
  return text[strspn (text, " \t\u00a0")] == '\0';
}

bool
field_text_take (TrammelSession *session, const FieldSpec *spec, const char *text, double *value, double *deviation, GError **error)
{
  const Units units = trammel_session_units (session);

  *value = *deviation = NAN;
  if (field_text_is_blank (text) && (spec->optional || isnan (spec->value (session, spec))))
    return true;
  if (spec->change_known != NULL)
    return field_text_parse_known (spec->kind, units, text, value, deviation, error);
  return field_text_parse (spec->kind, units, text, value, error);
}

/* Where a deviation may be typed as well, nobody could guess how. */
const char *
field_text_hint (const FieldSpec *spec)
{
  if (spec->hint != NULL)
    return _(spec->hint);
  return spec->change_known == NULL ? NULL
         : _("A deviation may be typed with it: 24.6 ± 0.5, or 24.6 +- 0.5. Without one the deviation that it had goes on counting, "
             "at first what is usual.");
}
