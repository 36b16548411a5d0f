#include "trammel-config.h"
#include "app/object-list.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/focus-scroller.h"
#include "app/group.h"
#include "app/hinge-words.h"
#include "app/plan-fault.h"
#include "document/part-class.h"
#include "figures/lead-words.h"

/* A list longer than this helps nobody and would cost the window its speed; the rest is chosen on the sheet. */
static const guint most_rows = 300;

/* One row to be: what it says and what it selects. */
typedef struct {
  char *words, *remark;
  char *id;
  char *control;       /* of a surface's control; NULL: another row */
  int node;            /* -1: the piece itself */
  SheetPoint point;    /* the row of a point has no id */
  bool side;
} ListLine;

struct _TrammelObjectList {
  GtkBox parent;
  TrammelSession *session;
  GtkWidget *group;
  GPtrArray *lines;    /* of ListLine, as shown */
  bool following;      /* the list follows the session: choosing rows must not select */
};

G_DEFINE_FINAL_TYPE (TrammelObjectList, trammel_object_list, GTK_TYPE_BOX)

static void
list_line_free (gpointer data)
{
  ListLine *line = data;

  g_free (line->words);
  g_free (line->remark);
  g_free (line->id);
  g_free (line->control);
  g_free (line);
}

static void
list_add (GPtrArray *lines, const ListLine *line)
{
  if (lines->len < most_rows)
    g_ptr_array_add (lines, g_memdup2 (line, sizeof *line));
  else
    list_line_free (g_memdup2 (line, sizeof *line));
}

static const char *
node_kind_name (NodeKind kind)
{
  return kind == NODE_CORNER ? _("corner") : kind == NODE_SMOOTH ? _("smooth") : _("symmetric");
}

static void
list_add_nodes (GPtrArray *lines, const char *id, const Outline *outline, bool side, Units units)
{
  for (size_t i = 0; i < outline_node_count (outline) && lines->len < most_rows; i++) {
    const Point place = outline_node (outline, i);
    g_autofree char *x = units_length (units, place.x);
    g_autofree char *y = units_length (units, place.y);

    list_add (lines, &(ListLine) {
      /* Translators: a node of an outline by its place: "Node 3: 222 mm aft, 205 mm out" */
      .words = g_strdup_printf (_("Node %zu: %s aft, %s out"), i + 1, x, y),
      .remark = g_strdup (node_kind_name (outline_node_kind (outline, i))),
      .id = g_strdup (id), .node = (int) i, .side = side,
    });
  }
}

/* What keeps an outline from enclosing a surface, in the two or three words that a row has room for. */
static const char *
outline_fault_words (const Outline *outline, CoreStatus status)
{
  switch (status) {
    case CORE_OPEN:           return _("outline open");
    case CORE_CROSSES_ITSELF: return _("outline crosses itself");
    case CORE_OUT_OF_RANGE:   return outline_bounds (outline).min.y < 0 ? _("crosses the centre line") : _("reaches inside its root");
    case CORE_NO_SPAN:
    case CORE_NO_AREA:        return _("encloses nothing");
    default:                  return _("cannot be measured");
  }
}

static char *
surface_remark (TrammelSession *session, const Surface *surface)
{
  const SurfaceFigures *figures = figures_of_surface (trammel_session_figures (session), surface->piece.id);

  if (figures == NULL)
    return g_strdup ("");
  return figures->area_mm2 > 0 ? units_area (trammel_session_units (session), figures->area_mm2)
                               : g_strdup (outline_fault_words (surface->outline, figures->status));
}

static void
list_add_controls (GPtrArray *lines, TrammelSession *session, const Surface *surface)
{
  for (size_t i = 0; i < surface->control_count; i++) {
    const Control *control = &surface->controls[i];
    const ControlFigures *figures = figures_of_control (trammel_session_figures (session), surface->piece.id, control->id);
    const bool known = figures != NULL && figures->area_mm2 > 0;

    list_add (lines, &(ListLine) {
      .words = g_strdup (hinge_words_heading (control->kind)),
      .remark = known ? units_area (trammel_session_units (session), figures->area_mm2) : g_strdup (""),
      .id = g_strdup (surface->piece.id), .control = g_strdup (control->id), .node = -1,
    });
  }
}

