#pragma once

/** What a wing's section does at the Reynolds numbers of small aeroplanes, by classes that a builder can tell apart. */
typedef enum {
  SECTION_UNSTATED,             /* thin-plate theory for the slope, a flat-bottomed section for the greatest lift */
  SECTION_FLAT_PLATE,           /* sheet, sanded round in front */
  SECTION_CURVED_PLATE,         /* sheet bent to a few per cent, or a thin undercambered section */
  SECTION_FLAT_BOTTOMED,        /* built up, 8 to 11 % thick */
  SECTION_SYMMETRICAL,          /* built up, 9 to 15 % thick */
  SECTION_CLASSES
} SectionClass;

/** One figure with one standard deviation. */
typedef struct { double value, sigma; } Spreading;

/** Lift slope of the section over thin-plate theory's 2π (a ratio), at a Reynolds number of its chord (> 0; held at the table's ends,
 *  20 000 and 200 000).
 *  source  cautious values, from memory of the trends in: Gutierrez-Castillo et al., J. Wind Eng. Ind. Aerodyn. 208 (2021), 104459 (plates
 *          of aspect ratio 1 to 8 at 40 000 to 200 000: within 5 % of a finite-wing formula); Winslow et al., Basic Understanding of
 *          Airfoil Characteristics at Low Reynolds Numbers, J. Aircraft 55 (2018) (plates do not change with Reynolds number,
 *          thick sections fall off below 100 000); Jacobs and Sherman, NACA Report 586 (1937) */
Spreading section_slope_ratio (SectionClass class, double reynolds);

/** Greatest lift coefficient (no unit) of a whole wing with that section, at a Reynolds number of its chord (> 0; held at the table's
 *  ends, 30 000 and 150 000); its deviation is half the trade's band.
 *  source  common practice, no source; trends after NACA Report 586 */
Spreading section_greatest_lift (SectionClass class, double reynolds);
