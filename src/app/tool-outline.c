#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/outline-sketch.h"
#include "app/place-entry.h"
#include "app/tracing.h"

/* The outline itself is the aeroplane's from its second node on; before that the tool holds its first. */
typedef struct {
  Tool tool;
  char *id;                          /* the surface being drawn; NULL: none */
  bool begun;   Point start;         /* its first node */
  bool leaves;  Point leave;         /* the handle pulled out of its last node */
  bool pulling; Point node, handle;  /* a node being put whose handles are being pulled */
  Outline *draft;                    /* what the overlay shows */
  PlaceEntry *entry;
  gulong plans_changed;
  Tracing *tracing;                  /* the hand over a plan; NULL until it was there once */
} OutlineTool;

static const double centre_line_px = 6;

static TrammelSession *
outline_session (OutlineTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

/* Over a plan that is clung to the printed line is followed; what was begun node by node goes on so. */
static bool
outline_traces (OutlineTool *self)
{
  if (self->begun)
    return false;
  if (self->tracing == NULL)
    self->tracing = tracing_new (self->tool.sheet);
  return tracing_applies (self->tracing);
}

static const Outline *
outline_drawn (OutlineTool *self)
{
  const Surface *surface = aeroplane_surface_by_id (trammel_session_settled (outline_session (self)), self->id);

  return surface != NULL ? surface->outline : NULL;
}

static Point
outline_last (OutlineTool *self)
{
  const Outline *outline = outline_drawn (self);

  return outline != NULL ? outline_sketch_end (outline) : self->start;
}

/* Where a press there puts a node: of the starboard half, on the root's station when near it. */
static Point
outline_aim (OutlineTool *self, const ToolEvent *event)
{
  const double near = centre_line_px / trammel_sheet_canvas_view (self->tool.sheet)->scale;
  const double root = self->begun ? self->start.y : 0;
  Point place = trammel_sheet_canvas_snapped (self->tool.sheet, event->place, NULL, SNAP_WHOLE, event->loose);

  place.y = fabs (place.y);
  if (self->begun && event->shift) {
    const Point last = outline_last (self);

    place = fabs (place.x - last.x) >= fabs (place.y - last.y) ? (Point) { place.x, last.y } : (Point) { last.x, place.y };
  }
  if (!event->loose && fabs (place.y - root) <= near)
    place.y = root;
  return place;
}

static void
outline_show (OutlineTool *self, const Point *end)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);
  const Outline *outline = outline_drawn (self);
  const Point arrive = point_sub (point_scale (self->node, 2), self->handle);

  g_clear_pointer (&self->draft, outline_unref);
  if (self->pulling && self->begun)
    self->draft = outline_sketch_with (outline, self->start, self->leaves ? &self->leave : NULL, &arrive, self->node);
  else if (outline != NULL)
    self->draft = outline_ref (outline);
  else if (self->begun)
    self->draft = outline_sketch_with (NULL, self->start, NULL, NULL, self->start);
  overlay->draft = self->draft;
  overlay->has_draft_end = end != NULL && !self->pulling;
  if (end != NULL)
    overlay->draft_end = *end;
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static void
outline_hint (OutlineTool *self)
{
  const char *hint = NULL;

  if (self->begun && outline_drawn (self) == NULL)
    hint = _("Click the next node, or press and drag to pull its handles out.");
  else if (self->begun && self->start.y == 0)
    hint = _("Go round the tip and click on the centre line. Backspace takes a node back.");
  else if (self->begun)
    hint = _("Go round the tip and click at the first node's station. Backspace takes one back.");
  trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
}

static void
outline_end (OutlineTool *self)
{
  g_clear_pointer (&self->id, g_free);
  self->begun = self->leaves = self->pulling = false;
  trammel_sheet_canvas_clear_guides (self->tool.sheet);
  outline_show (self, NULL);
  outline_hint (self);
}

