#include <stdlib.h>
#include <string.h>
#include "support/run-suite.h"
#include "wings.h"

/* A wing with everything: a curved tip, a crank, dihedral and a bend; and a tail. */
static const LatticeBend bend = { .station = 231.7, .angle = 0.31 };

static Outline *
cranked_wing (void)
{
  const Segment edges[] = {
    segment_line ((Point) { 121.3, 143.9 }),
    segment_curve ((Point) { 131, 230 }, (Point) { 139, 317.1 }, (Point) { 181.7, 317.1 }),
    segment_arc ((Point) { 181.7, 0 }, 61.9, 317.1, (Point) { 243.6, 0 }),
  };
  Outline *made = NULL;

  ck_assert_int_eq (outline_new ((Point) { 109.2, 0 }, edges, 3, NULL, &made), CORE_OK);
  return made;
}

static void
fill_surfaces (Outline *const outlines[2], LatticeSurface surfaces[2])
{
  surfaces[0] = (LatticeSurface) { .outline = outlines[0], .z = -11.3, .dihedral = 0.06, .bends = &bend, .bend_count = 1,
                                   .pressure_ratio = 1 };
  surfaces[1] = (LatticeSurface) { .outline = outlines[1], .z = 9.7, .pressure_ratio = 0.9 };
}

static void
expect_same (const Answer *a, const Answer *b, double tolerance)
{
  const double mac = a->reference.mac;

  ck_assert_int_eq (a->status, CORE_OK);
  ck_assert_int_eq (b->status, CORE_OK);
  ck_assert_double_eq_tol (a->result.lift_slope, b->result.lift_slope, tolerance);
  ck_assert_double_eq_tol (a->result.roll_damping, b->result.roll_damping, tolerance);
  ck_assert_double_eq_tol (a->result.span_efficiency, b->result.span_efficiency, tolerance);
  ck_assert_double_eq_tol (a->shares[1].downwash_gradient, b->shares[1].downwash_gradient, tolerance);
  ck_assert_double_eq_tol (a->shares[1].alone_lift_slope, b->shares[1].alone_lift_slope, tolerance);
  ck_assert_double_eq_tol ((a->result.neutral_point_x - a->reference.mac_leading_edge_x) / mac,
                           (b->result.neutral_point_x - b->reference.mac_leading_edge_x) / b->reference.mac, tolerance);
}

/* Millimetres or metres: the same coefficients, to rounding. */
START_TEST (the_unit_of_length_does_not_matter)
{
  const LatticeBend bend_m = { .station = 0.2317, .angle = 0.31 };
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (391, 117, 24, 41) }, *small[2] = { NULL };
  LatticeSurface surfaces[2], metres[2];

  for (int i = 0; i < 2; i++)
    ck_assert_int_eq (outline_mapped (outlines[i], (Point) { 1e-3, 1e-3 }, (Point) { 0 }, &small[i]), CORE_OK);
  fill_surfaces (outlines, surfaces);
  fill_surfaces (small, metres);
  metres[0].bends = &bend_m;
  metres[0].z *= 1e-3;
  metres[1].z *= 1e-3;
  const Answer large = answer_of (surfaces, 2), little = answer_of (metres, 2);

  expect_same (&large, &little, 1e-8);
  for (int i = 0; i < 2; i++)
    {
      outline_unref (outlines[i]);
      outline_unref (small[i]);
    }
}
END_TEST

START_TEST (the_datum_does_not_matter)
{
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (391, 117, 24, 41) }, *moved[2] = { NULL };
  LatticeSurface surfaces[2], elsewhere[2];

  for (int i = 0; i < 2; i++)
    ck_assert_int_eq (outline_mapped (outlines[i], (Point) { 1, 1 }, (Point) { -713.9, 0 }, &moved[i]), CORE_OK);
  fill_surfaces (outlines, surfaces);
  fill_surfaces (moved, elsewhere);
  elsewhere[0].z += 391;
  elsewhere[1].z += 391;
  const Answer here = answer_of (surfaces, 2), there = answer_of (elsewhere, 2);

  expect_same (&here, &there, 1e-8);
  ck_assert_double_eq_tol (there.result.neutral_point_x, here.result.neutral_point_x - 713.9, 1e-6);
  for (int i = 0; i < 2; i++)
    {
      outline_unref (outlines[i]);
      outline_unref (moved[i]);
    }
}
END_TEST

