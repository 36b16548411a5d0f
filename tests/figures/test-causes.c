#include <check.h>
#include <math.h>
#include "figures/advice.h"
#include "figures/no-neutral-point.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Whatever stands in the way of the neutral point is told as it is, in the answer and in the findings. */

enum { TWO_LINES = 66 };        /* letters that two lines of the panel hold at its least width, words kept whole */

static const Units metric = { LENGTH_MM, MASS_G };

static void
assert_told (const char *because, const Figures *figures, const char *headline, const char *finding)
{
  Advice *advice = advice_new (figures, metric);
  const Note *note = note_with (figures, finding);

  ck_assert_msg (g_str_equal (advice->headline, headline), "%s: said %s", because, advice->headline);
  ck_assert_msg (g_utf8_strlen (advice->headline, -1) <= TWO_LINES, "%s: too long for the panel", because);
  ck_assert_msg (note && note->problem, "%s: no finding says “%s”", because, finding);
  ck_assert_double_nan (figures->neutral_point.x_mm);
  ck_assert (!figures_are_sound (figures));
  advice_free (advice);
}

static Aeroplane *
plain_wing (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
}

static Outline *
pulled_over_the_centre (void)
{
  const Segment segments[] = { segment_curve ((Point) { -20, -30 }, (Point) { 10, 100 }, (Point) { 10, 200 }),
                               segment_line ((Point) { 90, 200 }), segment_line ((Point) { 90, 0 }) };

  return outline_from ((Point) { 0, 0 }, segments, G_N_ELEMENTS (segments));
}

static Aeroplane *
wing_beyond (void)
{
  return with_surface (aeroplane_new (), "main", ROLE_WING, pulled_over_the_centre ());
}

static Aeroplane *
tail_beyond (void)
{
  return with_surface (plain_wing (), "stab", ROLE_TAILPLANE, pulled_over_the_centre ());
}

static Aeroplane *
nose_beyond (void)
{
  return with_surface (plain_wing (), "nose", ROLE_FOREPLANE, polygon_from ((Point[]) { { 0, -9 }, { 0, 80 }, { 50, 80 }, { 50, -9 } }, 4));
}

/* It goes round behind the root at station 30 and comes back beneath the chord that is to be carried to the centre line. */
static Aeroplane *
wing_inboard (void)
{
  const Point nodes[] = { { 0, 30 }, { 0, 200 }, { 120, 200 }, { 120, 10 }, { 50, 10 }, { 90, 30 } };

  return with_surface (aeroplane_new (), "main", ROLE_WING, polygon_from (nodes, G_N_ELEMENTS (nodes)));
}

static Aeroplane *
wing_too_large (void)
{
  return with_surface (aeroplane_new (), "main", ROLE_WING, rectangle (0, 1e80, 1e79));
}

static const struct { const char *because; Aeroplane *(*made) (void); const char *headline, *finding; } outlines[] = {
  { "a handle beyond the centre line", wing_beyond, "The wing's outline crosses the centre line. Drag it back.",
    "The outline of “main” crosses the centre line. Drag back what lies beyond it." },
  { "a tailplane's", tail_beyond, "The tailplane's outline crosses the centre line. Drag it back.",
    "The outline of “stab” crosses the centre line." },
  { "a foreplane's nodes", nose_beyond, "The foreplane's outline crosses the centre line. Drag it back.",
    "The outline of “nose” crosses the centre line." },
  { "a node where the root is carried", wing_inboard,
    "The wing's outline reaches inboard of its root. Drag it out.",
    "The outline of “main” reaches inboard of its root." },
  { "a wing beyond all measure", wing_too_large, "The wing cannot be measured. See what Findings say of it.",
    "“main” is too large or too small to be measured." },
};

START_TEST (an_outline_that_is_no_half_is_told_why)
{
  g_autoptr (Aeroplane) aeroplane = outlines[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  assert_told (outlines[_i].because, figures, outlines[_i].headline, outlines[_i].finding);
  ck_assert_int_eq (figures->neutral_point.status, CORE_NO_AREA);
}
END_TEST

/* A fin may reach below the line it stands on; where it could not, it would be said so. */
START_TEST (a_fin_that_cannot_go_below_its_root_is_told_so)
{
  g_autoptr (Aeroplane) aeroplane = with_surface (plain_wing (), "fin", ROLE_FIN,
                                                  polygon_from ((Point[]) { { 300, -20 }, { 320, 80 }, { 350, 80 }, { 380, -20 } }, 4));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures_of_surface (figures, "fin")->area_mm2, 100 * (80 + 30) / 2.0, 1e-6);
  figures->surfaces[1].status = CORE_OUT_OF_RANGE;
  figures->surfaces[1].area_mm2 = NAN;
  Advice *advice = advice_new (figures, metric);
  ck_assert_str_eq (advice->headline, "The fin's outline goes below its root. Drag it up.");
  advice_free (advice);
}
END_TEST

static Aeroplane *
three_wings_two_in_one_place (void)
{
  Aeroplane *made = with_surface (plain_wing (), "second", ROLE_WING, rectangle (400, 500, 90));

  return with_surface (made, "third", ROLE_WING, rectangle (410, 500, 90));
}

