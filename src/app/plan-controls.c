#include "app/plan-controls.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-views.h"
#include "app/plan-work.h"

struct PlanControls {
  TrammelSheetCanvas *sheet;
  TrammelPlanWork *work;
  GtkWidget *stack, *square, *ways[PLAN_SQUARE_COUNT], *right;
  PlanViews *views;
  bool refreshing;
};

static void
controls_way_toggled (GtkToggleButton *button, PlanControls *self)
{
  if (self->refreshing || !gtk_toggle_button_get_active (button))
    return;
  for (int way = 0; way < PLAN_SQUARE_COUNT; way++)
    if (self->ways[way] == GTK_WIDGET (button))
      trammel_plan_work_set_way (self->work, (PlanSquare) way);
}

static void
controls_accept (PlanControls *self)
{
  plan_making_accept (self->sheet);
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

static GtkWidget *
controls_linked (PlanControls *self)
{
  const char *const names[PLAN_SQUARE_COUNT] = { _("Level Line"), _("Four Corners"), _("Straight Line") };
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);

  gtk_widget_add_css_class (box, "linked");
  for (int way = 0; way < PLAN_SQUARE_COUNT; way++) {
    self->ways[way] = gtk_toggle_button_new_with_label (names[way]);
    gtk_widget_set_focus_on_click (self->ways[way], FALSE);
    if (way > 0)
      gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->ways[way]), GTK_TOGGLE_BUTTON (self->ways[0]));
    g_signal_connect (self->ways[way], "toggled", G_CALLBACK (controls_way_toggled), self);
    gtk_box_append (GTK_BOX (box), self->ways[way]);
  }
  return box;
}

PlanControls *
plan_controls_new (TrammelSheetCanvas *sheet)
{
  PlanControls *self = g_new0 (PlanControls, 1);

  *self = (PlanControls) { .sheet = sheet, .work = trammel_plan_work_of (sheet), .views = plan_views_new (sheet) };
  self->stack = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  self->square = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  self->right = gtk_button_new_with_label (_("Looks Right"));
  gtk_widget_add_css_class (self->right, "suggested-action");
  g_signal_connect_swapped (self->right, "clicked", G_CALLBACK (controls_accept), self);
  gtk_box_append (GTK_BOX (self->square), controls_linked (self));
  gtk_box_append (GTK_BOX (self->square), self->right);
  gtk_box_append (GTK_BOX (self->stack), self->square);
  gtk_box_append (GTK_BOX (self->stack), plan_views_widget (self->views));
  return self;
}

void
plan_controls_free (PlanControls *self)
{
  plan_views_free (self->views);
  g_free (self);
}

GtkWidget *
plan_controls_widget (PlanControls *self)
{
  return self->stack;
}

void
plan_controls_refresh (PlanControls *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  const PlanStep step = trammel_plan_work_step (self->work);

  self->refreshing = true;
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->ways[trammel_plan_work_way (self->work)]), TRUE);
  gtk_widget_set_visible (self->square, plan != NULL && step == PLAN_STEP_SQUARE);
  /* A lens shows where a photograph was taken at all. */
  gtk_widget_set_visible (self->ways[PLAN_SQUARE_STRAIGHT], plan != NULL && (plan->has_corners || plan->straight_count > 0));
  gtk_widget_set_visible (self->right, plan_making_is_offered (self->sheet));
  gtk_widget_set_visible (plan_views_widget (self->views), plan != NULL && step >= PLAN_STEP_VIEW);
  plan_views_refresh (self->views);
  self->refreshing = false;
}
