#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/place-entry.h"
#include "document/changes.h"

/* A row of formers or ribs is clicked down; each click names the next. One that is there is dragged, or goes with Delete. */
typedef struct {
  Tool tool;
  char *id;                  /* the surface or body that the press meant; NULL none */
  char *name;                /* of the rib or former pressed on or hovered over; NULL none */
  size_t index;              /* its own: names need not differ */
  PlaceEntry *entry;
} FormerTool;

static const double catch_px = 6;

static TrammelSession *
former_session (FormerTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

static bool
former_takes (const Piece *piece)
{
  if (piece == NULL)
    return false;
  if (piece->kind == PIECE_BODY)
    return ((const Body *) piece)->outline != NULL;
  return piece->kind == PIECE_SURFACE && surface_is_horizontal ((const Surface *) piece);
}

static bool
former_holds (const Piece *piece, Point place)
{
  const Outline *outline;

  if (!former_takes (piece))
    return false;
  outline = piece->kind == PIECE_BODY ? ((const Body *) piece)->outline : ((const Surface *) piece)->outline;
  return outline_contains (outline, (Point) { place.x, fabs (place.y) });
}

/* What a click there is about: the surface or body that is selected, else a body, else a surface; parts are looked through. */
static const Piece *
former_piece_at (FormerTool *self, const ToolEvent *event)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (former_session (self));
  const Surface *selected = trammel_session_selected_surface (former_session (self));
  const Piece *under = NULL;

  if (selected != NULL && former_holds (&selected->piece, event->place))
    return &selected->piece;
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++) {
    const Piece *piece = aeroplane_piece (aeroplane, i);

    if (former_holds (piece, event->place) && (under == NULL || (under->kind != PIECE_BODY && piece->kind == PIECE_BODY)))
      under = piece;
  }
  return under;
}

static double
former_coordinate (const Piece *piece, Point place)
{
  return piece->kind == PIECE_BODY ? place.x : fabs (place.y);
}

/* The nearest of its ribs or formers, and which it is; NULL none. */
static const NamedPlace *
former_near (const Piece *piece, double place, double reach, size_t *index)
{
  const bool body = piece->kind == PIECE_BODY;
  const NamedPlace *const places = body ? ((const Body *) piece)->formers : ((const Surface *) piece)->ribs, *best = NULL;
  const size_t count = body ? ((const Body *) piece)->former_count : ((const Surface *) piece)->rib_count;

  for (size_t i = 0; i < count; i++)
    if (places[i].name != NULL && fabs (places[i].place - place) <= reach
        && (best == NULL || fabs (places[i].place - place) < fabs (best->place - place)))
      best = &places[*index = i];
  return best;
}

static void
former_find (FormerTool *self, const ToolEvent *event)
{
  const double reach = (event->finger ? 2 : 1) * catch_px / trammel_sheet_canvas_view (self->tool.sheet)->scale;
  const Piece *piece = former_piece_at (self, event);
  const NamedPlace *near = piece != NULL ? former_near (piece, former_coordinate (piece, event->place), reach, &self->index) : NULL;

  g_free (self->id);
  g_free (self->name);
  self->id = piece != NULL ? g_strdup (piece->id) : NULL;
  self->name = near != NULL ? g_strdup (near->name) : NULL;
}

static void
former_hint (FormerTool *self)
{
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (former_session (self)), self->id);
  g_autofree char *hint = NULL;

  if (piece != NULL && self->name != NULL)
    /* Translators: %s is the name of a rib or former, such as F3. */
    hint = g_strdup_printf (_("Drag “%s” to move it; Delete takes it out."), self->name);
  else if (piece != NULL) {
    g_autofree char *next = named_place_next (piece);

    hint = g_strdup_printf (piece->kind == PIECE_BODY ? _("Click to put former “%s” here.") : _("Click to put rib “%s” here."), next);
  }
  trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
}

static void
former_show (FormerTool *self)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);

  overlay->named_places = true;
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static void
former_press (Tool *tool, const ToolEvent *event)
{
  place_entry_close (&((FormerTool *) tool)->entry);
  former_find ((FormerTool *) tool, event);
}

static void
former_put (FormerTool *self, const Piece *piece, double place)
{
  const char *label = piece->kind == PIECE_BODY ? _("Add Former") : _("Add Rib");

  trammel_session_do (former_session (self),
                      change_named_place_added (trammel_session_settled (former_session (self)), piece->id, place), label);
}

