#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/contribution.h"
#include "figures/contribution-sentence.h"

char *
reckoning_deviating (char *figure, char *sigma, char *nothing, char *plain)
{
  char *text;

  if (g_str_equal (sigma, "–") || g_str_equal (sigma, nothing))
    text = g_strdup (plain);
  else
    /* TRANSLATORS: a figure with one standard deviation: "151 ± 4 mm" */
    text = g_strdup_printf (_("%s ± %s"), figure, sigma);
  g_free (figure);
  g_free (sigma);
  g_free (nothing);
  g_free (plain);
  return text;
}

static char *
length_text (Units units, double mm, double sigma)
{
  return reckoning_deviating (units_length_figure (units, mm), units_length (units, sigma), units_length (units, 0), units_length (units, mm));
}

void
reckoning_pair (Reckoning *self, const char *label, char *takes, double value, double second)
{
  const ExplanationInput input = { g_strdup (label), takes, value, second };

  g_array_append_val (self->inputs, input);
}

void
reckoning_fine_length (Reckoning *self, const char *label, double mm)
{
  const bool inch = self->units.length == LENGTH_INCH;
  g_autofree char *figure = units_number (inch ? mm / 25.4 : mm, inch ? 3 : 1);

  if (isfinite (mm))
    reckoning_pair (self, label, g_strdup_printf ("%s\u00a0%s", figure, units_length_name (self->units)), mm, NAN);
}

void
reckoning_words (Reckoning *self, const char *label, const char *words)
{
  reckoning_pair (self, label, g_strdup (words), NAN, NAN);
}

void
reckoning_length (Reckoning *self, const char *label, double mm)
{
  if (isfinite (mm))
    reckoning_pair (self, label, units_length (self->units, mm), mm, NAN);
}

void
reckoning_length_known (Reckoning *self, const char *label, double mm, double sigma)
{
  if (isfinite (mm))
    reckoning_pair (self, label, length_text (self->units, mm, sigma), mm, NAN);
}

void
reckoning_mass (Reckoning *self, const char *label, double grams)
{
  if (isfinite (grams))
    reckoning_pair (self, label, units_mass (self->units, grams), grams, NAN);
}

void
reckoning_area (Reckoning *self, const char *label, double mm2)
{
  if (isfinite (mm2))
    reckoning_pair (self, label, units_area (self->units, mm2), mm2, NAN);
}

void
reckoning_percent (Reckoning *self, const char *label, double percent)
{
  g_autofree char *figure = units_number_exact (percent);

  if (isfinite (percent))
    reckoning_pair (self, label, g_strdup_printf ("%s\u00a0%%", figure), percent, NAN);
}

static char *
number_text (double value, int decimals, const char *unit)
{
  g_autofree char *figure = units_number (value, decimals);

  return *unit && isfinite (value) ? g_strdup_printf ("%s\u00a0%s", figure, unit) : g_steal_pointer (&figure);
}

void
reckoning_number (Reckoning *self, const char *label, double value, int decimals, const char *unit)
{
  if (isfinite (value))
    reckoning_pair (self, label, number_text (value, decimals, unit), value, NAN);
}

void
reckoning_gives (Reckoning *self, char *takes, double value)
{
  g_free (self->made->result);
  self->made->result = takes;
  self->made->value = value;
}

void
reckoning_gives_length (Reckoning *self, double mm, double sigma)
{
  reckoning_gives (self, length_text (self->units, mm, sigma), mm);
}

void
reckoning_gives_mass (Reckoning *self, double grams, double sigma)
{
  const bool kilograms = self->units.mass == MASS_G && fabs (grams) >= 999.5;      /* has a unit of its own then */
  char *figure = kilograms ? units_mass (self->units, grams) : units_mass_figure (self->units, grams);

  reckoning_gives (self, reckoning_deviating (figure, units_mass_deviation (self->units, sigma), units_mass_deviation (self->units, 0),
                                    units_mass (self->units, grams)), grams);
}

void
reckoning_gives_number (Reckoning *self, double value, double sigma, int decimals, const char *unit)
{
  char *text = reckoning_deviating (units_number (value, decimals), number_text (sigma, decimals, unit), number_text (0, decimals, unit),
                                    number_text (value, decimals, unit));

  reckoning_gives (self, text, value);
}

void
reckoning_owes (Reckoning *self, const Contributions *owed, const Contributions *more)
{
  const Contributions all = more ? contributions_joined (owed, more) : *owed;

  g_free (self->made->owed);
  self->made->owed = contributions_sentence (&all, self->figures->aeroplane);
}

void
reckoning_owes_words (Reckoning *self, const char *sentence)
{
  g_free (self->made->owed);
  self->made->owed = g_strdup (sentence);
}

void
reckoning_from (Reckoning *self, const char *source)
{
  g_free (self->made->source);
  self->made->source = g_strdup (source);
}

void
reckoning_by (Reckoning *self, const char *formula)
{
  g_free (self->made->formula);
  self->made->formula = g_strdup (formula);
}

void
reckoning_about (Reckoning *self, const char *name)
{
  g_auto (GStrv) around = g_strsplit (self->made->title, "%s", 2);

  g_free (self->made->title);
  self->made->title = g_strjoinv (name, around);
}
