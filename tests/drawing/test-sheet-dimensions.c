#include <math.h>
#include "drawing/hit.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;

static void set_up (void) { easel = easel_new (racer_in_full ()); }
static void tear_down (void) { easel_free (easel); }

/* The box of a dimension's figure; its middle must be hit as that same dimension. */
static bool
is_shown (Hit dimension, Box *box)
{
  Hit there;

  dimension.kind = HIT_DIMENSION;
  if (!sheet_dimension_box (&easel->scene, &dimension, box))
    return false;
  there = sheet_hit (&easel->scene, (box->min.x + box->max.x) / 2, (box->min.y + box->max.y) / 2, 4);
  ck_assert_int_eq (there.kind, HIT_DIMENSION);
  ck_assert_int_eq (there.dimension, dimension.dimension);
  ck_assert_uint_eq (there.index, dimension.index);
  if (dimension.id)
    ck_assert_str_eq (there.id, dimension.id);
  return true;
}

static const Hit span = { .id = "wing", .dimension = DIMENSION_SPAN }, mark = { .dimension = DIMENSION_MARK };
static const Hit battery = { .id = "battery", .dimension = DIMENSION_PART_X };
static const Hit station = { .id = "wing", .index = 1, .dimension = DIMENSION_NODE_STATION };
static const Hit aft = { .id = "wing", .index = 1, .dimension = DIMENSION_NODE_X };

START_TEST (the_span_stands_below_the_aeroplane_in_its_middle)
{
  Box box;

  ck_assert (is_shown (span, &box));
  ck_assert_double_eq_tol ((box.min.x + box.max.x) / 2, easel->view.origin_x, 1e-6);
  ck_assert_double_gt (box.min.y, view_to_screen (&easel->view, (Point) { 463, 0 }).y);
}
END_TEST

START_TEST (the_marks_figure_stands_to_starboard_of_the_mark)
{
  Box box;

  ck_assert (is_shown (mark, &box));
  ck_assert_double_gt (box.min.x, view_to_screen (&easel->view, (Point) { 0, 40 }).x);
}
END_TEST

START_TEST (a_part_has_its_dimension_while_it_is_selected)
{
  Box box;

  ck_assert (!is_shown (battery, &box));
  easel_select (easel, selection_of ("battery"));
  ck_assert (is_shown (battery, &box));
  ck_assert_double_lt (box.max.x, view_to_screen (&easel->view, (Point) { 0, -26 }).x);
}
END_TEST

START_TEST (a_node_has_two_while_it_alone_is_selected)
{
  Box box;

  ck_assert (!is_shown (station, &box) && !is_shown (aft, &box));
  easel_select (easel, selection_of_node ("wing", false, 1));
  ck_assert (is_shown (station, &box));
  ck_assert (is_shown (aft, &box));
  selection_toggle_node (&easel->selection, "wing", false, 2);
  ck_assert (!is_shown (station, &box) && !is_shown (aft, &box));
}
END_TEST

START_TEST (a_node_on_the_centre_line_has_no_station_to_type)
{
  const Hit none = { .id = "wing", .index = 0, .dimension = DIMENSION_NODE_STATION };
  const Hit root = { .id = "wing", .index = 0, .dimension = DIMENSION_NODE_X };
  Box box;

  easel_select (easel, selection_of_node ("wing", false, 0));
  ck_assert (!is_shown (none, &box));
  ck_assert (is_shown (root, &box));
}
END_TEST

START_TEST (figures_can_be_put_away_but_not_those_of_what_is_selected)
{
  Box box;

  easel->scene.show_figures = false;
  easel_select (easel, selection_of ("battery"));
  ck_assert (!is_shown (span, &box) && !is_shown (mark, &box));
  ck_assert (is_shown (battery, &box));
  easel_select (easel, selection_of_mark (0));
  ck_assert (is_shown (mark, &box));
}
END_TEST

START_TEST (every_figure_stands_in_the_fitted_window)
{
  const Hit all[] = { span, mark, station, aft };
  Box box;

  easel_select (easel, selection_of_node ("wing", false, 1));
  for (int i = 0; i < 4; i++)
    {
      ck_assert (is_shown (all[i], &box));
      ck_assert (box.min.x >= 0 && box.min.y >= 0 && box.max.x <= easel->view.width && box.max.y <= easel->view.height);
    }
}
END_TEST

START_TEST (without_a_target_no_mark_is_dimensioned)
{
  Box box;

  easel_free (easel);
  easel = easel_new (with_mark (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), 40));
  ck_assert (is_shown (span, &box));
  ck_assert (!is_shown (mark, &box));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sheet dimensions");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_span_stands_below_the_aeroplane_in_its_middle);
  tcase_add_test (tests, the_marks_figure_stands_to_starboard_of_the_mark);
  tcase_add_test (tests, a_part_has_its_dimension_while_it_is_selected);
  tcase_add_test (tests, a_node_has_two_while_it_alone_is_selected);
  tcase_add_test (tests, a_node_on_the_centre_line_has_no_station_to_type);
  tcase_add_test (tests, figures_can_be_put_away_but_not_those_of_what_is_selected);
  tcase_add_test (tests, every_figure_stands_in_the_fitted_window);
  tcase_add_test (tests, without_a_target_no_mark_is_dimensioned);
  return run_suite (suite_create ("drawing sheet-dimensions"), tests);
}
