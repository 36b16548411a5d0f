#include "drawing/sheet.h"
#include <math.h>
#include "drawing/rulers.h"
#include "drawing/sheet-construction.h"
#include "drawing/sheet-dimensions.h"
#include "drawing/symbols.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { LOOKS = LOOK_DARK_CONTRAST + 1 };

static Easel *easel;

static void set_up (void) { easel = easel_new (racer_in_full ()); }
static void tear_down (void) { easel_free (easel); }

static Point
px (double x, double y)
{
  return view_to_screen (&easel->view, (Point) { x, y });
}

static Box
around (Point at, double half)
{
  return (Box) { { at.x - half, at.y - half }, { at.x + half, at.y + half } };
}

static double
share_of (Canvas canvas, Box box, Colour colour)
{
  const double share = canvas_share (&canvas, box, colour);

  canvas_clear (&canvas);
  return share;
}

/* Each look, at scale 1 and 2: the whole window painted, no failure, cr as it was. */
START_TEST (every_look_paints_the_whole_window_and_leaves_the_context_alone)
{
  const Colour unpainted = { 1, 0, 1, 1 };
  const Box window = { { 0, 0 }, { 731, 704 } };
  Canvas canvas = canvas_new (731, 704, 1 + _i / LOOKS, unpainted);
  cairo_matrix_t before, after;

  easel_take_look (easel, _i % LOOKS);
  cairo_translate (canvas.cr, 0, 0);
  cairo_get_matrix (canvas.cr, &before);
  cairo_set_line_width (canvas.cr, 3.25);
  draw_sheet (canvas.cr, &easel->scene);
  cairo_get_matrix (canvas.cr, &after);
  ck_assert_mem_eq (&before, &after, sizeof before);
  ck_assert_double_eq (cairo_get_line_width (canvas.cr), 3.25);
  ck_assert (!cairo_has_current_point (canvas.cr));
  ck_assert_double_eq (canvas_share (&canvas, window, unpainted), 0);
  ck_assert_double_gt (canvas_share (&canvas, window, easel->look.sheet), 0.8);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (both_halves_of_the_wing_stand_where_its_outline_is)
{
  Canvas canvas = easel_painted (easel, 2);

  /* on the ellipse at 3/5 of the semispan, 4/5 of the semi-axes ahead and behind: away from hinge lines and signs */
  for (int side = -1; side <= 1; side += 2)
    {
      ck_assert_double_gt (canvas_share (&canvas, around (px (157 - 0.8 * 45, side * 192), 1.2), easel->look.graphite), 0.3);
      ck_assert_double_gt (canvas_share (&canvas, around (px (157 + 0.28 * 85, side * 307.2), 1.2), easel->look.graphite), 0.3);
    }
  canvas_clear (&canvas);
}
END_TEST

START_TEST (under_the_body_the_wing_is_broken_and_faint)
{
  const Point edge = px (242, 12);      /* the trailing edge, inside the body, between pushrod and side */
  const Box stretch = { { edge.x - 6, edge.y - 1.5 }, { edge.x + 6, edge.y + 1.5 } };

  easel->scene.show_grid = false;
  ck_assert_double_lt (share_of (easel_painted (easel, 2), stretch, easel->look.graphite), 0.02);
  ck_assert_double_gt (share_of (easel_painted (easel, 2), stretch, easel->look.construction), 0.05);
}
END_TEST

START_TEST (the_balance_point_stands_at_the_centre_of_mass)
{
  const Point at = px (easel->figures->mass.x_mm, easel->figures->mass.y_mm);
  Canvas canvas = easel_painted (easel, 2);

  ck_assert (colour_distance (canvas_at (&canvas, at.x + 3.5, at.y - 3.5), easel->look.balance) < 0.02);
  ck_assert (colour_distance (canvas_at (&canvas, at.x - 3.5, at.y - 3.5), (Colour) { 1, 1, 1, 1 }) < 0.02);
  canvas_clear (&canvas);
}
END_TEST

/* From the window of a small screen to a large one, as it is fitted: 24 px round about. */
START_TEST (the_span_and_the_scale_bar_keep_apart)
{
  static const struct { double width, height; } windows[] = { { 640, 484 }, { 700, 690 }, { 480, 420 }, { 1300, 900 } };
  const Ruler ruler = { .look = &easel->look, .view = &easel->view };
  SheetDimension list[SHEET_DIMENSION_ROOM];

  easel->view.width = windows[_i].width;
  easel->view.height = windows[_i].height;
  easel->view = view_fitted (&easel->view, sheet_extent (easel->figures), 24);
  ck_assert_uint_gt (sheet_dimensions (&easel->scene, list), 0);
  ck_assert_int_eq (list[0].hit.dimension, DIMENSION_SPAN);
  ck_assert (!boxes_meet (box_grown (scale_bar_box (&ruler), 3), (Box) { list[0].dimension.from, { list[0].dimension.to.x, list[0].dimension.to.y + 4 } }));
}
END_TEST

static double
neutral_ink_round (Point at)
{
  Canvas canvas = easel_painted (easel, 2);

  return share_of (canvas, around (at, 10), easel->look.neutral);
}

/* The whole aeroplane in a small window: the sign is wider than its distance from the body. */
START_TEST (the_neutral_point_stands_outboard_of_the_band_where_the_whole_aeroplane_is_seen)
{
  SheetBand band;
  Point place;

  easel->view.scale = 0.6;
  ck_assert (sheet_band (easel->figures, &band));
  ck_assert (sheet_neutral_point (easel->figures, &place));
  ck_assert_double_gt ((-place.y - band.outer) * easel->view.scale, 0.8 * neutral_diamond_half (&easel->look));
}
END_TEST

/* Seen from so far off that mark and neutral point meet, the halo of either leaves the other whole. */
START_TEST (signs_that_meet_do_not_rub_out_one_another)
{
  Point place, mark;
  double apart, near;

  ck_assert (sheet_neutral_point (easel->figures, &place));
  ck_assert (sheet_mark_place (easel->figures, 0, &mark));
  apart = neutral_ink_round (view_to_screen (&easel->view, place));
  easel->view.scale = 13 / (-place.y - mark.y);
  near = neutral_ink_round (view_to_screen (&easel->view, place));
  ck_assert_double_gt (near, 0.7 * apart);
}
END_TEST

START_TEST (the_neutral_point_stands_beside_the_body_tied_to_it)
{
  Point place = { NAN, NAN };
  const bool known = sheet_neutral_point (easel->figures, &place);
  const Point at = px (place.x, place.y);
  Canvas canvas = easel_painted (easel, 2);

  ck_assert (known);
  ck_assert_double_eq (place.x, easel->figures->neutral_point.x_mm);
  ck_assert_double_gt (canvas_share (&canvas, around (at, 9), easel->look.neutral), 0.1);
  ck_assert (colour_distance (canvas_at (&canvas, at.x, at.y), easel->look.sheet) < 0.02);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { at.x + 12, at.y - 1 }, { at.x + 40, at.y + 1 } }, easel->look.neutral), 0.4);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_band_is_hatched_beside_the_body_and_nowhere_else)
{
  SheetBand band;
  Canvas canvas = easel_painted (easel, 1);
  Point a, b;

  ck_assert (sheet_band (easel->figures, &band));
  ck_assert_double_gt (band.inner, sheet_half_width (easel->figures->aeroplane, band.forward_x));
  a = px (band.forward_x, band.inner);
  b = px (band.aft_x, band.outer);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { a, b }, easel->look.band), 0.05);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { b.x + 3, a.y }, { b.x + 60, b.y } }, easel->look.band), 0);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { a.x, b.y + 3 }, { b.x, b.y + 60 } }, easel->look.band), 0);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (what_is_selected_is_in_its_colour_and_nothing_else_is)
{
  const Box window = { { 0, 0 }, { 731, 704 } };
  const Point on_wing = px (157 - 0.8 * 45, 192);

  ck_assert_double_eq (share_of (easel_painted (easel, 1), window, easel->look.selection), 0);
  easel_select (easel, selection_of ("wing"));
  ck_assert_double_gt (share_of (easel_painted (easel, 1), around (on_wing, 2), easel->look.selection), 0.2);
  ck_assert_double_eq (share_of (easel_painted (easel, 1), around (px (388, 0), 8), easel->look.selection), 0);
}
END_TEST

