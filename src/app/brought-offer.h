#pragma once
#include "document/aeroplane.h"
#include "document/brought.h"
#include "geometry/half-outline.h"

/** Lines drawn elsewhere, offered as outlines of the aeroplane. Pure functions; the strip keeps the hand's side of it. */

/** What a person chose. */
typedef struct {
  ViewShows shows;            /* what the line is */
  size_t line;                /* of brought->lines */
  int quarter_turns;          /* clockwise, 0 to 3 */
  bool mirrored, half_only;   /* as a DrawnLine's */
  bool another;               /* beside one of its kind, not in its place */
  double unit_mm;             /* what one of the file's numbers stands for */
} OfferChoice;

typedef enum {
  OFFER_FITS,
  OFFER_OPEN,                 /* its ends do not meet as they must */
  OFFER_NO_ROOT,              /* closed, but neither the same on both sides nor straight along a root */
  OFFER_CROSSES,              /* it crosses itself */
  OFFER_TOO_LARGE,            /* longer than 10 m, or more pieces than a hand could ever edit */
  OFFER_NOTHING               /* it encloses nothing */
} OfferStatus;

typedef struct {
  OfferStatus status;
  Aeroplane *next;            /* with the outline in it, the caller's; NULL unless it fits */
  char *id;                   /* the piece that has it; the caller's */
  bool replaces;              /* that piece was there before */
  HalfDrawn drawn;
  double asymmetry;           /* mm, as a HalfOutline's */
  double across, along;       /* size of the drawn line as it is laid, mm */
} Offer;

/** What is to be tried first: the thing that is missing (or the selected surface's role), the longest line that fits, laid so that it does.
 *  `selected` is the one selected piece's id, or NULL. */
OfferChoice offer_first (const Brought *brought, const Aeroplane *aeroplane, const char *selected);
/** Lays the chosen line as it fits the chosen thing best: wings lie across, bodies along, fins and side views are drawn upright with their
 *  nose to the left; in the order of the sheet where nothing fits. */
void        offer_lay   (const Brought *brought, OfferChoice *choice);
/** What comes of a choice: the outline of the selected piece of that kind, else of the first, whose foremost place stays; a new piece where
 *  the file has it aft of the datum, if it says so and that may be, else where such a one usually stands, when there is none or
 *  another is wanted. A body's view is put beside its other. */
Offer       offer_make  (const Brought *brought, const Aeroplane *aeroplane, const char *selected, const OfferChoice *choice);
void        offer_clear (Offer *self);      /* gives back what it holds; again is fine */
