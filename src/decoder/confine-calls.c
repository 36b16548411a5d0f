#define _GNU_SOURCE
#include "decoder/confine.h"

#include <errno.h>
#include <fcntl.h>
#include <sched.h>
#include <seccomp.h>
#include <stdint.h>
#include <unistd.h>

/* What reading, memory, threads and clocks need; whatever is not named here fails with EPERM. Names that a processor's kernel
 * does not know are passed over by the library. */
static const int ALLOWED[] = {
  SCMP_SYS (read), SCMP_SYS (pread64), SCMP_SYS (readv), SCMP_SYS (preadv), SCMP_SYS (close),
  SCMP_SYS (lseek), SCMP_SYS (_llseek), SCMP_SYS (poll), SCMP_SYS (ppoll), SCMP_SYS (dup),
  SCMP_SYS (fstat), SCMP_SYS (stat), SCMP_SYS (lstat), SCMP_SYS (fstat64), SCMP_SYS (stat64), SCMP_SYS (lstat64),
  SCMP_SYS (newfstatat), SCMP_SYS (fstatat64), SCMP_SYS (statx), SCMP_SYS (statfs), SCMP_SYS (fstatfs), SCMP_SYS (statfs64),
  SCMP_SYS (fstatfs64), SCMP_SYS (access), SCMP_SYS (faccessat), SCMP_SYS (faccessat2), SCMP_SYS (readlink), SCMP_SYS (readlinkat),
  SCMP_SYS (getdents64), SCMP_SYS (getcwd), SCMP_SYS (fadvise64), SCMP_SYS (fadvise64_64), SCMP_SYS (readahead),
  SCMP_SYS (mmap), SCMP_SYS (mmap2), SCMP_SYS (munmap), SCMP_SYS (mremap), SCMP_SYS (mprotect), SCMP_SYS (madvise), SCMP_SYS (brk),
  SCMP_SYS (mincore), SCMP_SYS (membarrier),
  SCMP_SYS (rt_sigaction), SCMP_SYS (rt_sigprocmask), SCMP_SYS (rt_sigreturn), SCMP_SYS (sigreturn), SCMP_SYS (sigaltstack),
  SCMP_SYS (futex), SCMP_SYS (futex_time64), SCMP_SYS (set_robust_list), SCMP_SYS (rseq), SCMP_SYS (set_tid_address),
  SCMP_SYS (sched_yield), SCMP_SYS (sched_getaffinity), SCMP_SYS (getcpu), SCMP_SYS (eventfd2), SCMP_SYS (restart_syscall),
  SCMP_SYS (clock_gettime), SCMP_SYS (clock_gettime64), SCMP_SYS (clock_getres), SCMP_SYS (clock_nanosleep), SCMP_SYS (nanosleep),
  SCMP_SYS (gettimeofday), SCMP_SYS (time), SCMP_SYS (times),
  SCMP_SYS (getrandom), SCMP_SYS (getpid), SCMP_SYS (gettid), SCMP_SYS (getuid), SCMP_SYS (geteuid), SCMP_SYS (getgid),
  SCMP_SYS (getegid), SCMP_SYS (getrlimit), SCMP_SYS (ugetrlimit), SCMP_SYS (getrusage), SCMP_SYS (sysinfo), SCMP_SYS (uname),
  SCMP_SYS (exit), SCMP_SYS (exit_group),
};

/* Opening is reading: neither an access mode that writes, nor a flag that makes or empties a file. */
static const uint64_t WRITES = O_ACCMODE | O_CREAT | O_TRUNC | O_APPEND;
static const uint64_t READS = O_RDONLY;

static bool
allow_reading (scmp_filter_ctx filter)
{
  return seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (open), 1, SCMP_A1 (SCMP_CMP_MASKED_EQ, WRITES, READS)) == 0
      && seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (openat), 1, SCMP_A2 (SCMP_CMP_MASKED_EQ, WRITES, READS)) == 0;
}

/* To the pipe and to nowhere: what was handed in may be open for writing too. */
static bool
allow_answering (scmp_filter_ctx filter)
{
  const int calls[] = { SCMP_SYS (write), SCMP_SYS (writev) };
  bool added = true;

  for (size_t i = 0; i < sizeof calls / sizeof *calls; i++)
    for (scmp_datum_t to = STDOUT_FILENO; added && to <= STDERR_FILENO; to++)
      added = seccomp_rule_add (filter, SCMP_ACT_ALLOW, calls[i], 1, SCMP_A0 (SCMP_CMP_EQ, to)) == 0;
  return added;
}

/* Not the questions by which a descriptor can be made to send signals. */
static bool
allow_asking_descriptors (scmp_filter_ctx filter)
{
  const scmp_datum_t questions[] = { F_GETFD, F_SETFD, F_GETFL, F_DUPFD, F_DUPFD_CLOEXEC };
  bool added = true;

  for (size_t i = 0; added && i < sizeof questions / sizeof *questions; i++)
    added = seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (fcntl), 1, SCMP_A1 (SCMP_CMP_EQ, questions[i])) == 0
         && seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (fcntl64), 1, SCMP_A1 (SCMP_CMP_EQ, questions[i])) == 0;
  return added;
}

/* Threads of this process, but no process; clone3 hides its flags from the filter, and whoever is told that there is none takes clone.
 * A signal to itself, which abort sends. */
static bool
allow_itself (scmp_filter_ctx filter)
{
  const scmp_datum_t self = (scmp_datum_t) getpid ();

  return seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (clone), 1,
                           SCMP_A0 (SCMP_CMP_MASKED_EQ, CLONE_THREAD, CLONE_THREAD)) == 0
      && seccomp_rule_add (filter, SCMP_ACT_ERRNO (ENOSYS), SCMP_SYS (clone3), 0) == 0
      && seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (tgkill), 1, SCMP_A0 (SCMP_CMP_EQ, self)) == 0
      && seccomp_rule_add (filter, SCMP_ACT_ALLOW, SCMP_SYS (prlimit64), 2, SCMP_A0 (SCMP_CMP_EQ, 0),
                           SCMP_A2 (SCMP_CMP_EQ, 0)) == 0;
}

bool
confine_calls (void)
{
  const scmp_filter_ctx filter = seccomp_init (SCMP_ACT_ERRNO (EPERM));
  bool taken = filter && allow_reading (filter) && allow_answering (filter) && allow_asking_descriptors (filter)
             && allow_itself (filter);

  for (size_t i = 0; taken && i < sizeof ALLOWED / sizeof *ALLOWED; i++)
    taken = seccomp_rule_add (filter, SCMP_ACT_ALLOW, ALLOWED[i], 0) == 0;
  taken = taken && seccomp_load (filter) == 0;
  if (filter)
    seccomp_release (filter);
  return taken;
}
