#include "app/plan-views.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/choice-list.h"
#include "app/plan-edit.h"
#include "app/plan-view-details.h"
#include "app/plan-view-edit.h"
#include "app/plan-words.h"
#include "app/plan-work.h"

struct PlanViews {
  TrammelSheetCanvas *sheet;
  TrammelPlanWork *work;
  GtkWidget *box, *caption, *which, *next, *shows, *place, *details, *add;
  char *listed;             /* the names that `which` lists, one behind the other */
  bool refreshing;
};

/* Of the view that comes. */
static void
views_shows_chosen (PlanViews *self)
{
  PlanView wanted;
  bool there;

  if (self->refreshing || plan_edit_plan (self->sheet) == NULL)
    return;
  wanted = plan_view_shown (self->sheet, &there);
  wanted.shows = (ViewShows) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->shows));
  if (!there)
    plan_view_set (self->sheet, wanted);
}

/* The first entry is the whole sheet, upright. */
static void
views_chosen (PlanViews *self)
{
  const Plan *plan = plan_edit_plan (self->sheet);
  const guint number = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->which));
  Box box;

  if (self->refreshing || plan == NULL || number > plan->view_count)
    return;
  trammel_plan_work_end_view (self->work);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (self->sheet), plan->piece.id, number > 0 ? plan->views[number - 1].id : NULL);
  if (trammel_sheet_canvas_work_extent (self->sheet, &box))
    trammel_sheet_canvas_bring_into_sight (self->sheet, box);
}

/* The button goes, and its axis is clicked on the sheet. */
static void
views_add (PlanViews *self)
{
  plan_view_add (self->sheet);
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

/* The name is read beside it or said aloud; hovering over it would cover the first entry. */
static GtkWidget *
views_drop_down (PlanViews *self, const char *const words[], const char *name, GCallback changed)
{
  GtkWidget *list = choice_list_new_of_words (words);

  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (list)), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (list, "notify::selected", changed, self);
  gtk_box_append (GTK_BOX (self->box), list);
  return list;
}

static GtkWidget *
views_caption (PlanViews *self, const char *words)
{
  GtkWidget *caption = gtk_label_new (words);

  gtk_widget_add_css_class (caption, "dim-label");
  gtk_box_append (GTK_BOX (self->box), caption);
  return caption;
}

static void
views_place (PlanViews *self)
{
  plan_view_place (self->sheet);
}

static void
views_add_buttons (PlanViews *self)
{
  self->place = gtk_button_new_with_label (_("Click Its Place in the Side View"));
  gtk_widget_set_focus_on_click (self->place, FALSE);
  g_signal_connect_swapped (self->place, "clicked", G_CALLBACK (views_place), self);
  gtk_box_append (GTK_BOX (self->box), self->place);
  self->details = plan_view_details_new (self->sheet);
  gtk_box_append (GTK_BOX (self->box), self->details);
  self->add = gtk_button_new_from_icon_name ("list-add-symbolic");
  gtk_widget_set_tooltip_text (self->add, _("Add View"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->add), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Add View"), -1);
  gtk_widget_add_css_class (self->add, "flat");
  g_signal_connect_swapped (self->add, "clicked", G_CALLBACK (views_add), self);
  gtk_box_append (GTK_BOX (self->box), self->add);
}

PlanViews *
plan_views_new (TrammelSheetCanvas *sheet)
{
  PlanViews *self = g_new0 (PlanViews, 1);
  const char *shows[VIEW_SHOWS_COUNT + 1] = { NULL };
  static const char *const none[] = { NULL };

  *self = (PlanViews) { .sheet = sheet, .work = trammel_plan_work_of (sheet), .box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6) };
  for (int i = 0; i < VIEW_SHOWS_COUNT; i++)
    shows[i] = view_shows_name ((ViewShows) i);
  self->refreshing = true;
  self->caption = views_caption (self, _("View"));
  self->which = views_drop_down (self, none, _("View in Hand"), G_CALLBACK (views_chosen));
  self->next = views_caption (self, _("Next view"));
  self->shows = views_drop_down (self, shows, _("What the Next View Shows"), G_CALLBACK (views_shows_chosen));
  self->refreshing = false;
  views_add_buttons (self);
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
  bool there, chosen;
  PlanView shown;

  if (plan == NULL)
    return;
  shown = plan_view_shown (self->sheet, &there);
  /* Between views the sheet itself is in hand, unless one is being added. */
  chosen = there || (plan->view_count > 0 && !trammel_plan_work_adds_view (self->work));
  self->refreshing = true;
  views_list (self, plan);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->which), in_hand != NULL ? (guint) (in_hand - plan->views) + 1 : 0);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->shows), shown.shows);
  gtk_widget_set_visible (self->caption, chosen);
  gtk_widget_set_visible (self->which, chosen);
  gtk_widget_set_visible (self->next, !there);
  gtk_widget_set_visible (self->shows, !there);
  gtk_widget_set_visible (self->add, there);
  /* Where nobody has said yet where it stands this is the next thing to do, and not to be looked for. */
  gtk_widget_set_visible (self->place, there && shown.for_now && trammel_plan_work_places (self->work) == NULL
                                       && plan_view_can_be_placed (self->sheet));
  plan_view_details_refresh (self->details);
  self->refreshing = false;
}
