#include "decoder/confine.h"

#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include "plan/decode.h"

#if defined (__SANITIZE_ADDRESS__) || defined (__SANITIZE_THREAD__)
static const bool MEMORY_CAN_BE_LIMITED = false;
#else
static const bool MEMORY_CAN_BE_LIMITED = true;
#endif
/* Fonts, loaders and the file itself: far fewer than this. */
static const rlim_t MOST_OPEN_FILES = 64;

static bool
limit (int resource, rlim_t most)
{
  const struct rlimit both = { .rlim_cur = most, .rlim_max = most };
  struct rlimit now;

  if (setrlimit (resource, &both) == 0)
    return true;
  /* What is bound more tightly already stays so. */
  return getrlimit (resource, &now) == 0 && now.rlim_cur <= most;
}

/* A second more before the hard end, so that the gentler signal comes first and tells the two apart. */
static bool
limit_time (unsigned seconds)
{
  const struct rlimit time = { .rlim_cur = seconds, .rlim_max = (rlim_t) seconds + 1 };

  return setrlimit (RLIMIT_CPU, &time) == 0;
}

unsigned
confine_process (size_t most_bytes, unsigned seconds)
{
  unsigned missing = 0;

  /* Nobody is left to answer to when the one who asked is gone. */
  prctl (PR_SET_PDEATHSIG, SIGKILL);
  if (!MEMORY_CAN_BE_LIMITED || !limit (RLIMIT_AS, most_bytes))
    missing |= DECODE_LIMIT_MEMORY;
  if (!limit_time (seconds))
    missing |= DECODE_LIMIT_TIME;
  if (!limit (RLIMIT_NOFILE, MOST_OPEN_FILES) || !limit (RLIMIT_FSIZE, 0) || !limit (RLIMIT_CORE, 0))
    missing |= DECODE_LIMIT_FILES;
  if (prctl (PR_SET_DUMPABLE, 0) != 0)
    missing |= DECODE_LIMIT_FILES;
  if (prctl (PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0)
    missing |= DECODE_LIMIT_PRIVILEGES;
  if (!confine_calls ())
    missing |= DECODE_LIMIT_CALLS;
  return missing;
}
