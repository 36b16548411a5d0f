#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/body-profile.h"
#include "figures/hatch-shape.h"
#include "figures/hatch-way.h"
#include "figures/report.h"
#include "figures/report-hatch.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The hatch of a whole aeroplane. Allowances are common practice, no source. */

static Aeroplane *
replaced (Aeroplane *takes, void *piece)
{
  Piece *next = piece;
  Aeroplane *made = aeroplane_with_replaced (takes, aeroplane_find (takes, next->id), next);

  aeroplane_unref (takes);
  return made;
}

/* The racer, its battery 55 by 30 mm, its body with formers every 40 mm. */
static Aeroplane *
boxed_racer (void)
{
  Aeroplane *made = racer ();
  Part *battery = (Part *) piece_dup (aeroplane_find (made, "battery"));
  Body *body = (Body *) piece_dup (&aeroplane_body (made, 0)->piece);

  battery->length = 55;
  battery->width = 30;
  body->former_count = 6;
  body->formers = g_new (NamedPlace, 6);
  for (int i = 0; i < 6; i++)
    body->formers[i] = (NamedPlace) { g_strdup_printf ("F%d", i + 1), 10 + 40 * i };
  return replaced (replaced (made, battery), body);
}

static const Part *
battery_of (const Aeroplane *aeroplane)
{
  return aeroplane_part_by_id (aeroplane, "battery");
}

START_TEST (the_hatch_takes_in_the_battery_s_band_its_length_the_bend_and_a_hand)
{
  g_autoptr (Aeroplane) made = boxed_racer ();
  g_autoptr (Figures) figures = figures_once (made);
  const Solution *solution = figures_solution (figures, "battery");
  const double fore = fmin (2 * solution->x_sigma_mm, solution->band_from_mm - battery_of (made)->rail_from);
  const double aft = fmin (2 * solution->x_sigma_mm, battery_of (made)->rail_to - solution->band_to_mm);

  ck_assert_ptr_eq (figures->hatch.part, battery_of (made));
  ck_assert_uint_eq (figures->hatch.packs, 1);
  ck_assert_double_eq_tol (figures->hatch.floor_from_mm, solution->band_from_mm - 27.5 - fore, 1e-6);
  ck_assert_double_eq_tol (figures->hatch.floor_to_mm, solution->band_to_mm + 27.5 + aft, 1e-6);
  ck_assert_double_eq (figures->hatch.from_mm, round (figures->hatch.floor_from_mm - 15));      /* to whole millimetres */
  ck_assert_double_eq_tol (figures->hatch.to_mm, 170, 1e-6);      /* F5, which it would cut for 1.5 mm */
  ck_assert_double_eq_tol (figures->hatch.to_mm - figures->hatch.moved_to_mm, figures->hatch.floor_to_mm + 10, 1e-6);
  ck_assert_double_eq_tol (figures->hatch.width_mm, 34, 1e-6);
}
END_TEST

/* The fifth former stands where the packs want the after edge, to a fraction of a millimetre; it is moved nowhere, not even to a whole one. */
START_TEST (an_edge_that_is_on_a_former_stays_on_it)
{
  Aeroplane *made = boxed_racer ();
  Body *body = (Body *) piece_dup (&aeroplane_body (made, 0)->piece);
  g_autoptr (Figures) before = figures_once (made);
  const double wanted = before->hatch.to_mm - before->hatch.moved_to_mm;

  ck_assert_double_gt (fabs (wanted - round (wanted)), 0.05);
  body->formers[4].place = wanted;
  made = replaced (made, body);
  g_autoptr (Figures) figures = figures_once (made);
  ck_assert_double_eq_tol (figures->hatch.to_mm, wanted, 1e-9);
  ck_assert_double_eq_tol (figures->hatch.moved_to_mm, 0, 1e-9);
  aeroplane_unref (made);
}
END_TEST

/* How far behind the edge as the pack wants it a firewall of 3 mm ends that is held off the motor by a usual mount of 3 mm, and how
 * far from the body's middle its motor stands, in widths. */
