/* The usual fit upon the usual airframe: what stands afterwards balances, or says what is missing. Common practice, no source. */
#include <math.h>
#include <string.h>
#include "document/data-path.h"
#include "document/reader.h"
#include "figures/advice-state.h"
#include "figures/lead-need.h"
#include "figures/names.h"
#include "figures/unweighed.h"
#include "figures/usual-whole.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static Catalogue *
usual (void)
{
  g_autofree char *path = data_path ("catalogue.xml");

  return catalogue_read_file (NULL, path, NULL);
}

/* What is drawn of an example alone: no part, no lead, no structure. */
static Aeroplane *
drawn_of (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", name, NULL);
  Aeroplane *left = reader_read_file (path, NULL, NULL);

  ck_assert_ptr_nonnull (left);
  for (size_t i = aeroplane_piece_count (left); i-- > 0;)
    {
      const Piece *piece = aeroplane_piece (left, i);

      if (piece->kind == PIECE_PART || piece->kind == PIECE_LEAD || piece->kind == PIECE_STRUCTURE)
        {
          Aeroplane *next = aeroplane_without (left, piece);

          aeroplane_unref (left);
          left = next;
        }
    }
  return left;
}

static const struct { const char *name; UsualFit choice; } models[] = {
  { "saltmarsh-racer.trammel", FIT_MOTOR_ELEVATOR_AILERONS_TWO }, { "saltmarsh-racer.trammel", FIT_MOTOR_ALL },
  { "heron-tourer.trammel", FIT_MOTOR_RUDDER_ELEVATOR }, { "heron-tourer.trammel", FIT_GLIDER_ALL },
};

START_TEST (the_battery_stands_where_the_advice_wants_it_or_at_the_nearest_that_its_rail_has)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) drawn = drawn_of (models[_i].name);
  g_autoptr (Aeroplane) fitted = usual_fit_whole (drawn, catalogue, models[_i].choice, true);
  g_autoptr (Figures) figures = figures_once (fitted);
  const Solution *solution = figures_solution (figures, "battery");

  ck_assert (airframe_is_weighed (fitted));
  ck_assert_uint_eq (unweighed_pieces (fitted, NULL, 0), 0);
  ck_assert_ptr_nonnull (solution);
  ck_assert_double_eq_tol (solution->part->x, advice_place_x_mm (solution), 0.1);
  for (size_t i = 0; i < aeroplane_count (fitted, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (fitted, i)); leg++)
      ck_assert (!(lead_need_of (fitted, aeroplane_lead (fitted, i), leg).missing > 0.5));
  if (solution->reachable)
    ck_assert_double_eq_tol (figures->mass.x_mm, figures->balance.advised_x_mm, 0.1);
}
END_TEST

START_TEST (what_holds_the_battery_goes_along)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) drawn = drawn_of ("saltmarsh-racer.trammel");
  g_autoptr (Aeroplane) fitted = usual_fit_whole (drawn, catalogue, FIT_MOTOR_ALL, true);
  const Part *battery = aeroplane_part_by_id (fitted, "battery"), *strap = aeroplane_part_by_id (fitted, "hook-and-loop");

  ck_assert_str_eq (strap->group, battery->group);
  ck_assert_double_eq_tol (strap->x, battery->x, 0.6);       /* it was put to a whole millimetre */
}
END_TEST

START_TEST (without_the_airframe_nothing_is_moved_and_nothing_laid_down)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) drawn = drawn_of ("saltmarsh-racer.trammel");
  g_autoptr (Aeroplane) whole = usual_fit_whole (drawn, catalogue, FIT_MOTOR_ALL, false);
  g_autoptr (Aeroplane) parts = usual_fit (drawn, catalogue, FIT_MOTOR_ALL, false);

  ck_assert (!airframe_is_weighed (whole));
  ck_assert_double_eq (aeroplane_part_by_id (whole, "battery")->x, aeroplane_part_by_id (parts, "battery")->x);
}
END_TEST

START_TEST (what_weighs_something_already_keeps_its_mass)
{
  g_autoptr (Aeroplane) drawn = with_structure (drawn_of ("saltmarsh-racer.trammel"), "wing-structure", "wing", 33);
  g_autoptr (Aeroplane) built = usual_airframe (drawn);

  ck_assert_double_eq (aeroplane_structure_of (built, "wing")->mass, 33);
  ck_assert_uint_eq (aeroplane_structure_of (built, "wing")->item_count, 0);
  ck_assert_uint_gt (aeroplane_structure_of (built, "body")->item_count, 0);
  ck_assert_ptr_null (usual_airframe (built));
}
END_TEST

/* An id is no name. What somebody called a structure stays. */
START_TEST (a_structure_is_called_after_what_it_is_of)
{
  g_autoptr (Aeroplane) drawn = with_structure (drawn_of ("saltmarsh-racer.trammel"), "skid and tailpost", "body", 3);
  g_autoptr (Aeroplane) built = usual_airframe (drawn);

  ck_assert_str_eq (aeroplane_structure_of (built, "wing")->piece.id, "wing-structure");
  ck_assert_str_eq (piece_name (&aeroplane_structure_of (built, "wing")->piece), "Wing structure");
  ck_assert_str_eq (piece_name (&aeroplane_structure_of (built, "tail")->piece), "Tail structure");
  ck_assert_str_eq (piece_name (aeroplane_find (built, "skid and tailpost")), "skid and tailpost");
}
END_TEST

START_TEST (a_rudder_without_a_fin_is_known_to_be_left_out)
{
  g_autoptr (Aeroplane) drawn = drawn_of ("saltmarsh-racer.trammel");
  g_autoptr (Aeroplane) finless = aeroplane_without_dependents (drawn, aeroplane_find (drawn, "fin"));

  ck_assert (!usual_fit_lacks_fin (drawn, FIT_MOTOR_ALL));
  ck_assert (usual_fit_lacks_fin (finless, FIT_MOTOR_ALL));
  ck_assert (!usual_fit_lacks_fin (finless, FIT_MOTOR_ELEVATOR_AILERONS));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("usual whole");

  tcase_add_loop_test (tests, the_battery_stands_where_the_advice_wants_it_or_at_the_nearest_that_its_rail_has, 0, (int) G_N_ELEMENTS (models));
  tcase_add_test (tests, what_holds_the_battery_goes_along);
  tcase_add_test (tests, without_the_airframe_nothing_is_moved_and_nothing_laid_down);
  tcase_add_test (tests, what_weighs_something_already_keeps_its_mass);
  tcase_add_test (tests, a_structure_is_called_after_what_it_is_of);
  tcase_add_test (tests, a_rudder_without_a_fin_is_known_to_be_left_out);
  return run_suite (suite_create ("figures usual whole"), tests);
}
