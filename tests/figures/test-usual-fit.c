/* One choice of what is to be controlled puts everything that such a model carries. Common practice, no source. */
#include "figures/nose-figures.h"
#include "figures/usual-fit.h"
#include <math.h>
#include <string.h>
#include "document/data-path.h"
#include "document/reader.h"
#include "figures/lead-need.h"
#include "figures/room-faults.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static Catalogue *
usual (void)
{
  g_autofree char *path = data_path ("catalogue.xml");

  return catalogue_read_file (NULL, path, NULL);
}

static Aeroplane *
example (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", name, NULL);
  Aeroplane *read = reader_read_file (path, NULL, NULL);

  ck_assert_ptr_nonnull (read);
  return read;
}

static Aeroplane *
heron (void)
{
  return example ("heron-tourer.trammel");
}

static Aeroplane *
saltmarsh (void)
{
  return example ("saltmarsh-racer.trammel");
}

static Aeroplane *
wing_and_tail (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (112, 640, 130));

  made = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (420, 240, 70));
  return with_surface (made, "fin", ROLE_FIN, polygon_from ((Point[]) { { 400, 0 }, { 430, 80 }, { 470, 80 }, { 480, 0 } }, 4));
}

static Aeroplane *
biplane (void)
{
  Surface *upper = surface_new ("upper", ROLE_WING, rectangle (100, 600, 110));

  upper->z = 90;
  return with_piece (wing_and_tail (), upper);
}

static Aeroplane *
foreplane_first (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (300, 700, 140));

  return with_surface (made, "nose", ROLE_FOREPLANE, rectangle (40, 260, 70));
}

static Aeroplane *
tailless (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 800, 200));
}

static const struct { const char *name; Aeroplane *(*made) (void); bool tail, fin; } layouts[] = {
  { "racer", racer, true, true }, { "saltmarsh", saltmarsh, true, true }, { "heron", heron, true, true },
  { "no body", wing_and_tail, true, true }, { "biplane", biplane, true, true }, { "foreplane", foreplane_first, true, false },
  { "tailless", tailless, false, false },
};

static size_t
count_class (const Aeroplane *aeroplane, const char *class_name)
{
  size_t count = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    count += g_strcmp0 (aeroplane_part (aeroplane, i)->class_name, class_name) == 0;
  return count;
}

static Aeroplane *
fitted (size_t layout, UsualFit choice)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) before = layouts[layout].made ();

  return usual_fit (before, catalogue, choice, true);
}

/* In plan nothing stands in another's place, nothing reaches through the body, servos are no higher than the wing, and all leads reach. */
START_TEST (in_every_layout_and_choice_everything_has_room_and_reaches)
{
  for (UsualFit choice = 0; choice < USUAL_FIT_COUNT; choice++)
    {
      g_autoptr (Aeroplane) made = fitted ((size_t) _i, choice);
      RoomProfiles profiles = { .count = 0 };
      GArray *faults;

      room_profiles_update (&profiles, made);
      faults = room_faults (&profiles, made);
      if (faults->len > 0)
        {
          const RoomFault *fault = &g_array_index (faults, RoomFault, 0);
          ck_abort_msg ("%s, %d: fault %d of %s and %s, %g mm", layouts[_i].name, choice, fault->kind, fault->part->piece.id,
                        fault->other ? fault->other->piece.id : "none", fault->lacking_mm);
        }
      g_array_unref (faults);
      room_profiles_clear (&profiles);
    }
}
END_TEST