static const struct { double beyond, off; bool moves; } firewalls[] = { { 2, 0, true }, { -1, 0, false }, { 2, 1, false } };

START_TEST (the_hatch_begins_behind_the_firewall)
{
  Aeroplane *made = boxed_racer ();
  g_autoptr (Figures) before = figures_once (made);
  Part *motor = (Part *) piece_dup (aeroplane_find (made, "motor"));
  const double wanted = before->hatch.from_mm;

  motor->length = 17;
  motor->width = 22;
  motor->x = wanted + firewalls[_i].beyond - 6 - motor->length / 2;
  motor->y = firewalls[_i].off * motor->width;
  const double motor_rear = motor->x + 17.0 / 2;
  made = replaced (made, motor);
  g_autoptr (Figures) figures = figures_once (made);
  g_autofree char *told = hatch_length_text (figures, (Units) { LENGTH_MM, MASS_G });
  ck_assert_double_eq_tol (figures->hatch.from_mm, firewalls[_i].moves ? motor_rear + 6 : round (figures->hatch.floor_from_mm - 15), 1e-6);
  /* The first former is at 10, ahead of it or of where the motor is that stands beside the body. */
  ck_assert ((figures->hatch.former_from == NULL) == (firewalls[_i].off == 0));
  ck_assert ((strstr (told, "It begins behind the firewall, which takes") != NULL) == firewalls[_i].moves);
  aeroplane_unref (made);
}
END_TEST

/* The racer's rail begins at 82 and ends at 134; lengthened both ways by 200 mm it goes on for nothing and is said to. */
START_TEST (what_the_hatch_owes_to_the_rail_is_told)
{
  Aeroplane *made = boxed_racer ();
  Part *longer = (Part *) piece_dup (aeroplane_find (made, "battery"));
  const Units metric = { LENGTH_MM, MASS_G };

  g_autoptr (Figures) tight = figures_once (made);
  const HatchFigures *hatch = &tight->hatch;
  g_autofree char *told = hatch_length_text (tight, metric), *length = units_length (metric, hatch->to_mm - hatch->from_mm);
  ck_assert_double_eq_tol (hatch->pack_mm + hatch->places_mm + hatch->spread_mm + 25 + hatch->moved_to_mm, hatch->to_mm - hatch->from_mm, 0.5 + 1e-6);
  ck_assert_ptr_nonnull (strstr (told, "To end at a former, its after edge is moved by"));
  ck_assert_ptr_nonnull (strstr (told, length));
  ck_assert_ptr_nonnull (strstr (told, "The rail sets"));
  ck_assert_ptr_null (strstr (told, "than needed"));
  longer->rail_from -= 200;
  longer->rail_to += 200;
  made = replaced (made, longer);
  g_autoptr (Figures) roomy = figures_once (made);
  g_autofree char *more = hatch_length_text (roomy, metric);
  ck_assert_double_eq_tol (roomy->hatch.rail_ahead_mm, hatch->rail_ahead_mm + 200, 1e-6);
  ck_assert_double_eq_tol (roomy->hatch.floor_to_mm - roomy->hatch.floor_from_mm,
                           hatch->floor_to_mm - hatch->floor_from_mm - fmin (hatch->rail_ahead_mm, 0) - fmin (hatch->rail_behind_mm, 0), 1e-6);
  ck_assert_ptr_nonnull (strstr (more, "The rail is longer than needed"));
  aeroplane_unref (made);
}
END_TEST

static bool
is_noted (const Figures *figures, const char *words)
{
  for (guint i = 0; i < figures->notes->len; i++)
    if (strstr (((const Note *) g_ptr_array_index (figures->notes, i))->text, words))
      return true;
  return false;
}

