#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/names.h"
#include "figures/part-stand.h"

static void
add_row (TextTable *table, const Part *part, const PartStand *stand, Units units)
{
  text_table_cell (table, g_strdup (piece_name (&part->piece)));
  text_table_cell (table, part_stand_text (stand, stand->front_mm, units));
  text_table_cell (table, part_stand_text (stand, stand->rear_mm, units));
  text_table_cell (table, part_stand_height_text (stand, units));
}

TextTable
report_stands (const Figures *figures, Units units)
{
  const char *const headings[] = { _("Part"), _("front edge"), _("rear edge"), _("above the bottom") };
  const Aeroplane *aeroplane = figures->aeroplane;
  TextTable table = text_table_new (G_N_ELEMENTS (headings), 0);
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);
  PartStand stand;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);

      if (!part->aboard || !part_stand_of (rule, part, &stand))
        continue;
      while (table.cells->len < G_N_ELEMENTS (headings))
        text_table_cell (&table, g_strdup (headings[table.cells->len]));
      add_row (&table, part, &stand, units);
    }
  return table;
}
