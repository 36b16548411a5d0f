#include <check.h>
#include <math.h>
#include "document/changes.h"
#include "document/part-box.h"
#include "figures/body-profile.h"
#include "figures/places-memo.h"
#include "figures/room-refusal.h"
#include "figures/wing-depth.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Where a part may be, in a body that is worked out by hand: 40 mm wide and 30 high to x = 200, then half as wide and as high at 300. No
 * published source but where one stands. */

static const char *const FORMERS[] = { "F1", "F2", "F3" };
static const double FORMER_X[] = { 20, 120, 280 };

static Outline *
run_through (const Point places[], size_t count)
{
  Segment segments[8];
  Outline *outline;

  for (size_t i = 1; i < count; i++)
    segments[i - 1] = segment_line (places[i]);
  ck_assert_int_eq (outline_new (places[0], segments, count - 1, NULL, &outline), CORE_OK);
  return outline;
}

static Body *
box_body (void)
{
  const Point above[] = { { 0, 0 }, { 0, 20 }, { 200, 20 }, { 300, 10 }, { 300, 0 } };
  const Point beside[] = { { 0, 0 }, { 0, 15 }, { 200, 15 }, { 300, 7.5 }, { 300, -7.5 }, { 200, -15 }, { 0, -15 } };
  Body *body = body_new ("body");

  body->outline = run_through (above, G_N_ELEMENTS (above));
  body->side_outline = run_through (beside, G_N_ELEMENTS (beside));
  body->skin = 2;
  body->former_thickness = 0;
  body->former_count = G_N_ELEMENTS (FORMERS);
  body->formers = g_new (NamedPlace, body->former_count);
  for (size_t i = 0; i < body->former_count; i++)
    body->formers[i] = (NamedPlace) { g_strdup (FORMERS[i]), FORMER_X[i] };
  return body;
}

static Aeroplane *
boxy (void)
{
  Aeroplane *made = with_piece (aeroplane_new (), box_body ());

  made = with_piece (made, bay_new ("front", "F1", "F2"));
  made = with_piece (made, bay_new ("rear", "F3", "F2"));
  return with_surface (made, "wing", ROLE_WING, rectangle (100, 600, 100));
}

/* 40 mm long, 30 wide, 20 high, standing at 60. */
static Part *
pack (const char *bays)
{
  Part *part = part_new ("pack", "battery");

  part->mass = 27;
  part->x = 60;
  part->length = 40;
  part->width = 30;
  part->height = 20;
  part->bays = g_strdup (bays);
  return part;
}

static void
assert_places (const PartPlaces *places, const char *room, PartPlaces wanted)
{
  ck_assert_str_eq (places->room ? places->room->id : "", room);
  ck_assert_double_eq_tol (places->x_from, wanted.x_from, 0.51);
  ck_assert_double_eq_tol (places->x_to, wanted.x_to, 0.51);
  ck_assert_double_eq_tol (places->y_from, wanted.y_from, 0.06);
  ck_assert_double_eq_tol (places->y_to, wanted.y_to, 0.06);
  ck_assert_double_eq_tol (places->z_from, wanted.z_from, 0.06);
  ck_assert_double_eq_tol (places->z_to, wanted.z_to, 0.06);
}

static PartPlaces
place (GArray *places, guint i)
{
  ck_assert_uint_gt (places->len, i);
  return g_array_index (places, PartPlaces, i);
}

START_TEST (in_a_bay_a_part_may_be_wherever_its_box_is_clear_of_formers_and_walls)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), pack ("front"));
  g_autoptr (GArray) places = part_places (aeroplane, aeroplane_part (aeroplane, 0));
  const PartPlaces found = place (places, 0);

  ck_assert_uint_eq (places->len, 1);
  assert_places (&found, "front", (PartPlaces) { NULL, 40, 100, -3, 3, -3, 3 });
}
END_TEST

/* Of the wing's chord a fifth lies in the bay, to where it is 4.782 mm thick to either side of the middle: Abbott and von Doenhoff, Theory of Wing
 * Sections, appendix I, section 0010. Of 26 mm in height that leaves 8.2 above it and as much beneath. */
