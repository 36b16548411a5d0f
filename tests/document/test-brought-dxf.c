/* What a laser cutter's DXF file holds. Group codes as published with the format's reference for release 12 and 2000; splines against
 * de Boor, A Practical Guide to Splines, 1978: here by the Cox-de Boor recursion of the basis functions, in the program by blossoms.
 * DXF's x runs to the right, our y; its y up the page, our -x. */
#include "brought-read.h"
#include "support/run-suite.h"

#define ENTITIES(inside) "0\nSECTION\n2\nENTITIES\n" inside "0\nENDSEC\n0\nEOF\n"
#define HEADER(unit) "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n" unit "\n9\n$LTSCALE\n40\n1.0\n0\nENDSEC\n"
#define LINE(x1, y1, x2, y2) "0\nLINE\n8\nCUT\n10\n" #x1 "\n20\n" #y1 "\n11\n" #x2 "\n21\n" #y2 "\n"
#define VERTEX(x, y, more) "0\nVERTEX\n8\nCUT\n10\n" #x "\n20\n" #y "\n30\n0.0\n" more
#define CORNER(x, y) "10\n" #x "\n20\n" #y "\n"

static Point
ours (double x, double y)
{
  return (Point) { -y, x };
}

static double
off_circle (const BroughtLine *line, size_t segment, Point centre, double radius)
{
  double most = 0;

  for (int k = 0; k <= 16; k++)
    most = fmax (most, fabs (point_distance (segment_at (brought_node (line, segment), &line->segments[segment], k / 16.0),
                                             centre) - radius));
  return most;
}

START_TEST (a_line_runs_from_its_10_20_to_its_11_21_on_its_layer)
{
  Brought *read = brought_from (ENTITIES (LINE (10.5, 20, -30, 40)));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_str_eq (read->lines[0].name, "CUT");
  assert_near (read->lines[0].start, -20, 10.5, 0);
  assert_near (brought_node (&read->lines[0], 1), -40, -30, 0);
  ck_assert (!read->unit_known);
  brought_free (read);
}
END_TEST

/* Release 12 writes a POLYLINE, its VERTEX entities and SEQEND; 70 with 1 closes it. */
START_TEST (a_polyline_of_release_12_has_its_vertices_and_closes)
{
  Brought *read = brought_from (ENTITIES ("  0\nPOLYLINE\n  8\nWING\n 66\n     1\n 10\n0.0\n 20\n0.0\n 30\n0.0\n 70\n     1\n"
    VERTEX (0.0, 0.0, "") VERTEX (100.0, 0.0, "") VERTEX (80.0, 50.0, "") "0\nSEQEND\n8\nWING\n" LINE (0, 500, 1, 500)));
  const BroughtLine *line = brought_named (read, "WING");

  ck_assert_uint_eq (read->count, 2);
  ck_assert (line->closed);
  ck_assert_uint_eq (line->count, 3);
  assert_near (brought_node (line, 1), 0, 100, 0);
  assert_near (brought_node (line, 2), -50, 80, 0);
  brought_free (read);
}
END_TEST

/* 70 of a vertex: 8 was put there by fitting a curve, 16 is a pole that the curve does not pass. */
START_TEST (poles_of_a_fitted_polyline_are_no_corners)
{
  Brought *read = brought_from (ENTITIES ("0\nPOLYLINE\n8\nA\n66\n1\n70\n4\n" VERTEX (0, 0, "70\n16\n") VERTEX (0, 0, "70\n8\n")
    VERTEX (50, 90, "70\n16\n") VERTEX (50, 30, "70\n8\n") VERTEX (100, 0, "70\n8\n") "0\nSEQEND\n"));

  ck_assert_uint_eq (read->lines[0].count, 2);
  assert_near (brought_node (&read->lines[0], 1), -30, 50, 0);
  brought_free (read);
}
END_TEST

START_TEST (a_surface_made_of_corners_is_left_out)
{
  Brought *read = brought_from (ENTITIES ("0\nPOLYLINE\n8\nA\n66\n1\n70\n64\n" VERTEX (0, 0, "") VERTEX (900, 0, "") "0\nSEQEND\n" LINE (0,
                                                            0, 1, 1)));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_eq (read->left_out, 1);
  brought_free (read);
}
END_TEST

