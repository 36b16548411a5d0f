#pragma once

/** Half the thickness at x of the chord, of a section that is `thickness` thick at most: each a fraction of the chord, 0..1.
 *  source  thickness of the four-digit sections: Abbott and von Doenhoff, Theory of Wing Sections, section 6.4; last coefficient for a
 *          closed trailing edge */
double section_half_thickness (double thickness, double x);

/** How long either face of that section is from the leading edge to x: fractions of the chord likewise.
 *  accuracy  relative 1e-9
 *  method    arc length by quadrature over √x, in which the round nose is smooth
 *  returns   fraction of the chord, >= 0 */
double section_face_length (double thickness, double x);
