#include "app/sheet-area.h"
#include "trammel-config.h"
#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include "app/plan-strip.h"
#include "app/plan-work.h"
#include "app/pointer-plate.h"
#include "app/ruler-widget.h"
#include "app/sheet-actions.h"
#include "app/sheet-field.h"
#include "app/side-strip.h"
#include "app/status-line.h"
#include "app/tool.h"
#include "app/tools-column.h"

struct _TrammelSheetArea {
  GtkWidget parent;
  TrammelSession *session;
  TrammelSheetCanvas *sheet;
  GtkWidget *row, *tools, *overlay, *grid, *unit, *plan;
  GtkWidget *side_heading, *side_rule, *side;
  GtkWidget *plate, *field;
  GActionGroup *actions;
  GtkWidget *window;        /* that the actions are in; NULL: none */
  guint idle;
};

G_DEFINE_FINAL_TYPE (TrammelSheetArea, trammel_sheet_area, GTK_TYPE_WIDGET)

/* Narrower than this the whole width is the sheet's. */
enum { WIDTH_WITH_SIDE_VIEW = 800 };

static guint edit_requested_signal;

static void
trammel_sheet_area_dispose (GObject *object)
{
  TrammelSheetArea *self = TRAMMEL_SHEET_AREA (object);

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_pointer (&self->row, gtk_widget_unparent);
  g_clear_object (&self->actions);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_sheet_area_parent_class)->dispose (object);
}

/* The window's menus and keys reach the sheet's actions, too. */
static void
trammel_sheet_area_root (GtkWidget *widget)
{
  TrammelSheetArea *self = TRAMMEL_SHEET_AREA (widget);

  GTK_WIDGET_CLASS (trammel_sheet_area_parent_class)->root (widget);
  self->window = GTK_WIDGET (gtk_widget_get_root (widget));
  gtk_widget_insert_action_group (self->window, "sheet", self->actions);
}

static void
trammel_sheet_area_unroot (GtkWidget *widget)
{
  TrammelSheetArea *self = TRAMMEL_SHEET_AREA (widget);

  gtk_widget_insert_action_group (self->window, "sheet", NULL);
  self->window = NULL;
  GTK_WIDGET_CLASS (trammel_sheet_area_parent_class)->unroot (widget);
}

static gboolean
sheet_area_show_side (gpointer data)
{
  TrammelSheetArea *self = data;
  const int width = gtk_widget_get_width (GTK_WIDGET (self));
  const bool shown = (width == 0 || width >= WIDTH_WITH_SIDE_VIEW)      /* 0: not yet laid out */
                     && trammel_settings_flag (trammel_session_settings (self->session), SHOW_SIDE_VIEW);

  self->idle = 0;
  gtk_widget_set_visible (self->side, shown);
  gtk_widget_set_visible (self->side_rule, shown);
  gtk_widget_set_visible (self->side_heading, shown);
  return G_SOURCE_REMOVE;
}

/* Which children there are must not change while they are given their places. */
static void
sheet_area_ask_side (TrammelSheetArea *self)
{
  if (self->idle == 0)
    self->idle = g_idle_add (sheet_area_show_side, self);
}

static void
trammel_sheet_area_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  TrammelSheetArea *self = TRAMMEL_SHEET_AREA (widget);

  if ((width >= WIDTH_WITH_SIDE_VIEW) != gtk_widget_get_visible (self->side))
    sheet_area_ask_side (self);
  gtk_widget_allocate (self->row, width, height, baseline, NULL);
}

static void
trammel_sheet_area_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                            int *minimum_baseline, int *natural_baseline)
{
  gtk_widget_measure (TRAMMEL_SHEET_AREA (widget)->row, orientation, for_size, minimum, natural, minimum_baseline, natural_baseline);
}

/* Keys mean the sheet from the start. */
static void
trammel_sheet_area_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (trammel_sheet_area_parent_class)->map (widget);
  if (gtk_root_get_focus (gtk_widget_get_root (widget)) == NULL)
    trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (widget));
}

static gboolean
trammel_sheet_area_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (TRAMMEL_SHEET_AREA (widget)->sheet));
}

