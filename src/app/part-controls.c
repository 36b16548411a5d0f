#include "trammel-config.h"
#include "app/part-controls.h"
#include <glib/gi18n-lib.h>
#include "app/caption.h"
#include "app/choice-list.h"
#include "app/piece-controls.h"
#include "app/piece-edit.h"
#include "document/changes.h"
#include "figures/room-refusal.h"

static void
part_do (TrammelSession *session, Part *takes, const char *step)
{
  const Part *part = trammel_session_selected_part (session);

  trammel_session_do (session, aeroplane_with_replaced (trammel_session_aeroplane (session), &part->piece, &takes->piece), step);
}

static bool
is_one_of_several (const Aeroplane *aeroplane, const Piece *piece)
{
  const bool surface = piece->kind == PIECE_SURFACE;
  size_t alike = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, piece->kind); i++)
    alike += !surface || aeroplane_surface (aeroplane, i)->role == ((const Surface *) piece)->role;
  return alike > 1;
}

char *
part_room_name (const Aeroplane *aeroplane, const Piece *room)
{
  if (room->kind == PIECE_BAY)
    return g_strdup (room->id);
  if (is_one_of_several (aeroplane, room))
    return g_strdup_printf ("%s %s", piece_edit_name (aeroplane, room->id), room->id);
  return g_strdup (piece_edit_name (aeroplane, room->id));
}

/* Aboard, left out, still to come */

typedef enum { FLIGHT_ABOARD, FLIGHT_LEFT_OUT, FLIGHT_TO_COME } Flight;

static Flight
flight_of (const Part *part)
{
  return !part->aboard ? FLIGHT_LEFT_OUT : part->to_come ? FLIGHT_TO_COME : FLIGHT_ABOARD;
}

static void
aboard_show (GtkWidget *control, TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);

  if (part != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (control), flight_of (part));
}

static void
aboard_chosen (GtkWidget *control)
{
  const char *const steps[] = { [FLIGHT_ABOARD] = _("Take Aboard"), [FLIGHT_LEFT_OUT] = _("Leave Out"),
                                [FLIGHT_TO_COME] = _("Still to Come") };
  TrammelSession *session = piece_control_choosing (control);
  const Part *part = session != NULL ? trammel_session_selected_part (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  Part *next;

  if (part == NULL || chosen > FLIGHT_TO_COME || flight_of (part) == chosen)
    return;
  next = (Part *) piece_dup (&part->piece);
  next->aboard = chosen != FLIGHT_LEFT_OUT;
  next->to_come = chosen == FLIGHT_TO_COME;
  part_do (session, next, steps[chosen]);
}

static void
name_control (GtkWidget *control, const char *label)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

GtkWidget *
part_aboard_control (TrammelSession *session)
{
  GtkWidget *control = choice_list_new_of_words ((const char *const[]) { _("Aboard"), _("Left Out"), _("Still to Come"), NULL });

  piece_control_adopt (control, session, aboard_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (aboard_chosen), NULL);
  name_control (control, _("In Flight"));
  return control;
}

/* What it is fixed to */

/* All that a part may be fixed to, in the document's order, of const Piece. */
static GPtrArray *
carriers (const Aeroplane *aeroplane)
{
  GPtrArray *all = g_ptr_array_new ();

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++) {
    const Piece *piece = aeroplane_piece (aeroplane, i);

    if (piece->id != NULL && (piece->kind == PIECE_SURFACE || piece->kind == PIECE_BODY))
      g_ptr_array_add (all, (Piece *) piece);
  }
  return all;
}

static void
of_show (GtkWidget *control, TrammelSession *session)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Part *part = trammel_session_selected_part (session);
  g_autoptr (GPtrArray) all = carriers (aeroplane);
  GtkStringList *names = GTK_STRING_LIST (gtk_drop_down_get_model (GTK_DROP_DOWN (control)));
  guint chosen = 0;

  gtk_string_list_splice (names, 0, g_list_model_get_n_items (G_LIST_MODEL (names)), (const char *const[]) { _("Nothing"), NULL });
  for (guint i = 0; i < all->len; i++) {
    const Piece *piece = g_ptr_array_index (all, i);

    gtk_string_list_take (names, part_room_name (aeroplane, piece));
    if (part != NULL && g_strcmp0 (part->of, piece->id) == 0)
      chosen = i + 1;
  }
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), chosen);
}

static void
of_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const Part *part = session != NULL ? trammel_session_selected_part (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  g_autoptr (GPtrArray) all = session != NULL ? carriers (trammel_session_aeroplane (session)) : NULL;
  const Piece *carrier = all != NULL && chosen > 0 && chosen <= all->len ? g_ptr_array_index (all, chosen - 1) : NULL;
  const char *of = carrier != NULL ? carrier->id : NULL;
  Part *next;

  if (part == NULL || chosen == GTK_INVALID_LIST_POSITION || g_strcmp0 (part->of, of) == 0)
    return;
  next = (Part *) piece_dup (&part->piece);
  g_free (next->of);
  next->of = g_strdup (of);
  part_do (session, next, _("Change What It Is Fixed To"));
}

