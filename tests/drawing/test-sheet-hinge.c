/* A control about to be put, and the hinge line of a fin in the side view: how they are drawn, and where they are caught. */
#include <math.h>
#include "document/changes.h"
#include "drawing/hit.h"
#include "drawing/side-places.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;
static SideScene side;

static const Control rudder = { .kind = CONTROL_RUDDER, .inner = 8, .outer = 60, .hinge_inner_x = 436, .hinge_outer_x = 438, .up = NAN,
                                .down = NAN };
static const Control flap = { .kind = CONTROL_FLAP, .inner = 40, .outer = 140, .hinge_inner_x = 215, .hinge_outer_x = 215, .up = NAN,
                              .down = NAN };

static void
set_up (void)
{
  Aeroplane *plain = racer_in_full ();

  easel = easel_new (change_control_added (plain, "fin", &rudder, NULL));
  aeroplane_unref (plain);
  side = (SideScene) { .scene = &easel->scene, .width = 163, .height = 704 };
}

static void
tear_down (void)
{
  easel_free (easel);
}

static const Surface *
surface (const char *id)
{
  return aeroplane_surface_by_id (easel->figures->aeroplane, id);
}

/* A row of px across a line that runs across the sheet at x, mm, between two stations. */
static double
share_along (Canvas canvas, double x, double from, double to, Colour colour)
{
  const Point a = view_to_screen (&easel->view, (Point) { x, from }), b = view_to_screen (&easel->view, (Point) { x, to });
  const double found = canvas_share (&canvas, (Box) { { a.x, a.y - 1 }, { b.x, b.y + 1 } }, colour);

  canvas_clear (&canvas);
  return found;
}

static double
on_sheet (double x, double from, double to, Colour colour)
{
  return share_along (easel_painted (easel, 1), x, from, to, colour);
}

/* Within the px of a grip about a place of the sheet. */
static double
about (double x, double station, Colour colour)
{
  const Point at = view_to_screen (&easel->view, (Point) { x, station });
  Canvas canvas = easel_painted (easel, 1);
  const double found = canvas_share (&canvas, (Box) { { at.x - 5, at.y - 5 }, { at.x + 5, at.y + 5 } }, colour);

  canvas_clear (&canvas);
  return found;
}

static Point
side_px (double x, double z)
{
  return (Point) { side_view_px_of_z (&side, z), view_to_screen (&easel->view, (Point) { x, 0 }).y };
}

static Hit
side_hit (double x, double z, double dx, double dy)
{
  return side_view_hit (&side, side_px (x, z).x + dx, side_px (x, z).y + dy, 12);
}

/* How much of the strip is of that colour. */
static double
in_strip (Colour colour)
{
  Canvas canvas = canvas_new (side.width, side.height, 1, (Colour) { 1, 0, 1, 1 });

  draw_side_view (canvas.cr, &side);
  const double found = canvas_share (&canvas, (Box) { { 0, 0 }, { side.width, side.height } }, colour);
  canvas_clear (&canvas);
  return found;
}

START_TEST (a_control_about_to_be_put_is_broken_on_both_halves_and_has_grips_where_the_hand_is)
{
  SheetHinge hinge = { .surface = surface ("wing"), .line = flap, .has_line = true };
  const Colour colour = easel->look.selection;

  easel->overlay.hinge = &hinge;
  ck_assert_double_gt (on_sheet (215, 50, 130, colour), 0.15);
  ck_assert_double_lt (on_sheet (215, 50, 130, colour), 0.6);
  ck_assert_double_gt (on_sheet (215, -130, -50, colour), 0.15);
  const double without = about (215, -40, colour);
  ck_assert_double_gt (about (215, 40, colour), without + 0.1);
  hinge.port = true;
  ck_assert_double_gt (about (215, -40, colour), without + 0.1);
}
END_TEST

