#include <math.h>
#include "document/changes.h"
#include "drawing/outline-path.h"
#include "drawing/side-places.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"

/* Bays stand as brackets beside the body while they matter. */

static Easel *easel;

static void
set_up (void)
{
  easel = easel_new (with_piece (racer_in_full (), bay_new ("cabin", "F3", "F8")));
  easel->scene.show_names = easel->scene.show_figures = easel->scene.show_grid = false;
}

static void tear_down (void) { easel_free (easel); }

/* Where the sheet differs from that without anything selected, within 60 px of the bay's fore end on either side of the body. */
static double
marked (const char *selected, Colour colour)
{
  const Point at = view_to_screen (&easel->view, (Point) { 78, 26 });
  const Box beside = { { at.x + 4, at.y - 2 }, { at.x + 14, at.y + 60 } };

  easel_select (easel, selected ? selection_of (selected) : selection_none ());
  Canvas canvas = easel_painted (easel, 2);
  const double share = canvas_share (&canvas, beside, colour);
  canvas_clear (&canvas);
  return share;
}

START_TEST (a_bay_that_is_selected_stands_beside_the_body)
{
  ck_assert_double_gt (marked ("cabin", easel->look.selection), 0.02);
  ck_assert_double_eq (marked (NULL, easel->look.selection), 0);
}
END_TEST

START_TEST (bays_stand_there_while_a_part_that_may_be_in_one_is_selected)
{
  const double at_rest = marked ("receiver", easel->look.construction);
  const Aeroplane *racer = easel->figures->aeroplane;
  Part *part = (Part *) piece_dup (aeroplane_find (racer, "receiver"));

  part->bays = g_strdup ("cabin");
  Aeroplane *next = aeroplane_with_replaced (racer, aeroplane_find (racer, "receiver"), &part->piece);
  easel_free (easel);
  easel = easel_new (next);
  easel->scene.show_names = easel->scene.show_figures = easel->scene.show_grid = false;
  ck_assert_double_gt (marked ("receiver", easel->look.construction), at_rest + 0.02);
}
END_TEST

START_TEST (bays_stand_there_while_parts_are_arranged_whatever_is_selected)
{
  const double at_rest = marked (NULL, easel->look.construction);

  easel->scene.arranging = true;
  ck_assert_double_gt (marked (NULL, easel->look.construction), at_rest + 0.02);
}
END_TEST

/* How much ink of words stands just outside the body on the port side at that height. */
static double
ink_beside (double x)
{
  const Point at = view_to_screen (&easel->view, (Point) { x, -26 });
  Canvas canvas = easel_painted (easel, 2);
  const double share = canvas_share (&canvas, (Box) { { at.x - 60, at.y - 6 }, { at.x, at.y + 6 } }, easel->look.graphite);

  canvas_clear (&canvas);
  return share;
}

/* F3 stands at 78, F5 at 140, F8 at 290: the cabin reaches from the first to the last. */
START_TEST (while_parts_are_arranged_the_formers_that_bound_a_bay_are_named_and_no_others)
{
  const double places[] = { 78, 140, 290 };
  double at_rest[3];

  for (size_t i = 0; i < 3; i++)
    at_rest[i] = ink_beside (places[i]);
  easel->scene.arranging = true;
  ck_assert_double_gt (ink_beside (78), at_rest[0] + 0.01);
  ck_assert_double_eq_tol (ink_beside (140), at_rest[1], 1e-9);
  ck_assert_double_gt (ink_beside (290), at_rest[2] + 0.01);
}
END_TEST

/* How much of the sheet is in the colour of what is offered. */
static double
ink_of_offer (Aeroplane *takes)
{
  Figures offered = { .aeroplane = takes, .mass = { .x_mm = NAN, .y_mm = NAN } };
  Canvas canvas;
  double share;

  easel->scene.offered = &offered;
  canvas = easel_painted (easel, 2);
  share = canvas_share (&canvas, (Box) { { 0, 0 }, { easel->view.width, easel->view.height } }, easel->look.selection);
  canvas_clear (&canvas);
  easel->scene.offered = NULL;
  aeroplane_unref (takes);
  return share;
}

