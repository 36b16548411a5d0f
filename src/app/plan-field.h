#pragma once
#include "app/sheet-canvas.h"
#include "document/plan-marks.h"

/** What the field over a mark of the plan is for. */
typedef enum { PLAN_FIELD_NEW_LENGTH, PLAN_FIELD_LENGTH, PLAN_FIELD_WIDTH, PLAN_FIELD_HEIGHT, PLAN_FIELD_STANDS } PlanFieldKind;
typedef struct {
  PlanFieldKind kind;
  size_t index;         /* of the length, the view */
  Point a, b;           /* of a new length, px of the file */
  double sigmas[2];     /* and how far off each was clicked */
} PlanField;

/** Opens the field over `screen`, px of the sheet. What is typed is one step. After a rectangle's width its height is asked. */
void plan_field_open (TrammelSheetCanvas *sheet, PlanField field, Point screen);
