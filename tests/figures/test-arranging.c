#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "document/part-box.h"
#include "figures/arranging.h"
#include "figures/lead-need.h"
#include "figures/part-places.h"
#include "figures/room-faults.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* The arrangement as an aeroplane asks for it and gets it back. The search itself has tests of its own. */

static const Units metric = { LENGTH_MM, MASS_G };

/* The racer, its body named by three formers, its electrics in bays between them. */
static Aeroplane *
with_bays (void)
{
  static const struct { const char *id, *bays; double length, width, height; } boxes[] = {
    { "controller", "nose cabin", 27, 17, 6 }, { "battery", "nose cabin", 55, 28, 12 }, { "receiver", "cabin", 36, 21, 11 } };
  g_autoptr (Aeroplane) made = racer ();
  const Body *body = aeroplane_body (made, 0);
  Body *named = (Body *) piece_dup (&body->piece);
  Aeroplane *now;

  named->former_count = 3;
  named->formers = g_new (NamedPlace, 3);
  for (int i = 0; i < 3; i++)
    named->formers[i] = (NamedPlace) { g_strdup_printf ("F%d", i + 1), (double[]) { 20, 110, 230 }[i] };
  now = aeroplane_with_replaced (made, &body->piece, &named->piece);
  now = with_piece (with_piece (now, bay_new ("nose", "F1", "F2")), bay_new ("cabin", "F2", "F3"));
  for (size_t i = 0; i < G_N_ELEMENTS (boxes); i++)
    {
      const Part *part = aeroplane_part_by_id (now, boxes[i].id);
      Part *boxed = (Part *) piece_dup (&part->piece);
      Aeroplane *last = now;
      boxed->length = boxes[i].length;
      boxed->width = boxes[i].width;
      boxed->height = boxes[i].height;
      boxed->has_rail = false;
      boxed->bays = g_strdup (boxes[i].bays);
      now = aeroplane_with_replaced (last, &part->piece, &boxed->piece);
      aeroplane_unref (last);
    }
  return now;
}

static Lead *
lead_of (const char *from, const char *to, double length)
{
  Lead *lead = lead_new (from, to);

  lead->length = length;
  return lead;
}

/* Asked and answered; the arrangement is to be cleared. */
typedef struct { Figures *figures; Arranging *arranging; ArrangingAnswer answer; } Asked;

static Asked
asked_of (const Aeroplane *aeroplane)
{
  Asked asked = { .figures = figures_once (aeroplane) };

  ck_assert_int_eq (arranging_new (asked.figures, NULL, &asked.arranging), ARRANGING_CAN);
  arranging_find (asked.arranging, 1, &asked.answer);
  ck_assert_int_eq (asked.answer.status, CORE_OK);
  return asked;
}

static void
asked_clear (Asked *asked)
{
  arranging_answer_clear (&asked->answer);
  arranging_free (asked->arranging);
  figures_unref (asked->figures);
}

START_TEST (one_part_on_a_rail_goes_where_the_figures_say_it_must_be)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  Asked asked = asked_of (aeroplane);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  const Solution *solution = figures_solution (asked.figures, "battery");

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_PROVED);
  ck_assert (solution->reachable);
  ck_assert_double_eq_tol (aeroplane_part_by_id (arranged, "battery")->x, solution->x_mm, 0.011);
  ck_assert_ptr_eq (aeroplane_part_by_id (arranged, "motor"), aeroplane_part_by_id (aeroplane, "motor"));
  asked_clear (&asked);
}
END_TEST

static bool
are_apart (const Part *a, const Part *b)
{
  const Point one = part_extent (a), other = part_extent (b);

  return fabs (a->x - b->x) >= (one.x + other.x) / 2 || fabs (a->y - b->y) >= (one.y + other.y) / 2
         || fabs (a->z - b->z) >= (a->height + b->height) / 2;
}

static bool
is_in_its_places (const Aeroplane *aeroplane, const Part *part)
{
  g_autoptr (GArray) places = part_places (aeroplane, part);

  for (guint i = 0; i < places->len; i++)
    {
      const PartPlaces *at = &g_array_index (places, PartPlaces, i);
      if (part->x >= at->x_from - 0.01 && part->x <= at->x_to + 0.01 && part->y >= at->y_from - 0.01 && part->y <= at->y_to + 0.01
          && part->z >= at->z_from - 0.01 && part->z <= at->z_to + 0.01)
        return true;
    }
  return false;
}

