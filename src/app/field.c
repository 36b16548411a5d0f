#include "trammel-config.h"
#include "app/field.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/control-fields.h"
#include "app/entry-click.h"
#include "app/explain-button.h"
#include "app/field-complaint.h"
#include "app/field-text.h"
#include "app/row-label.h"
#include "figures/explanation.h"

struct _TrammelField {
  GtkListBoxRow parent;
  TrammelSession *session;
  const FieldSpec *spec;
  GtkWidget *entry;        /* NULL when shown only */
  GtkWidget *figure;       /* the label instead */
  GtkWidget *unit, *remark, *complaint;
  bool inside;             /* the keyboard is in the entry */
  bool typing;             /* the entry holds what the person types, not the value */
  bool showing;            /* the entry's text is being set from the value */
};

G_DEFINE_FINAL_TYPE (TrammelField, trammel_field, GTK_TYPE_LIST_BOX_ROW)

static Units
field_units (const TrammelField *self)
{
  return trammel_session_units (self->session);
}

static const char *
field_unit (const TrammelField *self)
{
  return field_text_unit (self->spec->kind, field_units (self));
}

static void
field_show (TrammelField *self, const char *text)
{
  if (self->entry == NULL) {
    gtk_label_set_text (GTK_LABEL (self->figure), text);
    gtk_widget_set_visible (self->unit, !g_str_equal (text, field_no_figure));
    return;
  }
  /* In an entry the dash is no text, which what is typed would be added to; it stands there as a placeholder. */
  if (g_str_equal (text, field_no_figure))
    text = "";
  if (g_str_equal (gtk_editable_get_text (GTK_EDITABLE (self->entry)), text))
    return;
  self->showing = true;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  self->showing = false;
}

/* A screen reader hears the label with its unit: "Mass, g". */
static void
field_name (TrammelField *self)
{
  const char *unit = field_unit (self);
  g_autofree char *name = *unit != '\0' ? g_strdup_printf ("%s, %s", _(self->spec->label), unit) : g_strdup (_(self->spec->label));

  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry != NULL ? self->entry : self->figure), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

/* Room for "−1 31/32" where lengths are fractions, less where they are whole. */
static void
field_fit (TrammelField *self)
{
  const bool fractions = (self->spec->kind == FIELD_LENGTH || self->spec->kind == FIELD_THIN) && field_units (self).length == LENGTH_INCH;

  if (self->entry == NULL || self->spec->kind == FIELD_TEXT)
    return;
  gtk_editable_set_width_chars (GTK_EDITABLE (self->entry), fractions ? 7 : 5);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->entry), fractions ? 8 : 6);
}

void
trammel_field_refresh (TrammelField *self)
{
  g_autofree char *text = NULL;
  g_autofree char *remark = self->spec->remark != NULL ? self->spec->remark (self->session, self->spec) : NULL;

  if (g_strcmp0 (gtk_label_get_text (GTK_LABEL (self->unit)), field_unit (self)) != 0) {
    gtk_label_set_text (GTK_LABEL (self->unit), field_unit (self));
    field_name (self);
    field_fit (self);
  }
  gtk_label_set_text (GTK_LABEL (self->remark), remark != NULL ? remark : "");
  gtk_widget_set_visible (self->remark, remark != NULL && *remark != '\0');
  if (self->typing)
    return;
  if (self->spec->kind == FIELD_TEXT)
    text = self->spec->text (self->session);
  else if (self->inside)
    text = field_text_edited (self->spec->kind, field_units (self), self->spec->value (self->session, self->spec));
  else
    text = (self->entry != NULL ? field_text_standing : field_text_rounded) (self->spec->kind, field_units (self),
                                                                            self->spec->value (self->session, self->spec));
  field_show (self, text);
  field_complaint_say (self->complaint, self->entry, NULL);
}

