#include "app/plan-store-private.h"
#include "document/changes.h"

/* The picture is there before the plan is, so that it is not asked for again. */
static void
store_take_picture (TrammelPlanStore *self, const Plan *plan, PlanPicture *picture)
{
  plan_store_let_go (self);
  plan_store_hold (self, plan);
  g_free (self->held_path);
  self->held_path = g_strdup (trammel_session_path (self->session));
  self->picture = *picture;
  *picture = (PlanPicture) { .ink = NULL };
}

static void
store_do (TrammelPlanStore *self, Aeroplane *takes, const char *label)
{
  self->adding = true;
  trammel_session_do (self->session, takes, label);
  self->adding = false;
}

void
trammel_plan_store_add (TrammelPlanStore *self, Plan *takes, PlanPicture *picture, const char *label)
{
  const Aeroplane *now;
  const Plan *added;

  store_take_picture (self, takes, picture);
  store_do (self, change_plan_added (trammel_session_settled (self->session), takes), label);
  now = trammel_session_aeroplane (self->session);
  added = aeroplane_plan (now, aeroplane_count (now, PIECE_PLAN) - 1);
  trammel_plan_store_choose (self, added->piece.id, added->view_count > 0 ? added->views[0].id : NULL);
}

void
trammel_plan_store_replace (TrammelPlanStore *self, const char *id, Plan *takes, PlanPicture *picture, const char *label)
{
  g_autofree char *plan = g_strdup (id);
  const PlanView *view = g_strcmp0 (self->plan_id, id) == 0 ? trammel_plan_store_view (self) : NULL;
  g_autofree char *view_id = view != NULL ? g_strdup (view->id) : takes->view_count > 0 ? g_strdup (takes->views[0].id) : NULL;

  store_take_picture (self, takes, picture);
  store_do (self, change_plan (trammel_session_settled (self->session), plan, takes), label);
  trammel_plan_store_choose (self, plan, view_id);
}

bool
trammel_plan_store_may_keep (TrammelPlanStore *self)
{
  const Plan *plan = trammel_plan_store_plan (self);
  const PlanPicture *picture = &self->picture;

  return plan != NULL && picture->ink != NULL && picture->file == PLAN_FILE_CHANGED && picture->changed != NULL
         && plan->width == picture->facts.width_px && plan->height == picture->facts.height_px;
}

void
trammel_plan_store_keep (TrammelPlanStore *self, const char *label)
{
  const PlanView *view = trammel_plan_store_view (self);
  g_autofree char *view_id = view != NULL ? g_strdup (view->id) : NULL;
  Plan *next;

  if (!trammel_plan_store_may_keep (self))
    return;
  next = (Plan *) piece_dup (&trammel_plan_store_plan (self)->piece);
  g_free (next->checksum);
  next->checksum = g_strdup (self->picture.changed);
  self->picture.file = PLAN_FILE_SOUND;
  g_clear_pointer (&self->fault, g_free);
  store_do (self, change_plan (trammel_session_settled (self->session), next->piece.id, next), label);
  plan_store_hold (self, trammel_plan_store_plan (self));
  trammel_plan_store_choose (self, self->held->piece.id, view_id);
}

void
trammel_plan_store_set_elsewhere (TrammelPlanStore *self, const char *checksum, const char *path)
{
  g_hash_table_replace (self->elsewhere, g_strdup (checksum), g_strdup (path));
}

const char *
trammel_plan_store_elsewhere (TrammelPlanStore *self, const Plan *plan)
{
  return plan->checksum == NULL ? NULL : g_hash_table_lookup (self->elsewhere, plan->checksum);
}