START_TEST (over_a_wing_that_passes_through_the_body_a_part_is_above_it_or_beneath_it)
{
  Part *low = pack ("front");
  low->height = 7;
  g_autoptr (Aeroplane) made = with_piece (boxy (), low);
  Surface *wing = (Surface *) piece_dup (&aeroplane_reference_wing (made)->piece);
  wing->thickness = 10;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &aeroplane_reference_wing (made)->piece, &wing->piece);
  g_autoptr (GArray) places = part_places (aeroplane, low);
  const PartPlaces above = place (places, 0), beneath = place (places, 1);

  ck_assert_uint_eq (places->len, 2);
  assert_places (&above, "front", (PartPlaces) { NULL, 40, 100, -3, 3, 8.282, 9.5 });
  assert_places (&beneath, "front", (PartPlaces) { NULL, 40, 100, -3, 3, -9.5, -8.282 });
}
END_TEST

/* Its after end needs 17 mm of half width, walls counted, which ends at x = 230; and 12 mm of half height, which goes on to 240. */
static void
refused (const Part *changed, const char *room, const char *words)
{
  g_autoptr (Aeroplane) made = boxy ();
  g_autofree char *refusal = room_refusal (made, changed, room, (Units) { LENGTH_MM, MASS_G });

  ck_assert_pstr_eq (refusal, words);
}

/* Between F1 and F2 there are 100 mm; 36 mm are clear across, 26 in height; the wing's chord is 100 mm, and it ends at 300. */
START_TEST (a_room_that_is_none_for_a_part_is_told_with_what_is_wrong)
{
  Part *part = pack (NULL);

  refused (part, "front", NULL);
  refused (part, "wing", NULL);
  part->has_rail = true;
  part->rail_from = part->rail_to = 200;
  refused (part, "front", "the part's rail does not lead there");
  part->has_rail = false;
  part->width = 37;
  refused (part, "front", "too narrow or too low for the part");
  part->length = 101;
  refused (part, "front", "too short: 100\u00a0mm, the part is 101\u00a0mm long");
  refused (part, "wing", "too short: 100\u00a0mm, the part is 101\u00a0mm long");
  part->y = 310;
  refused (part, "wing", "does not reach to where the part stands");
  piece_unref (&part->piece);
}
END_TEST

START_TEST (where_the_body_tapers_a_part_goes_aft_only_as_far_as_it_fits)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), pack ("rear"));
  g_autoptr (GArray) places = part_places (aeroplane, aeroplane_part (aeroplane, 0));
  const PartPlaces found = place (places, 0);

  assert_places (&found, "rear", (PartPlaces) { NULL, 140, 210, 0, 0, -0.75, 0.75 });
}
END_TEST

START_TEST (a_part_with_two_bays_has_places_in_both_and_its_rail_bounds_them)
{
  Part *part = pack ("front  rear");
  part->has_rail = true;
  part->rail_from = 90;
  part->rail_to = 150;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), part);
  g_autoptr (GArray) places = part_places (aeroplane, part);
  const PartPlaces front = place (places, 0), rear = place (places, 1);

  ck_assert_uint_eq (places->len, 2);
  ck_assert_double_eq (front.x_from, 90);
  ck_assert_double_eq_tol (front.x_to, 100, 0.51);
  ck_assert_double_eq_tol (rear.x_from, 140, 0.51);
  ck_assert_double_eq (rear.x_to, 150);
}
END_TEST

START_TEST (too_wide_too_high_or_too_long_it_has_none)
{
  const struct { double length, width, height; } boxes[] = { { 40, 37, 20 }, { 40, 30, 27 }, { 101, 30, 20 } };
  Part *part = pack ("front");
  part->length = boxes[_i].length;
  part->width = boxes[_i].width;
  part->height = boxes[_i].height;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), part);
  g_autoptr (GArray) places = part_places (aeroplane, part);

  ck_assert_uint_eq (places->len, 0);
}
END_TEST

/* 30 mm long and 40 wide it is too wide; turned by a quarter it is the pack of the first test. */
START_TEST (turned_by_a_quarter_a_part_fits_by_its_other_side)
{
  Part *part = pack ("front");
  part->length = 30;
  part->width = 40;
  part->turn = -90;
  g_autoptr (Aeroplane) aeroplane = with_piece (boxy (), part);
  g_autoptr (GArray) places = part_places (aeroplane, part);
  const PartPlaces found = place (places, 0);

  assert_places (&found, "front", (PartPlaces) { NULL, 40, 100, -3, 3, -3, 3 });
}
END_TEST

