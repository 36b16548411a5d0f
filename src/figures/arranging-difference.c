#include "figures/arranging-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"

/* mm: nobody moves or cuts anything by less. */
static const double NOTHING = 0.5;

/* How far a part stands from where the other has it, mm along x, y and z. */
typedef struct { size_t part; double way[3]; int axis; } Apart;

static Apart
apart_of (const Arrangement *found, const Arrangement *other, size_t part)
{
  const ArrangePlace here = found->places[part], there = other->places[part];
  Apart apart = { part, { (here.x - there.x) / ARRANGING_METRE, (here.y - there.y) / ARRANGING_METRE, (here.z - there.z) / ARRANGING_METRE }, 0 };

  for (int i = 1; i < 3; i++)
    if (fabs (apart.way[i]) > fabs (apart.way[apart.axis]))
      apart.axis = i;
  return apart;
}

static Apart
most_apart (const Arranging *self, const Arrangement *found, const Arrangement *other)
{
  Apart most = apart_of (found, other, 0);

  for (size_t i = 1; i < arranging_movable (self); i++)
    {
      const Apart apart = apart_of (found, other, i);
      if (fabs (apart.way[apart.axis]) > fabs (most.way[most.axis]))
        most = apart;
    }
  return most;
}

static bool
part_stays (const Arranging *self, const Arrangement *found, size_t part)
{
  const Part *now = arranging_parts (self)[part];
  const ArrangePlace at = found->places[part];

  return fabs (at.x / ARRANGING_METRE - now->x) < NOTHING && fabs (at.y / ARRANGING_METRE - now->y) < NOTHING
         && fabs (at.z / ARRANGING_METRE - now->z) < NOTHING;
}

static void
add_part (GString *text, const Arranging *self, const Arrangement *found, Apart apart, Units units)
{
  const char *name = piece_name (&arranging_parts (self)[apart.part]->piece);
  const double way = apart.way[apart.axis];
  g_autofree char *length = units_length (units, fabs (way));

  if (fabs (way) < NOTHING)
    return;
  if (part_stays (self, found, apart.part))
    g_string_append_printf (text, _("“%s” stays"), name);
  else if (apart.axis == 0)
    g_string_append_printf (text, way > 0 ? _("“%s” %s further aft") : _("“%s” %s further forward"), name, length);
  else if (apart.axis == 1)
    g_string_append_printf (text, way > 0 ? _("“%s” %s further to starboard") : _("“%s” %s further to port"), name, length);
  else
    g_string_append_printf (text, way > 0 ? _("“%s” %s higher") : _("“%s” %s lower"), name, length);
}

static void
add_leads (GString *text, const Arranging *self, const Arrangement *found, const Arrangement *other, Units units)
{
  double longer = 0;

  for (size_t i = 0; i < arranging_lead_count (self); i++)
    longer += arranging_lead_needed (self, found, i) - arranging_lead_needed (self, other, i);
  g_autofree char *length = units_length (units, fabs (longer));
  if (!(fabs (longer) >= NOTHING))
    return;
  if (text->len)
    g_string_append (text, ", ");
  g_string_append_printf (text, longer > 0 ? _("leads %s longer in all") : _("leads %s shorter in all"), length);
}

char *
arranging_difference_text (const Arranging *self, const Arrangement *found, const Arrangement *other, Units units)
{
  g_autoptr (GString) text = g_string_new (NULL);

  if (arranging_movable (self))
    add_part (text, self, found, most_apart (self, found, other), units);
  add_leads (text, self, found, other, units);
  if (!text->len)
    g_string_append (text, _("hardly anything"));
  return g_string_free (g_steal_pointer (&text), FALSE);
}
