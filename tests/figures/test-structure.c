#include <check.h>
#include <json-glib/json-glib.h>
#include <math.h>
#include <string.h>
#include "document/material-class.h"
#include "figures/body-measure.h"
#include "figures/report.h"
#include "structure-lines.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* What structures weigh from what they are made of. A wing of 640 × 100 mm: 6.4 dm². */

static double
item_g (const Figures *figures, guint i)
{
  return g_array_index (figures->structures[0].items_g, double, i);
}

/* Geometry: area × thickness × density. */
START_TEST (a_sheet_as_large_as_the_traced_wing_weighs_by_its_area)
{
  const StructureItem sheet = by_area ("Sheet", TRACED_PLAN, 2, 150);
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", &sheet, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->mass.total_g, 640 * 100 * 2 * 150e-6, 1e-9);
  ck_assert_double_eq_tol (figures->mass.total_sigma_g, 0.18 * 19.2, 1e-9);
  ck_assert_double_eq_tol (figures->mass.x_mm, 80, 1e-9);
}
END_TEST

START_TEST (a_wider_wing_weighs_more_without_anybody_typing_it)
{
  const StructureItem sheet = by_area ("Sheet", TRACED_PLAN, 2, 150);
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", &sheet, 1));
  Surface *wider = (Surface *) piece_dup (aeroplane_nth (aeroplane, PIECE_SURFACE, 0));

  outline_unref (wider->outline);
  wider->outline = rectangle (30, 800, 100);
  g_autoptr (Aeroplane) next = aeroplane_with_replaced (aeroplane, aeroplane_nth (aeroplane, PIECE_SURFACE, 0), &wider->piece);
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Figures) before = figures_of (cache, aeroplane);
  g_autoptr (Figures) after = figures_of (cache, next);

  ck_assert_double_eq_tol (after->mass.total_g, before->mass.total_g * 800 / 640, 1e-9);
  figures_cache_free (cache);
}
END_TEST

/* Covering takes 2 × 1.03 × the planform's area: common practice, no source. */
START_TEST (covering_goes_on_both_sides_and_weighs_by_its_material)
{
  StructureItem skin = by_area (NULL, TRACED_SKIN, NAN, NAN);

  skin.material = g_strdup ("iron-on-light");
  skin.share = 1.05;
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", &skin, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 2 * 1.03 * 0.064 * 1.05 * material_class_find ("iron-on-light")->area_density, 1e-9);
}
END_TEST

/* 0.685 (t/c) c²: Abbott and von Doenhoff. A rib at the root stands once, the others on both halves. */
START_TEST (the_named_ribs_weigh_by_their_chords_and_the_sections_thickness)
{
  const StructureItem ribs = by_area ("Ribs", TRACED_RIBS, 1.6, 128);
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (30, 640, 100));

  wing->thickness = 9;
  wing->ribs = g_new0 (NamedPlace, 3);
  wing->rib_count = 3;
  wing->ribs[0] = (NamedPlace) { g_strdup ("R1"), 0 };
  wing->ribs[1] = (NamedPlace) { g_strdup ("R2"), 100 };
  wing->ribs[2] = (NamedPlace) { g_strdup ("R3"), 200 };
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (aeroplane_new (), wing), made_of ("wing", &ribs, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 5 * 0.685 * 0.09 * 100 * 100 * 1.6 * 128e-6, 1e-9);
}
END_TEST

START_TEST (a_spar_is_as_long_as_the_span)
{
  StructureItem spar = by_area ("Spar", TRACED_SPAN, 3, 160);

  spar.width = 5;
  spar.count = 2;
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", &spar, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 2 * 640 * 5 * 3 * 160e-6, 1e-9);
}
END_TEST

