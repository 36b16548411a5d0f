#pragma once
#include <check.h>
#include <glib.h>
#include <locale.h>

/** Makes a locale that writes 1,5 and enters it for numbers; ends the test when it cannot be made. The folder goes with comma_locale_leave. */
static inline char *
comma_locale_enter (void)
{
  char *folder = g_dir_make_tmp ("trammel-locale-XXXXXX", NULL);
  g_autofree char *made = g_build_filename (folder, "de_DE.UTF-8", NULL);
  const char *const command[] = { "localedef", "-i", "de_DE", "-f", "UTF-8", made, NULL };

  g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
  g_setenv ("LOCPATH", folder, TRUE);
  ck_assert_msg (setlocale (LC_NUMERIC, "de_DE.UTF-8") != NULL, "localedef made no comma locale (package locales)");
  ck_assert_str_eq (localeconv ()->decimal_point, ",");
  return folder;
}

/** Back to the C locale; takes the folder and removes it. */
static inline void
comma_locale_leave (char *folder)
{
  const char *const command[] = { "rm", "-r", folder, NULL };

  setlocale (LC_NUMERIC, "C");
  g_unsetenv ("LOCPATH");
  g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
  g_free (folder);
}
