#include "trammel-config.h"
#include "app/export-dialog.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "app/export-choices.h"
#include "app/export-job.h"
#include "app/export-memory.h"
#include "app/export-place.h"
#include "app/export-preview.h"
#include "app/export-sheets.h"
#include "app/file-chooser.h"
#include "app/help-window.h"
#include "app/print-job.h"
#include "app/row-names.h"

#define TRAMMEL_TYPE_EXPORT_DIALOG (trammel_export_dialog_get_type ())
G_DECLARE_FINAL_TYPE (TrammelExportDialog, trammel_export_dialog, TRAMMEL, EXPORT_DIALOG, AdwWindow)

struct _TrammelExportDialog {
  AdwWindow parent;
  TrammelWindow *window;
  Figures *figures;
  TrammelExportChoices *choices;
  TrammelExportPreview *preview;
  GtkWidget *complaint, *print_button, *export_button;
  char *exchanged;              /* what is to be said of an ending that was typed; NULL: nothing */
  bool asking;                  /* another dialog is asking where to */
  guint drawing;                /* source that will draw what was typed; 0 none */
};

G_DEFINE_FINAL_TYPE (TrammelExportDialog, trammel_export_dialog, ADW_TYPE_WINDOW)

/* Who pauses for so long has typed what was to be typed. */
enum { TYPING_MS = 500 };

static const char document_ending[] = ".trammel";

static void
dialog_refresh (TrammelExportDialog *self)
{
  const ExportOptions options = trammel_export_choices_options (self->choices);
  const bool ready = !self->asking && trammel_export_choices_are_whole (self->choices);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "export.choose-place", ready);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "export.print", ready && export_can_be_printed (&options));
}

static void
dialog_draw (gpointer dialog)
{
  TrammelExportDialog *self = dialog;
  const ExportOptions options = trammel_export_choices_options (self->choices);

  self->drawing = 0;
  trammel_export_preview_set (self->preview, self->figures, &options);
}

/* What is being typed is drawn once it stands: a "9" on its way to "99.5" is no length that anybody means. Of what cannot be read the page before is
 * right, and stays. */
static void
choices_changed (TrammelExportDialog *self)
{
  const ExportOptions options = trammel_export_choices_options (self->choices);

  export_memory_keep (trammel_session_settings (trammel_window_session (self->window)), &options);
  g_clear_handle_id (&self->drawing, g_source_remove);
  if (!trammel_export_choices_were_typed (self->choices))
    dialog_draw (self);
  else if (trammel_export_choices_are_whole (self->choices))
    self->drawing = g_timeout_add_once (TYPING_MS, dialog_draw, self);
  dialog_refresh (self);
}

/* Its document's window may have gone meanwhile, and have taken it along. */
static bool
dialog_is_gone (TrammelExportDialog *self)
{
  return gtk_widget_in_destruction (GTK_WIDGET (self)) || !gtk_widget_get_realized (GTK_WIDGET (self));
}

/* One question at a time: a key pressed twice asks once. */
static void
dialog_ask (TrammelExportDialog *self, bool asking)
{
  if (dialog_is_gone (self))
    return;
  self->asking = asking;
  dialog_refresh (self);
}

static TrammelExportDialog *dialog_present (TrammelWindow *window, const ExportOptions *options, ExportAim aim, const char *complaint);

/* Exporting */

/* A nameless document is called after its file, whose ending has no business in an export's name. */
static char *
dialog_title (TrammelExportDialog *self)
{
  char *title = trammel_session_title (trammel_window_session (self->window));

  if (g_str_has_suffix (title, document_ending) && !g_str_equal (title, document_ending))
    title[strlen (title) - strlen (document_ending)] = '\0';
  return title;
}

/* Beside its document as the wall sheet and the list of parts are, another sheet or list says which one it is. */
static char *
dialog_proposal (TrammelExportDialog *self, const ExportOptions *options)
{
  const bool list = options->format == EXPORT_CSV;
  const char *word = !list ? export_sheet_word (options->sheet) : options->list != REPORT_LIST_PARTS ? report_list_word (options->list) : NULL;
  g_autofree char *title = dialog_title (self);

  return word == NULL ? g_steal_pointer (&title) : g_strdup_printf ("%s %s", title, word);
}

/* Nothing was written: what was chosen stands there again, with the reason. */
static void
export_returned (TrammelWindow *window, const ExportOptions *options, const char *sentence)
{
  dialog_present (window, options, EXPORT_TO_FILE, sentence);
}

/* As it is chosen here, but for the format that an ending tells. */
static ExportOptions
options_for_path (TrammelExportDialog *self, const char *path)
{
  ExportOptions options = trammel_export_choices_options (self->choices);

  export_format_of (path, &options.format);
  return options;
}

static char *
place_complete (const char *typed, gpointer dialog)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (dialog);
  const ExportOptions options = trammel_export_choices_options (self->choices);

  g_free (self->exchanged);
  self->exchanged = export_place_exchanged (&options, typed);
  return export_sheet_path (&options, typed);
}

