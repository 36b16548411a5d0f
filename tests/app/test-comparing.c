/* What was traced, compared with the line that it was traced from; the truth is what the test prints. */
#include <math.h>
#include "app/comparing.h"
#include "support/drawn-plan.h"
#include "support/sheet-hand.h"

/* Above the axis and, the same, below it. */
static Outline *
printed_round (void)
{
  const Segment segments[] = { segment_arc ((Point) { 16, 0 }, 16, 45, (Point) { 16, 45 }), segment_arc ((Point) { 16, 0 }, 24, 45, (Point) { 40, 0 }),
                               segment_arc ((Point) { 16, 0 }, 24, 45, (Point) { 16, -45 }), segment_arc ((Point) { 16, 0 }, 16, 45, (Point) { 0, 0 }) };
  Outline *outline = NULL;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, 4, NULL, &outline), CORE_OK);
  return outline;
}

static Outline *
printed_half (void)
{
  const Segment segments[] = { segment_arc ((Point) { 16, 0 }, 16, 45, (Point) { 16, 45 }), segment_arc ((Point) { 16, 0 }, 24, 45, (Point) { 40, 0 }) };
  Outline *outline = NULL;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, 2, NULL, &outline), CORE_OK);
  return outline;
}

/* As it lies on the sheet, so many times as large, `off` mm too far aft. */
static Outline *
standing (Outline *takes, double scale, double off)
{
  Outline *made = NULL;

  ck_assert_int_eq (outline_mapped (takes, (Point) { scale, scale }, (Point) { 100 + off, 0 }, &made), CORE_OK);
  outline_unref (takes);
  return made;
}

static bool
ink_is_there (gpointer data)
{
  return trammel_plan_store_ink (trammel_sheet_canvas_plan_store (hand_sheet ())) != NULL;
}

static const Comparison *
comparison (void)
{
  return trammel_comparing_result (trammel_comparing_of (hand_session ()));
}

static bool
is_compared (gpointer data)
{
  return comparison () != NULL;
}

static bool
is_not_compared (gpointer data)
{
  return comparison () == NULL;
}

/* The plan's known length is so many times as long: a pixel is a quarter of a millimetre by that. */
static Aeroplane *
enlarged (Aeroplane *takes, double scale)
{
  const Plan *plan = aeroplane_plan (takes, 0);
  Plan *next = (Plan *) piece_dup (&plan->piece);
  Aeroplane *made;

  next->lengths[0].mm *= scale;
  made = aeroplane_with_replaced (takes, &plan->piece, &next->piece);
  aeroplane_unref (takes);
  return made;
}

