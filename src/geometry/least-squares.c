#include "geometry/least-squares.h"

#include <math.h>
#include <string.h>

/* Of the diagonal: a pivot below has been eaten up by rounding. */
static const double SMALLEST_PIVOT = 1e-12;

void
least_squares_begin (LeastSquares *self, int unknowns)
{
  memset (self, 0, sizeof *self);
  self->unknowns = unknowns;
}

void
least_squares_add (LeastSquares *self, const double factors[], double value, double weight)
{
  for (int i = 0; i < self->unknowns; i++)
    {
      for (int j = 0; j <= i; j++)
        self->normal[i][j] += weight * factors[i] * factors[j];
      self->right[i] += weight * factors[i] * value;
    }
  self->weight += weight;
  self->square += weight * value * value;
}

/* Cholesky's factor in place of the lower half. */
static bool
factor (LeastSquares *self)
{
  for (int i = 0; i < self->unknowns; i++)
    for (int j = 0; j <= i; j++)
      {
        double sum = self->normal[i][j];
        for (int k = 0; k < j; k++)
          sum -= self->normal[i][k] * self->normal[j][k];
        if (i == j && !(sum > SMALLEST_PIVOT * self->normal[i][i]))
          return false;
        self->normal[i][j] = i == j ? sqrt (sum) : sum / self->normal[j][j];
      }
  return true;
}

bool
least_squares_solve (const LeastSquares *self, double x[], double *rest)
{
  LeastSquares work = *self;
  double explained = 0;

  if (!factor (&work))
    return false;
  for (int i = 0; i < work.unknowns; i++)
    {
      x[i] = work.right[i];
      for (int k = 0; k < i; k++)
        x[i] -= work.normal[i][k] * x[k];
      x[i] /= work.normal[i][i];
    }
  for (int i = work.unknowns - 1; i >= 0; i--)
    {
      for (int k = i + 1; k < work.unknowns; k++)
        x[i] -= work.normal[k][i] * x[k];
      x[i] /= work.normal[i][i];
      explained += x[i] * self->right[i];
    }
  if (rest)
    *rest = fmax (self->square - explained, 0) / self->weight;
  return true;
}