START_TEST (an_lwpolyline_has_its_corners_within_itself)
{
  Brought *read = brought_from (ENTITIES ("0\nLWPOLYLINE\n100\nAcDbEntity\n8\nCUT\n100\nAcDbPolyline\n90\n3\n70\n1\n43\n0.0\n"
    CORNER (0, 0) CORNER (100, 0) CORNER (80, 50)));

  ck_assert (read->lines[0].closed);
  ck_assert_uint_eq (read->lines[0].count, 3);
  assert_near (brought_node (&read->lines[0], 2), -50, 80, 0);
  brought_free (read);
}
END_TEST

/* The bulge is the tangent of a quarter of the angle, to the left when positive: 1 is half a circle, below a line to the right. */
START_TEST (a_bulge_of_one_is_half_a_circle_to_the_right_of_its_way)
{
  Brought *read = brought_from (ENTITIES ("0\nLWPOLYLINE\n8\nA\n90\n2\n70\n0\n" CORNER (0, 0) "42\n1.0\n" CORNER (100, 0)));
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (line->count, 2);
  assert_near (brought_node (line, 1), ours (50, -50).x, ours (50, -50).y, 1e-9);
  assert_near (brought_node (line, 2), ours (100, 0).x, ours (100, 0).y, 1e-9);
  ck_assert_double_eq_tol (off_circle (line, 0, ours (50, 0), 50), 0, 3e-4 * 50);
  brought_free (read);
}
END_TEST

START_TEST (a_bulge_below_zero_bends_the_other_way_also_in_release_12_and_while_closing)
{
  /* A quarter of a circle about (100, 0): tan (90 / 4 degrees) = 0.41421356. */
  Brought *read = brought_from (ENTITIES ("0\nPOLYLINE\n8\nA\n66\n1\n70\n1\n" VERTEX (100, 0, "") VERTEX (0, 0,
                                                            "42\n-0.41421356237\n") VERTEX (100, 100, "42\n0\n") "0\nSEQEND\n"));
  const BroughtLine *line = &read->lines[0];

  ck_assert (line->closed);
  ck_assert_uint_eq (line->count, 3);
  ck_assert_double_eq_tol (off_circle (line, 1, ours (100, 0), 100), 0, 3e-4 * 100);
  brought_free (read);
}
END_TEST

/* Angles in degrees, to the left from the x axis. */
START_TEST (an_arc_runs_to_the_left_from_its_50_to_its_51)
{
  Brought *read = brought_from (ENTITIES ("0\nARC\n8\nA\n10\n20\n20\n30\n40\n10\n50\n270\n51\n90\n"));
  const BroughtLine *line = &read->lines[0];

  assert_near (line->start, ours (20, 20).x, ours (20, 20).y, 1e-9);
  assert_near (brought_node (line, 1), ours (30, 30).x, ours (30, 30).y, 1e-9);
  assert_near (brought_node (line, 2), ours (20, 40).x, ours (20, 40).y, 1e-9);
  ck_assert_double_eq_tol (off_circle (line, 0, ours (20, 30), 10), 0, 3e-4 * 10);
  brought_free (read);
}
END_TEST

/* 230 of -1 turns the plane round about y: x runs to the left. */
START_TEST (what_is_drawn_from_behind_is_mirrored)
{
  Brought *arc = brought_from (ENTITIES ("0\nARC\n8\nA\n10\n-20\n20\n30\n40\n10\n50\n0\n51\n90\n210\n0\n220\n0\n230\n-1\n"));
  Brought *bulge = brought_from (ENTITIES ("0\nLWPOLYLINE\n8\nA\n90\n2\n" CORNER (0, 0) "42\n1\n" CORNER (-100, 0)
                                           "210\n0\n220\n0\n230\n-1.0\n"));

  assert_near (arc->lines[0].start, ours (10, 30).x, ours (10, 30).y, 1e-9);
  assert_near (brought_node (&arc->lines[0], 1), ours (20, 40).x, ours (20, 40).y, 1e-9);
  assert_near (brought_node (&bulge->lines[0], 1), ours (50, 50).x, ours (50, 50).y, 1e-9);
  brought_free (arc);
  brought_free (bulge);
}
END_TEST

