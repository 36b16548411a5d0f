#pragma once
#include <stdatomic.h>
#include "geometry/planform.h"
#include "geometry/stretch.h"

/* Private to the geometry room: what an outline is made of, derived once when it is made. */

/** A part of a stretch along which y runs one way (or stands still). */
typedef struct {
  size_t stretch;
  double t_from, t_to;        /* as the outline runs, t_from < t_to */
  Point from, to;
  Box box;                    /* tight */
} Piece;

/** Boxes around runs of neighbouring pieces: level 0 holds a box a piece, each level above one for every two of the level below. */
typedef struct {
  size_t levels;
  size_t first[64];           /* where a level begins in boxes[] */
  size_t count[64];
  Box *boxes;
} BoxTree;

struct Outline {
  atomic_size_t references;
  size_t count;               /* segments */
  Stretch *stretches;         /* count + 1: the last is the closing line */
  NodeKind *kinds;            /* count + 1 */
  Piece *pieces;              /* in the order of the run, the closing line's last */
  size_t piece_count;
  BoxTree tree;
  Box bounds;
  double area;                /* signed: positive when it turns from x towards y */
  bool reaches_under_its_root;  /* some of it lies between the root and the centre line, where a root is carried */
  OutlineFault fault;
};

/** The larger side of a box that is not empty, >= 0, in the outline's unit (mm in a document): what tolerances are parts of. */
static inline double
box_larger_side (Box box)
{
  return fmax (box.max.x - box.min.x, box.max.y - box.min.y);
}

/** Cuts the stretches into pieces and builds the tree over them. CORE_OK or CORE_NO_MEMORY. */
CoreStatus outline_cut_into_pieces (Outline *self);

/** The first piece from `piece` on that passes station y (the outline's unit: mm in a document), in the order of the run;
 *  piece_count when there is none.
 *  Pieces hold their lower end and not their upper one; at the outermost station of all (`outermost`) the other way round,
 *  so that each station is passed evenly often. Level pieces pass none. */
size_t outline_piece_at_station (const Outline *self, double y, bool outermost, size_t piece);

/** x where a piece that passes station y meets it; both in the outline's unit (mm in a document). */
double outline_piece_x (const Outline *self, const Piece *piece, double y);

/** +1 for a piece that runs outboard, -1 inboard or level; no unit. */
static inline double
piece_direction (const Piece *piece)
{
  return piece->to.y > piece->from.y ? 1 : -1;
}

/** Smooth where the second stretch leaves as the first arrives, within 0.5 degrees; else a corner. */
NodeKind outline_kind_from_shape (const Stretch *before, const Stretch *after);

/** The ends of all pieces' stations between the lowest and the highest, rising, each once, in the outline's unit (mm in a document).
 *  `levels` has room for 2 * piece_count. Returns how many, at least one. */
size_t outline_levels (const Outline *self, double levels[]);

/** Whether two parts of the outline exchange sides somewhere away from a node that they share; the closing line is one of them unless
 *  `drawn_only`. Sets the segments and the place of *fault when they do. */
bool outline_find_crossing (const Outline *self, bool drawn_only, OutlineFault *fault);

/** Fills *fault in with what outline_check is to tell. CORE_OK or CORE_NO_MEMORY. */
CoreStatus outline_find_fault (const Outline *self, OutlineFault *fault);

/** Whether the outline makes a surface: its fault unless that is a mere remark; CORE_OUT_OF_RANGE when a half that is to be
 *  mirrored reaches over the centre line, or lies where its root is to be carried. */
CoreStatus outline_surface_status (const Outline *self, PlanformSides sides);
