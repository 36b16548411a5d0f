#include "figures/wing-stand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "figures/surface-figures.h"

/* mm: nearer than that a thing is where it is measured from. */
static const double AT = 0.5;

WingStand
wing_stand_none (void)
{
  return (WingStand) { NULL, NAN, NAN, NAN, NULL, NAN };
}

/* The named rib nearest to a station; NULL without one. */
static const NamedPlace *
rib_nearest (const Surface *surface, double station)
{
  const NamedPlace *best = NULL;

  for (size_t i = 0; surface && i < surface->rib_count; i++)
    if (surface->ribs[i].name && *surface->ribs[i].name && (!best || fabs (surface->ribs[i].place - station) < fabs (best->place - station)))
      best = &surface->ribs[i];
  return best;
}

static bool
leading_edge (const Surface *surface, double station, StationCut *cut)
{
  return surface->role != ROLE_FIN && planform_cut (surface->outline, surface_sides (surface), station, cut) == CORE_OK;
}

static bool
is_over (const Surface *surface, const Part *part)
{
  StationCut cut;

  return leading_edge (surface, fabs (part->y), &cut) && part->x >= cut.leading_x && part->x <= cut.trailing_x;
}

/* How far above or below the surface it is there. */
static double
off_surface (const Surface *surface, const Part *part)
{
  return fabs (part->z - surface->z - surface_lift (surface, fabs (part->y)));
}

static bool
is_in_body (const Aeroplane *aeroplane, const Part *part)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (body_covers (aeroplane_body (aeroplane, i), (Point) { part->x, part->y }))
      return true;
  return false;
}

static const Surface *
surface_around (const Aeroplane *aeroplane, const Part *part)
{
  if (part->of)
    return aeroplane_surface_by_id (aeroplane, part->of);
  if (is_in_body (aeroplane, part))
    return NULL;
  const Surface *nearest = NULL;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (aeroplane, i);

      if (is_over (surface, part) && (!nearest || off_surface (surface, part) < off_surface (nearest, part)))
        nearest = surface;
    }
  return nearest;
}

WingStand
wing_stand_at (const Surface *surface, double station_mm, double aft_mm)
{
  const NamedPlace *rib = rib_nearest (surface, station_mm);

  return (WingStand) { surface, station_mm, aft_mm, aft_mm, rib, rib ? station_mm - rib->place : NAN };
}

bool
wing_stand_of (const Aeroplane *aeroplane, const Part *part, WingStand *stand)
{
  const Surface *surface = isfinite (part->x + part->y) ? surface_around (aeroplane, part) : NULL;
  const double half = part_extent (part).x / 2;
  StationCut cut;

  if (!surface || !leading_edge (surface, fabs (part->y), &cut))
    return false;
  *stand = wing_stand_at (surface, fabs (part->y), part->x - cut.leading_x);
  stand->front_mm -= half;
  stand->rear_mm += half;
  return true;
}

void
csv_wing_stand (GString *text, const WingStand *stand)
{
  csv_field (text, stand->surface ? stand->surface->piece.id : NULL);
  csv_number (text, stand->front_mm);
  csv_number (text, stand->rear_mm);
  csv_field (text, stand->rib ? stand->rib->name : NULL);
  csv_number (text, stand->outboard_mm);
}

char *
wing_stand_along_text (const WingStand *stand, Units units)
{
  const double front = stand->front_mm, rear = stand->rear_mm;
  g_autofree char *fore = units_length (units, fabs (front)), *aft = units_length (units, fabs (rear));
  g_autofree char *fore_figure = units_length_figure (units, fabs (front)), *aft_figure = units_length_figure (units, fabs (rear));

  if (rear - front < AT)
    return g_strdup_printf (rear > -AT ? _("%s aft of the leading edge there") : _("%s ahead of the leading edge there"), aft);
  if (rear <= -AT)
    return g_strdup_printf (_("%s to %s ahead of the leading edge there"), aft_figure, fore);
  if (front <= -AT)
    return g_strdup_printf (_("from %s ahead of the leading edge there to %s aft of it"), fore, aft);
  /* Translators: both edges of a thing in a wing, "36 to 58 mm aft of the leading edge there" */
  return g_strdup_printf (_("%s to %s aft of the leading edge there"), fore_figure, aft);
}

char *
wing_stand_rib_text (const WingStand *stand, Units units)
{
  g_autofree char *beside = units_length (units, fabs (stand->outboard_mm));

  if (!stand->rib)
    return NULL;
  if (fabs (stand->outboard_mm) < AT)
    return g_strdup_printf (_("at rib\u00A0%s"), stand->rib->name);
  return g_strdup_printf (stand->outboard_mm > 0 ? _("%s outboard of rib\u00A0%s") : _("%s inboard of rib\u00A0%s"), beside, stand->rib->name);
}

char *
off_centre_text (double y, Units units)
{
  g_autofree char *off = units_length (units, fabs (y));

  if (!(fabs (y) >= AT))
    return NULL;
  return g_strdup_printf (y > 0 ? _("%s\u00A0to\u00A0starboard") : _("%s\u00A0to\u00A0port"), off);
}