/* A hatch is as wide as its pack and 4 mm, where the body leaves so much. */
START_TEST (a_pack_that_the_body_leaves_no_hole_for_is_told_of_and_what_to_do)
{
  const Units metric = { LENGTH_MM, MASS_G };
  Aeroplane *made = boxed_racer ();
  Part *slim = (Part *) piece_dup (aeroplane_find (made, "battery")), *broad = (Part *) piece_dup (aeroplane_find (made, "battery"));

  slim->width = 5;
  made = replaced (made, slim);
  g_autoptr (Figures) narrow = figures_once (made);
  g_autofree char *told = hatch_through_text (narrow, metric);
  ck_assert_double_eq (narrow->hatch.width_mm, 9);
  ck_assert_double_eq (narrow->hatch.lacking_mm, 0);
  ck_assert (told == NULL || strstr (told, "does not go through") == NULL);
  broad->width = 200;
  made = replaced (made, broad);
  g_autoptr (Figures) wide = figures_once (made);
  g_autofree char *more = hatch_through_text (wide, metric), *opening = hatch_opening_text (wide, metric), *length = units_length (metric, wide->hatch.lacking_mm);
  ck_assert_double_eq_tol (wide->hatch.lacking_mm, broad->length, 1e-9);      /* nowhere wide enough */
  ck_assert_ptr_nonnull (strstr (more, "does not go through the hatch"));
  ck_assert_ptr_nonnull (strstr (more, length));
  ck_assert_ptr_nonnull (strstr (opening, more));
  ck_assert (is_noted (wide, "is too narrow for a pack to go through") && !is_noted (narrow, "is too narrow for a pack to go through"));
  aeroplane_unref (made);
}
END_TEST

static Figures *
opened_on (const Aeroplane *aeroplane, HatchSide side)
{
  AeroplaneTraits traits = aeroplane_traits (aeroplane);

  traits.hatch = side;
  g_autoptr (Aeroplane) opened = aeroplane_with_traits (aeroplane, traits);
  return figures_once (opened);
}

/* The hole's edges stay the rim's 3 mm within the body's sides less their skin, and are as wide as the pack and 4 mm where that leaves so much. */
START_TEST (the_hole_narrows_with_the_body_and_its_frame_stays_within)
{
  Aeroplane *made = boxed_racer ();
  Part *pack = (Part *) piece_dup (aeroplane_find (made, "battery"));
  HatchStation hole[HATCH_HOLE_STATIONS], frame[HATCH_FRAME_STATIONS];

  pack->width = 34;
  made = replaced (made, pack);
  g_autoptr (Figures) figures = figures_once (made);
  const HatchFigures *hatch = &figures->hatch;
  BodyProfile *profile = body_profile_new (hatch->body);
  const size_t holes = hatch_hole (hatch, 0, hole), frames = hatch_frame (hatch, 6, frame);

  ck_assert_double_lt (hatch->from_width_mm, hatch->width_mm - 1);
  ck_assert_double_eq (hole[0].width, hatch->from_width_mm);
  ck_assert_double_eq (hole[holes - 1].x, hatch->to_mm);
  for (double x = hatch->from_mm; x <= hatch->to_mm; x += 1.7)
    ck_assert_double_le (hatch_width_at (hatch, x), 2 * (body_profile_clear (profile, x, x).half_width - 3) + 0.2);
  for (size_t i = 0; i < frames; i++)
    ck_assert_double_le (frame[i].width, 2 * body_profile_clear (profile, frame[i].x, frame[i].x).half_width + 1e-9);
  ck_assert_double_eq_tol (hatch_stretch (hatch, hatch->width_mm), hatch->full_to_mm - hatch->full_from_mm, 1e-9);
  ck_assert_double_eq (hatch_stretch (hatch, hatch->width_mm + 0.1), 0);
  body_profile_free (profile);
  aeroplane_unref (made);
}
END_TEST

