#include "trammel-config.h"
#include "app/budget-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "app/piece-controls.h"
#include "figures/budget.h"

enum { MOST_G = 100000, MOST_LOADING = 10000 };

/* g/dm², at 650 mm of span. Common practice, no source. */
enum { USUAL_LEAST = 18, USUAL_MOST = 28 };

/* The spec's `at` is the figure's place in Budget. */
static double
budget_value (TrammelSession *session, const FieldSpec *spec)
{
  Budget budget;

  if (!budget_of (trammel_session_figures (session), &budget))
    return NAN;
  return *(const double *) (const void *) ((const char *) &budget + spec->at);
}

static AeroplaneTraits
session_traits (TrammelSession *session)
{
  return aeroplane_traits (trammel_session_aeroplane (session));
}

/* One of the two is wanted: the other is forgotten. Emptied, what is usual for the span counts again. */
static Aeroplane *
with_wanted (TrammelSession *session, const FieldSpec *spec, double value)
{
  AeroplaneTraits traits = session_traits (session);
  const bool all_up = spec->at == offsetof (Budget, wanted_g);

  if (!isnan (value) && !(value > 0 && value <= spec->most))
    return NULL;
  traits.target.all_up = all_up && value > 0 ? value : 0;
  traits.target.loading = !all_up && value > 0 ? value : 0;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static Aeroplane *
with_airframe_known (TrammelSession *session, const FieldSpec *spec, double value, double deviation)
{
  AeroplaneTraits traits = session_traits (session);

  if (!(value > 0 && value <= MOST_G && deviation >= 0 && deviation <= MOST_G))
    return NULL;
  traits.airframe = value;
  traits.airframe_sigma = deviation;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static Aeroplane *
with_airframe (TrammelSession *session, const FieldSpec *spec, double value)
{
  AeroplaneTraits traits = session_traits (session);

  if (!isnan (value))
    return with_airframe_known (session, spec, value, 0);
  traits.airframe = traits.airframe_sigma = traits.airframe_x = traits.airframe_x_sigma = 0;
  traits.airframe_balanced = false;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static Aeroplane *
with_balance_known (TrammelSession *session, const FieldSpec *spec, double value, double deviation)
{
  AeroplaneTraits traits = session_traits (session);

  if (!(fabs (value) <= LENGTH_LIMIT_MM && deviation >= 0 && deviation <= LENGTH_LIMIT_MM) || !(traits.airframe > 0))
    return NULL;
  traits.airframe_balanced = true;
  traits.airframe_x = value;
  traits.airframe_x_sigma = deviation;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static Aeroplane *
with_balance (TrammelSession *session, const FieldSpec *spec, double value)
{
  AeroplaneTraits traits = session_traits (session);

  if (!isnan (value))
    return with_balance_known (session, spec, value, 0);
  traits.airframe_balanced = false;
  traits.airframe_x = traits.airframe_x_sigma = 0;
  return aeroplane_with_traits (trammel_session_aeroplane (session), traits);
}

static char *
why_not_balanced (TrammelSession *session, const FieldSpec *spec, double value)
{
  return g_strdup (session_traits (session).airframe > 0 ? _("That is further than 20 m away.")
                                                         : _("Type first what the bare airframe weighs: a place alone corrects nothing."));
}

static char *
balance_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (trammel_session_figures (session)->airframe.balanced ? _("aft of the datum, as found")
                                                                        : _("aft of the datum, reckoned"));
}

static char *
wanted_remark (TrammelSession *session, const FieldSpec *spec)
{
  /* Translators: how an all-up mass is wanted */
  const char *const words[] = { [WANTED_USUAL] = _("usual for the span"), [WANTED_ALL_UP] = _("typed"), [WANTED_LOADING] = _("by loading") };
  Budget budget;

  return budget_of (trammel_session_figures (session), &budget) ? g_strdup (words[budget.wanted_by]) : NULL;
}

static char *
why_no_loading (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Units units = trammel_session_units (session);
  g_autofree char *least = units_loading_figure (units, USUAL_LEAST), *most = units_loading_figure (units, USUAL_MOST);

  /* Translators: two figures and their unit, "18 to 28 g/dm²" */
  return g_strdup_printf (_("A loading is more than nothing; at 650 mm of span %s to %s %s is usual."), least, most, units_loading_name (units));
}

static char *
airframe_remark (TrammelSession *session, const FieldSpec *spec)
{
  Budget budget;

  if (!budget_of (trammel_session_figures (session), &budget))
    return NULL;
  g_autofree char *sigma = units_mass_deviation_figure (trammel_session_units (session), budget.airframe_sigma_g);
  return g_strdup_printf (budget.airframe_by == AIRFRAME_WEIGHED ? _("± %s, weighed") : budget.airframe_by == AIRFRAME_RECKONED
                          ? _("± %s, reckoned") : _("± %s, usual share"), sigma);
}

FieldList
budget_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Wanted all-up"), .explained = EXPLAIN_WANTED_MASS, .remark_below = true, .kind = FIELD_MASS,
      .value = budget_value, .change = with_wanted, .optional = true,
      .step = N_("Change Wanted Mass"), .at = offsetof (Budget, wanted_g), .most = MOST_G, .remark = wanted_remark,
      .refused = N_("A mass lies between 0 and 100 kg.") },
    { .label = N_("Loading"), .kind = FIELD_LOADING, .value = budget_value, .change = with_wanted, .optional = true,
      .step = N_("Change Wanted Loading"), .at = offsetof (Budget, loading_g_dm2), .most = MOST_LOADING, .why = why_no_loading },
    { .label = N_("Bare airframe"), .explained = EXPLAIN_AIRFRAME, .remark_below = true, .kind = FIELD_MASS,
      .value = budget_value, .change = with_airframe, .optional = true,
      .change_known = with_airframe_known, .step = N_("Weigh Airframe"),
      .hint = N_("As it lies on the scale: wing, tail, body, cowl, canopy, pilot, wheels and undercarriage, without motor, battery, radio "
                 "and servos. Type 82 ± 0.5, or 82 +- 0.5; without a deviation 0.5 g are taken."),
      .at = offsetof (Budget, airframe_g), .remark = airframe_remark,
      .refused = N_("A mass lies between 0 and 100 kg.") },
    { .label = N_("Balances at"), .explained = EXPLAIN_AIRFRAME_PLACE, .remark_below = true, .kind = FIELD_LENGTH, .value = budget_value, .change = with_balance, .optional = true,
      .change_known = with_balance_known, .step = N_("Balance Airframe"),
      .hint = N_("Where the airframe balances as it was weighed, wing and tail taped on: aft of the datum, the dotted line across the "
                 "sheet at 0. Without a deviation 2 mm are taken."), .at = offsetof (Budget, airframe_x_mm), .remark = balance_remark,
      .why = why_not_balanced },
    { .label = N_("Left for gear"), .explained = EXPLAIN_LEFT_FOR_GEAR, .kind = FIELD_MASS,
      .value = budget_value, .at = offsetof (Budget, left_g) },
    { .label = N_("Gear aboard"), .explained = EXPLAIN_GEAR, .kind = FIELD_MASS, .value = budget_value, .at = offsetof (Budget, gear_g) },
  };
  Budget budget;

  return (FieldList) { specs, budget_of (trammel_session_figures (session), &budget) ? G_N_ELEMENTS (specs) : 0 };
}

static void
budget_show (GtkWidget *control, TrammelSession *session)
{
  Budget budget;

  if (!budget_of (trammel_session_figures (session), &budget))
    return;
  g_autofree char *text = budget_text (&budget, trammel_session_units (session));
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (control)), text);
}

GtkWidget *
budget_control (TrammelSession *session)
{
  return piece_words_control (session, budget_show);
}
