#include "trammel-config.h"
#include "app/trace-words.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Where more of an outline than this shows no line, there is none; of a stretch ahead, and how long that must be for it, mm. */
static const double LOST = 0.5, LOST_AHEAD = 0.4, LONG_ENOUGH = 5;

char *
trace_words_fine (Units units, double mm)
{
  const bool inch = units.length == LENGTH_INCH;
  const double step = inch ? 0.01 : 0.1, value = inch ? mm / 25.4 : mm;
  g_autofree char *figure = units_number (fmax (ceil (value / step - 1e-6), 1) * step, inch ? 2 : 1);

  /* Translators: a figure and its unit; the blank between does not break. */
  return g_strdup_printf (_("%s\u00a0%s"), figure, units_length_name (units));
}

bool
trace_words_is_lost (const Stretch *stretch, double mm)
{
  return mm >= LONG_ENOUGH && (stretch == NULL || stretch->lost >= LOST_AHEAD);
}

char *
trace_words_sure (Units units, const Stretch *stretch, double mm, double astray)
{
  g_autofree char *sure = NULL;

  if (trace_words_is_lost (stretch, mm))
    return g_strdup (_("Line lost: click closer together"));
  if (stretch == NULL || isnan (stretch->sigma))
    return NULL;
  if (astray > 0) {
    g_autofree char *off = units_length (units, astray);

    /* Translators: a length; how far from the pointer the printed line runs that was found. */
    return g_strdup_printf (_("The line found passes about %s from here"), off);
  }
  sure = trace_words_fine (units, 2 * stretch->sigma);
  return g_strdup_printf (_("On the line, sure to %s"), sure);
}

static bool
shows_body (ViewShows shows)
{
  return shows == VIEW_BODY_TOP || shows == VIEW_BODY_SIDE;
}

/* Of a wing a station, of a fin a height, both without a sign; of a body how far aft. `at`: mm from the datum. */
static char *
place_words (Units units, ViewShows shows, Point at)
{
  return units_length (units, shows_body (shows) ? at.x : fabs (at.y));
}

/* Of a wing, a tailplane or a body from above: what else is traced has no halves. */
static char *
averaged_words (Units units, const TraceGround *ground, const HalvesDifference *difference)
{
  g_autofree char *most = trace_words_fine (units, difference->most);
  g_autofree char *at = place_words (units, ground->shows, point_add (difference->at, (Point) { ground->placing.x, 0 }));

  if (ground->shows == VIEW_BODY_TOP)
    return g_strdup_printf (_("Both halves are averaged: they differ by %s at most, %s aft of the datum."), most, at);
  /* Translators: two lengths; the halves of a surface drawn on both sides of the centre line. */
  return g_strdup_printf (_("Both halves are averaged: they differ by %s at most, at station %s."), most, at);
}

static char *
passing_words (Units units, const TraceGround *ground, const PassedClick *passed)
{
  g_autofree char *off = trace_words_fine (units, passed->by);
  g_autofree char *at = place_words (units, ground->shows, point_add (passed->at, (Point) { ground->placing.x, 0 }));

  if (passed->aside && shows_body (ground->shows))
    return g_strdup_printf (_("The outline runs out and back %s aft of the datum, by %s: if that is a fin, trace it again and click both ends of "
                              "its root."), at, off);
  if (passed->aside && ground->shows == VIEW_FIN)
    return g_strdup_printf (_("The outline goes aside at height %s by %s over bare paper: if it took another line, trace it again with a click "
                              "there."), at, off);
  if (passed->aside)
    return g_strdup_printf (_("The outline goes aside at station %s by %s over bare paper: if it took another line, trace it again with a click "
                              "there."), at, off);
  /* Translators, of all three: where a click is, and a length. */
  if (shows_body (ground->shows))
    return g_strdup_printf (_("The outline passes your click %s aft of the datum by %s: if it took another line, zoom in and trace it again."),
                            at, off);
  if (ground->shows == VIEW_FIN)
    return g_strdup_printf (_("The outline passes your click at height %s by %s: if it took another line, zoom in and trace it again."), at, off);
  return g_strdup_printf (_("The outline passes your click at station %s by %s: if it took another line, zoom in and trace it again."), at, off);
}

char *
trace_words_done (Units units, const TraceGround *ground, const TraceResult *result)
{
  if (result->mean != NULL)
    return averaged_words (units, ground, &result->difference);
  if (result->passed.by > 0)
    return passing_words (units, ground, &result->passed);
  if (result->lost > TRACE_GAPS) {
    g_autofree char *share = units_percent (100 * result->lost);

    return g_strdup_printf (_("Along %s of the outline no printed line is to be seen: look at it where it is dashed."), share);
  }
  return NULL;
}

const char *
trace_words_fault (CoreStatus status)
{
  if (status == CORE_OUT_OF_RANGE)
    return _("No printed line runs along these places: click closer together, or hold Ctrl and draw it.");
  return _(core_status_sentence (status));
}

char *
trace_words_root (Units units, double root)
{
  g_autofree char *off = units_length (units, root);

  return g_strdup_printf (_("The root was traced %s off the centre line. Does the surface go on to it, or is there a gap?"), off);
}

static char *
keeping_words (ViewShows shows, const char *within, const char *most, const char *at)
{
  /* Translators, of all four: two lengths and a place; how far the outline lies off the printed line, nineteen places of twenty and the
   * worst. */
  if (shows == VIEW_BODY_TOP)
    return g_strdup_printf (_("The outline from above keeps to the line within %s, most %s at %s aft of the datum."), within, most, at);
  if (shows == VIEW_BODY_SIDE)
    return g_strdup_printf (_("The outline from the side keeps to the line within %s, most %s at %s aft of the datum."), within, most, at);
  if (shows == VIEW_FIN)
    return g_strdup_printf (_("The outline keeps to the line within %s, most %s at height %s."), within, most, at);
  return g_strdup_printf (_("The outline keeps to the line within %s, most %s at station %s."), within, most, at);
}

char *
trace_words_compared (Units units, const Comparison *comparison, ViewShows shows, Point worst)
{
  g_autofree char *within = NULL, *most = NULL, *at = NULL;

  if (comparison == NULL)
    return NULL;
  if (comparison->seen < LOST || isnan (comparison->most))
    return g_strdup (_("Hardly any printed line is to be seen along the outline."));
  within = trace_words_fine (units, comparison->within);
  most = trace_words_fine (units, comparison->most);
  at = place_words (units, shows, worst);
  return keeping_words (shows, within, most, at);
}
