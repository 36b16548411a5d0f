#include "app/sheet-canvas-private.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/comparing.h"
#include "app/grip.h"
#include "app/memory-rest.h"
#include "app/pull.h"
#include "app/theme.h"
#include "document/part-class.h"

G_DEFINE_FINAL_TYPE (TrammelSheetCanvas, trammel_sheet_canvas, GTK_TYPE_WIDGET)

enum { VIEW_CHANGED, POINTER_CHANGED, HINT_CHANGED, TOOL_CHANGED, EDIT_REQUESTED, SIGNAL_COUNT };
static guint signals[SIGNAL_COUNT];

static const SheetOverlay nothing_over = { .guide_x = NAN, .guide_y = NAN, .band = { { 1, 1 }, { -1, -1 } } };

static void
trammel_sheet_canvas_dispose (GObject *object)
{
  TrammelSheetCanvas *self = TRAMMEL_SHEET_CANVAS (object);
  GtkWidget *child;

  g_clear_pointer (&self->pull, pull_free);
  g_clear_pointer (&self->tool, tool_free);
  g_clear_pointer (&self->nudge, grip_free);
  g_clear_object (&self->glide);
  g_clear_object (&self->plans);
  g_clear_object (&self->session);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (trammel_sheet_canvas_parent_class)->dispose (object);
}

static void
trammel_sheet_canvas_finalize (GObject *object)
{
  TrammelSheetCanvas *self = TRAMMEL_SHEET_CANVAS (object);

  sheet_paper_clear (&self->paper);
  sheet_plan_copy_clear (&self->plan_copy);
  sheet_plan_copy_clear (&self->enlarged_copy);
  outline_spot_clear (&self->spot);
  trammel_sheet_canvas_set_part_pattern (self, NULL);
  if (self->dropped != NULL)
    piece_unref (&self->dropped->piece);
  g_free (self->hint);
  G_OBJECT_CLASS (trammel_sheet_canvas_parent_class)->finalize (object);
}

static void
trammel_sheet_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  TrammelSheetCanvas *self = TRAMMEL_SHEET_CANVAS (widget);
  SheetScene scene;

  self->look = sheet_canvas_look (self);
  self->overlay.focus = gtk_widget_has_focus (widget) && gtk_window_get_focus_visible (GTK_WINDOW (gtk_widget_get_root (widget)));
  scene = trammel_sheet_canvas_scene (self);
  if (!self->overlay.has_magnified)
    sheet_plan_copy_clear (&self->enlarged_copy);       /* nobody sees it */
  sheet_paper_snapshot (&self->paper, snapshot, &scene);
  memory_rest_soon ();
  GTK_WIDGET_CLASS (trammel_sheet_canvas_parent_class)->snapshot (widget, snapshot);
}

/* Another font or another way of smoothing it, of which a scene says nothing. */
static void
trammel_sheet_canvas_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (trammel_sheet_canvas_parent_class)->css_changed (widget, change);
  sheet_paper_clear (&TRAMMEL_SHEET_CANVAS (widget)->paper);
}

static void
trammel_sheet_canvas_system_setting_changed (GtkWidget *widget, GtkSystemSetting setting)
{
  GTK_WIDGET_CLASS (trammel_sheet_canvas_parent_class)->system_setting_changed (widget, setting);
  sheet_paper_clear (&TRAMMEL_SHEET_CANVAS (widget)->paper);
}

static void
trammel_sheet_canvas_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  TrammelSheetCanvas *self = TRAMMEL_SHEET_CANVAS (widget);

  if (self->menu != NULL)
    gtk_popover_present (GTK_POPOVER (self->menu));
  sheet_canvas_resized (self, width, height);
}

static void
trammel_sheet_canvas_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                              int *minimum_baseline, int *natural_baseline)
{
  *minimum = 120;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 640 : 480;
  *minimum_baseline = *natural_baseline = -1;
}

static guint
sheet_canvas_signal (const char *name, guint count, GType type)
{
  return g_signal_new (name, TRAMMEL_TYPE_SHEET_CANVAS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, count, type);
}

static void
trammel_sheet_canvas_class_init (TrammelSheetCanvasClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_sheet_canvas_dispose;
  G_OBJECT_CLASS (klass)->finalize = trammel_sheet_canvas_finalize;
  widget_class->snapshot = trammel_sheet_canvas_snapshot;
  widget_class->size_allocate = trammel_sheet_canvas_size_allocate;
  widget_class->measure = trammel_sheet_canvas_measure;
  widget_class->css_changed = trammel_sheet_canvas_css_changed;
  widget_class->system_setting_changed = trammel_sheet_canvas_system_setting_changed;
  gtk_widget_class_set_css_name (widget_class, "sheet");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  signals[VIEW_CHANGED] = sheet_canvas_signal ("view-changed", 0, G_TYPE_NONE);
  signals[POINTER_CHANGED] = sheet_canvas_signal ("pointer-changed", 0, G_TYPE_NONE);
  signals[HINT_CHANGED] = sheet_canvas_signal ("hint-changed", 0, G_TYPE_NONE);
  signals[TOOL_CHANGED] = sheet_canvas_signal ("tool-changed", 0, G_TYPE_NONE);
  signals[EDIT_REQUESTED] = sheet_canvas_signal ("edit-requested", 1, G_TYPE_STRING);
}

