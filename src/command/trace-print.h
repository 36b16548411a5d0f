#pragma once
#include <glib.h>
#include "command/trace-words.h"
#include "geometry/planform.h"
#include "plan/trace.h"

/** A traced outline, and all that is known of how it came about. Everything is lent. */
typedef struct {
  const TraceWords *words;
  const Trace *trace;
  const MappingMisfit *misfit;
  double mm_per_px_x, mm_per_px_y;    /* at the rectangle's middle, else the picture's */
  int reduced;
  double passed;                      /* mm: by how much a place named is passed at most, as trace_astray */
} Traced;

/** As text for people; a new string. */
char *trace_text (const Traced *traced);
/** As JSON for programs; a new string. */
char *trace_json (const Traced *traced);