START_TEST (a_circle_is_closed)
{
  Brought *read = brought_from (ENTITIES ("0\nCIRCLE\n8\nA\n10\n20\n20\n30\n40\n10\n"));

  ck_assert (read->lines[0].closed);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), 2 * M_PI * 10, 0.02);
  brought_free (read);
}
END_TEST

/* 11, 21: the end of the major axis from the centre; 40: the minor axis's share of it; 41, 42: parameters in radians. */
START_TEST (a_quarter_of_an_ellipse_runs_between_its_parameters)
{
  Brought *read = brought_from (ENTITIES ("0\nELLIPSE\n8\nA\n10\n100\n20\n50\n11\n0\n21\n40\n40\n0.5\n41\n0\n42\n1.5707963267949\n"));
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (line->count, 1);
  assert_near (line->start, ours (100, 90).x, ours (100, 90).y, 1e-9);
  assert_near (brought_node (line, 1), ours (80, 50).x, ours (80, 50).y, 1e-9);
  for (int k = 0; k <= 16; k++)
    {
      const Point at = segment_at (line->start, &line->segments[0], k / 16.0);
      ck_assert_double_eq_tol (hypot ((at.y - 100) / 20, (-at.x - 50) / 40), 1, 3e-4);
    }
  brought_free (read);
}
END_TEST

START_TEST (a_whole_ellipse_is_closed)
{
  Brought *read = brought_from (ENTITIES ("0\nELLIPSE\n8\nA\n10\n0\n20\n0\n11\n20\n21\n0\n40\n0.5\n41\n0.0\n42\n6.283185307179586\n"));

  ck_assert (read->lines[0].closed);
  ck_assert_uint_eq (read->lines[0].count, 4);
  brought_free (read);
}
END_TEST

/* Splines */

typedef struct { int degree; size_t poles, knots; const double *x, *y, *knot, *weight; } Curve;

/* Cox and de Boor's recursion. */
static double
basis (const Curve *self, size_t i, int degree, double t)
{
  const double *k = self->knot;

  if (degree == 0)
    return k[i] <= t && t < k[i + 1];
  const double left = k[i + (size_t) degree] - k[i], right = k[i + (size_t) degree + 1] - k[i + 1];
  return (left > 0 ? (t - k[i]) / left * basis (self, i, degree - 1, t) : 0)
         + (right > 0 ? (k[i + (size_t) degree + 1] - t) / right * basis (self, i + 1, degree - 1, t) : 0);
}

static Point
curve_at (const Curve *self, double t)
{
  double x = 0, y = 0, w = 0;

  for (size_t i = 0; i < self->poles; i++)
    {
      const double share = basis (self, i, self->degree, t) * (self->weight ? self->weight[i] : 1);
      x += share * self->x[i];
      y += share * self->y[i];
      w += share;
    }
  return ours (x / w, y / w);
}

static char *
curve_text (const Curve *self)
{
  GString *text = g_string_new ("0\nSECTION\n2\nENTITIES\n0\nSPLINE\n8\nA\n210\n0\n220\n0\n230\n1\n70\n8\n");

  g_string_append_printf (text, "71\n%d\n72\n%zu\n73\n%zu\n74\n0\n42\n0.0000001\n43\n0.0000001\n", self->degree, self->knots, self->poles);
  for (size_t i = 0; i < self->knots; i++)
    g_string_append_printf (text, "40\n%.17g\n", self->knot[i]);
  for (size_t i = 0; self->weight && i < self->poles; i++)
    g_string_append_printf (text, "41\n%.17g\n", self->weight[i]);
  for (size_t i = 0; i < self->poles; i++)
    g_string_append_printf (text, "10\n%.17g\n20\n%.17g\n30\n0\n", self->x[i], self->y[i]);
  g_string_append (text, "0\nENDSEC\n0\nEOF\n");
  return g_string_free (text, FALSE);
}

static double
distance_to (const BroughtLine *line, Point place)
{
  double least = INFINITY, distance;

  for (size_t i = 0; i < line->count; i++)
    {
      segment_nearest (brought_node (line, i), &line->segments[i], place, &distance);
      least = fmin (least, distance);
    }
  return least;
}

