#pragma once
#include "geometry/status.h"

/** Runs work that uses GLPK: in silence, with all of the calling thread's GLPK memory freed at the end, and an error of GLPK's own (it
 *  would end the program, for want of memory) given as CORE_NO_MEMORY. Private to the arrangement. */
CoreStatus guarded (CoreStatus (*work) (void *data), void *data);
