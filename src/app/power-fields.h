#pragma once
#include "app/piece-fields.h"

/** What the selected part's class goes by: a motor's revolutions and watts, a propeller's pitch, a pack's cells, a controller's amperes. None
 *  of another part. */
FieldList  part_power_fields (TrammelSession *session);
/** What drives the aeroplane, and below it in words; none without a thrust. */
FieldList  power_fields      (TrammelSession *session);
GtkWidget *power_control     (TrammelSession *session);      /* in words */
