#pragma once
#include "plan/corridor.h"

/* Private to the plan room. */

/** A place where the path should pass: a click. */
typedef struct {
  size_t column;
  double row, sigma;          /* rows; how far off a hand clicks */
  double rows_per_mm;         /* of an end of the line, which is not elsewhere; INFINITY on its way */
} LeastPathPull;

typedef struct {
  int stride;                 /* columns from node to node: a stretch over which strength is averaged (letters are short) */
  int steepest;               /* rows up or down from node to node, 63 at most */
  double turning;             /* what a change of slope by a row a node costs; a node's stretch without any line costs 1 */
  const LeastPathPull *pulls;
  size_t pull_count;
} LeastPathOptions;

/** The path along a corridor that costs least: 1 for each node's stretch without a line, less the more line there is, and `turning` for
 *  every change of direction on the paper, whether it comes at once or bit by bit, the spine's own bends counted: cutting a corner costs
 *  what rounding it costs, and the line decides. So a gap is bridged straight, a crossing line is left alone, and a
 *  parallel line does not pay; a corner does.
 *  strength   columns × rows, 1 being a line as usual; more counts as 1
 *  rows       columns values, set on success: where the path is, in broken rows
 *  returns    CORE_OK, CORE_NO_MEMORY
 *  method     dynamic programming over row and slope of arrival
 *  source     Dijkstra, Numerische Mathematik 1, 1959; Mortensen and Barrett, Intelligent Scissors for Image Composition, SIGGRAPH 1995
 *             (titles from memory)
 *  units      strength has no unit; a row is the corridor's pitch, in pixels */
CoreStatus least_path (const Corridor *corridor, const float *strength, const LeastPathOptions *options, double *rows);
