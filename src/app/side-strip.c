#include "app/side-strip.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/part-group.h"
#include "app/pull.h"
#include "app/theme.h"
#include "app/tool.h"
#include "drawing/side-view.h"

struct _TrammelSideStrip {
  GtkWidget parent;
  TrammelSheetCanvas *sheet;
  Look look;
  double width;             /* wanted, px */
  double chosen;            /* by dragging its edge; 0: as the zoom wants it */
  double before, taken;     /* width when the edge was taken, 0: it is not held; and where, px of the window */
  bool moved;               /* this press has moved something */
  bool draws;               /* and is the tool's in hand */
  ToolEvent from;           /* where it began then */
  double x, y;              /* where the pointer is, px */
  PullManner manner;
  guint frame, settling;    /* settling: will fit the width */
};

G_DEFINE_FINAL_TYPE (TrammelSideStrip, trammel_side_strip, GTK_TYPE_WIDGET)

static const double still_px = 3, catch_px = 12, edge_px = 5, narrowest = 110, widest = 320;
static const guint settle_ms = 200;        /* longer than between two notches of a wheel */

static void
trammel_side_strip_dispose (GObject *object)
{
  TrammelSideStrip *self = TRAMMEL_SIDE_STRIP (object);

  g_clear_handle_id (&self->settling, g_source_remove);
  g_clear_object (&self->sheet);
  G_OBJECT_CLASS (trammel_side_strip_parent_class)->dispose (object);
}

static TrammelSession *
side_strip_session (TrammelSideStrip *self)
{
  return trammel_sheet_canvas_session (self->sheet);
}

static SideScene
side_strip_scene (TrammelSideStrip *self, const SheetScene *scene)
{
  return (SideScene) { .scene = scene, .width = gtk_widget_get_width (GTK_WIDGET (self)), .height = gtk_widget_get_height (GTK_WIDGET (self)) };
}

static void
trammel_side_strip_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  TrammelSideStrip *self = TRAMMEL_SIDE_STRIP (widget);
  SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  const SideScene side = side_strip_scene (self, &scene);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) side.width, (float) side.height));

  self->look = theme_look (widget);
  scene.look = &self->look;
  draw_side_view (cr, &side);
  cairo_destroy (cr);
}

static void
trammel_side_strip_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                            int *minimum_baseline, int *natural_baseline)
{
  const double width = TRAMMEL_SIDE_STRIP (widget)->width;

  *minimum = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? (int) width : 80;
  *minimum_baseline = *natural_baseline = -1;
}

static void
trammel_side_strip_class_init (TrammelSideStripClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_side_strip_dispose;
  GTK_WIDGET_CLASS (klass)->snapshot = trammel_side_strip_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = trammel_side_strip_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
trammel_side_strip_init (TrammelSideStrip *self)
{
  self->width = 150;
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Side View"), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  _("The aeroplane from the left, nose up."), -1);
}

/* Its width follows the zoom, in steps: with the width goes the sheet's, and with a fitted sheet the zoom, which must come to rest. */
static gboolean
side_strip_fit_width (gpointer data)
{
  TrammelSideStrip *self = data;
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  const double wanted = self->chosen > 0 ? self->chosen : side_view_wanted_width (&scene), step = self->chosen > 0 ? 1 : 16;

  self->settling = 0;
  if (trammel_sheet_canvas_pull (self->sheet) == NULL && fabs (wanted - self->width) >= step) {
    self->width = wanted;
    gtk_widget_queue_resize (GTK_WIDGET (self));
  }
  return G_SOURCE_REMOVE;
}

/* The zoom may change while widgets are given their places; their sizes must not. While a hand zooms all widgets keep their places. */
static void
side_strip_refresh (TrammelSideStrip *self)
{
  const bool at_once = trammel_sheet_canvas_is_fitted (self->sheet);

  g_clear_handle_id (&self->settling, g_source_remove);
  self->settling = at_once ? g_idle_add (side_strip_fit_width, self) : g_timeout_add (settle_ms, side_strip_fit_width, self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* x aft and z up, mm. */
static Point
side_strip_place (TrammelSideStrip *self, double x, double y)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  const SideScene side = side_strip_scene (self, &scene);

  return (Point) { view_from_screen (scene.view, 0, y).x, side_view_z_at_px (&side, x) };
}

static void
side_strip_px (GtkWidget *strip, Point place, double px[2])
{
  TrammelSideStrip *self = TRAMMEL_SIDE_STRIP (strip);
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  const SideScene side = side_strip_scene (self, &scene);

  px[0] = side_view_px_of_z (&side, place.y);
  px[1] = view_to_screen (scene.view, (Point) { place.x, 0 }).y;
}

static Selection
side_strip_selection (const Aeroplane *aeroplane, const Hit *hit)
{
  if (hit->kind == HIT_NOTHING || hit->kind == HIT_DATUM)
    return selection_none ();
  if (hit->kind == HIT_NODE)
    return selection_of_node (hit->id, true, hit->index);
  if (hit->kind == HIT_MARK)
    return selection_of_mark ((int) hit->index);
  if (hit->kind == HIT_CONTROL)
    return selection_of_control (hit->id, hit->control);
  return part_group_selection (aeroplane, hit->id);
}

/* The strip's own px move with its edge; the window's do not. */
static double
side_strip_window_x (TrammelSideStrip *self, double x)
{
  double in_window = x, y;

  gtk_widget_translate_coordinates (GTK_WIDGET (self), GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (self))), x, 0, &in_window, &y);
  return in_window;
}

