#include "figures/usual-fit-links.h"

#include <math.h>
#include "document/part-size.h"
#include "figures/lead-need.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const double CONTROL_CHORD = 0.35, WIRE = 1.2;
static const double TORQUE_REACH = 0.35;        /* of the semi-span, to the ailerons' inner end */

static Part *
small_part (const FitWork *work, const char *entry_id, const char *stem, const char *name)
{
  const CatalogueEntry *entry = catalogue_find (work->catalogue, entry_id);
  Part *part = entry ? catalogue_entry_part (entry) : NULL;

  if (!part)
    return NULL;
  part->piece.id = g_strdup (stem);
  g_free (part->name);
  part->name = g_strdup (name);
  return part;
}

/* Where the control is driven: its hinge's inner end; without one where it usually is. */
static double
hinge_place (const Surface *surface, ControlKind kind)
{
  const Box box = outline_bounds (surface->outline);

  for (size_t i = 0; i < surface->control_count; i++)
    if (surface->controls[i].kind == kind)
      return surface->controls[i].hinge_inner_x;
  return box.max.x - CONTROL_CHORD * (box.max.x - box.min.x);
}

static void
add_horn (FitWork *work, const Part *servo, double x, double z, const char *of)
{
  Part *horn = small_part (work, "horn", "horn", _("Control horn"));

  if (!horn)
    return;
  horn->length = horn->width = horn->height = 0;      /* it lies outside, on the control */
  horn->x = round (x);
  horn->y = servo->y;
  horn->z = z;
  horn->of = g_strdup (of);
  fit_add (&work->ground, horn);
}

void
fit_link_tail (FitWork *work, const Part *servo, const Surface *surface, ControlKind kind)
{
  const double x = hinge_place (surface, kind), length = fabs (x - servo->x);
  Part *rod = small_part (work, "pushrod-run", kind == CONTROL_RUDDER ? "pushrod-rudder" : "pushrod-elevator",
                          kind == CONTROL_RUDDER ? _("Pushrod, rudder") : _("Pushrod, elevator"));

  if (rod && rod->length > 0 && length > 0)
    {
      rod->mass *= length / rod->length;
      rod->mass_sigma *= length / rod->length;
      rod->length = round (length);
      rod->x = round ((servo->x + x) / 2);
      rod->y = servo->y;
      rod->z = round ((servo->z + surface->z) / 2);
      fit_add (&work->ground, rod);
    }
  else if (rod)
    piece_unref (&rod->piece);
  add_horn (work, servo, x, surface->z, surface->piece.id);
}

void
fit_link_wing (FitWork *work, const Part *servo)
{
  add_horn (work, servo, servo->x + servo->length, servo->z, servo->of);
}

void
fit_link_centre (FitWork *work, const Part *servo, const Surface *wing)
{
  Part *rods = part_new (NULL, "pushrod");

  rods->piece.id = g_strdup ("torque-rods");
  rods->name = g_strdup (_("Torque rods, ailerons"));
  rods->width = round (2 * TORQUE_REACH * outline_bounds (wing->outline).max.y);
  rods->length = rods->height = WIRE;
  rods->mass = part_size_wire (WIRE, rods->width);
  rods->x = round (servo->x + servo->length);
  rods->z = wing->z;
  rods->of = g_strdup (wing->piece.id);
  fit_add (&work->ground, rods);
}

static void
replace_made (FitWork *work, Aeroplane *takes)
{
  aeroplane_unref (work->ground.made);
  work->ground.made = takes;
}

/* Soldered or plugged between, it lies along the lead and takes no place. */
static void
add_extension (FitWork *work, const Part *from, const Part *to, double length)
{
  Part *part = small_part (work, length <= 150 ? "extension-150" : "extension-300", "extension", NULL);

  if (!part)
    return;
  part->name = g_strdup_printf (_("Extension lead %.0f mm"), length);
  part->length = part->width = part->height = 0;
  part->x = round ((from->x + to->x) / 2);
  part->y = round ((from->y + to->y) / 2);
  part->z = round ((from->z + to->z) / 2);
  fit_add (&work->ground, part);
}

static bool
is_joined (const Aeroplane *aeroplane, const char *from, const char *to)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (aeroplane, i);

      if ((g_strcmp0 (lead->from, from) == 0 && g_strcmp0 (lead->to, to) == 0)
          || (g_strcmp0 (lead->from, to) == 0 && g_strcmp0 (lead->to, from) == 0))
        return true;
    }
  return false;
}

static void
join (FitWork *work, const char *from, const char *to, bool with_plugs)
{
  const Part *one = from ? aeroplane_part_by_id (work->ground.made, from) : NULL;
  const Part *other = to ? aeroplane_part_by_id (work->ground.made, to) : NULL;
  const CatalogueEntry *entry = one ? catalogue_find (work->catalogue, one->kind) : NULL;
  Lead *lead;
  LeadNeed need;

  if (!one || !other || is_joined (work->ground.made, from, to))
    return;
  lead = lead_new (from, to);
  lead->length = entry && entry->lead > 0 ? entry->lead : NAN;
  need = lead_need_of (work->ground.made, lead);
  if (need.missing > 0 && with_plugs && need.extension > 0)
    {
      lead->length += need.extension;
      add_extension (work, one, other, need.extension);
    }
  else if (need.missing > 0)
    lead->length = 10 * ceil (need.needed / 10);
  replace_made (work, aeroplane_with_added (work->ground.made, &lead->piece));
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
  for (guint i = 0; i < servos->len; i++)
    join (work, g_ptr_array_index (servos, i), work->receiver, true);
}
