#pragma once
#include <gio/gio.h>
#include "document/plan-file.h"
#include "plan/decode.h"
#include "plan/ink-levels.h"

/** A plan's picture becomes ink in a thread of its own: found, held to its checksum, decoded, taken off its paper, halved. */

/** What is wanted. */
typedef struct {
  const Plan *plan;               /* its picture, page and resolution; nothing else of it is read */
  const char *document_path;      /* NULL: not yet saved */
  const char *elsewhere;          /* where its file lies when it is not beside the document; NULL: not known */
  bool scanned;                   /* its true colours, too */
} PlanWanted;

/** What came of it. */
typedef struct {
  InkLevels *ink;                 /* NULL: there is none, and why stands below */
  InkLevels *scanned[3];          /* red, green, blue as scanned; NULL unless wanted */
  DecodeFacts facts;              /* where decode says DECODE_OK */
  DecodeStatus decode;
  PlanFileStatus file;            /* PLAN_FILE_SOUND too for a picture within the document */
  char *changed;                  /* the checksum of the file that is there, where that says PLAN_FILE_CHANGED; NULL */
  CoreStatus core;
} PlanPicture;
/** Gives back what it holds. */
void plan_picture_clear (PlanPicture *self);

typedef struct PlanLoading PlanLoading;
/** Called once in the main thread, unless it was stopped before. `picture` is lent for the call; what is kept of it is taken out of it. */
typedef void (*PlanLoaded)   (PlanPicture *picture, gpointer data);
/** How far it is, 0 to 1; in the main thread, a few times a second. */
typedef void (*PlanProgress) (double done, gpointer data);

/** Begins. Everything wanted is copied; `data` has to last until it was called or stopped. `progress` may be NULL. */
PlanLoading *plan_loading_begin (const PlanWanted *wanted, PlanLoaded loaded, PlanProgress progress, gpointer data);
/** Ends it: nobody is called any more. Not after `loaded` was called. */
void         plan_loading_stop  (PlanLoading *self);

/** The picture's own file, open for reading, or −1: a picture within the document in memory, a file beside it, or the one elsewhere that
 *  has its checksum. Reads all of it: not where somebody waits for a frame. */
int plan_picture_open (const PlanWanted *wanted, PlanFileStatus *status);
