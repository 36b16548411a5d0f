#include "trammel-config.h"
#include "app/choice-list.h"
#include "app/lead-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "document/changes.h"
#include "document/lead-joining.h"
#include "figures/names.h"

static void
control_name (GtkWidget *control, const char *label)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

/* Unplugs */

static void
unplugs_show (GtkWidget *control, TrammelSession *session)
{
  const Lead *lead = lead_selected (session);

  if (lead != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (control), lead->unplugs);
}

static void
unplugs_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const Lead *lead = session != NULL ? lead_selected (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  Lead *next;

  if (lead == NULL || chosen >= UNPLUGS_COUNT || lead->unplugs == chosen)
    return;
  next = (Lead *) piece_dup (&lead->piece);
  next->unplugs = (LeadUnplugs) chosen;
  trammel_session_do (session, change_lead (trammel_session_aeroplane (session), lead->piece.id, next), _("Change Where It Unplugs"));
}

GtkWidget *
lead_unplugs_control (TrammelSession *session)
{
  GtkWidget *control = choice_list_new_of_words ((const char *const[]) { _("As Usual"), _("No"), _("Yes"), NULL });

  piece_control_adopt (control, session, unplugs_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (unplugs_chosen), NULL);
  control_name (control, _("Unplugs with the wing"));
  return control;
}

/* A second part */

/* All that may join in, in the document's order, of const Part: servos, and the one that does. */
static GPtrArray *
joiners (const Aeroplane *aeroplane, const Lead *lead)
{
  GPtrArray *all = g_ptr_array_new ();

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *part = aeroplane_part (aeroplane, i);
    const bool is_end = g_strcmp0 (part->piece.id, lead->from) == 0 || g_strcmp0 (part->piece.id, lead->to) == 0;

    if (!is_end && (g_strcmp0 (part->class_name, "servo") == 0 || g_strcmp0 (part->piece.id, lead->also) == 0))
      g_ptr_array_add (all, (Part *) part);
  }
  return all;
}

static void
also_show (GtkWidget *control, TrammelSession *session)
{
  const Lead *lead = lead_selected (session);
  GtkStringList *names = GTK_STRING_LIST (gtk_drop_down_get_model (GTK_DROP_DOWN (control)));
  g_autoptr (GPtrArray) all = lead != NULL ? joiners (trammel_session_aeroplane (session), lead) : g_ptr_array_new ();
  guint chosen = 0;

  gtk_string_list_splice (names, 0, g_list_model_get_n_items (G_LIST_MODEL (names)), (const char *const[]) { _("Nothing"), NULL });
  for (guint i = 0; i < all->len; i++) {
    const Part *part = g_ptr_array_index (all, i);

    gtk_string_list_append (names, piece_name (&part->piece));
    if (g_strcmp0 (lead->also, part->piece.id) == 0)
      chosen = i + 1;
  }
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), chosen);
}

/* A plain lead becomes a two-into-one lead; one that is such already has another part instead. */
static Aeroplane *
joined_with (const Aeroplane *now, const Lead *lead, const char *also)
{
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  g_autofree char *id = NULL;
  Lead *next;

  if (!lead_is_joined (lead))
    return leads_joined (now, catalogue, lead->from, also, lead->to, &id);
  next = (Lead *) piece_dup (&lead->piece);
  g_free (next->also);
  next->also = g_strdup (also);
  return change_lead (now, lead->piece.id, next);
}

static Aeroplane *
parted (const Aeroplane *now, const Lead *lead)
{
  Lead *next = (Lead *) piece_dup (&lead->piece);

  lead_become_plain (next, NULL);
  return change_lead (now, lead->piece.id, next);
}

static void
also_do (TrammelSession *session, const Lead *lead, const char *also)
{
  const Aeroplane *now = trammel_session_aeroplane (session);

  trammel_session_do (session, also != NULL ? joined_with (now, lead, also) : parted (now, lead),
                      also != NULL ? _("Join Two Leads") : _("Part Two Leads"));
}

static void
also_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const Lead *lead = session != NULL ? lead_selected (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  g_autoptr (GPtrArray) all = lead != NULL ? joiners (trammel_session_aeroplane (session), lead) : NULL;
  const Part *part = all != NULL && chosen > 0 && chosen <= all->len ? g_ptr_array_index (all, chosen - 1) : NULL;
  const char *also = part != NULL ? part->piece.id : NULL;

  if (lead != NULL && chosen != GTK_INVALID_LIST_POSITION && g_strcmp0 (lead->also, also) != 0)
    also_do (session, lead, also);
}

GtkWidget *
lead_also_control (TrammelSession *session)
{
  GtkWidget *control = choice_list_new (G_LIST_MODEL (gtk_string_list_new (NULL)));

  piece_control_may_be_cut (GTK_DROP_DOWN (control));
  piece_control_adopt (control, session, also_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (also_chosen), NULL);
  control_name (control, _("Also from"));
  return control;
}
