#include "trammel-config.h"
#include "app/bay-rows.h"
#include <glib/gi18n-lib.h>
#include "app/choice-list.h"
#include "app/entry-click.h"
#include "app/piece-controls.h"
#include "document/changes.h"
#include "figures/part-places.h"

const Bay *
bay_selected (TrammelSession *session)
{
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (session), selection_single (trammel_session_selection (session)));

  return piece != NULL && piece->kind == PIECE_BAY ? (const Bay *) piece : NULL;
}

static const Bay *
bay_of (GtkWidget *row, TrammelSession *session)
{
  const Piece *piece = aeroplane_find (trammel_session_aeroplane (session), g_object_get_data (G_OBJECT (row), "bay"));

  return piece != NULL && piece->kind == PIECE_BAY ? (const Bay *) piece : NULL;
}

/* The body whose formers are offered: the selected one, else the bay's own. */
static const Body *
body_for (TrammelSession *session, const Bay *bay)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Body *body = trammel_session_selected_body (session);
  double from, to;

  if (body != NULL)
    return body;
  if (bay != NULL && bay_reach (aeroplane, bay, &body, &from, &to))
    return body;
  return aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
}

static GtkWidget *
former_drop_down (const Body *body, const char *chosen, const char *label)
{
  GtkStringList *names = gtk_string_list_new (NULL);
  guint at = GTK_INVALID_LIST_POSITION;

  for (size_t i = 0; body != NULL && i < body->former_count; i++) {
    gtk_string_list_append (names, body->formers[i].name != NULL ? body->formers[i].name : "");
    if (g_strcmp0 (body->formers[i].name, chosen) == 0)
      at = (guint) i;
  }
  GtkWidget *control = choice_list_new (G_LIST_MODEL (names));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), at);
  gtk_widget_set_hexpand (control, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  return control;
}

static const char *
former_chosen (GtkWidget *row, const char *which)
{
  GObject *item = gtk_drop_down_get_selected_item (g_object_get_data (G_OBJECT (row), which));

  return item != NULL ? gtk_string_object_get_string (GTK_STRING_OBJECT (item)) : NULL;
}

/* "from F1 to F2", as two drop-downs of a row. */
static GtkWidget *
former_pair (GtkWidget *row, const Body *body, const char *from, const char *to)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *first = former_drop_down (body, from, _("From former")), *second = former_drop_down (body, to, _("To former"));

  gtk_box_append (GTK_BOX (line), first);
  /* Translators: between two formers, "F1 to F2" */
  gtk_box_append (GTK_BOX (line), gtk_label_new (_("to")));
  gtk_box_append (GTK_BOX (line), second);
  g_object_set_data (G_OBJECT (row), "from", first);
  g_object_set_data (G_OBJECT (row), "to", second);
  return line;
}

static TrammelSession *
row_session (GtkWidget *row)
{
  GtkWidget *control = g_object_get_data (G_OBJECT (row), "control");

  return piece_control_choosing (control);
}

static void
bay_formers_chosen (GtkWidget *row)
{
  TrammelSession *session = row_session (row);
  const Bay *bay = session != NULL ? bay_of (row, session) : NULL;

  Aeroplane *next;

  if (bay == NULL)
    return;
  next = change_bay_formers (trammel_session_aeroplane (session), bay->piece.id, former_chosen (row, "from"), former_chosen (row, "to"));
  if (next != NULL) {
    trammel_session_do (session, next, _("Change Bay"));
    return;
  }
  /* The same former twice bounds nothing: the rows show again what holds. */
  g_object_set_data (g_object_get_data (G_OBJECT (row), "control"), "rows", NULL);
  piece_control_refresh (g_object_get_data (G_OBJECT (row), "control"));
}

