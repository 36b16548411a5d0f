#pragma once
#include <stdbool.h>
#include "convergence-wings.h"

/** The panels that the study tries. */
enum { study_steps = 6, study_working = 3, study_grid = 12 };
extern const LatticeOptions study_panels[study_steps];       /* growing; study_working is 20 by 6 */

/** One wing in one company. Errors in percent, of MAC or of the lift slope, aft and more positive. */
typedef struct {
  double limit_percent, limit_slope;    /* the limit: neutral point behind the leading edge of MAC; lift slope per radian */
  double doubt;                         /* the limit told from coarser lattices, 28 by 8 and 56 by 16, differs by this */
  double neutral[study_steps], slope[study_steps];
  double even[study_steps];             /* neutral point with strips of one width */
} StudyRow;

/** Panels along span and chord, varied one by one: greatest errors up to 15° of sweep, and the time. */
typedef struct { LatticeOptions options; double alone, tailed, cost; } StudyCell;

/** All that the study found. Times are in parts of that of 20 by 6. */
typedef struct {
  StudyRow *rows;                       /* study_company_count to a wing */
  double cost[study_steps];
  StudyCell grid[study_grid];
} StudyFindings;

const StudyRow *study_row (const StudyFindings *self, size_t wing, size_t company);

/** The greatest error of a group at a step, in percent of MAC. */
double study_greatest (const StudyFindings *self, StudyGroup group, int step, bool is_even);
