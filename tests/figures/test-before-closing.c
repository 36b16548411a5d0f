/* What goes in before the body is closed, of bodies measured by hand: common practice at the bench, no source. */
#include <math.h>
#include <string.h>
#include "document/reader.h"
#include "figures/before-closing.h"
#include "figures/passed-places.h"
#include "figures/report.h"
#include "figures/report-hatch.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static const Units metric = { LENGTH_MM, MASS_G }, inches = { LENGTH_INCH, MASS_OZ };

/* A body 400 mm long, 60 wide and from −30 to 30 high, formers at 20, 100, 200, 300; a wing of 100 mm chord from 120 on, ribs each 50 mm. */
static const char before[] =
  "<aeroplane xmlns='urn:trammel:aeroplane' version='1'><surface id='wing' role='wing'><outline><start x='120' y='0'/><line x='120' y='300'/>"
  "<line x='220' y='300'/><line x='220' y='0'/></outline><rib name='R1' station='50'/><rib name='R2' station='100'/>"
  "<rib name='R3' station='150'/><rib name='R4' station='200'/></surface><body id='body'><outline><start x='0' y='0'/><line x='0' y='30'/>"
  "<line x='400' y='30'/><line x='400' y='0'/></outline><side-outline><start x='0' y='30'/><line x='400' y='30'/><line x='400' y='-30'/>"
  "<line x='0' y='-30'/></side-outline><former name='F1' x='20'/><former name='F2' x='100'/><former name='F3' x='200'/>"
  "<former name='F4' x='300'/></body>";

#define RECEIVER "<part id='receiver' class='receiver' name='Receiver' mass='5' x='230' z='-10' length='20' width='10' height='8'/>"
#define MOTOR "<part id='motor' class='motor' name='Motor' mass='20' x='5' length='20' width='20' height='20'/>"
#define SERVO "<part id='servo' class='servo' name='Servo' mass='5' x='150' y='-180' length='20' width='9' height='9' of='wing'/>"

static Aeroplane *
body_with (const char *elements)
{
  g_autofree char *text = g_strconcat (before, elements, "</aeroplane>", NULL);
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, strlen (text), "text", NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "no reason");
  return read;
}

/* A line for each: what and where, parted by " | ". */
static char *
told (const char *elements, Units units)
{
  g_autoptr (Aeroplane) aeroplane = body_with (elements);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) steps = before_closing_of (figures);
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < steps->len; i++)
    {
      const ClosingStep *step = &g_array_index (steps, ClosingStep, i);
      g_autofree char *what = closing_what (figures, step, units), *where = closing_where (figures, step, units);

      g_string_append_printf (text, "%s | %s\n", what, where);
    }
  for (char *blank = text->str; (blank = strstr (blank, "\u00A0")) != NULL; )      /* as a person reads it */
    g_string_overwrite (text, blank - text->str, " "), g_string_erase (text, blank - text->str + 1, 1);
  return g_string_free (text, FALSE);
}

