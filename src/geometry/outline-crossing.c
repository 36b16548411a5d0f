#include "geometry/outline-private.h"

bool
outline_find_crossing (const Outline *self, OutlineFault *fault)
{
  (void) self; (void) fault;
  return false;
}
