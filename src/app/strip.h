#pragma once
#include <gtk/gtk.h>

G_BEGIN_DECLS

#define TRAMMEL_TYPE_STRIP (trammel_strip_get_type ())
G_DECLARE_FINAL_TYPE (TrammelStrip, trammel_strip, TRAMMEL, STRIP, GtkWidget)

/** A strip under the header bar for a standing condition: one sentence and at most two buttons. It slides in, takes no focus by itself
 *  and goes when one of its buttons has been pressed. Says one thing at a time: the last told. One signal, without
 *  arguments:
 *    "answered"  one of its buttons was pressed */
GtkWidget *trammel_strip_new (void);

/** What a button does; `action` is an action's name ("win.reload"), NULL for just going. A NULL label: no such button. */
typedef struct { const char *label, *action; } StripButton;

/** Shows the sentence with its buttons, the suggested one first. */
void trammel_strip_show (TrammelStrip *self, const char *sentence, StripButton first, StripButton second);
/** A bar under what is said now, the fraction done; NAN takes it away, as the next sentence does. */
void trammel_strip_set_progress (TrammelStrip *self, double done);
void trammel_strip_hide (TrammelStrip *self);      /* slides it away */
/** What it says now; NULL when it is hidden. */
const char *trammel_strip_sentence (TrammelStrip *self);

G_END_DECLS