static const double pole_x[] = { 0, 20, 60, 110, 140, 190, 200 }, pole_y[] = { 0, 60, 75, 40, -30, -20, 10 };
static const double uneven_weights[] = { 1, 3, 0.5, 1, 2, 1, 1 }, equal_weights[] = { 2, 2, 2, 2, 2, 2, 2 };
static const double knots1[] = { 0, 0, 1, 2, 3, 4, 5, 6, 6 }, knots2[] = { 0, 0, 0, 1, 2.5, 3, 4, 7, 7, 7 };
static const double knots3[] = { 0, 0, 0, 0, 1, 2.5, 3, 7, 7, 7, 7 }, doubled3[] = { 0, 0, 0, 0, 1, 2, 2, 7, 7, 7, 7 };
static const double unclamped3[] = { 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 }, knots5[] = { 0, 0, 0, 0, 0, 0, 3, 7, 7, 7, 7, 7, 7 };

static const struct { const char *because; Curve curve; size_t pieces; double within; } curves[] = {
  { "degree 1 is its corners", { 1, 7, 9, pole_x, pole_y, knots1, NULL }, 6, 1e-9 },
  { "degree 2", { 2, 7, 10, pole_x, pole_y, knots2, NULL }, 5, 1e-6 },
  { "degree 3", { 3, 7, 11, pole_x, pole_y, knots3, NULL }, 4, 1e-6 },
  { "degree 3 with a knot twice", { 3, 7, 11, pole_x, pole_y, doubled3, NULL }, 3, 1e-6 },
  { "degree 3 whose ends are no poles", { 3, 7, 11, pole_x, pole_y, unclamped3, NULL }, 4, 1e-6 },
  { "weights that are all the same change nothing", { 3, 7, 11, pole_x, pole_y, knots3, equal_weights }, 4, 1e-6 },
  { "rational, degree 2", { 2, 7, 10, pole_x, pole_y, knots2, uneven_weights }, 60, 1e-5 * 300 },
  { "rational, degree 3", { 3, 7, 11, pole_x, pole_y, knots3, uneven_weights }, 48, 1e-5 * 300 },
  { "degree 5", { 5, 7, 13, pole_x, pole_y, knots5, NULL }, 24, 1e-5 * 300 },
};

START_TEST (a_spline_runs_where_the_basis_functions_say)
{
  const Curve *curve = &curves[_i].curve;
  g_autofree char *text = curve_text (curve);
  Brought *read = brought_from (text);
  const BroughtLine *line = &read->lines[0];
  const double from = curve->knot[curve->degree], to = curve->knot[curve->poles];

  ck_assert_msg (line->count == curves[_i].pieces, "%s: %zu pieces", curves[_i].because, line->count);
  for (int k = 0; k < 200; k++)
    {
      const double off = distance_to (line, curve_at (curve, from + (to - from) * k / 200));
      ck_assert_msg (off <= curves[_i].within, "%s: off by %g", curves[_i].because, off);
    }
  brought_free (read);
}
END_TEST

/* Three poles with weights 1, cos 45 degrees, 1 are a quarter of a circle: Piegl and Tiller, The NURBS Book, 1997, section 7.3. */
START_TEST (a_rational_quarter_of_a_circle_is_round)
{
  const Curve quarter = { 2, 3, 6, (const double[]) { 100, 100, 0 }, (const double[]) { 0, 100, 100 }, (const double[]) { 0, 0, 0, 1, 1,
                                                            1 },
                          (const double[]) { 1, M_SQRT1_2, 1 } };
  g_autofree char *text = curve_text (&quarter);
  Brought *read = brought_from (text);

  for (size_t i = 0; i < read->lines[0].count; i++)
    ck_assert_double_eq_tol (off_circle (&read->lines[0], i, (Point) { 0, 0 }, 100), 0, 1e-5 * M_PI / 2 * 100);
  brought_free (read);
}
END_TEST

static const struct { const char *because, *numbers; } no_splines[] = {
  { "falling knots", "71\n1\n40\n0\n40\n0\n40\n1\n40\n0.5\n" },
  { "too few knots", "71\n3\n40\n0\n40\n0\n40\n1\n40\n1\n" },
  { "a degree beyond all use", "71\n99\n40\n0\n40\n0\n40\n1\n40\n1\n" },
  { "a degree that is no number of ours", "71\n1e300\n40\n0\n40\n0\n40\n1\n40\n1\n" },
  { "knots all the same", "71\n1\n40\n1\n40\n1\n40\n1\n40\n1\n" },
  { "a weight of nothing", "71\n1\n40\n0\n40\n0\n40\n1\n40\n1\n41\n0\n41\n1\n" },
};

