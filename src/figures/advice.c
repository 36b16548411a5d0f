#include "figures/advice.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/advice-sentence.h"
#include "figures/names.h"
#include "figures/place-notes.h"
#include "figures/unweighed.h"

/* A whole number with a true minus. */
static char *
whole (double value)
{
  return g_strdup_printf (value <= -0.5 ? "−%.0f" : "%.0f", fabs (value));
}

/* A deviation is never shown as nothing. */
static double
shown_deviation (double percent)
{
  return fmax (1, round (percent));
}

static double
percent_of_mac (const Figures *figures, double x)
{
  const Planform *wing = &figures->reference->planform;

  return 100 * (x - wing->mac_leading_edge_x) / wing->mac;
}

/* Parts alone balance far ahead of what they are built into: a margin of theirs would be believed. */
static bool
is_without_airframe (const Figures *figures)
{
  return isfinite (figures->balance.static_margin_percent) && !figures->neutral_point.wing_alone && !airframe_is_weighed (figures->aeroplane);
}

/* In place of a figure. */
static char *
none_yet (const Figures *figures)
{
  const bool alone = figures->neutral_point.wing_alone && isfinite (figures->neutral_point.x_mm);

  return g_strdup (alone ? _("wing alone") : _("not yet"));
}

static void
fill_mark (Advice *advice, const Figures *figures, Units units)
{
  const MarkFigures *mark = figures->balance.mark_count ? &figures->balance.marks[0] : NULL;

  advice->has_mark = mark && isfinite (mark->target_mm);
  if (!advice->has_mark)
    {
      advice->mark_figure = none_yet (figures);
      advice->mark_place = g_strdup ("");
      return;
    }
  g_autofree char *station = units_length_figure (units, mark->station_mm);
  advice->mark_figure = units_length_figure (units, mark->target_mm);
  advice->mark_place = g_strdup_printf (_("aft of the leading edge at station %s"), station);
}

static void
fill_margin (Advice *advice, const Figures *figures)
{
  const BalanceFigures *balance = &figures->balance;

  advice->has_margin = isfinite (balance->static_margin_percent) && !figures->neutral_point.wing_alone && !is_without_airframe (figures);
  if (is_without_airframe (figures))
    /* Translators: in place of the static margin, while nothing but parts weighs anything; beneath it stands what is missing */
    advice->margin_figure = g_strdup (_("parts alone"));
  else if (!advice->has_margin)
    advice->margin_figure = none_yet (figures);
  else
    advice->margin_figure = units_percent (balance->static_margin_percent);
  if (advice->has_margin && isfinite (balance->static_margin_sigma_percent))
    advice->margin_sigma = g_strdup_printf (_("± %.0f"), shown_deviation (balance->static_margin_sigma_percent));
  else
    advice->margin_sigma = g_strdup ("");
}

/* With a band: what the drawn chord shows, in words. */
static char *
chord_with_band (const Figures *figures)
{
  g_autofree char *forward = whole (percent_of_mac (figures, figures->balance.forward_limit_x_mm));
  g_autofree char *aft = whole (percent_of_mac (figures, figures->balance.aft_limit_x_mm));
  g_autofree char *neutral = whole (figures->neutral_point.percent_mac);
  const double sigma = shown_deviation (100 * figures->neutral_point.sigma_mm / figures->reference->planform.mac);

  if (isnan (figures->balance.percent_mac))
    return g_strdup_printf (_("Balance wanted at %s to %s %% of MAC, neutral point %s ± %.0f"), forward, aft, neutral, sigma);
  g_autofree char *balance = units_percent (figures->balance.percent_mac);
  return g_strdup_printf (_("Balance at %s of MAC, wanted %s to %s, neutral point %s ± %.0f"), balance, forward, aft, neutral, sigma);
}

static char *
chord_text (const Figures *figures)
{
  if (!figures->reference || isnan (figures->neutral_point.x_mm))
    return g_strdup (_("No neutral point yet"));
  if (isfinite (figures->balance.target_x_mm))
    return chord_with_band (figures);
  g_autofree char *neutral = units_percent (figures->neutral_point.percent_mac);
  return g_strdup_printf (_("Neutral point of the wing alone at %s of MAC"), neutral);
}

/* Wherever there is a mark, nobody is to trust it further than the place that it follows. Takes the sentence. */
static char *
with_guess (char *sentence, const Figures *figures, AdviceState state)
{
  const Piece *piece = place_guessed_of_mark (figures->aeroplane);
  char *both;

  if (!piece || state == STATE_PLACE_GUESSED || isnan (figures->balance.target_x_mm))
    return sentence;
  /* Translators: the first %s is a whole sentence of advice, the second the name of a surface or a body. */
  both = g_strdup_printf (_("%s How far aft “%s” stands is a guess."), sentence, piece_name (piece));
  g_free (sentence);
  return both;
}

/* What the headline asks the mass of. */
static const Piece *
asked_for (const Figures *figures, AdviceState state)
{
  const Piece *first = NULL;
  const Part *slider = state == STATE_WEIGHTLESS ? weightless_slider (figures) : NULL;

  if (slider)
    return &slider->piece;
  if (state == STATE_NO_AIRFRAME || state == STATE_UNWEIGHED)
    unweighed_pieces (figures->aeroplane, &first, 1);
  return first;
}

/* What stands in the band is moved by those who know why; what stands out of it is moved at once. */
static const Solution *
to_move (const Figures *figures, const AdviceMeans *means, AdviceState state)
{
  const bool out = state == STATE_TAIL_HEAVY || state == STATE_LITTLE_MARGIN || state == STATE_NOSE_HEAVY;

  if (!out || !means->solution || !airframe_is_weighed (figures->aeroplane))
    return NULL;
  return fabs (means->move_mm) >= 0.5 ? means->solution : NULL;
}

Advice *
advice_new (const Figures *figures, Units units)
{
  Advice *advice = g_new0 (Advice, 1);
  const AdviceMeans means = advice_means_of (figures);
  const SurfaceFigures *surface;
  const AdviceState state = advice_state_of (figures, &means, &surface);

  advice->headline = with_guess (advice_sentence (figures, &means, state, surface, units), figures, state);
  advice->unweighed = asked_for (figures, state);
  advice->to_move = to_move (figures, &means, state);
  advice->second = advice_second (figures, &means, state, units);
  advice->chord_text = chord_text (figures);
  fill_mark (advice, figures, units);
  fill_margin (advice, figures);
  return advice;
}

void
advice_free (Advice *advice)
{
  if (!advice)
    return;
  g_free (advice->headline);
  g_free (advice->second);
  g_free (advice->mark_figure);
  g_free (advice->mark_place);
  g_free (advice->margin_figure);
  g_free (advice->margin_sigma);
  g_free (advice->chord_text);
  g_free (advice);
}
