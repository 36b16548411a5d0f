#pragma once
#include "aero/section.h"

/** A propeller that turns while the aeroplane is held still. SI units; two blades, 5 to 10 in across. */

/** T / (ρ n² D⁴): 0.11, known to 0.012. No unit.
 *  source  from memory, wind-tunnel data of small propellers: 0.09 to 0.13 at 5 to 9 in, with little regard to pitch */
Spreading thrust_coefficient (void);
/** P / (ρ n³ D⁵), which rises with the pitch: evenly from 0.04 at 0.44 of the diameter to 0.07 at 0.98, known to 0.007. No unit.
 *  ratio   pitch over diameter, > 0; not given (NAN, 0): 0.05, known to 0.009
 *  source  from memory, the same data: 0.04 to 0.07, 0.05 for the usual pitches; that it is even is ours */
Spreading power_coefficient (double ratio);

/** Thrust, N; power into the shaft, W. rev_s turns a second, diameter m, density kg/m³, all > 0.
 *  method  T = C_T ρ n² D⁴, P = C_P ρ n³ D⁵ (the coefficients' definition) */
double thrust_of     (double coefficient, double density, double rev_s, double diameter);
double shaft_power_of (double coefficient, double density, double rev_s, double diameter);      /* power into the shaft, W; turns a second, metres */
/** How fast it turns with that power into its shaft, turns a second: the other way round. */
double thrust_speed_of (double coefficient, double density, double power, double diameter);