static void
list_add_surface (GPtrArray *lines, TrammelSession *session, const Surface *surface)
{
  list_add (lines, &(ListLine) {
    .words = g_strdup (surface_role_name (surface->role)), .remark = surface_remark (session, surface),
    .id = g_strdup (surface->piece.id), .node = -1,
  });
  list_add_controls (lines, session, surface);
  if (selection_has (trammel_session_selection (session), surface->piece.id))
    list_add_nodes (lines, surface->piece.id, surface->outline, false, trammel_session_units (session));
}

static void
list_add_body (GPtrArray *lines, TrammelSession *session, const Body *body)
{
  const Units units = trammel_session_units (session);
  const bool crosses = body->outline != NULL && outline_check (body->outline, NULL) == CORE_CROSSES_ITSELF;
  const char *remark = crosses ? outline_fault_words (body->outline, CORE_CROSSES_ITSELF) : "";

  list_add (lines, &(ListLine) { .words = g_strdup (_("Body")), .remark = g_strdup (remark), .id = g_strdup (body->piece.id), .node = -1 });
  if (!selection_has (trammel_session_selection (session), body->piece.id))
    return;
  if (body->outline != NULL)
    list_add_nodes (lines, body->piece.id, body->outline, false, units);
  if (body->side_outline != NULL && trammel_session_selection (session)->side)
    list_add_nodes (lines, body->piece.id, body->side_outline, true, units);
}

static char *
part_remark (TrammelSession *session, const Part *part)
{
  g_autofree char *mass = units_mass (trammel_session_units (session), part->mass);

  if (!part->aboard)
    return g_strdup (_("left out"));
  /* Translators: of a part that has still to be bought; %s is its mass */
  return part->to_come ? g_strdup_printf (_("%s, to come"), mass) : g_steal_pointer (&mass);
}

static void
list_add_part (GPtrArray *lines, TrammelSession *session, const Part *part)
{
  const PartClass *class = part_class_find (part->class_name);

  list_add (lines, &(ListLine) {
    .words = g_strdup (part->name != NULL ? part->name : class != NULL ? _(class->name) : part->piece.id),
    .remark = part_remark (session, part),
    .id = g_strdup (part->piece.id), .node = -1,
  });
}

/* Its ends tell it from the others; the places on its way stand below the one that is selected. */
static void
list_add_lead (GPtrArray *lines, TrammelSession *session, const Lead *lead)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Units units = trammel_session_units (session);
  g_autoptr (GArray) points = lead_points (aeroplane, lead);
  const double length = lead_is_joined (lead) ? NAN : lead->length;

  list_add (lines, &(ListLine) { .words = lead_title (aeroplane, lead), .remark = isnan (length) ? g_strdup ("") : units_length (units, length),
                                 .id = g_strdup (lead->piece.id), .node = -1 });
  for (guint i = 0; selection_has (trammel_session_selection (session), lead->piece.id) && i < points->len && lines->len < most_rows; i++) {
    const LeadPoint *point = &g_array_index (points, LeadPoint, i);
    g_autofree char *x = units_length (units, fabs (point->place.x)), *y = units_length (units, fabs (point->place.y));
    g_autofree char *along = g_strdup_printf (point->place.x < 0 ? _("%s ahead") : _("%s aft"), x);
    g_autofree char *across = g_strdup_printf (point->place.y < 0 ? _("%s to port") : _("%s to starboard"), y);

    list_add (lines, &(ListLine) {
      /* Translators: a place on a lead's way: "Bend: 140 mm aft, 30 mm to starboard" */
      .words = g_strdup_printf (point->joint ? _("Joint: %s, %s") : _("Bend: %s, %s"), along, across),
      .remark = g_strdup (!point->joint && point->via == LEAD_NO_VIA ? _("as usual") : ""), .id = g_strdup (lead->piece.id), .node = (int) i,
    });
  }
}

static void
list_add_bay (GPtrArray *lines, const Bay *bay)
{
  list_add (lines, &(ListLine) {
    /* Translators: %s is a bay's name; then the formers that bound it, "F1 to F2" */
    .words = g_strdup_printf (_("Bay %s"), bay->piece.id), .remark = g_strdup_printf (_("%s to %s"), bay->from_former, bay->to_former),
    .id = g_strdup (bay->piece.id), .node = -1,
  });
}

