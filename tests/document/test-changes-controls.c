/* Controls added, changed and taken out, and what a hinge line may not be. */
#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "document/hinge.h"
#include "document/reader.h"
#include "document/writer.h"
#include "support/run-suite.h"

/* A wing of 100 to the tip at 300, its trailing edge from 100 forward to 70; an elliptical tailplane; a fin of 60 high. */
static const char text[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n"
  "  <surface id=\"wing\" role=\"wing\"><outline><start x=\"0\" y=\"0\"/><line x=\"0\" y=\"300\"/><line x=\"70\" y=\"300\"/>"
  "<line x=\"100\" y=\"0\"/></outline>"
  "<control id=\"flaps\" kind=\"flap\" inner=\"20\" outer=\"120\" hinge-inner-x=\"78\" hinge-outer-x=\"68\" later=\"a\"/>"
  "<control id=\"ailerons\" kind=\"aileron\" inner=\"140\" outer=\"280\" hinge-inner-x=\"70\" hinge-outer-x=\"56\" up=\"12\" later=\"b\"/>"
  "</surface>\n"
  "  <surface id=\"tail\" role=\"tailplane\"><outline><start x=\"400\" y=\"0\"/><arc cx=\"420\" cy=\"0\" rx=\"20\" ry=\"100\" x=\"420\""
  " y=\"100\"/>"
  "<arc cx=\"420\" cy=\"0\" rx=\"40\" ry=\"100\" x=\"460\" y=\"0\"/></outline></surface>\n"
  "  <surface id=\"fin\" role=\"fin\" z=\"10\"><outline><start x=\"400\" y=\"0\"/><line x=\"430\" y=\"60\"/><line x=\"460\" y=\"60\"/>"
  "<line x=\"460\" y=\"0\"/></outline></surface>\n"
  "  <surface id=\"open\" role=\"foreplane\"><outline><start x=\"0\" y=\"0\"/><line x=\"0\" y=\"50\"/>"
  "<line x=\"20\" y=\"50\"/></outline></surface>\n"
  "</aeroplane>\n";

static Aeroplane *
read_it (void)
{
  Aeroplane *made = reader_read_data (text, sizeof text - 1, "test", NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

static Control
control_of (double inner, double inner_x, double outer, double outer_x)
{
  return (Control) { .kind = CONTROL_ELEVATOR, .inner = inner, .outer = outer, .hinge_inner_x = inner_x, .hinge_outer_x = outer_x,
                     .up = NAN, .down = NAN };
}

START_TEST (a_control_is_added_behind_the_others_under_an_id_of_its_own)
{
  g_autoptr (Aeroplane) before = read_it ();
  const Control elevator = control_of (5, 440, 60, 440);
  g_autofree char *first = NULL, *second = NULL;
  g_autoptr (Aeroplane) one = change_control_added (before, "tail", &elevator, &first);
  g_autoptr (Aeroplane) two = change_control_added (one, "wing", &(Control) { .kind = CONTROL_ELEVATOR, .inner = 1, .outer = 18,
                                                   .hinge_inner_x = 80, .hinge_outer_x = 80, .up = 3, .down = NAN }, &second);
  const Control *added = aeroplane_control_by_id (two, "wing", second);

  ck_assert_str_eq (first, "elevator");
  ck_assert_str_eq (second, "elevator-2");
  ck_assert_uint_eq (aeroplane_surface_by_id (two, "wing")->control_count, 3);
  ck_assert_ptr_eq (added, &aeroplane_surface_by_id (two, "wing")->controls[2]);
  ck_assert_double_eq (added->outer, 18);
  ck_assert_double_eq (added->up, 3);
  ck_assert_uint_eq (aeroplane_surface_by_id (before, "tail")->control_count, 0);
  ck_assert_ptr_eq (aeroplane_surface_by_id (two, "fin"), aeroplane_surface_by_id (before, "fin"));
}
END_TEST

START_TEST (a_control_keeps_its_id_whatever_else_is_changed)
{
  g_autoptr (Aeroplane) before = read_it ();
  Control next = *aeroplane_control_by_id (before, "wing", "ailerons");

  next.id = (char *) "not looked at";
  next.kind = CONTROL_FLAP;
  next.outer = 290;
  next.hinge_outer_x = 55;
  next.down = 7;
  g_autoptr (Aeroplane) after = change_control (before, "wing", "ailerons", &next);
  const Control *changed = aeroplane_control_by_id (after, "wing", "ailerons");
  ck_assert_ptr_nonnull (changed);
  ck_assert_int_eq (changed->kind, CONTROL_FLAP);
  ck_assert_double_eq (changed->outer, 290);
  ck_assert_double_eq (changed->down, 7);
  ck_assert_double_eq (aeroplane_control_by_id (before, "wing", "ailerons")->outer, 280);
  ck_assert_ptr_null (change_control (before, "wing", "nobody", &next));
  ck_assert_ptr_null (change_control (before, "tail", "ailerons", &next));
}
END_TEST

START_TEST (a_change_that_changes_nothing_gives_the_same_aeroplane)
{
  g_autoptr (Aeroplane) before = read_it ();
  g_autoptr (Aeroplane) after = change_control (before, "wing", "flaps", aeroplane_control_by_id (before, "wing", "flaps"));

  ck_assert_ptr_eq (after, before);
}
END_TEST

START_TEST (a_control_taken_out_takes_what_a_later_version_wrote_on_it_and_no_more)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_control_removed (before, "wing", "flaps");
  g_autofree char *written = writer_text (after, NULL);

  ck_assert_ptr_null (aeroplane_control_by_id (after, "wing", "flaps"));
  ck_assert_ptr_null (strstr (written, "later=\"a\""));
  ck_assert_ptr_nonnull (strstr (written, "later=\"b\""));
  ck_assert_ptr_null (change_control_removed (after, "wing", "flaps"));
  ck_assert_ptr_null (change_control_removed (after, "nobody", "ailerons"));
}
END_TEST

static const struct {
  const char *because, *surface;
  double inner, inner_x, outer, outer_x;
  HingeFault fault;
  double station;              /* where it is said to be; NAN: not looked at */
} lines[] = {
  { "within the wing", "wing", 20, 80, 280, 60, HINGE_SOUND, NAN },
  { "from the centre line to the tip", "wing", 0, 80, 300, 60, HINGE_SOUND, NAN },
  { "along the trailing edge, to rounding", "wing", 0, 100, 300, 70, HINGE_SOUND, NAN },
  { "ending where a round tip has no chord left", "tail", 10, 440, 100, 420, HINGE_SOUND, NAN },
  { "in the fin, stations its heights", "fin", 0, 440, 60, 445, HINGE_SOUND, NAN },
  { "outer end first", "wing", 200, 80, 100, 80, HINGE_BACKWARDS, 200 },
  { "both ends at one station", "wing", 100, 60, 100, 80, HINGE_NO_LENGTH, 100 },
  { "beyond the tip", "wing", 200, 60, 301, 60, HINGE_BEYOND, 301 },
  { "below the fin", "fin", -1, 440, 60, 440, HINGE_BEYOND, -1 },
  { "a number that is none", "wing", 20, NAN, 100, 60, HINGE_BEYOND, NAN },
  { "ahead of a swept leading edge", "fin", 10, 420, 60, 420, HINGE_AHEAD, NAN },
  { "behind the trailing edge outboard", "wing", 20, 80, 280, 80, HINGE_BEHIND, NAN },
  { "in an outline that is not closed", "open", 10, 10, 40, 10, HINGE_NO_SURFACE, NAN },
};

START_TEST (a_hinge_line_lies_within_its_surface_from_end_to_end)
{
  g_autoptr (Aeroplane) aeroplane = read_it ();
  const Control control = control_of (lines[_i].inner, lines[_i].inner_x, lines[_i].outer, lines[_i].outer_x);
  const Surface *surface = aeroplane_surface_by_id (aeroplane, lines[_i].surface);
  double station = NAN;
  g_autoptr (Aeroplane) next = change_control_added (aeroplane, lines[_i].surface, &control, NULL);

  ck_assert_msg (hinge_check (surface, &control, &station) == lines[_i].fault, "%s", lines[_i].because);
  if (!isnan (lines[_i].station))
    ck_assert_double_eq (station, lines[_i].station);
  ck_assert_msg ((next != NULL) == (lines[_i].fault == HINGE_SOUND), "%s", lines[_i].because);
}
END_TEST

/* A saw's tooth cut into the trailing edge between two sound ends. */
START_TEST (a_notch_between_the_ends_is_met)
{
  const Point places[] = { { 0, 0 }, { 0, 200 }, { 100, 200 }, { 100, 101 }, { 40, 100 }, { 100, 99 }, { 100, 0 } };
  Segment segments[6];
  Outline *outline;
  const Control control = control_of (10, 70, 190, 70);
  double station;

  for (int i = 0; i < 6; i++)
    segments[i] = (Segment) { .kind = SEGMENT_LINE, .to = places[i + 1] };
  ck_assert_int_eq (outline_new (places[0], segments, 6, NULL, &outline), CORE_OK);
  Surface *surface = surface_new ("wing", ROLE_WING, outline);
  ck_assert_int_eq (hinge_check (surface, &control, &station), HINGE_BEHIND);
  ck_assert_double_eq_tol (station, 100, 1);
  piece_unref (&surface->piece);
}
END_TEST

START_TEST (a_control_that_a_file_has_wrong_can_still_be_renamed_and_given_throws_but_not_moved_elsewhere_wrong)
{
  static const char wrong[] =
    "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><surface id=\"wing\" role=\"wing\"><outline><start x=\"0\" y=\"0\"/>"
    "<line x=\"0\" y=\"100\"/><line x=\"50\" y=\"100\"/><line x=\"50\" y=\"0\"/></outline>"
    "<control id=\"c\" kind=\"aileron\" inner=\"50\" outer=\"150\" hinge-inner-x=\"40\" hinge-outer-x=\"40\"/></surface></aeroplane>";
  g_autoptr (Aeroplane) before = reader_read_data (wrong, sizeof wrong - 1, "test", NULL, NULL);
  Control next = *aeroplane_control_by_id (before, "wing", "c");

  next.up = 10;
  next.kind = CONTROL_FLAP;
  g_autoptr (Aeroplane) thrown = change_control (before, "wing", "c", &next);
  ck_assert_double_eq (aeroplane_control_by_id (thrown, "wing", "c")->up, 10);
  next.outer = 140;
  ck_assert_ptr_null (change_control (before, "wing", "c", &next));
  next.outer = 100;
  g_autoptr (Aeroplane) right = change_control (before, "wing", "c", &next);
  ck_assert_double_eq (aeroplane_control_by_id (right, "wing", "c")->outer, 100);
}
END_TEST

/* A chord of 30 turned by 30 degrees rises by half of it. */
START_TEST (the_trailing_edge_moves_by_the_chord_times_the_sine_of_the_turn)
{
  g_autoptr (Aeroplane) aeroplane = read_it ();
  const Surface *wing = aeroplane_surface_by_id (aeroplane, "wing");
  const Control control = control_of (0, 70, 300, 60);

  ck_assert_double_eq_tol (hinge_chord (wing, &control, false), 30, 1e-9);
  ck_assert_double_eq_tol (hinge_chord (wing, &control, true), 10, 1e-9);
  ck_assert_double_eq_tol (hinge_travel (wing, &control, 30), 15, 1e-9);
  ck_assert_double_eq_tol (hinge_turn (wing, &control, 15), 30, 1e-9);
  ck_assert (isnan (hinge_turn (wing, &control, 31)));
  ck_assert (isnan (hinge_travel (wing, &control, NAN)));
  ck_assert_double_eq_tol (hinge_x_at (&control, 150), 65, 1e-12);
}
END_TEST

START_TEST (a_place_off_the_surface_is_brought_onto_it)
{
  g_autoptr (Aeroplane) aeroplane = read_it ();
  const Surface *wing = aeroplane_surface_by_id (aeroplane, "wing"), *fin = aeroplane_surface_by_id (aeroplane, "fin");
  const struct { const Surface *on; Point from, to; } cases[] = {
    { wing, { 60, 100 }, { 60, 100 } }, { wing, { 95, 100 }, { 90, 100 } }, { wing, { 60, 310 }, { 60, 300 } },
    { wing, { -4, 310 }, { 0, 300 } }, { wing, { 60, -3 }, { 60, 0 } }, { fin, { 405, 30 }, { 415, 30 } },
    { fin, { 450, 70 }, { 450, 60 } } };

  for (size_t i = 0; i < G_N_ELEMENTS (cases); i++)
    ck_assert_double_le (point_distance (hinge_onto (cases[i].on, cases[i].from), cases[i].to), 1e-9);
}
END_TEST

START_TEST (each_surface_has_its_usual_control)
{
  ck_assert_int_eq (hinge_usual_kind (ROLE_WING), CONTROL_AILERON);
  ck_assert_int_eq (hinge_usual_kind (ROLE_TAILPLANE), CONTROL_ELEVATOR);
  ck_assert_int_eq (hinge_usual_kind (ROLE_FOREPLANE), CONTROL_ELEVATOR);
  ck_assert_int_eq (hinge_usual_kind (ROLE_FIN), CONTROL_RUDDER);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("controls");
  TCase *tests = tcase_create ("controls");

  tcase_add_test (tests, a_control_is_added_behind_the_others_under_an_id_of_its_own);
  tcase_add_test (tests, a_control_keeps_its_id_whatever_else_is_changed);
  tcase_add_test (tests, a_change_that_changes_nothing_gives_the_same_aeroplane);
  tcase_add_test (tests, a_control_taken_out_takes_what_a_later_version_wrote_on_it_and_no_more);
  tcase_add_loop_test (tests, a_hinge_line_lies_within_its_surface_from_end_to_end, 0, G_N_ELEMENTS (lines));
  tcase_add_test (tests, a_notch_between_the_ends_is_met);
  tcase_add_test (tests, a_control_that_a_file_has_wrong_can_still_be_renamed_and_given_throws_but_not_moved_elsewhere_wrong);
  tcase_add_test (tests, the_trailing_edge_moves_by_the_chord_times_the_sine_of_the_turn);
  tcase_add_test (tests, a_place_off_the_surface_is_brought_onto_it);
  tcase_add_test (tests, each_surface_has_its_usual_control);
  return run_suite (suite, tests);
}
