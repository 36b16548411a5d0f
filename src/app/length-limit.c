#include "app/length-limit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

char *
length_limit_words (Units units)
{
  if (units.length == LENGTH_INCH)
    return units_length (units, floor (LENGTH_LIMIT_MM / 25.4) * 25.4);
  /* Translators: the largest length that can be typed, in metres. */
  return g_strdup_printf (_("%.0f m"), LENGTH_LIMIT_MM / 1000);
}

char *
length_limit_span (Units units, double mm)
{
  g_autofree char *most = length_limit_words (units);

  if (mm > 0 && mm <= LENGTH_LIMIT_MM)
    return NULL;
  /* Translators: %s is a length with its unit. */
  return g_strdup_printf (_("A span is more than 0 and at most %s."), most);
}

char *
length_limit_place (Units units, double mm, double least)
{
  g_autofree char *most = length_limit_words (units);
  g_autofree char *low = least < 0 ? units_length (units, least) : g_strdup ("0");

  if (mm >= fmax (least, -LENGTH_LIMIT_MM) && mm <= LENGTH_LIMIT_MM)
    return NULL;
  if (least > -LENGTH_LIMIT_MM)
    /* Translators: a place is asked for; the two are lengths with their units, the first may be a plain 0. */
    return g_strdup_printf (_("It lies between %s and %s."), low, most);
  /* Translators: %s is a length with its unit. */
  return g_strdup_printf (_("That is further than %s away."), most);
}
