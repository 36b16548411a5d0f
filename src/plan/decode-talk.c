/* The process of the decoder: begun, listened to, ended. */
#define _GNU_SOURCE
#include "plan/decode-private.h"

#include <errno.h>
#include <fcntl.h>
#include <inttypes.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <stdio.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

extern char **environ;

/* How long nobody is asked whether to go on. */
static const int POLL_MS = 50;
/* How long one that closed its pipe may take to die of its own accord, so that it can be said of what. */
static const double DYING_SECONDS = 2;

static double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_MONOTONIC, &time);
  return (double) time.tv_sec + 1e-9 * (double) time.tv_nsec;
}

/* Descriptors 0 to 2 are wanted for the child, which must find what it is given elsewhere first. */
static bool
pipe_above_standard (int ends[2])
{
  int low[2];

  if (pipe2 (low, O_CLOEXEC) != 0)
    return false;
  for (int i = 0; i < 2; i++)
    {
      ends[i] = fcntl (low[i], F_DUPFD_CLOEXEC, 3);
      close (low[i]);
    }
  if (ends[0] >= 0 && ends[1] >= 0)
    return true;
  for (int i = 0; i < 2; i++)
    if (ends[i] >= 0)
      close (ends[i]);
  return false;
}

static int
spawn (pid_t *process, const char *helper, char *const arguments[], int file, int answers)
{
  posix_spawn_file_actions_t actions;
  posix_spawnattr_t attributes;
  sigset_t none, all;
  int error;

  sigemptyset (&none);
  sigfillset (&all);
  posix_spawn_file_actions_init (&actions);
  posix_spawn_file_actions_adddup2 (&actions, file, 0);
  posix_spawn_file_actions_adddup2 (&actions, answers, 1);
  posix_spawn_file_actions_addopen (&actions, 2, "/dev/null", O_WRONLY, 0);
  posix_spawn_file_actions_addclosefrom_np (&actions, 3);
  posix_spawnattr_init (&attributes);
  posix_spawnattr_setsigmask (&attributes, &none);
  posix_spawnattr_setsigdefault (&attributes, &all);
  posix_spawnattr_setflags (&attributes, POSIX_SPAWN_SETSIGMASK | POSIX_SPAWN_SETSIGDEF);
  error = posix_spawn (process, helper, &actions, &attributes, arguments, environ);
  posix_spawnattr_destroy (&attributes);
  posix_spawn_file_actions_destroy (&actions);
  return error;
}

static int
spawn_for (pid_t *process, const char *helper, const DecodeRequest *request, int file, int answers)
{
  char numbers[DECODE_ARGUMENT_END][24];
  char *arguments[DECODE_ARGUMENT_END + 1] = { (char *) helper };

  /* Whole numbers, since a fraction would be written in the user's locale. */
  snprintf (numbers[DECODE_ARGUMENT_PAGE], sizeof numbers[0], "%d", request->page);
  snprintf (numbers[DECODE_ARGUMENT_MILLIDPI], sizeof numbers[0], "%ld", lround (1000 * request->dpi));
  snprintf (numbers[DECODE_ARGUMENT_MOST_PIXELS], sizeof numbers[0], "%zu", request->most_pixels);
  snprintf (numbers[DECODE_ARGUMENT_FACTS_ONLY], sizeof numbers[0], "%d", request->facts_only);
  snprintf (numbers[DECODE_ARGUMENT_SECONDS], sizeof numbers[0], "%ld", (long) ceil (request->seconds));
  snprintf (numbers[DECODE_ARGUMENT_MOST_BYTES], sizeof numbers[0], "%zu", request->most_bytes);
  for (int i = DECODE_ARGUMENT_PAGE; i < DECODE_ARGUMENT_END; i++)
    arguments[i] = numbers[i];
  return spawn (process, helper, arguments, file, answers);
}

