#include "app/node-edit.h"
#include "app/outline-owner.h"

static const Outline *
node_edit_outline (const Aeroplane *aeroplane, const Selection *selection)
{
  if (selection->ids == NULL || selection->ids[0] == NULL || selection->node_count == 0)
    return NULL;
  return outline_owner_outline (aeroplane, selection->ids[0], selection->side);
}

/* The last node has no next one, so it is joined with the one before. */
static size_t
node_edit_first_to_join (const Outline *outline, const Selection *selection)
{
  return MIN (selection->nodes[0], outline_node_count (outline) - 2);
}

Aeroplane *
node_edit_kind (const Aeroplane *aeroplane, const Selection *selection, NodeKind kind)
{
  const Outline *start = node_edit_outline (aeroplane, selection);
  Outline *outline;

  if (start == NULL)
    return NULL;
  outline = outline_ref (start);
  for (size_t i = 0; i < selection->node_count; i++) {
    Outline *next = NULL;

    if (outline_with_node_kind (outline, selection->nodes[i], kind, &next) != CORE_OK)
      continue;
    outline_unref (outline);
    outline = next;
  }
  return outline_owner_with (aeroplane, selection->ids[0], selection->side, outline);
}

Aeroplane *
node_edit_removed (const Aeroplane *aeroplane, const Selection *selection)
{
  const Outline *start = node_edit_outline (aeroplane, selection);
  Outline *outline;

  if (start == NULL || outline_node_count (start) < selection->node_count + 2)
    return NULL;
  outline = outline_ref (start);
  /* From the last to the first, so that the others keep their numbers. */
  for (size_t i = selection->node_count; i-- > 0;) {
    Outline *next = NULL;

    if (outline_without_node (outline, selection->nodes[i], &next) != CORE_OK) {
      outline_unref (outline);
      return NULL;
    }
    outline_unref (outline);
    outline = next;
  }
  return outline_owner_with (aeroplane, selection->ids[0], selection->side, outline);
}

Aeroplane *
node_edit_split (const Aeroplane *aeroplane, const Selection *selection, double length)
{
  const Outline *outline = node_edit_outline (aeroplane, selection);
  Outline *made = NULL;

  if (outline == NULL || selection->nodes[0] == 0 || selection->nodes[0] + 1 >= outline_node_count (outline))
    return NULL;
  if (outline_with_node_split (outline, selection->nodes[0], length, &made) != CORE_OK)
    return NULL;
  return outline_owner_with (aeroplane, selection->ids[0], selection->side, made);
}

Aeroplane *
node_edit_joined (const Aeroplane *aeroplane, const Selection *selection)
{
  const Outline *outline = node_edit_outline (aeroplane, selection);
  Outline *made = NULL;

  if (outline == NULL || outline_node_count (outline) < 3)
    return NULL;
  if (outline_with_nodes_joined (outline, node_edit_first_to_join (outline, selection), &made) != CORE_OK)
    return NULL;
  return outline_owner_with (aeroplane, selection->ids[0], selection->side, made);
}

void
outline_spot_clear (OutlineSpot *spot)
{
  g_free (spot->id);
  *spot = (OutlineSpot) { 0 };
}

bool
outline_spot_exists (const Aeroplane *aeroplane, const OutlineSpot *spot)
{
  const Outline *outline = spot->id == NULL ? NULL : outline_owner_outline (aeroplane, spot->id, spot->side);

  return outline != NULL && spot->segment < outline_segment_count (outline);
}

Aeroplane *
node_edit_inserted (const Aeroplane *aeroplane, const OutlineSpot *spot)
{
  Outline *made = NULL;

  if (!outline_spot_exists (aeroplane, spot))
    return NULL;
  if (outline_with_node_inserted (outline_owner_outline (aeroplane, spot->id, spot->side), spot->segment, spot->t, &made) != CORE_OK)
    return NULL;
  return outline_owner_with (aeroplane, spot->id, spot->side, made);
}

Aeroplane *
node_edit_segment_kind (const Aeroplane *aeroplane, const OutlineSpot *spot, SegmentKind kind)
{
  Outline *made = NULL;

  if (!outline_spot_exists (aeroplane, spot))
    return NULL;
  if (outline_with_segment_kind (outline_owner_outline (aeroplane, spot->id, spot->side), spot->segment, kind, &made) != CORE_OK)
    return NULL;
  return outline_owner_with (aeroplane, spot->id, spot->side, made);
}
