#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const struct { ExplanationAbout about; Reckon reckon; } themes[EXPLAIN_COUNT] = {
  [EXPLAIN_STATIC_MARGIN]   = { ABOUT_AEROPLANE, reckon_static_margin },
  [EXPLAIN_AIM]             = { ABOUT_AEROPLANE, reckon_aim },
  [EXPLAIN_MARK]            = { ABOUT_MARK,      reckon_mark },
  [EXPLAIN_BALANCE_POINT]   = { ABOUT_AEROPLANE, reckon_balance_point },
  [EXPLAIN_BALANCE_DEVIATION] = { ABOUT_AEROPLANE, reckon_balance_deviation },
  [EXPLAIN_BALANCE_ACROSS]  = { ABOUT_AEROPLANE, reckon_balance_across },
  [EXPLAIN_BALANCE_HEIGHT]  = { ABOUT_AEROPLANE, reckon_balance_height },
  [EXPLAIN_SOLUTION]        = { ABOUT_RAIL,      reckon_solution },
  [EXPLAIN_BALLAST]         = { ABOUT_RAIL,      reckon_ballast },
  [EXPLAIN_NEUTRAL_POINT]   = { ABOUT_AEROPLANE, reckon_neutral_point },
  [EXPLAIN_NEUTRAL_DEVIATION] = { ABOUT_AEROPLANE, reckon_neutral_deviation },
  [EXPLAIN_LATTICE]         = { ABOUT_AEROPLANE, reckon_lattice },
  [EXPLAIN_SECTION_SHIFT]   = { ABOUT_AEROPLANE, reckon_section_shift },
  [EXPLAIN_BODY_SHIFT]      = { ABOUT_AEROPLANE, reckon_body_shift },
  [EXPLAIN_HANDBOOK]        = { ABOUT_AEROPLANE, reckon_handbook },
  [EXPLAIN_DOWNWASH]        = { ABOUT_AEROPLANE, reckon_downwash },
  [EXPLAIN_PROPELLER]       = { ABOUT_AEROPLANE, reckon_propeller },
  [EXPLAIN_AREA]            = { ABOUT_SURFACE,   reckon_area },
  [EXPLAIN_ASPECT_RATIO]    = { ABOUT_SURFACE,   reckon_aspect_ratio },
  [EXPLAIN_MAC]             = { ABOUT_SURFACE,   reckon_mac },
  [EXPLAIN_SECTION]         = { ABOUT_SURFACE,   reckon_section },
  [EXPLAIN_LIFT_SLOPE]      = { ABOUT_SURFACE,   reckon_lift_slope },
  [EXPLAIN_TAIL_ARM]        = { ABOUT_SURFACE,   reckon_tail_arm },
  [EXPLAIN_TAIL_VOLUME]     = { ABOUT_SURFACE,   reckon_tail_volume },
  [EXPLAIN_REYNOLDS]        = { ABOUT_SURFACE,   reckon_reynolds },
  [EXPLAIN_GREATEST_LIFT]   = { ABOUT_SURFACE,   reckon_greatest_lift },
  [EXPLAIN_CONTROL_AREA]    = { ABOUT_CONTROL,   reckon_control_area },
  [EXPLAIN_MASS]            = { ABOUT_AEROPLANE, reckon_mass },
  [EXPLAIN_INERTIA_ROLL]    = { ABOUT_AEROPLANE, reckon_inertia_roll },
  [EXPLAIN_INERTIA_PITCH]   = { ABOUT_AEROPLANE, reckon_inertia_pitch },
  [EXPLAIN_INERTIA_YAW]     = { ABOUT_AEROPLANE, reckon_inertia_yaw },
  [EXPLAIN_WING_LOADING]    = { ABOUT_AEROPLANE, reckon_wing_loading },
  [EXPLAIN_CUBIC_LOADING]   = { ABOUT_AEROPLANE, reckon_cubic_loading },
  [EXPLAIN_STALL_SPEED]     = { ABOUT_AEROPLANE, reckon_stall_speed },
  [EXPLAIN_AEROPLANE_LIFT]  = { ABOUT_AEROPLANE, reckon_aeroplane_lift },
  [EXPLAIN_ROLL_DAMPING]    = { ABOUT_AEROPLANE, reckon_roll_damping },
  [EXPLAIN_PITCH_DAMPING]   = { ABOUT_AEROPLANE, reckon_pitch_damping },
  [EXPLAIN_SPAN_EFFICIENCY] = { ABOUT_AEROPLANE, reckon_span_efficiency },
  [EXPLAIN_FIRST_STALL]     = { ABOUT_AEROPLANE, reckon_first_stall },
  [EXPLAIN_WANTED_MASS]     = { ABOUT_AEROPLANE, reckon_wanted_mass },
  [EXPLAIN_AIRFRAME]        = { ABOUT_AEROPLANE, reckon_airframe },
  [EXPLAIN_AIRFRAME_PLACE]  = { ABOUT_AEROPLANE, reckon_airframe_place },
  [EXPLAIN_LEFT_FOR_GEAR]   = { ABOUT_AEROPLANE, reckon_left_for_gear },
  [EXPLAIN_GEAR]            = { ABOUT_AEROPLANE, reckon_gear },
  [EXPLAIN_REVOLUTIONS]     = { ABOUT_AEROPLANE, reckon_revolutions },
  [EXPLAIN_INPUT]           = { ABOUT_AEROPLANE, reckon_input },
  [EXPLAIN_THRUST]          = { ABOUT_AEROPLANE, reckon_thrust },
  [EXPLAIN_PITCH_SPEED]     = { ABOUT_AEROPLANE, reckon_pitch_speed },
  [EXPLAIN_CURRENT]         = { ABOUT_AEROPLANE, reckon_current },
  [EXPLAIN_MINUTES]         = { ABOUT_AEROPLANE, reckon_minutes },
  [EXPLAIN_PROPELLER_PLANE] = { ABOUT_PART,      reckon_propeller_plane },
  [EXPLAIN_NOSE_GAP]        = { ABOUT_PART,      reckon_nose_gap },
  [EXPLAIN_FIREWALL]        = { ABOUT_PART,      reckon_firewall },
  [EXPLAIN_SHAFT_OFFSET]    = { ABOUT_PART,      reckon_shaft_offset },
  [EXPLAIN_STAND]           = { ABOUT_PART,      reckon_stand },
};

