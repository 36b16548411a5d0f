#include "trammel-config.h"
#include "drawing/template-line.h"
#include <glib/gi18n-lib.h>

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
  if (purpose == FLAT_BEVEL)
    cairo_set_dash (pen->cr, (const double[]) { 0.4, 0.7 }, 2, 0);
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
    [FLAT_CUT] = N_("edge: cut here"),
    [FLAT_OPENING] = N_("opening: cut out"),
    [FLAT_HINGE] = N_("hinge line: the control comes off here"),
    [FLAT_BEVEL] = N_("how far its edge is bevelled"),
    [FLAT_STATION] = N_("station of a rib or a former"),
    [FLAT_CENTRE] = N_("centre line, fold, dihedral break"),
    [FLAT_MARK] = N_("where it balances"),
    [FLAT_LIMIT] = N_("limits between which it may balance"),
    [FLAT_ROOM] = N_("what stands or runs beneath the skin"),
  };

  return _(words[purpose]);
}
