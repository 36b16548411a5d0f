/* Views of a plan under a real hand: their axes and places, and what was traced comes along. */
#include "app/first-place.h"
#include "app/plan-view-edit.h"
#include "app/plan-work.h"
#include "app/side-strip.h"
#include "document/changes.h"
#include "support/plan-hand.h"

static bool
has_views (gpointer count)
{
  return plan ()->view_count == GPOINTER_TO_SIZE (count);
}

/* The look for the printed line at an axis's ends runs beside the window. */
static void
await_views (size_t count)
{
  ck_assert_msg (gui_wait (has_views, GSIZE_TO_POINTER (count)), "%zu views stand, not %zu", plan ()->view_count, count);
}

START_TEST (two_clicks_give_a_view_its_axis_along_the_printed_line)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  add_view ();
  await_views (1);
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

START_TEST (a_further_view_is_proposed_of_what_is_not_there_yet)
{
  static const ViewShows there[] = { VIEW_TAILPLANE, VIEW_BODY_TOP, VIEW_BODY_SIDE };

  begin ();
  add_view ();
  for (size_t i = 0; i < G_N_ELEMENTS (there); i++) {
    Plan *next = plan_with_view (plan (), (PlanView) { .shows = there[i], .fore = upright_from, .aft = upright_to });

    trammel_session_do (hand_session (), change_plan (hand_aeroplane (), plan ()->piece.id, next), "Add View");
  }
  plan_view_add (hand_sheet ());
  ck_assert_int_eq (trammel_plan_work_next_view (trammel_plan_work_of (hand_sheet ())).shows, VIEW_FIN);
}
END_TEST

START_TEST (a_further_views_axis_may_lie_on_one_that_is_there)
{
  begin ();
  add_view ();
  const Point fore = view ()->fore, aft = view ()->aft;
  plan_view_add (hand_sheet ());
  gui_settle ();
  click_px (fore);
  click_px (aft);
  await_views (2);
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

START_TEST (esc_while_a_view_is_added_goes_back_to_the_view_before)
{
  begin ();
  set_level_length ("80");
  add_view ();
  g_autofree char *before = g_strdup (view ()->id);
  gui_click (gui_await (strip (), "Add View"));
  ck_assert_ptr_null (trammel_plan_store_view (plans ()));
  /* The first takes back a click in hand, the second leads back. */
  click_px ((Point) { 600, 600 });
  gui_key ("Escape");
  ck_assert_ptr_null (trammel_plan_store_view (plans ()));
  gui_key ("Escape");
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, before);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "plan");
}
END_TEST

START_TEST (the_plan_stays_where_it_is_seen_when_a_further_view_is_added_or_not)
{
  const Point part = { 640, 600 };
  Point seen;

  begin ();
  set_level_length ("80");
  add_view ();
  hand_look (on_sheet (part), 6);
  seen = seen_at (part);
  gui_click (gui_await (strip (), "Add View"));
  ck_assert_double_lt (point_distance (seen_at (part), seen), 60);        /* what the strip says may take a line more */
  gui_key ("Escape");
  ck_assert_double_lt (point_distance (seen_at (part), seen), 60);
}
END_TEST

/* The pixel of the picture that the key cursor is on. */
static Point
cursor_px (void)
{
  Placing placing;

  ck_assert (trammel_sheet_canvas_overlay (hand_sheet ())->has_cursor);
  ck_assert (trammel_plan_store_placing (plans (), &placing));
  return placing_px (&placing, trammel_sheet_canvas_overlay (hand_sheet ())->cursor);
}

START_TEST (an_axis_set_by_keys_leaves_the_key_cursor_on_the_print_and_a_further_view_the_keyboard_on_the_sheet)
{
  Point px;

  begin ();
  set_level_length ("80");
  step ("View");
  hand_move (on_sheet (point_add (upright_from, (Point) { 5, 40 })));
  gui_key ("Right");
  gui_key ("Return");
  await_look ();
  for (int i = 0; i < 6; i++)
    gui_key ("<Shift>Down");
  px = cursor_px ();
  gui_key ("Return");
  await_views (1);
  assert_px (cursor_px (), px, 1e-3);
  gui_click (gui_await (strip (), "Add View"));
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
}
END_TEST

