#include "trammel-config.h"
#include "app/part-group.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* mm: a copy nearer to the centre line than that would stand in its original; one nearer to another part than that would stand in its pair. */
static const double least_off_centre = 0.5, same_place = 0.5;

static void
go_on_with (Aeroplane **self, Aeroplane *next)
{
  aeroplane_unref (*self);
  *self = next;
}

Selection
part_group_selection (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);
  Selection selection = selection_of (id);

  for (size_t i = 0; part != NULL && part->group != NULL && i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *other = aeroplane_part (aeroplane, i);

    if (other != part && other->piece.id != NULL && g_strcmp0 (other->group, part->group) == 0)
      selection_toggle (&selection, other->piece.id);
  }
  return selection;
}

bool
part_group_is_parts (const Aeroplane *aeroplane, const Selection *selection)
{
  for (char **id = selection->ids; id != NULL && *id != NULL; id++)
    if (aeroplane_part_by_id (aeroplane, *id) == NULL)
      return false;
  return selection->ids != NULL && selection->ids[0] != NULL;
}

/* The group that all of them are in, lent; NULL when there is none. */
static const char *
common_group (const Aeroplane *aeroplane, const Selection *selection)
{
  const char *group = NULL;

  for (char **id = selection->ids; id != NULL && *id != NULL; id++) {
    const Part *part = aeroplane_part_by_id (aeroplane, *id);

    if (part == NULL || part->group == NULL || (group != NULL && !g_str_equal (group, part->group)))
      return NULL;
    group = part->group;
  }
  return group;
}

bool
part_group_is_one (const Aeroplane *aeroplane, const Selection *selection)
{
  return common_group (aeroplane, selection) != NULL;
}

const char *
part_group_label (const Aeroplane *aeroplane, const Selection *selection)
{
  return common_group (aeroplane, selection) != NULL ? _("Take Group Apart") : _("Group Parts");
}

Aeroplane *
part_group_toggled (const Aeroplane *aeroplane, const Selection *selection)
{
  g_autofree char *name = common_group (aeroplane, selection) == NULL ? aeroplane_free_group (aeroplane, "group") : NULL;
  Aeroplane *next;

  if (!part_group_is_parts (aeroplane, selection) || selection->ids[1] == NULL)
    return NULL;
  next = aeroplane_ref (aeroplane);
  for (char **id = selection->ids; *id != NULL; id++) {
    const Part *part = aeroplane_part_by_id (next, *id);
    Part *grouped = (Part *) piece_dup (&part->piece);

    g_free (grouped->group);
    grouped->group = g_strdup (name);
    go_on_with (&next, aeroplane_with_replaced (next, &part->piece, &grouped->piece));
  }
  return next;
}

/* "servo-2" copied becomes "servo-3", not "servo-2-2". */
static char *
copied_id (const Aeroplane *aeroplane, const char *id)
{
  const char *dash = strrchr (id, '-');
  const bool counted = dash != NULL && dash != id && dash[1] != '\0' && strspn (dash + 1, "0123456789") == strlen (dash + 1);
  g_autofree char *stem = counted ? g_strndup (id, (gsize) (dash - id)) : g_strdup (id);

  return aeroplane_free_id (aeroplane, stem);
}

static Part *
mirrored_part (const Aeroplane *aeroplane, const Part *part)
{
  Part *copy = (Part *) piece_dup (&part->piece);

  copy->piece.line = 0;
  g_free (copy->piece.id);
  copy->piece.id = copied_id (aeroplane, part->piece.id);
  copy->y = -part->y;
  copy->turn = part->turn == 0 ? 0 : -part->turn;
  return copy;
}

/* Where a lead's end goes: to the copy, where there is one. */
static void
follow_copy (char **end, GHashTable *copies)
{
  const char *copy = *end != NULL ? g_hash_table_lookup (copies, *end) : NULL;

  if (copy == NULL)
    return;
  g_free (*end);
  *end = g_strdup (copy);
}

static bool
end_is_copied (const char *end, GHashTable *copies)
{
  return end != NULL && g_hash_table_contains (copies, end);
}

/* A two-into-one lead takes no third part: it is copied only where both that it joins are. */
static bool
lead_is_copied (const Lead *lead, GHashTable *copies)
{
  if (lead_is_joined (lead))
    return end_is_copied (lead->from, copies) && end_is_copied (lead->also, copies);
  return end_is_copied (lead->from, copies) || end_is_copied (lead->to, copies);
}

static Lead *
mirrored_lead (const Aeroplane *aeroplane, const Lead *lead, GHashTable *copies)
{
  Lead *copy = (Lead *) piece_dup (&lead->piece);

  copy->piece.line = 0;
  g_free (copy->piece.id);
  copy->piece.id = copied_id (aeroplane, lead->piece.id != NULL ? lead->piece.id : "lead");
  follow_copy (&copy->from, copies);
  follow_copy (&copy->also, copies);
  follow_copy (&copy->to, copies);
  copy->joint_y = -copy->joint_y;
  for (size_t via = 0; via < copy->via_count; via++)
    copy->via[via].place.y = -copy->via[via].place.y;
  return copy;
}

static Aeroplane *
with_mirrored_leads (Aeroplane *takes, GHashTable *copies)
{
  const size_t count = aeroplane_count (takes, PIECE_LEAD);
  Aeroplane *next = takes;

  for (size_t i = 0; i < count; i++) {
    const Lead *lead = aeroplane_lead (next, i);

    if (lead_is_copied (lead, copies))
      go_on_with (&next, aeroplane_with_added (next, &mirrored_lead (next, lead, copies)->piece));
  }
  return next;
}

/* Its pair: one of its class on the other side already, where the copy would stand. */
static bool
has_mirror (const Aeroplane *aeroplane, const Part *part)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *other = aeroplane_part (aeroplane, i);

    if (other != part && g_strcmp0 (other->class_name, part->class_name) == 0 && fabs (other->x - part->x) < same_place
        && fabs (other->y + part->y) < same_place && fabs (other->z - part->z) < same_place)
      return true;
  }
  return false;
}

MirrorLack
part_group_mirror_lack (const Aeroplane *aeroplane, const Selection *selection)
{
  MirrorLack lack = MIRROR_ON_CENTRE;

  for (char **id = selection->ids; id != NULL && *id != NULL; id++) {
    const Part *part = aeroplane_part_by_id (aeroplane, *id);

    if (part == NULL || fabs (part->y) < least_off_centre)
      continue;
    if (!has_mirror (aeroplane, part))
      return MIRROR_POSSIBLE;
    lack = MIRROR_THERE;
  }
  return lack;
}

Aeroplane *
part_group_mirrored (const Aeroplane *aeroplane, const Selection *selection, Selection *made)
{
  g_autoptr (GHashTable) copies = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  Aeroplane *next = aeroplane_ref (aeroplane);
  Selection copied = selection_none ();

  for (char **id = selection->ids; id != NULL && *id != NULL; id++) {
    const Part *part = aeroplane_part_by_id (next, *id);
    const bool wanted = part != NULL && fabs (part->y) >= least_off_centre && !has_mirror (aeroplane, part);
    Part *copy = wanted ? mirrored_part (next, part) : NULL;

    if (copy == NULL)
      continue;
    g_hash_table_insert (copies, g_strdup (*id), g_strdup (copy->piece.id));
    selection_toggle (&copied, copy->piece.id);
    go_on_with (&next, aeroplane_with_added (next, &copy->piece));
  }
  if (selection_is_empty (&copied)) {
    aeroplane_unref (next);
    return NULL;
  }
  *made = copied;
  return with_mirrored_leads (next, copies);
}
