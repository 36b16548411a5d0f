#include "support/sheet-hand.h"
#include <math.h>
#include "app/panel.h"
#include "app/pointer-plate.h"
#include "app/side-strip.h"
#include "document/reader.h"
#include "document/writer.h"
#include "drawing/side-view.h"

static struct { TrammelWindow *window; TrammelSheetCanvas *sheet; } hand;

static bool
hand_panel_is_gone (gpointer data)
{
  GtkWidget *panel = gui_find_type (GTK_WIDGET (hand.window), TRAMMEL_TYPE_PANEL);

  return panel == NULL || !gtk_widget_get_child_visible (panel) || !gtk_widget_get_mapped (panel);
}

static void
hand_raise (void)
{
  stage_raise ();
  hand.window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  hand.sheet = TRAMMEL_SHEET_CANVAS (gui_await (GTK_WIDGET (hand.window), "Sheet"));
  /* The panel is as wide as what is selected wants it; a sheet that keeps its width keeps its whole px. */
  g_action_group_change_action_state (G_ACTION_GROUP (hand.window), "show-panel", g_variant_new_boolean (FALSE));
  ck_assert (gui_wait (hand_panel_is_gone, NULL));
  hand_await_layout ();
}

static void
hand_strike (void)
{
  stage_strike ();
}

static void
hand_begin_with (Aeroplane *takes)
{
  ck_assert_ptr_nonnull (takes);
  /* A test that failed in the middle of a drag must not spoil the next. */
  gui_release (1);
  gui_key_up ("Control_L");
  gui_key_up ("Shift_L");
  trammel_settings_set_flag (trammel_session_settings (hand_session ()), SNAPPING, true);
  trammel_settings_set_units (trammel_session_settings (hand_session ()), (Units) { LENGTH_MM, MASS_G });
  trammel_session_open (hand_session (), takes, NULL);
  trammel_sheet_canvas_set_tool (hand.sheet, "select");
  trammel_sheet_canvas_set_part_class (hand.sheet, NULL);
  gtk_widget_grab_focus (GTK_WIDGET (hand.sheet));
  hand_look ((Point) { 120, 0 }, 4);
  gui_settle ();
}

static void
hand_begin (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", "saltmarsh-racer.trammel", NULL);

  hand_begin_with (reader_read_file (path, NULL, NULL));
}

void
hand_begin_empty (void)
{
  hand_begin_with (aeroplane_new ());
  gtk_widget_activate_action (GTK_WIDGET (hand.window), "win.empty-sheet", NULL);
  gui_settle ();
}

TrammelWindow *
hand_window (void)
{
  return hand.window;
}

TrammelSession *
hand_session (void)
{
  return trammel_window_session (hand.window);
}

TrammelSheetCanvas *
hand_sheet (void)
{
  return hand.sheet;
}

const Aeroplane *
hand_aeroplane (void)
{
  return trammel_session_aeroplane (hand_session ());
}

const Part *
hand_part (const char *id)
{
  const Part *part = aeroplane_part_by_id (hand_aeroplane (), id);

  ck_assert_msg (part != NULL, "there is no part “%s”", id);
  return part;
}

const Surface *
hand_surface (const char *id)
{
  const Surface *surface = aeroplane_surface_by_id (hand_aeroplane (), id);

  ck_assert_msg (surface != NULL, "there is no surface “%s”", id);
  return surface;
}

Point
hand_node (const char *id, size_t node)
{
  return outline_node (hand_surface (id)->outline, node);
}

/* The side view is as wide as the zoom wants it, within its step, and the sheet has what is left. */
static bool
hand_layout_rests (gpointer data)
{
  GtkWidget *strip = gui_find_type (GTK_WIDGET (hand.window), TRAMMEL_TYPE_SIDE_STRIP);
  const SheetScene scene = trammel_sheet_canvas_scene (hand.sheet);

  return trammel_sheet_canvas_view (hand.sheet)->width == gtk_widget_get_width (GTK_WIDGET (hand.sheet))
         && (strip == NULL || fabs (side_view_wanted_width (&scene) - gtk_widget_get_width (strip)) < 16);
}

void
hand_await_layout (void)
{
  ck_assert (gui_wait (hand_layout_rests, NULL));
}

void
hand_look (Point middle, double scale)
{
  SheetView view = *trammel_sheet_canvas_view (hand.sheet);

  view.scale = scale;
  view.origin_x = round (view.width / 2 - middle.y * scale);
  view.origin_y = round (view.height / 2 - middle.x * scale);
  trammel_sheet_canvas_set_view (hand.sheet, view);
  hand_await_layout ();
  /* The sheet's middle is another then. */
  if (trammel_sheet_canvas_view (hand.sheet)->width != view.width)
    hand_look (middle, scale);
}

Point
hand_px (Point place)
{
  return view_to_screen (trammel_sheet_canvas_view (hand.sheet), place);
}

void
hand_move (Point place)
{
  const Point px = hand_px (place);

  gui_move_to (GTK_WIDGET (hand.sheet), px.x, px.y);
}

void
hand_press (Point place)
{
  static gint64 last;
  const gint64 since = (g_get_monotonic_time () - last) / 1000;

  /* Not within the time of a double click. */
  if (since < 450)
    gui_wait_ms ((int) (450 - since));
  hand_move (place);
  gui_press (1);
  last = g_get_monotonic_time ();
}

void
hand_release (void)
{
  gui_release (1);
}

void
hand_click (Point place)
{
  hand_press (place);
  hand_release ();
}

void
hand_context_click (Point place)
{
  const Point px = hand_px (place);

  gui_context_click_at (GTK_WIDGET (hand.sheet), px.x, px.y);
}

void
hand_pull (Point from, Point to)
{
  hand_press (from);
  for (int step = 1; step <= 4; step++)
    hand_move (point_mix (from, to, step / 4.0));
}

void
hand_drag (Point from, Point to)
{
  hand_pull (from, to);
  hand_release ();
}

const char *
hand_selected (void)
{
  const char *id = selection_single (trammel_session_selection (hand_session ()));

  return id != NULL ? id : "";
}

char *
hand_text (void)
{
  size_t length;

  return writer_text (hand_aeroplane (), &length);
}

const char *
hand_plate (const char *row)
{
  GtkWidget *plate = gui_find_type (GTK_WIDGET (hand.window), TRAMMEL_TYPE_POINTER_PLATE);
  GtkWidget *name = plate != NULL ? gui_find (plate, row) : NULL, *figure = NULL;
  int x, y;

  if (name == NULL)
    return NULL;
  gtk_grid_query_child (GTK_GRID (gtk_widget_get_parent (name)), name, &x, &y, NULL, NULL);
  figure = gtk_grid_get_child_at (GTK_GRID (gtk_widget_get_parent (name)), x + 1, y);
  return gtk_label_get_text (GTK_LABEL (figure));
}

void
hand_undoes (const char *label, const char *text)
{
  g_autofree char *before = NULL;

  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), label);
  trammel_session_undo (hand_session ());
  before = hand_text ();
  ck_assert_str_eq (before, text);
}

int
hand_run (const char *name, TCase *cases[], size_t count)
{
  Suite *suite = suite_create (name);

  gui_begin ();
  for (size_t i = 0; i < count; i++) {
    tcase_add_unchecked_fixture (cases[i], hand_raise, hand_strike);
    tcase_add_checked_fixture (cases[i], hand_begin, NULL);
    tcase_set_timeout (cases[i], 0);
    suite_add_tcase (suite, cases[i]);
  }
  return gui_run (suite);
}
