#include "figures/room-memory.h"

#include "document/part-class.h"

static void
release_part (gpointer part)
{
  if (part)
    piece_unref (part);
}

void
room_memory_clear (RoomMemory *self)
{
  piece_key_clear (&self->around);
  g_clear_pointer (&self->parts, g_ptr_array_unref);
  g_clear_pointer (&self->found, g_array_unref);
}

static bool
is_as_it_was_around (const RoomMemory *self, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);

  if (!self->parts || self->parts->len != count || !piece_key_matches (&self->around, aeroplane))
    return false;
  for (size_t i = 0; i < count; i++)
    {
      const Part *before = g_ptr_array_index (self->parts, i), *now = aeroplane_part (aeroplane, i);

      if (before != now && (part_is_a (before, "cowl") || part_is_a (now, "cowl")))
        return false;
    }
  return true;
}

void
room_memory_begin (RoomMemory *self, const Aeroplane *aeroplane)
{
  if (is_as_it_was_around (self, aeroplane))
    return;
  room_memory_clear (self);
  self->around.kinds = 1u << PIECE_SURFACE | 1u << PIECE_BODY;
  piece_key_take (&self->around, aeroplane);
  self->parts = g_ptr_array_new_with_free_func (release_part);
  g_ptr_array_set_size (self->parts, (int) aeroplane_count (aeroplane, PIECE_PART));
  self->found = g_array_new (FALSE, FALSE, sizeof (RoomFault));
}

bool
room_memory_recall (RoomMemory *self, size_t place, const Part *part, GArray *faults)
{
  gpointer *known = &g_ptr_array_index (self->parts, place);

  if (*known != part)
    {
      release_part (*known);
      *known = piece_ref (&part->piece);
      return false;
    }
  for (guint i = 0; i < self->found->len; i++)
    if (g_array_index (self->found, RoomFault, i).part == part)
      g_array_append_val (faults, g_array_index (self->found, RoomFault, i));
  return true;
}

void
room_memory_keep (RoomMemory *self, const GArray *faults)
{
  g_array_set_size (self->found, 0);
  if (faults->len > 0)
    g_array_append_vals (self->found, faults->data, faults->len);
}