static const struct { const char *elements, *told; } single[] = {
  { RECEIVER, "Tray for “Receiver” | 20 to 40 mm behind F3, upper face 14 mm below the thrust line, 16 mm above the bottom\n" },
  { "<part id='r' class='receiver' name='Receiver' mass='5' x='230' y='12' z='14' length='20' width='10' height='8'/>",
    "Tray for “Receiver” | 20 to 40 mm behind F3, upper face 10 mm above the thrust line, 40 mm above the bottom, 12 mm to starboard\n" },
  { "<part id='r' class='receiver' name='Receiver' mass='5' x='210' y='-4' z='4' length='20' width='10' height='8'/>",
    "Tray for “Receiver” | from F3 to 20 mm behind it, upper face at the thrust line, 4 mm to port\n" },
  { "<part id='b' class='battery' name='Pack' mass='40' x='150' z='-6' length='50' width='30' height='12'><rail from='130' to='180'/></part>",
    "Floor for “Pack”, 30 mm wide | 5 to 105 mm behind F2, upper face 12 mm below the thrust line, 18 mm above the bottom\n" },
  { "<thrust x='0' z='0' down='2' right='1.5'/>" MOTOR, "Firewall, thrust line 2° down, 1.5° right | 5 mm ahead of F1\n" },
  { "<thrust x='0' z='0' down='-1' right='0'/>" MOTOR, "Firewall, thrust line 1° up, straight ahead | 5 mm ahead of F1\n" },
  { MOTOR, "Firewall; the thrust line's angles are not given | 5 mm ahead of F1\n" },
  { MOTOR "<part id='w' class='other' name='Plywood' mass='3' x='18.5' length='3' width='44' height='44' kind='firewall'/>",
    "Firewall; the thrust line's angles are not given | from 3 mm ahead of F1 back to it, underside 22 mm below the thrust line, 8 mm above the bottom\n" },
  { "<part id='p' class='pushrod' name='Pushrod' mass='3' x='260' z='10' length='220' width='2' height='2'/>",
    "“Pushrod”: see that it runs free | 50 to 270 mm behind F2, underside 9 mm above the thrust line, 39 mm above the bottom, through formers F3, F4\n" },
  { "<part id='u' class='undercarriage' name='Legs' mass='8' x='120' z='-26' length='10' width='140' height='8'/>",
    "Block for “Legs” | 15 to 25 mm behind F2\n" },
  { "<part id='s' class='other' name='Tail skid' mass='1' x='350' length='20' width='2' height='10'/>",
    "Seat for “Tail skid” | 40 to 60 mm behind F4, upper face 5 mm below the thrust line, 25 mm above the bottom\n" },
  { SERVO, "Bay for “Servo” in the wing | 20 to 40 mm aft of the leading edge there, 180 mm to port, 20 mm inboard of rib R4\n" },
  { "<part id='s' class='servo' name='Servo' mass='5' x='125' y='100' length='20' width='9' height='9'/>",
    "Bay for “Servo” in the wing | from 5 mm ahead of the leading edge there to 15 mm aft of it, 100 mm to starboard, at rib R2\n" },
  { "<part id='u' class='undercarriage' name='Left leg' mass='8' x='150' y='-60' z='-40' length='10' width='8' height='70'/>",
    "Block for “Left leg” | 25 to 35 mm aft of the leading edge there, 60 mm to port, 10 mm outboard of rib R1\n" },
  { "<part id='l' class='ballast' name='Lead in the nose' mass='9' x='5' z='0' length='10' width='10' height='10'/>",
    "Box for “Lead in the nose”, 9 g | 10 to 20 mm ahead of F1, underside 5 mm below the thrust line, 25 mm above the bottom\n" },
};

START_TEST (each_thing_is_told_from_a_named_former_and_the_thrust_line)
{
  g_autofree char *words = told (single[_i].elements, metric);

  ck_assert_str_eq (words, single[_i].told);
}
END_TEST

/* As far as it slides, in the wing that is nearer to it. */
START_TEST (a_pack_between_two_wings_lies_in_the_nearer_one)
{
  g_autofree char *words = told ("<surface id='upper' role='wing' z='50'><outline><start x='100' y='0'/><line x='100' y='300'/><line x='200' y='300'/>"
                                 "<line x='200' y='0'/></outline></surface><part id='b' class='battery' name='Pack' mass='40' x='150' y='80' z='40' "
                                 "length='20' width='10' height='8'><rail from='145' to='155'/></part>", metric);

  ck_assert_msg (g_str_has_prefix (words, "Floor for “Pack”, 10 mm wide | 35 to 65 mm aft of the leading edge there, 80 mm to starboard\n"), "%s", words);
}
END_TEST

static const struct { double front, rear; const char *told; } alongs[] = {
  { 36, 58, "36 to 58\u00A0mm aft of the leading edge there" }, { 36, 36, "36\u00A0mm aft of the leading edge there" },
  { -5, 15, "from 5\u00A0mm ahead of the leading edge there to 15\u00A0mm aft of it" }, { -8, -8, "8\u00A0mm ahead of the leading edge there" },
  { -30, -8, "8 to 30\u00A0mm ahead of the leading edge there" } };

START_TEST (places_in_a_wing_read_on_either_side_of_its_leading_edge)
{
  WingStand stand = wing_stand_none ();

  stand.front_mm = alongs[_i].front, stand.rear_mm = alongs[_i].rear;
  g_autofree char *words = wing_stand_along_text (&stand, metric);
  ck_assert_str_eq (words, alongs[_i].told);
}
END_TEST

/* The thrust line begins 6 mm up. */
START_TEST (heights_are_from_where_the_thrust_line_begins)
{
  g_autofree char *words = told (RECEIVER "<thrust x='0' z='6' down='2' right='2'/>", metric);

  ck_assert_ptr_nonnull (strstr (words, "upper face 20 mm below the thrust line, 16 mm above the bottom"));
}
END_TEST

