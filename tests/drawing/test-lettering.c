#include "drawing/lettering.h"
#include <glib.h>
#include <math.h>
#include "drawing/lettering-lines.h"
#include "support/canvas.h"
#include "support/run-suite.h"

/* Whatever font is there: only boxes and where ink falls are measured. */

static Look look;
static void set_up (void) { look = look_for_screen (LOOK_LIGHT, 1); }

static Box
measured (const Letters *letters)
{
  Lettering lettering = lettering_begin (NULL, &look);
  const Box box = lettering_box (&lettering, letters);

  return box;
}

static double width (Box box) { return box.max.x - box.min.x; }
static double height (Box box) { return box.max.y - box.min.y; }

START_TEST (letters_grow_in_proportion_to_their_size)
{
  const Letters small = { .text = "neutral point", .size = 9 }, large = { .text = "neutral point", .size = 63 };

  /* hinting is off when measuring; what remains is the font's own rounding */
  ck_assert_double_eq_tol (width (measured (&large)), 7 * width (measured (&small)), 0.01 * width (measured (&large)));
  ck_assert_double_eq_tol (height (measured (&large)), 7 * height (measured (&small)), 1e-9);
}
END_TEST

START_TEST (millimetres_are_not_rounded_to_whole_ones)
{
  Letters letters = { .text = "33", .size = 3.4 };
  const double narrow = width (measured (&letters));

  letters.text = "333";
  ck_assert_double_gt (narrow, 0);
  ck_assert_double_eq_tol (width (measured (&letters)), 1.5 * narrow, 0.01);      /* tabular: every figure is as wide as another */
}
END_TEST

/* 1 7/16, not 17/16: the space is as wide as one between words, and the same whichever space the figure has. */
START_TEST (whole_inches_stand_clear_of_their_fraction)
{
  static const char *const figures[] = { "1\u20097/16", "1\u202F7/16", "1\u00A07/16" };
  const double together = width (measured (&(Letters) { .text = "17/16", .size = 10 }));
  const double space = width (measured (&(Letters) { .text = "1 7/16", .size = 10 })) - together;

  ck_assert_double_gt (space, 0);
  for (size_t i = 0; i < G_N_ELEMENTS (figures); i++)
    {
      const double apart = width (measured (&(Letters) { .text = figures[i], .size = 10 })) - together;

      ck_assert_double_ge (apart, 0.99 * space);
      ck_assert_double_eq (apart, width (measured (&(Letters) { .text = figures[0], .size = 10 })) - together);
    }
}
END_TEST

START_TEST (they_stand_at_their_place_as_told)
{
  Letters letters = { .text = "640", .place = { 200, 100 } };
  const Box begins = measured (&letters);
  Box box;

  ck_assert_double_eq (begins.min.x, 200);
  letters.across = 0.5;
  box = measured (&letters);
  ck_assert_double_eq_tol ((box.min.x + box.max.x) / 2, 200, 1e-9);
  letters.across = 1;
  box = measured (&letters);
  ck_assert_double_eq_tol (box.max.x, 200, 1e-9);
  letters.rise = LETTERS_BELOW;
  ck_assert_double_eq_tol (measured (&letters).min.y, 100, 1e-9);
  letters.rise = LETTERS_AT_MIDDLE;
  ck_assert_double_eq_tol (measured (&letters).min.y, 100 - look.text_size * look.cap_height / 2, 1e-9);
}
END_TEST

START_TEST (turned_letters_run_up_the_page)
{
  const Letters level = { .text = "1240", .place = { 50, 80 } }, turned = { .text = "1240", .place = { 50, 80 }, .turned = true };
  const Box a = measured (&level), b = measured (&turned);

  ck_assert_double_eq_tol (width (b), height (a), 1e-9);
  ck_assert_double_eq_tol (height (b), width (a), 1e-9);
  ck_assert_double_eq_tol (b.max.y, 80, 1e-9);
}
END_TEST

/* Ink may pass the advance by an overhang: a pixel. */
static void
assert_ink_in_box (Letters letters)
{
  Canvas canvas = canvas_new (220, 220, 2, look.sheet);
  Lettering lettering = lettering_begin (canvas.cr, &look);
  const Box box = lettering_box (&lettering, &letters);
  Box marked;

  lettering_draw (&lettering, &letters);
  marked = canvas_marked (&canvas, look.sheet);
  ck_assert_double_ge (marked.min.x, box.min.x - 1);
  ck_assert_double_ge (marked.min.y, box.min.y - 1.5);
  ck_assert_double_le (marked.max.x, box.max.x + 1);
  ck_assert_double_le (marked.max.y, box.max.y + 1);
  ck_assert_double_gt (width (marked) + height (marked), 0.7 * (width (box) + height (box)));
  canvas_clear (&canvas);
}

