#include <check.h>
#include <locale.h>
#include <math.h>
#include <string.h>
#include "figures/mass-lists.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* Where the mass is, by group, and what each thing does about the balance point. */

static const Part *
part_of (const char *class, const char *kind)
{
  Part *part = part_new ("thing", class);

  part->kind = g_strdup (kind);
  return part;
}

START_TEST (groups_hold_all_that_is_aboard_once)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  MassGroupSum groups[MASS_GROUP_COUNT];
  double mass = 0, variance = 0;

  mass_groups_of (figures, groups);
  for (int i = 0; i < MASS_GROUP_COUNT; i++)
    {
      mass += groups[i].mass_g;
      variance += groups[i].sigma_g * groups[i].sigma_g;
    }
  ck_assert_double_eq_tol (mass, figures->mass.total_g, 1e-9);
  ck_assert_double_eq_tol (sqrt (variance), figures->mass.total_sigma_g, 1e-9);
  ck_assert_double_gt (groups[MASS_POWER].mass_g, 0);
  ck_assert_double_gt (groups[MASS_CONTROL].mass_g, 0);
  ck_assert_double_gt (groups[MASS_STRUCTURE].mass_g, 0);
}
END_TEST

START_TEST (groups_come_to_the_whole_with_the_bare_airframe_on_the_scale_too)
{
  g_autoptr (Aeroplane) aeroplane = racer (), weighed = NULL;
  g_autoptr (Figures) reckoned = figures_once (aeroplane), figures = NULL;
  AeroplaneTraits traits = aeroplane_traits (aeroplane);
  MassGroupSum groups[MASS_GROUP_COUNT];
  double mass = 0;

  traits.airframe = reckoned->airframe.reckoned_g - 8;
  weighed = aeroplane_with_traits (aeroplane, traits);
  figures = figures_once (weighed);
  ck_assert_double_lt (figures->mass.total_g, reckoned->mass.total_g - 7);
  mass_groups_of (figures, groups);
  for (int i = 0; i < MASS_GROUP_COUNT; i++)
    mass += groups[i].mass_g;
  ck_assert_double_eq_tol (mass, figures->mass.total_g, 1e-9);
}
END_TEST

/* The racer with both aileron servos on one lead that weighs something itself. */
static Aeroplane *
racer_with_joined_lead (void)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  Lead *lead = lead_new ("servo-left", "receiver");

  lead->piece.id = g_strdup ("joined");
  lead->also = g_strdup ("servo-right");
  lead->mass = 4;
  lead->mass_sigma = 0.5;
  return aeroplane_with_added (aeroplane, &lead->piece);
}

START_TEST (a_lead_that_weighs_something_is_in_its_group_once_and_among_the_moments)
{
  g_autoptr (Aeroplane) before = racer (), aeroplane = racer_with_joined_lead ();
  g_autoptr (Figures) had = figures_once (before), figures = figures_once (aeroplane);
  g_autofree char *moments = report_list_csv (figures, REPORT_LIST_MOMENTS);
  MassGroupSum without[MASS_GROUP_COUNT], groups[MASS_GROUP_COUNT];
  double mass = 0;

  mass_groups_of (had, without);
  mass_groups_of (figures, groups);
  for (int i = 0; i < MASS_GROUP_COUNT; i++)
    mass += groups[i].mass_g;
  ck_assert_double_eq_tol (mass, figures->mass.total_g, 1e-9);
  ck_assert_double_eq_tol (groups[MASS_CONTROL].mass_g, without[MASS_CONTROL].mass_g + 4, 1e-9);
  ck_assert_double_eq_tol (groups[MASS_CONTROL].sigma_g, hypot (without[MASS_CONTROL].sigma_g, 0.5), 1e-9);
  ck_assert_uint_eq (groups[MASS_CONTROL].count, without[MASS_CONTROL].count + 1);
  ck_assert_ptr_nonnull (strstr (moments, "joined,Two-into-one lead,control,4,"));
}
END_TEST