START_TEST (who_wants_inches_reads_inches)
{
  g_autofree char *words = told (RECEIVER, inches);

  ck_assert_ptr_nonnull (strstr (words, "25/32 to 1 9/16 in behind F3"));
}
END_TEST

static const char *const outside[] = {
  "<part id='p' class='propeller' mass='6' x='5' length='9' width='178' height='18'/>",
  "<part id='c' class='canopy' mass='6' x='150' z='30' length='80' width='40' height='30'/>",
  "<part id='r' class='receiver' mass='5' x='230' y='60' length='20' width='10' height='8'/>",     /* beside the body */
  "<part id='r' class='receiver' mass='5' x='230' length='20' width='10' height='8' aboard='no'/>",
  "<part id='o' class='other' name='Leads and plugs' mass='5' x='230'/>",                          /* it has no size to make a tray for */
};

START_TEST (what_is_put_on_later_or_goes_elsewhere_is_not_listed)
{
  g_autofree char *words = told (outside[_i], metric);

  ck_assert_str_eq (words, "");
}
END_TEST

/* Inboard along the servo's share of the chord (a third: x = 150) from y = −180 past the ribs at 150, 100 and 50, then aft past F3. */
static const struct { const char *lead, *told; } leads[] = {
  { "<lead from='servo' to='receiver' length='400'/>", "Lead Servo – Receiver, 400 mm long | through former F3, through ribs R3, R2, R1\n" },
  { "<lead from='servo' to='receiver' length='250'/>", "Lead Servo – Receiver, with an extension of 100 mm | through former F3, through ribs R3, R2, R1\n" },
  { "<lead from='servo' to='receiver' name='Long one'/>", "Long one, at least 341 mm long | through former F3, through ribs R3, R2, R1\n" },
};

/* Its way is 180 mm across and 80 aft, with what it climbs from the wing's plane, and 1.12 times that + 10 + 40 is needed. */
START_TEST (a_lead_is_told_with_its_extension_and_what_it_is_drawn_through)
{
  g_autofree char *elements = g_strconcat (RECEIVER SERVO, leads[_i].lead, NULL), *words = told (elements, metric);

  ck_assert_msg (g_str_has_suffix (words, leads[_i].told), "%s", words);
}
END_TEST

START_TEST (a_lead_that_passes_nothing_can_be_laid_at_any_time)
{
  g_autofree char *words = told (RECEIVER "<part id='s' class='switch' name='Switch' mass='1' x='260' length='8' width='5' height='5'/>"
                                 "<lead from='s' to='receiver' length='100'/>", metric);

  ck_assert_ptr_null (strstr (words, "Lead"));
}
END_TEST

START_TEST (a_place_on_the_way_that_stands_at_a_former_passes_it_once)
{
  g_autoptr (Aeroplane) aeroplane = body_with ("");
  const Point way[] = { { 100, 0 }, { 200, 5 }, { 250, 5 }, { 150, 0 } }, ends[] = { { 20, 0 }, { 100, 0 } };
  g_autoptr (GPtrArray) formers = formers_passed (aeroplane, way, G_N_ELEMENTS (way)), none = formers_passed (aeroplane, ends, 2);

  ck_assert_uint_eq (formers->len, 1);
  ck_assert_str_eq (((const NamedPlace *) formers->pdata[0])->name, "F3");
  ck_assert_uint_eq (none->len, 0);
}
END_TEST

/* What is forward of what: in the order of work, whatever the document's. */
START_TEST (they_stand_in_the_order_of_work)
{
  static const ClosingKind wanted[] = { CLOSING_FIREWALL, CLOSING_FLOOR, CLOSING_TRAY, CLOSING_TRAY, CLOSING_PUSHROD, CLOSING_LEAD };
  g_autoptr (Aeroplane) aeroplane = body_with ("<lead from='servo' to='receiver' length='400'/>"
    "<part id='p' class='pushrod' mass='3' x='260' length='220' width='2' height='2'/>" RECEIVER SERVO
    "<part id='b' class='battery' mass='40' x='150' length='50' width='30' height='12'/>" MOTOR);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) steps = before_closing_of (figures);

  ck_assert_uint_eq (steps->len, G_N_ELEMENTS (wanted));
  for (guint i = 0; i < steps->len; i++)
    ck_assert_int_eq (g_array_index (steps, ClosingStep, i).kind, wanted[i]);
}
END_TEST

static Aeroplane *
example (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", "saltmarsh-racer.trammel", NULL);

  return reader_read_file (path, NULL, NULL);
}

