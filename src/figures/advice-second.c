#include "figures/advice-sentence.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/margin-words.h"

typedef struct { char *forward, *aft, *now; } Limits;

/* Which of the three whole sentences: limits alone, with the balance point on the wing, or ahead of it. */
static char *
limits_line (const Figures *figures, const Limits *limits)
{
  const double now = figures->mass.x_mm - figures->balance.marks[0].leading_edge_x_mm;

  if (isnan (now))
    return g_strdup_printf (_("Limits %s and %s."), limits->forward, limits->aft);
  if (now < 0)
    return g_strdup_printf (_("Limits %s and %s; now it balances %s ahead of the leading edge."),
                            limits->forward, limits->aft, limits->now);
  return g_strdup_printf (_("Limits %s and %s; now it balances at %s."), limits->forward, limits->aft, limits->now);
}

/* The rail misses the band: how far, and in which direction. */
static char *
rail_line (const Solution *solution, Units units, const Limits *limits)
{
  const Part *part = solution->part;
  const bool too_far_aft = solution->x_mm < part->rail_from;
  g_autofree char *missing = units_length (units, too_far_aft ? part->rail_from - solution->x_mm : solution->x_mm - part->rail_to);

  if (too_far_aft)
    return g_strdup_printf (_("The rail ends %s too far aft. Limits %s and %s; now it balances at %s."),
                            missing, limits->forward, limits->aft, limits->now);
  return g_strdup_printf (_("The rail ends %s too far forward. Limits %s and %s; now it balances at %s."),
                          missing, limits->forward, limits->aft, limits->now);
}

/* The forward limit is beyond the rail, though not the band. */
static char *
short_line (double short_mm, Units units, const Limits *limits)
{
  g_autofree char *missing = units_length (units, short_mm);

  return g_strdup_printf (_("For the forward limit the rail ends %s too far aft. Limits %s and %s; now it balances at %s."),
                          missing, limits->forward, limits->aft, limits->now);
}

static bool
is_out_of_band (AdviceState state)
{
  return state == STATE_TAIL_HEAVY || state == STATE_LITTLE_MARGIN || state == STATE_NOSE_HEAVY;
}

/* Whether the place that the sentence wants lies beyond the rail. */
static bool
ends_short (const Figures *figures, const AdviceMeans *means, AdviceState state)
{
  if (state == STATE_MOVE_FOR_FIRST_FLIGHT)
    return advice_rail_short_mm (figures, means->solution, figures->balance.advised_x_mm) > 0;
  return is_out_of_band (state) && !means->solution->reachable;
}

static char *
limits_of (const Figures *figures, const AdviceMeans *means, AdviceState state, Units units)
{
  const MarkFigures *mark = figures->balance.mark_count ? &figures->balance.marks[0] : NULL;

  if (!mark || isnan (mark->forward_mm))
    return g_strdup ("");
  g_autofree char *forward = units_length_figure (units, mark->forward_mm);
  g_autofree char *aft = units_length (units, mark->aft_mm);
  g_autofree char *now = units_length (units, fabs (figures->mass.x_mm - mark->leading_edge_x_mm));
  const Limits limits = { forward, aft, now };

  if (!means->solution || !(figures->mass.x_mm >= mark->leading_edge_x_mm))
    return limits_line (figures, &limits);
  if (ends_short (figures, means, state))
    return rail_line (means->solution, units, &limits);
  const double missing = advice_rail_short_mm (figures, means->solution, figures->balance.forward_limit_x_mm);
  if (state == STATE_IN_BAND && missing > 0)
    return short_line (missing, units, &limits);
  return limits_line (figures, &limits);
}

/* The ballast that the headline names might be for a limit; NULL where it names none. */
static char *
ballast_line (const Figures *figures, const AdviceMeans *means, AdviceState state)
{
  g_autofree char *margin = margin_advised_phrase (figures);

  if (!is_out_of_band (state) || means->reaches_band || isnan (means->ballast_g) || !margin)
    return NULL;
  /* TRANSLATORS: %s is a static margin: "the aim, 12 %" */
  return g_strdup_printf (_("The ballast is for %s."), margin);
}

/* One whole sentence after another; both are taken, the second may be NULL. */
static char *
followed_by (char *first, char *second)
{
  g_autofree char *one = first, *other = second;

  if (!other)
    return g_steal_pointer (&one);
  return *one ? g_strconcat (one, " ", other, NULL) : g_steal_pointer (&other);
}

char *
advice_second (const Figures *figures, const AdviceMeans *means, AdviceState state, Units units)
{
  if (state == STATE_WING_ALONE)
    return g_strdup (_("Draw the tailplane, or mark the aeroplane as tailless."));
  /* The danger stands first, so that what is not weighed has its place here. */
  return followed_by (followed_by (limits_of (figures, means, state, units), ballast_line (figures, means, state)),
                      state == STATE_TAIL_HEAVY ? advice_missing_mass (figures) : NULL);
}
