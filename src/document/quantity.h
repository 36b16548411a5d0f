#pragma once
#include <glib.h>
#include <stdbool.h>

/** Reads what a person typed into a field: numbers, fractions, units. The locale comes in as an argument, so that each is tested
 *  without being installed. Private to this room; the world uses units.h. */

/** How a locale writes numbers: "." and ",", or the other way round; thousands "" where it does not group. */
typedef struct { const char *decimal, *thousands; } NumberSigns;
/** Those of the locale in force (LC_NUMERIC); lent, until the locale changes. */
NumberSigns number_signs_of_locale (void);

/** A unit: one of it is up / down of the document's unit, both whole, so that a typed decimal stays exact. */
typedef struct {
  const char *names;        /* parted by blanks, lower case */
  double up, down;
  const char *then;         /* the unit of a bare number behind it: inches behind feet; NULL none */
} Unit;

typedef enum { QUANTITY_LENGTH, QUANTITY_MASS, QUANTITY_NUMBER } QuantityKind;
typedef struct {
  QuantityKind kind;
  const char *usual;        /* name of the unit of a bare number */
} Quantity;

/** The units of a kind; an entry without names ends them. */
const Unit *quantity_units (QuantityKind kind);
/** The unit of that name; NULL when there is none. */
const Unit *quantity_unit  (QuantityKind kind, const char *name, size_t length);

/** Reads the whole of `text`.
 *      "12.5"  "12,5"  "12.5 mm"  "3 1/16 in"  "3-1/16"  "½"  "2 ft 3 in"  "−4"  "1 234.5"
 *  A single point or comma with three digits behind it and one to three before, the first not 0, might part thousands. It is
 *  taken as a decimal sign only where the locale says so and the digits are not 000; else the person is asked.
 *  value   in the document's unit (mm, g; a pure number as it is), rounded once; untouched on error
 *  error   UNITS_ERROR with a sentence for people */
bool quantity_parse (const Quantity *quantity, NumberSigns signs, const char *text, double *value, GError **error);

/** What was found at the beginning of a text, as the C locale writes it. */
typedef enum { DIGITS_NONE, DIGITS_READ, DIGITS_WRONG, DIGITS_AMBIGUOUS } DigitsFound;
typedef struct {
  DigitsFound found;
  size_t length;            /* of what was looked at */
  char text[64];            /* DIGITS_READ: "1234.5"; DIGITS_AMBIGUOUS: the smaller meaning, "1.234" */
} Digits;
/** Reads the digits, points, commas and blanks at the beginning of a text in plain form (see quantity_plain); no sign, no fraction. */
Digits digits_read (const char *plain, NumberSigns signs);

/** The same text in plain form: digits of any script as ASCII, true minus, signs for feet and inches, built-up fractions and the
 *  many blanks likewise, lower case, no blanks around it. A new string. */
char *quantity_plain (const char *typed);
