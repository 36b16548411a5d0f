#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/ballast-places.h"
#include "figures/free-section.h"
#include "figures/room-faults.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* n = W (x − x_t) / (x_t − x_n): FAA-H-8083-1, Weight and Balance Handbook, chapter on adding or removing weight. Lead 11.34 g/cm³: CRC
 * Handbook of Chemistry and Physics. */
static const double lead = 11.34e-3;
static const Units metric = { LENGTH_MM, MASS_G };

/* 60 mm wide and 40 high from 0 to 600, inside 56 by 36; formers at 100, 200 and 500, a bay between each two. */
static Aeroplane *
boxy (void)
{
  const Point above[] = { { 0, 0 }, { 0, 30 }, { 600, 30 }, { 600, 0 } };
  const Point beside[] = { { 0, -20 }, { 0, 20 }, { 600, 20 }, { 600, -20 } };
  Body *body = body_new ("body");
  Segment segments[3];

  for (int i = 1; i < 4; i++)
    segments[i - 1] = segment_line (above[i]);
  ck_assert_int_eq (outline_new (above[0], segments, 3, NULL, &body->outline), CORE_OK);
  for (int i = 1; i < 4; i++)
    segments[i - 1] = segment_line (beside[i]);
  ck_assert_int_eq (outline_new (beside[0], segments, 3, NULL, &body->side_outline), CORE_OK);
  body->skin = 2;
  body->former_thickness = 0;
  body->former_count = 3;
  body->formers = g_new (NamedPlace, 3);
  for (int i = 0; i < 3; i++)
    body->formers[i] = (NamedPlace) { g_strdup_printf ("F%d", i + 1), (double[]) { 100, 200, 500 }[i] };
  return with_piece (with_piece (with_piece (aeroplane_new (), body), bay_new ("tank", "F1", "F2")), bay_new ("cabin", "F2", "F3"));
}

static Part *
box_part (const char *id, const char *class, double x, double length, double width, double height)
{
  Part *part = part_new (id, class);

  part->mass = 10;
  part->x = x;
  part->length = length;
  part->width = width;
  part->height = height;
  return part;
}

static const BallastPlace *
nth (const GArray *places, guint i)
{
  ck_assert_uint_lt (i, places->len);
  return &g_array_index (places, BallastPlace, i);
}

/* A spinner of 12 mm within the nose: whatever of it is aboard comes round. */
START_TEST (no_ballast_goes_where_a_propeller_or_spinner_turns)
{
  static const char *const turning[] = { "propeller", "spinner" };
  Part *part = box_part ("turns", turning[_i], 6, 12, 50, 8);
  const BallastNeed need = { 400, 260, 250 };

  part->aboard = true;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), part);
  g_autoptr (GArray) places = ballast_places (aeroplane, need);
  for (guint i = 0; i < places->len; i++)
    if (nth (places, i)->has_room)
      ck_assert_double_ge (nth (places, i)->x_mm - nth (places, i)->length_mm / 2, 12 + 2);
  ck_assert_int_eq (nth (places, 0)->kind, BALLAST_NOSE_END);
  ck_assert (nth (places, 0)->has_room);
}
END_TEST

/* A spinner up to 12 mm, a motor from 30 mm on that leaves room all round: between them nobody gets in. */
START_TEST (no_ballast_goes_between_a_spinner_and_the_motor_behind_it)
{
  Part *spinner = box_part ("spinner", "spinner", 6, 12, 30, 30), *motor = box_part ("motor", "motor", 40, 20, 20, 20);
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (boxy (), spinner), motor);
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 400, 260, 250 });

  ck_assert_int_eq (nth (places, 0)->kind, BALLAST_NOSE_END);
  ck_assert_double_ge (nth (places, 0)->x_mm - nth (places, 0)->length_mm / 2, 30);
  for (guint i = 0; i < places->len; i++)
    ck_assert (!nth (places, i)->has_room || nth (places, i)->length_mm >= 4);
}
END_TEST

