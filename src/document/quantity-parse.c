#include "document/quantity.h"
#include <math.h>
#include <string.h>
#include "document/elements.h"
#include "document/number-text.h"
#include "document/units.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

G_DEFINE_QUARK (trammel-units-error-quark, units_error)

/* A number as typed, kept as a fraction of whole numbers until its unit is known, so that it is rounded once. */
typedef struct { long double up, down; double value; bool plain; } Ratio;

typedef struct {
  const Quantity *quantity;
  NumberSigns signs;
  const char *typed;      /* as it was, for sentences */
  const char *at;         /* in the plain form of it */
  GError **error;
} Parse;

static bool
fail_empty (const Parse *parse)
{
  static const char *const sentences[] = {
    [QUANTITY_LENGTH] = N_("Write a length, such as 36 mm or 1 7/16 in."),
    [QUANTITY_MASS]   = N_("Write a mass, such as 24 g or 0.8 oz."),
    [QUANTITY_NUMBER] = N_("Write a number, such as 12 or 2.5."),
  };

  g_set_error_literal (parse->error, UNITS_ERROR, UNITS_ERROR_EMPTY, _(sentences[parse->quantity->kind]));
  return false;
}

static bool
fail_number (const Parse *parse)
{
  const GQuark domain = UNITS_ERROR;
  const int code = UNITS_ERROR_NOT_A_NUMBER;

  switch (parse->quantity->kind)
    {
    case QUANTITY_LENGTH:
      g_set_error (parse->error, domain, code, _("“%s” is not a length. Write one such as 36 mm or 1 7/16 in."), parse->typed);
      break;
    case QUANTITY_MASS:
      g_set_error (parse->error, domain, code, _("“%s” is not a mass. Write one such as 24 g or 0.8 oz."), parse->typed);
      break;
    case QUANTITY_NUMBER:
      g_set_error (parse->error, domain, code, _("“%s” is not a number. Write one such as 12 or 2.5."), parse->typed);
      break;
    }
  return false;
}

static bool
fail_large (const Parse *parse)
{
  const GQuark domain = UNITS_ERROR;

  switch (parse->quantity->kind)
    {
    case QUANTITY_LENGTH:
      g_set_error (parse->error, domain, UNITS_ERROR_LARGE, _("“%s” is too large a length for a small aeroplane. Write less."), parse->typed);
      break;
    case QUANTITY_MASS:
      g_set_error (parse->error, domain, UNITS_ERROR_LARGE, _("“%s” is too large a mass for a small aeroplane. Write less."), parse->typed);
      break;
    case QUANTITY_NUMBER:
      g_set_error (parse->error, domain, UNITS_ERROR_LARGE, _("“%s” is too large a number. Write less."), parse->typed);
      break;
    }
  return false;
}

static bool
fail_unit (const Parse *parse, size_t length)
{
  const GQuark domain = UNITS_ERROR;
  g_autofree char *unit = g_strndup (parse->at, length);

  switch (parse->quantity->kind)
    {
    case QUANTITY_LENGTH:
      g_set_error (parse->error, domain, UNITS_ERROR_UNIT, _("“%s” is not a unit of length. Write mm, cm, m, in or ft."), unit);
      break;
    case QUANTITY_MASS:
      g_set_error (parse->error, domain, UNITS_ERROR_UNIT, _("“%s” is not a unit of mass. Write g, kg, oz or lb."), unit);
      break;
    case QUANTITY_NUMBER:
      g_set_error (parse->error, domain, UNITS_ERROR_UNIT, _("“%s” does not belong here. Write the number alone."), unit);
      break;
    }
  return false;
}

static bool
fail_ambiguous (const Parse *parse, const Digits *digits)
{
  g_autofree char *small = NULL;
  char large[G_N_ELEMENTS (digits->text)];
  double value = 0;
  char text[NUMBER_ROOM];
  size_t count = 0;

  for (const char *at = digits->text; *at; at++)
    if (*at != '.')
      large[count++] = *at;
  large[count] = '\0';
  number_read (digits->text, strlen (digits->text), &value);
  number_write (value, text);
  small = number_with_sign (text, parse->signs.decimal);
  if (value == 1)
    g_set_error (parse->error, UNITS_ERROR, UNITS_ERROR_AMBIGUOUS, _("%s: is that one or a thousand? Write 1 or 1000."), parse->typed);
  else
    g_set_error (parse->error, UNITS_ERROR, UNITS_ERROR_AMBIGUOUS, _("%s: is that %s or %s? Write it without a sign for thousands."),
                 parse->typed, small, large);
  return false;
}

static long double
whole_of (const char *digits)
{
  long double whole = 0;

  for (; *digits; digits++)
    if (*digits != '.')
      whole = whole * 10 + (*digits - '0');
  return whole;
}

static long double
ten_to (size_t power)
{
  long double value = 1;

  while (power-- > 0)
    value *= 10;
  return value;
}

