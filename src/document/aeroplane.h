#pragma once
#include "document/piece.h"

/** An aeroplane. Nobody changes one that exists: each change below makes the next one, which shares every piece that it
 *  did not touch. Keeping the old one is undo; two equal pointers mean "has not changed"; a worker may read one freely. */
typedef struct Aeroplane Aeroplane;

/** What is wanted. The static margin, % of MAC: a band with an aim inside, from <= aim <= to. What it shall weigh: all-up, g, or by the area of
 *  its wings, g/dm²; 0 not given, and where both are the first counts. */
typedef struct { double from, to, aim, all_up, loading; } Target;

/** Where the body is opened for the battery. */
typedef enum { HATCH_NOT_CHOSEN, HATCH_ON_TOP, HATCH_ON_BOTTOM, HATCH_SIDE_COUNT } HatchSide;

/** What belongs to the aeroplane itself. The name may be NULL. The bare airframe on the scale, g, without any gear, and how well that is
 *  known, one standard deviation; 0 not given. Where it balances then, mm aft of the datum, and how well that is known, likewise, if somebody
 *  has balanced it. */
typedef struct {
  const char *name;
  Target target;
  bool tailless;
  double airframe, airframe_sigma;
  bool airframe_balanced;
  double airframe_x, airframe_x_sigma;
  HatchSide hatch;              /* on which side the hatch opens */
  char changed[11];             /* the day of its last change, "2026-11-25"; "" not known. Not part of the value: equal ones may differ in it */
} AeroplaneTraits;

Aeroplane *aeroplane_new   (void);                        /* empty; target 5, 15, 12 */
/** One of `count` pieces at once; the pieces are taken, the array is lent. To be preferred to many aeroplane_with_added. */
Aeroplane *aeroplane_from_pieces (AeroplaneTraits traits, Piece *const takes[], size_t count);
Aeroplane *aeroplane_ref   (const Aeroplane *self);       /* one reference more, the caller's; not NULL */
void       aeroplane_unref (Aeroplane *self);             /* NULL is fine */
bool       aeroplane_equal (const Aeroplane *a, const Aeroplane *b);   /* by value */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Aeroplane, aeroplane_unref)

AeroplaneTraits aeroplane_traits (const Aeroplane *self);
const char     *aeroplane_foreign_attributes (const Aeroplane *self);  /* of a later version; "" if none */

/** What a later version or a person's comment put around the pieces: XML text, NULL none. Comments between pieces are pieces. */
typedef struct {
  const char *attributes;                          /* of the root: the same as aeroplane_foreign_attributes */
  const char *before, *behind;                     /* comments outside the root */
  const char *target_attributes, *target_inside;
} AeroplaneKept;
/** Those texts, lent as long as the aeroplane lives. */
AeroplaneKept aeroplane_kept (const Aeroplane *self);

/* Pieces stand in the order of the file. What comes back is lent and lives as long as the aeroplane. */
size_t           aeroplane_piece_count (const Aeroplane *self);                   /* of all kinds */
const Piece     *aeroplane_piece       (const Aeroplane *self, size_t index);     /* by its place; index < piece count */
size_t           aeroplane_count       (const Aeroplane *self, PieceKind kind);   /* of one kind */
const Piece     *aeroplane_nth         (const Aeroplane *self, PieceKind kind, size_t index);     /* of one kind; index < its count */
const Piece     *aeroplane_find        (const Aeroplane *self, const char *id);   /* NULL when there is none; id may be NULL */

/** The surface of that number, from 0 in the order of the file; i < their count. */
static inline const Surface *
aeroplane_surface (const Aeroplane *self, size_t i)
{
  return (const Surface *) aeroplane_nth (self, PIECE_SURFACE, i);
}

/** The body of that number, from 0 in the order of the file; i < their count. */
static inline const Body *
aeroplane_body (const Aeroplane *self, size_t i)
{
  return (const Body *) aeroplane_nth (self, PIECE_BODY, i);
}

/** The structure of that number, from 0 in the order of the file; i < their count. */
static inline const Structure *
aeroplane_structure (const Aeroplane *self, size_t i)
{
  return (const Structure *) aeroplane_nth (self, PIECE_STRUCTURE, i);
}

