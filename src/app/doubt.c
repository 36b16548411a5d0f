#include "trammel-config.h"
#include "app/doubt.h"
#include "app/tool.h"
#include "app/trace-landing.h"
#include "app/window.h"

typedef struct {
  TrammelSheetCanvas *sheet;      /* it owns this */
  char *id, *sentence, *view;
  bool from_the_side;             /* of a body's two outlines the one */
  bool passes;                    /* it was said to pass a click: that is true until it is accepted */
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
  g_free (self->view);
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

/* Whether the document holds that the outline passes a click. */
static bool
doubt_passes (Doubt *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (trammel_sheet_canvas_session (self->sheet));
  const Surface *surface = self->id != NULL ? aeroplane_surface_by_id (aeroplane, self->id) : NULL;
  const Body *body = self->id != NULL ? aeroplane_body_by_id (aeroplane, self->id) : NULL;

  if (surface != NULL)
    return surface->passed.by > 0;
  return body != NULL && (self->from_the_side ? body->side_passed : body->passed).by > 0;
}

static bool
doubt_stands (Doubt *self)
{
  return self->outline != NULL && outline_equal (doubt_outline (self), self->outline) && (!self->passes || doubt_passes (self));
}

/* Over the print that it is of: with its own view in hand, and where that is no view from above only while the plan is worked on. */
static bool
doubt_is_in_sight (Doubt *self)
{
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet));
  const ToolKind *kind = trammel_sheet_canvas_tool (self->sheet)->kind;
  const bool works = kind == &tool_plan || kind == &tool_outline || kind == &tool_move_sheet;

  return self->shown.count > 0 && view != NULL && g_strcmp0 (view->id, self->view) == 0
         && (works || (view->shows != VIEW_FIN && view->shows != VIEW_BODY_SIDE));
}

/* Another tool begins with nothing over the sheet, too. */
static void
doubt_refresh (TrammelSheetCanvas *sheet)
{
  Doubt *self = g_object_get_data (G_OBJECT (sheet), key);
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (sheet);
  const SheetDoubt *shown;

  if (self == NULL)
    return;
  shown = doubt_stands (self) && doubt_is_in_sight (self) ? &self->shown : NULL;
  if (!doubt_stands (self) && window_of (sheet) != NULL)
    trammel_window_tell_no_more (window_of (sheet), self->sentence);
  if (overlay->doubt == shown)
    return;
  overlay->doubt = shown;
  trammel_sheet_canvas_refresh (sheet);
}

static void
doubt_watch (TrammelSheetCanvas *sheet)
{
  static const char watched[] = "trammel-doubt-watched";

  if (g_object_get_data (G_OBJECT (sheet), watched) != NULL || window_of (sheet) == NULL)
    return;
  g_object_set_data (G_OBJECT (sheet), watched, GINT_TO_POINTER (TRUE));
  g_signal_connect_object (trammel_sheet_canvas_session (sheet), "changed", G_CALLBACK (doubt_refresh), sheet, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_sheet_canvas_plan_store (sheet), "changed", G_CALLBACK (doubt_refresh), sheet, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "tool-changed", G_CALLBACK (doubt_refresh), sheet, 0);
}

static Point *
places_on_sheet (const TraceOrder *order, const GArray *unseen)
{
  Point *places = g_new (Point, unseen->len + 1);

  for (guint i = 0; i < unseen->len; i++) {
    const Point own = g_array_index (unseen, Point, i);

    places[i] = (Point) { order->ground->placing.x + own.x, own.y * order->side };
  }
  return places;
}

void
doubt_show (TrammelSheetCanvas *sheet, const TraceOrder *order, const GArray *unseen, const char *sentence)
{
  const Piece *piece = trace_landing_piece (trammel_session_settled (trammel_sheet_canvas_session (sheet)), order->ground);
  Doubt *self = g_new0 (Doubt, 1);

  doubt_watch (sheet);
  self->sheet = sheet;
  self->id = piece != NULL ? g_strdup (piece->id) : NULL;
  self->from_the_side = order->ground->shows == VIEW_BODY_SIDE;
  self->view = g_strdup (order->ground->view);
  self->outline = doubt_outline (self) != NULL ? outline_ref ((Outline *) doubt_outline (self)) : NULL;
  self->passes = doubt_passes (self);
  self->sentence = g_strdup (sentence);
  if (unseen != NULL) {
    self->places = places_on_sheet (order, unseen);
    self->shown = (SheetDoubt) { self->places, unseen->len };
  }
  g_object_set_data_full (G_OBJECT (sheet), key, self, doubt_free);
  doubt_refresh (sheet);
}
