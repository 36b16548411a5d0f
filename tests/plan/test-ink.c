#include <check.h>
#include "drawn-raster.h"
#include "support/run-suite.h"

enum { WIDTH = 400, HEIGHT = 300 };
static const DrawnLine grid[] = {
  { { 20, 40.5 }, { 380, 40.5 }, 3, 1 }, { { 20, 150.5 }, { 380, 150.5 }, 3, 1 }, { { 20, 260.5 }, { 380, 260.5 }, 3, 1 },
  { { 60.5, 20 }, { 60.5, 280 }, 3, 1 }, { { 330.5, 20 }, { 330.5, 280 }, 3, 1 },
};
enum { LINES = sizeof grid / sizeof *grid };

/* Colours of line and paper, and how dark the paper is at the right and the bottom against the upper left. */
typedef struct { int channels; int line[3], paper[3]; double shade; } Print;

static Ink *
printed (const Print *print, InkGoesOn goes_on, void *data, CoreStatus *status)
{
  unsigned char *pixels = malloc ((size_t) WIDTH * HEIGHT * (size_t) print->channels), *at = pixels;
  Ink *ink = NULL;

  for (int y = 0; y < HEIGHT; y++)
    for (int x = 0; x < WIDTH; x++)
      {
        const double cover = drawn_cover (grid, LINES, x, y), light = 1 - print->shade * (x + y) / (WIDTH + HEIGHT);
        for (int channel = 0; channel < print->channels; channel++)
          *at++ = (unsigned char) lround (light * (print->paper[channel] + cover * (print->line[channel] - print->paper[channel])));
      }
  Raster *raster = raster_new (WIDTH, HEIGHT, print->channels, 1, pixels);
  *status = ink_new (raster, goes_on, data, &ink);
  raster_unref (raster);
  return ink;
}

static Ink *
ink_of (const Print *print)
{
  CoreStatus status;
  Ink *ink = printed (print, NULL, NULL, &status);

  ck_assert_int_eq (status, CORE_OK);
  return ink;
}

static void
assert_lines_and_paper (const Ink *ink, const char *because)
{
  const Point lines[] = { { 200, 40.5 }, { 350, 260.5 }, { 60.5, 100 }, { 330.5, 220 } }, paper[] = { { 30, 25 }, { 200, 95 }, { 360, 280 } };

  for (int i = 0; i < 4; i++)
    ck_assert_msg (ink_at (ink, lines[i]) > 200, "%s: a line at %g, %g has ink %g", because, lines[i].x, lines[i].y, ink_at (ink, lines[i]));
  for (int i = 0; i < 3; i++)
    ck_assert_msg (ink_at (ink, paper[i]) < 20, "%s: paper at %g, %g has ink %g", because, paper[i].x, paper[i].y, ink_at (ink, paper[i]));
}

static const struct { const char *because; Print print; bool light; } prints[] = {
  { "dark on light", { 1, { 40 }, { 240 }, 0 }, false },
  { "half the light is lost towards a corner", { 1, { 40 }, { 240 }, 0.5 }, false },
  { "light on dark", { 1, { 220 }, { 70 }, 0 }, true },
  { "light on dark, shaded", { 1, { 220 }, { 70 }, 0.4 }, true },
  { "yellowed paper", { 3, { 60, 50, 40 }, { 240, 215, 150 }, 0.3 }, false },
  { "faint all over", { 1, { 190 }, { 240 }, 0 }, false },
};

START_TEST (lines_are_full_and_paper_is_none_whatever_the_light)
{
  Ink *ink = ink_of (&prints[_i].print);

  assert_lines_and_paper (ink, prints[_i].because);
  ck_assert_msg (ink_is_light (ink) == prints[_i].light, "%s", prints[_i].because);
  ck_assert_int_eq (ink_width (ink), WIDTH);
  ck_assert_int_eq (ink_height (ink), HEIGHT);
  ink_unref (ink);
}
END_TEST

/* Lines that differ from their paper in one channel alone: no mean and no other channel would show them. */
START_TEST (a_colour_is_read_in_the_channel_that_shows_it)
{
  Print print = { 3, { 200, 200, 200 }, { 200, 200, 200 }, 0.2 };

  print.line[_i] = 90;
  Ink *ink = ink_of (&print);
  assert_lines_and_paper (ink, "one channel");
  ink_unref (ink);
}
END_TEST

typedef struct { double last; int calls, until; } Told;

static bool
told (double done, void *data)
{
  Told *self = data;

  ck_assert (done >= self->last && done <= 1);
  self->last = done;
  return ++self->calls < self->until;
}

START_TEST (who_waits_is_told_and_may_cancel)
{
  const Print print = { 1, { 40 }, { 240 }, 0 };
  Told patient = { .until = 1 << 20 }, hasty = { .until = 2 };
  CoreStatus status;
  Ink *ink = printed (&print, told, &patient, &status);

  ck_assert_int_eq (status, CORE_OK);
  ck_assert_int_ge (patient.calls, 2);
  ink_unref (ink);
  ck_assert_ptr_null (printed (&print, told, &hasty, &status));
  ck_assert_int_eq (status, CORE_CANCELLED);
  ck_assert_int_eq (hasty.calls, 2);
}
END_TEST

START_TEST (between_pixels_ink_is_between_theirs_and_beyond_the_edge_it_is_the_edge_s)
{
  const Print print = { 1, { 40 }, { 240 }, 0 };
  Ink *ink = ink_of (&print);
  const unsigned char *row = ink_row (ink, 38);

  ck_assert_double_eq_tol (ink_at (ink, (Point) { 100.5, 38.5 }), row[100], 1e-9);
  ck_assert_double_eq_tol (ink_at (ink, (Point) { 100.5, 39 }), (row[100] + ink_row (ink, 39)[100]) / 2.0, 1e-9);
  ck_assert_double_eq_tol (ink_at (ink, (Point) { -50, -50 }), ink_row (ink, 0)[0], 1e-9);
  ck_assert_double_eq_tol (ink_at (ink, (Point) { 2e9, 2e9 }), ink_row (ink, HEIGHT - 1)[WIDTH - 1], 1e-9);
  ink_unref (ink);
}
END_TEST

START_TEST (blank_paper_has_no_ink)
{
  Ink *ink = drawn_ink (NULL, 0, 64, 48);

  for (int y = 0; y < 48; y++)
    for (int x = 0; x < 64; x++)
      ck_assert_int_le (ink_row (ink, y)[x], 4);
  ink_unref (ink_ref (ink));
  ink_unref (ink);
  ink_unref (NULL);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("ink");
  TCase *tests = tcase_create ("off its paper");

  tcase_add_loop_test (tests, lines_are_full_and_paper_is_none_whatever_the_light, 0, sizeof prints / sizeof *prints);
  tcase_add_loop_test (tests, a_colour_is_read_in_the_channel_that_shows_it, 0, 3);
  tcase_add_test (tests, who_waits_is_told_and_may_cancel);
  tcase_add_test (tests, between_pixels_ink_is_between_theirs_and_beyond_the_edge_it_is_the_edge_s);
  tcase_add_test (tests, blank_paper_has_no_ink);
  return run_suite (suite, tests);
}
