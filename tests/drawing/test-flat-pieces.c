#include <math.h>
#include "drawing/flat-pieces.h"
#include "geometry/planform.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Flat pieces measured as a rule on the paper would. Millimetres. */

static const Units metric = { LENGTH_MM, MASS_G };

typedef struct { Figures *figures; GPtrArray *pieces; } Laid;

static Laid
lay (Aeroplane *takes, ExportHalves halves)
{
  FiguresCache *cache = figures_cache_new ();
  Laid laid = { .figures = figures_of (cache, takes) };

  laid.pieces = flat_pieces_of (laid.figures, metric, halves);
  figures_cache_free (cache);
  aeroplane_unref (takes);
  return laid;
}

static void
put_away (Laid *laid)
{
  g_ptr_array_unref (laid->pieces);
  figures_unref (laid->figures);
}

static const FlatPiece *
piece_called (const Laid *laid, const char *name)
{
  for (guint i = 0; i < laid->pieces->len; i++)
    if (g_str_equal (((const FlatPiece *) g_ptr_array_index (laid->pieces, i))->name, name))
      return g_ptr_array_index (laid->pieces, i);
  return NULL;
}

/* The nth line of that purpose; NULL after the last. */
static const FlatLine *
line_for (const FlatPiece *piece, FlatPurpose purpose, size_t nth)
{
  for (guint i = 0; i < piece->lines->len; i++)
    if (g_array_index (piece->lines, FlatLine, i).purpose == purpose && nth-- == 0)
      return &g_array_index (piece->lines, FlatLine, i);
  return NULL;
}

static Point
swapped (Point place)
{
  return (Point) { place.y, place.x };
}

/* By the integrals over a planform, to which stations run along y. */
static double
area_within (const FlatLine *line)
{
  g_autofree Segment *segments = g_memdup2 (line->segments, line->count * sizeof *segments);
  AreaMoments moments;
  Outline *outline;

  for (size_t i = 0; i < line->count; i++)
    segments[i] = (Segment) { .kind = line->segments[i].kind, .to = swapped (line->segments[i].to), .centre = swapped (line->segments[i].centre),
                              .control1 = swapped (line->segments[i].control1), .control2 = swapped (line->segments[i].control2),
                              .rx = line->segments[i].ry, .ry = line->segments[i].rx };
  outline = outline_from (swapped (line->start), segments, line->count);
  ck_assert_int_eq (planform_moments (outline, PLANFORM_SINGLE, &moments), CORE_OK);
  outline_unref (outline);
  return moments.area;
}

static Aeroplane *
bent_wing (double dihedral, const DihedralBreak *breaks, size_t count, Outline *takes)
{
  Surface *wing = surface_new ("wing", ROLE_WING, takes);

  wing->dihedral = dihedral;
  wing->breaks = g_memdup2 (breaks, count * sizeof *breaks);
  wing->break_count = count;
  return with_piece (aeroplane_new (), wing);
}

static double
rad (double degrees)
{
  return degrees * G_PI / 180;
}

START_TEST (an_aeroplane_without_anything_has_no_pieces)
{
  Laid laid = lay (aeroplane_new (), EXPORT_BOTH_HALVES);

  ck_assert_uint_eq (laid.pieces->len, 0);
  put_away (&laid);
}
END_TEST

/* Elementary geometry: a panel at 30° covers cos 30° of its length in plan. */
START_TEST (a_panel_laid_flat_has_its_plan_area_over_the_cosine_of_its_dihedral)
{
  Laid laid = lay (bent_wing (30, NULL, 0, mixed_wing ()), EXPORT_STARBOARD);
  const FlatLine *cut = line_for (piece_called (&laid, "Wing, starboard"), FLAT_CUT, 0);

  ck_assert_double_eq_tol (area_within (cut), laid.figures->surfaces[0].area_mm2 / 2 / cos (rad (30)), 1e-6);
  put_away (&laid);
}
END_TEST

/* The same, panel by panel: 100 mm wide and 200 flat, then 200 mm at 60°, where the cosine is one half. */
START_TEST (a_straight_wing_is_longer_from_its_break_on)
{
  const DihedralBreak tip = { 200, 60 };
  Laid laid = lay (bent_wing (0, &tip, 1, rectangle (50, 800, 100)), EXPORT_STARBOARD);
  const FlatPiece *wing = piece_called (&laid, "Wing, starboard");
  const Box box = flat_piece_bounds (wing);

  ck_assert_double_eq_tol (area_within (line_for (wing, FLAT_CUT, 0)), 100 * (200 + 200 / 0.5), 1e-6);
  ck_assert_double_eq_tol (box.max.x, 600, 1e-9);
  ck_assert_str_eq (wing->remark, "Developed flat: the dihedral breaks at 1 station, 50.0 % longer than in plan");
  put_away (&laid);
}
END_TEST

