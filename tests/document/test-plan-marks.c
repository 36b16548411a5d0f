#include "document/plan-marks.h"
#include <math.h>
#include "documents.h"
#include "support/run-suite.h"

/* Two lengths, the second with a word of a later version, two straight lines of three and four places, corners, a level line, two views. */
static const char marked[] =
  "<aeroplane xmlns='urn:trammel:aeroplane' version='1'><plan id='sheet'>"
  "<corners x1='10' y1='20' x2='900' y2='25' x3='910' y3='700' x4='5' y4='690' width='404' height='281'/>"
  "<level x1='10' y1='20' x2='900' y2='30'/>"
  "<length x1='100' y1='100' x2='500' y2='100' mm='50'/><length x1='100' y1='100' x2='100' y2='400' mm='37' later='yes'/>"
  "<straight><at x='1' y='2'/><at x='3' y='4'/><at x='5' y='6'/></straight>"
  "<straight><at x='11' y='12'/><at x='13' y='14'/><at x='15' y='16'/><at x='17' y='18'/></straight>"
  "<view id='wing' shows='wing' fore-x='50' fore-y='60' aft-x='50' aft-y='300' x='12'/>"
  "<view id='tail' shows='tailplane' fore-x='70' fore-y='60' aft-x='70' aft-y='300'/></plan></aeroplane>";

static Aeroplane *
marked_plan (const Plan **plan)
{
  Aeroplane *aeroplane = read_bytes (marked, strlen (marked));

  *plan = aeroplane_plan_by_id (aeroplane, "sheet");
  return aeroplane;
}

static void
plan_free (Plan *plan)
{
  ck_assert_ptr_nonnull (plan);
  piece_unref (&plan->piece);
}

START_TEST (every_mark_has_its_place_and_goes_where_it_is_put)
{
  static const struct { PlanMarkKind kind; size_t count; } kinds[] = {
    { PLAN_MARK_LENGTH, 4 }, { PLAN_MARK_LEVEL, 2 }, { PLAN_MARK_CORNER, 4 }, { PLAN_MARK_STRAIGHT, 7 }, { PLAN_MARK_AXIS, 4 } };
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);

  ck_assert_uint_eq (plan_mark_count (plan, kinds[_i].kind), kinds[_i].count);
  for (size_t i = 0; i < kinds[_i].count; i++)
    {
      const PlanMark mark = plan_mark_nth (plan, kinds[_i].kind, i);
      Plan *moved = plan_with_mark_at (plan, mark, (Point) { 321, 123 }, 1);
      Point px;

      ck_assert (plan_mark_place (moved, mark, &px));
      ck_assert (px.x == 321 && px.y == 123);
      /* That one alone. */
      for (size_t other = 0; other < kinds[_i].count; other++)
        {
          ck_assert (plan_mark_place (moved, plan_mark_nth (plan, kinds[_i].kind, other), &px));
          ck_assert ((px.x == 321) == (other == i));
        }
      ck_assert (plan_mark_place (plan, mark, &px) && px.x != 321);
      plan_free (moved);
    }
}
END_TEST

START_TEST (each_end_of_a_length_is_as_sure_as_it_was_put_last)
{
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Plan *far = plan_with_mark_at (plan, (PlanMark) { PLAN_MARK_LENGTH, 0, 0 }, (Point) { 100, 101 }, 8);
  Plan *near = plan_with_mark_at (far, (PlanMark) { PLAN_MARK_LENGTH, 0, 1 }, (Point) { 501, 100 }, 0.5);
  Plan *nudged = plan_with_mark_at (near, (PlanMark) { PLAN_MARK_LENGTH, 0, 1 }, (Point) { 502, 100 }, 0.5);

  /* However often the one is moved, the other is no surer. */
  ck_assert_double_eq (nudged->lengths[0].sigma_a, 8);
  ck_assert_double_eq (nudged->lengths[0].sigma_b, 0.5);
  plan_free (far);
  plan_free (near);
  plan_free (nudged);
}
END_TEST

