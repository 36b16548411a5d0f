#include "app/plan-strip.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-controls.h"
#include "app/plan-edit.h"
#include "app/plan-remark.h"
#include "app/plan-work.h"
#include "app/tool.h"
#include "app/wrap-row.h"

struct _TrammelPlanStrip {
  GtkWidget parent;
  TrammelSheetCanvas *sheet;
  TrammelPlanWork *work;
  GtkWidget *revealer, *steps[PLAN_STEP_COUNT], *signs[PLAN_STEP_COUNT], *names[PLAN_STEP_COUNT], *row, *remark, *open;
  GtkWidget *side;              /* view, not owned; NULL not known */
  PlanControls *controls;
  bool refreshing;
};

G_DEFINE_FINAL_TYPE (TrammelPlanStrip, trammel_plan_strip, GTK_TYPE_WIDGET)

enum { SLIDE_MS = 150 };

static void
trammel_plan_strip_dispose (GObject *object)
{
  TrammelPlanStrip *self = TRAMMEL_PLAN_STRIP (object);

  g_clear_pointer (&self->revealer, gtk_widget_unparent);
  g_clear_pointer (&self->controls, plan_controls_free);
  g_clear_object (&self->sheet);
  G_OBJECT_CLASS (trammel_plan_strip_parent_class)->dispose (object);
}

static void
trammel_plan_strip_class_init (TrammelPlanStripClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_plan_strip_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "planstrip");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
trammel_plan_strip_init (TrammelPlanStrip *self)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Plan"), -1);
}

static const char *
strip_step_name (PlanStep step)
{
  switch (step) {
    case PLAN_STEP_LENGTH: return _("Known Length");
    case PLAN_STEP_SQUARE: return _("Square Up");
    case PLAN_STEP_VIEW:   return _("View");
    default:               return _("Trace");
  }
}

/* In the view in hand; where none is, in any. */
static bool
strip_is_traced (TrammelPlanStrip *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (trammel_sheet_canvas_session (self->sheet));
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet));

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++) {
    const Piece *piece = aeroplane_piece (aeroplane, i);
    const char *const traced[] = { piece->kind == PIECE_SURFACE ? ((const Surface *) piece)->traced : NULL,
                                   piece->kind == PIECE_BODY ? ((const Body *) piece)->traced : NULL,
                                   piece->kind == PIECE_BODY ? ((const Body *) piece)->side_traced : NULL };

    for (size_t k = 0; k < G_N_ELEMENTS (traced); k++)
      if (traced[k] != NULL && (view == NULL || g_str_equal (traced[k], view->id)))
        return true;
  }
  return false;
}

static bool
strip_step_is_done (TrammelPlanStrip *self, const Plan *plan, PlanStep step)
{
  bool is_true = false;

  switch (step) {
    case PLAN_STEP_LENGTH:
      return trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (self->sheet), NULL, NULL, &is_true) && is_true;
    case PLAN_STEP_SQUARE: return plan->has_level || plan->has_corners;
    case PLAN_STEP_VIEW:   return plan->view_count > 0;
    default:               return strip_is_traced (self);
  }
}

static void
strip_show_step (TrammelPlanStrip *self, const Plan *plan, PlanStep step)
{
  const bool done = plan != NULL && strip_step_is_done (self, plan, step);
  char number[2] = { (char) ('1' + step), '\0' };

  gtk_label_set_label (GTK_LABEL (self->signs[step]), done ? "✓" : number);
  /* Where the row is too narrow for all names, that of the step in hand is the one that stays. */
  gtk_label_set_ellipsize (GTK_LABEL (self->names[step]), step == trammel_plan_work_step (self->work) ? PANGO_ELLIPSIZE_NONE : PANGO_ELLIPSIZE_END);
  if (done)
    gtk_widget_add_css_class (self->signs[step], "done");
  else
    gtk_widget_remove_css_class (self->signs[step], "done");
  gtk_widget_set_sensitive (self->steps[step], plan != NULL && (step != PLAN_STEP_TRACE || plan->view_count > 0));
}

static bool
strip_is_open (TrammelPlanStrip *self)
{
  return gtk_revealer_get_reveal_child (GTK_REVEALER (self->revealer));
}