/* A break in the midst of a curve or an arc leaves the area exact as well: of the strips inboard and outboard of it, each by its cosine. */
START_TEST (a_break_in_a_curved_outline_cuts_it_exactly)
{
  const DihedralBreak tip = { 150, 40 };
  Laid bent = lay (bent_wing (0, &tip, 1, ellipse_from (10, 300, 40, 80)), EXPORT_STARBOARD);
  const double h = 150.0 / 300, quarter = 300 * 120 * (G_PI / 4);
  /* of a quarter ellipse the share inboard of h semi-axes: (h √(1 − h²) + asin h) / (π / 2) */
  const double inner = quarter * (h * sqrt (1 - h * h) + asin (h)) / (G_PI / 2);

  ck_assert_double_eq_tol (area_within (line_for (piece_called (&bent, "Wing, starboard"), FLAT_CUT, 0)),
                           inner + (quarter - inner) / cos (rad (40)), 1e-5);
  put_away (&bent);
}
END_TEST

START_TEST (an_elliptical_wing_laid_flat_stays_an_ellipse)
{
  Laid laid = lay (bent_wing (20, NULL, 0, ellipse_from (10, 300, 40, 80)), EXPORT_STARBOARD);
  const FlatLine *cut = line_for (piece_called (&laid, "Wing, starboard"), FLAT_CUT, 0);

  ck_assert_uint_eq (cut->count, 2);
  for (size_t i = 0; i < cut->count; i++)
    {
      const Segment *arc = &cut->segments[i];

      ck_assert_int_eq (arc->kind, SEGMENT_ARC);
      ck_assert_double_eq_tol (arc->rx, 300 / cos (rad (20)), 1e-9);
      ck_assert_double_eq_tol (arc->ry, i == 0 ? 40 : 80, 1e-9);
      ck_assert_double_eq_tol (arc->centre.x, 0, 1e-9);
      ck_assert_double_eq_tol (arc->centre.y, 50, 1e-9);
    }
  put_away (&laid);
}
END_TEST

/* An arc half-way round goes by the side of greater y, which is another side once its axes have changed places. */
START_TEST (an_arc_half_way_round_still_bulges_outboard)
{
  const Segment round = segment_arc ((Point) { 100, 0 }, 60, 200, (Point) { 160, 0 });
  Laid laid = lay (bent_wing (0, NULL, 0, outline_from ((Point) { 40, 0 }, &round, 1)), EXPORT_BOTH_HALVES);

  ck_assert_double_eq_tol (flat_piece_bounds (piece_called (&laid, "Wing, starboard")).max.x, 200, 1e-9);
  ck_assert_double_eq_tol (flat_piece_bounds (piece_called (&laid, "Wing, port")).min.x, -200, 1e-9);
  put_away (&laid);
}
END_TEST

START_TEST (a_root_beside_the_centre_line_is_carried_there)
{
  const Point nodes[] = { { 20, 30 }, { 25, 330 }, { 95, 330 }, { 120, 30 } };
  Laid laid = lay (bent_wing (0, NULL, 0, polygon_from (nodes, 4)), EXPORT_STARBOARD);
  const FlatLine *cut = line_for (piece_called (&laid, "Wing, starboard"), FLAT_CUT, 0);

  ck_assert (cut->closed);
  ck_assert_double_eq_tol (cut->start.x, 0, 1e-12);
  ck_assert_double_eq_tol (cut->start.y, 20, 1e-12);
  ck_assert_double_eq_tol (area_within (cut), 30 * 100 + 300 * (100 + 70) / 2, 1e-6);
  put_away (&laid);
}
END_TEST