START_TEST (what_a_mark_is_of_is_taken_out_whole)
{
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Plan *less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_LENGTH, 0, 1 });

  ck_assert_uint_eq (less->length_count, 1);
  ck_assert_double_eq (less->lengths[0].mm, 37);
  plan_free (less);
  less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_STRAIGHT, 0, 2 });
  ck_assert_uint_eq (less->straight_count, 1);
  ck_assert_uint_eq (less->place_count, 4);
  ck_assert_double_eq (less->places[0].x, 11);
  plan_free (less);
  less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_STANDS, 0, 0 });
  ck_assert_uint_eq (less->view_count, 1);
  ck_assert_str_eq (less->views[0].id, "tail");
  plan_free (less);
  less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_CORNER, 0, 3 });
  ck_assert (!less->has_corners && less->has_level);
  plan_free (less);
  less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_LEVEL, 0, 0 });
  ck_assert (less->has_corners && !less->has_level);
  plan_free (less);
}
END_TEST

START_TEST (what_a_later_version_wrote_on_a_length_stays_on_it)
{
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Plan *less = plan_without_mark (plan, (PlanMark) { PLAN_MARK_LENGTH, 0, 0 });
  Plan *gone = plan_without_mark (plan, (PlanMark) { PLAN_MARK_LENGTH, 1, 0 });

  ck_assert_ptr_nonnull (piece_kept (&less->piece, INNER_LENGTH, 0));
  ck_assert_str_eq (piece_kept (&less->piece, INNER_LENGTH, 0)->attributes, piece_kept (&plan->piece, INNER_LENGTH, 1)->attributes);
  ck_assert_ptr_null (piece_kept (&less->piece, INNER_LENGTH, 1));
  ck_assert_ptr_null (piece_kept (&gone->piece, INNER_LENGTH, 1));
  plan_free (less);
  plan_free (gone);
}
END_TEST

START_TEST (lengths_lines_and_views_come_behind_the_last)
{
  static const Point places[] = { { 1, 1 }, { 2, 2 }, { 3, 3 } };
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Plan *more = plan_with_length (plan, (PlanLength) { (Point) { 7, 8 }, (Point) { 9, 10 }, 12.5, 0, 0 });

  ck_assert_uint_eq (more->length_count, 3);
  ck_assert_double_eq (more->lengths[2].b.y, 10);
  ck_assert_double_eq (more->lengths[2].mm, 12.5);
  plan_free (more);
  more = plan_with_straight (plan, places, 3);
  ck_assert_uint_eq (more->straight_count, 3);
  ck_assert_uint_eq (more->straight[2].count, 3);
  ck_assert_double_eq (more->places[9].y, 3);
  plan_free (more);
  more = plan_with_view (plan, (PlanView) { .shows = VIEW_FIN, .fore = { 1, 2 }, .aft = { 3, 4 } });
  ck_assert_uint_eq (more->view_count, 3);
  ck_assert_int_eq (more->views[2].shows, VIEW_FIN);
  plan_free (more);
  ck_assert_uint_eq (plan->length_count, 2);
}
END_TEST

START_TEST (there_is_nothing_at_a_mark_that_is_not_there)
{
  static const PlanMark none[] = { { PLAN_MARK_NONE, 0, 0 }, { PLAN_MARK_LENGTH, 2, 0 }, { PLAN_MARK_CORNER, 0, 4 },
                                   { PLAN_MARK_STRAIGHT, 1, 4 }, { PLAN_MARK_STRAIGHT, 2, 0 }, { PLAN_MARK_AXIS, 2, 0 }, { PLAN_MARK_LEVEL, 0, 2 } };
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Point px = { 5, 5 };

  ck_assert (!plan_mark_place (plan, none[_i], &px));
  ck_assert_double_eq (px.x, 5);
  ck_assert_ptr_null (plan_with_mark_at (plan, none[_i], px, 1));
  ck_assert_ptr_null (plan_without_mark (plan, none[_i]));
}
END_TEST

static Plan *
marked_copy (double width, double height)
{
  const Plan *plan;
  g_autoptr (Aeroplane) aeroplane = marked_plan (&plan);
  Plan *copy = (Plan *) piece_dup (&plan->piece);

  copy->width = width;
  copy->height = height;
  return copy;
}

