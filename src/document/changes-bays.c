#include "document/changes-private.h"
#include <string.h>

static bool
has_former (const Aeroplane *self, const char *name)
{
  for (size_t b = 0; b < aeroplane_count (self, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (self, b)->former_count; i++)
      if (g_strcmp0 (aeroplane_body (self, b)->formers[i].name, name) == 0)
        return true;
  return false;
}

static bool
formers_bound (const Aeroplane *self, const char *from, const char *to)
{
  return from && to && strcmp (from, to) != 0 && has_former (self, from) && has_former (self, to);
}

static const Bay *
bay_by_id (const Aeroplane *self, const char *id)
{
  const Piece *piece = aeroplane_find (self, id);

  return piece && piece->kind == PIECE_BAY ? (const Bay *) piece : NULL;
}

/* The old one is given back. */
static void
go_on_with (Aeroplane **self, Aeroplane *next)
{
  aeroplane_unref (*self);
  *self = next;
}

/* The words of a list parted by blanks, one put in the place of another, or taken out (NULL); NULL when none is left. */
static char *
words_with (const char *words, const char *word, const char *in_its_place)
{
  g_auto (GStrv) all = g_strsplit (words ? words : "", " ", -1);
  g_autoptr (GPtrArray) left = g_ptr_array_new ();

  for (char **one = all; *one; one++)
    if (**one && strcmp (*one, word) != 0)
      g_ptr_array_add (left, *one);
    else if (**one && in_its_place)
      g_ptr_array_add (left, (char *) in_its_place);
  if (left->len == 0)
    return NULL;
  g_ptr_array_add (left, NULL);
  return g_strjoinv (" ", (char **) left->pdata);
}

static Aeroplane *
with_bays_of_part (const Aeroplane *self, const Part *part, char *takes)
{
  Part *next = (Part *) piece_dup (&part->piece);

  g_free (next->bays);
  next->bays = takes;
  return changed_to (self, &part->piece, &next->piece);
}

/* Every part's list with one word in the place of another; `takes` is given back. */
static Aeroplane *
parts_renaming (Aeroplane *takes, const char *word, const char *in_its_place)
{
  for (size_t i = 0; i < aeroplane_count (takes, PIECE_PART); i++)
    if (part_may_be_in (aeroplane_part (takes, i), word))
      go_on_with (&takes, with_bays_of_part (takes, aeroplane_part (takes, i), words_with (aeroplane_part (takes, i)->bays, word, in_its_place)));
  return takes;
}

char *
bay_name_from (const Aeroplane *self, const char *typed, const char *own)
{
  g_autofree char *trimmed = g_strstrip (g_strdup (typed));
  g_auto (GStrv) words = g_strsplit_set (trimmed, " \t\n\r", -1);
  g_autofree char *name = g_strjoinv ("-", words);

  if (*name == '\0' || (g_strcmp0 (name, own) != 0 && aeroplane_find (self, name)))
    return NULL;
  return g_steal_pointer (&name);
}

Aeroplane *
change_bay_added (const Aeroplane *self, const char *from_former, const char *to_former, char **id)
{
  g_autofree char *name = aeroplane_free_id (self, "bay");

  if (!formers_bound (self, from_former, to_former))
    return NULL;
  Aeroplane *made = aeroplane_with_added (self, &bay_new (name, from_former, to_former)->piece);
  if (id)
    *id = g_steal_pointer (&name);
  return made;
}

Aeroplane *
change_bay_renamed (const Aeroplane *self, const char *id, const char *name)
{
  const Bay *old = bay_by_id (self, id);
  g_autofree char *settled = old ? bay_name_from (self, name, id) : NULL;

  if (!settled)
    return NULL;
  if (strcmp (settled, id) == 0)
    return aeroplane_ref (self);
  Bay *next = (Bay *) piece_dup (&old->piece);
  g_autofree char *before = g_strdup (id);
  g_free (next->piece.id);
  next->piece.id = g_strdup (settled);
  return parts_renaming (changed_to (self, &old->piece, &next->piece), before, settled);
}

Aeroplane *
change_bay_formers (const Aeroplane *self, const char *id, const char *from_former, const char *to_former)
{
  const Bay *old = bay_by_id (self, id);

  if (!old || !formers_bound (self, from_former, to_former))
    return NULL;
  Bay *next = (Bay *) piece_dup (&old->piece);
  g_free (next->from_former);
  g_free (next->to_former);
  next->from_former = g_strdup (from_former);
  next->to_former = g_strdup (to_former);
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_bay_removed (const Aeroplane *self, const char *id)
{
  const Bay *old = bay_by_id (self, id);
  g_autofree char *name = g_strdup (id);

  return old ? parts_renaming (aeroplane_without (self, &old->piece), name, NULL) : NULL;
}

bool
part_may_be_in (const Part *part, const char *room)
{
  g_auto (GStrv) rooms = part->bays ? g_strsplit (part->bays, " ", -1) : NULL;

  return rooms && room && *room && g_strv_contains ((const char *const *) rooms, room);
}

Aeroplane *
change_part_room (const Aeroplane *self, const char *id, const char *room, bool may)
{
  const Part *part = aeroplane_part_by_id (self, id);

  if (!part || !room || !*room)
    return NULL;
  if (part_may_be_in (part, room) == may)
    return aeroplane_ref (self);
  if (!may)
    return with_bays_of_part (self, part, words_with (part->bays, room, NULL));
  return with_bays_of_part (self, part, part->bays && *part->bays ? g_strconcat (part->bays, " ", room, NULL) : g_strdup (room));
}
