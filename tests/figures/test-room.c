#include <check.h>
#include <math.h>
#include "document/reader.h"
#include "figures/notes.h"
#include "figures/room-faults.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What has no room where it stands, in a body 40 mm wide and 30 high to x = 200, whose walls leave 36 by 26. Worked out by hand; no published
 * source. */

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

/* With the wing so far above the datum. */
static Aeroplane *
boxy_with_wing_at (double z)
{
  const Point above[] = { { 0, 0 }, { 0, 20 }, { 200, 20 }, { 200, 0 } };
  const Point beside[] = { { 0, 0 }, { 0, 15 }, { 200, 15 }, { 200, -15 }, { 0, -15 } };
  Body *body = body_new ("body");
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 600, 100));

  body->outline = run_through (above, G_N_ELEMENTS (above));
  body->side_outline = run_through (beside, G_N_ELEMENTS (beside));
  body->skin = 2;
  wing->thickness = 10;
  wing->z = z;
  return with_piece (with_piece (aeroplane_new (), body), wing);
}

/* The wing stands clear of the body, above it. */
static Aeroplane *
boxy (void)
{
  return boxy_with_wing_at (40);
}

typedef struct { double x, y, z, length, width, height; } Boxed;

static Part *
boxed (const char *id, const char *class_name, Boxed at)
{
  Part *part = part_new (id, class_name);

  part->name = g_strdup (id);
  part->mass = 10;
  part->x = at.x;
  part->y = at.y;
  part->z = at.z;
  part->length = at.length;
  part->width = at.width;
  part->height = at.height;
  return part;
}

/* The one fault about these parts; the aeroplane is taken. */
static RoomFault
only_fault (Aeroplane *takes, const char *words)
{
  g_autoptr (Figures) figures = figures_once (takes);

  ck_assert_uint_eq (figures->room->len, 1);
  const RoomFault fault = g_array_index (figures->room, RoomFault, 0);
  const Note *note = note_with (figures, words);
  ck_assert_ptr_nonnull (note);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert (!note->problem);           /* the figures are sound all the same */
  ck_assert (note_needs_change (note) == (fault.kind != ROOM_MOTOR_OUT));
  ck_assert_ptr_eq (note->piece, fault.lead ? &fault.lead->piece : &fault.part->piece);
  ck_assert_ptr_eq (note->room, &g_array_index (figures->room, RoomFault, 0));
  aeroplane_unref (takes);
  return fault;
}

static void
assert_no_fault (Aeroplane *takes)
{
  g_autoptr (Figures) figures = figures_once (takes);

  ck_assert_uint_eq (figures->room->len, 0);
  aeroplane_unref (takes);
}

static const struct { Boxed at; const char *class_name; RoomFaultKind kind; double lacking; unsigned edges; const char *words; } in_body[] = {
  { { 60, 0, 0, 40, 38, 20 }, "battery", ROOM_TOO_WIDE, 2, EDGE_PORT | EDGE_STARBOARD, "“it” is wider than the body is there" },
  { { 60, 0, 0, 40, 30, 29 }, "battery", ROOM_TOO_HIGH, 3, EDGE_TOP | EDGE_BOTTOM, "“it” is higher than the body is there" },
  { { 60, 8, 0, 40, 30, 20 }, "battery", ROOM_THROUGH_SIDE, 5, EDGE_STARBOARD, "“it” reaches through the side of the body" },
  { { 60, -8, 0, 40, 30, 20 }, "battery", ROOM_THROUGH_SIDE, 5, EDGE_PORT, "“it” reaches through the side of the body" },
  { { 60, 0, 7, 40, 30, 20 }, "battery", ROOM_THROUGH_TOP, 4, EDGE_TOP, "“it” reaches through the top of the body" },
  { { 60, 0, -7, 40, 30, 20 }, "battery", ROOM_THROUGH_FLOOR, 4, EDGE_BOTTOM, "“it” reaches through the bottom of the body" },
  { { 15, 0, 0, 40, 30, 20 }, "battery", ROOM_OUT_OF_NOSE, 5, EDGE_FORE, "“it” sticks out of the nose" },
  { { -40, 0, 0, 40, 30, 20 }, "battery", ROOM_OUT_OF_NOSE, 60, EDGE_FORE, "“it” sticks out of the nose" },
  { { 190, 0, 0, 40, 30, 20 }, "battery", ROOM_OUT_OF_TAIL, 10, EDGE_AFT, "“it” sticks out of the tail" },
};

