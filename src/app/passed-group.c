#include "trammel-config.h"
#include "app/passed-group.h"
#include <glib/gi18n-lib.h>
#include "app/group.h"
#include "document/changes.h"
#include "figures/passed-click.h"

typedef struct {
  TrammelSession *session;
  GtkWidget *group, *sentence;
} PassedGroup;

static const char key[] = "passed-group";

/* The surface or body that is selected as a whole or by its nodes; NULL: another, or none. */
static const Piece *
passed_piece (TrammelSession *session)
{
  const Surface *surface = trammel_session_selected_surface (session);
  const Body *body = trammel_session_selected_body (session);

  if (surface != NULL && trammel_session_selection (session)->control == NULL)
    return &surface->piece;
  return body != NULL ? &body->piece : NULL;
}

static void
passed_group_follow (GtkWidget *group)
{
  PassedGroup *self = g_object_get_data (G_OBJECT (group), key);
  const Piece *piece = passed_piece (self->session);
  g_autofree char *text = piece != NULL ? passed_clicks_of (piece, trammel_session_units (self->session)) : NULL;

  gtk_label_set_label (GTK_LABEL (self->sentence), text != NULL ? text : "");
  gtk_widget_set_visible (group, text != NULL);
}

static void
passed_group_accept (PassedGroup *self)
{
  const Piece *piece = passed_piece (self->session);

  if (piece != NULL)
    trammel_session_do (self->session, change_outline_accepted (trammel_session_settled (self->session), piece->id), _("Accept Outline"));
}

static GtkWidget *
passed_group_row (PassedGroup *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 9), *accept = gtk_button_new_with_mnemonic (_("A_ccept the Outline"));

  self->sentence = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->sentence), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->sentence), 0);
  gtk_widget_set_halign (accept, GTK_ALIGN_END);
  gtk_widget_set_margin_top (box, 9);
  gtk_widget_set_margin_bottom (box, 9);
  gtk_widget_set_margin_start (box, 12);
  gtk_widget_set_margin_end (box, 12);
  gtk_box_append (GTK_BOX (box), self->sentence);
  gtk_box_append (GTK_BOX (box), accept);
  g_signal_connect_swapped (accept, "clicked", G_CALLBACK (passed_group_accept), self);
  return box;
}

GtkWidget *
passed_group_new (TrammelSession *session)
{
  PassedGroup *self = g_new0 (PassedGroup, 1);

  self->session = session;
  self->group = trammel_group_new (_("Line to Look At"));
  g_object_set_data_full (G_OBJECT (self->group), key, self, g_free);
  trammel_group_add (TRAMMEL_GROUP (self->group), passed_group_row (self));
  g_signal_connect_object (session, "changed", G_CALLBACK (passed_group_follow), self->group, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (passed_group_follow), self->group, G_CONNECT_SWAPPED);
  passed_group_follow (self->group);
  return self->group;
}
