#pragma once
#include "document/brought-lines.h"

/* Private to the document room. */

/** A B-spline as drawing files have it. */
typedef struct {
  int degree;
  const Point *poles;      size_t pole_count;
  const double *knots;     size_t knot_count;    /* pole_count + degree + 1, never falling */
  const double *weights;                         /* as many as poles; NULL: all the same */
} Spline;

/** Draws it as cubic curves: exactly for degrees up to 3 whose weights are all the same, else with the same places and slopes, within a
 *  hundred-thousandth of its length. false where its numbers do not make a spline.
 *  source  de Boor, A Practical Guide to Splines, 1978: his algorithm for a place, Boehm's insertion of knots for the curves */
bool spline_draw (const Spline *self, const char *name, BroughtLines *lines);
