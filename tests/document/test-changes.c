#include "document/changes.h"
#include <math.h>
#include "document/every-piece.h"
#include "document/history.h"
#include "support/run-suite.h"

/* With a fin, whose span is a height, behind the pieces of every kind. */
static Aeroplane *
changed_one (void)
{
  g_autoptr (Aeroplane) made = aeroplane_of_every_piece ();
  Outline *fin = polygon_from ((const Point[]) { { 384.1, 3.5 }, { 440.3, 73.9 }, { 462.7, 73.9 }, { 463.1, 3.5 } }, 4);

  return aeroplane_with_added (made, &surface_new ("fin", ROLE_FIN, fin)->piece);
}

static Aeroplane *set_outline (const Aeroplane *self, const char *id) { return change_surface_outline (self, id, any_outline (7.3)); }
static Aeroplane *set_body    (const Aeroplane *self, const char *id) { return change_body_outline (self, id, any_outline (7.3)); }
static Aeroplane *set_side    (const Aeroplane *self, const char *id) { return change_body_side (self, id, any_outline (7.3)); }
static Aeroplane *move        (const Aeroplane *self, const char *id) { return change_surface_moved (self, id, 3.7, -1.3); }
static Aeroplane *stretch     (const Aeroplane *self, const char *id) { return change_surface_span (self, id, 700.7); }
static Aeroplane *enlarge     (const Aeroplane *self, const char *id) { return change_surface_scaled (self, id, 1.1, 130); }
static Aeroplane *place       (const Aeroplane *self, const char *id) { return change_part_place (self, id, 71.3, 4.1, -8.7); }
static Aeroplane *rail        (const Aeroplane *self, const char *id) { return change_part_rail (self, id, 93.1, 47.7); }
static Aeroplane *ashore      (const Aeroplane *self, const char *id) { return change_part_aboard (self, id, false); }
/* A mark has no id: none stands for one too many. */
static Aeroplane *mark        (const Aeroplane *self, const char *id) { return change_mark_station (self, id ? 0 : 1, 33.3); }

static bool
has_outline (const Piece *piece)
{
  Outline *wanted = any_outline (7.3);
  const bool is = outline_equal (((const Surface *) piece)->outline, wanted);

  outline_unref (wanted);
  return is;
}

static bool
has_body (const Piece *piece)
{
  Outline *top = any_outline (7.3), *side = any_outline (2.3);
  const bool is = outline_equal (((const Body *) piece)->outline, top) && outline_equal (((const Body *) piece)->side_outline, side);

  outline_unref (top);
  outline_unref (side);
  return is;
}

static bool
has_side (const Piece *piece)
{
  Outline *top = any_outline (1.1), *side = any_outline (7.3);
  const bool is = outline_equal (((const Body *) piece)->outline, top) && outline_equal (((const Body *) piece)->side_outline, side);

  outline_unref (top);
  outline_unref (side);
  return is;
}

static bool
is_near (double a, double b)
{
  return fabs (a - b) < 1e-9;      /* mm; rounding of numbers of some hundreds is a thousand times less */
}

static bool
has_moved (const Piece *piece)
{
  const Surface *wing = (const Surface *) piece;

  return is_near (outline_node (wing->outline, 1).x, 120.8) && is_near (outline_node (wing->outline, 1).y, 318.7) && is_near (wing->z, -13)
         && is_near (wing->controls[0].hinge_inner_x, 201) && is_near (wing->controls[0].hinge_outer_x, 176.8)
         && wing->ribs[1].place == 48.9 && wing->controls[0].inner == 161.3 && wing->breaks[0].from == 160.7;
}

static bool
has_stretched (const Piece *piece)
{
  const Surface *wing = (const Surface *) piece;
  const double scale = 700.7 / 2 / 318.7;

  return is_near (outline_node (wing->outline, 1).x, 117.1) && is_near (outline_node (wing->outline, 1).y, 350.35)
         && is_near (wing->ribs[1].place, 48.9 * scale) && is_near (wing->controls[0].inner, 161.3 * scale)
         && is_near (wing->controls[0].outer, 289.9 * scale) && is_near (wing->breaks[0].from, 160.7 * scale)
         && wing->breaks[0].angle == 9.3 && wing->controls[0].hinge_inner_x == 197.3 && wing->z == -11.7;
}

/* Its foot stands where it stood. */
static bool
has_grown (const Piece *piece)
{
  const Box box = outline_bounds (((const Surface *) piece)->outline);

  return is_near (box.min.y, 3.5) && is_near (box.max.y, 704.2) && is_near (box.min.x, 384.1);
}

