#include "figures/power-figures.h"

#include <math.h>
#include "aero/flight.h"
#include "aero/thrust.h"
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/nose-figures.h"

/* Common practice, no source. */
const PowerPractice power_practice = {
  .efficiency = { 0.74, 0.04 }, .loaded = { 0.75, 0.03 }, .meter = { 1, 0.03 }, .class_share = { 0.8, 0.15 }, .cell_volts = 3.6,
  /* Nobody empties a lithium pack, nor flies at full throttle throughout. */
  .capacity_used = 0.8, .current_used = { 0.5, 0.1 } };
/* With the tail up, on mown grass: a tenth of the diameter, and never less than that, mm. */
static const double CLEARANCE_SHARE = 0.1, CLEARANCE_LEAST = 15;

/* One motor and its propeller; shares of itself are standard deviations. */
typedef struct { PowerBy by; double rev_s, rev_share, input, input_share, thrust, thrust_share; } Pair;

static double
share (Spreading spreading)
{
  return spreading.sigma / spreading.value;
}

static const Part *
heaviest (const Aeroplane *aeroplane, const char *class_name)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);
  const Part *best = NULL;

  for (size_t i = 0; i < count; i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);
      if (part->aboard && part_is_a (part, class_name) && (!best || part->mass > best->mass))
        best = part;
    }
  return best;
}

/* Power into the motor is known; the propeller turns as fast as the shaft's share of it drives it. */
static void
turn_by_input (Pair *pair, double watts, Spreading known, Spreading coefficient, double diameter)
{
  const double density = air_at (0).density;

  pair->input = watts * known.value;
  pair->input_share = share (known);
  pair->rev_s = thrust_speed_of (coefficient.value, density, power_practice.efficiency.value * pair->input, diameter);
  pair->rev_share = hypot (hypot (pair->input_share, share (power_practice.efficiency)), share (coefficient)) / 3;
}

/* The other way round: the revolutions are known, and power goes with their cube. */
static void
turn_by_volts (Pair *pair, double rpm_per_volt, double cells, Spreading coefficient, double diameter)
{
  pair->rev_s = power_practice.loaded.value * rpm_per_volt * power_practice.cell_volts * cells / 60;
  pair->rev_share = share (power_practice.loaded);
  pair->input = shaft_power_of (coefficient.value, air_at (0).density, pair->rev_s, diameter) / power_practice.efficiency.value;
  pair->input_share = hypot (hypot (3 * pair->rev_share, share (coefficient)), share (power_practice.efficiency));
}

/* False when nothing tells how fast it turns. */
static bool
pair_of (const Part *motor, const Part *propeller, double cells, Pair *pair)
{
  const double diameter = propeller->width * 1e-3;
  const Spreading power = power_coefficient (propeller->pitch / propeller->width), thrust = thrust_coefficient ();
  const bool measured = motor->input > 0;

  *pair = (Pair) { .by = measured ? POWER_MEASURED : motor->rpm_per_volt > 0 && cells > 0 ? POWER_BY_VOLTS : POWER_USUAL };
  if (pair->by == POWER_BY_VOLTS)
    turn_by_volts (pair, motor->rpm_per_volt, cells, power, diameter);
  else
    turn_by_input (pair, measured ? motor->input : motor->power, measured ? power_practice.meter : power_practice.class_share, power,
                   diameter);
  pair->thrust = thrust_of (thrust.value, air_at (0).density, pair->rev_s, diameter);
  pair->thrust_share = hypot (share (thrust), 2 * pair->rev_share);
  return pair->rev_s > 0 && isfinite (pair->rev_s);
}

/* What is wrong with all propellers alike is wrong with all of them the same way. */
static void
add_pair (PowerFigures *self, const Pair *pair)
{
  const double grams = 1e3 * pair->thrust / flight_gravity;

  self->input_w += pair->input;
  self->input_sigma_w += pair->input * pair->input_share;
  self->thrust_g += grams;
  self->thrust_sigma_g += grams * pair->thrust_share;
}