START_TEST (what_reaches_out_of_the_body_is_named_with_how_far_and_by_which_edge)
{
  const RoomFault fault = only_fault (with_piece (boxy (), boxed ("it", in_body[_i].class_name, in_body[_i].at)), in_body[_i].words);

  ck_assert_int_eq (fault.kind, in_body[_i].kind);
  ck_assert_double_eq_tol (fault.lacking_mm, in_body[_i].lacking, 0.01);
  ck_assert_uint_eq (fault.edges, in_body[_i].edges);
  if (fault.kind == ROOM_TOO_WIDE || fault.kind == ROOM_THROUGH_SIDE)
    ck_assert_double_eq_tol (fault.clear_mm, 36, 0.01);
  else if (fault.kind == ROOM_TOO_HIGH || fault.kind == ROOM_THROUGH_TOP || fault.kind == ROOM_THROUGH_FLOOR)
    ck_assert_double_eq_tol (fault.clear_mm, 26, 0.01);
  else
    ck_assert (isnan (fault.clear_mm));
}
END_TEST

/* Its rail lets its middle go from 50 to 80. */
static const struct { double x, lacking; unsigned edges; const char *words; } railed[] = {
  { 44, 6, EDGE_FORE, "“it” stands ahead of its rail" }, { 91, 11, EDGE_AFT, "“it” stands behind its rail" },
  { 50, 0, 0, NULL }, { 80.4, 0, 0, NULL },
};

START_TEST (what_stands_off_its_rail_is_named_with_how_far_both_ways)
{
  Part *part = boxed ("it", "battery", (Boxed) { railed[_i].x, 0, 0, 40, 30, 20 });

  part->has_rail = true;
  part->rail_from = 50;
  part->rail_to = 80;
  if (!railed[_i].words)
    {
      assert_no_fault (with_piece (boxy (), part));
      return;
    }
  const RoomFault fault = only_fault (with_piece (boxy (), part), railed[_i].words);
  ck_assert_int_eq (fault.kind, ROOM_OFF_RAIL);
  ck_assert_double_eq_tol (fault.lacking_mm, railed[_i].lacking, 1e-9);
  ck_assert_uint_eq (fault.edges, railed[_i].edges);
}
END_TEST

static const struct { Boxed at; const char *class_name; } fitting[] = {
  { { 60, 0, 0, 40, 36, 26 }, "battery" },            /* to the walls */
  { { 60, 0.4, 0, 40, 36, 26 }, "battery" },          /* what nobody measures */
  { { -5, 0, 0, 20, 28, 28 }, "motor" },              /* a motor may stand out of the nose */
  { { -8, 0, 0, 10, 178, 18 }, "propeller" },
  { { 60, 0, 0, 80, 60, 40 }, "canopy" },
  { { 60, 0, -30, 20, 4, 12 }, "other" },             /* a skid below the body stands outside it */
  { { 130, 200, 0, 21, 9, 9 }, "servo" },             /* the wing is 10 mm deep at its deepest, and 9 over 0.18 to 0.46 of its chord */
};

START_TEST (what_fits_or_lies_outside_by_its_nature_is_not_told_of)
{
  assert_no_fault (with_piece (boxy (), boxed ("it", fitting[_i].class_name, fitting[_i].at)));
}
END_TEST

/* A cowl 50 by 50 from 0 to 40; the motor's middle, and whether the cowl goes over all of it. */
static const struct { double x; bool fits; } in_cowl[] = { { 20, true }, { 30, true }, { 40, false } };

START_TEST (in_a_cowl_there_is_the_cowls_room_and_behind_it_the_bodys)
{
  const Boxed motor = { in_cowl[_i].x, 0, 0, 20, 40, 24 }, cowl = { 20, 0, 0, 40, 50, 50 };
  Aeroplane *cowled = with_piece (with_piece (boxy (), boxed ("cowl", "cowl", cowl)), boxed ("it", "motor", motor));

  ck_assert_int_eq (only_fault (with_piece (boxy (), boxed ("it", "motor", motor)), "“it” is wider than the body").kind, ROOM_TOO_WIDE);
  if (in_cowl[_i].fits)
    assert_no_fault (cowled);
  else
    ck_assert_int_eq (only_fault (cowled, "“it” is wider than the body").kind, ROOM_TOO_WIDE);
}
END_TEST

