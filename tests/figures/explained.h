#pragma once
#include <check.h>
#include <math.h>
#include "document/reader.h"
#include "figures/explanation.h"
#include "support/figures-once.h"

/* What the tests of explanations share. */

static const Units metric = { LENGTH_MM, MASS_G }, imperial = { LENGTH_INCH, MASS_OZ };

static inline Aeroplane *
example_racer (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", "saltmarsh-racer.trammel", NULL);
  Aeroplane *made = reader_read_file (path, NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

/* The same with a thick wing and with a rail that does not reach the aim: what the example itself has no need of. */
static inline Aeroplane *
racer_with_a_short_rail (void)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const Part *battery = aeroplane_part_by_id (aeroplane, "battery");
  Surface *thick = (Surface *) piece_dup (&wing->piece);
  Part *bound = (Part *) piece_dup (&battery->piece);

  thick->section = SECTION_SYMMETRICAL;
  bound->rail_from = 150;
  bound->rail_to = 160;
  bound->x = 155;
  g_autoptr (Aeroplane) made = aeroplane_with_replaced (aeroplane, &wing->piece, &thick->piece);
  return aeroplane_with_replaced (made, &battery->piece, &bound->piece);
}

/* The example with a cowl about its motor; its thrust line goes 2° down and 2° to the right. */
static inline Aeroplane *
racer_with_a_cowl (void)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  Part *cowl = part_new ("cowl", "cowl");

  cowl->x = 35;
  cowl->length = 40;
  cowl->width = cowl->height = 40;
  cowl->mass = 5;
  return aeroplane_with_added (aeroplane, &cowl->piece);
}

static inline Figures *
figures_taking (Aeroplane *takes)
{
  g_autoptr (Aeroplane) aeroplane = takes;

  return figures_once (aeroplane);
}

/* The one input whose label begins so; the test ends without. */
static inline const ExplanationInput *
input (const Explanation *explanation, const char *label)
{
  ck_assert_ptr_nonnull (explanation);
  for (size_t i = 0; i < explanation->input_count; i++)
    if (g_str_has_prefix (explanation->inputs[i].label, label))
      return &explanation->inputs[i];
  ck_abort_msg ("“%s” has no input “%s”", explanation->title, label);
}

static inline double
number (const Explanation *explanation, const char *label)
{
  return input (explanation, label)->value;
}

static inline Explanation *
explained (const Figures *figures, ExplainedFigure what, const char *id)
{
  Explanation *made = explanation_new (figures, what, id, metric);

  ck_assert_msg (made != NULL, "figure %d is not explained", what);
  return made;
}

static inline void
assert_close (double got, double wanted)
{
  ck_assert_double_eq_tol (got, wanted, 1e-9 * fmax (1, fabs (wanted)));
}