static void
open_and_compare (Aeroplane *takes)
{
  trammel_session_open (hand_session (), takes, NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  /* Of the document before, with the same picture, something may still be compared. */
  ck_assert (gui_wait (is_not_compared, NULL));
  trammel_session_select (hand_session (), selection_of ("body"));
  ck_assert (gui_wait (is_compared, NULL));
}

/* A plan that shows a body so, and that body, off its line by so much. */
static void
begin (ViewShows shows, double scale, double off)
{
  Outline *half = printed_half ();
  const DrawnPlan plan = { .outline = half, .starboard = 1, .port = 1, .shows = shows, .side = VIEW_BOTH };
  Aeroplane *on_plan = enlarged (aeroplane_on_plan (&plan), scale);
  Body *body = body_new ("body");

  outline_unref (half);
  if (shows == VIEW_BODY_TOP) {
    body->outline = standing (printed_half (), scale, off);
    body->traced = g_strdup ("view");
  } else {
    body->side_outline = standing (printed_round (), scale, off);
    body->side_traced = g_strdup ("view");
  }
  open_and_compare (aeroplane_with_added (on_plan, &body->piece));
  aeroplane_unref (on_plan);
}

static size_t
far_off (void)
{
  const SheetDepartures *departures = trammel_sheet_canvas_overlay (hand_sheet ())->departures;
  size_t count = 0;

  ck_assert_ptr_nonnull (departures);
  for (size_t i = 0; i < departures->count; i++)
    count += departures->spots[i].far_off;
  return count;
}

/* So much higher than its picture's axis. */
static Aeroplane *
raised (const Aeroplane *aeroplane, double z)
{
  const Plan *plan = aeroplane_plan (aeroplane, 0);
  const Body *body = aeroplane_body (aeroplane, 0);
  Plan *next_plan = (Plan *) piece_dup (&plan->piece);
  Body *next_body = (Body *) piece_dup (&body->piece);
  Aeroplane *with_plan, *made;

  next_plan->views[0].z = z;
  outline_unref (next_body->side_outline);
  ck_assert_int_eq (outline_mapped (body->side_outline, (Point) { 1, 1 }, (Point) { 0, z }, &next_body->side_outline), CORE_OK);
  with_plan = aeroplane_with_replaced (aeroplane, &plan->piece, &next_plan->piece);
  made = aeroplane_with_replaced (with_plan, &aeroplane_body (with_plan, 0)->piece, &next_body->piece);
  aeroplane_unref (with_plan);
  return made;
}

START_TEST (what_stands_high_is_shown_off_its_line_where_its_picture_lies)
{
  const SheetDepartures *departures = NULL;

  begin (VIEW_BODY_SIDE, 1, 0);
  open_and_compare (raised (hand_aeroplane (), 200));
  departures = trammel_sheet_canvas_overlay (hand_sheet ())->departures;
  ck_assert_double_lt (comparison ()->within, 0.2);
  ck_assert_uint_gt (departures->count, 0);
  for (size_t i = 0; i < departures->count; i++)
    ck_assert_double_lt (fabs (departures->spots[i].drawn.y), 46);
}
END_TEST

static const ViewShows views[] = { VIEW_BODY_TOP, VIEW_BODY_SIDE };

START_TEST (a_body_that_lies_on_its_line_is_found_there)
{
  begin (views[_i], 1, 0);
  ck_assert_double_lt (comparison ()->within, 0.2);
  ck_assert_double_gt (comparison ()->seen, 0.8);
  ck_assert_uint_eq (far_off (), 0);
}
END_TEST

START_TEST (a_body_pulled_off_its_line_is_shown_to_be)
{
  begin (views[_i], 1, 1);
  ck_assert_double_eq_tol (comparison ()->most, 1, 0.3);
  ck_assert_uint_gt (far_off (), 10);
}
END_TEST

/* A coarser picture is traced less nearly, and what is off by less than twice that is not shown to be. */
START_TEST (how_far_is_far_follows_what_a_trace_keeps_to)
{
  begin (VIEW_BODY_TOP, 1, 0.4);
  ck_assert_uint_gt (far_off (), 10);
  begin (VIEW_BODY_TOP, 2, 0.4);
  ck_assert_double_gt (comparison ()->most, 0.3);
  ck_assert_uint_eq (far_off (), 0);
}
END_TEST

START_TEST (over_another_view_nothing_is_shown_off_its_line)
{
  begin (VIEW_BODY_TOP, 1, 1);
  ck_assert_uint_gt (far_off (), 10);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (hand_sheet ()), aeroplane_plan (hand_aeroplane (), 0)->piece.id, NULL);
  ck_assert_ptr_null (trammel_sheet_canvas_overlay (hand_sheet ())->departures);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("bodies");

  tcase_add_loop_test (tests, a_body_that_lies_on_its_line_is_found_there, 0, 2);
  tcase_add_loop_test (tests, a_body_pulled_off_its_line_is_shown_to_be, 0, 2);
  tcase_add_test (tests, how_far_is_far_follows_what_a_trace_keeps_to);
  tcase_add_test (tests, what_stands_high_is_shown_off_its_line_where_its_picture_lies);
  /* Last: the sheet itself stays in hand. */
  tcase_add_test (tests, over_another_view_nothing_is_shown_off_its_line);
  return hand_run ("comparing", &tests, 1);
}
