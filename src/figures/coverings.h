#pragma once
#include "document/material-class.h"
#include "document/units.h"
#include "figures/figures.h"

/** What another covering would do: on one surface or body, on the tail, or on the whole aeroplane. Grams, mm. */

typedef enum {
  COVERING_ALL,                 /* all surfaces and bodies */
  COVERING_TAIL,                /* all tailplanes and fins */
  COVERING_PIECE                /* one surface or body */
} CoveringScope;
/** What is looked at: with COVERING_PIECE that one, lent; else NULL. */
typedef struct { CoveringScope scope; const Piece *of; } CoveringWhere;

/** One covering in the place of what is there now. */
typedef struct {
  const MaterialClass *covering;
  bool present;                 /* all that is looked at has it now */
  double mass_g, mass_sigma_g;  /* of the covering alone, with overlaps and the usual excess; one standard deviation, by its kind */
  double change_g;              /* by what the aeroplane becomes heavier; negative: lighter */
  double balance_x_mm;          /* where the balance point is then; NAN without one */
  double balance_way_mm;        /* how far it goes: aft is positive */
  double part_way_mm;           /* how much further aft the part is wanted then; NAN without one */
  bool part_reaches;            /* the part may be where it is wanted then */
  double nose_g;                /* by what more is needed at the nose; negative: spared. NAN without a nose */
} CoveringFigures;

enum { COVERINGS_MOST = 16 };
typedef struct {
  CoveringWhere where;
  double present_g;             /* the covering that is there now, with the usual excess; 0 of what is bare */
  bool bare;                    /* nothing of it has a covering among its lines: each comes on top of what is there */
  const Part *part;             /* what would have to move: the battery, else the heaviest that may move; NULL without */
  CoveringFigures of[COVERINGS_MOST];  size_t count;      /* from light to heavy; none where nothing traced can be covered */
} Coverings;

/** What can be looked at, of CoveringWhere: the whole aeroplane and the tail where they are more than one piece, then each surface and body
 *  that is traced. A new array. */
GArray *covering_wheres (const Figures *figures);

/** Every covering of material-class.h in the place of the present one, all else as it is. A line counts as covering when its material is one,
 *  or when it goes by the traced skin and has a mass an area of its own. Where a mass was typed, what is there is taken to be covered as its
 *  lines say, and bare without such a line.
 *  part_way and nose are what makes up for the change of moment about the place advised (about the balance point without one): −ΔS / m
 *  and ΔS / (x − x_nose).
 *  source  moments: FAA-H-8083-1, Weight and Balance Handbook; masses: material-class.h, usual-lines.h */
Coverings coverings_of (const Figures *figures, CoveringWhere where);

/** The aeroplane so covered, one reference, the caller's; NULL where nothing traced can be covered. A typed mass changes by what the covering
 *  does; one that was bare becomes a weighed line beside that of the covering. */
Aeroplane *covering_chosen (const Figures *figures, CoveringWhere where, const MaterialClass *covering);

/** What it does: "4.2 g lighter; balance point 3 mm forward; …". A new string; NULL where nothing differs. */
char *covering_text  (const Coverings *coverings, const CoveringFigures *covering, Units units);
/** What the lightest spares, there and at the nose, one sentence. A new string; NULL where it spares nothing. */
char *coverings_text (const Coverings *coverings, Units units);
/** What is looked at, for programs: "all", "tail", "piece". */
const char *covering_scope_word (CoveringScope scope);
/** What is looked at, for people: "Whole Aeroplane", "Tail", "wing". Lent. */
const char *covering_where_name (CoveringWhere where);
