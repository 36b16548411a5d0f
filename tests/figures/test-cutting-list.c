/* What is cut of sheet, sticks and covering, added up by hand. Masses: density × volume; grades: common practice, no source. */
#include <math.h>
#include <string.h>
#include "document/reader.h"
#include "figures/cutting-list.h"
#include "figures/report.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static char *
structure_of (const char *of, const char *items)
{
  return items ? g_strdup_printf ("<structure id='%c' of='%s'>%s</structure>", *of, of, items) : g_strdup ("");
}

/* A wing of 100 mm chord and 600 mm span with three ribs named, one of them on the centre line; a body 400 mm long with two formers. */
static Aeroplane *
built_of (const char *wing, const char *body)
{
  g_autofree char *on_wing = structure_of ("wing", wing), *on_body = structure_of ("body", body), *text = g_strconcat (
    "<aeroplane xmlns='urn:trammel:aeroplane' version='1'><surface id='wing' role='wing' thickness='10'><outline><start x='120' y='0'/>"
    "<line x='120' y='300'/><line x='220' y='300'/><line x='220' y='0'/></outline><rib name='R1' station='0'/><rib name='R2' station='100'/>"
    "<rib name='R3' station='200'/></surface><body id='body'><outline><start x='0' y='0'/><line x='0' y='20'/><line x='400' y='20'/>"
    "<line x='400' y='0'/></outline><side-outline><start x='0' y='20'/><line x='400' y='20'/><line x='400' y='-20'/><line x='0' y='-20'/>"
    "</side-outline><former name='F1' x='100'/><former name='F2' x='200'/></body>", on_wing, on_body, "</aeroplane>", NULL);
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, strlen (text), "text", NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "no reason");
  return read;
}

/* "material thickness: name, name; …" */
static char *
groups_in (const CuttingList *list)
{
  GString *text = g_string_new (NULL);

  for (size_t g = 0; g < list->group_count; g++)
    for (size_t i = 0; i < list->groups[g].count; i++)
      {
        const CuttingLine *line = &list->lines[list->groups[g].first + i];
        g_autofree char *material = cutting_material (line);

        if (i == 0)
          g_string_append_printf (text, "%s%s %g:", g ? "; " : "", material, line->thickness_mm);
        g_string_append_printf (text, " %s", line->item->name);
      }
  return g_string_free (text, FALSE);
}

START_TEST (lines_of_one_material_and_thickness_stand_together_whatever_they_are_part_of)
{
  g_autoptr (Aeroplane) aeroplane = built_of (
    "<item name='Covering' material='tissue' of='skin'/><item name='Sheeting' material='balsa-light' thickness='1.5' width='60' length='600'/>"
    "<item name='Ribs' material='balsa-medium' thickness='1.5' of='ribs'/><item name='Spar' density='170' thickness='3' width='3' length='600'/>"
    "<item name='Tips' weighed='1.1'/><item name='Glue' of-others='0.1'/><item name='Coat' material='paint' of='skin'/>",
    "<item name='Sides' material='balsa-light' thickness='1.5' width='40' length='400' count='2'/>"
    "<item name='Doublers' material='balsa-light' thickness='1' width='40' length='100' count='2'/>");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);
  g_autofree char *groups = groups_in (&list);

  ck_assert_str_eq (groups, "Balsa, light 1: Doublers; Balsa, light 1.5: Sheeting Sides; Balsa, medium 1.5: Ribs; Tissue and thin dope nan: Covering; "
                            "170\u00A0kg/m³ 3: Spar;  nan: Tips");
  cutting_list_clear (&list);
}
END_TEST

/* 600 × 60 and two of 400 × 40; 96 kg/m³ × 1.5 mm. */
START_TEST (a_group_adds_up_area_and_mass)
{
  g_autoptr (Aeroplane) aeroplane = built_of (
    "<item name='Sheeting' material='balsa-light' thickness='1.5' width='60' length='600' share='0.9'/>",
    "<item name='Sides' material='balsa-light' thickness='1.5' width='40' length='400' count='2'/>");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);

  ck_assert_uint_eq (list.group_count, 1);
  ck_assert_double_eq_tol (list.groups[0].area_mm2, 600 * 60 + 2 * 400 * 40, 1e-6);
  ck_assert_double_eq_tol (list.groups[0].mass_g, 96e-6 * 1.5 * (0.9 * 600 * 60 + 2 * 400 * 40), 1e-9);
  ck_assert (isnan (list.groups[0].total_length_mm) && isnan (list.lines[0].total_length_mm));      /* of a sheet none asks for the length */
  cutting_list_clear (&list);
}
END_TEST

