#include "trammel-config.h"
#include "app/panel.h"
#include <glib/gi18n-lib.h>
#include "app/answer.h"
#include "app/arrange-page.h"
#include "app/findings-page.h"
#include "app/first-frame.h"
#include "app/fit-offer.h"
#include "app/focus-scroller.h"
#include "app/lists-page.h"
#include "app/numbers.h"
#include "app/object-list.h"
#include "app/part-adder.h"
#include "app/selection-page.h"

struct _TrammelPanel {
  GtkWidget parent;
  TrammelSession *session;
  TrammelPlanStore *plans;      /* NULL: none are known of */
  GtkWidget *column;
  GtkWidget *answer, *switcher, *stack, *foot;
  GtkWidget *selection_button, *findings_button, *lists_button, *badge;
  GtkWidget *page;             /* what scrolls: the selection's rows and the list, empty until needed */
  GtkWidget *fit;              /* offered while there are no parts */
  GtkWidget *selection, *findings, *lists, *numbers, *arrange;      /* NULL until needed */
};

G_DEFINE_FINAL_TYPE (TrammelPanel, trammel_panel, GTK_TYPE_WIDGET)

static guint part_chosen_signal;

/* What the badge says in words; what needs a change comes before what is to be looked at. A new string. */
static char *
panel_findings_name (FindingsCount count)
{
  if (count.to_change > 0)
    return g_strdup_printf (ngettext ("Findings, %u needs a change", "Findings, %u need a change", count.to_change), count.to_change);
  if (count.to_look_at > 0)
    return g_strdup_printf (ngettext ("Findings, %u to look at", "Findings, %u to look at", count.to_look_at), count.to_look_at);
  return g_strdup (_("Findings"));
}

static void
panel_show_count (TrammelPanel *self)
{
  const FindingsCount count = trammel_findings_page_count (self->session);
  g_autofree char *figure = g_strdup_printf ("%u", count.to_change > 0 ? count.to_change : count.to_look_at);
  g_autofree char *name = panel_findings_name (count);

  gtk_label_set_text (GTK_LABEL (self->badge), figure);
  gtk_widget_set_visible (self->badge, count.to_change > 0 || count.to_look_at > 0);
  if (count.to_change > 0)
    gtk_widget_remove_css_class (self->badge, "quiet");
  else
    gtk_widget_add_css_class (self->badge, "quiet");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->findings_button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static GtkWidget *
panel_page (GtkWidget *content, const char *name)
{
  gtk_widget_add_css_class (content, "panel-page");
  return focus_scroller_new (content, name);
}

/* Pages are made when first asked for: at the start nobody waits for them. */

static void
panel_need_findings (TrammelPanel *self)
{
  if (self->findings != NULL)
    return;
  self->findings = trammel_findings_page_new (self->session);
  gtk_stack_add_named (GTK_STACK (self->stack), panel_page (self->findings, _("Findings")), "findings");
}

static void
panel_need_lists (TrammelPanel *self)
{
  if (self->lists != NULL)
    return;
  self->lists = lists_page_new (self->session);
  gtk_stack_add_named (GTK_STACK (self->stack), panel_page (self->lists, _("Lists")), "lists");
}

/* The first sight of the window is the aeroplane and the answer; the rows, hundreds of widgets, follow a frame later. */
static void
panel_need_selection (GtkWidget *panel)
{
  TrammelPanel *self = TRAMMEL_PANEL (panel);

  if (self->selection != NULL)
    return;
  self->selection = trammel_selection_page_new (self->session);
  if (self->plans != NULL)
    trammel_selection_page_set_plan_store (TRAMMEL_SELECTION_PAGE (self->selection), self->plans);
  gtk_box_append (GTK_BOX (self->page), self->selection);
  gtk_box_append (GTK_BOX (self->page), trammel_object_list_new (self->session));
}

static void
panel_switched (TrammelPanel *self)
{
  const gboolean findings = gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->findings_button));
  const gboolean lists = gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->lists_button));

  if (findings)
    panel_need_findings (self);
  if (lists)
    panel_need_lists (self);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), findings ? "findings" : lists ? "lists" : "selection");
}

static void
panel_show_selection (TrammelPanel *self)
{
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->selection_button), TRUE);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "selection");
  gtk_widget_set_visible (self->switcher, TRUE);
  gtk_widget_set_visible (self->foot, TRUE);
}

/* What takes the whole of the page until it is done. */
static void
panel_show_alone (TrammelPanel *self, const char *page)
{
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), page);
  gtk_widget_set_visible (self->switcher, FALSE);
  gtk_widget_set_visible (self->foot, FALSE);
}