/* A square of 20 by 10 turned by 30 degrees about 60, -10: textbook trigonometry, its forward end to port. */
START_TEST (a_turned_box_has_its_corners_where_the_turn_puts_them)
{
  Part *part = pack (NULL);
  Point corners[4];

  part->length = 20;
  part->width = 10;
  part->y = -10;
  part->turn = 30;
  part_corners (part, corners);
  ck_assert_double_eq_tol (corners[0].x, 60 - 10 * sqrt (0.75) + 2.5, 1e-9);
  ck_assert_double_eq_tol (corners[0].y, -10 - 5 - 5 * sqrt (0.75), 1e-9);
  ck_assert_double_eq_tol (part_extent (part).x, 20 * sqrt (0.75) + 5, 1e-9);
  piece_unref (&part->piece);
}
END_TEST

START_TEST (with_a_rail_alone_it_slides_and_with_neither_it_stands)
{
  Part *slides = pack (NULL), *stands = pack (NULL);
  slides->has_rail = true;
  slides->rail_from = 30;
  slides->rail_to = 150;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (boxy (), slides), stands);
  g_autoptr (GArray) along = part_places (aeroplane, slides), there = part_places (aeroplane, stands);
  const PartPlaces rail = place (along, 0), still = place (there, 0);

  assert_places (&rail, "", (PartPlaces) { NULL, 30, 150, 0, 0, 0, 0 });
  assert_places (&still, "", (PartPlaces) { NULL, 60, 60, 0, 0, 0, 0 });
  ck_assert (part_is_movable (slides) && !part_is_movable (stands));
}
END_TEST

START_TEST (a_bay_without_one_of_its_formers_is_none)
{
  Aeroplane *made = with_piece (boxy (), bay_new ("lost", "F1", "F9"));
  g_autoptr (Aeroplane) aeroplane = with_piece (made, pack ("lost nowhere"));
  g_autoptr (GArray) places = part_places (aeroplane, aeroplane_part (aeroplane, 0));

  ck_assert_uint_eq (places->len, 0);
}
END_TEST

/* The sides rise by half a millimetre a millimetre, everywhere 30 mm high. */
START_TEST (in_a_body_that_rises_the_height_goes_with_the_place)
{
  const Point beside[] = { { 0, 0 }, { 0, 15 }, { 300, 165 }, { 300, 135 }, { 0, -15 } };
  Body *body = box_body ();
  outline_unref (body->side_outline);
  body->side_outline = run_through (beside, G_N_ELEMENTS (beside));
  Part *part = pack ("front");
  part->length = 10;
  part->height = 10;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (with_piece (aeroplane_new (), body), bay_new ("front", "F1", "F2")), part);
  g_autoptr (GArray) places = part_places (aeroplane, part);

  ck_assert_uint_gt (places->len, 1);
  ck_assert_double_eq_tol (place (places, 0).x_from, 25, 0.51);
  ck_assert_double_eq_tol (place (places, places->len - 1).x_to, 115, 0.51);
  for (guint i = 0; i < places->len; i++)
    {
      const PartPlaces at = place (places, i);
      ck_assert_double_ge (at.z_from - 5, -15 + (at.x_to + 5) / 2);
      ck_assert_double_le (at.z_to + 5, 15 + (at.x_from - 5) / 2);
    }
}
END_TEST

/* Ordinates of the four-digit section 10 % thick, at 5, 10, 30 and 60 % of the chord: Abbott and von Doenhoff, Theory of Wing Sections,
 * appendix I, thickness forms (from memory). */
START_TEST (a_wing_is_as_deep_as_its_section)
{
  const struct { double share, half; } table[] = { { 5, 2.962 }, { 10, 3.902 }, { 30, 5.002 }, { 60, 3.803 } };
  Surface *wing = surface_new ("w", ROLE_WING, rectangle (100, 600, 100));

  wing->thickness = 10;
  ck_assert_double_eq_tol (wing_depth (wing, -120, 100 + table[_i].share), 2 * table[_i].half, 0.04);
  ck_assert_double_eq (wing_depth (wing, 120, 99), 0);
  ck_assert_double_nan (wing_depth (wing, 301, 130));
  wing->thickness = NAN;
  ck_assert_double_nan (wing_depth (wing, 120, 130));
  piece_unref (&wing->piece);
}
END_TEST

START_TEST (in_a_wing_a_servo_may_be_where_it_is_as_deep_as_the_servo_is_high)
{
  Part *servo = part_new ("servo", "servo");
  servo->x = 130;
  servo->y = -150;
  servo->length = 20;
  servo->width = servo->height = 9;
  servo->bays = g_strdup ("wing");
  g_autoptr (Aeroplane) made = with_piece (boxy (), servo);
  Surface *wing = (Surface *) piece_dup (&aeroplane_reference_wing (made)->piece);
  wing->thickness = 10;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &aeroplane_reference_wing (made)->piece, &wing->piece);
  g_autoptr (GArray) places = part_places (aeroplane, servo);
  const PartPlaces found = place (places, 0);

  ck_assert_double_ge (wing_depth (wing, 150, found.x_from - 10), 9);
  ck_assert_double_ge (wing_depth (wing, 150, found.x_to + 10), 9);
  ck_assert_double_lt (wing_depth (wing, 150, found.x_from - 10.6), 9);
  ck_assert_double_lt (wing_depth (wing, 150, found.x_to + 10.6), 9);
  ck_assert_double_eq (found.y_from, -150);
}
END_TEST

