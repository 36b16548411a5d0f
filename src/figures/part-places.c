#include "figures/part-places.h"

#include <math.h>
#include "document/part-box.h"
#include "figures/body-profile.h"
#include "figures/body-walls.h"
#include "figures/surface-figures.h"
#include "figures/wing-depth.h"
#include "figures/wing-through.h"

/* mm: places along a bay are tried so far apart, and no more of them than so many. */
static const double STEP = 0.5;
enum { MOST_STEPS = 4096 };

typedef struct {
  const Aeroplane *aeroplane;
  const Part *part;
  Point extent;                 /* of its box as turned, mm */
  const Piece *room;
  double step;                  /* mm, between places that are tried */
  GArray *places;               /* of PartPlaces */
} Finding;

static double
step_over (double from, double to)
{
  return fmax (STEP, (to - from) / MOST_STEPS);
}

bool
part_is_movable (const Part *part)
{
  return part->has_rail || part->bays;
}

static bool
former_at (const Body *body, const char *name, double *x)
{
  for (size_t i = 0; i < body->former_count; i++)
    if (g_strcmp0 (body->formers[i].name, name) == 0)
      {
        *x = body->formers[i].place;
        return true;
      }
  return false;
}

bool
bay_reach (const Aeroplane *aeroplane, const Bay *bay, const Body **body, double *from, double *to)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      double a, b;
      *body = aeroplane_body (aeroplane, i);
      if (!former_at (*body, bay->from_former, &a) || !former_at (*body, bay->to_former, &b) || a == b)
        continue;
      *from = fmin (a, b);
      *to = fmax (a, b);
      return true;
    }
  return false;
}

bool
bay_inside (const Aeroplane *aeroplane, const Bay *bay, const Body **body, double *from, double *to)
{
  if (!bay_reach (aeroplane, bay, body, from, to))
    return false;
  *from += body_former_thickness (*body) / 2;
  *to -= body_former_thickness (*body) / 2;
  return *from < *to;
}

static PartPlaces
where_it_stands (const Part *part)
{
  return (PartPlaces) { NULL, part->x, part->x, part->y, part->y, part->z, part->z };
}

static void
add (Finding *self, PartPlaces places)
{
  const Part *part = self->part;

  if (part->has_rail)
    {
      places.x_from = fmax (places.x_from, part->rail_from);
      places.x_to = fmin (places.x_to, part->rail_to);
    }
  if (places.x_from <= places.x_to)
    g_array_append_val (self->places, places);
}

static bool
fits (const Finding *self, const BodyClear *clear)
{
  return !(2 * clear->half_width < self->extent.y) && !(clear->top - clear->bottom < self->part->height);
}

static BodyClear
clear_about (const Finding *self, const BodyProfile *profile, double from, double to)
{
  return body_profile_clear (profile, from - self->extent.x / 2, to + self->extent.x / 2);
}

/* What is clear over a stretch for its middle, above a wing that passes through there and beneath it: how many of them it fits in, the upper first. */
static size_t
rooms_about (const Finding *self, const BodyProfile *profile, double from, double to, BodyClear rooms[2])
{
  const BodyClear clear = clear_about (self, profile, from, to);
  const double width = fmax (2 * clear.half_width, self->extent.y);
  WingThrough through;
  size_t count = 0;

  if (isnan (clear.top)
      || !wings_through (self->aeroplane, self->part, (Point) { (from + to) / 2, 0 }, to - from + self->extent.x, width, &through))
    {
      rooms[0] = clear;
      return fits (self, &clear) ? 1 : 0;
    }
  rooms[count] = body_clear_above (clear, &through);
  count += fits (self, &rooms[count]) ? 1 : 0;
  rooms[count] = body_clear_beneath (clear, &through);
  return count + (fits (self, &rooms[count]) ? 1 : 0);
}

static void
add_clear (Finding *self, const BodyClear *clear, double from, double to)
{
  const Part *part = self->part;
  PartPlaces places = where_it_stands (part);

  places.room = self->room;
  places.x_from = from;
  places.x_to = to;
  if (!isnan (clear->half_width))
    {
      places.y_to = clear->half_width - self->extent.y / 2;
      places.y_from = -places.y_to;
    }
  if (!isnan (clear->top))
    {
      places.z_from = clear->bottom + part->height / 2;
      places.z_to = clear->top - part->height / 2;
    }
  add (self, places);
}

/* A stretch in which it fits everywhere; one that rises so much that no height serves all of it is halved. */
static void
add_stretch (Finding *self, const BodyProfile *profile, double from, double to)
{
  BodyClear rooms[2];
  const size_t count = rooms_about (self, profile, from, to, rooms);

  if (count == 0 && to - from >= self->step)
    {
      add_stretch (self, profile, from, (from + to) / 2);
      add_stretch (self, profile, (from + to) / 2, to);
    }
  for (size_t i = 0; i < count; i++)
    add_clear (self, &rooms[i], from, to);
}

