#include "trammel-config.h"
#include "app/piece-controls.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/choice-list.h"
#include "app/node-fields.h"
#include "app/rail-picture.h"
#include "app/wrapped-button.h"
#include "document/changes.h"
#include "document/part-class.h"
#include "figures/usual-whole.h"

/* Each control carries the session and its own way to show the value; setting it to show must not count as a choice. */
typedef struct {
  TrammelSession *session;
  void (*show) (GtkWidget *control, TrammelSession *session);
  bool showing;
} ControlState;

static void
control_state_free (gpointer data)
{
  ControlState *state = data;

  g_object_unref (state->session);
  g_free (state);
}

static ControlState *
control_state (GtkWidget *control)
{
  return g_object_get_data (G_OBJECT (control), "trammel-control");
}

void
piece_control_adopt (GtkWidget *control, TrammelSession *session, void (*show) (GtkWidget *, TrammelSession *))
{
  ControlState *state = g_new0 (ControlState, 1);

  state->session = g_object_ref (session);
  state->show = show;
  g_object_set_data_full (G_OBJECT (control), "trammel-control", state, control_state_free);
  piece_control_refresh (control);
}

GtkWidget *
piece_choice_control (TrammelSession *session, GtkStringList *takes, const char *label, void (*show) (GtkWidget *, TrammelSession *),
                      void (*chosen) (GtkWidget *))
{
  GtkWidget *control = choice_list_new (G_LIST_MODEL (takes));

  piece_control_adopt (control, session, show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (chosen), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  return control;
}

GtkWidget *
piece_words_control (TrammelSession *session, void (*show) (GtkWidget *, TrammelSession *))
{
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *words = gtk_label_new (NULL);

  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_box_append (GTK_BOX (control), words);
  gtk_widget_add_css_class (control, "field");
  piece_control_adopt (control, session, show);
  return control;
}

TrammelSession *
piece_control_choosing (GtkWidget *control)
{
  const ControlState *state = control_state (control);

  return state == NULL || state->showing ? NULL : state->session;
}

void
piece_control_refresh (GtkWidget *control)
{
  ControlState *state = control_state (control);

  if (state == NULL || state->show == NULL)
    return;
  state->showing = true;
  state->show (control, state->session);
  state->showing = false;
}

/* One choice among a surface's: where it stands in the surface, how many there are and what they are called. */
typedef struct {
  const char *label, *step;     /* marked for translation */
  size_t at;                    /* offset of the enumeration in Surface */
  unsigned count;
  const char *(*name) (unsigned choice);
  void (*settle) (Surface *next);       /* what else follows from a choice; may be NULL */
} SurfaceChoice;

static const char *
role_name (unsigned choice)
{
  return surface_role_name ((SurfaceRole) choice);
}

static const char *
section_name (unsigned choice)
{
  return section_class_name ((SectionClass) choice);
}

/* What was typed against another class is of no use for this one. */
static void
section_settle (Surface *next)
{
  next->section_slope = next->section_slope_sigma = NAN;
  next->lift_max = next->lift_max_sigma = NAN;
}

static const SurfaceChoice role_choice = { N_("What it is"), N_("Change What It Is"), offsetof (Surface, role), ROLE_COUNT, role_name, NULL };
static const SurfaceChoice section_choice = { N_("Class"), N_("Change Section"), offsetof (Surface, section), SECTION_CLASSES, section_name,
                                              section_settle };

static unsigned *
choice_in (const SurfaceChoice *choice, const Surface *surface)
{
  return (unsigned *) (void *) ((char *) surface + choice->at);
}

static void
choice_show (GtkWidget *control, TrammelSession *session)
{
  const SurfaceChoice *choice = g_object_get_data (G_OBJECT (control), "trammel-choice");
  const Surface *surface = trammel_session_selected_surface (session);

  if (surface != NULL)
    gtk_drop_down_set_selected (GTK_DROP_DOWN (control), *choice_in (choice, surface));
}

static void
choice_made (GtkWidget *control)
{
  const SurfaceChoice *choice = g_object_get_data (G_OBJECT (control), "trammel-choice");
  const unsigned made = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  ControlState *state = control_state (control);
  const Surface *surface;
  Surface *next;

  if (state == NULL || state->showing)
    return;
  surface = trammel_session_selected_surface (state->session);
  if (surface == NULL || *choice_in (choice, surface) == made)
    return;
  next = (Surface *) piece_dup (&surface->piece);
  *choice_in (choice, next) = made;
  if (choice->settle != NULL)
    choice->settle (next);
  trammel_session_do (state->session,
                      aeroplane_with_replaced (trammel_session_aeroplane (state->session), &surface->piece, &next->piece), _(choice->step));
}

static GtkWidget *
surface_choice_control (TrammelSession *session, const SurfaceChoice *choice)
{
  GtkStringList *names = gtk_string_list_new (NULL);
  GtkWidget *control;

  for (unsigned i = 0; i < choice->count; i++)
    gtk_string_list_append (names, choice->name (i));
  control = choice_list_new (G_LIST_MODEL (names));
  g_object_set_data (G_OBJECT (control), "trammel-choice", (gpointer) choice);
  piece_control_adopt (control, session, choice_show);
  g_signal_connect (control, "notify::selected", G_CALLBACK (choice_made), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (control)), GTK_ACCESSIBLE_PROPERTY_LABEL, _(choice->label), -1);
  return control;
}

