#include "trammel-config.h"
#include "app/plan-store-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/plan-fault.h"

G_DEFINE_FINAL_TYPE (TrammelPlanStore, trammel_plan_store, G_TYPE_OBJECT)

enum { CHANGED, PROGRESS, SIGNAL_COUNT };
static guint signals[SIGNAL_COUNT];

static void
store_set (Plan **place, const Plan *plan)
{
  Plan *before = *place;

  *place = plan == NULL ? NULL : (Plan *) piece_ref (&plan->piece);
  if (before != NULL)
    piece_unref (&before->piece);
}

void
plan_store_hold (TrammelPlanStore *self, const Plan *plan)
{
  store_set (&self->held, plan);
}

static void
store_end_loading (TrammelPlanStore *self)
{
  g_clear_pointer (&self->loading, plan_loading_stop);
  self->progress = NAN;
}

static void
trammel_plan_store_finalize (GObject *object)
{
  TrammelPlanStore *self = TRAMMEL_PLAN_STORE (object);

  store_end_loading (self);
  plan_picture_clear (&self->picture);
  store_set (&self->seen, NULL);
  store_set (&self->held, NULL);
  plan_reckoned_clear (&self->reckoned);
  g_hash_table_unref (self->elsewhere);
  g_free (self->plan_id);
  g_free (self->view_id);
  g_free (self->held_path);
  g_free (self->fault);
  g_object_unref (self->session);
  G_OBJECT_CLASS (trammel_plan_store_parent_class)->finalize (object);
}