/* Were the battery so much further forward. */
static double
offered_ink (double forward)
{
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");

  return ink_of_offer (change_part_place (easel->figures->aeroplane, "battery", battery->x - forward, battery->y, battery->z));
}

/* The battery and the receiver, of one group or of none, both as far forward. */
static double
pair_ink (const char *group)
{
  static const char *const ids[] = { "battery", "receiver" };
  Aeroplane *moved = aeroplane_ref (easel->figures->aeroplane);

  for (size_t i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      const Part *part = aeroplane_part_by_id (moved, ids[i]);
      Part *next = (Part *) piece_dup (&part->piece);
      Aeroplane *with;

      next->group = g_strdup (group);
      next->x -= 5 / easel->view.scale;
      with = aeroplane_with_replaced (moved, &part->piece, &next->piece);
      aeroplane_unref (moved);
      moved = with;
    }
  return ink_of_offer (moved);
}

START_TEST (what_goes_along_with_its_group_is_told_once)
{
  easel_select (easel, selection_none ());
  ck_assert_double_lt (pair_ink ("pack"), 0.95 * pair_ink (NULL));
}
END_TEST

/* Half a px and 5 px: the box is the same, the bar, the dot and the figure are more. */
START_TEST (of_a_way_too_short_for_an_arrow_the_length_is_told)
{
  easel_select (easel, selection_none ());
  ck_assert_double_gt (offered_ink (5 / easel->view.scale), offered_ink (0.4) * 1.1);
}
END_TEST

/* The hatch's forward edge, just inside the body's own lines. */
START_TEST (the_hatch_to_cut_stands_there_while_the_battery_is_selected)
{
  const HatchFigures *hatch = &easel->figures->hatch;
  const Point at = view_to_screen (&easel->view, (Point) { hatch->from_mm, 0 });
  const Box edge = { { at.x - 12, at.y - 1.5 }, { at.x + 12, at.y + 1.5 } };

  ck_assert_ptr_nonnull (hatch->part);
  easel_select (easel, selection_of ("servo-left"));
  Canvas without = easel_painted (easel, 2);
  easel_select (easel, selection_of ("battery"));
  Canvas with = easel_painted (easel, 2);
  ck_assert_double_gt (canvas_share (&with, edge, easel->look.graphite), canvas_share (&without, edge, easel->look.graphite) + 0.1);
  canvas_clear (&without);
  canvas_clear (&with);
}
END_TEST

/* How much of what lies just outside of the body's top or bottom, beside the hatch, is ink in the side view: right of it is up. */
static double
ink_off_edge (HatchSide opens, const char *selected, bool top)
{
  AeroplaneTraits traits = aeroplane_traits (easel->figures->aeroplane);

  traits.hatch = opens;
  Easel *other = easel_new (aeroplane_with_traits (easel->figures->aeroplane, traits));
  const SideScene side = { .scene = &other->scene, .width = 200, .height = other->view.height };
  const HatchFigures *hatch = &other->figures->hatch;
  const SheetView view = side_view_of (&side);
  double low, high;

  easel_select (other, selection_of (selected));
  ck_assert (outline_span_at (aeroplane_body (other->figures->aeroplane, 0)->side_outline, (hatch->from_mm + hatch->to_mm) / 2, &low, &high));
  const Point edge = view_to_screen (&view, (Point) { (hatch->from_mm + hatch->to_mm) / 2, top ? high : low });
  const double out = top ? 4 : -4, half = (hatch->to_mm - hatch->from_mm) * view.scale / 4;
  Canvas canvas = canvas_new (side.width, side.height, 2, (Colour) { 1, 0, 1, 1 });
  draw_side_view (canvas.cr, &side);
  const double share = canvas_share (&canvas, (Box) { { edge.x + out - 1.5, edge.y - half }, { edge.x + out + 1.5, edge.y + half } }, other->look.graphite);
  canvas_clear (&canvas);
  easel_free (other);
  return share;
}

