#pragma once
#include "app/place-entry.h"

/** The Outline tool's hand over a plan: clicks along a printed line, and ahead of the last one a proposal that clings to it. Nothing of it
 *  is in the document until it ends. */
typedef struct Tracing Tracing;

Tracing *tracing_new  (TrammelSheetCanvas *sheet);      /* the sheet is lent and must outlive it */
void     tracing_free (Tracing *self);      /* NULL is fine */

/** Whether Outline traces here: the plan in hand has its picture and a view, and is clung to. Also while clicks are in hand. */
bool tracing_applies (Tracing *self);

/* As a tool's own functions. */
void tracing_click   (Tracing *self, const ToolEvent *event);
void tracing_pull    (Tracing *self, const ToolEvent *event);      /* with Ctrl held: draws by hand */
void tracing_drop    (Tracing *self, const ToolEvent *event);
void tracing_hover   (Tracing *self, const ToolEvent *event);      /* where the pointer is: proposes the way there */
void tracing_leave   (Tracing *self);      /* the pointer has left the sheet */
bool tracing_key     (Tracing *self, guint keyval, GdkModifierType state);      /* whether the key was for it */
void tracing_key_up  (Tracing *self, guint keyval);      /* the key that holds is up */
/** If the key begins a number: opens the fields for the next place, its station (or height) and how far aft of the datum; as place_entry_key. */
bool tracing_type    (Tracing *self, PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, PlaceDone done);
/** A click there, mm; to a station belongs the side that is traced. */
void tracing_typed   (Tracing *self, Point place);
bool tracing_take_back (Tracing *self);                  /* the last click; false: none in hand */
bool tracing_cancel  (Tracing *self);
void tracing_changed (Tracing *self);      /* plan or document have: shows what still holds */
