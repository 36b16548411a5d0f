#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "figures/usual-fit.h"

static char *
aeroplane_name (TrammelSession *session)
{
  const char *name = aeroplane_traits (trammel_session_aeroplane (session)).name;

  return g_strdup (name != NULL ? name : "");
}

static Aeroplane *
with_aeroplane_name (TrammelSession *session, const char *text)
{
  AeroplaneTraits traits = aeroplane_traits (trammel_session_aeroplane (session));

  traits.name = *text != '\0' ? text : NULL;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

/* The spec's offset tells which figure. */
static double
figure_value (TrammelSession *session, const FieldSpec *spec)
{
  return *(const double *) ((const char *) trammel_session_figures (session) + spec->at);
}

static double
mass_value (TrammelSession *session, const FieldSpec *spec)
{
  const double grams = figure_value (session, spec);

  return grams > 0 ? grams : NAN;
}

static char *
inertia_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("kg cm²"));
}

static double
inertia_value (TrammelSession *session, const FieldSpec *spec)
{
  return figure_value (session, spec) * 1e4;     /* kg m² read better as kg cm² at this size */
}

static char *
reynolds_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("at the stall"));
}

static char *
propeller_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("not counted"));
}

/* No station where the wing is evenly loaded. */
static double
first_stall_value (TrammelSession *session, const FieldSpec *spec)
{
  const MotionFigures *motion = &trammel_session_figures (session)->motion;

  return motion_stalls_somewhere (motion) ? motion->first_stall_station_mm : NAN;
}

static char *
untwisted_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("untwisted"));
}

static char *
handbook_remark (TrammelSession *session, const FieldSpec *spec)
{
  return aeroplane_count (trammel_session_aeroplane (session), PIECE_BODY) > 0 ? g_strdup (_("with body")) : NULL;
}

/* From the top down: what the parts do not weigh becomes structures. */
static Aeroplane *
with_all_up_mass (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Aeroplane *now = trammel_session_aeroplane (session);

  return isnan (value) ? aeroplane_ref (now) : usual_structures (now, value);
}

static char *
all_up_mass_refused (TrammelSession *session, const FieldSpec *spec, double value)
{
  g_autofree char *parts = units_mass (trammel_session_units (session), parts_mass (trammel_session_aeroplane (session)));

  return g_strdup_printf (_("The parts weigh %s already; type more than that, and the rest is shared out over wing, tail and body."), parts);
}

static char *
all_up_mass_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("parts alone"));
}

bool
aeroplane_takes_total (TrammelSession *session)
{
  const Aeroplane *now = trammel_session_settled (session);
  g_autoptr (Aeroplane) tried = usual_structures (now, parts_mass (now) + 1);

  return tried != NULL;
}

