#pragma once
#include <glib.h>
#include <stdbool.h>
#include "document/reader.h"

/** What is wrong with a document, gathered while it is read: at most PROBLEMS_MOST, in the order of their lines. Private to this room. */
typedef struct Problems Problems;
enum { PROBLEMS_MOST = 20 };

Problems *problems_new  (const char *file);       /* none yet; the file's name, for people, is lent and must live longer */
void      problems_free (Problems *self);         /* with all that was not handed over */
/** line 0: of the whole file. What comes after the last that there is room for is not kept. */
void      problems_add  (Problems *self, ReaderError code, int line, const char *format, ...) G_GNUC_PRINTF (4, 5);
size_t    problems_count (const Problems *self);  /* of those kept: at most PROBLEMS_MOST */
/** Hands them over as "FILE:LINE: sentence" (or "FILE: sentence") and sets the error to the first. `texts` may be NULL. */
void      problems_tell (Problems *self, GPtrArray *texts, GError **error);
/** A person's own text for a sentence: shortened to some forty characters. A new string. */
char     *problems_quote (const char *text, gssize length);
