#include "trammel-config.h"
#include "app/selection-page-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/bay-rows.h"
#include "app/control-fields.h"
#include "app/focus-scroller.h"
#include "app/hinge-words.h"
#include "app/lead-fields.h"
#include "app/node-fields.h"
#include "app/part-controls.h"
#include "app/piece-controls.h"
#include "app/selection-key.h"
#include "app/several-label.h"
#include "app/structure-line.h"
#include "app/plan-group.h"
#include "app/budget-fields.h"
#include "app/power-fields.h"
#include "app/passed-group.h"
#include "app/traced-group.h"
#include "app/wall-fields.h"
#include "figures/names.h"

G_DEFINE_FINAL_TYPE (TrammelSelectionPage, trammel_selection_page, GTK_TYPE_BOX)

static void page_follow (TrammelSelectionPage *self);

void
selection_page_add_rows (TrammelSelectionPage *self, GtkWidget *group, FieldList list)
{
  for (size_t i = 0; i < list.count; i++) {
    GtkWidget *field = trammel_field_new (self->session, &list.specs[i]);

    g_ptr_array_add (self->fields, field);
    trammel_group_add (TRAMMEL_GROUP (group), field);
  }
}

GtkWidget *
selection_page_add_group (TrammelSelectionPage *self, const char *heading, const char *remark, FieldList list)
{
  GtkWidget *group = trammel_group_new (heading);

  trammel_group_set_remark (TRAMMEL_GROUP (group), remark);
  selection_page_add_rows (self, group, list);
  gtk_box_append (GTK_BOX (self), group);
  return group;
}

void
selection_page_add_control (TrammelSelectionPage *self, GtkWidget *group, const char *label, GtkWidget *control)
{
  g_ptr_array_add (self->controls, control);
  trammel_group_add_control (TRAMMEL_GROUP (group), label, control);
}

void
selection_page_add_wide (TrammelSelectionPage *self, GtkWidget *group, GtkWidget *control)
{
  g_ptr_array_add (self->controls, control);
  trammel_group_add (TRAMMEL_GROUP (group), control);
}

void
selection_page_add_above (TrammelSelectionPage *self, GtkWidget *words)
{
  g_ptr_array_add (self->controls, words);
  gtk_box_append (GTK_BOX (self), words);
}

/* What an expert asks for is made when the expert asks. */
static void
page_open_methods (GtkExpander *more, GParamSpec *property, TrammelSelectionPage *self)
{
  const struct { const char *heading; FieldList list; } groups[] = {
    { _("Neutral Point"), neutral_point_fields () }, { _("Balance Point"), balance_point_fields () },
    { _("Lift and Damping"), motion_fields () } };
  GtkWidget *column;

  if (gtk_expander_get_child (more) != NULL)
    return;
  column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  for (size_t i = 0; i < G_N_ELEMENTS (groups); i++) {
    GtkWidget *group = trammel_group_new (groups[i].heading);

    selection_page_add_rows (self, group, groups[i].list);
    gtk_box_append (GTK_BOX (column), group);
  }
  gtk_expander_set_child (more, column);
}

static bool
page_has_plan (TrammelSelectionPage *self)
{
  return self->plans != NULL && trammel_plan_store_plan (self->plans) != NULL;
}

static void
page_build_plan (TrammelSelectionPage *self)
{
  if (page_has_plan (self))
    gtk_box_append (GTK_BOX (self), trammel_plan_group_new (self->session, self->plans));
}

