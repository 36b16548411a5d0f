#include "trammel-config.h"
#include "app/answer-fields.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"

/* The band's three fields. A value that would turn the band inside out is refused with a sentence. */
static Aeroplane *
answer_with_target (TrammelSession *session, Target target)
{
  AeroplaneTraits traits = aeroplane_traits (trammel_session_aeroplane (session));

  if (!(target.from <= target.aim && target.aim <= target.to) || target.from < -50 || target.to > 100)
    return NULL;
  traits.target = target;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static Target
answer_target (TrammelSession *session)
{
  return aeroplane_traits (trammel_session_aeroplane (session)).target;
}

/* The spec's offset tells which of the three. */
static double
band_value (TrammelSession *session, const FieldSpec *spec)
{
  const Target target = answer_target (session);

  return *(const double *) ((const char *) &target + spec->at);
}

static Aeroplane *
with_band_value (TrammelSession *session, const FieldSpec *spec, double value)
{
  Target target = answer_target (session);

  *(double *) ((char *) &target + spec->at) = value;
  return answer_with_target (session, target);
}

static double
mark_station (TrammelSession *session, const FieldSpec *spec)
{
  const Figures *figures = trammel_session_figures (session);

  return figures->balance.mark_count > 0 ? figures->balance.marks[0].station_mm : NAN;
}

static Aeroplane *
with_mark_station (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Figures *figures = trammel_session_figures (session);

  if (value < 0 || figures->reference == NULL || value > figures->reference->planform.span / 2)
    return NULL;
  return change_mark_station (trammel_session_aeroplane (session), 0, value);
}

FieldList
answer_band_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Least"), .kind = FIELD_PERCENT, .value = band_value, .change = with_band_value, .at = offsetof (Target, from),
      .step = N_("Change Wanted Margin"),
      .refused = N_("The least lies at or below the aim.") },
    { .label = N_("Aim"), .kind = FIELD_PERCENT, .value = band_value, .change = with_band_value, .at = offsetof (Target, aim),
      .step = N_("Change Wanted Margin"),
      .refused = N_("The aim lies between the least and the most.") },
    { .label = N_("Most"), .kind = FIELD_PERCENT, .value = band_value, .change = with_band_value, .at = offsetof (Target, to),
      .step = N_("Change Wanted Margin"),
      .refused = N_("The most lies at or above the aim.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

FieldList
answer_station_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Station"), .kind = FIELD_LENGTH, .value = mark_station, .change = with_mark_station, .step = N_("Move Balance Mark"),
      .refused = N_("The station lies on the wing: between the centre line and the tip.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
