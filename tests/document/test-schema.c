#include <check.h>
#include <string.h>
#include <libxml/xpath.h>
#include <libxml/xpathInternals.h>
#include "document/elements.h"
#include "documents.h"
#include "schema.h"
#include "support/run-suite.h"

/* The reader goes by its table of elements, people by the schema: neither may say what the other does not. */

static xmlXPathContext *
xpath_of (xmlDoc *source)
{
  xmlXPathContext *context = xmlXPathNewContext (source);

  xmlXPathRegisterNs (context, BAD_CAST "r", BAD_CAST "http://relaxng.org/ns/structure/1.0");
  return context;
}

G_GNUC_PRINTF (2, 3) static int
count_of (xmlXPathContext *context, const char *format, ...)
{
  g_autofree char *path = NULL;
  xmlXPathObject *found;
  va_list arguments;
  int count;

  va_start (arguments, format);
  path = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  found = xmlXPathEvalExpression (BAD_CAST path, context);
  ck_assert_ptr_nonnull (found);
  count = found->nodesetval ? found->nodesetval->nodeNr : 0;
  xmlXPathFreeObject (found);
  return count;
}

static int
attribute_count (const Element *element)
{
  int count = 0;

  while (element->attributes[count].name)
    count++;
  return count;
}

static void
assert_stands_in_schema (xmlXPathContext *context, const Element *element)
{
  ck_assert_int_eq (count_of (context, "//r:element[@name='%s']", element->name), 1);
  ck_assert_int_eq (count_of (context, "//r:element[@name='%s']//r:attribute[@name]", element->name), attribute_count (element));
  for (const Attribute *at = element->attributes; at->name; at++)
    {
      g_autofree char *own = g_strdup_printf ("//r:element[@name='%s']//r:attribute[@name='%s']", element->name, at->name);

      ck_assert_msg (count_of (context, "%s", own) == 1, "%s: %s", element->name, at->name);
      ck_assert_msg (count_of (context, "%s[not(ancestor::r:optional)]", own) == (at->presence == PRESENCE_REQUIRED),
                     "%s: is %s required?", element->name, at->name);
      for (const char *const *word = at->words; word && *word; word++)
        if (**word)
          ck_assert_msg (count_of (context, "%s//r:value[.='%s']", own, *word) == 1, "%s: %s=%s", element->name, at->name, *word);
      ck_assert_int_eq (count_of (context, "%s//r:value", own),
                        at->words ? (int) g_strv_length ((char **) at->words) - (**at->words ? 0 : 1) : 0);
    }
}

START_TEST (each_element_of_the_table_stands_in_the_schema_with_just_its_attributes)
{
  Schema schema = schema_load ();
  xmlXPathContext *context = xpath_of (schema.source);

  for (ElementId id = 0; id < ELEMENT_COUNT; id++)
    assert_stands_in_schema (context, element_of (id));
  xmlXPathFreeContext (context);
  schema_clear (&schema);
}
END_TEST

START_TEST (the_schema_names_no_other_element_but_two_that_are_kept)
{
  Schema schema = schema_load ();
  xmlXPathContext *context = xpath_of (schema.source);

  ck_assert_int_eq (count_of (context, "//r:element[@name]"), ELEMENT_COUNT + 2);
  for (int i = 0; i < 2; i++)
    ck_assert_int_eq (count_of (context, "//r:element[@name='%s']", (const char *[]) { "weighing", "flight" }[i]), 1);
  xmlXPathFreeContext (context);
  schema_clear (&schema);
}
END_TEST

/* One attribute of one element of the sample that has them all, spoilt; NULL takes it out. */
typedef struct { ElementId element; const Attribute *at; const char *value; } Spoilt;

/* The first element of that name in a parent where it is known. */
static xmlNode *
find_element (xmlNode *from, ElementId wanted, ElementId parent)
{
  for (xmlNode *node = from; node; node = node->next)
    if (node->type == XML_ELEMENT_NODE)
      {
        const ElementId id = parent == ELEMENT_NONE ? ELEMENT_AEROPLANE : element_find (parent, (const char *) node->name);
        xmlNode *found = id == wanted ? node : id == ELEMENT_NONE ? NULL : find_element (node->children, wanted, id);

        if (found)
          return found;
      }
  return NULL;
}

