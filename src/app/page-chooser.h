#pragma once
#include <gtk/gtk.h>
#include "document/units.h"

/** Asks which page of a PDF is the plan, with pictures of the pages. Only those that are looked at are drawn, one at a time, away from
 *  the main thread; a thousand pages open as quickly as two. */
typedef struct {
  int file;                                       /* descriptor of the PDF; taken */
  int pages;
  const char *name;                               /* of the file, for people */
  Units units;
  void (*chosen) (int page, gpointer data);       /* once: from 1; 0: none of them */
  gpointer data;
} PageChoice;

/** Opens the window, modal to its parent; lent, it closes itself. The choice is copied. */
GtkWidget *page_chooser_present (GtkWindow *parent, const PageChoice *choice);
/** Closes it without an answer. */
void       page_chooser_dismiss (GtkWidget *chooser);
