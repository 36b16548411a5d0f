#include "trammel-config.h"
#include "app/arrange-page.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/arrange-rows.h"
#include "app/arrange-work.h"
#include "app/focus-scroller.h"
#include "app/group.h"
#include "figures/part-places.h"

struct _TrammelArrangePage {
  GtkBox parent;
  TrammelSession *session;
  GtkWidget *movers, *offers, *helps;    /* groups */
  GtkWidget *ballast;                    /* whether it may be added */
  GtkWidget *progress, *progress_line, *complaint, *next, *use;
  GHashTable *still;                     /* ids of parts that were unticked */
  ArrangeWork *work;                     /* NULL: nothing is being looked for, nothing was found */
  const ArrangeResult *result;           /* of the work; NULL while it goes on */
  ArrangeResult found;
  size_t shown;                          /* which offer */
  bool at_work;                          /* the page is open */
  bool ours;                             /* the change that is told is our own */
};

G_DEFINE_FINAL_TYPE (TrammelArrangePage, trammel_arrange_page, GTK_TYPE_BOX)

static guint done_signal;

static void
page_complain (TrammelArrangePage *self, const char *sentence)
{
  gtk_label_set_text (GTK_LABEL (self->complaint), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self->complaint, sentence != NULL);
}

static void
page_clear_rows (GtkWidget *group)
{
  GtkListBox *list = trammel_group_list (TRAMMEL_GROUP (group));

  for (GtkListBoxRow *row; (row = gtk_list_box_get_row_at_index (list, 0)) != NULL;)
    gtk_list_box_remove (list, GTK_WIDGET (row));
}

/* Nothing found, nothing looked for. */
static void
page_drop (TrammelArrangePage *self)
{
  g_clear_pointer (&self->work, arrange_work_free);
  self->result = NULL;
  page_clear_rows (self->offers);
  gtk_widget_set_visible (self->offers, FALSE);
  gtk_widget_set_visible (self->progress_line, FALSE);
  gtk_widget_set_sensitive (self->next, FALSE);
  gtk_widget_set_sensitive (self->use, FALSE);
  trammel_session_offer (self->session, NULL);
}

/* The offer that is shown */

static const Arrangement *
page_shown (TrammelArrangePage *self)
{
  return &self->result->answer->found.found[self->shown];
}

static bool
page_may_use (TrammelArrangePage *self)
{
  return page_shown (self)->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G || gtk_check_button_get_active (GTK_CHECK_BUTTON (self->ballast));
}

static void
page_show_offer (TrammelArrangePage *self)
{
  const Figures *then = self->result->offers[self->shown];
  const Units units = trammel_session_units (self->session);
  const size_t count = self->result->answer->found.count;
  /* Translators: which of several offers is shown, "Offer 1 of 3" */
  g_autofree char *which = g_strdup_printf (_("Offer %d of %d"), (int) self->shown + 1, (int) count);

  page_clear_rows (self->offers);
  trammel_group_set_remark (TRAMMEL_GROUP (self->offers), which);
  arrange_rows_add_difference (TRAMMEL_GROUP (self->offers), self->result->arranging, &self->result->answer->found, self->shown, units);
  arrange_rows_add (TRAMMEL_GROUP (self->offers), self->result->arranging, page_shown (self), self->result->answer->found.status,
                    trammel_session_figures (self->session), then, units);
  gtk_widget_set_visible (self->offers, TRUE);
  gtk_widget_set_sensitive (self->next, count > 1);
  gtk_widget_set_sensitive (self->use, page_may_use (self));
  page_complain (self, page_may_use (self) ? NULL : _("Without ballast none of them balances within the limits: tick Ballast, or let more parts move."));
  trammel_session_offer (self->session, figures_ref (then));
}

static void
page_show_limits (TrammelArrangePage *self)
{
  const ArrangingAnswer *answer = self->result->answer;
  g_autoptr (GString) text = g_string_new (NULL);

  if (answer->status != CORE_OK)
    g_string_append (text, arranging_fault_text (answer->status));
  else if (answer->found.status == ARRANGE_NOT_FOUND && answer->limit_count > 0)
    g_string_append (text, _("No arrangement was found whose leads reach."));
  else if (answer->found.status == ARRANGE_NOT_FOUND)
    g_string_append (text, _("No arrangement was found in the time. Let fewer parts move."));
  else
    g_string_append (text, _("No arrangement does."));
  for (size_t i = 0; i < answer->limit_count; i++) {
    g_autofree char *limit = arranging_limit_text (self->result->arranging, &answer->limits[i], trammel_session_units (self->session));

    g_string_append_printf (text, "\n%s", limit);
  }
  page_complain (self, text->str);
}

