#pragma once
#include "app/plan-store.h"
#include "document/plan-marks.h"

/** Pictures too large to travel within their document stand beside it. One that does not yet is copied there when the document is saved. */

/** What a plan's file is to be called: its path from the document's folder where it lies within, else a name of its own for the copy to
 *  come, which no other plan has and no other file beside the document. A new string. */
char *plan_beside_name (TrammelSession *session, const char *path, const char *checksum);

/** The copies that saving an aeroplane asks for. Made in the main thread, carried out in any.
 *  old_path  of the document until now; NULL: not yet saved */
typedef struct PlanBeside PlanBeside;
PlanBeside *plan_beside_new  (TrammelPlanStore *store, const Aeroplane *aeroplane, const char *old_path);      /* plan_beside_free() it */
void        plan_beside_free (PlanBeside *self);                      /* NULL is fine */
/** Makes what copies are missing beside the document at that path. Never replaces a file; what is no longer the plan's picture, by its
 *  checksum, is not left there. */
void        plan_beside_copy (PlanBeside *self, const char *document_path);
/** What to say of it, a new string, translated: that a picture was copied, or could not be (*failed is true then); NULL: nothing. */
char       *plan_beside_word (const PlanBeside *self, bool *failed);

/** Puts the picture of one plan in the place of another's, whose marks go along with its size. Whether they fit. */
PlanRescaled plan_take_picture (Plan *plan, const Plan *from);