/* A hair of 1e-9 mm runs out from the tip for as long again as the wing. */
static Aeroplane *
wing_with_a_hair (void)
{
  return with_surface (aeroplane_new (), "main", ROLE_WING,
                       polygon_from ((Point[]) { { 0, 0 }, { 0, 300 }, { 45, 300 }, { 45, 600 }, { 45 + 1e-9, 600 }, { 45 + 1e-9, 300 },
                                                 { 90, 300 }, { 90, 0 } }, 8));
}

static Aeroplane *
wing_without_air (void)
{
  Surface *wing = surface_new ("main", ROLE_WING, rectangle (0, 600, 100));

  wing->pressure_ratio = 0;
  return with_piece (aeroplane_new (), wing);
}

static Aeroplane *
narrow_tail (void)
{
  return with_surface (plain_wing (), "stub", ROLE_TAILPLANE, rectangle (400, 1e-3, 50));
}

static Aeroplane *
steep_wing (void)
{
  Surface *wing = surface_new ("main", ROLE_WING, rectangle (0, 600, 100));

  wing->dihedral = 85;
  return with_piece (aeroplane_new (), wing);
}

static const struct {
  const char *because;
  Aeroplane *(*made) (void);
  CoreStatus status;
  const char *headline, *finding, *at_fault;
} solves[] = {
  { "two of three in one place", three_wings_two_in_one_place, CORE_SINGULAR, "Two surfaces lie in one place. Move one of them.",
    "The neutral point cannot be found: “second” and “third” lie in one place. Move one of them.", "second" },
  { "no chord at some stations", wing_with_a_hair, CORE_SINGULAR, "One surface has no chord somewhere. Give it one there.",
    "The neutral point cannot be found: somewhere “main” is as thin as a line. Give it a chord there.", "main" },
  { "no air at any surface", wing_without_air, CORE_SINGULAR,
    "No surface lifts. Type a dynamic-pressure ratio above 0.", "dynamic-pressure ratio is 0, so none lifts", "main" },
  { "a tail a thousandth wide", narrow_tail, CORE_OUT_OF_RANGE,
    "One surface is too narrow. Give it more span.", "the span of “stub” is too small for the method.", "stub" },
  { "a wing that nearly stands", steep_wing, CORE_OUT_OF_RANGE,
    "One dihedral is too steep. Make it less than 80°.", "the dihedral of “main” is too steep.", "main" },
};

START_TEST (a_solve_that_fails_is_told_by_its_cause_and_names_the_surface)
{
  g_autoptr (Aeroplane) aeroplane = solves[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_msg (figures->neutral_point.status == solves[_i].status, "%s: %d", solves[_i].because, figures->neutral_point.status);
  assert_told (solves[_i].because, figures, solves[_i].headline, solves[_i].finding);
  ck_assert_str_eq (figures->neutral_point.at_fault[0]->piece.id, solves[_i].at_fault);
  ck_assert_ptr_eq (note_with (figures, solves[_i].finding)->piece, &figures->neutral_point.at_fault[0]->piece);
}
END_TEST

/* What names no surface, or cannot be brought about here. */
static const struct { CoreStatus status; const char *headline, *finding; } nameless[] = {
  { CORE_NO_MEMORY, "No memory is left for the figures. Close another window.",
    "The neutral point cannot be found: there is no memory left. Close another window, then change something." },
  { CORE_TOO_MANY, "Too many surfaces for one neutral point. Take some away.",
    "The neutral point cannot be found: there are too many surfaces to be reckoned together. Join some into one outline, or take some away." },
  { CORE_NOT_FINITE, "The neutral point cannot be found. Check wing and tail.",
    "The neutral point cannot be found. Check the size and the place of every wing and tail." },
  { CORE_OUT_OF_RANGE, "The neutral point cannot be found. Check wing and tail.",
    "The neutral point cannot be found. Check the size and the place of every wing and tail." },
  { CORE_SINGULAR, "Two surfaces lie in one place. Move one of them.",
    "The neutral point cannot be found: two surfaces lie in one place. Move one of them." },
};

START_TEST (a_cause_that_names_no_surface_is_told_in_a_whole_sentence)
{
  const NeutralPointFigures point = { .status = nameless[_i].status };
  g_autofree char *finding = no_neutral_point_finding (&point);

  ck_assert_str_eq (no_neutral_point_headline (&point), nameless[_i].headline);
  ck_assert_str_eq (finding, nameless[_i].finding);
}
END_TEST

START_TEST (a_neutral_point_that_is_found_has_nothing_in_its_way)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_int_eq (figures->neutral_point.status, CORE_OK);
  ck_assert_ptr_null (figures->neutral_point.at_fault[0]);
  ck_assert_ptr_null (figures->neutral_point.at_fault[1]);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures causes");
  TCase *tests = tcase_create ("causes");

  tcase_add_loop_test (tests, an_outline_that_is_no_half_is_told_why, 0, G_N_ELEMENTS (outlines));
  tcase_add_test (tests, a_fin_that_cannot_go_below_its_root_is_told_so);
  tcase_add_loop_test (tests, a_solve_that_fails_is_told_by_its_cause_and_names_the_surface, 0, G_N_ELEMENTS (solves));
  tcase_add_loop_test (tests, a_cause_that_names_no_surface_is_told_in_a_whole_sentence, 0, G_N_ELEMENTS (nameless));
  tcase_add_test (tests, a_neutral_point_that_is_found_has_nothing_in_its_way);
  return run_suite (suite, tests);
}