START_TEST (the_side_view_shows_on_which_side_the_hatch_opens_once_that_is_chosen)
{
  const double top = ink_off_edge (HATCH_NOT_CHOSEN, "battery", true), bottom = ink_off_edge (HATCH_NOT_CHOSEN, "battery", false);

  ck_assert_double_gt (ink_off_edge (HATCH_ON_TOP, "battery", true), top + 0.02);
  ck_assert_double_eq (ink_off_edge (HATCH_ON_TOP, "battery", false), bottom);
  ck_assert_double_gt (ink_off_edge (HATCH_ON_BOTTOM, "battery", false), bottom + 0.02);
  ck_assert_double_eq (ink_off_edge (HATCH_ON_BOTTOM, "battery", true), top);
  ck_assert_double_eq (ink_off_edge (HATCH_ON_TOP, "servo-left", true), top);
}
END_TEST

/* How much of the top 24 px is ink of words and lines while that is selected. */
static double
ink_at_the_top (const char *selected)
{
  easel_select (easel, selection_of (selected));
  Canvas canvas = easel_painted (easel, 2);
  const double share = canvas_share (&canvas, (Box) { { 0, 0 }, { easel->view.width, 24 } }, easel->look.graphite);
  canvas_clear (&canvas);
  return share;
}

START_TEST (of_a_hatch_that_is_not_in_sight_nothing_is_said)
{
  easel->view.origin_y = -(easel->figures->hatch.to_mm + 60) * easel->view.scale;
  ck_assert_double_eq_tol (ink_at_the_top ("battery"), ink_at_the_top ("servo-left"), 1e-9);
}
END_TEST

/* Beside the body at the edge's own height, or two lines off and joined by a thin line: at every zoom there is ink of it just outside. */
START_TEST (the_words_of_a_hatchs_edge_are_joined_to_it_by_a_thin_line)
{
  const double zooms[] = { 1, 2, 3.5 }, scale = easel->view.scale * zooms[_i];
  const HatchFigures *hatch = &easel->figures->hatch;

  easel->view.scale = scale;
  easel->view.origin_y = 300 - hatch->from_mm * scale;
  const Point corner = view_to_screen (&easel->view, (Point) { hatch->from_mm, hatch->part->y + hatch->width_mm / 2 });
  const Box beside = { { corner.x + 1, corner.y - 31 }, { corner.x + 6, corner.y + 31 } };
  easel_select (easel, selection_of ("servo-left"));
  Canvas without = easel_painted (easel, 2);
  easel_select (easel, selection_of ("battery"));
  Canvas with = easel_painted (easel, 2);
  const Colour thin = easel->look.construction;
  ck_assert_double_gt (canvas_share (&with, beside, thin), canvas_share (&without, beside, thin) + 0.002);
  canvas_clear (&without);
  canvas_clear (&with);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("bays");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, a_bay_that_is_selected_stands_beside_the_body);
  tcase_add_test (tests, bays_stand_there_while_a_part_that_may_be_in_one_is_selected);
  tcase_add_test (tests, bays_stand_there_while_parts_are_arranged_whatever_is_selected);
  tcase_add_test (tests, while_parts_are_arranged_the_formers_that_bound_a_bay_are_named_and_no_others);
  tcase_add_test (tests, of_a_way_too_short_for_an_arrow_the_length_is_told);
  tcase_add_test (tests, what_goes_along_with_its_group_is_told_once);
  tcase_add_test (tests, the_hatch_to_cut_stands_there_while_the_battery_is_selected);
  tcase_add_test (tests, the_side_view_shows_on_which_side_the_hatch_opens_once_that_is_chosen);
  tcase_add_test (tests, of_a_hatch_that_is_not_in_sight_nothing_is_said);
  tcase_add_loop_test (tests, the_words_of_a_hatchs_edge_are_joined_to_it_by_a_thin_line, 0, 3);
  return run_suite (suite_create ("sheet bays"), tests);
}