/* Beside its sign, one deviation to either side, in the selection's colour. */
START_TEST (a_selected_point_shows_how_far_it_may_be_out)
{
  const double x = easel->figures->mass.x_mm, sigma = easel->figures->mass.x_sigma_mm;
  const Point fore = px (x - sigma, 0), aft = px (x + sigma, 0);
  const Box beside = { { fore.x - 24, fore.y - 1 }, { fore.x - 11, aft.y + 1 } };

  ck_assert_double_eq (share_of (easel_painted (easel, 2), beside, easel->look.selection), 0);
  easel_select (easel, selection_of_point (SHEET_POINT_BALANCE));
  ck_assert_double_gt (share_of (easel_painted (easel, 2), beside, easel->look.selection), 0.05);
  ck_assert_double_eq (share_of (easel_painted (easel, 2), (Box) { { fore.x - 24, aft.y + 3 }, { fore.x - 11, aft.y + 9 } },
                                 easel->look.selection), 0);
}
END_TEST

START_TEST (paper_shows_neither_selection_nor_nodes)
{
  Canvas bare, selected;
  double share;

  easel->look = look_for_paper ();
  bare = easel_painted (easel, 1);
  easel_select (easel, selection_of_node ("tail", false, 1));
  selected = easel_painted (easel, 1);
  share = canvas_share (&bare, around (px (414, 118), 5), easel->look.graphite);
  ck_assert_double_eq (canvas_share (&selected, around (px (414, 118), 5), easel->look.graphite), share);
  canvas_clear (&bare);
  canvas_clear (&selected);
}
END_TEST