static void
begin_with_pair (PowerFigures *self, const Part *motor, const Part *propeller, const Pair *pair)
{
  self->motor = motor;
  self->propeller = propeller;
  self->by = pair->by;
  self->rpm = 60 * pair->rev_s;
  self->rpm_sigma = self->rpm * pair->rev_share;
  self->input_w = self->input_sigma_w = self->thrust_g = self->thrust_sigma_g = 0;
  self->lack = propeller->pitch > 0 ? POWER_COMPLETE : POWER_NO_PITCH;
  if (self->lack == POWER_NO_PITCH)
    return;
  self->pitch_speed_m_s = propeller->pitch * 1e-3 * pair->rev_s;
  self->pitch_speed_sigma_m_s = self->pitch_speed_m_s * pair->rev_share;
}

static void
add_motor (PowerFigures *self, const Aeroplane *aeroplane, const Part *motor)
{
  const Part *propeller = nose_propeller_of (aeroplane, motor);
  const bool turns = propeller && propeller->width > 0;
  Pair pair;

  if (!self->motor || (!self->propeller && turns))
    {
      self->motor = motor;
      self->propeller = turns ? propeller : NULL;
      self->lack = turns ? POWER_NO_SPEED : POWER_NO_PROPELLER;
    }
  if (!turns || !pair_of (motor, propeller, self->battery ? self->battery->cells : 0, &pair))
    return;
  if (isnan (self->rpm))
    begin_with_pair (self, motor, propeller, &pair);
  add_pair (self, &pair);
  if (motor->power > 0 && pair.input > motor->power && !self->overloaded)
    {
      self->overloaded = motor;
      self->overload_w = pair.input;
    }
}

static void
find_current (PowerFigures *self)
{
  const Part *battery = self->battery;

  if (!battery || !(battery->cells > 0))
    return;
  self->current_a = self->input_w / (power_practice.cell_volts * battery->cells);
  self->current_sigma_a = self->input_sigma_w / (power_practice.cell_volts * battery->cells);
  if (!(battery->capacity > 0))
    return;
  self->minutes = 60 * power_practice.capacity_used * battery->capacity * 1e-3 / (power_practice.current_used.value * self->current_a);
  self->minutes_sigma = self->minutes * hypot (self->current_sigma_a / self->current_a, share (power_practice.current_used));
}

/* As the outline of a wheel is drawn: its box stands on the ground. */
static void
find_clearance (PowerFigures *self, const Aeroplane *aeroplane)
{
  const Part *wheels = heaviest (aeroplane, "wheels");

  if (!self->propeller || !wheels || !(wheels->height > 0) || !(wheels->z < self->propeller->z))
    return;
  self->clearance_mm = self->propeller->z - self->propeller->width / 2 - (wheels->z - wheels->height / 2);
  self->clearance_least_mm = fmax (CLEARANCE_SHARE * self->propeller->width, CLEARANCE_LEAST);
}

PowerFigures
power_figures_of (const Aeroplane *aeroplane, double all_up_g, double stall_m_s)
{
  PowerFigures made = { .lack = POWER_NO_MOTOR, .rpm = NAN, .rpm_sigma = NAN, .pitch_speed_m_s = NAN, .pitch_speed_sigma_m_s = NAN,
                        .input_w = NAN, .input_sigma_w = NAN, .thrust_g = NAN, .thrust_sigma_g = NAN, .current_a = NAN,
                        .current_sigma_a = NAN, .minutes = NAN, .minutes_sigma = NAN, .clearance_mm = NAN, .clearance_least_mm = NAN };

  made.battery = heaviest (aeroplane, "battery");
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);
      if (part->aboard && part_is_a (part, "motor"))
        add_motor (&made, aeroplane, part);
      else if (part->aboard && part_is_a (part, "controller"))
        {
          made.controller = made.controller ? made.controller : part;
          made.controller_a += part->current;
        }
    }
  find_current (&made);
  find_clearance (&made, aeroplane);
  made.input_w_kg = all_up_g > 0 ? 1e3 * made.input_w / all_up_g : NAN;
  made.thrust_ratio = all_up_g > 0 ? made.thrust_g / all_up_g : NAN;
  made.pitch_ratio = stall_m_s > 0 ? made.pitch_speed_m_s / stall_m_s : NAN;
  return made;
}
