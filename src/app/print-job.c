#include "trammel-config.h"
#include "app/print-job.h"
#include <math.h>
#include <glib/gi18n-lib.h>

/* Papers are alike when they differ by less than a printer can tell. */
static const double alike_mm = 0.5;

/* The desktop's name for a paper of that size as it stands upright, so that a printer finds its tray; one of our own where there is none. */
static GtkPaperSize *
paper_of_size (double narrow, double tall)
{
  GList *known = gtk_paper_size_get_paper_sizes (FALSE);
  GtkPaperSize *found = NULL;

  for (GList *each = known; each != NULL && found == NULL; each = each->next)
    if (fabs (gtk_paper_size_get_width (each->data, GTK_UNIT_MM) - narrow) < alike_mm
        && fabs (gtk_paper_size_get_height (each->data, GTK_UNIT_MM) - tall) < alike_mm)
      found = gtk_paper_size_copy (each->data);
  g_list_free_full (known, (GDestroyNotify) gtk_paper_size_free);
  return found != NULL ? found : gtk_paper_size_new_custom ("trammel-sheet", _("The sheet's own size"), narrow, tall, GTK_UNIT_MM);
}

static void
setup_page (GtkPageSetup *setup, const SheetPages *pages, size_t page)
{
  double width, height;
  GtkPaperSize *paper;

  sheet_pages_size (pages, page, &width, &height);
  paper = paper_of_size (MIN (width, height), MAX (width, height));
  gtk_page_setup_set_paper_size (setup, paper);
  gtk_page_setup_set_orientation (setup, width > height ? GTK_PAGE_ORIENTATION_LANDSCAPE : GTK_PAGE_ORIENTATION_PORTRAIT);
  gtk_paper_size_free (paper);
}

static void
page_asked (GtkPrintOperation *operation, GtkPrintContext *context, int page, GtkPageSetup *setup, const SheetPages *pages)
{
  setup_page (setup, pages, page);
}

/* The context is in mm from the corner of the whole paper, as pages are. */
static void
draw_page (GtkPrintOperation *operation, GtkPrintContext *context, int page, const SheetPages *pages)
{
  sheet_pages_draw (pages, page, gtk_print_context_get_cairo_context (context));
}

GtkPrintOperation *
print_job_operation (SheetPages *takes)
{
  GtkPrintOperation *operation = gtk_print_operation_new ();
  g_autoptr (GtkPageSetup) setup = gtk_page_setup_new ();
  g_autoptr (GtkPrintSettings) settings = gtk_print_settings_new ();
  /* Translators: what a print is called where printers list their work: the aeroplane's name, and what the sheet is. */
  g_autofree char *name = g_strdup_printf (_("%1$s: %2$s"), sheet_pages_title (takes), sheet_pages_subject (takes));

  setup_page (setup, takes, 0);
  gtk_print_settings_set_scale (settings, 100);
  gtk_print_operation_set_print_settings (operation, settings);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_n_pages (operation, (int) sheet_pages_count (takes));
  gtk_print_operation_set_job_name (operation, name);
  gtk_print_operation_set_use_full_page (operation, TRUE);
  gtk_print_operation_set_unit (operation, GTK_UNIT_MM);
  gtk_print_operation_set_allow_async (operation, TRUE);
  g_object_set_data_full (G_OBJECT (operation), "sheet-pages", takes, (GDestroyNotify) sheet_pages_free);
  g_signal_connect (operation, "request-page-setup", G_CALLBACK (page_asked), takes);
  g_signal_connect (operation, "draw-page", G_CALLBACK (draw_page), takes);
  return operation;
}

typedef struct {
  Figures *figures;
  ExportOptions options;
  GtkWindow *parent;
  PrintTold told;
  bool looking;                 /* what is asked for is not a print but a look */
} Job;

static void
job_free (Job *job)
{
  figures_unref (job->figures);
  g_object_unref (job->parent);
  g_free (job);
}

static void
job_end (Job *job, const char *sentence)
{
  job->told.ended (sentence, job->told.data);
  job_free (job);
}

static void
printing_begun (GtkPrintOperation *operation, GtkPrintContext *context, Job *job)
{
  if (job->told.begun != NULL && !job->looking)
    job->told.begun (job->told.data);
}

/* The pages stand in the dialog already: no other program is needed to see them. */
static gboolean
printing_looked_at (GtkPrintOperation *operation, GtkPrintOperationPreview *preview, GtkPrintContext *context, GtkWindow *parent, Job *job)
{
  job->looking = true;
  gtk_print_operation_preview_end_preview (preview);
  if (job->told.look != NULL)
    job->told.look (job->told.data);
  return TRUE;
}

static void
printing_done (GtkPrintOperation *operation, GtkPrintOperationResult result, Job *job)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *sentence = NULL;

  if (result == GTK_PRINT_OPERATION_RESULT_ERROR)
    gtk_print_operation_get_error (operation, &error);
  if (error != NULL)
    /* Translators: %s is the printing system's own sentence. */
    sentence = g_strdup_printf (_("Nothing was printed: %s"), error->message);
  job_end (job, sentence);
  g_object_unref (operation);
}

static void
layout_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Job *job = data;
  GError *error = NULL;
  SheetPages *pages = sheet_pages_new (job->figures, &job->options, &error);

  if (pages == NULL)
    g_task_return_error (task, error);
  else
    g_task_return_pointer (task, pages, (GDestroyNotify) sheet_pages_free);
}

static void
layout_arrived (GObject *parent, GAsyncResult *result, gpointer data)
{
  Job *job = data;
  g_autoptr (GError) error = NULL;
  SheetPages *pages = g_task_propagate_pointer (G_TASK (result), &error);
  GtkPrintOperation *operation;

  if (pages == NULL) {
    job_end (job, error->message);
    return;
  }
  operation = print_job_operation (pages);
  g_signal_connect (operation, "begin-print", G_CALLBACK (printing_begun), job);
  g_signal_connect (operation, "preview", G_CALLBACK (printing_looked_at), job);
  g_signal_connect (operation, "done", G_CALLBACK (printing_done), job);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, job->parent, NULL);
}

void
print_job_run (GtkWindow *parent, const Figures *figures, const ExportOptions *options, const PrintTold *told)
{
  Job *job = g_new0 (Job, 1);
  g_autoptr (GTask) task = g_task_new (parent, NULL, layout_arrived, job);

  job->figures = figures_ref (figures);
  job->options = *options;
  job->parent = g_object_ref (parent);
  job->told = *told;
  g_task_set_task_data (task, job, NULL);
  g_task_run_in_thread (task, layout_in_thread);
}