/* The aeroplane that the typed text asks for, or NULL with the sentence why not. */
static Aeroplane *
field_wanted (TrammelField *self, char **why)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_autoptr (GError) error = NULL;
  Aeroplane *next;
  double value, deviation;

  if (self->spec->kind == FIELD_TEXT)
    return self->spec->change_text (self->session, text);
  /* Where it was reckoned, typing what it came to makes it one's own. */
  if (!self->spec->optional && field_text_is_edited (self->spec->kind, field_units (self), self->spec->value (self->session, self->spec), text))
    return aeroplane_ref (trammel_session_aeroplane (self->session));
  if (!field_text_take (self->session, self->spec, text, &value, &deviation, &error)) {
    *why = g_strdup (error->message);
    return NULL;
  }
  if (isnan (value) && !self->spec->optional)
    return aeroplane_ref (trammel_session_aeroplane (self->session));
  next = isnan (deviation) ? self->spec->change (self->session, self->spec, value)
                           : self->spec->change_known (self->session, self->spec, value, deviation);
  if (next == NULL)
    *why = field_complaint_why (self->session, self->spec, value);
  return next;
}

static void
field_apply (TrammelField *self)
{
  g_autofree char *why = NULL;
  Aeroplane *next;

  if (!self->typing)
    return;
  next = field_wanted (self, &why);
  if (next == NULL) {
    field_complaint_say (self->complaint, self->entry, why);
    return;
  }
  self->typing = false;
  field_complaint_say (self->complaint, self->entry, NULL);
  if (aeroplane_equal (next, trammel_session_aeroplane (self->session)))
    aeroplane_unref (next);
  else
    trammel_session_do (self->session, next, _(self->spec->step));
}

static void
field_changed (TrammelField *self)
{
  g_autoptr (GError) error = NULL;
  double value, deviation;

  if (self->showing)
    return;
  self->typing = true;
  /* While typing, only show whether it is understood; an empty field is not yet a mistake. */
  if (self->spec->kind == FIELD_TEXT || *gtk_editable_get_text (GTK_EDITABLE (self->entry)) == '\0'
      || field_text_take (self->session, self->spec, gtk_editable_get_text (GTK_EDITABLE (self->entry)), &value, &deviation, &error))
    gtk_widget_remove_css_class (self->entry, "error");
  else
    gtk_widget_add_css_class (self->entry, "error");
}

static void
field_activated (TrammelField *self)
{
  field_apply (self);
  if (!self->typing) {
    trammel_field_refresh (self);
    entry_select_all (self->entry);
  }
}

static void
field_entered (TrammelField *self)
{
  self->inside = true;
  trammel_field_refresh (self);
}

static void
field_left (TrammelField *self)
{
  if (self->session == NULL)      /* on its way out */
    return;
  self->inside = false;
  field_apply (self);
  trammel_field_refresh (self);
  if (self->typing && self->spec->kind != FIELD_TEXT)
    field_complaint_leave (self->complaint, self->entry, self->session, self->spec);
}

static gboolean
field_key (TrammelField *self, guint key, guint code, GdkModifierType state)
{
  if (key != GDK_KEY_Escape || !self->typing)
    return FALSE;
  self->typing = false;
  trammel_field_refresh (self);
  /* One Esc leaves a field of the panel, whether something was typed or not; in a popover the next closes that. */
  if (gtk_widget_get_ancestor (GTK_WIDGET (self), GTK_TYPE_POPOVER) != NULL
      || !gtk_widget_activate_action (GTK_WIDGET (self), "win.focus-sheet", NULL))
    entry_select_all (self->entry);
  return TRUE;
}

static GtkWidget *
field_entry (TrammelField *self)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();
  GtkEventController *keys = gtk_event_controller_key_new ();

  gtk_widget_set_valign (entry, GTK_ALIGN_CENTER);
  /* Ctrl+Z is the aeroplane's; what is half typed goes back by Escape. */
  entry_leave_undo (entry);
  gtk_widget_add_css_class (entry, "figure-entry");
  gtk_widget_set_tooltip_text (entry, field_text_hint (self->spec));
  if (self->spec->kind == FIELD_TEXT) {
    gtk_widget_set_hexpand (entry, TRUE);
    entry_show_beginning (entry);
  } else {
    gtk_editable_set_width_chars (GTK_EDITABLE (entry), 5);
    gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 6);
    gtk_editable_set_alignment (GTK_EDITABLE (entry), 1.0f);
    gtk_entry_set_placeholder_text (GTK_ENTRY (entry), field_no_figure);
  }
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (entry, "changed", G_CALLBACK (field_changed), self);
  g_signal_connect_swapped (entry, "activate", G_CALLBACK (field_activated), self);
  g_signal_connect_swapped (focus, "enter", G_CALLBACK (field_entered), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (field_left), self);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (field_key), self);
  entry_select_on_click (entry);
  gtk_widget_add_controller (entry, focus);
  gtk_widget_add_controller (entry, keys);
  return entry;
}

