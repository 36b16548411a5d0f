#include "balance/arrange-guard.h"

#include <glpk.h>
#include <setjmp.h>

static void
leave (void *info)
{
  jmp_buf *back = info;

  longjmp (*back, 1);
}

CoreStatus
guarded (CoreStatus (*work) (void *data), void *data)
{
  jmp_buf back;
  CoreStatus status;

  glp_term_out (GLP_OFF);
  if (setjmp (back))
    {
      glp_free_env ();
      return CORE_NO_MEMORY;
    }
  glp_error_hook (leave, &back);
  status = work (data);
  glp_free_env ();
  return status;
}
