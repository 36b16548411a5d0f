#pragma once
#include "app/session.h"
#include "document/journal.h"

/** Keeps a session's unsaved work in its journal: each settled step is on the disk within 2 s, written away from the main thread; once
 *  the work is saved nothing is kept. */
typedef struct Recorder Recorder;
/** Told once, the first time the journal cannot be written; the sentence is lent. */
typedef void (*RecorderFailed) (const char *sentence, gpointer data);

/** Follows the session from now on. */
Recorder *recorder_new   (TrammelSession *session, RecorderFailed failed, gpointer data);
/** Goes on in the journal of work that was taken up again. */
void      recorder_adopt (Recorder *self, Journal *takes);
/** The work was saved or let go in good order: removes the journal and frees the recorder. NULL is fine. */
void      recorder_end   (Recorder *self);
/** Frees the recorder and leaves what it kept. NULL is fine. */
void      recorder_leave (Recorder *self);
