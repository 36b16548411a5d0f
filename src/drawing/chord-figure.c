#include "drawing/chord-figure.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/lettering.h"
#include "drawing/runs.h"
#include "drawing/section-path.h"
#include "geometry/section-shape.h"
#include "drawing/symbols.h"

static const double shown_percent = 62;        /* % of the mean chord: behind it nothing is decided */
static const double section_thickness = 0.065; /* thin, so that it stays a line and not a body */

/* The figure under way; x is px for % of the mean chord. */
typedef struct {
  cairo_t *cr;
  const Look *look;
  const Figures *figures;
  Lettering lettering;
  double left, px_a_percent, middle, scale_y, half;
} ChordDraft;

static double
px_of (const ChordDraft *d, double percent)
{
  return d->left + percent * d->px_a_percent;
}

/* % of the mean chord for an x of the aeroplane; NAN without a chord. */
static double
percent_of (const ChordDraft *d, double x_mm)
{
  const SurfaceFigures *reference = d->figures->reference;

  return reference ? 100 * (x_mm - reference->planform.mac_leading_edge_x) / reference->planform.mac : NAN;
}

static double
sigma_percent (const ChordDraft *d, double sigma_mm)
{
  return d->figures->reference ? 100 * sigma_mm / d->figures->reference->planform.mac : NAN;
}

static void
add_section (const ChordDraft *d)
{
  const Point leading = { px_of (d, 0), d->middle }, trailing = { px_of (d, 100), d->middle };

  section_path (d->cr, &(SectionPath) { leading, trailing, section_thickness, shown_percent / 100 });
}

static void
draw_axis (const ChordDraft *d)
{
  look_set_source (d->cr, d->look->centre_line);
  line_kind_set (d->cr, d->look, LINE_CENTRE);
  line_stroke (d->cr, (Point) { px_of (d, 0) - 6, d->middle }, (Point) { px_of (d, shown_percent), d->middle });
}

/* Nothing is known yet: the section stands broken and empty. */
static void
draw_empty (const ChordDraft *d)
{
  draw_axis (d);
  add_section (d);
  look_set_source (d->cr, d->look->construction);
  line_kind_set (d->cr, d->look, LINE_HIDDEN);
  cairo_set_line_width (d->cr, 1.2 * d->look->symbol_line);
  cairo_stroke (d->cr);
}

static void
draw_section (const ChordDraft *d)
{
  add_section (d);
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill (d->cr);
  draw_axis (d);
}

static void
draw_section_line (const ChordDraft *d)
{
  const double cut = d->half * section_half_thickness (section_thickness, shown_percent / 100) / (section_thickness / 2);

  add_section (d);
  look_set_source (d->cr, d->look->graphite);
  line_kind_set (d->cr, d->look, LINE_OUTLINE);
  cairo_stroke (d->cr);
  draw_break (d->cr, d->look, px_of (d, shown_percent), d->middle - cut, d->middle + cut);
}

/* The band fills the section between its limits, and lies on the scale as a bar. */
static void
draw_band (const ChordDraft *d)
{
  const BalanceFigures *balance = &d->figures->balance;
  const double from = fmax (0, percent_of (d, balance->forward_limit_x_mm)), to = fmin (shown_percent, percent_of (d, balance->aft_limit_x_mm));
  const double aim = percent_of (d, balance->target_x_mm);

  if (!isfinite (balance->forward_limit_x_mm) || !isfinite (balance->aft_limit_x_mm) || from >= to)
    return;
  cairo_save (d->cr);
  add_section (d);
  cairo_clip (d->cr);
  draw_wanted_band (d->cr, d->look, (Box) { { px_of (d, from), d->middle - d->half }, { px_of (d, to), d->middle + d->half } }, BAND_ALONG_CHORD);
  cairo_restore (d->cr);
  look_set_source (d->cr, d->look->band);
  cairo_rectangle (d->cr, px_of (d, from), d->scale_y - 3, px_of (d, to) - px_of (d, from), 3);
  cairo_fill (d->cr);
  if (aim >= 0 && aim <= shown_percent)
    draw_aim (d->cr, d->look, (Point) { px_of (d, aim), d->scale_y - 4 }, false);
}

/* Which way a thing lies off the picture: -1 ahead of the chord, 1 behind what is shown of it, 0 on it. */
static int
way_off (double percent)
{
  return percent < 0 ? -1 : percent > shown_percent ? 1 : 0;
}

static const double off_inset = 36;      /* of a thing off the picture, from that end, px: its arrow takes the rest */

static double
kept_px (const ChordDraft *d, double percent)
{
  const int way = way_off (percent);

  return way < 0 ? px_of (d, 0) + off_inset : way > 0 ? px_of (d, shown_percent) - off_inset : px_of (d, percent);
}

