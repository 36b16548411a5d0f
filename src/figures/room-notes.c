#include "figures/room-notes.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/notes.h"

/* Across and along; what stands in the body. */
static void
add_about_place (GPtrArray *notes, const RoomFault *fault)
{
  const Piece *piece = &fault->part->piece;
  const char *name = piece_name (piece);

  if (fault->kind == ROOM_TOO_WIDE)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” is wider than the body is there: turn it, or move it where the body is wider."), name);
  else if (fault->kind == ROOM_THROUGH_SIDE)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches through the side of the body: move it towards the centre line."), name);
  else if (fault->kind == ROOM_OUT_OF_NOSE)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” sticks out of the nose of the body: move it aft."), name);
  else if (fault->kind == ROOM_OUT_OF_TAIL)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” sticks out of the tail of the body: move it forward."), name);
  else if (fault->kind == ROOM_OFF_RAIL && fault->edges == EDGE_FORE)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” stands ahead of its rail: move it aft, or lengthen the rail forward."), name);
  else if (fault->kind == ROOM_OFF_RAIL)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” stands behind its rail: move it forward, or lengthen the rail aft."), name);
}

/* Before and behind the cowl's front. */
static void
add_about_cowl (GPtrArray *notes, const RoomFault *fault)
{
  const Piece *piece = &fault->part->piece;

  if (fault->kind == ROOM_MOTOR_OUT)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” is too far out of the cowl: set its firewall further back, or press Set Motor in Cowl."),
               piece_name (piece));
  else if (fault->kind == ROOM_MOTOR_SUNK)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” is sunk into the cowl, what turns would rub: set its firewall further forward, or press Set "
                                          "Motor in Cowl."), piece_name (piece));
}

/* In height. */
static void
add_about_height (GPtrArray *notes, const RoomFault *fault)
{
  const Piece *piece = &fault->part->piece;
  const char *name = piece_name (piece);

  if (fault->kind == ROOM_TOO_HIGH)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” is higher than the body is there: lay it flat, or move it where the body is higher."), name);
  else if (fault->kind == ROOM_THROUGH_TOP)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches through the top of the body: move it down."), name);
  else if (fault->kind == ROOM_THROUGH_FLOOR)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches through the bottom of the body: move it up."), name);
  else if (fault->kind == ROOM_WING_SHALLOW)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” is higher than “%s” is deep there: lay it on its side, or move it where the wing is deeper."),
               name, piece_name (fault->in));
}

/* A wing that passes through the body. */
static void
add_about_wing (GPtrArray *notes, const RoomFault *fault)
{
  const Piece *piece = &fault->part->piece;
  const char *name = piece_name (piece), *wing = fault->in ? piece_name (fault->in) : NULL;

  if (fault->kind == ROOM_ON_WING)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches into “%s”, which passes beneath it there: move it up."), name, wing);
  else if (fault->kind == ROOM_UNDER_WING)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches into “%s”, which passes above it there: move it down."), name, wing);
  else if (fault->kind == ROOM_IN_WING)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” reaches into “%s”, and the body has no room for it above or beneath: move it ahead of the wing or behind it."),
               name, wing);
}

static void
add_about_lead (GPtrArray *notes, const RoomFault *fault)
{
  const Piece *piece = &fault->lead->piece;
  const char *name = piece_name (&fault->part->piece), *other = fault->other ? piece_name (&fault->other->piece) : NULL;

  if (!other && isnan (fault->extension_mm))
    notes_add (notes, NOTE_LOOK, piece,
               _("“%s” does not reach “%s” with slack, and one extension is not enough: move its joint, or bring the parts closer together."),
               piece_name (piece), name);
  else if (!other)
    notes_add (notes, NOTE_LOOK, piece, _("“%s” does not reach “%s” with slack: an extension makes up for it."), piece_name (piece), name);
  else if (isnan (fault->extension_mm))
    notes_add (notes, NOTE_LOOK, piece,
               _("The lead from “%s” to “%s” is too short for its way with slack, and one extension is not enough: bring them closer together."),
               name, other);
  else
    notes_add (notes, NOTE_LOOK, piece,
               _("The lead from “%s” to “%s” is too short for its way with slack: an extension makes up for it."), name, other);
}

void
room_note (const Figures *figures, GPtrArray *notes)
{
  for (guint i = 0; i < figures->room->len; i++)
    {
      const RoomFault *fault = &g_array_index (figures->room, RoomFault, i);

      if (fault->kind == ROOM_LEAD_SHORT)
        add_about_lead (notes, fault);
      if (fault->kind == ROOM_OVERLAP)
        notes_add (notes, NOTE_LOOK, &fault->part->piece, _("“%s” and “%s” stand in the same place: move one of them."),
                   piece_name (&fault->part->piece), piece_name (&fault->other->piece));
      add_about_place (notes, fault);
      add_about_height (notes, fault);
      add_about_wing (notes, fault);
      add_about_cowl (notes, fault);
      ((Note *) g_ptr_array_index (notes, notes->len - 1))->room = fault;
    }
}
