#pragma once
#include <check.h>
#include <math.h>
#include "aero/lattice.h"
#include "geometry/planform.h"
#include "geometry/shapes.h"

/** A straight taper: the tip's leading edge and chord beside the root's. */
typedef struct { double semispan, root_x, root_chord, tip_x, tip_chord; } Trapezium;

static inline Outline *
wing_trapezium (Trapezium shape)
{
  Outline *made = NULL;

  ck_assert_int_eq (shape_taper ((double[]) { 0, shape.semispan }, (double[]) { shape.root_x, shape.tip_x },
                                 (double[]) { shape.root_chord, shape.tip_chord }, 2, &made), CORE_OK);
  return made;
}

/** Two quarter ellipses. */
static inline Outline *
wing_ellipse (double root_x, double semispan, double ahead, double behind)
{
  Outline *made = NULL;

  ck_assert_int_eq (shape_ellipse (root_x, semispan, ahead, behind, &made), CORE_OK);
  return made;
}

/** What a lattice says of surfaces; coefficients by the first one's own area and span. */
typedef struct { LatticeResult result; LatticeShare shares[8]; CoreStatus status; Planform reference; } Answer;

static inline Answer
answer_with (const LatticeSurface surfaces[], size_t count, LatticeOptions options)
{
  const unsigned all = LATTICE_ALONE | LATTICE_ROLL | LATTICE_FAR_WAKE;
  Lattice *lattice = lattice_new ();
  Answer answer = { 0 };

  ck_assert_ptr_nonnull (lattice);
  answer.status = planform_measure (surfaces[0].outline, surfaces[0].sides, &answer.reference);
  if (!answer.status)
    answer.status = lattice_solve (lattice, surfaces, count, options, all, answer.reference.area, answer.reference.span,
                                   answer.shares, &answer.result);
  lattice_free (lattice);
  return answer;
}

static inline Answer
answer_of (const LatticeSurface surfaces[], size_t count)
{
  return answer_with (surfaces, count, lattice_default_options ());
}

/** One surface, its outline given up. */
static inline Answer
answer_of_wing (Outline *outline, LatticeOptions options)
{
  const LatticeSurface surface = { .outline = outline, .pressure_ratio = 1 };
  const Answer answer = answer_with (&surface, 1, options);

  ck_assert_int_eq (answer.status, CORE_OK);
  outline_unref (outline);
  return answer;
}
