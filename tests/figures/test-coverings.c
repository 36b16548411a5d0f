#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "figures/covered.h"
#include "figures/coverings.h"
#include "figures/usual-lines.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What another covering does, each told held against the figures of the aeroplane so covered. */

static const Units metric = { LENGTH_MM, MASS_G };
static const CoveringWhere everywhere = { COVERING_ALL, NULL }, on_the_tail = { COVERING_TAIL, NULL };

/* Takes it; structures that were typed are forgotten first. */
static Aeroplane *
with_lines (Aeroplane *takes, const char *of)
{
  g_autoptr (Aeroplane) before = takes;
  const Structure *old = aeroplane_structure_of (before, of);
  g_autoptr (Aeroplane) bare = old ? aeroplane_without (before, &old->piece) : aeroplane_ref (before);

  return usual_lines_laid (bare, of);
}

static Aeroplane *
racer_of_lines (void)
{
  return with_lines (with_lines (with_lines (racer (), "wing"), "tail"), "fin");
}

static CoveringWhere
on (const Aeroplane *aeroplane, const char *id)
{
  return (CoveringWhere) { COVERING_PIECE, aeroplane_find (aeroplane, id) };
}

static const CoveringFigures *
kind_of (const Coverings *coverings, const char *word)
{
  for (size_t i = 0; i < coverings->count; i++)
    if (g_str_equal (coverings->of[i].covering->word, word))
      return &coverings->of[i];
  ck_abort_msg ("%s is not compared", word);
}

static double
off_g_mm (const Figures *figures)
{
  return figures->mass.total_g * (figures->mass.x_mm - figures->balance.advised_x_mm);
}

START_TEST (every_covering_chosen_weighs_and_balances_as_was_told)
{
  const CoveringWhere wheres[] = { everywhere, on_the_tail };
  g_autoptr (Aeroplane) aeroplane = racer_of_lines ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  for (size_t i = 0; i < G_N_ELEMENTS (wheres); i++)
    {
      const Coverings coverings = coverings_of (figures, wheres[i]);

      ck_assert_uint_eq (coverings.count, 11);
      for (size_t k = 0; k < coverings.count; k++)
        {
          g_autoptr (Aeroplane) covered = covering_chosen (figures, wheres[i], coverings.of[k].covering);
          g_autoptr (Figures) then = figures_once (covered);
          ck_assert_double_eq_tol (then->mass.total_g - figures->mass.total_g, coverings.of[k].change_g, 1e-9);
          ck_assert_double_eq_tol (then->mass.x_mm, coverings.of[k].balance_x_mm, 1e-9);
          ck_assert_double_eq_tol (then->mass.x_mm - figures->mass.x_mm, coverings.of[k].balance_way_mm, 1e-9);
        }
    }
}
END_TEST

/* Geometry: area all round × g/m² × overlaps × usual excess. 1.03 × both sides. */
START_TEST (a_covering_weighs_by_the_area_that_it_covers)
{
  g_autoptr (Aeroplane) aeroplane = with_lines (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (30, 640, 100)), "wing");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Coverings coverings = coverings_of (figures, on (aeroplane, "wing"));
  const double excess = 1 + aeroplane_structure (aeroplane, 0)->excess;
  const CoveringFigures *opaque = kind_of (&coverings, "iron-on");

  ck_assert_double_eq_tol (opaque->mass_g, 2 * 1.03 * 0.064 * 75 * 1.05 * excess, 1e-9);
  ck_assert_double_eq_tol (opaque->mass_sigma_g, 0.10 * opaque->mass_g, 1e-9);
  ck_assert_double_eq_tol (opaque->change_g, opaque->mass_g * (75 - 36) / 75, 1e-9);
}
END_TEST

