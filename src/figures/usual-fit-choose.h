#pragma once
#include "document/aeroplane.h"
#include "document/catalogue.h"

/** Which entry of the catalogue is usual. Private to this room; entries are lent by it, NULL where it has none. */

/** Of that class the one whose models weigh what this one does: whose middle of the masses it fits is nearest by ratio. all_up in g. */
const CatalogueEntry *fit_entry_for      (const Catalogue *catalogue, const char *class_name, double all_up);
/** A stiff propeller as the motor usually turns. */
const CatalogueEntry *fit_propeller_of   (const Catalogue *catalogue, const Part *motor);
/** The smallest controller for that motor's power at that pack's voltage, 3.7 V a cell. The motor may be NULL. */
const CatalogueEntry *fit_controller_of  (const Catalogue *catalogue, const Part *motor, const CatalogueEntry *battery);
/** A pack for receiver and servos alone. all_up in grams; lent, NULL without one. */
const CatalogueEntry *fit_glider_pack    (const Catalogue *catalogue, double all_up);

/** The surface that the elevator is on: the first tailplane, else the first foreplane; NULL for neither. */
const Surface *fit_elevator_surface (const Aeroplane *aeroplane);
/** The first fin, or NULL. */
const Surface *fit_rudder_surface   (const Aeroplane *aeroplane);
