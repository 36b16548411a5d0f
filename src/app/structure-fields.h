#pragma once
#include "app/piece-fields.h"

/** The structure of the selected surface or body; NULL without. Lent, until the next "changed". */
const Structure        *structure_selected         (TrammelSession *session);
/** What it weighs, and how that comes about; lent likewise. */
const StructureFigures *structure_selected_figures (TrammelSession *session);

/** The usual excess, and what its lines come to. */
FieldList structure_sum_fields (void);