START_TEST (ink_stays_in_the_box_that_was_measured)
{
  assert_ink_in_box ((Letters) { .text = "MAC 110", .place = { 110, 110 }, .across = 0.5 });
  assert_ink_in_box ((Letters) { .text = "124", .place = { 110, 110 }, .turned = true, .size = 17 });
  assert_ink_in_box ((Letters) { .text = "neutral point", .place = { 210, 20 }, .across = 1, .rise = LETTERS_BELOW, .bold = true });
}
END_TEST

START_TEST (a_halo_keeps_words_clear_of_what_they_cross)
{
  Canvas canvas = canvas_new (120, 60, 2, look.graphite);      /* all ink */
  Lettering lettering = lettering_begin (canvas.cr, &look);
  const Letters letters = { .text = "1", .place = { 60, 40 }, .across = 0.5, .halo = 2 };
  const Box box = lettering_box (&lettering, &letters);

  lettering_draw (&lettering, &letters);
  ck_assert_double_gt (canvas_share (&canvas, box, look.sheet), 0.3);
  canvas_clear (&canvas);
}
END_TEST

static PangoLayout *
laid_out (const char *text, double size, bool turned)
{
  return lettering_lines_find (LINES_FOR_MEASURE, &(LineOfLetters) { .text = text, .font = look.font, .size = size, .turned = turned });
}

START_TEST (the_same_words_are_laid_out_once)
{
  char again[] = "neutral point";
  PangoLayout *first;

  lettering_lines_begin (LINES_FOR_MEASURE, NULL);
  first = laid_out ("neutral point", 12, false);
  lettering_lines_begin (LINES_FOR_MEASURE, NULL);
  ck_assert_ptr_eq (laid_out (again, 12, false), first);
  ck_assert_ptr_ne (laid_out (again, 12.5, false), first);
  ck_assert_ptr_ne (laid_out (again, 12, true), first);
  ck_assert_ptr_ne (laid_out ("neutral points", 12, false), first);
}
END_TEST

/* Shaping is what costs: a line drawn elsewhere, upright or turned, and in the next drawing, is the one that was laid out. */
START_TEST (a_line_drawn_again_stays_laid_out)
{
  const Letters upright = { .text = "110", .place = { 20, 40 }, .halo = 2 }, turned = { .text = "110", .place = { 60, 50 }, .turned = true };
  guint serials[2];

  for (int drawing = 0; drawing < 3; drawing++)
    {
      Canvas canvas = canvas_new (120, 60, 1, look.sheet);
      Lettering lettering = lettering_begin (canvas.cr, &look);

      cairo_translate (canvas.cr, 3.5 * drawing, drawing);
      lettering_draw (&lettering, &upright);
      lettering_draw (&lettering, &turned);
      for (int i = 0; i < 2; i++)
        {
          const LineOfLetters line = { .text = "110", .font = look.font, .size = look.text_size, .turned = i };
          const guint serial = pango_layout_get_serial (lettering_lines_find (LINES_FOR_SCREEN, &line));

          if (drawing > 0)
            ck_assert_uint_eq (serial, serials[i]);
          serials[i] = serial;
        }
      canvas_clear (&canvas);
    }
}
END_TEST

START_TEST (thousands_of_words_are_measured_as_the_first_was)
{
  const Box before = measured (&(Letters) { .text = "MAC 110" });

  for (int i = 0; i < 3000; i++)
    {
      char text[16];

      snprintf (text, sizeof text, "%d mm", i);
      ck_assert_double_gt (width (measured (&(Letters) { .text = text })), 0);
    }
  ck_assert_double_eq (width (measured (&(Letters) { .text = "MAC 110" })), width (before));
}
END_TEST

START_TEST (what_only_makes_room_has_no_words)
{
  Canvas canvas = canvas_new (120, 60, 1, look.graphite);
  Look halo = look;
  Lettering lettering = lettering_begin (canvas.cr, &halo);

  halo.halo = true;
  lettering_draw (&lettering, &(Letters) { .text = "110", .place = { 60, 40 }, .halo = 2, .colour = look.sheet });
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 120, 60 } }, look.graphite), 1);
  canvas_clear (&canvas);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lettering");

  tcase_add_checked_fixture (tests, set_up, NULL);
  tcase_add_test (tests, letters_grow_in_proportion_to_their_size);
  tcase_add_test (tests, millimetres_are_not_rounded_to_whole_ones);
  tcase_add_test (tests, whole_inches_stand_clear_of_their_fraction);
  tcase_add_test (tests, they_stand_at_their_place_as_told);
  tcase_add_test (tests, turned_letters_run_up_the_page);
  tcase_add_test (tests, ink_stays_in_the_box_that_was_measured);
  tcase_add_test (tests, the_same_words_are_laid_out_once);
  tcase_add_test (tests, a_line_drawn_again_stays_laid_out);
  tcase_add_test (tests, thousands_of_words_are_measured_as_the_first_was);
  tcase_add_test (tests, what_only_makes_room_has_no_words);
  tcase_add_test (tests, a_halo_keeps_words_clear_of_what_they_cross);
  return run_suite (suite_create ("drawing lettering"), tests);
}
