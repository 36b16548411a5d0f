#include "document/quantity.h"
#include <stdint.h>
#include <string.h>

/* What stands between the digits: where the last sign is, and how many there are of each. */
typedef struct { size_t length, points, commas, first, last; } Run;

static Run
run_of (const char *text)
{
  Run run = { .first = SIZE_MAX };

  for (; g_ascii_isdigit (text[run.length]) || text[run.length] == '.' || text[run.length] == ','; run.length++)
    if (!g_ascii_isdigit (text[run.length]))
      {
        run.first = MIN (run.first, run.length);
        run.last = run.length;
        *(text[run.length] == '.' ? &run.points : &run.commas) += 1;
      }
  return run;
}

static size_t
digit_count (const char *text)
{
  return strspn (text, "0123456789");
}

/* Whether all signs before `end` part groups of three digits, with one to three before the first. */
static bool
groups_are_thousands (const char *text, size_t end)
{
  const char *at = text + digit_count (text);

  if (at == text || at - text > 3)
    return false;
  while (at < text + end)
    {
      if (digit_count (at + 1) != 3)
        return false;
      at += 4;
    }
  return at == text + end;
}

/* Keeps digits, and of the signs only that at `decimal`. */
static void
copy_digits (Digits *digits, const char *text, size_t length, size_t decimal)
{
  size_t count = 0;

  digits->found = length < sizeof digits->text ? DIGITS_READ : DIGITS_WRONG;
  for (size_t i = 0; i < length && digits->found == DIGITS_READ; i++)
    if (g_ascii_isdigit (text[i]))
      digits->text[count++] = text[i];
    else if (i == decimal)
      digits->text[count++] = '.';
  digits->text[count] = '\0';
}

static bool
might_be_thousands (const char *text, const Run *run, NumberSigns signs)
{
  const char sign[] = { text[run->first], '\0' };

  if (run->first < 1 || run->first > 3 || text[0] == '0' || run->length - run->first != 4)
    return false;
  return strcmp (sign, signs.decimal) != 0 || strncmp (text + run->first + 1, "000", 3) == 0;
}

/* "1 234 567" with blanks: never a decimal sign. Gives the whole length, 0 when that is not it. */
static size_t
blank_groups (const char *text)
{
  size_t length = digit_count (text);

  if (length < 1 || length > 3 || text[length] != ' ' || digit_count (text + length + 1) != 3)
    return 0;
  while (text[length] == ' ' && digit_count (text + length + 1) == 3)
    length += 4;
  return text[length] == '/' ? 0 : length;
}

static void
read_blank_groups (Digits *digits, const char *text, size_t groups)
{
  const size_t behind = text[groups] == '.' || text[groups] == ',' ? 1 + digit_count (text + groups + 1) : 0;

  digits->length = groups + behind;
  copy_digits (digits, text, digits->length, behind ? groups : SIZE_MAX);
}

Digits
digits_read (const char *text, NumberSigns signs)
{
  Digits digits = { .found = DIGITS_NONE };
  const size_t groups = blank_groups (text);
  const Run run = run_of (text);

  if (groups > 0)
    {
      read_blank_groups (&digits, text, groups);
      return digits;
    }
  digits.length = run.length;
  if (run.length == run.points + run.commas)
    digits.found = run.length > 0 ? DIGITS_WRONG : DIGITS_NONE;
  else if (run.points + run.commas == 0)
    copy_digits (&digits, text, run.length, SIZE_MAX);
  else if (run.points + run.commas == 1)
    {
      copy_digits (&digits, text, run.length, run.first);
      if (digits.found == DIGITS_READ && might_be_thousands (text, &run, signs))
        digits.found = DIGITS_AMBIGUOUS;
    }
  else if (run.points == 0 || run.commas == 0)
    {
      digits.found = DIGITS_WRONG;
      if (groups_are_thousands (text, run.length))
        copy_digits (&digits, text, run.length, SIZE_MAX);
    }
  else
    {
      const size_t of_last = text[run.last] == '.' ? run.points : run.commas;

      digits.found = DIGITS_WRONG;
      if (of_last == 1 && groups_are_thousands (text, run.last))
        copy_digits (&digits, text, run.length, run.last);
    }
  return digits;
}
