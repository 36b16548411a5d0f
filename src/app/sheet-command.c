#include "app/sheet-command.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdint.h>
#include "app/lead-edit.h"
#include "app/outline-owner.h"
#include "app/part-group.h"
#include "app/piece-edit.h"
#include "app/selection-walk.h"
#include "document/changes.h"

static bool
sheet_command_do (TrammelSheetCanvas *sheet, Aeroplane *takes, const char *label)
{
  trammel_session_do (trammel_sheet_canvas_session (sheet), takes, label);
  return takes != NULL;
}

static const Aeroplane *
sheet_command_aeroplane (TrammelSheetCanvas *sheet)
{
  return trammel_session_aeroplane (trammel_sheet_canvas_session (sheet));
}

static const Selection *
sheet_command_selection (TrammelSheetCanvas *sheet)
{
  return trammel_session_selection (trammel_sheet_canvas_session (sheet));
}

/* Where a new node goes: where a line was clicked, else the middle of the line that leaves (or reaches) the selected node. */
static bool
sheet_command_spot (TrammelSheetCanvas *sheet, OutlineSpot *spot)
{
  const Selection *selection = sheet_command_selection (sheet);
  const OutlineSpot *clicked = trammel_sheet_canvas_spot (sheet);
  const Outline *outline;

  if (outline_spot_exists (sheet_command_aeroplane (sheet), clicked)) {
    *spot = *clicked;
    spot->id = g_strdup (clicked->id);
    return true;
  }
  if (selection->node_count == 0)
    return false;
  outline = outline_owner_outline (sheet_command_aeroplane (sheet), selection->ids[0], selection->side);
  if (outline == NULL)
    return false;
  *spot = (OutlineSpot) { .id = g_strdup (selection->ids[0]), .side = selection->side, .t = 0.5,
                          .segment = MIN (selection->nodes[0], outline_segment_count (outline) - 1) };
  return true;
}

bool
sheet_command_bend (TrammelSheetCanvas *sheet, const char *id, Point place)
{
  size_t index;

  if (!sheet_command_do (sheet, lead_edit_added (sheet_command_aeroplane (sheet), id, place, &index), _("Bend Lead")))
    return false;
  trammel_session_select (trammel_sheet_canvas_session (sheet), selection_of_node (id, false, index));
  return true;
}

void
sheet_command_select_bend (TrammelSheetCanvas *sheet, const char *id, Point near)
{
  const Lead *lead = aeroplane_lead_by_id (sheet_command_aeroplane (sheet), id);
  g_autoptr (GArray) points = lead != NULL ? lead_points (sheet_command_aeroplane (sheet), lead) : NULL;
  double nearest = INFINITY;
  size_t index = 0;

  for (guint i = 0; points != NULL && i < points->len; i++) {
    const double far = point_distance (g_array_index (points, LeadPoint, i).place, near);

    if (far >= nearest)
      continue;
    nearest = far;
    index = i;
  }
  if (isfinite (nearest))
    trammel_session_select (trammel_sheet_canvas_session (sheet), selection_of_node (id, false, index));
}

/* A lead is bent in the middle of its longest stretch, or beside the place that is selected. */
static bool
sheet_command_bend_selected (TrammelSheetCanvas *sheet)
{
  const Selection *selection = sheet_command_selection (sheet);
  g_autofree char *id = g_strdup (selection_single (selection));
  const Point place = lead_edit_middle (sheet_command_aeroplane (sheet), id, selection->node_count > 0 ? selection->nodes[0] : SIZE_MAX);

  return point_is_finite (place) && sheet_command_bend (sheet, id, place);
}

bool
sheet_command_add_node (TrammelSheetCanvas *sheet)
{
  OutlineSpot spot;
  bool done;

  if (aeroplane_lead_by_id (sheet_command_aeroplane (sheet), selection_single (sheet_command_selection (sheet))) != NULL)
    return sheet_command_bend_selected (sheet);
  if (!sheet_command_spot (sheet, &spot))
    return false;
  done = sheet_command_do (sheet, node_edit_inserted (sheet_command_aeroplane (sheet), &spot), _("Add Node"));
  if (done) {
    trammel_session_select (trammel_sheet_canvas_session (sheet), selection_of_node (spot.id, spot.side, spot.segment + 1));
    outline_spot_clear (trammel_sheet_canvas_spot (sheet));
  }
  outline_spot_clear (&spot);
  return done;
}

bool
sheet_command_node_kind (TrammelSheetCanvas *sheet, NodeKind kind)
{
  static const char *const labels[] = {
    [NODE_CORNER] = N_("Make Corner"), [NODE_SMOOTH] = N_("Make Smooth"), [NODE_SYMMETRIC] = N_("Make Symmetric"),
  };
  const Selection *selection = sheet_command_selection (sheet);

  return sheet_command_do (sheet, node_edit_kind (sheet_command_aeroplane (sheet), selection, kind), _(labels[kind]));
}

