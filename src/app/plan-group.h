#pragma once
#include <gtk/gtk.h>
#include "app/plan-store.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_PLAN_GROUP (trammel_plan_group_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPlanGroup, trammel_plan_group, TRAMMEL, PLAN_GROUP, GtkBox)

/** The panel's group of the plan in hand: which it is, how large, how its pixels are millimetres, how it is shown. Each change is one
 *  undo step. Follows the store by itself. */
GtkWidget *trammel_plan_group_new (TrammelSession *session, TrammelPlanStore *store);

G_END_DECLS