START_TEST (a_spline_that_is_none_is_left_out)
{
  g_autofree char *text = g_strconcat ("0\nSECTION\n2\nENTITIES\n0\nSPLINE\n8\nA\n", no_splines[_i].numbers, CORNER (0, 0) CORNER (900,
                                                            0) LINE (0, 0, 1, 1),
                                       "0\nENDSEC\n0\nEOF\n", NULL);
  Brought *read = brought_from (text);

  ck_assert_msg (read->count == 1 && read->left_out == 1, "%s", no_splines[_i].because);
  brought_free (read);
}
END_TEST

/* Joining */

START_TEST (lines_that_meet_are_one_whichever_way_round_they_run)
{
  Brought *read = brought_from (ENTITIES (LINE (0, 0, 100, 0) LINE (80, 50, 100, 0.004) LINE (0, 0.003, 80, 50) LINE (500, 0, 600, 0)));

  ck_assert_uint_eq (read->count, 2);
  ck_assert (read->lines[0].closed && !read->lines[1].closed);
  ck_assert_uint_eq (read->lines[0].count, 3);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), 100 + hypot (20, 50) + hypot (80, 50), 0.01);
  brought_free (read);
}
END_TEST

START_TEST (an_open_run_is_joined_on_both_sides)
{
  Brought *read = brought_from (ENTITIES (LINE (10, 0, 20, 0) LINE (20, 0, 30, 5) LINE (0, 3, 10, 0) LINE (-10, 0, 0, 3)));
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_eq (line->count, 4);
  ck_assert (!line->closed);
  ck_assert_double_eq_tol (point_distance (line->start, brought_node (line, 4)), hypot (40, 5), 1e-9);
  brought_free (read);
}
END_TEST

START_TEST (lines_apart_by_more_than_a_hair_stay_apart)
{
  Brought *read = brought_from (ENTITIES (LINE (0, 0, 10, 0) LINE (10.02, 0, 20, 0)));

  ck_assert_uint_eq (read->count, 2);
  brought_free (read);
}
END_TEST

START_TEST (an_arc_and_its_chord_enclose_something)
{
  Brought *read = brought_from (ENTITIES ("0\nARC\n8\nA\n10\n0\n20\n0\n40\n10\n50\n0\n51\n180\n" LINE (10, 0, -10, 0)));

  ck_assert_uint_eq (read->count, 1);
  ck_assert (read->lines[0].closed);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), M_PI * 10 + 20, 0.01);
  brought_free (read);
}
END_TEST

START_TEST (a_curve_cut_into_many_lines_is_one_again)
{
  enum { PIECES = 20000 };
  g_autoptr (GString) text = g_string_new ("0\nSECTION\n2\nENTITIES\n");

  /* Every other one the other way round, those of odd number behind those of even number. */
  for (int k = 0; k < PIECES; k++)
    {
      const int i = k < PIECES / 2 ? 2 * k : 2 * (k - PIECES / 2) + 1;
      const double a = 2 * M_PI * i / PIECES, b = 2 * M_PI * (i + 1) / PIECES, u = i % 3 ? a : b, v = i % 3 ? b : a;
      g_string_append_printf (text, "0\nLINE\n8\nA\n10\n%.6f\n20\n%.6f\n11\n%.6f\n21\n%.6f\n", 500 * cos (u), 500 * sin (u), 500 * cos (v),
                              500 * sin (v));
    }
  g_string_append (text, "0\nENDSEC\n0\nEOF\n");
  Brought *read = brought_from (text->str);
  ck_assert_uint_eq (read->count, 1);
  ck_assert (read->lines[0].closed);
  ck_assert_uint_eq (read->lines[0].count, PIECES);
  brought_free (read);
}
END_TEST

/* Units */

