#pragma once
#include <stdbool.h>
#include "balance/centre.h"

/** One part that may slide, and what is wanted of it. Lengths m, masses kg. */
typedef struct {
  double part_mass, part_x;       /* the part, > 0, and where it stands now */
  double rail_from, rail_to;      /* where its centre may be, from <= to */
  double total_mass, total_x;     /* everything aboard, the part included */
  double target_x;                /* the wanted balance point */
  double forward_limit_x, aft_limit_x;
  double nose_x, tail_x;          /* where ballast may be put: body's ends, else the outlines' */
} SlideCase;

typedef struct {
  double x;                       /* where the part alone puts the balance on target; never clamped */
  bool reachable;                 /* whether the rail reaches there */
  double ballast, ballast_x;      /* kg and place with the part at the nearer end; 0 and NaN when reachable */
  double band_from, band_to;      /* places on the rail that keep the balance within the limits; NaN when none */
} SlideAnswer;

/** x = (x_t M − Σ others' moments) / m. Ballast = W (x − x_t) / (x_t − x_b), W everything without it, x_b the nose
 *  when tail-heavy, the tail when nose-heavy. CORE_OUT_OF_RANGE for a part without mass or a ballast place on the wrong
 *  side of the target (the answer's place and reach are set all the same, ballast NaN). */
CoreStatus slide_solve (const SlideCase *wanted, SlideAnswer *answer);

/** The ballast that brings the balance from x to the target x_t when put at x_b, and nothing else moves: W (x − x_t) / (x_t − x_b).
 *  mass W > 0, kg; x_b is nose_x when tail-heavy (x > x_t), tail_x when nose-heavy.
 *  ballast, place   set on success, kg >= 0 and m; CORE_OUT_OF_RANGE when the place lies on the wrong side of the target
 *  source           FAA-H-8083-1, Weight and Balance Handbook, chapter on adding or removing weight */
CoreStatus ballast_solve (const SlideCase *wanted, double mass, double x, double *ballast, double *place);
