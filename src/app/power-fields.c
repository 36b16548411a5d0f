#include "trammel-config.h"
#include "app/power-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "figures/power-figures.h"

enum { MOST_CELLS = 100, MOST_CAPACITY = 1000000, MOST_RPM = 100000, MOST_WATTS = 100000, MOST_AMPERES = 10000, MOST_PITCH_MM = 2540 };

/* On a part 0 is what nobody has said. */
static double
rating_value (TrammelSession *session, const FieldSpec *spec)
{
  const double value = piece_field_value (session, spec);

  return value > 0 ? value : NAN;
}

static Aeroplane *
with_rating (TrammelSession *session, const FieldSpec *spec, double value)
{
  return piece_field_change (session, spec, isnan (value) ? 0 : value);
}

static char *
rating_unit (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (spec->at == offsetof (Part, capacity) ? "mAh" : spec->at == offsetof (Part, current) ? "A"
                   : spec->at == offsetof (Part, power) ? _("W, greatest") : spec->at == offsetof (Part, input) ? _("W by a meter")
                   : spec->at == offsetof (Part, cells) ? _("in series") : _("unloaded"));
}

#define RATING(word, of_kind, field, greatest, sentence) \
  { .label = word, .kind = of_kind, .value = rating_value, .change = with_rating, .optional = true, .remark = rating_unit, \
    .step = N_("Change Rating"), .at = offsetof (Part, field), .least = 0, .most = greatest, .refused = sentence }

static const FieldSpec of_motor[] = {
  RATING (N_("Rpm per volt"), FIELD_NUMBER, rpm_per_volt, MOST_RPM, N_("A motor turns 0 to 100,000 times a minute for each volt.")),
  RATING (N_("Bears"), FIELD_NUMBER, power, MOST_WATTS, N_("A motor bears 0 to 100,000 W.")),
  RATING (N_("Measured"), FIELD_NUMBER, input, MOST_WATTS, N_("A motor takes 0 to 100,000 W.")),
};
static const FieldSpec of_pack[] = {
  RATING (N_("Cells"), FIELD_NUMBER, cells, MOST_CELLS, N_("A pack has up to 100 cells.")),
  RATING (N_("Capacity"), FIELD_NUMBER, capacity, MOST_CAPACITY, N_("A pack holds 0 to 1,000,000 mAh.")),
};
static const FieldSpec of_controller[] = {
  RATING (N_("Bears"), FIELD_NUMBER, current, MOST_AMPERES, N_("A controller bears 0 to 10,000 A.")),
};
static const FieldSpec of_propeller[] = {
  { .label = N_("Pitch"), .kind = FIELD_INCHES, .value = rating_value, .change = with_rating, .optional = true, .step = N_("Change Rating"),
    .at = offsetof (Part, pitch), .least = 0, .most = MOST_PITCH_MM, .refused = N_("A pitch lies between 0 and 100 in.") },
};

FieldList
part_power_fields (TrammelSession *session)
{
  static const struct { const char *class_name; FieldList list; } classes[] = {
    { "motor", { of_motor, G_N_ELEMENTS (of_motor) } }, { "battery", { of_pack, G_N_ELEMENTS (of_pack) } },
    { "controller", { of_controller, G_N_ELEMENTS (of_controller) } }, { "propeller", { of_propeller, G_N_ELEMENTS (of_propeller) } },
  };
  const Part *part = trammel_session_selected_part (session);

  for (size_t i = 0; part != NULL && i < G_N_ELEMENTS (classes); i++)
    if (g_strcmp0 (part->class_name, classes[i].class_name) == 0)
      return classes[i].list;
  return (FieldList) { NULL, 0 };
}

/* The spec's `at` is the figure's place in PowerFigures. Nobody knows revolutions to better than a hundred. */
static double
power_value (TrammelSession *session, const FieldSpec *spec)
{
  const PowerFigures *power = &trammel_session_figures (session)->power;
  const double value = *(const double *) (const void *) ((const char *) power + spec->at);

  return spec->at == offsetof (PowerFigures, rpm) ? round (value / 100) * 100 : value;
}

static char *
watts_remark (TrammelSession *session, const FieldSpec *spec)
{
  g_autofree char *sigma = units_number (trammel_session_figures (session)->power.input_sigma_w, 0);

  return g_strdup_printf ("W ± %s", sigma);
}

static char *
amperes_remark (TrammelSession *session, const FieldSpec *spec)
{
  g_autofree char *sigma = units_number (fmax (1, trammel_session_figures (session)->power.current_sigma_a), 0);

  return g_strdup_printf ("A ± %s", sigma);
}

static char *
thrust_remark (TrammelSession *session, const FieldSpec *spec)
{
  g_autofree char *sigma = units_mass_figure (trammel_session_units (session), trammel_session_figures (session)->power.thrust_sigma_g);

  return g_strdup_printf ("± %s", sigma);
}

static char *
rpm_remark (TrammelSession *session, const FieldSpec *spec)
{
  const char *const by[] = { [POWER_MEASURED] = _("rpm, by the meter"), [POWER_BY_VOLTS] = _("rpm, by the volts"),
                             [POWER_USUAL] = _("rpm, as usual") };

  return g_strdup (by[trammel_session_figures (session)->power.by]);
}

static char *
minutes_remark (TrammelSession *session, const FieldSpec *spec)
{
  g_autofree char *sigma = units_number (trammel_session_figures (session)->power.minutes_sigma, 0);

  return g_strdup_printf (_("min ± %s, at half throttle"), sigma);
}

FieldList
power_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Revolutions"), .explained = EXPLAIN_REVOLUTIONS, .remark_below = true, .kind = FIELD_NUMBER,
      .value = power_value, .remark = rpm_remark, .at = offsetof (PowerFigures, rpm) },
    { .label = N_("Input"), .explained = EXPLAIN_INPUT, .kind = FIELD_NUMBER,
      .value = power_value, .remark = watts_remark, .at = offsetof (PowerFigures, input_w) },
    { .label = N_("Thrust, standing"), .explained = EXPLAIN_THRUST, .kind = FIELD_MASS, .value = power_value, .remark = thrust_remark,
      .at = offsetof (PowerFigures, thrust_g) },
    { .label = N_("Pitch speed"), .explained = EXPLAIN_PITCH_SPEED, .kind = FIELD_SPEED,
      .value = power_value, .at = offsetof (PowerFigures, pitch_speed_m_s) },
    { .label = N_("Current"), .explained = EXPLAIN_CURRENT, .kind = FIELD_NUMBER,
      .value = power_value, .remark = amperes_remark, .at = offsetof (PowerFigures, current_a) },
    { .label = N_("In the air, about"), .explained = EXPLAIN_MINUTES, .remark_below = true,
      .kind = FIELD_NUMBER, .value = power_value, .remark = minutes_remark,
      .at = offsetof (PowerFigures, minutes) },
  };

  return (FieldList) { specs, isfinite (trammel_session_figures (session)->power.thrust_g) ? G_N_ELEMENTS (specs) : 0 };
}

static void
power_show (GtkWidget *control, TrammelSession *session)
{
  g_autofree char *text = power_text (&trammel_session_figures (session)->power, trammel_session_units (session));

  gtk_widget_set_visible (control, text != NULL);
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (control)), text != NULL ? text : "");
}

GtkWidget *
power_control (TrammelSession *session)
{
  return piece_words_control (session, power_show);
}