static const struct { const char *text; double mm; bool known; } units[] = {
  { HEADER ("1") ENTITIES (LINE (0, 0, 1, 0)), 25.4, true },
  { HEADER ("2") ENTITIES (LINE (0, 0, 1, 0)), 304.8, true },
  { HEADER ("4") ENTITIES (LINE (0, 0, 1, 0)), 1, true },
  { HEADER ("5") ENTITIES (LINE (0, 0, 1, 0)), 10, true },
  { HEADER ("6") ENTITIES (LINE (0, 0, 1, 0)), 1000, true },
  { HEADER ("0") ENTITIES (LINE (0, 0, 1, 0)), 1, false },
  { HEADER ("99999999999999") ENTITIES (LINE (0, 0, 1, 0)), 1, false },
  { HEADER ("words") ENTITIES (LINE (0, 0, 1, 0)), 1, false },
  { ENTITIES (LINE (0, 0, 1, 0)), 1, false },
};

START_TEST (insunits_says_what_a_number_is_in)
{
  Brought *read = brought_from (units[_i].text);

  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), units[_i].mm, 1e-9);
  ck_assert_int_eq (read->unit_known, units[_i].known);
  ck_assert_double_eq (read->unit_mm, units[_i].mm);
  brought_free (read);
}
END_TEST

START_TEST (what_stands_outside_the_entities_or_is_no_line_is_not_drawn)
{
  Brought *read = brought_from ("999\na remark\n0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nB\n" LINE (0, 0, 900, 0) "0\nENDBLK\n0\nENDSEC\n"
    ENTITIES ("0\nTEXT\n8\nA\n10\n1\n20\n2\n1\nroot rib\n" LINE (0, 0, 5, 0)));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_eq (read->left_out, 1);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), 5, 1e-9);
  brought_free (read);
}
END_TEST

START_TEST (line_ends_of_another_system_and_names_in_other_letters_do_no_harm)
{
  Brought *read = brought_from ("0\r\nSECTION\r\n2\r\nENTITIES\r\n0\r\nLINE\r\n8\r\nFl\xfcgel\r\n10\r\n0\r\n20\r\n0\r\n11\r\n5\r\n21\r\n0\r\n0\r\nENDSEC\r\n0\r\nEOF\r\n");

  ck_assert (g_utf8_validate (read->lines[0].name, -1, NULL));
  brought_free (read);
}
END_TEST

static const struct { const char *because; BroughtError code; const char *text, *says; } refused[] = {
  { "a length that is none", BROUGHT_ERROR_FOREIGN, ENTITIES ("0\nLINE\n8\nA\n10\n1,5\n20\n0\n"), "drawing:10:" },
  { "a code that is none", BROUGHT_ERROR_FOREIGN, ENTITIES ("0\nLINE\nlayer\nA\n"), "drawing:7:" },
  { "not a number", BROUGHT_ERROR_FOREIGN, ENTITIES ("0\nLINE\n8\nA\n10\nnan\n"), "drawing:10:" },
  { "endless", BROUGHT_ERROR_FOREIGN, ENTITIES ("0\nLINE\n8\nA\n10\ninf\n"), "drawing:10:" },
  { "hexadecimal", BROUGHT_ERROR_FOREIGN, ENTITIES ("0\nLINE\n8\nA\n10\n0x10\n"), "drawing:10:" },
  { "cut short in a line", BROUGHT_ERROR_FOREIGN, "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nA\n10\n", "drawing:9:" },
  { "cut short between entities", BROUGHT_ERROR_FOREIGN, "0\nSECTION\n2\nENTITIES\n" LINE (0, 0, 1, 0), "drawing:16:" },
  { "no lines", BROUGHT_ERROR_EMPTY, ENTITIES (""), "drawing:" },
  { "a line without length", BROUGHT_ERROR_EMPTY, ENTITIES (LINE (5, 5, 5, 5)), "drawing:" },
  { "further than a model goes", BROUGHT_ERROR_VALUE, ENTITIES (LINE (0, 0, 1e9, 0)), "drawing:" },
  { "beyond what a number holds", BROUGHT_ERROR_EMPTY, ENTITIES (LINE (0, 0, 1e999, 0)), "drawing:" },
};

START_TEST (a_broken_file_names_the_line)
{
  g_autofree char *sentence = brought_refusal (refused[_i].text, refused[_i].code);

  ck_assert_msg (g_str_has_prefix (sentence, refused[_i].says), "%s: %s", refused[_i].because, sentence);
}
END_TEST

