#pragma once
#include "aero/lattice.h"

/** Which surfaces a solve that failed owes it to, as places in its list; -1 for none. */
typedef struct { ptrdiff_t first, second; } SolveFault;

/** Asks the lattice again: the first surface that fails by itself with this status; else the first two that fail together, the one of
 *  less span first. The first of all where none of them has a pressure ratio above 0. Neither where it shows with all of them alone,
 *  or where the memory is at an end.
 *  cost  a solve a surface, then one a pair, of at most a dozen surfaces */
SolveFault solve_fault_find (Lattice *lattice, const LatticeSurface surfaces[], size_t count, CoreStatus status);
