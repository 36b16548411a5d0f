/* All figures' aerodynamics after a node moved, against factoring and solving every system that needs it by LAPACK alone.
 * The two take turns in one run, so that a busy machine slows both; the medians' ratio is what counts. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include "aero/linear.h"
#include "benchmark/racer.h"

enum { pairs = 400, most_systems = 3 };
static const double ratio_bound = 2.5, ratio_aim = 1.8;

/* One system that LAPACK alone is timed on: well-conditioned, of the size that the lattice has. */
typedef struct { int size; double *matrix, *work, *right; int *pivots; } System;

static double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_MONOTONIC, &time);
  return time.tv_sec + 1e-9 * time.tv_nsec;
}

static System
system_new (int size)
{
  const size_t n = (size_t) size;
  System system = { .size = size, .matrix = malloc (n * n * sizeof (double)), .work = malloc (n * n * sizeof (double)),
                    .right = malloc (n * sizeof (double)), .pivots = malloc (n * sizeof (int)) };

  for (size_t i = 0; i < n * n; i++)
    system.matrix[i] = (i % (n + 1) == 0 ? 9 : 0) + rand () / (double) RAND_MAX;
  return system;
}

static void
system_clear (System *system)
{
  free (system->matrix);
  free (system->work);
  free (system->right);
  free (system->pivots);
}

/* The copying in of the matrix is outside the measured time: LAPACK's own work alone. */
static double
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

/* A node moves: the wing's outline is a new one each time, as in the window. */
static double
time_lattice (Lattice *lattice, int turn)
{
  Outline *outlines[2], *moved;
  LatticeSurface surfaces[2];
  LatticeShare shares[2];
  LatticeResult result;
  double start, taken;

  racer_outlines (outlines);
  if (outline_mapped (outlines[0], (Point) { 1 + 1e-4 * (turn % 10), 1 }, (Point) { 0 }, &moved))
    abort ();
  outline_unref (outlines[0]);
  outlines[0] = moved;
  racer_surfaces (outlines, surfaces);
  start = now ();
  if (lattice_solve (lattice, surfaces, 2, lattice_default_options (), LATTICE_ALONE, racer_area, racer_span, shares, &result))
    abort ();
  taken = now () - start;
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
  return taken;
}

static int
compare (const void *a, const void *b)
{
  const double left = *(const double *) a, right = *(const double *) b;

  return (left > right) - (left < right);
}

static double
median (double times[])
{
  qsort (times, pairs, sizeof *times, compare);
  return times[pairs / 2];
}

int
main (void)
{
  Lattice *lattice = lattice_new ();
  System systems[most_systems] = { system_new (20 * 6 + 12 * 4), system_new (20 * 6), system_new (12 * 4) };
  double lapack[pairs], solve[pairs], ratio;

  for (int i = 0; i < pairs; i++)
    {
      lapack[i] = time_lapack (systems, most_systems);
      solve[i] = time_lattice (lattice, i);
    }
  ratio = median (solve) / median (lapack);
  printf ("lattice 20x6 + 12x4, together and each alone: %.3f ms; LAPACK alone: %.3f ms; ratio %.2f (bound %.1f, aim %.1f)\n",
          1e3 * median (solve), 1e3 * median (lapack), ratio, ratio_bound, ratio_aim);
  for (int i = 0; i < most_systems; i++)
    system_clear (&systems[i]);
  lattice_free (lattice);
  return 0;
}
