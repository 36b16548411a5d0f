#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/status.h"

/** Where parts are put so that the aeroplane balances with the least ballast, no two of them in one another's way and every lead
 *  reaching. SI: metres, kilograms. x aft, y to starboard, z up. */

/** A place in space, m. */
typedef struct { double x, y, z; } ArrangePlace;

/** One box in which a part's centre may stand, m: the bay less half the part on each side. One whose `from` lies beyond its `to` holds
 *  nothing: the part is too large for it. */
typedef struct {
  double x_from, x_to, y_from, y_to, z_from, z_to;
  size_t room;                    /* the caller's number of the bay or rail; ranges of one room lie in the same bay */
} ArrangeRange;

/** A part is a box. One that is fixed has a single range without extent: it counts in the balance and stands in the way. */
typedef struct {
  double mass;                    /* kg, >= 0 */
  double length, width, height;   /* m along x, y and z, >= 0 */
  const ArrangeRange *ranges;     /* it stands in one of these */
  size_t range_count;
  ArrangePlace now;               /* where it stands: it is moved no farther than is of use */
  unsigned tie;                   /* parts of one number here, not 0, move as one: beside one another as `now` has them, overlapping or not */
} ArrangePart;

/** A lead from one part's centre over fixed places to another part's centre. */
typedef struct {
  size_t from, to;                /* numbers of two parts */
  const ArrangePlace *via;        /* in this order, from `from` */
  size_t via_count;
  double length;                  /* m; NAN when it may have any */
  double slack;                   /* m, >= 0: what it needs beyond the straight stretches */
} ArrangeLead;

/** Asked while work goes on, with the share done, 0 to 1; false ends it. */
typedef bool (*ArrangeGoesOn) (double done, void *data);

typedef struct {
  const ArrangePart *parts;
  size_t part_count;              /* at most 48, with at most 64 ranges each */
  const ArrangeLead *leads;
  size_t lead_count;              /* at most 96 */
  double other_mass, other_x;     /* kg >= 0 and m: everything aboard that is none of the parts */
  double forward_limit_x, aft_limit_x;    /* m, forward <= aft: the balance point stands between them */
  double aim_x;                   /* m: and as near to this as it can */
  double nose_x, tail_x;          /* m: where ballast may be put */
  double clearance;               /* m, >= 0: between two boxes */
  double seconds;                 /* > 0: what is best by then is taken; INFINITY */
  ArrangeGoesOn goes_on;          /* may be NULL */
  void *data;                     /* goes_on's */
} ArrangeCase;

typedef enum {
  ARRANGE_PROVED,                 /* nothing better exists */
  ARRANGE_BEST_FOUND,             /* the time ended before that was proved */
  ARRANGE_IMPOSSIBLE,             /* there is none; arrange_limits() tells why */
  ARRANGE_NOT_FOUND               /* the time ended before there was one */
} ArrangeStatus;

typedef struct {
  ArrangeStatus status;           /* ARRANGE_PROVED or ARRANGE_BEST_FOUND */
  double gap;                     /* by which share of it the ballast might yet be less, 0 to 1; 0 when only the rest is not proved */
  double leads_gap;               /* m: where only the third of arrange()'s aims is not proved, by how much less that sum may yet be; else 0 */
  double ballast, ballast_x;      /* kg, and m: nose_x or tail_x; 0 and NAN when none is needed */
  ArrangePlace *places;           /* m, one a part */
  size_t *ranges;                 /* one a part: in which of its ranges it stands */
  double *needed;                 /* m, one a lead: its stretches and slack */
  double x;                       /* m: the balance point, ballast included */
} Arrangement;

enum { ARRANGE_MOST = 8 };
/** What was found: the best first. */
typedef struct {
  ArrangeStatus status;           /* the first one's, or why there is none */
  Arrangement found[ARRANGE_MOST];
  size_t count;
} Arrangements;

