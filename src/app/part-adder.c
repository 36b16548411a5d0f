#include "trammel-config.h"
#include "app/part-adder.h"
#include <glib/gi18n-lib.h>
#include "app/part-list.h"
#include "app/window.h"
#include "document/changes.h"
#include "document/lead-joining.h"
#include "document/part-class.h"
#include "document/part-room.h"
#include "figures/cowl-fit.h"
#include "figures/names.h"

/* Where a class usually stands: a share of the way from the nose (0) to the wing's leading edge (1) and beyond (the wing's root chord is
 * the next whole step). Common practice, no source. */
static const struct { const char *word; double share; } places[] = {
  { "propeller",  0.00 }, { "spinner",  0.00 }, { "motor",      0.20 }, { "controller", 0.50 },
  { "battery",    0.75 }, { "ballast",  0.10 }, { "receiver",   1.35 }, { "servo",      1.55 },
  { "cowl",       0.20 }, { "canopy",   1.20 }, { "pilot",      1.25 }, { "undercarriage", 1.05 },
};

typedef struct { double nose, leading, trailing; } PartReach;

static PartReach
part_reach (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  PartReach room = { 0, 100, 200 };

  if (wing != NULL) {
    room.leading = outline_node (wing->outline, 0).x;
    room.trailing = outline_node (wing->outline, outline_node_count (wing->outline) - 1).x;
  }
  if (body != NULL && body->outline != NULL)
    room.nose = outline_bounds (body->outline).min.x;
  else
    room.nose = MIN (0, room.leading);
  return room;
}

static double
part_usual_x (const Aeroplane *aeroplane, const char *word)
{
  const PartReach room = part_reach (aeroplane);
  double share = 1.2;

  for (size_t i = 0; i < G_N_ELEMENTS (places); i++)
    if (g_str_equal (places[i].word, word))
      share = places[i].share;
  if (share <= 1)
    return round (room.nose + share * (room.leading - room.nose));
  return round (room.leading + (share - 1) * (room.trailing - room.leading));
}

Aeroplane *
part_adder_with (const Aeroplane *aeroplane, const Part *pattern, char **id)
{
  Part *part = (Part *) piece_dup (&pattern->piece);

  *id = aeroplane_free_id (aeroplane, part->class_name);
  g_free (part->piece.id);
  part->piece.id = g_strdup (*id);
  part->x = part_room_x (aeroplane, part, part_usual_x (aeroplane, part->class_name));
  if (part->kind == NULL && part_is_a (part, "cowl"))
    cowl_fit_nose (part, aeroplane);
  return aeroplane_with_added (aeroplane, &part->piece);
}

Aeroplane *
part_adder_at (const Aeroplane *aeroplane, const Part *pattern, Point place, char **id)
{
  g_autoptr (Aeroplane) added = part_adder_with (aeroplane, pattern, id);

  return change_part_place (added, *id, place.x, place.y, 0);
}

char *
part_adder_step (const Part *pattern)
{
  const PartClass *class = part_class_find (pattern->class_name);

  /* Translators: %s is a part or a class of parts: "Add Battery". */
  return g_strdup_printf (_("Add %s"), pattern->name != NULL ? pattern->name : class != NULL ? _(class->name) : _("Part"));
}

bool
part_adder_is_lead (const Part *pattern)
{
  return g_strcmp0 (pattern->kind, LEAD_TWO_INTO_ONE) == 0;
}

static char *
put_lead (TrammelSession *session, const Part *pattern, const Point *place)
{
  const Aeroplane *now = trammel_session_aeroplane (session);
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  g_autofree char *id = NULL, *step = part_adder_step (pattern);
  const Part *ends[LEG_COUNT];
  char *sentence;

  if (!lead_joining_ends (now, place, ends))
    return g_strdup (_("A two-into-one lead joins two servos to a receiver: add those first."));
  /* Translators: three parts' names */
  sentence = g_strdup_printf (_("It joins “%s” and “%s” to “%s”; the panel chooses another for the second."), piece_name (&ends[LEG_FROM]->piece),
                              piece_name (&ends[LEG_ALSO]->piece), piece_name (&ends[LEG_TO]->piece));
  trammel_session_do (session, leads_joined (now, catalogue, ends[LEG_FROM]->piece.id, ends[LEG_ALSO]->piece.id, ends[LEG_TO]->piece.id, &id),
                      step);
  trammel_session_select (session, selection_of (id));
  return sentence;
}

char *
part_adder_put (TrammelSession *session, const Part *pattern, const Point *place)
{
  const Aeroplane *now = trammel_session_aeroplane (session);
  g_autofree char *id = NULL, *step = part_adder_step (pattern);

  if (part_adder_is_lead (pattern))
    return put_lead (session, pattern, place);
  trammel_session_do (session, place != NULL ? part_adder_at (now, pattern, *place, &id) : part_adder_with (now, pattern, &id), step);
  trammel_session_select (session, selection_of (id));
  return NULL;
}

typedef struct {
  TrammelSession *session;
  void (*chosen) (gpointer data, const Part *pattern);
  gpointer data;
  GtkMenuButton *button;
} PartAdder;

static void
part_adder_free (gpointer data)
{
  PartAdder *adder = data;

  g_object_unref (adder->session);
  g_free (adder);
}

static void
part_adder_chosen (gpointer data, const Part *pattern)
{
  PartAdder *adder = data;
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (adder->button));
  g_autofree char *sentence = part_adder_put (adder->session, pattern, NULL);

  gtk_menu_button_popdown (adder->button);
  if (sentence != NULL && TRAMMEL_IS_WINDOW (root))
    trammel_window_toast (TRAMMEL_WINDOW (root), sentence, NULL, NULL);
  if (adder->chosen != NULL)
    adder->chosen (adder->data, pattern);
}

/* The list is made anew each time it opens: it speaks in the units of the moment, has what stands in the person's own catalogue by then,
 * and at the start nobody waits for it. */
static void
part_adder_open (GtkMenuButton *button, gpointer data)
{
  GtkWidget *popover = gtk_popover_new ();

  gtk_popover_set_child (GTK_POPOVER (popover), part_list_new (((PartAdder *) data)->session, part_adder_chosen, data));
  gtk_menu_button_set_popover (button, popover);
}

GtkWidget *
part_adder_new (TrammelSession *session, void (*chosen) (gpointer data, const Part *pattern), gpointer data)
{
  GtkWidget *button = gtk_menu_button_new ();
  PartAdder *adder = g_new0 (PartAdder, 1);

  *adder = (PartAdder) { g_object_ref (session), chosen, data, GTK_MENU_BUTTON (button) };
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), part_adder_open, adder, part_adder_free);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Add a Part"));
  return button;
}
