#include "app/sheet-canvas-private.h"
#include "app/pull.h"

static const double still_px = 3, finger_still_px = 9;     /* a hand that moves this much means it */
static const double wheel_px = 60, wheel_zoom = 1.15;      /* one notch */
static const double surface_zoom = 1.004;                  /* one px of a touchpad */

static ToolEvent
sheet_pointer_event (TrammelSheetCanvas *self, GtkEventController *controller, double x, double y)
{
  const GdkModifierType state = gtk_event_controller_get_current_event_state (controller);
  GdkDevice *device = gtk_event_controller_get_current_event_device (controller);

  return (ToolEvent) {
    .x = x, .y = y, .place = view_from_screen (&self->view, x, y),
    .shift = (state & GDK_SHIFT_MASK) != 0, .loose = (state & GDK_CONTROL_MASK) != 0,
    .finger = device != NULL && gdk_device_get_source (device) == GDK_SOURCE_TOUCHSCREEN,
  };
}

static gboolean
sheet_pointer_frame (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  TrammelSheetCanvas *self = TRAMMEL_SHEET_CANVAS (widget);

  self->frame = 0;
  sheet_canvas_flush (self);
  return G_SOURCE_REMOVE;
}

void
sheet_canvas_ask_frame (TrammelSheetCanvas *self)
{
  if (self->frame == 0)
    self->frame = gtk_widget_add_tick_callback (GTK_WIDGET (self), sheet_pointer_frame, NULL, NULL);
}

/* A finger on empty paper moves the paper. */
static bool
sheet_pointer_pans (TrammelSheetCanvas *self)
{
  if (self->hand)
    return true;
  return self->from.finger && self->tool->kind == &tool_select && tool_hit (self->tool, &self->from).kind == HIT_NOTHING;
}

static void
sheet_pointer_grab (TrammelSheetCanvas *self)
{
  self->grabbed = true;
  self->panning = sheet_pointer_pans (self);
  self->pan_x = self->from.x;
  self->pan_y = self->from.y;
  if (!self->panning && self->tool->kind->grab != NULL)
    self->tool->kind->grab (self->tool, &self->from);
}

static void
sheet_pointer_pull (TrammelSheetCanvas *self)
{
  if (self->panning) {
    const double dx = self->pointer.x - self->pan_x, dy = self->pointer.y - self->pan_y;

    self->pan_x = self->pointer.x;
    self->pan_y = self->pointer.y;
    if (dx != 0 || dy != 0)
      trammel_sheet_canvas_pan (self, dx, dy);
  } else if (self->tool->kind->pull != NULL)
    self->tool->kind->pull (self->tool, &self->pointer);
}

void
sheet_canvas_flush (TrammelSheetCanvas *self)
{
  const double still = self->from.finger ? finger_still_px : still_px;

  if (self->frame != 0) {
    gtk_widget_remove_tick_callback (GTK_WIDGET (self), self->frame);
    self->frame = 0;
  }
  if (self->pressed && !self->dead) {
    if (!self->grabbed && hypot (self->pointer.x - self->from.x, self->pointer.y - self->from.y) >= still)
      sheet_pointer_grab (self);
    if (self->grabbed)
      sheet_pointer_pull (self);
  } else if (!self->pressed && self->pointer_inside && !self->overlay.has_cursor && self->tool->kind->hover != NULL)
    self->tool->kind->hover (self->tool, &self->pointer);
  sheet_canvas_emit_pointer (self);
}

void
sheet_canvas_drop_pointer (TrammelSheetCanvas *self)
{
  self->dead = self->pressed;
  self->grabbed = false;
}

