#include "trammel-config.h"
#include "app/export-dialog.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "app/export-job.h"
#include "app/export-preview.h"
#include "app/file-chooser.h"
#include "app/row-names.h"
#include "drawing/paper.h"

#define TRAMMEL_TYPE_EXPORT_DIALOG (trammel_export_dialog_get_type ())
G_DECLARE_FINAL_TYPE (TrammelExportDialog, trammel_export_dialog, TRAMMEL, EXPORT_DIALOG, AdwWindow)

struct _TrammelExportDialog {
  AdwWindow parent;
  TrammelWindow *window;
  Figures *figures;
  AdwComboRow *format, *list, *paper, *orientation, *lengths, *masses;
  GtkSpinButton *resolution;
  GtkWidget *list_group, *page_group, *resolution_row, *complaint;
  TrammelExportPreview *preview;
};

G_DEFINE_FINAL_TYPE (TrammelExportDialog, trammel_export_dialog, ADW_TYPE_WINDOW)

/* In the order of the rows in the dialog; its lists stand there in the order of ReportList. */
static const struct { ExportFormat format; const char *ending, *kind; } formats[] = {
  { EXPORT_PNG,  ".png",  N_("PNG pictures") },
  { EXPORT_PDF,  ".pdf",  N_("PDF documents") },
  { EXPORT_SVG,  ".svg",  N_("SVG drawings") },
  { EXPORT_CSV,  ".csv",  N_("Comma-separated lists") },
  { EXPORT_JSON, ".json", N_("JSON figures") },
};
static const char document_ending[] = ".trammel";

static ExportOptions
dialog_options (TrammelExportDialog *self)
{
  ExportOptions options = export_default_options ("");

  options.format = formats[adw_combo_row_get_selected (self->format)].format;
  g_strlcpy (options.paper, paper_nth (adw_combo_row_get_selected (self->paper))->word, sizeof options.paper);
  options.list = adw_combo_row_get_selected (self->list);
  options.portrait = adw_combo_row_get_selected (self->orientation) == 1;
  options.dpi = gtk_spin_button_get_value_as_int (self->resolution);
  options.units.length = adw_combo_row_get_selected (self->lengths) == 1 ? LENGTH_INCH : LENGTH_MM;
  options.units.mass = adw_combo_row_get_selected (self->masses) == 1 ? MASS_OZ : MASS_G;
  return options;
}

/* Only what has an effect is shown: lists have no paper, and only a picture has dots. Figures are in millimetres and grams always. */
static void
dialog_refresh (TrammelExportDialog *self)
{
  const ExportOptions options = dialog_options (self);

  gtk_widget_set_visible (self->list_group, options.format == EXPORT_CSV);
  gtk_widget_set_visible (self->page_group, options.format != EXPORT_CSV && options.format != EXPORT_JSON);
  gtk_widget_set_visible (self->resolution_row, options.format == EXPORT_PNG);
  trammel_export_preview_set (self->preview, self->figures, &options);
}

/* A nameless document is called after its file, whose ending has no business in an export's name. */
static char *
dialog_title (TrammelExportDialog *self)
{
  char *title = trammel_session_title (trammel_window_session (self->window));

  if (g_str_has_suffix (title, document_ending) && !g_str_equal (title, document_ending))
    title[strlen (title) - strlen (document_ending)] = '\0';
  return title;
}

/* Beside its document as the parts list is, another list says which one it is. */
static char *
dialog_proposal (TrammelExportDialog *self)
{
  const ExportOptions options = dialog_options (self);
  g_autofree char *title = dialog_title (self);

  if (options.format != EXPORT_CSV || options.list == REPORT_LIST_PARTS)
    return g_steal_pointer (&title);
  return g_strdup_printf ("%s %s", title, report_list_word (options.list));
}

static void dialog_return (TrammelWindow *window, const ExportOptions *options, const char *sentence);

static void
place_chosen (const char *path, gpointer dialog)
{
  TrammelExportDialog *self = dialog;
  const ExportOptions options = dialog_options (self);

  export_job_run (self->window, self->figures, &options, path, dialog_return);
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
choose_place (GtkWidget *widget, const char *action, GVariant *parameter)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (widget);
  TrammelSession *session = trammel_window_session (self->window);
  const guint format = adw_combo_row_get_selected (self->format);
  g_autofree char *proposal = dialog_proposal (self);

  file_chooser_save (GTK_WINDOW (self), &(SaveChoice) {
    .heading = _("Export"), .folder_of = trammel_session_path (session), .name = proposal, .ending = formats[format].ending,
    .kind = _(formats[format].kind), .chosen = place_chosen, .data = self });
}

