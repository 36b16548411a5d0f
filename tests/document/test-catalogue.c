/* The catalogue of part classes: what comes with the program, what a person adds, what is wrong with a file. */
#include "document/catalogue.h"
#include <math.h>
#include <stdio.h>
#include <string.h>
#include "document/data-path.h"
#include "document/part-class.h"
#include "support/run-suite.h"

#define HEAD "<catalogue xmlns='urn:trammel:catalogue' version='1'>\n"

static Catalogue *
usual (void)
{
  g_autofree char *path = data_path ("catalogue.xml");
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  Catalogue *made = catalogue_read_file (NULL, path, problems);

  ck_assert_msg (problems->len == 0, "%s", problems->len ? (char *) problems->pdata[0] : "");
  return made;
}

static Catalogue *
read_text (const Catalogue *before, const char *text, GPtrArray *problems)
{
  return catalogue_read_data (before, text, strlen (text), "own", problems);
}

START_TEST (the_programs_own_has_something_of_each_class_that_is_bought_and_says_where_its_figures_come_from)
{
  static const char *const classes[] = { "motor", "propeller", "spinner", "controller", "receiver", "switch", "battery", "servo", "pushrod",
                                         "wheels", "undercarriage", "cowl", "canopy", "pilot", "ballast", "other" };
  g_autoptr (Catalogue) catalogue = usual ();

  for (size_t i = 0; i < G_N_ELEMENTS (classes); i++)
    {
      size_t met = 0;

      for (size_t j = 0; j < catalogue_count (catalogue); j++)
        met += strcmp (catalogue_entry (catalogue, j)->class_name, classes[i]) == 0;
      ck_assert_msg (met > 0, "%s", classes[i]);
    }
  for (size_t j = 0; j < catalogue_count (catalogue); j++)
    ck_assert_msg (catalogue_entry (catalogue, j)->source && *catalogue_entry (catalogue, j)->source, "%s",
                   catalogue_entry (catalogue, j)->id);
}
END_TEST

/* Nothing aboard is denser than lead (11.34 g/cm³; CRC Handbook of Chemistry and Physics, from memory); boxes are round the thing. */
START_TEST (nothing_in_it_is_denser_than_lead_or_strays_by_half)
{
  g_autoptr (Catalogue) catalogue = usual ();

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      const double volume = entry->length * entry->width * entry->height;

      ck_assert_msg (entry->mass > 0, "%s", entry->id);
      ck_assert_msg (volume == 0 || entry->mass / volume < 11.35e-3, "%s: %g g/cm³", entry->id, entry->mass / volume * 1000);
      ck_assert_msg (isnan (entry->mass_sigma) || (entry->mass_sigma > 0 && entry->mass_sigma < entry->mass / 2), "%s", entry->id);
    }
}
END_TEST

START_TEST (an_entry_becomes_a_part_that_remembers_it)
{
  g_autoptr (Catalogue) catalogue = usual ();
  Part *part = catalogue_entry_part (catalogue_find (catalogue, "battery-2s-450"));

  ck_assert_str_eq (part->class_name, "battery");
  ck_assert_str_eq (part->kind, "battery-2s-450");
  ck_assert_str_eq (part->name, "Battery 2S 450 mAh");
  ck_assert_double_eq (part->mass, 27);
  ck_assert_double_eq (part->mass_sigma, 2.5);
  ck_assert_double_eq (part->length, 55);
  ck_assert_double_eq (part->width, 30);
  ck_assert_double_eq (part->height, 12);
  ck_assert_double_eq (part->cells, 2);
  ck_assert_double_eq (part->capacity, 450);
  ck_assert_double_eq (part->pitch, 0);
  ck_assert (part->aboard);
  piece_unref (&part->piece);
}
END_TEST

