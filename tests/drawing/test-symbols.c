#include "drawing/symbols.h"
#include <math.h>
#include "drawing/handles.h"
#include "drawing/runs.h"
#include "support/canvas.h"
#include "support/run-suite.h"

enum { LOOKS = LOOK_DARK_CONTRAST + 1 };

static const Point middle = { 40, 40 };
static Look look;
static Canvas canvas;

/* Every test is run in each look, at scale 1 and 2. */
static void
begin (int i)
{
  look = look_for_screen (i % LOOKS, 1);
  canvas = canvas_new (80, 80, 1 + i / LOOKS, look.sheet);
}

static void
assert_colour (double x, double y, Colour expected)
{
  expected.alpha = 1;
  ck_assert_msg (colour_distance (canvas_at (&canvas, x, y), expected) < 0.02, "at %g, %g", x, y);
}

static void
assert_marked (Box expected, double tolerance)
{
  const Box box = canvas_marked (&canvas, look.sheet);

  ck_assert_double_eq_tol (box.min.x, expected.min.x, tolerance);
  ck_assert_double_eq_tol (box.min.y, expected.min.y, tolerance);
  ck_assert_double_eq_tol (box.max.x, expected.max.x, tolerance);
  ck_assert_double_eq_tol (box.max.y, expected.max.y, tolerance);
}