static guint
store_signal (const char *name)
{
  return g_signal_new (name, TRAMMEL_TYPE_PLAN_STORE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_plan_store_class_init (TrammelPlanStoreClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_plan_store_finalize;
  signals[CHANGED] = store_signal ("changed");
  signals[PROGRESS] = store_signal ("progress");
}

static void
trammel_plan_store_init (TrammelPlanStore *self)
{
  self->progress = NAN;
  self->elsewhere = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
}

/* Which one is in hand */

const Plan *
trammel_plan_store_plan (TrammelPlanStore *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);
  const Plan *chosen = self->plan_id == NULL ? NULL : aeroplane_plan_by_id (aeroplane, self->plan_id);

  if (chosen == NULL && aeroplane_count (aeroplane, PIECE_PLAN) > 0)
    chosen = aeroplane_plan (aeroplane, 0);
  return chosen;
}

const PlanView *
trammel_plan_store_view (TrammelPlanStore *self)
{
  const Plan *plan = trammel_plan_store_plan (self);
  const PlanView *chosen;

  if (plan == NULL || plan->view_count == 0 || (self->whole && g_strcmp0 (self->plan_id, plan->piece.id) == 0))
    return NULL;
  chosen = plan_view_by_id (plan, self->view_id);
  return chosen != NULL ? chosen : &plan->views[0];
}

/* Its picture */

static bool
same_image (GBytes *a, GBytes *b)
{
  return a == b || (a != NULL && b != NULL && g_bytes_equal (a, b));
}

static bool
same_picture (const Plan *a, const Plan *b)
{
  const bool same_dpi = a->dpi == b->dpi || (isnan (a->dpi) && isnan (b->dpi));

  return a == b || (same_dpi && a->page == b->page && g_strcmp0 (a->file, b->file) == 0 && g_strcmp0 (a->checksum, b->checksum) == 0
                    && same_image (a->image, b->image));
}

static void
store_drop_colours (TrammelPlanStore *self)
{
  for (int i = 0; i < 3; i++)
    g_clear_pointer (&self->picture.scanned[i], ink_levels_unref);
  self->coming_scanned = self->coming_scanned && self->loading != NULL;
}

static void
store_loaded (PlanPicture *picture, gpointer data)
{
  TrammelPlanStore *self = data;

  plan_picture_clear (&self->picture);
  self->picture = *picture;
  *picture = (PlanPicture) { .ink = NULL };
  g_free (self->fault);
  self->fault = plan_fault (self->held, &self->picture);
  self->loading = NULL;
  store_end_loading (self);
  g_signal_emit (self, signals[PROGRESS], 0);
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
store_came_further (double done, gpointer data)
{
  TrammelPlanStore *self = data;

  self->progress = done;
  g_signal_emit (self, signals[PROGRESS], 0);
}

void
plan_store_let_go (TrammelPlanStore *self)
{
  store_end_loading (self);
  plan_picture_clear (&self->picture);
  g_clear_pointer (&self->fault, g_free);
  store_set (&self->held, NULL);
  self->stopped = self->coming_scanned = false;
}

/* What is there stays to be seen while more of the same comes. */
static void
store_begin (TrammelPlanStore *self, const Plan *plan, bool scanned)
{
  const PlanWanted wanted = { .plan = plan, .document_path = trammel_session_path (self->session),
                              .elsewhere = trammel_plan_store_elsewhere (self, plan), .scanned = scanned };

  if (self->held == NULL || !same_picture (self->held, plan))
    plan_store_let_go (self);
  store_end_loading (self);
  store_set (&self->held, plan);
  g_free (self->held_path);
  self->held_path = g_strdup (wanted.document_path);
  self->coming_scanned = scanned;
  self->progress = 0;
  self->stopped = false;
  self->loading = plan_loading_begin (&wanted, store_loaded, store_came_further, self);
  g_signal_emit (self, signals[PROGRESS], 0);
}

/* Whether the picture in hand, or the one that comes, is what the plan wants; if there is none, whether it would be no other now. */
static bool
store_serves (TrammelPlanStore *self, const Plan *plan, bool scanned)
{
  if (self->held == NULL || !same_picture (self->held, plan))
    return false;
  if (self->loading != NULL)
    return self->coming_scanned || !scanned;
  if (self->picture.ink == NULL && !self->stopped && g_strcmp0 (self->held_path, trammel_session_path (self->session)) != 0)
    return false;
  return self->picture.ink == NULL || self->stopped || !scanned || self->coming_scanned;
}

/* Choosing a plan in the list takes it in hand. */
static void
store_selection_changed (TrammelPlanStore *self)
{
  const char *id = selection_single (trammel_session_selection (self->session));
  const Plan *plan = id != NULL ? aeroplane_plan_by_id (trammel_session_aeroplane (self->session), id) : NULL;

  if (plan != NULL && plan != trammel_plan_store_plan (self))
    trammel_plan_store_choose (self, id, plan->view_count > 0 ? plan->views[0].id : NULL);
}

static void
store_refresh (TrammelPlanStore *self)
{
  const Plan *plan = trammel_plan_store_plan (self);
  const bool scanned = plan != NULL && plan->shown == PLAN_SCANNED;

  if (self->adding)
    return;
  if (plan == NULL)
    plan_store_let_go (self);
  else if (plan->shown != PLAN_HIDDEN && !store_serves (self, plan, scanned))
    store_begin (self, plan, scanned);
  else if (self->held != NULL && !same_picture (self->held, plan))
    plan_store_let_go (self);
  if (!scanned)
    store_drop_colours (self);
  if (plan == self->seen)
    return;
  store_set (&self->seen, plan);
  g_signal_emit (self, signals[CHANGED], 0);
}

TrammelPlanStore *
trammel_plan_store_new (TrammelSession *session)
{
  TrammelPlanStore *self = g_object_new (TRAMMEL_TYPE_PLAN_STORE, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "changed", G_CALLBACK (store_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "state-changed", G_CALLBACK (store_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (store_selection_changed), self, G_CONNECT_SWAPPED);
  store_refresh (self);
  return self;
}

void
trammel_plan_store_choose (TrammelPlanStore *self, const char *plan_id, const char *view_id)
{
  char *plan = g_strdup (plan_id), *view = g_strdup (view_id);

  g_free (self->plan_id);
  g_free (self->view_id);
  self->plan_id = plan;
  self->view_id = view;
  self->whole = view == NULL;
  store_set (&self->seen, NULL);
  store_refresh (self);
}

const char *
trammel_plan_store_chosen (TrammelPlanStore *self)
{
  return self->view_id;
}

const InkLevels *
trammel_plan_store_ink (TrammelPlanStore *self)
{
  return self->picture.ink;
}

const InkLevels *
trammel_plan_store_scanned (TrammelPlanStore *self, int channel)
{
  return self->picture.scanned[channel];
}

const DecodeFacts *
trammel_plan_store_facts (TrammelPlanStore *self)
{
  return self->picture.ink != NULL ? &self->picture.facts : NULL;
}

const char *
trammel_plan_store_fault (TrammelPlanStore *self)
{
  return self->fault;
}

double
trammel_plan_store_progress (TrammelPlanStore *self)
{
  return self->progress;
}

void
trammel_plan_store_stop (TrammelPlanStore *self)
{
  if (self->loading == NULL)
    return;
  store_end_loading (self);
  self->stopped = true;
  g_free (self->fault);
  self->fault = self->picture.ink != NULL ? NULL : plan_fault_stopped (self->held);
  g_signal_emit (self, signals[PROGRESS], 0);
  g_signal_emit (self, signals[CHANGED], 0);
}

bool
trammel_plan_store_is_stopped (TrammelPlanStore *self)
{
  return self->stopped && self->picture.ink == NULL;
}

void
trammel_plan_store_retry (TrammelPlanStore *self)
{
  plan_store_let_go (self);
  store_refresh (self);
  g_signal_emit (self, signals[CHANGED], 0);
}

/* Where it lies */

static const PlanReckoned *
store_reckon (TrammelPlanStore *self)
{
  const Plan *plan = trammel_plan_store_plan (self);
  const bool measured = self->picture.ink != NULL;

  if (plan == NULL)
    return NULL;
  plan_reckon (&self->reckoned, plan, measured ? self->picture.facts.width_px : NAN, measured ? self->picture.facts.height_px : NAN);
  return self->reckoned.sound ? &self->reckoned : NULL;
}

bool
trammel_plan_store_mapping (TrammelPlanStore *self, Mapping *mapping, MappingMisfit *misfit, bool *is_true)
{
  const PlanReckoned *reckoned = store_reckon (self);

  if (reckoned == NULL)
    return false;
  if (mapping != NULL)
    *mapping = reckoned->mapping;
  if (misfit != NULL)
    *misfit = reckoned->misfit;
  if (is_true != NULL)
    *is_true = reckoned->is_true;
  return true;
}

bool
trammel_plan_store_placing (TrammelPlanStore *self, Placing *placing)
{
  const PlanReckoned *reckoned = store_reckon (self);

  return reckoned != NULL && plan_reckoned_place (reckoned, trammel_plan_store_view (self), placing);
}
