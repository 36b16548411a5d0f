#pragma once
#include "document/aeroplane.h"

/** Aeroplanes as different as those a wall sheet must be laid out for. */
typedef struct {
  const char *what;
  Aeroplane *(*make) (void);      /* one reference, the caller's */
} SheetCase;

/** All of them; `what` NULL ends the list. */
const SheetCase *sheet_cases (void);
Aeroplane *example_racer (void);       /* the examples that come with the program */
Aeroplane *example_tourer (void);
/** The racer's form without anything that a later step brings: what the name says. */
Aeroplane *wing_only (void);
Aeroplane *without_tail (void);
Aeroplane *with_long_names (void);
Aeroplane *of_700_mm (void);           /* with a body and a chord of 129 mm; tail and body are not weighed */