static void
list_add_plan (GPtrArray *lines, const Plan *plan)
{
  list_add (lines, &(ListLine) { .words = plan_title (plan), .remark = g_strdup (plan->shown == PLAN_HIDDEN ? _("hidden") : _("plan")),
                                 .id = g_strdup (plan->piece.id), .node = -1 });
}

static void
list_add_point (GPtrArray *lines, const char *words, double x_mm, SheetPoint point, Units units)
{
  g_autofree char *aft = units_length (units, x_mm);

  if (isfinite (x_mm))
    list_add (lines, &(ListLine) { .words = g_strdup (words), .remark = g_strdup_printf (_("%s aft"), aft), .node = -1, .point = point });
}

static GPtrArray *
list_lines (TrammelSession *session)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Figures *figures = trammel_session_figures (session);
  GPtrArray *lines = g_ptr_array_new_with_free_func (list_line_free);

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE) && lines->len < most_rows; i++)
    if (aeroplane_surface (aeroplane, i)->piece.id != NULL)
      list_add_surface (lines, session, aeroplane_surface (aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY) && lines->len < most_rows; i++)
    if (aeroplane_body (aeroplane, i)->piece.id != NULL)
      list_add_body (lines, session, aeroplane_body (aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BAY) && lines->len < most_rows; i++)
    if (aeroplane_nth (aeroplane, PIECE_BAY, i)->id != NULL)
      list_add_bay (lines, (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART) && lines->len < most_rows; i++)
    if (aeroplane_part (aeroplane, i)->piece.id != NULL)
      list_add_part (lines, session, aeroplane_part (aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD) && lines->len < most_rows; i++)
    if (aeroplane_lead (aeroplane, i)->piece.id != NULL)
      list_add_lead (lines, session, aeroplane_lead (aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PLAN) && lines->len < most_rows; i++)
    if (aeroplane_plan (aeroplane, i)->piece.id != NULL)
      list_add_plan (lines, aeroplane_plan (aeroplane, i));
  list_add_point (lines, _("Balance point"), figures->mass.x_mm, SHEET_POINT_BALANCE, trammel_session_units (session));
  list_add_point (lines, _("Neutral point"), figures->neutral_point.x_mm, SHEET_POINT_NEUTRAL, trammel_session_units (session));
  return lines;
}

static bool
list_same_things (const GPtrArray *a, const GPtrArray *b)
{
  if (a == NULL || a->len != b->len)
    return false;
  for (guint i = 0; i < a->len; i++) {
    const ListLine *one = g_ptr_array_index (a, i), *other = g_ptr_array_index (b, i);

    if (one->node != other->node || one->side != other->side || one->point != other->point || g_strcmp0 (one->id, other->id) != 0
        || g_strcmp0 (one->control, other->control) != 0)
      return false;
  }
  return true;
}

/* During a drag most rows stay as they are; rewriting them costs frames. */
static bool
list_reads_alike (const ListLine *a, const ListLine *b)
{
  return g_str_equal (a->words, b->words) && g_str_equal (a->remark, b->remark);
}

static GtkWidget *
list_row (const ListLine *line)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *words = gtk_label_new (NULL), *remark = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_label_set_ellipsize (GTK_LABEL (words), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_add_css_class (remark, "dim-label");
  gtk_box_append (GTK_BOX (box), words);
  gtk_box_append (GTK_BOX (box), remark);
  gtk_widget_add_css_class (box, line->node >= 0 || line->control != NULL ? "list-node" : "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  return row;
}

static void
list_write_row (GtkListBoxRow *row, const ListLine *line)
{
  GtkWidget *box = gtk_list_box_row_get_child (row);
  g_autofree char *name = g_strdup_printf ("%s, %s", line->words, line->remark);

  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (box)), line->words);
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_last_child (box)), line->remark);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
list_mark_selected (TrammelObjectList *self)
{
  const Selection *selection = trammel_session_selection (self->session);
  GtkListBox *list = trammel_group_list (TRAMMEL_GROUP (self->group));

  gtk_list_box_unselect_all (list);
  for (guint i = 0; i < self->lines->len; i++) {
    const ListLine *line = g_ptr_array_index (self->lines, i);
    const bool chosen = line->point != SHEET_POINT_NONE ? selection->point == line->point
                      : line->node >= 0 ? selection_has_node (selection, line->id, line->side, (size_t) line->node)
                      : selection_has (selection, line->id) && selection->node_count == 0
                        && g_strcmp0 (selection->control, line->control) == 0;

    if (chosen)
      gtk_list_box_select_row (list, gtk_list_box_get_row_at_index (list, (int) i));
  }
}