/* Looking for them */

static void
page_found (const ArrangeResult *result, gpointer page)
{
  TrammelArrangePage *self = page;

  self->found = *result;
  self->result = &self->found;
  self->shown = 0;
  gtk_widget_set_visible (self->progress_line, FALSE);
  if (result->answer->found.count > 0)
    page_show_offer (self);
  else
    page_show_limits (self);
}

static void
page_progress (double done, gpointer page)
{
  TrammelArrangePage *self = page;

  gtk_widget_set_visible (self->progress_line, TRUE);
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->progress), done);
}

static void
page_find (TrammelArrangePage *self)
{
  Arranging *arranging = NULL;
  ArrangingWhy why;

  page_drop (self);
  page_complain (self, NULL);
  g_autofree const char **still = (const char **) g_hash_table_get_keys_as_array (self->still, NULL);
  why = arranging_new (trammel_session_figures (self->session), still, &arranging);
  if (why != ARRANGING_CAN)
    page_complain (self, why == ARRANGING_NOTHING_MOVES && still[0] != NULL ? _("No part is ticked: tick one that may move.")
                                                                            : arranging_why_text (why));
  else
    self->work = arrange_work_new (arranging, page_found, page_progress, self);
}

static void
page_stop (TrammelArrangePage *self)
{
  page_drop (self);
  page_complain (self, _("Stopped. Tick or untick a part to look again."));
}

/* Which parts may move */

static void
page_mover_toggled (TrammelArrangePage *self, GtkCheckButton *check)
{
  const char *id = g_object_get_data (G_OBJECT (check), "id");

  if (gtk_check_button_get_active (check))
    g_hash_table_remove (self->still, id);
  else
    g_hash_table_add (self->still, g_strdup (id));
  page_find (self);
}

static void
page_add_mover (TrammelArrangePage *self, const Part *part)
{
  GtkWidget *check = arrange_rows_mover (trammel_session_aeroplane (self->session), part);

  g_object_set_data_full (G_OBJECT (check), "id", g_strdup (part->piece.id), g_free);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), !g_hash_table_contains (self->still, part->piece.id));
  g_signal_connect_swapped (check, "toggled", G_CALLBACK (page_mover_toggled), self);
  trammel_group_add (TRAMMEL_GROUP (self->movers), check);
}

static void
page_list_movers (TrammelArrangePage *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);

  page_clear_rows (self->movers);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (aeroplane_part (aeroplane, i)->aboard && part_is_movable (aeroplane_part (aeroplane, i)))
      page_add_mover (self, aeroplane_part (aeroplane, i));
}

/* What a single part does is told also where no arrangement does. */
static void
page_look (TrammelArrangePage *self)
{
  page_list_movers (self);
  page_clear_rows (self->helps);
  gtk_widget_set_visible (self->helps, arrange_rows_add_movers (TRAMMEL_GROUP (self->helps), trammel_session_figures (self->session),
                                                                trammel_session_units (self->session)) > 0);
  page_find (self);
}

void
trammel_arrange_page_begin (TrammelArrangePage *self)
{
  self->at_work = true;
  trammel_session_set_arranging (self->session, true);
  page_look (self);
  gtk_widget_child_focus (GTK_WIDGET (self), GTK_DIR_TAB_FORWARD);
}

void
trammel_arrange_page_leave (TrammelArrangePage *self)
{
  if (!self->at_work)
    return;
  self->at_work = false;
  trammel_session_set_arranging (self->session, false);
  g_hash_table_remove_all (self->still);
  page_drop (self);
}

/* What was found is of an aeroplane that is no more. */
static void
page_aeroplane_changed (TrammelArrangePage *self)
{
  if (self->at_work && !self->ours)
    page_look (self);
}

/* The buttons */

static void
page_next (TrammelArrangePage *self)
{
  self->shown = (self->shown + 1) % self->result->answer->found.count;
  page_show_offer (self);
}

static void
page_ballast_toggled (TrammelArrangePage *self)
{
  if (self->result != NULL && self->result->answer->found.count > 0)
    page_show_offer (self);
}

