#pragma once
#include <glib.h>
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* Memory of this process, its share of what is shared counted, KiB; 0 where the kernel does not say. Buffers shared with the display are
 * left out: it keeps one or two of them as it happens to be done with the last frame, whatever is shown. */
static inline long
pss_kib (void)
{
  g_autofree char *maps = NULL;
  bool of_display = false;
  long pss = 0;

  if (!g_file_get_contents ("/proc/self/smaps", &maps, NULL, NULL))
    return 0;
  for (char *line = strtok (maps, "\n"); line != NULL; line = strtok (NULL, "\n"))
    if (g_ascii_isxdigit (line[0]) && strchr (line, '-') != NULL)
      of_display = strstr (line, "/SYSV") != NULL;
    else if (!of_display && g_str_has_prefix (line, "Pss:"))
      pss += strtol (line + 4, NULL, 10);
  return pss;
}

/* Processor time of this thread, s. */
static inline double
cpu_now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &time);
  return (double) time.tv_sec + 1e-9 * (double) time.tv_nsec;
}