START_TEST (in_bays_parts_stand_apart_within_them_and_the_aeroplane_balances)
{
  static const char *const ids[] = { "controller", "battery", "receiver" };
  g_autoptr (Aeroplane) aeroplane = with_bays ();
  Asked asked = asked_of (aeroplane);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  g_autoptr (Figures) then = figures_once (arranged);

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_PROVED);
  for (size_t i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      const Part *part = aeroplane_part_by_id (arranged, ids[i]);
      ck_assert_msg (is_in_its_places (arranged, part), "%s", ids[i]);
      for (size_t k = 0; k < i; k++)
        ck_assert (are_apart (part, aeroplane_part_by_id (arranged, ids[k])));
    }
  ck_assert_double_eq_tol (asked.answer.found.found[0].ballast, 0, 1e-7);
  ck_assert_double_eq_tol (then->mass.x_mm, then->balance.advised_x_mm, 0.02);
  asked_clear (&asked);
}
END_TEST

/* The rail ends short: what is offered balances with its ballast, not without. */
START_TEST (an_arrangement_that_needs_ballast_has_it_aboard)
{
  g_autoptr (Aeroplane) wide = racer ();
  g_autoptr (Aeroplane) aeroplane = change_part_rail (wide, "battery", 220, 230);
  Asked asked = asked_of (aeroplane);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  g_autoptr (Figures) then = figures_once (arranged);
  const Part *ballast = aeroplane_part_by_id (arranged, "ballast");

  ck_assert_ptr_nonnull (ballast);
  ck_assert_double_ge (ballast->mass, asked.answer.found.found[0].ballast * 1e3);
  ck_assert_double_le (then->mass.x_mm, then->balance.aft_limit_x_mm);
  ck_assert_double_ge (then->mass.x_mm, then->balance.aft_limit_x_mm - 0.2);
  asked_clear (&asked);
}
END_TEST

/* Of the places of the arranged aeroplane the first, as a block that has room there. */
START_TEST (ballast_of_an_arrangement_is_a_block_where_least_of_it_is_needed_and_it_has_room)
{
  g_autoptr (Aeroplane) wide = with_bays ();
  g_autoptr (Aeroplane) aeroplane = with_part (aeroplane_ref (wide), "tail", 20, 600);
  Asked asked = asked_of (aeroplane);
  const Arrangement *best = &asked.answer.found.found[0];
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, best);
  g_autoptr (GArray) places = arranging_ballast_places (asked.arranging, best);
  g_autoptr (Figures) then = figures_once (arranged);
  const BallastPlace *first = &g_array_index (places, BallastPlace, 0);
  const Part *ballast = aeroplane_part_by_id (arranged, "ballast");
  g_autofree char *margin = arranging_ballast_sentence (asked.arranging, best, (Units) { LENGTH_MM, MASS_G });
  g_autofree char *in_ounces = arranging_ballast_sentence (asked.arranging, best, (Units) { LENGTH_INCH, MASS_OZ });
  RoomProfiles profiles = { .count = 0 };

  ck_assert (g_str_has_prefix (margin, "This ballast is for the aft limit, 5\u00a0%; for the aim, 12\u00a0%, it takes "));
  ck_assert (g_str_has_suffix (in_ounces, "oz."));
  ck_assert_double_gt (arranging_ballast_for_aim_g (asked.arranging, best), best->ballast * 1e3 + 1);
  ck_assert_uint_ge (places->len, 2);
  ck_assert (first->has_room);
  ck_assert_double_eq_tol (best->ballast * 1e3, first->mass_g, 1e-6);
  ck_assert_double_eq_tol (best->ballast_x * 1e3, first->x_mm, 1e-6);
  ck_assert_double_eq_tol (ballast->x, first->x_mm, 1e-6);
  ck_assert_double_eq_tol (ballast->length, first->length_mm, 0.01);
  ck_assert_double_le (then->mass.x_mm, then->balance.aft_limit_x_mm);
  room_profiles_update (&profiles, arranged);
  g_autoptr (GArray) faults = room_faults (&profiles, arranged);
  for (guint i = 0; i < faults->len; i++)
    ck_assert_ptr_ne (g_array_index (faults, RoomFault, i).part, ballast);
  room_profiles_clear (&profiles);
  asked_clear (&asked);
}
END_TEST

static Aeroplane *
with_group (Aeroplane *takes, const char *id, const char *group)
{
  const Part *part = aeroplane_part_by_id (takes, id);
  Part *grouped = (Part *) piece_dup (&part->piece);
  Aeroplane *made;

  g_free (grouped->group);
  grouped->group = g_strdup (group);
  made = aeroplane_with_replaced (takes, &part->piece, &grouped->piece);
  aeroplane_unref (takes);
  return made;
}