/* What acts here too, with that tool in hand. */
static const ToolKind *
side_strip_tool (TrammelSideStrip *self)
{
  const ToolKind *kind = trammel_sheet_canvas_tool (self->sheet)->kind;

  return kind->in_side_view ? kind : NULL;
}

static ToolEvent
side_strip_event (TrammelSideStrip *self, GtkEventController *controller)
{
  const GdkModifierType state = gtk_event_controller_get_current_event_state (controller);
  GdkDevice *device = gtk_event_controller_get_current_event_device (controller);

  return (ToolEvent) {
    .x = self->x, .y = self->y, .place = side_strip_place (self, self->x, self->y), .strip = GTK_WIDGET (self),
    .shift = (state & GDK_SHIFT_MASK) != 0, .loose = (state & GDK_CONTROL_MASK) != 0,
    .finger = device != NULL && gdk_device_get_source (device) == GDK_SOURCE_TOUCHSCREEN,
  };
}

static void
side_strip_begin_drawing (TrammelSideStrip *self, GtkEventController *controller, double x, double y)
{
  Tool *tool = trammel_sheet_canvas_tool (self->sheet);

  self->x = x;
  self->y = y;
  self->draws = true;
  self->from = side_strip_event (self, controller);
  if (tool->kind->press != NULL)
    tool->kind->press (tool, &self->from);
}

static void
side_strip_draw_on (TrammelSideStrip *self, const ToolEvent *event, bool grabs)
{
  Tool *tool = trammel_sheet_canvas_tool (self->sheet);

  if (side_strip_tool (self) == NULL)
    return;
  if (grabs && tool->kind->grab != NULL)
    tool->kind->grab (tool, &self->from);
  if (self->moved && tool->kind->pull != NULL)
    tool->kind->pull (tool, event);
}

static void
side_strip_end_drawing (TrammelSideStrip *self, const ToolEvent *event)
{
  Tool *tool = trammel_sheet_canvas_tool (self->sheet);

  self->draws = false;
  if (side_strip_tool (self) == NULL)
    return;                       /* another was taken meanwhile, to which places here mean nothing */
  if (self->moved && tool->kind->drop != NULL)
    tool->kind->drop (tool, event);
  if (!self->moved && tool->kind->click != NULL)
    tool->kind->click (tool, event);
}

static void
side_strip_begin (GtkGestureDrag *gesture, double x, double y, TrammelSideStrip *self)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  const SideScene side = side_strip_scene (self, &scene);
  const Hit hit = side_view_hit (&side, x, y, catch_px);
  TrammelSession *session = side_strip_session (self);
  Grip *grip;

  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
  if (trammel_sheet_canvas_pull (self->sheet) != NULL)
    pull_accept (trammel_sheet_canvas_pull (self->sheet));
  self->moved = false;
  self->before = x < edge_px ? self->width : 0;
  self->taken = side_strip_window_x (self, x);
  if (self->before > 0)
    return;
  if (side_strip_tool (self) != NULL && hit.kind != HIT_HINGE_END) {
    side_strip_begin_drawing (self, GTK_EVENT_CONTROLLER (gesture), x, y);
    return;
  }
  if (hit.kind != HIT_HANDLE && hit.kind != HIT_HINGE_END)
    trammel_session_select (session, side_strip_selection (trammel_session_aeroplane (session), &hit));
  grip = hit.kind == HIT_MARK ? NULL : grip_new (trammel_session_aeroplane (session), &hit, trammel_session_selection (session), true);
  if (grip != NULL)
    trammel_sheet_canvas_take_pull (self->sheet, pull_new (self->sheet, grip, (PullGround) { GTK_WIDGET (self), side_strip_px },
                                                           side_strip_place (self, x, y)));
}

/* As on the sheet: once a frame, and not for a hand that only trembles. */
static gboolean
side_strip_frame (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  TrammelSideStrip *self = TRAMMEL_SIDE_STRIP (widget);
  Pull *pull = trammel_sheet_canvas_pull (self->sheet);

  self->frame = 0;
  if (pull != NULL && self->moved)
    pull_to (pull, side_strip_place (self, self->x, self->y), self->manner);
  return G_SOURCE_REMOVE;
}

