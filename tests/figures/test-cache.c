#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "aero/lattice.h"
#include "document/changes.h"
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The linker puts this in the lattice's place, so that solves can be counted. */
static int solves;

CoreStatus __real_lattice_solve (Lattice *, const LatticeSurface[], size_t, LatticeOptions, unsigned, double, double, LatticeShare[],
                                 LatticeResult *);
CoreStatus __wrap_lattice_solve (Lattice *, const LatticeSurface[], size_t, LatticeOptions, unsigned, double, double, LatticeShare[],
                                 LatticeResult *);

CoreStatus
__wrap_lattice_solve (Lattice *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, unsigned wants,
                      double area, double span, LatticeShare shares[], LatticeResult *result)
{
  solves++;
  return __real_lattice_solve (self, surfaces, count, options, wants, area, span, shares, result);
}

static void
assert_same_bytes (const void *a, const void *b, size_t size, const char *what)
{
  ck_assert_msg (memcmp (a, b, size) == 0, "%s differ", what);
}

/* Every number, bit for bit; pointers and the padding between are left out by comparing runs of doubles. */
static void
assert_same_figures (const Figures *a, const Figures *b)
{
  g_autofree char *text_a = NULL, *text_b = NULL;

  ck_assert_uint_eq (a->surface_count, b->surface_count);
  for (size_t i = 0; i < a->surface_count; i++)
    {
      assert_same_bytes (&a->surfaces[i].planform, &b->surfaces[i].planform, sizeof (Planform), "planforms");
      assert_same_bytes (&a->surfaces[i].quarter_mac_x_mm, &b->surfaces[i].quarter_mac_x_mm, 5 * sizeof (double), "surfaces");
    }
  assert_same_bytes (&a->mass, &b->mass, sizeof a->mass, "masses");
  ck_assert_uint_eq (a->structure_count, b->structure_count);
  for (size_t i = 0; i < a->structure_count; i++)
    {
      ck_assert_ptr_eq (a->structures[i].structure, b->structures[i].structure);
      ck_assert_double_eq (a->structures[i].mass_g, b->structures[i].mass_g);
    }
  assert_same_bytes (&a->neutral_point.x_mm, &b->neutral_point.x_mm, 7 * sizeof (double), "neutral points");
  assert_same_bytes (&a->balance.percent_mac, &b->balance.percent_mac, 6 * sizeof (double), "margins");
  ck_assert_uint_eq (a->balance.mark_count, b->balance.mark_count);
  for (size_t i = 0; i < a->balance.mark_count; i++)
    assert_same_bytes (&a->balance.marks[i], &b->balance.marks[i], sizeof (MarkFigures), "marks");
  assert_same_bytes (&a->flight, &b->flight, sizeof a->flight, "flight figures");
  ck_assert_uint_eq (a->solution_count, b->solution_count);
  for (size_t i = 0; i < a->solution_count; i++)
    ck_assert_ptr_eq (a->solutions[i].part, b->solutions[i].part);
  ck_assert_uint_eq (a->room->len, b->room->len);
  for (guint i = 0; i < a->room->len; i++)
    {
      const RoomFault *one = &g_array_index (a->room, RoomFault, i), *other = &g_array_index (b->room, RoomFault, i);

      ck_assert (one->kind == other->kind && one->part == other->part && one->in == other->in && one->other == other->other);
      ck_assert_double_eq (one->lacking_mm, other->lacking_mm);
    }
  ck_assert_uint_eq (a->notes->len, b->notes->len);
  for (guint i = 0; i < a->notes->len; i++)
    ck_assert_str_eq (((const Note *) g_ptr_array_index (a->notes, i))->text, ((const Note *) g_ptr_array_index (b->notes, i))->text);
  ck_assert_ptr_eq (a->aeroplane, b->aeroplane);
}