/* The racer's mark and limits are on every sheet of it; its nose weight in the worst case in its report. */
START_TEST (the_example_has_hard_wood_at_its_mark_and_room_for_ballast)
{
  g_autoptr (Aeroplane) aeroplane = example ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) steps = before_closing_of (figures);
  const ClosingStep *mark = &g_array_index (steps, ClosingStep, steps->len - 2), *ballast = &g_array_index (steps, ClosingStep, steps->len - 1);
  g_autofree char *wood = closing_what (figures, mark, metric), *where = closing_where (figures, mark, metric);

  ck_assert_str_eq (wood, "Hard wood at the balance mark, station 40, both\u00A0halves");
  ck_assert_str_eq (where, "36\u00A0mm aft of the leading edge there, 8\u00A0mm inboard of rib\u00A0R2");
  ck_assert (mark->aft_of_edge_mm == figures->balance.marks[0].target_mm);
  ck_assert (ballast->kind == CLOSING_BALLAST && ballast->in_case && ballast->ballast_g > 0);
}
END_TEST

START_TEST (the_file_says_the_same_in_numbers)
{
  g_autoptr (Aeroplane) aeroplane = body_with (RECEIVER);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *csv = report_list_csv (figures, REPORT_LIST_BEFORE_CLOSING);

  ck_assert_ptr_nonnull (strstr (csv, "\r\n1,tray,receiver,Receiver,220,240,0,-14,F3,20,40,16,16,,,,,,,,,,,,,,,,\r\n"));
}
END_TEST

START_TEST (a_bay_in_the_wing_is_in_the_file)
{
  g_autoptr (Aeroplane) aeroplane = body_with (SERVO);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *csv = report_list_csv (figures, REPORT_LIST_BEFORE_CLOSING);

  ck_assert_ptr_nonnull (strstr (csv, "\r\n1,tray,servo,Servo,140,160,-180,,,,,,,,,,,,,,,,wing,20,40,R4,-20,,\r\n"));
}
END_TEST

/* What the template writes at the hatch's edges. */
START_TEST (the_hatch_is_told_from_the_same_formers_as_on_its_template)
{
  g_autoptr (Aeroplane) aeroplane = example ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GArray) steps = before_closing_of (figures);
  g_autofree char *forward = hatch_edge_text (aeroplane, figures->hatch.from_mm, metric), *after = hatch_edge_text (aeroplane, figures->hatch.to_mm, metric);
  guint at = 0;

  while (g_array_index (steps, ClosingStep, at).kind != CLOSING_HATCH)
    ck_assert_uint_lt (++at, steps->len);
  g_autofree char *where = closing_where (figures, &g_array_index (steps, ClosingStep, at), metric);
  g_autofree char *wanted = g_strdup_printf ("forward edge %s, after edge %s", forward, after);
  ck_assert_str_eq (where, wanted);
  ck_assert_str_eq (g_array_index (steps, ClosingStep, at).stand.former->name, "F2");
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("before closing");
  TCase *tests = tcase_create ("lists");

  tcase_add_loop_test (tests, each_thing_is_told_from_a_named_former_and_the_thrust_line, 0, G_N_ELEMENTS (single));
  tcase_add_test (tests, a_pack_between_two_wings_lies_in_the_nearer_one);
  tcase_add_loop_test (tests, places_in_a_wing_read_on_either_side_of_its_leading_edge, 0, G_N_ELEMENTS (alongs));
  tcase_add_test (tests, heights_are_from_where_the_thrust_line_begins);
  tcase_add_test (tests, who_wants_inches_reads_inches);
  tcase_add_loop_test (tests, what_is_put_on_later_or_goes_elsewhere_is_not_listed, 0, G_N_ELEMENTS (outside));
  tcase_add_loop_test (tests, a_lead_is_told_with_its_extension_and_what_it_is_drawn_through, 0, G_N_ELEMENTS (leads));
  tcase_add_test (tests, a_lead_that_passes_nothing_can_be_laid_at_any_time);
  tcase_add_test (tests, a_place_on_the_way_that_stands_at_a_former_passes_it_once);
  tcase_add_test (tests, they_stand_in_the_order_of_work);
  tcase_add_test (tests, the_example_has_hard_wood_at_its_mark_and_room_for_ballast);
  tcase_add_test (tests, the_file_says_the_same_in_numbers);
  tcase_add_test (tests, a_bay_in_the_wing_is_in_the_file);
  tcase_add_test (tests, the_hatch_is_told_from_the_same_formers_as_on_its_template);
  return run_suite (suite, tests);
}
