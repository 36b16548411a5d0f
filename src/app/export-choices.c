#include "trammel-config.h"
#include "app/export-choices.h"
#include <glib/gi18n-lib.h>
#include "app/export-memory.h"
#include "app/export-sheets.h"
#include "app/focus-scroller.h"
#include "app/length-row.h"
#include "drawing/export-cutting.h"
#include "drawing/paper.h"

struct _TrammelExportChoices {
  AdwPreferencesPage parent;
  AdwComboRow *sheet, *format, *list, *paper, *orientation, *halves, *lengths, *masses;
  GtkSpinButton *resolution;
  GtkWidget *resolution_row, *page_group, *printer_group, *kerf_complaint, *printer_complaint;
  TrammelLengthRow *kerf, *short_side, *long_side;
  TrammelSettings *settings;    /* remember the format of each sheet */
  ExportOptions chosen;         /* what the rows show; what no row shows is kept */
  bool showing;                 /* the rows are being filled in, by nobody's hand */
  bool typed;                   /* the last change was a character of a length */
};

G_DEFINE_FINAL_TYPE (TrammelExportChoices, trammel_export_choices, ADW_TYPE_PREFERENCES_PAGE)

static guint choices_changed;

static guint
choice (AdwComboRow *row)
{
  return adw_combo_row_get_selected (row);
}

static void
row_offer (AdwComboRow *row, GtkStringList *takes, guint selected)
{
  g_autoptr (GtkStringList) list = takes;

  adw_combo_row_set_model (row, G_LIST_MODEL (list));
  adw_combo_row_set_selected (row, selected);
}

static void
show_formats (TrammelExportChoices *self)
{
  GtkStringList *list = gtk_string_list_new (NULL);
  const ExportFormatWords *words;

  for (guint i = 0; (words = export_sheet_format (self->chosen.sheet, i)) != NULL; i++)
    gtk_string_list_append (list, _(words->title));
  row_offer (self->format, list, export_sheet_format_place (self->chosen.sheet, self->chosen.format));
}

/* Behind the papers a template has a page of its own size. */
static void
show_papers (TrammelExportChoices *self)
{
  GtkStringList *list = gtk_string_list_new (NULL);
  const bool template = self->chosen.sheet == EXPORT_TEMPLATE;
  guint selected = 0, count = 0;

  for (const Paper *paper; (paper = paper_nth (count)) != NULL; count++) {
    gtk_string_list_append (list, _(paper->title));
    if (g_str_equal (paper->word, self->chosen.paper))
      selected = count;
  }
  if (template)
    gtk_string_list_append (list, _("One large page"));
  row_offer (self->paper, list, template && self->chosen.one_page ? count : selected);
}

static void
show_rows_that_matter (TrammelExportChoices *self)
{
  const guint matter = export_choices_that_matter (&self->chosen);
  const struct { guint choice; GtkWidget *widget; } rows[] = {
    { CHOICE_LIST, GTK_WIDGET (self->list) }, { CHOICE_PAPER, GTK_WIDGET (self->paper) }, { CHOICE_ORIENTATION, GTK_WIDGET (self->orientation) },
    { CHOICE_HALVES, GTK_WIDGET (self->halves) }, { CHOICE_RESOLUTION, self->resolution_row }, { CHOICE_LENGTHS, GTK_WIDGET (self->lengths) },
    { CHOICE_MASSES, GTK_WIDGET (self->masses) }, { CHOICE_KERF, GTK_WIDGET (self->kerf) }, { CHOICE_PRINTER, self->printer_group },
  };

  for (size_t i = 0; i < G_N_ELEMENTS (rows); i++)
    gtk_widget_set_visible (rows[i].widget, (matter & rows[i].choice) != 0);
  gtk_widget_set_visible (self->page_group, (matter & ~(guint) (CHOICE_LIST | CHOICE_PRINTER)) != 0);
}

