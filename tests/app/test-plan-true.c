/* Making a plan true under a real hand: known lengths, a level line, a rectangle, views; each undone, and what was traced comes along. */
#include <math.h>
#include "app/plan-strip.h"
#include "app/plan-work.h"
#include "app/sheet-field.h"
#include "app/tool.h"
#include "document/plan-marks.h"
#include "drawing/plan-placing.h"
#include "support/sheet-hand.h"

enum { WIDTH = 1200, HEIGHT = 900 };

/* The ends of a ruled line, where a tick crosses it, 800 px from one to the other and turned a little; an upright one of 400. */
static const Point level_from = { 200, 402 }, level_to = { 1000, 410 }, upright_from = { 150, 200 }, upright_to = { 146, 600 };
/* A rectangle seen askew, its corners round from the upper left. */
static const Point corners[4] = { { 300.5, 250.5 }, { 900.5, 230.5 }, { 1050.5, 760.5 }, { 230.5, 700.5 } };

static void
draw_line (cairo_t *cr, Point a, Point b)
{
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
}

static void
draw_ruled (cairo_t *cr, Point a, Point b)
{
  const double length = point_distance (a, b);
  const Point across = { -(b.y - a.y) / length * 16, (b.x - a.x) / length * 16 }, along = { across.y, -across.x };

  draw_line (cr, point_sub (a, along), point_add (b, along));
  draw_line (cr, point_sub (a, across), point_add (a, across));
  draw_line (cr, point_sub (b, across), point_add (b, across));
}

static cairo_status_t
append (void *closure, const unsigned char *data, unsigned length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

/* The sheet as a PNG: two ruled lines, or the rectangle askew. */
static GBytes *
drawn_sheet (bool askew)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, WIDTH, HEIGHT);
  cairo_t *cr = cairo_create (surface);
  GByteArray *png = g_byte_array_new ();

  cairo_set_source_rgb (cr, 0.97, 0.96, 0.92);
  cairo_paint (cr);
  cairo_set_source_rgb (cr, 0.1, 0.1, 0.15);
  cairo_set_line_width (cr, 3);
  for (int i = 0; askew && i < 4; i++)
    draw_line (cr, corners[i], corners[(i + 1) % 4]);
  if (!askew) {
    draw_ruled (cr, level_from, level_to);
    draw_ruled (cr, upright_from, upright_to);
  }
  cairo_destroy (cr);
  ck_assert_int_eq (cairo_surface_write_to_png_stream (surface, append, png), CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
  return g_byte_array_free_to_bytes (png);
}

static TrammelPlanStore *
plans (void)
{
  return trammel_sheet_canvas_plan_store (hand_sheet ());
}

static const Plan *
plan (void)
{
  return trammel_plan_store_plan (plans ());
}

static bool
has_ink (gpointer data)
{
  return trammel_plan_store_ink (plans ()) != NULL;
}

/* The window with that plan beneath its sheet, the Plan tool in hand. */
static void
begin_with (Plan *takes)
{
  hand_begin_empty ();
  trammel_session_open (hand_session (), aeroplane_with_added (hand_aeroplane (), &takes->piece), NULL);
  ck_assert (gui_wait (has_ink, NULL));
  trammel_plan_work_set_step (trammel_plan_work_of (hand_sheet ()), PLAN_STEP_LENGTH);
  trammel_plan_work_set_way (trammel_plan_work_of (hand_sheet ()), PLAN_SQUARE_LEVEL);
  gtk_widget_grab_focus (GTK_WIDGET (hand_sheet ()));
  gui_key ("t");
  gui_wait_ms (250);                /* the strip has slid in */
  hand_look ((Point) { 150, 0 }, 1.9);
  gui_settle ();
}

static Plan *
new_plan (bool askew)
{
  Plan *made = plan_new ("sheet");

  made->image = drawn_sheet (askew);
  made->image_type = g_strdup ("image/png");
  made->width = WIDTH;
  made->height = HEIGHT;
  return made;
}

static void
begin (void)
{
  begin_with (new_plan (false));
}

/* Where a pixel of the picture lies on the sheet now, mm. */
static Point
on_sheet (Point px)
{
  Placing placing;

  ck_assert (trammel_plan_store_placing (plans (), &placing));
  return placing_sheet (&placing, px);
}