START_TEST (a_wing_between_the_pack_and_the_side_it_opens_on_is_in_the_way)
{
  Aeroplane *made = boxed_racer ();
  Surface *wing = (Surface *) piece_dup (aeroplane_find (made, "wing"));

  wing->z = ((const Part *) aeroplane_find (made, "battery"))->z - 10;
  made = replaced (made, wing);
  g_autoptr (Figures) unknown = opened_on (made, HATCH_NOT_CHOSEN), top = opened_on (made, HATCH_ON_TOP), bottom = opened_on (made, HATCH_ON_BOTTOM);
  g_autoptr (GArray) none = hatch_bars (unknown), above = hatch_bars (top), below = hatch_bars (bottom);
  ck_assert_uint_eq (none->len + above->len, 0);
  ck_assert_uint_eq (below->len, 1);
  ck_assert_str_eq (g_array_index (below, HatchBar, 0).piece->id, "wing");
  ck_assert_double_eq (g_array_index (below, HatchBar, 0).to_mm, bottom->hatch.to_mm);
  ck_assert (is_noted (bottom, "lies across the hatch on the bottom") && !is_noted (top, "lies across the hatch"));
  aeroplane_unref (made);
}
END_TEST

static Part *
standing_at (const char *class_name, double x, double width, double z)
{
  Part *part = part_new ("standing", class_name);

  part->name = g_strdup ("Block");
  part->mass = 5;
  part->x = x;
  part->z = z;
  part->length = 40;
  part->width = width;
  part->height = 10;
  return part;
}

/* The racer's hatch goes from 40 to 170 mm, its wing lies beneath that. */
START_TEST (a_fixed_part_across_the_opening_is_told_with_the_one_thing_to_do)
{
  static const struct { const char *class_name; double x, width, z, wing_z, across; HatchSide side; const char *told; } cases[] = {
    { "undercarriage", 130, 150, -60, -12, 40, HATCH_ON_BOTTOM, "stands across the hatch on the bottom: let it open on the top." },
    { "undercarriage", 50, 150, -60, -12, 30, HATCH_ON_BOTTOM, "stands across the hatch on the bottom: let it open on the top." },
    { "undercarriage", 130, 150, -60, 20, 40, HATCH_ON_BOTTOM, "let it open on the top, and let the wing come off." },
    { "undercarriage", 130, 150, -60, -12, 0, HATCH_ON_TOP, NULL }, { "undercarriage", 260, 150, -60, 20, 0, HATCH_ON_BOTTOM, NULL },
    { "canopy", 130, 30, 30, -12, 40, HATCH_ON_TOP, "stands across the hatch: let it come off with the lid." },
    { "receiver", 130, 30, 30, -12, 0, HATCH_ON_TOP, NULL }, { "wheels", 130, 150, -60, 20, 0, HATCH_ON_BOTTOM, NULL } };
  Aeroplane *made = boxed_racer ();
  Surface *wing = (Surface *) piece_dup (aeroplane_find (made, "wing"));
  Body *body = (Body *) piece_dup (&aeroplane_body (made, 0)->piece);

  wing->z = cases[_i].wing_z;
  body->side_outline = polygon_from ((Point[]) { { 0, 0 }, { 20, 13 }, { 463, 10 }, { 463, 4 }, { 158, -27 } }, 5);
  made = with_piece (replaced (replaced (made, wing), body), standing_at (cases[_i].class_name, cases[_i].x, cases[_i].width, cases[_i].z));
  g_autoptr (Figures) figures = opened_on (made, cases[_i].side);
  g_autoptr (GArray) bars = hatch_bars (figures);
  g_autofree char *place = hatch_place_text (figures), *json = report_json (figures);
  const HatchBar *last = bars->len > 0 ? &g_array_index (bars, HatchBar, bars->len - 1) : NULL;
  const bool is_told = last && strcmp (last->piece->id, "standing") == 0;

  ck_assert_int_eq (is_told, cases[_i].told != NULL);
  ck_assert (!is_told || strstr (strstr (json, "in_the_way"), "\"standing\"") != NULL);
  if (is_told)
    ck_assert_double_eq_tol (last->to_mm - last->from_mm, cases[_i].across, 1);
  ck_assert (!is_told || (is_noted (figures, cases[_i].told) && strstr (place, cases[_i].told)));
  ck_assert (is_told || !is_noted (figures, "“Block” stands across"));
  aeroplane_unref (made);
}
END_TEST

