#pragma once
#include <glib.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* Memory of this process, its share of what is shared counted, KiB; 0 where the kernel does not say. */
static inline long
pss_kib (void)
{
  g_autofree char *rollup = NULL;
  const char *line;

  if (!g_file_get_contents ("/proc/self/smaps_rollup", &rollup, NULL, NULL) || (line = strstr (rollup, "\nPss:")) == NULL)
    return 0;
  return strtol (line + 5, NULL, 10);
}

/* Processor time of this thread, s. */
static inline double
cpu_now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &time);
  return (double) time.tv_sec + 1e-9 * (double) time.tv_nsec;
}