static void
click_px (Point px)
{
  hand_click (on_sheet (px));
}

static void
assert_px (Point got, Point wanted, double tolerance)
{
  ck_assert_msg (point_distance (got, wanted) <= tolerance, "(%g, %g) px, wanted (%g, %g)", got.x, got.y, wanted.x, wanted.y);
}

static GtkWidget *
strip (void)
{
  return gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_PLAN_STRIP);
}

static void
step (const char *name)
{
  gui_click (gui_await (strip (), name));
  gui_settle ();
}

static bool
field_is_open (gpointer data)
{
  return trammel_sheet_field_is_open (trammel_sheet_canvas_field (hand_sheet ()));
}

static void
type_length (const char *text)
{
  ck_assert (gui_wait (field_is_open, NULL));
  gui_type (text);
  gui_key ("Return");
  gui_settle ();
}

static void
click_level (void)
{
  click_px (point_add (level_from, (Point) { 4, -5 }));
  click_px (point_add (level_to, (Point) { -5, 3 }));
}

static void
set_level_length (const char *text)
{
  click_level ();
  type_length (text);
}

static const PlanLength *
length (void)
{
  ck_assert_uint_gt (plan ()->length_count, 0);
  return &plan ()->lengths[0];
}

static const PlanView *
view (void)
{
  ck_assert_uint_gt (plan ()->view_count, 0);
  return &plan ()->views[0];
}

/* Undo is so called and leads back there. */
static void
undoes (const char *label, const Aeroplane *there)
{
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), label);
  trammel_session_undo (hand_session ());
  ck_assert (aeroplane_equal (hand_aeroplane (), there));
}

/* Known lengths */

START_TEST (two_clicks_and_a_figure_make_a_known_length)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80 mm");
  ck_assert_uint_eq (plan ()->length_count, 1);
  ck_assert_double_eq (length ()->mm, 80);
  /* Both ends cling to the crossings they were clicked beside. */
  assert_px (length ()->a, level_from, 0.5);
  assert_px (length ()->b, level_to, 0.5);
  gui_await (strip (), "By that length the whole sheet is 120 × 90\u00a0mm.");
  gui_await (strip (), "Click another length across the first, to see how the paper has stretched, or go on with Square Up.");
  undoes ("Set Known Length", before_it);
}
END_TEST

static void add_view (void);

/* Where a pixel of the picture is seen, px of the window: what the strip says may take a line more. */
static Point
seen_at (Point px)
{
  const Point at = view_to_screen (trammel_sheet_canvas_view (hand_sheet ()), on_sheet (px));
  Point seen = { NAN, NAN };

  gui_settle ();
  gtk_widget_translate_coordinates (GTK_WIDGET (hand_sheet ()), GTK_WIDGET (hand_window ()), at.x, at.y, &seen.x, &seen.y);
  return seen;
}

START_TEST (a_plan_made_larger_or_turned_stays_where_it_was_under_the_hand)
{
  Placing placing;

  begin ();
  const SheetView view = *trammel_sheet_canvas_view (hand_sheet ());
  ck_assert (trammel_plan_store_placing (plans (), &placing));
  const Point middle = placing_px (&placing, view_from_screen (&view, view.width / 2, view.height / 2));
  const Point before = seen_at (middle), beside_before = seen_at (point_add (middle, (Point) { 100, 0 }));
  set_level_length ("137 mm");
  ck_assert_double_lt (point_distance (seen_at (middle), before), 1);
  ck_assert_double_lt (point_distance (seen_at (point_add (middle, (Point) { 100, 0 })), beside_before), 1);
  add_view ();
  ck_assert_double_lt (point_distance (seen_at (middle), before), 1);
}
END_TEST

START_TEST (ctrl_lets_go_of_what_is_printed)
{
  begin ();
  gui_key_down ("Control_L");
  click_level ();
  gui_key_up ("Control_L");
  type_length ("80");
  assert_px (length ()->a, point_add (level_from, (Point) { 4, -5 }), 1.6);
  ck_assert_double_gt (point_distance (length ()->a, level_from), 3);
}
END_TEST

