#include "document/aeroplane.h"
#include <math.h>
#include "document/every-piece.h"
#include "support/run-suite.h"

START_TEST (a_new_one_is_empty_and_wants_a_margin_of_12_between_5_and_15)
{
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const AeroplaneTraits traits = aeroplane_traits (empty);

  ck_assert_uint_eq (aeroplane_piece_count (empty), 0);
  ck_assert_ptr_null (traits.name);
  ck_assert (traits.target.from == 5 && traits.target.to == 15 && traits.target.aim == 12 && !traits.tailless);
  ck_assert_str_eq (aeroplane_foreign_attributes (empty), "");
  ck_assert_ptr_null (aeroplane_find (empty, "wing"));
  ck_assert_ptr_null (aeroplane_find (empty, NULL));
  ck_assert_ptr_null (aeroplane_reference_wing (empty));
}
END_TEST

START_TEST (a_copy_of_a_piece_is_equal_and_has_nothing_in_common)
{
  Piece *piece = piece_of (_i), *copy = piece_dup (piece), *again = piece_of (_i);

  ck_assert_ptr_ne (piece, copy);
  ck_assert (piece_equal (piece, copy) && piece_equal (piece, again) && piece_equal (piece, piece));
  ck_assert (!piece_equal (piece, NULL) && !piece_equal (NULL, piece));
  piece_unref (piece);                     /* what the copy holds is its own: the sanitizer would tell */
  ck_assert (piece_equal (copy, again));
  piece_unref (copy);
  piece_unref (again);
}
END_TEST

START_TEST (the_line_of_the_file_is_no_part_of_the_value)
{
  Piece *piece = piece_of (_i), *copy = piece_dup (piece);

  copy->line = piece->line + 17;
  ck_assert (piece_equal (piece, copy));
  piece_unref (piece);
  piece_unref (copy);
}
END_TEST

START_TEST (pieces_of_two_kinds_are_never_equal)
{
  for (int other = 0; other < PIECE_KIND_COUNT; other++)
    {
      Piece *one = piece_of (_i), *two = piece_of (other);

      ck_assert (piece_equal (one, two) == (_i == other));
      piece_unref (one);
      piece_unref (two);
    }
}
END_TEST

static void change_z (Piece *piece)           { ((Surface *) piece)->z = -11.699999; }
static void change_role (Piece *piece)        { ((Surface *) piece)->role = ROLE_FIN; }
static void change_thickness (Piece *piece)   { ((Surface *) piece)->thickness = 9; }
static void change_root (Piece *piece)        { ((Surface *) piece)->root_open = true; }
static void change_rib (Piece *piece)         { ((Surface *) piece)->ribs[1].place = 49; }
static void change_rib_name (Piece *piece)    { ((Surface *) piece)->ribs[1].name[1] = '3'; }
static void change_control (Piece *piece)     { ((Surface *) piece)->controls[0].down = 8; }
static void change_break (Piece *piece)       { ((Surface *) piece)->breaks[0].angle = 9.4; }
static void change_kept (Piece *piece)        { piece->kept[0].inside[1] = 'f'; }
static void change_kept_place (Piece *piece)  { piece->kept[0].index = 1; }
static void change_children (Piece *piece)    { piece->foreign_children[1] = 'L'; }
static void change_former (Piece *piece)      { ((Body *) piece)->formers[0].place = 62; }
static void change_of (Piece *piece)          { ((Structure *) piece)->of[0] = 'W'; }
static void change_centre (Piece *piece)      { ((Structure *) piece)->centre = 0.43; }
static void change_mass (Piece *piece)        { ((Part *) piece)->mass = 27.4; }
static void change_aboard (Piece *piece)      { ((Part *) piece)->aboard = false; }
static void change_rail (Piece *piece)        { ((Part *) piece)->rail_to = 81.8; }
static void change_no_rail (Piece *piece)     { ((Part *) piece)->has_rail = false; }
static void change_name (Piece *piece)        { ((Part *) piece)->name[0] = 'J'; }
static void change_id (Piece *piece)          { piece->id[0] = 'B'; }
static void change_via (Piece *piece)         { ((Lead *) piece)->via[1].place.y = -4; }
static void change_station (Piece *piece)     { ((Mark *) piece)->station = nextafter (30.7, 31); }
static void change_bay (Piece *piece)         { ((Bay *) piece)->to_former[1] = '3'; }
static void change_thrust (Piece *piece)      { ((Thrust *) piece)->down = 2; }
static void change_strength (Piece *piece)    { ((Plan *) piece)->strength = 61.4; }
static void change_image_type (Piece *piece)  { ((Plan *) piece)->image_type[6] = 'j'; }
static void change_corner (Piece *piece)      { ((Plan *) piece)->corners[2].y = 2318.8; }
static void change_no_corners (Piece *piece)  { ((Plan *) piece)->has_corners = false; }
static void change_level (Piece *piece)       { ((Plan *) piece)->has_level = true; }
static void change_length (Piece *piece)      { ((Plan *) piece)->lengths[0].mm = 205.4; }
static void change_place (Piece *piece)       { ((Plan *) piece)->places[1].x = 1690.2; }
static void change_view (Piece *piece)        { ((Plan *) piece)->views[0].side = VIEW_STARBOARD; }
static void change_view_id (Piece *piece)     { ((Plan *) piece)->views[0].id[0] = 'W'; }
static void change_traced (Piece *piece)      { ((Surface *) piece)->traced[0] = 'W'; }
static void change_text (Piece *piece)        { ((Foreign *) piece)->text[5] = 'A'; }

