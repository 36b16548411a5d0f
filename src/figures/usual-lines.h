#pragma once
#include "document/aeroplane.h"

/** The aeroplane with the usual lines laid down for the structure of that surface or body, in the place of what it had; a typed mass
 *  stays. A wing is an open frame covered with light film (a plate's section: a sheet), a tailplane, foreplane or fin a sheet, a body
 *  formers, keels and stringers with a sheeted nose. By the traced outlines, named ribs and formers; sizes of sticks and sheets as usual
 *  for the span. NULL when there is no such surface or body, or its outline encloses nothing.
 *  source  common practice, no source */
Aeroplane *usual_lines_laid (const Aeroplane *aeroplane, const char *of);
