#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/changes.h"

/* The spec's `at` is the mark's number, from 0. */
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

/* The three figures that a person goes by at that station. */
static char *
mark_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Units units = trammel_session_units (session);
  const MarkFigures *mark = mark_figures (session, spec);
  g_autofree char *target = NULL, *forward = NULL, *aft = NULL;

  if (mark == NULL || isnan (mark->target_mm))
    return NULL;
  target = units_length (units, mark->target_mm);
  if (isnan (mark->forward_mm) || isnan (mark->aft_mm))
    /* Translators: where the balance mark stands on the wing, e.g. "mark 36 mm" */
    return g_strdup_printf (_("mark %s"), target);
  forward = units_length_figure (units, mark->forward_mm);
  aft = units_length (units, mark->aft_mm);
  /* Translators: where the balance mark stands on the wing, and the foremost and aftmost place it may have: "mark 36 mm, from 30 to 41 mm" */
  return g_strdup_printf (_("mark %s, from %s to %s"), target, forward, aft);
}

static FieldSpec *
mark_field_new (size_t mark, bool numbered)
{
  FieldSpec *spec = g_new (FieldSpec, 1);

  *spec = (FieldSpec) { .label = N_("Station"), .kind = FIELD_LENGTH, .value = mark_value, .change = with_mark_value, .explained = EXPLAIN_MARK,
                        .remark = mark_remark, .remark_below = true, .step = N_("Move Balance Mark"), .at = mark,
                        .refused = N_("The station lies on the wing: between the centre line and the tip.") };
  if (numbered)
    /* Translators: the station of the balance mark of that number, where there are several */
    spec->label = g_strdup_printf (_("Station %zu"), mark + 1);
  return spec;
}

/* Rows hold their spec, and come and go: specs are made once and stay. */
const FieldSpec *
mark_field (size_t mark, bool numbered)
{
  static GPtrArray *made[2];

  if (made[numbered] == NULL)
    made[numbered] = g_ptr_array_new ();
  while (made[numbered]->len <= mark)
    g_ptr_array_add (made[numbered], mark_field_new (made[numbered]->len, numbered));
  return g_ptr_array_index (made[numbered], mark);
}

static int
rises (gconstpointer a, gconstpointer b)
{
  const double difference = *(const double *) a - *(const double *) b;

  return (difference > 0) - (difference < 0);
}

/* The middle of the widest stretch between centre line, marks and tip, a whole millimetre. */
static double
free_station (const BalanceFigures *balance, double semispan)
{
  g_autofree double *stations = g_new (double, balance->mark_count + 2);
  double widest = 0, middle = semispan / 2;

  stations[0] = 0;
  stations[1] = semispan;
  for (size_t i = 0; i < balance->mark_count; i++)
    stations[i + 2] = CLAMP (balance->marks[i].station_mm, 0, semispan);
  qsort (stations, balance->mark_count + 2, sizeof *stations, rises);
  for (size_t i = 1; i < balance->mark_count + 2; i++)
    if (stations[i] - stations[i - 1] > widest) {
      widest = stations[i] - stations[i - 1];
      middle = (stations[i] + stations[i - 1]) / 2;
    }
  return round (middle);
}

Aeroplane *
mark_added (TrammelSession *session)
{
  const Figures *figures = trammel_session_figures (session);
  const Aeroplane *now = trammel_session_settled (session);
  g_autoptr (Aeroplane) stated = NULL;

  if (figures->reference == NULL || figures->balance.mark_count == 0 || !isfinite (figures->balance.marks[0].station_mm))
    return NULL;
  stated = aeroplane_count (now, PIECE_MARK) > 0 ? aeroplane_ref (now)
           : aeroplane_with_added (now, &mark_new (figures->balance.marks[0].station_mm)->piece);
  return aeroplane_with_added (stated, &mark_new (free_station (&figures->balance, figures->reference->planform.span / 2))->piece);
}