/* A fin of 120 mm by 100, its leading edge at 400, its foot at z 20. A servo 9 mm wide finds room at its own height, in the middle plane,
 * where the section is 9 mm thick; with its lower end below the foot, above the tip or thicker than the fin it finds none. */
START_TEST (in_a_fin_a_part_stands_upright_at_its_height)
{
  static const struct { double z, width; bool found; } rows[] = { { 80, 9, true }, { 24, 9, false }, { 139, 9, false }, { 80, 13, false }, { -80, 9, false } };
  Surface *fin = surface_new ("fin", ROLE_FIN, polygon_from ((Point[]) { { 400, 0 }, { 400, 120 }, { 500, 120 }, { 500, 0 } }, 4));
  Part *servo = part_new ("servo", "servo");

  fin->thickness = 12;
  fin->z = 20;
  servo->x = 420, servo->y = 30, servo->z = rows[_i].z;
  servo->length = 20, servo->width = rows[_i].width, servo->height = 10;
  servo->bays = g_strdup ("fin");
  g_autoptr (Aeroplane) made = with_piece (with_piece (boxy (), fin), servo);
  g_autoptr (GArray) places = part_places (made, servo);
  ck_assert_uint_eq (places->len, rows[_i].found);
  if (!rows[_i].found)
    return;
  const PartPlaces found = place (places, 0);
  ck_assert_double_eq (found.y_from, 0);
  ck_assert_double_eq (found.y_to, 0);
  ck_assert_double_eq (found.z_from, 80);
  ck_assert_double_ge (wing_depth (fin, 60, found.x_from - 10), 9);
  ck_assert_double_lt (wing_depth (fin, 60, found.x_from - 10.6), 9);
}
END_TEST

/* Nine kilometres of chord: as far as a document goes. The search ends all the same, and finds where the wing is deep. */
START_TEST (in_a_wing_of_any_chord_the_places_are_found)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (0, 600, 9e6));
  Part *servo = pack ("wing");

  wing->thickness = 10;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (aeroplane_new (), wing), servo);
  g_autoptr (GArray) places = part_places (aeroplane, servo);

  ck_assert_double_le (place (places, 0).x_from, 3e6);
  ck_assert_double_ge (place (places, 0).x_to, 3e6);
}
END_TEST

static double
last_x (PlacesMemo *memo, const Aeroplane *aeroplane, size_t part)
{
  const GArray *places = places_memo_of (memo, aeroplane, aeroplane_part (aeroplane, part));

  return g_array_index (places, PartPlaces, places->len - 1).x_to;
}

static Aeroplane *
two_packs (void)
{
  Part *other = pack ("front");

  g_free (other->piece.id);
  other->piece.id = g_strdup ("other");
  return with_piece (with_piece (boxy (), pack ("front")), other);
}

START_TEST (while_a_part_is_moved_the_places_of_the_others_are_remembered)
{
  g_autoptr (Aeroplane) aeroplane = two_packs ();
  g_autoptr (Aeroplane) moved = change_part_place (aeroplane, "other", 90, 0, 0);
  g_autoptr (PlacesMemo) memo = places_memo_new ();
  const GArray *before, *of_other;

  places_memo_turn (memo, aeroplane);
  before = places_memo_of (memo, aeroplane, aeroplane_part (aeroplane, 0));
  of_other = places_memo_of (memo, aeroplane, aeroplane_part (aeroplane, 1));
  places_memo_turn (memo, moved);
  ck_assert_ptr_eq (places_memo_of (memo, moved, aeroplane_part (moved, 0)), before);
  ck_assert_ptr_ne (places_memo_of (memo, moved, aeroplane_part (moved, 1)), of_other);
}
END_TEST