/* Two servos on one channel share a two-into-one lead; where they are the elevator as well each has its own. */
START_TEST (both_aileron_servos_share_one_lead_unless_each_has_a_channel)
{
  g_autoptr (Aeroplane) racing = fitted (0, FIT_MOTOR_ELEVATOR_AILERONS_TWO), flying_wing = fitted (6, FIT_MOTOR_ELEVATOR_AILERONS_TWO);
  const Lead *shared = NULL;
  size_t to_servos = 0;

  for (size_t i = 0; i < aeroplane_count (racing, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (racing, i);

      ck_assert_ptr_nonnull (lead->piece.id);
      shared = lead_is_joined (lead) ? lead : shared;
      to_servos += g_strcmp0 (lead->from, "servo-left") == 0 || g_strcmp0 (lead->from, "servo-right") == 0;
    }
  ck_assert_uint_eq (to_servos, 1);
  ck_assert_ptr_nonnull (shared);
  ck_assert_str_eq (shared->also, "servo-right");
  ck_assert_double_eq (shared->mass, 4.5);
  for (size_t i = 0; i < aeroplane_count (flying_wing, PIECE_LEAD); i++)
    ck_assert (!lead_is_joined (aeroplane_lead (flying_wing, i)));
}
END_TEST

START_TEST (inside_a_body_stands_what_belongs_there)
{
  g_autoptr (Aeroplane) made = fitted ((size_t) _i, FIT_MOTOR_ALL);
  const Box body = outline_bounds (aeroplane_body (made, 0)->outline);

  for (size_t i = 0; i < aeroplane_count (made, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (made, i);
      static const char *const within[] = { "motor", "controller", "battery", "receiver", NULL };

      if (!g_strv_contains (within, part->class_name))
        continue;
      ck_assert_msg (part->x - part->length / 2 >= body.min.x && part->x + part->length / 2 <= body.max.x, "%s", part->piece.id);
      ck_assert_msg (fabs (part->y) + part->width / 2 <= body.max.y, "%s", part->piece.id);
    }
}
END_TEST

/* The can finds room behind the point; 3 mm behind a hub is common practice, no source. */
START_TEST (ahead_of_a_pointed_nose_the_propeller_clears_it_as_usual)
{
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  Body *body = body_new ("body");
  NoseFigures nose;

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 120, 30 }, { 400, 10 }, { 470, 0 } }, 4);
  g_autoptr (Aeroplane) plain = with_piece (wing_and_tail (), body);
  g_autoptr (Aeroplane) made = usual_fit (plain, catalogue, FIT_MOTOR, false);
  const Part *motor = aeroplane_part_by_id (made, "motor");
  ck_assert_double_gt (motor->x - motor->length / 2, 20);
  ck_assert (nose_figures_of (made, motor, &nose));
  ck_assert_double_eq_tol (nose.gap_mm, 3, 1e-9);
  ck_assert_double_eq (nose.out_mm, 0);
}
END_TEST

static const struct { UsualFit choice; size_t servos, motors; } counts[] = {
  { FIT_MOTOR, 0, 1 }, { FIT_MOTOR_RUDDER_ELEVATOR, 2, 1 }, { FIT_MOTOR_ELEVATOR_AILERONS, 2, 1 },
  { FIT_MOTOR_ELEVATOR_AILERONS_TWO, 3, 1 },
  { FIT_MOTOR_ALL, 4, 1 }, { FIT_GLIDER_RUDDER_ELEVATOR, 2, 0 }, { FIT_GLIDER_ELEVATOR_AILERONS, 3, 0 }, { FIT_GLIDER_ALL, 4, 0 },
};

START_TEST (a_choice_brings_its_servos_and_its_motor)
{
  g_autoptr (Aeroplane) made = fitted (0, counts[_i].choice);

  ck_assert_uint_eq (count_class (made, "servo"), counts[_i].servos);
  ck_assert_uint_eq (count_class (made, "motor"), counts[_i].motors);
  ck_assert_uint_eq (count_class (made, "propeller"), counts[_i].motors);
  ck_assert_uint_eq (count_class (made, "controller"), counts[_i].motors);
  ck_assert_uint_eq (count_class (made, "battery"), 1);
  ck_assert_uint_eq (count_class (made, "receiver"), 1);
}
END_TEST

