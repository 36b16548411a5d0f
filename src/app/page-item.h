#pragma once
#include <gtk/gtk.h>
#include "document/units.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_PAGE_ITEM (trammel_page_item_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPageItem, trammel_page_item, TRAMMEL, PAGE_ITEM, GObject)

/** Draws pages small, one after the other, in a thread of its own. */
typedef struct PageDrawer PageDrawer;
PageDrawer *page_drawer_new  (int takes_file, Units units);      /* takes the PDF's descriptor; page_drawer_free() it */
/** Nothing more is drawn; what was asked for is forgotten, and it goes. */
void        page_drawer_stop (PageDrawer *self);

/** One page of a PDF: its number, and while somebody looks at it, its picture. Properties to bind to: "picture" (GdkPaintable, or NULL
 *  while it comes) and "words" ("Page 3, 594 × 420 mm"). */
TrammelPageItem *trammel_page_item_new    (PageDrawer *drawer, int page);
int              trammel_page_item_page   (TrammelPageItem *self);      /* its number, as it was made with */
/** Somebody looks at it now, or no longer: then its picture is given back. */
void             trammel_page_item_show   (TrammelPageItem *self, bool shown);

G_END_DECLS
