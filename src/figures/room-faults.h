#pragma once
#include "document/aeroplane.h"
#include "figures/body-profile.h"
#include "figures/piece-key.h"

/** What has no room where it stands: parts in each other's place, through the body's sides, in the wing that passes through the body, too high for
 *  a wing, off their rails; leads too short. */

typedef enum {
  ROOM_OVERLAP,                                 /* with `other` */
  ROOM_TOO_WIDE, ROOM_TOO_HIGH,                 /* for the body there, wherever across it stands */
  ROOM_THROUGH_SIDE, ROOM_THROUGH_TOP, ROOM_THROUGH_FLOOR,      /* of a body that it would fit in */
  ROOM_OUT_OF_NOSE, ROOM_OUT_OF_TAIL,
  ROOM_ON_WING, ROOM_UNDER_WING,                /* reaches into the wing `in` that passes through the body, above or beneath which it would fit */
  ROOM_IN_WING,                                 /* likewise, and fits neither above nor beneath */
  ROOM_WING_SHALLOW,                            /* a servo in the wing `in` */
  ROOM_LEAD_SHORT,                              /* from the part to `other`, or the leg of `lead` that ends at the part */
  ROOM_MOTOR_OUT, ROOM_MOTOR_SUNK,              /* a motor stands too far out of its cowl, or too far in: nose_figures_of */
  ROOM_OFF_RAIL                                 /* its middle stands ahead of its rail's forward end, or aft of the other */
} RoomFaultKind;

/** Edges of a box, as a set. */
enum { EDGE_FORE = 1, EDGE_AFT = 2, EDGE_PORT = 4, EDGE_STARBOARD = 8, EDGE_TOP = 16, EDGE_BOTTOM = 32 };

typedef struct RoomFault {
  RoomFaultKind kind;
  const Part *part, *other;                     /* other: NULL unless the kind says so */
  const Lead *lead;                             /* NULL likewise */
  const Piece *in;                              /* the body or the wing; NULL of an overlap and a lead */
  unsigned edges, other_edges;                  /* EDGE_ of the part's box and the other's that reach where they must not */
  double lacking_mm;                            /* how much room, or length, is wanting; > 0 */
  double clear_mm;                              /* how wide the body is there inside, or how high, and that above or beneath a wing; how deep the
                                                   wing; else NAN */
  double extension_mm;                          /* of a lead the shortest sold that makes up for it; NAN: none does */
} RoomFault;

struct RoomMemory;

/** The bodies' insides, remembered until a body changes. */
typedef struct {
  PieceKey key;
  size_t count;
  BodyProfile **profiles;                       /* one a body, in the document's order */
} RoomProfiles;

/** Makes them new unless the bodies are those they were made from. */
void room_profiles_update (RoomProfiles *self, const Aeroplane *aeroplane);
/** Frees what it holds, not itself. */
void room_profiles_clear  (RoomProfiles *self);
/** The body that a part stands in, its middle within the outlines known (where none is known across or in height, anything is); its number,
 *  or (size_t) -1 for none. */
size_t room_body_of (const RoomProfiles *self, const Part *part);

/** All faults of the parts aboard, of RoomFault: bodies first, then rails, motors in cowls, overlaps, and leads. A new array; its pointers are
 *  lent by the aeroplane. Half a millimetre is no fault. Only what stands clear counts (part_stands_clear); a motor may stand out of the nose.
 *  method  boxes as turned; the body's sides less its walls (body_profile_clear); wing_depth_over; wing_through; lead_need_of */
GArray *room_faults (const RoomProfiles *profiles, const Aeroplane *aeroplane);
/** The same, faster where one part was moved since: what was found about the others is remembered (room-memory.h). */
GArray *room_faults_again (struct RoomMemory *memory, const RoomProfiles *profiles, const Aeroplane *aeroplane);