static void
sheet_pointer_begin (GtkGestureDrag *gesture, double x, double y, TrammelSheetCanvas *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self));
  sheet_canvas_stop_nudging (self);
  if (self->pull != NULL)
    pull_accept (self->pull);
  self->overlay.has_cursor = false;
  self->from = self->pointer = sheet_pointer_event (self, GTK_EVENT_CONTROLLER (gesture), x, y);
  self->pointer_inside = self->pressed = true;
  self->fits = self->fits && !sheet_canvas_draws_over_plan (self);
  self->grabbed = self->dead = self->panning = false;
  if (!self->hand && self->tool->kind->press != NULL)
    self->tool->kind->press (self->tool, &self->from);
}

static void
sheet_pointer_update (GtkGestureDrag *gesture, double dx, double dy, TrammelSheetCanvas *self)
{
  double x, y;

  gtk_gesture_drag_get_start_point (gesture, &x, &y);
  self->pointer = sheet_pointer_event (self, GTK_EVENT_CONTROLLER (gesture), x + dx, y + dy);
  sheet_canvas_ask_frame (self);
}

static void
sheet_pointer_end (GtkGestureDrag *gesture, double dx, double dy, TrammelSheetCanvas *self)
{
  if (!self->pressed)
    return;
  sheet_canvas_flush (self);
  self->pressed = false;
  if (self->dead || self->panning || (self->hand && !self->grabbed))
    return;
  if (self->grabbed && self->tool->kind->drop != NULL)
    self->tool->kind->drop (self->tool, &self->pointer);
  if (!self->grabbed && self->tool->kind->click != NULL)
    self->tool->kind->click (self->tool, &self->pointer);
}

/* The system took the pointer away: as if Esc had been pressed. */
static void
sheet_pointer_cancel (GtkGesture *gesture, GdkEventSequence *sequence, TrammelSheetCanvas *self)
{
  if (self->pressed && self->grabbed && self->tool->kind->cancel != NULL)
    self->tool->kind->cancel (self->tool);
  self->pressed = self->grabbed = false;
}

/* Whether the pointer has stayed at its place in the window, and only the sheet has moved beneath it. */
static bool
sheet_pointer_rests (TrammelSheetCanvas *self, GtkEventController *controller)
{
  GdkEvent *event = gtk_event_controller_get_current_event (controller);
  Point now;

  if (event == NULL || !gdk_event_get_position (event, &now.x, &now.y))
    return false;
  if (point_distance (now, self->in_window) < 0.5)
    return true;
  self->in_window = now;
  return false;
}

static void
sheet_pointer_motion (GtkEventControllerMotion *controller, double x, double y, TrammelSheetCanvas *self)
{
  const bool rests = sheet_pointer_rests (self, GTK_EVENT_CONTROLLER (controller));

  if (self->pointer_inside && self->pointer.x == x && self->pointer.y == y)
    return;
  self->pointer = sheet_pointer_event (self, GTK_EVENT_CONTROLLER (controller), x, y);
  self->pointer_inside = true;
  /* A sheet that moves under a still pointer is no motion; a key cursor would be lost by it. */
  if (self->overlay.has_cursor && rests)
    return;
  self->overlay.has_cursor = false;
  sheet_canvas_ask_frame (self);
}

static void
sheet_pointer_leave (GtkEventControllerMotion *controller, TrammelSheetCanvas *self)
{
  self->pointer_inside = false;
  if (!self->pressed && !self->overlay.has_cursor && self->tool->kind->leave != NULL)
    self->tool->kind->leave (self->tool);
  sheet_canvas_emit_pointer (self);
}

static void
sheet_pointer_middle_begin (GtkGestureDrag *gesture, double x, double y, TrammelSheetCanvas *self)
{
  self->pan_x = self->pan_y = 0;
}

static void
sheet_pointer_middle (GtkGestureDrag *gesture, double dx, double dy, TrammelSheetCanvas *self)
{
  trammel_sheet_canvas_pan (self, dx - self->pan_x, dy - self->pan_y);
  self->pan_x = dx;
  self->pan_y = dy;
}

