#include "trammel-config.h"
#include "drawing/wall-sheet-section.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/runs.h"
#include "drawing/section-path.h"
#include "figures/balance-marks.h"
#include "geometry/section-shape.h"
#include "drawing/symbols.h"

static const double beyond = 6;              /* of the chord line past both ends, mm */
static const double behind_limit = 14;       /* of the wing behind the aft limit where it is broken off */
static const double worth_breaking = 20;
static const double least_half = 2.5;        /* half height of the band where no thickness is known */

/* One section under way; lengths mm, user units on paper. */
typedef struct {
  const SheetPen *pen;
  const MarkFigures *mark;
  Point nose;                /* leading edge */
  double chord, drawn;       /* the whole, and how much of it is drawn */
  double thickness;          /* share of the chord; 0 not known */
  bool inverted;             /* balanced on its back: the finger touches the upper face */
} SectionDraft;

const MarkFigures *
section_mark (const WallSheet *sheet)
{
  return balance_mark_on_wing (sheet->figures);
}

static double
drawn_length (const MarkFigures *mark, SectionExtent extent)
{
  return extent == SECTION_WHOLE ? mark->chord_mm : fmin (mark->chord_mm, fmax (mark->aft_mm, mark->target_mm) + behind_limit);
}

bool
section_can_break (const WallSheet *sheet)
{
  const MarkFigures *mark = section_mark (sheet);

  return mark != NULL && mark->chord_mm - drawn_length (mark, SECTION_BROKEN) >= worth_breaking;
}

/* Where the section's face stands at x aft of the leading edge. */
static Point
face (const SectionDraft *draft, double x, bool upper)
{
  const double half = draft->chord * section_half_thickness (draft->thickness, fmin (1, x / draft->chord));

  return (Point) { draft->nose.x + x, draft->nose.y + (upper ? -half : half) };
}

static double
half_height (const SectionDraft *draft)
{
  return fmax (least_half, draft->chord * draft->thickness / 2);
}

static void
draw_band (const SectionDraft *draft)
{
  cairo_t *cr = draft->pen->cr;
  const double from = fmax (0, draft->mark->forward_mm), to = fmin (draft->drawn, draft->mark->aft_mm);
  const double half = draft->thickness > 0 ? draft->chord * draft->thickness : least_half;
  const Box band = { { draft->nose.x + from, draft->nose.y - half }, { draft->nose.x + to, draft->nose.y + half } };

  if (!(to > from))
    return;
  cairo_save (cr);
  if (draft->thickness > 0)
    {
      section_path (cr, &(SectionPath) { draft->nose, { draft->nose.x + draft->chord, draft->nose.y }, draft->thickness, 1 });
      cairo_clip (cr);
    }
  draw_wanted_band (cr, draft->pen->look, band, BAND_ALONG_CHORD);
  cairo_restore (cr);
}

static void
draw_shape (const SectionDraft *draft)
{
  const SheetPen *pen = draft->pen;
  const double cut = draft->drawn / draft->chord, end = draft->nose.x + draft->drawn;

  line_kind_set (pen->cr, pen->look, LINE_CENTRE);
  look_set_source (pen->cr, pen->look->centre_line);
  line_stroke (pen->cr, (Point) { draft->nose.x - beyond, draft->nose.y }, (Point) { end + beyond, draft->nose.y });
  section_path (pen->cr, &(SectionPath) { draft->nose, { draft->nose.x + draft->chord, draft->nose.y }, draft->thickness, cut });
  line_kind_set (pen->cr, pen->look, LINE_OUTLINE);
  look_set_source (pen->cr, pen->look->graphite);
  cairo_stroke (pen->cr);
  if (cut < 1)
    draw_break (pen->cr, pen->look, end, face (draft, draft->drawn, true).y - 1, face (draft, draft->drawn, false).y + 1);
}

static void
draw_mark (const SectionDraft *draft)
{
  const Point upper = face (draft, draft->mark->target_mm, true), lower = face (draft, draft->mark->target_mm, false);
  const Point apart = { 0, draft->thickness > 0 ? 0 : least_half };
  const Point above = point_sub (upper, apart), below = point_add (lower, apart);

  draw_section_mark (draft->pen->cr, draft->pen->look, draft->inverted ? above : below, draft->inverted ? below : above);
}

/* The same length in the other unit, for whoever holds the other rule. */
static char *
other_unit (Units units, double mm)
{
  const Units other = { .length = units.length == LENGTH_MM ? LENGTH_INCH : LENGTH_MM, .mass = units.mass };

  return paper_length (other, mm);
}

/* A dimension from the leading edge to x at height y, with words behind its end or behind `words_x`, mm aft of the leading edge. */
typedef struct { double x, y, caps; const char *words; double words_x; Point foot; } ChordDimension;