static void
panel_leave_alone (TrammelPanel *self)
{
  if (self->numbers != NULL)
    trammel_numbers_leave (TRAMMEL_NUMBERS (self->numbers));
  if (self->arrange != NULL)
    trammel_arrange_page_leave (TRAMMEL_ARRANGE_PAGE (self->arrange));
}

void
trammel_panel_offer_fit (TrammelPanel *self)
{
  panel_show_selection (self);
  fit_offer_open (self->fit);
}

void
trammel_panel_arrange (TrammelPanel *self)
{
  if (self->arrange == NULL) {
    self->arrange = trammel_arrange_page_new (self->session);
    g_signal_connect_swapped (self->arrange, "done", G_CALLBACK (panel_show_selection), self);
    gtk_stack_add_named (GTK_STACK (self->stack), self->arrange, "arrange");
  }
  panel_leave_alone (self);
  panel_show_alone (self, "arrange");
  trammel_arrange_page_begin (TRAMMEL_ARRANGE_PAGE (self->arrange));
}

static void
panel_numbers_done (TrammelPanel *self)
{
  panel_show_selection (self);
}

static void
panel_need_numbers (TrammelPanel *self)
{
  if (self->numbers != NULL)
    return;
  self->numbers = trammel_numbers_new (self->session);
  g_signal_connect_swapped (self->numbers, "done", G_CALLBACK (panel_numbers_done), self);
  gtk_stack_add_named (GTK_STACK (self->stack), self->numbers, "numbers");
}

void
trammel_panel_start_from_numbers (TrammelPanel *self)
{
  panel_need_numbers (self);
  panel_leave_alone (self);
  panel_show_alone (self, "numbers");
  trammel_numbers_begin (TRAMMEL_NUMBERS (self->numbers));
}

/* Choosing something on the sheet gives up numbers that were not added: the two would speak of different things. It shows the fields of
 * what was chosen; who goes through the findings, one after the other, keeps them. */
static void
panel_selection_changed (TrammelPanel *self)
{
  GtkWidget *page = gtk_stack_get_child_by_name (GTK_STACK (self->stack), "selection");
  const char *shown = gtk_stack_get_visible_child_name (GTK_STACK (self->stack));

  /* What was chosen begins at the top of its page. */
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (page)), 0);
  if (g_strcmp0 (shown, "numbers") == 0) {
    trammel_numbers_leave (TRAMMEL_NUMBERS (self->numbers));
    panel_show_selection (self);
  } else if (g_strcmp0 (shown, "findings") == 0 && !selection_is_empty (trammel_session_selection (self->session))
             && !trammel_findings_page_is_choosing (TRAMMEL_FINDINGS_PAGE (self->findings)))
    panel_show_selection (self);
}

static void
panel_part_chosen (gpointer data, const Part *pattern)
{
  g_signal_emit (data, part_chosen_signal, 0, pattern);
}

static GtkWidget *
panel_switch (TrammelPanel *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0), *words = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->selection_button = gtk_toggle_button_new_with_label (_("Selection"));
  self->findings_button = gtk_toggle_button_new ();
  self->lists_button = gtk_toggle_button_new_with_label (_("Lists"));
  self->badge = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->badge, "badge");
  gtk_widget_set_valign (self->badge, GTK_ALIGN_CENTER);
  gtk_widget_set_halign (words, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (words), gtk_label_new (_("Findings")));
  gtk_box_append (GTK_BOX (words), self->badge);
  gtk_button_set_child (GTK_BUTTON (self->findings_button), words);
  gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->findings_button), GTK_TOGGLE_BUTTON (self->selection_button));
  gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->lists_button), GTK_TOGGLE_BUTTON (self->selection_button));
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->selection_button), TRUE);
  gtk_box_set_homogeneous (GTK_BOX (line), TRUE);
  gtk_widget_add_css_class (line, "panel-switch");
  gtk_box_append (GTK_BOX (line), self->selection_button);
  gtk_box_append (GTK_BOX (line), self->findings_button);
  gtk_box_append (GTK_BOX (line), self->lists_button);
  g_signal_connect_swapped (self->findings_button, "toggled", G_CALLBACK (panel_switched), self);
  g_signal_connect_swapped (self->lists_button, "toggled", G_CALLBACK (panel_switched), self);
  return line;
}

