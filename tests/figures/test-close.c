#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Surfaces that lie close to one another: a sound figure or none, never an invented one. */

static Figures *
with_second (SurfaceRole role, Outline *takes, double z)
{
  Surface *second = surface_new ("second", role, takes);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));

  second->z = z;
  second->pressure_ratio = 1;
  g_autoptr (Aeroplane) aeroplane = with_piece (made, second);
  return figures_once (aeroplane);
}

/* Two equal wings one above the other share the load evenly. Far apart their neutral point is one wing's: for the rectangle of aspect
 * ratio 6, 0.23881 of the chord by lifting-surface theory; nearer, each bends the other's flow, which takes it forward by no more than a
 * few hundredths of the chord. Common practice, no source. */
static const double apart[] = { 0, 0.001, 0.1, 1, 2, 4, 8, 16, 30, 60, 150, 400 };

START_TEST (two_equal_wings_give_a_sound_neutral_point_or_are_said_to_lie_in_one_place)
{
  g_autoptr (Figures) figures = with_second (ROLE_WING, rectangle (0, 600, 100), apart[_i]);
  const double x = figures->neutral_point.x_mm;

  if (isnan (x))
    {
      ck_assert (note_with (figures, "“wing” and “second” lie in one place")->problem);
      ck_assert_double_nan (figures->neutral_point.sigma_mm);
      ck_assert_double_nan (figures->balance.target_x_mm);
    }
  else
    ck_assert_msg (x > 23.881 - 3 && x < 23.881 + 0.3, "%g mm apart: %g", apart[_i], x);
}
END_TEST

START_TEST (wings_a_millimetre_apart_lie_in_one_place_and_half_a_chord_apart_do_not)
{
  g_autoptr (Figures) near = with_second (ROLE_WING, rectangle (0, 600, 100), 1);
  g_autoptr (Figures) far = with_second (ROLE_WING, rectangle (0, 600, 100), 50);

  ck_assert_double_nan (near->neutral_point.x_mm);
  ck_assert (isfinite (far->neutral_point.x_mm));
}
END_TEST

/* In one plane the tail lies in the wing's own wake sheet; a millimetre higher it lies as good as there. */
START_TEST (a_tailplane_straight_behind_the_wing_is_fine)
{
  g_autoptr (Figures) straight = with_second (ROLE_TAILPLANE, rectangle (300, 200, 50), 0);
  g_autoptr (Figures) higher = with_second (ROLE_TAILPLANE, rectangle (300, 200, 50), 1);

  ck_assert_int_eq (straight->neutral_point.status, CORE_OK);
  ck_assert_double_eq_tol (straight->neutral_point.x_mm, higher->neutral_point.x_mm, 0.2);
  ck_assert_double_eq_tol (straight->neutral_point.downwash_gradient, higher->neutral_point.downwash_gradient, 0.01);
  ck_assert_double_gt (straight->neutral_point.downwash_gradient, 0);
  ck_assert_double_lt (straight->neutral_point.downwash_gradient, 1);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures close");
  TCase *tests = tcase_create ("close");

  tcase_add_loop_test (tests, two_equal_wings_give_a_sound_neutral_point_or_are_said_to_lie_in_one_place, 0, G_N_ELEMENTS (apart));
  tcase_add_test (tests, wings_a_millimetre_apart_lie_in_one_place_and_half_a_chord_apart_do_not);
  tcase_add_test (tests, a_tailplane_straight_behind_the_wing_is_fine);
  return run_suite (suite, tests);
}