/* The second former goes 30 mm aft, and with it the end of the bay. */
START_TEST (a_body_that_changes_is_looked_into_again)
{
  g_autoptr (Aeroplane) aeroplane = two_packs ();
  g_autoptr (PlacesMemo) memo = places_memo_new ();
  Body *longer = (Body *) piece_dup (&aeroplane_body (aeroplane, 0)->piece);

  longer->formers[1].place += 30;
  g_autoptr (Aeroplane) changed = aeroplane_with_replaced (aeroplane, &aeroplane_body (aeroplane, 0)->piece, &longer->piece);
  places_memo_turn (memo, aeroplane);
  ck_assert_double_eq (last_x (memo, aeroplane, 0), 100);
  places_memo_turn (memo, changed);
  ck_assert_double_eq (last_x (memo, changed, 0), 130);
}
END_TEST

/* Half a former of 2 mm at each end and 1.5 mm of skin all round, unless the body says otherwise. Common practice, no source. */
START_TEST (formers_and_skin_take_from_the_room_in_a_bay_as_thick_as_they_are)
{
  const struct { double skin, former, half, from, to; } walls[] = {
    { NAN, NAN, 18.5, 21, 119 }, { 3, NAN, 17, 21, 119 }, { NAN, 6, 18.5, 23, 117 }, { 0, 0, 20, 20, 120 } };
  Body *body = box_body ();
  Part *part = pack ("front");

  body->skin = walls[_i].skin;
  body->former_thickness = walls[_i].former;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (with_piece (aeroplane_new (), body), bay_new ("front", "F1", "F2")), part);
  g_autoptr (GArray) places = part_places (aeroplane, part);

  ck_assert_uint_eq (places->len, 1);
  const PartPlaces at = place (places, 0);
  ck_assert_double_eq_tol (at.x_from - part->length / 2, walls[_i].from, 1e-9);
  ck_assert_double_eq_tol (at.x_to + part->length / 2, walls[_i].to, 1e-9);
  ck_assert_double_eq_tol (at.y_to + part->width / 2, walls[_i].half, 1e-9);
  ck_assert_double_eq_tol (at.z_to + part->height / 2, walls[_i].half - 5, 1e-9);
}
END_TEST

START_TEST (formers_as_thick_as_a_bay_is_long_leave_none)
{
  Body *body = box_body ();

  body->former_thickness = 100;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (aeroplane_new (), body), bay_new ("front", "F1", "F2"));
  const Body *of;
  double from, to;

  ck_assert (bay_reach (aeroplane, (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, 0), &of, &from, &to));
  ck_assert (!bay_inside (aeroplane, (const Bay *) aeroplane_nth (aeroplane, PIECE_BAY, 0), &of, &from, &to));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("places");

  tcase_add_loop_test (tests, formers_and_skin_take_from_the_room_in_a_bay_as_thick_as_they_are, 0, 4);
  tcase_add_test (tests, formers_as_thick_as_a_bay_is_long_leave_none);
  tcase_add_test (tests, in_a_bay_a_part_may_be_wherever_its_box_is_clear_of_formers_and_walls);
  tcase_add_test (tests, over_a_wing_that_passes_through_the_body_a_part_is_above_it_or_beneath_it);
  tcase_add_test (tests, a_room_that_is_none_for_a_part_is_told_with_what_is_wrong);
  tcase_add_test (tests, where_the_body_tapers_a_part_goes_aft_only_as_far_as_it_fits);
  tcase_add_test (tests, a_part_with_two_bays_has_places_in_both_and_its_rail_bounds_them);
  tcase_add_loop_test (tests, too_wide_too_high_or_too_long_it_has_none, 0, 3);
  tcase_add_test (tests, turned_by_a_quarter_a_part_fits_by_its_other_side);
  tcase_add_test (tests, a_turned_box_has_its_corners_where_the_turn_puts_them);
  tcase_add_test (tests, with_a_rail_alone_it_slides_and_with_neither_it_stands);
  tcase_add_test (tests, a_bay_without_one_of_its_formers_is_none);
  tcase_add_test (tests, in_a_body_that_rises_the_height_goes_with_the_place);
  tcase_add_loop_test (tests, a_wing_is_as_deep_as_its_section, 0, 4);
  tcase_add_test (tests, in_a_wing_a_servo_may_be_where_it_is_as_deep_as_the_servo_is_high);
  tcase_add_loop_test (tests, in_a_fin_a_part_stands_upright_at_its_height, 0, 5);
  tcase_add_test (tests, in_a_wing_of_any_chord_the_places_are_found);
  tcase_add_test (tests, while_a_part_is_moved_the_places_of_the_others_are_remembered);
  tcase_add_test (tests, a_body_that_changes_is_looked_into_again);
  return run_suite (suite_create ("part places"), tests);
}
