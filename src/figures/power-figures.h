#pragma once
#include "aero/section.h"
#include "document/aeroplane.h"
#include "document/units.h"
#include "figures/json-text.h"

/** What drives the aeroplane: at full throttle, held still, at sea level on a standard day; and what that makes of it in the air. Several
 *  motors are taken together. Every sigma is one standard deviation. */

typedef enum { POWER_MEASURED, POWER_BY_VOLTS, POWER_USUAL } PowerBy;     /* by a meter; by rpm per volt and cells; by the motor's class */

/** Why there are no figures, or none of the pitch speed. */
typedef enum { POWER_COMPLETE, POWER_NO_MOTOR, POWER_NO_PROPELLER, POWER_NO_PITCH, POWER_NO_SPEED } PowerLack;

typedef struct {
  const Part *motor, *propeller;            /* the first pair, lent; NULL without */
  const Part *battery, *controller;         /* the heaviest aboard; the first. Lent; NULL without */
  double controller_a;                      /* what the controllers bear together; 0 not known */
  const Part *overloaded;                   /* the first motor that would take more than it bears, lent; NULL none; and what it would take */
  double overload_w;
  PowerLack lack;
  PowerBy by;                               /* of the first pair, as are the revolutions and the pitch speed */
  double rpm, rpm_sigma;
  double pitch_speed_m_s, pitch_speed_sigma_m_s;    /* pitch × revolutions */
  double input_w, input_sigma_w;            /* out of the battery, by all motors */
  double thrust_g, thrust_sigma_g;          /* standing, all propellers */
  double current_a, current_sigma_a;        /* out of the battery at 3.6 V a cell; NAN without its cells */
  double minutes, minutes_sigma;            /* on four fifths of the capacity at half of that current; NAN without */
  double input_w_kg, thrust_ratio, pitch_ratio;     /* by all-up mass; by weight; by stalling speed. NAN without those */
  double clearance_mm, clearance_least_mm;  /* under the first propeller, the aeroplane level on its wheels; what is usual; NAN without wheels
                                               that stand lower than the propeller's middle */
} PowerFigures;

/** What the method below takes for usual. */
typedef struct {
  Spreading efficiency;         /* of motor and controller together */
  Spreading loaded;             /* revolutions under load, of those at 3.6 V a cell without */
  Spreading meter, class_share; /* watts, of those of a meter; of the greatest that a motor bears */
  Spreading current_used;       /* in a flight, in the mean, of the greatest current */
  double cell_volts, capacity_used;     /* V; share of the capacity */
} PowerPractice;
extern const PowerPractice power_practice;

/** Parts aboard alone count. Figures that cannot be had are NAN; `lack` says why.
 *  all_up_g  the aeroplane's mass; NAN not known.  stall_m_s  its stalling speed; NAN not known
 *  method    measured: the shaft takes 0.74 ± 0.04 of the meter's watts (± 3 %), and the propeller turns as fast as that drives it;
 *            by volts: 0.75 ± 0.03 of rpm per volt × 3.6 V × cells, and it takes what it takes at that;
 *            usual: 0.8 ± 0.15 of the greatest input of the motor's class. Coefficients: aero/thrust.h
 *  source    common practice, no source, but for the coefficients */
PowerFigures power_figures_of (const Aeroplane *aeroplane, double all_up_g, double stall_m_s);

/** Adds to notes what the pitch speed needs, what is overloaded, and what is out of the usual bands. */
void power_note (const PowerFigures *power, GPtrArray *notes);

/** "The motor takes 120 W/kg, as sport models do; it pulls with 0.7 of the weight." A new string; NULL without a thrust. */
char *power_text (const PowerFigures *power, Units units);

/** Adds `power`, an object, where there is a thrust. */
void power_write (JsonText *json, const PowerFigures *power);