START_TEST (the_usual_excess_counts_and_is_told_and_no_mass_is_added_else)
{
  const StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), weighing ("Tips", 3) };
  Structure *structure = made_of ("wing", items, 2);

  structure->excess = 0.12;
  g_autoptr (Aeroplane) aeroplane = wing_of (structure);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  ck_assert_double_eq_tol (item_g (figures, 0) + item_g (figures, 1) + figures->structures[0].excess_g, figures->mass.total_g, 1e-9);
  ck_assert_double_eq_tol (figures->structures[0].excess_g, 0.12 * 19.2, 1e-9);
  ck_assert_ptr_nonnull (strstr (text, "Usual excess"));
  ck_assert_ptr_nonnull (strstr (text, "12 % of what is not weighed"));
}
END_TEST

START_TEST (what_the_scale_says_of_the_whole_wins_and_the_lines_stay_the_estimate)
{
  const StructureItem sheet = by_area ("Sheet", TRACED_PLAN, 2, 150);
  Structure *structure = made_of ("wing", &sheet, 1);

  structure->mass = 23.4;
  structure->mass_sigma = 0.3;
  g_autoptr (Aeroplane) aeroplane = wing_of (structure);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq (figures->mass.total_g, 23.4);
  ck_assert_double_eq (figures->mass.total_sigma_g, 0.3);
  ck_assert_double_eq_tol (figures->structures[0].estimate_g, 19.2, 1e-9);
}
END_TEST

/* The lever: two masses at two places. */
START_TEST (a_line_with_a_place_pulls_the_centre_there)
{
  StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), weighing ("Blocks", 6.4) };

  items[1].x = 40;
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", items, 2));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, (19.2 * 80 + 6.4 * 40) / 25.6, 1e-9);
  /* Steiner: a rectangle of 100 mm and a point, about their common centre. */
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, 0.0192 * (0.1 * 0.1 / 12 + 0.01 * 0.01) + 0.0064 * 0.03 * 0.03, 1e-12);
}
END_TEST

START_TEST (a_line_whose_area_is_not_traced_is_told_and_the_rest_counts)
{
  const StructureItem items[] = { by_area ("Ribs", TRACED_RIBS, 1.6, 128), by_area ("Keel", TRACED_LENGTH, 3, 128), weighing ("Tips", 3) };
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", items, 3));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  int told = 0;

  for (guint i = 0; i < figures->notes->len; i++)
    {
      const Note *note = g_ptr_array_index (figures->notes, i);

      told += g_str_equal (note->text, "“Ribs” in “frame” weighs nothing until the ribs of “wing” have their stations.");
      told += g_str_equal (note->text, "“Keel” in “frame” weighs nothing until “wing” is a body whose outline is traced.");
    }
  ck_assert_int_eq (told, 2);
  ck_assert_double_eq_tol (figures->mass.total_g, 3, 1e-9);
  ck_assert_double_nan (item_g (figures, 0));
}
END_TEST

/* Half an ellipse from nose to tail, of many short lines. */
static Outline *
ellipse_along (double half_length, double half_width)
{
  enum { NODES = 721 };
  Point nodes[NODES];

  for (int i = 0; i < NODES; i++)
    {
      const double turn = M_PI * i / (NODES - 1);
      nodes[i] = (Point) { half_length * (1 - cos (turn)), half_width * sin (turn) };
    }
  return polygon_from (nodes, NODES);
}

/* Common practice, no source: the tail is where each gram asks two to four in the nose. */
static const Note *
sheet_note (double wing_density, double tail_density, bool weighed)
{
  StructureItem ahead = by_area ("Sheet", TRACED_PLAN, 1.6, wing_density), behind = by_area ("Sheet", TRACED_PLAN, 1.6, tail_density);
  Structure *tail_frame;
  static Figures *figures;

  ahead.density_weighed = true;
  behind.density_weighed = weighed;
  tail_frame = made_of ("tail", &behind, 1);
  g_free (tail_frame->piece.id);
  tail_frame->piece.id = g_strdup ("tail-frame");
  g_autoptr (Aeroplane) aeroplane = with_piece (with_surface (wing_of (made_of ("wing", &ahead, 1)), "tail", ROLE_TAILPLANE,
                                                             rectangle (400, 200, 50)), tail_frame);
  figures_unref (figures);      /* the last one's: its notes were lent */
  figures = figures_once (aeroplane);
  for (guint i = 0; i < figures->notes->len; i++)
    if (strstr (((const Note *) g_ptr_array_index (figures->notes, i))->text, "The lightest sheet belongs in the tail"))
      return g_ptr_array_index (figures->notes, i);
  return NULL;
}

