#pragma once
#include <stdbool.h>
#include <stdint.h>
#include "plan/axis-frame.h"
#include "plan/raster.h"
#include "support/plan-shapes.h"
#include "support/random.h"

/** What is printed besides the outline, and what has become of the paper. */
typedef enum {
  SHEET_INNER_LINE = 1 << 0,       /* as dark as the outline, 3 mm inside */
  SHEET_RIBS       = 1 << 1,
  SHEET_LETTERING  = 1 << 2,       /* in place of the outline, 9 mm twice */
  SHEET_DASHED     = 1 << 3,       /* the outline, where the body hides it */
  SHEET_BROKEN     = 1 << 4,
  SHEET_FAINT      = 1 << 5,       /* over a quarter of the outline */
  SHEET_FOLDS      = 1 << 6,
  SHEET_STAINS     = 1 << 7,
  SHEET_SHADE      = 1 << 8,
  SHEET_VIGNETTE   = 1 << 9,
  SHEET_NOISE      = 1 << 10,
  SHEET_JPEG       = 1 << 11,
  SHEET_NO_FRAME   = 1 << 12       /* the paper ends where the frame would be, with a shadow along it */
} SheetMarks;

typedef struct {
  const char *because;
  PlanShape shape;
  uint64_t seed;
  double dpi, skew_degrees, stretch_x;     /* stretch: x over y, less one */
  double tilt;                             /* of a photograph: how much smaller the far side is, 0 to 0.5; 0: a scan */
  double k1;                               /* the lens, as in a mapping */
  double line_mm;                          /* width of the outline */
  unsigned marks;
  bool other_side;                         /* the left half is drawn */
  unsigned char ink[3], paper[3];          /* red, green, blue */
} SheetRecipe;

enum { SHEET_MOST_CLICKS = 40 };

/** A sheet as drawn, and the truth of it. */
typedef struct {
  Outline *outline;                        /* mm, own axes */
  Raster *raster;                          /* 1 channel where ink and paper are grey, else 3 */
  Point corners[4];                        /* px: of the frame */
  double width_mm, height_mm;              /* the frame's */
  Point sides[4][7];                       /* px: places on the frame's sides, without the corners */
  ViewAxis axis;                           /* px: from the root's leading to its trailing edge */
  Point clicks[SHEET_MOST_CLICKS];         /* px: as a hand places them along the outline, 3 px off at most each way */
  size_t click_count;
  double px_per_mm;                        /* about */
} PlanSheet;

/** Draws it; sheet_clear gives it back. */
PlanSheet plan_sheet_draw  (const SheetRecipe *recipe);
void      plan_sheet_clear (PlanSheet *self);

/** The wear of the pixels, in place. grey: one channel of three is as good as all. Private to the sheet's own files. */
void plan_sheet_wear (const SheetRecipe *recipe, double px_per_mm, int width, int height, unsigned char *rgb, Random *random);