/* A node on a line, on a curve and on an arc: the shape is the same, and so is every figure. */
START_TEST (a_node_more_on_the_outline_does_not_matter)
{
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (391, 117, 24, 41) }, *divided[2] = { NULL, outlines[1] };
  LatticeSurface surfaces[2], same[2];

  ck_assert_int_eq (outline_with_node_inserted (outlines[0], (size_t) _i, 0.37, &divided[0]), CORE_OK);
  fill_surfaces (outlines, surfaces);
  fill_surfaces (divided, same);
  const Answer whole = answer_of (surfaces, 2), parted = answer_of (same, 2);

  expect_same (&whole, &parted, 1e-8);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
  outline_unref (divided[0]);
}
END_TEST

START_TEST (what_was_not_asked_for_is_not_a_number)
{
  Outline *wing = wing_trapezium ((Trapezium) { 300, 0, 110, 0, 90 });
  const LatticeSurface surface = { .outline = wing, .pressure_ratio = 1 };
  Lattice *lattice = lattice_new ();
  LatticeShare share;
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, &surface, 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, 60000, 600, &share,
                                   &result), CORE_OK);
  ck_assert_double_nan (result.roll_damping);
  ck_assert_double_nan (result.span_efficiency);
  ck_assert_double_nan (share.alone_lift_slope);
  ck_assert_double_nan (share.alone_centre_x);
  ck_assert_double_nan (share.downwash_gradient);
  ck_assert_double_eq_tol (share.lift_slope, result.lift_slope, 1e-12);
  lattice_free (lattice);
  outline_unref (wing);
}
END_TEST

/* Large, then small, then large again in the same memory: each as from a fresh one, to the last bit. */
START_TEST (memory_kept_from_solve_to_solve_leaves_no_trace)
{
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (391, 117, 24, 41) };
  const unsigned all = LATTICE_ALONE | LATTICE_ROLL | LATTICE_FAR_WAKE;
  Lattice *lattice = lattice_new ();
  LatticeSurface surfaces[2];
  LatticeShare shares[2];
  LatticeResult result;

  fill_surfaces (outlines, surfaces);
  const Answer fresh = answer_of (surfaces, 2);
  for (int count = 2; count <= 4; count++)
    ck_assert_int_eq (lattice_solve (lattice, surfaces, count % 2 ? 1 : 2, lattice_default_options (), all, fresh.reference.area,
                                     fresh.reference.span, shares, &result), CORE_OK);
  ck_assert_mem_eq (&result, &fresh.result, sizeof result);
  ck_assert_mem_eq (shares, fresh.shares, sizeof shares);
  lattice_free (lattice);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

/* Slender-wing theory (Jones, NACA Report 835 (1946)): πA/2 for little aspect ratio, of which lifting-surface theory has half a
 * percent less at 0.3; two-dimensional 2π for very great. */
static const struct { double aspect_ratio, unit, least, most; } extremes[] = {
  { .aspect_ratio = 0.3,  .unit = 1e-3, .least = 0.98, .most = 1 },
  { .aspect_ratio = 0.3,  .unit = 10,   .least = 0.98, .most = 1 },
  { .aspect_ratio = 60,   .unit = 1e-3, .least = 0.94, .most = 1 },
  { .aspect_ratio = 60,   .unit = 10,   .least = 0.94, .most = 1 },
};

START_TEST (spans_of_a_millimetre_and_of_ten_metres_have_their_lift)
{
  const double aspect_ratio = extremes[_i].aspect_ratio, span = extremes[_i].unit;
  const double limit = aspect_ratio < 1 ? M_PI * aspect_ratio / 2 : 2 * M_PI;
  const Answer answer = answer_of_wing (wing_trapezium ((Trapezium) { span / 2, 0, span / aspect_ratio, 0, span / aspect_ratio }),
                                        lattice_default_options ());

  ck_assert_double_gt (answer.result.lift_slope, extremes[_i].least * limit);
  ck_assert_double_lt (answer.result.lift_slope, extremes[_i].most * limit);
  ck_assert (isfinite (answer.result.neutral_point_x) && isfinite (answer.result.roll_damping));
}
END_TEST

static CoreStatus
status_of (const LatticeSurface surfaces[], size_t count)
{
  Lattice *lattice = lattice_new ();
  LatticeShare shares[2], untouched[2];
  LatticeResult result, unchanged;
  CoreStatus status;

  memset (shares, 0x5a, sizeof shares);
  memset (&result, 0x5a, sizeof result);
  memcpy (untouched, shares, sizeof shares);
  memcpy (&unchanged, &result, sizeof result);
  status = lattice_solve (lattice, surfaces, count, lattice_default_options (), LATTICE_ALONE, 1, 1, shares, &result);
  if (status)
    {
      ck_assert_mem_eq (shares, untouched, sizeof shares);
      ck_assert_mem_eq (&result, &unchanged, sizeof result);
    }
  lattice_free (lattice);
  return status;
}

