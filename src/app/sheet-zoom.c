#include "app/sheet-canvas-private.h"
#include <math.h>
#include "drawing/sheet-places.h"

static const double fit_margin = 24, select_margin = 80, sight_margin = 16;   /* px */
static const guint glide_ms = 160;

const SheetView *
trammel_sheet_canvas_view (TrammelSheetCanvas *self)
{
  return &self->view;
}

static void
sheet_zoom_show (TrammelSheetCanvas *self, SheetView view)
{
  self->view = view;
  /* The hand stands still, but what it points at has moved. */
  self->pointer.place = view_from_screen (&view, self->pointer.x, self->pointer.y);
  if (self->pressed || self->pointer_inside)
    sheet_canvas_ask_frame (self);
  sheet_canvas_emit_view (self);
}

static void
sheet_zoom_stop (TrammelSheetCanvas *self)
{
  if (self->glide != NULL)
    adw_animation_pause (self->glide);
  g_clear_object (&self->glide);
}

void
trammel_sheet_canvas_set_view (TrammelSheetCanvas *self, SheetView view)
{
  sheet_zoom_stop (self);
  self->fits = false;
  sheet_zoom_show (self, view);
}

void
trammel_sheet_canvas_zoom (TrammelSheetCanvas *self, double factor, double x, double y)
{
  trammel_sheet_canvas_set_view (self, view_zoomed (&self->view, factor, x, y));
}

void
trammel_sheet_canvas_zoom_middle (TrammelSheetCanvas *self, double factor)
{
  trammel_sheet_canvas_zoom (self, factor, self->view.width / 2, self->view.height / 2);
}

void
trammel_sheet_canvas_pan (TrammelSheetCanvas *self, double dx, double dy)
{
  trammel_sheet_canvas_set_view (self, view_panned (&self->view, dx, dy));
}

/* Between two views: the middle moves evenly, the scale by equal factors. */
static SheetView
sheet_zoom_between (const SheetView *a, const SheetView *b, double t)
{
  const Point from = view_from_screen (a, a->width / 2, a->height / 2), to = view_from_screen (b, b->width / 2, b->height / 2);
  const Point middle = point_mix (from, to, t);
  SheetView view = *b;

  view.scale = a->scale * pow (b->scale / a->scale, t);
  view.origin_x = b->width / 2 - middle.y * view.scale;
  view.origin_y = b->height / 2 - middle.x * view.scale;
  return view;
}

static void
sheet_zoom_glide_to (double t, gpointer data)
{
  TrammelSheetCanvas *self = data;

  sheet_zoom_show (self, t >= 1 ? self->glide_to : sheet_zoom_between (&self->glide_from, &self->glide_to, t));
}

static void
sheet_zoom_glide (TrammelSheetCanvas *self, SheetView to)
{
  sheet_zoom_stop (self);
  self->glide_from = self->view;
  self->glide_to = to;
  self->glide = adw_timed_animation_new (GTK_WIDGET (self), 0, 1, glide_ms,
                                         adw_callback_animation_target_new (sheet_zoom_glide_to, self, NULL));
  adw_timed_animation_set_easing (ADW_TIMED_ANIMATION (self->glide), ADW_EASE_OUT_CUBIC);
  adw_animation_play (self->glide);
}

static bool
sheet_zoom_is_bare (TrammelSheetCanvas *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);

  return aeroplane_count (aeroplane, PIECE_SURFACE) == 0 && aeroplane_count (aeroplane, PIECE_BODY) == 0
         && aeroplane_count (aeroplane, PIECE_PART) == 0;
}

bool
trammel_sheet_canvas_has_plan_alone (TrammelSheetCanvas *self)
{
  return sheet_zoom_is_bare (self) && trammel_sheet_canvas_scene (self).plan != NULL;
}

/* All that is drawn, and while a plan is worked on the plan; a plan with nothing drawn over it yet. */
static Box
sheet_zoom_extent (TrammelSheetCanvas *self)
{
  const bool alone = sheet_zoom_is_bare (self), seen = trammel_sheet_canvas_scene (self).plan != NULL;
  const Box drawn = sheet_extent (trammel_session_figures (self->session));
  Box picture;

  if (!seen || !(alone || sheet_canvas_draws_over_plan (self)) || !sheet_sight_picture (self, &picture))
    return drawn;
  return alone ? picture : box_joined (picture, drawn);
}

void
trammel_sheet_canvas_fit (TrammelSheetCanvas *self, bool glide)
{
  const SheetView to = view_fitted (&self->view, sheet_zoom_extent (self), fit_margin);

  if (glide)
    sheet_zoom_glide (self, to);
  else {
    sheet_zoom_stop (self);
    sheet_zoom_show (self, to);
  }
  self->fits = true;
}

bool
trammel_sheet_canvas_is_fitted (TrammelSheetCanvas *self)
{
  return self->fits && (self->glide == NULL || adw_animation_get_state (self->glide) != ADW_ANIMATION_PLAYING);
}

static bool
sheet_zoom_selection (TrammelSheetCanvas *self, Box *box)
{
  *box = sheet_selection_extent (trammel_session_figures (self->session), trammel_session_selection (self->session));
  return box->min.x <= box->max.x && box->min.y <= box->max.y;
}

