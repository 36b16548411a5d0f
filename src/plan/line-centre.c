#include "plan/line-centre.h"

#include <math.h>
#include <stdlib.h>
#include <stdbool.h>
#include <string.h>

static const double LOOK = 1.5;             /* sigmas */

static const double STEADY_REACH = 3;       /* of the averaging reach */
static const double BESIDE = 2.5, OFF = 0.6;        /* sigmas */
static const double FAINTEST = 0.2;
static const double FEW = 0.5, MOST = 0.85;         /* shares of the places about */

static double
strength_at (const float *column, int rows, double row)
{
  const int before = (int) floor (row);

  if (before < 0 || before + 1 >= rows)
    return 0;
  return fmin (column[before] + (column[before + 1] - column[before]) * (row - before), 1.5);
}

/* The mean strength beside the path, `off` rows from it. */
static double
averaged (const Corridor *corridor, const float *strength, const double *rows, size_t column, int reach, double off)
{
  const size_t each_way = (size_t) reach, from = column > each_way ? column - each_way : 0;
  const size_t to = column + each_way < corridor->columns ? column + each_way : corridor->columns - 1;
  const int count = corridor_rows (corridor);
  double sum = 0;

  for (size_t at = from; at <= to; at++)
    sum += strength_at (strength + at * (size_t) count, count, rows[at] + off);
  return sum / (double) (to - from + 1);
}

/* Whether the strongest thing near the path is the path. */
static bool
stands_out (const float *column, int rows, double row, double sigma_rows)
{
  const int middle = (int) round (row), look = (int) ceil (BESIDE * sigma_rows);
  int best = -1;

  for (int i = middle - look; i <= middle + look; i++)
    if (i >= 0 && i < rows && (best < 0 || column[i] > column[best]))
      best = i;
  return best >= 0 && column[best] > FAINTEST && fabs (best - row) <= fmax (OFF * sigma_rows, 1);
}

/* How many of the places about each stand out: all along a line, faint or not; among letters, which are strong here and nothing there and
 * never on one line, few. A place that does not is not trusted, nor is one among those that mostly do not. */
static void
trust_what_is_steady (const Corridor *corridor, const float *strength, const double *rows, double sigma, size_t reach, double *weights)
{
  const size_t count = corridor->columns, height = (size_t) corridor_rows (corridor);
  bool *good = malloc (count * sizeof *good);
  size_t inside = 0, goods = 0;

  for (size_t i = 0; good && i < count + reach; i++)
    {
      if (i < count)
        {
          good[i] = weights[i] > 0 && stands_out (strength + i * height, (int) height, rows[i], sigma / corridor->pitch);
          goods += good[i];
          inside++;
        }
      if (i > 2 * reach)
        {
          goods -= good[i - 2 * reach - 1];
          inside--;
        }
      if (i >= reach)
        weights[i - reach] = good[i - reach] ? fmin (fmax (((double) goods / (double) inside - FEW) / (MOST - FEW), 0), 1) : 0;
    }
  free (good);
}

CoreStatus
line_centre (const Corridor *corridor, const float *strength, double sigma, int reach, double *rows, double *weights)
{
  const int look = (int) ceil (LOOK * sigma / corridor->pitch) + 1;
  double *moved = malloc (corridor->columns * sizeof *moved), *beside = malloc ((2 * (size_t) look + 1) * sizeof *beside);

  for (size_t column = 0; moved && beside && column < corridor->columns; column++)
    {
      int best = look;
      for (int i = 0; i <= 2 * look; i++)
        beside[i] = averaged (corridor, strength, rows, column, reach, i - look);
      for (int i = 1; i < 2 * look; i++)
        if (beside[i] > beside[best])
          best = i;
      const bool inside = best > 0 && best < 2 * look;
      const double bend = inside ? beside[best - 1] - 2 * beside[best] + beside[best + 1] : 0;
      const double peak = bend < 0 ? (beside[best - 1] - beside[best + 1]) / (2 * bend) : 0;
      moved[column] = rows[column] + best - look + fmin (fmax (peak, -1), 1);
      weights[column] = bend < 0 && beside[best] > FAINTEST ? 1 : 0;
    }
  const bool done = moved && beside;
  if (done)
    {
      memcpy (rows, moved, corridor->columns * sizeof *rows);
      trust_what_is_steady (corridor, strength, rows, sigma, (size_t) (STEADY_REACH * reach), weights);
    }
  free (moved);
  free (beside);
  return done ? CORE_OK : CORE_NO_MEMORY;
}