START_TEST (surfaces_one_in_the_other_are_singular)
{
  Outline *wing = wing_trapezium ((Trapezium) { 300, 0, 110, 0, 90 }), *tail = wing_trapezium ((Trapezium) { 120, 60, 70, 60, 70 });
  LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = wing, .pressure_ratio = 1 } };

  ck_assert_int_eq (status_of (surfaces, 2), CORE_SINGULAR);
  surfaces[1].outline = tail;
  ck_assert_int_eq (status_of (surfaces, 2), CORE_SINGULAR);
  /* Nearer than the panels can resolve, what came out was a downwash of 250 and no status. */
  surfaces[1].z = 1;
  ck_assert_int_eq (status_of (surfaces, 2), CORE_SINGULAR);
  surfaces[1].z = 25;
  ck_assert_int_eq (status_of (surfaces, 2), CORE_OK);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

START_TEST (surfaces_that_are_none_are_refused_with_the_outlines_reason)
{
  const Segment away = segment_line ((Point) { 20, 300 }), back = segment_line ((Point) { 0, 0 });
  const Segment bow_tie[] = { segment_line ((Point) { 100, 300 }), segment_line ((Point) { 0, 300 }),
                              segment_line ((Point) { 100, 0 }) };
  Outline *nothing = NULL, *crossing = NULL, *wing = wing_trapezium ((Trapezium) { 300, 0, 110, 0, 90 });

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, (Segment[]) { away, back }, 2, NULL, &nothing), CORE_OK);
  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, bow_tie, 3, NULL, &crossing), CORE_OK);
  const LatticeSurface flat[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = nothing, .pressure_ratio = 1 } };
  const LatticeSurface tied = { .outline = crossing, .pressure_ratio = 1 };

  ck_assert_int_eq (status_of (flat, 2), outline_check (nothing, NULL));
  ck_assert_int_ne (status_of (flat, 2), CORE_OK);
  ck_assert_int_eq (status_of (&tied, 1), CORE_CROSSES_ITSELF);
  outline_unref (nothing);
  outline_unref (crossing);
  outline_unref (wing);
}
END_TEST

START_TEST (numbers_out_of_reason_are_refused)
{
  Outline *wing = wing_trapezium ((Trapezium) { 300, 0, 110, 0, 90 });
  const LatticeSurface sound = { .outline = wing, .pressure_ratio = 1 };
  LatticeSurface surface = sound;

  surface.z = NAN;
  ck_assert_int_eq (status_of (&surface, 1), CORE_NOT_FINITE);
  surface = sound;
  surface.dihedral = 1.5;
  ck_assert_int_eq (status_of (&surface, 1), CORE_OUT_OF_RANGE);
  surface = sound;
  surface.pressure_ratio = -0.1;
  ck_assert_int_eq (status_of (&surface, 1), CORE_OUT_OF_RANGE);
  surface = sound;
  surface.spanwise = -3;
  ck_assert_int_eq (status_of (&surface, 1), CORE_OUT_OF_RANGE);
  surface.spanwise = 2000000000;
  ck_assert_int_eq (status_of (&surface, 1), CORE_OUT_OF_RANGE);
  outline_unref (wing);
}
END_TEST

/* Thirty surfaces whose tips all stand apart would keep a person waiting: that is said at once. */
START_TEST (more_surfaces_than_a_person_waits_for_are_refused)
{
  enum { many = 30 };
  LatticeSurface surfaces[many];
  LatticeShare shares[many];
  LatticeResult result;
  Outline *outlines[many];
  Lattice *lattice = lattice_new ();

  for (int i = 0; i < many; i++)
    {
      outlines[i] = wing_trapezium ((Trapezium) { 400 - 12 * i, 200 * i, 100, 200 * i, 80 });
      surfaces[i] = (LatticeSurface) { .outline = outlines[i], .z = 10 * i, .pressure_ratio = 1 };
    }
  ck_assert_int_eq (lattice_solve (lattice, surfaces, many, lattice_default_options (), 0, 1, 1, shares, &result), CORE_TOO_MANY);
  ck_assert_int_eq (lattice_solve (lattice, surfaces, 3, lattice_default_options (), 0, 1, 1, shares, &result), CORE_OK);
  for (int i = 0; i < many; i++)
    outline_unref (outlines[i]);
  lattice_free (lattice);
}
END_TEST