START_TEST (a_moved_part_solves_nothing)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Aeroplane) first = racer ();
  g_autoptr (Aeroplane) moved = change_part_place (first, "battery", 101.3, 0, -3);
  g_autoptr (Figures) before = figures_of (cache, first);
  const int so_far = solves;
  g_autoptr (Figures) after = figures_of (cache, moved);

  ck_assert_int_eq (so_far, 1);
  ck_assert_int_eq (solves, so_far);
  ck_assert_double_lt (after->mass.x_mm, before->mass.x_mm);
  ck_assert_double_eq (after->neutral_point.x_mm, before->neutral_point.x_mm);
  figures_cache_free (cache);
}
END_TEST

START_TEST (a_changed_wing_is_solved_anew)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Aeroplane) first = racer ();
  g_autoptr (Aeroplane) wider = change_surface_span (first, "wing", 700);
  g_autoptr (Figures) before = figures_of (cache, first);
  const int so_far = solves;
  g_autoptr (Figures) after = figures_of (cache, wider);

  ck_assert_int_eq (solves, so_far + 1);
  ck_assert_double_eq_tol (after->reference->planform.span, 700, 1e-9);
  figures_cache_free (cache);
}
END_TEST

START_TEST (saying_that_there_is_no_tail_counts_as_a_change)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Aeroplane) first = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  AeroplaneTraits traits = aeroplane_traits (first);

  traits.tailless = true;
  g_autoptr (Aeroplane) tailless = aeroplane_with_traits (first, traits);
  g_autoptr (Figures) before = figures_of (cache, first);
  g_autoptr (Figures) after = figures_of (cache, tailless);
  g_autoptr (Figures) fresh = figures_once (tailless);
  ck_assert (before->neutral_point.wing_alone && !after->neutral_point.wing_alone);
  assert_same_figures (after, fresh);
  figures_cache_free (cache);
}
END_TEST

/* The last piece taken out: what remains is the beginning of what was there. */
static Aeroplane *
without_last (const Aeroplane *from, PieceKind kind)
{
  const size_t count = aeroplane_count (from, kind);

  return count > 1 ? aeroplane_without (from, aeroplane_nth (from, kind, count - 1)) : NULL;
}

static Aeroplane *
with_one_more (const Aeroplane *from, double x)
{
  g_autofree char *id = aeroplane_free_id (from, "more");
  Part *part = part_new (id, "other");

  part->mass = 3, part->x = x;
  return aeroplane_with_added (from, &part->piece);
}

/* Its mass goes by the wing as it is drawn. */
static Aeroplane *
with_a_cover (const Aeroplane *from, double g_m2)
{
  g_autofree char *id = aeroplane_free_id (from, "cover");
  Structure *cover = structure_new (id, "wing", NAN);

  cover->items = g_new (StructureItem, 1);
  cover->item_count = 1;
  cover->items[0] = structure_item (NULL);
  cover->items[0].of = TRACED_PLAN;
  cover->items[0].area_density = g_m2;
  return aeroplane_with_added (from, &cover->piece);
}

/* Takes it. One thing too wide for the body, by how much going by where it stands and whether the cowl is about it. */
static Aeroplane *
with_a_box (Aeroplane *from, const char *id, const char *class_name, double x, double width)
{
  Part *part = part_new (id, class_name);
  Aeroplane *made;

  part->mass = 3, part->x = x, part->length = 25, part->width = width, part->height = 8;
  made = aeroplane_with_added (from, &part->piece);
  aeroplane_unref (from);
  return made;
}

/* The body, drawn wider or narrower. */
static Aeroplane *
with_body_scaled (const Aeroplane *from, double across)
{
  Outline *mapped;

  if (aeroplane_count (from, PIECE_BODY) == 0 || outline_mapped (aeroplane_body (from, 0)->outline, (Point) { 1, across }, (Point) { 0 }, &mapped))
    return NULL;
  Body *next = (Body *) piece_dup (&aeroplane_body (from, 0)->piece);
  outline_unref (next->outline);
  next->outline = mapped;
  return aeroplane_with_replaced (from, &aeroplane_body (from, 0)->piece, &next->piece);
}

