/* What the decoder's process may not do, whatever a picture makes of it. Each attempt is made in a child that binds itself first. */
#define _GNU_SOURCE
#include <check.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <sys/ptrace.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>
#include "decoder/confine.h"
#include "plan/decode.h"
#include "support/run-suite.h"

enum { SECONDS = 20 };
static const size_t MOST_BYTES = (size_t) 512 << 20;

/* The wait status of a child that is bound and then runs `attempt`; it exits 0 when that gives true. */
static int
bound (bool (*attempt) (void))
{
  const pid_t child = fork ();
  int how;

  if (child == 0)
    {
      confine_process (MOST_BYTES, SECONDS);
      _exit (attempt () ? 0 : 1);
    }
  ck_assert_int_eq (waitpid (child, &how, 0), child);
  return how;
}

static bool
refused (long result)
{
  return result == -1 && errno == EPERM;
}

static bool
sockets_are_refused (void)
{
  int pair[2];

  return refused (socket (AF_INET, SOCK_STREAM, 0)) && refused (socket (AF_UNIX, SOCK_DGRAM, 0))
      && refused (socket (AF_NETLINK, SOCK_RAW, 0)) && refused (socketpair (AF_UNIX, SOCK_STREAM, 0, pair));
}

static bool
opening_for_writing_is_refused (void)
{
  return refused (open ("/tmp/trammel-confined", O_WRONLY | O_CREAT, 0600)) && refused (open ("/dev/null", O_WRONLY))
      && refused (open ("/dev/null", O_RDWR)) && refused (open ("/dev/null", O_RDONLY | O_TRUNC))
      && refused (syscall (SYS_openat2, AT_FDCWD, "/dev/null", NULL, 0)) && refused (memfd_create ("confined", 0));
}

static bool
changing_folders_is_refused (void)
{
  return refused (unlink ("/tmp/trammel-confined")) && refused (rename ("/tmp/trammel-confined", "/tmp/trammel-other"))
      && refused (mkdir ("/tmp/trammel-confined", 0700)) && refused (symlink ("/", "/tmp/trammel-confined"))
      && refused (chmod ("/dev/null", 0600));
}

static bool
processes_and_programs_are_refused (void)
{
  char name[] = "true", *const arguments[] = { name, NULL };

  return refused (syscall (SYS_clone, SIGCHLD, NULL, NULL, NULL, NULL)) && refused (execve ("/bin/true", arguments, NULL))
      && syscall (SYS_clone3, NULL, 0) == -1;
}

static bool
others_are_out_of_reach (void)
{
  return refused (kill (getppid (), 0)) && refused (ptrace (PTRACE_ATTACH, getppid (), NULL, NULL))
      && refused (syscall (SYS_tgkill, getppid (), getppid (), 0))
      && refused (syscall (SYS_process_vm_readv, getppid (), NULL, 0, NULL, 0, 0))
      && refused (syscall (SYS_pidfd_open, getppid (), 0)) && refused (fcntl (STDOUT_FILENO, F_SETOWN, getppid ()));
}

static bool
bounds_cannot_be_loosened (void)
{
  const struct rlimit loose = { RLIM_INFINITY, RLIM_INFINITY };

  return refused (setrlimit (RLIMIT_CPU, &loose)) && refused (syscall (SYS_seccomp, 0, 0, NULL)) && refused (syscall (SYS_bpf, 0, NULL, 0))
      && refused (syscall (SYS_io_uring_setup, 1, NULL));
}

static bool
writing_elsewhere_than_to_the_pipe_is_refused (void)
{
  const int other = dup (STDOUT_FILENO);

  return other > 2 && refused (write (other, "x", 1));
}

static void *
nothing (void *data)
{
  return data;
}

static bool
reading_and_threads_go_on (void)
{
  const int file = open ("/proc/self/maps", O_RDONLY), program = open ("/bin/true", O_RDONLY);
  pthread_t thread;
  char byte;

  return program >= 0 && read (program, &byte, 1) == 1 && (file < 0 || read (file, &byte, 1) == 1)
      && pthread_create (&thread, NULL, nothing, NULL) == 0 && pthread_join (thread, NULL) == 0;
}

START_TEST (the_network_is_closed)
{
  ck_assert_int_eq (bound (sockets_are_refused), 0);
}
END_TEST

START_TEST (nothing_can_be_written_or_changed)
{
  ck_assert_int_eq (bound (opening_for_writing_is_refused), 0);
  ck_assert_int_eq (bound (changing_folders_is_refused), 0);
  ck_assert_int_eq (bound (writing_elsewhere_than_to_the_pipe_is_refused), 0);
}
END_TEST

START_TEST (nothing_can_be_started_and_nobody_else_touched)
{
  ck_assert_int_eq (bound (processes_and_programs_are_refused), 0);
  ck_assert_int_eq (bound (others_are_out_of_reach), 0);
}
END_TEST

START_TEST (what_binds_it_cannot_be_loosened)
{
  ck_assert_int_eq (bound (bounds_cannot_be_loosened), 0);
}
END_TEST

START_TEST (reading_files_and_starting_threads_goes_on)
{
  ck_assert_int_eq (bound (reading_and_threads_go_on), 0);
}
END_TEST

static bool
memory_ends (void)
{
  return mmap (NULL, MOST_BYTES, PROT_READ, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0) == MAP_FAILED && errno == ENOMEM;
}

static bool
open_files_end (void)
{
  for (int i = 0; i < 1000; i++)
    if (dup (STDOUT_FILENO) < 0)
      return errno == EMFILE;
  return false;
}

START_TEST (memory_and_open_files_come_to_an_end)
{
#if !defined (__SANITIZE_ADDRESS__)
  ck_assert_int_eq (bound (memory_ends), 0);
#else
  (void) memory_ends;
#endif
  ck_assert_int_eq (bound (open_files_end), 0);
}
END_TEST

START_TEST (time_on_the_processor_comes_to_an_end)
{
  const pid_t child = fork ();
  int how;

  if (child == 0)
    {
      signal (SIGXCPU, SIG_DFL);
      confine_process (MOST_BYTES, 1);
      for (volatile unsigned spin = 0; ; spin++)
        continue;
    }
  ck_assert_int_eq (waitpid (child, &how, 0), child);
  ck_assert (WIFSIGNALED (how));
  ck_assert_int_eq (WTERMSIG (how), SIGXCPU);
}
END_TEST

/* A second binding is refused part by part, and says so. */
static bool
a_refusal_is_told (void)
{
  return confine_process (MOST_BYTES / 2, SECONDS) != 0;
}

START_TEST (what_the_kernel_refuses_is_told)
{
  ck_assert_int_eq (bound (a_refusal_is_told), 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("confined");

  tcase_add_test (tests, the_network_is_closed);
  tcase_add_test (tests, nothing_can_be_written_or_changed);
  tcase_add_test (tests, nothing_can_be_started_and_nobody_else_touched);
  tcase_add_test (tests, what_binds_it_cannot_be_loosened);
  tcase_add_test (tests, reading_files_and_starting_threads_goes_on);
  tcase_add_test (tests, memory_and_open_files_come_to_an_end);
  tcase_add_test (tests, time_on_the_processor_comes_to_an_end);
  tcase_add_test (tests, what_the_kernel_refuses_is_told);
  return run_suite (suite_create ("the decoder's bounds"), tests);
}
