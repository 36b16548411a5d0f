#include "document/number-text.h"
#include <math.h>
#include <string.h>
#include <glib.h>

/* Most numbers that a person makes have at most six decimals. n / 10^6 is rounded correctly, since both are exact, and so is the
 * nearest number to that decimal text: when it is the value, the text reads back to it, and has at most 15 digits. */
static size_t
number_write_short (double value, char *text)
{
  const double scaled = rint (value * 1e6);
  char digits[NUMBER_ROOM];
  size_t length = 0, count = 0;
  guint64 left;
  int decimals = 6;

  if (!(fabs (value) < 1e8) || scaled / 1e6 != value || (value == 0 && signbit (value)))
    return 0;
  left = (guint64) fabs (scaled);
  while (decimals > 0 && left % 10 == 0)
    left /= 10, decimals--;
  for (int i = 0; left > 0 || i <= decimals; i++, left /= 10)
    {
      if (i == decimals && decimals > 0)
        digits[count++] = '.';
      digits[count++] = (char) ('0' + left % 10);
    }
  if (value < 0)
    text[length++] = '-';
  while (count > 0)
    text[length++] = digits[--count];
  text[length] = '\0';
  return length;
}

size_t
number_write (double value, char *text)
{
  static const char *const formats[] = { "%.15g", "%.16g", "%.17g" };
  size_t length = number_write_short (value, text);

  if (length == 0)
    length = number_write_long (value, text);
  for (size_t i = 0; length == 0 && i < G_N_ELEMENTS (formats); i++)
    {
      g_ascii_formatd (text, NUMBER_ROOM, formats[i], value);
      if (i + 1 == G_N_ELEMENTS (formats) || g_ascii_strtod (text, NULL) == value)
        length = strlen (text);
    }
  return length;
}

static const char *
skip_digits (const char *at, const char *end)
{
  while (at < end && g_ascii_isdigit (*at))
    at++;
  return at;
}

/* The end of the number that begins at `at`; NULL when none does. */
static const char *
number_end (const char *at, const char *end)
{
  const char *first, *behind;
  size_t digits;

  if (at < end && (*at == '-' || *at == '+'))
    at++;
  behind = skip_digits (first = at, end);
  digits = behind - first;
  if (behind < end && *behind == '.')
    {
      first = behind + 1;
      behind = skip_digits (first, end);
      digits += behind - first;
    }
  if (digits == 0)
    return NULL;
  if (behind < end && (*behind == 'e' || *behind == 'E'))
    {
      first = behind + 1;
      if (first < end && (*first == '-' || *first == '+'))
        first++;
      behind = skip_digits (first, end);
      if (behind == first)
        return NULL;
    }
  return behind;
}

/* Up to 15 digits and 22 decimals: both parts of the fraction are exact, so that one division rounds correctly. */
static bool
number_read_short (const char *at, const char *end, double *value)
{
  static const double tens[] = { 1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15 };
  const bool negative = *at == '-';
  const char *point = NULL;
  guint64 digits = 0;

  if (*at == '-' || *at == '+')
    at++;
  if (end - at > 15)
    return false;
  for (; at < end; at++)
    if (*at == '.')
      point = at;
    else if (g_ascii_isdigit (*at))
      digits = digits * 10 + (guint64) (*at - '0');
    else
      return false;
  *value = (double) digits / tens[point ? end - point - 1 : 0];
  if (negative)
    *value = -*value;
  return true;
}

bool
number_read (const char *text, size_t length, double *value)
{
  const char *end = text + length;
  char copy[512];
  double read;

  while (text < end && g_ascii_isspace (*text))
    text++;
  while (text < end && g_ascii_isspace (end[-1]))
    end--;
  if (text == end || number_end (text, end) != end)
    return false;
  if (!number_read_short (text, end, &read))
    {
      if ((size_t) (end - text) >= sizeof copy)      /* nobody writes five hundred digits */
        return false;
      memcpy (copy, text, end - text);
      copy[end - text] = '\0';
      read = g_ascii_strtod (copy, NULL);
    }
  if (!isfinite (read))
    return false;
  *value = read;
  return true;
}

char *
number_with_sign (const char *text, const char *decimal)
{
  const char *point = strchr (text, '.');

  if (!point)
    return g_strdup (text);
  return g_strdup_printf ("%.*s%s%s", (int) (point - text), text, decimal, point + 1);
}
