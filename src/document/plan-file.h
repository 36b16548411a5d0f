#pragma once
#include "document/piece.h"

/** The picture of a plan that is a file beside its document: found again by a path from the document's folder, and known again by its
 *  checksum. Nothing outside that folder is ever opened, whatever a document says: no path from the root, no "..", no link on the way. */

typedef enum {
  PLAN_FILE_SOUND,          /* there, and what it was */
  PLAN_FILE_CHANGED,        /* there, and open, but another than the checksum says */
  PLAN_FILE_NONE,           /* the plan names no file */
  PLAN_FILE_UNSAVED,        /* the document has no folder yet */
  PLAN_FILE_OUTSIDE,        /* the path leads, or may lead, out of the document's folder */
  PLAN_FILE_MISSING,        /* no such file */
  PLAN_FILE_UNREADABLE,     /* a folder, a device, or nothing that may be read */
  PLAN_FILE_STATUS_COUNT
} PlanFileStatus;

/** Opens the plan's file for reading and holds it to its checksum; without a checksum any file there is sound. Reads the whole file:
 *  not to be called where somebody waits for a frame.
 *  document_path   of the document; NULL: not yet saved
 *  descriptor      set when the status is SOUND or CHANGED, else untouched: at the file's beginning, the caller's to close */
PlanFileStatus plan_file_open (const Plan *plan, const char *document_path, int *descriptor);
/** What to say of it, a whole sentence, translated; for PLAN_FILE_SOUND too. */
const char *plan_file_sentence (PlanFileStatus status);
/** "sha256:…" of all that the descriptor's file holds, a new string; it stands at its beginning then. NULL with errno when it cannot be
 *  read. */
char *plan_file_checksum (int descriptor);
/** The path of a file from the document's folder, as Plan.file wants it, a new string; NULL when it lies elsewhere or is not there. */
char *plan_file_within (const char *document_path, const char *file_path);