START_TEST (an_open_outline_stays_open_and_its_loose_end_is_ringed)
{
  const Box window = { { 0, 0 }, { 731, 704 } };
  Point end, on_closing_line;

  easel_free (easel);
  easel = easel_new (racer_with_wing (polygon_from ((Point[]) { { 112, 0 }, { 140, 300 }, { 230, 260 } }, 3)));
  end = px (230, 260);
  on_closing_line = px (230 - 0.7 * 118, 0.3 * 260);
  easel->scene.show_grid = easel->scene.show_names = easel->scene.show_figures = false;
  ck_assert_double_eq (share_of (easel_painted (easel, 1), around (on_closing_line, 4), easel->look.graphite), 0);
  ck_assert_double_gt (share_of (easel_painted (easel, 2), around (end, 10), easel->look.selection), 0.03);
  ck_assert_double_eq (share_of (easel_painted (easel, 1), window, easel->look.warning), 0);
}
END_TEST

START_TEST (a_crossing_outline_is_warned_of_at_the_place_in_words)
{
  const Point crossing = { 150, 150 };
  Point at;

  easel_free (easel);
  easel = easel_new (racer_with_wing (polygon_from ((Point[]) { { 100, 0 }, { 200, 300 }, { 100, 300 }, { 200, 0 } }, 4)));
  at = px (crossing.x, crossing.y);
  ck_assert_double_gt (share_of (easel_painted (easel, 2), around (at, 10), easel->look.warning), 0.1);
  /* the words stand to one side of the sign */
  ck_assert_double_gt (share_of (easel_painted (easel, 2), (Box) { { at.x - 190, at.y - 8 }, { at.x - 14, at.y + 8 } }, easel->look.warning)
                       + share_of (easel_painted (easel, 2), (Box) { { at.x + 14, at.y - 8 }, { at.x + 190, at.y + 8 } }, easel->look.warning), 0.05);
}
END_TEST

