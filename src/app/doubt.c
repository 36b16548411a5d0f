#include "trammel-config.h"
#include "app/doubt.h"
#include "app/window.h"

typedef struct {
  TrammelSheetCanvas *sheet;      /* it owns this */
  char *id, *sentence;
  bool from_the_side;             /* of a body's two outlines the one */
  Outline *outline;               /* as it was traced, and stood in the document */
  Point *places;                  /* mm on the sheet */
  SheetDoubt shown;
} Doubt;

static const char key[] = "trammel-doubt";

static void
doubt_free (gpointer data)
{
  Doubt *self = data;

  trammel_sheet_canvas_overlay (self->sheet)->doubt = NULL;
  g_clear_pointer (&self->outline, outline_unref);
  g_free (self->id);
  g_free (self->sentence);
  g_free (self->places);
  g_free (self);
}

static const Outline *
doubt_outline (Doubt *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (trammel_sheet_canvas_session (self->sheet));
  const Surface *surface = self->id != NULL ? aeroplane_surface_by_id (aeroplane, self->id) : NULL;
  const Body *body = self->id != NULL ? aeroplane_body_by_id (aeroplane, self->id) : NULL;

  if (surface != NULL)
    return surface->outline;
  return body == NULL ? NULL : self->from_the_side ? body->side_outline : body->outline;
}

static TrammelWindow *
window_of (TrammelSheetCanvas *sheet)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (sheet));

  return TRAMMEL_IS_WINDOW (root) ? TRAMMEL_WINDOW (root) : NULL;
}

static void
doubt_drop (TrammelSheetCanvas *sheet)
{
  g_object_set_data (G_OBJECT (sheet), key, NULL);
  trammel_sheet_canvas_refresh (sheet);
}

static void
outline_may_have_changed (TrammelSheetCanvas *sheet)
{
  Doubt *self = g_object_get_data (G_OBJECT (sheet), key);
  g_autofree char *sentence = NULL;

  if (self == NULL || outline_equal (doubt_outline (self), self->outline))
    return;
  sentence = g_strdup (self->sentence);
  doubt_drop (sheet);
  if (window_of (sheet) != NULL)
    trammel_window_tell_no_more (window_of (sheet), sentence);
}

static void
strip_may_have_changed (TrammelSheetCanvas *sheet)
{
  Doubt *self = g_object_get_data (G_OBJECT (sheet), key);

  if (self != NULL && window_of (sheet) != NULL && !trammel_window_tells (window_of (sheet), self->sentence))
    doubt_drop (sheet);
}

/* Another tool begins with nothing over the sheet. */
static void
doubt_show_again (TrammelSheetCanvas *sheet)
{
  Doubt *self = g_object_get_data (G_OBJECT (sheet), key);

  if (self != NULL)
    trammel_sheet_canvas_overlay (sheet)->doubt = &self->shown;
}

static void
doubt_watch (TrammelSheetCanvas *sheet)
{
  static const char watched[] = "trammel-doubt-watched";

  if (g_object_get_data (G_OBJECT (sheet), watched) != NULL || window_of (sheet) == NULL)
    return;
  g_object_set_data (G_OBJECT (sheet), watched, GINT_TO_POINTER (TRUE));
  g_signal_connect_object (trammel_sheet_canvas_session (sheet), "changed", G_CALLBACK (outline_may_have_changed), sheet, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "tool-changed", G_CALLBACK (doubt_show_again), sheet, 0);
  trammel_window_watch_strip (window_of (sheet), G_CALLBACK (strip_may_have_changed), G_OBJECT (sheet));
}

static Point *
places_on_sheet (const TraceOrder *order, const TraceResult *result)
{
  Point *places = g_new (Point, result->unseen->len + 1);

  for (guint i = 0; i < result->unseen->len; i++) {
    const Point own = g_array_index (result->unseen, Point, i);

    places[i] = (Point) { order->ground->placing.x + own.x, own.y * order->side };
  }
  return places;
}

void
doubt_show (TrammelSheetCanvas *sheet, const TraceOrder *order, const TraceResult *result, const char *sentence)
{
  Doubt *self = g_new0 (Doubt, 1);

  doubt_watch (sheet);
  self->sheet = sheet;
  self->id = g_strdup (selection_single (trammel_session_selection (trammel_sheet_canvas_session (sheet))));
  self->from_the_side = order->ground->shows == VIEW_BODY_SIDE;
  self->outline = doubt_outline (self) != NULL ? outline_ref ((Outline *) doubt_outline (self)) : NULL;
  self->sentence = g_strdup (sentence);
  self->places = places_on_sheet (order, result);
  self->shown = (SheetDoubt) { self->places, result->unseen->len };
  g_object_set_data_full (G_OBJECT (sheet), key, self, doubt_free);
  trammel_sheet_canvas_overlay (sheet)->doubt = &self->shown;
  trammel_sheet_canvas_refresh (sheet);
}