GtkWidget *
surface_role_control (TrammelSession *session)
{
  return surface_choice_control (session, &role_choice);
}

GtkWidget *
surface_section_control (TrammelSession *session)
{
  return surface_choice_control (session, &section_choice);
}

/* Which class a part is of; a class we do not know stays, shown as nothing chosen. */
static void
class_show (GtkWidget *control, TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  const PartClass *class = part != NULL ? part_class_find (part->class_name) : NULL;

  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), class != NULL ? (guint) (class - part_classes ()) : GTK_INVALID_LIST_POSITION);
}

static void
class_chosen (GtkWidget *control)
{
  ControlState *state = control_state (control);
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  const Part *part;
  Part *next;

  if (state == NULL || state->showing || chosen == GTK_INVALID_LIST_POSITION)
    return;
  part = trammel_session_selected_part (state->session);
  if (part == NULL || g_strcmp0 (part->class_name, part_classes ()[chosen].word) == 0)
    return;
  next = (Part *) piece_dup (&part->piece);
  g_free (next->class_name);
  next->class_name = g_strdup (part_classes ()[chosen].word);
  trammel_session_do (state->session, aeroplane_with_replaced (trammel_session_aeroplane (state->session), &part->piece, &next->piece),
                      _("Change Class"));
}

GtkWidget *
part_class_control (TrammelSession *session)
{
  GtkStringList *names = gtk_string_list_new (NULL);

  for (const PartClass *class = part_classes (); class->word != NULL; class++)
    gtk_string_list_append (names, _(class->name));
  return piece_choice_control (session, names, _("Class"), class_show, class_chosen);
}

/* 30 mm to both sides is a beginning that a hand can see and pull. */
static void
rail_add (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);

  if (part != NULL)
    trammel_session_do (session, change_part_rail (trammel_session_aeroplane (session), part->piece.id, part->x - 30, part->x + 30),
                        _("Add Rail"));
}

static void
rail_remove (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  Part *next;

  if (part == NULL)
    return;
  next = (Part *) piece_dup (&part->piece);
  next->has_rail = false;
  trammel_session_do (session, aeroplane_with_replaced (trammel_session_aeroplane (session), &part->piece, &next->piece), _("Remove Rail"));
}

static void
rail_move_to_aim (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  const Solution *solution = part != NULL ? figures_solution (trammel_session_figures (session), part->piece.id) : NULL;

  trammel_session_do (session, part_at_advice (trammel_session_figures (session), solution), _("Move to Aim"));
}

static void
rail_show (GtkWidget *control, TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  const Solution *solution = part != NULL ? figures_solution (trammel_session_figures (session), part->piece.id) : NULL;
  GtkWidget *aim = g_object_get_data (G_OBJECT (control), "aim");

  if (aim != NULL)
    gtk_widget_set_sensitive (aim, solution != NULL && !isnan (solution->x_mm));
}

