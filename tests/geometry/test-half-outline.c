/* A line drawn elsewhere becomes a half-outline: geometry alone, no source but what is drawn here. */
#include <check.h>
#include "geometry/half-outline.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { MOST = 24 };
typedef struct { Point start; Segment segments[MOST]; size_t count; } Drawn;

/* The half that all of these draw: a straight leading edge, a curved tip, a trailing edge that is one cubic. */
static const Point root_leading = { 0, 0 }, tip_leading = { 30, 280 }, tip_trailing = { 95, 290 }, root_trailing = { 130, 0 };

static Segment
tip (void)
{
  return segment_curve ((Point) { 35, 320 }, (Point) { 80, 318 }, tip_trailing);
}

static Segment
trailing_edge (void)
{
  return segment_curve ((Point) { 105, 200 }, (Point) { 128, 90 }, root_trailing);
}

static Drawn
open_half (void)
{
  return (Drawn) { root_leading, { segment_line (tip_leading), tip (), trailing_edge () }, 3 };
}

static Drawn
closed_half (void)
{
  Drawn made = open_half ();

  made.segments[made.count++] = segment_line (root_leading);
  return made;
}

/* From the root's trailing edge to port, round, and out to starboard; `stretch` makes the port chords longer. */
static Drawn
whole (double stretch)
{
  const Drawn half = open_half ();
  Drawn made = { .start = root_trailing };

  for (size_t i = 3; i-- > 0;)
    {
      const Segment back = segment_reversed (i ? half.segments[i - 1].to : half.start, &half.segments[i]);
      made.segments[made.count++] = back;
    }
  for (size_t i = 0; i < made.count; i++)
    {
      made.segments[i].to = (Point) { made.segments[i].to.x * stretch, -made.segments[i].to.y };
      made.segments[i].control1 = (Point) { made.segments[i].control1.x * stretch, -made.segments[i].control1.y };
      made.segments[i].control2 = (Point) { made.segments[i].control2.x * stretch, -made.segments[i].control2.y };
    }
  made.start.x *= stretch;
  for (size_t i = 0; i < half.count; i++)
    made.segments[made.count++] = half.segments[i];
  made.segments[made.count - 1].to = made.start;
  return made;
}

typedef Point (*Move) (Point);
static Point as_it_is (Point p)     { return p; }
static Point aside (Point p)        { return (Point) { p.x + 411, p.y - 977 }; }
static Point to_port (Point p)      { return (Point) { p.x + 5, 60 - p.y }; }

static void
move (Drawn *drawn, Move where)
{
  drawn->start = where (drawn->start);
  for (size_t i = 0; i < drawn->count; i++)
    {
      Segment *segment = &drawn->segments[i];
      *segment = segment->kind == SEGMENT_LINE ? segment_line (where (segment->to))
                                               : segment_curve (where (segment->control1), where (segment->control2), where (segment->to));
    }
}

static void
run_backwards (Drawn *drawn)
{
  Drawn turned = { .start = drawn->segments[drawn->count - 1].to, .count = drawn->count };

  for (size_t i = 0; i < drawn->count; i++)
    turned.segments[drawn->count - 1 - i] = segment_reversed (i ? drawn->segments[i - 1].to : drawn->start, &drawn->segments[i]);
  *drawn = turned;
}

/* Begins a closed run at another of its nodes. */
static void
begin_at (Drawn *drawn, size_t node)
{
  Drawn turned = { .start = drawn->segments[node - 1].to, .count = drawn->count };

  for (size_t i = 0; i < drawn->count; i++)
    turned.segments[i] = drawn->segments[(node + i) % drawn->count];
  *drawn = turned;
}

static DrawnLine
line_of (const Drawn *drawn)
{
  return (DrawnLine) { .start = drawn->start, .segments = drawn->segments, .count = drawn->count };
}

static HalfOutline
half_of (const DrawnLine *line)
{
  HalfOutline made;
  const CoreStatus status = half_outline_make (line, &made);

  ck_assert_msg (status == CORE_OK, "%s", core_status_sentence (status));
  return made;
}