/* Only what the element needs stays: a structure what it is of, a lead its parts. Holding a document against a schema takes its time. */
static void
leave_only (xmlNode *root, const xmlNode *node, ElementId element)
{
  for (xmlNode *child = root->children, *next; child; child = next)
    {
      const ElementId id = child->type == XML_ELEMENT_NODE ? element_find (ELEMENT_AEROPLANE, (const char *) child->name) : ELEMENT_NONE;
      const bool needed = child == node || (node != root && (child == node->parent || child == node->parent->parent))
                          || ((element == ELEMENT_STRUCTURE || element == ELEMENT_ITEM) && id == ELEMENT_SURFACE)
                          || ((element == ELEMENT_LEAD || element == ELEMENT_VIA) && id == ELEMENT_PART);

      next = child->next;
      if (needed)
        continue;
      xmlUnlinkNode (child);
      xmlFreeNode (child);
    }
}

static void
leave_only_attribute (xmlNode *node, const Attribute *kept)
{
  for (ElementId id = 0; id < ELEMENT_COUNT; id++)
    if (id != ELEMENT_STRUCTURE && id != ELEMENT_ITEM && xmlStrEqual (node->name, BAD_CAST element_of (id)->name))
      for (const Attribute *at = element_of (id)->attributes; at->name; at++)
        if (at != kept && at->presence != PRESENCE_REQUIRED && at->kind != VALUE_ID)
          xmlUnsetProp (node, BAD_CAST at->name);
}

/* Each further attribute doubles the ways that the library tries before it refuses a document: of those that may be missing only `kept`
   of `node` stays (NULL: all of its own), save ids and what a structure weighs by. */
static void
leave_only_attributes (xmlNode *from, const xmlNode *node, const Attribute *kept)
{
  for (xmlNode *child = from->children; child; child = child->next)
    leave_only_attributes (child, node, kept);
  if (from->type == XML_ELEMENT_NODE && (from != node || kept))
    leave_only_attribute (from, from == node ? kept : NULL);
}

static void
assert_both_say (const Schema *schema, const Spoilt *spoilt, bool allowed)
{
  g_autofree char *path = sample_path ("everything.trammel");
  xmlDoc *document = xmlReadFile (path, NULL, XML_PARSE_NONET);
  xmlNode *node = find_element (xmlDocGetRootElement (document), spoilt->element, ELEMENT_NONE);
  const char *name = element_of (spoilt->element)->name;
  xmlChar *text = NULL;
  g_autoptr (Aeroplane) read = NULL;
  int length;

  ck_assert_msg (node != NULL, "no <%s> in the sample", name);
  leave_only (xmlDocGetRootElement (document), node, spoilt->element);
  leave_only_attributes (xmlDocGetRootElement (document), node, allowed ? NULL : spoilt->at);
  if (spoilt->value)
    xmlSetProp (node, BAD_CAST spoilt->at->name, BAD_CAST spoilt->value);
  else
    xmlUnsetProp (node, BAD_CAST spoilt->at->name);
  xmlDocDumpMemory (document, &text, &length);
  read = reader_read_data ((const char *) text, (size_t) length, "text", NULL, NULL);
  ck_assert_msg ((read != NULL) == allowed, "reader: <%s %s=%s>", name, spoilt->at->name, spoilt->value ? spoilt->value : "(none)");
  ck_assert_msg (schema_allows_tree (schema, document) == allowed, "schema: <%s %s=%s>", name, spoilt->at->name,
                 spoilt->value ? spoilt->value : "(none)");
  xmlFree (text);
  xmlFreeDoc (document);
}

static void
assert_both_refuse (const Schema *schema, ElementId element, const Attribute *at, const char *value)
{
  assert_both_say (schema, &(Spoilt) { element, at, value }, false);
}

/* Each attribute meets two of the things that are no numbers, and both bounds; the next one meets the next two. */
static void
spoil_number (const Schema *schema, ElementId element, const Attribute *at)
{
  static const char *const no_numbers[] = { "", "abc", "1,5", "0x10", "inf", "NaN", "--1", "1 2", "1e999" };
  const bool everywhere = at->least == 0 && at->most == 0;
  g_autofree char *low = g_strdup_printf ("%.17g", (everywhere ? -DOCUMENT_REACH : at->least) - 0.5);
  g_autofree char *high = g_strdup_printf ("%.17g", (everywhere ? DOCUMENT_REACH : at->most) + 0.5);

  for (size_t i = 0; i < 2; i++)
    assert_both_refuse (schema, element, at, no_numbers[(2 * (size_t) (at - element_of (element)->attributes) + i) % G_N_ELEMENTS (no_numbers)]);
  assert_both_refuse (schema, element, at, low);
  assert_both_refuse (schema, element, at, high);
}

