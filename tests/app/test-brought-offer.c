/* Lines drawn elsewhere, offered as parts of an aeroplane, without a window. Drawings are invented; sizes follow from them by hand. */
#include "app/brought-offer.h"
#include "app/brought-words.h"
#include "document/reader.h"
#include "support/run-suite.h"
#include <math.h>
#include <string.h>

#define DRAWING(inside) "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>" inside "</svg>"
#define BORDER "<rect id='border' x='5' y='5' width='790' height='590'/>"
#define WING "<path id='wing' d='M400 60L720 80L720 150L400 190L80 150L80 80z'/>"
#define FIN "<path id='fin' d='M600 400L640 320L680 320L690 400z'/>"
#define BODY "<path id='body' d='M100 450C150 420 300 415 600 440L600 460C300 485 150 480 100 450z'/>"
#define SCRIBBLE "<path id='scribble' d='M10 10L13 19L27 31'/>"

static const Units metric = { LENGTH_MM, MASS_G };

static Brought *
drawing (const char *text)
{
  GError *error = NULL;
  Brought *made = brought_read (text, strlen (text), "drawing", &error);

  ck_assert_msg (made != NULL, "%s", error == NULL ? "" : error->message);
  return made;
}

static Aeroplane *
aeroplane_with (const char *inside)
{
  g_autofree char *text = g_strconcat ("<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">", inside, "</aeroplane>", NULL);
  GError *error = NULL;
  Aeroplane *made = reader_read_data (text, strlen (text), "wren", NULL, &error);

  ck_assert_msg (made != NULL, "%s", error == NULL ? "" : error->message);
  return made;
}

#define OLD_WING "<surface id=\"wing\" role=\"wing\" z=\"9\"><outline><start x=\"61\" y=\"0\"/><line x=\"83\" y=\"287\"/><line x=\"149\" y=\"291\"/>" \
  "<line x=\"158\" y=\"0\"/></outline></surface>"
static const char old_wing[] = OLD_WING;
static const char old_body[] = "<body id=\"pod\"><outline><start x=\"20\" y=\"0\"/><line x=\"100\" y=\"30\"/><line x=\"400\" y=\"0\"/></outline></body>";

START_TEST (the_first_line_that_fits_is_offered_and_a_border_is_none)
{
  Brought *brought = drawing (DRAWING (SCRIBBLE FIN BORDER BODY WING));
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const OfferChoice choice = offer_first (brought, empty, NULL);

  ck_assert_str_eq (brought->lines[0].name, "border");
  ck_assert_str_eq (brought->lines[choice.line].name, "wing");
  ck_assert_int_eq (choice.shows, VIEW_WING);
  ck_assert_int_eq (choice.quarter_turns, 0);
  brought_free (brought);
}
END_TEST

#define ANY_OUTLINE "<outline><start x=\"300\" y=\"0\"/><line x=\"310\" y=\"90\"/><line x=\"350\" y=\"0\"/></outline>"
#define TAIL "<surface id=\"tail\" role=\"tailplane\">" ANY_OUTLINE "</surface>"
#define OLD_FIN "<surface id=\"fin\" role=\"fin\">" ANY_OUTLINE "</surface>"
#define SIDE "<side-outline><start x=\"20\" y=\"0\"/><line x=\"100\" y=\"30\"/><line x=\"400\" y=\"0\"/><line x=\"100\" y=\"-20\"/></side-outline>"
static const struct { const char *because, *there, *selected; ViewShows shows; } missing[] = {
  { "nothing is there", "", NULL, VIEW_WING },
  { "a wing is there", old_wing, NULL, VIEW_TAILPLANE },
  { "a wing is selected", old_wing, "wing", VIEW_WING },
  { "the tail is there too", OLD_WING TAIL, NULL, VIEW_FIN },
  { "and a fin", OLD_WING TAIL OLD_FIN, NULL, VIEW_BODY_TOP },
  { "and a body from above", OLD_WING TAIL OLD_FIN "<body id=\"pod\">" ANY_OUTLINE "</body>", NULL, VIEW_BODY_SIDE },
  { "nothing is missing", OLD_WING TAIL OLD_FIN "<body id=\"pod\">" ANY_OUTLINE SIDE "</body>", NULL, VIEW_WING },
};

START_TEST (what_is_missing_or_selected_is_what_a_line_is_taken_for)
{
  Brought *brought = drawing (DRAWING (WING));
  g_autoptr (Aeroplane) there = aeroplane_with (missing[_i].there);

  ck_assert_msg (offer_first (brought, there, missing[_i].selected).shows == missing[_i].shows, "%s", missing[_i].because);
  brought_free (brought);
}
END_TEST

/* An ellipse 300 by 80, drawn across and drawn along the page: a wing lies across either way, a body along. */
START_TEST (a_round_line_lies_across_as_a_wing_and_along_as_a_body)
{
  static const struct { ViewShows shows; double along; } wanted[] = { { VIEW_WING, 80 }, { VIEW_BODY_TOP, 300 } };
  const char *const drawn[] = { DRAWING ("<ellipse cx='300' cy='200' rx='150' ry='40'/>"), DRAWING ("<ellipse cx='300' cy='200' rx='40' ry='150'/>") };

  for (size_t d = 0; d < 2; d++)
    for (size_t w = 0; w < 2; w++)
      {
        Brought *brought = drawing (drawn[d]);
        g_autoptr (Aeroplane) empty = aeroplane_new ();
        OfferChoice choice = { .shows = wanted[w].shows, .unit_mm = brought->unit_mm };
        offer_lay (brought, &choice);
        Offer offer = offer_make (brought, empty, NULL, &choice);
        ck_assert_int_eq (offer.status, OFFER_FITS);
        ck_assert_double_eq_tol (offer.along, wanted[w].along, 0.1);
        ck_assert_double_eq_tol (offer.across, 380 - wanted[w].along, 0.1);
        offer_clear (&offer);
        brought_free (brought);
      }
}
END_TEST

START_TEST (a_new_wing_stands_where_one_usually_does_with_its_half)
{
  Brought *brought = drawing (DRAWING (WING));
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const OfferChoice choice = offer_first (brought, empty, NULL);
  Offer offer = offer_make (brought, empty, NULL, &choice);
  const Surface *wing = aeroplane_surface_by_id (offer.next, offer.id);
  const Box box = outline_bounds (wing->outline);

  ck_assert (!offer.replaces && offer.drawn == HALF_DRAWN_WHOLE);
  ck_assert_double_eq_tol (box.max.y, 320, 1e-9);
  ck_assert_double_eq_tol (box.max.x - box.min.x, 130, 1e-9);
  ck_assert_double_gt (box.min.x, 0);
  ck_assert_uint_eq (aeroplane_piece_count (empty), 0);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

/* Half a wing as a table, its leading edge at the root that far aft. */
static double
root_of_a_table_at (int x)
{
  g_autofree char *text = g_strdup_printf ("x;y mm\n%d;0\n%d;300\n%d;300\n%d;0\n", x, x + 20, x + 90, x + 120);
  Brought *brought = drawing (text);
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const OfferChoice choice = { .shows = VIEW_WING, .unit_mm = brought->unit_mm, .half_only = true };
  Offer offer = offer_make (brought, empty, NULL, &choice);
  ck_assert_int_eq (offer.status, OFFER_FITS);
  const double root = outline_node (aeroplane_surface_by_id (offer.next, offer.id)->outline, 0).x;

  offer_clear (&offer);
  brought_free (brought);
  return root;
}

START_TEST (a_table_says_itself_how_far_aft_a_new_piece_stands_where_that_may_be)
{
  const double usual = root_of_a_table_at (0);

  ck_assert_double_eq_tol (root_of_a_table_at (87), 87, 1e-9);
  ck_assert_double_gt (usual, 0);
  ck_assert_double_eq (root_of_a_table_at (5000), usual);
  ck_assert_double_eq (root_of_a_table_at (-40), usual);
}
END_TEST

START_TEST (the_selected_wing_gets_the_outline_and_stays_where_it_is)
{
  Brought *brought = drawing (DRAWING (WING));
  g_autoptr (Aeroplane) there = aeroplane_with (old_wing);
  const OfferChoice choice = offer_first (brought, there, "wing");
  Offer offer = offer_make (brought, there, "wing", &choice);
  const Surface *wing = aeroplane_surface_by_id (offer.next, "wing");

  ck_assert (offer.replaces);
  ck_assert_uint_eq (aeroplane_piece_count (offer.next), aeroplane_piece_count (there));
  ck_assert_double_eq (outline_node (wing->outline, 0).x, 61);
  ck_assert_double_eq (wing->z, 9);
  ck_assert_double_eq_tol (outline_bounds (wing->outline).max.y, 320, 1e-9);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

START_TEST (the_only_wing_gets_it_too_unless_another_is_wanted)
{
  Brought *brought = drawing (DRAWING (WING));
  g_autoptr (Aeroplane) there = aeroplane_with (OLD_WING TAIL);
  OfferChoice choice = { .shows = VIEW_WING, .unit_mm = brought->unit_mm };
  Offer offer = offer_make (brought, there, NULL, &choice);

  ck_assert (offer.replaces);
  ck_assert_str_eq (offer.id, "wing");
  offer_clear (&offer);
  choice.another = true;
  offer = offer_make (brought, there, NULL, &choice);
  ck_assert (!offer.replaces);
  ck_assert_uint_eq (aeroplane_count (offer.next, PIECE_SURFACE), 3);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

START_TEST (a_fin_stands_upright)
{
  Brought *brought = drawing (DRAWING (FIN));
  g_autoptr (Aeroplane) there = aeroplane_with (old_wing);
  OfferChoice choice = { .shows = VIEW_FIN, .unit_mm = brought->unit_mm };

  offer_lay (brought, &choice);
  Offer offer = offer_make (brought, there, NULL, &choice);
  const Outline *fin = aeroplane_surface_by_id (offer.next, offer.id)->outline;
  ck_assert_double_eq_tol (outline_bounds (fin).max.y, 80, 1e-9);
  ck_assert_double_eq_tol (outline_node (fin, 1).x - outline_node (fin, 0).x, 40, 1e-9);
  ck_assert_double_eq_tol (outline_node (fin, 3).x - outline_node (fin, 0).x, 90, 1e-9);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

START_TEST (a_side_view_is_put_beside_the_body_that_lacks_one)
{
  Brought *brought = drawing (DRAWING (BODY));
  g_autoptr (Aeroplane) there = aeroplane_with (old_body);
  OfferChoice choice = { .shows = VIEW_BODY_SIDE, .unit_mm = brought->unit_mm };

  offer_lay (brought, &choice);
  Offer offer = offer_make (brought, there, NULL, &choice);
  const Body *body = aeroplane_body_by_id (offer.next, "pod");
  ck_assert_str_eq (offer.id, "pod");
  ck_assert (!offer.replaces && body->outline != NULL);
  ck_assert_double_eq_tol (outline_bounds (body->side_outline).min.x, 20, 1e-9);
  ck_assert_double_eq_tol (outline_bounds (body->side_outline).max.x, 520, 1e-9);
  offer_clear (&offer);
  choice.mirrored = true;
  offer = offer_make (brought, there, NULL, &choice);
  body = aeroplane_body_by_id (offer.next, "pod");
  /* Its blunt tail is ahead now. */
  ck_assert_double_eq_tol (outline_node (body->side_outline, 0).x, 20, 1e-9);
  ck_assert_double_eq_tol (outline_node (body->side_outline, 0).y, 10, 3);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

START_TEST (inches_are_25_4_times_as_large)
{
  Brought *brought = drawing ("0;0\n1;10\n4;10\n5;0\n");
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  OfferChoice choice = offer_first (brought, empty, NULL);

  choice.unit_mm = 25.4;
  Offer offer = offer_make (brought, empty, NULL, &choice);
  ck_assert_double_eq_tol (outline_bounds (aeroplane_surface_by_id (offer.next, offer.id)->outline).max.y, 254, 1e-9);
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

static const struct { const char *text; OfferStatus status; const char *says; } misfits[] = {
  { DRAWING (SCRIBBLE), OFFER_OPEN, "does not close" },
  { DRAWING ("<path d='M0 0L90 20L60 70L10 95z'/>"), OFFER_NO_ROOT, "neither the same on both sides" },
  { "0;0\n90;200\n10;210\n100;0\n", OFFER_CROSSES, "crosses itself" },
  { "0;0\n100;0\n", OFFER_NOTHING, "encloses nothing" },
};

START_TEST (what_does_not_fit_says_why_and_changes_nothing)
{
  Brought *brought = drawing (misfits[_i].text);
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const OfferChoice choice = { .shows = VIEW_WING, .unit_mm = brought->unit_mm };
  Offer offer = offer_make (brought, empty, NULL, &choice);
  g_autofree char *note = brought_words_note (&choice, &offer, metric);

  ck_assert_int_eq (offer.status, misfits[_i].status);
  ck_assert (offer.next == NULL && offer.id == NULL);
  ck_assert_msg (strstr (note, misfits[_i].says) != NULL, "%s", note);
  brought_free (brought);
}
END_TEST

START_TEST (a_drawing_in_the_wrong_unit_is_too_large)
{
  Brought *brought = drawing ("0;0\n50;450\n100;450\n150;0\n");
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  const OfferChoice choice = { .shows = VIEW_WING, .unit_mm = 25.4 };
  Offer offer = offer_make (brought, empty, NULL, &choice);

  ck_assert_int_eq (offer.status, OFFER_TOO_LARGE);
  ck_assert_ptr_null (offer.next);
  brought_free (brought);
}
END_TEST

START_TEST (what_does_not_come_along_is_said)
{
  Brought *whole = drawing (DRAWING (FIN)), *less = drawing (DRAWING (FIN "<text>R1</text><text>R2</text>"));
  g_autofree char *nothing = brought_words_left_out (whole), *said = brought_words_left_out (less);

  ck_assert_ptr_null (nothing);
  ck_assert_str_eq (said, "2 things in the file are no lines, such as text, pictures or hatching, and were left out.");
  brought_free (whole);
  brought_free (less);
}
END_TEST

START_TEST (the_strip_says_which_line_how_large_and_how_it_was_taken)
{
  Brought *brought = drawing (DRAWING (FIN "<path id='CUT' d='M400 60L720 80L720 150L400 190L80 152L80 80z'/>"));
  g_autoptr (Aeroplane) empty = aeroplane_new ();
  OfferChoice choice = offer_first (brought, empty, NULL);
  Offer offer = offer_make (brought, empty, NULL, &choice);
  g_autofree char *line = brought_words_line (brought, choice.line, &offer, metric);
  g_autofree char *note = brought_words_note (&choice, &offer, metric);

  ck_assert_str_eq (line, "1 of 2: CUT, 640 × 130\u00A0mm");
  ck_assert_str_eq (note, "Both halves are drawn, and their chords differ by up to 2.0\u00A0mm: the right one is taken.");
  offer_clear (&offer);
  brought_free (brought);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought offer");

  tcase_add_test (tests, the_first_line_that_fits_is_offered_and_a_border_is_none);
  tcase_add_loop_test (tests, what_is_missing_or_selected_is_what_a_line_is_taken_for, 0, G_N_ELEMENTS (missing));
  tcase_add_test (tests, a_round_line_lies_across_as_a_wing_and_along_as_a_body);
  tcase_add_test (tests, a_new_wing_stands_where_one_usually_does_with_its_half);
  tcase_add_test (tests, a_table_says_itself_how_far_aft_a_new_piece_stands_where_that_may_be);
  tcase_add_test (tests, the_selected_wing_gets_the_outline_and_stays_where_it_is);
  tcase_add_test (tests, the_only_wing_gets_it_too_unless_another_is_wanted);
  tcase_add_test (tests, a_fin_stands_upright);
  tcase_add_test (tests, a_side_view_is_put_beside_the_body_that_lacks_one);
  tcase_add_test (tests, inches_are_25_4_times_as_large);
  tcase_add_loop_test (tests, what_does_not_fit_says_why_and_changes_nothing, 0, G_N_ELEMENTS (misfits));
  tcase_add_test (tests, a_drawing_in_the_wrong_unit_is_too_large);
  tcase_add_test (tests, what_does_not_come_along_is_said);
  tcase_add_test (tests, the_strip_says_which_line_how_large_and_how_it_was_taken);
  return run_suite (suite_create ("brought offer"), tests);
}
