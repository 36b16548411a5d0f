#pragma once
#include "document/aeroplane.h"
#include "document/draft.h"

/* What the draft's own files share. */

enum { LIST_COUNT = 10, FRAME_COUNT = 8 };     /* known elements stand at most four deep */

/** An element that has begun and not ended. */
typedef struct {
  ElementId id;
  int line;
  GString *waiting;       /* foreign text in it behind its last known child; NULL none */
  InnerKind inner;        /* of an inner element, which one it is, and the how-manieth in its piece */
  size_t index;
  gssize kept;            /* its entry in Draft.kept; -1 none */
  Piece *piece;           /* that which it makes; NULL where it makes none */
} Frame;

/** An id, lent from its piece or control, and who has it. */
typedef struct { const char *id; int line; ElementId element; } Ident;

struct Draft {
  Problems *problems;
  RootRecord root;
  bool root_met, target_met;
  GString *before, *behind, *target_inside;     /* NULL none */
  char *root_attributes, *target_attributes;
  GPtrArray *pieces;
  GArray *ids;                                  /* of Ident */
  Frame frames[FRAME_COUNT];
  int depth;

  /* of the piece that is being read; empty between pieces */
  GArray *lists[LIST_COUNT];                    /* records, a list for each entry of element_lists */
  GArray *nodes, *node_lines;                   /* of NodeRecord, int: the outline that is being read */
  GArray *kept;                                 /* of Kept */
  GString *image;                               /* the picture's text so far, without blanks; NULL no picture open */
  bool outline_met;                             /* an outline has stood in it, sound or not */
  bool mass_met;                                /* it says a mass, sound or not */
  GPtrArray *hoisted;                           /* bays found inside a body */
};

/** The outline that the nodes gathered make, or NULL with a problem told. `subject` is the piece's, `line` the outline's. */
Outline *draft_outline (const Draft *self, const char *subject, int line);
/** An element that stands once in a piece begins, the top frame its own. */
void draft_begin_single (Draft *self, const SingleField *field, const SaxElement *element);
/** Tells that the piece has that element twice. */
void draft_tell_second (const Draft *self, const Piece *piece, ElementId element, int line);
/** A plan's picture begins, the top frame its element's; its text comes by draft_text. */
void draft_begin_image (Draft *self, const SaxElement *element);
/** … and ends, in `line`: its bytes go to the plan, or a problem is told. */
void draft_end_image (Draft *self, Plan *plan, int line);
/** What stands before the inner element of the top frame goes to it, with its own foreign attributes, which are taken. */
void draft_keep_inner (Draft *self, InnerKind inner, size_t index, char *attributes);
/** Values of one piece that must agree with each other. */
void draft_check_piece (const Draft *self, const Piece *piece, int line);
/** Whether an item of a structure says what it weighs; else a problem at `line`. */
void draft_check_item (const Draft *self, const StructureItem *item, int line);
/** Whether the target's band runs forward to aft with its aim inside; else a problem at `line`. */
void draft_check_target (const Draft *self, int line);
/** Ids used twice, and references to what is not there. */
void draft_check_ids (Draft *self);
/** Gives an id to every piece and control that has none. After draft_check_ids. */
void draft_name_nameless (Draft *self);