static void
strip_refresh (TrammelPlanStrip *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  g_autofree char *remark = NULL;

  if (!strip_is_open (self) || self->refreshing)
    return;
  self->refreshing = true;
  for (int step = 0; step < PLAN_STEP_COUNT; step++)
    strip_show_step (self, plan, (PlanStep) step);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->steps[trammel_plan_work_step (self->work)]), TRUE);
  remark = plan_remark (self->sheet, self->side == NULL || gtk_widget_get_visible (self->side));
  gtk_label_set_label (trammel_wrap_row_sentence (TRAMMEL_WRAP_ROW (self->row)), trammel_sheet_canvas_hint (self->sheet));
  gtk_label_set_label (GTK_LABEL (self->remark), remark != NULL ? remark : "");
  gtk_widget_set_visible (self->remark, remark != NULL);
  gtk_widget_set_visible (self->open, plan == NULL);
  plan_controls_refresh (self->controls);
  self->refreshing = false;
}

/* Tracing is the Outline tool's, hinge lines are their own tool's; the other steps are the Plan tool's. Moving the
 * sheet between them closes nothing. What an outline would lack is said before it is drawn, beside the steps that mend it. */
static void
strip_tool_changed (TrammelPlanStrip *self)
{
  const ToolKind *kind = trammel_sheet_canvas_tool (self->sheet)->kind;
  const bool pressing = kind == &tool_outline && plan_remark_is_pressing (self->sheet);
  const bool traces = ((kind == &tool_outline || kind == &tool_hinge) && strip_is_open (self)) || pressing;
  const bool open = kind == &tool_plan || traces || (kind == &tool_move_sheet && strip_is_open (self));

  if (traces)
    trammel_plan_work_set_step (self->work, PLAN_STEP_TRACE);
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), open);
  trammel_plan_work_set_told (self->work, open);
  gtk_widget_set_visible (self->revealer, open || gtk_revealer_get_child_revealed (GTK_REVEALER (self->revealer)));
  strip_refresh (self);
}

static void
strip_slid (TrammelPlanStrip *self)
{
  if (!strip_is_open (self) && !gtk_revealer_get_child_revealed (GTK_REVEALER (self->revealer)))
    gtk_widget_set_visible (self->revealer, FALSE);
}

static void
strip_step_toggled (GtkToggleButton *button, TrammelPlanStrip *self)
{
  int step = 0;

  if (self->refreshing || !gtk_toggle_button_get_active (button))
    return;
  while (step + 1 < PLAN_STEP_COUNT && self->steps[step] != GTK_WIDGET (button))
    step++;
  trammel_plan_work_set_step (self->work, (PlanStep) step);
  trammel_sheet_canvas_set_tool (self->sheet, step == PLAN_STEP_TRACE ? "outline" : "plan");
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

/* Beneath an aeroplane that is worked on again lies the plan of its wing, whichever view was traced last. */
static void
strip_lay_wing_beneath (TrammelPlanStore *plans)
{
  const Plan *plan = trammel_plan_store_plan (plans);

  for (size_t i = 0; plan != NULL && i < plan->view_count; i++)
    if (plan->views[i].shows == VIEW_WING) {
      trammel_plan_store_choose (plans, plan->piece.id, plan->views[i].id);
      return;
    }
}

static void
strip_done (TrammelPlanStrip *self)
{
  strip_lay_wing_beneath (trammel_sheet_canvas_plan_store (self->sheet));
  trammel_sheet_canvas_set_tool (self->sheet, "select");
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

/* Only then is there more to read than is to be seen. */
static gboolean
strip_name_cut_off (GtkWidget *button, int x, int y, gboolean by_key, GtkTooltip *tooltip, GtkLabel *name)
{
  gtk_tooltip_set_text (tooltip, gtk_label_get_label (name));
  return pango_layout_is_ellipsized (gtk_label_get_layout (name));
}

static GtkWidget *
strip_step_button (TrammelPlanStrip *self, PlanStep step)
{
  GtkWidget *button = gtk_toggle_button_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->steps[step] = button;
  self->signs[step] = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->signs[step], "sign");
  gtk_widget_set_valign (self->signs[step], GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (box), self->signs[step]);
  self->names[step] = gtk_label_new (strip_step_name (step));
  gtk_box_append (GTK_BOX (box), self->names[step]);
  gtk_button_set_child (GTK_BUTTON (button), box);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_focus_on_click (button, FALSE);
  gtk_widget_set_has_tooltip (button, TRUE);
  g_signal_connect (button, "query-tooltip", G_CALLBACK (strip_name_cut_off), self->names[step]);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, strip_step_name (step), -1);
  if (step > 0)
    gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), GTK_TOGGLE_BUTTON (self->steps[0]));
  g_signal_connect (button, "toggled", G_CALLBACK (strip_step_toggled), self);
  return button;
}

