#pragma once
#include "document/aeroplane.h"

/* Aeroplanes of which something cannot be had, each for another reason, and one of which all can. */
typedef struct {
  const char *because;
  Aeroplane *(*made) (void);      /* one reference, the caller's */
} OddAeroplane;

enum { ODD_AEROPLANES = 22 };
extern const OddAeroplane odd_aeroplanes[ODD_AEROPLANES];

/* Those of which more is asked. */
Aeroplane *weightless_lead (void);
Aeroplane *aim_ahead_of_the_nose (void);
Aeroplane *aim_behind_the_tail (void);
Aeroplane *control_without_width (void);
