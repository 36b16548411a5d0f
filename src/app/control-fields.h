#pragma once
#include "app/piece-fields.h"

/** The rows about the control that is selected: where it runs, how deep it is, how it turns. */

/** Lent, until the next "changed"; NULL: none is selected. */
const Control *control_selected (TrammelSession *session);
/** Its place among the figures' controls; their count when there is none. */
size_t         control_place    (TrammelSession *session);
/** Stations, chords and area; a fin's stations are heights. */
FieldList control_shape_fields (TrammelSession *session);
/** How far it turns each way, and what comes of it; a rudder turns to port and starboard. */
FieldList control_throw_fields (TrammelSession *session);
/** The roll rate, where the figures have one. */
FieldList control_roll_fields  (TrammelSession *session);
/** The aeroplane with `next` in the place of the selected control; NULL where that is refused. */
Aeroplane *control_changed (TrammelSession *session, const Control *next);