/* In another format a sheet may have other pages than those that are shown. */
static void
place_in_the_way (const char *path, FilesTold told, gpointer asked, gpointer dialog)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (dialog);
  const ExportOptions options = options_for_path (self, path);
  const bool shown = options.format == trammel_export_choices_options (self->choices).format && self->drawing == 0;

  export_place_look (self->figures, &options, path, shown ? trammel_export_preview_count (self->preview) : 0, told, asked);
}

static void
place_chosen (const char *path, gpointer dialog)
{
  g_autoptr (TrammelExportDialog) self = dialog;
  const ExportOptions options = options_for_path (self, path);

  export_memory_keep (trammel_session_settings (trammel_window_session (self->window)), &options);
  export_job_run (self->window, self->figures, &options, path, self->exchanged, export_returned);
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
place_refused (gpointer dialog)
{
  g_autoptr (TrammelExportDialog) self = dialog;

  dialog_ask (self, false);
}

static void
choose_place (GtkWidget *widget, const char *action, GVariant *parameter)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (widget);
  TrammelSession *session = trammel_window_session (self->window);
  const ExportOptions options = trammel_export_choices_options (self->choices);
  const ExportFormatWords *words = export_sheet_format (options.sheet, export_sheet_format_place (options.sheet, options.format));
  g_autofree char *proposal = dialog_proposal (self, &options), *folder = export_memory_folder (trammel_session_settings (session));

  dialog_ask (self, true);
  file_chooser_save (GTK_WINDOW (self), &(SaveChoice) {
    .heading = _("Export"), .folder = folder, .folder_of = trammel_session_path (session), .name = proposal, .ending = words->ending,
    .kind = _(words->kind), .complete = place_complete, .in_the_way = place_in_the_way, .chosen = place_chosen, .refused = place_refused, .data = g_object_ref (self) });
}

/* Printing */

static void
printing_begun (gpointer dialog)
{
  gtk_window_destroy (GTK_WINDOW (dialog));
}

static void
printing_looked_at (gpointer dialog)
{
  gtk_window_present (GTK_WINDOW (dialog));
}

/* With the dialog gone the window says what stood in the way. */
static void
printing_ended (const char *sentence, gpointer dialog)
{
  g_autoptr (TrammelExportDialog) self = dialog;

  if (dialog_is_gone (self)) {
    if (sentence != NULL)
      trammel_window_tell (self->window, sentence);
    return;
  }
  dialog_ask (self, false);
  gtk_label_set_text (GTK_LABEL (self->complaint), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self->complaint, sentence != NULL);
}

static void
print_sheet (GtkWidget *widget, const char *action, GVariant *parameter)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (widget);
  const ExportOptions options = trammel_export_choices_options (self->choices);

  dialog_ask (self, true);
  print_job_run (GTK_WINDOW (self), self->figures, &options, &(PrintTold) {
    .begun = printing_begun, .look = printing_looked_at, .ended = printing_ended, .data = g_object_ref (self) });
}

/* Keys */

/* Where these keys have a use of their own they keep it: in a number, a list that is open, a text longer than its place. */
static bool
focus_uses_page_keys (GtkWidget *dialog)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (dialog));

  return focus != NULL && (GTK_IS_TEXT_VIEW (focus) || gtk_widget_get_ancestor (focus, GTK_TYPE_SPIN_BUTTON) != NULL
                           || gtk_widget_get_ancestor (focus, GTK_TYPE_POPOVER) != NULL);
}

static gboolean
turn_page (GtkWidget *dialog, GVariant *by, gpointer data)
{
  return !focus_uses_page_keys (dialog) && trammel_export_preview_turn (TRAMMEL_EXPORT_DIALOG (dialog)->preview, g_variant_get_int32 (by));
}

/* Before the rows, which would scroll. */
static void
dialog_add_page_keys (TrammelExportDialog *self)
{
  static const struct { guint key; int by; } keys[] = {
    { GDK_KEY_Page_Up, -1 }, { GDK_KEY_KP_Page_Up, -1 }, { GDK_KEY_Page_Down, 1 }, { GDK_KEY_KP_Page_Down, 1 } };
  GtkEventController *controller = gtk_shortcut_controller_new ();

  gtk_event_controller_set_propagation_phase (controller, GTK_PHASE_CAPTURE);
  for (size_t i = 0; i < G_N_ELEMENTS (keys); i++) {
    GtkShortcut *shortcut = gtk_shortcut_new (gtk_keyval_trigger_new (keys[i].key, 0), gtk_callback_action_new (turn_page, NULL, NULL));
    gtk_shortcut_set_arguments (shortcut, g_variant_new_int32 (keys[i].by));
    gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (controller), shortcut);
  }
  gtk_widget_add_controller (GTK_WIDGET (self), controller);
}