/* A battery with what holds it beneath, and beside them the receiver. */
static Aeroplane *
with_fastening (void)
{
  Part *tape = part_new ("tape", "other");

  tape->mass = 2;
  tape->x = 150;
  tape->z = -6;
  return with_group (with_group (with_piece (with_bays (), tape), "tape", "battery"), "battery", "battery");
}

static void
check_beside (const Aeroplane *before, const Aeroplane *after, const char *one, const char *other)
{
  const Part *a = aeroplane_part_by_id (before, one), *b = aeroplane_part_by_id (before, other);
  const Part *now_a = aeroplane_part_by_id (after, one), *now_b = aeroplane_part_by_id (after, other);

  ck_assert_double_eq_tol (now_a->x - now_b->x, a->x - b->x, 1e-9);
  ck_assert_double_eq_tol (now_a->y - now_b->y, a->y - b->y, 1e-9);
  ck_assert_double_eq_tol (now_a->z - now_b->z, a->z - b->z, 1e-9);
}

START_TEST (what_holds_a_battery_goes_with_it)
{
  g_autoptr (Aeroplane) aeroplane = with_fastening ();
  Asked asked = asked_of (aeroplane);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  g_autoptr (Figures) then = figures_once (arranged);

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_PROVED);
  ck_assert_double_gt (fabs (aeroplane_part_by_id (arranged, "battery")->x - aeroplane_part_by_id (aeroplane, "battery")->x), 1);
  check_beside (aeroplane, arranged, "battery", "tape");
  ck_assert_double_eq_tol (then->mass.x_mm, then->balance.advised_x_mm, 0.02);
  asked_clear (&asked);
}
END_TEST

/* Each would go elsewhere by itself. */
START_TEST (parts_of_a_group_are_arranged_as_one)
{
  g_autoptr (Aeroplane) apart = with_bays ();
  g_autoptr (Aeroplane) aeroplane = with_group (with_group (aeroplane_ref (apart), "battery", "tray"), "receiver", "tray");
  Asked asked = asked_of (aeroplane);

  ck_assert_uint_ge (asked.answer.found.count, 1);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  check_beside (aeroplane, arranged, "battery", "receiver");
  ck_assert (is_in_its_places (arranged, aeroplane_part_by_id (arranged, "receiver")));
  ck_assert (is_in_its_places (arranged, aeroplane_part_by_id (arranged, "battery")));
  asked_clear (&asked);
}
END_TEST

START_TEST (a_group_stays_where_one_of_it_is_to_stay)
{
  const char *const still[] = { "battery", NULL };
  g_autoptr (Aeroplane) aeroplane = with_fastening ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (Arranging) arranging = NULL;

  ck_assert_int_eq (arranging_new (figures, still, &arranging), ARRANGING_CAN);
  ck_assert_uint_eq (arranging_movable (arranging), 2);
}
END_TEST

/* The controller may be in the nose alone, the receiver in the cabin alone, and they stand 10 mm from one another. */
START_TEST (a_group_without_a_place_in_common_is_named)
{
  g_autoptr (Aeroplane) made = with_group (with_group (with_bays (), "controller", "tray"), "receiver", "tray");
  const Part *part = aeroplane_part_by_id (made, "controller");
  Part *moved = (Part *) piece_dup (&part->piece);

  moved->x = aeroplane_part_by_id (made, "receiver")->x + 40;
  g_free (moved->bays);
  moved->bays = g_strdup ("nose");
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &part->piece, &moved->piece);
  Asked asked = asked_of (aeroplane);
  g_autofree char *text = asked.answer.limit_count ? arranging_limit_text (asked.arranging, &asked.answer.limits[0], metric) : NULL;

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_IMPOSSIBLE);
  ck_assert_ptr_nonnull (text);
  ck_assert_ptr_nonnull (strstr (text, "are one group"));
  asked_clear (&asked);
}
END_TEST

