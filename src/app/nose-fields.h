#pragma once
#include "app/piece-fields.h"

/** Of a selected motor in a cowl: propeller's plane, gap and firewall; none where nose_figures_of says nothing. */
FieldList  part_nose_fields  (TrammelSession *session);
/** Whether the selected part is a motor aboard, of which the group tells that, or what is lacking. */
bool       part_has_nose     (TrammelSession *session);
/** What is to be done about it in a sentence, and the button that does it in one step; for piece_control_refresh. */
GtkWidget *part_nose_control (TrammelSession *session);