ExplanationAbout
explanation_about (ExplainedFigure what)
{
  return themes[what].about;
}

static void
input_clear (ExplanationInput *input)
{
  g_free (input->label);
  g_free (input->text);
}

void
explanation_free (Explanation *self)
{
  if (!self)
    return;
  for (size_t i = 0; i < self->input_count; i++)
    input_clear (&self->inputs[i]);
  g_free (self->inputs);
  g_free (self->title);
  g_free (self->formula);
  g_free (self->result);
  g_free (self->source);
  g_free (self->limits);
  g_free (self->owed);
  g_free (self);
}

static Explanation *
begin (ExplainedFigure what)
{
  const ReckoningWords *words = reckoning_words_of (what);
  Explanation *self = g_new0 (Explanation, 1);

  self->what = what;
  self->title = g_strdup (_(words->title));
  self->formula = g_strdup (_(words->formula));
  self->source = g_strdup (_(words->source));
  self->limits = g_strdup (_(words->limits));
  return self;
}

Explanation *
explanation_new (const Figures *figures, ExplainedFigure what, const char *id, Units units)
{
  Reckoning reckoning = { .figures = figures, .id = id, .units = units };
  bool had;

  if (what <= EXPLAIN_NONE || what >= EXPLAIN_COUNT)
    return NULL;
  reckoning.made = begin (what);
  reckoning.inputs = g_array_new (FALSE, FALSE, sizeof (ExplanationInput));
  had = themes[what].reckon (&reckoning);
  reckoning.made->input_count = reckoning.inputs->len;
  reckoning.made->inputs = (ExplanationInput *) (void *) g_array_free (reckoning.inputs, FALSE);
  if (had)
    return reckoning.made;
  explanation_free (reckoning.made);
  return NULL;
}

static void
add (GPtrArray *all, const Figures *figures, ExplainedFigure what, const char *id, Units units)
{
  Explanation *one = explanation_new (figures, what, id, units);

  if (one)
    g_ptr_array_add (all, one);
}

static void
add_by_place (GPtrArray *all, const Figures *figures, ExplainedFigure what, size_t count, Units units)
{
  for (size_t i = 0; i < count; i++)
    {
      g_autofree char *place = g_strdup_printf ("%zu", i);

      add (all, figures, what, place, units);
    }
}

/* One figure of everything that it can be about. */
static void
add_of_all (GPtrArray *all, const Figures *figures, ExplainedFigure what, Units units)
{
  switch (themes[what].about)
    {
    case ABOUT_AEROPLANE:
      add (all, figures, what, NULL, units);
      break;
    case ABOUT_SURFACE:
      for (size_t i = 0; i < figures->surface_count; i++)
        add (all, figures, what, figures->surfaces[i].surface->piece.id, units);
      break;
    case ABOUT_RAIL:
      for (size_t i = 0; i < figures->solution_count; i++)
        add (all, figures, what, figures->solutions[i].part->piece.id, units);
      if (!figures->solution_count)
        add (all, figures, what, NULL, units);
      break;
    case ABOUT_PART:
      for (size_t i = 0; i < aeroplane_count (figures->aeroplane, PIECE_PART); i++)
        add (all, figures, what, aeroplane_part (figures->aeroplane, i)->piece.id, units);
      break;
    case ABOUT_MARK:
      add_by_place (all, figures, what, figures->balance.mark_count, units);
      break;
    case ABOUT_CONTROL:
      add_by_place (all, figures, what, figures->control_count, units);
      break;
    }
}

GPtrArray *
explanations_of (const Figures *figures, Units units)
{
  GPtrArray *all = g_ptr_array_new_with_free_func ((GDestroyNotify) explanation_free);

  for (ExplainedFigure what = EXPLAIN_NONE + 1; what < EXPLAIN_COUNT; what++)
    add_of_all (all, figures, what, units);
  return all;
}
