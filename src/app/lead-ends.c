#include "trammel-config.h"
#include "app/choice-list.h"
#include "app/lead-fields.h"
#include <glib/gi18n-lib.h>
#include "app/piece-controls.h"
#include "document/changes.h"
#include "document/part-class.h"
#include "figures/names.h"

/* The leg whose end a control chooses: LEG_FROM or LEG_TO. */
static LeadLeg
end_leg (GtkWidget *control)
{
  return (LeadLeg) GPOINTER_TO_INT (g_object_get_data (G_OBJECT (control), "leg"));
}

static const char *
end_of (const Lead *lead, LeadLeg leg)
{
  return leg == LEG_TO ? lead->to : lead->from;
}

/* What nothing is plugged into goes between servos and receivers, but has no lead. */
static bool
has_plug (const Part *part)
{
  return part_class_keeps_clear (part->class_name) && g_strcmp0 (part->class_name, "ballast") != 0
         && g_strcmp0 (part->class_name, "pilot") != 0;
}

/* Two servos are what a two-into-one lead joins. */
static bool
may_be_end (const Lead *lead, LeadLeg leg, const Part *part)
{
  if (part->piece.id == NULL)
    return false;
  if (g_str_equal (part->piece.id, end_of (lead, leg)))
    return true;
  if (g_str_equal (part->piece.id, end_of (lead, leg == LEG_TO ? LEG_FROM : LEG_TO)) || g_strcmp0 (part->piece.id, lead->also) == 0)
    return false;
  if (lead_is_joined (lead))
    return (leg == LEG_FROM) == (g_strcmp0 (part->class_name, "servo") == 0) && has_plug (part);
  return has_plug (part);
}

/* In the document's order, of const Part. */
static GPtrArray *
end_choices (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  GPtrArray *all = g_ptr_array_new ();

  for (size_t i = 0; lead != NULL && i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (may_be_end (lead, leg, aeroplane_part (aeroplane, i)))
      g_ptr_array_add (all, (Part *) aeroplane_part (aeroplane, i));
  return all;
}

static void
end_show (GtkWidget *control, TrammelSession *session)
{
  const Lead *lead = lead_selected (session);
  GtkStringList *names = GTK_STRING_LIST (gtk_drop_down_get_model (GTK_DROP_DOWN (control)));
  g_autoptr (GPtrArray) all = end_choices (trammel_session_aeroplane (session), lead, end_leg (control));
  guint chosen = GTK_INVALID_LIST_POSITION;

  gtk_string_list_splice (names, 0, g_list_model_get_n_items (G_LIST_MODEL (names)), NULL);
  for (guint i = 0; i < all->len; i++) {
    const Part *part = g_ptr_array_index (all, i);

    gtk_string_list_append (names, piece_name (&part->piece));
    if (g_str_equal (part->piece.id, end_of (lead, end_leg (control))))
      chosen = i;
  }
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), chosen);
}

static void
end_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const Lead *lead = session != NULL ? lead_selected (session) : NULL;
  const LeadLeg leg = end_leg (control);
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  g_autoptr (GPtrArray) all = lead != NULL ? end_choices (trammel_session_aeroplane (session), lead, leg) : NULL;
  const Part *part = all != NULL && chosen < all->len ? g_ptr_array_index (all, chosen) : NULL;
  Lead *next;

  if (part == NULL || g_str_equal (part->piece.id, end_of (lead, leg)))
    return;
  next = (Lead *) piece_dup (&lead->piece);
  char **end = leg == LEG_TO ? &next->to : &next->from;
  g_free (*end);
  *end = g_strdup (part->piece.id);
  trammel_session_do (session, change_lead (trammel_session_aeroplane (session), lead->piece.id, next),
                      leg == LEG_TO ? _("Change Where a Lead Ends") : _("Change Where a Lead Begins"));
}

GtkWidget *
lead_end_control (TrammelSession *session, LeadLeg leg)
{
  GtkWidget *control = choice_list_new (G_LIST_MODEL (gtk_string_list_new (NULL)));

  g_object_set_data (G_OBJECT (control), "leg", GINT_TO_POINTER (leg));
  piece_control_may_be_cut (GTK_DROP_DOWN (control));
  piece_control_adopt (control, session, end_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (end_chosen), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  leg == LEG_TO ? C_("a lead", "To") : C_("a lead", "From"), -1);
  return control;
}
