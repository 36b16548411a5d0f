/* Formers and ribs clicked down the row under a real hand. */
#include <math.h>
#include "app/tool.h"
#include "document/changes.h"
#include "support/sheet-hand.h"

static const Body *
body (void)
{
  return aeroplane_body (hand_aeroplane (), 0);
}

static const Surface *
wing (void)
{
  return aeroplane_surface (hand_aeroplane (), 0);
}

static void
take_former (void)
{
  gui_key ("f");
  gui_settle ();
}

static size_t
count_of (const char *name)
{
  size_t count = 0;

  for (size_t i = 0; i < body ()->former_count; i++)
    count += g_strcmp0 (body ()->formers[i].name, name) == 0;
  return count;
}

START_TEST (clicks_down_the_body_name_the_formers_on)
{
  const size_t before = body ()->former_count;
  g_autofree char *first = named_place_next (&body ()->piece);

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  hand_click ((Point) { 302, 3 });
  hand_click ((Point) { 322, 3 });
  ck_assert_uint_eq (body ()->former_count, before + 2);
  ck_assert_str_eq (body ()->formers[before].name, first);
  ck_assert_double_eq (body ()->formers[before].place, 302);
  ck_assert_double_eq (body ()->formers[before + 1].place, 322);
  ck_assert_uint_eq (count_of (body ()->formers[before + 1].name), 1);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Add Former");
  trammel_session_undo (hand_session ());
  ck_assert_uint_eq (body ()->former_count, before + 1);
}
END_TEST

START_TEST (a_former_just_put_is_told_to_be_there_and_one_taken_out_is_not)
{
  g_autofree char *first = named_place_next (&body ()->piece);
  g_autofree char *there = g_strdup_printf ("Drag “%s” to move it; Delete takes it out.", first);
  g_autofree char *wanted = g_strdup_printf ("Click to put former “%s” here.", first);

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  hand_click ((Point) { 302, 3 });
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), there);
  gui_key ("Delete");
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), wanted);
}
END_TEST

START_TEST (what_is_only_on_offer_does_not_come_along_with_a_former)
{
  const size_t before = aeroplane_count (hand_aeroplane (), PIECE_BODY), formers = body ()->former_count;

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  trammel_session_propose (hand_session (), aeroplane_with_added (hand_aeroplane (), &body_new ("offered")->piece));
  hand_click ((Point) { 302, 3 });
  ck_assert_uint_eq (body ()->former_count, formers + 1);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), before);
}
END_TEST

START_TEST (a_former_is_dragged_and_deleted)
{
  size_t before;

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  hand_click ((Point) { 302, 3 });
  before = body ()->former_count;
  hand_drag ((Point) { 302, 5 }, (Point) { 308, 5 });
  ck_assert_uint_eq (body ()->former_count, before);
  ck_assert_double_eq (body ()->formers[before - 1].place, 308);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Move Former");
  hand_move ((Point) { 308, 4 });
  gui_key ("Delete");
  gui_settle ();
  ck_assert_uint_eq (body ()->former_count, before - 1);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Delete Former");
}
END_TEST

/* Two formers of one name at x 302 and 322; the numbers they have. */
static size_t
two_of_one_name (void)
{
  Body *next;
  size_t second;

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  hand_click ((Point) { 302, 3 });
  hand_click ((Point) { 322, 3 });
  second = body ()->former_count - 1;
  next = (Body *) piece_dup (&body ()->piece);
  g_free (next->formers[second].name);
  next->formers[second].name = g_strdup (next->formers[second - 1].name);
  trammel_session_do (hand_session (), aeroplane_with_replaced (hand_aeroplane (), &body ()->piece, &next->piece), "Rename");
  gui_settle ();
  ck_assert_uint_eq (count_of (body ()->formers[second].name), 2);
  return second;
}

START_TEST (of_two_formers_of_one_name_the_one_under_the_hand_is_dragged)
{
  const size_t second = two_of_one_name ();

  hand_drag ((Point) { 322, 5 }, (Point) { 330, 5 });
  ck_assert_double_eq (body ()->formers[second].place, 330);
  ck_assert_double_eq (body ()->formers[second - 1].place, 302);
  hand_drag ((Point) { 302, 5 }, (Point) { 308, 5 });
  ck_assert_double_eq (body ()->formers[second].place, 330);
  ck_assert_double_eq (body ()->formers[second - 1].place, 308);
}
END_TEST

START_TEST (of_two_formers_of_one_name_the_one_under_the_hand_is_deleted)
{
  const size_t second = two_of_one_name ();

  hand_move ((Point) { 322, 5 });
  gui_key ("Delete");
  gui_settle ();
  ck_assert_uint_eq (body ()->former_count, second);
  ck_assert_double_eq (body ()->formers[second - 1].place, 302);
}
END_TEST

START_TEST (a_click_on_the_wing_puts_a_rib_at_its_station_on_either_side)
{
  const size_t before = wing ()->rib_count;

  hand_look ((Point) { 150, 0 }, 1.5);
  take_former ();
  hand_click ((Point) { 150, 123 });
  hand_click ((Point) { 150, -148 });
  ck_assert_uint_eq (wing ()->rib_count, before + 2);
  ck_assert_double_eq (wing ()->ribs[before].place, 123);
  ck_assert_double_eq (wing ()->ribs[before + 1].place, 148);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Add Rib");
}
END_TEST

START_TEST (the_status_line_says_what_a_click_would_put)
{
  g_autofree char *next = named_place_next (&body ()->piece);
  g_autofree char *hint = g_strdup_printf ("Click to put former “%s” here.", next);

  hand_look ((Point) { 300, 0 }, 2);
  take_former ();
  hand_move ((Point) { 305, 4 });
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), hint);
  ck_assert (trammel_sheet_canvas_overlay (hand_sheet ())->named_places);
  gui_key ("Escape");
  gui_settle ();
  ck_assert (!trammel_sheet_canvas_overlay (hand_sheet ())->named_places);
}
END_TEST

int
main (void)
{
  TCase *formers = tcase_create ("formers");

  tcase_add_test (formers, clicks_down_the_body_name_the_formers_on);
  tcase_add_test (formers, a_former_just_put_is_told_to_be_there_and_one_taken_out_is_not);
  tcase_add_test (formers, what_is_only_on_offer_does_not_come_along_with_a_former);
  tcase_add_test (formers, a_former_is_dragged_and_deleted);
  tcase_add_test (formers, of_two_formers_of_one_name_the_one_under_the_hand_is_dragged);
  tcase_add_test (formers, of_two_formers_of_one_name_the_one_under_the_hand_is_deleted);
  tcase_add_test (formers, a_click_on_the_wing_puts_a_rib_at_its_station_on_either_side);
  tcase_add_test (formers, the_status_line_says_what_a_click_would_put);
  return hand_run ("sheet formers", &formers, 1);
}
