#include "document/quantity.h"
#include <locale.h>
#include <string.h>

NumberSigns
number_signs_of_locale (void)
{
  const struct lconv *locale = localeconv ();

  return (NumberSigns) { locale->decimal_point, locale->thousands_sep };
}

/* An inch is 25.4 mm and a foot twelve; an avoirdupois ounce 28.349523125 g and a pound sixteen (international yard and pound, 1959). */
static const Unit lengths[] = {
  { "mm millimetre millimetres millimeter millimeters", 1, 1, NULL },
  { "cm", 10, 1, NULL },
  { "m", 1000, 1, NULL },
  { "in inch inches \" ''", 254, 10, NULL },
  { "ft foot feet '", 3048, 10, "in" },
  { .names = NULL }
};

static const Unit masses[] = {
  { "g gram grams gr", 1, 1, NULL },
  { "kg", 1000, 1, NULL },
  { "oz ounce ounces", 28349523125.0, 1e9, NULL },
  { "lb lbs pound pounds", 45359237, 1e5, "oz" },
  { .names = NULL }
};

static const Unit numbers[] = {
  { "1 ° % deg", 1, 1, NULL },
  { .names = NULL }
};

const Unit *
quantity_units (QuantityKind kind)
{
  static const Unit *const units[] = { [QUANTITY_LENGTH] = lengths, [QUANTITY_MASS] = masses, [QUANTITY_NUMBER] = numbers };

  return units[kind];
}

/* Whether one of the names parted by blanks is the one of that length. */
static bool
names_have (const char *names, const char *name, size_t length)
{
  for (const char *at = names; *at; at += strspn (at, " "))
    {
      const size_t here = strcspn (at, " ");

      if (here == length && strncmp (at, name, length) == 0)
        return true;
      at += here;
    }
  return false;
}

const Unit *
quantity_unit (QuantityKind kind, const char *name, size_t length)
{
  for (const Unit *unit = quantity_units (kind); unit->names; unit++)
    if (names_have (unit->names, name, length))
      return unit;
  return NULL;
}
