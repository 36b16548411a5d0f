#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "document/hinge.h"
#include "drawing/flat-pieces.h"
#include "drawing/template-word.h"
#include "figures/hatch-shape.h"
#include "figures/wing-depth.h"
#include "geometry/planform.h"
#include "geometry/section-shape.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"
#include "support/sheets.h"

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

/* Two quarter ellipses a side, 118 mm by 26 and 40: π / 2 × 118 × 66. */
START_TEST (a_tail_without_dihedral_is_one_piece)
{
  Laid both = lay (example_racer (), EXPORT_BOTH_HALVES), one = lay (example_racer (), EXPORT_PORT);
  const FlatPiece *tail = piece_called (&both, "Tailplane");
  const FlatLine *edge = line_for (tail, FLAT_CUT, 0);
  const Box box = flat_piece_bounds (tail);

  ck_assert_double_eq_tol (area_within (edge), G_PI / 2 * 118 * 66, 1e-5);
  ck_assert_double_eq_tol (box.max.x, 118, 1e-9);
  ck_assert_double_eq_tol (box.min.x, -118, 1e-9);
  ck_assert_ptr_null (line_for (tail, FLAT_CUT, 1));
  ck_assert_ptr_nonnull (line_for (tail, FLAT_HINGE, 5));
  ck_assert_ptr_null (line_for (tail, FLAT_CENTRE, 1));
  ck_assert_ptr_nonnull (piece_called (&one, "Tailplane, port"));
  put_away (&both);
  put_away (&one);
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

/* The racer that comes with the program: 4° of dihedral, ribs every 22 mm, ailerons, a servo in each half, a mark at station 40. */
static Laid
lay_racer (void)
{
  return lay (example_racer (), EXPORT_BOTH_HALVES);
}

static bool
says (const FlatPiece *piece, const char *text)
{
  for (guint i = 0; i < piece->words->len; i++)
    if (g_str_equal (g_array_index (piece->words, FlatWord, i).text, text))
      return true;
  return false;
}

static void
assert_at (Point got, double x, double y)
{
  ck_assert_double_eq_tol (got.x, x, 1e-6);
  ck_assert_double_eq_tol (got.y, y, 1e-6);
}

/* Where a straight line ends. */
static Point
end_of (const FlatLine *line)
{
  return line->segments[line->count - 1].to;
}

START_TEST (the_mark_stands_where_the_report_has_it)
{
  Laid laid = lay_racer ();
  const MarkFigures *mark = &laid.figures->balance.marks[0];
  const FlatPiece *wing = piece_called (&laid, "Wing, starboard");
  const FlatLine *tick = line_for (wing, FLAT_MARK, 0);
  StationCut cut;

  ck_assert_int_eq (planform_cut (laid.figures->surfaces[0].surface->outline, PLANFORM_CARRIED, 40, &cut), CORE_OK);
  ck_assert_double_eq_tol (tick->start.y - cut.leading_x, mark->target_mm, 1e-9);
  ck_assert_double_eq_tol ((tick->start.x + end_of (tick).x) / 2, 40 / cos (rad (4)), 1e-9);
  ck_assert_double_eq_tol (line_for (wing, FLAT_LIMIT, 0)->start.y - cut.leading_x, mark->forward_mm, 1e-9);
  ck_assert_double_eq_tol (line_for (wing, FLAT_LIMIT, 1)->start.y - cut.leading_x, mark->aft_mm, 1e-9);
  put_away (&laid);
}
END_TEST

START_TEST (the_rib_nearest_to_the_mark_is_named_and_carries_it_too)
{
  Laid laid = lay_racer ();
  const FlatPiece *wing = piece_called (&laid, "Wing, starboard");
  const FlatLine *tick = line_for (wing, FLAT_MARK, 1);

  ck_assert (says (wing, "mark at station 40 mm, 8 mm inboard of rib R2"));
  ck_assert_double_eq_tol ((tick->start.x + end_of (tick).x) / 2, 48 / cos (rad (4)), 1e-9);
  ck_assert_double_eq (tick->start.y, line_for (wing, FLAT_MARK, 0)->start.y);
  put_away (&laid);
}
END_TEST

START_TEST (a_rib_is_a_line_from_edge_to_edge_at_its_station)
{
  Laid laid = lay_racer ();
  const Surface *wing = laid.figures->surfaces[0].surface;
  const FlatLine *rib = line_for (piece_called (&laid, "Wing, starboard"), FLAT_STATION, 4);
  StationCut cut;

  ck_assert_int_eq (planform_cut (wing->outline, PLANFORM_CARRIED, 114, &cut), CORE_OK);
  assert_at (rib->start, 114 / cos (rad (4)), cut.leading_x);
  assert_at (end_of (rib), 114 / cos (rad (4)), cut.trailing_x);
  ck_assert (says (piece_called (&laid, "Wing, port"), "R5"));
  put_away (&laid);
}
END_TEST

/* Elementary geometry: 28 mm aft of the datum an ellipse whose forward half axis ends 40 mm ahead of its middle, at 50 mm, is √(1 − 0.55²) of
   its half span wide; its spar's after edge, at 32 mm, goes to √(1 − 0.45²) of it. */
START_TEST (a_spar_runs_where_its_line_says_to_the_edge_of_the_wing)
{
  g_autoptr (Aeroplane) wing = bent_wing (0, NULL, 0, ellipse_from (10, 300, 40, 80));
  StructureItem spar = structure_item ("Spar of spruce");
  Laid laid;

  spar.of = TRACED_SPAN;
  spar.density = 450;
  spar.thickness = 2;
  spar.width = 4;
  spar.x = 30;
  laid = lay (change_structure_item_added (wing, "wing", &spar), EXPORT_BOTH_HALVES);
  const FlatLine *ahead = line_for (piece_called (&laid, "Wing, starboard"), FLAT_ROOM, 0);
  const FlatLine *aft = line_for (piece_called (&laid, "Wing, starboard"), FLAT_ROOM, 1);

  assert_at (ahead->start, 0, 28);
  ck_assert_double_eq_tol (end_of (ahead).x, 300 * sqrt (1 - 0.55 * 0.55), 1e-3);
  ck_assert_double_eq_tol (end_of (aft).x, 300 * sqrt (1 - 0.45 * 0.45), 1e-3);
  ck_assert_double_eq (end_of (aft).y, 32);
  ck_assert (says (piece_called (&laid, "Wing, port"), "Spar of spruce"));
  structure_item_clear (&spar);
  put_away (&laid);
}
END_TEST

/* The example's spar is 3 mm wide at 161 mm; its mark's words begin outboard of station 48 and are there on either side of it. */
START_TEST (no_word_of_the_mark_lies_on_a_spars_line)
{
  Laid laid = lay_racer ();
  const FlatPiece *wing = piece_called (&laid, "Wing, starboard");
  unsigned ahead = 0, aft = 0;

  ck_assert (says (wing, "Spars"));
  for (guint i = 0; i < wing->words->len; i++)
    {
      const FlatWord *word = &g_array_index (wing->words, FlatWord, i);

      if (word->purpose != FLAT_MARK && word->purpose != FLAT_LIMIT)
        continue;
      ck_assert (word->at.y < 159.5 || word->at.y - word->caps > 162.5);
      *(word->at.y < 159.5 ? &ahead : &aft) += 1;
    }
  ck_assert_uint_gt (ahead, 0);
  ck_assert_uint_gt (aft, 0);
  put_away (&laid);
}
END_TEST

START_TEST (what_runs_by_the_span_without_a_place_is_not_drawn)
{
  g_autoptr (Aeroplane) wing = bent_wing (0, NULL, 0, ellipse_from (10, 300, 40, 80));
  StructureItem edge = structure_item ("Leading edge");
  Laid laid;

  edge.of = TRACED_SPAN;
  edge.density = 160;
  edge.thickness = edge.width = 4;
  laid = lay (change_structure_item_added (wing, "wing", &edge), EXPORT_BOTH_HALVES);
  ck_assert_ptr_null (line_for (piece_called (&laid, "Wing, starboard"), FLAT_ROOM, 0));
  structure_item_clear (&edge);
  put_away (&laid);
}
END_TEST

START_TEST (a_control_is_cut_off_along_its_hinge_and_at_both_ends)
{
  Laid laid = lay_racer ();
  const FlatPiece *wing = piece_called (&laid, "Wing, starboard");
  double leading, trailing;

  hinge_edges (laid.figures->surfaces[0].surface, 160, &leading, &trailing);
  assert_at (line_for (wing, FLAT_HINGE, 0)->start, 160 / cos (rad (4)), 203);
  assert_at (end_of (line_for (wing, FLAT_HINGE, 0)), 290 / cos (rad (4)), 179);
  assert_at (end_of (line_for (wing, FLAT_HINGE, 1)), 160 / cos (rad (4)), trailing);
  ck_assert (says (wing, "down 8°, 4 mm"));
  ck_assert (says (wing, "up 12°, 6 mm"));
  put_away (&laid);
}
END_TEST

/* Elementary geometry: hinged at the upper face, the lower edge goes back by the depth times the tangent of the swing downward. */
START_TEST (a_bevel_is_as_deep_as_the_hinge_and_its_swing_have_it)
{
  Laid laid = lay_racer ();
  const Surface *surface = laid.figures->surfaces[0].surface;
  const FlatLine *bevel = line_for (piece_called (&laid, "Wing, starboard"), FLAT_BEVEL, 0);

  ck_assert_double_eq_tol (bevel->start.y - 203, wing_depth (surface, 160, 203) * tan (rad (8)), 1e-9);
  ck_assert_double_eq_tol (end_of (bevel).y - 179, wing_depth (surface, 290, 179) * tan (rad (8)), 1e-9);
  put_away (&laid);
}
END_TEST

START_TEST (a_servo_in_the_wing_has_its_bay_in_its_own_half)
{
  Laid laid = lay_racer ();
  const FlatPiece *starboard = piece_called (&laid, "Wing, starboard"), *port = piece_called (&laid, "Wing, port");
  const FlatLine *bay = line_for (starboard, FLAT_ROOM, 0);

  ck_assert (bay->closed);
  assert_at (bay->start, (125 - 4.5) / cos (rad (4)), 176 - 11);
  assert_at (bay->segments[1].to, (125 + 4.5) / cos (rad (4)), 176 + 11);
  assert_at (line_for (port, FLAT_ROOM, 0)->start, -(125 + 4.5) / cos (rad (4)), 176 - 11);
  ck_assert (says (starboard, "Servo, right aileron") && !says (starboard, "Servo, left aileron"));
  ck_assert (says (port, "Servo, left aileron") && !says (port, "Servo, right aileron"));
  put_away (&laid);
}
END_TEST

START_TEST (a_leads_channel_runs_from_the_servos_bay_to_the_centre_line)
{
  Laid laid = lay_racer ();
  const FlatLine *channel = line_for (piece_called (&laid, "Wing, starboard"), FLAT_ROOM, 1);

  ck_assert (!channel->closed);
  ck_assert_double_eq_tol (channel->start.y, 176 - 11, 1e-6);
  assert_at (channel->segments[0].to, 119 / cos (rad (4)), 141);
  ck_assert_double_eq_tol (end_of (channel).x, 0, 1e-6);
  put_away (&laid);
}
END_TEST

START_TEST (what_stands_in_the_body_is_in_no_half)
{
  Laid laid = lay_racer ();

  ck_assert (!says (piece_called (&laid, "Wing, starboard"), "Servo, elevator"));
  ck_assert (!says (piece_called (&laid, "Wing, starboard"), "Receiver"));
  put_away (&laid);
}
END_TEST

START_TEST (the_hatchs_hole_is_the_one_of_the_figures_an_opening_in_a_frame)
{
  Laid laid = lay_racer ();
  const HatchFigures *hatch = &laid.figures->hatch;
  const FlatPiece *piece = piece_called (&laid, "Hatch frame");
  const FlatLine *hole = line_for (piece, FLAT_OPENING, 0), *edge = line_for (piece, FLAT_CUT, 0);

  assert_at (hole->start, -hatch->from_width_mm / 2, hatch->from_mm);      /* the nose is narrower than the pack and 4 mm */
  assert_at (hole->segments[0].to, -hatch->width_mm / 2, hatch->full_from_mm);
  assert_at (hole->segments[1].to, -hatch->width_mm / 2, hatch->to_mm);
  assert_at (hole->segments[2].to, hatch->width_mm / 2, hatch->to_mm);
  ck_assert_double_eq (edge->start.y, hole->start.y - 6);
  ck_assert_double_le (edge->segments[0].to.x, hole->start.x - 3 + 0.2);
  ck_assert (says (piece, "6\u00A0mm ahead of F2"));
  ck_assert_double_eq (line_for (piece, FLAT_STATION, 1)->start.y, 78);
  ck_assert_ptr_nonnull (strstr (piece->remark, "hole in the body"));
  ck_assert_ptr_nonnull (strstr (piece->remark, "opens on the top"));
  put_away (&laid);
}
END_TEST

START_TEST (words_at_a_narrow_edge_of_the_hatchs_hole_are_no_longer_than_that_edge)
{
  Laid laid = lay_racer ();
  const HatchFigures *hatch = &laid.figures->hatch;
  const FlatPiece *piece = piece_called (&laid, "Hatch frame");
  const Look look = look_for_paper ();
  const SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  int smaller = 0;

  for (guint i = 0; i < piece->words->len; i++)
    {
      const FlatWord *word = &g_array_index (piece->words, FlatWord, i);
      const Box box = template_word_box (&pen, word);
      const double half = hatch_width_at (hatch, box.max.y) / 2;

      ck_assert_msg (box.min.x > -half && box.max.x < half, "%s", word->text);
      smaller += box_width (box) < pen_width (&pen, word->caps, word->text) - 0.1;
    }
  ck_assert_int_gt (smaller, 0);
  put_away (&laid);
}
END_TEST

static Aeroplane *
opening_on (Aeroplane *takes, HatchSide side)
{
  AeroplaneTraits traits = aeroplane_traits (takes);

  traits.hatch = side;
  Aeroplane *made = aeroplane_with_traits (takes, traits);
  aeroplane_unref (takes);
  return made;
}

/* Its upper line rises by 3 in 4: 5 along it for 4 in plan. */
static Laid
lay_steep (HatchSide side)
{
  Aeroplane *racer = example_racer ();
  Body *body = (Body *) piece_dup (&aeroplane_body (racer, 0)->piece);

  outline_unref (body->side_outline);
  body->side_outline = polygon_from ((Point[]) { { 0, 0 }, { 400, 300 }, { 463, 300 }, { 463, -20 }, { 0, -20 } }, 5);
  Aeroplane *steep = aeroplane_with_replaced (racer, &aeroplane_body (racer, 0)->piece, &body->piece);
  aeroplane_unref (racer);
  return lay (opening_on (steep, side), EXPORT_BOTH_HALVES);
}

START_TEST (the_lid_is_as_long_as_the_bodys_edge_that_it_is_bent_along)
{
  Laid laid = lay_steep (HATCH_ON_TOP), level = lay_steep (HATCH_ON_BOTTOM);
  const HatchFigures *hatch = &laid.figures->hatch;
  const FlatPiece *piece = piece_called (&laid, "Hatch lid"), *frame = piece_called (&laid, "Hatch frame");
  const FlatLine *edge = line_for (piece, FLAT_CUT, 0), *hole = line_for (frame, FLAT_OPENING, 0);
  const double plan = hatch->to_mm - hatch->from_mm - 1;

  ck_assert_double_eq_tol (edge->segments[2].to.y - edge->start.y, 1.25 * plan, 1e-6);
  ck_assert_double_eq_tol (hole->segments[2].to.y - hole->start.y, plan + 1, 1e-6);
  ck_assert_double_eq_tol (line_for (piece, FLAT_STATION, 1)->start.y - hatch->from_mm, 1.25 * (78 - hatch->from_mm), 1e-6);
  ck_assert_ptr_nonnull (strstr (piece->remark, "longer than that in plan, since it is bent along the body's curve"));
  ck_assert_ptr_nonnull (strstr (frame->remark, "Where it cuts F2, F3, F4 and F5, longerons or a doubler on each side"));
  edge = line_for (piece_called (&level, "Hatch lid"), FLAT_CUT, 0);
  ck_assert_double_eq_tol (edge->segments[2].to.y - edge->start.y, plan, 1e-6);
  put_away (&laid);
  put_away (&level);
}
END_TEST

/* Half a millimetre on each side. */
START_TEST (the_hatchs_lid_goes_into_the_hole_with_play_and_says_where_it_belongs)
{
  Laid laid = lay (opening_on (example_racer (), HATCH_NOT_CHOSEN), EXPORT_BOTH_HALVES);
  const HatchFigures *hatch = &laid.figures->hatch;
  const FlatPiece *piece = piece_called (&laid, "Hatch lid");
  const FlatLine *edge = line_for (piece, FLAT_CUT, 0);

  assert_at (edge->start, -hatch->from_width_mm / 2 + 0.5, hatch->from_mm + 0.5);
  assert_at (edge->segments[2].to, hatch->width_mm / 2 - 0.5, hatch->to_mm - 0.5);
  ck_assert_ptr_nonnull (strstr (piece->remark, "1\u00A0mm less both ways than its hole"));
  ck_assert_ptr_nonnull (strstr (piece->remark, "between the firewall and F6 and cuts through F2, F3, F4 and F5."));
  for (guint i = 0; i < piece->lines->len; i++)
    ck_assert_int_ne (g_array_index (piece->lines, FlatLine, i).purpose, FLAT_OPENING);
  put_away (&laid);
}
END_TEST

/* Its rail goes from 82 to 134 mm, the pack is 55 by 30 mm. */
START_TEST (the_battery_floor_goes_half_a_pack_past_both_ends_of_the_rail)
{
  Laid laid = lay_racer ();
  const FlatPiece *piece = piece_called (&laid, "Battery floor");
  const FlatLine *edge = line_for (piece, FLAT_CUT, 0);

  assert_at (edge->start, -15, 82 - 27.5);
  assert_at (edge->segments[1].to, 15, 134 + 27.5);
  ck_assert_double_eq_tol (line_for (piece, FLAT_MARK, 0)->start.y, laid.figures->solutions[0].x_mm - 27.5, 1e-9);
  put_away (&laid);
}
END_TEST

/* Elementary geometry: fine chords along the section's face, both ways from the fold. */
START_TEST (the_strip_carries_the_mark_along_both_faces)
{
  enum { CHORDS = 100000 };
  Laid laid = lay_racer ();
  const MarkFigures *mark = &laid.figures->balance.marks[0];
  const FlatPiece *strip = piece_called (&laid, "Marking strip for station 40 mm");
  double sum = 0, x = 0, y = 0;

  for (int i = 1; i <= CHORDS; i++)
    {
      const double u = (double) i / CHORDS, to = mark->target_mm * u * u, up = mark->chord_mm * section_half_thickness (0.1, to / mark->chord_mm);

      sum += hypot (to - x, up - y);
      x = to;
      y = up;
    }
  ck_assert_double_gt (sum, mark->target_mm + 1);
  ck_assert_double_eq_tol (line_for (strip, FLAT_MARK, 0)->start.y, -sum, 1e-5);
  ck_assert_double_eq_tol (line_for (strip, FLAT_MARK, 1)->start.y, sum, 1e-5);
  ck_assert_double_eq (line_for (strip, FLAT_CENTRE, 0)->start.y, 0);
  put_away (&laid);
}
END_TEST

/* That wing with another thickness. */
static Aeroplane *
racer_as_thick_as (double percent)
{
  Aeroplane *old = example_racer (), *made;
  Surface *wing = (Surface *) piece_dup (&aeroplane_surface (old, 0)->piece);

  wing->thickness = percent;
  made = aeroplane_with_replaced (old, &aeroplane_surface (old, 0)->piece, &wing->piece);
  aeroplane_unref (old);
  return made;
}

START_TEST (without_a_thickness_the_strip_is_flat_and_says_so)
{
  Laid laid = lay (racer_as_thick_as (NAN), EXPORT_STARBOARD);
  const FlatPiece *strip = piece_called (&laid, "Marking strip for station 40 mm");

  ck_assert_double_eq (line_for (strip, FLAT_MARK, 1)->start.y, laid.figures->balance.marks[0].target_mm);
  ck_assert_ptr_nonnull (strstr (strip->remark, "thickness is not given"));
  put_away (&laid);
}
END_TEST

START_TEST (the_pins_of_the_stand_are_twice_the_marks_station_apart)
{
  Laid laid = lay_racer ();
  const FlatPiece *stand = piece_called (&laid, "Base of a balancing stand");
  const FlatLine *port = line_for (stand, FLAT_MARK, 0), *starboard = line_for (stand, FLAT_MARK, 2);

  ck_assert_double_eq ((starboard->start.x + end_of (starboard).x) / 2 - (port->start.x + end_of (port).x) / 2, 80);
  ck_assert (says (stand, "Take the propeller off; all else aboard as it flies."));
  ck_assert (says (stand, "Begin with the forward limits on the pins;"));
  put_away (&laid);
}
END_TEST

START_TEST (without_a_mark_or_a_battery_there_is_no_aid)
{
  Laid laid = lay (bent_wing (0, NULL, 0, rectangle (0, 600, 100)), EXPORT_STARBOARD);

  ck_assert_uint_eq (laid.pieces->len, 1);
  put_away (&laid);
}
END_TEST

static void
assert_finite (const FlatPiece *piece, const char *what)
{
  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (piece->lines, FlatLine, i);

      ck_assert_msg (line->count > 0 && point_is_finite (line->start), "%s: a line of “%s” begins nowhere", what, piece->name);
      for (size_t k = 0; k < line->count; k++)
        ck_assert_msg (point_is_finite (line->segments[k].to), "%s: a line of “%s” leads nowhere", what, piece->name);
    }
  for (guint i = 0; i < piece->words->len; i++)
    ck_assert_msg (point_is_finite (g_array_index (piece->words, FlatWord, i).at), "%s: words of “%s” stand nowhere", what, piece->name);
}

