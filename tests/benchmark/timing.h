#pragma once
#include <stdlib.h>
#include <time.h>

/** Seconds on a clock that nobody sets. */
static inline double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_MONOTONIC, &time);
  return time.tv_sec + 1e-9 * time.tv_nsec;
}

static inline int
compare_times (const void *a, const void *b)
{
  const double left = *(const double *) a, right = *(const double *) b;

  return (left > right) - (left < right);
}

/** The middle of the times; puts them in order. */
static inline double
median (double times[], size_t count)
{
  qsort (times, count, sizeof *times, compare_times);
  return times[count / 2];
}