GtkWidget *
part_of_control (TrammelSession *session)
{
  GtkWidget *control = choice_list_new (G_LIST_MODEL (gtk_string_list_new (NULL)));

  piece_control_adopt (control, session, of_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (of_chosen), NULL);
  name_control (control, _("Fixed to"));
  return control;
}

/* Where it may be */

static bool
is_room (const Piece *piece)
{
  return piece->id != NULL && (piece->kind == PIECE_BAY
                               || (piece->kind == PIECE_SURFACE && surface_is_horizontal ((const Surface *) piece)));
}

static void
room_ticked (GtkCheckButton *check, GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const Part *part = session != NULL ? trammel_session_selected_part (session) : NULL;

  if (part != NULL)
    trammel_session_do (session, change_part_room (trammel_session_aeroplane (session), part->piece.id, gtk_widget_get_name (GTK_WIDGET (check)),
                                                   gtk_check_button_get_active (check)), _("Change Where It May Be"));
}

/* Under a room's name, and only where it is no room for the part. */
static GtkWidget *
room_words_new (void)
{
  GtkWidget *words = caption_new (NULL);

  gtk_widget_add_css_class (words, "room-words");
  gtk_widget_set_visible (words, FALSE);
  return words;
}

static void
rooms_fill (GtkWidget *control, const Aeroplane *aeroplane)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (control)) != NULL)
    gtk_box_remove (GTK_BOX (control), child);
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++) {
    const Piece *piece = aeroplane_piece (aeroplane, i);
    g_autofree char *name = is_room (piece) ? part_room_name (aeroplane, piece) : NULL;
    GtkWidget *check = name != NULL ? gtk_check_button_new_with_label (name) : NULL;

    if (check == NULL)
      continue;
    gtk_widget_set_name (check, piece->id);
    g_signal_connect (check, "toggled", G_CALLBACK (room_ticked), control);
    gtk_box_append (GTK_BOX (control), check);
    gtk_box_append (GTK_BOX (control), room_words_new ());
  }
}

/* Which rooms there are, so that the checks are made anew only when that changes. */
static char *
rooms_key (const Aeroplane *aeroplane)
{
  GString *key = g_string_new (NULL);

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    if (is_room (aeroplane_piece (aeroplane, i)))
      g_string_append_printf (key, "%s ", aeroplane_piece (aeroplane, i)->id);
  return g_string_free (key, FALSE);
}

/* What is ticked can be unticked, whatever is said of it. */
static void
room_tell (GtkWidget *check, const char *refusal)
{
  GtkWidget *words = gtk_widget_get_next_sibling (check);

  gtk_widget_set_sensitive (check, refusal == NULL || gtk_check_button_get_active (GTK_CHECK_BUTTON (check)));
  gtk_label_set_text (GTK_LABEL (words), refusal != NULL ? refusal : "");
  gtk_widget_set_visible (words, refusal != NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (check), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, refusal != NULL ? refusal : "", -1);
}

/* Of what is settled: bodies are looked into, which is too much for each frame of a drag. */
static void
rooms_tell (GtkWidget *control, TrammelSession *session)
{
  const Aeroplane *settled = trammel_session_settled (session);
  const Part *part = aeroplane_part_by_id (settled, selection_single (trammel_session_selection (session)));
  const Units units = trammel_session_units (session);
  g_autofree char *key = g_strdup_printf ("%p %p %d", (const void *) settled, (const void *) part, units.length);

  if (part == NULL || g_strcmp0 (key, g_object_get_data (G_OBJECT (control), "told")) == 0)
    return;
  for (GtkWidget *check = gtk_widget_get_first_child (control); check != NULL;
       check = gtk_widget_get_next_sibling (gtk_widget_get_next_sibling (check))) {
    g_autofree char *refusal = room_refusal (settled, part, gtk_widget_get_name (check), units);

    room_tell (check, refusal);
  }
  g_object_set_data_full (G_OBJECT (control), "told", g_steal_pointer (&key), g_free);
  g_object_set_data_full (G_OBJECT (control), "told-of", aeroplane_ref (settled), (GDestroyNotify) aeroplane_unref);
}

static void
rooms_show (GtkWidget *control, TrammelSession *session)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Part *part = trammel_session_selected_part (session);
  g_autofree char *key = rooms_key (aeroplane);

  if (g_strcmp0 (key, g_object_get_data (G_OBJECT (control), "rooms")) != 0) {
    rooms_fill (control, aeroplane);
    g_object_set_data_full (G_OBJECT (control), "rooms", g_steal_pointer (&key), g_free);
    g_object_set_data (G_OBJECT (control), "told", NULL);
  }
  for (GtkWidget *check = gtk_widget_get_first_child (control); part != NULL && check != NULL;
       check = gtk_widget_get_next_sibling (gtk_widget_get_next_sibling (check)))
    gtk_check_button_set_active (GTK_CHECK_BUTTON (check), part_may_be_in (part, gtk_widget_get_name (check)));
  rooms_tell (control, session);
}

GtkWidget *
part_rooms_control (TrammelSession *session)
{
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);

  gtk_widget_add_css_class (control, "field");
  piece_control_adopt (control, session, rooms_show);
  return control;
}
