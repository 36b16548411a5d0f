#include "app/strip.h"
#include <math.h>

struct _TrammelStrip {
  GtkWidget parent;
  GtkWidget *revealer, *sentence, *buttons[2], *progress;
  char *actions[2];
};

static guint answered_signal;

G_DEFINE_FINAL_TYPE (TrammelStrip, trammel_strip, GTK_TYPE_WIDGET)

static void
trammel_strip_dispose (GObject *object)
{
  TrammelStrip *self = TRAMMEL_STRIP (object);

  g_clear_pointer (&self->revealer, gtk_widget_unparent);
  g_clear_pointer (&self->actions[0], g_free);
  g_clear_pointer (&self->actions[1], g_free);
  G_OBJECT_CLASS (trammel_strip_parent_class)->dispose (object);
}

static void
trammel_strip_class_init (TrammelStripClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_strip_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "strip");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_ALERT);
  answered_signal = g_signal_new ("answered", TRAMMEL_TYPE_STRIP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

/* Gone first, so that what the action has to say can take its place. */
static void
strip_answer (TrammelStrip *self, GtkWidget *button)
{
  g_autofree char *action = g_strdup (self->actions[button == self->buttons[1] ? 1 : 0]);

  trammel_strip_hide (self);
  if (action != NULL)
    gtk_widget_activate_action (GTK_WIDGET (self), action, NULL);
  g_signal_emit (self, answered_signal, 0);
}

static GtkWidget *
strip_build_row (TrammelStrip *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  self->sentence = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->sentence), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (self->sentence), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign (GTK_LABEL (self->sentence), 0);
  gtk_widget_set_hexpand (self->sentence, TRUE);
  gtk_box_append (GTK_BOX (row), self->sentence);
  for (size_t i = 0; i < G_N_ELEMENTS (self->buttons); i++) {
    self->buttons[i] = gtk_button_new ();
    gtk_widget_set_valign (self->buttons[i], GTK_ALIGN_CENTER);
    g_signal_connect_swapped (self->buttons[i], "clicked", G_CALLBACK (strip_answer), self);
    gtk_box_append (GTK_BOX (row), self->buttons[i]);
  }
  self->progress = gtk_progress_bar_new ();
  gtk_widget_set_visible (self->progress, FALSE);
  gtk_box_append (GTK_BOX (column), row);
  gtk_box_append (GTK_BOX (column), self->progress);
  return column;
}

static void
strip_leave_when_folded (TrammelStrip *self)
{
  gtk_widget_set_visible (GTK_WIDGET (self), gtk_revealer_get_reveal_child (GTK_REVEALER (self->revealer)));
}

static void
trammel_strip_init (TrammelStrip *self)
{
  self->revealer = gtk_revealer_new ();
  gtk_revealer_set_transition_duration (GTK_REVEALER (self->revealer), 150);
  gtk_revealer_set_child (GTK_REVEALER (self->revealer), strip_build_row (self));
  g_signal_connect_swapped (self->revealer, "notify::child-revealed", G_CALLBACK (strip_leave_when_folded), self);
  gtk_widget_set_parent (self->revealer, GTK_WIDGET (self));
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
trammel_strip_new (void)
{
  return g_object_new (TRAMMEL_TYPE_STRIP, NULL);
}

static void
strip_set_button (TrammelStrip *self, size_t index, StripButton what)
{
  GtkWidget *button = self->buttons[index];

  g_free (self->actions[index]);
  self->actions[index] = g_strdup (what.action);
  gtk_widget_set_visible (button, what.label != NULL);
  if (what.label != NULL)
    gtk_button_set_label (GTK_BUTTON (button), what.label);
  gtk_button_set_use_underline (GTK_BUTTON (button), TRUE);
}

void
trammel_strip_show (TrammelStrip *self, const char *sentence, StripButton first, StripButton second)
{
  gtk_label_set_text (GTK_LABEL (self->sentence), sentence);
  strip_set_button (self, 0, first);
  strip_set_button (self, 1, second);
  trammel_strip_set_progress (self, NAN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, sentence, -1);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), TRUE);
}

void
trammel_strip_set_progress (TrammelStrip *self, double done)
{
  gtk_widget_set_visible (self->progress, !isnan (done));
  if (isnan (done))
    return;
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->progress), CLAMP (done, 0, 1));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->progress), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  gtk_label_get_text (GTK_LABEL (self->sentence)), -1);
}

void
trammel_strip_hide (TrammelStrip *self)
{
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), FALSE);
}

const char *
trammel_strip_sentence (TrammelStrip *self)
{
  return gtk_revealer_get_reveal_child (GTK_REVEALER (self->revealer)) ? gtk_label_get_text (GTK_LABEL (self->sentence)) : NULL;
}
