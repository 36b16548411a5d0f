#include "trammel-config.h"
#include "app/plan-group.h"
#include "app/choice-list.h"
#include "app/piece-controls.h"
#include <glib/gi18n-lib.h>
#include "app/group.h"
#include "app/plan-fault.h"
#include "app/plan-words.h"
#include "document/changes.h"

/* A slider that stands still this long has been let go. */
enum { SETTLE_MS = 400 };

/* One thing that is on or off: how it stands in the plan, and how it is put there. */
typedef struct {
  const char *label, *step;               /* marked for translation */
  bool (*get) (const Plan *plan);
  void (*set) (Plan *plan, bool on);
} PlanSwitch;

enum { SWITCH_COUNT = 4 };

struct _TrammelPlanGroup {
  GtkBox parent;
  TrammelSession *session;
  TrammelPlanStore *store;
  GtkWidget *group;
  GtkWidget *plans, *view, *size, *scale, *strength, *switches[SWITCH_COUNT];
  char *shape;                            /* what the rows were made for */
  guint settling;                         /* will settle the strength; 0 none */
  bool showing;                           /* values are being shown, nobody chooses */
};

G_DEFINE_FINAL_TYPE (TrammelPlanGroup, trammel_plan_group, GTK_TYPE_BOX)

static bool get_cling   (const Plan *plan) { return plan->cling; }
static bool get_locked  (const Plan *plan) { return plan->locked; }
static bool get_hidden  (const Plan *plan) { return plan->shown == PLAN_HIDDEN; }
static bool get_scanned (const Plan *plan) { return plan->shown == PLAN_SCANNED; }
static void set_cling   (Plan *plan, bool on) { plan->cling = on; }
static void set_locked  (Plan *plan, bool on) { plan->locked = on; }
static void set_hidden  (Plan *plan, bool on) { plan->shown = on ? PLAN_HIDDEN : PLAN_INK; }
static void set_scanned (Plan *plan, bool on) { plan->shown = on ? PLAN_SCANNED : PLAN_INK; }

static const PlanSwitch switches[SWITCH_COUNT] = {
  { N_("Cling to the Line"), N_("Cling to the Line"), get_cling, set_cling },
  { N_("Locked in Place"), N_("Lock Plan in Place"), get_locked, set_locked },
  { N_("Hidden"), N_("Hide Plan"), get_hidden, set_hidden },
  { N_("As Scanned"), N_("Show Plan As Scanned"), get_scanned, set_scanned },
};

/* Changing */

static void
group_settle (TrammelPlanGroup *self)
{
  g_clear_handle_id (&self->settling, g_source_remove);
  if (trammel_session_is_previewing (self->session))
    trammel_session_settle (self->session, _("Plan Strength"));
}

static gboolean
group_settle_later (gpointer data)
{
  TrammelPlanGroup *self = data;

  self->settling = 0;
  group_settle (self);
  return G_SOURCE_REMOVE;
}

static void
strength_moved (TrammelPlanGroup *self)
{
  const Plan *plan = trammel_plan_store_plan (self->store);
  Plan *next;

  if (self->showing || plan == NULL)
    return;
  next = (Plan *) piece_dup (&plan->piece);
  next->strength = gtk_range_get_value (GTK_RANGE (self->strength));
  trammel_session_preview (self->session, change_plan (trammel_session_settled (self->session), plan->piece.id, next));
  g_clear_handle_id (&self->settling, g_source_remove);
  self->settling = g_timeout_add (SETTLE_MS, group_settle_later, self);
}

static void
switch_turned (TrammelPlanGroup *self, GParamSpec *property, GtkWidget *control)
{
  const PlanSwitch *what = g_object_get_data (G_OBJECT (control), "trammel-switch");
  const bool on = gtk_switch_get_active (GTK_SWITCH (control));
  const Plan *plan = trammel_plan_store_plan (self->store);
  Plan *next;

  if (self->showing || plan == NULL || what->get (plan) == on)
    return;
  next = (Plan *) piece_dup (&plan->piece);
  what->set (next, on);
  trammel_session_do (self->session, change_plan (trammel_session_settled (self->session), plan->piece.id, next), _(what->step));
}

static void
view_chosen (TrammelPlanGroup *self)
{
  const Plan *plan = trammel_plan_store_plan (self->store);
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->view));

  if (!self->showing && plan != NULL && chosen <= plan->view_count)
    trammel_plan_store_choose (self->store, plan->piece.id, chosen == 0 ? NULL : plan->views[chosen - 1].id);
}

