#include "figures/report-leads.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/lead-need.h"
#include "figures/lead-words.h"
#include "figures/report-sections.h"

char *
lead_reach_text (const LeadNeed *need, Units units)
{
  g_autofree char *left = units_length (units, need->left), *short_by = units_length (units, need->missing);
  g_autofree char *extension = units_length (units, need->extension);

  if (isnan (need->missing))
    return NULL;
  if (!(need->missing > 0))
    /* Translators: how much of a lead is left over */
    return g_strdup_printf (_("%s left over"), left);
  if (isnan (need->extension))
    return g_strdup_printf (_("short by %s: one extension is not enough"), short_by);
  return g_strdup_printf (_("short by %s: an extension of %s"), short_by, extension);
}

static void
add_leg (TextTable *table, const Figures *figures, const Lead *lead, LeadLeg leg, Units units)
{
  const LeadNeed need = lead_need_of (figures->aeroplane, lead, leg);

  text_table_cell (table, lead_leg_title (figures->aeroplane, lead, leg));
  text_table_cell (table, units_length (units, need.route));
  text_table_cell (table, units_length (units, need.needed));
  text_table_cell (table, units_length (units, lead_leg_length (lead, leg)));
  text_table_cell (table, lead_reach_text (&need, units));
}

TextTable
report_leads (const Figures *figures, Units units)
{
  TextTable table = text_table_new (5, 1 << 4);
  const size_t count = aeroplane_count (figures->aeroplane, PIECE_LEAD);

  if (count > 0)
    {
      text_table_cell (&table, g_strdup (""));
      text_table_cell (&table, g_strdup (_("its way")));
      text_table_cell (&table, g_strdup (_("needs")));
      text_table_cell (&table, g_strdup (_("has")));
      text_table_cell (&table, NULL);
    }
  for (size_t i = 0; i < count; i++)
    {
      const Lead *lead = aeroplane_lead (figures->aeroplane, i);

      for (int leg = 0; leg < lead_leg_count (lead); leg++)
        add_leg (&table, figures, lead, leg, units);
    }
  return table;
}

static void
write_leg (JsonText *json, const Figures *figures, const Lead *lead, LeadLeg leg)
{
  const LeadNeed need = lead_need_of (figures->aeroplane, lead, leg);

  json_text_number (json, "way_mm", need.route);
  json_text_number (json, "needed_mm", need.needed);
  json_text_number (json, "length_mm", lead_leg_length (lead, leg));
  json_text_number (json, "left_mm", need.left);
  json_text_number (json, "missing_mm", need.missing);
  json_text_number (json, "extension_mm", need.extension);
}

static void
write_legs (JsonText *json, const Figures *figures, const Lead *lead)
{
  const Point joint = lead_joint (figures->aeroplane, lead);

  json_text_number (json, "joint_x_mm", joint.x);
  json_text_number (json, "joint_y_mm", joint.y);
  json_text_open_array (json, "legs");
  for (int leg = 0; leg < LEG_COUNT; leg++)
    {
      json_text_open_object (json, NULL);
      json_text_string (json, "part", lead_leg_part (lead, leg));
      write_leg (json, figures, lead, leg);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

void
report_write_leads (JsonText *json, const Figures *figures)
{
  const size_t count = aeroplane_count (figures->aeroplane, PIECE_LEAD);

  if (count == 0)
    return;
  json_text_open_array (json, "leads");
  for (size_t i = 0; i < count; i++)
    {
      const Lead *lead = aeroplane_lead (figures->aeroplane, i);

      json_text_open_object (json, NULL);
      json_text_string (json, "id", lead->piece.id);
      json_text_string (json, "from", lead->from);
      if (lead_is_joined (lead))
        json_text_string (json, "also", lead->also);
      json_text_string (json, "to", lead->to);
      if (lead_is_joined (lead))
        write_legs (json, figures, lead);
      else
        write_leg (json, figures, lead, LEG_FROM);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