static void
side_strip_drag_edge (TrammelSideStrip *self, double x)
{
  self->width = self->chosen = CLAMP (self->before - (side_strip_window_x (self, x) - self->taken), narrowest, widest);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

static void
side_strip_update (GtkGestureDrag *gesture, double dx, double dy, TrammelSideStrip *self)
{
  const GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));

  gtk_gesture_drag_get_start_point (gesture, &self->x, &self->y);
  self->x += dx;
  if (self->before > 0) {
    side_strip_drag_edge (self, self->x);
    return;
  }
  self->y += dy;
  const bool grabs = !self->moved && hypot (dx, dy) >= still_px;
  self->moved = self->moved || grabs;
  if (self->draws) {
    const ToolEvent event = side_strip_event (self, GTK_EVENT_CONTROLLER (gesture));

    side_strip_draw_on (self, &event, grabs);
    return;
  }
  self->manner = (PullManner) { .straight = state & GDK_SHIFT_MASK, .loose = state & GDK_CONTROL_MASK };
  if (self->frame == 0)
    self->frame = gtk_widget_add_tick_callback (GTK_WIDGET (self), side_strip_frame, NULL, NULL);
}

static void
side_strip_end (GtkGestureDrag *gesture, double dx, double dy, TrammelSideStrip *self)
{
  Pull *pull = trammel_sheet_canvas_pull (self->sheet);

  if (self->draws) {
    const ToolEvent event = side_strip_event (self, GTK_EVENT_CONTROLLER (gesture));

    side_strip_end_drawing (self, &event);
    return;
  }
  if (pull == NULL)
    return;
  if (!self->moved) {
    trammel_sheet_canvas_end_pull (self->sheet);
    return;
  }
  pull_to (pull, side_strip_place (self, self->x, self->y), self->manner);
  pull_drop (pull);
}

static void
side_strip_cancel (GtkGesture *gesture, GdkEventSequence *sequence, TrammelSideStrip *self)
{
  Tool *tool = trammel_sheet_canvas_tool (self->sheet);

  if (self->draws && self->moved && tool->kind->cancel != NULL)
    tool->kind->cancel (tool);
  self->draws = false;
  if (trammel_sheet_canvas_pull (self->sheet) != NULL)
    pull_cancel (trammel_sheet_canvas_pull (self->sheet));
}

static gboolean
side_strip_scroll (GtkEventControllerScroll *scroll, double dx, double dy, TrammelSideStrip *self)
{
  const GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (scroll));
  const double step = gtk_event_controller_scroll_get_unit (scroll) == GDK_SCROLL_UNIT_WHEEL ? 60 : 1;

  if (state & GDK_CONTROL_MASK)
    trammel_sheet_canvas_zoom (self->sheet, pow (1.15, -dy * step / 60), trammel_sheet_canvas_view (self->sheet)->origin_x, self->y);
  else
    trammel_sheet_canvas_pan (self->sheet, 0, -dy * step);
  return GDK_EVENT_STOP;
}

static void
side_strip_motion (GtkEventControllerMotion *motion, double x, double y, TrammelSideStrip *self)
{
  const ToolKind *kind = side_strip_tool (self);

  self->x = x;
  self->y = y;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), x < edge_px ? "col-resize" : kind != NULL ? kind->cursor : NULL);
  if (kind != NULL && !self->draws && kind->hover != NULL) {
    const ToolEvent event = side_strip_event (self, GTK_EVENT_CONTROLLER (motion));

    kind->hover (trammel_sheet_canvas_tool (self->sheet), &event);
  }
}

static void
side_strip_leave (GtkEventControllerMotion *motion, TrammelSideStrip *self)
{
  const ToolKind *kind = side_strip_tool (self);

  if (kind != NULL && !self->draws && kind->leave != NULL)
    kind->leave (trammel_sheet_canvas_tool (self->sheet));
}

static void
side_strip_add_controllers (TrammelSideStrip *self)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_VERTICAL);
  GtkEventController *motion = gtk_event_controller_motion_new ();

  g_signal_connect (drag, "drag-begin", G_CALLBACK (side_strip_begin), self);
  g_signal_connect (drag, "drag-update", G_CALLBACK (side_strip_update), self);
  g_signal_connect (drag, "drag-end", G_CALLBACK (side_strip_end), self);
  g_signal_connect (drag, "cancel", G_CALLBACK (side_strip_cancel), self);
  g_signal_connect (scroll, "scroll", G_CALLBACK (side_strip_scroll), self);
  g_signal_connect (motion, "motion", G_CALLBACK (side_strip_motion), self);
  g_signal_connect (motion, "leave", G_CALLBACK (side_strip_leave), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
}

GtkWidget *
trammel_side_strip_new (TrammelSheetCanvas *sheet)
{
  TrammelSideStrip *self = g_object_new (TRAMMEL_TYPE_SIDE_STRIP, NULL);
  TrammelSession *session = trammel_sheet_canvas_session (sheet);

  self->sheet = g_object_ref (sheet);
  g_signal_connect_object (sheet, "view-changed", G_CALLBACK (side_strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "changed", G_CALLBACK (side_strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "offer-changed", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  theme_follow (GTK_WIDGET (self));
  side_strip_add_controllers (self);
  return GTK_WIDGET (self);
}
