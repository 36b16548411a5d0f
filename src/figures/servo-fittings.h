#pragma once
#include "document/aeroplane.h"

/** What a servo moves its control by, and what would serve nothing without it: pushrods and torque rods that begin at it, horns and clevises at
 *  their ends or beside a servo in the same wing, and an extension on its lead. Nothing in the document says so; the nearest servo has them:
 *  a rod's end within 40 mm of it, a horn within 15 mm of a rod's end, an extension within 20 mm of the middle of the lead. What stands as
 *  near to another servo stays. Common practice, no source.
 *  returns  a new array of const Part, lent by the aeroplane; empty for what is no servo */
GPtrArray *servo_fittings (const Aeroplane *aeroplane, const Part *servo);