static void
plan_chosen (TrammelPlanGroup *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->plans));
  const Plan *plan;

  if (self->showing || chosen >= aeroplane_count (aeroplane, PIECE_PLAN))
    return;
  plan = aeroplane_plan (aeroplane, chosen);
  trammel_plan_store_choose (self->store, plan->piece.id, plan->view_count > 0 ? plan->views[0].id : NULL);
}

static void
plan_removed (TrammelPlanGroup *self)
{
  const Plan *plan = trammel_plan_store_plan (self->store);

  if (plan != NULL)
    trammel_session_do (self->session, change_plan_removed (trammel_session_settled (self->session), plan->piece.id), _("Remove Plan"));
}

/* Building */

static void
group_add_choice (TrammelPlanGroup *self, GtkWidget **place, const char *label, char **takes_words, GCallback chosen)
{
  g_auto (GStrv) words = takes_words;

  *place = choice_list_new_of_words ((const char *const *) words);
  piece_control_may_be_cut (GTK_DROP_DOWN (*place));
  g_signal_connect_swapped (*place, "notify::selected", chosen, self);
  trammel_group_add_control (TRAMMEL_GROUP (self->group), label, *place);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (*place)), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

static GtkWidget *
group_add_words (TrammelPlanGroup *self, const char *label)
{
  GtkWidget *words = gtk_label_new (NULL);

  gtk_widget_add_css_class (words, "dim-label");
  trammel_group_add_control (TRAMMEL_GROUP (self->group), label, words);
  return words;
}

/* The wheel moves the panel, not what it happens to pass over. */
static void
leave_wheel_alone (GtkWidget *slider)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (slider);

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_EVENT_CONTROLLER_SCROLL (controller))
      gtk_event_controller_set_propagation_phase (controller, GTK_PHASE_NONE);
  }
}

static void
group_add_strength (TrammelPlanGroup *self)
{
  self->strength = gtk_scale_new_with_range (GTK_ORIENTATION_HORIZONTAL, 0, 100, 5);
  gtk_widget_set_size_request (self->strength, 120, -1);
  leave_wheel_alone (self->strength);
  g_signal_connect_swapped (self->strength, "value-changed", G_CALLBACK (strength_moved), self);
  trammel_group_add_control (TRAMMEL_GROUP (self->group), _("Strength"), self->strength);
}

static void
group_add_switches (TrammelPlanGroup *self)
{
  for (size_t i = 0; i < SWITCH_COUNT; i++) {
    self->switches[i] = gtk_switch_new ();
    g_object_set_data (G_OBJECT (self->switches[i]), "trammel-switch", (gpointer) &switches[i]);
    trammel_group_add_control (TRAMMEL_GROUP (self->group), _(switches[i].label), self->switches[i]);
    g_signal_connect_swapped (self->switches[i], "notify::active", G_CALLBACK (switch_turned), self);
  }
}

static void
group_add_lengths (TrammelPlanGroup *self, const Plan *plan)
{
  for (size_t i = 0; i < plan->length_count; i++) {
    g_autofree char *length = plan_words_length_off (self->store, i, trammel_session_units (self->session));

    gtk_label_set_text (GTK_LABEL (group_add_words (self, _("Known length"))), length);
  }
}

static char **
group_titles (TrammelPlanGroup *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);
  const size_t count = aeroplane_count (aeroplane, PIECE_PLAN);
  char **titles = g_new0 (char *, count + 1);

  for (size_t i = 0; i < count; i++)
    titles[i] = plan_title (aeroplane_plan (aeroplane, i));
  return titles;
}

static void
group_build (TrammelPlanGroup *self, const Plan *plan)
{
  GtkWidget *remove = gtk_button_new_with_mnemonic (_("_Remove Plan"));

  if (self->group != NULL)
    gtk_box_remove (GTK_BOX (self), self->group);
  self->group = trammel_group_new (_("Plan"));
  gtk_widget_set_hexpand (self->group, TRUE);
  gtk_box_append (GTK_BOX (self), self->group);
  self->plans = self->view = NULL;
  if (aeroplane_count (trammel_session_aeroplane (self->session), PIECE_PLAN) > 1)
    group_add_choice (self, &self->plans, _("Shown"), group_titles (self), G_CALLBACK (plan_chosen));
  self->size = group_add_words (self, _("Size"));
  self->scale = group_add_words (self, _("Millimetres a pixel"));
  group_add_lengths (self, plan);
  if (plan->view_count > 0)
    group_add_choice (self, &self->view, _("View"), plan_words_views (plan), G_CALLBACK (view_chosen));
  group_add_strength (self);
  group_add_switches (self);
  gtk_widget_set_margin_top (remove, 6);
  gtk_widget_set_margin_bottom (remove, 6);
  gtk_widget_set_margin_start (remove, 10);
  gtk_widget_set_margin_end (remove, 10);
  g_signal_connect_swapped (remove, "clicked", G_CALLBACK (plan_removed), self);
  trammel_group_add (TRAMMEL_GROUP (self->group), remove);
}

