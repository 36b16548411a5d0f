#pragma once
#include "plan/ink.h"

enum { STRAIGHT_RUN_PLACES = 9 };

/** A printed line that is straight, or was before a lens bent it. */
typedef struct {
  Point from, to;                             /* px of the file: the straight line that fits it best, beside the two places asked for */
  Point places[STRAIGHT_RUN_PLACES];          /* px of the file: evenly along it, on it */
  double bend;                                /* px of the file: how far its middle lies off the line between its ends */
} StraightRun;

/** Finds the printed line that runs straight, or nearly, by two places.
 *  a, b      px of the file, apart; each within a few of its line
 *  px_per_mm about; how far a line may stray and how long letters are follow it
 *  returns   false where no one line runs from one to the other: none is there, it wanders, it ends on the way
 *  method    follow_line, then a parabola across the chord by least squares; refused where the places keep off it */
bool straight_run (const Ink *ink, Point a, Point b, double px_per_mm, StraightRun *run);
