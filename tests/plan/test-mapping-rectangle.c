#include "mapping-cases.h"
#include "support/run-suite.h"

static const double WIDTH = 283.7, HEIGHT = 197.3;

/* The frame's corners as the camera sees them, clockwise from the upper left. */
static KnownRectangle
seen (const Mapping *by)
{
  KnownRectangle rectangle = { .width = WIDTH, .height = HEIGHT };
  const Point paper[4] = { { 0, 0 }, { WIDTH, 0 }, { WIDTH, HEIGHT }, { 0, HEIGHT } };

  for (int i = 0; i < 4; i++)
    rectangle.corners[i] = mapping_to_px (by, paper[i]);
  return rectangle;
}

static void
assert_same_mapping (const Mapping *got, const Mapping *wanted, double tolerance)
{
  for (double y = 3.1; y < HEIGHT; y += 31.7)
    for (double x = 2.3; x < WIDTH; x += 41.3)
      assert_place (mapping_to_px (got, (Point) { x, y }), mapping_to_px (wanted, (Point) { x, y }), tolerance, "seen alike");
}

START_TEST (four_corners_give_the_camera_back)
{
  const Mapping wanted = camera (0);
  const KnownRectangle rectangle = seen (&wanted);
  const Knowns knowns = knowns_rectangle (&rectangle);
  MappingMisfit misfit;
  const Mapping got = solved (&knowns, &misfit);

  ck_assert_int_eq (misfit.maker, MADE_BY_RECTANGLE);
  assert_same_mapping (&got, &wanted, 1e-9);
}
END_TEST

/* P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, UCB/CSD 89/516, 1989, section 2.2.3: the unit square's corners
 * (0,0) (1,0) (1,1) (0,1) go to the quadrilateral's by x = (a u + b v + c) / (g u + h v + 1), y = (d u + e v + f) / (g u + h v + 1). */
static Point
heckbert (const Point q[4], double u, double v)
{
  const Point d1 = point_sub (q[1], q[2]), d2 = point_sub (q[3], q[2]);
  const Point sum = { q[0].x - q[1].x + q[2].x - q[3].x, q[0].y - q[1].y + q[2].y - q[3].y };
  const double below = d1.x * d2.y - d2.x * d1.y;
  const double g = (sum.x * d2.y - d2.x * sum.y) / below, h = (d1.x * sum.y - sum.x * d1.y) / below, depth = g * u + h * v + 1;

  return (Point) { ((q[1].x - q[0].x + g * q[1].x) * u + (q[3].x - q[0].x + h * q[3].x) * v + q[0].x) / depth,
                   ((q[1].y - q[0].y + g * q[1].y) * u + (q[3].y - q[0].y + h * q[3].y) * v + q[0].y) / depth };
}

START_TEST (the_homography_is_heckberts_closed_form)
{
  const KnownRectangle rectangle = { { { 311.7, 207.3 }, { 2803.1, 141.9 }, { 2611.3, 2003.7 }, { 107.9, 1711.1 } }, WIDTH, HEIGHT };
  const Knowns knowns = knowns_rectangle (&rectangle);
  const Mapping mapping = solved (&knowns, NULL);

  for (double v = -0.1; v <= 1.1; v += 0.173)
    for (double u = -0.1; u <= 1.1; u += 0.137)
      assert_place (mapping_to_px (&mapping, (Point) { u * WIDTH, v * HEIGHT }), heckbert (rectangle.corners, u, v), 1e-9, "Heckbert");
}
END_TEST

/* Either sense, beginning anywhere: eight ways to click the same frame. */
START_TEST (the_order_of_the_corners_does_not_matter)
{
  const Mapping wanted = camera (0);
  const KnownRectangle rectangle = seen (&wanted);
  KnownRectangle turned = rectangle;
  const Knowns knowns = knowns_rectangle (&turned);
  Mapping got;

  for (int i = 0; i < 4; i++)
    turned.corners[i] = rectangle.corners[(_i < 4 ? _i + i : _i + 4 - i) % 4];
  got = solved (&knowns, NULL);
  assert_same_mapping (&got, &wanted, 1e-9);
  assert_place (mapping_to_mm (&got, rectangle.corners[0]), (Point) { 0, 0 }, 1e-9, "the origin is the upper left corner");
}
END_TEST

START_TEST (a_larger_rectangle_makes_all_lengths_larger)
{
  const Mapping by = camera (0);
  const KnownRectangle rectangle = seen (&by), larger = { .corners = { rectangle.corners[0], rectangle.corners[1], rectangle.corners[2],
                                                                      rectangle.corners[3] }, .width = 3 * WIDTH, .height = 3 * HEIGHT };
  const Knowns knowns = knowns_rectangle (&rectangle), of_larger = knowns_rectangle (&larger);
  const Mapping one = solved (&knowns, NULL), other = solved (&of_larger, NULL);
  const Point px = { 1311.7, 907.3 };

  assert_place (mapping_to_mm (&other, px), point_scale (mapping_to_mm (&one, px), 3), 1e-9, "three times");
}
END_TEST