static void
draw_chord_dimension (const SectionDraft *draft, ChordDimension d)
{
  const SheetPen *pen = draft->pen;
  const double end = draft->nose.x + d.x;
  g_autofree char *figure = paper_length_figure (pen->sheet->units, d.x);
  const Dimension dimension = {
    .from = { draft->nose.x, d.y }, .to = { end, d.y }, .foot_from = draft->nose, .foot_to = d.foot,
    .figure = figure, .size = look_em_of_caps (pen->look, d.caps) };
  const Box box = dimension_figure_box (&pen->lettering, &dimension);

  dimension_draw (&pen->lettering, &dimension);
  pen_write (pen, (Script) { { fmax (fmax (end, box.max.x), draft->nose.x + d.words_x) + 3, d.y + caps_text / 2 }, caps_text, 0 }, d.words);
}

static void
draw_limits (const SectionDraft *draft, double y, double pitch)
{
  const MarkFigures *mark = draft->mark;
  const Units units = draft->pen->sheet->units;
  g_autofree char *forward = other_unit (units, mark->forward_mm), *aft = other_unit (units, mark->aft_mm);
  /* Translators: a length in the other unit, "forward limit 1 5/16 in" */
  g_autofree char *forward_words = g_strdup_printf (_("forward limit %s"), forward), *aft_words = g_strdup_printf (_("aft limit %s"), aft);

  const double caps = draft->pen->figure_caps, aft_end = mark->aft_mm <= draft->drawn ? mark->aft_mm : 0;

  if (mark->forward_mm > 0)
    draw_chord_dimension (draft, (ChordDimension) { mark->forward_mm, y, caps, forward_words, aft_end, face (draft, mark->forward_mm, false) });
  if (mark->aft_mm > 0 && mark->aft_mm <= draft->drawn)
    draw_chord_dimension (draft, (ChordDimension) { mark->aft_mm, y + pitch, caps, aft_words, aft_end, face (draft, mark->aft_mm, false) });
}

/* Which section it is, and how to hold the wing: in one line or two. Returns the foot of the last. */
static double
draw_words (const SheetPen *pen, Point at, const SectionDraft *draft, bool one_line)
{
  g_autofree char *station = paper_length (pen->sheet->units, draft->mark->station_mm);
  g_autofree char *chord = paper_length (pen->sheet->units, draft->chord);
  /* Translators: a station and the chord there, "section at station 40 mm, chord 129 mm" */
  g_autofree char *section = g_strdup_printf (_("section at station %s, chord %s"), station, chord);
  const char *hold = draft->inverted ? _("mark both faces; balance it inverted") : _("mark both faces; balance it upright");
  const double first = at.y + 8, second = first + (one_line ? 0 : 3.5), gap = 4;
  const double beside = one_line ? pen_width (pen, caps_small, section) + gap : 0;

  pen_write (pen, (Script) { { at.x, at.y + caps_figure }, caps_figure, 0 }, _("Balance mark, full size"));
  pen_write (pen, (Script) { { at.x, first }, caps_small, 0 }, section);
  pen_write (pen, (Script) { { at.x + beside, second }, caps_small, 0 }, hold);
  return second;
}

void
section_draw (const SheetPen *pen, Point at, SectionExtent extent)
{
  const MarkFigures *mark = section_mark (pen->sheet);
  const double thickness = pen->sheet->figures->reference->surface->thickness;
  SectionDraft draft = {
    .pen = pen, .mark = mark, .chord = mark->chord_mm, .drawn = drawn_length (mark, extent),
    .thickness = thickness > 0 ? thickness / 100 : 0, .inverted = balance_is_inverted (pen->sheet->figures, mark) };
  const double line = draw_words (pen, at, &draft, draft.drawn > 110) + 3 + caps_mark + 1.7;
  const double pitch = 1.24 * look_em_of_caps (pen->look, pen->figure_caps) + 0.6;      /* a figure, its gap and air */
  g_autofree char *other = other_unit (pen->sheet->units, mark->target_mm);

  draft.nose = (Point) { at.x + beyond, line + 4.8 + half_height (&draft) };
  draw_band (&draft);
  draw_shape (&draft);
  draw_mark (&draft);
  draw_chord_dimension (&draft, (ChordDimension) { mark->target_mm, line, caps_mark, other, 0, { draft.nose.x + mark->target_mm, line + 3 } });
  draw_limits (&draft, draft.nose.y + half_height (&draft) + pitch, pitch);
}

void
section_draw_missing (const SheetPen *pen, Point at, double width)
{
  const BalanceFigures *balance = &pen->sheet->figures->balance;
  const bool has_mark = balance->mark_count > 0 && isfinite (balance->marks[0].target_mm);
  const char *why = section_mark (pen->sheet) != NULL
                      ? _("The section does not fit on this paper at full size; a larger paper has room for it.")
                      : has_mark ? _("Not drawn: the mark lies off the wing at its station.")
                                 : _("Not yet: it is drawn as soon as the aeroplane has a balance mark.");
  g_auto (GStrv) lines = pen_wrapped (pen, caps_small, width, why);

  pen_write (pen, (Script) { { at.x, at.y + caps_figure }, caps_figure, 0 }, _("Balance mark, full size"));
  for (size_t i = 0; lines[i] != NULL; i++)
    pen_write (pen, (Script) { { at.x, at.y + 8.5 + 4 * i }, caps_small, 0 }, lines[i]);
}