static void
change_outline (Piece *piece)
{
  outline_unref (((Surface *) piece)->outline);
  ((Surface *) piece)->outline = any_outline (1e-9);
}

static void
change_side (Piece *piece)
{
  g_clear_pointer (&((Body *) piece)->side_outline, outline_unref);
}

static void
change_image (Piece *piece)
{
  g_bytes_unref (((Plan *) piece)->image);
  ((Plan *) piece)->image = g_bytes_new ("\x89PNG and mere", 13);
}

/* The same places, otherwise shared out. */
static void
change_lines (Piece *piece)
{
  ((Plan *) piece)->straight[0].count = 2;
  ((Plan *) piece)->straight[1].count = 1;
}

static const struct { PieceKind kind; void (*change) (Piece *piece); } differences[] = {
  { PIECE_SURFACE, change_z }, { PIECE_SURFACE, change_role }, { PIECE_SURFACE, change_thickness }, { PIECE_SURFACE, change_root },
  { PIECE_SURFACE, change_rib }, { PIECE_SURFACE, change_rib_name }, { PIECE_SURFACE, change_control }, { PIECE_SURFACE, change_break },
  { PIECE_SURFACE, change_outline }, { PIECE_SURFACE, change_kept }, { PIECE_SURFACE, change_kept_place }, { PIECE_SURFACE, change_children },
  { PIECE_BODY, change_former }, { PIECE_BODY, change_side }, { PIECE_STRUCTURE, change_of }, { PIECE_STRUCTURE, change_centre },
  { PIECE_PART, change_mass }, { PIECE_PART, change_aboard }, { PIECE_PART, change_rail }, { PIECE_PART, change_no_rail },
  { PIECE_PART, change_name }, { PIECE_PART, change_id }, { PIECE_LEAD, change_via }, { PIECE_MARK, change_station },
  { PIECE_BAY, change_bay }, { PIECE_THRUST, change_thrust },
  { PIECE_PLAN, change_strength }, { PIECE_PLAN, change_image }, { PIECE_PLAN, change_image_type }, { PIECE_PLAN, change_corner },
  { PIECE_PLAN, change_no_corners }, { PIECE_PLAN, change_level }, { PIECE_PLAN, change_length }, { PIECE_PLAN, change_place },
  { PIECE_PLAN, change_lines }, { PIECE_PLAN, change_view }, { PIECE_PLAN, change_view_id }, { PIECE_SURFACE, change_traced },
  { PIECE_FOREIGN, change_text },
};

START_TEST (whatever_differs_in_a_copy_makes_it_another_and_leaves_the_first)
{
  Piece *piece = piece_of (differences[_i].kind), *copy = piece_dup (piece), *untouched = piece_of (differences[_i].kind);

  differences[_i].change (copy);
  ck_assert_msg (!piece_equal (piece, copy), "difference %d", _i);
  ck_assert_msg (piece_equal (piece, untouched), "difference %d reached the first", _i);
  piece_unref (piece);
  piece_unref (copy);
  piece_unref (untouched);
}
END_TEST

