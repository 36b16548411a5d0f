#include "drawing/chord-figure.h"
#include <math.h>
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The picture's width for 0 to 62 % of the mean chord: 9 px before and 8 behind. */
static const double width = 304, height = 84;

static Easel *easel;
static Canvas canvas;

static void
set_up (void)
{
  easel = easel_new (racer_in_full ());
  canvas = canvas_new (width, height, 2, easel->look.sheet);
}

static void
tear_down (void)
{
  canvas_clear (&canvas);
  easel_free (easel);
}

static void
paint (Aeroplane *takes)
{
  if (takes)
    {
      easel_free (easel);
      easel = easel_new (takes);
    }
  draw_chord_figure (canvas.cr, &easel->look, easel->figures, width, height);
}

static double px_of (double percent) { return 9 + percent * (width - 17) / 62; }

static Box
all (void)
{
  return (Box) { { 0, 0 }, { width, height } };
}

/* The columns in which a colour is seen. */
static void
columns_of (Colour colour, double *from, double *to)
{
  *from = INFINITY;
  *to = -INFINITY;
  for (double x = 0; x < width; x += 0.5)
    if (canvas_share (&canvas, (Box) { { x, 0 }, { x + 0.5, height } }, colour) > 0)
      {
        *from = fmin (*from, x);
        *to = fmax (*to, x + 0.5);
      }
}

START_TEST (the_band_lies_between_its_limits)
{
  const SurfaceFigures *wing = easel->figures->reference;
  const BalanceFigures *balance = &easel->figures->balance;
  const double forward = 100 * (balance->forward_limit_x_mm - wing->planform.mac_leading_edge_x) / wing->planform.mac;
  const double aft = 100 * (balance->aft_limit_x_mm - wing->planform.mac_leading_edge_x) / wing->planform.mac;
  double from, to;

  paint (NULL);
  columns_of (easel->look.band, &from, &to);
  /* half the firm edge, and the pixel it is put on */
  ck_assert_double_eq_tol (from, px_of (forward), 1.3);
  ck_assert_double_eq_tol (to, px_of (aft), 1.3);
}
END_TEST

START_TEST (the_neutral_point_stands_at_its_percent)
{
  const double sigma = 100 * easel->figures->neutral_point.sigma_mm / easel->figures->reference->planform.mac;
  const double reach = fmax (sigma * (width - 17) / 62, 7.5);
  double from, to;

  paint (NULL);
  columns_of (easel->look.neutral, &from, &to);
  ck_assert_double_eq_tol ((from + to) / 2, px_of (easel->figures->neutral_point.percent_mac), 0.8);
  ck_assert_double_eq_tol ((to - from) / 2, reach, 1.6);
}
END_TEST

START_TEST (the_balance_disc_stands_at_its_percent)
{
  const double x = px_of (easel->figures->balance.percent_mac);
  double y = 0;

  paint (NULL);
  for (y = 10; y < 60 && colour_distance (canvas_at (&canvas, x + 4, y), easel->look.balance) > 0.02; y += 0.5)
    ;
  ck_assert_double_lt (y, 40);
  /* the quarter beside it is not filled */
  ck_assert (colour_distance (canvas_at (&canvas, x - 4, y + 1), easel->look.balance) > 0.5);
}
END_TEST

START_TEST (without_a_wing_the_section_stands_broken_and_empty)
{
  paint (aeroplane_new ());
  ck_assert_double_eq (canvas_share (&canvas, all (), easel->look.graphite), 0);
  ck_assert_double_eq (canvas_share (&canvas, all (), easel->look.band), 0);
  ck_assert_double_gt (canvas_share (&canvas, all (), easel->look.construction), 0.002);
}
END_TEST

START_TEST (a_wing_alone_has_a_neutral_point_and_no_band)
{
  paint (with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (112, 320, 45, 85)));
  ck_assert_double_eq (canvas_share (&canvas, all (), easel->look.band), 0);
  ck_assert_double_gt (canvas_share (&canvas, all (), easel->look.neutral), 0.001);
}
END_TEST

