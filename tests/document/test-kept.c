#include <check.h>
#include <string.h>
#include <libxml/parser.h>
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

/* The names of all elements and prefixed attributes below, with what their prefixes stand for. */
static void
collect_names (const xmlNode *node, GPtrArray *names)
{
  for (; node; node = node->next)
    if (node->type == XML_ELEMENT_NODE)
      {
        g_ptr_array_add (names, g_strdup_printf ("{%s}%s", node->ns ? (const char *) node->ns->href : "", node->name));
        for (const xmlAttr *at = node->properties; at; at = at->next)
          if (at->ns)
            g_ptr_array_add (names, g_strdup_printf ("{%s}@%s", at->ns->href, at->name));
        collect_names (node->children, names);
      }
}

static char *
names_in (const char *text, size_t length)
{
  xmlDoc *document = xmlReadMemory (text, (int) length, NULL, NULL, XML_PARSE_NONET);
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);

  collect_names (xmlDocGetRootElement (document), names);
  xmlFreeDoc (document);
  g_ptr_array_sort (names, name_compare);
  g_ptr_array_add (names, NULL);
  return g_strjoinv ("\n", (char **) names->pdata);
}

/* Namespaces in XML 1.0: a name is its namespace and its local part; the prefix is nothing. */
START_TEST (foreign_names_mean_the_same_once_written)
{
  g_autofree char *path = sample_path ("foreign-survives.trammel"), *text = NULL, *written = NULL, *before = NULL, *after = NULL;
  g_autoptr (Aeroplane) read = read_sample ("foreign-survives.trammel");
  size_t length, written_length;

  text = file_text (path, &length);
  written = writer_text (read, &written_length);
  before = names_in (text, length);
  after = names_in (written, written_length);
  ck_assert_str_eq (before, after);
}
END_TEST

/* A piece may be carried to another document, whose root knows nothing of these prefixes. */
START_TEST (each_foreign_piece_brings_the_prefixes_that_it_needs)
{
  g_autoptr (Aeroplane) read = read_elements_of (" xmlns:w='urn:w'", "<w:one/><w:two><w:in/></w:two><part id='a' mass='1.5' x='2.5' w:shelf='3'/>");
  Piece *pieces[] = { piece_ref (aeroplane_piece (read, 0)), piece_ref (aeroplane_piece (read, 1)), piece_ref (aeroplane_piece (read, 2)) };
  g_autoptr (Aeroplane) other = aeroplane_from_pieces (aeroplane_traits (read), pieces, G_N_ELEMENTS (pieces)), again = NULL;
  size_t length;
  g_autofree char *text = writer_text (other, &length);

  again = read_bytes (text, length);
  ck_assert (aeroplane_equal (other, again));
  assert_has (text, "<w:one xmlns:w=\"urn:w\"/>");
  assert_has (text, "<w:two xmlns:w=\"urn:w\"><w:in/></w:two>");
  assert_has (text, " xmlns:w=\"urn:w\" w:shelf=\"3\"");
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
  tcase_add_test (tests, foreign_names_mean_the_same_once_written);
  tcase_add_test (tests, each_foreign_piece_brings_the_prefixes_that_it_needs);
  return run_suite (suite_create ("document kept"), tests);
}