DecodeStatus
decode_talk_begin (DecodeTalk *talk, const char *helper, const DecodeRequest *request, const DecodeWatch *watch)
{
  const int file = fcntl (request->file, F_DUPFD_CLOEXEC, 3);
  int ends[2], error;

  if (file < 0)
    return DECODE_CANNOT_READ;
  if (!pipe_above_standard (ends))
    {
      close (file);
      return DECODE_CANNOT_READ;
    }
  *talk = (DecodeTalk) { .answers = ends[0], .until = now () + request->seconds, .watch = watch };
  error = spawn_for (&talk->process, helper, request, file, ends[1]);
  close (file);
  close (ends[1]);
  if (error == 0)
    return DECODE_OK;
  close (ends[0]);
  return error == EAGAIN || error == ENOMEM ? DECODE_CANNOT_READ : DECODE_HELPER_MISSING;
}

static DecodeStatus
may_go_on (const DecodeTalk *talk)
{
  if (talk->watch && !talk->watch->go_on (talk->done, talk->watch->data))
    return DECODE_CANCELLED;
  return now () < talk->until ? DECODE_OK : DECODE_TOOK_TOO_LONG;
}

/* Some bytes, at least one; *got 0 at the end of the pipe. Somebody is asked before each wait, so a flood is no way round it. */
static DecodeStatus
read_some (const DecodeTalk *talk, void *bytes, size_t count, size_t *got)
{
  struct pollfd ready = { .fd = talk->answers, .events = POLLIN };
  DecodeStatus status;

  while (!(status = may_go_on (talk)))
    {
      const int found = poll (&ready, 1, POLL_MS);
      ssize_t length;

      if (found == 0 || (found < 0 && errno == EINTR))
        continue;
      length = found < 0 ? -1 : read (talk->answers, bytes, count);
      if (length < 0 && (errno == EINTR || errno == EAGAIN))
        continue;
      if (length < 0)
        return DECODE_HELPER_DIED;
      *got = (size_t) length;
      return DECODE_OK;
    }
  return status;
}

DecodeStatus
decode_talk_read (DecodeTalk *talk, void *bytes, size_t count, double done_after)
{
  const double done_before = talk->done;
  DecodeStatus status = DECODE_OK;
  size_t have = 0, got = 0;

  while (have < count && status == DECODE_OK)
    {
      status = read_some (talk, (char *) bytes + have, count - have, &got);
      if (status == DECODE_OK && got == 0)
        return DECODE_HELPER_DIED;
      have += status == DECODE_OK ? got : 0;
      if (!isnan (done_after))
        talk->done = done_before + (done_after - done_before) * ((double) have / (double) count);
    }
  return status;
}

DecodeStatus
decode_talk_read_end (DecodeTalk *talk)
{
  size_t got = 0;
  char more;
  const DecodeStatus status = read_some (talk, &more, 1, &got);

  return status ? status : got == 0 ? DECODE_OK : DECODE_HELPER_DIED;
}

/* What it died of by itself, in wait's terms; false if it lives on, or somebody else has taken the news. */
static bool
wait_for_death (pid_t process, double seconds, int *how)
{
  const struct timespec moment = { .tv_nsec = 2000000 };
  const double until = now () + seconds;

  for (;;)
    {
      const pid_t found = waitpid (process, how, WNOHANG);

      if (found == process)
        return true;
      if ((found < 0 && errno != EINTR) || now () >= until)
        return false;
      nanosleep (&moment, NULL);
    }
}

static DecodeStatus
cause_of_death (int how)
{
  if (WIFSIGNALED (how) && WTERMSIG (how) == SIGXCPU)
    return DECODE_TOOK_TOO_LONG;
  if (WIFSIGNALED (how) && WTERMSIG (how) == SIGKILL)
    return DECODE_TOO_MUCH_MEMORY;               /* not ours: the kernel's, when memory runs out */
  if (WIFEXITED (how) && WEXITSTATUS (how) == 127)
    return DECODE_HELPER_MISSING;                /* the loader's, for want of a library */
  return DECODE_HELPER_DIED;
}

DecodeStatus
decode_talk_end (DecodeTalk *talk, DecodeStatus status)
{
  int how;

  close (talk->answers);
  if (status == DECODE_HELPER_DIED && wait_for_death (talk->process, DYING_SECONDS, &how))
    return cause_of_death (how);
  kill (talk->process, SIGKILL);
  while (waitpid (talk->process, &how, 0) < 0 && errno == EINTR)
    continue;
  return status;
}