/* A stout arrow to the picture's edge, and the word for it on the other side of the sign. */
static void
draw_way_off (const ChordDraft *d, double percent, Colour colour)
{
  const int way = way_off (percent);
  const double at = kept_px (d, percent), beside = 13, head = 10;
  const Point tip = { at + way * (off_inset - 1), d->middle }, neck = { tip.x - way * head, d->middle };

  if (way == 0)
    return;
  look_set_source (d->cr, colour);
  cairo_rectangle (d->cr, fmin (at + way * beside, neck.x), d->middle - 1.5, fabs (neck.x - at - way * beside), 3);
  cairo_move_to (d->cr, tip.x, tip.y);
  cairo_line_to (d->cr, neck.x, neck.y - 7);
  cairo_line_to (d->cr, neck.x, neck.y + 7);
  cairo_close_path (d->cr);
  cairo_fill (d->cr);
  lettering_draw (&d->lettering, &(Letters) {
    .text = way < 0 ? C_("off the chord figure", "ahead") : C_("off the chord figure", "behind"), .place = { at - way * beside, d->middle },
    .across = way < 0 ? 0 : 1, .rise = LETTERS_AT_MIDDLE, .colour = colour, .bold = true, .halo = 2 });
}

/* How far it may be out, where its place can be shown. */
static void
draw_deviation (const ChordDraft *d, double percent, double sigma_mm, double clear, Colour colour)
{
  if (way_off (percent) == 0)
    draw_whiskers (d->cr, d->look, &(Whiskers) {
      .at = { px_of (d, percent), d->middle }, .clear = clear, .reach = sigma_percent (d, sigma_mm) * d->px_a_percent, .colour = colour });
}

static void
draw_neutral_point (const ChordDraft *d)
{
  const NeutralPointFigures *np = &d->figures->neutral_point;
  const Point at = { kept_px (d, np->percent_mac), d->middle };

  draw_way_off (d, np->percent_mac, d->look->neutral);
  draw_deviation (d, np->percent_mac, np->sigma_mm, 0.8 * neutral_diamond_half (d->look) + 2, d->look->neutral);
  draw_neutral_halo (d->cr, d->look, at);
  draw_neutral_diamond (d->cr, d->look, at, false);
}

static void
draw_balance (const ChordDraft *d)
{
  const double percent = percent_of (d, d->figures->mass.x_mm);

  if (!isfinite (percent))
    return;
  draw_way_off (d, percent, d->look->balance);
  draw_deviation (d, percent, d->figures->mass.x_sigma_mm, balance_disc_radius (d->look, DISC_ON_CHORD) + 2, d->look->balance);
  draw_balance_disc (d->cr, d->look, (Point) { kept_px (d, percent), d->middle }, DISC_ON_CHORD);
}

static void
draw_scale_ticks (const ChordDraft *d)
{
  look_set_source (d->cr, d->look->construction);
  cairo_set_line_width (d->cr, 1);
  cairo_set_dash (d->cr, NULL, 0, 0);
  line_stroke (d->cr, (Point) { px_of (d, 0), d->scale_y }, (Point) { px_of (d, shown_percent), d->scale_y });
  for (int percent = 0; percent <= shown_percent; percent++)
    {
      const double x = px_of (d, percent), length = percent % 10 == 0 ? 7 : percent % 5 == 0 ? 5 : 3;

      line_stroke (d->cr, (Point) { x, d->scale_y }, (Point) { x, d->scale_y + length });
    }
}

static void
draw_scale_figures (ChordDraft *d)
{
  const Letters kind = { .size = d->look->ruler_size, .colour = d->look->dim_text, .rise = LETTERS_BELOW };

  for (int percent = 0; percent <= 60; percent += 10)
    {
      char figure[8];
      Letters letters = kind;

      g_snprintf (figure, sizeof figure, "%d", percent);
      letters.text = percent == 60 ? _("% MAC") : figure;
      letters.across = percent == 60 ? 1 : 0.5;
      letters.place = (Point) { percent == 60 ? px_of (d, shown_percent) + 2 : px_of (d, percent), d->scale_y + 10 };
      lettering_draw (&d->lettering, &letters);
    }
}

void
draw_chord_figure (cairo_t *cr, const Look *look, const Figures *figures, double width, double height)
{
  const double left = 9, right = 8, u = look->text_size / 12;
  ChordDraft draft = {
    .cr = cr, .look = look, .figures = figures, .left = left, .px_a_percent = (width - left - right) / shown_percent };

  draft.half = section_thickness * 50 * draft.px_a_percent;
  draft.scale_y = round (height - 10 - look->ruler_size * look->cap_height - 8 * u);
  draft.middle = round (fmax (draft.half + 2, (draft.scale_y - 13) / 2));
  cairo_save (cr);
  cairo_new_path (cr);
  if (!figures->reference || !isfinite (figures->neutral_point.percent_mac))
    draw_empty (&draft);
  else
    {
      draft.lettering = lettering_begin (cr, look);
      draw_section (&draft);
      draw_band (&draft);
      draw_section_line (&draft);
      draw_scale_ticks (&draft);
      draw_scale_figures (&draft);
      draw_neutral_point (&draft);
      draw_balance (&draft);
    }
  cairo_restore (cr);
}
