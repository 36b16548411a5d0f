#include "figures/arranging.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "figures/arranging-private.h"
#include "figures/margin-words.h"
#include "figures/part-places.h"

static const double metre = ARRANGING_METRE, kilogram = 1e-3;     /* of a mm, of a g */
static const double CLEARANCE_MM = 1, SECONDS = 20;
/* Numbers of rooms that no two parts share: rails, and where a part stands. */
enum { OWN_ROOM = 100000 };

static size_t
room_number (Arranging *self, const Piece *room)
{
  guint at;

  if (!room)
    return OWN_ROOM + self->parts->len;
  if (!g_ptr_array_find (self->rooms, room, &at))
    {
      at = self->rooms->len;
      g_ptr_array_add (self->rooms, (Piece *) room);
    }
  return at;
}

/* In the order in which they come; each part's ranges stand together. */
static void
ask_part (Arranging *self, const Part *part, GArray *places)
{
  const Point extent = part_extent (part);
  const ArrangePart asked = { .mass = part->mass * kilogram, .length = extent.x * metre, .width = extent.y * metre,
                              .height = part->height * metre, .range_count = places->len,
                              .now = { part->x * metre, part->y * metre, part->z * metre }, .tie = arranging_tie (self, part) };

  for (guint i = 0; i < places->len; i++)
    {
      const PartPlaces *at = &g_array_index (places, PartPlaces, i);
      const ArrangeRange range = { at->x_from * metre, at->x_to * metre, at->y_from * metre, at->y_to * metre, at->z_from * metre,
                                   at->z_to * metre, room_number (self, at->room) };
      g_array_append_val (self->ranges, range);
    }
  g_array_append_val (self->asked, asked);
  g_ptr_array_add (self->parts, (Part *) part);
}

void
arranging_ask_fixed (Arranging *self, const Part *part)
{
  const PartPlaces at = { NULL, part->x, part->x, part->y, part->y, part->z, part->z };
  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof at);

  g_array_append_val (places, at);
  ask_part (self, part, places);
}

static void
ask_movable (Arranging *self)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self->aeroplane, i);
      g_autoptr (GArray) places = NULL;

      if (!part->aboard || !arranging_may_move (self, part))
        continue;
      places = arranging_places (self, part);
      ask_part (self, part, places);
    }
  self->movable = self->parts->len;
}

/* Whether a part that stands still is anywhere near a place of one that moves. */
static bool
is_in_the_way (const Arranging *self, const Part *part)
{
  const Point extent = part_extent (part);
  const ArrangeRange *range = (const ArrangeRange *) (void *) self->ranges->data;

  for (guint i = 0; i < self->movable; i++)
    {
      const ArrangePart *other = &g_array_index (self->asked, ArrangePart, i);
      for (size_t r = 0; r < other->range_count; r++, range++)
        if (part->x * metre >= range->x_from - (other->length + extent.x * metre) / 2 - CLEARANCE_MM * metre
            && part->x * metre <= range->x_to + (other->length + extent.x * metre) / 2 + CLEARANCE_MM * metre)
          return true;
    }
  return false;
}

static void
ask_obstacles (Arranging *self)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self->aeroplane, i);

      if (part->aboard && !arranging_may_move (self, part) && part_stands_clear (part) && is_in_the_way (self, part))
        arranging_ask_fixed (self, part);
    }
}

/* All else aboard: what weighs, less what is asked. */
static void
ask_balance (Arranging *self, const Figures *figures)
{
  const BalanceFigures *balance = &figures->balance;
  double mass = figures->mass.total_g, moment = mass * figures->mass.x_mm;

  for (guint i = 0; i < self->parts->len; i++)
    {
      const Part *part = g_ptr_array_index (self->parts, i);
      mass -= part->mass;
      moment -= part->mass * part->x;
    }
  self->wanted.other_mass = fmax (mass, 0) * kilogram;
  self->wanted.other_x = mass > 1e-9 ? moment / mass * metre : 0;
  self->wanted.forward_limit_x = balance->forward_limit_x_mm * metre;
  self->wanted.aft_limit_x = balance->aft_limit_x_mm * metre;
  self->aim = margin_advised_phrase (figures);
  self->wanted.aim_x = balance->advised_x_mm * metre;
  self->wanted.nose_x = figures->nose_x_mm * metre;
  self->wanted.tail_x = figures->tail_x_mm * metre;
}

static void
close_case (Arranging *self)
{
  const ArrangeRange *range = (const ArrangeRange *) (void *) self->ranges->data;

  for (guint i = 0; i < self->asked->len; i++)
    {
      ArrangePart *part = &g_array_index (self->asked, ArrangePart, i);
      part->ranges = range;
      range += part->range_count;
    }
  self->wanted.parts = (const ArrangePart *) (void *) self->asked->data;
  self->wanted.part_count = self->asked->len;
  self->wanted.leads = (const ArrangeLead *) (void *) self->asked_leads->data;
  self->wanted.lead_count = self->asked_leads->len;
  self->wanted.clearance = CLEARANCE_MM * metre;
  self->wanted.seconds = SECONDS;
}

ArrangingWhy
arranging_new (const Figures *figures, const char *const *still, Arranging **made)
{
  g_autoptr (Arranging) self = g_new0 (Arranging, 1);

  self->aeroplane = aeroplane_ref (figures->aeroplane);
  self->routed = self->aeroplane;
  self->parts = g_ptr_array_new ();
  self->rooms = g_ptr_array_new ();
  self->legs = g_array_new (FALSE, FALSE, sizeof (AskedLeg));
  self->vias = g_ptr_array_new_with_free_func (g_free);
  self->asked = g_array_new (FALSE, FALSE, sizeof (ArrangePart));
  self->ranges = g_array_new (FALSE, FALSE, sizeof (ArrangeRange));
  self->asked_leads = g_array_new (FALSE, FALSE, sizeof (ArrangeLead));
  if (isnan (figures->balance.advised_x_mm) || isnan (figures->mass.x_mm))
    return ARRANGING_NO_TARGET;
  self->still = still;
  ask_movable (self);
  if (self->movable == 0)
    return ARRANGING_NOTHING_MOVES;
  ask_obstacles (self);
  arranging_ask_leads (self);
  ask_balance (self, figures);
  close_case (self);
  self->still = NULL;
  *made = g_steal_pointer (&self);
  return ARRANGING_CAN;
}

void
arranging_free (Arranging *self)
{
  if (!self)
    return;
  g_ptr_array_unref (self->parts);
  g_ptr_array_unref (self->rooms);
  g_array_unref (self->legs);
  g_ptr_array_unref (self->vias);
  g_array_unref (self->asked);
  g_array_unref (self->ranges);
  g_array_unref (self->asked_leads);
  aeroplane_unref (self->aeroplane);
  g_free (self->aim);
  g_free (self);
}