/* A pack to port leaves 30 by 36 mm to starboard, and over it 56 by 16: a little further aft, and so a little heavier, on the centre line. */
START_TEST (a_block_goes_on_the_centre_line_where_that_costs_little)
{
  Part *pack = box_part ("pack", "other", 50, 100, 24, 18);

  pack->y = -14;
  pack->z = -8;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), pack);
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 1000, 260, 250 });
  const BallastPlace *at = nth (places, 0);
  g_autofree char *block = ballast_place_block (at, metric), *length = units_length (metric, at->length_mm);

  ck_assert_int_eq (at->kind, BALLAST_NOSE_END);
  ck_assert_double_eq_tol (at->y_mm, 0, 1e-9);
  ck_assert (strstr (block, length) != NULL && strstr (block, "off the centre line") == NULL);
}
END_TEST

/* Where all but a strip of 20 mm to starboard is filled. */
START_TEST (a_block_off_the_centre_line_says_so_and_keeps_as_near_to_it_as_it_can)
{
  Part *filling = box_part ("filling", "other", 49, 98, 34, 40);

  filling->y = -11;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), filling);
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 400, 260, 250 });
  const BallastPlace *at = nth (places, 0);
  g_autofree char *block = ballast_place_block (at, metric), *size = ballast_place_size (at, metric);

  ck_assert_int_eq (at->kind, BALLAST_NOSE_END);
  ck_assert (g_str_has_suffix (size, "to\u00a0starboard"));
  ck_assert_double_eq_tol (at->y_mm - at->width_mm / 2, 7, 1e-9);      /* the filling's edge and 1 mm */
  ck_assert_ptr_nonnull (strstr (block, "off the centre line: "));
  ck_assert_ptr_nonnull (strstr (block, "to\u00a0starboard"));
}
END_TEST

/* The first 100 mm are full, and no bay is given. */
START_TEST (behind_a_full_nose_it_goes_past_the_next_former)
{
  Aeroplane *made = with_piece (boxy (), box_part ("filling", "other", 50, 100, 56, 36));

  for (int i = 0; i < 2; i++)
    {
      Aeroplane *less = aeroplane_without (made, aeroplane_find (made, (const char *[]) { "tank", "cabin" }[i]));
      aeroplane_unref (made);
      made = less;
    }
  g_autoptr (Aeroplane) aeroplane = made;
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 400, 260, 250 });
  g_autofree char *name = ballast_place_name (nth (places, 0)), *phrase = ballast_place_phrase (nth (places, 0));

  ck_assert_uint_eq (places->len, 1);
  ck_assert (nth (places, 0)->has_room);
  ck_assert_double_ge (nth (places, 0)->x_mm - nth (places, 0)->length_mm / 2, 100);
  ck_assert_str_eq (name, "Body behind F1");
  ck_assert_str_eq (phrase, "in the body behind F1");
}
END_TEST

START_TEST (each_place_has_the_grams_that_bring_the_balance_back)
{
  const struct { double x, target; } needs[] = { { 260, 250 }, { 300, 250 }, { 290, 300 }, { 250, 340 } };
  g_autoptr (Aeroplane) aeroplane = boxy ();
  const BallastNeed need = { 400, needs[_i].x, needs[_i].target };
  g_autoptr (GArray) places = ballast_places (aeroplane, need);

  ck_assert_uint_ge (places->len, 2);
  for (guint i = 0; i < places->len; i++)
    {
      const BallastPlace *at = nth (places, i);

      ck_assert (at->has_room);
      ck_assert_double_eq_tol (at->mass_g, need.mass_g * (need.x_mm - need.target_x_mm) / (need.target_x_mm - at->x_mm), 1e-9);
      ck_assert_double_eq_tol (lead * at->length_mm * at->width_mm * at->height_mm, at->mass_g, 1e-9);
      ck_assert_double_ge (at->holds_g, at->mass_g);
      ck_assert (i == 0 || at->mass_g >= nth (places, i - 1)->mass_g);
    }
}
END_TEST

START_TEST (a_heavy_tail_has_it_at_fore_ends_and_a_heavy_nose_at_aft_ends)
{
  g_autoptr (Aeroplane) aeroplane = boxy ();
  g_autoptr (GArray) fore = ballast_places (aeroplane, (BallastNeed) { 400, 260, 250 });
  g_autoptr (GArray) aft = ballast_places (aeroplane, (BallastNeed) { 400, 240, 250 });

  ck_assert_uint_eq (fore->len, 3);
  ck_assert_int_eq (nth (fore, 0)->kind, BALLAST_NOSE_END);
  ck_assert_str_eq (nth (fore, 1)->bay->piece.id, "tank");
  ck_assert_int_eq (nth (fore, 1)->kind, BALLAST_BAY_FORE);
  ck_assert_str_eq (nth (fore, 2)->bay->piece.id, "cabin");
  ck_assert_uint_eq (aft->len, 2);
  ck_assert_int_eq (nth (aft, 0)->kind, BALLAST_TAIL_END);
  ck_assert_int_eq (nth (aft, 1)->kind, BALLAST_BAY_AFT);
  ck_assert_double_gt (nth (aft, 0)->x_mm, 590);
}
END_TEST