static void
page_build_aeroplane (TrammelSelectionPage *self)
{
  GtkWidget *more;

  selection_page_add_group (self, _("Aeroplane"), NULL, aeroplane_fields (self->session));
  selection_page_build_marks (self);
  if (budget_fields (self->session).count > 0)
    selection_page_add_wide (self, selection_page_add_group (self, _("Budget of Mass"), _("for the gear"), budget_fields (self->session)),
                   budget_control (self->session));
  if (power_fields (self->session).count > 0)
    selection_page_add_wide (self, selection_page_add_group (self, _("Power"), _("at full throttle"), power_fields (self->session)),
                             power_control (self->session));
  page_build_plan (self);
  more = gtk_expander_new (_("How Good the Figures Are"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (more), GTK_ACCESSIBLE_PROPERTY_LABEL, _("How Good the Figures Are"), -1);
  g_signal_connect (more, "notify::expanded", G_CALLBACK (page_open_methods), self);
  gtk_box_append (GTK_BOX (self), more);
}

static void
page_build_node (TrammelSelectionPage *self)
{
  GtkWidget *group = selection_page_add_group (self, _("Node"), NULL, node_fields (self->session));

  selection_page_add_wide (self, group, node_kind_control (self->session));
}

static void
page_build_section (TrammelSelectionPage *self, const Surface *surface)
{
  FieldList fields = surface_section_fields ();
  GtkWidget *group = selection_page_add_group (self, _("Section"), NULL, (FieldList) { NULL, 0 });

  selection_page_add_control (self, group, _("Class"), surface_section_control (self->session));
  if (surface != aeroplane_reference_wing (trammel_session_aeroplane (self->session)))
    fields.count -= 2;              /* of greatest lift and its deviation: the stall is reckoned with the first wing's alone */
  selection_page_add_rows (self, group, fields);
}

static void
page_build_line (TrammelSelectionPage *self, GtkWidget *group)
{
  const StructureItem *item = structure_line (self->session);

  if (structure_line_kind (item) == LINE_SOLID || structure_line_kind (item) == LINE_COVERING) {
    selection_page_add_control (self, group, _("Material"), structure_line_material (self->session));
    selection_page_add_control (self, group, _("Goes by"), structure_line_measure (self->session));
  }
  selection_page_add_rows (self, group, structure_line_fields (item));
  selection_page_add_wide (self, group, structure_line_buttons (self->session));
}

static void
page_build_structure (TrammelSelectionPage *self)
{
  const Structure *structure = structure_selected (self->session);
  GtkWidget *group;

  selection_page_add_group (self, _("Structure"), NULL, structure_fields ());
  group = selection_page_add_group (self, _("Made Of"), NULL, (FieldList) { NULL, 0 });
  for (int i = 0; structure != NULL && i < (int) structure->item_count; i++) {
    GtkWidget *header = structure_line_header (self->session, i);

    g_signal_connect_object (header, "clicked", G_CALLBACK (page_follow), self, G_CONNECT_SWAPPED);
    selection_page_add_wide (self, group, header);
    if (structure_line_takes_keyboard (self->session, i))
      gtk_widget_grab_focus (header);
    if (i == structure_line_open (self->session))
      page_build_line (self, group);
  }
  if (structure != NULL && structure->item_count > 0)
    selection_page_add_rows (self, group, structure_sum_fields ());
  selection_page_add_wide (self, group, structure_lines_buttons (self->session));
}

static void
page_build_surface (TrammelSelectionPage *self, const Surface *surface)
{
  const Surface *reference = aeroplane_reference_wing (trammel_session_aeroplane (self->session));
  const char *remark = surface->provisional ? _("by area and arm, for now")
                       : surface->role == ROLE_FIN ? NULL : surface->root_open ? _("without the gap") : _("to the centre line");
  GtkWidget *group;

  gtk_box_append (GTK_BOX (self), passed_group_new (self->session));
  group = selection_page_add_group (self, surface_role_name (surface->role), remark, surface_shape_fields ());
  selection_page_add_control (self, group, _("What it is"), surface_role_control (self->session));
  if (surface->traced != NULL)
    gtk_box_append (GTK_BOX (self), traced_group_new (self->session));
  if (surface != reference)
    selection_page_add_group (self, _("As a Tail"), NULL, surface_tail_fields ());
  selection_page_add_group (self, _("Rigging"), NULL, surface_rigging_fields ());
  page_build_structure (self);
  if (surface_is_horizontal (surface))
    page_build_section (self, surface);
}

static void
page_build_control (TrammelSelectionPage *self, const Surface *surface, const Control *control)
{
  const FieldList roll = control_roll_fields (self->session);
  GtkWidget *group = selection_page_add_group (self, hinge_words_heading (control->kind), surface_role_name (surface->role),
                                     (FieldList) { NULL, 0 });

  selection_page_add_control (self, group, _("What it is"), control_kind_control (self->session));
  selection_page_add_rows (self, group, control_shape_fields (self->session));
  group = selection_page_add_group (self, _("Throw"), NULL, control_throw_fields (self->session));
  selection_page_add_rows (self, group, roll);
}

static void
page_build_body (TrammelSelectionPage *self)
{
  gtk_box_append (GTK_BOX (self), passed_group_new (self->session));
  selection_page_add_group (self, _("Body"), NULL, body_fields ());
  gtk_box_append (GTK_BOX (self), traced_group_new (self->session));
  selection_page_add_wide (self, selection_page_add_group (self, _("Bays"), _("between formers"), (FieldList) { NULL, 0 }),
                           bay_list_control (self->session));
  page_build_structure (self);
  selection_page_add_group (self, _("Walls"), _("they take from the room in bays"), wall_fields ());
}

static void
page_build_bay (TrammelSelectionPage *self)
{
  selection_page_add_wide (self, selection_page_add_group (self, _("Bay"), NULL, (FieldList) { NULL, 0 }), bay_control (self->session));
  selection_page_add_group (self, _("Walls"), _("of its body"), wall_fields ());
}

/* A plan that is selected is the one in hand, too. */
static const Plan *
page_selected_plan (TrammelSelectionPage *self)
{
  return aeroplane_plan_by_id (trammel_session_aeroplane (self->session), selection_single (trammel_session_selection (self->session)));
}

static gboolean
page_let_go (gpointer row)
{
  g_object_unref (row);
  return G_SOURCE_REMOVE;
}

/* What is half typed belongs to what was selected, not to what comes next. */
static void
page_discard (TrammelSelectionPage *self)
{
  for (guint i = 0; i < self->fields->len; i++)
    trammel_field_discard (g_ptr_array_index (self->fields, i));
}

/* A choice made in one of the rows may be what brings the next page: it must outlive its own signal. */
static void
page_empty (TrammelSelectionPage *self)
{
  GtkWidget *child;

  g_ptr_array_set_size (self->fields, 0);
  g_ptr_array_set_size (self->controls, 0);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL) {
    g_idle_add (page_let_go, g_object_ref (child));
    gtk_box_remove (GTK_BOX (self), child);
  }
}

