#include "document/data-path.h"
#include <glib.h>
#include <glib/gstdio.h>
#include "support/run-suite.h"
#include "trammel-config.h"

static char *folder;

static void
set_up (void)
{
  g_autofree char *file = NULL;

  folder = g_dir_make_tmp ("trammel-data-XXXXXX", NULL);
  file = g_build_filename (folder, "here.txt", NULL);
  g_file_set_contents (file, "x", 1, NULL);
  g_setenv ("TRAMMEL_DATA_DIR", folder, TRUE);
}

static void
tear_down (void)
{
  g_autofree char *file = g_build_filename (folder, "here.txt", NULL);

  g_unsetenv ("TRAMMEL_DATA_DIR");
  g_remove (file);
  g_rmdir (folder);
  g_clear_pointer (&folder, g_free);
}

START_TEST (the_environments_folder_is_asked_first)
{
  g_autofree char *path = data_path ("here.txt"), *wanted = g_build_filename (folder, "here.txt", NULL);

  ck_assert_str_eq (path, wanted);
}
END_TEST

START_TEST (what_it_does_not_have_comes_from_the_source_tree)
{
  g_autofree char *path = data_path ("fonts/routed-gothic.ttf"), *wanted = g_build_filename (TRAMMEL_SOURCE_DATA_DIR, "fonts", "routed-gothic.ttf", NULL);

  ck_assert_str_eq (path, wanted);
  ck_assert (g_file_test (path, G_FILE_TEST_IS_REGULAR));
}
END_TEST

START_TEST (what_is_nowhere_is_looked_for_where_it_would_be_installed)
{
  g_autofree char *path = data_path ("nowhere/none.txt"), *wanted = g_build_filename (TRAMMEL_DATA_DIR, "nowhere", "none.txt", NULL);

  ck_assert_str_eq (path, wanted);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("data path");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_environments_folder_is_asked_first);
  tcase_add_test (tests, what_it_does_not_have_comes_from_the_source_tree);
  tcase_add_test (tests, what_is_nowhere_is_looked_for_where_it_would_be_installed);
  return run_suite (suite_create ("document data path"), tests);
}