/* One change of the kind a hand makes; NULL where it changes nothing. */
static Aeroplane *
some_change (const Aeroplane *from)
{
  const double r = (double) rand () / RAND_MAX;

  switch (rand () % 18)
    {
    case 0: return change_part_place (from, "battery", 60 + 100 * r, 0, -3);
    case 1: return change_part_place (from, "motor", 20 + 20 * r, 0, 2 * r);
    case 2: return change_surface_moved (from, "wing", 4 * r - 2, 0);
    case 3: return change_surface_moved (from, "tail", 0, 6 * r - 3);
    case 4: return change_surface_span (from, "tail", 200 + 80 * r);
    case 5: return change_part_rail (from, "battery", 70 + 20 * r, 120 + 20 * r);
    case 6: return change_part_aboard (from, "wiring", r < 0.5);
    case 7: return change_mark_station (from, 0, 30 + 30 * r);
    case 8: return without_last (from, PIECE_PART);
    case 9: return without_last (from, PIECE_SURFACE);
    case 10: return with_one_more (from, 50 + 200 * r);
    case 11: return with_a_cover (from, 20 + 80 * r);
    case 12: return without_last (from, PIECE_STRUCTURE);
    case 13: return change_part_place (from, "box", 20 + 100 * r, 0, 0);
    case 14: return change_part_place (from, "cowl", 20 + 100 * r, 0, 0);
    case 15: return with_body_scaled (from, 0.8 + 0.4 * r);
    case 16: return change_part_aboard (from, "box", r < 0.5);
    default: return change_surface_outline (from, "wing", ellipse_from (112, 300 + 40 * r, 45, 85));
    }
}

START_TEST (after_any_walk_of_changes_and_undoing_the_bits_are_those_of_a_fresh_cache)
{
  enum { STEPS = 16 };
  FiguresCache *cache = figures_cache_new ();
  Aeroplane *steps[STEPS + 1] = { with_a_box (with_a_box (racer (), "box", "receiver", 60, 60), "cowl", "cowl", 60, 55) };
  int now = 0;

  srand (2024 + (unsigned) _i);
  for (int walked = 0; walked < 2 * STEPS; walked++)
    {
      if (now == STEPS || (now > 0 && rand () % 3 == 0))
        aeroplane_unref (steps[now--]);                        /* undo, and the step is gone */
      else
        {
          Aeroplane *next = some_change (steps[now]);

          if (next)
            steps[++now] = next;
        }
      g_autoptr (Figures) remembered = figures_of (cache, steps[now]);
      g_autoptr (Figures) fresh = figures_once (steps[now]);
      assert_same_figures (remembered, fresh);
    }
  while (now >= 0)
    aeroplane_unref (steps[now--]);
  figures_cache_free (cache);
}
END_TEST

/* The aeroplane is gone, its figures live on, and the cache does not mistake a new piece at an old address. */
START_TEST (figures_outlive_their_aeroplane_and_the_cache_its_pieces)
{
  FiguresCache *cache = figures_cache_new ();

  for (int i = 0; i < 50; i++)
    {
      const double span = 500 + 7 * i;
      Aeroplane *aeroplane = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, span, 100));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      aeroplane_unref (aeroplane);
      ck_assert_double_eq_tol (figures->reference->planform.span, span, 1e-9);
      ck_assert_str_eq (figures->reference->surface->piece.id, "wing");
    }
  figures_cache_free (cache);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures cache");
  TCase *tests = tcase_create ("cache");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, a_moved_part_solves_nothing);
  tcase_add_test (tests, a_changed_wing_is_solved_anew);
  tcase_add_test (tests, saying_that_there_is_no_tail_counts_as_a_change);
  tcase_add_loop_test (tests, after_any_walk_of_changes_and_undoing_the_bits_are_those_of_a_fresh_cache, 0, 8);
  tcase_add_test (tests, figures_outlive_their_aeroplane_and_the_cache_its_pieces);
  return run_suite (suite, tests);
}
