#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Closed forms for two quarter ellipses: S = π s (a + b) / 2, MAC = 8 (a + b) / 3π, leading edge a (1 − 8/3π) aft of the root's. */
START_TEST (an_elliptical_wing_has_the_closed_forms_figures)
{
  g_autoptr (Aeroplane) aeroplane = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (112, 320, 45, 85));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const SurfaceFigures *wing = figures_of_surface (figures, "wing");
  const double mac = 8 * 130 / (3 * M_PI), leading_edge = 112 + 45 * (1 - 8 / (3 * M_PI));

  ck_assert_ptr_eq (wing, figures->reference);
  ck_assert_double_eq_tol (wing->area_mm2, M_PI * 320 * 130 / 2, 1e-9 * wing->area_mm2);
  ck_assert_double_eq_tol (wing->planform.mac, mac, 1e-9 * mac);
  ck_assert_double_eq_tol (wing->quarter_mac_x_mm, leading_edge + mac / 4, 1e-9 * 150);
  ck_assert_double_nan (wing->tail_arm_mm);                  /* the reference has none */
  ck_assert_double_nan (wing->volume_coefficient);
}
END_TEST

/* Nelson, Flight Stability and Automatic Control, 2nd ed., chapter 2: tail of 43 ft² 16 ft behind a wing of 184 ft² and 5.7 ft mean
 * chord: 0.655987796. In feet as in the book; figures know no unit here. */
START_TEST (the_textbooks_tail_volume_is_0_656)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 184 / 5.7, 5.7));
  const double tail_chord = 3.2, tail_x = 16 + 5.7 / 4 - tail_chord / 4;
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (tail_x, 43 / tail_chord, tail_chord));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const SurfaceFigures *tail = figures_of_surface (figures, "tail");

  ck_assert_double_eq_tol (tail->tail_arm_mm, 16, 1e-9);
  ck_assert_double_eq_tol (tail->volume_coefficient, 0.655987796, 5e-10);
  ck_assert_double_eq_tol (figures->tail_volume, 0.655987796, 5e-10);
}
END_TEST

/* Anderson, Introduction to Flight, chapter 7: tail of 0.02 m² 0.17 m behind 0.1 m² of 0.1 m chord: 0.34. */
START_TEST (the_other_textbooks_tail_volume_is_0_34)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 1000, 100));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (170 + 25 - 12.5, 400, 50));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures_of_surface (figures, "tail")->volume_coefficient, 0.34, 1e-9);
}
END_TEST

START_TEST (a_foreplanes_arm_and_volume_are_negative)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (300, 700, 110));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "nose", ROLE_FOREPLANE, rectangle (20, 250, 60));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const SurfaceFigures *nose = figures_of_surface (figures, "nose");

  ck_assert_double_eq_tol (nose->tail_arm_mm, 20 + 15 - (300 + 27.5), 1e-9);
  ck_assert_double_eq_tol (nose->volume_coefficient, 250 * 60 * nose->tail_arm_mm / (700.0 * 110 * 110), 1e-12);
  ck_assert_double_nan (figures->tail_volume);                /* no band holds for it */
}
END_TEST

/* A fin: one side, height² / area, arm × area over the wing's area × span. */
START_TEST (a_fin_is_one_sided_and_counts_against_the_span)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 100));
  Outline *upright = taper_from ((double[]) { 0, 70 }, (double[]) { 380, 402 }, (double[]) { 83, 41 }, 2);
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "fin", ROLE_FIN, upright);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const SurfaceFigures *fin = figures_of_surface (figures, "fin");
  const double area = 70 * (83 + 41) / 2.0;

  ck_assert_double_eq_tol (fin->area_mm2, area, 1e-9 * area);
  ck_assert_double_eq_tol (fin->planform.span, 70, 1e-9);
  ck_assert_double_eq_tol (fin->planform.aspect_ratio, 70 * 70 / area, 1e-9);
  ck_assert_double_eq_tol (fin->volume_coefficient, area * fin->tail_arm_mm / (640.0 * 100 * 640), 1e-12);
  ck_assert_double_nan (fin->lift_slope_per_rad);
}
END_TEST

