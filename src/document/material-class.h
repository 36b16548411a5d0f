#pragma once
#include <stdbool.h>
#include <stddef.h>

/** What structures are made of: grades of wood, sheets, coverings, with what is usual until somebody puts a sheet on a scale. */
typedef struct {
  const char *word;           /* as in the file: "balsa-medium" */
  const char *name;           /* for people, marked for translation */
  double density;             /* kg/m³; NAN: goes by area_density */
  double area_density;        /* finished, g/m² of surface; NAN: goes by density */
  double spread;              /* one standard deviation of one sheet or one covering, share */
  bool covers;                /* it is what a wing, tail or body is covered with, one in the place of the other */
  const char *source;         /* where density or mass is from; NULL: common practice, no source */
} MaterialClass;

/** All, in the order in which they are offered: woods from light to heavy, other solids, coverings; word NULL ends the list. */
const MaterialClass *material_classes (void);
/** The one of that word; NULL when unknown (word may be NULL). */
const MaterialClass *material_class_find (const char *word);
