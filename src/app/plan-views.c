#include "app/plan-views.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-words.h"
#include "app/plan-work.h"

struct PlanViews {
  TrammelSheetCanvas *sheet;
  TrammelPlanWork *work;
  GtkWidget *box, *which, *is, *shows, *side, *flipped, *place, *add, *remove;
  char *listed;             /* the names that `which` lists, one behind the other */
  bool refreshing;
};

/* The view in hand, or the one that comes. */
static PlanView
views_shown (PlanViews *self, bool *there)
{
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet));

  *there = view != NULL && !trammel_plan_work_adds_view (self->work);
  return *there ? *view : trammel_plan_work_next_view (self->work);
}

/* What a control says becomes the view's own, or the next one's. */
static void
views_set (PlanViews *self, PlanView wanted)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  bool there;
  const PlanView now = views_shown (self, &there);
  Plan *next;

  if (!there) {
    trammel_plan_work_set_next_view (self->work, wanted);
    return;
  }
  next = (Plan *) piece_dup (&plan->piece);
  for (size_t i = 0; i < next->view_count; i++)
    if (g_strcmp0 (next->views[i].id, now.id) == 0) {
      next->views[i].shows = wanted.shows;
      next->views[i].side = wanted.side;
      next->views[i].flipped = wanted.flipped;
    }
  plan_edit_do (self->sheet, next, _("Change View"));
}

static void
views_changed (PlanViews *self)
{
  bool there;
  PlanView wanted;

  if (self->refreshing)
    return;
  wanted = views_shown (self, &there);
  wanted.shows = (ViewShows) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->shows));
  wanted.side = (ViewSide) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->side));
  wanted.flipped = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->flipped));
  views_set (self, wanted);
}

/* The first entry is the whole sheet, upright. */
static void
views_chosen (PlanViews *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  const guint number = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->which));

  if (self->refreshing || plan == NULL || number > plan->view_count)
    return;
  trammel_plan_work_set_adds_view (self->work, false);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (self->sheet), plan->piece.id, number > 0 ? plan->views[number - 1].id : NULL);
}

/* Both are done with the Plan tool, wherever one was. */
static void
views_take_step (PlanViews *self)
{
  trammel_plan_work_set_step (self->work, PLAN_STEP_VIEW);
  trammel_sheet_canvas_set_tool (self->sheet, "plan");
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

/* The next axis is clicked on the sheet as it was scanned. */
static void
views_add (PlanViews *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  PlanView next = trammel_plan_work_next_view (self->work);

  if (plan->view_count > 0)
    next.shows = (ViewShows) ((plan->views[plan->view_count - 1].shows + 1) % VIEW_SHOWS_COUNT);
  if (next.shows == VIEW_FOREPLANE)
    next.shows = VIEW_FIN;        /* few have one */
  next.side = next.shows == VIEW_BODY_TOP ? VIEW_BOTH : VIEW_STARBOARD;
  next.flipped = false;
  views_take_step (self);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (self->sheet), plan->piece.id, NULL);
  trammel_plan_work_set_next_view (self->work, next);
  trammel_plan_work_set_adds_view (self->work, true);
}

static void
views_place (PlanViews *self)
{
  views_take_step (self);
  plan_making_begin_place (self->sheet);
}

static void
views_remove (PlanViews *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet));

  if (view == NULL)
    return;
  plan_edit_do (self->sheet, plan_without_mark (plan, (PlanMark) { PLAN_MARK_AXIS, (size_t) (view - plan->views), 0 }),
                plan_edit_removed_label (PLAN_MARK_AXIS));
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

static const char *
views_side_name (ViewSide side)
{
  switch (side) {
    case VIEW_STARBOARD: return _("Starboard Half");
    case VIEW_PORT:      return _("Port Half");
    default:             return _("Both Halves");
  }
}