/* The first of the rows that have an effect whose text is no length; NULL when all are. */
static TrammelLengthRow *
row_at_fault (TrammelExportChoices *self)
{
  const struct { guint choice; TrammelLengthRow *row; } rows[] = {
    { CHOICE_KERF, self->kerf }, { CHOICE_PRINTER, self->short_side }, { CHOICE_PRINTER, self->long_side } };
  const guint matter = export_choices_that_matter (&self->chosen);

  for (size_t i = 0; i < G_N_ELEMENTS (rows); i++)
    if ((matter & rows[i].choice) != 0 && trammel_length_row_complaint (rows[i].row) != NULL)
      return rows[i].row;
  return NULL;
}

static void
label_complain (GtkWidget *label, const char *sentence)
{
  if (sentence != NULL && !gtk_widget_get_visible (label))
    focus_scroller_show (label);
  gtk_label_set_text (GTK_LABEL (label), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (label, sentence != NULL);
}

/* Below the rows it is about. */
static void
show_complaint (TrammelExportChoices *self)
{
  TrammelLengthRow *row = row_at_fault (self);
  const char *sentence = row != NULL ? trammel_length_row_complaint (row) : NULL;

  label_complain (self->kerf_complaint, row == self->kerf ? sentence : NULL);
  label_complain (self->printer_complaint, row != self->kerf ? sentence : NULL);
}

/* Lengths are typed in the units of the sheet; what a printer draws, beside 100 mm, in millimetres. */
static void
show_lengths (TrammelExportChoices *self)
{
  const Units metric = { LENGTH_MM, MASS_G };

  trammel_length_row_set (self->kerf, self->chosen.units, self->chosen.kerf);
  trammel_length_row_set (self->short_side, metric, self->chosen.read_short);
  trammel_length_row_set (self->long_side, metric, self->chosen.read_long);
}

void
trammel_export_choices_remember (TrammelExportChoices *self, TrammelSettings *settings)
{
  g_set_object (&self->settings, settings);
}

void
trammel_export_choices_set (TrammelExportChoices *self, const ExportOptions *options)
{
  self->showing = true;
  self->chosen = *options;
  adw_combo_row_set_selected (self->sheet, options->sheet);
  show_formats (self);
  self->chosen.format = export_sheet_format (options->sheet, choice (self->format))->format;
  adw_combo_row_set_selected (self->list, options->list);
  show_papers (self);
  adw_combo_row_set_selected (self->orientation, options->portrait ? 1 : 0);
  adw_combo_row_set_selected (self->halves, options->halves);
  gtk_spin_button_set_value (self->resolution, options->dpi);
  adw_combo_row_set_selected (self->lengths, options->units.length == LENGTH_INCH ? 1 : 0);
  adw_combo_row_set_selected (self->masses, options->units.mass == MASS_OZ ? 1 : 0);
  show_lengths (self);
  show_rows_that_matter (self);
  show_complaint (self);
  self->showing = false;
}

ExportOptions
trammel_export_choices_options (TrammelExportChoices *self)
{
  return self->chosen;
}

bool
trammel_export_choices_are_whole (TrammelExportChoices *self)
{
  return row_at_fault (self) == NULL;
}

bool
trammel_export_choices_were_typed (TrammelExportChoices *self)
{
  return self->typed;
}

void
trammel_export_choices_focus_fault (TrammelExportChoices *self)
{
  TrammelLengthRow *row = row_at_fault (self);

  if (row == NULL)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (row));
  focus_scroller_show (row == self->kerf ? self->kerf_complaint : self->printer_complaint);
}