/* The nose is filled but for its last 10 mm: more than goes into those is sent to the bay behind. */
START_TEST (a_full_nose_is_passed_over_for_the_next_place_with_room)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), box_part ("tank", "other", 45, 90, 56, 36));
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 4000, 270, 250 });
  const BallastPlace *first = nth (places, 0), *last = nth (places, places->len - 1);
  g_autofree char *told = ballast_place_text (last, metric);

  ck_assert_int_eq (first->kind, BALLAST_BAY_FORE);
  ck_assert_str_eq (first->bay->piece.id, "tank");
  ck_assert_int_eq (last->kind, BALLAST_NOSE_END);
  ck_assert (!last->has_room);
  ck_assert_double_le (last->holds_g, lead * 9 * 56 * 36);
  ck_assert_double_ge (last->holds_g, lead * 8 * 56 * 36);
  ck_assert_ptr_nonnull (strstr (told, "has room for"));
}
END_TEST

/* Left out and far aft it is nobody's concern; thought aboard and in the nose it fills that. */
START_TEST (a_part_thought_elsewhere_stands_in_the_way_there)
{
  Part *pack = box_part ("tank", "other", 350, 90, 56, 36);
  pack->aboard = false;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), pack);
  const BallastNeed need = { 4000, 270, 250 };
  g_autoptr (GArray) now = ballast_places (aeroplane, need), then = ballast_places_beside (aeroplane, need, pack, 45);

  ck_assert_int_eq (nth (now, 0)->kind, BALLAST_NOSE_END);
  ck_assert_int_eq (nth (then, 0)->kind, BALLAST_BAY_FORE);
}
END_TEST

static Part *
part_from (const BallastPlace *at)
{
  Part *part = box_part ("ballast", "ballast", at->x_mm, at->length_mm, at->width_mm, at->height_mm);

  part->y = at->y_mm;
  part->z = at->z_mm;
  return part;
}

START_TEST (the_block_stands_in_nobodys_way_and_within_the_body)
{
  const struct { double x, length, width, height, y, z; } others[] = {
    { 110, 20, 30, 30, -10, 0 }, { 150, 90, 40, 20, 0, -6 }, { 105, 10, 10, 30, 15, 0 }, { 120, 35, 56, 16, 0, 10 } };
  Aeroplane *made = boxy ();

  for (size_t i = 0; i < G_N_ELEMENTS (others); i++)
    {
      g_autofree char *id = g_strdup_printf ("other%zu", i);
      Part *part = box_part (id, "other", others[i].x, others[i].length, others[i].width, others[i].height);

      part->y = others[i].y;
      part->z = others[i].z;
      made = i == (size_t) _i || i == (size_t) _i / 2 ? with_piece (made, part) : (piece_unref (&part->piece), made);
    }
  g_autoptr (Aeroplane) aeroplane = made;
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 1000, 275, 250 });
  RoomProfiles profiles = { .count = 0 };

  for (guint i = 0; i < places->len && nth (places, i)->has_room; i++)
    {
      g_autoptr (Aeroplane) with = with_piece (aeroplane_ref (aeroplane), part_from (nth (places, i)));

      room_profiles_update (&profiles, with);
      g_autoptr (GArray) faults = room_faults (&profiles, with);
      for (guint k = 0; k < faults->len; k++)
        {
          const RoomFault *fault = &g_array_index (faults, RoomFault, k);
          ck_assert_str_ne (fault->part->piece.id, "ballast");
          ck_assert (!fault->other || strcmp (fault->other->piece.id, "ballast") != 0);
        }
    }
  room_profiles_clear (&profiles);
}
END_TEST

