#include "trammel-config.h"
#include "app/structure-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/loads.h"

const Structure *
structure_selected (TrammelSession *session)
{
  return aeroplane_structure_of (trammel_session_aeroplane (session), selection_single (trammel_session_selection (session)));
}

const StructureFigures *
structure_selected_figures (TrammelSession *session)
{
  const Structure *structure = structure_selected (session);

  return structure != NULL ? figures_of_structure (trammel_session_figures (session), structure) : NULL;
}

static double
structure_value (TrammelSession *session, const FieldSpec *spec)
{
  const Structure *structure = structure_selected (session);

  return structure != NULL ? *(const double *) ((const char *) structure + spec->at) : NAN;
}

/* What counts: typed, or what its lines come to. */
static double
structure_mass (TrammelSession *session, const FieldSpec *spec)
{
  const Structure *structure = structure_selected (session);
  const StructureFigures *figures = structure_selected_figures (session);

  if (structure == NULL || !isnan (structure->mass))
    return structure_value (session, spec);
  return figures != NULL ? figures->mass_g : NAN;
}

static Structure *
structure_draft (TrammelSession *session)
{
  const Structure *structure = structure_selected (session);
  const char *of = selection_single (trammel_session_selection (session));
  g_autofree char *stem = g_strdup_printf ("%s-structure", of);
  g_autofree char *id = NULL;

  if (structure != NULL)
    return (Structure *) piece_dup (&structure->piece);
  id = aeroplane_free_id (trammel_session_aeroplane (session), stem);
  return structure_new (id, of, 0);
}

static Aeroplane *
with_structure_value (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Structure *old = structure_selected (session);
  Structure *next;

  if (piece_field_selected (session) == NULL || value < spec->least || value > spec->most)
    return NULL;
  if (isnan (value) && spec->at == offsetof (Structure, mass) && (old == NULL || old->item_count == 0))
    return aeroplane_ref (trammel_session_aeroplane (session));      /* nothing else says what it weighs */
  next = structure_draft (session);
  *(double *) ((char *) next + spec->at) = value;
  if (old != NULL)
    return aeroplane_with_replaced (trammel_session_aeroplane (session), &old->piece, &next->piece);
  return aeroplane_with_added (trammel_session_aeroplane (session), &next->piece);
}

/* How well a mass is known says nothing before there is a mass. */
static Aeroplane *
with_structure_sigma (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Structure *structure = structure_selected (session);

  if (structure == NULL || !structure_is_given (structure))
    return isnan (value) ? aeroplane_ref (trammel_session_aeroplane (session)) : NULL;
  return with_structure_value (session, spec, value);
}

static char *
why_no_sigma (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Structure *structure = structure_selected (session);

  return structure == NULL || !structure_is_given (structure) ? g_strdup (_("Type the mass first.")) : NULL;
}

static Aeroplane *
with_structure_known (TrammelSession *session, const FieldSpec *spec, double value, double deviation)
{
  const Structure *old = structure_selected (session);
  Structure *next;

  if (piece_field_selected (session) == NULL || fmin (value, deviation) < spec->least || fmax (value, deviation) > spec->most)
    return NULL;
  next = structure_draft (session);
  next->mass = value;
  next->mass_sigma = deviation;
  if (old != NULL)
    return aeroplane_with_replaced (trammel_session_aeroplane (session), &old->piece, &next->piece);
  return aeroplane_with_added (trammel_session_aeroplane (session), &next->piece);
}

/* What is typed alone comes from a scale, whatever was reckoned before: it is known to half a gram, or as well as was said of it where that
 * is better. Of nothing there is nothing to know, and emptied its lines tell both again. */
static Aeroplane *
with_structure_mass (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Structure *old = structure_selected (session);
  const double known = old != NULL && old->mass > 0 && old->mass_sigma > 0 ? old->mass_sigma : SCALE_SIGMA_G;

  if (isnan (value) && (old == NULL || old->item_count == 0))
    return with_structure_value (session, spec, value);
  return with_structure_known (session, spec, value, value > 0 ? fmin (known, SCALE_SIGMA_G) : NAN);
}

