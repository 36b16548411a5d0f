/* What is cut, copied and pasted, without a clipboard. */
#include "app/fragment.h"
#include "document/reader.h"
#include "document/writer.h"
#include "support/run-suite.h"
#include <math.h>
#include <string.h>

static const char racer[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\" name=\"Thistle\">"
  "<surface id=\"wing\" role=\"wing\" z=\"-7.3\"><outline><start x=\"61.5\" y=\"0\"/><line x=\"83.25\" y=\"287\"/><line x=\"149\" y=\"291\"/>"
  "<line x=\"158\" y=\"0\"/></outline>"
  "<control id=\"ailerons\" kind=\"aileron\" inner=\"140\" outer=\"270\" hinge-inner-x=\"131\" hinge-outer-x=\"133.5\"/></surface>"
  "<structure id=\"wing-structure\" of=\"wing\" mass=\"31.7\"/>"
  "<part id=\"battery\" class=\"battery\" name=\"Battery\" mass=\"23.9\" x=\"44.25\" y=\"1.5\" z=\"-3\"><rail from=\"31\" to=\"77\"/></part>"
  "<part id=\"receiver\" class=\"receiver\" mass=\"4.1\" x=\"102\"/>"
  "<lead from=\"battery\" to=\"receiver\" length=\"90\"/>"
  "</aeroplane>";

static Aeroplane *
racer_new (void)
{
  GError *error = NULL;
  Aeroplane *made = reader_read_data (racer, strlen (racer), "racer", NULL, &error);

  ck_assert_msg (made != NULL, "%s", error == NULL ? "" : error->message);
  return made;
}

static Selection
selected (const char *first, const char *second)
{
  Selection selection = selection_of (first);

  if (second != NULL)
    selection_toggle (&selection, second);
  return selection;
}

static Aeroplane *
copied (const Aeroplane *from, const char *first, const char *second)
{
  Selection selection = selected (first, second);
  Aeroplane *fragment = fragment_of (from, &selection);

  selection_clear (&selection);
  return fragment;
}

START_TEST (a_surface_takes_its_structure_with_it_and_nothing_else)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "wing", NULL);

  ck_assert_uint_eq (aeroplane_piece_count (fragment), 2);
  ck_assert_ptr_nonnull (aeroplane_surface_by_id (fragment, "wing"));
  ck_assert_str_eq (aeroplane_structure (fragment, 0)->of, "wing");
}
END_TEST

START_TEST (a_lead_travels_only_with_both_its_ends)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) one = copied (whole, "battery", NULL);
  g_autoptr (Aeroplane) both = copied (whole, "battery", "receiver");

  ck_assert_uint_eq (aeroplane_count (one, PIECE_LEAD), 0);
  ck_assert_uint_eq (aeroplane_count (both, PIECE_LEAD), 1);
}
END_TEST

START_TEST (nothing_selected_makes_no_fragment)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  Selection nothing = selection_none ();

  ck_assert_ptr_null (fragment_of (whole, &nothing));
  ck_assert_uint_eq (fragment_count (whole, &nothing), 0);
}
END_TEST

START_TEST (a_fragment_is_a_document_that_reads_back_equal)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "battery", "receiver");
  size_t length;
  g_autofree char *text = writer_text (fragment, &length);
  GError *error = NULL;
  g_autoptr (Aeroplane) again = reader_read_data (text, length, "clipboard", NULL, &error);

  ck_assert_msg (again != NULL, "%s", error == NULL ? "" : error->message);
  ck_assert (aeroplane_equal (fragment, again));
}
END_TEST

START_TEST (pasted_beside_its_original_it_goes_aside_with_fresh_names)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "battery", "receiver");
  Selection pasted;
  g_autoptr (Aeroplane) next = fragment_pasted (whole, fragment, &pasted);
  const Part *battery = aeroplane_part_by_id (next, "battery-2");
  const Lead *lead = aeroplane_lead (next, 1);

  ck_assert_ptr_nonnull (battery);
  /* 10 mm aft and to starboard, the rail with it: the header's promise */
  ck_assert_double_eq (battery->x, 54.25);
  ck_assert_double_eq (battery->y, 11.5);
  ck_assert_double_eq (battery->z, -3);
  ck_assert_double_eq (battery->rail_from, 41);
  ck_assert_double_eq (battery->rail_to, 87);
  ck_assert_str_eq (lead->from, "battery-2");
  ck_assert_str_eq (lead->to, "receiver-2");
  ck_assert (selection_has (&pasted, "battery-2") && selection_has (&pasted, "receiver-2"));
  selection_clear (&pasted);
}
END_TEST

/* The same wing, weighed by its lines. */
static Aeroplane *
wing_of_lines (void)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  const Structure *typed = aeroplane_structure (whole, 0);
  Structure *lines = (Structure *) piece_dup (&typed->piece);

  lines->mass = NAN;
  lines->excess = 0;
  lines->items = g_new (StructureItem, 2);
  lines->item_count = 2;
  lines->items[0] = structure_item ("Sheet");
  lines->items[0].weighed = 12.5;
  lines->items[1] = structure_item ("Block");
  lines->items[1].weighed = 2.5;
  lines->items[1].x = 70;
  return aeroplane_with_replaced (whole, &typed->piece, &lines->piece);
}

