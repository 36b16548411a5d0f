#include "figures/room-faults.h"

#include <math.h>
#include <string.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/lead-need.h"
#include "figures/nose-figures.h"
#include "figures/room-memory.h"
#include "figures/room-overlap.h"
#include "figures/wing-depth.h"
#include "figures/wing-through.h"

/* mm: less than that nobody measures at the bench. */
static const double TOLERANCE = 0.5;
static const size_t NO_BODY = (size_t) -1;

void
room_profiles_clear (RoomProfiles *self)
{
  piece_key_clear (&self->key);
  for (size_t i = 0; i < self->count; i++)
    body_profile_free (self->profiles[i]);
  g_clear_pointer (&self->profiles, g_free);
  self->count = 0;
}

void
room_profiles_update (RoomProfiles *self, const Aeroplane *aeroplane)
{
  if (piece_key_matches (&self->key, aeroplane))
    return;
  room_profiles_clear (self);
  self->key.kinds = 1u << PIECE_BODY;
  piece_key_take (&self->key, aeroplane);
  self->count = aeroplane_count (aeroplane, PIECE_BODY);
  self->profiles = g_new (BodyProfile *, self->count);
  for (size_t i = 0; i < self->count; i++)
    self->profiles[i] = body_profile_new (aeroplane_body (aeroplane, i));
}

size_t
room_body_of (const RoomProfiles *self, const Part *part)
{
  for (size_t i = 0; i < self->count; i++)
    {
      double from, to;
      const BodyClear at = body_profile_clear (self->profiles[i], part->x, part->x);

      if (body_profile_ends (self->profiles[i], &from, &to) && part->x >= from && part->x <= to
          && !(fabs (part->y) > at.half_width) && !(part->z > at.top) && !(part->z < at.bottom))
        return i;
    }
  return NO_BODY;
}

static void
add (GArray *faults, RoomFault fault)
{
  if (fault.lacking_mm > TOLERANCE)
    g_array_append_val (faults, fault);
}

static void
add_across (GArray *faults, RoomFault fault, const BodyClear *clear)
{
  const double width = part_extent (fault.part).y, beyond = fabs (fault.part->y) + width / 2 - clear->half_width;

  fault.kind = width - 2 * clear->half_width > TOLERANCE ? ROOM_TOO_WIDE : ROOM_THROUGH_SIDE;
  fault.lacking_mm = fault.kind == ROOM_TOO_WIDE ? width - 2 * clear->half_width : beyond;
  fault.clear_mm = fmax (2 * clear->half_width, 0);
  fault.edges = fault.part->y > 0 ? EDGE_STARBOARD : EDGE_PORT;
  if (fault.kind == ROOM_TOO_WIDE && width / 2 - fabs (fault.part->y) > clear->half_width)
    fault.edges = EDGE_PORT | EDGE_STARBOARD;
  add (faults, fault);
}

static void
add_in_height (GArray *faults, RoomFault fault, const BodyClear *clear)
{
  const Part *part = fault.part;
  const double above = part->z + part->height / 2 - clear->top, below = clear->bottom - (part->z - part->height / 2);
  const double room = clear->top - clear->bottom;

  fault.clear_mm = fmax (room, 0);
  fault.edges = (above > TOLERANCE ? EDGE_TOP : 0) | (below > TOLERANCE ? EDGE_BOTTOM : 0);
  fault.kind = part->height - room > TOLERANCE ? ROOM_TOO_HIGH : above > below ? ROOM_THROUGH_TOP : ROOM_THROUGH_FLOOR;
  fault.lacking_mm = fault.kind == ROOM_TOO_HIGH ? part->height - room : fmax (above, below);
  add (faults, fault);
}

/* Out of an end; whether it is. What its middle is beyond still sticks out, as long as it stands on the centre line. */
static bool
add_beyond_end (GArray *faults, RoomFault fault, const BodyProfile *profile)
{
  const double half = part_extent (fault.part).x / 2;
  double from, to;

  if (!body_profile_ends (profile, &from, &to))
    return false;
  const double ahead = from - (fault.part->x - half), behind = fault.part->x + half - to;
  const bool is_out = fmax (ahead, behind) > TOLERANCE;
  fault.kind = ahead > behind ? ROOM_OUT_OF_NOSE : ROOM_OUT_OF_TAIL;
  fault.edges = ahead > behind ? EDGE_FORE : EDGE_AFT;
  fault.lacking_mm = fmax (ahead, behind);
  if (fault.kind != ROOM_OUT_OF_NOSE || !part_is_a (fault.part, "motor"))
    add (faults, fault);
  return is_out;
}