START_TEST (the_balance_disc_is_filled_fore_right_and_aft_left)
{
  begin (_i);
  draw_balance_disc (canvas.cr, &look, middle, DISC_ON_SHEET);
  assert_colour (43.5, 36.5, look.balance);
  assert_colour (36.5, 43.5, look.balance);
  assert_colour (36.5, 36.5, look.part_fill);
  assert_colour (43.5, 43.5, look.part_fill);
  assert_marked ((Box) { { 40 - 11.6, 40 - 11.6 }, { 40 + 11.6, 40 + 11.6 } }, 1.8);      /* arms to 1.55 radii; put on whole pixels */
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_disc_stands_on_a_plate_clear_of_what_it_covers)
{
  begin (_i);
  look_set_source (canvas.cr, look.band);
  cairo_paint (canvas.cr);
  draw_balance_disc (canvas.cr, &look, middle, DISC_ON_CHORD);
  assert_colour (50.2, 40.2, look.sheet);      /* between 9.5 and 11.1 px */
  assert_colour (40 + 13 * M_SQRT1_2, 40 + 13 * M_SQRT1_2, look.band);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_neutral_point_is_an_open_diamond_longer_than_wide)
{
  begin (_i);
  draw_neutral_diamond (canvas.cr, &look, middle, false);
  assert_colour (40, 40, look.sheet);
  /* mitred corners pass the diamond by 0.8 and 0.65 of the line's width, 1.6 or 2.4 px */
  assert_marked ((Box) { { 40 - 6.8, 40 - 8.5 }, { 40 + 6.8, 40 + 8.5 } }, 3);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 33, 31 }, { 47, 49 } }, look.neutral), 0.1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_mean_chord_has_ticks_at_its_ends_and_at_a_quarter)
{
  begin (_i);
  draw_mean_chord (canvas.cr, &look, 40, 10.5, 70.5);
  assert_colour (40, 50, look.graphite);
  assert_colour (36, 10.5, look.graphite);
  assert_colour (44, 70.5, look.graphite);
  assert_colour (37, 25.5, look.graphite);
  assert_colour (34.5, 25.5, look.sheet);      /* the quarter's tick is the shorter one */
  assert_colour (37, 40, look.sheet);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (hatching_stays_inside_its_box)
{
  const Box box = { { 17, 23 }, { 61, 49 } };
  double share;

  begin (_i);
  draw_hatch (canvas.cr, &look, box, look.band);
  assert_marked (box, 1e-9);
  share = canvas_share (&canvas, box, look.sheet);
  ck_assert_double_gt (share, 0.3);      /* lines with air between them, not an area */
  ck_assert_double_lt (share, 0.85);
  canvas_clear (&canvas);
}
END_TEST

/* A hatch wider than the window: as it is drawn when much enlarged. */
START_TEST (the_part_of_a_hatch_that_is_seen_is_the_same_however_much_more_there_is)
{
  const Box seen = { { 4, 4 }, { 76, 76 } };
  double share;

  begin (_i);
  draw_hatch (canvas.cr, &look, (Box) { { 0, 0 }, { 80, 80 } }, look.band);
  share = canvas_share (&canvas, seen, look.band);
  canvas_clear (&canvas);
  begin (_i);
  draw_hatch (canvas.cr, &look, (Box) { { -4000, -3000 }, { 5000, 6000 } }, look.band);
  ck_assert_double_gt (share, 0.02);
  ck_assert_double_eq_tol (canvas_share (&canvas, seen, look.band), share, 0.03);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (lines_as_wide_as_they_stand_apart_leave_nothing_between_them)
{
  Look halo;

  begin (_i);
  halo = look;
  halo.hatch_width = halo.hatch_step;
  draw_hatch (canvas.cr, &halo, (Box) { { 20, 20 }, { 60, 60 } }, look.band);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 20, 20 }, { 60, 60 } }, look.band), 1);
  assert_marked ((Box) { { 20, 20 }, { 60, 60 } }, 0.1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_band_has_firm_edges_fore_and_aft_and_none_beside)
{
  begin (_i);
  draw_wanted_band (canvas.cr, &look, (Box) { { 15, 30 }, { 65, 50 } }, BAND_ACROSS);
  for (double x = 17.5; x < 64; x += 1)
    {
      assert_colour (x, 30.2, look.band);
      assert_colour (x, 50.2, look.band);
    }
  ck_assert_double_lt (canvas_share (&canvas, (Box) { { 15, 33 }, { 17, 47 } }, look.band), 0.7);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_balance_mark_stands_clear_of_the_hatch)
{
  begin (_i);
  look_set_source (canvas.cr, look.band);
  cairo_paint (canvas.cr);
  draw_balance_mark_halo (canvas.cr, &look, middle);
  draw_balance_mark (canvas.cr, &look, middle);
  assert_colour (40, 40, look.balance);
  assert_colour (33, 40, look.balance);        /* the bar */
  assert_colour (40, 46, look.balance);        /* the finger, from aft */
  assert_colour (40, 37.3, look.sheet);        /* the halo ahead */
  assert_colour (40, 33, look.band);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (whiskers_shorter_than_their_symbol_are_not_drawn)
{
  begin (_i);
  draw_whiskers (canvas.cr, &look, &(Whiskers) { .at = middle, .clear = 9, .reach = 8.5, .colour = look.neutral });
  ck_assert (!(canvas_marked (&canvas, look.sheet).min.x < 80));
  draw_whiskers (canvas.cr, &look, &(Whiskers) { .at = middle, .clear = 9, .reach = 20, .colour = look.neutral });
  assert_marked ((Box) { { 20, 35.5 }, { 60, 44.5 } }, 2.1);      /* half the line, and the pixel it is put on */
  assert_colour (40, 40, look.sheet);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_warning_is_an_open_triangle_with_a_stroke_in_it)
{
  begin (_i);
  draw_warning (canvas.cr, &look, middle);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 39, 36 }, { 41, 42 } }, look.warning), 0.25);
  assert_colour (36, 44, look.sheet);
  assert_colour (44, 44, look.sheet);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (a_selected_node_is_filled_and_a_corner_is_square)
{
  begin (_i);
  draw_node (canvas.cr, &look, (Point) { 20, 20 }, NODE_SMOOTH, false);
  draw_node (canvas.cr, &look, (Point) { 40, 20 }, NODE_SMOOTH, true);
  draw_node (canvas.cr, &look, (Point) { 20, 50 }, NODE_CORNER, true);
  draw_node (canvas.cr, &look, (Point) { 40, 50 }, NODE_SYMMETRIC, false);
  assert_colour (20, 20, look.part_fill);
  assert_colour (40, 20, look.selection);
  assert_colour (24.2, 54.2, look.selection);  /* the square's corner */
  assert_colour (45.2, 25.2, look.sheet);      /* the circle has none */
  assert_colour (40, 50, look.graphite);       /* the dot */
  canvas_clear (&canvas);
}
END_TEST