/* A servo in the wing lies on its side, and says what it moves. */
START_TEST (another_kind_takes_mass_and_box_and_leaves_place_rail_and_use)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) bare = aeroplane_new ();
  Part *servo = part_new ("servo-left", "servo");
  g_autoptr (Aeroplane) before = NULL, after = NULL;
  const Part *made;

  servo->name = g_strdup ("Servo, left aileron");
  servo->of = g_strdup ("wing");
  servo->x = 160, servo->y = -120, servo->z = 4;
  servo->mass = 4.5, servo->mass_sigma = 0.1;
  servo->length = 21, servo->width = 20, servo->height = 9;
  servo->has_rail = true, servo->rail_from = 150, servo->rail_to = 170;
  before = aeroplane_with_added (bare, &servo->piece);
  after = catalogue_change_kind (catalogue, before, "servo-left", catalogue_find (catalogue, "servo-9"));
  made = aeroplane_part_by_id (after, "servo-left");
  ck_assert_str_eq (made->name, "Servo, left aileron");
  ck_assert_str_eq (made->kind, "servo-9");
  ck_assert_double_eq (made->mass, 9);
  ck_assert_double_eq (made->mass_sigma, 0.72);
  ck_assert_double_eq (made->width, 27);
  ck_assert_double_eq (made->height, 12);
  ck_assert (made->x == 160 && made->y == -120 && made->z == 4 && made->has_rail && made->rail_from == 150);
  ck_assert_ptr_null (catalogue_change_kind (catalogue, before, "nobody", catalogue_find (catalogue, "servo-9")));
}
END_TEST

START_TEST (another_kind_has_a_label_of_its_own_and_what_a_meter_showed_counts_no_more)
{
  g_autoptr (Catalogue) catalogue = usual ();
  g_autoptr (Aeroplane) bare = aeroplane_new ();
  Part *motor = part_new ("motor", "motor");

  motor->rpm_per_volt = 1900, motor->power = 40, motor->input = 35;
  g_autoptr (Aeroplane) before = aeroplane_with_added (bare, &motor->piece);
  g_autoptr (Aeroplane) after = catalogue_change_kind (catalogue, before, "motor", catalogue_find (catalogue, "motor-22x16"));
  const Part *made = aeroplane_part_by_id (after, "motor");

  ck_assert_double_eq (made->power, 70);
  ck_assert_double_eq (made->rpm_per_volt, 0);
  ck_assert_double_eq (made->input, 0);
}
END_TEST

/* "7 × 4 in": 4 × 25.4 mm. */
START_TEST (every_propeller_has_the_pitch_of_its_name)
{
  g_autoptr (Catalogue) catalogue = usual ();

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      double diameter, pitch;

      if (strcmp (entry->class_name, "propeller") != 0 || sscanf (entry->name, "Propeller %lf × %lf in", &diameter, &pitch) != 2)
        continue;
      ck_assert_double_eq_tol (entry->width, diameter * 25.4, 1e-9);
      ck_assert_double_eq_tol (entry->pitch, pitch * 25.4, 1e-9);
    }
  ck_assert_double_eq_tol (catalogue_find (catalogue, "propeller-7x4")->pitch, 101.6, 1e-9);
}
END_TEST

static const struct { const char *words, *id; bool found; } searches[] = {
  { "2s", "battery-2s-450", true }, { "2S 450", "battery-2s-450", true }, { "BATTERY mah 450", "battery-2s-450", true },
  { "", "battery-2s-450", true }, { "  ", "battery-2s-450", true }, { "3s", "battery-2s-450", false },
  { "2s 300", "battery-2s-450", false },
  { "two-into", "lead-two-into-one", true }, { "outrunner", "motor-22x16", true }, { "servo", "motor-22x16", false },
};

START_TEST (a_search_finds_what_holds_all_its_words_in_whatever_case)
{
  g_autoptr (Catalogue) catalogue = usual ();

  ck_assert_int_eq (catalogue_entry_matches (catalogue_find (catalogue, searches[_i].id), searches[_i].words), searches[_i].found);
}
END_TEST

START_TEST (a_second_file_replaces_what_has_its_id_and_adds_the_rest_and_the_first_stays_as_it_was)
{
  g_autoptr (Catalogue) before = usual ();
  g_autoptr (Catalogue) after = read_text (before, HEAD "<part id='battery-2s-450' class='battery' name='Mine' mass='31.5'/>\n"
                                           "<part id='drum' class='other' name='Drum' mass='2'/></catalogue>", NULL);

  ck_assert_uint_eq (catalogue_count (after), catalogue_count (before) + 1);
  ck_assert_str_eq (catalogue_find (after, "battery-2s-450")->name, "Mine");
  ck_assert_double_eq (catalogue_find (after, "battery-2s-450")->length, 0);
  ck_assert (isnan (catalogue_find (after, "battery-2s-450")->mass_sigma));
  ck_assert_str_eq (catalogue_entry (after, catalogue_count (before))->id, "drum");
  ck_assert_str_eq (catalogue_find (before, "battery-2s-450")->name, "Battery 2S 450 mAh");
  ck_assert_ptr_null (catalogue_find (before, "drum"));
}
END_TEST

