#include <math.h>
#include "geometry/section-shape.h"
#include "support/run-suite.h"

/* Ordinates of the 12 % section at stations in % of the chord: Abbott and von Doenhoff, Theory of Wing Sections, appendix I, NACA 0012. */
static const double ordinates[][2] = { { 0, 0 }, { 1.25, 1.894 }, { 2.5, 2.615 }, { 5, 3.555 }, { 7.5, 4.200 }, { 10, 4.683 },
                                       { 15, 5.345 }, { 20, 5.737 }, { 25, 5.941 }, { 30, 6.002 }, { 40, 5.803 } };

/* The last coefficient is -0.1036 for a closed trailing edge where the table has -0.1015: thinner by 0.6 × 0.0021 x⁴. */
START_TEST (half_the_thickness_is_as_published)
{
  for (size_t i = 0; i < sizeof ordinates / sizeof *ordinates; i++)
    ck_assert_double_eq_tol (100 * (section_half_thickness (0.12, ordinates[i][0] / 100) + 0.6 * 0.0021 * pow (ordinates[i][0] / 100, 4)),
                             ordinates[i][1], 1e-3);
}
END_TEST

/* Chords between the published ordinates are a little shorter than the face, most so round the nose. */
START_TEST (a_face_is_as_long_as_its_published_ordinates_have_it)
{
  double sum = 0;

  for (size_t i = 1; i < sizeof ordinates / sizeof *ordinates; i++)
    {
      sum += hypot (ordinates[i][0] - ordinates[i - 1][0], ordinates[i][1] - ordinates[i - 1][1]);
      ck_assert_double_gt (100 * section_face_length (0.12, ordinates[i][0] / 100), sum);
      ck_assert_double_lt (100 * section_face_length (0.12, ordinates[i][0] / 100), sum + 0.15);
    }
}
END_TEST

/* Elementary geometry: chords as fine as one likes. */
START_TEST (a_face_is_as_long_as_fine_chords_along_it)
{
  enum { CHORDS = 200000 };
  const double until = 0.37;
  double sum = 0, x = 0, y = 0;

  for (int i = 1; i <= CHORDS; i++)
    {
      const double u = (double) i / CHORDS, to = until * u * u, up = section_half_thickness (0.1, to);

      sum += hypot (to - x, up - y);
      x = to;
      y = up;
    }
  ck_assert_double_eq_tol (section_face_length (0.1, until), sum, 1e-8);
}
END_TEST

START_TEST (the_face_of_a_section_without_thickness_is_its_chord)
{
  ck_assert_double_eq_tol (section_face_length (0, 0.3), 0.3, 1e-12);
  ck_assert_double_eq (section_face_length (0.1, 0), 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("section shape");

  tcase_add_test (tests, half_the_thickness_is_as_published);
  tcase_add_test (tests, a_face_is_as_long_as_its_published_ordinates_have_it);
  tcase_add_test (tests, a_face_is_as_long_as_fine_chords_along_it);
  tcase_add_test (tests, the_face_of_a_section_without_thickness_is_its_chord);
  return run_suite (suite_create ("geometry section shape"), tests);
}