START_TEST (there_is_no_servo_for_what_is_not_there)
{
  g_autoptr (Aeroplane) canard = fitted (5, FIT_MOTOR_RUDDER_ELEVATOR);
  g_autoptr (Aeroplane) wing = fitted (6, FIT_MOTOR_RUDDER_ELEVATOR);

  ck_assert_uint_eq (count_class (canard, "servo"), 1);
  ck_assert_uint_eq (count_class (wing, "servo"), 2);        /* both in the wing: its flaps are its elevator */
  ck_assert_str_eq (aeroplane_part_by_id (wing, "servo-left")->of, "wing");
}
END_TEST

/* An elliptical racer of 680 mm and 168 g all-up carries 88 g: motor 14 + mount, propeller 4, controller 9, receiver 3, three servos 13.5,
 * leads, run, pack 27 (worked example of the trade; common practice, no source). */
START_TEST (a_racer_of_64_grams_of_structure_carries_what_such_a_one_does)
{
  g_autoptr (Aeroplane) made = fitted (0, FIT_MOTOR_ELEVATOR_AILERONS_TWO);

  ck_assert_str_eq (aeroplane_part_by_id (made, "motor")->kind, "motor-22x16");
  ck_assert_str_eq (aeroplane_part_by_id (made, "controller")->kind, "controller-12");
  ck_assert_str_eq (aeroplane_part_by_id (made, "receiver")->kind, "receiver-feather");
  ck_assert_double_ge (parts_mass (made), 60);
  ck_assert_double_le (parts_mass (made), 95);
}
END_TEST

/* 18 to 28 g/dm² at 650 mm of span, 27 to 42 at 1000. */
START_TEST (without_structures_the_all_up_mass_is_a_usual_loading_for_the_span)
{
  g_autoptr (Aeroplane) small = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 650, 100));
  g_autoptr (Aeroplane) large = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 1000, 160));
  g_autoptr (Aeroplane) empty = aeroplane_new ();

  ck_assert_double_eq_tol (usual_all_up (small) / 6.5, 23, 5);
  ck_assert_double_eq_tol (usual_all_up (large) / 16, 34.5, 7.5);
  ck_assert (isnan (usual_all_up (empty)));
}
END_TEST

START_TEST (what_is_there_stays_and_is_counted)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) before = racer ();
  g_autoptr (Aeroplane) made = usual_fit (before, catalogue, FIT_MOTOR_ALL, false);

  ck_assert_ptr_eq (aeroplane_part_by_id (made, "battery"), aeroplane_part_by_id (before, "battery"));
  ck_assert_uint_eq (count_class (made, "servo"), 4);
  ck_assert_uint_eq (count_class (made, "motor"), 1);
  g_autoptr (Aeroplane) again = usual_fit (made, catalogue, FIT_MOTOR_ALL, false);
  ck_assert (aeroplane_equal (again, made));
}
END_TEST

START_TEST (the_battery_may_slide_over_what_is_free_about_it)
{
  g_autoptr (Aeroplane) made = fitted (1, FIT_MOTOR_ELEVATOR_AILERONS_TWO);
  const Part *battery = aeroplane_part_by_id (made, "battery");

  ck_assert (battery->has_rail);
  ck_assert_double_gt (battery->rail_to - battery->rail_from, 5);
  ck_assert (battery->rail_from <= battery->x && battery->x <= battery->rail_to);
}
END_TEST

START_TEST (what_holds_the_battery_is_grouped_with_it)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) bare = wing_and_tail (), made = usual_fit (bare, catalogue, FIT_MOTOR_RUDDER_ELEVATOR, false);
  const Part *tape = aeroplane_part_by_id (made, "hook-and-loop"), *battery = aeroplane_part_by_id (made, "battery");

  ck_assert_ptr_nonnull (tape);
  ck_assert_ptr_nonnull (battery->group);
  ck_assert_str_eq (tape->group, battery->group);
}
END_TEST