static Point
former_aim (FormerTool *self, const ToolEvent *event)
{
  return trammel_sheet_canvas_snapped (self->tool.sheet, event->place, self->id, SNAP_WHOLE, event->loose);
}

static void
former_click (Tool *tool, const ToolEvent *event)
{
  FormerTool *self = (FormerTool *) tool;
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (former_session (self)), self->id);

  if (piece != NULL && self->name == NULL)
    former_put (self, piece, former_coordinate (piece, former_aim (self, event)));
  trammel_sheet_canvas_clear_guides (tool->sheet);
  /* What was just put is under the pointer now. */
  former_find (self, event);
  former_hint (self);
  former_show (self);
}

static void
former_pull (Tool *tool, const ToolEvent *event)
{
  FormerTool *self = (FormerTool *) tool;
  const Aeroplane *settled = trammel_session_settled (former_session (self));
  const Piece *piece = aeroplane_find (settled, self->id);

  if (piece != NULL && self->name != NULL)
    trammel_session_preview (former_session (self), change_named_place_moved (settled, self->id, self->index, self->name,
                                                                              former_coordinate (piece, former_aim (self, event))));
  former_show (self);
}

static void
former_drop (Tool *tool, const ToolEvent *event)
{
  FormerTool *self = (FormerTool *) tool;
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (former_session (self)), self->id);

  trammel_sheet_canvas_clear_guides (tool->sheet);
  if (piece != NULL && trammel_session_is_previewing (former_session (self)))
    trammel_session_settle (former_session (self), piece->kind == PIECE_BODY ? _("Move Former") : _("Move Rib"));
}

static void
former_hover (Tool *tool, const ToolEvent *event)
{
  FormerTool *self = (FormerTool *) tool;

  former_find (self, event);
  former_aim (self, event);
  former_hint (self);
  former_show (self);
}

static void
former_leave (Tool *tool)
{
  trammel_sheet_canvas_clear_guides (tool->sheet);
  trammel_sheet_canvas_set_hint (tool->sheet, NULL);
}

static void
former_typed (Tool *tool, Point place)
{
  FormerTool *self = (FormerTool *) tool;
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (former_session (self)), self->id);

  if (piece != NULL)
    former_put (self, piece, former_coordinate (piece, place));
  former_hint (self);
}

static bool
former_remove (FormerTool *self)
{
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (former_session (self)), self->id);

  if (piece == NULL || self->name == NULL)
    return false;
  const char *label = piece->kind == PIECE_BODY ? _("Delete Former") : _("Delete Rib");

  trammel_session_do (former_session (self),
                      change_named_place_removed (trammel_session_settled (former_session (self)), self->id, self->index, self->name),
                      label);
  g_clear_pointer (&self->name, g_free);
  former_hint (self);
  return true;
}

static bool
former_key (Tool *tool, guint keyval, GdkModifierType state)
{
  FormerTool *self = (FormerTool *) tool;
  Point place = { 0, 0 };

  if ((keyval == GDK_KEY_Delete || keyval == GDK_KEY_BackSpace) && former_remove (self))
    return true;
  trammel_sheet_canvas_pointer (tool->sheet, &place);
  return place_entry_key (&self->entry, tool, keyval, state, (Point) { place.x, fabs (place.y) }, former_typed);
}

static bool
former_cancel (Tool *tool)
{
  FormerTool *self = (FormerTool *) tool;
  const bool pulling = trammel_session_is_previewing (former_session (self));

  if (pulling)
    trammel_session_abandon (former_session (self));
  return pulling;
}

static void
former_finish (Tool *tool)
{
  FormerTool *self = (FormerTool *) tool;

  place_entry_close (&self->entry);
  trammel_sheet_canvas_overlay (tool->sheet)->named_places = false;
  trammel_sheet_canvas_set_hint (tool->sheet, NULL);
  g_free (self->id);
  g_free (self->name);
}

static bool
former_is_useful (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    if (former_takes (aeroplane_piece (aeroplane, i)))
      return true;
  return false;
}

const ToolKind tool_former = {
  .word = "former", .help = "plan", .name = N_("Former"), .letter = N_("F"), .cursor = "row-resize", .group = 2, .draws = true,
  .size = sizeof (FormerTool), .hint = N_("Click down the formers of the body or the ribs of a wing; their names count on."),
  .is_useful = former_is_useful, .press = former_press, .click = former_click, .pull = former_pull, .drop = former_drop,
  .hover = former_hover, .leave = former_leave, .key = former_key, .cancel = former_cancel, .finish = former_finish,
};
