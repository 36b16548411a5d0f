#include "figures/report-movers.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/movers.h"
#include "figures/names.h"
#include "figures/report-sections.h"

enum { NAME_SHARE_WORDS = 3, LEFT = 1 << 2 };

TextTable
report_movers (const Figures *figures, Units units)
{
  TextTable table = text_table_new (NAME_SHARE_WORDS, LEFT);
  Movers movers = movers_of (figures);

  for (size_t i = 0; i < movers.count; i++)
    {
      const Mover *mover = &movers.of[i];
      g_autofree char *share = units_percent (100 * mover->share);
      text_table_cell (&table, g_strdup (piece_name (&mover->part->piece)));
      text_table_cell (&table, g_steal_pointer (&share));
      text_table_cell (&table, mover_text (&movers, mover, units));
    }
  movers_clear (&movers);
  return table;
}

static void
write_mover (JsonText *json, const Mover *mover)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "part", mover->part->piece.id);
  json_text_number (json, "moment_g_mm", mover->moment_g_mm);
  json_text_number (json, "share", mover->share);
  json_text_number (json, "wanted_x_mm", mover->wanted_x_mm);
  json_text_bool (json, "can_move", mover->can_move);
  json_text_number (json, "reach_x_mm", mover->reach_x_mm);
  json_text_number (json, "left_mm", mover->left_mm);
  json_text_number (json, "wanted_g", mover->wanted_g);
  json_text_close_object (json);
}

void
report_write_movers (JsonText *json, const Figures *figures)
{
  Movers movers = movers_of (figures);

  json_text_open_array (json, "movers");
  for (size_t i = 0; i < movers.count; i++)
    write_mover (json, &movers.of[i]);
  json_text_close_array (json);
  if (movers.ballast_g > 0)
    {
      json_text_open_object (json, "missing");
      json_text_number (json, "ballast_g", movers.ballast_g);
      json_text_number (json, "ballast_x_mm", movers.ballast_x_mm);
      json_text_number (json, "gram_mm", movers.gram_mm);
      json_text_close_object (json);
    }
  else
    json_text_null (json, "missing");
  movers_clear (&movers);
}
