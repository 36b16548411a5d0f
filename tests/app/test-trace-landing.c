/* Where a traced outline goes on the aeroplane, and what is said of a line ahead. */
#include "app/trace-landing.h"
#include "app/trace-words.h"
#include <math.h>
#include "support/run-suite.h"
#include "support/shapes.h"

static TraceGround
ground_of (ViewShows shows)
{
  return (TraceGround) { .placing = { .x = 50 }, .view = (char *) "view", .shows = shows, .z = 8 };
}

static Outline *
triangle (void)
{
  return polygon_from ((const Point[]) { { 0, 0 }, { 10, 60 }, { 30, 0 } }, 3);
}

/* Takes the aeroplane. */
static Aeroplane *
landed_on (Aeroplane *takes, ViewShows shows, const bool *root_open)
{
  const TraceGround ground = ground_of (shows);
  Outline *outline = triangle ();
  g_autofree char *id = NULL;
  Aeroplane *made = trace_landed (takes, &ground, &(LandingOutline) { .outline = outline }, root_open, &id);

  ck_assert_ptr_nonnull (made);
  ck_assert_ptr_nonnull (aeroplane_find (made, id));
  outline_unref (outline);
  aeroplane_unref (takes);
  return made;
}

START_TEST (a_surface_comes_with_the_role_the_view_shows_and_stands_where_its_axis_does)
{
  static const struct { ViewShows shows; SurfaceRole role; } views[] = {
    { VIEW_WING, ROLE_WING }, { VIEW_TAILPLANE, ROLE_TAILPLANE }, { VIEW_FOREPLANE, ROLE_FOREPLANE }, { VIEW_FIN, ROLE_FIN } };

  for (size_t i = 0; i < G_N_ELEMENTS (views); i++) {
    Aeroplane *aeroplane = landed_on (aeroplane_new (), views[i].shows, NULL);
    const Surface *surface = aeroplane_surface (aeroplane, 0);

    ck_assert_int_eq (surface->role, views[i].role);
    ck_assert_double_eq (outline_node (surface->outline, 0).x, 50);
    ck_assert_double_eq (surface->z, 8);
    ck_assert_str_eq (surface->traced, "view");
    aeroplane_unref (aeroplane);
  }
}
END_TEST

START_TEST (a_second_trace_in_the_view_takes_the_first_ones_place_and_keeps_what_else_is_known_of_it)
{
  Aeroplane *aeroplane = landed_on (aeroplane_new (), VIEW_WING, NULL), *rigged;
  Surface *next = (Surface *) piece_dup (&aeroplane_surface (aeroplane, 0)->piece);

  next->dihedral = 5;
  rigged = aeroplane_with_replaced (aeroplane, &aeroplane_surface (aeroplane, 0)->piece, &next->piece);
  aeroplane_unref (aeroplane);
  aeroplane = landed_on (rigged, VIEW_WING, NULL);
  ck_assert_uint_eq (aeroplane_count (aeroplane, PIECE_SURFACE), 1);
  ck_assert_double_eq (aeroplane_surface (aeroplane, 0)->dihedral, 5);
  aeroplane_unref (aeroplane);
}
END_TEST

START_TEST (a_wing_drawn_without_a_plan_stays_and_another_comes)
{
  Aeroplane *empty = aeroplane_new ();
  Aeroplane *aeroplane = aeroplane_with_added (empty, &surface_new ("wing", ROLE_WING, triangle ())->piece);

  aeroplane_unref (empty);
  aeroplane = landed_on (aeroplane, VIEW_WING, NULL);
  ck_assert_uint_eq (aeroplane_count (aeroplane, PIECE_SURFACE), 2);
  ck_assert_str_eq (aeroplane_surface (aeroplane, 1)->traced, "view");
  aeroplane_unref (aeroplane);
}
END_TEST

START_TEST (a_tail_given_by_area_and_arm_gives_way_to_the_one_that_is_traced)
{
  Aeroplane *empty = aeroplane_new (), *aeroplane;
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, polygon_from ((const Point[]) { { 0, 0 }, { 0, 40 }, { 20, 40 }, { 20, 0 } }, 4));

  tail->provisional = true;
  aeroplane = aeroplane_with_added (empty, &tail->piece);
  aeroplane_unref (empty);
  aeroplane = landed_on (aeroplane, VIEW_TAILPLANE, NULL);
  ck_assert_uint_eq (aeroplane_count (aeroplane, PIECE_SURFACE), 1);
  ck_assert (!aeroplane_surface (aeroplane, 0)->provisional);
  ck_assert_str_eq (aeroplane_surface (aeroplane, 0)->traced, "view");
  aeroplane_unref (aeroplane);
}
END_TEST

START_TEST (both_views_of_a_body_are_of_one_body_and_the_side_view_stands_at_its_height)
{
  Aeroplane *aeroplane = landed_on (landed_on (aeroplane_new (), VIEW_BODY_TOP, NULL), VIEW_BODY_SIDE, NULL);
  const Body *body = aeroplane_body (aeroplane, 0);

  ck_assert_uint_eq (aeroplane_count (aeroplane, PIECE_BODY), 1);
  ck_assert_double_eq (outline_node (body->outline, 0).y, 0);
  ck_assert_double_eq (outline_node (body->side_outline, 0).y, 8);
  ck_assert_double_eq (outline_node (body->side_outline, 0).x, 50);
  ck_assert_str_eq (body->traced, "view");
  ck_assert_str_eq (body->side_traced, "view");
  aeroplane_unref (aeroplane);
}
END_TEST