/* A single node has no size: it comes to the middle at the present zoom. */
void
trammel_sheet_canvas_fit_selection (TrammelSheetCanvas *self)
{
  SheetView to = self->view;
  Box box;

  if (!sheet_zoom_selection (self, &box))
    return;
  if (box.max.x - box.min.x > 1 || box.max.y - box.min.y > 1)
    to = view_fitted (&self->view, box, select_margin);
  else {
    const Point middle = view_to_screen (&self->view, point_mix (box.min, box.max, 0.5));

    to = view_panned (&self->view, self->view.width / 2 - middle.x, self->view.height / 2 - middle.y);
  }
  sheet_zoom_glide (self, to);
  self->fits = false;
}

void
trammel_sheet_canvas_bring_into_sight (TrammelSheetCanvas *self, Box box)
{
  const Point corner = view_to_screen (&self->view, box.min), opposite = view_to_screen (&self->view, box.max);
  const Point middle = point_mix (corner, opposite, 0.5);
  SheetView to = view_fitted (&self->view, box, select_margin);

  if (fmin (corner.x, corner.y) >= sight_margin && opposite.x <= self->view.width - sight_margin
      && opposite.y <= self->view.height - sight_margin)
    return;
  if (to.scale >= self->view.scale)
    to = view_panned (&self->view, self->view.width / 2 - middle.x, self->view.height / 2 - middle.y);
  sheet_zoom_glide (self, to);
  self->fits = false;
}

static double
sheet_zoom_scale_of (GdkMonitor *monitor)
{
  const double usual = 96 / 25.4;
  GdkRectangle px;
  double scale;

  if (monitor == NULL || gdk_monitor_get_width_mm (monitor) <= 0)
    return usual;
  gdk_monitor_get_geometry (monitor, &px);
  scale = px.width / (double) gdk_monitor_get_width_mm (monitor);
  /* A projector, or a monitor that tells nonsense. */
  return scale > 1 && scale < 20 ? scale : usual;
}

/* Which monitor that is only the display server knows, and to ask it holds up every frame of a zoom. Nobody brings a window to another
 * monitor within less than this. */
static const gint64 monitor_us = 500000;

double
trammel_sheet_canvas_true_scale (TrammelSheetCanvas *self)
{
  const gint64 now = g_get_monotonic_time ();

  if (self->true_scale == 0 || now - self->true_scale_asked > monitor_us) {
    GtkNative *native = gtk_widget_get_native (GTK_WIDGET (self));
    GdkSurface *surface = native != NULL ? gtk_native_get_surface (native) : NULL;
    GdkMonitor *monitor = surface != NULL ? gdk_display_get_monitor_at_surface (gdk_surface_get_display (surface), surface) : NULL;

    /* A window that opens stands on none yet: what holds then would be shown long after. */
    if (monitor == NULL)
      return sheet_zoom_scale_of (NULL);
    self->true_scale = sheet_zoom_scale_of (monitor);
    self->true_scale_asked = now;
  }
  return self->true_scale;
}

void
trammel_sheet_canvas_true_size (TrammelSheetCanvas *self)
{
  const double factor = trammel_sheet_canvas_true_scale (self) / self->view.scale;

  sheet_zoom_glide (self, view_zoomed (&self->view, factor, self->view.width / 2, self->view.height / 2));
  self->fits = false;
}

void
trammel_sheet_canvas_reveal_selection (TrammelSheetCanvas *self)
{
  Point near, far;
  Box box;

  if (!sheet_zoom_selection (self, &box))
    return;
  near = view_to_screen (&self->view, box.min);
  far = view_to_screen (&self->view, box.max);
  if (MAX (near.x, far.x) < 0 || MAX (near.y, far.y) < 0
      || MIN (near.x, far.x) > self->view.width || MIN (near.y, far.y) > self->view.height)
    trammel_sheet_canvas_pan (self, self->view.width / 2 - (near.x + far.x) / 2, self->view.height / 2 - (near.y + far.y) / 2);
}

static bool
sheet_zoom_shows (const SheetView *view, Box box)
{
  const Point near = view_to_screen (view, box.min), far = view_to_screen (view, box.max);

  return MIN (near.x, far.x) >= 0 && MIN (near.y, far.y) >= 0 && MAX (near.x, far.x) <= view->width && MAX (near.y, far.y) <= view->height;
}

/* An aeroplane that was all in view and by one step, such as a span typed large, no longer is, is fitted again. What a hand or a key pulls
 * out of view was seen going there, and a sheet that is drawn upon lies still. */
void
sheet_canvas_keep_in_view (TrammelSheetCanvas *self)
{
  const bool previewing = trammel_session_is_previewing (self->session), seen = self->previewed;
  Box before = self->extent;

  self->previewed = previewing;
  if (previewing)
    return;
  self->extent = sheet_zoom_extent (self);
  if (!seen && !self->tool->kind->draws && sheet_zoom_shows (&self->view, before) && !sheet_zoom_shows (&self->view, self->extent))
    trammel_sheet_canvas_fit (self, true);
}