/* A star: were each of the ends in its middle passed again and again, the test would not end in time. */
START_TEST (very_many_lines_that_begin_at_one_place_are_joined_two_by_two)
{
  enum { RAYS = 190000 };
  g_autoptr (GString) text = g_string_new ("0\nSECTION\n2\nENTITIES\n");

  for (int i = 0; i < RAYS; i++)
    g_string_append_printf (text, "0\nLINE\n10\n0\n20\n0\n11\n%d\n21\n%d\n", 100 + i % 437, 100 + i / 437);
  g_string_append (text, "0\nENDSEC\n0\nEOF\n");
  Brought *read = brought_from (text->str);
  ck_assert_uint_eq (read->count, RAYS / 2);
  ck_assert_uint_eq (read->lines[0].count, 2);
  brought_free (read);
}
END_TEST

/* Were each of the ends compared with each, the test would not end in time. */
START_TEST (very_many_lines_beyond_all_bounds_are_refused)
{
  g_autoptr (GString) text = g_string_new ("0\nSECTION\n2\nENTITIES\n");

  for (int i = 1; i <= 150000; i++)
    g_string_append_printf (text, "0\nLINE\n8\nA\n10\n1e20\n20\n%de20\n11\n1e20\n21\n-%de20\n", i, i);
  g_string_append (text, "0\nENDSEC\n0\nEOF\n");
  g_autofree char *sentence = brought_refusal (text->str, BROUGHT_ERROR_VALUE);
  ck_assert_ptr_nonnull (strstr (sentence, "further than 10 m"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought dxf");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, a_line_runs_from_its_10_20_to_its_11_21_on_its_layer);
  tcase_add_test (tests, a_polyline_of_release_12_has_its_vertices_and_closes);
  tcase_add_test (tests, poles_of_a_fitted_polyline_are_no_corners);
  tcase_add_test (tests, a_surface_made_of_corners_is_left_out);
  tcase_add_test (tests, an_lwpolyline_has_its_corners_within_itself);
  tcase_add_test (tests, a_bulge_of_one_is_half_a_circle_to_the_right_of_its_way);
  tcase_add_test (tests, a_bulge_below_zero_bends_the_other_way_also_in_release_12_and_while_closing);
  tcase_add_test (tests, an_arc_runs_to_the_left_from_its_50_to_its_51);
  tcase_add_test (tests, what_is_drawn_from_behind_is_mirrored);
  tcase_add_test (tests, a_circle_is_closed);
  tcase_add_test (tests, a_quarter_of_an_ellipse_runs_between_its_parameters);
  tcase_add_test (tests, a_whole_ellipse_is_closed);
  tcase_add_loop_test (tests, a_spline_runs_where_the_basis_functions_say, 0, G_N_ELEMENTS (curves));
  tcase_add_test (tests, a_rational_quarter_of_a_circle_is_round);
  tcase_add_loop_test (tests, a_spline_that_is_none_is_left_out, 0, G_N_ELEMENTS (no_splines));
  tcase_add_test (tests, lines_that_meet_are_one_whichever_way_round_they_run);
  tcase_add_test (tests, an_open_run_is_joined_on_both_sides);
  tcase_add_test (tests, lines_apart_by_more_than_a_hair_stay_apart);
  tcase_add_test (tests, an_arc_and_its_chord_enclose_something);
  tcase_add_test (tests, a_curve_cut_into_many_lines_is_one_again);
  tcase_add_loop_test (tests, insunits_says_what_a_number_is_in, 0, G_N_ELEMENTS (units));
  tcase_add_test (tests, what_stands_outside_the_entities_or_is_no_line_is_not_drawn);
  tcase_add_test (tests, line_ends_of_another_system_and_names_in_other_letters_do_no_harm);
  tcase_add_test (tests, very_many_lines_that_begin_at_one_place_are_joined_two_by_two);
  tcase_add_test (tests, very_many_lines_beyond_all_bounds_are_refused);
  tcase_add_loop_test (tests, a_broken_file_names_the_line, 0, G_N_ELEMENTS (refused));
  return run_suite (suite_create ("brought dxf"), tests);
}
