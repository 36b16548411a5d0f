#pragma once
#include "document/aeroplane.h"

/** Reads a document. Structure and values are checked here, against one table of elements, and spoken of plainly. Hardened: a document
 *  type declaration is refused, no network, no entities beyond XML's five, limits on size (64 MB), depth (64) and numbers (finite). */

#define READER_ERROR (reader_error_quark ())
GQuark reader_error_quark (void);     /* the domain of a ReaderError */
typedef enum {
  READER_ERROR_UNREADABLE,   /* no such file, no permission, a folder */
  READER_ERROR_FOREIGN,      /* not XML, or XML of another kind: a photograph, an SVG */
  READER_ERROR_BROKEN,       /* not well-formed */
  READER_ERROR_HOSTILE,      /* a declaration, too deep, too large */
  READER_ERROR_NEWER,        /* a greater version */
  READER_ERROR_VALUE         /* an element or value that cannot be */
} ReaderError;

/** Reads the file at `path`.
 *  problems  if not NULL, filled with new strings "FILE:LINE: what; what to do" (at most 20), FILE as given in `path`
 *  error     the first of them, the same text
 *  returns   the aeroplane, or NULL with nothing lost. Outlines that are open or cross themselves are no error here. */
Aeroplane *reader_read_file (const char *path, GPtrArray *problems, GError **error);
/** The same from memory; `name` stands for the file in messages. */
Aeroplane *reader_read_data (const char *data, size_t length, const char *name, GPtrArray *problems, GError **error);