START_TEST (nothing_is_put_without_a_wing)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  g_autoptr (Aeroplane) made = usual_fit (empty, catalogue, FIT_MOTOR, false);

  ck_assert (aeroplane_equal (made, empty));
}
END_TEST

START_TEST (an_all_up_mass_is_shared_out_as_usual_over_what_is_drawn)
{
  g_autoptr (Aeroplane) bare = wing_and_tail ();
  g_autoptr (Aeroplane) loaded = with_part (aeroplane_ref (bare), "motor", 70, 30);
  g_autoptr (Aeroplane) made = usual_structures (loaded, 170);
  double sum = 0, wing = 0;

  for (size_t i = 0; i < aeroplane_count (made, PIECE_STRUCTURE); i++)
    {
      const Structure *structure = aeroplane_structure (made, i);

      sum += structure->mass;
      wing += g_strcmp0 (structure->of, "wing") == 0 ? structure->mass : 0;
      ck_assert_double_eq_tol (structure->mass_sigma, structure->mass / 4, 1e-9);
    }
  ck_assert_double_eq_tol (sum, 100, 1e-9);
  ck_assert_double_eq_tol (wing, 100 * 0.37 / 0.53, 1e-9);      /* without a body its share goes to the rest */
  ck_assert_ptr_null (usual_structures (made, 200));      /* they have a mass by now */
  ck_assert_ptr_null (usual_structures (loaded, 70));
  ck_assert_ptr_null (usual_structures (loaded, NAN));
}
END_TEST

START_TEST (with_a_body_it_has_its_share)
{
  Aeroplane *winged = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (112, 640, 130));
  g_autoptr (Aeroplane) bare = with_structure (winged, "skin", "wing", 0);
  Body *body = body_new ("body");
  g_autoptr (Aeroplane) made = NULL;

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 100, 25 }, { 460, 0 } }, 3);
  bare = with_piece (g_steal_pointer (&bare), body);
  made = usual_structures (bare, 91);
  ck_assert_uint_eq (aeroplane_count (made, PIECE_STRUCTURE), 3);
  ck_assert_double_eq_tol (aeroplane_structure_by_id (made, "skin")->mass, 37, 1e-9);
  ck_assert_double_eq_tol (aeroplane_structure_by_id (made, "body-structure")->mass, 47, 1e-9);
  ck_assert_double_eq_tol (aeroplane_structure_by_id (made, "finish")->x, 230, 1);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("usual fit");

  tcase_add_loop_test (tests, in_every_layout_and_choice_everything_has_room_and_reaches, 0, G_N_ELEMENTS (layouts));
  tcase_add_test (tests, both_aileron_servos_share_one_lead_unless_each_has_a_channel);
  tcase_add_loop_test (tests, inside_a_body_stands_what_belongs_there, 0, 3);
  tcase_add_test (tests, ahead_of_a_pointed_nose_the_propeller_clears_it_as_usual);
  tcase_add_loop_test (tests, a_choice_brings_its_servos_and_its_motor, 0, G_N_ELEMENTS (counts));
  tcase_add_test (tests, there_is_no_servo_for_what_is_not_there);
  tcase_add_test (tests, a_racer_of_64_grams_of_structure_carries_what_such_a_one_does);
  tcase_add_test (tests, without_structures_the_all_up_mass_is_a_usual_loading_for_the_span);
  tcase_add_test (tests, what_is_there_stays_and_is_counted);
  tcase_add_test (tests, the_battery_may_slide_over_what_is_free_about_it);
  tcase_add_test (tests, what_holds_the_battery_is_grouped_with_it);
  tcase_add_test (tests, nothing_is_put_without_a_wing);
  tcase_add_test (tests, an_all_up_mass_is_shared_out_as_usual_over_what_is_drawn);
  tcase_add_test (tests, with_a_body_it_has_its_share);
  return run_suite (suite_create ("figures usual fit"), tests);
}
