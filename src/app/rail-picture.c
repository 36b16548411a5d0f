#include "trammel-config.h"
#include "app/rail-picture.h"
#include <glib/gi18n-lib.h>
#include "app/theme.h"
#include "document/changes.h"
#include "drawing/chord-figure.h"

struct _TrammelRailPicture {
  GtkWidget parent;
  TrammelSession *session;
  GtkWidget *area;
  bool nudging;        /* an arrow key is down */
};

G_DEFINE_FINAL_TYPE (TrammelRailPicture, trammel_rail_picture, GTK_TYPE_WIDGET)

static const Part *
rail_part (TrammelRailPicture *self)
{
  const Part *part = trammel_session_selected_part (self->session);

  return part != NULL && part->has_rail ? part : NULL;
}

static void
rail_draw (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  TrammelRailPicture *self = TRAMMEL_RAIL_PICTURE (data);
  const Part *part = rail_part (self);
  const Look look = theme_look (GTK_WIDGET (self));

  if (part != NULL)
    draw_rail_figure (cr, &(RailFigure) { &look, trammel_session_units (self->session), part,
                                          figures_solution (trammel_session_figures (self->session), part->piece.id) }, width, height);
}

static void
rail_refresh (TrammelRailPicture *self)
{
  const Part *part = rail_part (self);
  const Units units = trammel_session_units (self->session);
  g_autofree char *place = NULL, *from = NULL, *to = NULL, *words = NULL;

  gtk_widget_queue_draw (self->area);
  if (part == NULL)
    return;
  place = units_length (units, part->x);
  from = units_length (units, part->rail_from);
  to = units_length (units, part->rail_to);
  /* Translators: where a part stands on its rail, for a screen reader */
  words = g_strdup_printf (_("At %s on a rail from %s to %s"), place, from, to);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
}

/* A millimetre, or a 32nd of an inch. */
static double
rail_step (TrammelRailPicture *self)
{
  return trammel_session_units (self->session).length == LENGTH_INCH ? 25.4 / 32 : 1;
}

static void
rail_pull (TrammelRailPicture *self, double x)
{
  const Part *part = rail_part (self);
  const double step = rail_step (self);
  double place;

  if (part == NULL)
    return;
  /* Whole steps, but never off the rail, whose ends need not be whole. */
  place = step * round (rail_figure_place (part, gtk_widget_get_width (self->area), x) / step);
  trammel_session_preview (self->session, change_part_place (trammel_session_aeroplane (self->session), part->piece.id,
                                                             CLAMP (place, part->rail_from, part->rail_to), part->y, part->z));
}

static void
rail_drag_begin (TrammelRailPicture *self, double x, double y)
{
  gtk_widget_grab_focus (GTK_WIDGET (self));
  rail_pull (self, x);
}

static void
rail_drag_update (TrammelRailPicture *self, double dx, double dy, GtkGestureDrag *gesture)
{
  double x, y;

  if (trammel_session_is_previewing (self->session) && gtk_gesture_drag_get_start_point (gesture, &x, &y))
    rail_pull (self, x + dx);
}

static void
rail_drag_end (TrammelRailPicture *self)
{
  if (trammel_session_is_previewing (self->session))
    trammel_session_settle (self->session, _("Move Part"));
}

/* Another gesture took the pointer: nothing was meant. */
static void
rail_drag_cancelled (TrammelRailPicture *self)
{
  if (trammel_session_is_previewing (self->session))
    trammel_session_abandon (self->session);
}

static gboolean
rail_key (TrammelRailPicture *self, guint key, guint code, GdkModifierType state)
{
  const Part *part = rail_part (self);
  const double step = rail_step (self) * ((state & GDK_SHIFT_MASK) != 0 ? 10 : 1);
  double place;

  if (key == GDK_KEY_Escape && trammel_session_is_previewing (self->session)) {
    trammel_session_abandon (self->session);
    return TRUE;
  }
  if (part == NULL || (key != GDK_KEY_Left && key != GDK_KEY_Right))
    return FALSE;
  place = CLAMP (part->x + (key == GDK_KEY_Right ? step : -step), part->rail_from, part->rail_to);
  self->nudging = true;
  if (place != part->x)
    trammel_session_preview (self->session, change_part_place (trammel_session_aeroplane (self->session), part->piece.id, place, part->y, part->z));
  return TRUE;
}

/* However long an arrow was held, it was one step. */
static void
rail_stop_nudging (TrammelRailPicture *self)
{
  if (self->nudging && self->session != NULL && trammel_session_is_previewing (self->session))
    trammel_session_settle (self->session, _("Move Part"));
  self->nudging = false;
}

static void
rail_key_up (TrammelRailPicture *self, guint key)
{
  if (key == GDK_KEY_Left || key == GDK_KEY_Right)
    rail_stop_nudging (self);
}

static void
trammel_rail_picture_dispose (GObject *object)
{
  TrammelRailPicture *self = TRAMMEL_RAIL_PICTURE (object);

  g_clear_pointer (&self->area, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_rail_picture_parent_class)->dispose (object);
}

static void
trammel_rail_picture_class_init (TrammelRailPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_rail_picture_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "railpicture");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
trammel_rail_picture_init (TrammelRailPicture *self)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkEventController *keys = gtk_event_controller_key_new (), *focus = gtk_event_controller_focus_new ();

  self->area = gtk_drawing_area_new ();
  gtk_drawing_area_set_content_height (GTK_DRAWING_AREA (self->area), 76);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (self->area), rail_draw, self, NULL);
  gtk_widget_set_parent (self->area, GTK_WIDGET (self));
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_add_css_class (GTK_WIDGET (self), "rail-picture");
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (rail_drag_begin), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (rail_drag_update), self);
  g_signal_connect_swapped (drag, "cancel", G_CALLBACK (rail_drag_cancelled), self);
  g_signal_connect_swapped (drag, "drag-end", G_CALLBACK (rail_drag_end), self);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (rail_key), self);
  g_signal_connect_swapped (keys, "key-released", G_CALLBACK (rail_key_up), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (rail_stop_nudging), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
}

GtkWidget *
trammel_rail_picture_new (TrammelSession *session)
{
  TrammelRailPicture *self = g_object_new (TRAMMEL_TYPE_RAIL_PICTURE, NULL);

  self->session = g_object_ref (session);
  theme_follow (self->area);
  g_signal_connect_object (session, "changed", G_CALLBACK (rail_refresh), self, G_CONNECT_SWAPPED);
  rail_refresh (self);
  return GTK_WIDGET (self);
}
