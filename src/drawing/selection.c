#include "drawing/selection.h"
#include <glib.h>
#include <string.h>
#include "figures/lead-route.h"

Selection
selection_none (void)
{
  return (Selection) { .mark = -1 };
}

Selection
selection_of (const char *id)
{
  Selection made = selection_none ();

  made.ids = g_new0 (char *, 2);
  made.ids[0] = g_strdup (id);
  return made;
}

Selection
selection_of_node (const char *id, bool side, size_t node)
{
  Selection made = selection_of (id);

  made.side = side;
  made.nodes = g_memdup2 (&node, sizeof node);
  made.node_count = 1;
  return made;
}

Selection
selection_of_mark (int mark)
{
  return (Selection) { .mark = mark };
}

Selection
selection_of_point (SheetPoint point)
{
  return (Selection) { .mark = -1, .point = point };
}

Selection
selection_of_control (const char *id, const char *control)
{
  Selection made = selection_of (id);

  made.control = g_strdup (control);
  return made;
}

Selection
selection_copy (const Selection *selection)
{
  Selection copy = *selection;

  copy.ids = g_strdupv (selection->ids);
  copy.nodes = g_memdup2 (selection->nodes, selection->node_count * sizeof *selection->nodes);
  copy.control = g_strdup (selection->control);
  return copy;
}

void
selection_clear (Selection *selection)
{
  g_strfreev (selection->ids);
  g_free (selection->nodes);
  g_free (selection->control);
  *selection = selection_none ();
}

static size_t
selection_id_count (const Selection *selection)
{
  return selection->ids ? g_strv_length (selection->ids) : 0;
}

bool
selection_is_empty (const Selection *selection)
{
  return selection_id_count (selection) == 0 && selection->mark < 0 && selection->point == SHEET_POINT_NONE;
}

static bool
ids_equal (const Selection *a, const Selection *b)
{
  const size_t count = selection_id_count (a);

  if (count != selection_id_count (b))
    return false;
  for (size_t i = 0; i < count; i++)
    if (strcmp (a->ids[i], b->ids[i]) != 0)
      return false;
  return true;
}

bool
selection_equal (const Selection *a, const Selection *b)
{
  return ids_equal (a, b) && a->mark == b->mark && a->point == b->point && g_strcmp0 (a->control, b->control) == 0 && a->node_count == b->node_count
         && (a->node_count == 0 || (a->side == b->side && memcmp (a->nodes, b->nodes, a->node_count * sizeof *a->nodes) == 0));
}

bool
selection_has (const Selection *selection, const char *id)
{
  return id && selection->ids && g_strv_contains ((const char *const *) selection->ids, id);
}

bool
selection_has_node (const Selection *selection, const char *id, bool side, size_t node)
{
  if (selection->side != side || selection_id_count (selection) == 0 || g_strcmp0 (selection->ids[0], id) != 0)
    return false;
  for (size_t i = 0; i < selection->node_count; i++)
    if (selection->nodes[i] == node)
      return true;
  return false;
}

const char *
selection_single (const Selection *selection)
{
  return selection_id_count (selection) == 1 ? selection->ids[0] : NULL;
}

/* Nodes, a control, a mark and a point are details of one thing: they go when things are added to it or taken from it. */
static void
selection_drop_details (Selection *selection)
{
  g_clear_pointer (&selection->nodes, g_free);
  g_clear_pointer (&selection->control, g_free);
  selection->node_count = 0;
  selection->side = false;
  selection->mark = -1;
  selection->point = SHEET_POINT_NONE;
}

void
selection_toggle (Selection *selection, const char *id)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  const size_t count = selection_id_count (selection);
  size_t kept = 0;

  for (size_t i = 0; i < count; i++)
    if (strcmp (selection->ids[i], id) != 0)
      {
        g_strv_builder_add (builder, selection->ids[i]);
        kept++;
      }
  if (kept == count)
    {
      g_strv_builder_add (builder, id);
      kept++;
    }
  g_strfreev (selection->ids);
  selection->ids = kept > 0 ? g_strv_builder_end (builder) : NULL;
  selection_drop_details (selection);
}

static void
selection_add_node (Selection *selection, size_t node)
{
  size_t at = selection->node_count;

  selection->nodes = g_renew (size_t, selection->nodes, selection->node_count + 1);
  for (; at > 0 && selection->nodes[at - 1] > node; at--)
    selection->nodes[at] = selection->nodes[at - 1];
  selection->nodes[at] = node;
  selection->node_count++;
}

static void
selection_remove_node (Selection *selection, size_t node)
{
  size_t kept = 0;

  for (size_t i = 0; i < selection->node_count; i++)
    if (selection->nodes[i] != node)
      selection->nodes[kept++] = selection->nodes[i];
  selection->node_count = kept;
  if (kept == 0)
    g_clear_pointer (&selection->nodes, g_free);
}

/* Nodes belong to one outline: those of another begin afresh. */
void
selection_toggle_node (Selection *selection, const char *id, bool side, size_t node)
{
  const char *single = selection_single (selection);

  if (!single || strcmp (single, id) != 0 || (selection->node_count > 0 && selection->side != side))
    {
      Selection fresh = selection_of_node (id, side, node);

      selection_clear (selection);
      *selection = fresh;
      return;
    }
  g_clear_pointer (&selection->control, g_free);
  selection->mark = -1;
  selection->point = SHEET_POINT_NONE;
  if (selection_has_node (selection, id, side, node))
    selection_remove_node (selection, node);
  else
    selection_add_node (selection, node);
  selection->side = side;
}

static const Outline *
piece_outline (const Aeroplane *aeroplane, const char *id, bool side)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Body *body = aeroplane_body_by_id (aeroplane, id);

  return surface ? surface->outline : body ? (side ? body->side_outline : body->outline) : NULL;
}

static size_t
lead_point_count (const Aeroplane *aeroplane, const char *id)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, id);
  g_autoptr (GArray) points = lead ? lead_points (aeroplane, lead) : NULL;

  return points ? points->len : 0;
}

Selection
selection_kept (const Selection *selection, const Aeroplane *aeroplane)
{
  Selection kept = selection_none ();
  const Outline *outline;
  size_t nodes;

  for (size_t i = 0; i < selection_id_count (selection); i++)
    if (aeroplane_find (aeroplane, selection->ids[i]))
      selection_toggle (&kept, selection->ids[i]);
  if (selection->mark >= 0 && (size_t) selection->mark < MAX (aeroplane_count (aeroplane, PIECE_MARK), 1))
    kept.mark = selection->mark;
  kept.point = selection->point;
  if (!kept.ids || strcmp (kept.ids[0], selection->ids[0]) != 0)
    return kept;
  outline = piece_outline (aeroplane, kept.ids[0], selection->side);
  nodes = outline ? outline_node_count (outline) : lead_point_count (aeroplane, kept.ids[0]);
  for (size_t i = 0; i < selection->node_count; i++)
    if (selection->nodes[i] < nodes)
      selection_add_node (&kept, selection->nodes[i]);
  kept.side = kept.node_count > 0 && selection->side;
  if (aeroplane_control_by_id (aeroplane, kept.ids[0], selection->control))
    kept.control = g_strdup (selection->control);
  return kept;
}