START_TEST (two_with_equal_pieces_are_equal_whatever_made_them)
{
  g_autoptr (Aeroplane) at_once = aeroplane_of_every_piece (), step = aeroplane_new ();
  g_autoptr (Aeroplane) slowly = NULL;

  for (size_t i = 0; i < aeroplane_piece_count (at_once); i++)
    {
      Aeroplane *next = aeroplane_with_added (step, piece_dup (aeroplane_piece (at_once, i)));

      aeroplane_unref (step);
      step = next;
    }
  ck_assert (!aeroplane_equal (at_once, step));        /* the traits still differ */
  slowly = aeroplane_with_traits (step, aeroplane_traits (at_once));
  ck_assert (aeroplane_equal (at_once, slowly));
  ck_assert (!aeroplane_equal (at_once, NULL));
}
END_TEST

START_TEST (pieces_are_found_by_kind_by_number_and_by_id)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();

  for (int kind = 0; kind < PIECE_KIND_COUNT; kind++)
    {
      ck_assert_uint_eq (aeroplane_count (self, kind), kind == PIECE_PART ? 2 : 1);
      ck_assert_ptr_eq (aeroplane_nth (self, kind, 0), aeroplane_piece (self, (size_t) kind));
    }
  ck_assert_str_eq (aeroplane_part (self, 1)->piece.id, "motor");
  ck_assert_ptr_eq (aeroplane_find (self, "bay"), aeroplane_piece (self, PIECE_BAY));
  ck_assert_ptr_eq (aeroplane_surface_by_id (self, "wing"), aeroplane_piece (self, PIECE_SURFACE));
  ck_assert_ptr_eq (aeroplane_reference_wing (self), aeroplane_piece (self, PIECE_SURFACE));
  ck_assert_ptr_eq (aeroplane_structure_by_id (self, "wing-frame"), aeroplane_piece (self, PIECE_STRUCTURE));
  ck_assert_ptr_null (aeroplane_surface_by_id (self, "body"));
  ck_assert_ptr_null (aeroplane_body_by_id (self, "wing"));
  ck_assert_ptr_null (aeroplane_part_by_id (self, NULL));
  ck_assert_ptr_null (aeroplane_find (self, "Wing"));
}
END_TEST

/* h = 33 h + c (g_str_hash): 33·97 + 98 = 33·98 + 65. */
START_TEST (ids_of_one_hash_are_told_apart_and_the_first_of_two_alike_is_found)
{
  Piece *pieces[] = { &part_new ("bA", "servo")->piece, &part_new ("ab", "motor")->piece, &part_new ("bA", "pilot")->piece };
  g_autoptr (Aeroplane) self = aeroplane_from_pieces ((AeroplaneTraits) { 0 }, pieces, G_N_ELEMENTS (pieces));

  ck_assert_uint_eq (g_str_hash ("ab"), g_str_hash ("bA"));
  ck_assert_ptr_eq (aeroplane_find (self, "ab"), pieces[1]);
  ck_assert_ptr_eq (aeroplane_find (self, "bA"), pieces[0]);
}
END_TEST

START_TEST (the_reference_is_the_first_wing_not_the_first_surface)
{
  Piece *pieces[] = { &surface_new ("tail", ROLE_TAILPLANE, any_outline (290.3))->piece, &surface_new ("upper", ROLE_WING, any_outline (0))->piece,
                      &surface_new ("lower", ROLE_WING, any_outline (0))->piece };
  g_autoptr (Aeroplane) self = aeroplane_from_pieces ((AeroplaneTraits) { 0 }, pieces, G_N_ELEMENTS (pieces));

  ck_assert_str_eq (aeroplane_reference_wing (self)->piece.id, "upper");
}
END_TEST

START_TEST (a_free_id_is_the_stem_or_the_first_number_that_nobody_has)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  g_autoptr (Aeroplane) more = aeroplane_with_added (self, &part_new ("motor-2", NULL)->piece);
  g_autofree char *free_one = aeroplane_free_id (more, "servo"), *motor = aeroplane_free_id (more, "motor");
  g_autofree char *control = aeroplane_free_id (more, "ailerons");

  ck_assert_str_eq (free_one, "servo");
  ck_assert_str_eq (motor, "motor-3");
  ck_assert_str_eq (control, "ailerons-2");
}
END_TEST