static void
spoil_attribute (const Schema *schema, ElementId element, const Attribute *at)
{
  if (at->presence == PRESENCE_REQUIRED)
    assert_both_refuse (schema, element, at, NULL);
  if (at->kind == VALUE_NUMBER)
    spoil_number (schema, element, at);
  else if (at->kind != VALUE_TEXT)
    {
      assert_both_refuse (schema, element, at, "");
      assert_both_refuse (schema, element, at, "two words");
    }
}

/* An element at a time: all of them by one schema take minutes where memory is watched over. */
START_TEST (reader_and_schema_refuse_the_same_values)
{
  Schema schema = schema_load ();

  for (const Attribute *at = element_of ((ElementId) _i)->attributes; at->name; at++)
    spoil_attribute (&schema, (ElementId) _i, at);
  schema_clear (&schema);
}
END_TEST

/* Others refer to the ids, and a structure of nothing needs an x. */
static bool
may_go_alone (ElementId element, const Attribute *at)
{
  const bool id = at->kind == VALUE_ID && element != ELEMENT_CONTROL;

  return at->presence != PRESENCE_REQUIRED && (!id || (element == ELEMENT_STRUCTURE && strcmp (at->name, "of") != 0));
}

START_TEST (both_allow_what_is_left_out_where_it_may_be)
{
  Schema schema = schema_load ();

  for (ElementId id = 0; id < ELEMENT_COUNT; id++)
    for (const Attribute *at = element_of (id)->attributes; at->name; at++)
      if (may_go_alone (id, at))
        assert_both_say (&schema, &(Spoilt) { id, at, NULL }, true);
  schema_clear (&schema);
}
END_TEST

static const struct { const char *because, *elements; } misplaced[] = {
  { "a surface needs an outline", "<surface role='wing'/>" },
  { "a surface has one outline", "<surface role='fin'><outline><start x='0' y='0'/><line x='1' y='1'/></outline>"
                                 "<outline><start x='0' y='0'/><line x='1' y='1'/></outline></surface>" },
  { "an outline needs two nodes", "<body><outline><start x='0' y='0'/></outline></body>" },
  { "an outline begins with start", "<body><outline><line x='0' y='0'/><line x='1' y='1'/></outline></body>" },
  { "an outline has one start", "<body><outline><start x='0' y='0'/><start x='1' y='1'/></outline></body>" },
  { "there is one target", "<target/><target/>" },
  { "a part has one rail", "<part mass='1' x='2'><rail from='1' to='2'/><rail from='1' to='2'/></part>" },
  { "text stands nowhere", "<part mass='1' x='2'>red</part>" },
  { "not in the root either", "red" },
};

START_TEST (both_refuse_elements_that_cannot_stand_so)
{
  Schema schema = schema_load ();

  for (size_t i = 0; i < G_N_ELEMENTS (misplaced); i++)
    {
      g_autofree char *text = g_strdup_printf ("<aeroplane xmlns='urn:trammel:aeroplane' version='1'>%s</aeroplane>", misplaced[i].elements);
      g_autoptr (Aeroplane) read = reader_read_data (text, strlen (text), "text", NULL, NULL);

      ck_assert_msg (!read, "reader: %s", misplaced[i].because);
      ck_assert_msg (!schema_allows (&schema, text, strlen (text)), "schema: %s", misplaced[i].because);
    }
  schema_clear (&schema);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("schema");

  tcase_set_timeout (tests, 300);
  tcase_add_test (tests, each_element_of_the_table_stands_in_the_schema_with_just_its_attributes);
  tcase_add_test (tests, the_schema_names_no_other_element_but_two_that_are_kept);
  tcase_add_loop_test (tests, reader_and_schema_refuse_the_same_values, 0, ELEMENT_COUNT);
  tcase_add_test (tests, both_allow_what_is_left_out_where_it_may_be);
  tcase_add_test (tests, both_refuse_elements_that_cannot_stand_so);
  return run_suite (suite_create ("document schema"), tests);
}
