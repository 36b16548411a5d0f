#pragma once
#include <gtk/gtk.h>
#include "document/units.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SHEET_FIELD (trammel_sheet_field_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSheetField, trammel_sheet_field, TRAMMEL, SHEET_FIELD, GtkWidget)

/** The field that opens over a figure on the sheet. What is typed counts on Return and on leaving; Esc leaves it as it was. One signal:
 *    "entered" (double mm) → gboolean   FALSE says that it does not fit; the text then stays. Why: trammel_sheet_field_refuse before */
GtkWidget *trammel_sheet_field_new (void);
/** Opens it with that value, over `place` (px of `over`). `name` is what a screen reader calls it. */
void trammel_sheet_field_open  (TrammelSheetField *self, GtkWidget *over, const GdkRectangle *place, const char *name);
void trammel_sheet_field_set   (TrammelSheetField *self, Units units, double mm);      /* a length, mm; not finite: empty */
/** Who is asked what is "entered" from now on: nobody else any more. `takes` goes by `destroy`, which may be NULL. */
void trammel_sheet_field_serve (TrammelSheetField *self, GCallback entered, gpointer takes, GClosureNotify destroy);
/** Within "entered": the sentence that will stand below. */
void trammel_sheet_field_refuse (TrammelSheetField *self, const char *sentence);
void trammel_sheet_field_close (TrammelSheetField *self);      /* what was typed does not count */
bool trammel_sheet_field_is_open (TrammelSheetField *self);      /* until it is closed */
/** Where it goes in its parent. */
void trammel_sheet_field_position (TrammelSheetField *self, GtkWidget *parent, GdkRectangle *place);

G_END_DECLS
