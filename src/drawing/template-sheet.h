#pragma once
#include "drawing/flat-piece.h"
#include "drawing/paper.h"
#include "drawing/sheet-pages.h"

/** Flat pieces at full size on paper: on one page as large as they need, or on tiles of the paper at hand, which are cut along their crosses
 *  and glued together. */
typedef struct {
  const GPtrArray *pieces;       /* of FlatPiece */
  const char *title;             /* the aeroplane's */
  const Paper *paper;            /* of the tiles */
  bool one_page, portrait;       /* a single page lies as it is larger, whatever is said here */
  double read_short, read_long;  /* how long the printer at hand draws 100 mm along its paper's short side and its long one, whichever way
                                    the page lies, mm, 90..110 */
  const char *date;              /* of the last change, as it shall be read; "" leaves it out */
} TemplateSheet;

/** Where everything stands: made once, drawn as often as wanted, on anything. */
typedef struct TemplateLayout TemplateLayout;

/** Lays it out; the pieces array is held, words are copied. NULL and
 *    EXPORT_ERROR_DRAWING  without any piece
 *    EXPORT_ERROR_PAPER    on a paper that its own margins and control lines leave no room on
 *  cost  some tenths of a second: many ways to lay pieces are tried */
TemplateLayout *template_layout_new  (const TemplateSheet *sheet, GError **error);
void            template_layout_free (TemplateLayout *self);        /* NULL is fine */
/** For sheet_pages_of, which takes the layout. */
const SheetPagesKind *template_pages_kind (void);

size_t template_layout_count (const TemplateLayout *self);          /* of pages, >= 1 */
/** The page's size, mm; tiles are all as large as their paper. page < count */
void   template_layout_size  (const TemplateLayout *self, size_t page, double *width, double *height);
/** Paints it as SheetPagesKind says. page < count */
void   template_layout_draw  (const TemplateLayout *self, size_t page, cairo_t *cr);