static void
trammel_sheet_canvas_init (TrammelSheetCanvas *self)
{
  self->overlay = nothing_over;
  self->view = (SheetView) { .scale = 1 };
  self->fits = true;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Sheet"),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  _("The aeroplane from above. Tab selects the next thing on it, the arrow keys move it."), -1);
}

static void
sheet_canvas_changed (TrammelSheetCanvas *self)
{
  if (self->tool->kind->changed != NULL)
    self->tool->kind->changed (self->tool);
  if (!outline_spot_exists (trammel_session_aeroplane (self->session), &self->spot))
    outline_spot_clear (&self->spot);
  sheet_canvas_keep_in_view (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* An undo, a deletion or a reload while the hand still pulls: what it holds belongs to an aeroplane that is gone. */
static void
sheet_canvas_stepped (TrammelSheetCanvas *self)
{
  struct Grip *nudge;

  if (trammel_session_is_previewing (self->session) || (self->pull == NULL && self->nudge == NULL))
    return;
  nudge = g_steal_pointer (&self->nudge);
  if (nudge != NULL)
    grip_free (nudge);
  trammel_sheet_canvas_end_pull (self);
  sheet_canvas_drop_pointer (self);
}

/* The place for a new node belongs to the outline that is selected. */
static void
sheet_canvas_selection_changed (TrammelSheetCanvas *self)
{
  if (self->spot.id != NULL && !selection_has (trammel_session_selection (self->session), self->spot.id))
    outline_spot_clear (&self->spot);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_signal_emit (self, signals[HINT_CHANGED], 0);
}

TrammelSheetCanvas *
trammel_sheet_canvas_new (TrammelSession *session)
{
  TrammelSheetCanvas *self = g_object_new (TRAMMEL_TYPE_SHEET_CANVAS, NULL);

  self->session = g_object_ref (session);
  self->plans = trammel_plan_store_new (session);
  trammel_comparing_watch (trammel_comparing_of (session), self);
  self->tool = tool_new ("select", self);
  g_signal_connect_object (session, "changed", G_CALLBACK (sheet_canvas_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "state-changed", G_CALLBACK (sheet_canvas_stepped), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (sheet_canvas_selection_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "offer-changed", G_CALLBACK (trammel_sheet_canvas_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->plans, "changed", G_CALLBACK (sheet_canvas_plan_changed), self, G_CONNECT_SWAPPED);
  theme_follow (GTK_WIDGET (self));
  sheet_canvas_add_pointer (self);
  sheet_canvas_add_keys (self);
  sheet_canvas_add_drop (self);
  sheet_canvas_add_menu (self);
  return self;
}

void
trammel_sheet_canvas_set_floating (TrammelSheetCanvas *self, TrammelPointerPlate *plate, TrammelSheetField *field)
{
  self->plate = plate;
  self->field = field;
}

TrammelSession *
trammel_sheet_canvas_session (TrammelSheetCanvas *self)
{
  return self->session;
}

TrammelPlanStore *
trammel_sheet_canvas_plan_store (TrammelSheetCanvas *self)
{
  return self->plans;
}

TrammelPointerPlate *
trammel_sheet_canvas_plate (TrammelSheetCanvas *self)
{
  return self->plate;
}

TrammelSheetField *
trammel_sheet_canvas_field (TrammelSheetCanvas *self)
{
  return self->field;
}

SheetOverlay *
trammel_sheet_canvas_overlay (TrammelSheetCanvas *self)
{
  return &self->overlay;
}

void
trammel_sheet_canvas_refresh (TrammelSheetCanvas *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
trammel_sheet_canvas_px (GtkWidget *canvas, Point place, double px[2])
{
  const Point screen = view_to_screen (&TRAMMEL_SHEET_CANVAS (canvas)->view, place);

  px[0] = screen.x;
  px[1] = screen.y;
}

Point
trammel_sheet_canvas_snapped (TrammelSheetCanvas *self, Point place, const char *id, size_t node, bool loose)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self);
  Snap snap = { .place = place, .guide_x = NAN, .guide_y = NAN };

  if (!loose && trammel_settings_flag (trammel_session_settings (self->session), SNAPPING))
    snap = sheet_snap (&scene, place, id, node);
  self->overlay.guide_x = snap.guide_x;
  self->overlay.guide_y = snap.guide_y;
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return snap.place;
}

void
trammel_sheet_canvas_clear_guides (TrammelSheetCanvas *self)
{
  self->overlay.guide_x = self->overlay.guide_y = NAN;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* A key cursor that is there stays where it is when another tool that draws is taken. */
static void
sheet_canvas_clear_overlay (TrammelSheetCanvas *self, bool draws)
{
  const SheetOverlay before = self->overlay;

  self->overlay = nothing_over;
  self->overlay.has_cursor = before.has_cursor && draws;
  self->overlay.cursor = before.cursor;
}

void
trammel_sheet_canvas_set_tool (TrammelSheetCanvas *self, const char *word)
{
  if (g_strcmp0 (self->tool->kind->word, word) == 0 || tool_kind_find (word) == NULL)
    return;
  trammel_sheet_canvas_end_pull (self);
  tool_free (self->tool);
  sheet_canvas_clear_overlay (self, tool_kind_find (word)->draws);
  sheet_canvas_drop_pointer (self);
  self->tool = tool_new (word, self);
  self->fits = self->fits && (!sheet_canvas_draws_over_plan (self) || trammel_sheet_canvas_has_plan_alone (self));
  trammel_sheet_canvas_set_hint (self, NULL);
  if (self->tool->kind->begin != NULL)
    self->tool->kind->begin (self->tool);
  if (self->overlay.has_cursor)
    sheet_cursor_hover (self);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), self->tool->kind->cursor);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_signal_emit (self, signals[TOOL_CHANGED], 0);
}

Tool *
trammel_sheet_canvas_tool (TrammelSheetCanvas *self)
{
  return self->tool;
}

void
trammel_sheet_canvas_set_hint (TrammelSheetCanvas *self, const char *hint)
{
  g_free (self->hint);
  self->hint = g_strdup (hint);
  g_signal_emit (self, signals[HINT_CHANGED], 0);
}

/* With Select in hand and a thing selected, what can be done to that thing. */
const char *
trammel_sheet_canvas_hint (TrammelSheetCanvas *self)
{
  Grip *grip;
  const char *hint;

  if (self->hint != NULL)
    return self->hint;
  if (self->tool->kind == &tool_select && trammel_session_is_arranging (self->session))
    return _("Tick what may move; Next Best shows another arrangement, Use This takes it, Esc gives up.");
  grip = self->tool->kind == &tool_select
         ? grip_new_for_selection (trammel_session_aeroplane (self->session), trammel_session_selection (self->session)) : NULL;
  hint = grip != NULL ? grip_hint (grip) : _(self->tool->kind->hint);
  grip_free (grip);
  return hint;
}

void
trammel_sheet_canvas_set_part_class (TrammelSheetCanvas *self, const char *class_name)
{
  Part *usual = part_class_part (class_name);

  trammel_sheet_canvas_set_part_pattern (self, usual);
  if (usual != NULL)
    piece_unref (&usual->piece);
}

void
trammel_sheet_canvas_set_part_pattern (TrammelSheetCanvas *self, const Part *pattern)
{
  Part *next = pattern != NULL ? (Part *) piece_ref (&pattern->piece) : NULL;

  if (self->part_pattern != NULL)
    piece_unref (&self->part_pattern->piece);
  self->part_pattern = next;
}

static bool
sheet_canvas_has_class (const Aeroplane *aeroplane, const char *word)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (g_strcmp0 (aeroplane_part (aeroplane, i)->class_name, word) == 0)
      return true;
  return false;
}

Part *
trammel_sheet_canvas_part_pattern (TrammelSheetCanvas *self)
{
  /* What decides the balance most comes first. Common practice, no source. */
  static const char *const usual[] = { "battery", "motor", "controller", "receiver", "servo", "propeller" };

  if (self->part_pattern != NULL)
    return (Part *) piece_ref (&self->part_pattern->piece);
  for (size_t i = 0; i < G_N_ELEMENTS (usual); i++)
    if (!sheet_canvas_has_class (trammel_session_aeroplane (self->session), usual[i]))
      return part_class_part (usual[i]);
  return part_class_part ("servo");
}

Pull *
trammel_sheet_canvas_pull (TrammelSheetCanvas *self)
{
  return self->pull;
}

void
trammel_sheet_canvas_take_pull (TrammelSheetCanvas *self, Pull *takes)
{
  trammel_sheet_canvas_end_pull (self);
  self->pull = takes;
}

void
trammel_sheet_canvas_end_pull (TrammelSheetCanvas *self)
{
  Pull *pull = g_steal_pointer (&self->pull);

  if (pull == NULL)
    return;
  pull_free (pull);
  trammel_sheet_canvas_clear_guides (self);
  trammel_sheet_canvas_set_hint (self, NULL);
}

OutlineSpot *
trammel_sheet_canvas_spot (TrammelSheetCanvas *self)
{
  return &self->spot;
}

bool
trammel_sheet_canvas_pointer (TrammelSheetCanvas *self, Point *place)
{
  if (self->overlay.has_cursor) {
    *place = self->overlay.cursor;
    return true;
  }
  *place = self->pointer.place;
  return self->pointer_inside;
}

void
sheet_canvas_emit_view (TrammelSheetCanvas *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_signal_emit (self, signals[VIEW_CHANGED], 0);
}

void
sheet_canvas_emit_pointer (TrammelSheetCanvas *self)
{
  g_signal_emit (self, signals[POINTER_CHANGED], 0);
}