START_TEST (a_structure_that_its_lines_weigh_is_told_by_their_mass_and_its_places_go_along)
{
  g_autoptr (Aeroplane) whole = wing_of_lines (), fragment = copied (whole, "wing", NULL);
  Selection pasted;
  g_autoptr (Aeroplane) next = fragment_pasted (whole, fragment, &pasted);
  const double shift = outline_node (aeroplane_surface (next, 1)->outline, 0).x - outline_node (aeroplane_surface (next, 0)->outline, 0).x;
  size_t count;

  ck_assert_double_eq_tol (fragment_structures (fragment, &count), 15, 1e-9);
  ck_assert_uint_eq (count, 1);
  ck_assert_double_gt (shift, 0);
  ck_assert_double_eq_tol (aeroplane_structure (next, 1)->items[1].x, 70 + shift, 1e-9);
  ck_assert_double_nan (aeroplane_structure (next, 1)->items[0].x);
  selection_clear (&pasted);
}
END_TEST

START_TEST (pasted_twice_the_second_copy_does_not_hide_the_first)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "battery", NULL);
  Selection pasted;
  g_autoptr (Aeroplane) once = fragment_pasted (whole, fragment, &pasted);
  g_autoptr (Aeroplane) twice = NULL;

  selection_clear (&pasted);
  twice = fragment_pasted (once, fragment, &pasted);
  ck_assert_double_eq (aeroplane_part_by_id (twice, "battery-3")->x, 64.25);
  selection_clear (&pasted);
}
END_TEST

START_TEST (pasted_where_nothing_stands_it_keeps_its_place_and_name)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "wing", NULL);
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  Selection pasted;
  g_autoptr (Aeroplane) next = fragment_pasted (empty, fragment, &pasted);

  ck_assert (piece_equal (aeroplane_find (next, "wing"), aeroplane_find (whole, "wing")));
  ck_assert_str_eq (aeroplane_structure (next, 0)->of, "wing");
  ck_assert_str_eq (selection_single (&pasted), "wing");
  selection_clear (&pasted);
}
END_TEST

START_TEST (a_surface_set_aside_keeps_its_shape_and_its_hinge_lines)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) fragment = copied (whole, "wing", NULL);
  Selection pasted;
  g_autoptr (Aeroplane) next = fragment_pasted (whole, fragment, &pasted);
  const Surface *old = aeroplane_surface_by_id (next, "wing"), *new = aeroplane_surface_by_id (next, "wing-2");

  for (size_t i = 0; i < outline_node_count (old->outline); i++) {
    ck_assert_double_eq_tol (outline_node (new->outline, i).x - outline_node (old->outline, i).x, 10, 1e-12);
    ck_assert_double_eq (outline_node (new->outline, i).y, outline_node (old->outline, i).y);
  }
  ck_assert_double_eq_tol (new->controls[0].hinge_outer_x - old->controls[0].hinge_outer_x, 10, 1e-12);
  ck_assert (isnan (aeroplane_structure (next, 1)->x));       /* spread over its area, as before */
  selection_clear (&pasted);
}
END_TEST

START_TEST (a_document_without_things_to_paste_is_refused)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  g_autoptr (Aeroplane) nothing = aeroplane_new ();
  Selection pasted = selection_of ("untouched");

  ck_assert_ptr_null (fragment_pasted (whole, nothing, &pasted));
  ck_assert_str_eq (selection_single (&pasted), "untouched");
  selection_clear (&pasted);
}
END_TEST

START_TEST (all_is_every_surface_body_and_part)
{
  g_autoptr (Aeroplane) whole = racer_new ();
  Selection all = fragment_all (whole);

  ck_assert_uint_eq (fragment_count (whole, &all), 3);
  ck_assert (!selection_has (&all, "wing-structure"));
  selection_clear (&all);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("fragment");

  tcase_add_test (tests, a_surface_takes_its_structure_with_it_and_nothing_else);
  tcase_add_test (tests, a_lead_travels_only_with_both_its_ends);
  tcase_add_test (tests, nothing_selected_makes_no_fragment);
  tcase_add_test (tests, a_fragment_is_a_document_that_reads_back_equal);
  tcase_add_test (tests, pasted_beside_its_original_it_goes_aside_with_fresh_names);
  tcase_add_test (tests, a_structure_that_its_lines_weigh_is_told_by_their_mass_and_its_places_go_along);
  tcase_add_test (tests, pasted_twice_the_second_copy_does_not_hide_the_first);
  tcase_add_test (tests, pasted_where_nothing_stands_it_keeps_its_place_and_name);
  tcase_add_test (tests, a_surface_set_aside_keeps_its_shape_and_its_hinge_lines);
  tcase_add_test (tests, a_document_without_things_to_paste_is_refused);
  tcase_add_test (tests, all_is_every_surface_body_and_part);
  return run_suite (suite_create ("fragment"), tests);
}
