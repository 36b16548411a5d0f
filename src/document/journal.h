#pragma once
#include "document/aeroplane.h"

/** What survives a crash: each open document has a journal, a file in the person's state folder ($XDG_STATE_HOME/trammel) that holds
 *  the last value put into it. It goes when the document is closed in good order; what is left over after a crash is an orphan and can
 *  be taken up again. A journal never touches the document's own file, and no orphan goes before it was taken up and closed. One
 *  thread at a time for each journal. */
typedef struct Journal Journal;

/** For the document at `path`; NULL: not yet saved anywhere. No file is made before the first put. */
Journal *journal_new   (const char *path);
/** The document has got another path. */
void     journal_set_path (Journal *self, const char *path);
/** Writes the value, atomically and onto the disk (a few milliseconds: the caller puts settled changes, not every motion). False
 *  with a sentence when it could not; the former value is then still there. */
bool     journal_put   (Journal *self, const Aeroplane *aeroplane, GError **error);
/** The document is saved or given up: removes the file and frees the journal. NULL is fine. */
void     journal_close (Journal *self);
/** Frees the journal and leaves its file, as a crash would: to be used when the program ends without having asked. NULL is fine. */
void     journal_leave (Journal *self);

/** A journal whose program is gone. */
typedef struct {
  char *file;         /* the journal's own */
  char *path;         /* of the document; NULL: it was never saved */
  char *name;         /* of the aeroplane; NULL: it has none */
  gint64 time;        /* of the last put, seconds since 1970 */
} JournalEntry;

/** All orphans, the youngest first, whatever the age of the document's own file; an array of JournalEntry that frees its entries.
 *  Journals of running programs, this one included, are not among them. */
GPtrArray *journal_list_orphans (void);

/** Takes an orphan up: its value, and in *journal (may not be NULL) a journal that goes on in the orphan's file, so that a second crash
 *  loses nothing. The document is to be shown as one not yet saved; saving it over `path` is the person's choice. NULL with an error
 *  when it cannot be read; the file is then left where it is. */
Aeroplane *journal_recover (const JournalEntry *entry, Journal **journal, GError **error);