START_TEST (a_page_stood_on_its_side_has_its_width_along_the_picture)
{
  const KnownRectangle rectangle = { { { 203.1, 2101.7 }, { 207.3, 103.9 }, { 3001.3, 99.7 }, { 2997.1, 2107.9 } }, 280, 200 };
  const Knowns knowns = knowns_rectangle (&rectangle);
  const Mapping mapping = solved (&knowns, NULL);

  assert_place (mapping_to_mm (&mapping, rectangle.corners[1]), (Point) { 0, 0 }, 1e-9, "upper left");
  assert_place (mapping_to_mm (&mapping, rectangle.corners[3]), (Point) { 280, 200 }, 1e-9, "lower right");
}
END_TEST

/* A photograph on its corner: each side climbs more than it runs, and the widths are those that climb the less. */
START_TEST (which_sides_are_widths_is_decided_by_their_directions_alone)
{
  const KnownRectangle rectangle = { { { 300, 100 }, { 364, 177 }, { 314, 264 }, { 250, 187 } }, 70, 90 };
  const Knowns knowns = knowns_rectangle (&rectangle);
  const Mapping mapping = solved (&knowns, NULL);

  ck_assert_int_eq (known_rectangle_widths (rectangle.corners), 0);
  ck_assert_double_eq_tol (point_distance (mapping_to_mm (&mapping, rectangle.corners[0]), mapping_to_mm (&mapping, rectangle.corners[1])),
                           70, 1e-9);
  const Point turned[4] = { rectangle.corners[1], rectangle.corners[2], rectangle.corners[3], rectangle.corners[0] };
  ck_assert_int_eq (known_rectangle_widths (turned), 1);
}
END_TEST

START_TEST (lengths_check_a_rectangle_and_do_not_change_it)
{
  const Mapping by = camera (0);
  const KnownRectangle rectangle = seen (&by);
  const KnownLength lengths[] = { { mapping_to_px (&by, (Point) { 30, 40 }), mapping_to_px (&by, (Point) { 230, 40 }), 200, 0 },
                                  { mapping_to_px (&by, (Point) { 30, 40 }), mapping_to_px (&by, (Point) { 30, 140 }), 104, 0 } };
  Knowns knowns = knowns_rectangle (&rectangle);
  MappingMisfit misfit;
  Mapping got;

  knowns.lengths = lengths;
  knowns.length_count = 2;
  got = solved (&knowns, &misfit);
  assert_same_mapping (&got, &by, 1e-9);
  ck_assert_double_eq_tol (misfit.lengths[0].residual_mm, 0, 1e-9);
  ck_assert_double_eq_tol (misfit.lengths[1].residual_mm, -4, 1e-9);
  ck_assert_double_eq_tol (misfit.lengths[1].residual_percent, -100 * 4.0 / 104, 1e-9);
  ck_assert (!misfit.lengths[0].disagrees && misfit.lengths[1].disagrees && misfit.any_disagrees);
}
END_TEST

static double
rms_of_width (const KnownRectangle *meant, double *stated)
{
  uint64_t state = 20261128;
  double squares = 0;

  for (int run = 0; run < 4000; run++)
    {
      KnownRectangle rectangle = *meant;
      const Knowns knowns = knowns_rectangle (&rectangle);
      MappingMisfit misfit;
      Mapping got;
      double width;

      for (int i = 0; i < 4; i++)
        rectangle.corners[i] = clicked (meant->corners[i], &state);
      got = solved (&knowns, &misfit);
      width = mapping_to_mm (&got, (Point) { 1400, 1100 }).x - mapping_to_mm (&got, (Point) { 400, 1100 }).x;
      squares += pow (100 * (width / 100 - 1), 2) / 4000;
      *stated = misfit.rectangle_click_percent;
    }
  return sqrt (squares);
}

/* Seen straight on, the middle's scale follows the mean of the two sides; its clicks explain two standard deviations. */
START_TEST (what_the_corners_clicks_explain_is_what_they_make)
{
  const KnownRectangle meant = { { { 400, 400 }, { 1400, 400 }, { 1400, 1800 }, { 400, 1800 } }, 100, 140 };
  double stated, made = rms_of_width (&meant, &stated);

  ck_assert_double_eq_tol (stated / (2 * made), 1, 0.05);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("rectangle");

  tcase_add_test (tests, four_corners_give_the_camera_back);
  tcase_add_test (tests, the_homography_is_heckberts_closed_form);
  tcase_add_loop_test (tests, the_order_of_the_corners_does_not_matter, 0, 8);
  tcase_add_test (tests, a_larger_rectangle_makes_all_lengths_larger);
  tcase_add_test (tests, a_page_stood_on_its_side_has_its_width_along_the_picture);
  tcase_add_test (tests, which_sides_are_widths_is_decided_by_their_directions_alone);
  tcase_add_test (tests, lengths_check_a_rectangle_and_do_not_change_it);
  tcase_add_test (tests, what_the_corners_clicks_explain_is_what_they_make);
  return run_suite (suite_create ("plan rectangle"), tests);
}