START_TEST (before_the_firewall_it_goes_beside_the_motor_and_its_shaft)
{
  Part *cowl = box_part ("cowl", "cowl", -20, 40, 60, 40), *motor = box_part ("motor", "motor", -14, 20, 24, 24);
  Part *propeller = box_part ("propeller", "propeller", -46, 8, 10, 200);
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (with_piece (boxy (), cowl), motor), propeller);
  g_autoptr (GArray) places = ballast_places (aeroplane, (BallastNeed) { 400, 255, 250 });
  const BallastPlace *at = nth (places, 0);

  ck_assert_int_eq (at->kind, BALLAST_BEFORE_FIREWALL);
  ck_assert (at->has_room);
  ck_assert_double_ge (at->x_mm - at->length_mm / 2, -40);
  ck_assert (fabs (at->y_mm) - at->width_mm / 2 >= 14 - 1e-9 || fabs (at->z_mm) - at->height_mm / 2 >= 14 - 1e-9);
}
END_TEST

START_TEST (where_nothing_is_off_or_known_there_is_no_place)
{
  const BallastNeed needs[] = { { 400, 250, 250 }, { 400, NAN, 250 }, { 400, 250, NAN }, { 0, 260, 250 } };
  g_autoptr (Aeroplane) aeroplane = boxy (), bare = aeroplane_new ();
  g_autoptr (GArray) none = ballast_places (bare, (BallastNeed) { 400, 260, 250 });

  ck_assert_uint_eq (none->len, 0);
  for (size_t i = 0; i < G_N_ELEMENTS (needs); i++)
    {
      g_autoptr (GArray) places = ballast_places (aeroplane, needs[i]);
      ck_assert_uint_eq (places->len, 0);
    }
}
END_TEST

/* By trying every rectangle of whole millimetres. */
static double
largest_tried (Section whole, const Section blocked[], size_t count)
{
  double best = 0;

  for (double y0 = whole.y_from; y0 < whole.y_to; y0++)
    for (double y1 = y0 + 1; y1 <= whole.y_to; y1++)
      for (double z0 = whole.z_from; z0 < whole.z_to; z0++)
        for (double z1 = z0 + 1; z1 <= whole.z_to; z1++)
          {
            bool free = true;
            for (size_t i = 0; i < count && free; i++)
              free = blocked[i].y_to <= y0 || blocked[i].y_from >= y1 || blocked[i].z_to <= z0 || blocked[i].z_from >= z1;
            best = free ? fmax (best, (y1 - y0) * (z1 - z0)) : best;
          }
  return best;
}

START_TEST (the_largest_free_rectangle_is_the_largest_of_all)
{
  const Section whole = { -8, 8, -6, 6 };
  Section blocked[5];

  srand ((unsigned) _i + 1);
  for (size_t i = 0; i < 5; i++)
    {
      const double y = rand () % 20 - 10, z = rand () % 16 - 8;
      blocked[i] = (Section) { y, y + 1 + rand () % 6, z, z + 1 + rand () % 5 };
    }
  for (size_t count = 0; count <= 5; count++)
    ck_assert_double_eq (section_area (section_largest_free (whole, blocked, count)), largest_tried (whole, blocked, count));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("ballast places");

  tcase_add_loop_test (tests, no_ballast_goes_where_a_propeller_or_spinner_turns, 0, 2);
  tcase_add_test (tests, no_ballast_goes_between_a_spinner_and_the_motor_behind_it);
  tcase_add_test (tests, a_block_goes_on_the_centre_line_where_that_costs_little);
  tcase_add_test (tests, a_block_off_the_centre_line_says_so_and_keeps_as_near_to_it_as_it_can);
  tcase_add_test (tests, behind_a_full_nose_it_goes_past_the_next_former);
  tcase_add_loop_test (tests, each_place_has_the_grams_that_bring_the_balance_back, 0, 4);
  tcase_add_test (tests, a_heavy_tail_has_it_at_fore_ends_and_a_heavy_nose_at_aft_ends);
  tcase_add_test (tests, a_full_nose_is_passed_over_for_the_next_place_with_room);
  tcase_add_test (tests, a_part_thought_elsewhere_stands_in_the_way_there);
  tcase_add_loop_test (tests, the_block_stands_in_nobodys_way_and_within_the_body, 0, 8);
  tcase_add_test (tests, before_the_firewall_it_goes_beside_the_motor_and_its_shaft);
  tcase_add_test (tests, where_nothing_is_off_or_known_there_is_no_place);
  tcase_add_loop_test (tests, the_largest_free_rectangle_is_the_largest_of_all, 0, 20);
  return run_suite (suite_create ("ballast places"), tests);
}