/* Reference values of lifting-surface theory for rectangles: 4.2146 at aspect ratio 6 (two discretisations that agree to 1e-4). */
START_TEST (a_surfaces_lift_slope_is_its_own_whatever_flies_beside_it)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) alone = aeroplane_ref (made);
  g_autoptr (Aeroplane) tailed = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (300, 300, 50));
  g_autoptr (Figures) without = figures_once (alone);
  g_autoptr (Figures) with = figures_once (tailed);

  ck_assert_double_eq_tol (without->reference->lift_slope_per_rad, 4.2146, 0.003 * 4.2146);
  ck_assert_double_eq_tol (with->reference->lift_slope_per_rad, without->reference->lift_slope_per_rad, 0.002 * 4.2146);
  ck_assert_double_eq_tol (figures_of_surface (with, "tail")->lift_slope_per_rad, 4.2146, 0.005 * 4.2146);
}
END_TEST

/* A strip of 20 mm behind a straight hinge between stations 110 and 270, on both sides. */
START_TEST (a_controls_area_lies_behind_its_hinge_line_on_both_sides)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (40, 640, 120));

  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("ailerons"), .kind = CONTROL_AILERON, .inner = 110, .outer = 270,
                                  .hinge_inner_x = 134, .hinge_outer_x = 146, .up = 12, .down = 8 };
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), wing);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_uint_eq (figures->control_count, 1);
  ck_assert_double_eq_tol (figures->controls[0].area_mm2, 2 * 160 * (26 + 14) / 2.0, 1e-9);
  ck_assert_double_eq_tol (figures->controls[0].area_share_percent, 100 * 6400 / (640.0 * 120), 1e-9);
  ck_assert_double_nan (figures->controls[0].roll_rate_deg_s);
}
END_TEST

START_TEST (a_hinge_line_ahead_of_the_wing_takes_the_whole_chord_and_one_behind_it_nothing)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (40, 640, 120));

  wing->controls = g_new0 (Control, 2);
  wing->control_count = 2;
  wing->controls[0] = (Control) { .id = g_strdup ("tips"), .kind = CONTROL_AILERON, .inner = 250, .outer = 320,
                                  .hinge_inner_x = 10, .hinge_outer_x = 10, .up = NAN, .down = NAN };
  wing->controls[1] = (Control) { .id = g_strdup ("lost"), .kind = CONTROL_FLAP, .inner = 50, .outer = 90,
                                  .hinge_inner_x = 170, .hinge_outer_x = 170, .up = NAN, .down = NAN };
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), wing);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->controls[0].area_mm2, 2 * 70 * 120, 1e-9);
  ck_assert_double_eq (figures->controls[1].area_mm2, 0);
}
END_TEST

/* Behind the widest line of an ellipse: ∫ b √(1 − (y/s)²) dy, closed form (b s / 2)(arcsin t + t √(1 − t²)). */
START_TEST (a_control_that_ends_at_a_round_tip_has_the_closed_forms_area)
{
  Surface *wing = surface_new ("wing", ROLE_WING, ellipse_from (0, 320, 45, 85));
  const double from = 0.5, whole = M_PI / 2, inboard = asin (from) + from * sqrt (1 - from * from);

  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("flaps"), .kind = CONTROL_FLAP, .inner = 160, .outer = 320,
                                  .hinge_inner_x = 45, .hinge_outer_x = 45, .up = NAN, .down = NAN };
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), wing);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  /* Eight points across a square root's end are good to 1e-3 of it. */
  ck_assert_double_eq_tol (figures->controls[0].area_mm2, 85 * 320 * (whole - inboard), 1e-3 * 85 * 320);
}
END_TEST

/* A hundred straight pieces: the trailing edge steps along a saw whose teeth a control's hinge line, straight at x = 60, cuts off. Each
 * piece is a trapezoid behind it, and each tooth adds its own. */
enum { TEETH = 99 };

static double
saw_depth (int tooth)
{
  return 20 + 7 * (tooth % 2) + 0.1 * tooth;
}

static Outline *
saw_edged_wing (void)
{
  Point nodes[TEETH + 3] = { { 0, 0 }, { 0, 3 * TEETH } };

  for (int tooth = TEETH; tooth >= 0; tooth--)
    nodes[2 + TEETH - tooth] = (Point) { 60 + saw_depth (tooth), 3 * tooth };
  return polygon_from (nodes, G_N_ELEMENTS (nodes));
}

