#pragma once
#include "drawing/template-cell.h"

/** How cells are laid on an area. mm */
typedef struct {
  double width;              /* of the area; what is wider lies at its left */
  double apart;              /* of cells */
  const Point *step;         /* of tiles; NULL without */
  bool whole;                /* what has room on one tile is not cut by a tile's edge */
} TemplateRows;

/** How far in from a tile's edge anything begins, mm. */
static const double TEMPLATE_CLEAR = 4;

/** Lays the cells out, the highest first, each as far up as there is room, then as far left. Gives the size of the area from 0, 0 on. */
Point  template_rows     (GArray *cells, const TemplateRows *rows);
/** The place itself, or the first one behind the next edge where `size` from there on would be cut by an edge and has room between two. */
double template_off_edge (double place, double size, double step);
/** Whether edges cut a box that has room between them, as it lies or turned. */
bool   template_is_cut   (Box box, Point step);
