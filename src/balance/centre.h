#pragma once
#include <stddef.h>
#include "geometry/status.h"

/** Masses and where their middle is. SI: kg, m, kg m². x aft, y to starboard, z up. */

/** One mass: a point with a box around it, or a thin sheet; `own` are its moments of inertia about its own centre. */
typedef struct {
  double mass, mass_sigma;        /* kg, >= 0 */
  double x, y, z, x_sigma;        /* m, its centre; x_sigma is taken across and in height as well */
  double own_roll, own_pitch, own_yaw;   /* kg m² */
} MassItem;

/** Sets own_* (kg m²) as a solid cuboid of item->mass: length along x, width along y, height along z, metres, >= 0. */
void mass_item_as_box (MassItem *item, double length, double width, double height);

typedef struct {
  double mass;                    /* kg */
  double x, y, z;                 /* m */
  double x_sigma;                 /* m; σ² = Σ((xᵢ − x)² σ_mᵢ² + mᵢ² σ_xᵢ²) / M² */
  double roll, pitch, yaw;        /* kg m² about the balance point */
  double y_sigma, z_sigma, roll_sigma, pitch_sigma, yaw_sigma;   /* of mass_item_shares */
} MassSum;

/** What follows from masses and their places. */
typedef enum { MASS_X, MASS_Y, MASS_Z, MASS_ROLL, MASS_PITCH, MASS_YAW } MassQuantity;
/** What one item adds to the variance of such a quantity by its mass, its place, and how its mass is spread about its own centre: m², or
 *  (kg m²)². */
typedef struct { double by_mass, by_place, by_shape; } MassShares;

/** Its shares to the first order; the place's share of an inertia to the second, 4 m² σ² (r² + σ²), since near the axis there is no first.
 *  centre   the sum's mass and centre
 *  place    along each axis as well known as along x; own inertia to 10 %. Both common practice, no source */
MassShares mass_item_shares (const MassItem *item, const MassSum *centre, MassQuantity quantity);

/** An item's part in the variance of the balance point, times M²: (x − x̄)² σ_m² + m² σ_x², kg² m². The greatest is what to
 *  weigh or measure first. */
double mass_item_x_variance (const MassItem *item, double centre_x);

/** Sums the masses. CORE_OUT_OF_RANGE when their sum is not above 1e-9 kg; CORE_NOT_FINITE; *sum untouched then. */
CoreStatus mass_sum (const MassItem items[], size_t count, MassSum *sum);
