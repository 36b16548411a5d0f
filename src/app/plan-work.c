#include "app/plan-work.h"

struct _TrammelPlanWork {
  GObject parent;
  PlanStep step;
  PlanSquare way;
  PlanView next;
  bool adds_view, again, told;
  char *added, *added_from;     /* ids of the view that was added last, and of that before it; NULL */
  char *came_from, *places, *note;
  const Plan *noted;            /* one reference; NULL without a note */
};

G_DEFINE_FINAL_TYPE (TrammelPlanWork, trammel_plan_work, G_TYPE_OBJECT)

static guint changed_signal;
static const char key[] = "trammel-plan-work";

static void
work_unnote (TrammelPlanWork *self)
{
  Piece *noted = (Piece *) g_steal_pointer (&self->noted);

  g_clear_pointer (&self->note, g_free);
  if (noted != NULL)
    piece_unref (noted);
}

static void
trammel_plan_work_finalize (GObject *object)
{
  g_free (TRAMMEL_PLAN_WORK (object)->places);
  work_unnote (TRAMMEL_PLAN_WORK (object));
  g_free (TRAMMEL_PLAN_WORK (object)->came_from);
  g_free (TRAMMEL_PLAN_WORK (object)->added);
  g_free (TRAMMEL_PLAN_WORK (object)->added_from);
  G_OBJECT_CLASS (trammel_plan_work_parent_class)->finalize (object);
}

static void
trammel_plan_work_class_init (TrammelPlanWorkClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_plan_work_finalize;
  changed_signal = g_signal_new ("changed", TRAMMEL_TYPE_PLAN_WORK, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_plan_work_init (TrammelPlanWork *self)
{
}

TrammelPlanWork *
trammel_plan_work_of (TrammelSheetCanvas *sheet)
{
  TrammelPlanWork *self = g_object_get_data (G_OBJECT (sheet), key);

  if (self == NULL) {
    self = g_object_new (TRAMMEL_TYPE_PLAN_WORK, NULL);
    g_object_set_data_full (G_OBJECT (sheet), key, self, g_object_unref);
  }
  return self;
}

static void
work_changed (TrammelPlanWork *self)
{
  work_unnote (self);
  g_signal_emit (self, changed_signal, 0);
}

PlanStep
trammel_plan_work_step (TrammelPlanWork *self)
{
  return self->step;
}

void
trammel_plan_work_set_step (TrammelPlanWork *self, PlanStep step)
{
  if (self->step == step)
    return;
  self->step = step;
  self->adds_view = self->again = false;
  g_clear_pointer (&self->came_from, g_free);
  g_clear_pointer (&self->places, g_free);
  work_changed (self);
}

PlanSquare
trammel_plan_work_way (TrammelPlanWork *self)
{
  return self->way;
}

void
trammel_plan_work_set_way (TrammelPlanWork *self, PlanSquare way)
{
  if (self->way == way)
    return;
  self->way = way;
  work_changed (self);
}

PlanView
trammel_plan_work_next_view (TrammelPlanWork *self)
{
  return self->next;
}

void
trammel_plan_work_set_next_view (TrammelPlanWork *self, PlanView view)
{
  self->next = (PlanView) { .shows = view.shows, .side = view.side, .flipped = view.flipped };
  work_changed (self);
}

bool
trammel_plan_work_adds_view (TrammelPlanWork *self)
{
  return self->adds_view;
}

void
trammel_plan_work_begin_view (TrammelPlanWork *self, const char *came_from)
{
  char *id = g_strdup (came_from);

  g_free (self->came_from);
  self->came_from = id;
  self->adds_view = true;
  self->again = false;
  work_changed (self);
}

void
trammel_plan_work_end_view (TrammelPlanWork *self)
{
  if (!self->adds_view)
    return;
  self->adds_view = self->again = false;
  g_clear_pointer (&self->came_from, g_free);
  work_changed (self);
}

const char *
trammel_plan_work_came_from (TrammelPlanWork *self)
{
  return self->came_from;
}

void
trammel_plan_work_set_added (TrammelPlanWork *self, const char *view_id, const char *came_from)
{
  char *id = g_strdup (view_id), *from = g_strdup (came_from);

  g_free (self->added);
  g_free (self->added_from);
  self->added = id;
  self->added_from = from;
}

const char *
trammel_plan_work_added (TrammelPlanWork *self)
{
  return self->added;
}

void
trammel_plan_work_begin_again (TrammelPlanWork *self)
{
  g_free (self->came_from);
  self->came_from = g_strdup (self->added_from);
  self->adds_view = self->again = true;
  work_changed (self);
}

bool
trammel_plan_work_begins_again (TrammelPlanWork *self)
{
  return self->adds_view && self->again;
}

const char *
trammel_plan_work_places (TrammelPlanWork *self)
{
  return self->places;
}

void
trammel_plan_work_set_places (TrammelPlanWork *self, const char *view_id)
{
  char *id = g_strdup (view_id);

  if (g_strcmp0 (self->places, id) == 0) {
    g_free (id);
    return;
  }
  g_free (self->places);
  self->places = id;
  work_changed (self);
}

const char *
trammel_plan_work_note (TrammelPlanWork *self, const Plan *plan)
{
  return plan == self->noted ? self->note : NULL;
}

void
trammel_plan_work_set_note (TrammelPlanWork *self, const Plan *plan, const char *sentence)
{
  if (g_strcmp0 (self->note, sentence) == 0 && (sentence == NULL || plan == self->noted))
    return;
  work_unnote (self);
  self->note = g_strdup (sentence);
  self->noted = sentence != NULL && plan != NULL ? (const Plan *) piece_ref (&plan->piece) : NULL;
  g_signal_emit (self, changed_signal, 0);
}

bool
trammel_plan_work_is_told (TrammelPlanWork *self)
{
  return self->told;
}

void
trammel_plan_work_set_told (TrammelPlanWork *self, bool told)
{
  if (self->told == told)
    return;
  self->told = told;
  g_signal_emit (self, changed_signal, 0);
}