/* Left to itself the controller goes where it balances; held by a lead of 90 mm it stands within (90 − 10) / 1.12 of the motor. */
START_TEST (a_lead_holds_its_ends_together_slack_counted)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (with_bays (), lead_of ("motor", "controller", 90));
  Asked asked = asked_of (aeroplane);
  g_autoptr (Aeroplane) arranged = arranging_applied (asked.arranging, &asked.answer.found.found[0]);
  const LeadNeed need = lead_need_of (arranged, aeroplane_lead (arranged, 0), LEG_FROM);

  ck_assert_double_eq_tol (need.needed, arranging_lead_needed (asked.arranging, &asked.answer.found.found[0], 0), 0.05);
  ck_assert_double_le (need.needed, 90.15);
  asked_clear (&asked);
}
END_TEST

/* The controller in the cabin alone. Its former stands at 110 and is 2 mm thick as usual, so the bay begins at 110 + 2 / 2 = 111, and the
 * controller, 27 long, has its middle at 111 + 27 / 2 = 124.5 at the least: 124.5 − 30 = 94.5 aft of the motor's. No side view says how high
 * it may be, so it stays 11 over the motor: √(94.5² + 11²) = 95.14. With the usual slack and the loop, common practice, no source:
 * 1.12 × 95.14 + 10 = 116.56. */
START_TEST (a_lead_that_cannot_reach_is_named_with_its_length)
{
  g_autoptr (Aeroplane) bayed = with_piece (with_bays (), lead_of ("motor", "controller", 90));
  const Part *part = aeroplane_part_by_id (bayed, "controller");
  Part *moved = (Part *) piece_dup (&part->piece);
  g_free (moved->bays);
  moved->bays = g_strdup ("cabin");
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (bayed, &part->piece, &moved->piece);
  Asked asked = asked_of (aeroplane);

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_IMPOSSIBLE);
  ck_assert_uint_gt (asked.answer.limit_count, 0);
  g_autofree char *text = arranging_limit_text (asked.arranging, &asked.answer.limits[0], metric);
  ck_assert_ptr_nonnull (strstr (text, "Motor"));
  ck_assert_ptr_nonnull (strstr (text, "90"));
  ck_assert_msg (strstr (text, "117") != NULL, "%s", text);
  asked_clear (&asked);
}
END_TEST

START_TEST (a_part_too_large_for_its_bays_is_named)
{
  g_autoptr (Aeroplane) bayed = with_bays ();
  const Part *part = aeroplane_part_by_id (bayed, "battery");
  Part *large = (Part *) piece_dup (&part->piece);
  large->width = 70;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (bayed, &part->piece, &large->piece);
  Asked asked = asked_of (aeroplane);
  g_autofree char *text = asked.answer.limit_count ? arranging_limit_text (asked.arranging, &asked.answer.limits[0], metric) : NULL;

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_IMPOSSIBLE);
  ck_assert_ptr_nonnull (text);
  ck_assert_ptr_nonnull (strstr (text, "Battery"));
  asked_clear (&asked);
}
END_TEST

START_TEST (without_a_target_or_a_movable_part_it_says_why_it_cannot_be_asked)
{
  Aeroplane *bare = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
  g_autoptr (Aeroplane) untold = with_battery (bare, 27, 90, 60, 120);
  g_autoptr (Figures) none = figures_once (untold);
  Arranging *arranging = NULL;

  ck_assert_int_eq (arranging_new (none, NULL, &arranging), ARRANGING_NO_TARGET);
  g_autoptr (Aeroplane) racing = racer ();
  g_autoptr (Aeroplane) still = aeroplane_without (racing, &aeroplane_part_by_id (racing, "battery")->piece);
  g_autoptr (Figures) figures = figures_once (still);
  ck_assert_int_eq (arranging_new (figures, NULL, &arranging), ARRANGING_NOTHING_MOVES);
  ck_assert_ptr_null (arranging);
  ck_assert_ptr_nonnull (arranging_why_text (ARRANGING_NOTHING_MOVES));
}
END_TEST

/* By hand: 80 mm straight, 60 across, so 100; in a wing along that to the centre line first, so 140; the loop of 10 besides, 40 more where
 * the wing comes off; the shortest extension that helps. */
