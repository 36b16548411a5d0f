#pragma once
#include "aero/mesh.h"

/** The matrix of the lattice, column-major, panel_count squared: the normal flow at control point i of the horseshoe
 *  vortex at panel j and its mirror image on the port side, for a circulation of 4π; one over length (1/mm or 1/m as the mesh).
 *  inverse  lent, 4 × panel_count
 *  source   Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., sections 2.11 and 12.1 */
void influence_symmetric (const Mesh *mesh, double inverse[], double symmetric[]);
/** The same, and in the same pass the matrix for an image of opposite circulation, rolling; both one over length (1/mm or 1/m). */
void influence_both (const Mesh *mesh, double inverse[], double symmetric[], double antisymmetric[]);

/** Adds to upwash the vertical flow at points (x, about 0, z), for circulations in units of 4π, both sides. Of x and z in the
 *  mesh's unit; no unit where circulations are over V and for one radian. The caller sets upwash[] first. */
void influence_upwash (const Mesh *mesh, const double circulation[], const double *restrict x, size_t count, double z,
                       double *restrict upwash);