/* Through bound vortices, along trailing ones, ahead and behind. */
START_TEST (upwash_is_a_number_everywhere)
{
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (391, 117, 24, 41) };
  Lattice *lattice = lattice_new ();
  LatticeSurface surfaces[2];
  LatticeShare shares[2];
  LatticeResult result;

  fill_surfaces (outlines, surfaces);
  ck_assert_int_eq (lattice_solve (lattice, surfaces, 2, lattice_default_options (), 0, 1, 1, shares, &result), CORE_OK);
  for (double x = -200; x < 900; x += 0.37)
    for (int plane = 0; plane < 3; plane++)
      {
        double upwash;

        lattice_upwash (lattice, &x, 1, (double[]) { -11.3, 9.7, 0 }[plane], &upwash);
        ck_assert (isfinite (upwash));
        if (x < 109)
          ck_assert_double_gt (upwash, 0);
        if (x > 300 && x < 380)
          ck_assert_double_lt (upwash, 0);
      }
  lattice_free (lattice);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

static double
random_between (double low, double high)
{
  return low + (high - low) * rand () / RAND_MAX;
}

/* A half-outline drawn by nobody. */
static Outline *
random_outline (double x, double root)
{
  const double span = random_between (20, 400);
  const Segment edges[] = {
    segment_curve ((Point) { x + random_between (-50, 50), random_between (0, span) },
                   (Point) { x + random_between (-50, 90), random_between (0, span) }, (Point) { x + random_between (-20, 80), span }),
    segment_line ((Point) { x + random_between (60, 130), random_between (0.2 * span, span) }),
    segment_line ((Point) { x + random_between (60, 150), root }),
  };
  Outline *made = NULL;

  ck_assert_int_eq (outline_new ((Point) { x, root }, edges, 3, NULL, &made), CORE_OK);
  return made;
}

/* An answer that is a number, or a reason. */
START_TEST (whatever_is_drawn_gets_numbers_or_a_reason)
{
  int answered = 0;

  srand (20240607);
  for (int turn = 0; turn < 150; turn++)
    {
      LatticeSurface surfaces[2] = { { .pressure_ratio = 1 }, { .pressure_ratio = 0.9 } };
      Outline *outlines[2] = { NULL };

      for (int i = 0; i < 2; i++)
        {
          const double root = turn % 3 ? 0 : random_between (0, 30);

          outlines[i] = random_outline (i * random_between (0, 400), root);
          surfaces[i].outline = outlines[i];
          surfaces[i].z = turn % 4 ? random_between (-30, 30) : 0;
          surfaces[i].sides = turn % 5 ? PLANFORM_CARRIED : PLANFORM_OPEN;
        }
      const Answer answer = answer_of (surfaces, 2);

      if (answer.status == CORE_OK)
        {
          answered++;
          ck_assert (isfinite (answer.result.neutral_point_x) && isfinite (answer.result.lift_slope)
                     && isfinite (answer.result.roll_damping) && isfinite (answer.result.span_efficiency));
          ck_assert (isfinite (answer.shares[0].centre_x) && isfinite (answer.shares[1].downwash_gradient));
          ck_assert_double_lt (answer.result.roll_damping, 0);
        }
      outline_unref (outlines[0]);
      outline_unref (outlines[1]);
    }
  ck_assert_int_gt (answered, 40);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lattice bounds");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, the_unit_of_length_does_not_matter);
  tcase_add_test (tests, the_datum_does_not_matter);
  tcase_add_loop_test (tests, a_node_more_on_the_outline_does_not_matter, 0, 3);
  tcase_add_test (tests, what_was_not_asked_for_is_not_a_number);
  tcase_add_test (tests, memory_kept_from_solve_to_solve_leaves_no_trace);
  tcase_add_loop_test (tests, spans_of_a_millimetre_and_of_ten_metres_have_their_lift, 0, sizeof extremes / sizeof *extremes);
  tcase_add_test (tests, surfaces_one_in_the_other_are_singular);
  tcase_add_test (tests, surfaces_that_are_none_are_refused_with_the_outlines_reason);
  tcase_add_test (tests, numbers_out_of_reason_are_refused);
  tcase_add_test (tests, more_surfaces_than_a_person_waits_for_are_refused);
  tcase_add_test (tests, upwash_is_a_number_everywhere);
  tcase_add_test (tests, whatever_is_drawn_gets_numbers_or_a_reason);
  return run_suite (suite_create ("lattice bounds"), tests);
}