/* Half a percent apart in height, as two scans of one sheet are. */
START_TEST (every_mark_goes_along_to_a_finer_scan_of_the_same_sheet)
{
  static const PlanMarkKind kinds[] = { PLAN_MARK_LENGTH, PLAN_MARK_LEVEL, PLAN_MARK_CORNER, PLAN_MARK_STRAIGHT, PLAN_MARK_AXIS };
  Plan *before = marked_copy (1000, 700), *plan = marked_copy (1000, 700);

  ck_assert_int_eq (plan_rescale (plan, 2000, 1407), PLAN_RESCALED_FITS);
  for (size_t i = 0; i < plan_mark_count (plan, kinds[_i]); i++)
    {
      Point was, is;

      ck_assert (plan_mark_place (before, plan_mark_nth (before, kinds[_i], i), &was));
      ck_assert (plan_mark_place (plan, plan_mark_nth (plan, kinds[_i], i), &is));
      ck_assert_double_eq (is.x, 2 * was.x);
      ck_assert_double_eq (is.y, 2 * was.y);
    }
  ck_assert_double_eq (plan->lengths[0].mm, 50);
  ck_assert_double_eq (plan->corners_width, 404);
  ck_assert_double_eq (plan->views[0].x, 12);
  plan_free (before);
  plan_free (plan);
}
END_TEST

START_TEST (marks_stay_where_they_were_in_a_picture_of_another_shape_or_of_no_known_size)
{
  static const struct { double width, height, next_width, next_height; PlanRescaled rescaled; } pairs[] = {
    { 1000, 700, 2000, 1430, PLAN_RESCALED_OTHER_SHAPE }, { 1000, 700, 700, 1000, PLAN_RESCALED_OTHER_SHAPE },
    { NAN, NAN, 2000, 1400, PLAN_RESCALED_UNKNOWN }, { 1000, NAN, 2000, 1400, PLAN_RESCALED_UNKNOWN },
    { 1000, 700, NAN, NAN, PLAN_RESCALED_UNKNOWN } };
  Plan *plan = marked_copy (pairs[_i].width, pairs[_i].height);

  ck_assert_int_eq (plan_rescale (plan, pairs[_i].next_width, pairs[_i].next_height), pairs[_i].rescaled);
  ck_assert_double_eq (plan->lengths[0].b.x, 500);
  ck_assert_double_eq (plan->corners[1].x, 900);
  plan_free (plan);
}
END_TEST

START_TEST (where_nothing_is_marked_any_picture_fits)
{
  g_autoptr (Aeroplane) aeroplane = read_elements ("<plan id='bare' width='1000' height='700'/>");
  Plan *plan = (Plan *) piece_dup (&aeroplane_plan_by_id (aeroplane, "bare")->piece);

  ck_assert_int_eq (plan_rescale (plan, 700, 1000), PLAN_RESCALED_FITS);
  plan->width = NAN;
  ck_assert_int_eq (plan_rescale (plan, 700, 1000), PLAN_RESCALED_FITS);
  plan_free (plan);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("marks of a plan");

  tcase_add_loop_test (tests, every_mark_has_its_place_and_goes_where_it_is_put, 0, 5);
  tcase_add_test (tests, each_end_of_a_length_is_as_sure_as_it_was_put_last);
  tcase_add_test (tests, what_a_mark_is_of_is_taken_out_whole);
  tcase_add_test (tests, what_a_later_version_wrote_on_a_length_stays_on_it);
  tcase_add_test (tests, lengths_lines_and_views_come_behind_the_last);
  tcase_add_loop_test (tests, every_mark_goes_along_to_a_finer_scan_of_the_same_sheet, 0, 5);
  tcase_add_loop_test (tests, marks_stay_where_they_were_in_a_picture_of_another_shape_or_of_no_known_size, 0, 5);
  tcase_add_test (tests, where_nothing_is_marked_any_picture_fits);
  tcase_add_loop_test (tests, there_is_nothing_at_a_mark_that_is_not_there, 0, 7);
  return run_suite (suite_create ("plan-marks"), tests);
}