START_TEST (a_part_belongs_where_its_class_does_and_else_its_kind)
{
  static const struct { const char *class, *kind; MassGroup group; } cases[] = {
    { "battery", NULL, MASS_POWER }, { "servo", NULL, MASS_CONTROL }, { "wheels", NULL, MASS_GEAR }, { "cowl", NULL, MASS_STRUCTURE },
    { "ballast", NULL, MASS_BALLAST }, { "pilot", NULL, MASS_OTHER }, { "other", "horn", MASS_CONTROL }, { "other", "mount-cross", MASS_POWER },
    { "other", "tail-skid", MASS_GEAR }, { "other", "firewall", MASS_STRUCTURE }, { "other", "hook-and-loop", MASS_OTHER },
    { NULL, NULL, MASS_OTHER } };

  for (size_t i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const Part *part = part_of (cases[i].class, cases[i].kind);
      ck_assert_int_eq (mass_group_of (&part->piece), cases[i].group);
      piece_unref ((Piece *) &part->piece);
    }
}
END_TEST

/* FAA-H-8083-1: moments about the balance point add up to nought, those about the datum to the mass by its place. */
START_TEST (moments_about_the_balance_point_are_nought_together)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) moments = moments_of (figures);
  double about_balance = 0, about_datum = 0, last = INFINITY;

  for (guint i = 0; i < moments->len; i++)
    {
      const Moment *moment = &g_array_index (moments, Moment, i);

      about_balance += moment->about_balance_g_mm;
      about_datum += moment->about_datum_g_mm;
      ck_assert_double_le (fabs (moment->about_balance_g_mm), last + 1e-6);
      ck_assert_int_eq (moment->about_balance_g_mm > 0, moment->x_mm > figures->mass.x_mm);
      last = fabs (moment->about_balance_g_mm);
    }
  ck_assert_double_eq_tol (about_balance, 0, 1e-6);
  ck_assert_double_eq_tol (about_datum, figures->mass.total_g * figures->mass.x_mm, 1e-6);
}
END_TEST

static Body *
keel_with_formers (void)
{
  Body *keel = body_new ("keel");

  keel->former_count = 3;
  keel->formers = g_new (NamedPlace, keel->former_count);
  for (size_t i = 0; i < keel->former_count; i++)
    keel->formers[i] = (NamedPlace) { g_strdup_printf ("F%zu", i + 1), 40. * (double) i };
  return keel;
}

/* The racer's parts with a lead each to the receiver, three sticks to cut, and a keel with three formers. */
static Aeroplane *
wired_racer (void)
{
  static const char *const ends[] = { "battery", "motor", "controller" };
  Structure *deck = structure_new ("deck", "body", NAN);
  Aeroplane *made = racer ();

  deck->item_count = 3;
  deck->items = g_new (StructureItem, deck->item_count);
  for (size_t i = 0; i < deck->item_count; i++)
    {
      deck->items[i] = structure_item ("Stick");
      deck->items[i].length = 100;
    }
  made = with_piece (with_piece (made, deck), keel_with_formers ());
  for (size_t i = 0; i < G_N_ELEMENTS (ends); i++)
    {
      Lead *lead = lead_new (ends[i], "receiver");

      lead->piece.id = g_strdup_printf ("lead-%zu", i + 1);
      made = with_piece (made, lead);
    }
  return made;
}

START_TEST (every_list_has_a_heading_row_and_as_many_fields_in_each)
{
  g_autoptr (Aeroplane) aeroplane = wired_racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  for (ReportList list = 0; list < REPORT_LIST_COUNT; list++)
    {
      g_autofree char *csv = report_list_csv (figures, list);
      g_auto (GStrv) rows = g_strsplit (csv, "\r\n", -1);
      g_auto (GStrv) heading = g_strsplit (rows[0], ",", -1);
      ReportList found;

      ck_assert (strstr (rows[0], "_g") || strstr (rows[0], "_mm"));
      ck_assert_uint_gt (g_strv_length (rows), 4);
      for (char **row = rows; **row; row++)
        {
          g_auto (GStrv) fields = g_strsplit (*row, ",", -1);
          ck_assert_uint_eq (g_strv_length (fields), g_strv_length (heading));
        }
      ck_assert (report_list_from_word (report_list_word (list), &found) && found == list);
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("mass lists");

  tcase_add_test (tests, groups_hold_all_that_is_aboard_once);
  tcase_add_test (tests, groups_come_to_the_whole_with_the_bare_airframe_on_the_scale_too);
  tcase_add_test (tests, a_lead_that_weighs_something_is_in_its_group_once_and_among_the_moments);
  tcase_add_test (tests, a_part_belongs_where_its_class_does_and_else_its_kind);
  tcase_add_test (tests, moments_about_the_balance_point_are_nought_together);
  tcase_add_test (tests, every_list_has_a_heading_row_and_as_many_fields_in_each);
  return run_suite (suite_create ("mass lists"), tests);
}