/* A press goes on with the outline that is selected if it still is open. */
static void
outline_resume (OutlineTool *self)
{
  const Surface *surface = trammel_session_selected_surface (outline_session (self));

  if (self->begun || !outline_sketch_is_open (surface))
    return;
  self->id = g_strdup (surface->piece.id);
  self->start = outline_node (surface->outline, 0);
  self->begun = true;
}

/* One node more, one step. */
static void
outline_add (OutlineTool *self, Point place, const Point *arrive)
{
  const Aeroplane *aeroplane = trammel_session_settled (outline_session (self));
  const Outline *outline = outline_drawn (self);
  const bool closes = outline_sketch_closes (outline, place);
  Outline *next = outline_sketch_with (outline, self->start, self->leaves ? &self->leave : NULL, arrive, place);

  if (next == NULL)
    return;
  if (self->id == NULL)
    self->id = aeroplane_free_id (aeroplane, surface_role_word (outline_sketch_role (aeroplane)));
  self->leaves = false;
  trammel_session_do (outline_session (self), outline_sketch_put (aeroplane, self->id, next), _("Add Node"));
  trammel_session_select (outline_session (self), selection_of (self->id));
  if (closes)
    outline_end (self);
}

static void
outline_put (OutlineTool *self, Point place, const Point *arrive)
{
  if (!self->begun) {
    self->start = place;
    self->begun = true;
  } else if (point_distance (place, outline_last (self)) > 0)
    outline_add (self, place, arrive);
  if (arrive != NULL && self->begun) {
    self->leave = point_sub (point_scale (place, 2), *arrive);
    self->leaves = true;
  }
  outline_show (self, NULL);
  outline_hint (self);
}

static void
outline_press (Tool *tool, const ToolEvent *event)
{
  OutlineTool *self = (OutlineTool *) tool;

  place_entry_close (&self->entry);
  if (outline_traces (self))
    return;
  outline_resume (self);
  self->node = outline_aim (self, event);
}

static void
outline_click (Tool *tool, const ToolEvent *event)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (outline_traces (self)) {
    tracing_click (self->tracing, event);
    return;
  }
  outline_put (self, self->node, NULL);
}

static void
outline_pull (Tool *tool, const ToolEvent *event)
{
  OutlineTool *self = (OutlineTool *) tool;
  const bool port = event->place.y < 0 && self->node.y > 0;

  if (outline_traces (self)) {
    tracing_pull (self->tracing, event);
    return;
  }
  self->pulling = true;
  self->handle = (Point) { event->place.x, port ? -event->place.y : event->place.y };
  if (event->shift)
    self->handle = fabs (self->handle.x - self->node.x) >= fabs (self->handle.y - self->node.y)
                   ? (Point) { self->handle.x, self->node.y } : (Point) { self->node.x, self->handle.y };
  trammel_sheet_canvas_clear_guides (tool->sheet);
  outline_show (self, NULL);
}

static void
outline_drop (Tool *tool, const ToolEvent *event)
{
  OutlineTool *self = (OutlineTool *) tool;
  const Point arrive = point_sub (point_scale (self->node, 2), self->handle);

  if (outline_traces (self)) {
    tracing_drop (self->tracing, event);
    return;
  }
  if (!self->pulling)
    return;
  self->pulling = false;
  outline_put (self, self->node, &arrive);
}

static void
outline_hover (Tool *tool, const ToolEvent *event)
{
  OutlineTool *self = (OutlineTool *) tool;
  Point aim;

  if (outline_traces (self)) {
    tracing_hover (self->tracing, event);
    return;
  }
  aim = outline_aim (self, event);
  outline_show (self, &aim);
}

static void
outline_leave (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (outline_traces (self)) {
    tracing_leave (self->tracing);
    return;
  }
  trammel_sheet_canvas_clear_guides (tool->sheet);
  outline_show (self, NULL);
}

