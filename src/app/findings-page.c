#include "trammel-config.h"
#include "app/findings-page.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/explain-button.h"
#include "app/group.h"
#include "figures/notes.h"
#include "figures/passed-click.h"

struct _TrammelFindingsPage {
  GtkBox parent;
  TrammelSession *session;
  GtkWidget *group;
  bool choosing;        /* a finding is being followed to its thing */
  char *shown;          /* all sentences as shown, so that a drag does not rebuild them in vain */
};

G_DEFINE_FINAL_TYPE (TrammelFindingsPage, trammel_findings_page, GTK_TYPE_BOX)

FindingsCount
trammel_findings_page_count (TrammelSession *session)
{
  const GPtrArray *notes = trammel_session_figures (session)->notes;
  FindingsCount count = { 0, 0 };

  for (guint i = 0; i < notes->len; i++) {
    const Note *note = g_ptr_array_index (notes, i);

    count.to_change += note_needs_change (note);
    count.to_look_at += !note_needs_change (note) && note->severity == NOTE_LOOK;
  }
  return count;
}

/* Shape first: a triangle asks for a change, an eye for a look; what the figures leave out is to be known, and no fault of the aeroplane's. */
static GtkWidget *
finding_sign (const Note *note)
{
  GtkWidget *sign = gtk_image_new_from_icon_name (note_needs_change (note) ? "dialog-warning-symbolic"
                                                  : note->severity == NOTE_LOOK ? "view-reveal-symbolic" : "help-about-symbolic");

  gtk_widget_set_valign (sign, GTK_ALIGN_START);
  gtk_widget_add_css_class (sign, note_needs_change (note) ? "finding-act" : "dim-label");
  return sign;
}

static const char *
finding_meaning (const Note *note)
{
  return note_needs_change (note) ? _("Change") : note->severity == NOTE_LOOK ? _("Look at") : _("For information");
}

/* At the end of the row, in line with its first words. */
static GtkWidget *
finding_explanation (TrammelSession *session, const Note *note)
{
  const char *id = note->piece != NULL ? note->piece->id : NULL;
  GtkWidget *button = trammel_explain_button_new (session, note->explained, note->text, id);

  gtk_widget_set_valign (button, GTK_ALIGN_START);
  return button;
}

/* How much is wanting; NULL when the finding is of no such kind. */
static char *
finding_wanting (TrammelSession *session, const Note *note)
{
  const Units units = trammel_session_units (session);
  g_autofree char *wanting = note->room != NULL ? units_length (units, note->room->lacking_mm) : NULL;
  g_autofree char *extension = NULL;

  if (wanting == NULL)
    return NULL;
  if (note->room->kind != ROOM_LEAD_SHORT)
    /* Translators: stands below a finding: by how much something is too wide, too high, or in another's place, "by 4 mm" */
    return g_strdup_printf (_("by %s"), wanting);
  if (isnan (note->room->extension_mm))
    return g_strdup_printf (_("short by %s"), wanting);
  extension = units_length (units, note->room->extension_mm);
  /* Translators: of a lead that is too short */
  return g_strdup_printf (_("short by %s; an extension of %s makes up for it"), wanting, extension);
}

/* The sentence, and below it what is wanting. */
static GtkWidget *
finding_words (TrammelSession *session, const Note *note, GtkWidget *row)
{
  g_autofree char *text = note_words (note, trammel_session_units (session));
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2), *words = gtk_label_new (text);
  g_autofree char *wanting = finding_wanting (session, note);
  GtkWidget *below = wanting != NULL ? gtk_label_new (wanting) : NULL;

  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_box_append (GTK_BOX (box), words);
  if (below != NULL) {
    gtk_label_set_wrap (GTK_LABEL (below), TRUE);
    gtk_label_set_xalign (GTK_LABEL (below), 0);
    gtk_widget_add_css_class (below, "dim-label");
    gtk_box_append (GTK_BOX (box), below);
  }
  g_object_set_data (G_OBJECT (row), "wanting", below);
  gtk_widget_set_hexpand (box, TRUE);
  return box;
}