/* What the whole airframe on the scale makes of it; NULL while nobody has weighed that. */
static char *
structure_counts_as (TrammelSession *session, const Structure *structure)
{
  const Figures *figures = trammel_session_figures (session);

  for (size_t i = 0; figures->airframe.weighed && i < figures->load_count; i++)
    if (figures->loads[i].piece == &structure->piece) {
      g_autofree char *mass = units_mass (trammel_session_units (session), figures->loads[i].mass_g);

      /* Translators: beside a structure's mass: %s is what it is taken to weigh since the whole airframe was weighed */
      return g_strdup_printf (_("counts as %s"), mass);
    }
  return NULL;
}

static char *
structure_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Structure *structure = structure_selected (session);
  char *counts = structure != NULL ? structure_counts_as (session, structure) : NULL;

  if (structure == NULL || counts != NULL)
    return counts;
  if (isnan (structure->mass) && structure->item_count > 0)
    /* Translators: beside a mass that nobody has weighed: the lines of the list below tell it. */
    return g_strdup (_("by its lines"));
  if (isnan (structure->mass))
    return g_strdup (_("not weighed"));
  /* Translators: beside a mass of which nobody said how well it is known: it may be weighed, or a guess. */
  return isnan (structure->mass_sigma) ? g_strdup (_("typed")) : NULL;
}

FieldList
structure_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Mass"), .kind = FIELD_MASS, .value = structure_mass, .change = with_structure_mass, .optional = true,
      .step = N_("Change Mass"), .at = offsetof (Structure, mass), .least = 0, .most = 100000, .remark = structure_remark,
      .change_known = with_structure_known, .refused = N_("A mass lies between 0 and 100 kg.") },
    { .label = N_("Known to ±"), .kind = FIELD_DEVIATION, .value = structure_value, .change = with_structure_sigma, .why = why_no_sigma,
      .optional = true,
      .step = N_("Change Deviation"), .at = offsetof (Structure, mass_sigma), .least = 0, .most = 100000,
      .refused = N_("A deviation lies between 0 and 100 kg.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

/* The usual excess, and what all comes to. */

static double
excess_value (TrammelSession *session, const FieldSpec *spec)
{
  const Structure *structure = structure_selected (session);

  return structure != NULL ? round (structure->excess * 1e5) / 1e3 : NAN;
}

static Aeroplane *
with_excess (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Structure *old = structure_selected (session);
  Structure *next;

  if (old == NULL || !(value >= 0 && value <= 100))
    return NULL;
  next = (Structure *) piece_dup (&old->piece);
  next->excess = value / 100;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), &old->piece, &next->piece);
}

static char *
excess_remark (TrammelSession *session, const FieldSpec *spec)
{
  const StructureFigures *figures = structure_selected_figures (session);

  return figures != NULL && !isnan (figures->excess_g) ? units_mass (trammel_session_units (session), figures->excess_g) : NULL;
}

static double
estimate_value (TrammelSession *session, const FieldSpec *spec)
{
  const StructureFigures *figures = structure_selected_figures (session);

  return figures != NULL ? figures->estimate_g : NAN;
}

static char *
estimate_remark (TrammelSession *session, const FieldSpec *spec)
{
  const StructureFigures *figures = structure_selected_figures (session);
  g_autofree char *sigma = figures != NULL ? units_mass_deviation (trammel_session_units (session), figures->estimate_sigma_g) : NULL;

  return sigma != NULL ? g_strdup_printf ("± %s", sigma) : NULL;
}

FieldList
structure_sum_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Usual excess"), .kind = FIELD_PERCENT, .value = excess_value, .change = with_excess, .remark = excess_remark,
      .step = N_("Change Excess"), .refused = N_("The excess lies between 0 and 100 %; builders come out 10 to 20 % over the sum.") },
    { .label = N_("Together"), .kind = FIELD_MASS, .value = estimate_value, .remark = estimate_remark },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
