#pragma once
#include <gio/gio.h>
#include "app/file-stamp.h"
#include "app/plan-beside.h"
#include "document/aeroplane.h"

/** Reading and saving documents away from the main thread, so that a slow disk never holds the window. */

#define DOCUMENT_IO_ERROR (document_io_error_quark ())
GQuark document_io_error_quark (void);      /* the domain of DOCUMENT_IO_ERROR */
typedef enum { DOCUMENT_IO_ERROR_CHANGED } DocumentIoError;    /* another program wrote the file meanwhile */

/** Reads the document at `path`. */
void       document_read_async  (const char *path, GAsyncReadyCallback done, gpointer data);
/** The aeroplane, or NULL and the reader's first sentence. `stamp` is set to the file that was read. */
Aeroplane *document_read_finish (GAsyncResult *result, FileStamp *stamp, GError **error);

/** Saves an aeroplane to `path`; where `known` is given and the file is no longer that one, nothing is written (DOCUMENT_IO_ERROR_CHANGED).
 *  What `takes_beside` asks for is copied beside it then. */
void             document_write_async     (const Aeroplane *aeroplane, const char *path, const FileStamp *known, PlanBeside *takes_beside,
                                           GAsyncReadyCallback done, gpointer data);
/** Sets *stamp, of the file as written; false with an error when it is not. */
bool             document_write_finish    (GAsyncResult *result, FileStamp *stamp, GError **error);
/** What a result of either is about. Lent. */
const char      *document_write_path      (GAsyncResult *result);
const Aeroplane *document_write_aeroplane (GAsyncResult *result);      /* what was saved */
const PlanBeside *document_write_beside   (GAsyncResult *result);      /* what was copied beside it; NULL nothing */
const char      *document_read_path       (GAsyncResult *result);      /* of the file read */
