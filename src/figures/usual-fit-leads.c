#include "figures/usual-fit-links.h"

#include <math.h>
#include <string.h>
#include "document/lead-joining.h"
#include "figures/lead-need.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static void
replace_made (FitWork *work, Aeroplane *takes)
{
  aeroplane_unref (work->ground.made);
  work->ground.made = takes;
}

/* Soldered or plugged between, it lies along the lead and takes no place. */
static void
add_extension (FitWork *work, const double at[3], double length)
{
  const CatalogueEntry *entry = catalogue_find (work->catalogue, length <= 100 ? "extension-100" : length <= 150 ? "extension-150" : "extension-300");
  Part *part = entry ? catalogue_entry_part (entry) : NULL;

  if (!part)
    return;
  part->piece.id = g_strdup ("extension");
  g_free (part->name);
  part->name = g_strdup_printf (_("Extension lead %.0f mm"), length);
  part->length = part->width = part->height = 0;
  part->x = round (at[0]);
  part->y = round (at[1]);
  part->z = round (at[2]);
  fit_add (&work->ground, part);
}

static bool
ends_at (const Lead *lead, const char *id)
{
  return g_strcmp0 (lead->from, id) == 0 || g_strcmp0 (lead->also, id) == 0 || g_strcmp0 (lead->to, id) == 0;
}

static bool
is_joined (const Aeroplane *aeroplane, const char *from, const char *to)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    if (ends_at (aeroplane_lead (aeroplane, i), from) && ends_at (aeroplane_lead (aeroplane, i), to))
      return true;
  return false;
}

/* Half-way along a leg. */
static void
middle_of (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double at[3])
{
  g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);
  const Part *part = aeroplane_part_by_id (aeroplane, lead_leg_part (lead, leg));
  const Point one = g_array_index (route, Point, 0), other = g_array_index (route, Point, route->len - 1);

  at[0] = (one.x + other.x) / 2;
  at[1] = (one.y + other.y) / 2;
  at[2] = part->z + (leg == LEG_TO ? -0.5 : 0.5) * lead_rise (aeroplane, lead, leg);
}

/* As long as it has to be: by an extension as sold, else made so, in whole centimetres. */
static void
lengthen (FitWork *work, Lead *lead, LeadLeg leg, bool with_plugs)
{
  const LeadNeed need = lead_need_of (work->ground.made, lead, leg);
  double *length = lead_leg_length_in (lead, leg), at[3];

  if (need.missing > 0 && with_plugs && need.extension > 0)
    {
      *length += need.extension;
      middle_of (work->ground.made, lead, leg, at);
      add_extension (work, at, need.extension);
    }
  else if (need.missing > 0)
    *length = 10 * ceil (need.needed / 10);
}

static void
add_lead (FitWork *work, Lead *takes)
{
  takes->piece.id = aeroplane_free_id (work->ground.made, "lead");
  replace_made (work, aeroplane_with_added (work->ground.made, &takes->piece));
}

/* Of the lead that a part of the catalogue comes with; NAN where it has none. */
static double
own_lead (const FitWork *work, const Part *part)
{
  const CatalogueEntry *entry = catalogue_find (work->catalogue, part->kind);

  return entry && entry->lead > 0 ? entry->lead : NAN;
}

static void
join (FitWork *work, const char *from, const char *to, bool with_plugs)
{
  const Part *one = from ? aeroplane_part_by_id (work->ground.made, from) : NULL;
  const Part *other = to ? aeroplane_part_by_id (work->ground.made, to) : NULL;
  Lead *lead;

  if (!one || !other || is_joined (work->ground.made, from, to))
    return;
  lead = lead_new (from, to);
  lead->length = own_lead (work, one);
  lengthen (work, lead, LEG_FROM, with_plugs);
  add_lead (work, lead);
}

/* Both aileron servos on one channel; where the catalogue lacks such a lead, or one of them has its own already, nothing. Its three legs are
 * as long as each other. */
static void
join_ailerons (FitWork *work)
{
  const CatalogueEntry *entry = catalogue_find (work->catalogue, LEAD_TWO_INTO_ONE);
  const Part *left = aeroplane_part_by_id (work->ground.made, work->aileron_servos[0]);
  const Part *right = aeroplane_part_by_id (work->ground.made, work->aileron_servos[1]);
  Lead *lead;

  if (!entry || !left || !right || !work->receiver || is_joined (work->ground.made, left->piece.id, work->receiver)
      || is_joined (work->ground.made, right->piece.id, work->receiver))
    return;
  lead = lead_new (left->piece.id, work->receiver);
  lead->also = g_strdup (right->piece.id);
  lead->length = own_lead (work, left) + entry->lead;
  lead->also_length = own_lead (work, right) + entry->lead;
  lead->to_length = entry->lead;
  lead->mass = entry->mass;
  lead->mass_sigma = entry->mass_sigma;
  lead->name = g_strdup (_("Two-into-one lead"));
  lead->kind = g_strdup (LEAD_TWO_INTO_ONE);
  for (int leg = 0; leg < LEG_COUNT; leg++)
    lengthen (work, lead, leg, true);
  add_lead (work, lead);
}

void
fit_wire (FitWork *work)
{
  g_autoptr (GPtrArray) servos = g_ptr_array_new_with_free_func (g_free);

  for (size_t i = 0; i < aeroplane_count (work->ground.made, PIECE_PART); i++)
    if (g_strcmp0 (aeroplane_part (work->ground.made, i)->class_name, "servo") == 0)
      g_ptr_array_add (servos, g_strdup (aeroplane_part (work->ground.made, i)->piece.id));
  join (work, work->motor, work->controller, false);
  join (work, work->battery, work->controller, false);
  join (work, work->controller, work->receiver, true);
  if (!work->controller)
    join (work, work->battery, work->receiver, false);
  join_ailerons (work);
  for (guint i = 0; i < servos->len; i++)
    join (work, g_ptr_array_index (servos, i), work->receiver, true);
}