static void
trammel_sheet_area_class_init (TrammelSheetAreaClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_sheet_area_dispose;
  widget_class->root = trammel_sheet_area_root;
  widget_class->unroot = trammel_sheet_area_unroot;
  widget_class->map = trammel_sheet_area_map;
  widget_class->grab_focus = trammel_sheet_area_grab_focus;
  widget_class->size_allocate = trammel_sheet_area_size_allocate;
  widget_class->measure = trammel_sheet_area_measure;
  gtk_widget_class_set_css_name (widget_class, "sheetarea");
  edit_requested_signal = g_signal_new ("edit-requested", TRAMMEL_TYPE_SHEET_AREA, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                        G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
trammel_sheet_area_init (TrammelSheetArea *self)
{
}

/* Colours of the sheet beside it, where the platform has none for it. */
static void
sheet_area_follow_style (TrammelSheetArea *self)
{
  AdwStyleManager *style = adw_style_manager_get_default ();
  const char *classes[3] = { NULL };
  size_t count = 0;

  if (adw_style_manager_get_dark (style))
    classes[count++] = "dark";
  if (adw_style_manager_get_high_contrast (style))
    classes[count++] = "contrast";
  gtk_widget_set_css_classes (GTK_WIDGET (self), classes);
}

static void
sheet_area_show_unit (TrammelSheetArea *self)
{
  gtk_label_set_label (GTK_LABEL (self->unit), units_length_name (trammel_session_units (self->session)));
  sheet_area_ask_side (self);
}

static gboolean
sheet_area_place_floating (GtkOverlay *overlay, GtkWidget *widget, GdkRectangle *place, TrammelSheetArea *self)
{
  if (widget == self->plate)
    trammel_pointer_plate_position (TRAMMEL_POINTER_PLATE (widget), GTK_WIDGET (overlay), place);
  else
    trammel_sheet_field_position (TRAMMEL_SHEET_FIELD (widget), GTK_WIDGET (overlay), place);
  return TRUE;
}

static GtkWidget *
sheet_area_heading (const char *text)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_widget_add_css_class (label, "ruler-ground");
  gtk_widget_add_css_class (label, "dim-label");
  return label;
}

/* Rulers, sheet and side view keep their sides in every language: an aeroplane has a starboard. */
static void
sheet_area_lay_grid (TrammelSheetArea *self)
{
  GtkGrid *grid = GTK_GRID (self->grid = gtk_grid_new ());
  GtkWidget *status = trammel_status_line_new (self->sheet);

  gtk_widget_set_direction (self->grid, GTK_TEXT_DIR_LTR);
  self->unit = sheet_area_heading (NULL);
  self->side_heading = sheet_area_heading (_("Side View"));
  self->side_rule = gtk_separator_new (GTK_ORIENTATION_VERTICAL);
  self->side = trammel_side_strip_new (self->sheet);
  gtk_grid_attach (grid, self->unit, 0, 0, 1, 1);
  gtk_grid_attach (grid, trammel_ruler_widget_new (self->sheet, GTK_ORIENTATION_HORIZONTAL), 1, 0, 1, 1);
  gtk_grid_attach (grid, self->side_rule, 2, 2, 1, 1);
  gtk_grid_attach (grid, self->side_heading, 3, 0, 1, 1);
  self->plan = trammel_plan_strip_new (self->sheet);
  trammel_plan_strip_set_side (TRAMMEL_PLAN_STRIP (self->plan), self->side);
  gtk_grid_attach (grid, self->plan, 0, 1, 4, 1);
  gtk_grid_attach (grid, trammel_ruler_widget_new (self->sheet, GTK_ORIENTATION_VERTICAL), 0, 2, 1, 1);
  gtk_grid_attach (grid, GTK_WIDGET (self->sheet), 1, 2, 1, 1);
  gtk_grid_attach (grid, self->side, 3, 2, 1, 1);
  gtk_grid_attach (grid, status, 0, 3, 4, 1);
}

static void
sheet_area_lay_overlay (TrammelSheetArea *self)
{
  self->overlay = gtk_overlay_new ();
  self->plate = trammel_pointer_plate_new ();
  self->field = trammel_sheet_field_new ();
  trammel_sheet_canvas_set_floating (self->sheet, TRAMMEL_POINTER_PLATE (self->plate), TRAMMEL_SHEET_FIELD (self->field));
  g_signal_connect (self->overlay, "get-child-position", G_CALLBACK (sheet_area_place_floating), self);
  gtk_overlay_set_child (GTK_OVERLAY (self->overlay), self->grid);
  gtk_overlay_add_overlay (GTK_OVERLAY (self->overlay), self->plate);
  gtk_overlay_add_overlay (GTK_OVERLAY (self->overlay), self->field);
}

static void
sheet_area_add_keys (TrammelSheetArea *self)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_set_scope (GTK_SHORTCUT_CONTROLLER (keys), GTK_SHORTCUT_SCOPE_GLOBAL);
  gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (keys), gtk_shortcut_new (gtk_shortcut_trigger_parse_string ("<Control>g"),
                                                                                          gtk_named_action_new ("sheet.snapping")));
  gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (keys), gtk_shortcut_new (gtk_shortcut_trigger_parse_string ("<Control>j"),
                                                                                          gtk_named_action_new ("sheet.group")));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

static void
sheet_area_edit_requested (TrammelSheetArea *self, const char *text)
{
  g_signal_emit (self, edit_requested_signal, 0, text);
}

