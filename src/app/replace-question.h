#pragma once
#include <gtk/gtk.h>

typedef enum { REPLACE_NOTHING, REPLACE_THEM, REPLACE_NOT_BUT_ELSEWHERE } ReplaceAnswer;
/** Called once; not at all when the parent goes before. */
typedef void (*ReplaceAnswered) (ReplaceAnswer answer, gpointer data);

/** Asks over `parent` whether the files at these paths, which are there, are to be replaced, once for all of them.
 *  paths  of const char *, one or more
 *  data   freed by `free_data` (may be NULL) once answered or not to be answered any more */
void replace_question_ask (GtkWindow *parent, const GPtrArray *paths, ReplaceAnswered answered, gpointer data, GDestroyNotify free_data);