START_TEST (the_port_half_is_the_starboard_one_turned_over)
{
  Laid laid = lay (bent_wing (5, NULL, 0, mixed_wing ()), EXPORT_BOTH_HALVES);
  const FlatPiece *starboard = piece_called (&laid, "Wing, starboard"), *port = piece_called (&laid, "Wing, port");
  const Box right = flat_piece_bounds (starboard), left = flat_piece_bounds (port);

  ck_assert_double_eq_tol (left.min.x, -right.max.x, 1e-9);
  ck_assert_double_eq_tol (left.max.x, -right.min.x, 1e-9);
  ck_assert_double_eq_tol (left.min.y, right.min.y, 1e-9);
  ck_assert_double_eq_tol (left.max.y, right.max.y, 1e-9);
  ck_assert_double_eq_tol (area_within (line_for (port, FLAT_CUT, 0)), area_within (line_for (starboard, FLAT_CUT, 0)), 1e-6);
  put_away (&laid);
}
END_TEST

START_TEST (only_the_halves_asked_for_are_made)
{
  Laid port = lay (bent_wing (5, NULL, 0, mixed_wing ()), EXPORT_PORT), starboard = lay (bent_wing (5, NULL, 0, mixed_wing ()), EXPORT_STARBOARD);

  ck_assert_ptr_null (piece_called (&port, "Wing, starboard"));
  ck_assert_ptr_nonnull (piece_called (&port, "Wing, port"));
  ck_assert_ptr_null (piece_called (&starboard, "Wing, port"));
  ck_assert_ptr_nonnull (piece_called (&starboard, "Wing, starboard"));
  put_away (&port);
  put_away (&starboard);
}
END_TEST

START_TEST (how_it_was_developed_is_said_of_a_wing_with_dihedral_and_of_no_other)
{
  Laid bent = lay (bent_wing (5, NULL, 0, rectangle (0, 600, 100)), EXPORT_STARBOARD);
  Laid flat = lay (bent_wing (0, NULL, 0, rectangle (0, 600, 100)), EXPORT_STARBOARD);

  ck_assert_str_eq (piece_called (&bent, "Wing, starboard")->remark, "Developed flat: 5° of dihedral, 0.4 % longer than in plan");
  ck_assert_ptr_null (piece_called (&flat, "Wing, starboard")->remark);
  put_away (&bent);
  put_away (&flat);
}
END_TEST

START_TEST (a_fin_stands_on_its_root_as_seen_from_port)
{
  const Point nodes[] = { { 400, 0 }, { 430, 70 }, { 460, 70 }, { 470, 0 } };
  Laid laid = lay (with_surface (aeroplane_new (), "fin", ROLE_FIN, polygon_from (nodes, 4)), EXPORT_STARBOARD);
  const FlatLine *cut = line_for (piece_called (&laid, "Fin"), FLAT_CUT, 0);

  ck_assert_double_eq (cut->segments[0].to.x, 430);
  ck_assert_double_eq (cut->segments[0].to.y, -70);
  put_away (&laid);
}
END_TEST

START_TEST (what_is_not_drawn_yet_has_no_piece)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (0, 600, 100));
  Laid open, standing;

  wing->provisional = true;
  standing = lay (with_piece (aeroplane_new (), wing), EXPORT_BOTH_HALVES);
  open = lay (bent_wing (0, NULL, 0, polygon_from ((Point[]) { { 0, 0 }, { 10, 300 }, { 80, 300 } }, 3)), EXPORT_BOTH_HALVES);
  ck_assert_uint_eq (standing.pieces->len, 0);
  ck_assert_uint_eq (open.pieces->len, 0);
  put_away (&standing);
  put_away (&open);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("flat pieces");

  tcase_add_test (tests, an_aeroplane_without_anything_has_no_pieces);
  tcase_add_test (tests, a_panel_laid_flat_has_its_plan_area_over_the_cosine_of_its_dihedral);
  tcase_add_test (tests, a_straight_wing_is_longer_from_its_break_on);
  tcase_add_test (tests, a_break_in_a_curved_outline_cuts_it_exactly);
  tcase_add_test (tests, an_elliptical_wing_laid_flat_stays_an_ellipse);
  tcase_add_test (tests, an_arc_half_way_round_still_bulges_outboard);
  tcase_add_test (tests, a_root_beside_the_centre_line_is_carried_there);
  tcase_add_test (tests, the_port_half_is_the_starboard_one_turned_over);
  tcase_add_test (tests, only_the_halves_asked_for_are_made);
  tcase_add_test (tests, how_it_was_developed_is_said_of_a_wing_with_dihedral_and_of_no_other);
  tcase_add_test (tests, a_fin_stands_on_its_root_as_seen_from_port);
  tcase_add_test (tests, what_is_not_drawn_yet_has_no_piece);
  return run_suite (suite_create ("drawing flat pieces"), tests);
}