START_TEST (the_extent_holds_every_shape_and_the_outermost_dimension)
{
  const Box extent = sheet_extent (easel->figures), shapes = sheet_shapes_box (easel->figures->aeroplane);
  Canvas canvas;
  Box marked;

  ck_assert_double_le (extent.min.x, shapes.min.x);
  ck_assert_double_eq (extent.max.y, 320);
  ck_assert_double_gt (extent.max.x, shapes.max.x + 20);
  easel->scene.show_grid = false;
  easel->view.width = 1000;          /* room beyond the extent, where nothing may stand but the datum */
  easel->view.height = 900;
  easel->view.origin_x += 100;
  easel->view.origin_y += 100;
  canvas = easel_painted (easel, 1);
  marked = canvas_marked (&canvas, easel->look.sheet);
  ck_assert_double_ge (marked.min.y, px (extent.min.x, 0).y - 24);
  ck_assert_double_le (marked.max.y, px (extent.max.x, 0).y + 24);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (an_empty_aeroplane_is_an_empty_sheet_of_a_usual_size)
{
  Box extent;
  Canvas canvas;

  easel_free (easel);
  easel = easel_new (aeroplane_new ());
  extent = sheet_extent (easel->figures);
  ck_assert_double_gt (extent.max.x - extent.min.x, 300);
  ck_assert_double_gt (extent.max.y - extent.min.y, 300);
  canvas = easel_painted (easel, 1);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 731, 704 } }, easel->look.graphite), 0);
  canvas_clear (&canvas);
}
END_TEST

/* The textbook's construction against the integral (2/S) ∫ c y dy of the planform, which the figures hold. */
START_TEST (the_tapers_construction_crosses_at_the_mean_chords_station)
{
  TaperConstruction c;
  double root_gap, tip_gap, share, station;

  easel_free (easel);
  easel = easel_new (racer_with_wing (taper_from ((double[]) { 0, 317 }, (double[]) { 105, 171 }, (double[]) { 143, 67 }, 2)));
  ck_assert (sheet_taper_construction (easel->figures, &c));
  root_gap = c.aft_of_root.x - c.middle_root.x;
  tip_gap = c.middle_tip.x - c.ahead_of_tip.x;
  share = root_gap / (root_gap + tip_gap);      /* where the two lines cross */
  station = share * c.middle_tip.y;
  ck_assert_double_eq_tol (station, easel->figures->reference->planform.mac_station, 1e-6);
}
END_TEST

START_TEST (an_ellipse_has_no_such_construction)
{
  TaperConstruction c;

  ck_assert (!sheet_taper_construction (easel->figures, &c));
}
END_TEST

START_TEST (the_selected_wing_shows_where_its_mean_chord_stands_on_the_body)
{
  const Planform *planform = &easel->figures->reference->planform;
  const Point quarter = px (planform->mac_leading_edge_x + planform->mac / 4, 0.75 * planform->mac_station);
  const Box stretch = { { quarter.x - 14, quarter.y - 1.5 }, { quarter.x + 14, quarter.y + 1.5 } };
  double before;

  easel->scene.show_grid = easel->scene.show_names = easel->scene.show_figures = false;
  before = share_of (easel_painted (easel, 2), stretch, easel->look.construction);
  easel_select (easel, selection_of ("wing"));
  ck_assert_double_gt (share_of (easel_painted (easel, 2), stretch, easel->look.construction), before + 0.1);
}
END_TEST

