#include <check.h>
#include <string.h>
#include "document/data-path.h"
#include "figures/servo-fittings.h"
#include "figures/usual-fit.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* What goes with a servo when it goes. Where things are is as the usual fit puts them; common practice, no source. */

static Aeroplane *
fitted (UsualFit choice)
{
  g_autofree char *path = data_path ("catalogue.xml");
  g_autoptr (Catalogue) catalogue = catalogue_read_file (NULL, path, NULL);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (112, 640, 130));

  made = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (420, 240, 70));
  made = with_surface (made, "fin", ROLE_FIN, polygon_from ((Point[]) { { 400, 0 }, { 430, 80 }, { 470, 80 }, { 480, 0 } }, 4));
  g_autoptr (Aeroplane) bare = made;
  return usual_fit (bare, catalogue, choice, false);
}

/* Ids of what serves that servo alone, in the document's order. A new string. */
static char *
fittings (const Aeroplane *aeroplane, const char *servo)
{
  g_autoptr (GPtrArray) all = servo_fittings (aeroplane, aeroplane_part_by_id (aeroplane, servo));
  GString *ids = g_string_new (NULL);

  for (guint i = 0; i < all->len; i++)
    g_string_append_printf (ids, "%s ", ((const Part *) g_ptr_array_index (all, i))->piece.id);
  return g_string_free (ids, FALSE);
}

static void
ck_fittings (const Aeroplane *aeroplane, const char *servo, const char *ids)
{
  g_autofree char *got = fittings (aeroplane, servo);

  ck_assert_str_eq (got, ids);
}

START_TEST (each_servo_has_its_own_pushrod_and_horns)
{
  g_autoptr (Aeroplane) made = fitted (FIT_MOTOR_ALL);

  ck_fittings (made, "servo-elevator", "pushrod-elevator horn ");
  ck_fittings (made, "servo-rudder", "pushrod-rudder horn-2 ");
  ck_fittings (made, "servo-left", "horn-3 ");
  ck_fittings (made, "servo-right", "horn-4 ");
}
END_TEST

START_TEST (torque_rods_go_with_the_one_servo_that_turns_them)
{
  g_autoptr (Aeroplane) made = fitted (FIT_MOTOR_ELEVATOR_AILERONS);

  ck_fittings (made, "servo-ailerons", "torque-rods ");
}
END_TEST

START_TEST (an_extension_goes_with_the_lead_it_lies_on)
{
  g_autoptr (Aeroplane) bare = fitted (FIT_MOTOR_ALL);
  const Part *left = aeroplane_part_by_id (bare, "servo-left"), *receiver = aeroplane_part_by_id (bare, "receiver");
  Part *extension = part_new ("extension", "other");
  Lead *lead = lead_new ("servo-left", "receiver");

  extension->kind = g_strdup ("extension-150");
  extension->x = (left->x + receiver->x) / 2;
  extension->y = left->y / 2;
  lead->piece.id = g_strdup ("plain");
  g_autoptr (Aeroplane) plain = aeroplane_without (bare, &aeroplane_lead (bare, aeroplane_count (bare, PIECE_LEAD) - 1)->piece);
  g_autoptr (Aeroplane) led = aeroplane_with_added (plain, &lead->piece);
  g_autoptr (Aeroplane) made = aeroplane_with_added (led, &extension->piece);
  ck_fittings (made, "servo-left", "horn-3 extension ");
  ck_fittings (made, "servo-right", "horn-4 ");
}
END_TEST

/* Side by side at one rod's end neither is nearer. */
START_TEST (a_rod_that_two_servos_share_stays)
{
  Aeroplane *made = aeroplane_new ();
  Part *rod = part_new ("rod", "pushrod");

  rod->x = 300, rod->length = 200, rod->width = 3;
  for (int side = -1; side <= 1; side += 2)
    {
      Part *servo = part_new (side < 0 ? "left" : "right", "servo");

      servo->x = 200;
      servo->y = 6 * side;
      made = with_piece (made, servo);
    }
  g_autoptr (Aeroplane) both = with_piece (made, rod);
  g_autoptr (Aeroplane) one = aeroplane_without (both, &aeroplane_part_by_id (both, "left")->piece);
  ck_fittings (both, "left", "");
  ck_fittings (both, "right", "");
  ck_fittings (one, "right", "rod ");
}
END_TEST

START_TEST (what_is_no_servo_takes_nothing_along)
{
  g_autoptr (Aeroplane) made = fitted (FIT_MOTOR_ALL);

  ck_fittings (made, "receiver", "");
  ck_fittings (made, "pushrod-elevator", "");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("servo fittings");

  tcase_add_test (tests, each_servo_has_its_own_pushrod_and_horns);
  tcase_add_test (tests, torque_rods_go_with_the_one_servo_that_turns_them);
  tcase_add_test (tests, an_extension_goes_with_the_lead_it_lies_on);
  tcase_add_test (tests, a_rod_that_two_servos_share_stays);
  tcase_add_test (tests, what_is_no_servo_takes_nothing_along);
  return run_suite (suite_create ("figures servo fittings"), tests);
}
