#include "trammel-config.h"
#include "app/traced-group.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/comparing.h"
#include "app/group.h"
#include "app/trace-words.h"
#include "app/traced.h"

typedef struct {
  TrammelSession *session;
  GtkWidget *group, *sentence, *tolerance, *flat, *flat_label;
  GtkWidget *rows[3];           /* that the sentence, the tolerance and the choice stand in */
  bool showing;
} TracedGroup;

static const char key[] = "traced-group";

static double
traced_dihedral (const Surface *surface)
{
  return surface != NULL && surface_is_horizontal (surface) ? surface->dihedral : 0;
}

/* What may be another line is not praised for keeping to it. */
static bool
is_doubtful (const Surface *surface, const Body *body, ViewShows shows)
{
  if (surface != NULL)
    return surface->passed.by > 0;
  return body != NULL && (shows == VIEW_BODY_SIDE ? body->side_passed : body->passed).by > 0;
}

static void
group_show_comparison (TracedGroup *self)
{
  TrammelComparing *comparing = trammel_comparing_of (self->session);
  ViewShows shows;
  const Point worst = trammel_comparing_worst (comparing, &shows);
  const bool doubtful = is_doubtful (trammel_session_selected_surface (self->session), trammel_session_selected_body (self->session), shows);
  const Units units = trammel_session_units (self->session);
  g_autofree char *text = trace_words_compared (units, doubtful ? NULL : trammel_comparing_result (comparing), shows, worst);

  gtk_label_set_label (GTK_LABEL (self->sentence), text != NULL ? text : "");
  gtk_widget_set_visible (self->rows[0], text != NULL);
}

/* A body has two outlines, and this is one's. */
static const char *
tolerance_label (const TraceOrder *order)
{
  if (order != NULL && order->ground->shows == VIEW_BODY_TOP)
    return _("Tolerance from above");
  return order != NULL && order->ground->shows == VIEW_BODY_SIDE ? _("Tolerance from the side") : _("Tolerance");
}

static void
group_show_tolerance (TracedGroup *self)
{
  TrammelTraced *traced = trammel_traced_of (self->session);
  const char *label = tolerance_label (trammel_traced_order (traced));
  g_autofree char *tolerance = units_length_exact (trammel_session_units (self->session), round (trammel_traced_tolerance (traced) * 1000) / 1000);

  if (!gtk_widget_has_focus (GTK_WIDGET (gtk_editable_get_delegate (GTK_EDITABLE (self->tolerance)))))
    gtk_editable_set_text (GTK_EDITABLE (self->tolerance), tolerance);
  gtk_label_set_label (GTK_LABEL (gtk_widget_get_prev_sibling (self->tolerance)), label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->tolerance), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

static void
group_show (TracedGroup *self)
{
  const Surface *surface = trammel_session_selected_surface (self->session);
  const Body *body = trammel_session_selected_body (self->session);
  TrammelTraced *traced = trammel_traced_of (self->session);
  const bool fresh = trammel_traced_is_fresh (traced, surface != NULL ? &surface->piece : body != NULL ? &body->piece : NULL);
  const bool bent = fresh && traced_dihedral (surface) != 0;

  group_show_comparison (self);
  self->showing = true;
  group_show_tolerance (self);
  gtk_switch_set_active (GTK_SWITCH (self->flat), trammel_traced_is_flat (traced));
  if (bent) {
    g_autofree char *angle = units_angle (traced_dihedral (surface));
    /* Translators: an angle; whether a wing was drawn lying flat on the table, so that it is wider on paper than in the air. */
    g_autofree char *text = g_strdup_printf (_("Drawn flat: shorten by the dihedral of %s"), angle);

    gtk_label_set_label (GTK_LABEL (self->flat_label), text);
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->flat), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
  }
  self->showing = false;
  gtk_widget_set_visible (self->rows[1], fresh);
  gtk_widget_set_visible (self->rows[2], bent);
  gtk_widget_set_visible (self->group, fresh || gtk_widget_get_visible (self->rows[0]));
}