/* Where the window is narrower than all that is in it, the row gives way and follows the focus. */
static GtkWidget *
strip_yielding (GtkWidget *row, const char *name)
{
  GtkWidget *window = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (window), GTK_POLICY_EXTERNAL, GTK_POLICY_NEVER);
  gtk_scrolled_window_set_propagate_natural_width (GTK_SCROLLED_WINDOW (window), TRUE);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (window), row);
  gtk_accessible_update_property (GTK_ACCESSIBLE (window), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  return window;
}

static GtkWidget *
strip_steps_row (TrammelPlanStrip *self)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 2), *steps = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 2);
  GtkWidget *done = gtk_button_new_with_label (_("Done"));

  for (int step = 0; step < PLAN_STEP_COUNT; step++) {
    if (step > 0)
      gtk_box_append (GTK_BOX (steps), gtk_image_new_from_icon_name ("trammel-next-symbolic"));
    gtk_box_append (GTK_BOX (steps), strip_step_button (self, (PlanStep) step));
  }
  gtk_box_append (GTK_BOX (row), strip_yielding (steps, _("Steps")));
  self->open = gtk_button_new_with_label (_("Open a Plan…"));
  gtk_widget_add_css_class (self->open, "suggested-action");
  gtk_actionable_set_action_name (GTK_ACTIONABLE (self->open), "win.open-plan");
  gtk_widget_set_hexpand (self->open, TRUE);
  gtk_widget_set_halign (self->open, GTK_ALIGN_END);
  gtk_widget_set_halign (done, GTK_ALIGN_END);
  gtk_widget_set_hexpand (done, TRUE);
  g_signal_connect_swapped (done, "clicked", G_CALLBACK (strip_done), self);
  gtk_box_append (GTK_BOX (row), self->open);
  gtk_box_append (GTK_BOX (row), done);
  gtk_widget_add_css_class (row, "steps");
  return row;
}

/* What to do now, with the controls for it; below, what there is to say about what is known so far. */
static GtkWidget *
strip_second_row (TrammelPlanStrip *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);

  self->row = trammel_wrap_row_new (strip_yielding (plan_controls_widget (self->controls), _("Controls of This Step")));
  self->remark = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->remark), 0);
  gtk_label_set_wrap (GTK_LABEL (self->remark), TRUE);
  gtk_widget_add_css_class (self->remark, "remark");
  gtk_box_append (GTK_BOX (column), self->row);
  gtk_box_append (GTK_BOX (column), self->remark);
  gtk_widget_add_css_class (column, "second");
  return column;
}

static void
strip_follow (TrammelPlanStrip *self)
{
  TrammelSession *session = trammel_sheet_canvas_session (self->sheet);

  g_signal_connect_object (self->work, "changed", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "changed", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_sheet_canvas_plan_store (self->sheet), "changed", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->sheet, "hint-changed", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->sheet, "tool-changed", G_CALLBACK (strip_tool_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->revealer, "notify::child-revealed", G_CALLBACK (strip_slid), self, G_CONNECT_SWAPPED);
}

GtkWidget *
trammel_plan_strip_new (TrammelSheetCanvas *sheet)
{
  TrammelPlanStrip *self = g_object_new (TRAMMEL_TYPE_PLAN_STRIP, NULL);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->sheet = g_object_ref (sheet);
  self->work = trammel_plan_work_of (sheet);
  self->controls = plan_controls_new (sheet);
  self->revealer = gtk_revealer_new ();
  gtk_revealer_set_transition_duration (GTK_REVEALER (self->revealer), SLIDE_MS);
  gtk_widget_set_visible (self->revealer, FALSE);
  gtk_box_append (GTK_BOX (box), strip_steps_row (self));
  gtk_box_append (GTK_BOX (box), strip_second_row (self));
  gtk_revealer_set_child (GTK_REVEALER (self->revealer), box);
  gtk_widget_set_parent (self->revealer, GTK_WIDGET (self));
  strip_follow (self);
  return GTK_WIDGET (self);
}

void
trammel_plan_strip_set_side (TrammelPlanStrip *self, GtkWidget *side)
{
  self->side = side;
  g_signal_connect_object (side, "notify::visible", G_CALLBACK (strip_refresh), self, G_CONNECT_SWAPPED);
}

bool
trammel_plan_strip_focus (TrammelPlanStrip *self)
{
  if (!strip_is_open (self))
    return false;
  return gtk_widget_grab_focus (self->steps[trammel_plan_work_step (self->work)]) || gtk_widget_grab_focus (self->open);
}
