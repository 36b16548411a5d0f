#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_ANSWER (trammel_answer_get_type ())
G_DECLARE_FINAL_TYPE (TrammelAnswer, trammel_answer, TRAMMEL, ANSWER, GtkWidget)

/** The one answer at the top of the panel: balance mark and static margin side by side, the balance point against its band on a drawn
 *  chord, one sentence of advice. Where that asks for a mass a button selects what it is of and then emits "mass-wanted". */
GtkWidget *trammel_answer_new  (TrammelSession *session);
/** Folds the second sentence away; it is read as the first one's tooltip then. */
void       trammel_answer_set_short (TrammelAnswer *self, bool is_short);
/** Focuses the sentence, so that a screen reader says it. */
void       trammel_answer_read (TrammelAnswer *self);

G_END_DECLS