static void
views_name (GtkWidget *widget, const char *name)
{
  gtk_widget_set_tooltip_text (widget, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static GtkWidget *
views_drop_down (PlanViews *self, const char *const words[], const char *name, GCallback changed)
{
  GtkWidget *list = gtk_drop_down_new_from_strings (words);

  views_name (list, name);
  views_name (gtk_widget_get_first_child (list), name);
  g_signal_connect_swapped (list, "notify::selected", changed, self);
  gtk_box_append (GTK_BOX (self->box), list);
  return list;
}

static GtkWidget *
views_button (PlanViews *self, const char *icon, const char *name, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  views_name (button, name);
  gtk_widget_add_css_class (button, "flat");
  g_signal_connect_swapped (button, "clicked", clicked, self);
  gtk_box_append (GTK_BOX (self->box), button);
  return button;
}

PlanViews *
plan_views_new (TrammelSheetCanvas *sheet)
{
  PlanViews *self = g_new0 (PlanViews, 1);
  const char *shows[VIEW_SHOWS_COUNT + 1] = { NULL }, *sides[VIEW_SIDE_COUNT + 1] = { NULL };
  static const char *const none[] = { NULL };

  *self = (PlanViews) { .sheet = sheet, .work = trammel_plan_work_of (sheet), .box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6) };
  for (int i = 0; i < VIEW_SHOWS_COUNT; i++)
    shows[i] = view_shows_name ((ViewShows) i);
  for (int i = 0; i < VIEW_SIDE_COUNT; i++)
    sides[i] = views_side_name ((ViewSide) i);
  self->which = views_drop_down (self, none, _("View in Hand"), G_CALLBACK (views_chosen));
  self->is = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->is, "dim-label");
  gtk_box_append (GTK_BOX (self->box), self->is);
  self->shows = views_drop_down (self, shows, _("What the View Shows"), G_CALLBACK (views_changed));
  self->side = views_drop_down (self, sides, _("Half Drawn"), G_CALLBACK (views_changed));
  self->flipped = gtk_check_button_new_with_label (_("Flipped"));
  gtk_widget_set_tooltip_text (self->flipped, _("Drawn from below, or nose to the right"));
  g_signal_connect_swapped (self->flipped, "toggled", G_CALLBACK (views_changed), self);
  gtk_box_append (GTK_BOX (self->box), self->flipped);
  self->place = views_button (self, "trammel-side-place-symbolic", _("Click Its Place in the Side View"), G_CALLBACK (views_place));
  self->add = views_button (self, "list-add-symbolic", _("Add View"), G_CALLBACK (views_add));
  self->remove = views_button (self, "list-remove-symbolic", _("Remove View"), G_CALLBACK (views_remove));
  return self;
}

void
plan_views_free (PlanViews *self)
{
  g_free (self->listed);
  g_free (self);
}

GtkWidget *
plan_views_widget (PlanViews *self)
{
  return self->box;
}

static bool
views_can_place (const Plan *plan, const PlanView *in_hand)
{
  bool side = false;

  for (size_t i = 0; i < plan->view_count; i++)
    side = side || plan->views[i].shows == VIEW_BODY_SIDE;
  return side && in_hand != NULL && in_hand->shows != VIEW_BODY_SIDE;
}

static void
views_list (PlanViews *self, const Plan *plan)
{
  g_auto (GStrv) list = plan_words_views (plan);
  g_autofree char *joined = g_strjoinv ("\n", list);

  if (g_strcmp0 (joined, self->listed) == 0)
    return;
  g_free (self->listed);
  self->listed = g_steal_pointer (&joined);
  GListModel *model = G_LIST_MODEL (gtk_string_list_new ((const char *const *) list));

  gtk_drop_down_set_model (GTK_DROP_DOWN (self->which), model);
  g_object_unref (model);
}

void
plan_views_refresh (PlanViews *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  const PlanView *in_hand = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet));
  bool there;
  PlanView shown;

  if (plan == NULL)
    return;
  shown = views_shown (self, &there);
  self->refreshing = true;
  views_list (self, plan);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->which), in_hand != NULL ? (guint) (in_hand - plan->views) + 1 : 0);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->shows), shown.shows);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->side), shown.side);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->flipped), shown.flipped);
  gtk_widget_set_visible (self->which, plan->view_count > 1 || (plan->view_count > 0 && !there));
  /* Translators: each stands between two lists: the view in hand, and what it shows; or what is in hand, and what the next view shows. */
  gtk_label_set_label (GTK_LABEL (self->is), there ? _("shows") : _("next:"));
  gtk_widget_set_visible (self->is, gtk_widget_get_visible (self->which));
  gtk_widget_set_visible (self->side, shown.shows != VIEW_FIN && shown.shows != VIEW_BODY_SIDE);
  gtk_widget_set_visible (self->place, there && views_can_place (plan, in_hand));
  gtk_widget_set_visible (self->add, there);
  gtk_widget_set_visible (self->remove, there);
  self->refreshing = false;
}