static gboolean
sheet_pointer_scroll (GtkEventControllerScroll *scroll, double dx, double dy, TrammelSheetCanvas *self)
{
  const GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (scroll));
  const bool wheel = gtk_event_controller_scroll_get_unit (scroll) == GDK_SCROLL_UNIT_WHEEL;
  const double step = wheel ? wheel_px : 1;

  if (state & GDK_CONTROL_MASK)
    trammel_sheet_canvas_zoom (self, pow (wheel ? wheel_zoom : surface_zoom, -dy), self->pointer.x, self->pointer.y);
  else if (state & GDK_SHIFT_MASK)
    trammel_sheet_canvas_pan (self, -(dx + dy) * step, 0);
  else
    trammel_sheet_canvas_pan (self, -dx * step, -dy * step);
  return GDK_EVENT_STOP;
}

/* Two fingers pan and pinch together; what one finger was doing before is put back. */
static void
sheet_pointer_pinch_begin (GtkGesture *gesture, GdkEventSequence *sequence, TrammelSheetCanvas *self)
{
  self->pinch = 1;
  if (!gtk_gesture_get_bounding_box_center (gesture, &self->pan_x, &self->pan_y)) {
    self->pan_x = self->view.width / 2;
    self->pan_y = self->view.height / 2;
  }
  if (self->pressed && self->tool->kind->cancel != NULL)
    self->tool->kind->cancel (self->tool);
  sheet_canvas_drop_pointer (self);
}

static void
sheet_pointer_pinch (GtkGestureZoom *zoom, double scale, TrammelSheetCanvas *self)
{
  double x = self->pan_x, y = self->pan_y;

  gtk_gesture_get_bounding_box_center (GTK_GESTURE (zoom), &x, &y);
  trammel_sheet_canvas_pan (self, x - self->pan_x, y - self->pan_y);
  trammel_sheet_canvas_zoom (self, scale / self->pinch, x, y);
  self->pinch = scale;
  self->pan_x = x;
  self->pan_y = y;
}

static GtkGesture *
sheet_pointer_add_drag (TrammelSheetCanvas *self, guint button)
{
  GtkGesture *drag = gtk_gesture_drag_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), button);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  return drag;
}

static void
sheet_pointer_add_sheet_moves (TrammelSheetCanvas *self)
{
  GtkGesture *middle = sheet_pointer_add_drag (self, GDK_BUTTON_MIDDLE), *zoom = gtk_gesture_zoom_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);

  g_signal_connect (middle, "drag-begin", G_CALLBACK (sheet_pointer_middle_begin), self);
  g_signal_connect (middle, "drag-update", G_CALLBACK (sheet_pointer_middle), self);
  g_signal_connect (scroll, "scroll", G_CALLBACK (sheet_pointer_scroll), self);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  g_signal_connect (zoom, "begin", G_CALLBACK (sheet_pointer_pinch_begin), self);
  g_signal_connect (zoom, "scale-changed", G_CALLBACK (sheet_pointer_pinch), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (zoom));
}

void
sheet_canvas_add_pointer (TrammelSheetCanvas *self)
{
  GtkGesture *drag = sheet_pointer_add_drag (self, GDK_BUTTON_PRIMARY);
  GtkEventController *motion = gtk_event_controller_motion_new ();

  self->pinch = 1;
  g_signal_connect (drag, "drag-begin", G_CALLBACK (sheet_pointer_begin), self);
  g_signal_connect (drag, "drag-update", G_CALLBACK (sheet_pointer_update), self);
  g_signal_connect (drag, "drag-end", G_CALLBACK (sheet_pointer_end), self);
  g_signal_connect (drag, "cancel", G_CALLBACK (sheet_pointer_cancel), self);
  g_signal_connect (motion, "motion", G_CALLBACK (sheet_pointer_motion), self);
  g_signal_connect (motion, "enter", G_CALLBACK (sheet_pointer_motion), self);
  g_signal_connect (motion, "leave", G_CALLBACK (sheet_pointer_leave), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  sheet_pointer_add_sheet_moves (self);
}
