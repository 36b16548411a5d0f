#pragma once
#include "document/aeroplane.h"

/** Which named formers and ribs a way leads through: where holes have to be before the body or the wing is covered. Places between which the
 *  way runs straight, seen from above, mm; a former counts within its body, a rib on the side of its wing on which the way meets it. Each
 *  once, in the order met. New arrays of const NamedPlace, lent by the aeroplane. */
GPtrArray *formers_passed (const Aeroplane *aeroplane, const Point way[], size_t count);
GPtrArray *ribs_passed    (const Aeroplane *aeroplane, const Point way[], size_t count);      /* the ribs likewise */
