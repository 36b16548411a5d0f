#pragma once
#include "app/plan-loading.h"
#include "app/session.h"
#include "drawing/plan-placing.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_PLAN_STORE (trammel_plan_store_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPlanStore, trammel_plan_store, TRAMMEL, PLAN_STORE, GObject)

/** What the window knows of the plans beneath its sheet: the picture of the one in hand, decoded in the background, and which plan and
 *  view that is. Nothing here is a fact of the document. Signals, none with arguments:
 *    "changed"    a picture came or failed, another plan or view is in hand, the plan's marks changed
 *    "progress"   decoding came further, began or ended */
TrammelPlanStore *trammel_plan_store_new (TrammelSession *session);

/** The plan in hand, of the aeroplane that is shown: the one chosen, else the first; NULL when there is none. Lent. */
const Plan     *trammel_plan_store_plan   (TrammelPlanStore *self);
/** Its view in hand: the one chosen, else its first; NULL: the whole sheet upright. Lent. */
const PlanView *trammel_plan_store_view   (TrammelPlanStore *self);
/** Takes that plan and view in hand. A NULL plan: what comes first; a NULL view: the whole sheet, upright. */
void            trammel_plan_store_choose (TrammelPlanStore *self, const char *plan_id, const char *view_id);
/** The id of the view that was chosen last, be it gone since by undo; NULL: the whole sheet, or nothing was chosen. Lent. */
const char     *trammel_plan_store_chosen (TrammelPlanStore *self);

/** The ink of the plan in hand; NULL while it comes, or when it cannot be had. Lent, until the next "changed". */
const InkLevels *trammel_plan_store_ink      (TrammelPlanStore *self);
/** Its own red (0), green or blue (2), while it is shown as scanned; else NULL. Lent likewise. */
const InkLevels *trammel_plan_store_scanned  (TrammelPlanStore *self, int channel);
/** What was told about its picture when it was decoded; NULL before. Lent likewise. */
const DecodeFacts *trammel_plan_store_facts  (TrammelPlanStore *self);
/** Why its picture is not there, or is not what it was: a whole sentence, translated; NULL: nothing is wrong. */
const char      *trammel_plan_store_fault    (TrammelPlanStore *self);
/** A fraction, 0 to 1; NAN when nothing is being decoded. */
double           trammel_plan_store_progress (TrammelPlanStore *self);
/** Ends the decoding. */
void             trammel_plan_store_stop     (TrammelPlanStore *self);
/** Whether it was ended so, and there is no picture. */
bool             trammel_plan_store_is_stopped (TrammelPlanStore *self);
/** Looks for the picture anew. */
void             trammel_plan_store_retry    (TrammelPlanStore *self);

/** Where the plan in hand lies beneath the sheet by its view in hand; false when that cannot be said. */
bool trammel_plan_store_placing (TrammelPlanStore *self, Placing *placing);
/** How its pixels are millimetres: as plan_mapping. Each result may be NULL. */
bool trammel_plan_store_mapping (TrammelPlanStore *self, Mapping *mapping, MappingMisfit *misfit, bool *is_true);

/** Puts a plan, taken, into the document in one step of that name and takes it in hand. Its picture was decoded already: what is kept of
 *  it is taken out of `picture`. */
void trammel_plan_store_add (TrammelPlanStore *self, Plan *takes, PlanPicture *picture, const char *label);

/** Whether the picture in hand is another than was put there, and of the same size in pixels: then what is marked on it may still be
 *  true of it. */
bool trammel_plan_store_may_keep (TrammelPlanStore *self);
/** Takes that other picture for the plan's own, in one step of that name; its marks and what was traced on it stay. */
void trammel_plan_store_keep (TrammelPlanStore *self, const char *label);

/** Puts it in the place of the plan of that id, likewise. */
void trammel_plan_store_replace (TrammelPlanStore *self, const char *id, Plan *takes, PlanPicture *picture, const char *label);

/* Where a picture that is not within its document lies for this session: until the document is saved beside it. */
void        trammel_plan_store_set_elsewhere (TrammelPlanStore *self, const char *checksum, const char *path);
/** NULL: not known. Lent. */
const char *trammel_plan_store_elsewhere     (TrammelPlanStore *self, const Plan *plan);

G_END_DECLS