/* 130 + 1.1 × (117.1 − 130) = 115.81, and so on: what lies at 130 stays, all else goes away from it and from the centre line. */
static bool
is_larger (const Piece *piece)
{
  const Surface *wing = (const Surface *) piece;

  return is_near (outline_node (wing->outline, 1).x, 115.81) && is_near (outline_node (wing->outline, 1).y, 350.57)
         && is_near (wing->controls[0].hinge_inner_x, 204.03) && is_near (wing->controls[0].hinge_outer_x, 177.41)
         && is_near (wing->controls[0].inner, 177.43) && is_near (wing->ribs[1].place, 53.79) && is_near (wing->breaks[0].from, 176.77)
         && wing->breaks[0].angle == 9.3 && wing->z == -11.7;
}

static bool
is_larger_above_its_foot (const Piece *piece)
{
  const Box box = outline_bounds (((const Surface *) piece)->outline);

  return is_near (box.min.y, 3.5) && is_near (box.max.y, 80.94) && is_near (box.min.x, 409.51) && is_near (box.max.x, 496.41);
}

static bool
has_place (const Piece *piece)
{
  const Part *part = (const Part *) piece;

  return part->x == 71.3 && part->y == 4.1 && part->z == -8.7 && part->mass == 27.3 && part->rail_from == 50.3;
}

static bool
has_rail (const Piece *piece)
{
  const Part *part = (const Part *) piece;

  return part->has_rail && part->rail_from == 47.7 && part->rail_to == 93.1 && part->x == 61.9;
}

static bool is_ashore (const Piece *piece)  { return !((const Part *) piece)->aboard && ((const Part *) piece)->x == 61.9; }
static bool has_station (const Piece *piece) { return ((const Mark *) piece)->station == 33.3; }

static const struct {
  const char *id;
  size_t place;                 /* of the piece */
  Aeroplane *(*change) (const Aeroplane *self, const char *id);
  bool (*is_right) (const Piece *piece);
  const char *other;            /* of another kind; refused */
} changes[] = {
  { "wing", PIECE_SURFACE, set_outline, has_outline, "body" },
  { "body", PIECE_BODY, set_body, has_body, "wing" },
  { "body", PIECE_BODY, set_side, has_side, "wing" },
  { "wing", PIECE_SURFACE, move, has_moved, "battery" },
  { "wing", PIECE_SURFACE, stretch, has_stretched, "battery" },
  { "fin", PIECE_KIND_COUNT + 1, stretch, has_grown, "body" },
  { "wing", PIECE_SURFACE, enlarge, is_larger, "battery" },
  { "fin", PIECE_KIND_COUNT + 1, enlarge, is_larger_above_its_foot, "body" },
  { "battery", PIECE_PART, place, has_place, "wing" },
  { "battery", PIECE_PART, rail, has_rail, "wing" },
  { "battery", PIECE_PART, ashore, is_ashore, "wing" },
  { "", PIECE_MARK, mark, has_station, NULL },
};

START_TEST (a_change_does_what_it_says_and_shares_the_rest)
{
  g_autoptr (Aeroplane) self = changed_one (), untouched = changed_one ();
  g_autoptr (Aeroplane) next = changes[_i].change (self, changes[_i].id);

  ck_assert_ptr_nonnull (next);
  ck_assert_uint_eq (aeroplane_piece_count (next), aeroplane_piece_count (self));
  for (size_t i = 0; i < aeroplane_piece_count (self); i++)
    ck_assert_msg ((aeroplane_piece (next, i) == aeroplane_piece (self, i)) == (i != changes[_i].place), "change %d, piece %zu", _i, i);
  ck_assert_msg (changes[_i].is_right (aeroplane_piece (next, changes[_i].place)), "change %d", _i);
  ck_assert (aeroplane_equal (self, untouched));
  ck_assert (!aeroplane_equal (self, next));
}
END_TEST

START_TEST (the_same_change_again_is_none)
{
  g_autoptr (Aeroplane) self = changed_one ();
  g_autoptr (Aeroplane) next = changes[_i].change (self, changes[_i].id);
  g_autoptr (Aeroplane) again = NULL;

  if (changes[_i].change != move && changes[_i].change != enlarge)      /* which go on */
    {
      again = changes[_i].change (next, changes[_i].id);
      ck_assert_msg (aeroplane_equal (next, again), "change %d", _i);
    }
}
END_TEST

