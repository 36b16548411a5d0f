#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/hatch-way.h"
#include "figures/report-hatch.h"

enum { LABEL_VALUE_REMARK = 3, REMARK_LEFT = 1 << 2 };

static void
add (TextTable *table, const char *label, double mm, Units units, char *remark)
{
  text_table_cell (table, g_strdup (label));
  text_table_cell (table, units_length (units, mm));
  text_table_cell (table, remark);
}

char *
hatch_edge_text (const Aeroplane *aeroplane, double x, Units units)
{
  const NamedPlace *former;
  double behind;

  if (!hatch_nearest_former (aeroplane, x, &former, &behind) || !former->name)
    return NULL;
  g_autofree char *length = units_length (units, fabs (behind));
  if (fabs (behind) < 0.5)
    return g_strdup_printf (_("at %s"), former->name);
  /* Translators: where an edge lies: a length and a former's name, "8 mm aft of F2" */
  return g_strdup_printf (behind > 0 ? _("%s aft of %s") : _("%s ahead of %s"), length, former->name);
}

static char *
packs_text (size_t packs)
{
  return packs > 1 ? g_strdup_printf (ngettext ("for %zu pack", "for %zu packs, each alone", packs), packs) : NULL;
}

TextTable
report_hatch (const Figures *figures, Units units)
{
  TextTable table = text_table_new (LABEL_VALUE_REMARK, REMARK_LEFT);
  const HatchFigures *hatch = &figures->hatch;

  if (!hatch->part)
    return table;
  add (&table, _("Forward edge, aft of the datum"), hatch->from_mm, units, hatch_edge_text (figures->aeroplane, hatch->from_mm, units));
  add (&table, _("After edge, aft of the datum"), hatch->to_mm, units, hatch_edge_text (figures->aeroplane, hatch->to_mm, units));
  if (hatch->former_from && hatch->former_from->name)
    add (&table, _("moved forward to a former"), hatch->former_from->place, units, g_strdup (hatch->former_from->name));
  if (hatch->former_to && hatch->former_to->name)
    add (&table, _("moved aft to a former"), hatch->former_to->place, units, g_strdup (hatch->former_to->name));
  add (&table, _("Width"), hatch->width_mm, units, packs_text (hatch->packs));
  if (hatch->from_width_mm < hatch->width_mm)
    add (&table, _("at its forward edge"), hatch->from_width_mm, units, NULL);
  if (hatch->to_width_mm < hatch->width_mm)
    add (&table, _("at its after edge"), hatch->to_width_mm, units, NULL);
  add (&table, _("Floor to leave, from"), hatch->floor_from_mm, units, NULL);
  add (&table, _("to"), hatch->floor_to_mm, units, NULL);
  return table;
}

void
report_write_hatch (JsonText *json, const Figures *figures)
{
  static const char *const sides[HATCH_SIDE_COUNT] = { [HATCH_ON_TOP] = "top", [HATCH_ON_BOTTOM] = "bottom" };
  const HatchFigures *hatch = &figures->hatch;
  const char *side = sides[aeroplane_traits (figures->aeroplane).hatch];

  if (!hatch->part)
    return;
  json_text_open_object (json, "hatch");
  json_text_number (json, "from_mm", hatch->from_mm);
  json_text_number (json, "to_mm", hatch->to_mm);
  json_text_number (json, "width_mm", hatch->width_mm);
  json_text_number (json, "from_width_mm", hatch->from_width_mm);
  json_text_number (json, "to_width_mm", hatch->to_width_mm);
  json_text_number (json, "full_from_mm", hatch->full_from_mm);
  json_text_number (json, "full_to_mm", hatch->full_to_mm);
  json_text_number (json, "lacking_mm", hatch->lacking_mm);
  json_text_number (json, "floor_from_mm", hatch->floor_from_mm);
  json_text_number (json, "floor_to_mm", hatch->floor_to_mm);
  json_text_number (json, "play_mm", hatch->play_mm);
  if (side)
    json_text_string (json, "opens_on", side);
  if (hatch->former_from && hatch->former_from->name)
    json_text_string (json, "former_from", hatch->former_from->name);
  if (hatch->former_to && hatch->former_to->name)
    json_text_string (json, "former_to", hatch->former_to->name);
  hatch_bars_write (json, figures);
  json_text_close_object (json);
}