static void
tolerance_entered (TracedGroup *self)
{
  TrammelTraced *traced = trammel_traced_of (self->session);
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->tolerance));
  double mm;

  if (units_parse_length (trammel_session_units (self->session), text, &mm, NULL) && mm >= 0.01 && mm <= 5) {
    gtk_widget_remove_css_class (self->tolerance, "error");
    if (fabs (mm - trammel_traced_tolerance (traced)) > 1e-4)
      trammel_traced_set_tolerance (traced, mm);
  } else
    gtk_widget_add_css_class (self->tolerance, "error");
}

static void
flat_chosen (TracedGroup *self)
{
  if (!self->showing)
    trammel_traced_set_flat (trammel_traced_of (self->session), gtk_switch_get_active (GTK_SWITCH (self->flat)));
}

static GtkWidget *
row_of (GtkWidget *control)
{
  return gtk_widget_get_ancestor (control, GTK_TYPE_LIST_BOX_ROW);
}

static GtkWidget *
wrapped_label (void)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  return label;
}

static void
group_add_comparison (TracedGroup *self)
{
  self->sentence = wrapped_label ();
  gtk_widget_set_margin_top (self->sentence, 9);
  gtk_widget_set_margin_bottom (self->sentence, 9);
  gtk_widget_set_margin_start (self->sentence, 12);
  gtk_widget_set_margin_end (self->sentence, 12);
  trammel_group_add (TRAMMEL_GROUP (self->group), self->sentence);
  self->rows[0] = row_of (self->sentence);
}

static void
group_add_tolerance (TracedGroup *self)
{
  self->tolerance = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->tolerance), 6);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->tolerance), 6);
  gtk_entry_set_alignment (GTK_ENTRY (self->tolerance), 1);
  gtk_widget_set_tooltip_text (self->tolerance, _("How near the curves keep to the line as it was followed, 0.01 to 5 mm."));
  g_signal_connect_swapped (self->tolerance, "activate", G_CALLBACK (tolerance_entered), self);
  trammel_group_add_control (TRAMMEL_GROUP (self->group), _("Tolerance"), self->tolerance);
  self->rows[1] = row_of (self->tolerance);
}

static void
group_add_flat (TracedGroup *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  self->flat_label = wrapped_label ();
  self->flat = gtk_switch_new ();
  gtk_widget_set_valign (self->flat, GTK_ALIGN_CENTER);
  gtk_widget_set_margin_start (box, 12);
  gtk_widget_set_margin_end (box, 12);
  gtk_widget_set_margin_top (box, 9);
  gtk_widget_set_margin_bottom (box, 9);
  gtk_box_append (GTK_BOX (box), self->flat_label);
  gtk_box_append (GTK_BOX (box), self->flat);
  g_signal_connect_swapped (self->flat, "notify::active", G_CALLBACK (flat_chosen), self);
  trammel_group_add (TRAMMEL_GROUP (self->group), box);
  self->rows[2] = row_of (box);
}

static void
group_follow (TracedGroup *self, gpointer source)
{
  g_signal_connect_object (source, "changed", G_CALLBACK (traced_group_refresh), self->group, G_CONNECT_SWAPPED);
}

void
traced_group_refresh (GtkWidget *group)
{
  group_show (g_object_get_data (G_OBJECT (group), key));
}

GtkWidget *
traced_group_new (TrammelSession *session)
{
  TracedGroup *self = g_new0 (TracedGroup, 1);

  self->session = session;
  self->group = trammel_group_new (_("Printed Line"));
  g_object_set_data_full (G_OBJECT (self->group), key, self, g_free);
  group_add_comparison (self);
  group_add_tolerance (self);
  group_add_flat (self);
  group_follow (self, trammel_traced_of (session));
  group_follow (self, trammel_comparing_of (session));
  group_follow (self, session);
  group_show (self);
  return self->group;
}