FieldList
aeroplane_fields (TrammelSession *session)
{
  static const FieldSpec total = {
    .label = N_("All-up mass"), .kind = FIELD_MASS, .value = mass_value, .change = with_all_up_mass, .step = N_("Share Out All-Up Mass"),
    .why = all_up_mass_refused, .remark = all_up_mass_remark, .explained = EXPLAIN_MASS, .at = offsetof (Figures, mass.total_g) };
  static FieldSpec open[6];
  static const FieldSpec specs[G_N_ELEMENTS (open)] = {
    { .label = N_("Name"), .kind = FIELD_TEXT, .text = aeroplane_name, .change_text = with_aeroplane_name, .step = N_("Change Name") },
    { .label = N_("All-up mass"), .kind = FIELD_MASS, .value = mass_value,
      .explained = EXPLAIN_MASS, .at = offsetof (Figures, mass.total_g) },
    { .label = N_("Wing loading"), .kind = FIELD_LOADING, .value = figure_value,
      .explained = EXPLAIN_WING_LOADING, .at = offsetof (Figures, flight.wing_loading_g_dm2) },
    { .label = N_("Stalling speed, about"), .kind = FIELD_SPEED, .value = figure_value,
      .explained = EXPLAIN_STALL_SPEED, .at = offsetof (Figures, flight.stall_speed_m_s) },
    { .label = N_("Balance point, aft of datum"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_BALANCE_POINT, .at = offsetof (Figures, mass.x_mm) },
    { .label = N_("Neutral point, aft of datum"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_NEUTRAL_POINT, .at = offsetof (Figures, neutral_point.x_mm) },
  };

  if (!aeroplane_takes_total (session))
    return (FieldList) { specs, G_N_ELEMENTS (specs) };
  memcpy (open, specs, sizeof specs);
  open[1] = total;
  return (FieldList) { open, G_N_ELEMENTS (open) };
}

FieldList
neutral_point_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Neutral point, aft of datum"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_NEUTRAL_POINT, .at = offsetof (Figures, neutral_point.x_mm) },
    { .label = N_("Known to ±"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_NEUTRAL_DEVIATION, .at = offsetof (Figures, neutral_point.sigma_mm) },
    { .label = N_("By the lattice, without body"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_LATTICE, .at = offsetof (Figures, neutral_point.lattice_x_mm) },
    { .label = N_("Shift by the sections"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_SECTION_SHIFT, .at = offsetof (Figures, neutral_point.section_shift_mm) },
    { .label = N_("Shift by the body"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_BODY_SHIFT, .at = offsetof (Figures, neutral_point.body_shift_mm) },
    { .label = N_("By the propeller"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_PROPELLER, .remark = propeller_remark,
      .at = offsetof (Figures, neutral_point.propeller_to_mm) },
    { .label = N_("By the handbook"), .kind = FIELD_LENGTH, .value = figure_value, .remark = handbook_remark,
      .explained = EXPLAIN_HANDBOOK, .at = offsetof (Figures, neutral_point.handbook_x_mm) },
    { .label = N_("Downwash gradient at the tail"), .kind = FIELD_RATIO, .value = figure_value,
      .explained = EXPLAIN_DOWNWASH, .at = offsetof (Figures, neutral_point.downwash_gradient) },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

/* Without its sign, which the remark tells in words. */
static double
size_value (TrammelSession *session, const FieldSpec *spec)
{
  return fabs (figure_value (session, spec));
}

static char *
side_remark (TrammelSession *session, const FieldSpec *spec)
{
  const double mm = figure_value (session, spec);
  g_autofree char *figure = units_length_figure (trammel_session_units (session), mm);
  g_autofree char *nothing = units_length_figure (trammel_session_units (session), 0);

  if (isnan (mm) || g_str_equal (figure, nothing))
    return NULL;
  /* Translators: behind a length off the centre line */
  return g_strdup (mm < 0 ? _("to port") : _("to starboard"));
}

FieldList
balance_point_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Balance point, aft of datum"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_BALANCE_POINT, .at = offsetof (Figures, mass.x_mm) },
    { .label = N_("Known to ±"), .kind = FIELD_LENGTH, .value = figure_value,
      .explained = EXPLAIN_BALANCE_DEVIATION, .at = offsetof (Figures, mass.x_sigma_mm) },
    { .label = N_("Off centre"), .kind = FIELD_LENGTH, .value = size_value, .remark = side_remark,
      .explained = EXPLAIN_BALANCE_ACROSS, .at = offsetof (Figures, mass.y_mm) },
    { .label = N_("Height"), .kind = FIELD_LENGTH, .value = figure_value, .remark = piece_height_remark,
      .explained = EXPLAIN_BALANCE_HEIGHT, .at = offsetof (Figures, mass.z_mm) },
    { .label = N_("Inertia in roll"), .kind = FIELD_RATIO, .value = inertia_value,
      .explained = EXPLAIN_INERTIA_ROLL, .remark = inertia_remark,
      .at = offsetof (Figures, mass.inertia_roll_kgm2) },
    { .label = N_("Inertia in pitch"), .kind = FIELD_RATIO, .value = inertia_value,
      .explained = EXPLAIN_INERTIA_PITCH, .remark = inertia_remark,
      .at = offsetof (Figures, mass.inertia_pitch_kgm2) },
    { .label = N_("Inertia in yaw"), .kind = FIELD_RATIO, .value = inertia_value,
      .explained = EXPLAIN_INERTIA_YAW, .remark = inertia_remark,
      .at = offsetof (Figures, mass.inertia_yaw_kgm2) },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

FieldList
motion_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Lift slope, per radian"), .kind = FIELD_RATIO, .value = figure_value,
      .explained = EXPLAIN_AEROPLANE_LIFT, .at = offsetof (Figures, motion.lift_slope_per_rad) },
    { .label = N_("Damping in roll"), .kind = FIELD_RATIO, .value = figure_value,
      .explained = EXPLAIN_ROLL_DAMPING, .at = offsetof (Figures, motion.roll_damping) },
    { .label = N_("Damping in pitch"), .kind = FIELD_RATIO, .value = figure_value,
      .explained = EXPLAIN_PITCH_DAMPING, .at = offsetof (Figures, motion.pitch_damping) },
    { .label = N_("Span efficiency of the wing"), .kind = FIELD_RATIO, .value = figure_value,
      .explained = EXPLAIN_SPAN_EFFICIENCY, .at = offsetof (Figures, motion.span_efficiency) },
    { .label = N_("Wing stalls first at station"), .kind = FIELD_LENGTH, .value = first_stall_value,
      .explained = EXPLAIN_FIRST_STALL, .remark = untwisted_remark },
    { .label = N_("Reynolds number of the MAC"), .kind = FIELD_NUMBER, .value = figure_value,
      .explained = EXPLAIN_REYNOLDS, .remark = reynolds_remark,
      .at = offsetof (Figures, flight.reynolds_mac) },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