static void
list_follow (TrammelObjectList *self)
{
  GtkListBox *list = trammel_group_list (TRAMMEL_GROUP (self->group));
  GPtrArray *lines = list_lines (self->session), *shown = self->lines;
  const bool same = list_same_things (shown, lines);

  self->following = true;
  if (!same) {
    GtkListBoxRow *row;

    while ((row = gtk_list_box_get_row_at_index (list, 0)) != NULL)
      gtk_list_box_remove (list, GTK_WIDGET (row));
    for (guint i = 0; i < lines->len; i++)
      gtk_list_box_append (list, list_row (g_ptr_array_index (lines, i)));
  }
  for (guint i = 0; i < lines->len; i++)
    if (!same || !list_reads_alike (g_ptr_array_index (shown, i), g_ptr_array_index (lines, i)))
      list_write_row (gtk_list_box_get_row_at_index (list, (int) i), g_ptr_array_index (lines, i));
  g_clear_pointer (&self->lines, g_ptr_array_unref);
  self->lines = lines;
  list_mark_selected (self);
  gtk_widget_set_visible (GTK_WIDGET (self), lines->len > 0);
  self->following = false;
}

/* The page above it is another now, and with it the row's place: whoever chose it goes on from there. */
static void
list_keep_in_sight (TrammelObjectList *self)
{
  GtkListBoxRow *row = gtk_list_box_get_selected_row (trammel_group_list (TRAMMEL_GROUP (self->group)));

  if (row == NULL)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (row));
  focus_scroller_show (GTK_WIDGET (row));
}

static void
list_chosen (TrammelObjectList *self, GtkListBoxRow *row)
{
  const ListLine *line;

  if (row == NULL || self->following || (guint) gtk_list_box_row_get_index (row) >= self->lines->len)
    return;
  line = g_ptr_array_index (self->lines, (guint) gtk_list_box_row_get_index (row));
  if (line->point != SHEET_POINT_NONE)
    trammel_session_select (self->session, selection_of_point (line->point));
  else if (line->control != NULL)
    trammel_session_select (self->session, selection_of_control (line->id, line->control));
  else if (line->node >= 0)
    trammel_session_select (self->session, selection_of_node (line->id, line->side, (size_t) line->node));
  else
    trammel_session_select (self->session, selection_of (line->id));
  list_keep_in_sight (self);
}

static void
trammel_object_list_dispose (GObject *object)
{
  TrammelObjectList *self = TRAMMEL_OBJECT_LIST (object);

  g_clear_pointer (&self->lines, g_ptr_array_unref);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_object_list_parent_class)->dispose (object);
}

static void
trammel_object_list_class_init (TrammelObjectListClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_object_list_dispose;
}

static void
trammel_object_list_init (TrammelObjectList *self)
{
}

GtkWidget *
trammel_object_list_new (TrammelSession *session)
{
  TrammelObjectList *self = g_object_new (TRAMMEL_TYPE_OBJECT_LIST, NULL);

  self->session = g_object_ref (session);
  self->group = trammel_group_new (_("List"));
  gtk_widget_set_hexpand (self->group, TRUE);
  gtk_box_append (GTK_BOX (self), self->group);
  gtk_list_box_set_selection_mode (trammel_group_list (TRAMMEL_GROUP (self->group)), GTK_SELECTION_MULTIPLE);
  g_signal_connect_swapped (trammel_group_list (TRAMMEL_GROUP (self->group)), "row-activated", G_CALLBACK (list_chosen), self);
  g_signal_connect_object (session, "changed", G_CALLBACK (list_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (list_follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (list_follow), self, G_CONNECT_SWAPPED);
  list_follow (self);
  return GTK_WIDGET (self);
}
