#pragma once
#include <gtk/gtk.h>

/** A few words side by side that change all the time: where the pointer is, the zoom. As wide as the widest they ever were, so that other
 *  words on it lay out nothing but itself, where a label's would lay out the whole window. */
#define TRAMMEL_TYPE_STEADY_WORDS (trammel_steady_words_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSteadyWords, trammel_steady_words, TRAMMEL, STEADY_WORDS, GtkWidget)

enum { STEADY_WORDS_MOST = 2 };

/** `count` words, 1 to STEADY_WORDS_MOST, empty at first; where there is room to spare they stand at `align` of it, a fraction. Dim ones have
 *  the style of what is said beside the matter. */
GtkWidget  *trammel_steady_words_new (int count, double align, bool dim);
void        trammel_steady_words_set (TrammelSteadyWords *self, int which, const char *text);      /* the word of that number, from 0; copied */
/** px that it keeps for itself, now or as soon as it is shown. */
int         trammel_steady_words_width (TrammelSteadyWords *self);
