#pragma once
#include <stdbool.h>
#include "aero/lattice.h"
#include "aero/spacing.h"

/** Where one surface begins and ends along the span, and panels along its chord; finer: how many it is to have beside a close one. */
typedef struct { double root, tip; int chordwise, finer; } StationSpan;

/** What all surfaces together ask of the strips. Memory is kept from one gathering to the next; all zero is empty. */
typedef struct {
  StationSpan *spans;            /* one a surface */
  SpacingWish *wishes;           /* one a surface: between which ends it lies, and the strips it wishes for */
  double *ends;                  /* rising, no two nearer than a tenth of the outermost strip */
  size_t end_count;
  SpacingKink *kinks;
  size_t kink_count;
  double *breaks;                /* of one outline */
  size_t span_room, wish_room, end_room, kink_room, break_room;
} Stations;

/** Gathers the ends and kinks of all surfaces, and what strips and panels they wish for, over coarseness.
 *  returns  CORE_OK; what outline_check gives; CORE_OUT_OF_RANGE for a surface too narrow to hold a strip;
 *           CORE_NOT_FINITE; CORE_NO_MEMORY */
CoreStatus stations_gather (Stations *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options,
                            int coarseness);
/** Frees the memory and leaves it empty, fit for another gathering. */
void stations_clear (Stations *self);

/** Height z of a surface at station y, in the outlines' unit (mm or m), up positive: flat inboard of its root, then rising by its
 *  dihedral and each bend's from there. */
double station_height (const LatticeSurface *surface, double root, double y);

/** Makes room for `count` entries of `size` bytes; what was there is kept. False when there is no memory. */
bool stations_reserve (void *memory, size_t *room, size_t count, size_t size);