START_TEST (the_battery_moved_as_told_and_what_is_told_for_the_nose_both_make_up_for_it)
{
  g_autoptr (Aeroplane) aeroplane = racer_of_lines ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Coverings coverings = coverings_of (figures, on_the_tail);
  const CoveringFigures *heavy = kind_of (&coverings, "fabric");
  g_autoptr (Aeroplane) covered = covering_chosen (figures, on_the_tail, heavy->covering);
  const Part *battery = aeroplane_part_by_id (covered, "battery");
  g_autoptr (Aeroplane) moved = change_part_place (covered, "battery", battery->x + heavy->part_way_mm, battery->y, battery->z);
  g_autoptr (Figures) with_moved = figures_once (moved);
  g_autoptr (Aeroplane) leaded = with_part (aeroplane_ref (covered), "lead", heavy->nose_g, figures->nose_x_mm);
  g_autoptr (Figures) with_lead = figures_once (leaded);

  ck_assert_str_eq (coverings.part->piece.id, "battery");
  ck_assert_double_lt (heavy->part_way_mm, -1);
  ck_assert_double_gt (heavy->nose_g, 1.5 * heavy->change_g);
  ck_assert_double_eq_tol (off_g_mm (with_moved), off_g_mm (figures), 1e-6);
  ck_assert_double_eq_tol (off_g_mm (with_lead), off_g_mm (figures), 1e-6);
}
END_TEST

START_TEST (what_is_there_now_changes_nothing_and_is_the_one_that_is_present)
{
  g_autoptr (Aeroplane) aeroplane = racer_of_lines ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Coverings coverings = coverings_of (figures, on_the_tail);

  for (size_t i = 0; i < coverings.count; i++)
    ck_assert_int_eq (coverings.of[i].present, g_str_equal (coverings.of[i].covering->word, "iron-on-light"));
  ck_assert_double_eq_tol (kind_of (&coverings, "iron-on-light")->change_g, 0, 1e-9);
  ck_assert_ptr_null (covering_text (&coverings, kind_of (&coverings, "iron-on-light"), metric));
  ck_assert (!coverings.bare);
}
END_TEST

/* 10 g less on the scale than reckoned: that is the airframe's, not the difference of two films. */
START_TEST (a_bare_airframe_on_the_scale_changes_nothing_of_what_another_covering_weighs_more)
{
  g_autoptr (Aeroplane) aeroplane = racer_of_lines (), weighed = NULL;
  g_autoptr (Figures) figures = figures_once (aeroplane), on_scale = NULL;
  AeroplaneTraits traits = aeroplane_traits (aeroplane);

  traits.airframe = figures->airframe.reckoned_g - 10;
  weighed = aeroplane_with_traits (aeroplane, traits);
  on_scale = figures_once (weighed);
  ck_assert_double_eq_tol (on_scale->mass.total_g, figures->mass.total_g - 10, 0.5);
  const Coverings before = coverings_of (figures, everywhere), after = coverings_of (on_scale, everywhere);

  for (size_t i = 0; i < before.count; i++)
    ck_assert_double_eq_tol (after.of[i].change_g, before.of[i].change_g, 1e-9);
}
END_TEST

START_TEST (the_tail_alone_is_covered_alone_and_says_what_the_lightest_spares_at_the_nose)
{
  g_autoptr (Aeroplane) aeroplane = racer_of_lines ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Coverings coverings = coverings_of (figures, on_the_tail);
  g_autofree char *text = coverings_text (&coverings, metric);
  g_autoptr (Aeroplane) covered = covering_chosen (figures, on_the_tail, coverings.of[0].covering);

  ck_assert_str_eq (coverings.of[0].covering->word, "film");
  ck_assert_ptr_nonnull (strstr (text, "at the nose"));
  ck_assert_ptr_eq (aeroplane_structure_of (covered, "wing"), aeroplane_structure_of (aeroplane, "wing"));
  ck_assert_ptr_ne (aeroplane_structure_of (covered, "fin"), aeroplane_structure_of (aeroplane, "fin"));
  ck_assert_ptr_ne (aeroplane_structure_of (covered, "tail"), aeroplane_structure_of (aeroplane, "tail"));
}
END_TEST

