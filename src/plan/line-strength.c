#include "plan/line-strength.h"

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/ascending.h"

/* Lines are drawn from a quarter to a whole millimetre wide; at 100 to 400 dots an inch that is these half widths, px. */
static const double SIGMAS[] = { 0.8, 1.1, 1.5, 2.1, 2.9, 4.0, 5.6 };
static const double KERNEL_REACH = 3.5;   /* sigmas */
/* Of the usual strength: what is fainter is the paper's grain. */
static const float FAINTEST = 0.3f;
enum { MOST_TAPS = 256 };

/* The kernel's right half, its own middle first; in all it sums to nothing, so that even ink is no line. */
static int
make_kernel (double sigma, float kernel[MOST_TAPS])
{
  int taps = (int) ceil (KERNEL_REACH * sigma);
  double sum = 0;

  if (taps > MOST_TAPS - 1)
    taps = MOST_TAPS - 1;
  for (int i = 0; i <= taps; i++)
    {
      const double u = i / sigma;
      kernel[i] = (float) ((1 - u * u) * exp (-u * u / 2) / (sigma * sqrt (2 * M_PI)));
      sum += i ? 2 * kernel[i] : kernel[i];
    }
  for (int i = 0; i <= taps; i++)
    kernel[i] -= (float) (sum / (2 * taps + 1));
  return taps;
}

static void
filter_column (const float *ink, int rows, const float *kernel, int taps, float *strength)
{
  for (int row = 0; row < rows; row++)
    {
      float sum = kernel[0] * ink[row];

      for (int i = 1; i <= taps; i++)
        sum += kernel[i] * (ink[row - i > 0 ? row - i : 0] + ink[row + i < rows ? row + i : rows - 1]);
      strength[row] = sum > 0 ? sum : 0;
    }
}

CoreStatus
line_strength (const Corridor *corridor, double sigma, float *strength)
{
  float kernel[MOST_TAPS];
  const int rows = corridor_rows (corridor), taps = make_kernel (sigma / corridor->pitch, kernel);

  for (size_t column = 0; column < corridor->columns; column++)
    filter_column (corridor->ink + column * (size_t) rows, rows, kernel, taps, strength + column * (size_t) rows);
  return CORE_OK;
}

/* The greatest strength of each column within `near` rows of the spine. */
static void
find_greatest (const Corridor *corridor, const float *strength, int near, float *greatest)
{
  const int rows = corridor_rows (corridor), first = corridor->half > near ? corridor->half - near : 0;
  const int last = corridor->half + near < rows ? corridor->half + near : rows - 1;

  for (size_t column = 0; column < corridor->columns; column++)
    {
      greatest[column] = 0;
      for (int row = first; row <= last; row++)
        greatest[column] = fmaxf (greatest[column], strength[column * (size_t) rows + (size_t) row]);
    }
}

static float
median_of (const float *values, size_t count, float *sorted)
{
  memcpy (sorted, values, count * sizeof *sorted);
  qsort (sorted, count, sizeof *sorted, ascending_floats);
  return sorted[count / 2];
}

double
line_usual_strength (const Corridor *corridor, const float *strength, double reach)
{
  float *greatest = malloc (corridor->columns * sizeof *greatest), *sorted = malloc (corridor->columns * sizeof *sorted);
  double usual = NAN;

  if (greatest && sorted)
    {
      find_greatest (corridor, strength, (int) (reach / corridor->pitch), greatest);
      usual = median_of (greatest, corridor->columns, sorted);
    }
  free (greatest);
  free (sorted);
  return usual;
}

CoreStatus
line_strength_even (const Corridor *corridor, double reach, size_t stretch, float *strength)
{
  const size_t rows = (size_t) corridor_rows (corridor), each_way = 2 * stretch;
  float *greatest = malloc (corridor->columns * sizeof *greatest), *sorted = malloc (corridor->columns * sizeof *sorted);
  const bool ready = greatest && sorted;

  if (ready)
    {
      find_greatest (corridor, strength, (int) (reach / corridor->pitch), greatest);
      const float usual = fmaxf (median_of (greatest, corridor->columns, sorted), 1);
      for (size_t first = 0; first < corridor->columns; first += stretch)
        {
          const size_t from = first > each_way ? first - each_way : 0, end = first + stretch + each_way;
          const size_t to = end < corridor->columns ? end : corridor->columns;
          const size_t last = first + stretch < corridor->columns ? first + stretch : corridor->columns;
          const float here = fminf (fmaxf (median_of (greatest + from, to - from, sorted), FAINTEST * usual), usual);
          for (size_t i = first * rows; i < last * rows; i++)
            strength[i] /= here;
        }
    }
  free (greatest);
  free (sorted);
  return ready ? CORE_OK : CORE_NO_MEMORY;
}

double
line_sigma (const Corridor *corridor, double reach)
{
  float *strength = malloc (corridor->columns * (size_t) corridor_rows (corridor) * sizeof *strength);
  double best = NAN, most = -1;

  for (size_t i = 0; strength && i < sizeof SIGMAS / sizeof *SIGMAS; i++)
    {
      line_strength (corridor, SIGMAS[i], strength);
      const double usual = line_usual_strength (corridor, strength, reach);
      if (usual > most)
        {
          most = usual;
          best = SIGMAS[i];
        }
    }
  free (strength);
  return best;
}
