#pragma once
#include "aero/mesh.h"

/** Span efficiency of the first surface by itself, L² / (½ρV² π b² D), with the induced drag taken from the flow far
 *  behind it, at the strips' control stations. A ratio > 0, 1 at a flat wing's best.
 *  circulation  of its panels, in units of 4π V
 *  source       Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., section 8.4 (Trefftz plane) */
double wake_span_efficiency (const Mesh *mesh, const double circulation[]);
