#include "figures/report-structure.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/report-sections.h"

static char *
with_deviation (double mass, double sigma, Units units)
{
  g_autofree char *figure = units_mass (units, mass), *deviation = units_mass_deviation (units, sigma);

  return sigma > 0 ? g_strdup_printf (_("%s ± %s"), figure, deviation) : g_strdup (figure);
}

/* How well a line is known, in a few words. */
static char *
known_words (const StructureItem *item)
{
  if (!isnan (item->weighed))
    return g_strdup (_("weighed"));
  if (!isnan (item->of_others))
    return g_strdup_printf (_("%.0f %% of the lines that are glued"), item->of_others * 100);
  return item->density_weighed ? g_strdup (_("by a weighed sheet")) : NULL;
}

static void
add_row (TextTable *table, const char *name, char *takes_mass, char *takes_words)
{
  text_table_cell (table, g_strdup_printf ("  %s", name));
  text_table_cell (table, takes_mass);
  text_table_cell (table, takes_words);
}

/* Who had it on a scale knows how good that is. */
static char *
total_words (const StructureFigures *figures, Units units)
{
  g_autofree char *sum = units_mass (units, figures->estimate_g);

  if (isnan (figures->structure->mass))
    return NULL;
  return g_strdup_printf (isnan (figures->structure->mass_sigma) ? _("typed; the lines come to %s") : _("on the scale; the lines come to %s"), sum);
}

static void
add_structure (TextTable *table, const StructureFigures *figures, Units units)
{
  const Structure *structure = figures->structure;

  text_table_cell (table, g_strdup (piece_name (&structure->piece)));
  text_table_cell (table, with_deviation (figures->mass_g, figures->mass_sigma_g, units));
  text_table_cell (table, total_words (figures, units));
  for (size_t i = 0; i < structure->item_count; i++)
    add_row (table, structure_item_name (&structure->items[i]), units_mass (units, g_array_index (figures->items_g, double, i)),
             known_words (&structure->items[i]));
  if (figures->excess_g > 0)
    add_row (table, _("Usual excess"), units_mass (units, figures->excess_g),
             g_strdup_printf (_("%.0f %% of what is not weighed"), structure->excess * 100));
}

TextTable
report_materials (const Figures *figures, Units units)
{
  TextTable table = text_table_new (3, 1 << 2);

  for (size_t i = 0; i < figures->structure_count; i++)
    if (figures->structures[i].items_g)
      add_structure (&table, &figures->structures[i], units);
  return table;
}

static void
write_items (JsonText *json, const StructureFigures *figures)
{
  json_text_open_array (json, "items");
  for (size_t i = 0; i < figures->structure->item_count; i++)
    {
      const StructureItem *item = &figures->structure->items[i];

      json_text_open_object (json, NULL);
      json_text_string (json, "name", structure_item_name (item));
      if (item->material)
        json_text_string (json, "material", item->material);
      json_text_number (json, "mass_g", g_array_index (figures->items_g, double, i));
      json_text_bool (json, "weighed", !isnan (item->weighed));
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
write_estimate (JsonText *json, const StructureFigures *figures)
{
  json_text_number (json, "estimate_g", figures->estimate_g);
  json_text_number (json, "estimate_sigma_g", figures->estimate_sigma_g);
  json_text_number (json, "excess_g", figures->excess_g);
  write_items (json, figures);
}

void
report_write_structures (JsonText *json, const Figures *figures)
{
  json_text_open_array (json, "structures");
  for (size_t i = 0; i < figures->structure_count; i++)
    {
      const StructureFigures *structure = &figures->structures[i];

      json_text_open_object (json, NULL);
      json_text_string (json, "id", structure->structure->piece.id);
      json_text_string (json, "of", structure->structure->of);
      json_text_number (json, "mass_g", structure->mass_g);
      json_text_number (json, "mass_sigma_g", structure->mass_sigma_g);
      if (structure->items_g)
        write_estimate (json, structure);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