void
trammel_export_choices_focus (TrammelExportChoices *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

static void
read_paper (TrammelExportChoices *self)
{
  const Paper *paper = paper_nth (choice (self->paper));

  if (paper != NULL)
    g_strlcpy (self->chosen.paper, paper->word, sizeof self->chosen.paper);
  /* The other sheets offer no such page, and leave alone what the template has. */
  if (self->chosen.sheet == EXPORT_TEMPLATE)
    self->chosen.one_page = paper == NULL;
}

static void
read_rows (TrammelExportChoices *self)
{
  ExportOptions *chosen = &self->chosen;

  chosen->format = export_sheet_format (chosen->sheet, choice (self->format))->format;
  chosen->list = choice (self->list);
  read_paper (self);
  chosen->portrait = choice (self->orientation) == 1;
  chosen->halves = choice (self->halves);
  chosen->dpi = gtk_spin_button_get_value_as_int (self->resolution);
  chosen->units.length = choice (self->lengths) == 1 ? LENGTH_INCH : LENGTH_MM;
  chosen->units.mass = choice (self->masses) == 1 ? MASS_OZ : MASS_G;
  chosen->kerf = trammel_length_row_mm (self->kerf);
  chosen->read_short = trammel_length_row_mm (self->short_side);
  chosen->read_long = trammel_length_row_mm (self->long_side);
}

static void
row_changed (TrammelExportChoices *self)
{
  if (self->showing)
    return;
  read_rows (self);
  show_rows_that_matter (self);
  show_complaint (self);
  g_signal_emit (self, choices_changed, 0);
}

static void
length_changed (TrammelExportChoices *self)
{
  self->typed = true;
  row_changed (self);
  self->typed = false;
}

/* Another sheet stands as it was left. */
static void
sheet_changed (TrammelExportChoices *self)
{
  ExportOptions options = self->chosen;

  if (self->showing)
    return;
  options.sheet = choice (self->sheet);
  export_memory_recall (self->settings, &options);
  trammel_export_choices_set (self, &options);
  g_signal_emit (self, choices_changed, 0);
}

static void
bind_rows (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, sheet);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, format);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, list);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, paper);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, orientation);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, halves);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, lengths);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, masses);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, resolution);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, resolution_row);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, page_group);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, printer_group);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, kerf_complaint);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, printer_complaint);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, kerf);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, short_side);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportChoices, long_side);
}

static void
trammel_export_choices_dispose (GObject *object)
{
  g_clear_object (&TRAMMEL_EXPORT_CHOICES (object)->settings);
  G_OBJECT_CLASS (trammel_export_choices_parent_class)->dispose (object);
}

static void
trammel_export_choices_class_init (TrammelExportChoicesClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_export_choices_dispose;
  g_type_ensure (TRAMMEL_TYPE_LENGTH_ROW);
  gtk_widget_class_set_template_from_resource (GTK_WIDGET_CLASS (klass), "/org/trammel/Trammel/export-choices.ui");
  bind_rows (GTK_WIDGET_CLASS (klass));
  choices_changed = g_signal_new ("choices-changed", TRAMMEL_TYPE_EXPORT_CHOICES, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

/* The bounds are those of ExportOptions. */
static void
bound_lengths (TrammelExportChoices *self)
{
  static const char printer[] = N_("A printer that is off draws 100 mm between 90 and 110 mm long; measure the lines on the page again.");

  trammel_length_row_bound (self->kerf, 0, EXPORT_KERF_MOST, N_("A kerf is at most 2 mm wide; type how wide one cut is."));
  trammel_length_row_bound (self->short_side, 90, 110, printer);
  trammel_length_row_bound (self->long_side, 90, 110, printer);
}

static void
trammel_export_choices_init (TrammelExportChoices *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  AdwComboRow *combos[] = { self->format, self->list, self->paper, self->orientation, self->halves, self->lengths, self->masses };
  TrammelLengthRow *lengths[] = { self->kerf, self->short_side, self->long_side };

  bound_lengths (self);
  for (size_t i = 0; i < G_N_ELEMENTS (combos); i++)
    g_signal_connect_swapped (combos[i], "notify::selected", G_CALLBACK (row_changed), self);
  for (size_t i = 0; i < G_N_ELEMENTS (lengths); i++)
    g_signal_connect_swapped (lengths[i], "length-changed", G_CALLBACK (length_changed), self);
  g_signal_connect_swapped (self->resolution, "value-changed", G_CALLBACK (row_changed), self);
  g_signal_connect_swapped (self->sheet, "notify::selected", G_CALLBACK (sheet_changed), self);
}