START_TEST (a_part_turned_by_a_quarter_fits_by_its_turned_box)
{
  Part *part = boxed ("it", "battery", (Boxed) { 60, 0, 0, 40, 30, 20 });

  part->turn = 90;
  ck_assert_int_eq (only_fault (with_piece (boxy (), part), "“it” is wider").kind, ROOM_TOO_WIDE);
}
END_TEST

START_TEST (two_parts_in_one_place_are_told_of_once_with_the_edges_that_meet)
{
  Aeroplane *made = with_piece (boxy (), boxed ("first", "battery", (Boxed) { 60, 0, 0, 40, 30, 20 }));
  const RoomFault fault = only_fault (with_piece (made, boxed ("second", "receiver", (Boxed) { 92, 0, 0, 30, 20, 10 })),
                                      "“first” and “second” stand in the same place");

  ck_assert_int_eq (fault.kind, ROOM_OVERLAP);
  ck_assert_double_eq_tol (fault.lacking_mm, 3, 1e-9);
  ck_assert_uint_eq (fault.edges, EDGE_AFT);
  ck_assert_uint_eq (fault.other_edges, EDGE_FORE);
}
END_TEST

START_TEST (one_above_another_behind_another_or_left_out_are_not_in_one_place)
{
  static const Boxed seconds[] = { { 92, 0, 8, 30, 20, 4 }, { 95.2, 0, 0, 30, 20, 10 } };
  Part *left_out = boxed ("second", "receiver", (Boxed) { 70, 0, 0, 30, 20, 10 });

  for (size_t i = 0; i < G_N_ELEMENTS (seconds); i++)
    {
      Aeroplane *made = with_piece (boxy (), boxed ("first", "battery", (Boxed) { 60, 0, -3, 40, 30, 18 }));
      assert_no_fault (with_piece (made, boxed ("second", "receiver", seconds[i])));
    }
  left_out->aboard = false;
  assert_no_fault (with_piece (with_piece (boxy (), boxed ("first", "battery", (Boxed) { 60, 0, 0, 40, 30, 20 })), left_out));
}
END_TEST

/* Two squares of 10 mm, the second by half a right angle: its corner reaches 7.07 mm from its middle. */
START_TEST (boxes_turned_askew_are_apart_where_their_sides_are)
{
  Aeroplane *made = with_piece (boxy (), boxed ("first", "receiver", (Boxed) { 60, 0, 0, 10, 10, 10 }));
  Part *askew = boxed ("second", "receiver", (Boxed) { 69, 9, 0, 10, 10, 10 });
  Part *near = boxed ("second", "receiver", (Boxed) { 67, 7, 0, 10, 10, 10 });

  askew->turn = near->turn = 45;
  aeroplane_ref (made);
  assert_no_fault (with_piece (made, askew));
  ck_assert_int_eq (only_fault (with_piece (made, near), "same place").kind, ROOM_OVERLAP);
}
END_TEST

START_TEST (a_servo_higher_than_the_wing_is_deep_is_told_of_where_it_lies)
{
  const RoomFault deep = only_fault (with_piece (boxy (), boxed ("it", "servo", (Boxed) { 130, 200, 0, 21, 9, 20 })),
                                     "“it” is higher than “wing” is deep there");
  const RoomFault far_aft = only_fault (with_piece (boxy (), boxed ("it", "servo", (Boxed) { 180, 200, 0, 21, 9, 9 })), "deep there");

  ck_assert_int_eq (deep.kind, ROOM_WING_SHALLOW);
  ck_assert_double_gt (deep.lacking_mm, 10);
  ck_assert_double_lt (deep.lacking_mm, 11.5);
  ck_assert_double_gt (far_aft.lacking_mm, 3);
}
END_TEST

/* The wing's middle goes through the body's: 5 mm of it are above the centre line and 5 beneath where it is thickest, at three tenths of its chord, at
 * x = 130. Ordinates: Abbott and von Doenhoff, Theory of Wing Sections, appendix I, section 0010. Of 26 mm, 8 are left above it and 8 beneath. */