/* Where a cowl is among the parts it is the room there, for all that it reaches over; whether one does. */
static bool
widen_by_cowl (const Aeroplane *aeroplane, const Part *part, double half_length, BodyClear *clear)
{
  bool found = false;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *cowl = aeroplane_part (aeroplane, i);
      if (!cowl->aboard || cowl == part || !part_is_a (cowl, "cowl"))
        continue;
      const Point extent = part_extent (cowl);
      if (fabs (part->x - cowl->x) + half_length > extent.x / 2 + TOLERANCE)
        continue;
      found = true;
      clear->half_width = fmax (clear->half_width, extent.y / 2 - fabs (cowl->y));
      if (!(cowl->height > 0))
        continue;
      clear->top = fmax (clear->top, cowl->z + cowl->height / 2);
      clear->bottom = fmin (clear->bottom, cowl->z - cowl->height / 2);
    }
  return found;
}

static void
add_within (GArray *faults, RoomFault fault, const BodyClear *clear)
{
  add_across (faults, fault, clear);
  add_in_height (faults, fault, clear);
}

/* Which way out of it is shorter, of those that lead to where the body has room. */
static void
add_in_wing (GArray *faults, RoomFault fault, const BodyClear *clear, const WingThrough *through)
{
  const Part *part = fault.part;
  const BodyClear above = body_clear_above (*clear, through), beneath = body_clear_beneath (*clear, through);
  const double up = through->top - (part->z - part->height / 2), down = part->z + part->height / 2 - through->bottom;
  const bool fits_above = !(above.top - above.bottom < part->height), fits_beneath = !(beneath.top - beneath.bottom < part->height);
  const bool goes_up = fits_above && (!fits_beneath || up < down), nowhere = !fits_above && !fits_beneath;
  const BodyClear *room = goes_up || (nowhere && up < down) ? &above : &beneath;

  fault.in = &through->surface->piece;
  fault.kind = nowhere ? ROOM_IN_WING : goes_up ? ROOM_ON_WING : ROOM_UNDER_WING;
  fault.edges = nowhere ? EDGE_TOP | EDGE_BOTTOM : goes_up ? EDGE_BOTTOM : EDGE_TOP;
  fault.lacking_mm = nowhere ? fmin (up, down) : goes_up ? up : down;
  fault.clear_mm = fmax (room->top - room->bottom, 0);
  if (fmin (up, down) > TOLERANCE)
    add (faults, fault);
}

/* Where the body is not drawn from the side, nothing is known of heights. */
static void
find_wings_through (GArray *faults, const Aeroplane *aeroplane, RoomFault fault, const BodyClear *clear)
{
  const Part *part = fault.part;
  const Point extent = part_extent (part);
  WingThrough through;

  if (!isnan (clear->top) && wings_through (aeroplane, part, (Point) { part->x, part->y }, extent.x, extent.y, &through))
    add_in_wing (faults, fault, clear, &through);
}

static void
find_in_body (GArray *faults, const RoomProfiles *profiles, const Aeroplane *aeroplane, const Part *part, size_t number)
{
  const double half = part_extent (part).x / 2;
  const RoomFault fault = { .part = part, .in = &aeroplane_body (aeroplane, number)->piece, .clear_mm = NAN };

  if (add_beyond_end (faults, fault, profiles->profiles[number]))
    return;
  BodyClear clear = body_profile_clear (profiles->profiles[number], part->x - half, part->x + half);
  const guint before = faults->len;
  add_within (faults, fault, &clear);
  if (faults->len > before && widen_by_cowl (aeroplane, part, half, &clear))
    {
      g_array_set_size (faults, before);
      add_within (faults, fault, &clear);
    }
  find_wings_through (faults, aeroplane, fault, &clear);
}

/* The wing that a part outside the body lies in: the one it is fixed to, else of those that cover its place the nearest in height. */
static const Surface *
wing_of (const Aeroplane *aeroplane, const Part *part)
{
  const Surface *best = part->of ? aeroplane_surface_by_id (aeroplane, part->of) : NULL;
  double nearest = INFINITY;

  if (best)
    return best;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (aeroplane, i);
      const double away = fabs (part->z - surface->z - fabs (part->y) * tan (surface->dihedral * G_PI / 180));

      if (surface_is_horizontal (surface) && away < nearest && wing_depth (surface, part->y, part->x) > 0)
        {
          best = surface;
          nearest = away;
        }
    }
  return best;
}

static void
find_in_wing (GArray *faults, const Aeroplane *aeroplane, const Part *part)
{
  const Surface *wing = wing_of (aeroplane, part);
  const Point extent = part_extent (part);
  const unsigned edges = EDGE_FORE | EDGE_AFT | EDGE_PORT | EDGE_STARBOARD | EDGE_TOP | EDGE_BOTTOM;

  if (!part_is_a (part, "servo") || !wing || !surface_is_horizontal (wing))
    return;
  const double depth = wing_depth_over (wing, (Point) { part->x, part->y }, extent.x, extent.y);
  add (faults, (RoomFault) { .kind = ROOM_WING_SHALLOW, .part = part, .in = &wing->piece, .edges = edges, .clear_mm = depth,
                             .lacking_mm = part->height - depth });
}