/* Every place of the one lies on the other, handles where they are the same pieces. */
static void
assert_is_the_half (const HalfOutline *made, double within)
{
  const Drawn half = open_half ();
  const Outline *found = made->outline;

  ck_assert_uint_eq (outline_segment_count (found), half.count);
  ck_assert (outline_node (found, 0).x == 0 && outline_node (found, 0).y == 0);
  ck_assert (outline_node (found, 3).y == 0);
  for (size_t i = 0; i < half.count; i++)
    {
      const Segment *segment = outline_segment (found, i);
      ck_assert_int_eq (segment->kind, half.segments[i].kind);
      ck_assert_double_le (point_distance (segment->to, half.segments[i].to), within);
      ck_assert_double_le (point_distance (segment->control1, half.segments[i].control1), within);
      ck_assert_double_le (point_distance (segment->control2, half.segments[i].control2), within);
    }
}

static const Move places[] = { as_it_is, aside, to_port };

START_TEST (an_open_half_is_taken_wherever_and_whichever_way_it_was_drawn)
{
  for (int backwards = 0; backwards < 2; backwards++)
    {
      Drawn drawn = open_half ();
      move (&drawn, places[_i]);
      if (backwards)
        run_backwards (&drawn);
      const DrawnLine line = line_of (&drawn);
      HalfOutline made = half_of (&line);
      ck_assert_int_eq (made.drawn, HALF_DRAWN_OPEN);
      assert_is_the_half (&made, 1e-12 * 1000);
      ck_assert_double_eq_tol (made.root_x, places[_i] (root_leading).x, 1e-9);
      outline_unref (made.outline);
    }
}
END_TEST

START_TEST (the_root_of_a_closed_half_is_taken_out_on_either_side)
{
  for (size_t first = 1; first <= 4; first++)
    {
      Drawn drawn = closed_half ();
      begin_at (&drawn, first);
      move (&drawn, places[_i]);
      const DrawnLine line = line_of (&drawn);
      HalfOutline made = half_of (&line);
      ck_assert_int_eq (made.drawn, HALF_DRAWN_WITH_ROOT);
      assert_is_the_half (&made, 1e-9);
      ck_assert (made.asymmetry == 0);
      outline_unref (made.outline);
    }
}
END_TEST

START_TEST (a_root_drawn_in_pieces_and_not_quite_straight_is_one)
{
  Drawn drawn = open_half ();

  drawn.segments[drawn.count++] = segment_line ((Point) { 90, 0.2 });
  drawn.segments[drawn.count++] = segment_line ((Point) { 40, -0.1 });
  drawn.segments[drawn.count++] = segment_line (root_leading);
  const DrawnLine line = line_of (&drawn);
  HalfOutline made = half_of (&line);
  ck_assert_int_eq (made.drawn, HALF_DRAWN_WITH_ROOT);
  assert_is_the_half (&made, 0.11);
  outline_unref (made.outline);
}
END_TEST

START_TEST (of_two_straight_ends_the_longer_is_the_root)
{
  const Drawn drawn = { { 20, 0 }, { segment_line ((Point) { 0, 300 }), segment_line ((Point) { 140, 300 }), segment_line ((Point) { 90,
                                                            0 }), segment_line ((Point) { 20, 0 }) }, 4 };
  const DrawnLine line = line_of (&drawn);
  HalfOutline made = half_of (&line);

  ck_assert_int_eq (made.drawn, HALF_DRAWN_WITH_ROOT);
  ck_assert_uint_eq (outline_segment_count (made.outline), 3);
  ck_assert_double_eq_tol (outline_node (made.outline, 3).x, 140, 1e-12);
  ck_assert_double_eq_tol (outline_node (made.outline, 1).x, 20, 1e-12);
  ck_assert_double_eq_tol (outline_node (made.outline, 1).y, 300, 1e-12);
  outline_unref (made.outline);
}
END_TEST

START_TEST (of_a_whole_the_starboard_half_is_taken_exactly)
{
  for (size_t first = 1; first <= 6; first++)
    {
      Drawn drawn = whole (1);
      begin_at (&drawn, first);
      move (&drawn, places[_i]);
      const DrawnLine line = line_of (&drawn);
      HalfOutline made = half_of (&line);
      ck_assert_int_eq (made.drawn, HALF_DRAWN_WHOLE);
      assert_is_the_half (&made, 1e-9);
      ck_assert_double_eq_tol (made.asymmetry, 0, 1e-9);
      outline_unref (made.outline);
    }
}
END_TEST