START_TEST (one_that_cannot_be_put_is_drawn_in_the_warning_colour)
{
  const SheetHinge hinge = { .surface = surface ("wing"), .line = flap, .has_line = true, .wrong = true };

  easel->overlay.hinge = &hinge;
  ck_assert_double_gt (on_sheet (215, 50, 130, easel->look.warning), 0.15);
  ck_assert_double_lt (on_sheet (215, 50, 130, easel->look.selection), 0.01);
}
END_TEST

START_TEST (a_fins_stands_in_the_side_view_and_laid_down_over_its_view_on_the_sheet)
{
  SheetHinge hinge = { .surface = surface ("fin"), .line = { .inner = 8, .outer = 60, .hinge_inner_x = 445, .hinge_outer_x = 445 },
                       .has_line = true };
  const Colour colour = easel->look.selection;

  ck_assert_double_lt (in_strip (colour), 1e-6);
  easel->overlay.hinge = &hinge;
  ck_assert_double_gt (in_strip (colour), 1e-4);
  ck_assert_double_lt (on_sheet (445, 15, 55, colour), 0.01);
  hinge.laid_down = true;
  ck_assert_double_lt (in_strip (colour), 1e-6);
  ck_assert_double_gt (on_sheet (445, 15, 55, colour), 0.15);
  ck_assert_double_lt (on_sheet (445, -55, -15, colour), 0.01);
}
END_TEST

START_TEST (a_fins_hinge_line_is_caught_in_the_side_view_and_its_ends_once_it_is_selected)
{
  Hit hit = side_hit (437, 34, 3, 0);

  ck_assert_int_eq (hit.kind, HIT_CONTROL);
  ck_assert_str_eq (hit.id, "fin");
  ck_assert_str_eq (hit.control, "rudder");
  ck_assert_int_eq (side_hit (410, 20, 0, 0).kind, HIT_SURFACE);
  easel_select (easel, selection_of_control ("fin", "rudder"));
  hit = side_hit (438, 60, 4, -4);
  ck_assert_int_eq (hit.kind, HIT_HINGE_END);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert_uint_eq (side_hit (436, 8, -4, 3).index, 0);
}
END_TEST

START_TEST (a_selected_rudder_is_shown_in_the_side_view_and_catches_nothing_on_the_sheet)
{
  const Colour colour = easel->look.selection;
  const Point px = view_to_screen (&easel->view, (Point) { 438, 60 });

  easel_select (easel, selection_of_control ("fin", "rudder"));
  ck_assert_double_gt (in_strip (colour), 1e-4);
  ck_assert_int_ne (sheet_hit (&easel->scene, px.x, px.y, 12).kind, HIT_HINGE_END);
}
END_TEST

START_TEST (places_snap_to_where_another_surfaces_control_ends)
{
  const double near = 2 / easel->view.scale;
  const Snap snap = sheet_snap (&easel->scene, (Point) { 240, 160 + near }, "tail", SNAP_WHOLE);

  ck_assert_double_eq (snap.place.y, 160);
  ck_assert_double_eq (snap.guide_y, 160);
  ck_assert (isnan (sheet_snap (&easel->scene, (Point) { 240, 160 + near }, "wing", SNAP_WHOLE).guide_y));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("hinge lines");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, a_control_about_to_be_put_is_broken_on_both_halves_and_has_grips_where_the_hand_is);
  tcase_add_test (tests, one_that_cannot_be_put_is_drawn_in_the_warning_colour);
  tcase_add_test (tests, a_fins_stands_in_the_side_view_and_laid_down_over_its_view_on_the_sheet);
  tcase_add_test (tests, a_fins_hinge_line_is_caught_in_the_side_view_and_its_ends_once_it_is_selected);
  tcase_add_test (tests, a_selected_rudder_is_shown_in_the_side_view_and_catches_nothing_on_the_sheet);
  tcase_add_test (tests, places_snap_to_where_another_surfaces_control_ends);
  return run_suite (suite_create ("sheet-hinge"), tests);
}
