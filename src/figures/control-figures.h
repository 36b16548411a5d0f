#pragma once
#include "figures/figures.h"

/** What a control comes to: the area behind its hinge line between its stations, by quadrature of the local chord cut at the
 *  hinge; both sides (a fin: its one). area NAN for a surface without a planform. The roll rate is NAN. */
ControlFigures control_figures_of (const SurfaceFigures *surface, const Control *control);
