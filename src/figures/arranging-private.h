#pragma once
#include "figures/arranging.h"

/* Private to the arranging files. */

/* m in a mm. */
#define ARRANGING_METRE 1e-3

/* A leg of which at least one end may be elsewhere. Where the joint stands between two parts of the question, what lies beyond it is always
 * as long as now. */
typedef struct { const Lead *lead; LeadLeg leg; double beyond_mm; } AskedLeg;

/* Of all arrangements that were dropped because leads did not reach by the ways they have then the one where least is missing: the lead that
 * is short by most there, ARRANGE_NONE where the question has it not, and its way, m, as `needed` of an Arrangement. */
typedef struct { bool met; size_t lead; double missing_mm, way; } NearestWay;

struct Arranging {
  Aeroplane *aeroplane;
  NearestWay *nearest;                    /* while it is asked: lent */
  const Aeroplane *routed;                /* the same with its parts where ways of leads are taken; lent */
  ArrangeCase wanted;
  char *aim;                              /* margin_advised_phrase */
  GPtrArray *parts, *rooms;               /* of const Part, of const Piece (a bay or a surface); lent by the aeroplane */
  GArray *legs;                           /* of AskedLeg; the leads lent likewise */
  GPtrArray *vias;                        /* a lead's places, ArrangePlace[] each */
  const char *const *still;               /* while it is asked: lent */
  guint movable;                          /* the first so many parts may be elsewhere */
  GArray *asked, *ranges, *asked_leads;   /* ArrangePart, ArrangeRange, ArrangeLead: what the case points to */
};

/* Whether a part aboard may be put elsewhere, or something of its group may. */
bool arranging_may_move  (const Arranging *self, const Part *part);
/* Where it may be; of one that is carried along by its group, where that takes it. Of PartPlaces; a new array. */
GArray *arranging_places (const Arranging *self, const Part *part);
/* A number that the parts of its group have in common; 0: none. */
unsigned arranging_tie   (const Arranging *self, const Part *part);
/* Asks a part as it stands. */
void arranging_ask_fixed (Arranging *self, const Part *part);
/* The aeroplane so arranged, without ballast. */
Aeroplane *arranging_applied_bare (const Arranging *self, const Arrangement *found);
/* Puts each one's ballast where least of it is needed and it has room, and the least first. */
void arranging_place_ballast (const Arranging *self, Arrangements *found);
/* The best place for it; false where none has room. */
bool arranging_ballast_place (const Arranging *self, const Arrangement *found, BallastPlace *place);
/* The best `most` arrangements whose leads reach by the ways they have when it is used; each told with what its leads need then. `nearest` is
 * always set. */
CoreStatus arranging_find_routed (const Arranging *self, size_t most, Arrangements *found, NearestWay *nearest);
/* Asks every leg of a lead that reaches for a part which may move. */
void arranging_ask_leads (Arranging *self);