static const struct { const char *text, *sentence; size_t left; } faulty[] = {
  { HEAD "<part id='a' class='motor' name='A' mass='x'/>\n<part id='b' class='motor' name='B' mass='2'/></catalogue>",
    "own:2: <part id=\"a\">: mass is “x”, which is not a number; write one such as 12.5", 1 },
  { HEAD "<part id='a' class='engine' name='A' mass='1'/><part id='b' class='motor' name='B' mass='2'/></catalogue>",
    "own:2: <part id=\"a\">: class is “engine”; write one of these: motor, propeller, spinner, controller, battery, receiver, servo, "
    "switch, wheels, undercarriage, cowl, canopy, pilot, pushrod, ballast, other", 1 },
  { HEAD "<part id='a' class='motor' name='A'/><part id='b' class='motor' name='B' mass='2'/></catalogue>",
    "own:2: <part id=\"a\"> has no mass; add mass=\"…\", in g", 1 },
  { HEAD "<part id='a' class='motor' name='A' mass='-1'/></catalogue>", "own:2: <part id=\"a\">: mass is “-1”; write 0 or more", 0 },
  { HEAD "<part id='a' class='motor' name='A' mass='1'/>\n<part id='a' class='motor' name='B' mass='2'/></catalogue>",
    "own:3: the id “a” is used already in line 2; write another", 1 },
  { HEAD "<part id='b' class='motor' name='B' mass='2'/>\n<part id='c", 
    "own:3: the file ends in the middle; take its backup, the same name with ~ behind it, or another copy", 1 },
  { "<!DOCTYPE c [<!ENTITY l 'ha'>]>" HEAD "<part id='b' class='motor' name='&l;' mass='2'/></catalogue>",
    "own:1: a document type declaration (<!DOCTYPE …>) is not read; take it out", 0 },
  { "<aeroplane xmlns='urn:trammel:aeroplane' version='1'/>",
    "own:1: this is <aeroplane>, not a catalogue of parts; write <catalogue xmlns=\"urn:trammel:catalogue\" version=\"1\">", 0 },
  { "<catalogue xmlns='urn:trammel:catalogue' version='2'><part id='b' class='motor' name='B' mass='2'/></catalogue>",
    "own:1: this catalogue is of version 2, and this program reads version 1; write one of that version", 0 },
  { "<catalogue xmlns='urn:trammel:catalogue'/>", "own:1: <catalogue> has no version; add version=\"1\"", 0 },
};

START_TEST (what_is_wrong_is_told_with_its_line_and_the_good_entries_stay)
{
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (Catalogue) before = read_text (NULL, HEAD "<part id='old' class='servo' name='Old' mass='4'/></catalogue>", NULL);
  g_autoptr (Catalogue) after = read_text (before, faulty[_i].text, problems);

  ck_assert_uint_eq (problems->len, 1);
  ck_assert_str_eq (problems->pdata[0], faulty[_i].sentence);
  ck_assert_uint_eq (catalogue_count (after), 1 + faulty[_i].left);
}
END_TEST

/* Wherever it ends, what stood before is read, the person is told, and nothing that was there is lost. */
START_TEST (a_file_cut_short_anywhere_gives_what_stood_before)
{
  g_autofree char *path = data_path ("catalogue.xml"), *text = NULL;
  g_autoptr (Catalogue) whole = usual ();
  size_t length, last = 0;

  ck_assert (g_file_get_contents (path, &text, &length, NULL));
  for (size_t cut = 0; cut + 20 < length; cut += 397)
    {
      g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
      g_autoptr (Catalogue) before = read_text (NULL, HEAD "<part id='old' class='servo' name='Old' mass='4'/></catalogue>", NULL);
      g_autoptr (Catalogue) read = catalogue_read_data (before, text, cut, "own", problems);

      ck_assert_uint_ge (problems->len, 1);
      ck_assert_ptr_nonnull (catalogue_find (read, "old"));
      ck_assert_uint_ge (catalogue_count (read), last);
      last = catalogue_count (read);
      for (size_t i = 1; i < last; i++)
        ck_assert_str_eq (catalogue_entry (read, i)->id, catalogue_entry (whole, i - 1)->id);
    }
  ck_assert_uint_ge (last, catalogue_count (whole) - 4);
}
END_TEST

