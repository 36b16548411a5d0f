#include <check.h>
#include <math.h>
#include "app/numbers-shape.h"
#include "document/changes.h"
#include "geometry/planform.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"

static Planform
planform_of (const Surface *surface)
{
  Planform made;

  ck_assert_int_eq (planform_measure (surface->outline, surface->role == ROLE_FIN ? PLANFORM_SINGLE : PLANFORM_CARRIED, &made), CORE_OK);
  return made;
}

static double
quarter_x (const Surface *surface)
{
  const Planform planform = planform_of (surface);

  return planform.mac_leading_edge_x + planform.mac / 4;
}

static const NumbersThing tails[] = { NUMBERS_TAILPLANE, NUMBERS_FOREPLANE, NUMBERS_FIN };

START_TEST (a_tail_by_area_and_arm_has_that_area_at_that_arm_and_says_that_it_is_for_now)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  double values[NUMBER_COUNT];

  numbers_usual (aeroplane, tails[_i], values);
  values[NUMBER_AREA] = 12345;
  values[NUMBER_SPAN] = 234;
  values[NUMBER_ARM] = tails[_i] == NUMBERS_FOREPLANE ? -180 : 271;
  Piece *piece = numbers_piece (aeroplane, tails[_i], SHAPE_AREA, values);
  const Surface *tail = (const Surface *) piece;

  ck_assert (tail->provisional);
  ck_assert_double_eq_tol (planform_of (tail).area, 12345, 1e-6);
  ck_assert_double_eq_tol (planform_of (tail).span, 234, 1e-9);
  ck_assert_double_eq_tol (quarter_x (tail) - quarter_x (aeroplane_reference_wing (aeroplane)), values[NUMBER_ARM], 1e-6);
  piece_unref (piece);
}
END_TEST

START_TEST (an_outline_drawn_by_hand_is_for_good)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  double values[NUMBER_COUNT];
  Outline *moved = NULL;

  numbers_usual (aeroplane, NUMBERS_TAILPLANE, values);
  Piece *piece = numbers_piece (aeroplane, NUMBERS_TAILPLANE, SHAPE_AREA, values);
  g_autofree char *id = g_strdup (piece->id);
  g_autoptr (Aeroplane) guessed = aeroplane_with_added (aeroplane, piece);
  const Surface *tail = aeroplane_surface_by_id (guessed, id);
  const Point tip = outline_node (tail->outline, 1);

  ck_assert_int_eq (outline_with_node_at (tail->outline, 1, (Point) { tip.x + 3, tip.y }, &moved), CORE_OK);
  g_autoptr (Aeroplane) drawn = change_surface_outline (guessed, id, moved);
  ck_assert (tail->provisional);
  ck_assert (!aeroplane_surface_by_id (drawn, id)->provisional);
}
END_TEST

START_TEST (area_and_arm_are_asked_for_where_they_are_known)
{
  ck_assert (numbers_asks (NUMBERS_TAILPLANE, SHAPE_AREA, NUMBER_ARM));
  ck_assert (!numbers_asks (NUMBERS_TAILPLANE, SHAPE_AREA, NUMBER_ROOT_X));
  ck_assert (!numbers_asks (NUMBERS_TAILPLANE, SHAPE_AREA, NUMBER_ROOT_CHORD));
  ck_assert (!numbers_asks (NUMBERS_WING, SHAPE_AREA, NUMBER_ARM));
  ck_assert (numbers_asks (NUMBERS_WING, SHAPE_AREA, NUMBER_ROOT_X));
  ck_assert (!numbers_asks (NUMBERS_BODY, SHAPE_AREA, NUMBER_AREA));
  ck_assert (!numbers_asks (NUMBERS_TAILPLANE, SHAPE_TAPER, NUMBER_AREA));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("numbers shape");
  TCase *tests = tcase_create ("numbers shape");

  tcase_add_loop_test (tests, a_tail_by_area_and_arm_has_that_area_at_that_arm_and_says_that_it_is_for_now, 0, G_N_ELEMENTS (tails));
  tcase_add_test (tests, an_outline_drawn_by_hand_is_for_good);
  tcase_add_test (tests, area_and_arm_are_asked_for_where_they_are_known);
  return run_suite (suite, tests);
}