START_TEST (a_heavier_weighed_sheet_in_the_tail_is_told)
{
  ck_assert_ptr_nonnull (sheet_note (96, 140, true));
  ck_assert_str_eq (sheet_note (96, 140, true)->piece->id, "tail-frame");
  ck_assert_ptr_null (sheet_note (140, 96, true));
  ck_assert_ptr_null (sheet_note (96, 100, true));
  ck_assert_ptr_null (sheet_note (96, 140, false));
}
END_TEST

/* A cylinder's skin is π d l, a cone's π r s; an ellipsoid of revolution's 2π r (r + l asin e / e), half-length l: geometry. */
START_TEST (a_bodys_skin_is_that_of_the_solid_its_outlines_turn)
{
  const double a = 200, b = 40, e = sqrt (1 - b * b / (a * a));
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 30, 27 }, { 330, 27 } }, 2);
  ck_assert_double_eq_tol (body_measure (body).skin, 2 * M_PI * 27 * 300, 1);
  outline_unref (body->outline);
  body->outline = polygon_from ((Point[]) { { 30, 0 }, { 330, 40 } }, 2);
  ck_assert_double_eq_tol (body_measure (body).skin, M_PI * 40 * hypot (300, 40), 50);
  outline_unref (body->outline);
  body->outline = ellipse_along (a, b);
  ck_assert_double_eq_tol (body_measure (body).skin, 2 * M_PI * b * (b + a * asin (e) / e), 0.01 * 2 * M_PI * b * a);
  piece_unref (&body->piece);
}
END_TEST

static Aeroplane *
covered_body (double half_width)
{
  const StructureItem skin = by_area ("Covering", TRACED_SKIN, 1, 100);
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 30, half_width }, { 330, half_width } }, 2);
  return with_piece (with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (30, 640, 100)), body),
                     made_of ("body", &skin, 1));
}

/* Figures that remember what did not change must not remember what did. */
START_TEST (a_body_is_measured_anew_when_it_is_another)
{
  g_autoptr (Aeroplane) slim = covered_body (20), fat = covered_body (40);
  g_autoptr (Aeroplane) fatter = aeroplane_with_replaced (slim, aeroplane_nth (slim, PIECE_BODY, 0),
                                                          piece_dup (aeroplane_nth (fat, PIECE_BODY, 0)));
  Surface *lifted = (Surface *) piece_dup (aeroplane_nth (fatter, PIECE_SURFACE, 0));
  FiguresCache *cache = figures_cache_new ();

  lifted->z = 7;
  g_autoptr (Aeroplane) last = aeroplane_with_replaced (fatter, aeroplane_nth (fatter, PIECE_SURFACE, 0), &lifted->piece);
  g_autoptr (Figures) first = figures_of (cache, slim);
  g_autoptr (Figures) second = figures_of (cache, fatter);
  g_autoptr (Figures) third = figures_of (cache, last);
  g_autoptr (Figures) fresh = figures_once (fat);
  ck_assert_double_eq_tol (first->mass.total_g * 2, second->mass.total_g, 1e-6);
  ck_assert_double_eq (second->mass.total_g, fresh->mass.total_g);
  ck_assert_double_eq (third->mass.total_g, fresh->mass.total_g);
  figures_cache_free (cache);
}
END_TEST

