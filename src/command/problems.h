#pragma once
#include "figures/figures.h"

/** At most so many lines of problems are printed. */
enum { PROBLEMS_AT_MOST = 20 };

/** Reads the document and makes its figures; NULL when it cannot be read, with a line on standard error for each problem. */
Figures *problems_read (const char *path);

/** Prints each problem of the figures as `FILE:LINE: message`, without a line where none is known. Returns how many there are. */
size_t problems_of_figures (const Figures *figures, const char *path);
