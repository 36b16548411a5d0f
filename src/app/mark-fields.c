#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/changes.h"

/* The spec's `at` is the mark's index here. */
static const MarkFigures *
mark_figures (TrammelSession *session, const FieldSpec *spec)
{
  const Figures *figures = trammel_session_figures (session);

  return spec->at < figures->balance.mark_count ? &figures->balance.marks[spec->at] : NULL;
}

static double
mark_value (TrammelSession *session, const FieldSpec *spec)
{
  const MarkFigures *mark = mark_figures (session, spec);

  return mark != NULL ? mark->station_mm : NAN;
}

static Aeroplane *
with_mark_value (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Figures *figures = trammel_session_figures (session);

  if (value < 0 || figures->reference == NULL || value > figures->reference->planform.span / 2)
    return NULL;
  return change_mark_station (trammel_session_aeroplane (session), spec->at, value);
}

static char *
mark_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Units units = trammel_session_units (session);
  const MarkFigures *mark = mark_figures (session, spec);
  g_autofree char *target = NULL;

  if (mark == NULL || isnan (mark->target_mm))
    return NULL;
  target = units_length (units, mark->target_mm);
  /* Translators: where the balance mark stands on the wing, e.g. "mark 36 mm" */
  return g_strdup_printf (_("mark %s"), target);
}

FieldList
mark_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Station"), .kind = FIELD_LENGTH, .value = mark_value, .change = with_mark_value,
      .explained = EXPLAIN_MARK, .remark = mark_remark,
      .step = N_("Move Balance Mark"), .at = 0, .refused = N_("The station lies on the wing: between the centre line and the tip.") },
    { .label = N_("Second station"), .kind = FIELD_LENGTH, .value = mark_value, .change = with_mark_value,
      .explained = EXPLAIN_MARK, .remark = mark_remark,
      .step = N_("Move Balance Mark"), .at = 1, .refused = N_("The station lies on the wing: between the centre line and the tip.") },
    { .label = N_("Third station"), .kind = FIELD_LENGTH, .value = mark_value, .change = with_mark_value,
      .explained = EXPLAIN_MARK, .remark = mark_remark,
      .step = N_("Move Balance Mark"), .at = 2, .refused = N_("The station lies on the wing: between the centre line and the tip.") },
    { .label = N_("Fourth station"), .kind = FIELD_LENGTH, .value = mark_value, .change = with_mark_value,
      .explained = EXPLAIN_MARK, .remark = mark_remark,
      .step = N_("Move Balance Mark"), .at = 3, .refused = N_("The station lies on the wing: between the centre line and the tip.") },
  };
  const size_t count = trammel_session_figures (session)->balance.mark_count;

  return (FieldList) { specs, MIN (count, G_N_ELEMENTS (specs)) };
}
