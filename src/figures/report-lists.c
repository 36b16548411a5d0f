#include "figures/report-lists.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/mass-lists.h"
#include "figures/names.h"
#include "figures/report-sections.h"

enum { NAME_MASS_SHARE = 3, NAME_MASS_TWO_MOMENTS = 4 };

TextTable
report_groups (const Figures *figures, Units units)
{
  TextTable table = text_table_new (NAME_MASS_SHARE, 0);
  MassGroupSum groups[MASS_GROUP_COUNT];

  mass_groups_of (figures, groups);
  for (MassGroup group = 0; group < MASS_GROUP_COUNT; group++)
    {
      if (!(groups[group].mass_g > 0))
        continue;
      g_autofree char *mass = units_mass (units, groups[group].mass_g), *sigma = units_mass_deviation (units, groups[group].sigma_g);
      text_table_cell (&table, g_strdup (mass_group_name (group)));
      text_table_cell (&table, g_strdup_printf (_("%s ± %s"), mass, sigma));
      text_table_cell (&table, units_percent (100 * groups[group].mass_g / figures->mass.total_g));
    }
  return table;
}

TextTable
report_moments (const Figures *figures, Units units)
{
  TextTable table = text_table_new (NAME_MASS_TWO_MOMENTS, 0);
  g_autoptr (GArray) moments = moments_of (figures);

  if (!moments->len || isnan (figures->mass.x_mm))
    return table;
  text_table_cell (&table, g_strdup (_("Part")));
  text_table_cell (&table, g_strdup (_("mass")));
  text_table_cell (&table, g_strdup (_("about the balance point")));
  text_table_cell (&table, g_strdup (_("about the datum")));
  for (guint i = 0; i < moments->len; i++)
    {
      const Moment *moment = &g_array_index (moments, Moment, i);

      text_table_cell (&table, g_strdup (piece_name (moment->piece)));
      text_table_cell (&table, units_mass (units, moment->mass_g));
      text_table_cell (&table, units_moment (units, moment->about_balance_g_mm));
      text_table_cell (&table, units_moment (units, moment->about_datum_g_mm));
    }
  return table;
}

void
report_write_groups (JsonText *json, const Figures *figures)
{
  MassGroupSum groups[MASS_GROUP_COUNT];

  mass_groups_of (figures, groups);
  json_text_open_array (json, "mass_groups");
  for (MassGroup group = 0; group < MASS_GROUP_COUNT; group++)
    {
      json_text_open_object (json, NULL);
      json_text_string (json, "group", mass_group_word (group));
      json_text_number (json, "mass_g", groups[group].mass_g);
      json_text_number (json, "mass_sigma_g", groups[group].sigma_g);
      json_text_number (json, "pieces", (double) groups[group].count);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

void
report_write_moments (JsonText *json, const Figures *figures)
{
  g_autoptr (GArray) moments = moments_of (figures);

  json_text_open_array (json, "moments");
  for (guint i = 0; i < moments->len && !isnan (figures->mass.x_mm); i++)
    {
      const Moment *moment = &g_array_index (moments, Moment, i);

      json_text_open_object (json, NULL);
      json_text_string (json, "name", piece_name (moment->piece));
      json_text_number (json, "about_balance_point_g_mm", moment->about_balance_g_mm);
      json_text_number (json, "about_datum_g_mm", moment->about_datum_g_mm);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