static const struct { Boxed at; const char *class_name; RoomFaultKind kind; double lacking, clear; unsigned edges; const char *words; } on_wing[] = {
  { { 130, 0, 5, 30, 20, 6 }, "battery", ROOM_ON_WING, 3, 8, EDGE_BOTTOM, "“it” reaches into “wing”, which passes beneath it there: move it up." },
  { { 130, 0, -5, 30, 20, 6 }, "receiver", ROOM_UNDER_WING, 3, 8, EDGE_TOP, "“it” reaches into “wing”, which passes above it there: move it down." },
  { { 130, 0, 6, 30, 20, 9 }, "battery", ROOM_IN_WING, 3.5, 8, EDGE_TOP | EDGE_BOTTOM, "the body has no room for it above or beneath" },
  /* Over the foremost twentieth of the chord, where the ordinate is 2.962 %. */
  { { 90, 0, 2, 30, 20, 8 }, "battery", ROOM_ON_WING, 4.962, 10.038, EDGE_BOTTOM, "“it” reaches into “wing”, which passes beneath it there" },
};

START_TEST (what_reaches_into_a_wing_that_passes_through_the_body_is_named_with_the_way_out)
{
  const RoomFault fault = only_fault (with_piece (boxy_with_wing_at (0), boxed ("it", on_wing[_i].class_name, on_wing[_i].at)), on_wing[_i].words);

  ck_assert_int_eq (fault.kind, on_wing[_i].kind);
  ck_assert_double_eq_tol (fault.lacking_mm, on_wing[_i].lacking, 0.03);
  ck_assert_double_eq_tol (fault.clear_mm, on_wing[_i].clear, 0.03);
  ck_assert_uint_eq (fault.edges, on_wing[_i].edges);
}
END_TEST

/* What clears it by its height or its place, lies in the wing by intent, or has a wing whose panels end at the body's sides. */
static const struct { Boxed at; const char *class_name, *of; bool root_open; } beside_wing[] = {
  { { 130, 0, 9, 30, 20, 7 }, "battery", NULL, false },  { { 80, 0, 0, 39, 20, 20 }, "battery", NULL, false },
  { { 130, 0, 2, 30, 20, 9 }, "battery", "wing", false }, { { 130, 0, 2, 30, 20, 9 }, "ballast", NULL, false },
  { { 130, 0, 0, 21, 20, 9 }, "servo", NULL, false },    { { 130, 0, 2, 30, 20, 9 }, "battery", NULL, true },
};

START_TEST (what_stands_clear_of_a_wing_or_is_meant_to_lie_in_it_is_not_told_of)
{
  Part *part = boxed ("it", beside_wing[_i].class_name, beside_wing[_i].at);
  g_autoptr (Aeroplane) carried = with_piece (boxy_with_wing_at (0), part);
  const Surface *wing = aeroplane_surface_by_id (carried, "wing");
  Surface *open = (Surface *) piece_dup (&wing->piece);

  open->root_open = beside_wing[_i].root_open;
  part->of = g_strdup (beside_wing[_i].of);
  assert_no_fault (aeroplane_with_replaced (carried, &wing->piece, &open->piece));
}
END_TEST

/* A pack as high as the wing is drawn, and a servo, in a body of which nobody has drawn how high it is. */
START_TEST (without_a_side_view_no_wing_is_in_the_way)
{
  static const char *const classes[] = { "battery", "servo" };
  g_autoptr (Aeroplane) whole = with_piece (boxy_with_wing_at (0), boxed ("it", classes[_i], (Boxed) { 130, 0, 3, 30, 20, 14 }));
  const Body *body = aeroplane_body (whole, 0);
  Body *flat = (Body *) piece_dup (&body->piece);

  g_clear_pointer (&flat->side_outline, outline_unref);
  assert_no_fault (aeroplane_with_replaced (whole, &body->piece, &flat->piece));
}
END_TEST

static Aeroplane *
with_lead (double length, double apart)
{
  Aeroplane *made = with_piece (boxy (), boxed ("first", "servo", (Boxed) { 20, 0, 0, 20, 10, 20 }));
  Lead *lead = lead_new ("first", "second");

  lead->length = length;
  made = with_piece (made, boxed ("second", "receiver", (Boxed) { 20 + apart, 0, 0, 20, 10, 10 }));
  return with_piece (made, lead);
}

/* 100 mm apart: 112 with slack, and 10 for the loop. */
START_TEST (a_lead_that_is_too_short_with_slack_names_both_ends_and_what_helps)
{
  const RoomFault fault = only_fault (with_lead (110, 100), "The lead from “first” to “second” is too short for its way with slack: an extension");

  ck_assert_int_eq (fault.kind, ROOM_LEAD_SHORT);
  ck_assert_double_eq_tol (fault.lacking_mm, 12, 1e-9);
  ck_assert_double_eq (fault.extension_mm, 100);
  assert_no_fault (with_lead (122, 100));
  assert_no_fault (with_lead (NAN, 100));
}
END_TEST

