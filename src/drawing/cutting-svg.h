#pragma once
#include "drawing/cutting.h"

/** The sheet as SVG 1.1: sized in millimetres, its user unit one millimetre, y down. Each layer that has something is a group with its id
 *  and a title; each line a path of lines, cubic curves and elliptical arcs as exact as it is, hairlines 0.01 mm wide (common practice for
 *  laser cutters, no source), titled with its piece's name. Words are text, in a group of their own. The same pieces give the same bytes. */
GBytes *cutting_svg (const Cutting *cutting);