/* The port tip's chord is 2 mm longer, and what is longer by grows evenly from the middle to the tip; looked at as far as 47.5 of 48. */
START_TEST (a_rectangle_is_a_whole_unless_it_is_said_to_be_a_half)
{
  const Drawn drawn = { { 0, -100 }, { segment_line ((Point) { 0, 100 }), segment_line ((Point) { 50, 100 }), segment_line ((Point) { 50, -100 }),
    segment_line ((Point) { 0, -100 }) }, 4 };
  DrawnLine line = line_of (&drawn);
  HalfOutline both = half_of (&line), half;

  line.half_only = true;
  half = half_of (&line);
  ck_assert_int_eq (both.drawn, HALF_DRAWN_WHOLE);
  ck_assert_double_eq (outline_bounds (both.outline).max.y, 100);
  ck_assert_int_eq (half.drawn, HALF_DRAWN_WITH_ROOT);
  ck_assert_double_eq (outline_bounds (half.outline).max.y, 200);
  outline_unref (both.outline);
  outline_unref (half.outline);
}
END_TEST

START_TEST (how_far_a_whole_is_from_symmetrical_is_told)
{
  const Drawn drawn = { root_leading, { segment_line ((Point) { 30, 300 }), segment_line ((Point) { 100, 300 }), segment_line (root_trailing),
    segment_line ((Point) { 102, -300 }), segment_line ((Point) { 30, -300 }), segment_line (root_leading) }, 6 };
  const DrawnLine line = line_of (&drawn);
  HalfOutline made = half_of (&line);

  ck_assert_int_eq (made.drawn, HALF_DRAWN_WHOLE);
  ck_assert_double_eq_tol (made.asymmetry, 2 * 47.5 / 48, 1e-9);
  ck_assert_double_eq (outline_node (made.outline, 2).x, 100);
  outline_unref (made.outline);
}
END_TEST

START_TEST (a_closed_line_that_is_neither_is_refused)
{
  const Drawn lopsided = whole (1.3);
  const DrawnLine line = line_of (&lopsided);
  HalfOutline untouched = { .root_x = 77 };

  ck_assert_int_eq (half_outline_make (&line, &untouched), CORE_OUT_OF_RANGE);
  ck_assert (untouched.outline == NULL && untouched.root_x == 77);
}
END_TEST

/* The node at the middle is none: the curves are cut there. */
START_TEST (a_circle_of_curves_is_cut_at_its_middle)
{
  const double r = 100, h = 100 * 0.5522847498;
  Segment quarters[4];
  Point at = { r * M_SQRT1_2, r * M_SQRT1_2 }, start = at;
  for (int i = 0; i < 4; i++)
    {
      const Point to = { -at.y, at.x }, along = point_scale ((Point) { -at.y, at.x }, h / r), on = point_scale ((Point) { to.y, -to.x },
                                                            h / r);
      quarters[i] = segment_curve (point_add (at, along), point_add (to, on), to);
      at = to;
    }
  const DrawnLine line = { .start = start, .segments = quarters, .count = 4 };
  HalfOutline made = half_of (&line);
  ck_assert_int_eq (made.drawn, HALF_DRAWN_WHOLE);
  ck_assert_uint_eq (outline_segment_count (made.outline), 3);
  ck_assert_double_eq_tol (outline_node (made.outline, 3).x, 2 * r, 3e-4 * r);
  for (size_t i = 0; i < 3; i++)
    for (int k = 0; k <= 8; k++)
      {
        const Point place = segment_at (outline_node (made.outline, i), outline_segment (made.outline, i), k / 8.0);
        ck_assert_double_eq_tol (hypot (place.x - r, place.y), r, 3e-4 * r);
      }
  outline_unref (made.outline);
}
END_TEST

