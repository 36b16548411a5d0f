#include "trammel-config.h"
#include "app/length-row.h"
#include <glib/gi18n-lib.h>

struct _TrammelLengthRow {
  AdwEntryRow parent;
  Units units;
  double least, most, mm;
  const char *beyond;
  char *complaint;
  bool showing;
};

G_DEFINE_FINAL_TYPE (TrammelLengthRow, trammel_length_row, ADW_TYPE_ENTRY_ROW)

static guint length_changed;

static void
row_complain (TrammelLengthRow *self, const char *sentence)
{
  GtkWidget *widget = GTK_WIDGET (self);

  g_free (self->complaint);
  self->complaint = g_strdup (sentence);
  if (sentence != NULL)
    gtk_widget_add_css_class (widget, "error");
  else
    gtk_widget_remove_css_class (widget, "error");
  gtk_accessible_update_state (GTK_ACCESSIBLE (gtk_editable_get_delegate (GTK_EDITABLE (self))), GTK_ACCESSIBLE_STATE_INVALID,
                               sentence != NULL ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
}

static void
row_typed (TrammelLengthRow *self)
{
  g_autoptr (GError) error = NULL;
  double mm = 0;

  if (self->showing)
    return;
  if (!units_parse_length (self->units, gtk_editable_get_text (GTK_EDITABLE (self)), &mm, &error))
    row_complain (self, error->message);
  else if (!(mm >= self->least && mm <= self->most))
    row_complain (self, _(self->beyond));
  else {
    row_complain (self, NULL);
    self->mm = mm;
  }
  g_signal_emit (self, length_changed, 0);
}

static void
trammel_length_row_finalize (GObject *object)
{
  g_free (TRAMMEL_LENGTH_ROW (object)->complaint);
  G_OBJECT_CLASS (trammel_length_row_parent_class)->finalize (object);
}

static void
trammel_length_row_class_init (TrammelLengthRowClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_length_row_finalize;
  length_changed = g_signal_new ("length-changed", TRAMMEL_TYPE_LENGTH_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_length_row_init (TrammelLengthRow *self)
{
  g_signal_connect (self, "changed", G_CALLBACK (row_typed), NULL);
}

void
trammel_length_row_bound (TrammelLengthRow *self, double least, double most, const char *beyond)
{
  self->least = least;
  self->most = most;
  self->beyond = beyond;
}

void
trammel_length_row_set (TrammelLengthRow *self, Units units, double mm)
{
  g_autofree char *text = units_length_exact (units, mm);

  self->units = units;
  self->mm = mm;
  self->showing = true;
  gtk_editable_set_text (GTK_EDITABLE (self), text);
  self->showing = false;
  row_complain (self, NULL);
}

double
trammel_length_row_mm (TrammelLengthRow *self)
{
  return self->mm;
}

const char *
trammel_length_row_complaint (TrammelLengthRow *self)
{
  return self->complaint;
}
