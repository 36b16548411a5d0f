#pragma once
#include "figures/figures.h"

/** How a surface's outline becomes a planform: carried to the centre line, open there, or single (a fin). */
PlanformSides surface_sides (const Surface *surface);

/** Measures one surface by itself: planform, fault, quarter MAC; what needs the reference wing stays NAN. */
SurfaceFigures surface_figures_alone (const Surface *surface);

/** How much a tail volume goes with the tolerance of outlines: √3 for its own span, chord and arm, and √5 for the wing's span once and its
 *  chord twice (of a fin: its span twice and its chord once). */
static const double surface_volume_by_its_own = 1.7320508075688772, surface_volume_by_the_wing = 2.23606797749979;

/** Fills in tail arm and volume with its deviation against the reference wing (not for the reference itself). */
void surface_figures_refer (SurfaceFigures *figures, const SurfaceFigures *reference);

/** Height of the surface's own plane over its root's leading edge at a station, mm: dihedral with its breaks. A fin has none. */
double surface_lift (const Surface *surface, double station);

/** Whether the outline of a surface that gives no planform (CORE_OUT_OF_RANGE) reaches over the centre line, a fin's below its root; else
 *  it lies where its root is to be carried. */
bool surface_is_beyond_the_centre (const Surface *surface);

/** Says in notes what is wrong with the outline or a control, if anything is. */
void surface_figures_note (const SurfaceFigures *figures, GPtrArray *notes);
