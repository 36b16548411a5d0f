#pragma once
#include <stdbool.h>
#include <stddef.h>
#include <string.h>
#include "document/piece.h"

/** What is usual for a class of parts: defaults until a scale says otherwise. Common practice, no source. */
typedef struct {
  const char *word;               /* as in the file: "battery" */
  const char *name;               /* for people, marked for translation */
  double mass;                    /* g */
  double length, width, height;   /* mm, along x, y, z */
  double mass_sigma_share;        /* one standard deviation of a part bought and not weighed, share of its mass */
  double place_sigma;             /* mm */
} PartClass;

/** Whether a part is of the class of that word. By the first letter first: every move of one part asks it of all. */
static inline bool
part_is_a (const Part *part, const char *word)
{
  return part->class_name && *part->class_name == *word && strcmp (part->class_name, word) == 0;
}

/** All classes, in the order in which they are offered; word NULL ends the list. */
const PartClass *part_classes (void);
/** The class of that word; NULL when unknown (word may be NULL). */
const PartClass *part_class_find (const char *word);
/** Whether things of that class keep to a place of their own within the body; the others lie round, over or outside of them (propeller,
 *  spinner, cowl, canopy, wheels, undercarriage, pushrod). The word may be NULL or unknown: true. */
bool part_class_keeps_clear (const char *word);
/** Whether things of that class are on the bare airframe before any gear goes in: cowl, canopy, pilot, wheels, undercarriage. NULL or unknown:
 *  false. */
bool part_class_is_of_airframe (const char *word);
/** A part as is usual for the class of that word, at the datum, without id or name, its deviation left to the class; NULL when unknown. */
Part *part_class_part (const char *word);
/** One standard deviation, in grams, of a part of that mass, also in grams, for which none is stated: by its class; without class 10 %. */
double part_class_mass_sigma  (const char *word, double mass);
/** One standard deviation of its centre's place along each axis, mm: by its class; without class 3 mm. */
double part_class_place_sigma (const char *word);