static GtkWidget *
panel_foot (TrammelPanel *self)
{
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8), *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *numbers = gtk_button_new_with_label (_("Add Outline…"));
  GtkWidget *parts = part_adder_new (self->session, panel_part_chosen, self);

  gtk_widget_set_tooltip_text (numbers, _("Add a wing, tail, fin or body from its measures"));
  g_signal_connect_swapped (numbers, "clicked", G_CALLBACK (trammel_panel_start_from_numbers), self);
  gtk_widget_set_hexpand (numbers, TRUE);
  gtk_widget_set_hexpand (parts, TRUE);
  gtk_widget_add_css_class (foot, "panel-foot");
  gtk_box_append (GTK_BOX (line), numbers);
  gtk_box_append (GTK_BOX (line), parts);
  gtk_box_append (GTK_BOX (foot), self->fit = fit_offer_new (self->session));
  gtk_box_append (GTK_BOX (foot), line);
  return foot;
}

static void
panel_edit_mass (TrammelPanel *self)
{
  panel_show_selection (self);
  panel_need_selection (GTK_WIDGET (self));
  trammel_selection_page_edit_mass (TRAMMEL_SELECTION_PAGE (self->selection));
}

static void
panel_fill (TrammelPanel *self)
{
  self->column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  self->answer = trammel_answer_new (self->session);
  g_signal_connect_swapped (self->answer, "mass-wanted", G_CALLBACK (panel_edit_mass), self);
  self->switcher = panel_switch (self);
  self->stack = gtk_stack_new ();
  self->page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);
  gtk_stack_add_named (GTK_STACK (self->stack), panel_page (self->page, _("Selection")), "selection");
  self->foot = panel_foot (self);
  gtk_box_append (GTK_BOX (self->column), self->answer);
  gtk_box_append (GTK_BOX (self->column), self->switcher);
  gtk_box_append (GTK_BOX (self->column), self->stack);
  gtk_box_append (GTK_BOX (self->column), self->foot);
  gtk_widget_set_parent (self->column, GTK_WIDGET (self));
}

static void
trammel_panel_dispose (GObject *object)
{
  TrammelPanel *self = TRAMMEL_PANEL (object);

  g_clear_pointer (&self->column, gtk_widget_unparent);
  g_clear_object (&self->plans);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_panel_parent_class)->dispose (object);
}

/* As wide as it was asked to be and no wider: long sentences wrap instead of taking room from the sheet. */
static void
trammel_panel_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                       int *minimum_baseline, int *natural_baseline)
{
  gtk_widget_measure (TRAMMEL_PANEL (widget)->column, orientation, for_size, minimum, natural, NULL, NULL);
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *natural = *minimum;
}

static void
trammel_panel_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  gtk_widget_allocate (TRAMMEL_PANEL (widget)->column, width, height, baseline, NULL);
}

static void
trammel_panel_class_init (TrammelPanelClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_panel_dispose;
  GTK_WIDGET_CLASS (klass)->measure = trammel_panel_measure;
  GTK_WIDGET_CLASS (klass)->size_allocate = trammel_panel_size_allocate;
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "panel");
  part_chosen_signal = g_signal_new ("part-chosen", TRAMMEL_TYPE_PANEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                           G_TYPE_NONE, 1, G_TYPE_POINTER);
}

static void
trammel_panel_init (TrammelPanel *self)
{
}

GtkWidget *
trammel_panel_new (TrammelSession *session)
{
  TrammelPanel *self = g_object_new (TRAMMEL_TYPE_PANEL, NULL);

  self->session = g_object_ref (session);
  panel_fill (self);
  gtk_widget_set_size_request (GTK_WIDGET (self), 332, -1);
  g_signal_connect_object (session, "changed", G_CALLBACK (panel_show_count), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (panel_selection_changed), self, G_CONNECT_SWAPPED);
  panel_show_count (self);
  first_frame_then (GTK_WIDGET (self), panel_need_selection);
  return GTK_WIDGET (self);
}

void
trammel_panel_set_plan_store (TrammelPanel *self, TrammelPlanStore *store)
{
  g_set_object (&self->plans, store);
  if (self->selection != NULL)
    trammel_selection_page_set_plan_store (TRAMMEL_SELECTION_PAGE (self->selection), store);
}

void
trammel_panel_edit_first (TrammelPanel *self, const char *text)
{
  panel_show_selection (self);
  panel_need_selection (GTK_WIDGET (self));
  trammel_selection_page_edit_first (TRAMMEL_SELECTION_PAGE (self->selection), text);
}

void
trammel_panel_set_low (TrammelPanel *self, bool low)
{
  trammel_answer_set_short (TRAMMEL_ANSWER (self->answer), low);
}

void
trammel_panel_read_answer (TrammelPanel *self)
{
  trammel_answer_read (TRAMMEL_ANSWER (self->answer));
}