/* A key for what cannot be done yet leads to what stands in the way. */
static gboolean
key_acts (GtkWidget *dialog, GVariant *action, gpointer data)
{
  trammel_export_choices_focus_fault (TRAMMEL_EXPORT_DIALOG (dialog)->choices);
  gtk_widget_activate_action (dialog, g_variant_get_string (action, NULL), NULL);
  return TRUE;
}

static gboolean
show_help (GtkWidget *dialog, GVariant *page, gpointer data)
{
  help_window_present (gtk_window_get_application (GTK_WINDOW (TRAMMEL_EXPORT_DIALOG (dialog)->window)), g_variant_get_string (page, NULL));
  return TRUE;
}

/* The dialog */

/* The window goes last: it may be the dialog's parent's only owner, and the parent is still asked when the dialog lets go of it. */
static void
trammel_export_dialog_dispose (GObject *object)
{
  TrammelExportDialog *self = TRAMMEL_EXPORT_DIALOG (object);
  g_autoptr (TrammelWindow) window = g_steal_pointer (&self->window);

  g_clear_handle_id (&self->drawing, g_source_remove);
  g_clear_pointer (&self->figures, figures_unref);
  g_clear_pointer (&self->exchanged, g_free);
  G_OBJECT_CLASS (trammel_export_dialog_parent_class)->dispose (object);
}

static void
trammel_export_dialog_class_init (TrammelExportDialogClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_export_dialog_dispose;
  g_type_ensure (TRAMMEL_TYPE_EXPORT_CHOICES);
  g_type_ensure (TRAMMEL_TYPE_EXPORT_PREVIEW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/trammel/Trammel/export-dialog.ui");
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, choices);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, preview);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, complaint);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, print_button);
  gtk_widget_class_bind_template_child (widget_class, TrammelExportDialog, export_button);
  gtk_widget_class_install_action (widget_class, "export.choose-place", NULL, choose_place);
  gtk_widget_class_install_action (widget_class, "export.print", NULL, print_sheet);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_F1, 0, show_help, "s", "sheets");
  gtk_widget_class_add_binding (widget_class, GDK_KEY_p, GDK_CONTROL_MASK, key_acts, "s", "export.print");
  gtk_widget_class_add_binding (widget_class, GDK_KEY_e, GDK_CONTROL_MASK, key_acts, "s", "export.choose-place");
}

static void
trammel_export_dialog_init (TrammelExportDialog *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  dialog_add_page_keys (self);
}

static void
dialog_suggest (TrammelExportDialog *self, ExportAim aim)
{
  GtkWidget *button = aim == EXPORT_TO_PRINTER ? self->print_button : self->export_button;

  gtk_widget_add_css_class (button, "suggested-action");
  gtk_window_set_default_widget (GTK_WINDOW (self), button);
}

static TrammelExportDialog *
dialog_present (TrammelWindow *window, const ExportOptions *options, ExportAim aim, const char *complaint)
{
  TrammelExportDialog *self = g_object_new (trammel_export_dialog_get_type (), "transient-for", window, NULL);

  self->window = g_object_ref (window);
  /* Its own reference keeps the document's window from going, and so from taking the dialog along. */
  g_signal_connect_object (window, "unrealize", G_CALLBACK (gtk_window_destroy), self, G_CONNECT_SWAPPED);
  self->figures = figures_ref (trammel_session_figures (trammel_window_session (window)));
  gtk_label_set_text (GTK_LABEL (self->complaint), complaint != NULL ? complaint : "");
  gtk_widget_set_visible (self->complaint, complaint != NULL);
  trammel_export_choices_remember (self->choices, trammel_session_settings (trammel_window_session (window)));
  trammel_export_choices_set (self->choices, options);
  g_signal_connect_swapped (self->choices, "choices-changed", G_CALLBACK (choices_changed), self);
  choices_changed (self);
  dialog_suggest (self, aim);
  row_names_give (GTK_WIDGET (self), _("Print or Export"));
  gtk_window_present (GTK_WINDOW (self));
  trammel_export_choices_focus (self->choices);
  return self;
}

/* A printer has neither lists nor cuts: a sheet then stands there as a document, or the wall sheet does. */
static void
options_for_printer (ExportOptions *options, TrammelSettings *settings)
{
  if (options->sheet == EXPORT_CUTTING) {
    options->sheet = EXPORT_WALL_SHEET;
    export_memory_recall (settings, options);
  }
  if (!export_is_drawn (options))
    options->format = EXPORT_PDF;
}

void
export_dialog_present (TrammelWindow *window, ExportAim aim)
{
  TrammelSettings *settings = trammel_session_settings (trammel_window_session (window));
  ExportOptions options = export_memory_read (settings);

  if (aim == EXPORT_TO_PRINTER)
    options_for_printer (&options, settings);
  dialog_present (window, &options, aim, NULL);
}
