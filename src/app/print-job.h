#pragma once
#include <gtk/gtk.h>
#include "drawing/export.h"
#include "drawing/sheet-pages.h"

/** Told on the main thread; all lent. */
typedef struct {
  void (*begun)  (gpointer data);                         /* the pages are on their way: no question is open any more; may be NULL */
  void (*look)   (gpointer data);                         /* the person asks to see them first; may be NULL */
  void (*ended)  (const char *sentence, gpointer data);   /* once, last: NULL when printed or cancelled, else what stood in the way */
  gpointer data;
} PrintTold;

/** Prints the sheet: its pages are laid out away from the main thread, then the desktop's own dialog asks for the printer, over `parent`.
 *  Nothing waits for it. Pages are of the sheet's own size, the whole paper, in mm, neither fitted nor scaled. */
void print_job_run (GtkWindow *parent, const Figures *figures, const ExportOptions *options, const PrintTold *told);

/** The operation that prints those pages, which are taken; nothing has begun yet. The caller's. */
GtkPrintOperation *print_job_operation (SheetPages *takes);