START_TEST (pieces_of_whatever_aeroplane_can_be_cut)
{
  for (const SheetCase *of = sheet_cases (); of->what; of++)
    {
      Laid laid = lay (of->make (), EXPORT_BOTH_HALVES);

      for (guint i = 0; i < laid.pieces->len; i++)
        {
          const FlatPiece *piece = g_ptr_array_index (laid.pieces, i);
          const FlatLine *edge = line_for (piece, FLAT_CUT, 0);

          assert_finite (piece, of->what);
          ck_assert_msg (edge && edge->closed, "%s: “%s” has no edge", of->what, piece->name);
        }
      put_away (&laid);
    }
}
END_TEST

START_TEST (a_rudder_is_cut_off_a_fin)
{
  Laid laid = lay_racer ();
  const FlatPiece *fin = piece_called (&laid, "Fin");

  assert_at (line_for (fin, FLAT_HINGE, 0)->start, 440, -4);
  assert_at (end_of (line_for (fin, FLAT_HINGE, 0)), 440, -62);
  ck_assert (says (fin, "to port 20°, 8 mm"));
  put_away (&laid);
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
  tcase_add_test (tests, a_tail_without_dihedral_is_one_piece);
  tcase_add_test (tests, only_the_halves_asked_for_are_made);
  tcase_add_test (tests, how_it_was_developed_is_said_of_a_wing_with_dihedral_and_of_no_other);
  tcase_add_test (tests, a_fin_stands_on_its_root_as_seen_from_port);
  tcase_add_test (tests, what_is_not_drawn_yet_has_no_piece);
  tcase_add_test (tests, the_mark_stands_where_the_report_has_it);
  tcase_add_test (tests, the_rib_nearest_to_the_mark_is_named_and_carries_it_too);
  tcase_add_test (tests, a_rib_is_a_line_from_edge_to_edge_at_its_station);
  tcase_add_test (tests, a_spar_runs_where_its_line_says_to_the_edge_of_the_wing);
  tcase_add_test (tests, no_word_of_the_mark_lies_on_a_spars_line);
  tcase_add_test (tests, what_runs_by_the_span_without_a_place_is_not_drawn);
  tcase_add_test (tests, a_control_is_cut_off_along_its_hinge_and_at_both_ends);
  tcase_add_test (tests, a_bevel_is_as_deep_as_the_hinge_and_its_swing_have_it);
  tcase_add_test (tests, a_servo_in_the_wing_has_its_bay_in_its_own_half);
  tcase_add_test (tests, a_leads_channel_runs_from_the_servos_bay_to_the_centre_line);
  tcase_add_test (tests, what_stands_in_the_body_is_in_no_half);
  tcase_add_test (tests, the_hatchs_hole_is_the_one_of_the_figures_an_opening_in_a_frame);
  tcase_add_test (tests, words_at_a_narrow_edge_of_the_hatchs_hole_are_no_longer_than_that_edge);
  tcase_add_test (tests, the_lid_is_as_long_as_the_bodys_edge_that_it_is_bent_along);
  tcase_add_test (tests, the_hatchs_lid_goes_into_the_hole_with_play_and_says_where_it_belongs);
  tcase_add_test (tests, the_battery_floor_goes_half_a_pack_past_both_ends_of_the_rail);
  tcase_add_test (tests, the_strip_carries_the_mark_along_both_faces);
  tcase_add_test (tests, without_a_thickness_the_strip_is_flat_and_says_so);
  tcase_add_test (tests, the_pins_of_the_stand_are_twice_the_marks_station_apart);
  tcase_add_test (tests, without_a_mark_or_a_battery_there_is_no_aid);
  tcase_add_test (tests, pieces_of_whatever_aeroplane_can_be_cut);
  tcase_add_test (tests, a_rudder_is_cut_off_a_fin);
  return run_suite (suite_create ("drawing flat pieces"), tests);
}