/* The racer's hatch begins ahead of F2, at 50 mm, and ends behind the last of its formers that lie within. */
START_TEST (on_which_side_it_opens_is_unknown_until_chosen_and_the_formers_it_cuts_are_named)
{
  g_autoptr (Aeroplane) made = boxed_racer ();
  g_autoptr (Figures) unknown = opened_on (made, HATCH_NOT_CHOSEN), top = opened_on (made, HATCH_ON_TOP), bottom = opened_on (made, HATCH_ON_BOTTOM);
  g_autofree char *not_yet = hatch_place_text (unknown), *above = hatch_place_text (top), *below = hatch_place_text (bottom);
  g_autofree char *json = report_json (unknown), *opened = report_json (bottom);
  g_autoptr (GPtrArray) cut = hatch_formers_cut (top);

  ck_assert_ptr_nonnull (strstr (not_yet, "not chosen yet"));
  ck_assert (g_str_has_prefix (above, "The hatch opens on the top. It stands between"));
  ck_assert (g_str_has_prefix (below, "The hatch opens on the bottom. It stands between"));
  ck_assert_ptr_null (strstr (json, "opens_on"));
  ck_assert_ptr_nonnull (strstr (opened, "\"opens_on\": \"bottom\""));
  ck_assert_uint_gt (cut->len, 1);
  for (guint i = 0; i < cut->len; i++)
    {
      const NamedPlace *former = cut->pdata[i];
      ck_assert (former->place > top->hatch.from_mm && former->place < top->hatch.to_mm);
      ck_assert_ptr_nonnull (strstr (strstr (above, "cuts through"), former->name));
    }
}
END_TEST

START_TEST (its_edges_go_outward_to_formers_and_are_told_from_the_nearest)
{
  g_autoptr (Aeroplane) made = boxed_racer ();
  g_autoptr (Figures) figures = figures_once (made);
  g_autofree char *near = hatch_edge_text (made, 53, (Units) { LENGTH_MM, MASS_G });
  g_autofree char *ahead = hatch_edge_text (made, 47, (Units) { LENGTH_MM, MASS_G });

  ck_assert_double_le (figures->hatch.former_from->place, figures->hatch.from_mm);
  ck_assert_double_gt (figures->hatch.former_from->place, figures->hatch.from_mm - 40);
  ck_assert_double_ge (figures->hatch.former_to->place, figures->hatch.to_mm);
  ck_assert_double_lt (figures->hatch.former_to->place, figures->hatch.to_mm + 40);
  ck_assert_str_eq (near, "3\u00a0mm aft of F2");
  ck_assert_str_eq (ahead, "3\u00a0mm ahead of F2");
}
END_TEST

/* Half as heavy it has twice as far to go. */
START_TEST (a_pack_left_out_that_has_a_rail_is_flown_instead_of_the_one_aboard)
{
  Aeroplane *made = boxed_racer ();
  Part *small = (Part *) piece_dup (aeroplane_find (made, "battery"));

  g_free (small->piece.id);
  small->piece.id = g_strdup ("small");
  small->aboard = false;
  small->mass /= 2;
  small->rail_from = 20;
  small->rail_to = 220;
  g_autoptr (Figures) alone = figures_once (made);
  made = with_piece (made, small);
  g_autoptr (Figures) both = figures_once (made);
  Aeroplane *instead = aeroplane_without (made, aeroplane_find (made, "battery"));
  Part *aboard = (Part *) piece_dup (&small->piece);
  aboard->aboard = true;
  instead = replaced (instead, aboard);
  g_autoptr (Figures) other = figures_once (instead);
  const Solution *solution = figures_solution (other, "small");
  const double spread = fmin (2 * figures_solution (alone, "battery")->x_sigma_mm * 2, 220 - solution->band_to_mm);
  ck_assert_uint_eq (both->hatch.packs, 2);
  ck_assert_double_eq_tol (both->hatch.floor_to_mm, fmax (alone->hatch.floor_to_mm, solution->band_to_mm + 27.5 + spread), 1e-6);
  ck_assert_double_lt (both->hatch.floor_from_mm, alone->hatch.floor_from_mm + 1e-9);
  aeroplane_unref (instead);
  aeroplane_unref (made);
}
END_TEST

