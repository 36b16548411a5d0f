#pragma once
#include <gtk/gtk.h>
#include "drawing/export.h"
#include "drawing/sheet-pages.h"

/** What an export will hold, to be looked at: one page on white paper, whatever it will be saved as, or the text. */
typedef struct {
  GdkTexture *picture;      /* NULL: it is text */
  GBytes *text;
  size_t page, count;       /* which page of how many; 0 of 1 for text */
  char *subject;            /* "Wall sheet with the balance mark"; NULL for text */
  char *size;               /* a file for cutting: how large it is, a sentence; else NULL */
  unsigned layers;          /* a file for cutting: which layers it has, as cutting_layers_used; else 0 */
  SheetPages *pages;        /* all of them, laid out: for another of them; NULL for text and a file for cutting */
} ExportPage;

/** Page `options->page`, or the last where there are fewer. NULL and the sentence where there is nothing to show. For any thread.
 *  cost  tens of milliseconds: that page alone is drawn */
ExportPage *export_page_new  (const Figures *figures, const ExportOptions *options, GError **error);
/** The same of pages that are laid out already, which are taken: to lay out a template takes longer than to draw a page. */
ExportPage *export_page_among (SheetPages *takes, const ExportOptions *options, GError **error);
void        export_page_free (ExportPage *self);      /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (ExportPage, export_page_free)