/** Finds the best arrangement and, after it, others. Best is, each only among those equal in what comes before:
 *
 *      1. the least ballast, at nose_x or tail_x
 *      2. the balance point nearest to aim_x
 *      3. the least sum of Σ needed + |y| / 100 + (|x − now| + |z − now|) / 1000 over the leads and the parts that can move
 *
 *  to 1e-7 of all mass, 1e-7 m and 1e-5 m (the last to 1e-4 m where a lead at its limit holds the balance). Boxes stand the clearance
 *  apart along x, y or z (two fixed parts are taken as they are). Parts alike in mass, size, ranges and leads change places freely: for
 *  them |x − now| and |z − now| do not count above, and in the end each stands where they are moved least.
 *
 *  A mixed-integer program: which range a part stands in and along which axis two parts are apart are branched on, each branch bounded
 *  by a linear program (GLPK, dual simplex); a lead's length is convex and bounded by its supporting planes, added where one is violated
 *  (Kelley, The cutting-plane method for solving convex programs, 1960); parts that fill a length bound their moments (Queyranne,
 *  Structure of a simple scheduling polyhedron, 1993).
 *  The third is searched for two seconds in all unless there is time without end; then the best sum found is taken.
 *  most     how many at most, 1 to ARRANGE_MOST. In each, at least one part stands 15 mm or more along some axis, or in another room,
 *           from where it is in every arrangement before it and in their mirror images
 *  made     set on success, arrangements_clear() it
 *  returns  CORE_OK, also when there is none (count 0); CORE_NOT_FINITE, CORE_OUT_OF_RANGE (a negative mass or size, limits crossed, no
 *           mass at all, a lead to no part, beyond 1000 m or 1e6 kg, `most`), CORE_TOO_MANY, CORE_CANCELLED when goes_on said so,
 *           CORE_NO_MEMORY
 *  threads  one call a thread; GLPK's memory of the calling thread is freed at the end, so nothing else of it may be alive */
CoreStatus arrange (const ArrangeCase *wanted, size_t most, Arrangements *made);
void arrangements_clear (Arrangements *made);      /* frees what was found; none then, and again is fine */

/** What a lead needs between two places: its straight stretches and its slack, metres, >= 0. */
double arrange_lead_needed (const ArrangeLead *lead, ArrangePlace from, ArrangePlace to);

typedef enum {
  ARRANGE_NO_ROOM,                /* the part fits none of its ranges: `needed` m too long along `axis`, INFINITY when it has no range */
  ARRANGE_LEAD_TOO_SHORT,         /* the lead has `had` m and needs `needed` m at least, then with its ends at `nearest` */
  ARRANGE_TOO_FULL,               /* these parts do not go in `room` together; in a row they need `needed` m of its `had` m, or NAN */
  ARRANGE_BAND,                   /* the balance point reaches `needed` m at best, the limit is at `had` m, and no ballast helps */
  ARRANGE_TIED,                   /* these parts move as one, and no place has each of them in a range of its own */
  ARRANGE_LEAD_WAY                /* never told here, where ways are given: by the way it takes then the lead does not reach in anything that
                                     was tried; it has `had` m and needs `needed` m where least is missing */
} ArrangeLimitKind;

enum { ARRANGE_LIMIT_PARTS = 16, ARRANGE_NONE = -1 };
/** One thing that makes a case impossible. */
typedef struct {
  ArrangeLimitKind kind;
  size_t parts[ARRANGE_LIMIT_PARTS], part_count;  /* whom it is about: one part, a lead's two ends, those that are too many */
  size_t lead;                    /* (size_t) ARRANGE_NONE unless it is about a lead */
  size_t room;                    /* (size_t) ARRANGE_NONE unless all happens in one */
  int axis;                       /* 0 x, 1 y, 2 z */
  bool alone;                     /* true when this alone makes it impossible; else only with all that else is asked for */
  double needed, had;             /* m, as the kind says */
  ArrangePlace nearest[2];        /* m; for a lead */
} ArrangeLimit;

/** Why there is no arrangement: what contradicts alone first (a part and its ranges, parts that move as one, a lead and the ranges of its ends,
 *  the parts of a room, the balance and the ballast's places), else what does together: by how much leads would have to be longer, at the least sum
 *  of these; or which parts cannot stand apart, none of them to spare; or what the balance reaches.
 *  limits   at most `most` of them, >= 1
 *  count    how many were set; 0 when there is an arrangement, or none was told before the case's time ended
 *  returns  as arrange() */
CoreStatus arrange_limits (const ArrangeCase *wanted, ArrangeLimit limits[], size_t most, size_t *count);
