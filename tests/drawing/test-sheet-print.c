/* A plan that is worked on: each outline over its own print, and that print to be seen. */
#include "drawing/sheet-print.h"
#include <math.h>
#include "drawing/plan-placing.h"
#include "support/aeroplanes.h"
#include "support/drawn-ink.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* 4 px a mm in the picture and on the screen. The wing's axis runs down the picture and stands at x = 100; the fin and the body from the side
 * lie along it, seen from port with their top towards its upper edge. */
enum { SIZE = 1000 };
static const double SCALE = 4;

static Easel *easel;
static SheetPlan shown;
static SheetPrint print;
static Plan *plan;

static Plan *
new_plan (void)
{
  Plan *made = plan_new ("plan");

  made->width = made->height = SIZE;
  made->lengths = g_new0 (PlanLength, made->length_count = 1);
  made->lengths[0] = (PlanLength) { .a = { 100, 50 }, .b = { 900, 50 }, .mm = 800 / SCALE };
  made->views = g_new0 (PlanView, made->view_count = 3);
  made->views[0] = (PlanView) { .id = g_strdup ("wing-view"), .shows = VIEW_WING, .fore = { 500, 100 }, .aft = { 500, 500 }, .x = 100 };
  made->views[1] = (PlanView) { .id = g_strdup ("fin-view"), .shows = VIEW_FIN, .fore = { 100, 800 }, .aft = { 300, 800 }, .x = 200 };
  made->views[2] = (PlanView) { .id = g_strdup ("side-view"), .shows = VIEW_BODY_SIDE, .fore = { 600, 700 }, .aft = { 900, 700 }, .z = 10 };
  return made;
}

static Surface *
new_surface (const char *id, SurfaceRole role, const char *view, Outline *takes)
{
  Surface *made = surface_new (id, role, takes);

  made->traced = g_strdup (view);
  return made;
}

static Aeroplane *
traced_aeroplane (void)
{
  static const Point wing[] = { { 100, 0 }, { 110, 80 }, { 150, 80 }, { 150, 0 } }, fin[] = { { 200, 0 }, { 220, 40 }, { 240, 40 }, { 245, 0 } },
                     side[] = { { 0, 10 }, { 20, 30 }, { 40, 30 }, { 60, 10 }, { 0, 10 } };
  Body *body = body_new ("body");
  Aeroplane *made = with_piece (aeroplane_new (), new_surface ("wing", ROLE_WING, "wing-view", polygon_from (wing, 4)));

  body->side_outline = polygon_from (side, 5);
  body->side_traced = g_strdup ("side-view");
  made = with_piece (made, new_surface ("fin", ROLE_FIN, "fin-view", polygon_from (fin, 4)));
  return with_piece (made, body);
}

/* The wing's tip is printed, as a line 9 px wide. */
static InkLevels *
printed_tip (void)
{
  static const Point tip[] = { { 820, 140 }, { 820, 300 } };

  return ink_levels_new (ink_of_lines (SIZE, SIZE, &(DrawnLine) { tip, 2, 9 }, 1));
}

static void
take_view (const char *id)
{
  Mapping mapping;

  print = (SheetPrint) { .plan = plan, .view = id };
  ck_assert_int_eq (plan_mapping (plan, false, &mapping, NULL, NULL), CORE_OK);
  ck_assert_int_eq (plan_placing (plan, &mapping, plan_view_by_id (plan, id), &shown.placing), CORE_OK);
}

static void
set_up (void)
{
  easel = easel_new (traced_aeroplane ());
  easel->view.scale = SCALE;
  easel->view.origin_x = 365.5;      /* the hairlines down the sheet fall on whole pixels */
  easel->view.origin_y = -300;
  easel->scene.show_grid = false;
  easel->scene.plan = &shown;
  easel->scene.print = &print;
  plan = new_plan ();
  shown = (SheetPlan) { .ink = printed_tip (), .strength = 1, .device_scale = 1 };
  take_view ("wing-view");
}

static void
tear_down (void)
{
  ink_levels_unref ((InkLevels *) shown.ink);
  piece_unref (&plan->piece);
  easel_free (easel);
}

static Point
px (double x, double y)
{
  return view_to_screen (&easel->view, (Point) { x, y });
}

static Colour
painted_at (Point at)
{
  Canvas canvas = easel_painted (easel, 1);
  const Colour colour = canvas_at (&canvas, at.x, at.y);

  canvas_clear (&canvas);
  return colour;
}

/* How much of a strip 2 px high along a line across the sheet at x, mm, between two places, is other than the sheet. */
static double
marked_along (double x, double from, double to)
{
  const Point a = px (x, from), b = px (x, to);
  Canvas canvas = easel_painted (easel, 1);
  const double ground = canvas_share (&canvas, (Box) { { a.x + 4, a.y - 1 }, { b.x - 4, a.y + 1 } }, easel->look.sheet);

  canvas_clear (&canvas);
  return 1 - ground;
}

START_TEST (the_print_is_seen_on_both_sides_of_the_outline_that_was_traced_from_it)
{
  const Point tip = px (130, 80);

  ck_assert_double_lt (colour_distance (painted_at ((Point) { tip.x, tip.y }), easel->look.selection), 0.12);
  for (int side = -1; side <= 1; side += 2)
    ck_assert_double_lt (colour_distance (painted_at ((Point) { tip.x + 3 * side, tip.y }), easel->look.plan_ink), 0.12);
  easel->scene.print = NULL;
  ck_assert_double_gt (colour_distance (painted_at ((Point) { tip.x + 2, tip.y }), easel->look.plan_ink), 0.3);
}
END_TEST