START_TEST (a_balance_far_off_the_chord_stays_in_the_picture)
{
  Aeroplane *heavy = with_part (racer_in_full (), "brick", 2000, 460);
  Box marked;

  paint (heavy);
  marked = canvas_marked (&canvas, easel->look.sheet);
  ck_assert_double_gt (easel->figures->balance.percent_mac, 100);
  ck_assert_double_lt (marked.max.x, width);
  ck_assert (colour_distance (canvas_at (&canvas, width - 12, 23), easel->look.balance) < 0.6);
}
END_TEST

/* Not at some percent near the leading edge: an arrow runs to the picture's edge, clear of the disc, and a word stands on its other side. */
START_TEST (a_balance_ahead_of_the_wing_is_told_by_an_arrow_and_a_word)
{
  const Box arrow = { { 9, 10 }, { 32, 44 } }, word = { { 58, 10 }, { 95, 44 } };
  Aeroplane *heavy = with_part (racer_in_full (), "brick", 2000, 5);
  double ahead, beside;

  paint (NULL);
  ahead = canvas_share (&canvas, arrow, easel->look.balance);      /* the section's line is nearly as black */
  beside = canvas_share (&canvas, word, easel->look.balance);
  canvas_clear (&canvas);
  canvas = canvas_new (width, height, 2, easel->look.sheet);
  paint (heavy);
  ck_assert_double_lt (easel->figures->balance.percent_mac, 0);
  ck_assert_double_gt (canvas_share (&canvas, arrow, easel->look.balance), ahead + 0.08);      /* 10 by 14 px of head and its shaft, of 23 by 34 */
  ck_assert_double_gt (canvas_share (&canvas, word, easel->look.balance), beside + 0.03);
}
END_TEST

START_TEST (the_rail_is_pulled_where_it_is_pointed_at)
{
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");
  const double middle = rail_figure_place (battery, 280, 140);

  ck_assert_double_eq_tol (middle, (82 + 134) / 2.0, 1e-9);
  ck_assert_double_lt (rail_figure_place (battery, 280, 5), 82);
  ck_assert_double_gt (rail_figure_place (battery, 280, 275), 134);
}
END_TEST

START_TEST (the_rails_knob_stands_where_the_part_does)
{
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");
  const RailFigure rail = { .look = &easel->look, .part = battery, .solution = figures_solution (easel->figures, "battery") };
  double from, to;

  draw_rail_figure (canvas.cr, &rail, 280, 78);
  columns_of (easel->look.selection, &from, &to);
  ck_assert_double_eq_tol (rail_figure_place (battery, 280, (from + to) / 2), 124, 0.2);
  ck_assert_double_gt (canvas_share (&canvas, all (), easel->look.band), 0.005);
}
END_TEST

START_TEST (a_rail_without_a_target_has_no_band)
{
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");

  draw_rail_figure (canvas.cr, &(RailFigure) { .look = &easel->look, .part = battery }, 280, 78);
  ck_assert_double_eq (canvas_share (&canvas, all (), easel->look.band), 0);
  ck_assert_double_gt (canvas_share (&canvas, all (), easel->look.graphite), 0.005);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("chord figure");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_band_lies_between_its_limits);
  tcase_add_test (tests, the_neutral_point_stands_at_its_percent);
  tcase_add_test (tests, the_balance_disc_stands_at_its_percent);
  tcase_add_test (tests, without_a_wing_the_section_stands_broken_and_empty);
  tcase_add_test (tests, a_wing_alone_has_a_neutral_point_and_no_band);
  tcase_add_test (tests, a_balance_far_off_the_chord_stays_in_the_picture);
  tcase_add_test (tests, a_balance_ahead_of_the_wing_is_told_by_an_arrow_and_a_word);
  tcase_add_test (tests, the_rail_is_pulled_where_it_is_pointed_at);
  tcase_add_test (tests, the_rails_knob_stands_where_the_part_does);
  tcase_add_test (tests, a_rail_without_a_target_has_no_band);
  return run_suite (suite_create ("drawing chord-figure"), tests);
}
