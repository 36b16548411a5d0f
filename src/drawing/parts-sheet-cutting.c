#include "trammel-config.h"
#include "drawing/parts-sheet-section.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "figures/cutting-list.h"
#include "figures/names.h"

char *
parts_known_figure (Units units, double mm)
{
  char *text = units_length_known (units, mm);
  const char *unit = units_length_name (units);

  if (g_str_has_suffix (text, unit))
    text[strlen (text) - strlen (unit)] = '\0';
  if (g_str_has_suffix (text, "\u00A0"))
    text[strlen (text) - strlen ("\u00A0")] = '\0';
  return g_strchomp (text);
}

static char *
piece_size_words (const CuttingLine *line, Units units)
{
  g_autofree char *width = parts_known_figure (units, line->width_mm), *length = units_length_figure (units, line->length_mm);

  if (isnan (line->length_mm))
    return NULL;
  return isnan (line->width_mm) ? g_steal_pointer (&length) : g_strdup_printf ("%s\u00A0× %s", width, length);
}

/* With as many decimals as say the same, two at the most. */
static char *
hundredths (double value)
{
  const int decimals = fabs (value - round (value)) < 0.005 ? 0 : fabs (10 * value - round (10 * value)) < 0.05 ? 1 : 2;

  return units_number (value, decimals);
}

/* Sheet is sold by fractions of an inch, by millimetres with their tenths, foil by hundredths. */
static char *
thickness_words (const CuttingLine *line, Units units)
{
  const size_t longest = strlen ("1 5/32");
  g_autofree char *exact = units_length_exact (units, line->thickness_mm);

  if (isnan (line->thickness_mm))
    return NULL;
  if (units.length == LENGTH_MM)
    return hundredths (line->thickness_mm);
  return strlen (exact) <= longest ? g_steal_pointer (&exact) : units_number (line->thickness_mm / 25.4, 3);
}

/* In one column: as many decimals for all. */
static char *
mass_words (double grams, Units units)
{
  return units.mass == MASS_G ? units_number (grams, 1) : units_mass_figure (units, grams);
}

/* What it is of as the drawing calls it: "wing" rather than "Wing structure". */
static char *
whole_words (const Figures *figures, const Structure *structure)
{
  const Piece *of = structure->of != NULL ? aeroplane_find (figures->aeroplane, structure->of) : NULL;

  return g_strdup (piece_name (of != NULL ? of : &structure->piece));
}

/* Sticks are bought by their length, everything else by its area. */
static char *
together_words (double length_mm, double area_mm2, Units units)
{
  if (isfinite (length_mm) && length_mm > 0)
    return units_length (units, length_mm);
  return area_mm2 > 0 ? units_area (units, area_mm2) : NULL;
}

/* A cell that is blank would be taken for the one above. */
static char *
material_words (const CuttingLine *line)
{
  g_autofree char *material = cutting_material (line);

  return g_strdup (*material != '\0' ? material : "–");
}

static void
add_cutting_line (RuledTable *table, const Figures *figures, const CuttingLine *line, Units units)
{
  ruled_table_add (table, (char *const[TABLE_COLUMNS]) {
    material_words (line), thickness_words (line, units), g_strdup (structure_item_name (line->item)),
    whole_words (figures, line->structure), isnan (line->count) ? NULL : g_strdup_printf ("%.0f", line->count),
    piece_size_words (line, units), together_words (line->total_length_mm, line->area_mm2, units), mass_words (line->mass_g, units) });
}

static void
add_group (RuledTable *table, const Figures *figures, const CuttingList *list, const CuttingGroup *group, Units units)
{
  const CuttingLine *first = &list->lines[group->first];

  for (size_t i = 0; i < group->count; i++)
    add_cutting_line (table, figures, &first[i], units);
  if (group->count > 1 && (group->area_mm2 > 0 || group->total_length_mm > 0))
    ruled_table_add (table, (char *const[TABLE_COLUMNS]) {
      material_words (first), thickness_words (first, units), g_strdup (_("together")), NULL, NULL, NULL,
      together_words (group->total_length_mm, group->area_mm2, units), mass_words (group->mass_g, units) });
}

PartsSection
parts_cutting_section (const WallSheet *sheet)
{
  const char *const heads[] = { _("material"), _("thick"), _("piece"), _("of"), _("how many"), _("wide × long"), _("in all"),
                                units_mass_name (sheet->units) };
  PartsSection section = section_new (_("Cutting List"), G_N_ELEMENTS (heads));
  CuttingList list = cutting_list_of (sheet->figures);

  set_heads (&section.table, heads);
  section.stretches = section.ditto = 2;
  section.table.to_right[1] = section.table.to_right[4] = section.table.to_right[5] = true;
  section.table.to_right[6] = section.table.to_right[7] = true;
  for (size_t i = 0; i < list.group_count; i++)
    add_group (&section.table, sheet->figures, &list, &list.groups[i], sheet->units);
  cutting_list_clear (&list);
  return section;
}
