#include "trammel-config.h"
#include "app/lead-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/lead-edit.h"
#include "app/length-limit.h"
#include "document/changes.h"
#include "figures/lead-need.h"

const Lead *
lead_selected (TrammelSession *session)
{
  return aeroplane_lead_by_id (trammel_session_aeroplane (session), selection_single (trammel_session_selection (session)));
}

bool
lead_point_selected (TrammelSession *session, LeadPoint *point)
{
  const Selection *selection = trammel_session_selection (session);

  return lead_selected (session) != NULL && selection->node_count == 1
         && lead_edit_point (trammel_session_aeroplane (session), selection->ids[0], selection->nodes[0], point);
}

bool
lead_usual (TrammelSession *session)
{
  const Lead *lead = lead_selected (session);
  bool usual = false;

  for (int leg = 0; lead != NULL && leg < lead_leg_count (lead); leg++)
    usual = usual || lead_runs_as_usual (trammel_session_aeroplane (session), lead, leg);
  return usual;
}

/* The spec's offset tells which of the two coordinates. */
static double
point_value (TrammelSession *session, const FieldSpec *spec)
{
  LeadPoint point;

  return lead_point_selected (session, &point) ? *(const double *) ((const char *) &point.place + spec->at) : NAN;
}

static Aeroplane *
with_point (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Selection *selection = trammel_session_selection (session);
  LeadPoint point;

  if (!lead_point_selected (session, &point) || !(fabs (value) <= LENGTH_LIMIT_MM))
    return NULL;
  *(double *) ((char *) &point.place + spec->at) = value;
  return lead_edit_moved (trammel_session_aeroplane (session), selection->ids[0], selection->nodes[0], point.place);
}

