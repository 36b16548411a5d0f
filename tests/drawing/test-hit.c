#include "drawing/hit.h"
#include <math.h>
#include "drawing/sheet-places.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static Easel *easel;
static const double radius = 12;

static void set_up (void) { easel = easel_new (racer_in_full ()); }
static void tear_down (void) { easel_free (easel); }

/* What is hit at a place in millimetres, shifted by px. */
static Hit
hit_at (double x, double y, double dx, double dy)
{
  const Point px = view_to_screen (&easel->view, (Point) { x, y });

  return sheet_hit (&easel->scene, px.x + dx, px.y + dy, radius);
}

typedef struct { const char *because; double x, y; HitKind kind; const char *id; bool port; } Expected;

static const Expected unselected[] = {
  { "the middle of the wing",           .x = 190, .y = 60,    .kind = HIT_SURFACE, .id = "wing" },
  { "its other half",                   .x = 190, .y = -60,   .kind = HIT_SURFACE, .id = "wing", .port = true },
  { "the body lies over the wing",      .x = 225, .y = 12,    .kind = HIT_BODY, .id = "body" },
  { "the tail",                         .x = 410, .y = 80,    .kind = HIT_SURFACE, .id = "tail" },
  { "a part inside the body",           .x = 100, .y = 3,     .kind = HIT_PART, .id = "battery" },
  { "a part in the wing",               .x = 176, .y = -125,  .kind = HIT_PART, .id = "servo-left" },
  { "the wing's edge",                  .x = 157, .y = 320,   .kind = HIT_SEGMENT, .id = "wing" },
  { "a hinge line",                     .x = 191, .y = 225,   .kind = HIT_CONTROL, .id = "wing" },
  { "the same to port",                 .x = 191, .y = -225,  .kind = HIT_CONTROL, .id = "wing", .port = true },
  { "the fin's edge, behind the rod",   .x = 440, .y = 0,     .kind = HIT_SURFACE, .id = "fin" },
  { "the datum",                        .x = 0, .y = 250,     .kind = HIT_DATUM },
  { "empty sheet",                      .x = 330, .y = 250,   .kind = HIT_NOTHING },
};

START_TEST (each_thing_is_found_where_it_is_drawn)
{
  const Expected *e = &unselected[_i];
  const Hit hit = hit_at (e->x, e->y, 0, 0);

  ck_assert_msg (hit.kind == e->kind && g_strcmp0 (hit.id, e->id) == 0 && hit.port == e->port,
                 "%s: kind %d, id %s, port %d", e->because, hit.kind, hit.id ? hit.id : "none", hit.port);
}
END_TEST

START_TEST (nodes_are_caught_only_while_their_outline_is_selected)
{
  ck_assert_int_eq (hit_at (112, 0, -3, -2).kind == HIT_NODE, false);
  easel_select (easel, selection_of ("wing"));
  for (int node = 0; node < 3; node++)
    {
      const Outline *outline = aeroplane_surface_by_id (easel->figures->aeroplane, "wing")->outline;
      const Point at = outline_node (outline, node);
      const Hit hit = hit_at (at.x, at.y, 5, -6);

      ck_assert_int_eq (hit.kind, HIT_NODE);
      ck_assert_uint_eq (hit.index, node);
      ck_assert (!hit.port || at.y == 0);
    }
}
END_TEST

START_TEST (a_mirrored_node_is_the_same_node_met_to_port)
{
  Hit hit;

  easel_select (easel, selection_of ("wing"));
  hit = hit_at (157, -320, -4, 3);
  ck_assert_int_eq (hit.kind, HIT_NODE);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert (hit.port);
}
END_TEST

START_TEST (nodes_are_caught_within_the_radius_and_not_beyond)
{
  easel_select (easel, selection_of ("wing"));
  ck_assert_int_eq (hit_at (157, 320, radius - 0.5, 0).kind, HIT_NODE);
  ck_assert_int_ne (hit_at (157, 320, radius + 0.5, 0).kind, HIT_NODE);
}
END_TEST

