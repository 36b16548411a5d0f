#pragma once
#include <cairo.h>
#include "drawing/export.h"

/** Pages of one kind of sheet, laid out once, drawn as often as wanted, on anything: a file, a printer, the window. */
typedef struct SheetPages SheetPages;

/** What a kind of sheet gives. `layout` is its own; pages count from 0; sizes are mm. draw: user units are mm from the page's upper left
 *  corner, the ground is not painted, cr is left as it was found. */
typedef struct {
  size_t (*count) (const void *layout);
  void   (*size)  (const void *layout, size_t page, double *width, double *height);
  void   (*draw)  (const void *layout, size_t page, cairo_t *cr);
  void   (*free)  (void *takes);
} SheetPagesKind;

/** The pages of that sheet. Their day is that of the aeroplane's last change. NULL and an EXPORT_ERROR_PAPER or EXPORT_ERROR_DRAWING where it has
 *  no room, or nothing to show.
 *  cost  tens of milliseconds */
SheetPages *sheet_pages_new  (const Figures *figures, const ExportOptions *options, GError **error);
/** Of a layout, which is taken, and what a file says of it to those who cannot see it: both texts are copied. */
SheetPages *sheet_pages_of   (const SheetPagesKind *kind, void *takes, const char *title, const char *subject);
void        sheet_pages_free (SheetPages *self);        /* NULL is fine */

size_t      sheet_pages_count   (const SheetPages *self);      /* >= 1 */
void        sheet_pages_size    (const SheetPages *self, size_t page, double *width, double *height);     /* mm; page < count */
void        sheet_pages_draw    (const SheetPages *self, size_t page, cairo_t *cr);      /* as SheetPagesKind says; page < count */
const char *sheet_pages_title   (const SheetPages *self);      /* "Saltmarsh"; lent */
const char *sheet_pages_date    (const SheetPages *self);      /* "2026-11-25", "" not known; lent */
const char *sheet_pages_subject (const SheetPages *self);      /* "Wall sheet with the balance mark"; lent */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SheetPages, sheet_pages_free)
