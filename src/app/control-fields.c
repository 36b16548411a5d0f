#include "trammel-config.h"
#include "app/control-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/hinge-words.h"
#include "app/length-limit.h"
#include "document/changes.h"

/* degrees: further no control is turned. Common practice, no source. */
#define MOST_THROW 90

const Control *
control_selected (TrammelSession *session)
{
  const Selection *selection = trammel_session_selection (session);

  return aeroplane_control_by_id (trammel_session_aeroplane (session), selection_single (selection), selection->control);
}

size_t
control_place (TrammelSession *session)
{
  const Figures *figures = trammel_session_figures (session);
  const Selection *selection = trammel_session_selection (session);
  const ControlFigures *control = figures_of_control (figures, selection_single (selection), selection->control);

  return control != NULL ? (size_t) (control - figures->controls) : figures->control_count;
}

Aeroplane *
control_changed (TrammelSession *session, const Control *next)
{
  const Selection *selection = trammel_session_selection (session);

  return change_control (trammel_session_aeroplane (session), selection_single (selection), selection->control, next);
}

static bool
is_outer (const FieldSpec *spec)
{
  return spec->at == offsetof (Control, outer);
}

/* The control as it would be; false without one. The hinge line stays the line that it is; the control grows or shrinks along it. */
static bool
with_station (TrammelSession *session, const FieldSpec *spec, double value, Control *next)
{
  const Control *old = control_selected (session);

  if (old == NULL)
    return false;
  *next = *old;
  *(is_outer (spec) ? &next->outer : &next->inner) = value;
  *(is_outer (spec) ? &next->hinge_outer_x : &next->hinge_inner_x) = hinge_x_at (old, value);
  return true;
}

static bool
with_chord (TrammelSession *session, const FieldSpec *spec, double value, Control *next)
{
  const Control *old = control_selected (session);

  if (old == NULL)
    return false;
  *next = *old;
  *(is_outer (spec) ? &next->hinge_outer_x : &next->hinge_inner_x)
      += hinge_chord (trammel_session_selected_surface (session), old, is_outer (spec)) - value;
  return true;
}

static double
station_value (TrammelSession *session, const FieldSpec *spec)
{
  const Control *control = control_selected (session);

  return control == NULL ? NAN : is_outer (spec) ? control->outer : control->inner;
}

static double
chord_value (TrammelSession *session, const FieldSpec *spec)
{
  const Control *control = control_selected (session);

  return control == NULL ? NAN : hinge_chord (trammel_session_selected_surface (session), control, is_outer (spec));
}

static Aeroplane *
station_change (TrammelSession *session, const FieldSpec *spec, double value)
{
  Control next;

  return with_station (session, spec, value, &next) ? control_changed (session, &next) : NULL;
}

static Aeroplane *
chord_change (TrammelSession *session, const FieldSpec *spec, double value)
{
  Control next;

  return value >= 0 && with_chord (session, spec, value, &next) ? control_changed (session, &next) : NULL;
}

static char *
why_not (TrammelSession *session, const Control *next)
{
  const Surface *surface = trammel_session_selected_surface (session);
  double station;
  const HingeFault fault = hinge_check (surface, next, &station);

  return hinge_words_fault (trammel_session_units (session), surface, fault, station);
}

static char *
why_no_station (TrammelSession *session, const FieldSpec *spec, double value)
{
  Control next;

  return with_station (session, spec, value, &next) ? why_not (session, &next) : NULL;
}

static char *
why_no_chord (TrammelSession *session, const FieldSpec *spec, double value)
{
  Control next;

  return with_chord (session, spec, value, &next) ? why_not (session, &next) : NULL;
}

static const ControlFigures *
selected_figures (TrammelSession *session)
{
  const Selection *selection = trammel_session_selection (session);

  return figures_of_control (trammel_session_figures (session), selection_single (selection), selection->control);
}

static double
control_area (TrammelSession *session, const FieldSpec *spec)
{
  const ControlFigures *figures = selected_figures (session);

  return figures != NULL ? figures->area_mm2 : NAN;
}

static double
control_share (TrammelSession *session, const FieldSpec *spec)
{
  const ControlFigures *figures = selected_figures (session);

  return figures != NULL ? round (figures->area_share_percent) : NAN;
}

static char *
share_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Surface *surface = trammel_session_selected_surface (session);

  return surface != NULL && surface_is_horizontal (surface) ? g_strdup (_("both sides")) : NULL;
}

/* Throws */

static double
throw_of (const Control *control, const FieldSpec *spec)
{
  return *(const double *) ((const char *) control + spec->at);
}

static double
throw_value (TrammelSession *session, const FieldSpec *spec)
{
  const Control *control = control_selected (session);

  return control != NULL ? throw_of (control, spec) : NAN;
}

