#include "every-piece.h"
#include "documents.h"
#include "support/run-suite.h"

static Plan *
plan_in (const Aeroplane *read)
{
  ck_assert_uint_eq (aeroplane_count (read, PIECE_PLAN), 1);
  return (Plan *) aeroplane_plan (read, 0);      /* only looked at */
}

static Aeroplane *
written_and_read (const Aeroplane *self)
{
  size_t length;
  g_autofree char *text = writer_text (self, &length);

  return read_bytes (text, length);
}

START_TEST (a_plan_with_all_that_is_known_of_it_comes_back)
{
  g_autoptr (Aeroplane) self = aeroplane_of_every_piece ();
  g_autoptr (Aeroplane) again = written_and_read (self);
  const Plan *plan = plan_in (again);

  ck_assert (piece_equal (&plan->piece, &plan_in (self)->piece));
  ck_assert_uint_eq (g_bytes_get_size (plan->image), 13);
  ck_assert_uint_eq (plan->straight[1].count, 2);
  ck_assert_double_eq (plan->places[2].y, 104.3);
  ck_assert_int_eq (plan->views[0].side, VIEW_PORT);
  ck_assert (plan->views[0].flipped && plan->views[0].for_now && plan->cling && plan->locked && !plan->has_level);
}
END_TEST

START_TEST (only_a_view_that_nobody_placed_says_so)
{
  g_autoptr (Aeroplane) read = read_elements ("<plan><view shows='wing' fore-x='1' fore-y='1' aft-x='2' aft-y='9'/>"
                                              "<view shows='tailplane' fore-x='3' fore-y='1' aft-x='4' aft-y='9' placed='no'/></plan>");
  size_t length;
  g_autofree char *text = writer_text (read, &length);

  ck_assert (!plan_in (read)->views[0].for_now);
  ck_assert (plan_in (read)->views[1].for_now);
  ck_assert_ptr_nonnull (strstr (text, "placed=\"no\""));
  ck_assert_ptr_null (strstr (text, "placed=\"yes\""));
}
END_TEST

START_TEST (what_is_not_said_of_a_plan_is_as_usual)
{
  g_autoptr (Aeroplane) read = read_elements ("<plan/>");
  const Plan *plan = plan_in (read);

  ck_assert_str_eq (plan->piece.id, "plan");
  ck_assert_double_eq (plan->strength, 75);
  ck_assert_double_eq (plan->page, 1);
  ck_assert_int_eq (plan->shown, PLAN_INK);
  ck_assert (plan->cling && plan->locked && !plan->image && !plan->file);
  ck_assert (isnan (plan->dpi) && isnan (plan->width));
}
END_TEST

START_TEST (copies_share_the_pictures_bytes)
{
  Plan *plan = (Plan *) any_plan (), *copy = (Plan *) piece_dup (&plan->piece);

  ck_assert_ptr_eq (plan->image, copy->image);
  ck_assert_ptr_ne (plan->views, copy->views);
  piece_unref (&plan->piece);
  ck_assert_uint_eq (g_bytes_get_size (copy->image), 13);
  piece_unref (&copy->piece);
}
END_TEST

/* RFC 4648, section 10: its test vectors, and blanks where a file has them. */
static const struct { const char *text, *bytes; } vectors[] = {
  { "Zg==", "f" }, { "Zm8=", "fo" }, { "Zm9v", "foo" }, { "Zm9vYg==", "foob" }, { "Zm9vYmE=", "fooba" }, { "Zm9vYmFy", "foobar" },
  { "\n  Zm9v\r\n\tYmFy \n", "foobar" }, { "<![CDATA[Zm9v]]>YmFy", "foobar" }, { "Zm9v<!-- half -->YmFy", "foobar" },
};

START_TEST (a_pictures_text_is_its_bytes)
{
  g_autofree char *text = g_strdup_printf ("<plan><image>%s</image></plan>", vectors[_i].text);
  g_autoptr (Aeroplane) read = read_elements (text);
  g_autoptr (GBytes) wanted = g_bytes_new_static (vectors[_i].bytes, strlen (vectors[_i].bytes));

  ck_assert_msg (g_bytes_equal (plan_in (read)->image, wanted), "%s", vectors[_i].text);
}
END_TEST

static const struct { const char *because, *text, *said; } refused[] = {
  { "three signs are no bytes", "<image>Zm9</image>",
    "text:1: <image>: its text is no picture’s (base64); put the picture in again, or take the element out" },
  { "a sign of another alphabet", "<image>Zm-v</image>", "no picture’s" },
  { "filling in the middle", "<image>Zg==Zm9v</image>", "no picture’s" },
  { "filling alone", "<image>====</image>", "no picture’s" },
  { "three times filled", "<image>Z===</image>", "no picture’s" },
  { "bits left over", "<image>Zh==</image>", "no picture’s" },
  { "bits left over of three", "<image>Zm9=</image>", "no picture’s" },
  { "a character reference", "<image>Zm9&#233;</image>", "no picture’s" },
  { "nothing", "<image> </image>", "it is empty" },
  { "two pictures", "<image>Zm9v</image><image>Zm9v</image>", "<plan id=\"p\"> has a second <image>; keep one of them" },
  { "two rectangles", "<corners x1='0' y1='0' x2='9' y2='0' x3='9' y3='9' x4='0' y4='9' width='1' height='1'/>"
    "<corners x1='0' y1='0' x2='9' y2='0' x3='9' y3='9' x4='0' y4='9' width='1' height='1'/>", "has a second <corners>" },
  { "text beside the picture", "<image>Zm9v</image>Zm9v", "the text “Zm9v” stands where none belongs; take it out" },
  { "text among places", "<straight>Zm9v</straight>", "stands where none belongs" },
  { "two views of one id", "<view id='p' shows='fin' fore-x='1' fore-y='1' aft-x='2' aft-y='2'/>", "the id “p” is used already" },
  { "a view of nothing", "<view shows='tail' fore-x='1' fore-y='1' aft-x='2' aft-y='2'/>", "shows is “tail”; write one of these" },
  { "a length of nothing", "<length x1='0' y1='0' x2='9' y2='0' mm='0'/>", "mm is “0”; write 0.001 or more" },
};