/** The part of that number, from 0 in the order of the file; i < their count. */
static inline const Part *
aeroplane_part (const Aeroplane *self, size_t i)
{
  return (const Part *) aeroplane_nth (self, PIECE_PART, i);
}

/** The lead of that number, from 0 in the order of the file; i < their count. */
static inline const Lead *
aeroplane_lead (const Aeroplane *self, size_t i)
{
  return (const Lead *) aeroplane_nth (self, PIECE_LEAD, i);
}

/** The mark of that number, from 0 in the order of the file; i < their count. */
static inline const Mark *
aeroplane_mark (const Aeroplane *self, size_t i)
{
  return (const Mark *) aeroplane_nth (self, PIECE_MARK, i);
}

/** The plan of that number, from 0 in the order of the file; i < their count. */
static inline const Plan *
aeroplane_plan (const Aeroplane *self, size_t i)
{
  return (const Plan *) aeroplane_nth (self, PIECE_PLAN, i);
}

/* The piece of that id, lent; NULL when there is none or it is of another kind. */
const Surface   *aeroplane_surface_by_id   (const Aeroplane *self, const char *id);     /* NULL unless it is a surface */
const Body      *aeroplane_body_by_id      (const Aeroplane *self, const char *id);     /* … a body */
const Structure *aeroplane_structure_of    (const Aeroplane *self, const char *id);     /* the first structure of that surface or body */
const Structure *aeroplane_structure_by_id (const Aeroplane *self, const char *id);     /* … a structure */
const Part      *aeroplane_part_by_id      (const Aeroplane *self, const char *id);     /* … a part */
const Lead      *aeroplane_lead_by_id      (const Aeroplane *self, const char *id);     /* … a lead */
const Plan      *aeroplane_plan_by_id      (const Aeroplane *self, const char *id);     /* … a plan */
/** The view of that id, lent, and in *plan (may be NULL) the plan that shows it; NULL, *plan untouched, when there is none. */
const PlanView  *aeroplane_view_by_id      (const Aeroplane *self, const char *id, const Plan **plan);
/** A control of a surface; NULL where either is not there. Lent. */
const Control   *aeroplane_control_by_id (const Aeroplane *self, const char *surface, const char *control);
/** The reference: the first surface of role wing; NULL without one. */
const Surface   *aeroplane_reference_wing (const Aeroplane *self);
/** An id not yet used that begins with `stem`: "part", "part-2", … A new string. */
char            *aeroplane_free_id  (const Aeroplane *self, const char *stem);

/** A name for a group that no part is in yet, begun with `stem` likewise. A new string. */
char            *aeroplane_free_group (const Aeroplane *self, const char *stem);

/* Changes. Each returns a new aeroplane, one reference, the caller's; pieces handed in are taken, texts are copied. */
Aeroplane *aeroplane_with_traits   (const Aeroplane *self, AeroplaneTraits traits);           /* name, target in % of MAC, tailless */
Aeroplane *aeroplane_with_foreign_attributes (const Aeroplane *self, const char *text);       /* of the root; NULL or "" none */
Aeroplane *aeroplane_with_kept     (const Aeroplane *self, AeroplaneKept kept);               /* all five of its texts */
Aeroplane *aeroplane_with_added    (const Aeroplane *self, Piece *takes);                     /* behind the last piece */
/** Puts `takes` where `old` stands; old is one of self's pieces (by pointer). A piece of the same id and kind costs one counted
 *  reference a piece, nothing else. */
Aeroplane *aeroplane_with_replaced (const Aeroplane *self, const Piece *old, Piece *takes);
/** `old`, one of self's pieces (by pointer), taken out alone: what hangs on it stays, and points nowhere. */
Aeroplane *aeroplane_without       (const Aeroplane *self, const Piece *old);
/** Last changed on that day, "2026-11-25"; the same aeroplane where it says so already. */
Aeroplane *aeroplane_with_changed  (const Aeroplane *self, const char *day);
/** Taken out with what hangs on it: a surface's or body's structures, a part's leads. A two-into-one lead that keeps one of its servos is
 *  that one's plain lead then. */
Aeroplane *aeroplane_without_dependents (const Aeroplane *self, const Piece *old);