START_TEST (a_root_is_left_open_or_carried_as_was_answered_and_else_stays_as_it_is)
{
  const bool open = true, carried = false;
  Aeroplane *aeroplane = landed_on (aeroplane_new (), VIEW_WING, &open);

  ck_assert (aeroplane_surface (aeroplane, 0)->root_open);
  aeroplane = landed_on (aeroplane, VIEW_WING, NULL);
  ck_assert (aeroplane_surface (aeroplane, 0)->root_open);
  aeroplane = landed_on (aeroplane, VIEW_WING, &carried);
  ck_assert (!aeroplane_surface (aeroplane, 0)->root_open);
  aeroplane_unref (aeroplane);
}
END_TEST

/* Of each view: where the click is that it passes, once it stands on the aeroplane. */
START_TEST (the_click_that_is_passed_lands_with_the_outline_and_stands_where_it_does)
{
  static const ViewShows shows[] = { VIEW_WING, VIEW_FIN, VIEW_BODY_TOP, VIEW_BODY_SIDE };

  for (size_t i = 0; i < G_N_ELEMENTS (shows); i++) {
    const TraceGround ground = ground_of (shows[i]);
    Outline *outline = triangle ();
    g_autoptr (Aeroplane) empty = aeroplane_new (), made = NULL;
    g_autofree char *id = NULL;

    made = trace_landed (empty, &ground, &(LandingOutline) { outline, { 4, { 10, 20 }, false } }, NULL, &id);
    ck_assert_double_eq (trace_landing_passed (made, id, shows[i])->by, 4);
    ck_assert_double_eq (trace_landing_passed (made, id, shows[i])->at.x, 60);
    ck_assert_double_eq (trace_landing_passed (made, id, shows[i])->at.y, shows[i] == VIEW_BODY_SIDE ? 28 : 20);
    outline_unref (outline);
  }
}
END_TEST

START_TEST (a_line_is_lost_only_over_some_length_and_where_two_fifths_of_it_are_unseen)
{
  const Units units = { LENGTH_MM, MASS_G };
  Stretch stretch = { .lost = 0.39, .sigma = 0.05 };
  g_autofree char *sure = trace_words_sure (units, &stretch, 50, 0), *lost = NULL, *near = NULL;

  ck_assert_str_eq (sure, "On the line, sure to 0.1\u00a0mm");
  stretch.lost = 0.4;
  lost = trace_words_sure (units, &stretch, 50, 0);
  ck_assert_str_eq (lost, "Line lost: click closer together");
  ck_assert (trace_words_is_lost (NULL, 50));
  ck_assert (!trace_words_is_lost (NULL, 3));
  stretch.sigma = NAN;
  ck_assert_ptr_null (trace_words_sure (units, &stretch, 3, 0));
  stretch.sigma = 0.05;
  near = trace_words_sure (units, &stretch, 3, 0);
  ck_assert_str_eq (near, "On the line, sure to 0.1\u00a0mm");
}
END_TEST

START_TEST (a_line_that_passes_the_pointer_far_off_is_sure_of_nothing)
{
  const Units units = { LENGTH_MM, MASS_G };
  const Stretch stretch = { .lost = 0, .sigma = 0.05 };
  g_autofree char *off = trace_words_sure (units, &stretch, 50, trace_astray (2.3, 0.2)), *near = NULL;

  ck_assert_str_eq (off, "The line found passes about 2\u00a0mm from here");
  near = trace_words_sure (units, &stretch, 50, trace_astray (1.1, 0.2));
  ck_assert_str_eq (near, "On the line, sure to 0.1\u00a0mm");
  ck_assert_double_eq (trace_astray (2.3, 1), 0);        /* clicked from afar, no better than three times that */
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("landing");

  tcase_add_test (tcase, a_surface_comes_with_the_role_the_view_shows_and_stands_where_its_axis_does);
  tcase_add_test (tcase, a_second_trace_in_the_view_takes_the_first_ones_place_and_keeps_what_else_is_known_of_it);
  tcase_add_test (tcase, a_wing_drawn_without_a_plan_stays_and_another_comes);
  tcase_add_test (tcase, a_tail_given_by_area_and_arm_gives_way_to_the_one_that_is_traced);
  tcase_add_test (tcase, both_views_of_a_body_are_of_one_body_and_the_side_view_stands_at_its_height);
  tcase_add_test (tcase, a_root_is_left_open_or_carried_as_was_answered_and_else_stays_as_it_is);
  tcase_add_test (tcase, the_click_that_is_passed_lands_with_the_outline_and_stands_where_it_does);
  tcase_add_test (tcase, a_line_that_passes_the_pointer_far_off_is_sure_of_nothing);
  tcase_add_test (tcase, a_line_is_lost_only_over_some_length_and_where_two_fifths_of_it_are_unseen);
  return run_suite (suite_create ("app trace-landing"), tcase);
}