static void
page_build (TrammelSelectionPage *self)
{
  const Selection *selection = trammel_session_selection (self->session);
  const Surface *surface = trammel_session_selected_surface (self->session);
  const Part *part = trammel_session_selected_part (self->session);
  size_t node;

  if (node_selected_outline (self->session, &node) != NULL)
    page_build_node (self);
  if (control_selected (self->session) != NULL)
    page_build_control (self, surface, control_selected (self->session));
  else if (surface != NULL)
    page_build_surface (self, surface);
  else if (part != NULL)
    selection_page_build_part (self, part);
  else if (lead_selected (self->session) != NULL)
    selection_page_build_lead (self, lead_selected (self->session));
  else if (trammel_session_selected_body (self->session) != NULL)
    page_build_body (self);
  else if (bay_selected (self->session) != NULL)
    page_build_bay (self);
  else if (page_selected_plan (self) != NULL)
    page_build_plan (self);
  else if (selection->ids != NULL)
    gtk_box_append (GTK_BOX (self), several_label_new (g_strv_length (selection->ids)));
  else if (selection->point == SHEET_POINT_BALANCE)
    selection_page_add_group (self, _("Balance Point"), NULL, balance_point_fields ());
  else if (selection->point == SHEET_POINT_NEUTRAL)
    selection_page_add_group (self, _("Neutral Point"), NULL, neutral_point_fields ());
  else
    page_build_aeroplane (self);
}

static void
page_follow (TrammelSelectionPage *self)
{
  /* What the rows depend on: while it stays, they are only refreshed and the keyboard stays where it is. */
  g_autofree char *wanted = selection_key (self->session, page_has_plan (self));

  if (g_strcmp0 (wanted, self->shown) != 0) {
    GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
    GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

    page_discard (self);
    /* The keyboard must not fall into the first field of what comes next: a number typed on would change it. */
    if (focus != NULL && gtk_widget_is_ancestor (focus, GTK_WIDGET (self)))
      gtk_root_set_focus (root, NULL);
    page_empty (self);
    page_build (self);
    g_free (self->shown);
    self->shown = g_steal_pointer (&wanted);
    return;
  }
  for (guint i = 0; i < self->fields->len; i++)
    trammel_field_refresh (g_ptr_array_index (self->fields, i));
  for (guint i = 0; i < self->controls->len; i++)
    piece_control_refresh (g_ptr_array_index (self->controls, i));
}

void
trammel_selection_page_edit_first (TrammelSelectionPage *self, const char *text)
{
  for (guint i = 0; i < self->fields->len; i++) {
    TrammelField *field = g_ptr_array_index (self->fields, i);

    if (trammel_field_can_edit (field) && trammel_field_kind (field) != FIELD_TEXT) {
      trammel_field_edit (field, text);
      return;
    }
  }
}

void
trammel_selection_page_edit_mass (TrammelSelectionPage *self)
{
  for (guint i = 0; i < self->fields->len; i++) {
    TrammelField *field = g_ptr_array_index (self->fields, i);

    if (trammel_field_can_edit (field) && trammel_field_kind (field) == FIELD_MASS) {
      trammel_field_edit (field, "");
      focus_scroller_show (GTK_WIDGET (field));
      return;
    }
  }
}

static void
trammel_selection_page_dispose (GObject *object)
{
  TrammelSelectionPage *self = TRAMMEL_SELECTION_PAGE (object);

  if (self->fields != NULL) {
    page_discard (self);
    page_empty (self);
  }
  g_clear_pointer (&self->fields, g_ptr_array_unref);
  g_clear_pointer (&self->controls, g_ptr_array_unref);
  g_clear_pointer (&self->shown, g_free);
  g_clear_object (&self->plans);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_selection_page_parent_class)->dispose (object);
}

static void
trammel_selection_page_class_init (TrammelSelectionPageClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_selection_page_dispose;
}

static void
trammel_selection_page_init (TrammelSelectionPage *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 18);
  self->fields = g_ptr_array_new ();
  self->controls = g_ptr_array_new ();
}

void
trammel_selection_page_set_plan_store (TrammelSelectionPage *self, TrammelPlanStore *store)
{
  g_set_object (&self->plans, store);
  page_follow (self);
}

GtkWidget *
trammel_selection_page_new (TrammelSession *session)
{
  TrammelSelectionPage *self = g_object_new (TRAMMEL_TYPE_SELECTION_PAGE, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "changed", G_CALLBACK (page_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (page_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (page_follow), self, G_CONNECT_SWAPPED);
  page_follow (self);
  return GTK_WIDGET (self);
}