static bool
outline_take_back (OutlineTool *self)
{
  const Aeroplane *aeroplane = trammel_session_settled (outline_session (self));
  const Outline *outline = outline_drawn (self);
  Outline *less;

  if (!self->begun)
    return false;
  self->leaves = false;
  if (outline == NULL) {
    outline_end (self);
    return true;
  }
  less = outline_sketch_without_last (outline);
  trammel_session_do (outline_session (self),
                      less != NULL ? outline_sketch_put (aeroplane, self->id, less)
                                   : aeroplane_without_dependents (aeroplane, aeroplane_find (aeroplane, self->id)), _("Take Back Node"));
  outline_show (self, NULL);
  outline_hint (self);
  return true;
}

/* Of an outline that is drawn node by node each node is a step, which undo takes back; its first is only in the hand. */
static bool
outline_take_back_click (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (outline_traces (self))
    return tracing_take_back (self->tracing);
  return self->begun && outline_drawn (self) == NULL && outline_take_back (self);
}

static void
outline_typed (Tool *tool, Point place)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (outline_traces (self)) {
    tracing_typed (self->tracing, place);
    return;
  }
  outline_resume (self);
  outline_put (self, (Point) { place.x, fabs (place.y) }, NULL);
}

static bool
outline_key (Tool *tool, guint keyval, GdkModifierType state)
{
  OutlineTool *self = (OutlineTool *) tool;
  Point place = self->begun ? outline_last (self) : (Point) { 0, 0 };

  if (outline_traces (self))
    return tracing_key (self->tracing, keyval, state)
           || tracing_type (self->tracing, &self->entry, tool, keyval, state, outline_typed);
  if (keyval == GDK_KEY_BackSpace)
    return outline_take_back (self);
  trammel_sheet_canvas_pointer (tool->sheet, &place);
  place.y = fabs (place.y);
  return place_entry_key (&self->entry, tool, keyval, state, place, outline_typed);
}

static void
outline_key_up (Tool *tool, guint keyval)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (self->tracing != NULL)
    tracing_key_up (self->tracing, keyval);
}

static bool
outline_cancel (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;
  const bool busy = self->begun || self->pulling;

  if (outline_traces (self))
    return tracing_cancel (self->tracing);
  if (self->pulling) {
    self->pulling = false;
    outline_show (self, NULL);
  } else
    outline_end (self);
  return busy;
}

/* Undo may have taken the surface away. Its first node then still stands in the hand. */
static void
outline_changed (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;

  if (self->id != NULL && outline_drawn (self) == NULL)
    g_clear_pointer (&self->id, g_free);
  if (self->tracing != NULL)
    tracing_changed (self->tracing);
  outline_show (self, NULL);
}

/* Over a plan the sentence is the view's own from the start, whichever comes into hand. */
static void
outline_begin (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;

  self->plans_changed = g_signal_connect_swapped (trammel_sheet_canvas_plan_store (tool->sheet), "changed", G_CALLBACK (outline_changed), tool);
  if (outline_traces (self))
    tracing_changed (self->tracing);
}

static void
outline_finish (Tool *tool)
{
  OutlineTool *self = (OutlineTool *) tool;

  g_clear_signal_handler (&self->plans_changed, trammel_sheet_canvas_plan_store (tool->sheet));
  place_entry_close (&self->entry);
  g_clear_pointer (&self->draft, outline_unref);
  tracing_free (self->tracing);
  g_free (self->id);
}

const ToolKind tool_outline = {
  .word = "outline", .help = "draw", .name = N_("Outline"), .letter = N_("O"), .cursor = "crosshair", .group = 1, .draws = true,
  .size = sizeof (OutlineTool),
  .hint = N_("Click along the right half: root's leading edge, tip, root's trailing edge."),
  .begin = outline_begin, .press = outline_press, .click = outline_click, .pull = outline_pull, .drop = outline_drop,
  .hover = outline_hover, .leave = outline_leave,
  .key = outline_key, .key_up = outline_key_up, .take_back = outline_take_back_click, .cancel = outline_cancel,
  .changed = outline_changed, .finish = outline_finish,
};
