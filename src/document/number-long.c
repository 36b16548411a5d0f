#include "document/number-text.h"
#include <float.h>
#include <math.h>
#include <stdint.h>
#include <glib.h>

/* 10^27 is the last power of ten that 64 bits of mantissa hold exactly. */
static const long double tens[] = {
  1, 1e1L, 1e2L, 1e3L, 1e4L, 1e5L, 1e6L, 1e7L, 1e8L, 1e9L, 1e10L, 1e11L, 1e12L, 1e13L, 1e14L, 1e15L, 1e16L, 1e17L, 1e18L, 1e19L, 1e20L
};

typedef enum { DIGITS_READ_BACK, DIGITS_TOO_FEW, DIGITS_UNSURE } DigitsAre;

/* Whether the nearest whole number of 10^-decimals is read back to the value. What a long double's rounding could decide is unsure. */
static DigitsAre
digits_for (double value, int decimals, uint64_t *whole)
{
  const long double scaled = (long double) value * tens[decimals], nearest = rintl (scaled), back = nearest / tens[decimals];
  long double off, half;
  int exponent;

  if (fabsl (fabsl (scaled - nearest) - 0.5L) < 0.01L || frexp (value, &exponent) == 0.5)
    return DIGITS_UNSURE;
  off = fabsl (back - (long double) value);
  half = ldexpl (1, exponent - 1 - DBL_MANT_DIG);      /* of the step to the next double */
  if (fabsl (off - half) < half / 256)
    return DIGITS_UNSURE;
  *whole = (uint64_t) nearest;
  return off < half ? DIGITS_READ_BACK : DIGITS_TOO_FEW;
}

/* The digits with a point in them, without noughts at the end; there is always a digit before the point. */
static size_t
write_fixed (uint64_t whole, int decimals, bool negative, char *text)
{
  char digits[NUMBER_ROOM];
  size_t count = 0, length = 0;

  for (; decimals > 0 && whole % 10 == 0; decimals--)
    whole /= 10;
  for (int i = 0; whole > 0 || i <= decimals; i++, whole /= 10)
    {
      if (i == decimals && decimals > 0)
        digits[count++] = '.';
      digits[count++] = (char) ('0' + whole % 10);
    }
  if (negative)
    text[length++] = '-';
  while (count > 0)
    text[length++] = digits[--count];
  text[length] = '\0';
  return length;
}

size_t
number_write_long (double value, char *text)
{
  const double size = fabs (value);
  int before = -2;      /* digits before the point; less than 0: noughts behind it */

  if (LDBL_MANT_DIG < 64 || !(size >= 1e-3 && size < 1e8))
    return 0;
  while (size >= (double) (before < 0 ? 1 / tens[-before] : tens[before]))
    before++;
  for (int digits = 15; digits <= 17; digits++)
    {
      uint64_t whole = 0;
      const DigitsAre are = digits_for (size, digits - before, &whole);

      if (are == DIGITS_UNSURE)
        return 0;
      if (are == DIGITS_READ_BACK)
        return write_fixed (whole, digits - before, value < 0, text);
    }
  return 0;
}