START_TEST (elements_of_a_later_version_are_passed_over)
{
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (Catalogue) read = read_text (NULL, HEAD "<group><part id='inner' class='servo' name='I' mass='1'/></group>"
                                          "<part id='b' class='motor' name='B' mass='2' colour='red'/></catalogue>", problems);

  ck_assert_uint_eq (problems->len, 0);
  ck_assert_uint_eq (catalogue_count (read), 1);
}
END_TEST

START_TEST (a_flood_of_elements_is_stopped)
{
  g_autoptr (GString) text = g_string_new (HEAD);
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (Catalogue) read = NULL;

  for (int i = 0; i < 30000; i++)
    g_string_append (text, "<n/>");
  g_string_append (text, "</catalogue>");
  read = read_text (NULL, text->str, problems);
  ck_assert_str_eq (problems->pdata[0], "own:2: this is more than any catalogue needs; what stands behind it was not read");
}
END_TEST

START_TEST (a_file_that_is_not_there_adds_nothing_and_is_told)
{
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (Catalogue) before = usual ();
  g_autoptr (Catalogue) after = catalogue_read_file (before, "/nowhere/catalogue.xml", problems);

  ck_assert_uint_eq (catalogue_count (after), catalogue_count (before));
  ck_assert_str_eq (problems->pdata[0], "/nowhere/catalogue.xml: there is no such file; look at its name and folder");
}
END_TEST

/* A person's own file stands in the user's data folder, which this process was given at its start. */
START_TEST (a_persons_own_file_is_read_behind_the_programs)
{
  g_autofree char *path = catalogue_own_path (), *folder = g_path_get_dirname (path);
  const char *text = HEAD "<part id='kite-winder' class='other' name='Winder' mass='3'/></catalogue>";

  ck_assert (g_str_has_prefix (path, g_get_user_data_dir ()));
  g_autoptr (Catalogue) without = catalogue_load (NULL);
  ck_assert_ptr_null (catalogue_find (without, "kite-winder"));
  ck_assert_int_eq (g_mkdir_with_parents (folder, 0700), 0);
  ck_assert (g_file_set_contents (path, text, -1, NULL));
  g_autoptr (Catalogue) with = catalogue_load (NULL);
  ck_assert_ptr_nonnull (catalogue_find (with, "kite-winder"));
  ck_assert_ptr_nonnull (catalogue_find (with, "battery-2s-450"));
}
END_TEST

static void
add_tests (TCase *tests)
{
  tcase_add_test (tests, the_programs_own_has_something_of_each_class_that_is_bought_and_says_where_its_figures_come_from);
  tcase_add_test (tests, nothing_in_it_is_denser_than_lead_or_strays_by_half);
  tcase_add_test (tests, an_entry_becomes_a_part_that_remembers_it);
  tcase_add_test (tests, another_kind_takes_mass_and_box_and_leaves_place_rail_and_use);
  tcase_add_test (tests, another_kind_has_a_label_of_its_own_and_what_a_meter_showed_counts_no_more);
  tcase_add_test (tests, every_propeller_has_the_pitch_of_its_name);
  tcase_add_loop_test (tests, a_search_finds_what_holds_all_its_words_in_whatever_case, 0, G_N_ELEMENTS (searches));
  tcase_add_test (tests, a_second_file_replaces_what_has_its_id_and_adds_the_rest_and_the_first_stays_as_it_was);
  tcase_add_loop_test (tests, what_is_wrong_is_told_with_its_line_and_the_good_entries_stay, 0, G_N_ELEMENTS (faulty));
  tcase_add_test (tests, a_file_cut_short_anywhere_gives_what_stood_before);
  tcase_add_test (tests, elements_of_a_later_version_are_passed_over);
  tcase_add_test (tests, a_flood_of_elements_is_stopped);
  tcase_add_test (tests, a_file_that_is_not_there_adds_nothing_and_is_told);
  tcase_add_test (tests, a_persons_own_file_is_read_behind_the_programs);
}

int
main (void)
{
  g_autofree char *home = g_dir_make_tmp ("trammel-catalogue-XXXXXX", NULL);
  TCase *tests = tcase_create ("catalogue");

  g_setenv ("XDG_DATA_HOME", home, TRUE);
  add_tests (tests);
  return run_suite (suite_create ("document catalogue"), tests);
}
