#pragma once
#include <string.h>
#include "aero/linear.h"
#include "benchmark/timing.h"

/** One system that LAPACK alone is timed on: well-conditioned, of the size that the lattice has. */
typedef struct { int size; double *matrix, *work, *right; int *pivots; } System;

static inline System
system_new (int size)
{
  const size_t n = (size_t) size;
  System system = { .size = size, .matrix = malloc (n * n * sizeof (double)), .work = malloc (n * n * sizeof (double)),
                    .right = malloc (n * sizeof (double)), .pivots = malloc (n * sizeof (int)) };

  for (size_t i = 0; i < n * n; i++)
    system.matrix[i] = (i % (n + 1) == 0 ? 9 : 0) + rand () / (double) RAND_MAX;
  return system;
}

static inline void
system_clear (System *system)
{
  free (system->matrix);
  free (system->work);
  free (system->right);
  free (system->pivots);
}

/** Seconds for factoring and solving each once. The copying in of the matrix is outside the measured time: LAPACK's own work alone. */
static inline double
time_lapack (System systems[], size_t count)
{
  double sum = 0;

  for (size_t i = 0; i < count; i++)
    {
      System *system = &systems[i];
      const size_t n = (size_t) system->size;
      double start;

      memcpy (system->work, system->matrix, n * n * sizeof (double));
      for (size_t j = 0; j < n; j++)
        system->right[j] = 1;
      start = now ();
      if (linear_solve (system->size, 1, system->work, system->pivots, system->right))
        abort ();
      sum += now () - start;
    }
  return sum;
}
