#pragma once
#include <math.h>
#include <poppler.h>
#include "app/print-job.h"
#include "support/stage.h"

/** Prints for tests: into a file by the desktop's own print system, read again by another program. */

static inline void
printed (GtkPrintOperation *operation, GtkPrintOperationResult result, GtkPrintOperationResult *told)
{
  *told = result;
}

static inline bool
print_is_done (gpointer told)
{
  return *(GtkPrintOperationResult *) told != GTK_PRINT_OPERATION_RESULT_IN_PROGRESS;
}

/* Printed into a file by the desktop's own print system, and read again by another program. */
static inline PopplerDocument *
print_read_again (TrammelWindow *window, const ExportOptions *options)
{
  const char *path = stage_path ("printed.pdf");
  GError *error = NULL;
  SheetPages *pages = sheet_pages_new (trammel_session_figures (trammel_window_session (window)), options, &error);
  GtkPrintOperationResult result = GTK_PRINT_OPERATION_RESULT_IN_PROGRESS;
  g_autoptr (GtkPrintOperation) operation = NULL;
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);
  PopplerDocument *document;

  ck_assert_msg (pages != NULL, "%s", error == NULL ? "" : error->message);
  operation = print_job_operation (pages);
  gtk_print_operation_set_export_filename (operation, path);
  g_signal_connect (operation, "done", G_CALLBACK (printed), &result);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_EXPORT, GTK_WINDOW (window), NULL);
  ck_assert (gui_wait (print_is_done, &result));
  ck_assert_int_eq (result, GTK_PRINT_OPERATION_RESULT_APPLY);
  document = poppler_document_new_from_file (uri, NULL, &error);
  ck_assert_msg (document != NULL, "%s", error == NULL ? "" : error->message);
  return document;
}

/* How far from it the nearest of them is, points of 1/72 in. */
static inline double
nearest_off (const PopplerRectangle *place, GList *places)
{
  double nearest = G_MAXDOUBLE;

  for (GList *each = places; each != NULL; each = each->next) {
    const PopplerRectangle *other = each->data;
    nearest = fmin (nearest, fabs (place->x1 - other->x1) + fabs (place->y1 - other->y1) + fabs (place->x2 - other->x2));
  }
  return nearest;
}

/* These stand all over a page, each as large and where the file that is exported has it: so the print is true, and as it lies. */
static inline int
words_stand_alike (PopplerPage *print, PopplerPage *file)
{
  static const char *const words[] = { "Saltmarsh", "100", "mm", "F5", "R2", "at" };
  int found = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (words); i++) {
    GList *printed_places = poppler_page_find_text (print, words[i]), *places = poppler_page_find_text (file, words[i]);

    ck_assert_uint_eq (g_list_length (printed_places), g_list_length (places));
    for (GList *each = places; each != NULL; each = each->next, found++)
      ck_assert_double_lt (nearest_off (each->data, printed_places), 0.5);
    g_list_free_full (printed_places, (GDestroyNotify) poppler_rectangle_free);
    g_list_free_full (places, (GDestroyNotify) poppler_rectangle_free);
  }
  return found;
}

static inline void
pages_read_alike (PopplerDocument *print, PopplerDocument *file, int index)
{
  PopplerPage *printed_page = poppler_document_get_page (print, index), *page = poppler_document_get_page (file, index);

  ck_assert_int_gt (words_stand_alike (printed_page, page), 2);
  g_object_unref (printed_page);
  g_object_unref (page);
}