/* Whoever weighed the bare frame keeps what the scale said, as well as it was known. */
START_TEST (a_typed_mass_without_lines_is_a_bare_frame_and_the_covering_comes_on_top)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Coverings coverings = coverings_of (figures, on (aeroplane, "tail"));
  const CoveringFigures *tissue = kind_of (&coverings, "tissue");
  g_autoptr (Aeroplane) covered = covering_chosen (figures, coverings.where, tissue->covering);
  const Structure *before = aeroplane_structure_of (aeroplane, "tail"), *after = aeroplane_structure_of (covered, "tail");
  g_autoptr (Figures) then = figures_once (covered);

  ck_assert (coverings.bare);
  ck_assert_double_eq_tol (tissue->change_g, tissue->mass_g, 1e-9);
  ck_assert_double_nan (after->mass);
  ck_assert_uint_eq (after->item_count, 2);
  ck_assert_double_eq (after->items[0].weighed, before->mass);
  ck_assert_double_eq_tol (after->items[0].weighed_sigma, 0.18 * before->mass, 1e-9);
  ck_assert_str_eq (after->items[1].material, "tissue");
  ck_assert_double_eq_tol (then->mass.total_g, figures->mass.total_g + tissue->mass_g, 1e-9);
}
END_TEST

START_TEST (a_typed_mass_with_lines_changes_by_what_its_covering_does)
{
  g_autoptr (Aeroplane) lined = racer_of_lines ();
  const Structure *old = aeroplane_structure_of (lined, "wing");
  Structure *weighed = (Structure *) piece_dup (&old->piece);
  weighed->mass = 26;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (lined, &old->piece, &weighed->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane), of_lines = figures_once (lined);
  const Coverings typed = coverings_of (figures, on (aeroplane, "wing")), reckoned = coverings_of (of_lines, on (lined, "wing"));
  g_autoptr (Aeroplane) covered = covering_chosen (figures, typed.where, kind_of (&typed, "iron-on")->covering);

  ck_assert_double_eq_tol (kind_of (&typed, "iron-on")->change_g, kind_of (&reckoned, "iron-on")->change_g, 1e-9);
  ck_assert_double_eq_tol (aeroplane_structure_of (covered, "wing")->mass, 26 + kind_of (&typed, "iron-on")->change_g, 1e-9);
}
END_TEST

START_TEST (a_covering_that_was_weighed_is_not_weighed_any_more_when_it_is_another)
{
  g_autoptr (Aeroplane) aeroplane = racer_of_lines ();
  const Structure *wing = aeroplane_structure_of (aeroplane, "wing");
  StructureItem white = wing->items[wing->item_count - 1];
  white.name = (char *) "White film";
  white.weighed = 7;
  g_autoptr (Aeroplane) weighed = change_structure_item (aeroplane, wing->piece.id, wing->item_count - 1, &white);
  g_autoptr (Figures) figures = figures_once (weighed);
  g_autoptr (Aeroplane) covered = covering_chosen (figures, everywhere, material_class_find ("silk"));
  const StructureItem *silk = &aeroplane_structure_of (covered, "wing")->items[wing->item_count - 1];

  ck_assert (structure_item_covers (silk));
  ck_assert_double_nan (silk->weighed);
  ck_assert_ptr_null (silk->name);
}
END_TEST

START_TEST (what_is_not_traced_cannot_be_covered)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), body_new ("body"));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) wheres = covering_wheres (figures);

  ck_assert_uint_eq (wheres->len, 0);
  ck_assert_uint_eq (coverings_of (figures, on (aeroplane, "body")).count, 0);
  ck_assert_ptr_null (covering_chosen (figures, everywhere, material_class_find ("silk")));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("coverings");

  tcase_add_test (tests, every_covering_chosen_weighs_and_balances_as_was_told);
  tcase_add_test (tests, a_covering_weighs_by_the_area_that_it_covers);
  tcase_add_test (tests, the_battery_moved_as_told_and_what_is_told_for_the_nose_both_make_up_for_it);
  tcase_add_test (tests, what_is_there_now_changes_nothing_and_is_the_one_that_is_present);
  tcase_add_test (tests, a_bare_airframe_on_the_scale_changes_nothing_of_what_another_covering_weighs_more);
  tcase_add_test (tests, the_tail_alone_is_covered_alone_and_says_what_the_lightest_spares_at_the_nose);
  tcase_add_test (tests, a_typed_mass_without_lines_is_a_bare_frame_and_the_covering_comes_on_top);
  tcase_add_test (tests, a_typed_mass_with_lines_changes_by_what_its_covering_does);
  tcase_add_test (tests, a_covering_that_was_weighed_is_not_weighed_any_more_when_it_is_another);
  tcase_add_test (tests, what_is_not_traced_cannot_be_covered);
  return run_suite (suite_create ("coverings"), tests);
}