START_TEST (inches_and_fractions_are_understood_whatever_the_units)
{
  begin ();
  set_level_length ("12 5/8 in");
  ck_assert_double_eq_tol (length ()->mm, 12.625 * 25.4, 1e-9);
}
END_TEST

START_TEST (a_second_length_across_tells_how_the_paper_stretched)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  hand_look ((Point) { 40, 0 }, 4);
  click_px (upright_from);
  click_px (upright_to);
  type_length ("40.4");
  ck_assert_uint_eq (plan ()->length_count, 2);
  gui_await (strip (), "Paper has stretched: across 1.0\u00a0% more than along. Both are used.");
  undoes ("Set Known Length", before_it);
}
END_TEST

START_TEST (undo_takes_back_an_unfinished_length_click_by_click_before_the_length_before_it)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80");
  hand_look ((Point) { 40, 0 }, 4);
  click_px (upright_from);
  click_px (upright_to);
  ck_assert (gui_wait (field_is_open, NULL));
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert (!field_is_open (NULL));
  gui_key ("<Control>z");
  ck_assert_uint_eq (plan ()->length_count, 1);
  gui_key ("<Control>z");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (a_field_left_with_esc_makes_no_length)
{
  begin ();
  click_px (level_from);
  click_px (level_to);
  ck_assert (gui_wait (field_is_open, NULL));
  gui_type ("80");
  gui_key ("Escape");
  hand_move (on_sheet ((Point) { 500, 700 }));
  ck_assert_uint_eq (plan ()->length_count, 0);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
  set_level_length ("80");
  assert_px (length ()->a, level_from, 0.5);
}
END_TEST

START_TEST (nothing_is_no_length)
{
  begin ();
  click_px (level_from);
  click_px (level_to);
  type_length ("0");
  ck_assert (field_is_open (NULL));
  gui_await (GTK_WIDGET (trammel_sheet_canvas_field (hand_sheet ())), "A known length must be above zero.");
  ck_assert_uint_eq (plan ()->length_count, 0);
}
END_TEST

START_TEST (an_end_is_dragged_typed_anew_nudged_and_deleted_by_hand_and_keys)
{
  const Point elsewhere = { 1000, 250 };
  Point before;

  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) set = aeroplane_ref (hand_aeroplane ());
  /* While it is dragged nothing turns under the hand; it is made true anew when it is let go. */
  hand_look ((Point) { 40, 0 }, 4);
  hand_drag (on_sheet (level_to), on_sheet (elsewhere));
  assert_px (length ()->b, elsewhere, 4);         /* a screen pixel is two and a half of the picture here */
  undoes ("Move Known Length", set);
  /* The figure. */
  hand_click (on_sheet (point_mix (level_from, level_to, 0.5)));
  type_length ("82");
  ck_assert_double_eq (length ()->mm, 82);
  undoes ("Set Known Length", set);
  /* Keys. */
  before = length ()->b;
  gui_key ("Tab");
  gui_key ("Tab");
  gui_key ("Right");
  gui_key ("Right");
  assert_px (length ()->b, point_add (before, (Point) { 2, 0 }), 0.1);
  gui_wait_ms (900);
  undoes ("Move Known Length", set);
  gui_key ("Return");
  type_length ("81");
  ck_assert_double_eq (length ()->mm, 81);
  undoes ("Set Known Length", set);
  gui_key ("Delete");
  ck_assert_uint_eq (plan ()->length_count, 0);
  undoes ("Remove Known Length", set);
}
END_TEST

START_TEST (esc_puts_a_dragged_end_back)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) set = aeroplane_ref (hand_aeroplane ());
  hand_pull (on_sheet (level_to), on_sheet ((Point) { 1000, 250 }));
  gui_key ("Escape");
  hand_release ();
  ck_assert (aeroplane_equal (hand_aeroplane (), set));
}
END_TEST

START_TEST (undone_in_the_middle_of_a_drag_a_length_is_gone)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80");
  hand_pull (on_sheet (level_to), on_sheet ((Point) { 1000, 250 }));
  gui_key ("<Control>z");
  hand_release ();
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (the_sheet_is_not_locked_between_two_clicks)
{
  begin ();
  click_px (level_from);
  gui_scroll (GTK_WIDGET (hand_sheet ()), 300, 300, 1);
  gui_key ("<Control>plus");
  hand_await_layout ();
  click_px (level_to);
  type_length ("80");
  assert_px (length ()->a, level_from, 0.5);
  assert_px (length ()->b, level_to, 0.5);
}
END_TEST

