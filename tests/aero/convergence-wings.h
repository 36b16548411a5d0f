#pragma once
#include <stdbool.h>
#include "aero/lattice.h"
#include "geometry/planform.h"

/** The wings of the convergence study and the surfaces that fly with them. One table for the study, which prints and plots how
 *  far the lattice is from its own limit, and for the suite, which holds what is promised of it. */

enum { study_room = 8 };

/** A wing: straight lines from the root's leading edge round the tip to the root's trailing edge, or two quarter ellipses. */
typedef struct {
  const char *name;
  Point corners[study_room];
  size_t corner_count;                  /* 0: an ellipse */
  double semispan, ahead, behind;       /* the ellipse: semi-axes ahead of its widest line and behind it */
  double dihedral;
  LatticeBend bend;                     /* station 0: none */
  int sweep_deg;                        /* of the quarter-chord line, where it is swept most; round tips and notches left out */
} StudyWing;

/** The second surface, in measures of the wing's MAC and span. */
typedef struct {
  const char *name;
  double arm;                           /* its root's leading edge behind that of the wing's MAC, in MAC; ahead negative */
  double height;                        /* above the wing's root, in MAC */
  double span;                          /* in parts of the wing's; 0: no second surface; 1: the wing once more, a biplane's */
  double pressure_ratio;
} StudyCompany;

extern const StudyWing study_wings[];
extern const size_t study_wing_count;
extern const StudyCompany study_companies[];
extern const size_t study_company_count;

/** A wing with its company, laid out. */
typedef struct {
  const StudyWing *wing;
  const StudyCompany *company;
  Outline *outlines[2];
  LatticeSurface surfaces[2];
  size_t count;
  Planform planform;                    /* the wing's */
} StudyCase;

StudyCase study_case_of (const StudyWing *wing, const StudyCompany *company);
void      study_case_clear (StudyCase *self);

/** Neutral point and lift slope, on the wing's area, with these panels for the wing; the second surface gets three fifths of the
 *  strips and two thirds of the panels along the chord, 12 by 4 beside 20 by 6. */
LatticeResult study_solve (Lattice *lattice, const StudyCase *flown, LatticeOptions options);

/** What the lattice goes to as panels become ever finer: two lattices, the second with twice the strips and panels of `coarse`,
 *  the error of the first order taken out. */
LatticeResult study_limit_from (Lattice *lattice, const StudyCase *flown, LatticeOptions coarse);
/** The same from 36 by 10 and 72 by 20. */
LatticeResult study_limit (Lattice *lattice, const StudyCase *flown);

/** By how much the neutral point differs from the limit's, in percent of the wing's MAC, aft positive. */
double study_neutral_error (const StudyCase *flown, const LatticeResult *result, const LatticeResult *limit);

/** What is promised of it is one for all of a group: up to 15° of sweep, alone and with a tail, 0.15 % at the default panels; beyond
 *  that, which takes in a foreplane and a biplane, 0.4 %. */
typedef enum { STUDY_ALONE, STUDY_TAILED, STUDY_PAIRED, STUDY_SWEPT } StudyGroup;
enum { study_groups = STUDY_SWEPT + 1 };

StudyGroup study_group (const StudyWing *wing, const StudyCompany *company);
double     study_promise (StudyGroup group);