START_TEST (what_cannot_be_in_a_plan_is_told)
{
  g_autofree char *text = g_strdup_printf ("<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><plan id='p'>%s</plan></aeroplane>",
                                           refused[_i].text);
  g_autofree char *said = complaint_of (text, strlen (text), READER_ERROR_VALUE);

  ck_assert_msg (strstr (said, refused[_i].said) != NULL, "%s: %s", refused[_i].because, said);
}
END_TEST

START_TEST (a_page_is_a_whole_number)
{
  const char text[] = "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><plan id='p' page='1.5'/></aeroplane>";
  g_autofree char *said = complaint_of (text, strlen (text), READER_ERROR_VALUE);

  ck_assert_str_eq (said, "text:1: <plan id=\"p\">: page is 1.5; write a whole number");
}
END_TEST

/* No picture is drawn finer than that. */
START_TEST (a_plan_has_9600_pixels_an_inch_at_most)
{
  const char text[] = "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><plan id='p' dpi='9601'/></aeroplane>";
  g_autofree char *said = complaint_of (text, strlen (text), READER_ERROR_VALUE);
  g_autoptr (Aeroplane) read = read_elements ("<plan dpi='9600'/>");

  ck_assert_ptr_nonnull (strstr (said, "dpi is “9601”"));
  ck_assert_double_eq (plan_in (read)->dpi, 9600);
}
END_TEST

static char *
text_with_picture (size_t size)
{
  Plan *plan = plan_new ("sheet");
  g_autoptr (Aeroplane) none = aeroplane_new (), with = NULL;

  plan->image = g_bytes_new_take (g_malloc0 (size), size);
  with = aeroplane_with_added (none, &plan->piece);
  return writer_text (with, NULL);
}

START_TEST (a_picture_of_eight_megabytes_is_kept_and_one_byte_more_is_not)
{
  g_autofree char *text = text_with_picture (PLAN_IMAGE_MOST), *larger = text_with_picture (PLAN_IMAGE_MOST + 1), *said = NULL;
  g_autoptr (Aeroplane) read = read_bytes (text, strlen (text));

  ck_assert_uint_eq (g_bytes_get_size (plan_in (read)->image), PLAN_IMAGE_MOST);
  said = complaint_of (larger, strlen (larger), READER_ERROR_VALUE);
  ck_assert_msg (strstr (said, "larger than 8 MB") != NULL, "%s", said);
}
END_TEST

START_TEST (an_outline_may_be_traced_in_a_view_that_is_not_there)
{
  g_autoptr (Aeroplane) read = read_elements ("<body id='b' traced='gone' side-traced='gone-too'/>");

  ck_assert_str_eq (aeroplane_body (read, 0)->traced, "gone");
  ck_assert_str_eq (aeroplane_body (read, 0)->side_traced, "gone-too");
}
END_TEST

START_TEST (plans_and_views_without_ids_get_ones_of_their_own)
{
  g_autoptr (Aeroplane) read = read_elements ("<plan><view shows='fin' fore-x='1' fore-y='1' aft-x='2' aft-y='2'/>"
                                              "<view shows='wing' fore-x='1' fore-y='1' aft-x='2' aft-y='2'/></plan><plan/>");
  g_autofree char *next = aeroplane_free_id (read, "view");
  const Plan *shows = NULL;

  ck_assert_str_eq (aeroplane_plan (read, 1)->piece.id, "plan-2");
  ck_assert_ptr_eq (aeroplane_view_by_id (read, "view-2", &shows), &aeroplane_plan (read, 0)->views[1]);
  ck_assert_ptr_eq (shows, aeroplane_plan (read, 0));
  ck_assert_ptr_null (aeroplane_view_by_id (read, "plan", NULL));
  ck_assert_str_eq (next, "view-3");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("plan");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, a_plan_with_all_that_is_known_of_it_comes_back);
  tcase_add_test (tests, only_a_view_that_nobody_placed_says_so);
  tcase_add_test (tests, what_is_not_said_of_a_plan_is_as_usual);
  tcase_add_test (tests, copies_share_the_pictures_bytes);
  tcase_add_loop_test (tests, a_pictures_text_is_its_bytes, 0, G_N_ELEMENTS (vectors));
  tcase_add_loop_test (tests, what_cannot_be_in_a_plan_is_told, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, a_page_is_a_whole_number);
  tcase_add_test (tests, a_plan_has_9600_pixels_an_inch_at_most);
  tcase_add_test (tests, a_picture_of_eight_megabytes_is_kept_and_one_byte_more_is_not);
  tcase_add_test (tests, an_outline_may_be_traced_in_a_view_that_is_not_there);
  tcase_add_test (tests, plans_and_views_without_ids_get_ones_of_their_own);
  return run_suite (suite_create ("document plan"), tests);
}