static void
trammel_export_dialog_dispose (GObject *object)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (object);

  g_clear_object (&self->window);
  g_clear_pointer (&self->figures, figures_unref);
  G_OBJECT_CLASS (trammel_export_dialog_parent_class)->dispose (object);
}

static void
trammel_export_dialog_class_init (TrammelExportDialogClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_export_dialog_dispose;
  g_type_ensure (TRAMMEL_TYPE_EXPORT_PREVIEW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/trammel/Trammel/export-dialog.ui");
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, format);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, list);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, paper);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, orientation);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, lengths);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, masses);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, resolution);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, list_group);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, page_group);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, resolution_row);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, complaint);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, preview);
  gtk_widget_class_install_action (widget_class, "export.choose-place", NULL, choose_place);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
}

static void
trammel_export_dialog_init (TrammelExportDialog *self)
{
  g_autoptr (GtkStringList) papers = gtk_string_list_new (NULL);

  gtk_widget_init_template (GTK_WIDGET (self));
  for (size_t i = 0; paper_nth (i) != NULL; i++)
    gtk_string_list_append (papers, _(paper_nth (i)->title));
  adw_combo_row_set_model (self->paper, G_LIST_MODEL (papers));
}

static bool
paper_here_is_letter (void)
{
  return g_str_equal (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER);
}

static void
dialog_follow_rows (TrammelExportDialog *self)
{
  AdwComboRow *rows[] = { self->format, self->list, self->paper, self->orientation, self->lengths, self->masses };

  for (size_t i = 0; i < G_N_ELEMENTS (rows); i++)
    g_signal_connect_swapped (rows[i], "notify::selected", G_CALLBACK (dialog_refresh), self);
  g_signal_connect_swapped (self->resolution, "value-changed", G_CALLBACK (dialog_refresh), self);
}

/* What fits the place and the window, to begin with. */
static ExportOptions
usual_options (TrammelWindow *window)
{
  ExportOptions options = export_default_options ("");

  g_strlcpy (options.paper, paper_here_is_letter () ? "letter" : "a4", sizeof options.paper);
  options.units = trammel_session_units (trammel_window_session (window));
  return options;
}

static void
dialog_choose (TrammelExportDialog *self, const ExportOptions *options)
{
  for (guint i = 0; i < G_N_ELEMENTS (formats); i++)
    if (formats[i].format == options->format)
      adw_combo_row_set_selected (self->format, i);
  adw_combo_row_set_selected (self->list, options->list);
  for (guint i = 0; paper_nth (i) != NULL; i++)
    if (g_str_equal (paper_nth (i)->word, options->paper))
      adw_combo_row_set_selected (self->paper, i);
  adw_combo_row_set_selected (self->orientation, options->portrait ? 1 : 0);
  gtk_spin_button_set_value (self->resolution, options->dpi);
  adw_combo_row_set_selected (self->lengths, options->units.length == LENGTH_INCH ? 1 : 0);
  adw_combo_row_set_selected (self->masses, options->units.mass == MASS_OZ ? 1 : 0);
}

static void
dialog_present (TrammelWindow *window, const ExportOptions *options, const char *complaint)
{
  TrammelExportDialog *self = g_object_new (trammel_export_dialog_get_type (), "transient-for", window, NULL);

  self->window = g_object_ref (window);
  self->figures = figures_ref (trammel_session_figures (trammel_window_session (window)));
  gtk_label_set_text (GTK_LABEL (self->complaint), complaint != NULL ? complaint : "");
  gtk_widget_set_visible (self->complaint, complaint != NULL);
  dialog_choose (self, options);
  dialog_follow_rows (self);
  dialog_refresh (self);
  row_names_give (GTK_WIDGET (self), _("Export"));
  gtk_window_present (GTK_WINDOW (self));
  gtk_widget_grab_focus (GTK_WIDGET (self->format));
}

/* Nothing was written: what was chosen stands there again, with the reason. */
static void
dialog_return (TrammelWindow *window, const ExportOptions *options, const char *sentence)
{
  dialog_present (window, options, sentence);
}

void
export_dialog_present (TrammelWindow *window)
{
  const ExportOptions options = usual_options (window);

  dialog_present (window, &options, NULL);
}
