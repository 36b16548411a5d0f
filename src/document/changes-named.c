#include "document/changes-private.h"
#include <math.h>
#include <stdlib.h>
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

/* The number that a name ends in, or -1. */
static int
trailing_number (const char *name)
{
  size_t digits = name ? strlen (name) : 0;

  while (digits > 0 && g_ascii_isdigit (name[digits - 1]))
    digits--;
  return name && name[digits] && strlen (name + digits) < 6 ? atoi (name + digits) : -1;
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

Aeroplane *
change_named_place_moved (const Aeroplane *self, const char *id, const char *name, double place)
{
  const Piece *old = aeroplane_find (self, id);
  size_t *count;

  if (!has_places (old) || !isfinite (place))
    return NULL;
  Piece *next = piece_dup (old);
  NamedPlace *places = *places_of (next, &count);
  for (size_t i = 0; i < *count; i++)
    if (g_strcmp0 (places[i].name, name) == 0)
      {
        places[i].place = place;
        return changed_to (self, old, next);
      }
  piece_unref (next);
  return NULL;
}

Aeroplane *
change_named_place_removed (const Aeroplane *self, const char *id, const char *name)
{
  const Piece *old = aeroplane_find (self, id);
  size_t *count;

  if (!has_places (old))
    return NULL;
  Piece *next = piece_dup (old);
  NamedPlace *places = *places_of (next, &count);
  for (size_t i = 0; i < *count; i++)
    if (g_strcmp0 (places[i].name, name) == 0)
      {
        g_free (places[i].name);
        memmove (places + i, places + i + 1, (*count - i - 1) * sizeof *places);
        (*count)--;
        kept_follow_removed (next, next->kind == PIECE_SURFACE ? INNER_RIB : INNER_FORMER, i);
        return changed_to (self, old, next);
      }
  piece_unref (next);
  return NULL;
}