bool
sheet_command_segment_kind (TrammelSheetCanvas *sheet, SegmentKind kind)
{
  static const char *const labels[] = {
    [SEGMENT_LINE] = N_("Make Line"), [SEGMENT_CURVE] = N_("Make Curve"), [SEGMENT_ARC] = N_("Make Arc"),
  };
  OutlineSpot spot;
  bool done;

  if (!sheet_command_spot (sheet, &spot))
    return false;
  done = sheet_command_do (sheet, node_edit_segment_kind (sheet_command_aeroplane (sheet), &spot, kind), _(labels[kind]));
  outline_spot_clear (&spot);
  return done;
}

bool
sheet_command_split_node (TrammelSheetCanvas *sheet)
{
  const double length = 10;   /* mm each way, or half of a shorter neighbour: a start that is then pulled */
  const Selection *selection = sheet_command_selection (sheet);

  return sheet_command_do (sheet, node_edit_split (sheet_command_aeroplane (sheet), selection, length), _("Cut Corner"));
}

bool
sheet_command_join_nodes (TrammelSheetCanvas *sheet)
{
  return sheet_command_do (sheet, node_edit_joined (sheet_command_aeroplane (sheet), sheet_command_selection (sheet)), _("Join Nodes"));
}

bool
sheet_command_add_rail (TrammelSheetCanvas *sheet)
{
  const char *id = selection_single (sheet_command_selection (sheet));

  return sheet_command_do (sheet, piece_edit_rail_added (sheet_command_aeroplane (sheet), id), _("Add Rail"));
}

bool
sheet_command_remove_rail (TrammelSheetCanvas *sheet)
{
  const char *id = selection_single (sheet_command_selection (sheet));

  return sheet_command_do (sheet, piece_edit_rail_removed (sheet_command_aeroplane (sheet), id), _("Remove Rail"));
}

bool
sheet_command_turn (TrammelSheetCanvas *sheet)
{
  const Selection *selection = sheet_command_selection (sheet);
  Aeroplane *turned = NULL;

  for (char **id = selection->ids; id != NULL && *id != NULL; id++) {
    Aeroplane *next = change_part_turned (turned != NULL ? turned : sheet_command_aeroplane (sheet), *id, 90);

    if (next == NULL)
      continue;
    aeroplane_unref (turned);
    turned = next;
  }
  return sheet_command_do (sheet, turned, _("Turn Part"));
}

bool
sheet_command_group (TrammelSheetCanvas *sheet)
{
  const Aeroplane *aeroplane = sheet_command_aeroplane (sheet);
  const Selection *selection = sheet_command_selection (sheet);
  const char *label = part_group_label (aeroplane, selection);

  return sheet_command_do (sheet, part_group_toggled (aeroplane, selection), label);
}

bool
sheet_command_mirror (TrammelSheetCanvas *sheet)
{
  const MirrorLack lack = part_group_mirror_lack (sheet_command_aeroplane (sheet), sheet_command_selection (sheet));
  Selection copies = selection_none ();
  Aeroplane *next;

  if (lack != MIRROR_POSSIBLE) {
    trammel_sheet_canvas_set_hint (sheet, lack == MIRROR_THERE ? _("Both sides have it already: nothing was copied.")
                                          : _("On the centre line there is no other side: move the part off it first."));
    return false;
  }
  next = part_group_mirrored (sheet_command_aeroplane (sheet), sheet_command_selection (sheet), &copies);

  if (!sheet_command_do (sheet, next, _("Duplicate on the Other Side")))
    return false;
  trammel_session_select (trammel_sheet_canvas_session (sheet), copies);
  return true;
}

bool
sheet_command_aboard (TrammelSheetCanvas *sheet)
{
  const Part *part = trammel_session_selected_part (trammel_sheet_canvas_session (sheet));

  if (part == NULL)
    return false;
  return sheet_command_do (sheet, change_part_aboard (sheet_command_aeroplane (sheet), part->piece.id, !part->aboard),
                           part->aboard ? _("Leave Out") : _("Take Aboard"));
}

bool
sheet_command_walk (TrammelSheetCanvas *sheet, bool back)
{
  Selection next = selection_walk_next (sheet_command_aeroplane (sheet), sheet_command_selection (sheet), back);
  const bool found = !selection_is_empty (&next);

  trammel_session_select (trammel_sheet_canvas_session (sheet), next);
  trammel_sheet_canvas_reveal_selection (sheet);
  return found;
}