static GtkWidget *
finding_row (TrammelSession *session, const Note *note)
{
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  GtkWidget *words = finding_words (session, note, row);
  g_autofree char *text = note_words (note, trammel_session_units (session));
  g_autofree char *name = g_strdup_printf ("%s: %s", finding_meaning (note), text);

  gtk_box_append (GTK_BOX (box), finding_sign (note));
  gtk_box_append (GTK_BOX (box), words);
  if (note->explained != EXPLAIN_NONE)
    gtk_box_append (GTK_BOX (box), finding_explanation (session, note));
  gtk_widget_add_css_class (box, "finding");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  return row;
}

static char *
findings_text (TrammelSession *session)
{
  const GPtrArray *notes = trammel_session_figures (session)->notes;
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < notes->len; i++) {
    const Note *note = g_ptr_array_index (notes, i);
    g_autofree char *words = note_words (note, trammel_session_units (session));

    g_string_append_printf (text, "%d%s\n", note->severity, words);
  }
  return g_string_free (text, FALSE);
}

/* The sentences are the same: how much is wanting may have changed. */
static void
findings_refresh (TrammelFindingsPage *self, GtkListBox *list)
{
  const GPtrArray *notes = trammel_session_figures (self->session)->notes;

  for (guint i = 0; i < notes->len; i++) {
    GtkListBoxRow *row = gtk_list_box_get_row_at_index (list, i);
    GtkWidget *below = g_object_get_data (G_OBJECT (row), "wanting");
    g_autofree char *wanting = below != NULL ? finding_wanting (self->session, g_ptr_array_index (notes, i)) : NULL;

    if (wanting != NULL)
      gtk_label_set_text (GTK_LABEL (below), wanting);
  }
}

static void
findings_follow (TrammelFindingsPage *self)
{
  const GPtrArray *notes = trammel_session_figures (self->session)->notes;
  GtkListBox *list = trammel_group_list (TRAMMEL_GROUP (self->group));
  g_autofree char *text = findings_text (self->session);
  GtkListBoxRow *row;

  if (g_strcmp0 (text, self->shown) == 0) {
    findings_refresh (self, list);
    return;
  }
  while ((row = gtk_list_box_get_row_at_index (list, 0)) != NULL)
    gtk_list_box_remove (list, GTK_WIDGET (row));
  for (guint i = 0; i < notes->len; i++)
    gtk_list_box_append (list, finding_row (self->session, g_ptr_array_index (notes, i)));
  trammel_group_set_remark (TRAMMEL_GROUP (self->group), notes->len == 0 ? _("nothing to say") : NULL);
  gtk_widget_set_visible (GTK_WIDGET (list), notes->len > 0);
  g_free (self->shown);
  self->shown = g_steal_pointer (&text);
}

static void
finding_chosen (TrammelFindingsPage *self, GtkListBoxRow *row)
{
  const GPtrArray *notes = trammel_session_figures (self->session)->notes;
  const int index = gtk_list_box_row_get_index (row);
  const Note *note = index < (int) notes->len ? g_ptr_array_index (notes, index) : NULL;

  if (note == NULL || note->piece == NULL || note->piece->id == NULL)
    return;
  self->choosing = true;
  trammel_session_select (self->session, selection_of (note->piece->id));
  self->choosing = false;
}

bool
trammel_findings_page_is_choosing (TrammelFindingsPage *self)
{
  return self->choosing;
}

static void
trammel_findings_page_dispose (GObject *object)
{
  TrammelFindingsPage *self = TRAMMEL_FINDINGS_PAGE (object);

  g_clear_pointer (&self->shown, g_free);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_findings_page_parent_class)->dispose (object);
}

static void
trammel_findings_page_class_init (TrammelFindingsPageClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_findings_page_dispose;
}

static void
trammel_findings_page_init (TrammelFindingsPage *self)
{
}

GtkWidget *
trammel_findings_page_new (TrammelSession *session)
{
  TrammelFindingsPage *self = g_object_new (TRAMMEL_TYPE_FINDINGS_PAGE, NULL);

  self->session = g_object_ref (session);
  self->group = trammel_group_new (_("Findings"));
  gtk_widget_set_hexpand (self->group, TRUE);
  gtk_box_append (GTK_BOX (self), self->group);
  g_signal_connect_swapped (trammel_group_list (TRAMMEL_GROUP (self->group)), "row-activated", G_CALLBACK (finding_chosen), self);
  g_signal_connect_object (session, "changed", G_CALLBACK (findings_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (findings_follow), self, G_CONNECT_SWAPPED);
  findings_follow (self);
  return GTK_WIDGET (self);
}