START_TEST (a_selected_node_shows_handles_that_can_be_caught)
{
  Outline *curved = outline_from ((Point) { 112, 0 }, (Segment[]) {
    segment_curve ((Point) { 112, 150 }, (Point) { 130, 300 }, (Point) { 170, 300 }),
    segment_curve ((Point) { 215, 300 }, (Point) { 240, 150 }, (Point) { 240, 0 }) }, 2);
  Hit hit;

  easel_free (easel);
  easel = easel_new (racer_with_wing (curved));
  easel_select (easel, selection_of ("wing"));
  ck_assert_int_ne (hit_at (130, 300, 2, 2).kind, HIT_HANDLE);
  easel_select (easel, selection_of_node ("wing", false, 1));
  hit = hit_at (130, 300, 2, 2);
  ck_assert_int_eq (hit.kind, HIT_HANDLE);
  ck_assert_int_eq (hit.side, HANDLE_BEFORE);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert_int_eq (hit_at (215, 300, 2, 2).side, HANDLE_AFTER);
  ck_assert_int_eq (hit_at (170, 300, 1, 1).kind, HIT_NODE);
}
END_TEST

START_TEST (a_selected_outline_is_caught_by_its_lines_with_the_place_on_them)
{
  Hit hit;

  easel_select (easel, selection_of ("wing"));
  hit = hit_at (157 + 0.6 * 85, 0.8 * 320, 7, 7);      /* outside it, on no hinge line */
  ck_assert_int_eq (hit.kind, HIT_SEGMENT);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert_double_gt (hit.t, 0.2);
  ck_assert_double_lt (hit.t, 0.7);
}
END_TEST

START_TEST (hinge_ends_are_caught_while_their_control_is_selected)
{
  Hit hit;

  easel_select (easel, selection_of_control ("wing", "ailerons"));
  hit = hit_at (179, 290, 4, -4);
  ck_assert_int_eq (hit.kind, HIT_HINGE_END);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert_str_eq (hit.control, "ailerons");
  hit = hit_at (203, -160, 4, -4);
  ck_assert_uint_eq (hit.index, 0);
  ck_assert (hit.port);
}
END_TEST

START_TEST (rail_ends_stand_beside_the_selected_part)
{
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");
  const double x = sheet_rail_px (&easel->look, &easel->view, battery) - easel->view.origin_x;
  Hit hit;

  easel_select (easel, selection_of ("battery"));
  hit = hit_at (82, 0, x - 1, 1);
  ck_assert_int_eq (hit.kind, HIT_RAIL_END);
  ck_assert_uint_eq (hit.index, 0);
  hit = hit_at (134, 0, x - 1, 1);
  ck_assert_int_eq (hit.kind, HIT_RAIL_END);
  ck_assert_uint_eq (hit.index, 1);
  ck_assert_int_eq (hit_at (124, 0, 0, 0).kind, HIT_PART);      /* the part itself is not lost to its rail */
}
END_TEST

START_TEST (marks_are_caught_on_both_sides)
{
  Point place;
  Hit hit;

  ck_assert (sheet_mark_place (easel->figures, 0, &place));
  hit = hit_at (place.x, place.y, 3, 4);
  ck_assert_int_eq (hit.kind, HIT_MARK);
  ck_assert_uint_eq (hit.index, 0);
  ck_assert (hit_at (place.x, -place.y, 3, 4).port);
}
END_TEST

START_TEST (the_neutral_point_is_caught_on_its_sign)
{
  Point place;
  Hit hit;

  ck_assert (sheet_neutral_point (easel->figures, &place));
  hit = hit_at (place.x, place.y, 2, 3);
  ck_assert_int_eq (hit.kind, HIT_POINT);
  ck_assert_uint_eq (hit.index, SHEET_POINT_NEUTRAL);
  ck_assert_int_ne (hit_at (place.x, place.y, 0, 20).kind, HIT_POINT);
}
END_TEST

