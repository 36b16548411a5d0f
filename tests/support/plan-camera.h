#pragma once
#include "support/plan-sheet.h"

/* mm: of every sheet drawn. */
#define SHEET_WIDTH 196.0
#define SHEET_HEIGHT 100.0

/** From the sheet's mm to px: first the homography, then the lens. Of its own, so that the product's mapping is not both judge and
 *  judged. Private to the sheet's own files. */
typedef struct { double h[8]; Point centre; double radius, k1; } PlanCamera;

/** Turns, stretches and tilts the sheet, and moves it into a picture, so large, that holds all of it. */
PlanCamera plan_camera_for (const SheetRecipe *recipe, int *width, int *height);
Point  plan_camera_px      (const PlanCamera *self, Point mm);
/** px per mm in the sheet's middle. */
double plan_camera_scale   (const PlanCamera *self);
