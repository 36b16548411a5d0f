#include "trammel-config.h"
#include "app/explain-button.h"
#include <glib/gi18n-lib.h>
#include "app/explain-popover.h"

struct _TrammelExplainButton {
  GtkButton parent;
  TrammelSession *session;
  ExplainedFigure what;
  char *id;                /* NULL: whatever is selected */
  GtkWidget *popover;      /* while it is open */
  guint tick;              /* while it is about to open */
  int frames;              /* until it does */
};

G_DEFINE_FINAL_TYPE (TrammelExplainButton, trammel_explain_button, GTK_TYPE_BUTTON)

static Explanation *
button_explanation (TrammelExplainButton *self)
{
  const char *id = self->id;

  if (id == NULL && explanation_about (self->what) != ABOUT_AEROPLANE)
    id = selection_single (trammel_session_selection (self->session));
  return explanation_new (trammel_session_figures (self->session), self->what, id, trammel_session_units (self->session));
}

static gboolean
button_drop (gpointer popover)
{
  gtk_widget_unparent (popover);
  g_object_unref (popover);
  return G_SOURCE_REMOVE;
}

/* It may not go within its own signal. */
static void
button_closed (TrammelExplainButton *self)
{
  if (self->popover != NULL)
    g_idle_add (button_drop, g_object_ref (g_steal_pointer (&self->popover)));
}

static void
button_open (TrammelExplainButton *self)
{
  g_autoptr (Explanation) explanation = button_explanation (self);

  if (explanation == NULL || self->popover != NULL)
    return;
  self->popover = explain_popover_new (explanation, GTK_WIDGET (self));
  g_signal_connect_object (self->popover, "closed", G_CALLBACK (button_closed), self, G_CONNECT_SWAPPED);
  gtk_popover_popup (GTK_POPOVER (self->popover));
}

/* The frame after the one that scrolled the button into sight. */
static gboolean
button_tick (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  TrammelExplainButton *self = TRAMMEL_EXPLAIN_BUTTON (widget);

  if (self->frames-- > 0)
    return G_SOURCE_CONTINUE;
  self->tick = 0;
  button_open (self);
  return G_SOURCE_REMOVE;
}

/* A screen reader may press it where it lies out of sight: the keyboard on it scrolls it there, and only then has a popover a place. */
static void
button_clicked (TrammelExplainButton *self)
{
  if (self->tick != 0 || self->popover != NULL)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (self));
  self->frames = 1;
  self->tick = gtk_widget_add_tick_callback (GTK_WIDGET (self), button_tick, NULL, NULL);
}

/* What lies open is of the aeroplane as it was. Within a drag nothing can be opened, so that its frames need not ask. */
static void
button_follow (TrammelExplainButton *self)
{
  g_autoptr (Explanation) explanation = NULL;

  if (trammel_session_is_previewing (self->session))
    return;
  if (self->popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (self->popover));
  explanation = button_explanation (self);
  gtk_widget_set_visible (GTK_WIDGET (self), explanation != NULL);
}

static void
trammel_explain_button_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  TrammelExplainButton *self = TRAMMEL_EXPLAIN_BUTTON (widget);

  GTK_WIDGET_CLASS (trammel_explain_button_parent_class)->size_allocate (widget, width, height, baseline);
  if (self->popover != NULL)
    gtk_popover_present (GTK_POPOVER (self->popover));
}

static void
trammel_explain_button_dispose (GObject *object)
{
  TrammelExplainButton *self = TRAMMEL_EXPLAIN_BUTTON (object);

  g_clear_pointer (&self->popover, gtk_widget_unparent);
  g_clear_pointer (&self->id, g_free);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_explain_button_parent_class)->dispose (object);
}

static void
trammel_explain_button_class_init (TrammelExplainButtonClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_explain_button_dispose;
  GTK_WIDGET_CLASS (klass)->size_allocate = trammel_explain_button_size_allocate;
}

static void
trammel_explain_button_init (TrammelExplainButton *self)
{
}

GtkWidget *
trammel_explain_button_new (TrammelSession *session, ExplainedFigure what, const char *label, const char *id)
{
  TrammelExplainButton *self = g_object_new (TRAMMEL_TYPE_EXPLAIN_BUTTON, "icon-name", "trammel-explain-symbolic",
                                             "valign", GTK_ALIGN_CENTER, NULL);
  /* Translators: “%s” is a figure's name as it stands beside the button */
  g_autofree char *name = g_strdup_printf (_("How “%s” is reckoned"), label);

  self->session = g_object_ref (session);
  self->what = what;
  self->id = g_strdup (id);
  gtk_widget_add_css_class (GTK_WIDGET (self), "flat");
  gtk_widget_add_css_class (GTK_WIDGET (self), "explain-button");
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect (self, "clicked", G_CALLBACK (button_clicked), NULL);
  g_signal_connect_object (session, "changed", G_CALLBACK (button_follow), self, G_CONNECT_SWAPPED);
  button_follow (self);
  return GTK_WIDGET (self);
}