static GtkWidget *
field_dim_label (void)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_widget_add_css_class (label, "dim-label");
  return label;
}

/* A mark is known by its place in the list, which its spec holds, a control by its own; all else by what is selected. */
static char *
field_place (TrammelField *self)
{
  const ExplanationAbout about = explanation_about (self->spec->explained);

  if (about == ABOUT_MARK)
    return g_strdup_printf ("%zu", self->spec->at);
  return about == ABOUT_CONTROL ? g_strdup_printf ("%zu", control_place (self->session)) : NULL;
}

static void
field_add_explanation (TrammelField *self, GtkWidget *line)
{
  g_autofree char *place = field_place (self);
  gtk_box_append (GTK_BOX (line), trammel_explain_button_new (self->session, self->spec->explained, _(self->spec->label), place));
}

static void
field_fill_line (TrammelField *self, GtkWidget *line)
{
  GtkWidget *label = row_label_new (_(self->spec->label));
  const bool editable = self->spec->change != NULL || self->spec->change_text != NULL;

  gtk_widget_set_hexpand (label, self->spec->kind != FIELD_TEXT);
  gtk_box_append (GTK_BOX (line), label);
  if (editable)
    self->entry = field_entry (self);
  else
    self->figure = gtk_label_new (NULL);
  gtk_box_append (GTK_BOX (line), editable ? self->entry : self->figure);
  self->unit = field_dim_label ();
  gtk_box_append (GTK_BOX (line), self->unit);
  if (!self->spec->remark_below)
    gtk_box_append (GTK_BOX (line), self->remark);
  if (self->spec->explained != EXPLAIN_NONE)
    field_add_explanation (self, line);
}

static void
field_remark_below (TrammelField *self, GtkWidget *column)
{
  gtk_widget_set_halign (self->remark, GTK_ALIGN_END);
  gtk_label_set_wrap (GTK_LABEL (self->remark), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->remark), 1);
  gtk_label_set_justify (GTK_LABEL (self->remark), GTK_JUSTIFY_RIGHT);
  gtk_box_append (GTK_BOX (column), self->remark);
}

static void
field_fill (TrammelField *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->remark = field_dim_label ();
  gtk_widget_add_css_class (self->remark, "caption");
  field_fill_line (self, line);
  self->complaint = field_complaint_new (self->entry);
  gtk_box_append (GTK_BOX (column), line);
  if (self->spec->remark_below)
    field_remark_below (self, column);
  gtk_box_append (GTK_BOX (column), self->complaint);
  gtk_widget_add_css_class (column, "field");
  gtk_widget_set_valign (column, GTK_ALIGN_CENTER);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (self), column);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (self), FALSE);
  gtk_widget_set_focusable (GTK_WIDGET (self), FALSE);
}

static void
trammel_field_dispose (GObject *object)
{
  TrammelField *self = TRAMMEL_FIELD (object);

  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_field_parent_class)->dispose (object);
}

static void
trammel_field_class_init (TrammelFieldClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_field_dispose;
}

static void
trammel_field_init (TrammelField *self)
{
}

GtkWidget *
trammel_field_new (TrammelSession *session, const FieldSpec *spec)
{
  TrammelField *self = g_object_new (TRAMMEL_TYPE_FIELD, NULL);

  self->session = g_object_ref (session);
  self->spec = spec;
  field_fill (self);
  field_name (self);
  trammel_field_refresh (self);
  return GTK_WIDGET (self);
}

bool
trammel_field_can_edit (TrammelField *self)
{
  return self->entry != NULL;
}

void
trammel_field_edit (TrammelField *self, const char *text)
{
  if (self->entry == NULL)
    return;
  gtk_widget_grab_focus (self->entry);
  if (*text == '\0')
    return;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  gtk_editable_set_position (GTK_EDITABLE (self->entry), -1);
}

void
trammel_field_add_button (TrammelField *self, GtkWidget *button)
{
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (gtk_widget_get_parent (self->unit)), button);
}

FieldKind
trammel_field_kind (TrammelField *self)
{
  return self->spec->kind;
}

void
trammel_field_discard (TrammelField *self)
{
  if (self->typing)
    field_complaint_hand_on (self->complaint);
  self->typing = false;
}