/* One that moves both ailerons lies in the middle of the wing. */
static bool
is_servo_of_wing (const Aeroplane *aeroplane, const Part *part, size_t body)
{
  const Point extent = part_extent (part);
  WingThrough through;

  return part_is_a (part, "servo") && aeroplane_body (aeroplane, body)->side_outline && wings_through (aeroplane, part, (Point) { part->x, part->y }, extent.x, extent.y, &through)
         && part->z > through.bottom && part->z < through.top;
}

static void
find_about_part (GArray *faults, const RoomProfiles *profiles, const Aeroplane *aeroplane, const Part *part)
{
  const size_t body = room_body_of (profiles, part);
  double from, to;

  if (body != NO_BODY && !is_servo_of_wing (aeroplane, part, body))
    find_in_body (faults, profiles, aeroplane, part, body);
  else if (profiles->count == 1 && !part->of && fabs (part->y) < part_extent (part).y / 2
           && body_profile_ends (profiles->profiles[0], &from, &to) && (part->x < from || part->x > to))
    add_beyond_end (faults, (RoomFault) { .part = part, .in = &aeroplane_body (aeroplane, 0)->piece, .clear_mm = NAN }, profiles->profiles[0]);
  else
    find_in_wing (faults, aeroplane, part);
}

/* Pulled off it with Ctrl held, put there by a figure, or left behind when the rail was shortened. */
static void
find_off_rail (GArray *faults, const Part *part)
{
  const double ahead = part->rail_from - part->x, behind = part->x - part->rail_to;

  if (part->has_rail)
    add (faults, (RoomFault) { .kind = ROOM_OFF_RAIL, .part = part, .edges = ahead > behind ? EDGE_FORE : EDGE_AFT, .clear_mm = NAN,
                               .lacking_mm = fmax (ahead, behind) });
}

static void
find_about_noses (GArray *faults, const RoomProfiles *profiles, const Aeroplane *aeroplane, const GPtrArray *parts)
{
  const BodyProfile *profile = profiles->count > 0 ? profiles->profiles[0] : NULL;
  NoseFigures nose;

  for (guint i = 0, motors = 0; i < parts->len && motors < NOSE_MOST; i++)
    {
      const Part *part = g_ptr_array_index (parts, i);
      if (!part_is_a (part, "motor"))
        continue;
      motors++;
      if (nose_figures_within (aeroplane, profile, part, &nose))
        add (faults, (RoomFault) { .kind = nose.out_mm > 0 ? ROOM_MOTOR_OUT : ROOM_MOTOR_SUNK, .part = part, .clear_mm = NAN,
                                   .lacking_mm = fabs (nose.out_mm) });
    }
}

/* One leg; a plain lead is told of by both its ends. */
static void
find_about_leg (GArray *faults, const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  const bool joined = lead_is_joined (lead);
  const Part *part = aeroplane_part_by_id (aeroplane, lead_leg_part (lead, leg)), *to = aeroplane_part_by_id (aeroplane, lead->to);
  const LeadNeed need = lead_need_of (aeroplane, lead, leg);

  if (part && part->aboard && to && to->aboard)
    add (faults, (RoomFault) { .kind = ROOM_LEAD_SHORT, .part = part, .other = joined ? NULL : to, .lead = lead, .lacking_mm = need.missing,
                               .clear_mm = NAN, .extension_mm = need.extension });
}

/* In the document's order. */
static void
find_about_parts (GArray *faults, RoomMemory *memory, const RoomProfiles *profiles, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);

  room_memory_begin (memory, aeroplane);
  for (size_t i = 0; i < count; i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);

      if (!room_memory_recall (memory, i, part, faults) && part->aboard && part_stands_clear (part))
        find_about_part (faults, profiles, aeroplane, part);
    }
  room_memory_keep (memory, faults);
}

GArray *
room_faults_again (RoomMemory *memory, const RoomProfiles *profiles, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);
  GArray *faults = g_array_new (FALSE, FALSE, sizeof (RoomFault));
  g_autoptr (GPtrArray) parts = g_ptr_array_new_full ((guint) count, NULL);

  find_about_parts (faults, memory, profiles, aeroplane);
  for (size_t i = 0; i < count; i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);

      if (part->aboard && part_stands_clear (part))
        g_ptr_array_add (parts, (Part *) part);
      if (part->aboard)
        find_off_rail (faults, part);
    }
  find_about_noses (faults, profiles, aeroplane, parts);
  room_overlaps_find (faults, parts, TOLERANCE);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      find_about_leg (faults, aeroplane, aeroplane_lead (aeroplane, i), leg);
  return faults;
}

GArray *
room_faults (const RoomProfiles *profiles, const Aeroplane *aeroplane)
{
  RoomMemory none = { .parts = NULL };
  GArray *faults = room_faults_again (&none, profiles, aeroplane);

  room_memory_clear (&none);
  return faults;
}
