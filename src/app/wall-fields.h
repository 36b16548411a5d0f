#pragma once
#include "app/piece-fields.h"

/** How thick skin and formers are of the selected body, or of the body that the selected bay is in: what they take from the room in bays. */
FieldList wall_fields (void);
