#pragma once
#include "drawing/template-cell.h"

/** Lays the cells out on an area that no tiles divide, the highest first, each as far up as there is room, then as far left.
 *  width   of the area; what is wider lies at its left, mm
 *  apart   of cells, mm
 *  taken   where no cell may lie, in the upper left corner, mm
 *  returns the size of the area from 0, 0 on */
Point template_rows (GArray *cells, double width, double apart, Box taken);
