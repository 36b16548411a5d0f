#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "document/changes.h"
#include "figures/section-figures.h"

static const SurfaceFigures *
selected_figures (TrammelSession *session)
{
  const Surface *surface = trammel_session_selected_surface (session);

  return surface != NULL ? figures_of_surface (trammel_session_figures (session), surface->piece.id) : NULL;
}

/* The spec's offset tells which figure. */
static double
surface_figure (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  return figures != NULL ? *(const double *) ((const char *) figures + spec->at) : NAN;
}

static double
surface_span (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  return figures != NULL ? figures->planform.span : NAN;
}

static Aeroplane *
with_surface_span (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Surface *surface = trammel_session_selected_surface (session);

  if (surface == NULL || !(value > 0 && value <= LENGTH_LIMIT_MM))
    return NULL;
  return change_surface_span (trammel_session_aeroplane (session), surface->piece.id, value);
}

/* Larger or smaller alike both ways, its quarter mean chord staying where it is: so a tail keeps its arm. */
static Aeroplane *
with_surface_area (TrammelSession *session, const FieldSpec *spec, double value)
{
  const SurfaceFigures *figures = selected_figures (session);
  const double scale = figures != NULL ? sqrt (value / figures->area_mm2) : NAN;

  if (!(scale > 0 && scale * figures->planform.span <= LENGTH_LIMIT_MM))
    return NULL;
  return change_surface_scaled (trammel_session_aeroplane (session), figures->surface->piece.id, scale,
                                figures->planform.mac_leading_edge_x + figures->planform.mac / 4);
}

static double
surface_root_x (TrammelSession *session, const FieldSpec *spec)
{
  const Surface *surface = trammel_session_selected_surface (session);

  return surface != NULL ? outline_node (surface->outline, 0).x : NAN;
}

static Aeroplane *
with_surface_root_x (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Surface *surface = trammel_session_selected_surface (session);
  const Aeroplane *now = trammel_session_aeroplane (session);

  if (surface == NULL || value < spec->least || value > spec->most)
    return NULL;
  return change_views_following (now, change_surface_moved (now, surface->piece.id, value - outline_node (surface->outline, 0).x, 0),
                                 surface->piece.id);
}

static double
surface_given_pressure_ratio (TrammelSession *session, const FieldSpec *spec)
{
  const Surface *surface = trammel_session_selected_surface (session);

  return surface != NULL ? surface_pressure_ratio (surface) : NAN;
}

static char *
why_no_area (TrammelSession *session, const FieldSpec *spec, double value)
{
  const SurfaceFigures *figures = selected_figures (session);

  if (!(value > 0) || figures == NULL)
    return g_strdup (_("An area is more than 0."));
  return length_limit_span (trammel_session_units (session), figures->planform.span * sqrt (value / figures->area_mm2));
}

static char *
why_no_span (TrammelSession *session, const FieldSpec *spec, double value)
{
  return length_limit_span (trammel_session_units (session), value);
}

