#include "figures/report-coverings.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/coverings.h"
#include "figures/names.h"
#include "figures/report-sections.h"

/* "3.4 g ± 0.5 g" */
static char *
mass_cell (const CoveringFigures *covering, Units units)
{
  g_autofree char *mass = units_mass (units, covering->mass_g), *sigma = units_mass_deviation (units, covering->mass_sigma_g);

  return g_strdup_printf (_("%s ± %s"), mass, sigma);
}

static void
add_headings (TextTable *table, const Coverings *coverings)
{
  text_table_cell (table, g_strdup (covering_where_name (coverings->where)));
  text_table_cell (table, g_strdup (_("weighs")));
  text_table_cell (table, g_strdup (_("heavier by")));
  text_table_cell (table, g_strdup (_("balance aft by")));
  text_table_cell (table, coverings->part ? g_strdup_printf (_("“%s” aft by"), piece_name (&coverings->part->piece)) : NULL);
  text_table_cell (table, g_strdup (_("more at the nose")));
  text_table_cell (table, NULL);
}

static void
add_covering (TextTable *table, const Coverings *coverings, const CoveringFigures *covering, Units units)
{
  text_table_cell (table, g_strdup_printf ("  %s", _(covering->covering->name)));
  text_table_cell (table, mass_cell (covering, units));
  text_table_cell (table, units_mass (units, covering->change_g));
  text_table_cell (table, units_length (units, covering->balance_way_mm));
  text_table_cell (table, coverings->part ? units_length (units, covering->part_way_mm) : NULL);
  text_table_cell (table, units_mass (units, covering->nose_g));
  text_table_cell (table, covering->present ? g_strdup (_("as it is now")) : NULL);
}

TextTable
report_coverings (const Figures *figures, Units units)
{
  enum { COLUMNS = 7, LAST_LEFT = 1 << 6 };
  TextTable table = text_table_new (COLUMNS, LAST_LEFT);
  g_autoptr (GArray) wheres = covering_wheres (figures);

  for (guint i = 0; i < wheres->len; i++)
    {
      const CoveringWhere where = g_array_index (wheres, CoveringWhere, i);
      const Coverings coverings = where.scope == COVERING_PIECE && wheres->len > 1 ? (Coverings) { .bare = true }
                                                                                   : coverings_of (figures, where);

      if (coverings.bare)
        continue;
      add_headings (&table, &coverings);
      for (size_t k = 0; k < coverings.count; k++)
        add_covering (&table, &coverings, &coverings.of[k], units);
    }
  return table;
}

char *
report_covering_worth (const Figures *figures, Units units)
{
  const Coverings coverings = coverings_of (figures, (CoveringWhere) { .scope = COVERING_TAIL });
  g_autofree char *sentence = coverings.bare ? NULL : coverings_text (&coverings, units);

  /* Translators: of the coverings compared; then a whole sentence. */
  return sentence ? g_strdup_printf (_("On the tail: %s"), sentence) : NULL;
}

static void
write_kind (JsonText *json, const CoveringFigures *covering, const Part *part)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "material", covering->covering->word);
  json_text_bool (json, "present", covering->present);
  json_text_number (json, "mass_g", covering->mass_g);
  json_text_number (json, "mass_sigma_g", covering->mass_sigma_g);
  json_text_number (json, "change_g", covering->change_g);
  json_text_number (json, "balance_x_mm", covering->balance_x_mm);
  json_text_number (json, "balance_way_mm", covering->balance_way_mm);
  json_text_number (json, "nose_g", covering->nose_g);
  if (part)
    {
      json_text_number (json, "part_way_mm", covering->part_way_mm);
      json_text_bool (json, "part_reaches", covering->part_reaches);
    }
  json_text_close_object (json);
}

void
report_write_coverings (JsonText *json, const Figures *figures)
{
  g_autoptr (GArray) wheres = covering_wheres (figures);

  json_text_open_array (json, "coverings");
  for (guint i = 0; i < wheres->len; i++)
    {
      const Coverings coverings = coverings_of (figures, g_array_index (wheres, CoveringWhere, i));

      json_text_open_object (json, NULL);
      json_text_string (json, "scope", covering_scope_word (coverings.where.scope));
      if (coverings.where.of)
        json_text_string (json, "of", coverings.where.of->id);
      json_text_bool (json, "bare", coverings.bare);
      json_text_number (json, "present_g", coverings.present_g);
      if (coverings.part)
        json_text_string (json, "part", coverings.part->piece.id);
      json_text_open_array (json, "kinds");
      for (size_t k = 0; k < coverings.count; k++)
        write_kind (json, &coverings.of[k], coverings.part);
      json_text_close_array (json);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
