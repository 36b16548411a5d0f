#include "trammel-config.h"
#include "app/selection-page-private.h"
#include <glib/gi18n-lib.h>
#include "app/focus-scroller.h"
#include "app/piece-edit.h"

static const char mark_key[] = "trammel-mark";      /* of a row or its button: the mark's number, from 1 */

static guint
mark_of (gpointer widget)
{
  return GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (widget), mark_key));
}

/* The page has been made anew: what is typed next is of that mark, or of the last. */
static void
page_edit_mark (TrammelSelectionPage *self, guint number)
{
  TrammelField *last = NULL;

  for (guint i = 0; i < self->fields->len; i++) {
    TrammelField *field = g_ptr_array_index (self->fields, i);

    if (mark_of (field) > 0 && mark_of (field) <= number)
      last = field;
  }
  if (last == NULL)
    return;
  trammel_field_edit (last, "");
  focus_scroller_show (GTK_WIDGET (last));
}

static TrammelSelectionPage *
page_of (GtkWidget *button)
{
  return TRAMMEL_SELECTION_PAGE (gtk_widget_get_ancestor (button, TRAMMEL_TYPE_SELECTION_PAGE));
}

static void
mark_add_clicked (GtkWidget *button)
{
  TrammelSelectionPage *self = page_of (button);

  trammel_session_do (self->session, mark_added (self->session), _("Add Balance Mark"));
  page_edit_mark (self, G_MAXUINT);
}

static void
mark_remove_clicked (GtkWidget *button)
{
  TrammelSelectionPage *self = page_of (button);
  const guint number = mark_of (button);
  const Selection mark = selection_of_mark ((int) number - 1);
  const Aeroplane *now = trammel_session_settled (self->session);
  g_autofree char *label = piece_edit_removed_label (now, &mark);

  trammel_session_do (self->session, piece_edit_removed (now, &mark), label);
  page_edit_mark (self, number);
}

static GtkWidget *
mark_remove_button (guint number)
{
  GtkWidget *remove = gtk_button_new_from_icon_name ("list-remove-symbolic");
  /* Translators: %u is a balance mark's number. */
  g_autofree char *words = g_strdup_printf (_("Remove Balance Mark %u"), number);

  gtk_widget_add_css_class (remove, "flat");
  gtk_widget_set_tooltip_text (remove, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (remove), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  g_object_set_data (G_OBJECT (remove), mark_key, GUINT_TO_POINTER (number));
  g_signal_connect (remove, "clicked", G_CALLBACK (mark_remove_clicked), NULL);
  return remove;
}

void
selection_page_build_marks (TrammelSelectionPage *self)
{
  const size_t count = trammel_session_figures (self->session)->balance.mark_count;
  const size_t stated = aeroplane_count (trammel_session_aeroplane (self->session), PIECE_MARK);
  GtkWidget *group, *add;

  if (count == 0)
    return;
  group = selection_page_add_group (self, _("Balance Mark"), _("aft of the leading edge"), (FieldList) { NULL, 0 });
  for (size_t i = 0; i < count; i++) {
    GtkWidget *field;

    selection_page_add_rows (self, group, (FieldList) { mark_field (i, count > 1), 1 });
    field = g_ptr_array_index (self->fields, self->fields->len - 1);
    g_object_set_data (G_OBJECT (field), mark_key, GUINT_TO_POINTER ((guint) i + 1));
    if (i < stated)
      trammel_field_add_button (TRAMMEL_FIELD (field), mark_remove_button ((guint) i + 1));
  }
  add = gtk_button_new_with_label (_("Add a Balance Mark"));
  g_signal_connect (add, "clicked", G_CALLBACK (mark_add_clicked), NULL);
  gtk_widget_set_margin_top (add, 6);
  gtk_widget_set_margin_bottom (add, 6);
  gtk_widget_set_margin_start (add, 10);
  gtk_widget_set_margin_end (add, 10);
  trammel_group_add (TRAMMEL_GROUP (group), add);
}