/* A part beneath is wanted more often: it can be dragged, the point cannot. */
START_TEST (the_balance_point_is_caught_where_no_part_lies_beneath)
{
  Easel *bare = easel_new (with_part (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), "ballast", 200, 300));
  const Point px = view_to_screen (&bare->view, (Point) { 300, 0 });
  const Hit beneath = sheet_hit (&bare->scene, px.x, px.y, radius);

  ck_assert_int_eq (beneath.kind, HIT_PART);
  bare->figures->mass.x_mm = 260;
  const Point clear = view_to_screen (&bare->view, (Point) { 260, 0 });
  const Hit hit = sheet_hit (&bare->scene, clear.x, clear.y, radius);
  ck_assert_int_eq (hit.kind, HIT_POINT);
  ck_assert_uint_eq (hit.index, SHEET_POINT_BALANCE);
  easel_free (bare);
}
END_TEST

START_TEST (what_lies_beneath_is_reached_one_after_another_and_round)
{
  Easel *bare = easel_new (with_part (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), "ballast", 200, 150));
  const Point px = view_to_screen (&bare->view, (Point) { 150, 0 });
  Hit hit = sheet_hit (&bare->scene, px.x, px.y, radius);
  const HitKind wanted[] = { HIT_PART, HIT_POINT, HIT_SURFACE, HIT_PART };

  for (size_t i = 0; i < G_N_ELEMENTS (wanted); i++)
    {
      ck_assert_int_eq (hit.kind, wanted[i]);
      hit = sheet_hit_beneath (&bare->scene, px.x, px.y, radius, &hit);
    }
  easel_free (bare);
}
END_TEST

START_TEST (a_selected_part_is_met_before_one_that_lies_over_it)
{
  ck_assert_str_eq (hit_at (170, 0, 0, 0).id, "receiver");
  easel_select (easel, selection_of ("wiring"));
  ck_assert_str_eq (hit_at (160, 0, 0, 0).id, "wiring");
  easel_select (easel, selection_of ("battery"));
  ck_assert_str_eq (hit_at (150, 0, 0, 0).id, "battery");
}
END_TEST

START_TEST (a_small_part_is_met_before_the_shell_around_it)
{
  Part *cowl = part_new ("cowl", "cowl");

  cowl->x = 30;
  cowl->length = 60;
  cowl->width = 50;
  easel_free (easel);
  easel = easel_new (with_piece (racer_in_full (), cowl));
  ck_assert_str_eq (hit_at (30, 2, 0, 0).id, "motor");
  ck_assert_str_eq (hit_at (44, 14, 0, 0).id, "cowl");
}
END_TEST

START_TEST (a_wing_on_top_of_the_body_is_met_before_it)
{
  Aeroplane *before = racer_in_full ();
  Surface *wing = (Surface *) piece_dup (aeroplane_find (before, "wing"));
  Aeroplane *high;

  wing->z = 30;
  high = aeroplane_with_replaced (before, aeroplane_find (before, "wing"), &wing->piece);
  aeroplane_unref (before);
  easel_free (easel);
  easel = easel_new (high);
  ck_assert_str_eq (hit_at (225, 12, 0, 0).id, "wing");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("hit");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_loop_test (tests, each_thing_is_found_where_it_is_drawn, 0, G_N_ELEMENTS (unselected));
  tcase_add_test (tests, nodes_are_caught_only_while_their_outline_is_selected);
  tcase_add_test (tests, a_mirrored_node_is_the_same_node_met_to_port);
  tcase_add_test (tests, nodes_are_caught_within_the_radius_and_not_beyond);
  tcase_add_test (tests, a_selected_node_shows_handles_that_can_be_caught);
  tcase_add_test (tests, a_selected_outline_is_caught_by_its_lines_with_the_place_on_them);
  tcase_add_test (tests, hinge_ends_are_caught_while_their_control_is_selected);
  tcase_add_test (tests, rail_ends_stand_beside_the_selected_part);
  tcase_add_test (tests, marks_are_caught_on_both_sides);
  tcase_add_test (tests, the_neutral_point_is_caught_on_its_sign);
  tcase_add_test (tests, the_balance_point_is_caught_where_no_part_lies_beneath);
  tcase_add_test (tests, what_lies_beneath_is_reached_one_after_another_and_round);
  tcase_add_test (tests, a_selected_part_is_met_before_one_that_lies_over_it);
  tcase_add_test (tests, a_small_part_is_met_before_the_shell_around_it);
  tcase_add_test (tests, a_wing_on_top_of_the_body_is_met_before_it);
  return run_suite (suite_create ("drawing hit"), tests);
}