START_TEST (a_lead_is_dotted_as_far_as_it_reaches_and_warns_beyond)
{
  const Point places[] = { { 5, 10 }, { 69.5, 10 }, { 69.5, 70 } };

  begin (_i);
  draw_lead (canvas.cr, &look, places, 3, 62, false);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 8, 8 }, { 60, 12 } }, look.warning), 0);
  assert_colour (69.5, 40, look.warning);
  canvas_clear (&canvas);
  begin (_i);
  draw_lead (canvas.cr, &look, places, 3, INFINITY, false);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 80, 80 } }, look.warning), 0);
  canvas_clear (&canvas);
}
END_TEST

/* In black on white: what is drawn of each of five signs that mean different things. */
static void
draw_sign (int sign)
{
  switch (sign)
    {
    case 0: draw_balance_disc (canvas.cr, &look, middle, DISC_ON_SHEET); break;
    case 1: draw_neutral_diamond (canvas.cr, &look, middle, false); break;
    case 2: draw_balance_mark (canvas.cr, &look, middle); break;
    case 3: draw_warning (canvas.cr, &look, middle); break;
    default: draw_node (canvas.cr, &look, middle, NODE_SMOOTH, true); break;
    }
}

static void
print_sign (int sign, bool ink[80 * 80])
{
  look = look_for_paper ();
  canvas = canvas_new (24, 24, 80 / 24.0, look.sheet);
  cairo_translate (canvas.cr, 12 - middle.x, 12 - middle.y);
  draw_sign (sign);
  for (int y = 0; y < 80; y++)
    for (int x = 0; x < 80; x++)
      ink[80 * y + x] = colour_luminance (canvas_at (&canvas, (x + 0.5) * 24 / 80, (y + 0.5) * 24 / 80)) < 0.3;
  canvas_clear (&canvas);
}

START_TEST (on_grey_paper_every_sign_is_told_by_its_shape)
{
  static bool ink[5][80 * 80];

  for (int i = 0; i < 5; i++)
    print_sign (i, ink[i]);
  for (int i = 0; i < 5; i++)
    for (int j = 0; j < i; j++)
      {
        int both = 0, either = 0;

        for (int k = 0; k < 80 * 80; k++)
          {
            both += ink[i][k] && ink[j][k];
            either += ink[i][k] || ink[j][k];
          }
        ck_assert_int_gt (either, 30);
        ck_assert_msg (both < 0.5 * either, "signs %d and %d share %d of %d", j, i, both, either);
      }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("symbols");
  const int all = 2 * LOOKS;

  tcase_add_loop_test (tests, the_balance_disc_is_filled_fore_right_and_aft_left, 0, all);
  tcase_add_loop_test (tests, the_disc_stands_on_a_plate_clear_of_what_it_covers, 0, all);
  tcase_add_loop_test (tests, the_neutral_point_is_an_open_diamond_longer_than_wide, 0, all);
  tcase_add_loop_test (tests, the_mean_chord_has_ticks_at_its_ends_and_at_a_quarter, 0, all);
  tcase_add_loop_test (tests, hatching_stays_inside_its_box, 0, all);
  tcase_add_loop_test (tests, the_part_of_a_hatch_that_is_seen_is_the_same_however_much_more_there_is, 0, all);
  tcase_add_loop_test (tests, lines_as_wide_as_they_stand_apart_leave_nothing_between_them, 0, all);
  tcase_add_loop_test (tests, the_band_has_firm_edges_fore_and_aft_and_none_beside, 0, all);
  tcase_add_loop_test (tests, the_balance_mark_stands_clear_of_the_hatch, 0, all);
  tcase_add_loop_test (tests, whiskers_shorter_than_their_symbol_are_not_drawn, 0, all);
  tcase_add_loop_test (tests, the_warning_is_an_open_triangle_with_a_stroke_in_it, 0, all);
  tcase_add_loop_test (tests, a_selected_node_is_filled_and_a_corner_is_square, 0, all);
  tcase_add_loop_test (tests, a_lead_is_dotted_as_far_as_it_reaches_and_warns_beyond, 0, all);
  tcase_add_test (tests, on_grey_paper_every_sign_is_told_by_its_shape);
  return run_suite (suite_create ("drawing symbols"), tests);
}