START_TEST (so_short_an_axis_that_it_tells_no_direction_is_asked_for_again)
{
  begin ();
  set_level_length ("80");
  step ("View");
  hand_look (on_sheet ((Point) { 600, 600 }), 10);
  click_px ((Point) { 600, 600 });
  click_px ((Point) { 602, 620 });
  ck_assert_uint_eq (plan ()->view_count, 0);
  gui_await (strip (), "So short an axis does not tell its direction: click its two ends further apart, or zoom in.");
}
END_TEST

/* Degrees by which an axis clicked across a squared sheet is off it; longer ones tell their direction better. */
static const struct { Point to; const char *says; } askew[] = {
  { { 603, 720 }, "As clicked the axis ran" }, { { 605, 880 }, "The axis runs" }, { { 650, 880 }, NULL } };

START_TEST (an_axis_a_little_off_a_squared_sheet_is_said_to_be_so)
{
  const char *said;

  begin ();
  set_level_length ("80");
  step ("Square Up");
  hand_drag (on_sheet ((Point) { 300, 406 }), on_sheet ((Point) { 900, 406 }));
  await_look ();
  step ("View");
  hand_look (on_sheet ((Point) { 600, 740 }), 10);
  click_px ((Point) { 600, 600 });
  click_px (askew[_i].to);
  await_views (1);
  said = trammel_plan_work_note (trammel_plan_work_of (hand_sheet ()), plan ());
  ck_assert_msg (askew[_i].says == NULL ? said == NULL : said != NULL && g_str_has_prefix (said, askew[_i].says), "“%s”", said);
  /* It goes when something else is done. */
  step ("Square Up");
  ck_assert_ptr_null (trammel_plan_work_note (trammel_plan_work_of (hand_sheet ()), plan ()));
}
END_TEST

START_TEST (on_a_squared_sheet_an_axis_is_as_straight_as_the_sheet)
{
  Mapping mapping;

  begin ();
  set_level_length ("80");
  step ("Square Up");
  hand_drag (on_sheet ((Point) { 300, 406 }), on_sheet ((Point) { 900, 406 }));
  await_look ();
  step ("View");
  hand_look (on_sheet ((Point) { 600, 650 }), 10);
  click_px ((Point) { 600, 600 });
  click_px ((Point) { 603, 720 });
  await_views (1);
  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  ck_assert_double_eq_tol (mapping_to_mm (&mapping, view ()->fore).x, mapping_to_mm (&mapping, view ()->aft).x, 1e-6);
  ck_assert_double_eq_tol (point_distance (view ()->fore, (Point) { 600, 600 }), 0, 1);
}
END_TEST

START_TEST (a_second_view_stands_for_now_where_it_usually_does_until_it_is_dragged)
{
  begin ();
  set_level_length ("80");
  add_view ();
  trace_a_wing ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  gui_click (gui_await (strip (), "Add View"));
  gui_await (strip (), "Click the forward end of the tailplane's axis, the line its two halves meet at.");
  hand_look (on_sheet ((Point) { 600, 650 }), 6);
  click_px ((Point) { 600, 550 });
  click_px ((Point) { 600, 800 });
  await_views (2);
  /* Behind the wing, whose trailing edge is 25 mm aft. */
  ck_assert_double_gt (plan ()->views[1].x, 27);
  gui_await (strip (), "It stands for now where such a part usually does: drag the plan along to its own place, or go on with Trace.");
  ck_assert (plan ()->views[1].for_now);
  hand_drag ((Point) { plan ()->views[1].x + 5, 5 }, (Point) { plan ()->views[1].x + 15, 5 });
  gui_await (strip (), "Drag the plan along to where this view stands on the aeroplane, or go on with Trace.");
  ck_assert (!plan ()->views[1].for_now);
  trammel_session_undo (hand_session ());
  undoes ("Add View", before_it);
}
END_TEST

START_TEST (a_document_opened_again_says_what_stands_for_now_until_that_place_is_typed)
{
  begin_with (plan_with_a_guess ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "tail-view");
  step ("View");
  gui_await (strip (), "It stands for now where such a part usually does: drag the plan along to its own place, or go on with Trace.");
  for (int i = 0; i < 3; i++)
    gui_key ("Tab");
  gui_key ("Return");
  type_length ("90");
  ck_assert (!plan ()->views[1].for_now);
  gui_await (strip (), "Drag the plan along to where this view stands on the aeroplane, or go on with Trace.");
}
END_TEST