/* What is selected is still selected under its new name. */
static void
bay_named (GtkWidget *row)
{
  TrammelSession *session = row_session (row);
  const Bay *bay = session != NULL ? bay_of (row, session) : NULL;
  GtkEditable *entry = g_object_get_data (G_OBJECT (row), "name");
  const Aeroplane *aeroplane = session != NULL ? trammel_session_aeroplane (session) : NULL;
  g_autofree char *name = bay != NULL ? bay_name_from (aeroplane, gtk_editable_get_text (entry), bay->piece.id) : NULL;
  const bool selected = bay != NULL && bay == bay_selected (session);

  if (bay == NULL)
    return;
  if (name == NULL) {
    gtk_editable_set_text (entry, bay->piece.id);
    return;
  }
  if (g_str_equal (name, bay->piece.id))
    return;
  trammel_session_do (session, change_bay_renamed (aeroplane, bay->piece.id, name), _("Rename Bay"));
  if (selected)
    trammel_session_select (session, selection_of (name));
}

static void
bay_removed (GtkWidget *row)
{
  TrammelSession *session = row_session (row);
  const Bay *bay = session != NULL ? bay_of (row, session) : NULL;

  if (bay != NULL)
    trammel_session_do (session, change_bay_removed (trammel_session_aeroplane (session), bay->piece.id), _("Remove Bay"));
}

static GtkWidget *
bay_name_line (GtkWidget *row, const Bay *bay)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6), *name = gtk_entry_new ();
  GtkWidget *remove = gtk_button_new_from_icon_name ("list-remove-symbolic");
  GtkEventController *focus = gtk_event_controller_focus_new ();
  /* Translators: %s is a bay's name */
  g_autofree char *taking_out = g_strdup_printf (_("Remove Bay %s"), bay->piece.id);

  gtk_editable_set_text (GTK_EDITABLE (name), bay->piece.id);
  gtk_editable_set_width_chars (GTK_EDITABLE (name), 8);
  gtk_widget_set_hexpand (name, TRUE);
  entry_leave_undo (name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (name), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Bay's name"), -1);
  g_signal_connect_swapped (name, "activate", G_CALLBACK (bay_named), row);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (bay_named), row);
  gtk_widget_add_controller (name, focus);
  gtk_widget_add_css_class (remove, "flat");
  gtk_widget_set_tooltip_text (remove, taking_out);
  gtk_accessible_update_property (GTK_ACCESSIBLE (remove), GTK_ACCESSIBLE_PROPERTY_LABEL, taking_out, -1);
  g_signal_connect_swapped (remove, "clicked", G_CALLBACK (bay_removed), row);
  gtk_box_append (GTK_BOX (line), name);
  gtk_box_append (GTK_BOX (line), remove);
  g_object_set_data (G_OBJECT (row), "name", name);
  return line;
}

static GtkWidget *
bay_row (GtkWidget *control, TrammelSession *session, const Bay *bay)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);

  g_object_set_data (G_OBJECT (row), "control", control);
  g_object_set_data_full (G_OBJECT (row), "bay", g_strdup (bay->piece.id), g_free);
  gtk_box_append (GTK_BOX (row), bay_name_line (row, bay));
  gtk_box_append (GTK_BOX (row), former_pair (row, body_for (session, bay), bay->from_former, bay->to_former));
  g_signal_connect_swapped (g_object_get_data (G_OBJECT (row), "from"), "notify::selected", G_CALLBACK (bay_formers_chosen), row);
  g_signal_connect_swapped (g_object_get_data (G_OBJECT (row), "to"), "notify::selected", G_CALLBACK (bay_formers_chosen), row);
  return row;
}

/* What is typed next names the new one: its row has the keyboard. */
static void
focus_name_of (GtkWidget *control, const char *id)
{
  for (GtkWidget *row = gtk_widget_get_first_child (control); row != NULL; row = gtk_widget_get_next_sibling (row))
    if (g_strcmp0 (g_object_get_data (G_OBJECT (row), "bay"), id) == 0)
      gtk_widget_grab_focus (g_object_get_data (G_OBJECT (row), "name"));
}

static void
bay_added (GtkWidget *row)
{
  TrammelSession *session = row_session (row);
  g_autoptr (GtkWidget) control = g_object_ref (g_object_get_data (G_OBJECT (row), "control"));
  g_autofree char *id = NULL;
  Aeroplane *next;

  if (session == NULL)
    return;
  next = change_bay_added (trammel_session_aeroplane (session), former_chosen (row, "from"), former_chosen (row, "to"), &id);
  if (next == NULL)
    return;
  trammel_session_do (session, next, _("Add Bay"));
  focus_name_of (control, id);
}