FieldList
surface_shape_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Span"), .kind = FIELD_LENGTH, .value = surface_span, .change = with_surface_span, .step = N_("Change Span"),
      .why = why_no_span },
    { .label = N_("Root, aft of datum"), .kind = FIELD_LENGTH, .value = surface_root_x, .change = with_surface_root_x,
      .step = N_("Move Surface"), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
    { .label = N_("Area"), .kind = FIELD_AREA, .value = surface_figure, .change = with_surface_area, .step = N_("Change Area"),
      .hint = N_("Type another area: all lengths go with it alike, and the quarter of the mean chord stays where it is."),
      .why = why_no_area,
      .explained = EXPLAIN_AREA, .at = offsetof (SurfaceFigures, area_mm2) },
    { .label = N_("Aspect ratio"), .kind = FIELD_RATIO, .value = surface_figure,
      .explained = EXPLAIN_ASPECT_RATIO, .at = offsetof (SurfaceFigures, planform.aspect_ratio) },
    { .label = N_("Mean chord (MAC)"), .kind = FIELD_LENGTH, .value = surface_figure,
      .explained = EXPLAIN_MAC, .at = offsetof (SurfaceFigures, planform.mac) },
    { .label = N_("MAC, at station"), .kind = FIELD_LENGTH, .value = surface_figure,
      .explained = EXPLAIN_MAC, .at = offsetof (SurfaceFigures, planform.mac_station) },
    { .label = N_("MAC leading edge, aft"), .explained = EXPLAIN_MAC, .kind = FIELD_LENGTH, .value = surface_figure,
      .at = offsetof (SurfaceFigures, planform.mac_leading_edge_x) },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

FieldList
surface_rigging_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Height of the root"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change,
      .remark = piece_height_remark, .remark_below = true,
      .step = N_("Change Height"), .at = offsetof (Surface, z), .least = -5000, .most = 5000,
      .refused = N_("That is further than 5 m away.") },
    { .label = N_("Dihedral, each side"), .kind = FIELD_ANGLE, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Dihedral"), .at = offsetof (Surface, dihedral), .least = -45, .most = 45,
      .refused = N_("Dihedral lies between −45 and 45 degrees.") },
    { .label = N_("Incidence"), .kind = FIELD_ANGLE, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Incidence"), .at = offsetof (Surface, incidence), .least = -30, .most = 30,
      .refused = N_("Incidence lies between −30 and 30 degrees.") },
    { .label = N_("Washout at the tip"), .kind = FIELD_ANGLE, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Washout"), .at = offsetof (Surface, washout), .least = -20, .most = 20,
      .refused = N_("Washout lies between −20 and 20 degrees.") },
    { .label = N_("Thickness, of chord"), .kind = FIELD_PERCENT, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Thickness"), .at = offsetof (Surface, thickness), .least = 0.1, .most = 40,
      /* xgettext:no-c-format */
      .refused = N_("Thickness lies between 0.1 and 40 % of the chord.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

/* What is reckoned with while nobody types a deviation. */
static char *
usual_remark (double typed, double usual)
{
  return isnan (typed) && isfinite (usual) ? g_strdup_printf (_("± %.2f"), usual) : NULL;
}

static char *
pressure_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Surface *surface = trammel_session_selected_surface (session);

  if (surface == NULL || surface->role != ROLE_TAILPLANE)
    return NULL;
  return usual_remark (surface->pressure_ratio_sigma, section_figures_pressure_sigma (surface));
}

FieldList
surface_tail_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Tail arm"), .kind = FIELD_LENGTH, .value = surface_figure,
      .explained = EXPLAIN_TAIL_ARM, .at = offsetof (SurfaceFigures, tail_arm_mm) },
    { .label = N_("Tail volume"), .kind = FIELD_RATIO, .value = surface_figure,
      .explained = EXPLAIN_TAIL_VOLUME, .at = offsetof (SurfaceFigures, volume_coefficient) },
    { .label = N_("Dynamic-pressure ratio"), .kind = FIELD_RATIO, .value = surface_given_pressure_ratio, .change = piece_field_change,
      .optional = true, .step = N_("Change Pressure Ratio"), .at = offsetof (Surface, pressure_ratio), .least = 0.1, .most = 2,
      .remark = pressure_remark, .refused = N_("The ratio lies between 0.1 and 2; 0.9 is usual behind a wing.") },
    { .label = N_("Pressure ratio known to ±"), .kind = FIELD_RATIO, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Deviation"), .at = offsetof (Surface, pressure_ratio_sigma), .least = 0, .most = 2, .optional = true,
      .refused = N_("The deviation of a ratio lies between 0 and 2.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

static double
surface_section_slope (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  return figures != NULL ? figures->section_slope : NAN;
}

static char *
slope_remark (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  return figures != NULL ? usual_remark (figures->surface->section_slope_sigma, figures->section_slope_sigma) : NULL;
}

/* Typed, or for the first wing what the stall is reckoned with. */
static double
surface_greatest_lift (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  if (figures == NULL)
    return NAN;
  if (isnan (figures->surface->lift_max) && figures == trammel_session_figures (session)->reference)
    return trammel_session_figures (session)->flight.lift_max;
  return figures->surface->lift_max;
}

static char *
lift_remark (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);
  const Figures *all = trammel_session_figures (session);

  if (figures == NULL || figures != all->reference)
    return NULL;
  return usual_remark (figures->surface->lift_max_sigma, all->flight.lift_max_sigma);
}

/* In whole hundreds: no more of it is known. */
static double
surface_reynolds (TrammelSession *session, const FieldSpec *spec)
{
  const SurfaceFigures *figures = selected_figures (session);

  return figures != NULL ? round (figures->reynolds / 100) * 100 : NAN;
}

static char *
stall_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (_("at the stall"));
}

FieldList
surface_section_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Reynolds number"), .kind = FIELD_NUMBER, .value = surface_reynolds,
      .explained = EXPLAIN_REYNOLDS, .remark = stall_remark },
    { .label = N_("Lift slope over 2π"), .kind = FIELD_RATIO, .value = surface_section_slope, .change = piece_field_change,
      .explained = EXPLAIN_SECTION, .optional = true,
      .remark = slope_remark, .step = N_("Change Section's Slope"), .at = offsetof (Surface, section_slope), .least = 0.1, .most = 2,
      .refused = N_("The slope lies between 0.1 and 2 of thin-plate theory's; 0.8 to 1 is usual.") },
    { .label = N_("Slope known to ±"), .kind = FIELD_RATIO, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Deviation"), .at = offsetof (Surface, section_slope_sigma), .least = 0, .most = 2, .optional = true,
      .refused = N_("The deviation of a slope lies between 0 and 2.") },
    { .label = N_("Greatest lift coefficient"), .kind = FIELD_RATIO, .value = surface_greatest_lift, .change = piece_field_change,
      .explained = EXPLAIN_GREATEST_LIFT, .optional = true,
      .remark = lift_remark, .step = N_("Change Greatest Lift"), .at = offsetof (Surface, lift_max), .least = 0.1, .most = 5,
      .refused = N_("A greatest lift coefficient lies between 0.1 and 5; 0.6 to 1.2 is usual at this size.") },
    { .label = N_("Lift known to ±"), .kind = FIELD_RATIO, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Deviation"), .at = offsetof (Surface, lift_max_sigma), .least = 0, .most = 5, .optional = true,
      .refused = N_("The deviation of a lift coefficient lies between 0 and 5.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
