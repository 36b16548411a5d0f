#include "trammel-config.h"
#include "app/plan-reckoned.h"

void
plan_reckoned_clear (PlanReckoned *self)
{
  if (self->of != NULL)
    piece_unref (&self->of->piece);
  if (self->asked != NULL)
    piece_unref ((Piece *) &self->asked->piece);
  *self = (PlanReckoned) { .of = NULL };
}

static Plan *
measured (const Plan *plan, double width, double height)
{
  Plan *sized;

  if ((plan->width > 0 && plan->height > 0) || !(width > 0 && height > 0))
    return (Plan *) piece_ref (&plan->piece);
  sized = (Plan *) piece_dup (&plan->piece);
  sized->width = width;
  sized->height = height;
  return sized;
}

void
plan_reckon (PlanReckoned *self, const Plan *plan, double width, double height)
{
  if (plan == self->asked && self->sound)
    return;
  plan_reckoned_clear (self);
  self->asked = (const Plan *) piece_ref (&plan->piece);
  self->of = measured (plan, width, height);
  self->sound = plan_mapping (self->of, plan->dpi > 0, &self->mapping, &self->misfit, &self->is_true) == CORE_OK;
}

bool
plan_reckoned_place (const PlanReckoned *self, const PlanView *view, Placing *placing)
{
  return self->sound && plan_placing (self->of, &self->mapping, view, placing) == CORE_OK;
}