/* What the rows depend on. */
static char *
group_shape (TrammelPlanGroup *self, const Plan *plan)
{
  GString *shape = g_string_new (NULL);
  g_auto (GStrv) titles = group_titles (self);
  g_autofree char *all = g_strjoinv ("\n", titles);

  g_string_append_printf (shape, "%s\n%s\n%d", plan->piece.id, all, trammel_session_units (self->session).length);
  for (size_t i = 0; i < plan->view_count; i++)
    g_string_append_printf (shape, " %s %d", plan->views[i].id, plan->views[i].shows);
  for (size_t i = 0; i < plan->length_count; i++) {
    g_autofree char *length = plan_words_length_off (self->store, i, trammel_session_units (self->session));

    g_string_append_printf (shape, " %s", length);
  }
  return g_string_free (shape, FALSE);
}

/* Showing */

static guint
place_of_view (TrammelPlanGroup *self, const Plan *plan)
{
  const PlanView *view = trammel_plan_store_view (self->store);

  return view == NULL ? 0 : (guint) (view - plan->views) + 1;
}

static guint
place_of_plan (TrammelPlanGroup *self, const Plan *plan)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);

  for (guint i = 0; i < aeroplane_count (aeroplane, PIECE_PLAN); i++)
    if (aeroplane_plan (aeroplane, i) == plan)
      return i;
  return GTK_INVALID_LIST_POSITION;
}

static void
group_show (TrammelPlanGroup *self, const Plan *plan)
{
  g_autofree char *title = plan_title (plan);
  g_autofree char *size = plan_words_size (self->store, trammel_session_units (self->session));
  g_autofree char *scale = plan_words_scale (self->store);

  trammel_group_set_remark (TRAMMEL_GROUP (self->group), self->plans == NULL ? title : NULL);
  gtk_label_set_text (GTK_LABEL (self->size), size);
  gtk_label_set_text (GTK_LABEL (self->scale), scale);
  if (self->plans != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (self->plans), place_of_plan (self, plan));
  if (self->view != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (self->view), place_of_view (self, plan));
  gtk_range_set_value (GTK_RANGE (self->strength), plan->strength);
  gtk_widget_set_sensitive (self->strength, plan->shown == PLAN_INK);
  for (size_t i = 0; i < SWITCH_COUNT; i++)
    gtk_switch_set_active (GTK_SWITCH (self->switches[i]), switches[i].get (plan));
}

static void
group_follow (TrammelPlanGroup *self)
{
  const Plan *plan = trammel_plan_store_plan (self->store);
  g_autofree char *shape = plan != NULL ? group_shape (self, plan) : NULL;

  gtk_widget_set_visible (GTK_WIDGET (self), plan != NULL);
  if (plan == NULL)
    return;
  self->showing = true;
  if (g_strcmp0 (shape, self->shape) != 0) {
    group_build (self, plan);
    g_free (self->shape);
    self->shape = g_steal_pointer (&shape);
  }
  group_show (self, plan);
  self->showing = false;
}

static void
trammel_plan_group_dispose (GObject *object)
{
  TrammelPlanGroup *self = TRAMMEL_PLAN_GROUP (object);

  if (self->settling != 0)
    group_settle (self);
  g_clear_pointer (&self->shape, g_free);
  g_clear_object (&self->store);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_plan_group_parent_class)->dispose (object);
}

static void
trammel_plan_group_class_init (TrammelPlanGroupClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_plan_group_dispose;
}

static void
trammel_plan_group_init (TrammelPlanGroup *self)
{
}

GtkWidget *
trammel_plan_group_new (TrammelSession *session, TrammelPlanStore *store)
{
  TrammelPlanGroup *self = g_object_new (TRAMMEL_TYPE_PLAN_GROUP, NULL);

  self->session = g_object_ref (session);
  self->store = g_object_ref (store);
  g_signal_connect_object (store, "changed", G_CALLBACK (group_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (group_follow), self, G_CONNECT_SWAPPED);
  group_follow (self);
  return GTK_WIDGET (self);
}
