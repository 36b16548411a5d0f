#pragma once
#include "document/aeroplane.h"

/** The steps of one sitting: a list of aeroplanes with names, without limit. Knows nothing of what changed in them. */
typedef struct History History;

History         *history_new  (Aeroplane *takes);         /* counts as saved */
void             history_free (History *self);            /* NULL is fine */
const Aeroplane *history_now  (const History *self);      /* lent until the next call that changes */
/** What counts without the drag that is under way: what a journal keeps. Lent likewise. */
const Aeroplane *history_settled (const History *self);

void     history_do      (History *self, Aeroplane *takes, const char *label);  /* one step; an equal pointer to now adds none */
void     history_preview (History *self, Aeroplane *takes);     /* during a drag: replaces now, adds no step */
/** The same for what is only offered until somebody accepts it: nothing of it is unsaved work, as a drag is. */
void     history_propose (History *self, Aeroplane *takes);
void     history_settle  (History *self, const char *label);    /* the drag ends: one step, none if nothing changed by value */
void     history_abandon (History *self);                       /* Escape: as before the drag */
bool     history_is_previewing (const History *self);

/** Undo and redo abandon a running drag first; false when there is nothing to go to. */
bool        history_undo (History *self);
bool        history_redo (History *self);                       /* likewise; what was undone goes with the next step */
const char *history_undo_label (const History *self);           /* "Move Node"; NULL when there is nothing */
const char *history_redo_label (const History *self);
size_t      history_step_count (const History *self);           /* steps behind now */

void     history_mark_saved (History *self);                    /* what is now, a running drag included, stands in the file */
/** Says which value stands in the file, which need not be the one shown now (it was saved while the work went on); NULL: none of ours. */
void     history_mark_saved_as (History *self, const Aeroplane *saved);
bool     history_is_saved   (const History *self);              /* undoing back to the saved value is saved again */
