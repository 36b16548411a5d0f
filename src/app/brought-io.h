#pragma once
#include <gio/gio.h>
#include "document/brought.h"

/** Reading lines drawn elsewhere away from the main thread. */

/** How the names of files end that are brought in as outlines, without the dot; NULL ends them. An SVG is a plan where nobody says otherwise. */
const char *const *brought_io_endings (void);
/** Whether a file of that name is brought in as an outline when it is opened or dropped. */
bool     brought_io_takes      (const char *path);

/** Reads a file, or what a clipboard held, which is `name`d so in messages. */
void     brought_io_read_async (const char *path, GAsyncReadyCallback done, gpointer data);
/** The text is referenced, the name copied. */
void     brought_io_text_async (GBytes *text, const char *name, GAsyncReadyCallback done, gpointer data);
/** What it holds, the caller's; NULL with a sentence. */
Brought *brought_io_finish     (GAsyncResult *result, GError **error);
