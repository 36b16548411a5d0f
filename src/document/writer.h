#pragma once
#include "document/aeroplane.h"

/** The document's text, UTF-8, the same bytes in every locale; reading it back gives an equal aeroplane. A new string. */
char *writer_text (const Aeroplane *aeroplane, size_t *length);

/** Saves atomically and durably: a new file in the same folder, flushed, put in the old one's place, the folder flushed; keeps the
 *  file's permissions and follows links; the previous file stays as `path~`. On error the old file is as it was, nothing is left
 *  behind, and the sentence says what, where and what to do. */
bool writer_save_file (const Aeroplane *aeroplane, const char *path, GError **error);

/** Writes any bytes to `path` in that same way, without a backup when `backup` is false. Exports use it. */
bool writer_replace_file (const char *path, const void *bytes, size_t length, bool backup, GError **error);
