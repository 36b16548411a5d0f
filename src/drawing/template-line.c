#include "trammel-config.h"
#include "drawing/template-line.h"
#include <glib/gi18n-lib.h>

/* An edge alone is thick and unbroken; a hinge has a dot, a limit short dashes, so that none is taken for another nor for a station. */
static void
set_dashes (const SheetPen *pen, FlatPurpose purpose)
{
  if (purpose == FLAT_BEVEL)
    cairo_set_dash (pen->cr, (const double[]) { 0.4, 0.7 }, 2, 0);
  else if (purpose == FLAT_OPENING)
    cairo_set_dash (pen->cr, (const double[]) { 5, 1 }, 2, 0);
  else if (purpose == FLAT_HINGE)
    cairo_set_dash (pen->cr, (const double[]) { 5, 0.8, 0.8, 0.8 }, 4, 0);
  else if (purpose == FLAT_LIMIT)
    cairo_set_dash (pen->cr, (const double[]) { 1.2, 0.7 }, 2, 0);
}

void
template_line_set (const SheetPen *pen, FlatPurpose purpose)
{
  static const double widths[FLAT_PURPOSE_COUNT] = { [FLAT_CUT] = 0.5,      [FLAT_OPENING] = 0.5, [FLAT_HINGE] = 0.35, [FLAT_BEVEL] = 0.25,
                                                     [FLAT_STATION] = 0.18, [FLAT_MARK] = 0.7,    [FLAT_LIMIT] = 0.35 };

  look_set_source (pen->cr, pen->look->graphite);
  if (purpose == FLAT_CENTRE)
    line_kind_set (pen->cr, pen->look, LINE_CENTRE);
  else if (purpose == FLAT_ROOM)
    line_kind_set (pen->cr, pen->look, LINE_HIDDEN);
  else
    pen_set_line (pen, widths[purpose]);
  set_dashes (pen, purpose);
  if (purpose == FLAT_CUT || purpose == FLAT_OPENING)
    cairo_set_line_join (pen->cr, CAIRO_LINE_JOIN_ROUND);
}

bool
template_line_is_firm (FlatPurpose purpose)
{
  return purpose != FLAT_STATION && purpose != FLAT_CENTRE && purpose != FLAT_ROOM;
}

const char *
template_line_words (FlatPurpose purpose)
{
  static const char *const words[FLAT_PURPOSE_COUNT] = {
    [FLAT_CUT] = N_("thick: edge, cut here"),
    [FLAT_OPENING] = N_("thick, long dashes: opening, cut out"),
    [FLAT_HINGE] = N_("dash and dot: hinge line, the control comes off here"),
    [FLAT_BEVEL] = N_("dots: how far its edge is bevelled"),
    [FLAT_STATION] = N_("thin: station of a rib or a former"),
    [FLAT_CENTRE] = N_("thin, chained: centre line, fold, dihedral break"),
    [FLAT_MARK] = N_("thickest: where it balances"),
    [FLAT_LIMIT] = N_("short dashes: limits between which it may balance"),
    [FLAT_ROOM] = N_("thin, dashed: what stands or runs beneath the skin"),
  };

  return _(words[purpose]);
}
