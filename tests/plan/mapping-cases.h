#pragma once
#include <check.h>
#include <stdint.h>
#include "plan/mapping.h"

/* A picture of an odd size, and what is known of it. Nothing is round, so that a lost factor shows. */
#define PICTURE_WIDTH 3211.0
#define PICTURE_HEIGHT 2307.0

static inline Knowns
knowns_nothing (void)
{
  return (Knowns) { .mm_per_px = NAN, .width_px = PICTURE_WIDTH, .height_px = PICTURE_HEIGHT };
}

static inline Knowns
knowns_lengths (const KnownLength *lengths, size_t count)
{
  Knowns knowns = knowns_nothing ();

  knowns.lengths = lengths;
  knowns.length_count = count;
  return knowns;
}

static inline Knowns
knowns_rectangle (const KnownRectangle *rectangle)
{
  Knowns knowns = knowns_nothing ();

  knowns.rectangle = rectangle;
  return knowns;
}

static inline Mapping
solved (const Knowns *knowns, MappingMisfit *misfit)
{
  Mapping mapping;

  ck_assert_int_eq (mapping_solve (knowns, &mapping, misfit), CORE_OK);
  return mapping;
}

static inline void
assert_place (Point got, Point wanted, double tolerance, const char *what)
{
  ck_assert_msg (point_distance (got, wanted) <= tolerance, "%s: (%.12g, %.12g), wanted (%.12g, %.12g)", what, got.x, got.y, wanted.x,
                 wanted.y);
}

/* A camera that looks at the paper askew, with the lens of a telephone. mm to px and back by mapping_to_px of it. */
static inline Mapping
camera (double k1)
{
  return (Mapping) {
    .h = { 0.1312, 0.0071, -31.7, -0.0047, 0.1391, -22.3, 2.31e-5, 4.07e-5, 0.9 },
    .lens_centre = { PICTURE_WIDTH / 2, PICTURE_HEIGHT / 2 }, .lens_radius = hypot (PICTURE_WIDTH, PICTURE_HEIGHT) / 2, .k1 = k1,
  };
}

/* Evenly spread in -1..1: xorshift64* (S. Vigna, ACM TOMS 42, 2016), so that a run is the same everywhere. */
static inline double
spread (uint64_t *state)
{
  *state ^= *state >> 12;
  *state ^= *state << 25;
  *state ^= *state >> 27;
  return (double) ((*state * 2685821657736338717ULL) >> 11) / 4503599627370496.0 - 1;
}

static inline Point
clicked (Point meant, uint64_t *state)
{
  return (Point) { meant.x + MAPPING_CLICK_PX * spread (state), meant.y + MAPPING_CLICK_PX * spread (state) };
}
