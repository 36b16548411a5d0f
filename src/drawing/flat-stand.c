#include "drawing/flat-aids.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/wall-sheet-pen.h"
#include "figures/balance-marks.h"

static const double beyond = 20, least_half = 50, depth = 75;     /* of the base: past a pin; half its width at least; mm */
static const double pin_y = 25, cross = 5;                        /* where the pins stand; half of their crosses */
static const double line = 4;

static void
add_pin (FlatPiece *piece, double x)
{
  flat_piece_add_straight (piece, FLAT_MARK, (Point) { x - cross, pin_y }, (Point) { x + cross, pin_y });
  flat_piece_add_straight (piece, FLAT_MARK, (Point) { x, pin_y - cross }, (Point) { x, pin_y + cross });
  flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_MARK, .text = (char *) _("pin"), .at = { x, pin_y - cross - 1.5 }, .caps = caps_small, .across = 0.5 });
}

/* How it is used, line by line from y on, middled. */
static void
add_use (FlatPiece *piece, double y, bool inverted, const char *apart)
{
  g_autofree char *pins = g_strdup_printf (_("Two pins of one height, rounded on top, %s apart."), apart);
  const char *lines[] = { pins, _("Take the propeller off; all else aboard as it flies."),
                          inverted ? _("Set the wing on the pins inverted: its balance point lies above the wing.") : _("Set the wing on the pins upright."),
                          _("Begin with the forward limits on the pins;"), _("move the battery until the body lies level,"),
                          _("and only then go aft to the mark.") };

  for (size_t i = 0; i < G_N_ELEMENTS (lines); i++)
    flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_MARK, .text = (char *) lines[i], .at = { 0, y + line * i }, .caps = caps_small, .across = 0.5 });
}

FlatPiece *
flat_stand_of (const Figures *figures, Units units)
{
  const MarkFigures *mark = balance_mark_on_wing (figures);

  if (!mark || !(mark->station_mm > 0))
    return NULL;
  const double half = fmax (least_half, mark->station_mm + beyond);
  g_autofree char *apart = paper_length (units, 2 * mark->station_mm), *station = paper_length (units, mark->station_mm);
  /* Translators: a station */
  g_autofree char *remark = g_strdup_printf (_("Pins beneath the wing at station %s on both sides"), station);
  FlatPiece *piece = flat_piece_new (_("Base of a balancing stand"), remark);
  flat_piece_add_box (piece, FLAT_CUT, (Box) { { -half, 0 }, { half, depth } });
  flat_piece_add_straight (piece, FLAT_CENTRE, (Point) { 0, 0 }, (Point) { 0, pin_y + cross });
  add_pin (piece, -mark->station_mm);
  add_pin (piece, mark->station_mm);
  add_use (piece, pin_y + cross + 2.5 * line, balance_is_inverted (figures, mark), apart);
  return piece;
}
