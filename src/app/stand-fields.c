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

/* The whole part goes along; the side of the former stays. */
static Aeroplane *
with_edge (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  PartStand stand;

  if (!selected_stand (session, &stand) || !(fabs (value) <= LENGTH_LIMIT_MM))
    return NULL;
  const double now = told_of (&stand, spec), wanted = now < 0 ? -value : value;
  return change_part_place (trammel_session_aeroplane (session), part->piece.id, part->x + wanted - now, part->y, part->z);
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
    { .label = N_("Front edge"), .kind = FIELD_LENGTH, .value = stand_value, .change = with_edge, .step = N_("Move Part"),
      .at = offsetof (PartStand, front_mm), .remark = edge_remark, .refused = N_("That is further than 20 m away.") },
    { .label = N_("Rear edge"), .kind = FIELD_LENGTH, .value = stand_value, .change = with_edge, .step = N_("Move Part"),
      .at = offsetof (PartStand, rear_mm), .remark = edge_remark, .refused = N_("That is further than 20 m away.") },
    { .label = N_("Front height"), .kind = FIELD_LENGTH, .value = stand_value, .change = with_height, .step = N_("Move Part"),
      .at = offsetof (PartStand, front_height_mm), .remark = height_remark, .refused = N_("A tray lies above the body's bottom.") },
    { .label = N_("Rear height"), .kind = FIELD_LENGTH, .value = stand_value, .change = with_height, .step = N_("Move Part"),
      .at = offsetof (PartStand, rear_height_mm), .remark = height_remark, .refused = N_("A tray lies above the body's bottom.") },
  };
  PartStand stand;

  if (!selected_stand (session, &stand))
    return (FieldList) { specs, 0 };
  return (FieldList) { specs, isnan (stand.front_height_mm) || isnan (stand.rear_height_mm) ? 2 : G_N_ELEMENTS (specs) };
}
