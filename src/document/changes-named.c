#include "document/changes-private.h"
#include <limits.h>
#include <math.h>
#include <string.h>
#include "document/kept-follow.h"

/* A surface's ribs or a body's formers, and how many there are. */
static NamedPlace **
places_of (Piece *piece, size_t **count)
{
  if (piece->kind == PIECE_SURFACE)
    {
      *count = &((Surface *) piece)->rib_count;
      return &((Surface *) piece)->ribs;
    }
  *count = &((Body *) piece)->former_count;
  return &((Body *) piece)->formers;
}

static bool
has_places (const Piece *piece)
{
  return piece && (piece->kind == PIECE_SURFACE || piece->kind == PIECE_BODY);
}

/* The number that a name ends in, or -1: it has none, or there is no next one. */
static int
trailing_number (const char *name)
{
  size_t digits = name ? strlen (name) : 0;

  while (digits > 0 && g_ascii_isdigit (name[digits - 1]))
    digits--;
  const guint64 number = name && name[digits] ? g_ascii_strtoull (name + digits, NULL, 10) : INT_MAX;
  return number < INT_MAX ? (int) number : -1;
}

char *
named_place_next (const Piece *piece)
{
  size_t *count;
  NamedPlace *places = *places_of ((Piece *) piece, &count);
  const char *model = NULL;
  int most = 0;

  for (size_t i = 0; i < *count; i++)
    if (trailing_number (places[i].name) > most)
      {
        most = trailing_number (places[i].name);
        model = places[i].name;
      }
  if (!model)
    return g_strdup (piece->kind == PIECE_BODY ? "F1" : "R1");
  g_autofree char *head = g_strdup (model);
  for (size_t end = strlen (head); end > 0 && g_ascii_isdigit (head[end - 1]); end--)
    head[end - 1] = '\0';
  return g_strdup_printf ("%s%d", head, most + 1);
}

Aeroplane *
change_named_place_added (const Aeroplane *self, const char *id, double place)
{
  const Piece *old = aeroplane_find (self, id);
  size_t *count;

  if (!has_places (old) || !isfinite (place))
    return NULL;
  Piece *next = piece_dup (old);
  NamedPlace **places = places_of (next, &count);
  const NamedPlace added = { .name = named_place_next (old), .place = place };
  *places = g_renew (NamedPlace, *places, *count + 1);
  (*places)[(*count)++] = added;
  return changed_to (self, old, next);
}

/* A copy of the piece of that id, the caller's, whose rib or former `index` has that name; NULL when there is none. */
static Piece *
copy_with (const Aeroplane *self, const char *id, size_t index, const char *name)
{
  const Piece *old = aeroplane_find (self, id);
  size_t *count;

  if (!has_places (old))
    return NULL;
  const NamedPlace *places = *places_of ((Piece *) old, &count);
  return index < *count && g_strcmp0 (places[index].name, name) == 0 ? piece_dup (old) : NULL;
}

Aeroplane *
change_named_place_moved (const Aeroplane *self, const char *id, size_t index, const char *name, double place)
{
  Piece *next = isfinite (place) ? copy_with (self, id, index, name) : NULL;
  size_t *count;

  if (!next)
    return NULL;
  (*places_of (next, &count))[index].place = place;
  return changed_to (self, aeroplane_find (self, id), next);
}

Aeroplane *
change_named_place_removed (const Aeroplane *self, const char *id, size_t index, const char *name)
{
  Piece *next = copy_with (self, id, index, name);
  size_t *count;

  if (!next)
    return NULL;
  NamedPlace *places = *places_of (next, &count);
  g_free (places[index].name);
  memmove (places + index, places + index + 1, (*count - index - 1) * sizeof *places);
  (*count)--;
  kept_follow_removed (next, next->kind == PIECE_SURFACE ? INNER_RIB : INNER_FORMER, index);
  return changed_to (self, aeroplane_find (self, id), next);
}