/* From where to where along a bay it fits, once or several times. */
static void
find_in_bay (Finding *self, const Body *body, double from, double to)
{
  BodyProfile *profile = body_profile_new (body);
  const double first = from + self->extent.x / 2, last = to - self->extent.x / 2;
  double begun = NAN;

  self->step = step_over (first, last);
  for (double x = first; x <= last + self->step / 2; x += self->step)
    {
      const double at = fmin (x, last);
      BodyClear rooms[2];
      const bool is_in = rooms_about (self, profile, at, at, rooms) > 0;
      if (is_in && isnan (begun))
        begun = at;
      else if (!is_in && !isnan (begun))
        {
          add_stretch (self, profile, begun, at - self->step);
          begun = NAN;
        }
    }
  if (!isnan (begun))
    add_stretch (self, profile, begun, last);
  body_profile_free (profile);
}

/* A part as a surface has it: along the chord, along the span and through its thickness. A fin stands upright, its outline's stations are
 * heights above its foot, and a part in it is within the thickness across. */
typedef struct { double station, span, depth; } SeenInSurface;

static SeenInSurface
seen_in (const Finding *self, const Surface *surface)
{
  const Part *part = self->part;

  if (surface_is_horizontal (surface))
    return (SeenInSurface) { part->y, self->extent.y, part->height };
  return (SeenInSurface) { part->z - surface->z, part->height, self->extent.y };
}

static bool
holds (const Surface *surface, const SeenInSurface *seen, double x, double length)
{
  if (!surface_is_horizontal (surface) && seen->station < seen->span / 2)      /* its lower end is below the foot */
    return false;
  /* Of a thickness that nobody has given nothing is held against it; beyond the tip there is none. */
  return isnan (surface->thickness) || wing_depth_over (surface, (Point) { x, seen->station }, length, seen->span) >= seen->depth;
}

static void
find_in_surface (Finding *self, const Surface *surface)
{
  const SeenInSurface seen = seen_in (self, surface);
  PartPlaces places = where_it_stands (self->part);
  StationCut cut;
  bool found = false;

  if (planform_cut (surface->outline, surface_sides (surface), fabs (seen.station), &cut) != CORE_OK)
    return;
  places.room = self->room;
  if (!surface_is_horizontal (surface))
    places.y_from = places.y_to = 0;
  self->step = step_over (cut.leading_x, cut.trailing_x);
  for (double x = cut.leading_x + self->extent.x / 2; x <= cut.trailing_x - self->extent.x / 2; x += self->step)
    {
      if (!holds (surface, &seen, x, self->extent.x))
        continue;
      if (!found)
        places.x_from = x;
      places.x_to = x;
      found = true;
    }
  if (found)
    add (self, places);
}

static void
find_in_room (Finding *self, const Aeroplane *aeroplane, const char *id)
{
  const Body *body;
  double from, to;

  self->room = aeroplane_find (aeroplane, id);
  if (self->room && self->room->kind == PIECE_SURFACE)
    find_in_surface (self, (const Surface *) self->room);
  else if (self->room && self->room->kind == PIECE_BAY && bay_inside (aeroplane, (const Bay *) self->room, &body, &from, &to))
    find_in_bay (self, body, from, to);
}

GArray *
part_places (const Aeroplane *aeroplane, const Part *part)
{
  Finding finding = { .aeroplane = aeroplane, .part = part, .extent = part_extent (part), .places = g_array_new (FALSE, FALSE, sizeof (PartPlaces)) };
  g_auto (GStrv) ids = part->bays ? g_strsplit (part->bays, " ", -1) : NULL;
  PartPlaces places = where_it_stands (part);

  for (char **id = ids; id && *id; id++)
    if (**id)
      find_in_room (&finding, aeroplane, *id);
  if (ids)
    return finding.places;
  if (part->has_rail)
    {
      places.x_from = part->rail_from;
      places.x_to = part->rail_to;
    }
  g_array_append_val (finding.places, places);
  return finding.places;
}

static bool
room_is_there (const Aeroplane *aeroplane, const char *id)
{
  const Piece *room = aeroplane_find (aeroplane, id);
  const Body *body;
  double from, to;

  return room && (room->kind == PIECE_SURFACE || (room->kind == PIECE_BAY && bay_reach (aeroplane, (const Bay *) room, &body, &from, &to)));
}

bool
part_has_room (const Aeroplane *aeroplane, const Part *part)
{
  g_auto (GStrv) ids = part->bays ? g_strsplit (part->bays, " ", -1) : NULL;

  for (char **id = ids; id && *id; id++)
    if (room_is_there (aeroplane, *id))
      return true;
  return !ids;
}

static bool
has_places (const Aeroplane *aeroplane, const Part *part)
{
  g_autoptr (GArray) places = part_places (aeroplane, part);

  return places->len > 0;
}

PlacesWhy
part_places_why (const Aeroplane *aeroplane, const Part *part)
{
  Part *loose = (Part *) piece_dup (&part->piece);
  bool fits;

  loose->has_rail = false;
  fits = has_places (aeroplane, loose);
  piece_unref (&loose->piece);
  if (has_places (aeroplane, part))
    return PLACES_THERE;
  return !part_has_room (aeroplane, part) ? PLACES_NO_ROOM : fits ? PLACES_OFF_RAIL : PLACES_TOO_LARGE;
}
