#include "document/part-class.h"
#include <string.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* For a model of 650 mm span and 200 g. Common practice, no source: an outrunner of 28 mm can, a stiff 7 in propeller (deviation a
 * fifth of its mass), a pack of two cells and 450 mAh, a controller of 12 A, a servo of the 4 to 5 g class. A thing of the builder's
 * own making or choosing (cowl, pilot, wheels) strays more than a bought one; ballast is put on a scale before it is glued in. */
static const PartClass classes[] = {
  { "motor",         N_("Motor"),            24,   18,  28,  28, 0.125, 2 },
  { "propeller",     N_("Propeller"),         6,    9, 178,  18, 0.20,  2 },
  { "spinner",       N_("Spinner"),           4,   30,  30,  30, 0.25,  2 },
  { "controller",    N_("Speed Controller"),  9,   27,  17,   6, 0.167, 3 },
  { "battery",       N_("Battery"),          27,   55,  30,  12, 0.093, 2 },
  { "receiver",      N_("Receiver"),          6,   36,  21,  11, 0.25,  3 },
  { "servo",         N_("Servo"),             4.5, 21,   9,  20, 0.08,  2 },
  { "switch",        N_("Switch"),            1,   10,   5,   5, 0.30,  3 },
  { "wheels",        N_("Wheels"),            5,   40, 140,  40, 0.25,  3 },
  { "undercarriage", N_("Undercarriage"),     8,   40, 140,  70, 0.25,  4 },
  { "cowl",          N_("Cowl"),              5,   50,  60,  60, 0.20,  4 },
  { "canopy",        N_("Canopy"),            3,   80,  40,  30, 0.25,  4 },
  { "pilot",         N_("Pilot"),             4,   25,  20,  30, 0.40,  4 },
  { "pushrod",       N_("Pushrod"),           3,  350,   3,   3, 0.25,  5 },
  { "ballast",       N_("Ballast"),          10,   10,  10,   9, 0.05,  2 },
  { "other",         N_("Other Part"),        5,   20,  20,  20, 0.10,  3 },
  { .word = NULL }
};

const PartClass *
part_classes (void)
{
  return classes;
}

const PartClass *
part_class_find (const char *word)
{
  for (const PartClass *class = classes; word && class->word; class++)
    if (*class->word == *word && strcmp (class->word, word) == 0)      /* asked for every part at every move of one */
      return class;
  return NULL;
}

/* By the first letter first, as above. */
static bool
is_among (const char *word, const char *const among[])
{
  for (; *among; among++)
    if (**among == *word && strcmp (*among, word) == 0)
      return true;
  return false;
}

bool
part_class_keeps_clear (const char *word)
{
  static const char *const others[] = { "propeller", "spinner", "cowl", "canopy", "wheels", "undercarriage", "pushrod", NULL };

  return !word || !is_among (word, others);
}

bool
part_class_is_of_airframe (const char *word)
{
  static const char *const airframe[] = { "cowl", "canopy", "pilot", "wheels", "undercarriage", NULL };

  return word && is_among (word, airframe);
}

Part *
part_class_part (const char *word)
{
  const PartClass *class = part_class_find (word);
  Part *part = class ? part_new (NULL, class->word) : NULL;

  if (!part)
    return NULL;
  part->mass = class->mass;
  part->length = class->length;
  part->width = class->width;
  part->height = class->height;
  return part;
}

double
part_class_mass_sigma (const char *word, double mass)
{
  const PartClass *class = part_class_find (word);

  return mass * (class ? class->mass_sigma_share : 0.10);
}

double
part_class_place_sigma (const char *word)
{
  const PartClass *class = part_class_find (word);

  return class ? class->place_sigma : 3;
}
