#include "figures/room-refusal.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "figures/names.h"
#include "figures/surface-figures.h"
#include "figures/wing-through.h"

/* The part as it would be with that room alone. */
static Part *
part_in (const Part *part, const char *room)
{
  Part *made = (Part *) piece_dup (&part->piece);

  g_free (made->bays);
  made->bays = g_strdup (room);
  return made;
}

static char *
too_short (double had, double needed, Units units)
{
  g_autofree char *room = units_length (units, had), *length = units_length (units, needed);

  /* TRANSLATORS: under the name of a bay or a wing, two lengths: why a part cannot be in there */
  return g_strdup_printf (_("too short: %s, the part is %s long"), room, length);
}

/* It is fixed to one body, and the bay is in another. */
static char *
other_body (const Aeroplane *aeroplane, const Part *part, const Piece *room)
{
  const Body *own = part->of ? aeroplane_body_by_id (aeroplane, part->of) : NULL, *body;
  double from, to;

  if (!own || room->kind != PIECE_BAY || !bay_reach (aeroplane, (const Bay *) room, &body, &from, &to) || body == own)
    return NULL;
  return g_strdup_printf (_("in “%s”, and the part is fixed to “%s”"), piece_name (&body->piece), piece_name (&own->piece));
}

/* Anywhere along it. */
static bool
wing_passes (const Aeroplane *aeroplane, const Part *part, double from, double to)
{
  WingThrough through;

  return wings_through (aeroplane, part, (Point) { (from + to) / 2, 0 }, to - from, part_extent (part).y, &through);
}

static char *
too_small_bay (const Aeroplane *aeroplane, const Part *part, const Bay *bay, Units units)
{
  const double needed = part_extent (part).x;
  const Body *body;
  double from, to;

  if (bay_inside (aeroplane, bay, &body, &from, &to) && to - from >= needed)
    return g_strdup (wing_passes (aeroplane, part, from, to) ? _("too narrow or too low for the part, with a wing passing through")
                                                             : _("too narrow or too low for the part"));
  return too_short (bay_inside (aeroplane, bay, &body, &from, &to) ? to - from : 0, needed, units);
}

/* A fin is cut at the part's height above its foot. */
static char *
too_small_surface (const Part *part, const Surface *surface, Units units)
{
  const double station = surface_is_horizontal (surface) ? fabs (part->y) : part->z - surface->z, needed = part_extent (part).x;
  StationCut cut;

  if (planform_cut (surface->outline, surface_sides (surface), station, &cut) != CORE_OK)
    return g_strdup (_("does not reach to where the part stands"));
  if (cut.trailing_x - cut.leading_x < needed)
    return too_short (cut.trailing_x - cut.leading_x, needed, units);
  return g_strdup (_("not deep enough for the part"));
}

static char *
refusal_of (const Aeroplane *aeroplane, const Part *part, const Piece *room, Units units)
{
  switch (part_places_why (aeroplane, part))
    {
    case PLACES_THERE:    return NULL;
    case PLACES_NO_ROOM:  return g_strdup (_("its formers are not there"));
    case PLACES_OFF_RAIL: return g_strdup (_("the part's rail does not lead there"));
    case PLACES_TOO_LARGE: break;
    }
  return room->kind == PIECE_BAY ? too_small_bay (aeroplane, part, (const Bay *) room, units)
                                 : too_small_surface (part, (const Surface *) room, units);
}

char *
room_refusal (const Aeroplane *aeroplane, const Part *part, const char *id, Units units)
{
  const Piece *room = aeroplane_find (aeroplane, id);
  Part *alone;
  char *refusal;

  if (!room)
    return NULL;
  refusal = other_body (aeroplane, part, room);
  if (refusal)
    return refusal;
  alone = part_in (part, id);
  refusal = refusal_of (aeroplane, alone, room, units);
  piece_unref (&alone->piece);
  return refusal;
}