START_TEST (a_body_printed_on_the_wings_centre_line_stands_where_the_sheet_shows_it)
{
  Mapping mapping;
  PlanView body = { .shows = VIEW_BODY_TOP, .side = VIEW_BOTH, .for_now = true };
  double ahead;

  begin_with (plan_with_a_guess ());
  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  /* Its nose a quarter of the line ahead of the wing's axis, its tail behind it: two millimetres off the line at most. */
  body.fore = point_mix (upright_from, upright_to, -0.25);
  body.aft = point_add (point_mix (upright_from, upright_to, 2), (Point) { 3, 0 });
  ahead = point_distance (mapping_to_mm (&mapping, body.fore), mapping_to_mm (&mapping, upright_from));
  ck_assert (place_on_sheet (plan (), &mapping, &body));
  ck_assert_double_eq_tol (body.x, 10 - ahead, 0.05);
  ck_assert (!body.for_now);
  /* On the tailplane's line it is as sure as the tailplane; beside all lines, or askew, the sheet does not tell. */
  body.fore = (Point) { 600, 300 };
  body.aft = (Point) { 600, 850 };
  ck_assert (place_on_sheet (plan (), &mapping, &body));
  ck_assert (body.for_now);
  body.aft.x = 700;
  ck_assert (!place_on_sheet (plan (), &mapping, &body));
  body.fore.x = body.aft.x = 400;
  ck_assert (!place_on_sheet (plan (), &mapping, &body));
  /* A fin's root lies on a side view's line, and tells nothing of a wing. */
  ck_assert (!place_on_sheet (plan (), &mapping, &(PlanView) { .shows = VIEW_FIN, .fore = upright_from, .aft = upright_to }));
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

START_TEST (the_place_of_a_view_is_clicked_in_the_side_view)
{
  Point forward;

  begin_with (plan_with_a_side_view (false));
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  step ("View");
  gui_click (about_view ("Click Its Place in the Side View"));
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "side");
  hand_look ((Point) { 100, 0 }, 2);
  forward = on_sheet ((Point) { 500, 390 });
  hand_click (forward);
  ck_assert_double_eq_tol (plan ()->views[1].x, forward.x, 0.5);
  ck_assert_double_eq_tol (plan ()->views[1].z, forward.y + 4, 0.5);
  ck_assert (plan ()->views[0].x == 10 && plan ()->views[0].z == 4);
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "wing-view");
  undoes ("Place View", before_it);
  /* Esc leaves it where it is. */
  gui_click (about_view ("Click Its Place in the Side View"));
  gui_key ("Escape");
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "wing-view");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (of_a_view_that_was_traced_the_root_s_leading_edge_is_clicked_in_the_side_view)
{
  const Segment segments[] = { segment_line ((Point) { 12, 40 }), segment_line ((Point) { 20, 40 }), segment_line ((Point) { 25, 0 }) };
  Outline *outline = NULL;
  Surface *surface;
  Point there;

  begin_with (plan_with_a_side_view (false));
  ck_assert_int_eq (outline_new ((Point) { 7, 0 }, segments, 3, NULL, &outline), CORE_OK);
  surface = surface_new ("wing", ROLE_WING, outline);
  surface->traced = g_strdup ("wing-view");
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &surface->piece), "Trace");
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  step ("View");
  gui_click (about_view ("Click Its Place in the Side View"));
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "In the side view click where the root's leading edge stands.");
  hand_look ((Point) { 100, 0 }, 2);
  there = on_sheet ((Point) { 500, 390 });
  hand_click (there);
  ck_assert_double_eq_tol (outline_node (hand_surface ("wing")->outline, 0).x, there.x, 0.5);
}
END_TEST

/* The strip */

/* The plan's size is a guess, which is said, too. */
#define NO_LENGTH "No length is known yet: the outline will be wrong in size until step Known Length tells one, and then goes along " \
                  "with it.\n"

