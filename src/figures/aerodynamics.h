#pragma once
#include "aero/lattice.h"
#include "figures/figures.h"
#include "figures/neutral-point.h"
#include "figures/piece-key.h"
#include "figures/spread.h"

/** All that surfaces, bodies and rigging alone decide, remembered until one of them changes. The pieces spoken of are those of the key. */
typedef struct {
  PieceKey key;
  bool tailless;                 /* of the aeroplane it was made from */
  size_t surface_count;
  SurfaceFigures *surfaces;      /* in the document's order */
  ptrdiff_t reference;           /* index of the first wing with an area; -1 without one */
  NeutralPointSolution solution;
  bool wing_alone;               /* one wing, and nothing else that lies flat, of an aeroplane that will have a tail */
  size_t control_count;
  ControlFigures *controls;
  size_t spread_count;
  Spread *spreads;               /* surfaces, then bodies */
  double wing_area_mm2;          /* of all surfaces of role wing that have one; 0 without */
  double tail_volume, tail_volume_sigma;     /* tail_volume_of() */
  double nose_x, tail_x;         /* foremost and aftmost place of the bodies, without one of the outlines; NAN without any */
  GPtrArray *notes;
} Aerodynamics;

/** Makes it new unless the aeroplane's surfaces and bodies are those it was made from. */
void aerodynamics_update (Aerodynamics *self, Lattice *lattice, const Aeroplane *aeroplane);
/** Frees what it holds, not itself; made anew by the next update. */
void aerodynamics_clear  (Aerodynamics *self);

/** The reference wing's figures; NULL without one. */
const SurfaceFigures *aerodynamics_reference (const Aerodynamics *self);
/** The spread of the surface or body of that id; NULL when there is none. */
const Spread *aerodynamics_spread (const Aerodynamics *self, const char *id);