FieldList
lead_point_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Aft of datum"), .kind = FIELD_LENGTH, .value = point_value, .change = with_point, .step = N_("Move Bend"),
      .at = offsetof (Point, x), .refused = N_("That is further than 20 m away.") },
    { .label = N_("Off centre"), .kind = FIELD_LENGTH, .value = point_value, .change = with_point, .step = N_("Move Bend"),
      .remark = off_centre_remark, .at = offsetof (Point, y), .refused = N_("That is further than 20 m away.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

/* Of a leg the spec's `at` tells which. */

static double
leg_length (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL ? lead_leg_length (lead, (LeadLeg) spec->at) : NAN;
}

static Aeroplane *
with_leg_length (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Lead *lead = lead_selected (session);
  Lead *next;

  if (lead == NULL || value < 0 || value > LENGTH_LIMIT_MM)
    return NULL;
  next = (Lead *) piece_dup (&lead->piece);
  *lead_leg_length_in (next, (LeadLeg) spec->at) = value;
  return change_lead (trammel_session_aeroplane (session), lead->piece.id, next);
}

static LeadNeed
leg_need (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL ? lead_need_of (trammel_session_aeroplane (session), lead, (LeadLeg) spec->at) : (LeadNeed) { NAN, NAN, NAN, NAN, NAN };
}

static double
leg_way (TrammelSession *session, const FieldSpec *spec)
{
  return leg_need (session, spec).route;
}

static double
leg_needed (TrammelSession *session, const FieldSpec *spec)
{
  return leg_need (session, spec).needed;
}

static char *
leg_way_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL && lead_runs_as_usual (trammel_session_aeroplane (session), lead, (LeadLeg) spec->at)
         /* Translators: after the length of a lead's way: nobody has put places on it */
         ? g_strdup (_("as usual")) : NULL;
}

/* Below 0 it is short. */
static double
leg_left (TrammelSession *session, const FieldSpec *spec)
{
  return leg_length (session, spec) - leg_need (session, spec).needed;
}

static char *
leg_left_remark (TrammelSession *session, const FieldSpec *spec)
{
  return leg_left (session, spec) < 0 ? g_strdup (_("too short")) : NULL;
}

static double
leg_extension (TrammelSession *session, const FieldSpec *spec)
{
  const LeadNeed need = leg_need (session, spec);

  return need.missing > 0 ? need.extension : NAN;
}

static char *
leg_extension_remark (TrammelSession *session, const FieldSpec *spec)
{
  const LeadNeed need = leg_need (session, spec);

  if (need.missing > 0)
    return isnan (need.extension) ? g_strdup (_("one is not enough")) : g_strdup (_("makes up for it"));
  return isnan (need.missing) ? NULL : g_strdup (_("not needed"));
}

#define LEG_ROWS(leg) \
  { .label = N_("Length"), .kind = FIELD_LENGTH, .value = leg_length, .change = with_leg_length, .at = leg, .optional = true, \
    .step = N_("Change Lead Length"), .refused = N_("A lead is between 0 and 20 m long.") }, \
  { .label = N_("Its way"), .kind = FIELD_LENGTH, .value = leg_way, .at = leg, .remark = leg_way_remark }, \
  { .label = N_("Needs"), .kind = FIELD_LENGTH, .value = leg_needed, .at = leg }, \
  { .label = N_("Left over"), .kind = FIELD_LENGTH, .value = leg_left, .at = leg, .remark = leg_left_remark }, \
  { .label = N_("Extension"), .kind = FIELD_LENGTH, .value = leg_extension, .at = leg, .remark = leg_extension_remark }

FieldList
lead_leg_fields (LeadLeg leg)
{
  static const FieldSpec specs[LEG_COUNT][5] = { { LEG_ROWS (LEG_FROM) }, { LEG_ROWS (LEG_ALSO) }, { LEG_ROWS (LEG_TO) } };

  return (FieldList) { specs[leg], G_N_ELEMENTS (specs[leg]) };
}

/* Slack is told as what comes on top, %. */
static double
slack_value (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL ? round (1e8 * (lead_slack (lead) - 1)) / 1e6 : NAN;      /* what was typed, and not 12.000000000000011 */
}

static Aeroplane *
with_slack (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Lead *lead = lead_selected (session);
  Lead *next;

  if (lead == NULL || value < 0 || value > 200)
    return NULL;
  next = (Lead *) piece_dup (&lead->piece);
  next->slack = 1 + value / 100;
  return change_lead (trammel_session_aeroplane (session), lead->piece.id, next);
}

static char *
slack_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL && isnan (lead->slack) ? g_strdup (_("as usual")) : NULL;
}

static double
allowance_value (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  return lead != NULL ? lead_allowance (lead) : NAN;
}

static char *
allowance_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Lead *lead = lead_selected (session);

  if (lead == NULL)
    return NULL;
  if (!lead_unplugs (trammel_session_aeroplane (session), lead))
    return g_strdup (_("not counted"));
  return isnan (lead->allowance) ? g_strdup (_("as usual")) : NULL;
}

static Aeroplane *
with_number (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Lead *lead = lead_selected (session);
  Lead *next;

  if (lead == NULL || value < 0 || value > spec->most)
    return NULL;
  next = (Lead *) piece_dup (&lead->piece);
  *(double *) ((char *) next + spec->at) = value;
  return change_lead (trammel_session_aeroplane (session), lead->piece.id, next);
}

FieldList
lead_slack_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Slack"), .kind = FIELD_PERCENT, .value = slack_value, .change = with_slack, .optional = true, .remark = slack_remark,
      .step = N_("Change Slack"), .refused = N_("Slack lies between 0 and 200 %.") },
    { .label = N_("At the wing"), .kind = FIELD_LENGTH, .value = allowance_value, .change = with_number, .optional = true,
      .remark = allowance_remark, .at = offsetof (Lead, allowance), .most = 1000, .step = N_("Change Room at the Wing"),
      .refused = N_("The hand needs between 0 and 1 m.") },
    { .label = N_("Mass of its own"), .kind = FIELD_MASS, .value = piece_field_value, .change = with_number, .at = offsetof (Lead, mass),
      .most = 10000, .step = N_("Change Mass"), .refused = N_("A lead weighs between 0 and 10 kg.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
