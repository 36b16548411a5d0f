#pragma once

/** What a propeller does to an aeroplane's stability, bounded. Lengths in any one unit. */
typedef struct { double least, greatest; } PropellerBound;

/** Force across the shaft per radian of the propeller's incidence and unit of dynamic pressure, an area: a propeller is a fin of its
 *  blades' area seen from the side, of aspect ratio 8, in the dynamic pressure at its disc. Two blades a tenth of the diameter
 *  wide over four fifths of the radius; least: pitch half the diameter, no power; greatest: pitch four fifths, full power,
 *  which doubles the dynamic pressure at the disc (common practice, no source, for these four). Three blades have half as much again.
 *  diameter  > 0
 *  source    Ribner, Propellers in Yaw, NACA Report 820 (1945), and Formulas for Propellers in Yaw, NACA Report 819 (1945) */
PropellerBound propeller_cross_force (double diameter);