/* Where the half comes to lie when the sheet is turned clockwise: drawn lying on its side it must be turned up again. */
START_TEST (quarter_turns_and_a_mirror_bring_any_way_of_drawing_back)
{
  for (int turns = 0; turns < 4; turns++)
    for (int mirrored = 0; mirrored < 2; mirrored++)
      {
        Drawn drawn = open_half ();
        /* Undone by hand: mirror first, then a quarter to the left for each. */
        for (int k = 0; k < turns + (mirrored ? 1 : 0); k++)
          {
            const bool mirror = mirrored && k == 0;
            drawn.start = mirror ? (Point) { -drawn.start.x, drawn.start.y } : (Point) { -drawn.start.y, drawn.start.x };
            for (size_t i = 0; i < drawn.count; i++)
              {
                Point *const each[] = { &drawn.segments[i].to, &drawn.segments[i].control1, &drawn.segments[i].control2 };
                for (size_t p = 0; p < 3; p++)
                  *each[p] = mirror ? (Point) { -each[p]->x, each[p]->y } : (Point) { -each[p]->y, each[p]->x };
              }
          }
        DrawnLine line = line_of (&drawn);
        line.quarter_turns = turns;
        line.mirrored = mirrored;
        HalfOutline made = half_of (&line);
        assert_is_the_half (&made, 1e-9);
        outline_unref (made.outline);
        line.quarter_turns = turns - 8;
        made = half_of (&line);
        assert_is_the_half (&made, 1e-9);
        outline_unref (made.outline);
      }
}
END_TEST

/* A quarter turn to the right: what pointed right on the page points down, which is aft. */
START_TEST (a_fin_drawn_upright_stands_up_when_it_is_turned_once)
{
  /* On the page: x down, y right. Foot from (90, 10) to (90, 110), top at (10, 70) .. (10, 105). */
  const Drawn drawn = { { 90, 10 }, { segment_line ((Point) { 10, 70 }), segment_line ((Point) { 10, 105 }), segment_line ((Point) { 90,
                                                            110 }), segment_line ((Point) { 90, 10 }) }, 4 };
  DrawnLine line = line_of (&drawn);
  line.quarter_turns = 1;
  HalfOutline made = half_of (&line);

  ck_assert_double_eq (outline_node (made.outline, 1).x, 60);
  ck_assert_double_eq (outline_node (made.outline, 1).y, 80);
  ck_assert_double_eq (outline_node (made.outline, 3).x, 100);
  outline_unref (made.outline);
}
END_TEST

static const struct { const char *because; Drawn drawn; CoreStatus status; } refused[] = {
  { "an open line between two stations", { { 0, 0 }, { { .kind = SEGMENT_LINE, .to = { 30, 200 } }, { .kind = SEGMENT_LINE, .to = { 90,
                                                            150 } } }, 2 }, CORE_OPEN },
  { "nothing", { { 0, 0 }, { { .kind = SEGMENT_LINE } }, 0 }, CORE_TOO_FEW_NODES },
  { "not a number", { { 0, 0 }, { { .kind = SEGMENT_LINE, .to = { 30, NAN } } }, 1 }, CORE_NOT_FINITE },
  { "an elliptical arc", { { 0, 0 }, { { .kind = SEGMENT_ARC, .to = { 30, 30 }, .rx = 30, .ry = 30 } }, 1 }, CORE_OUT_OF_RANGE },
  { "one that runs along its root alone", { { 0, 0 }, { { .kind = SEGMENT_LINE, .to = { 30, 0 } } }, 1 }, CORE_NO_SPAN },
  { "one that crosses itself", { { 0, 0 }, { { .kind = SEGMENT_LINE, .to = { 90, 200 } }, { .kind = SEGMENT_LINE, .to = { 10, 210 } },
    { .kind = SEGMENT_LINE, .to = { 100, 0 } } }, 3 }, CORE_CROSSES_ITSELF },
  { "one that lies on both sides of its ends", { { 0, 0 }, { { .kind = SEGMENT_LINE, .to = { 40, 200 } }, { .kind = SEGMENT_LINE,
                                                            .to = { 60, -150 } },
    { .kind = SEGMENT_LINE, .to = { 100, 0 } } }, 3 }, CORE_OUT_OF_RANGE },
};

START_TEST (what_is_no_half_gets_a_status)
{
  const DrawnLine line = line_of (&refused[_i].drawn);
  HalfOutline made = { 0 };
  const CoreStatus status = half_outline_make (&line, &made);

  ck_assert_msg (status == refused[_i].status, "%s: %s", refused[_i].because, core_status_sentence (status));
  ck_assert_ptr_null (made.outline);
}
END_TEST

