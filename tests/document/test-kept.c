#include <check.h>
#include <string.h>
#include "document/changes.h"
#include "documents.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* What somebody else put on an outline's nodes goes where they go. */

static const char wing[] =
  "<surface id='wing' role='wing'><outline>"
  "<start x='110.3' y='0' pin='a'/>"
  "<line x='118.7' y='160.9' pin='b'/>"
  "<!-- the tip -->"
  "<line x='126.1' y='320.7' pin='c'><note>rounded</note></line>"
  "<line x='231.9' y='320.7' pin='d'/>"
  "<line x='240.3' y='0' pin='e'/>"
  "</outline></surface>";

/* The text once the wing has that outline, which is taken. */
static char *
text_with (const Aeroplane *aeroplane, Outline *takes)
{
  g_autoptr (Aeroplane) changed = change_surface_outline (aeroplane, "wing", takes);

  ck_assert_ptr_nonnull (changed);
  return writer_text (changed, NULL);
}

static void
assert_has (const char *text, const char *wanted)
{
  ck_assert_msg (strstr (text, wanted) != NULL, "no %s in\n%s", wanted, text);
}

static void
assert_lacks (const char *text, const char *unwanted)
{
  ck_assert_msg (!strstr (text, unwanted), "still %s in\n%s", unwanted, text);
}

START_TEST (a_node_that_moves_keeps_what_it_carries)
{
  g_autoptr (Aeroplane) read = read_elements (wing);
  g_autofree char *text = NULL;
  Outline *moved = NULL;

  ck_assert_int_eq (outline_with_node_at (aeroplane_surface (read, 0)->outline, 1, (Point) { 99.5, 150.25 }, &moved), CORE_OK);
  text = text_with (read, moved);
  assert_has (text, "<line x=\"99.5\" y=\"150.25\" pin=\"b\"/>");
  assert_has (text, "<line x=\"240.3\" y=\"0\" pin=\"e\"/>");
}
END_TEST

START_TEST (nodes_behind_an_inserted_one_keep_what_they_carry)
{
  g_autoptr (Aeroplane) read = read_elements (wing);
  g_autofree char *text = NULL;
  Outline *more = NULL;

  ck_assert_int_eq (outline_with_node_inserted (aeroplane_surface (read, 0)->outline, 0, 0.5, &more), CORE_OK);
  text = text_with (read, more);
  assert_has (text, "<start x=\"110.3\" y=\"0\" pin=\"a\"/>");
  assert_has (text, "<line x=\"118.7\" y=\"160.9\" pin=\"b\"/>");
  assert_has (text, "<!-- the tip -->\n      <line x=\"126.1\" y=\"320.7\" pin=\"c\">\n        <note>rounded</note>");
  assert_has (text, "<line x=\"240.3\" y=\"0\" pin=\"e\"/>");
}
END_TEST

START_TEST (what_a_node_carried_goes_with_it_and_a_comment_before_it_stays)
{
  g_autoptr (Aeroplane) read = read_elements (wing);
  g_autofree char *text = NULL;
  Outline *fewer = NULL;

  ck_assert_int_eq (outline_without_node (aeroplane_surface (read, 0)->outline, 2, &fewer), CORE_OK);
  text = text_with (read, fewer);
  assert_has (text, "pin=\"b\"");
  assert_lacks (text, "pin=\"c\"");
  assert_lacks (text, "rounded");
  assert_has (text, "<!-- the tip -->\n      <line x=\"231.9\" y=\"320.7\" pin=\"d\"/>");
  assert_has (text, "<line x=\"240.3\" y=\"0\" pin=\"e\"/>");
}
END_TEST

START_TEST (two_comments_that_come_to_one_node_are_both_written)
{
  g_autoptr (Aeroplane) read = read_elements ("<surface id='wing' role='wing'><outline><start x='1.3' y='0'/>"
                                              "<!-- one --><line x='2.7' y='9.1'/><!-- two --><line x='7.9' y='9.1'/>"
                                              "<line x='8.3' y='0'/></outline></surface>");
  g_autofree char *text = NULL;
  Outline *fewer = NULL;

  ck_assert_int_eq (outline_without_node (aeroplane_surface (read, 0)->outline, 1, &fewer), CORE_OK);
  text = text_with (read, fewer);
  assert_has (text, "<!-- one -->\n      <!-- two -->\n      <line x=\"7.9\" y=\"9.1\"/>");
}
END_TEST

START_TEST (what_hangs_on_records_that_went_is_written_behind_the_rest)
{
  g_autoptr (Aeroplane) read = read_elements ("<surface id='wing' role='wing'><outline><start x='0' y='0'/><line x='1' y='9'/><line x='3' y='0'/>"
                                              "</outline><rib name='R1' station='2'/><!-- the second --><rib name='R2' station='4'/></surface>");
  const Piece *old = &aeroplane_surface (read, 0)->piece;
  Surface *fewer = (Surface *) piece_dup (old);
  g_autoptr (Aeroplane) changed = NULL;
  g_autofree char *text = NULL;

  g_free (fewer->ribs[--fewer->rib_count].name);
  changed = aeroplane_with_replaced (read, old, &fewer->piece);
  text = writer_text (changed, NULL);
  assert_has (text, "<rib name=\"R1\" station=\"2\"/>\n    <!-- the second -->\n  </surface>");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("kept");

  tcase_add_test (tests, a_node_that_moves_keeps_what_it_carries);
  tcase_add_test (tests, nodes_behind_an_inserted_one_keep_what_they_carry);
  tcase_add_test (tests, what_a_node_carried_goes_with_it_and_a_comment_before_it_stays);
  tcase_add_test (tests, two_comments_that_come_to_one_node_are_both_written);
  tcase_add_test (tests, what_hangs_on_records_that_went_is_written_behind_the_rest);
  return run_suite (suite_create ("document kept"), tests);
}
