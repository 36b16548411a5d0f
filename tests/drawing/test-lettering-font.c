#include "drawing/lettering-font.h"
#include <fontconfig/fontconfig.h>
#include <glib/gstdio.h>
#include <pango/pangocairo.h>
#include <string.h>
#include "support/run-suite.h"

static const char family[] = "Routed Gothic";

static int
known_files (void)
{
  const FcFontSet *fonts = FcConfigGetFonts (NULL, FcSetApplication);

  return fonts != NULL ? fonts->nfont : 0;
}

/* The family that pango really takes for ours. */
static char *
family_taken (void)
{
  PangoContext *context = pango_font_map_create_context (pango_cairo_font_map_get_default ());
  PangoFontDescription *wanted = pango_font_description_from_string ("Routed Gothic 12"), *got;
  PangoFont *font = pango_context_load_font (context, wanted);
  char *name;

  got = pango_font_describe (font);
  name = g_strdup (pango_font_description_get_family (got));
  pango_font_description_free (got);
  pango_font_description_free (wanted);
  g_object_unref (font);
  g_object_unref (context);
  return name;
}

/* In a process whose fontconfig knows a single other font: see main. */
START_TEST (the_drawings_lettering_is_there_where_it_is_not_installed)
{
  g_autofree char *before = family_taken (), *after = NULL;

  ck_assert_str_ne (before, family);
  ck_assert (lettering_font_add ());
  after = family_taken ();
  ck_assert_str_eq (after, family);
}
END_TEST

START_TEST (adding_it_again_changes_nothing)
{
  int first;

  ck_assert (lettering_font_add ());
  first = known_files ();
  ck_assert_int_eq (first, 1);
  ck_assert (lettering_font_add ());
  ck_assert_int_eq (known_files (), first);
}
END_TEST

START_TEST (figures_signs_and_spaces_of_a_sheet_are_all_in_it)
{
  static const char signs[] = "0123456789 /:.,;()±°²×%\u2212\u2013\u00A0\u2009\u200Aäöüßéàçñåø";
  FcCharSet *has;

  ck_assert (lettering_font_add ());
  ck_assert_int_eq (FcPatternGetCharSet (FcConfigGetFonts (NULL, FcSetApplication)->fonts[0], FC_CHARSET, 0, &has), FcResultMatch);
  for (const char *at = signs; *at != '\0'; at = g_utf8_next_char (at))
    ck_assert_msg (FcCharSetHasChar (has, g_utf8_get_char (at)), "U+%04X is missing", g_utf8_get_char (at));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lettering font");
  g_autofree char *folder = g_dir_make_tmp ("trammel-fonts-XXXXXX", NULL), *path = g_build_filename (folder, "fonts.conf", NULL);
  g_autofree char *text = g_strdup_printf ("<fontconfig><dir>/usr/share/fonts/opentype/cantarell</dir><cachedir>%s</cachedir></fontconfig>", folder);
  const char *const sweep[] = { "rm", "-r", folder, NULL };
  int status;

  g_file_set_contents (path, text, -1, NULL);
  g_setenv ("FONTCONFIG_FILE", path, TRUE);
  tcase_add_test (tests, the_drawings_lettering_is_there_where_it_is_not_installed);
  tcase_add_test (tests, adding_it_again_changes_nothing);
  tcase_add_test (tests, figures_signs_and_spaces_of_a_sheet_are_all_in_it);
  status = run_suite (suite_create ("drawing lettering font"), tests);
  g_spawn_sync (NULL, (char **) sweep, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
  return status;
}