START_TEST (a_side_view_that_is_not_there_is_said_while_something_is_traced_that_stands_in_it)
{
  static const char off[] = NO_LENGTH "What is traced here stands in the side view, which is switched off: the menu shows it.";
  static const char small[] = NO_LENGTH "What is traced here stands in the side view, which has no room now: fold the panel away with F9, "
                              "or widen the window.";
  TrammelSettings *settings;

  begin_with (plan_with_a_side_view (false));
  settings = trammel_session_settings (hand_session ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "side");
  step ("Trace");
  ck_assert_ptr_null (gui_find (strip (), off));
  trammel_settings_set_flag (settings, SHOW_SIDE_VIEW, false);
  gui_await (strip (), off);
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  ck_assert_ptr_null (gui_find (strip (), off));
  trammel_plan_store_choose (plans (), plan ()->piece.id, "side");
  trammel_settings_set_flag (settings, SHOW_SIDE_VIEW, true);
  gui_settle ();
  ck_assert_ptr_null (gui_find (strip (), off));
  /* As the sheet's area does where it is too narrow. */
  gtk_widget_set_visible (gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_SIDE_STRIP), FALSE);
  gui_await (strip (), small);
}
END_TEST

static bool
strip_is_shut (gpointer data)
{
  return !gtk_widget_get_visible (gtk_widget_get_first_child (strip ()));
}

START_TEST (done_lays_the_wing_s_view_beneath_again)
{
  begin ();
  set_level_length ("80");
  add_view ();
  Plan *next = plan_with_view (plan (), (PlanView) { .shows = VIEW_FIN, .fore = upright_to, .aft = upright_from });

  trammel_session_do (hand_session (), change_plan (hand_aeroplane (), plan ()->piece.id, next), "Add View");
  trammel_plan_store_choose (plans (), plan ()->piece.id, plan ()->views[1].id);
  gui_settle ();
  ck_assert_int_eq (trammel_plan_store_view (plans ())->shows, VIEW_FIN);
  gui_click (gui_await (strip (), "Done"));
  ck_assert_int_eq (trammel_plan_store_view (plans ())->shows, VIEW_WING);
}
END_TEST

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
  TCase *tests = tcase_create ("views");

  tcase_add_test (tests, two_clicks_give_a_view_its_axis_along_the_printed_line);
  tcase_add_test (tests, a_further_view_is_proposed_of_what_is_not_there_yet);
  tcase_add_test (tests, a_further_views_axis_may_lie_on_one_that_is_there);
  tcase_add_test (tests, what_a_view_shows_can_be_changed_and_the_view_removed);
  tcase_add_test (tests, a_length_corrected_carries_the_traced_wing_along);
  tcase_add_test (tests, esc_while_a_view_is_added_goes_back_to_the_view_before);
  tcase_add_test (tests, the_plan_stays_where_it_is_seen_when_a_further_view_is_added_or_not);
  tcase_add_test (tests, so_short_an_axis_that_it_tells_no_direction_is_asked_for_again);
  tcase_add_loop_test (tests, an_axis_a_little_off_a_squared_sheet_is_said_to_be_so, 0, G_N_ELEMENTS (askew));
  tcase_add_test (tests, on_a_squared_sheet_an_axis_is_as_straight_as_the_sheet);
  tcase_add_test (tests, a_second_view_stands_for_now_where_it_usually_does_until_it_is_dragged);
  tcase_add_test (tests, a_document_opened_again_says_what_stands_for_now_until_that_place_is_typed);
  tcase_add_test (tests, a_body_printed_on_the_wings_centre_line_stands_where_the_sheet_shows_it);
  tcase_add_test (tests, one_drag_along_the_body_drops_a_view_into_its_place);
  tcase_add_test (tests, the_place_of_a_view_is_typed_and_nudged);
  tcase_add_test (tests, the_place_of_a_view_is_clicked_in_the_side_view);
  tcase_add_test (tests, of_a_view_that_was_traced_the_root_s_leading_edge_is_clicked_in_the_side_view);
  tcase_add_test (tests, a_side_view_that_is_not_there_is_said_while_something_is_traced_that_stands_in_it);
  tcase_add_test (tests, trace_takes_the_outline_tool_and_done_shuts_the_strip);
  tcase_add_test (tests, done_lays_the_wing_s_view_beneath_again);
  tcase_add_test (tests, an_axis_set_by_keys_leaves_the_key_cursor_on_the_print_and_a_further_view_the_keyboard_on_the_sheet);
  return hand_run ("plan views", &tests, 1);
}
