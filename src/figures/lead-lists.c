#include "figures/lead-lists.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/lead-words.h"

void
csv_lead (GString *text, const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  LeadNeed need = { NAN, NAN, NAN, NAN, NAN };
  double length = NAN;
  bool joined = false;

  if (lead)
    {
      need = lead_need_of (aeroplane, lead, leg);
      length = lead_leg_length (lead, leg);
      joined = lead_is_joined (lead);
    }
  csv_field (text, !lead || (joined && leg == LEG_TO) ? NULL : lead_leg_part (lead, leg));
  csv_field (text, !lead || (joined && leg != LEG_TO) ? NULL : lead->to);
  const double numbers[] = { length, need.needed, need.missing, need.extension };
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
}

void
csv_leads (GString *text, const Aeroplane *aeroplane)
{
  g_string_append (text, "id,name," CSV_LEAD_HEADING ",way_mm,mass_g\r\n");
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      {
        const Lead *lead = aeroplane_lead (aeroplane, i);
        g_autofree char *title = lead_leg_title (aeroplane, lead, leg);

        csv_field (text, lead->piece.id);
        csv_field (text, title);
        csv_lead (text, aeroplane, lead, leg);
        csv_number (text, lead_way (aeroplane, lead, leg));
        csv_number (text, lead->mass > 0 && (!lead_is_joined (lead) || leg == LEG_TO) ? lead->mass : NAN);
        csv_end (text);
      }
}

char *
lead_extension_figure (const LeadNeed *need, Units units)
{
  g_autofree char *longest = units_length_figure (units, lead_extension_longest ());

  if (isnan (need->missing))
    return units_length_figure (units, NAN);
  if (!(need->missing > 0))
    /* Translators: in a list of leads: no extension is needed */
    return g_strdup (C_("extension", "none"));
  if (isnan (need->extension))
    /* Translators: in a list of leads: longer than the longest extension sold */
    return g_strdup_printf (C_("extension", "over %s"), longest);
  return units_length_figure (units, need->extension);
}

/* How many legs need an extension so long; NAN: more than one makes up for. */
static guint
count_of (const Aeroplane *aeroplane, double extension)
{
  guint count = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      {
        const LeadNeed need = lead_need_of (aeroplane, aeroplane_lead (aeroplane, i), leg);

        if (need.missing > 0)
          count += isnan (extension) ? isnan (need.extension) : need.extension == extension;
      }
  return count;
}

static void
add_count (GString *list, guint count, double extension, Units units)
{
  g_autofree char *length = units_length (units, extension);

  if (count == 0)
    return;
  if (list->len)
    g_string_append (list, ", ");
  /* Translators: in a list of what to buy: how many, and how long each: "2 of 150 mm" */
  g_string_append_printf (list, _("%u of %s"), count, length);
}

char *
leads_to_buy (const Aeroplane *aeroplane, Units units)
{
  g_autoptr (GString) list = g_string_new (NULL);
  const guint beyond = count_of (aeroplane, NAN);

  for (double sold = lead_extension_for (1); isfinite (sold); sold = lead_extension_for (sold + 1))
    add_count (list, count_of (aeroplane, sold), sold, units);
  if (!list->len && beyond == 0)
    return NULL;
  if (!list->len)
    return g_strdup (_("What is too short, one extension does not make up for: make those leads longer."));
  if (beyond == 0)
    /* Translators: %s is a list: "1 of 100 mm, 2 of 150 mm" */
    return g_strdup_printf (_("Extensions to buy: %s."), list->str);
  return g_strdup_printf (_("Extensions to buy: %s. Where one is not enough, make the lead longer."), list->str);
}