/* Square up */

static double
turn_of (Point a, Point b)
{
  Mapping mapping;

  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  const Point from = mapping_to_mm (&mapping, a), to = mapping_to_mm (&mapping, b);

  return atan2 (to.y - from.y, to.x - from.x);
}

START_TEST (a_line_dragged_along_the_print_levels_the_sheet_when_it_is_let_go)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  ck_assert_double_gt (fabs (turn_of (level_from, level_to)), 0.009);
  step ("Square Up");
  hand_pull (on_sheet ((Point) { 300, 406 }), on_sheet ((Point) { 900, 406 }));
  ck_assert_double_gt (fabs (turn_of (level_from, level_to)), 0.009);
  hand_release ();
  /* Level is what is printed there, not the hand's own line. */
  ck_assert_double_lt (fabs (turn_of (level_from, level_to)), 0.0005);
  undoes ("Level the Plan", before_it);
}
END_TEST

static double
side (size_t from, size_t to)
{
  Mapping mapping;

  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  return point_distance (mapping_to_mm (&mapping, corners[from]), mapping_to_mm (&mapping, corners[to]));
}

static void
click_corners (void)
{
  step ("Square Up");
  gui_click (gui_await (strip (), "Four Corners"));
  for (int i = 0; i < 4; i++)
    click_px (point_add (corners[i], (Point) { 3, -3 }));
}

START_TEST (four_corners_square_a_photograph_up_once_it_looks_right)
{
  begin_with (new_plan (true));
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  click_corners ();
  /* Offered: seen at once, and no step yet. */
  type_length ("200");
  type_length ("120");
  ck_assert_double_eq_tol (side (0, 1), 200, 0.5);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
  gui_click (gui_await (strip (), "Looks Right"));
  gui_settle ();
  ck_assert_double_eq_tol (side (0, 1), 200, 0.1);
  ck_assert_double_eq_tol (side (1, 2), 120, 0.1);
  ck_assert_double_eq_tol (side (0, 2), hypot (200, 120), 0.15);
  /* Its four printed sides are known to be straight. */
  ck_assert_uint_eq (plan ()->straight_count, 4);
  undoes ("Square Up", before_it);
}
END_TEST

START_TEST (esc_puts_an_offered_rectangle_back)
{
  begin_with (new_plan (true));
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  click_corners ();
  type_length ("200");
  ck_assert (gui_wait (field_is_open, NULL));
  gui_key ("Escape");
  gui_key ("Escape");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (a_straight_line_is_clicked_and_ended_with_return)
{
  begin_with (new_plan (true));
  click_corners ();
  type_length ("200");
  type_length ("120");
  gui_key ("Return");
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Square Up");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  gui_click (gui_await (strip (), "Straight Line"));
  hand_look (on_sheet ((Point) { 600, 450 }), 2.5);
  for (int i = 1; i < 4; i++)
    click_px ((Point) { 300 + 150 * i, 500 });
  gui_key ("Return");
  ck_assert_uint_eq (plan ()->straight_count, 5);
  ck_assert_uint_eq (plan ()->straight[4].count, 3);
  undoes ("Add Straight Line", before_it);
}
END_TEST

/* Views */

static void
add_view (void)
{
  step ("View");
  click_px (point_add (upright_from, (Point) { 5, 40 }));
  click_px (point_add (upright_to, (Point) { -5, -40 }));
}

/* What can be said and done of the view in hand beyond what stands in the strip. */
static GtkWidget *
about_view (const char *name)
{
  GtkWidget *button = gui_await (strip (), "About This View"), *found;

  if (gui_find (strip (), name) == NULL)
    gui_click (button);
  gui_settle ();
  found = gui_await (strip (), name);
  return GTK_IS_LABEL (found) ? gtk_widget_get_next_sibling (found) : found;      /* a list stands behind its name */
}

START_TEST (two_clicks_give_a_view_its_axis_along_the_printed_line)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  add_view ();
  ck_assert_uint_eq (plan ()->view_count, 1);
  ck_assert_int_eq (view ()->shows, VIEW_WING);
  /* On the line, forward end first. */
  const Point way = point_sub (upright_to, upright_from), fore = point_sub (view ()->fore, upright_from);
  ck_assert_double_lt (fabs (fore.x * way.y - fore.y * way.x) / hypot (way.x, way.y), 0.3);
  ck_assert_double_lt (view ()->fore.y, view ()->aft.y);
  /* In hand, and on the sheet's centre line. */
  ck_assert_ptr_eq (trammel_plan_store_view (plans ()), view ());
  const Point forward = on_sheet (view ()->fore), after = on_sheet (view ()->aft);
  ck_assert_double_lt (hypot (forward.x, forward.y), 1e-6);
  ck_assert_double_lt (fabs (after.y), 1e-6);
  undoes ("Add View", before_it);
}
END_TEST

