#pragma once
#include "document/aeroplane.h"

/* Aeroplanes that several tests build. Each function gives one reference away; `self` is taken. Millimetres, grams, degrees. */

/** Adds a surface of this outline, which is taken. */
Aeroplane *with_surface (Aeroplane *self, const char *id, SurfaceRole role, Outline *takes);
/** Adds a part without box or rail, weighed and measured exactly unless deviations are set later. */
Aeroplane *with_part (Aeroplane *self, const char *id, double mass, double x);
/** Adds a battery with a rail. */
Aeroplane *with_battery (Aeroplane *self, double mass, double x, double rail_from, double rail_to);
Aeroplane *with_structure (Aeroplane *self, const char *id, const char *of, double mass);
Aeroplane *with_mark (Aeroplane *self, double station);
/** Adds a piece of any kind; it is taken. */
Aeroplane *with_piece (Aeroplane *self, void *takes);

/** A rectangle: leading edge at x, span tip to tip. */
Outline *rectangle (double x, double span, double chord);

/** An elliptical racer of 640 mm: wing, tailplane, fin, slender body seen from above, structures, a dozen parts, one mark. */
Aeroplane *racer (void);
