#include <stdint.h>
#include "app/selection-walk.h"
#include "app/outline-owner.h"
#include "figures/lead-route.h"

/* One stop of the walk. */
typedef struct { const char *id, *control; bool has_node; size_t node; } Stop;

static void
selection_walk_add (GArray *stops, const Aeroplane *aeroplane, PieceKind kind)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, kind); i++) {
    const Stop piece = { .id = aeroplane_nth (aeroplane, kind, i)->id };
    const Outline *outline = outline_owner_outline (aeroplane, piece.id, false);
    const Surface *surface = aeroplane_surface_by_id (aeroplane, piece.id);
    /* A fin's nodes stand in the side view alone; from above it has none to walk. */
    const bool seen = outline != NULL && (surface == NULL || surface_is_horizontal (surface));

    if (piece.id == NULL)
      continue;
    g_array_append_val (stops, piece);
    for (size_t node = 0; seen && node < outline_node_count (outline); node++) {
      const Stop stop = { .id = piece.id, .has_node = true, .node = node };

      g_array_append_val (stops, stop);
    }
    for (size_t k = 0; surface != NULL && k < surface->control_count; k++) {
      const Stop stop = { .id = piece.id, .control = surface->controls[k].id };

      g_array_append_val (stops, stop);
    }
  }
}

static void
selection_walk_add_leads (GArray *stops, const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++) {
    const Lead *lead = aeroplane_lead (aeroplane, i);
    g_autoptr (GArray) points = lead_points (aeroplane, lead);
    const Stop piece = { .id = lead->piece.id };

    if (piece.id == NULL)
      continue;
    g_array_append_val (stops, piece);
    for (guint node = 0; node < points->len; node++) {
      const Stop stop = { .id = piece.id, .has_node = true, .node = node };

      g_array_append_val (stops, stop);
    }
  }
}

static size_t
selection_walk_find (const GArray *stops, const Selection *from)
{
  for (size_t i = 0; i < stops->len; i++) {
    const Stop *stop = &g_array_index (stops, Stop, i);

    if (!selection_has (from, stop->id) || g_strcmp0 (from->control, stop->control) != 0)
      continue;
    if (stop->has_node ? from->node_count > 0 && from->nodes[0] == stop->node : from->node_count == 0)
      return i;
  }
  return SIZE_MAX;
}

Selection
selection_walk_next (const Aeroplane *aeroplane, const Selection *from, bool back)
{
  g_autoptr (GArray) stops = g_array_new (FALSE, FALSE, sizeof (Stop));
  size_t at;
  const Stop *next;

  selection_walk_add (stops, aeroplane, PIECE_SURFACE);
  selection_walk_add (stops, aeroplane, PIECE_BODY);
  selection_walk_add (stops, aeroplane, PIECE_PART);
  selection_walk_add_leads (stops, aeroplane);
  if (stops->len == 0)
    return selection_none ();
  at = selection_walk_find (stops, from);
  if (at == SIZE_MAX)
    at = back ? stops->len - 1 : 0;
  else
    at = (at + (back ? stops->len - 1 : 1)) % stops->len;
  next = &g_array_index (stops, Stop, at);
  if (next->control != NULL)
    return selection_of_control (next->id, next->control);
  return next->has_node ? selection_of_node (next->id, false, next->node) : selection_of (next->id);
}