START_TEST (what_a_view_shows_can_be_changed_and_the_view_removed)
{
  begin ();
  add_view ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  gtk_drop_down_set_selected (GTK_DROP_DOWN (about_view ("What the View Shows")), VIEW_FIN);
  ck_assert_int_eq (view ()->shows, VIEW_FIN);
  undoes ("Change View", before_it);
  gui_click (about_view ("Remove View"));
  ck_assert_uint_eq (plan ()->view_count, 0);
  undoes ("Remove View", before_it);
}
END_TEST

static const Outline *
wing (void)
{
  return hand_surface ("wing")->outline;
}

/* A wing traced in the first view, 40 mm of half span. */
static void
trace_a_wing (void)
{
  const Segment segments[] = { segment_line ((Point) { 5, 40 }), segment_line ((Point) { 20, 40 }), segment_line ((Point) { 25, 0 }) };
  const NodeKind kinds[] = { NODE_CORNER, NODE_CORNER, NODE_CORNER, NODE_CORNER };
  Outline *outline = NULL;
  Surface *surface;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, 3, kinds, &outline), CORE_OK);
  surface = surface_new ("wing", ROLE_WING, outline);
  surface->traced = g_strdup (view ()->id);
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &surface->piece), "Trace");
}

START_TEST (a_length_corrected_carries_the_traced_wing_along)
{
  begin ();
  set_level_length ("80");
  add_view ();
  trace_a_wing ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  step ("Known Length");
  hand_look (on_sheet (point_mix (level_from, level_to, 0.5)), 6);
  hand_click (on_sheet (point_mix (level_from, level_to, 0.5)));
  type_length ("88");
  ck_assert_double_eq_tol (outline_node (wing (), 1).y, 44, 1e-6);
  ck_assert_double_eq_tol (outline_node (wing (), 3).x, 27.5, 1e-6);
  undoes ("Set Known Length", before_it);
}
END_TEST

START_TEST (one_drag_along_the_body_drops_a_view_into_its_place)
{
  begin ();
  set_level_length ("80");
  add_view ();
  trace_a_wing ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  hand_look ((Point) { 40, 30 }, 5);
  hand_drag ((Point) { 10, 60 }, (Point) { 40, 62 });
  ck_assert_double_eq_tol (view ()->x, 30, 1);
  ck_assert_double_eq_tol (outline_node (wing (), 0).x, view ()->x, 1e-6);
  ck_assert_double_eq_tol (outline_node (wing (), 1).y, 40, 1e-6);
  undoes ("Place View", before_it);
}
END_TEST

START_TEST (the_place_of_a_view_is_typed_and_nudged)
{
  begin ();
  set_level_length ("80");
  add_view ();
  trace_a_wing ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  /* Forward end, after end, the view itself. */
  for (int i = 0; i < 3; i++)
    gui_key ("Tab");
  gui_key ("Down");
  gui_key ("<Shift>Down");
  ck_assert_double_eq (view ()->x, 11);
  gui_wait_ms (900);
  undoes ("Place View", before_it);
  gui_key ("Return");
  type_length ("62.5");
  ck_assert_double_eq (view ()->x, 62.5);
  ck_assert_double_eq_tol (outline_node (wing (), 0).x, 62.5, 1e-6);
}
END_TEST

