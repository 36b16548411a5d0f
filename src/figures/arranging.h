#pragma once
#include "balance/arrange.h"
#include "document/units.h"
#include "figures/ballast-places.h"
#include "figures/figures.h"

enum { ARRANGING_MOST_LIMITS = 8 };
/** The arrangement's question as an aeroplane puts it, and the answer as an aeroplane again. */
typedef struct Arranging Arranging;

/** What stands in the way of asking at all. */
typedef enum {
  ARRANGING_CAN,
  ARRANGING_NOTHING_MOVES,      /* no part aboard has a rail or a bay */
  ARRANGING_NO_TARGET           /* there is no neutral point to balance for, or nothing weighs anything */
} ArrangingWhy;

/** Asks where all movable parts aboard should be: within their bays and on their rails (part_places), boxes apart by 1 mm, leads of a given
 *  length reaching with slack (lead_need_of), the balance point within the limits and as near as can be to the place advised.
 *  What stands in the way are parts with a size that stand within the body; what lies round, over or outside of others does not
 *  (propeller, spinner, cowl, canopy, wheels, undercarriage, pushrod). A second or a lead that no two movable parts are at is left out.
 *  Parts of one group move as one where one of them may be elsewhere; where one of them that may is to stay, they stay.
 *  A joint, and the places of a usual way (lead-route.h), are where they are when it is used.
 *  figures  lent; what it asks of them is kept
 *  still    ids of parts that stay where they are all the same; NULL: none
 *  made     set when it can be asked; arranging_free gives it back */
ArrangingWhy arranging_new  (const Figures *figures, const char *const *still, Arranging **made);
void         arranging_free (Arranging *self);                /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Arranging, arranging_free)
/** A whole sentence that says why not; NULL when it can be asked. */
const char  *arranging_why_text (ArrangingWhy why);

/** The question, lent; its time and who is asked while work goes on may be filled in. */
ArrangeCase *arranging_case  (Arranging *self);
/** The parts of the question in its order, lent: as many as the case has; the first `movable` may be elsewhere. */
const Part *const *arranging_parts (const Arranging *self);
size_t       arranging_movable (const Arranging *self);      /* how many of them may be elsewhere: the first */
/** The leads of the question, by number, and each leg of a two-into-one lead by itself: what it is called, a new string; how long it is, mm,
 *  NAN not given. */
size_t       arranging_lead_count  (const Arranging *self);
char        *arranging_lead_title  (const Arranging *self, size_t lead);      /* a new string */
double       arranging_lead_length (const Arranging *self, size_t lead);      /* in mm, > 0; NAN not given */
/** What it needs once an arrangement is used, slack counted, mm. */
double       arranging_lead_needed (const Arranging *self, const Arrangement *found, size_t lead);

/* g: no scale at the bench shows less. */
#define ARRANGING_LEAST_BALLAST_G 0.05
/** The aeroplane with its parts so arranged, to 0.01 mm, and with a part that is the ballast, a block of lead in its place, to the
 *  next 0.1 g, where some is needed. */
Aeroplane   *arranging_applied (const Arranging *self, const Arrangement *found);
/** How much ballast it needs at each place where some may go, ballast_places of the aeroplane so arranged; a new array. */
GArray      *arranging_ballast_places (const Arranging *self, const Arrangement *found);
/** Where its ballast goes, as in a sentence: "at the fore end of “nose”"; at the nose or the tail where no place has room. A new string. */
char        *arranging_ballast_phrase (const Arranging *self, const Arrangement *found);
/** Which margin its ballast is for, the nearer limit or the aim, and how much the aim would take: "This ballast is for the aft limit, 5 %; for the
 *  aim, 12 %, it takes 6.3 g." A new string; NULL where it needs none. */
char        *arranging_ballast_sentence (const Arranging *self, const Arrangement *found, Units units);
/** How much of it the aim would take, with the parts so arranged, where least is needed there; NAN where no place has room, or none is needed.
 *  In grams. */
double       arranging_ballast_for_aim_g (const Arranging *self, const Arrangement *found);
/** What its balance point is at. */
typedef enum { ARRANGED_AT_AIM, ARRANGED_AT_AFT_LIMIT, ARRANGED_AT_FORWARD_LIMIT, ARRANGED_BETWEEN } ArrangedAt;
/** Within what a hand can tell; between them where it is at none. */
ArrangedAt   arranging_balances_at (const Arranging *self, const Arrangement *found);
/** Says in one sentence what contradicts, lengths in the reader's units. A new string. */
char        *arranging_limit_text (const Arranging *self, const ArrangeLimit *limit, Units units);

/** How it came out: the arrangements found, and where there is none what contradicts. */
typedef struct {
  CoreStatus status;            /* of arrange() */
  Arrangements found;
  ArrangeLimit limits[ARRANGING_MOST_LIMITS];
  size_t limit_count;
} ArrangingAnswer;

/** Finds the best `most` arrangements, and asks for the limits where there is none. What ballast one needs is put where least of it is needed
 *  and it has room, which is where they are told of by what they need; without any such place at the nose or the tail. May take
 *  the case's time; a worker may do it.
 *  answer   always set; arranging_answer_clear gives it back */
void  arranging_find (const Arranging *self, size_t most, ArrangingAnswer *answer);
/** A whole sentence for a status that is not CORE_OK. */
const char *arranging_fault_text (CoreStatus status);
void  arranging_answer_clear (ArrangingAnswer *answer);      /* frees what was found */
/** Tells the best arrangement for a terminal, or why there is none; JSON in mm and g. New strings. */
char *arranging_text (const Arranging *self, const ArrangingAnswer *answer, Units units);
char *arranging_json (const Arranging *self, const ArrangingAnswer *answer);      /* a new string */
/** Where a part stood and where it goes, in words that begin after its name: "19 mm forward, 4 mm up", "stays". A new string. */
char *arranging_move_text (const Arranging *self, const Arrangement *found, size_t part, Units units);
/** What tells one arrangement from another of the same question, in words: the part that stands furthest from where the other has it, and
 *  the leads: "“Battery” 12 mm further forward, leads 40 mm shorter in all". A new string. */
char *arranging_difference_text (const Arranging *self, const Arrangement *found, const Arrangement *other, Units units);