GtkWidget *
trammel_sheet_area_new (TrammelSession *session)
{
  TrammelSheetArea *self = g_object_new (TRAMMEL_TYPE_SHEET_AREA, NULL);
  AdwStyleManager *style = adw_style_manager_get_default ();

  self->session = g_object_ref (session);
  self->sheet = trammel_sheet_canvas_new (session);
  self->actions = sheet_actions_new (self->sheet);
  self->tools = trammel_tools_column_new (self->sheet);
  sheet_area_lay_grid (self);
  sheet_area_lay_overlay (self);
  self->row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_box_append (GTK_BOX (self->row), self->tools);
  gtk_box_append (GTK_BOX (self->row), gtk_separator_new (GTK_ORIENTATION_VERTICAL));
  gtk_box_append (GTK_BOX (self->row), self->overlay);
  gtk_widget_set_parent (self->row, GTK_WIDGET (self));
  sheet_area_add_keys (self);
  g_signal_connect_object (style, "notify::dark", G_CALLBACK (sheet_area_follow_style), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (style, "notify::high-contrast", G_CALLBACK (sheet_area_follow_style), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (sheet_area_show_unit), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->sheet, "edit-requested", G_CALLBACK (sheet_area_edit_requested), self, G_CONNECT_SWAPPED);
  sheet_area_follow_style (self);
  sheet_area_show_unit (self);
  return GTK_WIDGET (self);
}

void
trammel_sheet_area_set_tool (TrammelSheetArea *self, const char *tool)
{
  trammel_sheet_canvas_set_tool (self->sheet, tool);
}

const char *
trammel_sheet_area_tool (TrammelSheetArea *self)
{
  return trammel_sheet_canvas_tool (self->sheet)->kind->word;
}

void
trammel_sheet_area_set_part_pattern (TrammelSheetArea *self, const Part *pattern)
{
  trammel_sheet_canvas_set_part_pattern (self->sheet, pattern);
}

void
trammel_sheet_area_fit (TrammelSheetArea *self)
{
  trammel_sheet_canvas_fit (self->sheet, false);
}

TrammelPlanStore *
trammel_sheet_area_plan_store (TrammelSheetArea *self)
{
  return trammel_sheet_canvas_plan_store (self->sheet);
}

void
trammel_sheet_area_show_plan (TrammelSheetArea *self)
{
  if (trammel_sheet_canvas_has_plan_alone (self->sheet))
    trammel_sheet_canvas_fit (self->sheet, false);
  trammel_sheet_area_focus (self);
}

void
trammel_sheet_area_begin_plan (TrammelSheetArea *self)
{
  TrammelPlanStore *plans = trammel_sheet_canvas_plan_store (self->sheet);
  bool is_true = false;

  trammel_sheet_canvas_set_tool (self->sheet, "plan");
  if (trammel_plan_store_mapping (plans, NULL, NULL, &is_true) && is_true)
    trammel_plan_work_set_step (trammel_plan_work_of (self->sheet), PLAN_STEP_VIEW);
}

bool
trammel_sheet_area_take_back (TrammelSheetArea *self)
{
  return trammel_sheet_canvas_take_back (self->sheet);
}

bool
trammel_sheet_area_hand_on (TrammelSheetArea *self, GtkEventControllerKey *keys)
{
  const bool taken = !gtk_widget_has_focus (GTK_WIDGET (self->sheet)) && gtk_event_controller_key_forward (keys, GTK_WIDGET (self->sheet));

  if (taken)
    gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
  return taken;
}

void
trammel_sheet_area_focus (TrammelSheetArea *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
}

bool
trammel_sheet_area_focus_tools (TrammelSheetArea *self)
{
  return trammel_tools_column_focus (TRAMMEL_TOOLS_COLUMN (self->tools));
}

static bool
sheet_area_focus_is_in (TrammelSheetArea *self, GtkWidget *widget)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

  return focus != NULL && gtk_widget_is_ancestor (focus, widget);
}

bool
trammel_sheet_area_tools_have_focus (TrammelSheetArea *self)
{
  return sheet_area_focus_is_in (self, self->tools);
}

bool
trammel_sheet_area_focus_plan (TrammelSheetArea *self)
{
  return trammel_plan_strip_focus (TRAMMEL_PLAN_STRIP (self->plan));
}

bool
trammel_sheet_area_plan_has_focus (TrammelSheetArea *self)
{
  return sheet_area_focus_is_in (self, self->plan);
}

Point
trammel_sheet_area_middle (TrammelSheetArea *self)
{
  const SheetView *view = trammel_sheet_canvas_view (self->sheet);

  return view_from_screen (view, view->width / 2, view->height / 2);
}

void
trammel_sheet_area_reveal_selection (TrammelSheetArea *self)
{
  trammel_sheet_canvas_reveal_selection (self->sheet);
}
