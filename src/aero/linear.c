#include "aero/linear.h"

#include <math.h>
#include <stdbool.h>
#include <stddef.h>

/* LAPACK as OpenBLAS exports it, and OpenBLAS's own switch; column-major, 32-bit integers. Declared here, so that no
 * header of LAPACK's C layer is needed. */
extern void dgetrf_ (const int *rows, const int *columns, double *a, const int *stride, int *pivots, int *info);
extern void dgetrs_ (const char *transposed, const int *size, const int *count, const double *a, const int *stride,
                     const int *pivots, double *b, const int *b_stride, int *info);
extern void openblas_set_num_threads (int count);

/* The smallest pivot over the largest, below which nothing but rounding is left of a row. A lattice's pivots span three
 * powers of ten at most, since its strips' widths do. */
static const double least_pivot_ratio = 1e-12;

void
linear_use_one_thread (void)
{
  openblas_set_num_threads (1);
}

/* False also where a pivot is not a number. */
static bool
pivots_are_sound (int size, const double a[])
{
  double least = INFINITY, greatest = 0;

  for (size_t i = 0; i < (size_t) size; i++)
    {
      const double pivot = fabs (a[i * (size_t) size + i]);

      if (!(pivot < INFINITY))
        return false;
      least = fmin (least, pivot);
      greatest = fmax (greatest, pivot);
    }
  return least > least_pivot_ratio * greatest;
}

CoreStatus
linear_solve (int size, int count, double a[], int pivots[], double b[])
{
  int info;

  dgetrf_ (&size, &size, a, &size, pivots, &info);
  if (info != 0 || !pivots_are_sound (size, a))
    return CORE_SINGULAR;
  return linear_solve_again (size, count, a, pivots, b);
}

CoreStatus
linear_solve_again (int size, int count, const double a[], const int pivots[], double b[])
{
  int info;

  dgetrs_ ("N", &size, &count, a, &size, pivots, b, &size, &info);
  return info == 0 ? CORE_OK : CORE_SINGULAR;
}