START_TEST (a_trace_in_the_hand_leaves_the_print_on_both_sides_of_it_to_be_seen)
{
  const Point accepted[] = { { 115, 80 }, { 145, 80 } };
  const SheetTrace trace = { .accepted = accepted, .accepted_count = 2, .clicks = accepted, .click_count = 2 };
  const Point tip = px (130, 80);

  easel->overlay.trace = &trace;
  for (int side = -1; side <= 1; side += 2)
    ck_assert_double_lt (colour_distance (painted_at ((Point) { tip.x + 2.5 * side, tip.y }), easel->look.plan_ink), 0.2);
}
END_TEST

START_TEST (what_was_traced_in_another_view_fades_where_it_stands)
{
  const double firm = marked_along (150, 20, 60);

  ck_assert_double_gt (firm, 0.4);
  take_view ("fin-view");
  const Point edge = px (150, 40);
  double seen = 0;
  for (int y = -1; y <= 1; y++)
    seen = fmax (seen, colour_distance (painted_at ((Point) { edge.x, edge.y + y }), easel->look.sheet));
  ck_assert_double_gt (seen, 0.05);
  ck_assert_double_lt (seen, 0.25);
}
END_TEST

/* Through the paper: 80 px aft of its root and 160 px above its axis in the picture, which is 135 mm down from the wing's and 80 to port. */
START_TEST (a_fin_is_seen_over_its_own_print_though_it_stands_in_the_side_view)
{
  ck_assert_double_gt (marked_along (235, -80, -60), 0.4);
  easel->scene.print = NULL;
  ck_assert_double_lt (marked_along (235, -80, -60), 0.05);
}
END_TEST

/* Its top is 20 mm above the view's axis, which stands 10 mm up. */
START_TEST (a_body_from_the_side_is_seen_over_its_own_print)
{
  ck_assert_double_gt (marked_along (230, 45, 65), 0.4);
  take_view ("side-view");
  easel->view.origin_y = 100;
  /* With its own view in hand the axis is the centre line: heights to the side that starboard is on. */
  const Point from = px (20, 20), to = px (40, 20);
  Canvas canvas = easel_painted (easel, 1);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { from.x - 1, from.y + 4 }, { from.x + 1, to.y - 4 } }, easel->look.selection), 0.2);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (laid_bare_the_plan_shows_nothing_but_its_print)
{
  const Point accepted[] = { { 115, 20 }, { 115, 60 } };
  const SheetTrace trace = { .accepted = accepted, .accepted_count = 2 };
  const Point tip = px (130, 80);

  easel->overlay.trace = &trace;
  ck_assert_double_gt (marked_along (115, 20, 60), 0.4);
  print.bare = true;
  ck_assert_double_lt (marked_along (115, 20, 60), 0.01);
  ck_assert_double_lt (marked_along (150, 20, 60), 0.01);
  ck_assert_double_lt (marked_along (235, -80, -60), 0.01);
  ck_assert_double_lt (colour_distance (painted_at (tip), easel->look.plan_ink), 0.12);
}
END_TEST

START_TEST (nodes_of_what_is_selected_are_open_dots_over_the_print)
{
  const Point node = px (150, 80);

  easel_select (easel, selection_of ("wing"));
  ck_assert_double_gt (colour_distance (painted_at ((Point) { node.x + 2.6, node.y + 1 }), easel->look.sheet), 0.1);
  ck_assert_double_lt (colour_distance (painted_at ((Point) { node.x + 1.5, node.y - 5 }), easel->look.plan_ink), 0.3);
}
END_TEST

/* The tip is at starboard and in the upper half: the magnifier is in the lower left corner, its middle there. */
START_TEST (the_magnifier_shows_the_outline_over_the_enlarged_print)
{
  const Point middle = { 14 + 84, easel->view.height - 46 - 84 };
  const Point beside_cross = { middle.x, middle.y - 40 };

  easel->overlay.has_magnified = true;
  easel->overlay.magnified = (Point) { 130, 80 };
  ck_assert_double_gt (colour_distance (painted_at (beside_cross), easel->look.plan_ink), 0.15);
  ck_assert_double_lt (colour_distance (painted_at ((Point) { beside_cross.x - 6, beside_cross.y }), easel->look.plan_ink), 0.05);
  print.bare = true;
  ck_assert_double_lt (colour_distance (painted_at (beside_cross), easel->look.plan_ink), 0.05);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("print");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_print_is_seen_on_both_sides_of_the_outline_that_was_traced_from_it);
  tcase_add_test (tests, a_trace_in_the_hand_leaves_the_print_on_both_sides_of_it_to_be_seen);
  tcase_add_test (tests, what_was_traced_in_another_view_fades_where_it_stands);
  tcase_add_test (tests, a_fin_is_seen_over_its_own_print_though_it_stands_in_the_side_view);
  tcase_add_test (tests, a_body_from_the_side_is_seen_over_its_own_print);
  tcase_add_test (tests, laid_bare_the_plan_shows_nothing_but_its_print);
  tcase_add_test (tests, nodes_of_what_is_selected_are_open_dots_over_the_print);
  tcase_add_test (tests, the_magnifier_shows_the_outline_over_the_enlarged_print);
  return run_suite (suite_create ("drawing sheet-print"), tests);
}
