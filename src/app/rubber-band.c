#include "app/rubber-band.h"
#include "app/outline-owner.h"

static bool
band_holds (Box band, Point place)
{
  return place.x >= band.min.x && place.x <= band.max.x && place.y >= band.min.y && place.y <= band.max.y;
}

/* Both halves are drawn, so both are caught; a body's nodes likewise. */
static bool
band_holds_node (Box band, Point node)
{
  return band_holds (band, node) || band_holds (band, (Point) { node.x, -node.y });
}

static void
band_add_nodes (Selection *selection, const Outline *outline, const char *id, Box band)
{
  for (size_t node = 0; node < outline_node_count (outline); node++)
    if (band_holds_node (band, outline_node (outline, node)) && !selection_has_node (selection, id, false, node))
      selection_toggle_node (selection, id, false, node);
}

static void
band_add_parts (Selection *selection, const Aeroplane *aeroplane, Box band)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *part = aeroplane_part (aeroplane, i);

    if (part->piece.id != NULL && band_holds (band, (Point) { part->x, part->y }) && !selection_has (selection, part->piece.id))
      selection_toggle (selection, part->piece.id);
  }
}

Selection
rubber_band_selection (const Aeroplane *aeroplane, const Selection *before, Box band, bool add)
{
  const char *id = selection_single (before);
  const Outline *outline = before->side ? NULL : outline_owner_outline (aeroplane, id, false);
  Selection selection = add ? selection_copy (before) : selection_none ();
  Selection parts;

  if (outline != NULL) {
    band_add_nodes (&selection, outline, id, band);
    if (selection.node_count > (add ? before->node_count : 0))
      return selection;
  }
  parts = add && before->node_count == 0 ? selection_copy (before) : selection_none ();
  selection_clear (&selection);
  band_add_parts (&parts, aeroplane, band);
  return parts;
}
