#pragma once
#include "plan/axis-frame.h"
#include "plan/ink.h"
#include "plan/mapping.h"

enum { SIDE_PLACES = 25 };

/** A rectangle as it is printed: a frame's sides are straight on the paper, whatever a lens makes of them, and its corners are where
 *  they meet. */
typedef struct {
  KnownRectangle rectangle;                  /* as clicked, but corners between two printed sides lie where these meet */
  StraightLine lines[4];                     /* of the sides that are printed; they point into `places` */
  size_t line_count;
  Point places[4][SIDE_PLACES];              /* px */
} PrintedSides;

/** Looks for the lines printed along a rectangle's sides. Where there is none, as along the paper's own edge, a side says nothing and its
 *  corners stay where they were clicked.
 *  clicked  px of the file, millimetres
 *  made     set on success; not to be moved, since its lines point into it
 *  returns  CORE_OK; CORE_SINGULAR where two corners are one place; CORE_NO_MEMORY, CORE_CANCELLED
 *  method   each side followed from corner to corner as any line is; the median of each of 25 stretches; a cubic through them, which
 *           must pass most of them closely; corners where two such curves meet
 *  cost     as follow_line, over the rectangle's circumference */
CoreStatus printed_sides_find (const Ink *ink, const KnownRectangle *clicked, InkGoesOn goes_on, void *data, PrintedSides *made);

/** mapping_solve(), with what is printed along the known rectangle's sides, if there is one: they tell the lens, and where its corners
 *  are to a tenth of a pixel. Where sides and rectangle do not agree (a side was mistaken for another line), what was clicked counts.
 *  knowns   without straight lines of its own where it has a rectangle: such are taken in place of the sides
 *  returns  as mapping_solve; CORE_CANCELLED */
CoreStatus mapping_solve_printed (const Ink *ink, const Knowns *knowns, InkGoesOn goes_on, void *data, Mapping *mapping,
                                  MappingMisfit *misfit);

/** A view's axis as a hand clicked it. */
typedef struct {
  ViewAxis axis;             /* px of the file */
  double sigma;              /* px of the file: how far off a click is, one standard deviation; 1 is a careful hand at full size */
  double px_per_mm;          /* of the file, about */
} AxisClicks;

/** The line that is printed along a view's axis, where there is one within what a hand misses (two deviations and a quarter at either
 *  end): a tail's root chord is short, and a click beside its end turns the whole outline.
 *  axis     set where there is one
 *  returns  whether there is; false also where it cannot be looked for */
bool printed_axis (const Ink *ink, const AxisClicks *clicked, InkGoesOn goes_on, void *data, ViewAxis *axis);
