#include <check.h>
#include "drawn-raster.h"
#include "plan/line-centre.h"
#include "plan/line-strength.h"
#include "support/run-suite.h"

/* Lines at odd fractions of a pixel, of odd widths, looked for from a pixel and a half beside them. */
static const struct { double y, slope, width; } drawn[] = {
  { 40, 0, 3 }, { 40.25, 0, 3 }, { 40.5, 0, 2 }, { 40.37, 0.1, 3.2 }, { 39.81, -0.3, 4 }, { 40.1, 0.9, 3 },
};

typedef struct { Corridor corridor; float *strength; double *rows, *weights, sigma; } Work;

static void
work_on (Work *self, const DrawnLine lines[], size_t count, Point a, Point b)
{
  const Point run[] = { a, b };
  Ink *ink = drawn_ink (lines, count, 240, 120);

  ck_assert_int_eq (corridor_along (ink, run, 2, 8, 0.5, 4, &self->corridor), CORE_OK);
  ink_unref (ink);
  self->sigma = lines ? lines[0].width / 2 : 1.5;
  self->strength = malloc (self->corridor.columns * (size_t) corridor_rows (&self->corridor) * sizeof *self->strength);
  self->rows = malloc (self->corridor.columns * sizeof *self->rows);
  self->weights = malloc (self->corridor.columns * sizeof *self->weights);
  ck_assert_int_eq (line_strength (&self->corridor, self->sigma, self->strength), CORE_OK);
  ck_assert_int_eq (line_strength_even (&self->corridor, 6, 32, self->strength), CORE_OK);
  for (size_t i = 0; i < self->corridor.columns; i++)
    self->rows[i] = self->corridor.half;
}

static void
work_clear (Work *self)
{
  corridor_clear (&self->corridor);
  free (self->strength);
  free (self->rows);
  free (self->weights);
}

START_TEST (the_middle_is_found_to_a_twentieth_of_a_pixel)
{
  const double slope = drawn[_i].slope, y = drawn[_i].y;
  const DrawnLine line = { { 10, y }, { 230, y + 220 * slope * 0.3 }, drawn[_i].width, 1 };
  const Point beside = { 0, 1.2 };
  Work work;

  work_on (&work, &line, 1, point_add (point_mix (line.a, line.b, 0.1), beside), point_add (point_mix (line.a, line.b, 0.9), beside));
  ck_assert_int_eq (line_centre (&work.corridor, work.strength, work.sigma, 4, work.rows, work.weights), CORE_OK);
  for (size_t i = 0; i < work.corridor.columns; i++)
    {
      const double off = drawn_distance (corridor_place (&work.corridor, i, work.rows[i]), &line);
      ck_assert_msg (off < 0.05, "at y %g, width %g, column %zu the middle is %g px off", y, drawn[_i].width, i, off);
      ck_assert_double_gt (work.weights[i], 0.8);
    }
  work_clear (&work);
}
END_TEST

START_TEST (where_there_is_no_line_nothing_is_trusted)
{
  const DrawnLine lines[] = { { { 10, 40 }, { 90, 40 }, 3, 1 }, { { 150, 40 }, { 230, 40 }, 3, 1 } };
  Work work;

  work_on (&work, lines, 2, (Point) { 20, 40.6 }, (Point) { 220, 40.6 });
  ck_assert_int_eq (line_centre (&work.corridor, work.strength, work.sigma, 4, work.rows, work.weights), CORE_OK);
  for (size_t i = 0; i < work.corridor.columns; i++)
    {
      const double x = work.corridor.spine[i].x;
      if (x > 105 && x < 135)
        ck_assert_double_lt (work.weights[i], 0.1);
      if (x < 75 || x > 165)
        ck_assert_double_gt (work.weights[i], 0.8);
    }
  work_clear (&work);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("line centre");
  TCase *tests = tcase_create ("below a pixel");

  tcase_add_loop_test (tests, the_middle_is_found_to_a_twentieth_of_a_pixel, 0, sizeof drawn / sizeof *drawn);
  tcase_add_test (tests, where_there_is_no_line_nothing_is_trusted);
  return run_suite (suite, tests);
}
