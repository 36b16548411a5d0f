#pragma once
#include <stddef.h>
#include "geometry/status.h"

/** Masses and where their middle is. SI: kg, m, kg m². x aft, y to starboard, z up. */

/** One mass: a point with a box around it, or a thin sheet; `own` are its moments of inertia about its own centre. */
typedef struct {
  double mass, mass_sigma;        /* kg, >= 0 */
  double x, y, z, x_sigma;        /* m, its centre */
  double own_roll, own_pitch, own_yaw;   /* kg m² */
} MassItem;

/** Sets own_* (kg m²) as a solid cuboid of item->mass: length along x, width along y, height along z, metres, >= 0. */
void mass_item_as_box (MassItem *item, double length, double width, double height);

typedef struct {
  double mass;                    /* kg */
  double x, y, z;                 /* m */
  double x_sigma;                 /* m; σ² = Σ((xᵢ − x)² σ_mᵢ² + mᵢ² σ_xᵢ²) / M² */
  double roll, pitch, yaw;        /* kg m² about the balance point */
} MassSum;

/** An item's part in the variance of the balance point, times M²: (x − x̄)² σ_m² + m² σ_x², kg² m². The greatest is what to
 *  weigh or measure first. */
double mass_item_x_variance (const MassItem *item, double centre_x);

/** Sums the masses. CORE_OUT_OF_RANGE when their sum is not above 1e-9 kg; CORE_NOT_FINITE; *sum untouched then. */
CoreStatus mass_sum (const MassItem items[], size_t count, MassSum *sum);