START_TEST (undo_brings_back_an_equal_aeroplane)
{
  g_autoptr (Aeroplane) before = changed_one ();
  History *history = history_new (changed_one ());

  history_do (history, changes[_i].change (history_now (history), changes[_i].id), "Change");
  ck_assert (!aeroplane_equal (history_now (history), before));
  ck_assert (history_undo (history));
  ck_assert (aeroplane_equal (history_now (history), before));
  history_free (history);
}
END_TEST

START_TEST (an_id_that_is_not_there_or_of_another_kind_changes_nothing)
{
  g_autoptr (Aeroplane) self = changed_one ();

  ck_assert_ptr_null (changes[_i].change (self, changes[_i].other));
  if (changes[_i].other)
    ck_assert_ptr_null (changes[_i].change (self, "nobody"));
}
END_TEST

START_TEST (places_that_are_no_numbers_are_refused)
{
  g_autoptr (Aeroplane) self = changed_one ();

  ck_assert_ptr_null (change_part_place (self, "battery", NAN, 0, 0));
  ck_assert_ptr_null (change_part_place (self, "battery", 0, INFINITY, 0));
  ck_assert_ptr_null (change_part_rail (self, "battery", 3.1, NAN));
  ck_assert_ptr_null (change_surface_moved (self, "wing", NAN, 0));
  ck_assert_ptr_null (change_surface_moved (self, "wing", 0, INFINITY));
  ck_assert_ptr_null (change_mark_station (self, 0, NAN));
  ck_assert_ptr_null (change_surface_outline (self, "wing", NULL));
  ck_assert_ptr_null (change_body_outline (self, "body", NULL));
}
END_TEST

START_TEST (a_span_that_geometry_refuses_changes_nothing)
{
  g_autoptr (Aeroplane) self = changed_one ();
  Outline *line = polygon_from ((const Point[]) { { 1.1, 0 }, { 40.9, 0 } }, 2);
  g_autoptr (Aeroplane) flat = aeroplane_with_added (self, &surface_new ("flat", ROLE_WING, line)->piece);
  static const double spans[] = { 0, -640, NAN, INFINITY };

  for (size_t i = 0; i < G_N_ELEMENTS (spans); i++)
    {
      ck_assert_msg (change_surface_span (self, "wing", spans[i]) == NULL, "%g", spans[i]);
      ck_assert_msg (change_surface_scaled (self, "wing", spans[i], 130) == NULL, "%g", spans[i]);
    }
  ck_assert_ptr_null (change_surface_scaled (self, "wing", 1.1, NAN));
  ck_assert_ptr_null (change_surface_span (flat, "flat", 640));
}
END_TEST

START_TEST (the_first_mark_is_added_and_the_others_are_moved)
{
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  g_autoptr (Aeroplane) marked = change_mark_station (empty, 0, 31.7);
  g_autoptr (Aeroplane) moved = change_mark_station (marked, 0, 32.9);

  ck_assert_uint_eq (aeroplane_count (marked, PIECE_MARK), 1);
  ck_assert (aeroplane_mark (marked, 0)->station == 31.7);
  ck_assert_uint_eq (aeroplane_count (moved, PIECE_MARK), 1);
  ck_assert (aeroplane_mark (moved, 0)->station == 32.9);
  ck_assert_ptr_null (change_mark_station (marked, 1, 30));
}
END_TEST

START_TEST (a_part_put_where_it_is_makes_no_step)
{
  g_autoptr (Aeroplane) self = changed_one ();
  g_autoptr (Aeroplane) next = change_part_place (self, "battery", 61.9, 0, 0);

  ck_assert_ptr_eq (next, self);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes");

  tcase_add_loop_test (tests, a_change_does_what_it_says_and_shares_the_rest, 0, G_N_ELEMENTS (changes));
  tcase_add_loop_test (tests, the_same_change_again_is_none, 0, G_N_ELEMENTS (changes));
  tcase_add_loop_test (tests, undo_brings_back_an_equal_aeroplane, 0, G_N_ELEMENTS (changes));
  tcase_add_loop_test (tests, an_id_that_is_not_there_or_of_another_kind_changes_nothing, 0, G_N_ELEMENTS (changes));
  tcase_add_test (tests, places_that_are_no_numbers_are_refused);
  tcase_add_test (tests, a_span_that_geometry_refuses_changes_nothing);
  tcase_add_test (tests, the_first_mark_is_added_and_the_others_are_moved);
  tcase_add_test (tests, a_part_put_where_it_is_makes_no_step);
  return run_suite (suite_create ("document changes"), tests);
}
