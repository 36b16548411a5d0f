#include "document/catalogue-private.h"
#include <string.h>

/* There are several of these, told apart by what they do: "Servo, elevator". */
static bool
is_named_by_use (const char *class_name)
{
  static const char *const words[] = { "servo", "pushrod", "other", NULL };

  return class_name && g_strv_contains (words, class_name);
}

static bool
is_name_of_an_entry (const Catalogue *self, const char *name)
{
  for (size_t i = 0; i < catalogue_count (self); i++)
    if (strcmp (catalogue_entry (self, i)->name, name) == 0)
      return true;
  return false;
}

static void
set_text (char **text, const char *to)
{
  g_free (*text);
  *text = g_strdup (to);
}

Aeroplane *
catalogue_change_kind (const Catalogue *self, const Aeroplane *aeroplane, const char *part_id, const CatalogueEntry *entry)
{
  const Part *part = aeroplane_part_by_id (aeroplane, part_id);
  Part *next = part ? (Part *) piece_dup (&part->piece) : NULL;

  if (!next)
    return NULL;
  const bool lies = part->of && part->height < part->width && entry->height > entry->width;
  if (!part->name || !is_named_by_use (part->class_name) || is_name_of_an_entry (self, part->name))
    set_text (&next->name, entry->name);
  set_text (&next->class_name, entry->class_name);
  set_text (&next->kind, entry->id);
  next->mass = entry->mass;
  next->mass_sigma = entry->mass_sigma;
  next->length = entry->length;
  next->width = lies ? entry->height : entry->width;
  next->height = lies ? entry->width : entry->height;
  catalogue_entry_give (entry, next);
  return aeroplane_with_replaced (aeroplane, &part->piece, &next->piece);
}
