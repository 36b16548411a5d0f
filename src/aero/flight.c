#include "aero/flight.h"

#include <math.h>

/* ISO 2533:1975, table 1 and clause 2; Sutherland's law, clause 2.12. */
static const double gas             = 287.05287;    /* J/(kg K) */
static const double sea_temperature = 288.15;       /* K */
static const double sea_pressure    = 101325;       /* Pa */
static const double lapse           = 0.0065;       /* K/m of geopotential height */
static const double sutherland      = 1.458e-6;     /* kg/(m s √K) */
static const double sutherland_temperature = 110.4; /* K */

Air
air_at (double height_m)
{
  const double temperature = sea_temperature - lapse * height_m;
  const double pressure = sea_pressure * pow (temperature / sea_temperature, flight_gravity / (gas * lapse));

  return (Air) { .temperature = temperature, .pressure = pressure, .density = pressure / (gas * temperature),
                 .viscosity = sutherland * temperature * sqrt (temperature) / (temperature + sutherland_temperature) };
}

double
flight_stall_speed (double mass, double area, double density, double lift_max)
{
  return sqrt (2 * mass * flight_gravity / (density * area * lift_max));
}

double
flight_reynolds (const Air *air, double speed, double chord)
{
  return air->density * speed * chord / air->viscosity;
}