START_TEST (a_lead_needs_its_route_with_slack_and_is_lengthened_from_what_is_sold)
{
  const struct { const char *of; double length, route, needed, missing, extension; } cases[] = {
    { NULL, 130, 100, 122, 0, 0 }, { NULL, 100, 100, 122, 22, 100 }, { "wing", 50, 140, 206.8, 156.8, 200 },
    { NULL, NAN, 100, 122, NAN, NAN }, { NULL, 1, 100, 122, 121, 150 }, { "wing", 1, 140, 206.8, 205.8, 300 } };
  Part *servo = part_new ("servo", "servo"), *receiver = part_new ("receiver", "receiver");

  servo->x = 80;
  servo->y = 60;
  servo->of = g_strdup (cases[_i].of);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (with_piece (made, servo), receiver),
                                                lead_of ("servo", "receiver", cases[_i].length));
  const LeadNeed need = lead_need_of (aeroplane, aeroplane_lead (aeroplane, 0), LEG_FROM);

  ck_assert_double_eq_tol (need.route, cases[_i].route, 1e-9);
  ck_assert_double_eq_tol (need.needed, cases[_i].needed, 1e-9);
  ck_assert (isnan (cases[_i].missing) ? isnan (need.missing) : fabs (need.missing - cases[_i].missing) < 1e-9);
  ck_assert (isnan (cases[_i].extension) ? isnan (need.extension) : need.extension == cases[_i].extension);
}
END_TEST

/* The battery's bays and rail, and the sentence that says why it is nowhere. */
static char *
contradiction_of (const char *bays, double rail_from, double rail_to, double length)
{
  g_autoptr (Aeroplane) made = with_bays ();
  const Part *part = aeroplane_part_by_id (made, "battery");
  Part *next = (Part *) piece_dup (&part->piece);

  g_free (next->bays);
  next->bays = g_strdup (bays);
  next->length = length;
  next->has_rail = true;
  next->rail_from = rail_from;
  next->rail_to = rail_to;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &part->piece, &next->piece);
  Asked asked = asked_of (aeroplane);
  char *text = arranging_limit_text (asked.arranging, &asked.answer.limits[0], metric);

  ck_assert_int_eq (asked.answer.found.status, ARRANGE_IMPOSSIBLE);
  asked_clear (&asked);
  return text;
}

START_TEST (a_part_without_a_place_is_told_whether_bay_rail_or_size_is_to_blame)
{
  g_autofree char *gone = contradiction_of ("attic cellar", 0, 400, 55), *away = contradiction_of ("nose", 300, 400, 55);
  g_autofree char *large = contradiction_of ("nose", 0, 400, 155);

  ck_assert_ptr_nonnull (strstr (gone, "None of the bays in which “Battery” may be is there"));
  ck_assert_ptr_nonnull (strstr (away, "The rail of “Battery” leads to no place in its bays"));
  ck_assert_ptr_nonnull (strstr (large, "“Battery” fits in none of its bays"));
}
END_TEST

START_TEST (a_finding_names_a_part_whose_bays_are_all_gone)
{
  g_autoptr (Aeroplane) made = with_bays ();
  g_autoptr (Aeroplane) aeroplane = change_named_place_removed (made, "body", 2, "F3");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  size_t told = 0;

  for (guint i = 0; i < figures->notes->len; i++)
    told += strstr (((const Note *) g_ptr_array_index (figures->notes, i))->text, "None of the bays") != NULL;
  ck_assert_uint_eq (told, 1);        /* the receiver, in the cabin alone; the others have the nose yet */
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("arranging");

  tcase_add_test (tests, one_part_on_a_rail_goes_where_the_figures_say_it_must_be);
  tcase_add_test (tests, in_bays_parts_stand_apart_within_them_and_the_aeroplane_balances);
  tcase_add_test (tests, an_arrangement_that_needs_ballast_has_it_aboard);
  tcase_add_test (tests, ballast_of_an_arrangement_is_a_block_where_least_of_it_is_needed_and_it_has_room);
  tcase_add_test (tests, what_holds_a_battery_goes_with_it);
  tcase_add_test (tests, parts_of_a_group_are_arranged_as_one);
  tcase_add_test (tests, a_group_stays_where_one_of_it_is_to_stay);
  tcase_add_test (tests, a_group_without_a_place_in_common_is_named);
  tcase_add_test (tests, a_lead_holds_its_ends_together_slack_counted);
  tcase_add_test (tests, a_lead_that_cannot_reach_is_named_with_its_length);
  tcase_add_test (tests, a_part_too_large_for_its_bays_is_named);
  tcase_add_test (tests, without_a_target_or_a_movable_part_it_says_why_it_cannot_be_asked);
  tcase_add_loop_test (tests, a_lead_needs_its_route_with_slack_and_is_lengthened_from_what_is_sold, 0, 6);
  tcase_add_test (tests, a_part_without_a_place_is_told_whether_bay_rail_or_size_is_to_blame);
  tcase_add_test (tests, a_finding_names_a_part_whose_bays_are_all_gone);
  return run_suite (suite_create ("arranging"), tests);
}