/* A body from the side */

/* x aft, z up; runs from the tail below to the nose, its foremost place within a curve. */
static Drawn
side (void)
{
  return (Drawn) { { 400, 5 }, { segment_line ((Point) { 400, -5 }), segment_curve ((Point) { 250, -50 }, (Point) { 60, -40 },
                                                            (Point) { 10, -20 }),
    segment_curve ((Point) { -10, -10 }, (Point) { -10, 10 }, (Point) { 10, 22 }), segment_curve ((Point) { 100, 60 }, (Point) { 250, 30 },
                                                            (Point) { 400, 5 }) }, 4 };
}

START_TEST (a_side_view_begins_at_its_nose_and_runs_along_the_top)
{
  for (int backwards = 0; backwards < 2; backwards++)
    {
      Drawn drawn = side ();
      Outline *made = NULL;
      if (backwards)
        run_backwards (&drawn);
      const DrawnLine line = line_of (&drawn);
      ck_assert_int_eq (side_outline_make (&line, &made), CORE_OK);
      const Box box = outline_bounds (made);
      ck_assert_uint_eq (outline_segment_count (made), 5);
      ck_assert_double_eq_tol (box.min.x, 0, 1e-9);
      ck_assert_double_eq_tol (outline_node (made, 0).x, 0, 1e-12);
      ck_assert_double_eq_tol (box.min.y + box.max.y, 0, 1e-9);
      ck_assert_double_gt (outline_node (made, 1).y, outline_node (made, 0).y);
      ck_assert_double_lt (outline_node (made, 4).y, outline_node (made, 0).y);
      outline_unref (made);
    }
}
END_TEST

START_TEST (a_flat_nose_begins_above)
{
  const Drawn drawn = { { 0, -20 }, { segment_line ((Point) { 0, 20 }), segment_line ((Point) { 300, 8 }), segment_line ((Point) { 300,
                                                            -8 }), segment_line ((Point) { 0, -20 }) }, 4 };
  const DrawnLine line = line_of (&drawn);
  Outline *made = NULL;

  ck_assert_int_eq (side_outline_make (&line, &made), CORE_OK);
  ck_assert_double_eq (outline_node (made, 0).y, 20);
  ck_assert_double_eq (outline_node (made, 1).x, 300);
  ck_assert_double_eq (outline_node (made, 1).y, 8);
  outline_unref (made);
}
END_TEST

START_TEST (an_open_side_view_is_refused)
{
  const Drawn drawn = open_half ();
  const DrawnLine line = line_of (&drawn);
  Outline *made = NULL;

  ck_assert_int_eq (side_outline_make (&line, &made), CORE_OPEN);
  ck_assert_ptr_null (made);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("half outline");

  tcase_add_loop_test (tests, an_open_half_is_taken_wherever_and_whichever_way_it_was_drawn, 0, 3);
  tcase_add_loop_test (tests, the_root_of_a_closed_half_is_taken_out_on_either_side, 0, 3);
  tcase_add_test (tests, a_root_drawn_in_pieces_and_not_quite_straight_is_one);
  tcase_add_test (tests, of_two_straight_ends_the_longer_is_the_root);
  tcase_add_loop_test (tests, of_a_whole_the_starboard_half_is_taken_exactly, 0, 3);
  tcase_add_test (tests, a_rectangle_is_a_whole_unless_it_is_said_to_be_a_half);
  tcase_add_test (tests, how_far_a_whole_is_from_symmetrical_is_told);
  tcase_add_test (tests, a_closed_line_that_is_neither_is_refused);
  tcase_add_test (tests, a_circle_of_curves_is_cut_at_its_middle);
  tcase_add_test (tests, quarter_turns_and_a_mirror_bring_any_way_of_drawing_back);
  tcase_add_test (tests, a_fin_drawn_upright_stands_up_when_it_is_turned_once);
  tcase_add_loop_test (tests, what_is_no_half_gets_a_status, 0, (int) (sizeof refused / sizeof *refused));
  tcase_add_test (tests, a_side_view_begins_at_its_nose_and_runs_along_the_top);
  tcase_add_test (tests, a_flat_nose_begins_above);
  tcase_add_test (tests, an_open_side_view_is_refused);
  return run_suite (suite_create ("half outline"), tests);
}
