#include "geometry/ascending.h"

int
ascending_doubles (const void *a, const void *b)
{
  const double left = *(const double *) a, right = *(const double *) b;

  return (left > right) - (left < right);
}

int
ascending_floats (const void *a, const void *b)
{
  const float left = *(const float *) a, right = *(const float *) b;

  return (left > right) - (left < right);
}