static void
page_use (TrammelArrangePage *self)
{
  Aeroplane *arranged = aeroplane_ref (self->result->offers[self->shown]->aeroplane);

  self->ours = true;
  trammel_arrange_page_leave (self);
  trammel_session_do (self->session, arranged, _("Arrange"));
  self->ours = false;
  g_signal_emit (self, done_signal, 0);
}

static void
page_cancel (TrammelArrangePage *self)
{
  trammel_arrange_page_leave (self);
  g_signal_emit (self, done_signal, 0);
}

static gboolean
page_key (TrammelArrangePage *self, guint key, guint code, GdkModifierType state)
{
  if (key != GDK_KEY_Escape)
    return FALSE;
  page_cancel (self);
  return TRUE;
}

static GtkWidget *
page_button (TrammelArrangePage *self, GtkWidget *line, const char *label, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);

  g_signal_connect_swapped (button, "clicked", clicked, self);
  gtk_widget_set_hexpand (button, TRUE);
  gtk_box_append (GTK_BOX (line), button);
  return button;
}

static GtkWidget *
page_progress_line (TrammelArrangePage *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *stop = gtk_button_new_with_mnemonic (_("_Stop"));

  self->progress = gtk_progress_bar_new ();
  gtk_widget_set_hexpand (self->progress, TRUE);
  gtk_widget_set_valign (self->progress, GTK_ALIGN_CENTER);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->progress), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Looking for arrangements"), -1);
  g_signal_connect_swapped (stop, "clicked", G_CALLBACK (page_stop), self);
  gtk_box_append (GTK_BOX (line), self->progress);
  gtk_box_append (GTK_BOX (line), stop);
  gtk_widget_set_visible (line, FALSE);
  return line;
}

static GtkWidget *
page_foot (TrammelArrangePage *self)
{
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6), *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  self->complaint = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->complaint), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->complaint), 0);
  gtk_widget_add_css_class (self->complaint, "field-complaint");
  self->progress_line = page_progress_line (self);
  page_button (self, line, _("_Cancel"), G_CALLBACK (page_cancel));
  self->next = page_button (self, line, _("_Next Best"), G_CALLBACK (page_next));
  self->use = page_button (self, line, _("_Use This"), G_CALLBACK (page_use));
  gtk_widget_add_css_class (self->use, "suggested-action");
  gtk_widget_add_css_class (foot, "panel-foot");
  gtk_box_append (GTK_BOX (foot), self->complaint);
  gtk_box_append (GTK_BOX (foot), self->progress_line);
  gtk_box_append (GTK_BOX (foot), line);
  return foot;
}

static void
trammel_arrange_page_dispose (GObject *object)
{
  TrammelArrangePage *self = TRAMMEL_ARRANGE_PAGE (object);

  g_clear_pointer (&self->work, arrange_work_free);
  g_clear_pointer (&self->still, g_hash_table_unref);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_arrange_page_parent_class)->dispose (object);
}

static void
trammel_arrange_page_class_init (TrammelArrangePageClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_arrange_page_dispose;
  done_signal = g_signal_new ("done", TRAMMEL_TYPE_ARRANGE_PAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_arrange_page_init (TrammelArrangePage *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  self->still = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
}

GtkWidget *
trammel_arrange_page_new (TrammelSession *session)
{
  TrammelArrangePage *self = g_object_new (TRAMMEL_TYPE_ARRANGE_PAGE, NULL);
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->session = g_object_ref (session);
  self->movers = trammel_group_new (_("May Move"));
  self->offers = trammel_group_new (_("Arrangement"));
  self->helps = trammel_group_new (_("What One Part Does"));
  self->ballast = gtk_check_button_new_with_mnemonic (_("_Ballast where nothing else helps"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->ballast), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Ballast where nothing else helps"), -1);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->ballast), TRUE);
  g_signal_connect_swapped (self->ballast, "toggled", G_CALLBACK (page_ballast_toggled), self);
  gtk_box_append (GTK_BOX (content), self->movers);
  gtk_box_append (GTK_BOX (content), self->ballast);
  gtk_box_append (GTK_BOX (content), self->offers);
  gtk_box_append (GTK_BOX (content), self->helps);
  gtk_widget_add_css_class (content, "panel-page");
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (page_key), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_box_append (GTK_BOX (self), focus_scroller_new (content, _("Arrange")));
  gtk_box_append (GTK_BOX (self), page_foot (self));
  g_signal_connect_object (session, "changed", G_CALLBACK (page_aeroplane_changed), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
