/* What a decoder that was taken over might say. */
#include <check.h>
#include "plan/decode-private.h"
#include "support/run-suite.h"

static const DecodeRequest REQUEST = { .page = 1, .dpi = 300, .most_pixels = 1000000 };

static DecodeWire
sound_answer (void)
{
  return (DecodeWire) {
    .mark = DECODE_WIRE_MARK, .word = DECODE_WORD_ANSWER, .status = DECODE_OK, .kind = DECODE_PDF, .pages = 3, .reduced = 2,
    .width = 51, .height = 40, .channels = 3, .page_width_mm = 10, .page_height_mm = 8, .width_px = 100.5, .height_px = 80,
    .stored_dpi_x = NAN, .stored_dpi_y = NAN,
  };
}

#define ASSERT_REFUSED(member, value) \
  do { \
    DecodeWire answer = sound_answer (); \
    answer.member = (value); \
    ck_assert_msg (!decode_answer_is_sound (&answer, &REQUEST), "believed: " #member " = " #value); \
  } while (0)

START_TEST (a_sound_answer_is_believed)
{
  const DecodeWire answer = sound_answer ();

  ck_assert (decode_answer_is_sound (&answer, &REQUEST));
}
END_TEST

START_TEST (another_kind_of_message_is_refused)
{
  ASSERT_REFUSED (mark, 0);
  ASSERT_REFUSED (word, DECODE_WORD_PROGRESS);
  ASSERT_REFUSED (status, DECODE_STATUS_END);
  ASSERT_REFUSED (status, UINT32_MAX);
}
END_TEST

START_TEST (a_raster_other_than_the_facts_call_for_is_refused)
{
  ASSERT_REFUSED (width, 0);
  ASSERT_REFUSED (width, 50);
  ASSERT_REFUSED (width, 52);
  ASSERT_REFUSED (width, UINT32_MAX);
  ASSERT_REFUSED (height, 0);
  ASSERT_REFUSED (height, 41);
  ASSERT_REFUSED (height, 0x80000028u);
  ASSERT_REFUSED (channels, 0);
  ASSERT_REFUSED (channels, 2);
  ASSERT_REFUSED (channels, 4);
  ASSERT_REFUSED (reduced, 0);
  ASSERT_REFUSED (reduced, 1);
  ASSERT_REFUSED (reduced, DECODE_WIRE_MOST_REDUCED + 1);
}
END_TEST

START_TEST (more_pixels_than_were_asked_for_are_refused)
{
  DecodeWire answer = sound_answer ();

  answer.width_px = 4000;
  answer.height_px = 2000;
  answer.width = 2000;
  answer.height = 1000;
  ck_assert (!decode_answer_is_sound (&answer, &REQUEST));
  answer.height_px = 1000;
  answer.height = 500;
  ck_assert (decode_answer_is_sound (&answer, &REQUEST));
}
END_TEST

START_TEST (facts_that_no_file_has_are_refused)
{
  ASSERT_REFUSED (kind, DECODE_KIND_END);
  ASSERT_REFUSED (pages, 0);
  ASSERT_REFUSED (pages, UINT32_MAX);
  ASSERT_REFUSED (limits_missing, DECODE_LIMIT_ALL + 1);
  ASSERT_REFUSED (width_px, NAN);
  ASSERT_REFUSED (width_px, INFINITY);
  ASSERT_REFUSED (width_px, -100.5);
  ASSERT_REFUSED (width_px, 1e300);
  ASSERT_REFUSED (height_px, 0);
  ASSERT_REFUSED (page_width_mm, 0);
  ASSERT_REFUSED (page_width_mm, -10);
  ASSERT_REFUSED (page_width_mm, NAN);
  ASSERT_REFUSED (page_height_mm, INFINITY);
  ASSERT_REFUSED (stored_dpi_x, 0);
  ASSERT_REFUSED (stored_dpi_y, -INFINITY);
}
END_TEST

START_TEST (pixels_that_nobody_asked_for_are_refused)
{
  const DecodeRequest facts_only = { .page = 1, .dpi = 300, .most_pixels = 1000000, .facts_only = true };
  DecodeWire answer = sound_answer ();

  ck_assert (!decode_answer_is_sound (&answer, &facts_only));
  answer.channels = 0;
  ck_assert (decode_answer_is_sound (&answer, &facts_only));
}
END_TEST

START_TEST (a_refusal_needs_no_facts)
{
  const DecodeWire answer = { .mark = DECODE_WIRE_MARK, .word = DECODE_WORD_ANSWER, .status = DECODE_DAMAGED };

  ck_assert (decode_answer_is_sound (&answer, &REQUEST));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("answers");

  tcase_add_test (tests, a_sound_answer_is_believed);
  tcase_add_test (tests, another_kind_of_message_is_refused);
  tcase_add_test (tests, a_raster_other_than_the_facts_call_for_is_refused);
  tcase_add_test (tests, more_pixels_than_were_asked_for_are_refused);
  tcase_add_test (tests, facts_that_no_file_has_are_refused);
  tcase_add_test (tests, pixels_that_nobody_asked_for_are_refused);
  tcase_add_test (tests, a_refusal_needs_no_facts);
  return run_suite (suite_create ("the decoder's answers"), tests);
}