/* "7/16" at the place; false when it is none. */
static bool
parse_fraction (const char *at, Ratio *ratio, const char **behind)
{
  const size_t above = strspn (at, "0123456789");
  size_t below;
  g_autofree char *up = NULL, *down = NULL;

  if (above == 0 || at[above] != '/')
    return false;
  below = strspn (at + above + 1, "0123456789");
  up = g_strndup (at, above);
  down = g_strndup (at + above + 1, below);
  *ratio = (Ratio) { .up = whole_of (up), .down = whole_of (down) };
  *behind = at + above + 1 + below;
  return below > 0 && above < 10 && below < 10 && ratio->down > 0;
}

/* An exponent behind the digits, as the exact text of a very small number has it. */
static int
parse_exponent (Parse *parse)
{
  const char *at = parse->at;
  char *behind;
  long power;

  if (*at != 'e' || !(g_ascii_isdigit (at[1]) || ((at[1] == '-' || at[1] == '+') && g_ascii_isdigit (at[2]))))
    return 0;
  power = strtol (at + 1, &behind, 10);
  parse->at = behind;
  return (int) CLAMP (power, -400, 400);
}

static bool
parse_decimal (Parse *parse, Ratio *ratio)
{
  const Digits digits = digits_read (parse->at, parse->signs);
  const char *point;
  int exponent;
  char text[G_N_ELEMENTS (digits.text) + 8];

  if (digits.found == DIGITS_AMBIGUOUS)
    return fail_ambiguous (parse, &digits);
  if (digits.found != DIGITS_READ)
    return fail_number (parse);
  parse->at += digits.length;
  exponent = parse_exponent (parse);
  point = strchr (digits.text, '.');
  *ratio = (Ratio) { .up = whole_of (digits.text), .down = ten_to (point ? strlen (point + 1) : 0), .plain = true };
  *(exponent > 0 ? &ratio->up : &ratio->down) *= ten_to (ABS (exponent));
  g_snprintf (text, sizeof text, "%se%d", digits.text, exponent);
  if (!number_read (text, strlen (text), &ratio->value))
    return fail_number (parse);
  return true;
}

/* "36.5", "7/16", "1 7/16" or "1-7/16". */
static bool
parse_ratio (Parse *parse, Ratio *ratio)
{
  const char *behind, *next;
  Ratio part;

  if (parse_fraction (parse->at, ratio, &behind))
    {
      parse->at = behind;
      return true;
    }
  if (!parse_decimal (parse, ratio))
    return false;
  next = parse->at + strspn (parse->at, " -");
  if (next > parse->at && ratio->down == 1 && parse_fraction (next, &part, &behind))
    {
      *ratio = (Ratio) { .up = ratio->up * part.down + part.up, .down = part.down };
      parse->at = behind;
    }
  return true;
}

static double
ratio_in (const Ratio *ratio, const Unit *unit)
{
  const long double exact = 9007199254740992.0L;      /* 2^53: below it whole numbers are exact */
  const long double up = ratio->up * unit->up, down = ratio->down * unit->down;

  if (ratio->plain && unit->up == unit->down)
    return ratio->value;
  if (up < exact && down < exact)
    return (double) up / (double) down;
  return (double) (up / down);
}

/* The unit behind a number, or `usual` when there is none. */
static const Unit *
parse_unit (Parse *parse, const char *usual)
{
  const Unit *unit;
  size_t length;

  parse->at += strspn (parse->at, " ");
  length = strcspn (parse->at, " 0123456789.,-+/");
  if (length == 0)
    return quantity_unit (parse->quantity->kind, usual, strlen (usual));
  unit = quantity_unit (parse->quantity->kind, parse->at, length);
  if (!unit)
    {
      fail_unit (parse, length);
      return NULL;
    }
  parse->at += length;
  if (*parse->at == '.' && g_ascii_isalpha (parse->at[-1]))      /* "in." */
    parse->at++;
  parse->at += strspn (parse->at, " ");
  return unit;
}

/* One number with its unit after the other: "2 ft 3 in". A further one needs a unit, or one that says what follows it. */
static bool
parse_sum (Parse *parse, double *sum)
{
  const char *usual = parse->quantity->usual;
  long double total = 0;      /* so that 2 ft 3 in are 685.8 mm to the last bit */
  Ratio ratio;

  for (bool alone = true; ; alone = false)
    {
      const Unit *unit;

      if (!parse_ratio (parse, &ratio) || !(unit = parse_unit (parse, usual)))
        return false;
      total += ratio.up * unit->up / (ratio.down * unit->down);
      *sum = alone ? ratio_in (&ratio, unit) : (double) total;
      if (!*parse->at)
        return true;
      if (!unit->then || !g_ascii_isdigit (*parse->at))
        return fail_number (parse);
      usual = unit->then;
    }
}

bool
quantity_parse (const Quantity *quantity, NumberSigns signs, const char *typed, double *value, GError **error)
{
  g_autofree char *plain = quantity_plain (typed);
  Parse parse = { .quantity = quantity, .signs = signs, .typed = typed, .at = plain, .error = error };
  const bool negative = *plain == '-';
  double sum;

  if (!*plain)
    return fail_empty (&parse);
  if (*plain == '-' || *plain == '+')
    parse.at += 1 + strspn (plain + 1, " ");
  if (!parse_sum (&parse, &sum))
    return false;
  if (!(sum <= DOCUMENT_REACH))
    return fail_large (&parse);
  *value = negative && sum != 0 ? -sum : sum;
  return true;
}
