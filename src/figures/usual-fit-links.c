#include "figures/usual-fit-links.h"

#include <math.h>
#include "document/part-size.h"
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
