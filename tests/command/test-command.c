#include <check.h>
#include <glib.h>
#include "command/command.h"
#include "support/run-suite.h"

/* Who is meant by the first word: the command line or the window. */
static const struct { const char *because; const char *word; bool takes; } lines[] = {
  { .because = "nothing named opens the window", .word = NULL, .takes = false },
  { .because = "a subcommand", .word = "report", .takes = true },
  { .because = "help on a subcommand", .word = "help", .takes = true },
  { .because = "help of ours", .word = "--help", .takes = true },
  { .because = "the version", .word = "--version", .takes = true },
  { .because = "an option of nobody is refused, not opened", .word = "--frobnicate", .takes = true },
  { .because = "a word that is no file", .word = "reprot", .takes = true },
  { .because = "a file that is there", .word = "/dev/null", .takes = false },
  { .because = "a folder that is there", .word = "/", .takes = false },
  { .because = "a place by its address", .word = "file:///tmp/racer.trammel", .takes = false },
  { .because = "the session starts the service", .word = "--gapplication-service", .takes = false },
};

START_TEST (the_first_word_tells_who_is_meant)
{
  char program[] = "trammel";
  g_autofree char *word = g_strdup (lines[_i].word);
  char *argv[] = { program, word, NULL };

  ck_assert_msg (command_takes (word ? 2 : 1, argv) == lines[_i].takes, "%s", lines[_i].because);
}
END_TEST

START_TEST (subcommands_of_this_version_are_known_and_those_of_later_ones_are_not)
{
  ck_assert (command_is_subcommand ("report"));
  ck_assert (command_is_subcommand ("export"));
  ck_assert (command_is_subcommand ("check"));
  ck_assert (command_is_subcommand ("trace"));
  ck_assert (command_is_subcommand ("arrange"));
  ck_assert (!command_is_subcommand ("Report"));
  ck_assert (!command_is_subcommand (""));
  ck_assert (!command_is_subcommand (NULL));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("command line");
  TCase *tests = tcase_create ("command");

  tcase_add_loop_test (tests, the_first_word_tells_who_is_meant, 0, G_N_ELEMENTS (lines));
  tcase_add_test (tests, subcommands_of_this_version_are_known_and_those_of_later_ones_are_not);
  return run_suite (suite, tests);
}