/* The next bay begins where the aftmost ends: that former's place in the row, with one behind it. */
static size_t
next_former (TrammelSession *session, const Body *body)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  size_t next = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BAY); i++) {
    const Bay *bay = (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, i);

    for (size_t k = next; k < body->former_count; k++)
      if (g_strcmp0 (body->formers[k].name, bay->from_former) == 0 || g_strcmp0 (body->formers[k].name, bay->to_former) == 0)
        next = k;
  }
  return MIN (next, body->former_count - 2);
}

static GtkWidget *
adding_row (GtkWidget *control, TrammelSession *session)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4), *add = gtk_button_new_with_label (_("Add a Bay"));
  const Body *body = body_for (session, NULL);
  const bool can = body != NULL && body->former_count > 1;
  size_t next;

  g_object_set_data (G_OBJECT (row), "control", control);
  if (!can) {
    GtkWidget *why = gtk_label_new (_("Put two formers in first: a bay lies between them."));

    gtk_label_set_wrap (GTK_LABEL (why), TRUE);
    gtk_label_set_xalign (GTK_LABEL (why), 0);
    gtk_widget_add_css_class (why, "dim-label");
    gtk_box_append (GTK_BOX (row), why);
    return row;
  }
  next = next_former (session, body);
  gtk_box_append (GTK_BOX (row), former_pair (row, body, body->formers[next].name, body->formers[next + 1].name));
  g_signal_connect_swapped (add, "clicked", G_CALLBACK (bay_added), row);
  gtk_box_append (GTK_BOX (row), add);
  return row;
}

/* What the rows are made of: they are made anew only when that changes. */
static char *
rows_key (TrammelSession *session, bool all)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Bay *one = bay_selected (session);
  const Body *body = body_for (session, one);
  GString *key = g_string_new (NULL);

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BAY); i++) {
    const Bay *bay = (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, i);

    if (all || bay == one)
      g_string_append_printf (key, "%s|%s|%s\n", bay->piece.id, bay->from_former, bay->to_former);
  }
  for (size_t i = 0; body != NULL && i < body->former_count; i++)
    g_string_append_printf (key, "%s\n", body->formers[i].name);
  return g_string_free (key, FALSE);
}

static gboolean
let_go (gpointer row)
{
  g_object_unref (row);
  return G_SOURCE_REMOVE;
}

/* A choice made in a row may be what brings the next ones: it must outlive its own signal. */
static void
rows_clear (GtkWidget *control)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (control)) != NULL) {
    g_object_set_data (G_OBJECT (child), "bay", NULL);
    g_idle_add (let_go, g_object_ref (child));
    gtk_box_remove (GTK_BOX (control), child);
  }
}

static void
rows_show (GtkWidget *control, TrammelSession *session)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const bool all = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (control), "all"));
  g_autofree char *key = rows_key (session, all);

  if (g_strcmp0 (key, g_object_get_data (G_OBJECT (control), "rows")) == 0)
    return;
  rows_clear (control);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BAY); i++) {
    const Bay *bay = (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, i);

    if (bay->piece.id != NULL && (all || bay == bay_selected (session)))
      gtk_box_append (GTK_BOX (control), bay_row (control, session, bay));
  }
  if (all)
    gtk_box_append (GTK_BOX (control), adding_row (control, session));
  g_object_set_data_full (G_OBJECT (control), "rows", g_steal_pointer (&key), g_free);
}

static GtkWidget *
rows_control (TrammelSession *session, bool all)
{
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_VERTICAL, 10);

  gtk_widget_add_css_class (control, "field");
  g_object_set_data (G_OBJECT (control), "all", GINT_TO_POINTER (all));
  piece_control_adopt (control, session, rows_show);
  return control;
}

GtkWidget *
bay_list_control (TrammelSession *session)
{
  return rows_control (session, true);
}

GtkWidget *
bay_control (TrammelSession *session)
{
  return rows_control (session, false);
}