static double
travel_value (TrammelSession *session, const FieldSpec *spec)
{
  const Control *control = control_selected (session);

  return control == NULL ? NAN : hinge_travel (trammel_session_selected_surface (session), control, throw_of (control, spec));
}

static Aeroplane *
throw_change (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Control *control = control_selected (session);
  Control next;

  if (control == NULL || value < 0 || value > MOST_THROW)
    return NULL;
  next = *control;
  *(double *) ((char *) &next + spec->at) = value;
  return control_changed (session, &next);
}

static Aeroplane *
travel_change (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Control *control = control_selected (session);
  double degrees;

  if (control == NULL || isnan (value))
    return control == NULL ? NULL : throw_change (session, spec, NAN);
  degrees = hinge_turn (trammel_session_selected_surface (session), control, value);
  return isnan (degrees) ? NULL : throw_change (session, spec, round (degrees * 1000) / 1000);
}

/* A surface of its own kind has words of its own; the rows are the same. */
enum { SHAPE_ROWS = 6, THROW_ROWS = 4 };

#define STATION_ROW(words, end) \
  { .label = words, .kind = FIELD_LENGTH, .value = station_value, .change = station_change, .why = why_no_station, \
    .step = N_("Move Hinge Line"), .at = offsetof (Control, end) }
#define CHORD_ROW(words, end) \
  { .label = words, .kind = FIELD_LENGTH, .value = chord_value, .change = chord_change, .why = why_no_chord, \
    .step = N_("Move Hinge Line"), .at = offsetof (Control, end), .refused = N_("A chord is not less than 0.") }
#define AREA_ROWS \
  { .label = N_("Area"), .kind = FIELD_AREA, .value = control_area, .explained = EXPLAIN_CONTROL_AREA, .remark = share_remark }, \
  { .label = N_("Share of area"), .kind = FIELD_PERCENT, .value = control_share }
#define THROW_ROW(words, way) \
  { .label = words, .kind = FIELD_ANGLE, .value = throw_value, .change = throw_change, .step = N_("Change Throw"), .optional = true, \
    .at = offsetof (Control, way), .refused = N_("A throw lies between 0 and 90°; 10 to 30 is usual.") }
#define TRAVEL_ROW(words, way) \
  { .label = words, .kind = FIELD_LENGTH, .value = travel_value, .change = travel_change, .step = N_("Change Throw"), .optional = true, \
    .at = offsetof (Control, way), .refused = N_("The trailing edge moves between 0 and the control's chord.") }

FieldList
control_shape_fields (TrammelSession *session)
{
  static const FieldSpec along[SHAPE_ROWS] = {
    STATION_ROW (N_("Inner station"), inner), STATION_ROW (N_("Outer station"), outer),
    CHORD_ROW (N_("Chord, inner end"), inner), CHORD_ROW (N_("Chord, outer end"), outer), AREA_ROWS };
  static const FieldSpec upright[SHAPE_ROWS] = {
    STATION_ROW (N_("Lower end, height"), inner), STATION_ROW (N_("Upper end, height"), outer),
    CHORD_ROW (N_("Chord, lower end"), inner), CHORD_ROW (N_("Chord, upper end"), outer), AREA_ROWS };
  const Surface *surface = trammel_session_selected_surface (session);

  return (FieldList) { surface != NULL && !surface_is_horizontal (surface) ? upright : along, SHAPE_ROWS };
}

FieldList
control_throw_fields (TrammelSession *session)
{
  static const FieldSpec level[THROW_ROWS] = {
    THROW_ROW (N_("Up"), up), TRAVEL_ROW (N_("Trailing edge up"), up),
    THROW_ROW (N_("Down"), down), TRAVEL_ROW (N_("Trailing edge down"), down) };
  static const FieldSpec sideways[THROW_ROWS] = {
    THROW_ROW (N_("To port"), up), TRAVEL_ROW (N_("Trailing edge to port"), up),
    THROW_ROW (N_("To starboard"), down), TRAVEL_ROW (N_("Trailing edge to starboard"), down) };
  const Surface *surface = trammel_session_selected_surface (session);

  return (FieldList) { surface != NULL && !surface_is_horizontal (surface) ? sideways : level, THROW_ROWS };
}

static double
roll_rate (TrammelSession *session, const FieldSpec *spec)
{
  const ControlFigures *figures = selected_figures (session);

  return figures != NULL ? figures->roll_rate_deg_s : NAN;
}

FieldList
control_roll_fields (TrammelSession *session)
{
  static const FieldSpec rows[] = { { .label = N_("Roll rate, degrees a second"), .kind = FIELD_NUMBER, .value = roll_rate } };

  return (FieldList) { rows, isfinite (roll_rate (session, rows)) ? G_N_ELEMENTS (rows) : 0 };
}
