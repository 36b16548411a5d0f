#include "figures/arranging-private.h"

#include "figures/part-places.h"

static bool
are_one_group (const Part *part, const Part *other)
{
  return part == other || (part->group && g_strcmp0 (part->group, other->group) == 0);
}

static bool
is_still (const Arranging *self, const Part *part)
{
  return self->still && part->piece.id && g_strv_contains (self->still, part->piece.id);
}

/* A group goes where one of it may go, and stays where one of it that might go is to stay. */
bool
arranging_may_move (const Arranging *self, const Part *part)
{
  bool movable = false;

  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *mate = aeroplane_part (self->aeroplane, i);

      if (!mate->aboard || !are_one_group (part, mate) || !part_is_movable (mate))
        continue;
      if (is_still (self, mate))
        return false;
      movable = true;
    }
  return movable;
}

/* The number of the first part of its group among all; 0: it has none. */
unsigned
arranging_tie (const Arranging *self, const Part *part)
{
  for (size_t i = 0; part->group && i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    if (aeroplane_part (self->aeroplane, i)->aboard && are_one_group (part, aeroplane_part (self->aeroplane, i)))
      return (unsigned) i + 1;
  return 0;
}

static bool
stands_within (const Part *part, const GArray *places)
{
  const double rounding = 0.01;

  for (guint i = 0; i < places->len; i++)
    {
      const PartPlaces *at = &g_array_index (places, PartPlaces, i);

      if (part->x >= at->x_from - rounding && part->x <= at->x_to + rounding && part->y >= at->y_from - rounding
          && part->y <= at->y_to + rounding && part->z >= at->z_from - rounding && part->z <= at->z_to + rounding)
        return true;
    }
  return false;
}

/* What is carried along keeps to the bay it is in; where it is in none it is wherever what carries it may be. */
static void
add_places_beside (const Arranging *self, const Part *part, const Part *mate, GArray *places)
{
  g_autoptr (GArray) its = part_places (self->aeroplane, mate);
  Part *boxed = (Part *) piece_dup (&part->piece);

  g_free (boxed->bays);
  boxed->bays = g_strdup (mate->bays);
  g_autoptr (GArray) own = mate->bays ? part_places (self->aeroplane, boxed) : NULL;
  if (own && stands_within (part, own))
    g_array_append_vals (places, own->data, own->len);
  else
    for (guint i = 0; i < its->len; i++)
      {
        PartPlaces at = g_array_index (its, PartPlaces, i);

        at.room = NULL;
        at.x_from += part->x - mate->x;
        at.x_to += part->x - mate->x;
        at.y_from += part->y - mate->y;
        at.y_to += part->y - mate->y;
        at.z_from += part->z - mate->z;
        at.z_to += part->z - mate->z;
        g_array_append_val (places, at);
      }
  piece_unref (&boxed->piece);
}

GArray *
arranging_places (const Arranging *self, const Part *part)
{
  GArray *places;

  if (part_is_movable (part))
    return part_places (self->aeroplane, part);
  places = g_array_new (FALSE, FALSE, sizeof (PartPlaces));
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART) && !places->len; i++)
    {
      const Part *mate = aeroplane_part (self->aeroplane, i);

      if (mate->aboard && are_one_group (part, mate) && part_is_movable (mate))
        add_places_beside (self, part, mate, places);
    }
  return places;
}