START_TEST (a_pack_whose_leads_leave_aft_has_the_bend_there)
{
  Aeroplane *made = boxed_racer ();
  Part *turned = (Part *) piece_dup (aeroplane_find (made, "battery"));

  turned->turn = 180;
  made = replaced (made, turned);
  g_autoptr (Figures) figures = figures_once (made);
  ck_assert_double_eq (figures->hatch.to_mm, round (figures->hatch.floor_to_mm + 15));
  ck_assert_double_eq (figures->hatch.from_mm, round (figures->hatch.floor_from_mm - 10));
  aeroplane_unref (made);
}
END_TEST

/* Δx = Δm (x wanted − x of Δm) / m, exactly: moments about the wanted place. Source: FAA-H-8083-1. */
START_TEST (what_is_added_asks_the_battery_to_move_by_its_own_moment)
{
  g_autoptr (Aeroplane) made = boxed_racer ();
  g_autoptr (Aeroplane) heavier = with_part (aeroplane_ref (made), "camera", 4, 400);
  g_autoptr (Figures) before = figures_once (made);
  g_autoptr (Figures) after = figures_once (heavier);
  const double wanted = before->balance.target_x_mm;

  ck_assert_double_eq_tol (figures_solution (after, "battery")->at_aim.x_mm - figures_solution (before, "battery")->at_aim.x_mm,
                           4 * (wanted - 400) / battery_of (made)->mass, 1e-6);
}
END_TEST

START_TEST (without_a_battery_on_a_rail_there_is_no_hatch_and_the_report_says_nothing)
{
  Aeroplane *made = boxed_racer ();
  Part *fixed = (Part *) piece_dup (aeroplane_find (made, "battery"));

  fixed->has_rail = false;
  made = replaced (made, fixed);
  g_autoptr (Figures) figures = figures_once (made);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G }), *json = report_json (figures);
  ck_assert_ptr_null (figures->hatch.part);
  ck_assert_ptr_null (strstr (text, "Hatch to cut"));
  ck_assert_ptr_null (strstr (json, "\"hatch\""));
  aeroplane_unref (made);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("hatch");

  tcase_add_test (tests, the_hatch_takes_in_the_battery_s_band_its_length_the_bend_and_a_hand);
  tcase_add_test (tests, an_edge_that_is_on_a_former_stays_on_it);
  tcase_add_loop_test (tests, the_hatch_begins_behind_the_firewall, 0, G_N_ELEMENTS (firewalls));
  tcase_add_test (tests, what_the_hatch_owes_to_the_rail_is_told);
  tcase_add_test (tests, a_pack_that_the_body_leaves_no_hole_for_is_told_of_and_what_to_do);
  tcase_add_test (tests, the_hole_narrows_with_the_body_and_its_frame_stays_within);
  tcase_add_test (tests, a_wing_between_the_pack_and_the_side_it_opens_on_is_in_the_way);
  tcase_add_loop_test (tests, a_fixed_part_across_the_opening_is_told_with_the_one_thing_to_do, 0, 8);
  tcase_add_test (tests, on_which_side_it_opens_is_unknown_until_chosen_and_the_formers_it_cuts_are_named);
  tcase_add_test (tests, its_edges_go_outward_to_formers_and_are_told_from_the_nearest);
  tcase_add_test (tests, a_pack_left_out_that_has_a_rail_is_flown_instead_of_the_one_aboard);
  tcase_add_test (tests, a_pack_whose_leads_leave_aft_has_the_bend_there);
  tcase_add_test (tests, what_is_added_asks_the_battery_to_move_by_its_own_moment);
  tcase_add_test (tests, without_a_battery_on_a_rail_there_is_no_hatch_and_the_report_says_nothing);
  return run_suite (suite_create ("hatch"), tests);
}
