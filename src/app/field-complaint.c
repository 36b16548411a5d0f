#include "trammel-config.h"
#include "app/field-complaint.h"
#include <glib/gi18n-lib.h>
#include "app/field-text.h"
#include "app/window.h"

GtkWidget *
field_complaint_new (GtkWidget *entry)
{
  GtkWidget *self = g_object_new (GTK_TYPE_LABEL, "accessible-role", GTK_ACCESSIBLE_ROLE_ALERT, NULL);

  if (entry != NULL)
    gtk_accessible_update_relation (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_RELATION_DESCRIBED_BY, self, NULL, -1);
  gtk_label_set_wrap (GTK_LABEL (self), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self), 0);
  gtk_widget_add_css_class (self, "field-complaint");
  gtk_widget_set_visible (self, FALSE);
  return self;
}

void
field_complaint_say (GtkWidget *self, GtkWidget *entry, const char *sentence)
{
  gtk_label_set_text (GTK_LABEL (self), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self, sentence != NULL);
  if (entry == NULL)
    return;
  if (sentence != NULL)
    gtk_widget_add_css_class (entry, "error");
  else
    gtk_widget_remove_css_class (entry, "error");
  gtk_accessible_update_state (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_STATE_INVALID,
                               sentence != NULL ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
}

void
field_complaint_leave (GtkWidget *self, GtkWidget *entry, TrammelSession *session, const FieldSpec *spec)
{
  g_autofree char *value = field_text_with_unit (spec->kind, trammel_session_units (session), spec->value (session, spec));
  /* Translators: a row of the panel and what stands in it, after a sentence that says why what was typed cannot be taken: "Span stays 640 mm." */
  g_autofree char *kept = value != NULL ? g_strdup_printf (_("%1$s stays %2$s."), _(spec->label), value)
                          : g_strdup_printf (_("%s stays open."), _(spec->label));
  g_autofree char *sentences = g_strdup_printf ("%s %s", gtk_label_get_text (GTK_LABEL (self)), kept);

  field_complaint_say (self, entry, sentences);
}

void
field_complaint_hand_on (GtkWidget *self)
{
  GtkRoot *root = gtk_widget_get_root (self);

  if (gtk_widget_get_visible (self) && TRAMMEL_IS_WINDOW (root))
    trammel_window_toast (TRAMMEL_WINDOW (root), gtk_label_get_text (GTK_LABEL (self)), NULL, NULL);
}

char *
field_complaint_why (TrammelSession *session, const FieldSpec *spec, double value)
{
  char *why = spec->why != NULL ? spec->why (session, spec, value) : NULL;

  if (why != NULL)
    return why;
  return g_strdup (spec->refused != NULL ? _(spec->refused) : _("That cannot be here."));
}
