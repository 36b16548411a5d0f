#include "figures/balance-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/notes.h"
#include "figures/unweighed.h"

static void
note_margin (const Figures *figures, GPtrArray *notes)
{
  const double margin = figures->balance.static_margin_percent;
  const Target target = aeroplane_traits (figures->aeroplane).target;

  if (margin < 0 && figures->neutral_point.wing_alone)
    notes_add_problem (notes, NULL, _("The balance point lies behind the neutral point of the wing alone. Draw the tailplane, or "
                                      "move weight forward."));
  else if (margin < 0)
    notes_add_problem (notes, NULL, _("Tail-heavy: do not fly. The balance point lies behind the neutral point; move weight forward."));
  else if (isnan (figures->balance.target_x_mm))
    return;
  else if (margin < target.from)
    notes_add (notes, NOTE_ACT, NULL, _("Tail-heavy: the static margin is less than wanted. Move weight forward."));
  else if (margin > target.to)
    notes_add (notes, NOTE_LOOK, NULL, _("Nose-heavy: the static margin is more than wanted. Weight may go aft."));
}

/* Without a length, whose unit is the reader's: of several, the number in the document's order. */
static void
note_mark (const BalanceFigures *balance, size_t i, const Piece *piece, GPtrArray *notes)
{
  const MarkFigures *mark = &balance->marks[i];
  const bool alone = balance->mark_count == 1, off = mark->target_mm < 0 || mark->target_mm > mark->chord_mm;

  if (isnan (mark->target_mm) && alone)
    notes_add (notes, NOTE_LOOK, piece, _("The balance mark does not meet the wing. Set it at a station within the span."));
  else if (isnan (mark->target_mm))
    notes_add (notes, NOTE_LOOK, piece, _("Balance mark %d does not meet the wing. Set it at a station within the span."), (int) i + 1);
  else if (off && alone)
    notes_add (notes, NOTE_LOOK, piece, _("The balance mark lies off the wing at its station: fingers cannot reach it there."));
  else if (off)
    notes_add (notes, NOTE_LOOK, piece, _("Balance mark %d lies off the wing at its station: fingers cannot reach it there."), (int) i + 1);
}

static void
note_marks (const Figures *figures, GPtrArray *notes)
{
  const BalanceFigures *balance = &figures->balance;
  const bool stated = aeroplane_count (figures->aeroplane, PIECE_MARK) > 0;

  if (balance->mark_count && !stated)
    notes_add (notes, NOTE_NOTE, NULL, _("No balance mark is set: a usual station beside the body is taken."));
  for (size_t i = 0; i < balance->mark_count; i++)
    note_mark (balance, i, stated ? aeroplane_nth (figures->aeroplane, PIECE_MARK, i) : NULL, notes);
}

/* Not even lead at the end of what is drawn helps: the aim lies beyond it. */
static void
note_no_ballast (const Solution *solution, GPtrArray *notes)
{
  const Piece *piece = &solution->part->piece;

  if (solution->x_mm < solution->part->rail_from)
    notes_add (notes, NOTE_LOOK, piece, _("The aim lies ahead of the nose, so no ballast makes up for the rail of “%s”. Draw the nose "
                                          "further forward, or move the wing aft."), piece_name (piece));
  else
    notes_add (notes, NOTE_LOOK, piece, _("The aim lies behind the tail, so no ballast makes up for the rail of “%s”. Draw the tail "
                                          "further aft, or move the wing forward."), piece_name (piece));
}

static void
note_rail (const Solution *solution, GPtrArray *notes)
{
  const Piece *piece = &solution->part->piece;

  if (!(solution->part->mass > 0))
    notes_add (notes, NOTE_LOOK, piece, _("“%s” weighs nothing, so its place on its rail balances nothing. Type its mass."),
               piece_name (piece));
  if (isnan (solution->x_mm) || solution->reachable)
    return;
  if (solution->x_mm < solution->part->rail_from)
    notes_add (notes, NOTE_LOOK, piece, _("The rail of “%s” ends too far aft for the aim."), piece_name (piece));
  else
    notes_add (notes, NOTE_LOOK, piece, _("The rail of “%s” ends too far forward for the aim."), piece_name (piece));
  if (isnan (solution->ballast_g))
    note_no_ballast (solution, notes);
}

/* What is drawn weighs something, and mostly aft: left out, the balance point lies too far forward. */
static void
note_unweighed (const Figures *figures, PieceKind kind, GPtrArray *notes)
{
  for (size_t i = 0; i < aeroplane_count (figures->aeroplane, kind); i++)
    {
      const Piece *piece = aeroplane_nth (figures->aeroplane, kind, i);

      if (piece_is_unweighed (figures->aeroplane, piece))
        notes_add (notes, NOTE_LOOK, piece, _("“%s” has no mass yet: type what it weighs, under Structure."), piece_name (piece));
    }
}

void
balance_figures_note (const Figures *figures, GPtrArray *notes)
{
  guint from = notes->len;

  note_margin (figures, notes);
  notes_explain (notes, from, EXPLAIN_STATIC_MARGIN);
  note_marks (figures, notes);
  from = notes->len;
  for (size_t i = 0; i < figures->solution_count; i++)
    note_rail (&figures->solutions[i], notes);
  notes_explain (notes, from, EXPLAIN_SOLUTION);
  if (!(figures->mass.total_g > 0))      /* said already: there are no masses at all */
    return;
  note_unweighed (figures, PIECE_SURFACE, notes);
  note_unweighed (figures, PIECE_BODY, notes);
}