START_TEST (the_selections_extent_is_its_own_box)
{
  Box box;

  easel_select (easel, selection_of ("tail"));
  box = sheet_selection_extent (easel->figures, &easel->selection);
  ck_assert_double_eq_tol (box.min.x, 388, 1e-9);
  ck_assert_double_eq_tol (box.max.y, 118, 1e-9);
  ck_assert_double_eq_tol (box.min.y, -118, 1e-9);
  easel_select (easel, selection_of_node ("wing", false, 1));
  box = sheet_selection_extent (easel->figures, &easel->selection);
  ck_assert_double_eq_tol (box.min.x, 157, 1e-9);
  ck_assert_double_eq_tol (box.max.y, 320, 1e-9);
  easel_select (easel, selection_none ());
  ck_assert (box_is_empty (sheet_selection_extent (easel->figures, &easel->selection)));
}
END_TEST

START_TEST (what_is_being_done_is_drawn_over_the_sheet)
{
  const Point guide = px (300, 200), band = px (330, 260);
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");
  Outline *draft = polygon_from ((Point[]) { { 300, 30 }, { 310, 150 } }, 2);
  Canvas canvas;

  easel->overlay.guide_x = 300;
  easel->overlay.band = (Box) { { 320, 250 }, { 340, 280 } };
  easel->overlay.part_ghost = battery;
  easel->overlay.draft = draft;
  easel->overlay.draft_end = (Point) { 350, 150 };
  easel->overlay.has_draft_end = easel->overlay.has_cursor = easel->overlay.focus = true;
  canvas = easel_painted (easel, 2);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { guide.x, guide.y - 1 }, { guide.x + 100, guide.y + 1 } }, easel->look.selection), 0.2);
  ck_assert_double_lt (colour_distance (canvas_at (&canvas, band.x, band.y), easel->look.sheet), 0.2);      /* a wash */
  ck_assert_double_gt (colour_distance (canvas_at (&canvas, band.x, band.y), easel->look.sheet), 0.04);
  ck_assert_double_gt (canvas_share (&canvas, around (px (350, 150), 5), easel->look.selection), 0.4);
  canvas_clear (&canvas);
  outline_unref (draft);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sheet");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_loop_test (tests, every_look_paints_the_whole_window_and_leaves_the_context_alone, 0, 2 * LOOKS);
  tcase_add_test (tests, both_halves_of_the_wing_stand_where_its_outline_is);
  tcase_add_test (tests, under_the_body_the_wing_is_broken_and_faint);
  tcase_add_test (tests, the_balance_point_stands_at_the_centre_of_mass);
  tcase_add_loop_test (tests, the_span_and_the_scale_bar_keep_apart, 0, 4);
  tcase_add_test (tests, the_neutral_point_stands_outboard_of_the_band_where_the_whole_aeroplane_is_seen);
  tcase_add_test (tests, signs_that_meet_do_not_rub_out_one_another);
  tcase_add_test (tests, the_neutral_point_stands_beside_the_body_tied_to_it);
  tcase_add_test (tests, the_band_is_hatched_beside_the_body_and_nowhere_else);
  tcase_add_test (tests, what_is_selected_is_in_its_colour_and_nothing_else_is);
  tcase_add_test (tests, a_selected_point_shows_how_far_it_may_be_out);
  tcase_add_test (tests, paper_shows_neither_selection_nor_nodes);
  tcase_add_test (tests, an_open_outline_stays_open_and_its_loose_end_is_ringed);
  tcase_add_test (tests, a_crossing_outline_is_warned_of_at_the_place_in_words);
  tcase_add_test (tests, the_extent_holds_every_shape_and_the_outermost_dimension);
  tcase_add_test (tests, an_empty_aeroplane_is_an_empty_sheet_of_a_usual_size);
  tcase_add_test (tests, the_tapers_construction_crosses_at_the_mean_chords_station);
  tcase_add_test (tests, an_ellipse_has_no_such_construction);
  tcase_add_test (tests, the_selected_wing_shows_where_its_mean_chord_stands_on_the_body);
  tcase_add_test (tests, the_selections_extent_is_its_own_box);
  tcase_add_test (tests, what_is_being_done_is_drawn_over_the_sheet);
  return run_suite (suite_create ("drawing sheet"), tests);
}
