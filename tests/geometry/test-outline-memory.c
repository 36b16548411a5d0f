#include <check.h>
#include <stdlib.h>
#include "geometry/planform.h"
#include "geometry/shapes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The linker puts these in the place of malloc and calloc (see meson.build): the one counted down to fails. */
void *__real_malloc (size_t size);
void *__real_calloc (size_t count, size_t size);
void *__wrap_malloc (size_t size);
void *__wrap_calloc (size_t count, size_t size);

static int until_failure;       /* 0: none fails */

static bool
fails_now (void)
{
  return until_failure > 0 && --until_failure == 0;
}

void *
__wrap_malloc (size_t size)
{
  return fails_now () ? NULL : __real_malloc (size);
}

void *
__wrap_calloc (size_t count, size_t size)
{
  return fails_now () ? NULL : __real_calloc (count, size);
}

typedef CoreStatus (*Change) (const Outline *outline, Outline **made);

static CoreStatus move (const Outline *o, Outline **made)        { return outline_with_node_at (o, 2, (Point) { 60, 330 }, made); }
static CoreStatus pull (const Outline *o, Outline **made)        { return outline_with_handle_at (o, 1, HANDLE_AFTER, (Point) { 17, 220 }, made); }
static CoreStatus soften (const Outline *o, Outline **made)      { return outline_with_node_kind (o, 2, NODE_SMOOTH, made); }
static CoreStatus straighten (const Outline *o, Outline **made)  { return outline_with_segment_kind (o, 2, SEGMENT_LINE, made); }
static CoreStatus insert (const Outline *o, Outline **made)      { return outline_with_node_inserted (o, 2, 0.5, made); }
static CoreStatus take_out (const Outline *o, Outline **made)    { return outline_without_node (o, 2, made); }
static CoreStatus split (const Outline *o, Outline **made)       { return outline_with_node_split (o, 2, 9, made); }
static CoreStatus join (const Outline *o, Outline **made)        { return outline_with_nodes_joined (o, 2, made); }
static CoreStatus add (const Outline *o, Outline **made)         { return outline_with_segment_added (o, outline_segment (o, 0), made); }
static CoreStatus map (const Outline *o, Outline **made)         { return outline_mapped (o, (Point) { 2, 3 }, (Point) { 4, 5 }, made); }
static CoreStatus reverse (const Outline *o, Outline **made)     { return outline_reversed (o, made); }
static CoreStatus ellipse (const Outline *o, Outline **made)     { return shape_ellipse (110, 320, 40, 90, made); }

static CoreStatus
taper (const Outline *o, Outline **made)
{
  return shape_taper ((const double[]) { 0, 300 }, (const double[]) { 0, 20 }, (const double[]) { 150, 90 }, 2, made);
}

static const Change changes[] = { move, pull, soften, straighten, insert, take_out, split, join, add, map, reverse, ellipse, taper };
enum { CHANGES = sizeof changes / sizeof *changes };

/* The first, the second, … allocation fails, until all succeed. That nothing is lost or freed twice, the sanitizers tell. */
START_TEST (a_change_that_finds_no_memory_says_so_and_makes_nothing)
{
  Outline *wing = mixed_wing (), *made = NULL;
  CoreStatus status;
  int failures = 0;

  do
    {
      until_failure = failures + 1;
      status = changes[_i] (wing, &made);
      until_failure = 0;
      ck_assert (status == CORE_OK || (status == CORE_NO_MEMORY && made == NULL));
    }
  while (status && ++failures < 100);
  ck_assert_int_ge (failures, 5);
  outline_unref (made);
  outline_unref (wing);
}
END_TEST

START_TEST (a_measure_that_finds_no_memory_says_so)
{
  Outline *wing = mixed_wing ();
  Planform planform = { .area = 17 };
  double station = 17;

  for (int k = 1; k <= 2; k++)
    {
      until_failure = k;
      ck_assert_int_eq (planform_measure (wing, PLANFORM_CARRIED, &planform), CORE_NO_MEMORY);
    }
  until_failure = 1;
  ck_assert_uint_eq (planform_breaks (wing, PLANFORM_CARRIED, &station, 1), 0);
  ck_assert (planform.area == 17 && station == 17);
  until_failure = 0;
  outline_unref (wing);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("memory");

  tcase_add_loop_test (tests, a_change_that_finds_no_memory_says_so_and_makes_nothing, 0, CHANGES);
  tcase_add_test (tests, a_measure_that_finds_no_memory_says_so);
  return run_suite (suite_create ("outline memory"), tests);
}
