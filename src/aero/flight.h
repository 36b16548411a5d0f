#pragma once

/** Level flight at low altitude. SI units throughout. */

/** Air by the International Standard Atmosphere (ISO 2533:1975) at geopotential height 0..11000 m. */
typedef struct { double temperature /* K */, pressure /* Pa */, density /* kg/m³ */, viscosity /* Pa s */; } Air;
/** The air at that height, m; dry, on a standard day. Nothing outside 0..11000 m is refused, nor right. */
Air air_at (double height_m);

/** Standard gravity, m/s², by the same standard. */
static const double flight_gravity = 9.80665;

/** √(2 m g / (ρ S C_Lmax)), m/s. mass kg > 0, area m² > 0, lift_max the whole aeroplane's greatest lift coefficient > 0. */
double flight_stall_speed (double mass, double area, double density, double lift_max);
/** Reynolds number ρ V c / μ, no unit. speed m/s, chord m; the sign is theirs. */
double flight_reynolds (const Air *air, double speed, double chord);
