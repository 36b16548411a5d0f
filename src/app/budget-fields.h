#pragma once
#include "app/piece-fields.h"

/** What is wanted all-up, what the airframe takes and what is left for the gear; none without a wing (budget_of). */
FieldList  budget_fields  (TrammelSession *session);
/** The same in words; for piece_control_refresh. */
GtkWidget *budget_control (TrammelSession *session);