START_TEST (a_control_across_a_hundred_breaks_has_the_closed_forms_area)
{
  Surface *wing = surface_new ("wing", ROLE_WING, saw_edged_wing ());
  double area = 0;

  for (int tooth = 0; tooth < TEETH; tooth++)
    area += 3 * (saw_depth (tooth) + saw_depth (tooth + 1)) / 2;
  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("flaps"), .kind = CONTROL_FLAP, .inner = 0, .outer = 3 * TEETH,
                                  .hinge_inner_x = 60, .hinge_outer_x = 60, .up = NAN, .down = NAN };
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), wing);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->controls[0].area_mm2, 2 * area, 1e-9 * area);
}
END_TEST

static const struct { const char *because; size_t count; Point nodes[4]; CoreStatus status; } faulty[] = {
  { .because = "it ends away from where it began", .count = 3, .nodes = { { 0, 0 }, { 10, 200 }, { 90, 150 } }, .status = CORE_OPEN },
  { .because = "it crosses itself", .count = 4, .nodes = { { 0, 0 }, { 90, 300 }, { 0, 300 }, { 90, 0 } }, .status = CORE_CROSSES_ITSELF },
  { .because = "it has no span", .count = 2, .nodes = { { 0, 0 }, { 90, 0 } }, .status = CORE_NO_SPAN },
};

START_TEST (a_faulty_outline_gives_no_figure_and_a_problem_that_names_it)
{
  Outline *outline = polygon_from (faulty[_i].nodes, faulty[_i].count);
  g_autoptr (Aeroplane) aeroplane = with_surface (aeroplane_new (), "left-over", ROLE_WING, outline);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Note *note = g_ptr_array_index (figures->notes, 0);

  ck_assert_msg (figures->surfaces[0].status == faulty[_i].status, "%s: %d", faulty[_i].because, figures->surfaces[0].status);
  ck_assert_double_nan (figures->surfaces[0].area_mm2);
  ck_assert_double_nan (figures->neutral_point.x_mm);
  ck_assert_ptr_null (figures->reference);
  ck_assert (note->problem);
  ck_assert_ptr_nonnull (strstr (note->text, "left-over"));
  ck_assert_ptr_eq (note->piece, &figures->surfaces[0].surface->piece);
  ck_assert (!figures_are_sound (figures));
}
END_TEST

START_TEST (the_reference_is_the_first_wing_that_has_an_area)
{
  Aeroplane *made = with_surface (aeroplane_new (), "begun", ROLE_WING, polygon_from (faulty[0].nodes, faulty[0].count));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "lower", ROLE_WING, rectangle (80, 500, 90));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_ptr_eq (figures->reference, figures_of_surface (figures, "lower"));
  ck_assert_double_nan (figures->neutral_point.x_mm);         /* withheld while a wing is open */
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures surfaces");
  TCase *tests = tcase_create ("surfaces");

  tcase_add_test (tests, an_elliptical_wing_has_the_closed_forms_figures);
  tcase_add_test (tests, the_textbooks_tail_volume_is_0_656);
  tcase_add_test (tests, the_other_textbooks_tail_volume_is_0_34);
  tcase_add_test (tests, a_foreplanes_arm_and_volume_are_negative);
  tcase_add_test (tests, a_fin_is_one_sided_and_counts_against_the_span);
  tcase_add_test (tests, a_surfaces_lift_slope_is_its_own_whatever_flies_beside_it);
  tcase_add_test (tests, a_controls_area_lies_behind_its_hinge_line_on_both_sides);
  tcase_add_test (tests, a_hinge_line_ahead_of_the_wing_takes_the_whole_chord_and_one_behind_it_nothing);
  tcase_add_test (tests, a_control_that_ends_at_a_round_tip_has_the_closed_forms_area);
  tcase_add_test (tests, a_control_across_a_hundred_breaks_has_the_closed_forms_area);
  tcase_add_loop_test (tests, a_faulty_outline_gives_no_figure_and_a_problem_that_names_it, 0, G_N_ELEMENTS (faulty));
  tcase_add_test (tests, the_reference_is_the_first_wing_that_has_an_area);
  return run_suite (suite, tests);
}
