#include "figures/arranging-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/changes.h"
#include "document/part-class.h"
#include "figures/lead-need.h"
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/part-places.h"

const char *
arranging_why_text (ArrangingWhy why)
{
  switch (why)
    {
    case ARRANGING_NOTHING_MOVES:
      return _("No part aboard may be moved: give one a rail, or bays in which it may be.");
    case ARRANGING_NO_TARGET:
      return _("There is no place to balance at yet: draw wing and tail, and say what things weigh.");
    case ARRANGING_CAN:
      break;
    }
  return NULL;
}

const char *
arranging_fault_text (CoreStatus status)
{
  if (status == CORE_TOO_MANY)
    return _("There are too many parts or leads to arrange at once: let fewer of them move.");
  if (status == CORE_CANCELLED)
    return _("The search was stopped.");
  return _("A mass, a size or a place is none to reckon with: look at the parts' figures.");
}

ArrangeCase *
arranging_case (Arranging *self)
{
  return &self->wanted;
}

const Part *const *
arranging_parts (const Arranging *self)
{
  return (const Part *const *) self->parts->pdata;
}

size_t
arranging_movable (const Arranging *self)
{
  return self->movable;
}

size_t
arranging_lead_count (const Arranging *self)
{
  return self->legs->len;
}

static const AskedLeg *
leg_of (const Arranging *self, size_t lead)
{
  return &g_array_index (self->legs, AskedLeg, lead);
}

char *
arranging_lead_title (const Arranging *self, size_t lead)
{
  return lead_leg_title (self->aeroplane, leg_of (self, lead)->lead, leg_of (self, lead)->leg);
}

double
arranging_lead_length (const Arranging *self, size_t lead)
{
  return lead_leg_length (leg_of (self, lead)->lead, leg_of (self, lead)->leg);
}

/* For a way so long, m, of the question. */
static double
needed_for (const Arranging *self, size_t lead, double way)
{
  const AskedLeg *leg = leg_of (self, lead);

  return lead_needed_for (self->aeroplane, leg->lead, leg->leg, way * 1e3 - leg->beyond_mm);
}

double
arranging_lead_needed (const Arranging *self, const Arrangement *found, size_t lead)
{
  return needed_for (self, lead, found->needed[lead]);
}

static double
to_hundredth (double metres)
{
  return round (metres * 1e5) / 100;
}

/* Down to a hundredth: it still has the room it had. */
static double
no_larger (double mm)
{
  return floor (mm * 100) / 100;
}

/* To the next tenth of a gram; a block where it has room, else what is usual of its class. */
static Part *
ballast_part (const Arranging *self, const Arrangement *found, const char *id)
{
  Part *ballast = part_class_part ("ballast");
  BallastPlace place;

  g_free (ballast->piece.id);
  ballast->piece.id = g_strdup (id);
  ballast->mass = ceil (found->ballast * 1e4) / 10;
  ballast->x = found->ballast_x * 1e3;
  if (!arranging_ballast_place (self, found, &place))
    return ballast;
  ballast->y = place.y_mm;
  ballast->z = place.z_mm;
  ballast->length = no_larger (place.length_mm);
  ballast->width = no_larger (place.width_mm);
  ballast->height = no_larger (place.height_mm);
  return ballast;
}

/* Of those that move as one the first: by rounding its place alone they stay beside one another. */
static guint
first_of_tie (const Arranging *self, guint part)
{
  const ArrangePart *asked = self->wanted.parts;

  for (guint i = 0; i < part && asked[part].tie; i++)
    if (asked[i].tie == asked[part].tie)
      return i;
  return part;
}

Aeroplane *
arranging_applied_bare (const Arranging *self, const Arrangement *found)
{
  Aeroplane *now = aeroplane_ref (self->aeroplane);

  for (guint i = 0; i < self->movable; i++)
    {
      const guint first = first_of_tie (self, i);
      const Part *part = g_ptr_array_index (self->parts, i), *lead = g_ptr_array_index (self->parts, first);
      const ArrangePlace at = found->places[first];
      Aeroplane *last = now;

      now = change_part_place (last, part->piece.id, to_hundredth (at.x) + part->x - lead->x, to_hundredth (at.y) + part->y - lead->y,
                               to_hundredth (at.z) + part->z - lead->z);
      aeroplane_unref (last);
    }
  return now;
}

Aeroplane *
arranging_applied (const Arranging *self, const Arrangement *found)
{
  g_autoptr (Aeroplane) bare = arranging_applied_bare (self, found);
  g_autofree char *id = aeroplane_free_id (bare, "ballast");

  if (found->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G)
    return g_steal_pointer (&bare);
  return aeroplane_with_added (bare, &ballast_part (self, found, id)->piece);
}

static const char *
part_called (const Arranging *self, size_t part)
{
  return piece_name (&((const Part *) g_ptr_array_index (self->parts, part))->piece);
}

/* It has not one place. */
static char *
text_no_place (const Arranging *self, const Part *part)
{
  const char *name = piece_name (&part->piece);

  switch (part_places_why (self->aeroplane, part))
    {
    case PLACES_NO_ROOM:
      return g_strdup_printf (_("None of the bays in which “%s” may be is there: give it others, or put their formers in."), name);
    case PLACES_OFF_RAIL:
      return g_strdup_printf (_("The rail of “%s” leads to no place in its bays where it fits: lengthen the rail, or give it other bays."), name);
    default:
      return g_strdup_printf (_("“%s” fits in none of its bays: it is too long, too wide or too high for each."), name);
    }
}

