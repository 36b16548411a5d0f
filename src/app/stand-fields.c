#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "document/changes.h"
#include "document/part-box.h"
#include "figures/part-stand.h"

/* Where the selected part stands, and what its figures move: the spec's `at` is the place of one of PartStand. */

static bool
selected_stand (TrammelSession *session, PartStand *stand)
{
  const Part *part = trammel_session_selected_part (session);
  g_autoptr (PartRule) rule = part != NULL ? part_rule_new (trammel_session_aeroplane (session)) : NULL;

  return part != NULL && part_stand_of (rule, part, stand);
}

static double
told_of (const PartStand *stand, const FieldSpec *spec)
{
  return *(const double *) (const void *) ((const char *) stand + spec->at);
}

/* A rule has no minus: the remark says on which side. */
static double
stand_value (TrammelSession *session, const FieldSpec *spec)
{
  PartStand stand;

  return selected_stand (session, &stand) ? fabs (told_of (&stand, spec)) : NAN;
}

static char *
edge_remark (TrammelSession *session, const FieldSpec *spec)
{
  PartStand stand;

  if (!selected_stand (session, &stand))
    return NULL;
  /* Translators: stands behind a length; %s is a former's name */
  return g_strdup_printf (told_of (&stand, spec) < 0 ? _("ahead of %s") : _("behind %s"), stand.former->name);
}

static char *
height_remark (TrammelSession *session, const FieldSpec *spec)
{
  /* Translators: stands behind a length: of the body */
  return g_strdup (_("above the bottom"));
}

/* Where the part's middle is when its edge stands that far from the former, which stays on its side. */
static double
middle_for (const Part *part, const PartStand *stand, const FieldSpec *spec, double value)
{
  const double now = told_of (stand, spec);

  return part->x + (now < 0 ? -value : value) - now;
}

/* What is shown is rounded: an end typed as it is read lies on the rail. */
static bool
is_past_rail (const Part *part, double x)
{
  const double rounded = 0.5;

  return part->has_rail && (x < part->rail_from - rounded || x > part->rail_to + rounded);
}

/* The whole part goes along. */
static Aeroplane *
with_edge (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  PartStand stand;
  double x;

  if (!selected_stand (session, &stand) || !(fabs (value) <= LENGTH_LIMIT_MM))
    return NULL;
  x = middle_for (part, &stand, spec, value);
  if (is_past_rail (part, x))
    return NULL;
  if (part->has_rail)
    x = CLAMP (x, part->rail_from, part->rail_to);
  return change_part_place (trammel_session_aeroplane (session), part->piece.id, x, part->y, part->z);
}

static char *
why_no_edge (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  const Units units = trammel_session_units (session);
  g_autofree char *from = NULL, *to = NULL;
  PartStand stand;

  if (!selected_stand (session, &stand) || !(fabs (value) <= LENGTH_LIMIT_MM) || !is_past_rail (part, middle_for (part, &stand, spec, value)))
    return NULL;
  from = part_stand_text (&stand, told_of (&stand, spec) + part->rail_from - part->x, units);
  to = part_stand_text (&stand, told_of (&stand, spec) + part->rail_to - part->x, units);
  /* Translators: two places of an edge of a part: "4 mm ahead of F1", "52 mm behind F1" */
  return g_strdup_printf (_("That is past the end of its rail, on which this edge goes from %s to %s."), from, to);
}

static Aeroplane *
with_height (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  PartStand stand;

  if (!selected_stand (session, &stand) || !(value >= 0 && value <= LENGTH_LIMIT_MM) || !isfinite (told_of (&stand, spec)))
    return NULL;
  return change_part_place (trammel_session_aeroplane (session), part->piece.id, part->x, part->y, part->z + value - told_of (&stand, spec));
}

FieldList
part_stand_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Front edge"), .explained = EXPLAIN_STAND, .remark_below = true, .kind = FIELD_LENGTH,
      .value = stand_value, .change = with_edge, .step = N_("Move Part"),
      .at = offsetof (PartStand, front_mm), .remark = edge_remark, .why = why_no_edge,
      .refused = N_("That is further than 20 m away.") },
    { .label = N_("Rear edge"), .explained = EXPLAIN_STAND, .remark_below = true, .kind = FIELD_LENGTH,
      .value = stand_value, .change = with_edge, .step = N_("Move Part"),
      .at = offsetof (PartStand, rear_mm), .remark = edge_remark, .why = why_no_edge,
      .refused = N_("That is further than 20 m away.") },
    { .label = N_("Front height"), .explained = EXPLAIN_STAND, .remark_below = true, .kind = FIELD_LENGTH,
      .value = stand_value, .change = with_height, .step = N_("Move Part"),
      .at = offsetof (PartStand, front_height_mm), .remark = height_remark, .refused = N_("A tray lies above the body's bottom.") },
    { .label = N_("Rear height"), .explained = EXPLAIN_STAND, .remark_below = true, .kind = FIELD_LENGTH,
      .value = stand_value, .change = with_height, .step = N_("Move Part"),
      .at = offsetof (PartStand, rear_height_mm), .remark = height_remark, .refused = N_("A tray lies above the body's bottom.") },
  };
  PartStand stand;

  if (!selected_stand (session, &stand))
    return (FieldList) { specs, 0 };
  return (FieldList) { specs, isnan (stand.front_height_mm) || isnan (stand.rear_height_mm) ? 2 : G_N_ELEMENTS (specs) };
}
