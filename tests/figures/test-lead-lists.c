/* What leads are ordered by: rows of the lists, and what is to be bought. Lengths by hand; slack, loop, what the hand needs at the wing and
 * extensions as sold: common practice, no source. */
#include <math.h>
#include <string.h>
#include "document/reader.h"
#include "figures/lead-lists.h"
#include "figures/report.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static const Units metric = { LENGTH_MM, MASS_G };

/* A wing of 100 mm chord at the root from 100 on, 50 at the tip from 125 on: half-way out, 40 % of the chord is at 142.5, at the root 140. */
static const char before[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><surface id=\"wing\" role=\"wing\"><outline><start x=\"100\" y=\"0\"/>"
  "<line x=\"125\" y=\"300\"/><line x=\"175\" y=\"300\"/><line x=\"200\" y=\"0\"/></outline></surface>"
  "<part id=\"left\" class=\"servo\" name=\"Left\" mass=\"5\" x=\"142.5\" y=\"-150\" of=\"wing\"/>"
  "<part id=\"right\" class=\"servo\" name=\"Right\" mass=\"5\" x=\"142.5\" y=\"150\" of=\"wing\"/>"
  "<part id=\"receiver\" class=\"receiver\" name=\"Receiver\" mass=\"5\" x=\"60\" length=\"20\" width=\"10\" height=\"5\"><rail from=\"20\" to=\"90\"/></part>"
  "<part id=\"battery\" class=\"battery\" mass=\"50\" x=\"120\" z=\"-15\" length=\"50\" width=\"20\" height=\"10\"/>";

static const char joined[] = "<lead id=\"y\" from=\"left\" also=\"right\" to=\"receiver\" length=\"200\" also-length=\"150\" to-length=\"150\" mass=\"4.5\"/>";

static Aeroplane *
with (const char *lead)
{
  g_autofree char *text = g_strconcat (before, lead, "</aeroplane>", NULL);
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, strlen (text), "text", NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "no reason");
  return read;
}

/* The field so many from the end of the row that begins so: a figure, NAN where it is empty. */
static double
field_of (const char *csv, const char *row, guint from_end)
{
  const char *at = strstr (csv, row);

  ck_assert_msg (at != NULL, "no row %s in\n%s", row, csv);
  g_autofree char *line = g_strndup (at, strcspn (at, "\r"));
  g_auto (GStrv) fields = g_strsplit (line, ",", -1);
  const char *field = fields[g_strv_length (fields) - from_end];
  return *field ? g_ascii_strtod (field, NULL) : NAN;
}

enum { BEHIND = 15, NEEDED = BEHIND + 3, MISSING = BEHIND + 2, EXTENSION = BEHIND + 1 };      /* BEHIND: places and what to buy */

/* As a list has it: to the hundredth. */
static double
listed (double mm)
{
  return round (mm * 100) / 100;
}

/* Half-way out the servos stand 2.5 mm behind the root's share of the chord, so each leg is hypot (2.5, 150) mm. Right's has 150; the last
 * needs 1.12 × 80 + 50 = 139.6 and has 150. */
START_TEST (the_parts_list_has_a_row_for_each_leg_with_the_extension_to_buy)
{
  g_autoptr (Aeroplane) aeroplane = with (joined);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *parts = report_parts_csv (figures), *leads = report_list_csv (figures, REPORT_LIST_LEADS);
  const char *right = "y,\"Two-into-one lead, to Right\",lead,,,,,,,,,,yes,,,,,,right,,150,";

  ck_assert_ptr_nonnull (strstr (parts, "y,Two-into-one lead,other,4.5,140,0,0,0,0,0,,,yes,,,,,,,receiver,150,139.6,0,0,,0,"));
  ck_assert_double_eq_tol (field_of (parts, right, NEEDED), listed (1.12 * hypot (2.5, 150)), 1e-9);
  ck_assert_double_eq_tol (field_of (parts, right, MISSING), listed (1.12 * hypot (2.5, 150) - 150), 1e-9);
  ck_assert_double_eq (field_of (parts, right, EXTENSION), 100);
  ck_assert_double_eq_tol (field_of (leads, "y,\"Two-into-one lead, to Right\",right,,150,", 2), listed (hypot (2.5, 150)), 1e-9);
  ck_assert_double_eq (field_of (leads, "y,\"Two-into-one lead, to Receiver\",,receiver,150,", 1), 4.5);
}
END_TEST

/* From the battery to the receiver it is 60 mm forward and 15 up; by way of a place at 900 it is 1620 mm. */
static const struct { const char *said; double way, missing, extension; } plains[] = {
  { "length=\"60\"/>", 60, 19.27, 100 }, { "length=\"90\"/>", 60, 0, 0 }, { "/>", 60, NAN, NAN },
  { "length=\"60\"><via x=\"900\" y=\"0\"/></lead>", 1620, 1764.5, NAN },
};

START_TEST (a_lead_that_weighs_nothing_of_its_own_is_ordered_too)
{
  g_autofree char *lead = g_strdup_printf ("<lead id=\"p\" from=\"battery\" to=\"receiver\" %s", plains[_i].said);
  g_autoptr (Aeroplane) aeroplane = with (lead);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *parts = report_parts_csv (figures);
  const char *row = "p,Lead Battery – Receiver,lead,,,,,,,,,,yes,,,,,,battery,receiver,";
  const double missing = field_of (parts, row, MISSING), extension = field_of (parts, row, EXTENSION);

  ck_assert_double_eq_tol (field_of (parts, row, NEEDED), listed (1.12 * hypot (plains[_i].way, 15) + 10), 1e-9);
  ck_assert (isnan (plains[_i].missing) ? isnan (missing) : fabs (missing - plains[_i].missing) < 0.05);
  ck_assert (isnan (plains[_i].extension) ? isnan (extension) : extension == plains[_i].extension);
}
END_TEST

static const struct { const char *leads, *told; } orders[] = {
  { "<lead from=\"battery\" to=\"receiver\" length=\"90\"/>", NULL },
  { "<lead from=\"battery\" to=\"receiver\" length=\"60\"/><lead from=\"left\" to=\"receiver\" length=\"150\"/>"
    "<lead from=\"right\" to=\"receiver\" length=\"260\"/>", "2 of 100\u00a0mm, 1 of 200\u00a0mm." },
  { "<lead from=\"left\" to=\"receiver\" length=\"150\"><via x=\"900\" y=\"0\"/></lead>", "make those leads longer" },
};

/* Left and right need 1.12 × 230.02 + 50 = 307.6 mm. */
START_TEST (what_is_to_be_bought_for_the_leads_is_counted_by_length)
{
  g_autoptr (Aeroplane) aeroplane = with (orders[_i].leads);
  g_autofree char *told = leads_to_buy (aeroplane, metric);

  if (orders[_i].told == NULL)
    ck_assert_ptr_null (told);
  else
    ck_assert_msg (told && strstr (told, orders[_i].told), "%s", told ? told : "nothing");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lead lists");

  tcase_add_test (tests, the_parts_list_has_a_row_for_each_leg_with_the_extension_to_buy);
  tcase_add_loop_test (tests, a_lead_that_weighs_nothing_of_its_own_is_ordered_too, 0, (int) G_N_ELEMENTS (plains));
  tcase_add_loop_test (tests, what_is_to_be_bought_for_the_leads_is_counted_by_length, 0, (int) G_N_ELEMENTS (orders));
  return run_suite (suite_create ("figures lead lists"), tests);
}
