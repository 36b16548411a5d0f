#pragma once
#include <stddef.h>
#include "aero/lattice.h"

/** A station where a leading or trailing edge or the dihedral breaks, and by how much (the change of slope). */
typedef struct { double station, strength; } SpacingKink;

/** What strips have to respect. Every end of a surface is an edge of the strips of all surfaces, and strips are narrow on
 *  both sides of it: where trailing vortices of one surface met strips of another with edges of their own, the answer
 *  would not settle. Kinks become edges as far as there are strips enough, the strongest first. */
typedef struct {
  const double *ends;           /* rising; ends[0] is 0 for the centre line, else the innermost root */
  const int *strips;            /* how many between ends[i] and ends[i + 1], >= 1 */
  size_t end_count;
  SpacingKink *kinks;           /* reordered, the strongest first */
  size_t kink_count;
  LatticeSpacing kind;
} Spacing;

/** The strips that one surface wishes for, over the pieces from ends[first] to ends[last]. */
typedef struct { size_t first, last; int strips; } SpacingWish;

/** How many strips each piece between ends gets. The first surface gets what it wishes (never less than one a piece),
 *  shared out half-way between such counts as make strips on the two sides of an end equally wide and those that the
 *  others wish; where it has no share, strips are as fine.
 *  ends, end_count, kind  as in Spacing, any one unit of length (mm or m: only ratios count)
 *  wishes  one a surface;  strips  end_count - 1 entries, set */
void spacing_share_out (const double ends[], size_t end_count, LatticeSpacing kind, const SpacingWish wishes[], size_t count,
                        int strips[]);

/** Fills the strips' edges (one more than strips) and the stations of their control points, in the unit of the ends (mm or m).
 *  pinned  lent, as many entries as edges */
void spacing_fill (const Spacing *self, double pinned[], double edges[], double controls[]);