static Plan *
plan_with_a_side_view (void)
{
  Plan *made = new_plan (false), *one, *both;

  one = plan_with_view (made, (PlanView) { .shows = VIEW_BODY_SIDE, .fore = { 200, 402 }, .aft = { 1000, 410 }, .x = 10 });
  both = plan_with_view (one, (PlanView) { .shows = VIEW_WING, .fore = upright_from, .aft = upright_to });
  piece_unref (&made->piece);
  piece_unref (&one->piece);
  both->views[0].id = g_strdup ("side");
  both->views[1].id = g_strdup ("wing-view");
  return both;
}

START_TEST (the_place_of_a_view_is_clicked_in_the_side_view)
{
  Point forward;

  begin_with (plan_with_a_side_view ());
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  step ("View");
  gui_click (about_view ("Click Its Place in the Side View"));
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "side");
  hand_look ((Point) { 100, 0 }, 2);
  forward = on_sheet ((Point) { 500, 390 });
  hand_click (forward);
  ck_assert_double_eq_tol (plan ()->views[1].x, forward.x, 0.5);
  ck_assert_double_eq (plan ()->views[0].x, 10);
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "wing-view");
  undoes ("Place View", before_it);
  /* Esc leaves it where it is. */
  gui_click (about_view ("Click Its Place in the Side View"));
  gui_key ("Escape");
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "wing-view");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

/* The strip */

static bool
strip_is_shut (gpointer data)
{
  return !gtk_widget_get_visible (gtk_widget_get_first_child (strip ()));
}

START_TEST (trace_takes_the_outline_tool_and_done_shuts_the_strip)
{
  begin ();
  add_view ();
  step ("Trace");
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "outline");
  ck_assert (!strip_is_shut (NULL));
  gui_click (gui_await (strip (), "Add View"));
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "plan");
  ck_assert_ptr_null (trammel_plan_store_view (plans ()));
  step ("Square Up");
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "plan");
  gui_click (gui_await (strip (), "Done"));
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "select");
  ck_assert (gui_wait (strip_is_shut, NULL));
}
END_TEST

int
main (void)
{
  TCase *lengths = tcase_create ("known lengths"), *square = tcase_create ("square up"), *views = tcase_create ("views");
  TCase *cases[] = { lengths, square, views };

  tcase_add_test (lengths, two_clicks_and_a_figure_make_a_known_length);
  tcase_add_test (lengths, a_plan_made_larger_or_turned_stays_where_it_was_under_the_hand);
  tcase_add_test (lengths, ctrl_lets_go_of_what_is_printed);
  tcase_add_test (lengths, inches_and_fractions_are_understood_whatever_the_units);
  tcase_add_test (lengths, a_second_length_across_tells_how_the_paper_stretched);
  tcase_add_test (lengths, undo_takes_back_an_unfinished_length_click_by_click_before_the_length_before_it);
  tcase_add_test (lengths, a_field_left_with_esc_makes_no_length);
  tcase_add_test (lengths, nothing_is_no_length);
  tcase_add_test (lengths, an_end_is_dragged_typed_anew_nudged_and_deleted_by_hand_and_keys);
  tcase_add_test (lengths, esc_puts_a_dragged_end_back);
  tcase_add_test (lengths, undone_in_the_middle_of_a_drag_a_length_is_gone);
  tcase_add_test (lengths, the_sheet_is_not_locked_between_two_clicks);
  tcase_add_test (square, a_line_dragged_along_the_print_levels_the_sheet_when_it_is_let_go);
  tcase_add_test (square, four_corners_square_a_photograph_up_once_it_looks_right);
  tcase_add_test (square, esc_puts_an_offered_rectangle_back);
  tcase_add_test (square, a_straight_line_is_clicked_and_ended_with_return);
  tcase_add_test (views, two_clicks_give_a_view_its_axis_along_the_printed_line);
  tcase_add_test (views, what_a_view_shows_can_be_changed_and_the_view_removed);
  tcase_add_test (views, a_length_corrected_carries_the_traced_wing_along);
  tcase_add_test (views, one_drag_along_the_body_drops_a_view_into_its_place);
  tcase_add_test (views, the_place_of_a_view_is_typed_and_nudged);
  tcase_add_test (views, the_place_of_a_view_is_clicked_in_the_side_view);
  tcase_add_test (views, trace_takes_the_outline_tool_and_done_shuts_the_strip);
  return hand_run ("plan made true", cases, G_N_ELEMENTS (cases));
}