/* Four stringers as long as the body, two more of 300 mm. */
START_TEST (sticks_of_one_width_add_up_end_to_end)
{
  g_autoptr (Aeroplane) aeroplane = built_of (NULL,
    "<item name='Stringers' material='spruce' thickness='2' width='3' of='length' count='4'/>"
    "<item name='Longerons' material='spruce' thickness='2' width='3' length='300' count='2'/>");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);

  ck_assert_uint_eq (list.group_count, 1);
  ck_assert_double_eq_tol (list.lines[0].length_mm, 400, 1e-6);
  ck_assert_double_eq_tol (list.lines[0].total_length_mm, 1600, 1e-6);
  ck_assert_double_eq_tol (list.groups[0].total_length_mm, 2200, 1e-6);
  cutting_list_clear (&list);
}
END_TEST

/* A former is as round as the body is wide and high. R2 and R3 are there on both sides, R1 once; a skin is of how many pieces it takes. */
START_TEST (ribs_and_formers_are_as_many_as_have_a_name)
{
  g_autoptr (Aeroplane) aeroplane = built_of (
    "<item name='Ribs' material='balsa-medium' thickness='1.5' of='ribs'/><item name='Skin' material='tissue' of='skin'/>",
    "<item name='Formers' material='light-ply' thickness='2' of='formers'/>");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);

  ck_assert_double_eq (list.lines[0].count, 5);
  ck_assert_double_eq (list.lines[1].count, 2);
  ck_assert_double_eq_tol (list.lines[1].area_mm2, 2 * G_PI * 20 * 20, 1e-6);
  ck_assert (isnan (list.lines[2].count));
  cutting_list_clear (&list);
}
END_TEST

/* Notches come out of what was cut whole; an overlap has to be cut besides. */
START_TEST (what_is_cut_out_later_counts_and_what_overlaps_does_too)
{
  g_autoptr (Aeroplane) aeroplane = built_of (
    "<item name='Web' material='balsa-light' thickness='1' area='1000' share='0.5'/><item name='Cover' material='tissue' area='1000' share='1.1'/>", NULL);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);

  ck_assert_double_eq_tol (list.lines[0].area_mm2, 1000, 1e-9);
  ck_assert_double_eq_tol (list.lines[1].area_mm2, 1100, 1e-9);
  cutting_list_clear (&list);
}
END_TEST

START_TEST (the_file_has_a_row_for_each_line)
{
  g_autoptr (Aeroplane) aeroplane = built_of ("<item name='Spar' material='spruce' thickness='3' width='5' length='600' count='2'/>", NULL);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *csv = report_list_csv (figures, REPORT_LIST_CUTTING);

  ck_assert_str_eq (csv, "material,name,structure_id,density_kg_m3,thickness_mm,width_mm,length_mm,count,total_area_mm2,total_length_mm,mass_g\r\n"
                         "spruce,Spar,w,450,3,5,600,2,6000,1200,8.1\r\n");
}
END_TEST

START_TEST (an_aeroplane_without_structures_has_nothing_to_cut)
{
  g_autoptr (Aeroplane) aeroplane = aeroplane_new ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  CuttingList list = cutting_list_of (figures);

  ck_assert_uint_eq (list.count + list.group_count, 0);
  cutting_list_clear (&list);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("cutting list");
  TCase *tests = tcase_create ("lists");

  tcase_add_test (tests, lines_of_one_material_and_thickness_stand_together_whatever_they_are_part_of);
  tcase_add_test (tests, a_group_adds_up_area_and_mass);
  tcase_add_test (tests, sticks_of_one_width_add_up_end_to_end);
  tcase_add_test (tests, ribs_and_formers_are_as_many_as_have_a_name);
  tcase_add_test (tests, what_is_cut_out_later_counts_and_what_overlaps_does_too);
  tcase_add_test (tests, the_file_has_a_row_for_each_line);
  tcase_add_test (tests, an_aeroplane_without_structures_has_nothing_to_cut);
  return run_suite (suite, tests);
}
