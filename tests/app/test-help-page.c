/* The help as the window shows it, and that every page of it can be shown. */
#include "app/help-page.h"
#include "figures/cautions.h"
#include "support/run-suite.h"
#include <string.h>

static const HelpBlock *
block (const GPtrArray *page, guint index)
{
  ck_assert_uint_lt (index, page->len);
  return page->pdata[index];
}

START_TEST (blocks_are_told_by_where_they_stand)
{
  const char text[] = "<page xmlns=\"http://projectmallard.org/1.0/\" id=\"a\"><info><title>not shown</title></info><title>Top</title><p>One</p>"
    "<section id=\"s\"><title>Part</title><steps><item><p>First</p></item><item><p>Second</p></item></steps>"
    "<list><item><p>Point</p></item></list><terms><item><title>Word</title><p>Sense</p></item></terms><note><p>Mind</p></note></section></page>";
  static const struct { HelpBlockKind kind; int number; const char *markup; } expected[] = {
    { HELP_TITLE, 0, "Top" }, { HELP_PARAGRAPH, 0, "One" }, { HELP_HEADING, 0, "Part" }, { HELP_STEP, 1, "First" }, { HELP_STEP, 2, "Second" },
    { HELP_BULLET, 0, "Point" }, { HELP_TERM, 0, "Word" }, { HELP_PARAGRAPH, 0, "Sense" }, { HELP_NOTE, 0, "Mind" },
  };
  g_autoptr (GPtrArray) page = help_page_read (text, -1, NULL);

  ck_assert_uint_eq (page->len, G_N_ELEMENTS (expected));
  for (guint i = 0; i < page->len; i++) {
    ck_assert_int_eq (block (page, i)->kind, expected[i].kind);
    ck_assert_int_eq (block (page, i)->number, expected[i].number);
    ck_assert_str_eq (block (page, i)->markup, expected[i].markup);
  }
}
END_TEST

START_TEST (keys_labels_links_and_blanks_become_markup)
{
  const char text[] = "<page><p>Press\n   <keyseq><key>Ctrl</key><key>E</key></keyseq>, <gui>A &amp; B</gui>,\n see <link xref=\"draw\">Draw</link>.</p></page>";
  g_autoptr (GPtrArray) page = help_page_read (text, -1, NULL);

  ck_assert_str_eq (block (page, 0)->markup, "Press <tt>Ctrl</tt>+<tt>E</tt>, <b>A &amp; B</b>, see <a href=\"draw\">Draw</a>.");
}
END_TEST

START_TEST (a_page_that_is_not_well_formed_is_an_error)
{
  GError *error = NULL;

  ck_assert_ptr_null (help_page_read ("<page><p>One</page>", -1, &error));
  ck_assert_ptr_nonnull (error);
  g_error_free (error);
}
END_TEST

/* Every link leads to a page that exists, and every page has a title and valid markup. */
static void
check_page (const char *folder, const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autofree char *text = NULL, *title = NULL;
  g_autoptr (GPtrArray) page = NULL;

  ck_assert (g_file_get_contents (path, &text, NULL, NULL));
  page = help_page_read (text, -1, NULL);
  ck_assert_msg (page != NULL, "%s", name);
  title = help_page_title (page);
  ck_assert_msg (*title != '\0', "%s has no title", name);
  for (guint i = 0; i < page->len; i++)
    for (const char *link = strstr (block (page, i)->markup, "href=\""); link != NULL; link = strstr (link + 1, "href=\"")) {
      g_autofree char *target = g_strndup (link + 6, strcspn (link + 6, "\""));
      g_autofree char *file = g_strconcat (folder, "/", target, ".page", NULL);
      ck_assert_msg (g_file_test (file, G_FILE_TEST_EXISTS), "%s leads to %s, which is not there", name, target);
    }
}

START_TEST (every_page_of_the_help_can_be_shown_and_leads_somewhere)
{
  g_autofree char *folder = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "help", "C", NULL);
  g_autoptr (GDir) pages = g_dir_open (folder, 0, NULL);
  const char *name;
  int count = 0;

  ck_assert_ptr_nonnull (pages);
  while ((name = g_dir_read_name (pages)) != NULL)
    if (g_str_has_suffix (name, ".page")) {
      check_page (folder, name);
      count++;
    }
  ck_assert_int_ge (count, 8);
}
END_TEST

START_TEST (the_helps_cautions_are_those_of_the_first_run_and_the_wall_sheet)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "help", "C", "cautions.page", NULL);
  g_autofree char *text = NULL;
  g_autoptr (GPtrArray) page = NULL;
  size_t count = 0;

  ck_assert (g_file_get_contents (path, &text, NULL, NULL));
  page = help_page_read (text, -1, NULL);
  for (guint i = 0; i < page->len; i++)
    if (block (page, i)->kind == HELP_BULLET)
      ck_assert_pstr_eq (block (page, i)->markup, cautions_sentence (count++));
  ck_assert_uint_eq (count, 5);
  ck_assert_ptr_null (cautions_sentence (count));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("help page");

  tcase_add_test (tests, blocks_are_told_by_where_they_stand);
  tcase_add_test (tests, keys_labels_links_and_blanks_become_markup);
  tcase_add_test (tests, a_page_that_is_not_well_formed_is_an_error);
  tcase_add_test (tests, the_helps_cautions_are_those_of_the_first_run_and_the_wall_sheet);
  tcase_add_test (tests, every_page_of_the_help_can_be_shown_and_leads_somewhere);
  return run_suite (suite_create ("help-page"), tests);
}
