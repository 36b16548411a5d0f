#pragma once
#include <glib.h>
#include "geometry/segment.h"

/** A flat thing at full size: what is cut out and what is drawn upon it. mm of its own, x to the right, y down, as it lies on the paper. A
 *  template paints it, a file for cutting holds it; both from the same numbers. */

/** What a line or a word is for: how it is painted, and its layer in a file for cutting. */
typedef enum {
  FLAT_CUT,          /* the edge */
  FLAT_OPENING,      /* cut out of the inside */
  FLAT_HINGE,        /* where a control is cut off */
  FLAT_BEVEL,        /* how far back the bevel of its edge goes */
  FLAT_STATION,      /* of a rib or a former; construction */
  FLAT_CENTRE,       /* centre line, fold, dihedral break */
  FLAT_MARK,         /* where it balances */
  FLAT_LIMIT,        /* between which it may */
  FLAT_ROOM,         /* what stands or runs there: a servo, a lead */
  FLAT_NAME,         /* what the piece is called, as a word upon it */
  FLAT_PURPOSE_COUNT
} FlatPurpose;

typedef struct {
  FlatPurpose purpose;
  bool closed;                   /* a straight line joins its end to its start */
  Point start;
  Segment *segments;  size_t count;
} FlatLine;

/** One line of words, its foot at the place. */
typedef struct {
  FlatPurpose purpose;
  char *text;
  Point at;
  double caps;                   /* height of its capitals, mm */
  double across;                 /* the share of its width that stands before the place, 0 to 1 */
  double turn;                   /* degrees clockwise about the place; 0 is read from below */
  double most;                   /* mm, how long it may get before it is lettered smaller; 0: no matter */
} FlatWord;

/** The height of its capitals, mm, as it is lettered, from how long it would be, mm, at the height wanted. */
double flat_word_caps (const FlatWord *word, double length);

typedef struct {
  char *name;                    /* "Wing, starboard"; translated */
  char *remark;                  /* what has to be known of it: "developed flat at 5°"; NULL none */
  GArray *lines;                 /* of FlatLine */
  GArray *words;                 /* of FlatWord */
} FlatPiece;

/** A piece without anything on it yet. The texts are copied; remark may be NULL. */
FlatPiece *flat_piece_new  (const char *name, const char *remark);
void       flat_piece_free (FlatPiece *self);          /* NULL is fine */
/** Adds a line of `count` >= 1 segments, which are copied. */
void flat_piece_add_line (FlatPiece *self, FlatPurpose purpose, bool closed, Point start, const Segment segments[], size_t count);
void flat_piece_add_straight (FlatPiece *self, FlatPurpose purpose, Point from, Point to);      /* one straight line, mm */
void flat_piece_add_box      (FlatPiece *self, FlatPurpose purpose, Box box);      /* a closed rectangle, mm */
/** Adds the closed line round `count` >= 3 corners, mm. */
void flat_piece_add_polygon  (FlatPiece *self, FlatPurpose purpose, const Point corners[], size_t count);
/** Adds words read from below, beginning at the place. The text is copied. `caps` is the height of capitals, mm. */
void flat_piece_add_words (FlatPiece *self, FlatPurpose purpose, double caps, Point at, const char *text);
/** Adds those words as they are; their text is copied. */
void flat_piece_add_word  (FlatPiece *self, const FlatWord *word);
/** The same piece seen from its other side: left and right changed about x = 0; words stay to be read. Named anew. */
FlatPiece *flat_piece_mirrored (const FlatPiece *self, const char *name);
/** The same piece, `by` further to the right and down. */
FlatPiece *flat_piece_moved    (const FlatPiece *self, Point by);
/** The box of its lines, words left out; empty without any. */
Box flat_piece_bounds (const FlatPiece *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (FlatPiece, flat_piece_free)
