#pragma once
#include <stdint.h>
#include "balance/arrange.h"

/** The case as the search has it: millimetres, and masses as shares of all. Private to the arrangement. */

enum { AXES = 3, RANGES_MOST = 64, PARTS_MOST = 48, LEADS_MOST = 96 };

/** A box, mm. */
typedef struct { double low[AXES], high[AXES]; } Span;

typedef struct {
  double share;                   /* of all mass, ballast not counted */
  double size[AXES], now[AXES];
  const Span *ranges;             /* those that hold anything */
  const size_t *rooms, *numbers;  /* of each: its room, and which of the caller's ranges it is */
  size_t range_count;
  bool moves;                     /* some of its places differ */
  bool alike;                     /* there are others like it */
  size_t leader;                  /* the largest of those it is tied to, or itself */
  size_t before;                  /* the one like it that stands no farther aft, or the count of parts */
} SpacePart;

/** Two parts that might meet. */
typedef struct { size_t a, b; double apart[AXES]; } SpacePair;

typedef struct {
  size_t from, to;
  size_t pair;                    /* its two ends; the count of pairs when they are none */
  bool over;                      /* over fixed places: of these the first and the last, else straight */
  double first[AXES], last[AXES];
  double fixed;                   /* mm: between those, and slack */
  double limit;                   /* mm; INFINITY when it may have any length */
} SpaceLead;

typedef struct {
  SpacePart *parts;
  SpacePair *pairs;
  SpaceLead *leads;
  size_t part_count, pair_count, lead_count;
  double other;                   /* mm × share: the rest's moment */
  double forward, aft, aim, nose, tail;
  double clearance;
  double mass;                    /* kg, all */
  bool mirrored;                  /* port and starboard are alike */
  void *memory[3];                /* of the ranges, rooms and numbers */
} Space;

/** CORE_OK when the case's numbers can be reckoned with. */
CoreStatus arrange_check (const ArrangeCase *wanted);
/** A checked case; space_free() it. NULL without memory. */
Space *space_new (const ArrangeCase *wanted);
void space_free (Space *self);      /* NULL is fine */
/** From now on parts that are alike stand in any order. */
void space_forget_alike (Space *self);

/** Whether two parts move as one. */
bool space_is_tied (const Space *self, size_t a, size_t b);
/** How far a part's coordinate always is from its leader's, mm. */
double space_tie_offset (const Space *self, size_t part, size_t axis);

/** What a lead needs, mm. */
double space_lead_needed (const SpaceLead *lead, const double from[AXES], const double to[AXES]);
double distance_between (const double a[AXES], const double b[AXES]);      /* straight, in the places' unit (mm), >= 0 */
