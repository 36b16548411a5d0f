/* `trammel report` started cold, against a program that does nothing and is linked alike. The two take turns; the medians' ratio counts. */
#include <fcntl.h>
#include <spawn.h>
#include <stdio.h>
#include <sys/wait.h>
#include <unistd.h>
#include "benchmark/timing.h"

enum { pairs = 40 };
static const double ratio_bound = 3, ratio_aim = 2;

extern char **environ;

static double
time_program (char *const argv[])
{
  posix_spawn_file_actions_t quiet;
  pid_t child;
  int status;
  double start;

  posix_spawn_file_actions_init (&quiet);
  posix_spawn_file_actions_addopen (&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  start = now ();
  if (posix_spawn (&child, argv[0], &quiet, NULL, argv, environ) || waitpid (child, &status, 0) != child || status != 0)
    abort ();
  posix_spawn_file_actions_destroy (&quiet);
  return now () - start;
}

int
main (int argc, char **argv)
{
  char report_word[] = "report";
  char *report[] = { argv[1], report_word, argv[3], NULL }, *nothing[] = { argv[2], NULL };
  double reported[pairs], did_nothing[pairs];

  if (argc != 4)
    return 2;
  for (int i = 0; i < pairs; i++)
    {
      did_nothing[i] = time_program (nothing);
      reported[i] = time_program (report);
    }
  const double taken = median (reported, pairs), against = median (did_nothing, pairs);
  printf ("trammel report, cold: %.1f ms; a program that does nothing, linked alike: %.1f ms; ratio %.2f (bound %g, aim %g)\n",
          1e3 * taken, 1e3 * against, taken / against, ratio_bound, ratio_aim);
  return 0;
}