/* `next` has all of `self` but what stands at `except`. */
static void
assert_shares_all_but (const Aeroplane *self, const Aeroplane *next, size_t except)
{
  for (size_t i = 0; i < aeroplane_piece_count (self); i++)
    ck_assert_msg ((aeroplane_piece (self, i) == aeroplane_piece (next, i)) == (i != except), "piece %zu", i);
}

START_TEST (the_day_of_the_last_change_goes_along_and_is_no_part_of_the_value)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  g_autoptr (Aeroplane) changed = aeroplane_with_changed (self, "2026-11-25");
  g_autoptr (Aeroplane) again = aeroplane_with_changed (changed, "2026-11-25");
  g_autoptr (Aeroplane) longer = aeroplane_with_added (changed, &mark_new (33.1)->piece);

  ck_assert_str_eq (aeroplane_traits (self).changed, "");
  ck_assert_str_eq (aeroplane_traits (longer).changed, "2026-11-25");
  ck_assert (aeroplane_equal (self, changed));
  ck_assert_ptr_eq (again, changed);
}
END_TEST

START_TEST (where_the_hatch_opens_is_part_of_the_value_and_not_chosen_at_first)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  AeroplaneTraits traits = aeroplane_traits (self);

  ck_assert_int_eq (traits.hatch, HATCH_NOT_CHOSEN);
  traits.hatch = HATCH_ON_BOTTOM;
  g_autoptr (Aeroplane) opened = aeroplane_with_traits (self, traits);
  g_autoptr (Aeroplane) longer = aeroplane_with_added (opened, &mark_new (33.1)->piece);
  ck_assert (!aeroplane_equal (self, opened));
  ck_assert_int_eq (aeroplane_traits (longer).hatch, HATCH_ON_BOTTOM);
}
END_TEST

START_TEST (a_change_shares_every_piece_that_it_did_not_touch)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece (), untouched = aeroplane_of_every_piece ();
  const size_t count = aeroplane_piece_count (self);
  g_autoptr (Aeroplane) added = aeroplane_with_added (self, &mark_new (33.1)->piece);
  g_autoptr (Aeroplane) replaced = aeroplane_with_replaced (self, aeroplane_piece (self, PIECE_MARK), &mark_new (35.9)->piece);
  g_autoptr (Aeroplane) renamed = aeroplane_with_replaced (self, aeroplane_piece (self, PIECE_PART), &part_new ("pack", NULL)->piece);
  g_autoptr (Aeroplane) named = aeroplane_with_traits (self, (AeroplaneTraits) { .name = "Knot", .tailless = true });
  g_autoptr (Aeroplane) kept = aeroplane_with_kept (self, (AeroplaneKept) { .attributes = " a=\"b\"", .behind = "<!-- c -->" });

  assert_shares_all_but (self, added, count);
  ck_assert_uint_eq (aeroplane_piece_count (added), count + 1);
  ck_assert (aeroplane_mark (added, 1)->station == 33.1);
  assert_shares_all_but (self, replaced, PIECE_MARK);
  ck_assert (aeroplane_mark (replaced, 0)->station == 35.9);
  assert_shares_all_but (self, renamed, PIECE_PART);
  ck_assert_ptr_eq (aeroplane_find (renamed, "pack"), aeroplane_piece (renamed, PIECE_PART));
  ck_assert_ptr_null (aeroplane_find (renamed, "battery"));
  assert_shares_all_but (self, named, count);
  ck_assert_str_eq (aeroplane_traits (named).name, "Knot");
  ck_assert (!aeroplane_equal (self, named));
  assert_shares_all_but (self, kept, count);
  ck_assert_str_eq (aeroplane_foreign_attributes (kept), " a=\"b\"");
  ck_assert (!aeroplane_equal (self, kept));
  ck_assert (aeroplane_equal (self, untouched));
}
END_TEST

START_TEST (taking_a_piece_out_leaves_the_rest_in_its_order)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  g_autoptr (Aeroplane) next = aeroplane_without (self, aeroplane_piece (self, PIECE_STRUCTURE));

  ck_assert_uint_eq (aeroplane_piece_count (next), aeroplane_piece_count (self) - 1);
  for (size_t i = 0; i < aeroplane_piece_count (next); i++)
    ck_assert_ptr_eq (aeroplane_piece (next, i), aeroplane_piece (self, i < PIECE_STRUCTURE ? i : i + 1));
  ck_assert_ptr_null (aeroplane_find (next, "wing-frame"));
  ck_assert_ptr_eq (aeroplane_find (next, "motor"), aeroplane_find (self, "motor"));
}
END_TEST

