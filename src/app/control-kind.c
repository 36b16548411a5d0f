#include "trammel-config.h"
#include "app/piece-controls.h"
#include <glib/gi18n-lib.h>
#include "app/control-fields.h"

/* What the selected control is: ailerons, flaps, an elevator, a rudder. */

static void
kind_show (GtkWidget *widget, TrammelSession *session)
{
  const Control *control = control_selected (session);

  if (control != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (widget), control->kind);
}

static void
kind_chosen (GtkWidget *widget)
{
  TrammelSession *session = piece_control_choosing (widget);
  const Control *control = session != NULL ? control_selected (session) : NULL;
  Control next;

  if (control == NULL || gtk_drop_down_get_selected (GTK_DROP_DOWN (widget)) == (guint) control->kind)
    return;
  next = *control;
  next.kind = gtk_drop_down_get_selected (GTK_DROP_DOWN (widget));
  trammel_session_do (session, control_changed (session, &next), _("Change What It Is"));
}

GtkWidget *
control_kind_control (TrammelSession *session)
{
  GtkStringList *names = gtk_string_list_new (NULL);

  for (ControlKind kind = 0; kind < CONTROL_KIND_COUNT; kind++)
    gtk_string_list_append (names, control_kind_name (kind));
  return piece_choice_control (session, names, _("What it is"), kind_show, kind_chosen);
}
