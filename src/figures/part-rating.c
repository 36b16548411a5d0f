#include "figures/part-rating.h"

#include "document/part-class.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/csv-text.h"

static const double inch = 25.4;

/* Takes the words; NULL adds nothing. */
static void
add_words (GString *text, char *takes)
{
  if (takes)
    g_string_append_printf (text, "%s%s", text->len ? ", " : "", takes);
  g_free (takes);
}

static char *
cells_words (double cells)
{
  return cells > 0 ? g_strdup_printf (ngettext ("%.0f cell", "%.0f cells", (unsigned long) cells), cells) : NULL;
}

/* Half inches by which propellers are sold; NAN where it is none of them within 2 %. */
static double
inches_sold (double mm)
{
  const double halves = round (2 * mm / inch) / 2;

  return fabs (halves * inch - mm) <= 0.02 * mm ? halves : NAN;
}

static char *
half_inches (double inches)
{
  return units_number (inches, inches == floor (inches) ? 0 : 1);
}

static char *
propeller_words (const Part *part, Units units)
{
  const double across = inches_sold (part->width), ahead = inches_sold (part->pitch);
  g_autofree char *diameter = units_length (units, part->width), *figure = units_length_figure (units, part->width);
  g_autofree char *pitch = units_length (units, part->pitch), *across_words = half_inches (across), *ahead_words = half_inches (ahead);

  if (!(part->width > 0))
    return NULL;
  if (!(part->pitch > 0))
    return g_strdup_printf (_("%s across"), diameter);
  if (isnan (across + ahead))
    /* Translators: a propeller's diameter and pitch */
    return g_strdup_printf (_("%s × %s"), figure, pitch);
  if (units.length == LENGTH_INCH)
    return g_strdup_printf (_("%s × %s\u00A0in"), across_words, ahead_words);
  /* Translators: a propeller's diameter and pitch, then the size by which it is sold: "152 × 102 mm (6 × 4 in)" */
  return g_strdup_printf (_("%s × %s (%s × %s\u00A0in)"), figure, pitch, across_words, ahead_words);
}

char *
part_rating_text (const Part *part, Units units)
{
  g_autoptr (GString) text = g_string_new (NULL);
  g_autofree char *turns = units_number (part->rpm_per_volt, 0), *watts = units_number (part->power, 0), *mass = units_mass (units, part->mass);
  g_autofree char *charge = units_number (part->capacity, 0), *amperes = units_number (part->current, 0);

  add_words (text, part->rpm_per_volt > 0 ? g_strdup_printf (_("%s\u00A0rpm per volt"), turns) : NULL);
  add_words (text, part->power > 0 ? g_strdup_printf (_("up to %s\u00A0W"), watts) : NULL);
  if (part_is_a (part, "propeller"))
    add_words (text, propeller_words (part, units));
  add_words (text, cells_words (part->cells));
  add_words (text, part->capacity > 0 ? g_strdup_printf (_("%s\u00A0mAh"), charge) : NULL);
  add_words (text, part->current > 0 ? g_strdup_printf (_("%s\u00A0A"), amperes) : NULL);
  if (part_is_a (part, "servo") && part->mass > 0)
    add_words (text, g_strdup_printf (_("of about %s"), mass));
  return text->len ? g_string_free (g_steal_pointer (&text), FALSE) : NULL;
}

static double
given (double value)
{
  return value > 0 ? value : NAN;
}

void
csv_part_rating (GString *text, const Part *part)
{
  const bool propeller = part && part_is_a (part, "propeller");
  const double numbers[] = { part ? part->rpm_per_volt : 0, part ? part->power : 0, part ? part->input : 0, propeller ? part->width : 0,
                             part ? part->pitch : 0, part ? part->cells : 0, part ? part->capacity : 0, part ? part->current : 0 };

  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, given (numbers[i]));
}