static const struct { const char *id; const char *gone[3]; size_t leads; } dependents[] = {
  { .id = "wing", .gone = { "wing", "wing-frame" }, .leads = 1 },
  { .id = "battery", .gone = { "battery" }, .leads = 0 },
  { .id = "motor", .gone = { "motor" }, .leads = 0 },
  { .id = "body", .gone = { "body" }, .leads = 1 },
};

START_TEST (what_hangs_on_a_piece_goes_with_it_and_nothing_else)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  g_autoptr (Aeroplane) next = aeroplane_without_dependents (self, aeroplane_find (self, dependents[_i].id));
  size_t gone = 1 - dependents[_i].leads;

  for (const char *const *id = dependents[_i].gone; *id; id++, gone++)
    ck_assert_msg (aeroplane_find (next, *id) == NULL, "%s", *id);
  ck_assert_uint_eq (aeroplane_count (next, PIECE_LEAD), dependents[_i].leads);
  ck_assert_uint_eq (aeroplane_piece_count (next), aeroplane_piece_count (self) - gone);
}
END_TEST

enum { turns = 20000 };

static gpointer
hold_and_let_go (gpointer data)
{
  const Aeroplane *self = data;

  for (int i = 0; i < turns; i++)
    {
      g_autoptr (Aeroplane) mine = aeroplane_ref (self);
      Piece *piece = piece_ref (aeroplane_piece (mine, 0));

      piece_unref (piece);
    }
  return NULL;
}

/* A count that is not safe loses some of so many turns: then the aeroplane goes too early (the sanitizer tells) or never. */
START_TEST (references_are_counted_across_threads)
{
  Aeroplane *self = aeroplane_of_every_piece ();
  GThread *threads[4];

  for (size_t i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("holder", hold_and_let_go, self);
  for (size_t i = 0; i < G_N_ELEMENTS (threads); i++)
    g_thread_join (threads[i]);
  ck_assert (g_atomic_ref_count_compare (&((Piece *) aeroplane_piece (self, 0))->references, 1));
  aeroplane_unref (self);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("aeroplane");

  tcase_add_test (tests, a_new_one_is_empty_and_wants_a_margin_of_12_between_5_and_15);
  tcase_add_loop_test (tests, a_copy_of_a_piece_is_equal_and_has_nothing_in_common, 0, PIECE_KIND_COUNT);
  tcase_add_loop_test (tests, the_line_of_the_file_is_no_part_of_the_value, 0, PIECE_KIND_COUNT);
  tcase_add_loop_test (tests, pieces_of_two_kinds_are_never_equal, 0, PIECE_KIND_COUNT);
  tcase_add_loop_test (tests, whatever_differs_in_a_copy_makes_it_another_and_leaves_the_first, 0, G_N_ELEMENTS (differences));
  tcase_add_test (tests, two_with_equal_pieces_are_equal_whatever_made_them);
  tcase_add_test (tests, pieces_are_found_by_kind_by_number_and_by_id);
  tcase_add_test (tests, ids_of_one_hash_are_told_apart_and_the_first_of_two_alike_is_found);
  tcase_add_test (tests, the_reference_is_the_first_wing_not_the_first_surface);
  tcase_add_test (tests, a_free_id_is_the_stem_or_the_first_number_that_nobody_has);
  tcase_add_test (tests, the_day_of_the_last_change_goes_along_and_is_no_part_of_the_value);
  tcase_add_test (tests, where_the_hatch_opens_is_part_of_the_value_and_not_chosen_at_first);
  tcase_add_test (tests, a_change_shares_every_piece_that_it_did_not_touch);
  tcase_add_test (tests, taking_a_piece_out_leaves_the_rest_in_its_order);
  tcase_add_loop_test (tests, what_hangs_on_a_piece_goes_with_it_and_nothing_else, 0, G_N_ELEMENTS (dependents));
  tcase_add_test (tests, references_are_counted_across_threads);
  return run_suite (suite_create ("document aeroplane"), tests);
}
