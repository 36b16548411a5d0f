#include "trammel-config.h"
#include "document/part-class.h"
#include "drawing/wall-sheet-battery.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/wall-sheet-pen.h"
#include "figures/ballast-told.h"

static const double same_place = 0.5;      /* mm: what rounding to whole millimetres does not tell apart */

static bool
is_battery (const Part *part)
{
  return part->aboard && part_is_a (part, "battery");
}

/* The first battery aboard; *solution where it must be, NULL when that is not known. */
static const Part *
battery_find (const Figures *figures, const Solution **solution)
{
  *solution = NULL;
  for (size_t i = 0; i < aeroplane_count (figures->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (figures->aeroplane, i);

      if (!is_battery (part))
        continue;
      for (size_t j = 0; j < figures->solution_count; j++)
        if (figures->solutions[j].part == part && isfinite (figures->solutions[j].x_mm))
          *solution = &figures->solutions[j];
      return part;
    }
  return NULL;
}

char *
place_words (Units units, double x)
{
  g_autofree char *length = paper_length (units, fabs (x));

  return g_strdup_printf (x < 0 ? _("%s ahead of datum") : _("%s aft of datum"), length);
}

static char *
moved_note (const WallSheet *sheet, const Part *battery, const Solution *solution)
{
  g_autofree char *drawn = place_words (sheet->units, battery->x), *wanted = place_words (sheet->units, solution->x_mm);

  /* Translators: places such as "105 mm aft of datum" */
  return g_strdup_printf (_("The battery is drawn with its middle %s; for the mark it stands %s."), drawn, wanted);
}

static char *
ballast_note (const WallSheet *sheet, const Solution *solution)
{
  const BallastTold told = ballast_told_of (sheet->figures, solution);
  g_autofree char *mass = NULL, *where = NULL, *place = NULL;

  if (!(told.mass_g > 0) || !isfinite (told.x_mm))
    return g_strdup (_("The battery's rail does not reach far enough for the mark."));
  mass = units_mass (sheet->units, told.mass_g);
  where = ballast_told_phrase (&told);
  place = place_words (sheet->units, told.x_mm);
  /* Translators: a mass, where it goes ("at the fore end of “nose”"), and a place such as "12 mm aft of datum" */
  return g_strdup_printf (_("The battery's rail does not reach far enough for the mark: %s of ballast %s, %s, as well."), mass, where, place);
}

BatteryWords
battery_words_of (const WallSheet *sheet)
{
  const Solution *solution;
  const Part *battery = battery_find (sheet->figures, &solution);

  if (battery == NULL)
    return (BatteryWords) { g_strdup (_("battery")), g_strdup (_("none yet")), NULL };
  if (solution == NULL)
    return (BatteryWords) { g_strdup (_("battery, its middle as drawn")), place_words (sheet->units, battery->x), NULL };
  if (!solution->reachable)
    return (BatteryWords) { g_strdup (_("battery, its middle as drawn")), place_words (sheet->units, battery->x), ballast_note (sheet, solution) };
  if (fabs (solution->x_mm - battery->x) < same_place)
    return (BatteryWords) { g_strdup (_("battery, its middle")), place_words (sheet->units, battery->x), NULL };
  return (BatteryWords) {
    g_strdup (_("battery, its middle for the mark")), place_words (sheet->units, solution->x_mm), moved_note (sheet, battery, solution) };
}

void
battery_words_clear (BatteryWords *self)
{
  g_clear_pointer (&self->field, g_free);
  g_clear_pointer (&self->words, g_free);
  g_clear_pointer (&self->note, g_free);
}
