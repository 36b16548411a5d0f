#pragma once
#include <glib.h>
#include <stdbool.h>

/** The lines before the document in a journal's file. Private to this room.
 *
 *      trammel-journal 1
 *      process=PID START
 *      time=SECONDS
 *      path=…            (missing: not saved yet; C escapes)
 *      name=…
 *      (an empty line, then the document) */
typedef struct {
  int process;            /* who writes it */
  guint64 started;        /* when that process began, clock ticks since the machine did: process numbers are used again */
  gint64 time;            /* seconds since 1970 */
  char *path, *name;      /* NULL none */
} JournalHead;

/** Of this process, now; path and name empty. */
JournalHead journal_head_now (void);
void  journal_head_clear (JournalHead *head);      /* frees its texts, not itself */
/** The lines with the empty one; a new string. */
char *journal_head_text  (const JournalHead *head);
/** Reads them; *body is set to what comes behind. False when it is no journal. */
bool  journal_head_read  (const char *text, JournalHead *head, const char **body);
/** Whether the process that wrote it still runs. */
bool  journal_head_is_running (const JournalHead *head);
