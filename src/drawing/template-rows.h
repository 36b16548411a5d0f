#pragma once
#include "drawing/template-cell.h"

/** How cells are laid on an area. mm */
typedef struct {
  double width;              /* of the area; what is wider lies at its left */
  double apart;              /* of cells */
  const Point *step;         /* of tiles; NULL without */
  bool whole;                /* nothing is cut by more edges of tiles than it must be */
  Box taken;                 /* where no cell may lie; empty: nowhere */
} TemplateRows;

/** How far in from a tile's edge anything begins, mm: beyond what the neighbour shows of it. */
static const double TEMPLATE_CLEAR = 6;

/** Lays the cells out, the highest first, each as far up as there is room, then as far left, so that no tile's edge cuts a name.
 *  Gives the size of the area from 0, 0 on. */
Point  template_rows     (GArray *cells, const TemplateRows *rows);
/** How many edges of tiles go through a box. Both in mm; a count has no unit. */
double template_cuts     (Box box, Point step);
/** Whether edges cut a box that has room between them, as it lies or turned. */
bool   template_is_cut   (Box box, Point step);
