#pragma once
#include "geometry/status.h"

/** Solves A x = b for several right-hand sides, by LAPACK's LU with partial pivoting (dgetrf, dgetrs).
 *  a  size × size, column-major, replaced by its factors;  b  size × count, column-major, replaced by x
 *  pivots  size entries lent by the caller;  returns CORE_OK or CORE_SINGULAR (b then untouched, a spoilt)
 *  no unit is presumed: x has b's over A's */
CoreStatus linear_solve (int size, int count, double a[], int pivots[], double b[]);

/** One more set of right-hand sides, replaced by x, with the factors that linear_solve left in a and pivots; units as there (no unit
 *  presumed). CORE_OK. */
CoreStatus linear_solve_again (int size, int count, const double a[], const int pivots[], double b[]);

/** Keeps LAPACK to the calling thread, for the whole process: at these sizes a second thread costs more than it saves. */
void linear_use_one_thread (void);
