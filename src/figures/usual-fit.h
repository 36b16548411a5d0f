#pragma once
#include "document/aeroplane.h"
#include "document/catalogue.h"

/** The usual fit: from one choice of what is to be controlled every part that such a model carries, each in its usual place with its usual
 *  mass, size and leads. Pure functions. Common practice, no source. */

typedef enum {
  FIT_MOTOR, FIT_MOTOR_RUDDER_ELEVATOR, FIT_MOTOR_ELEVATOR_AILERONS, FIT_MOTOR_ELEVATOR_AILERONS_TWO, FIT_MOTOR_ALL,
  FIT_GLIDER_RUDDER_ELEVATOR, FIT_GLIDER_ELEVATOR_AILERONS, FIT_GLIDER_ALL, USUAL_FIT_COUNT
} UsualFit;

/** Whether the choice asks for a rudder where no fin is drawn to put it on: its servo is left out. */
bool usual_fit_lacks_fin (const Aeroplane *aeroplane, UsualFit choice);

/** For people, translated: "Motor, rudder and elevator". */
const char *usual_fit_name (UsualFit choice);

/** The aeroplane with what the choice asks for, of the catalogue's classes for its all-up mass (usual_all_up). What is there already stays and
 *  is counted, unless `replace`: then all parts and their leads go first. What the catalogue lacks, or there is no surface for (a rudder
 *  without a fin), is left out. With a body everything but propeller, wing servos and linkages stands within it, clear of its walls, as far
 *  as there is room; the battery gets a rail over what is free about it.
 *  returns  one reference, the caller's; the same aeroplane where there is nothing to add, or no wing */
Aeroplane *usual_fit (const Aeroplane *aeroplane, const Catalogue *catalogue, UsualFit choice, bool replace);

/** What such a model weighs all-up, g: twice its structures, where they are known; else its wings' area by a usual loading for its span.
 *  NAN without a wing that encloses something.
 *  method  airframe 48 % of all-up; 18.5 g/dm² at 500 mm of span, 0.032 g/dm² more for each mm */
double usual_all_up (const Aeroplane *aeroplane);

/** The wing loading that is usual for a span, mm: g/dm². Common practice, no source. */
double usual_loading (double span_mm);

/** Mass of all structures, as typed or by their lines, in grams, >= 0. */
double structures_mass (const Aeroplane *aeroplane);

/** Mass of all parts aboard, in grams, >= 0. */
double parts_mass (const Aeroplane *aeroplane);

/** From the all-up mass, `total` grams, down: the structures that make up for what the parts do not weigh, shared out as usual (wings 37 %, body
 *  47 %, tail and fins 9 %, finish 7 %; what is not drawn leaves its share to the rest), each with a deviation of a quarter. Only where no
 *  structure has a mass yet. NULL where one has, where `total` is no more than the parts weigh, or nothing is drawn. */
Aeroplane *usual_structures (const Aeroplane *aeroplane, double total);
