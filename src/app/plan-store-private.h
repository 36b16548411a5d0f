#pragma once
#include "app/plan-reckoned.h"
#include "app/plan-store.h"

/* What the store's own files share. */
struct _TrammelPlanStore {
  GObject parent;
  TrammelSession *session;
  char *plan_id, *view_id;      /* chosen; NULL: what comes first */
  bool whole;                   /* chosen: no view */
  Plan *seen;                   /* in hand when "changed" was last emitted */

  Plan *held;                   /* whose picture this is, or whose there is none of; NULL: nobody's */
  char *held_path;              /* the document's when it was looked for */
  /* Only the plan in hand is decoded: with its halvings a scan of 12 million pixels is 16 MB as ink and 48 MB more as scanned,
   * nobody looks at two at once, and another comes in the background. */
  PlanPicture picture;
  bool stopped;                 /* by hand: it is not begun again by itself */

  PlanLoading *loading;
  bool coming_scanned;          /* with its true colours; also of the one that came */
  double progress;

  char *fault;
  PlanReckoned reckoned;
  GHashTable *elsewhere;        /* checksum → path */
  bool adding;                  /* a plan is put into the document together with its picture */
};

void plan_store_hold   (TrammelPlanStore *self, const Plan *plan);      /* whose picture it is; NULL: nobody's */
void plan_store_let_go (TrammelPlanStore *self);                        /* of picture and decoding */