static char *
text_no_room (const Arranging *self, const ArrangeLimit *limit, Units units)
{
  const char *name = part_called (self, limit->parts[0]);
  g_autofree char *length = units_length (units, limit->needed * 1e3);

  if (!isfinite (limit->needed))
    return text_no_place (self, g_ptr_array_index (self->parts, limit->parts[0]));
  if (limit->axis == 0)
    return g_strdup_printf (_("“%s” is %s too long for where it may be."), name, length);
  if (limit->axis == 1)
    return g_strdup_printf (_("“%s” is %s too wide for where it may be."), name, length);
  return g_strdup_printf (_("“%s” is %s too high for where it may be."), name, length);
}

static char *
text_lead (const Arranging *self, const ArrangeLimit *limit, Units units)
{
  g_autofree char *had = units_length (units, arranging_lead_length (self, limit->lead));
  g_autofree char *needed = units_length (units, needed_for (self, limit->lead, limit->needed));
  g_autofree char *from = units_length (units, limit->nearest[0].x * 1e3), *to = units_length (units, limit->nearest[1].x * 1e3);
  const char *one = part_called (self, limit->parts[0]), *other = part_called (self, limit->parts[1]);
  g_autofree char *title = arranging_lead_title (self, limit->lead);

  if (lead_is_joined (leg_of (self, limit->lead)->lead))
    return g_strdup_printf (_("%s: that leg is %s long and needs %s at least."), title, had, needed);
  if (limit->alone)
    return g_strdup_printf (_("The lead from “%s” to “%s” is %s long and needs %s at least: nearest to one another they stand at %s and %s."),
                            one, other, had, needed, from, to);
  return g_strdup_printf (_("The lead from “%s” to “%s” is %s long; with all else that is wanted it needs %s."), one, other, had, needed);
}

static char *
names_of (const Arranging *self, const ArrangeLimit *limit)
{
  g_autoptr (GString) names = g_string_new (NULL);

  for (size_t i = 0; i < limit->part_count; i++)
    /* TRANSLATORS: one name in a list of parts */
    g_string_append_printf (names, i ? _(", “%s”") : _("“%s”"), part_called (self, limit->parts[i]));
  return g_string_free (g_steal_pointer (&names), FALSE);
}

static char *
text_too_full (const Arranging *self, const ArrangeLimit *limit, Units units)
{
  g_autofree char *names = names_of (self, limit), *needed = units_length (units, limit->needed * 1e3);
  g_autofree char *had = units_length (units, limit->had * 1e3);
  const Piece *room = limit->room < self->rooms->len ? g_ptr_array_index (self->rooms, limit->room) : NULL;

  if (room && isfinite (limit->needed))
    return g_strdup_printf (_("%s do not go into “%s” together: in a row they need %s, and it is %s long."), names, room->id, needed, had);
  if (room)
    return g_strdup_printf (_("%s do not go into “%s” together."), names, room->id);
  return g_strdup_printf (_("%s cannot stand apart where they may be."), names);
}

static char *
text_band (const ArrangeLimit *limit, Units units)
{
  g_autofree char *needed = units_length (units, limit->needed * 1e3), *had = units_length (units, limit->had * 1e3);

  return g_strdup_printf (_("The balance point comes to %s aft of the datum at best, the limit is at %s, and no ballast makes up for it: "
                            "draw the nose further forward, or move the wing."), needed, had);
}

static char *
text_way (const Arranging *self, const ArrangeLimit *limit, Units units)
{
  g_autofree char *title = NULL, *had = NULL, *needed = NULL;

  if (limit->lead == (size_t) ARRANGE_NONE)
    return g_strdup (_("In all that was tried a lead whose ends stay does not reach any more, for its joint goes along with the parts: lengthen "
                       "it, or set its joint by hand."));
  title = arranging_lead_title (self, limit->lead);
  had = units_length (units, arranging_lead_length (self, limit->lead));
  needed = units_length (units, needed_for (self, limit->lead, limit->needed));
  return g_strdup_printf (_("%s: by the way it takes it is too short in all that was tried. It is %s long; where it came nearest it needs %s."),
                          title, had, needed);
}

static char *
text_tied (const Arranging *self, const ArrangeLimit *limit)
{
  g_autofree char *names = names_of (self, limit);

  return g_strdup_printf (_("%s are one group, and nowhere is each of them where it may be: give them bays in common, or take the group apart."),
                          names);
}

char *
arranging_limit_text (const Arranging *self, const ArrangeLimit *limit, Units units)
{
  switch (limit->kind)
    {
    case ARRANGE_NO_ROOM:        return text_no_room (self, limit, units);
    case ARRANGE_LEAD_TOO_SHORT: return text_lead (self, limit, units);
    case ARRANGE_TOO_FULL:       return text_too_full (self, limit, units);
    case ARRANGE_BAND:           return text_band (limit, units);
    case ARRANGE_TIED:           return text_tied (self, limit);
    case ARRANGE_LEAD_WAY:       return text_way (self, limit, units);
    }
  return NULL;
}