START_TEST (the_body_is_measured_anew_when_it_changes)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Aeroplane) made = with_piece (boxy (), boxed ("it", "battery", (Boxed) { 60, 0, 0, 40, 30, 20 }));
  const Body *body = aeroplane_body (made, 0);
  const Point narrow[] = { { 0, 0 }, { 0, 15 }, { 200, 15 }, { 200, 0 } };
  Body *next = (Body *) piece_dup (&body->piece);

  outline_unref (next->outline);
  next->outline = run_through (narrow, G_N_ELEMENTS (narrow));
  g_autoptr (Aeroplane) slim = aeroplane_with_replaced (made, &body->piece, &next->piece);
  g_autoptr (Figures) before = figures_of (cache, made);
  g_autoptr (Figures) after = figures_of (cache, slim);
  ck_assert_uint_eq (before->room->len, 0);
  ck_assert_uint_eq (after->room->len, 1);
  figures_cache_free (cache);
}
END_TEST

START_TEST (in_the_examples_everything_has_room)
{
  static const char *const names[] = { "saltmarsh-racer.trammel", "heron-tourer.trammel" };

  for (size_t i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", names[i], NULL);
      g_autoptr (Aeroplane) example = reader_read_file (path, NULL, NULL);
      g_autoptr (Figures) figures = figures_once (example);

      ck_assert_uint_eq (figures->room->len, 0);
    }
}
END_TEST

/* A heap of 300 has 44850 pairs. */
START_TEST (of_parts_in_one_heap_a_thousand_pairs_are_told)
{
  Aeroplane *made = boxy ();
  for (int i = 0; i < 300; i++)
    made = with_piece (made, boxed (NULL, "other", (Boxed) { 100, 0, 0, 10, 10, 10 }));
  g_autoptr (Aeroplane) aeroplane = made;
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_uint_eq (figures->room->len, 1000);
}
END_TEST

static TCase *
room_case (void)
{
  TCase *tests = tcase_create ("room");

  tcase_add_loop_test (tests, what_reaches_out_of_the_body_is_named_with_how_far_and_by_which_edge, 0, G_N_ELEMENTS (in_body));
  tcase_add_loop_test (tests, what_stands_off_its_rail_is_named_with_how_far_both_ways, 0, G_N_ELEMENTS (railed));
  tcase_add_loop_test (tests, what_fits_or_lies_outside_by_its_nature_is_not_told_of, 0, G_N_ELEMENTS (fitting));
  tcase_add_loop_test (tests, in_a_cowl_there_is_the_cowls_room_and_behind_it_the_bodys, 0, (int) G_N_ELEMENTS (in_cowl));
  tcase_add_test (tests, a_part_turned_by_a_quarter_fits_by_its_turned_box);
  tcase_add_test (tests, two_parts_in_one_place_are_told_of_once_with_the_edges_that_meet);
  tcase_add_test (tests, one_above_another_behind_another_or_left_out_are_not_in_one_place);
  tcase_add_test (tests, boxes_turned_askew_are_apart_where_their_sides_are);
  tcase_add_test (tests, a_servo_higher_than_the_wing_is_deep_is_told_of_where_it_lies);
  tcase_add_loop_test (tests, what_reaches_into_a_wing_that_passes_through_the_body_is_named_with_the_way_out, 0, G_N_ELEMENTS (on_wing));
  tcase_add_loop_test (tests, without_a_side_view_no_wing_is_in_the_way, 0, 2);
  tcase_add_loop_test (tests, what_stands_clear_of_a_wing_or_is_meant_to_lie_in_it_is_not_told_of, 0, G_N_ELEMENTS (beside_wing));
  tcase_add_test (tests, a_lead_that_is_too_short_with_slack_names_both_ends_and_what_helps);
  tcase_add_test (tests, the_body_is_measured_anew_when_it_changes);
  tcase_add_test (tests, in_the_examples_everything_has_room);
  tcase_add_test (tests, of_parts_in_one_heap_a_thousand_pairs_are_told);
  return tests;
}

int
main (void)
{
  return run_suite (suite_create ("room"), room_case ());
}