/* Largest girth × length × 0.62 for a tapered body: common practice, no source. */
START_TEST (a_tapered_bodys_skin_is_near_the_rule_of_the_trade)
{
  Body *body = body_new ("body");
  const double girth = M_PI * 64;

  body->outline = polygon_from ((Point[]) { { 0, 14 }, { 150, 32 }, { 490, 8 } }, 3);
  ck_assert_double_eq_tol (body_measure (body).skin, 0.62 * girth * 490, 0.1 * 0.62 * girth * 490);
  piece_unref (&body->piece);
}
END_TEST

START_TEST (formers_fill_the_section_that_both_outlines_show)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 25 }, { 300, 25 } }, 2);
  body->side_outline = polygon_from ((Point[]) { { 0, 30 }, { 300, 30 }, { 300, -10 }, { 0, -10 } }, 4);
  body->formers = g_new0 (NamedPlace, 2);
  body->former_count = 2;
  body->formers[0] = (NamedPlace) { g_strdup ("F1"), 60 };
  body->formers[1] = (NamedPlace) { g_strdup ("F2"), 160 };
  ck_assert_double_eq_tol (body_measure (body).formers, 2 * M_PI * 25 * 20, 1e-6);
  ck_assert_double_eq_tol (body_measure (body).plan, 300 * 50, 1e-6);
  piece_unref (&body->piece);
}
END_TEST

START_TEST (the_json_report_lists_every_line_and_what_they_come_to)
{
  const StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), weighing ("Tips", 3), by_area ("Ribs", TRACED_RIBS, 1.6, 128) };
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", items, 3));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *json = report_json (figures);
  g_autoptr (JsonNode) root = json_from_string (json, NULL);
  JsonObject *structure = json_array_get_object_element (json_object_get_array_member (json_node_get_object (root), "structures"), 0);
  JsonArray *lines = json_object_get_array_member (structure, "items");

  ck_assert_double_eq_tol (json_object_get_double_member (structure, "mass_g"), 22.2, 1e-9);
  ck_assert_uint_eq (json_array_get_length (lines), 3);
  ck_assert_double_eq_tol (json_object_get_double_member (json_array_get_object_element (lines, 0), "mass_g"), 19.2, 1e-9);
  ck_assert (json_object_get_boolean_member (json_array_get_object_element (lines, 1), "weighed"));
  ck_assert (json_object_get_null_member (json_array_get_object_element (lines, 2), "mass_g"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("structure");

  tcase_add_test (tests, a_sheet_as_large_as_the_traced_wing_weighs_by_its_area);
  tcase_add_test (tests, a_wider_wing_weighs_more_without_anybody_typing_it);
  tcase_add_test (tests, covering_goes_on_both_sides_and_weighs_by_its_material);
  tcase_add_test (tests, the_named_ribs_weigh_by_their_chords_and_the_sections_thickness);
  tcase_add_test (tests, a_spar_is_as_long_as_the_span);
  tcase_add_test (tests, the_usual_excess_counts_and_is_told_and_no_mass_is_added_else);
  tcase_add_test (tests, what_the_scale_says_of_the_whole_wins_and_the_lines_stay_the_estimate);
  tcase_add_test (tests, a_line_with_a_place_pulls_the_centre_there);
  tcase_add_test (tests, a_line_whose_area_is_not_traced_is_told_and_the_rest_counts);
  tcase_add_test (tests, a_heavier_weighed_sheet_in_the_tail_is_told);
  tcase_add_test (tests, a_bodys_skin_is_that_of_the_solid_its_outlines_turn);
  tcase_add_test (tests, a_body_is_measured_anew_when_it_is_another);
  tcase_add_test (tests, a_tapered_bodys_skin_is_near_the_rule_of_the_trade);
  tcase_add_test (tests, formers_fill_the_section_that_both_outlines_show);
  tcase_add_test (tests, the_json_report_lists_every_line_and_what_they_come_to);
  return run_suite (suite_create ("figures structure"), tests);
}
