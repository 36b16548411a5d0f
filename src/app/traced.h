#pragma once
#include <gtk/gtk.h>
#include "app/trace-work.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_TRACED (trammel_traced_get_type ())
G_DECLARE_FINAL_TYPE (TrammelTraced, trammel_traced, TRAMMEL, TRACED, GObject)

/** What was traced last in a session, kept so that it can be traced again, averaged with its other half, or put otherwise. No fact of the
 *  document is here: undo leads away from it, and then it is not fresh any more. Signal, without arguments:
 *    "changed"   another trace, under way or done */
TrammelTraced *trammel_traced_of (TrammelSession *session);         /* the session's; lent */

/** Traces and puts the outline into the document, one step. Work that takes its time, questions and remarks stand in the strip of the
 *  window that `told` is in; NULL: nobody is told. */
void trammel_traced_trace (TrammelTraced *self, TraceOrder *order, GtkWidget *told);
bool trammel_traced_is_busy (TrammelTraced *self);      /* whether it traces now */
/** What is being traced does not land. false: nothing was under way. */
bool trammel_traced_cancel (TrammelTraced *self);
/** The order that was put last, lent; NULL none. */
const TraceOrder *trammel_traced_order (TrammelTraced *self);

/** Whether the surface or body stands as it was traced last. */
bool   trammel_traced_is_fresh      (TrammelTraced *self, const Piece *piece);
/** How near its curves keep to the line, mm; setting it traces again. */
double trammel_traced_tolerance     (TrammelTraced *self);
void   trammel_traced_set_tolerance (TrammelTraced *self, double mm);      /* mm; nothing before anything was traced */
/** Whether the panel was drawn flat, so that its stations are shortened by its dihedral: y cos (dihedral). One step. */
bool   trammel_traced_is_flat       (TrammelTraced *self);
void   trammel_traced_set_flat      (TrammelTraced *self, bool flat);      /* nothing unless it still stands as traced */
/** The factor by which the stations of a surface on the sheet are shorter than they are printed; 1 unless it was traced last, and flat.
 *  It has no unit. */
double trammel_traced_shortening    (TrammelTraced *self, const Surface *surface);
/** How far its root stands off the centre line, mm; 0: on it. */
double trammel_traced_root          (TrammelTraced *self);
void   trammel_traced_set_root_open (TrammelTraced *self, bool open);      /* one step: leaves the root there, or carries it to the centre line */
/** An order that was ended before it was done and still stands so in the document, to be gone on with: one reference; NULL: none. */
TraceOrder *trammel_traced_unfinished (TrammelTraced *self, const char *view);

G_END_DECLS