static GtkWidget *
rail_button (TrammelSession *session, const char *words, GCallback clicked)
{
  GtkWidget *button = wrapped_button_new (words);

  g_signal_connect_object (button, "clicked", clicked, session, G_CONNECT_SWAPPED);
  gtk_widget_set_hexpand (button, TRUE);
  return button;
}

GtkWidget *
part_rail_control (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *buttons = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  gtk_widget_add_css_class (column, "field");
  gtk_box_set_homogeneous (GTK_BOX (buttons), TRUE);
  if (part != NULL && part->has_rail) {
    GtkWidget *aim = rail_button (session, _("Move to Aim"), G_CALLBACK (rail_move_to_aim));

    gtk_widget_add_css_class (aim, "suggested-action");
    gtk_box_append (GTK_BOX (column), trammel_rail_picture_new (session));
    gtk_box_append (GTK_BOX (buttons), aim);
    gtk_box_append (GTK_BOX (buttons), rail_button (session, _("Remove Rail"), G_CALLBACK (rail_remove)));
    g_object_set_data (G_OBJECT (column), "aim", aim);
  } else {
    gtk_box_append (GTK_BOX (buttons), rail_button (session, _("Add a Rail"), G_CALLBACK (rail_add)));
  }
  gtk_box_append (GTK_BOX (column), buttons);
  piece_control_adopt (column, session, rail_show);
  return column;
}

static void
kind_show (GtkWidget *control, TrammelSession *session)
{
  size_t node;
  const Outline *outline = node_selected_outline (session, &node);
  GtkWidget *button = gtk_widget_get_first_child (control);

  if (outline == NULL)
    return;
  for (NodeKind kind = NODE_CORNER; button != NULL; kind++, button = gtk_widget_get_next_sibling (button))
    gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (button), outline_node_kind (outline, node) == kind);
}

static void
kind_chosen (GtkToggleButton *button, GtkWidget *control)
{
  ControlState *state = control_state (control);
  size_t node;
  const Outline *outline;
  Outline *next = NULL;
  const NodeKind kind = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (button), "kind"));

  if (state == NULL || state->showing || !gtk_toggle_button_get_active (button))
    return;
  outline = node_selected_outline (state->session, &node);
  if (outline != NULL && outline_node_kind (outline, node) != kind && outline_with_node_kind (outline, node, kind, &next) == CORE_OK)
    trammel_session_do (state->session, node_with_outline (state->session, next), _("Change Node Kind"));
}

GtkWidget *
node_kind_control (TrammelSession *session)
{
  const char *const names[] = { [NODE_CORNER] = _("Corner"), [NODE_SMOOTH] = _("Smooth"), [NODE_SYMMETRIC] = _("Symmetric") };
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *first = NULL;

  gtk_widget_add_css_class (control, "linked");
  gtk_widget_add_css_class (control, "node-kinds");
  gtk_box_set_homogeneous (GTK_BOX (control), TRUE);
  for (NodeKind kind = NODE_CORNER; kind <= NODE_SYMMETRIC; kind++) {
    GtkWidget *button = gtk_toggle_button_new_with_label (names[kind]);

    g_object_set_data (G_OBJECT (button), "kind", GUINT_TO_POINTER (kind));
    if (first == NULL)
      first = button;
    else
      gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), GTK_TOGGLE_BUTTON (first));
    gtk_box_append (GTK_BOX (control), button);
  }
  piece_control_adopt (control, session, kind_show);
  for (GtkWidget *button = first; button != NULL; button = gtk_widget_get_next_sibling (button))
    g_signal_connect (button, "toggled", G_CALLBACK (kind_chosen), control);
  return control;
}

static void
choice_setup (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_MIDDLE);
  gtk_list_item_set_child (item, label);
}

static void
choice_bind (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  gtk_label_set_label (GTK_LABEL (gtk_list_item_get_child (item)), gtk_string_object_get_string (gtk_list_item_get_item (item)));
}

void
piece_control_may_be_cut (GtkDropDown *list)
{
  g_autoptr (GtkListItemFactory) factory = gtk_signal_list_item_factory_new ();

  g_signal_connect (factory, "setup", G_CALLBACK (choice_setup), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (choice_bind), NULL);
  gtk_drop_down_set_factory (list, factory);
}
