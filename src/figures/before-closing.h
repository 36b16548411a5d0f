#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/part-stand.h"
#include "figures/wing-stand.h"

/** What has to be in before stringers, deck or covering close the body, in the order of work: later neither hand nor screwdriver gets in.
 *  Common practice, no source. */
typedef enum {
  CLOSING_FIREWALL,             /* with the thrust line's angles */
  CLOSING_FLOOR,                /* that a pack lies on, as far as its rail goes */
  CLOSING_HATCH,                /* the frame of the opening over it */
  CLOSING_TRAY,                 /* of whatever else is screwed or taped down in the body, or its bay in a wing */
  CLOSING_UNDERCARRIAGE,        /* the block that takes its load */
  CLOSING_PUSHROD,              /* or its tube */
  CLOSING_LEAD,                 /* to be drawn through formers or ribs */
  CLOSING_MARK_BLOCK,           /* hard wood under the balance mark, for finger or pin */
  CLOSING_BALLAST,
  CLOSING_KIND_COUNT
} ClosingKind;

/** One thing to put in. Millimetres; NAN and NULL what its kind does not have. What it points to is the figures'. */
typedef struct {
  ClosingKind kind;
  const Piece *piece;           /* the part that it is for, or the lead; of a firewall the motor; NULL: of none */
  LeadLeg leg;                  /* of a lead */
  double from_mm, to_mm;        /* its forward and after edge, aft of the datum; of a lead both its ends, whichever is forward */
  double y_mm, width_mm;        /* its middle, to starboard; 0 for no width */
  double height_mm;             /* of the block of ballast that needs the room; NAN of all else */
  double above_thrust_mm;       /* its underside over the thrust line, negative below; level through where the thrust line begins */
  PartStand stand;              /* the same from a former; without one where no former has a name */
  WingStand wing;               /* of what goes into a wing, and of a mark: from its leading edge and its ribs; else in none */
  GPtrArray *formers, *ribs;    /* NamedPlace: which of them have to be passed, from the lead's first end on, or from the front; or NULL */
  double length_mm, needed_mm;  /* of a lead's leg: NAN not given; what its way needs */
  double extension_mm;          /* to be put in with it: 0 none, NAN not known, or one is not enough */
  double station_mm, aft_of_edge_mm;      /* the balance mark */
  double ballast_g;             /* what is to go in; 0: none is needed as it stands */
  bool in_case;                 /* of ballast: only where it comes out tail-heavy, as far as it may in the worst case */
} ClosingStep;

/** All of them, of ClosingStep: by kind, else as the document has them; only what is aboard. Without a body there is only what goes into a
 *  wing. A new array.
 *  in the body  not fixed to a surface, and within its length and its greatest width
 *  in a wing    servos and whatever else has a tray, packs, ballast and the blocks of an undercarriage, by wing-stand.h
 *  firewall     a part that is one; else the rear of a motor and its mount (nose-figures.h), without those that of the motor alone */
GArray *before_closing_of (const Figures *figures);

/** "Tray for “Receiver”", "Lead Servo – Receiver, with an extension of 100 mm". A new string, translated. */
char *closing_what  (const Figures *figures, const ClosingStep *step, Units units);
/** Where it goes: "12 to 34 mm behind F3, underside 24 mm below the thrust line". A new string, translated. */
char *closing_where (const Figures *figures, const ClosingStep *step, Units units);
/** Its kind as a word for files: "tray". */
const char *closing_word (ClosingKind kind);

/** The list as comma-separated values, a heading row first. */
void csv_before_closing (GString *text, const Figures *figures);
