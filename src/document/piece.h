#pragma once
#include <stdbool.h>
#include <glib.h>
#include "aero/section.h"
#include "geometry/outline.h"

/** The pieces an aeroplane is made of. Each is filled in once by whoever makes it and nobody changes it afterwards; it is shared
 *  by every aeroplane that holds it (counted references, safe across threads). To change one: piece_dup(), fill in, hand over.
 *  Lengths millimetres, masses grams, angles degrees, as in the file, so that what was typed is what is saved. x aft of the
 *  datum, y to starboard, z up. NAN stands for "not given" where a field says so. */

typedef enum {
  PIECE_SURFACE, PIECE_BODY, PIECE_STRUCTURE, PIECE_PART, PIECE_LEAD, PIECE_MARK, PIECE_BAY, PIECE_THRUST, PIECE_PLAN,
  PIECE_FOREIGN,        /* an element of a later version, or a comment: kept as text and written back */
  PIECE_KIND_COUNT
} PieceKind;

/** The elements inside a piece's element. INNER_NODE and INNER_SIDE_NODE are an outline's nodes: its start, then each segment. */
typedef enum {
  INNER_OUTLINE, INNER_NODE, INNER_SIDE_OUTLINE, INNER_SIDE_NODE, INNER_RIB, INNER_CONTROL, INNER_BREAK, INNER_FORMER,
  INNER_RAIL, INNER_VIA, INNER_IMAGE, INNER_CORNERS, INNER_LEVEL, INNER_LENGTH, INNER_STRAIGHT, INNER_AT, INNER_VIEW,
  INNER_ITEM
} InnerKind;

/** What a later version or a person's comment put on or into an inner element: kept and written back there. XML text; NULL none. */
typedef struct {
  InnerKind inner;
  size_t index;         /* the how-manieth of its kind in the piece, from 0 */
  char *before;         /* elements and comments that stand before it */
  char *attributes;     /* ' name="value" …' */
  char *inside;         /* elements and comments in it, behind what is known */
} Kept;

typedef struct {
  PieceKind kind;
  gatomicrefcount references;
  int line;             /* where the file has it; 0 when it did not come from a file. Not part of the value */
  char *id;             /* NULL where the kind has none (mark, thrust, foreign) or none was given */
  char *foreign_attributes;   /* ' name="value" …' of a later version, or NULL */
  char *foreign_children;     /* elements of a later version inside it, behind what is known, as XML text, or NULL */
  Kept *kept;  size_t kept_count;     /* the same of its inner elements, sorted by inner and index */
} Piece;

typedef enum { ROLE_WING, ROLE_TAILPLANE, ROLE_FOREPLANE, ROLE_FIN, ROLE_COUNT } SurfaceRole;
typedef enum { CONTROL_AILERON, CONTROL_ELEVATOR, CONTROL_RUDDER, CONTROL_FLAP, CONTROL_KIND_COUNT } ControlKind;

/** A name at a place along one axis: a rib (its station, y) or a former (x). */
typedef struct { char *name; double place; } NamedPlace;
/** From this station outboard the dihedral is `angle` degrees. */
typedef struct { double from, angle; } DihedralBreak;

typedef struct {
  char *id;
  ControlKind kind;
  double inner, outer;                      /* stations, mm */
  double hinge_inner_x, hinge_outer_x;      /* mm aft of the datum */
  double up, down;                          /* throws, degrees; NAN not given */
} Control;

/** A click that a traced outline passes further off than a hand misses, so that it may have taken another line: by how much, and where the
 *  click was, in the outline's own places. mm; `by` 0: it passes none, or it was looked at and accepted. `aside`: it is no click, but where
 *  the outline goes aside by so much over bare paper, to another line maybe; of a body from the side, where it runs out and comes back. */
typedef struct { double by; Point at; bool aside; } PassedClick;

typedef struct {
  Piece piece;
  SurfaceRole role;
  Outline *outline;                 /* right half, mm; a fin: x and height above z. May be open or crossing. Never NULL */
  bool root_open;                   /* root="open": not carried to the centre line */
  bool provisional;                 /* its outline stands for an area at an arm, until it is drawn or traced */
  double z;                         /* of the root's leading edge */
  double dihedral, incidence, washout;
  double thickness;                 /* % of chord; NAN not given */
  double pressure_ratio;            /* NAN not given: 0.9 for a tailplane, 1 otherwise */
  SectionClass section;
  double section_slope;             /* lift slope of the section over 2π; NAN not given: by its class */
  double lift_max;                  /* greatest lift coefficient of this wing; NAN not given: by its class */
  double pressure_ratio_sigma, section_slope_sigma, lift_max_sigma;     /* one standard deviation each, of what is given or taken; NAN
                                                                           not given: as usual for it */
  char *traced;                     /* id of the plan's view that its outline was drawn from; NULL none. May be of none that is there */
  PassedClick passed;               /* by that outline */
  NamedPlace *ribs;       size_t rib_count;
  DihedralBreak *breaks;  size_t break_count;      /* rising stations */
  Control *controls;      size_t control_count;
} Surface;

typedef struct {
  Piece piece;
  Outline *outline;                 /* top view, y half the width, nose to tail; NULL not given */
  Outline *side_outline;            /* x and z (in y), nose along the top to the tail and back below; NULL not given */
  char *traced, *side_traced;       /* ids of the plans' views that they were drawn from, as a surface's */
  PassedClick passed, side_passed;  /* by the one and the other */
  NamedPlace *formers;    size_t former_count;
  double skin, former_thickness;    /* mm, how thick its sides and its formers are; NAN as usual (body-walls.h) */
} Body;

/** What of the traced outlines a structure's item goes by: an area, mm², or a length, mm. */
typedef enum {
  TRACED_NONE,
  TRACED_PLAN,                      /* the area from above; a fin's from the side */
  TRACED_SKIN,                      /* what covering goes on: 1.03 × both sides of a surface, a body all round */
  TRACED_RIBS,                      /* one side each of all named ribs, both halves */
  TRACED_FORMERS,                   /* one side each of all named formers, not cut out */
  TRACED_SPAN,                      /* of a surface, tip to tip; of a fin its height */
  TRACED_LENGTH,                    /* of a body */
  TRACED_COUNT
} ItemTraced;

/** One line of what a structure is made of. NAN not given. A line of a kind that tells its mass in several ways goes by the first of:
 *  weighed, of_others, mass, area_density, density. */
typedef struct {
  char *name;                       /* for people; NULL not given: its material's */
  char *material;                   /* one of material-class.h, a later one, or NULL */
  double count;                     /* how many are alike */
  double density;                   /* kg/m³; NAN: its material's */
  double density_sigma;             /* one standard deviation as a share; NAN: as usual */
  bool density_weighed;             /* density is from a sheet on the scale, not by the name of a grade */
  double thickness, width, length;  /* mm */
  double area;                      /* mm² */
  double area_density;              /* g/m²; NAN: its material's */
  ItemTraced of;                    /* the area or length that is traced stands for the one above */
  double share;                     /* what notches and holes leave, or what overlaps add */
  double of_others;                 /* share of the other lines, of none by area density: glue */
  double mass;                      /* g, of one */
  double weighed, weighed_sigma;    /* g, the whole line on the scale */
  double x, z;                      /* mm; spread like the structure */
} StructureItem;

typedef struct {
  Piece piece;
  char *of;                         /* id of a surface or body; NULL: of nothing drawn, then x must be given */
  double mass, mass_sigma;          /* g, what the scale says of the whole; mass NAN: its items tell. Sigma NAN not given */
  double x, y, z, x_sigma;          /* mm; x NAN: spread over the area of what it is of */
  double centre;                    /* where along the mean chord (or the body's length), 0..1; NAN: the area's centroid */
  double excess;                    /* by which share what is not weighed comes out over the sum of its items */
  StructureItem *items;   size_t item_count;
} Structure;

typedef struct {
  Piece piece;
  char *class_name;                 /* one of part-class.h, a later one, or NULL */
  char *name;                       /* NULL not given: the class's */
  double mass, mass_sigma;          /* sigma NAN not given: typical of the class */
  double x, y, z, x_sigma;          /* its centre; sigma NAN likewise */
  double length, width, height;     /* along x, y, z before it is turned; 0 not given */
  double turn;                      /* degrees about its centre, seen from above: its forward end to port */
  bool aboard;
  bool to_come;                     /* aboard when it flies, not in hand yet: on no scale so far */
  bool has_rail;
  double rail_from, rail_to;        /* where its centre may be, from <= to */
  char *bays;                       /* ids of bays, or of surfaces that it may be in, parted by blanks; or NULL */
  char *of;                         /* id of the surface or body that it is fixed to and moves with; NULL none. May be of none that is there */
  char *group;                      /* parts of one name here are chosen and moved together; NULL none */
  char *kind;                       /* the catalogue's word for what it is, or NULL: "battery-2s-450" */
  /* What its class goes by, 0 not given. */
  double cells, capacity;           /* of a pack: in series; mAh */
  double rpm_per_volt;              /* of a motor, unloaded */
  double power, input;              /* of a motor, W: the greatest input it bears; the input at full throttle, held still, as a meter shows */
  double current;                   /* of a speed controller: the greatest, A */
  double pitch;                     /* of a propeller, mm; its diameter is its width */
} Part;

/** A plain lead is all one leg, LEG_FROM, from its first part to its last. A two-into-one lead has three that meet at its joint. */
typedef enum { LEG_FROM, LEG_ALSO, LEG_TO, LEG_COUNT } LeadLeg;
/** A place on a lead's way, seen from above, mm. Those of one leg stand in the order in which they are met: from the part on, of LEG_TO
 *  from the joint on. */
typedef struct { Point place; LeadLeg leg; } LeadVia;
/** Whether a lead is unplugged with the wing. */
typedef enum { UNPLUGS_AS_USUAL, UNPLUGS_NO, UNPLUGS_YES, UNPLUGS_COUNT } LeadUnplugs;

typedef struct {
  Piece piece;
  char *from, *to;                  /* ids of parts */
  char *also;                       /* the id of a second part whose lead joins in: it is a two-into-one lead; NULL: a plain one */
  double length, also_length, to_length;    /* of its legs, what comes with the part counted; a plain one has the first; NAN not given */
  double joint_x, joint_y;          /* where the legs meet; NAN: in the usual place */
  double slack;                     /* by which its way is multiplied; NAN: as usual */
  LeadUnplugs unplugs;
  double allowance;                 /* mm, the hand's between wing and body where it unplugs; NAN: as usual */
  double mass, mass_sigma;          /* g, of what is no part's own already; sigma NAN not given */
  char *name;                       /* NULL not given */
  char *kind;                       /* the catalogue's word for what it is, or NULL: "lead-two-into-one" */
  LeadVia *via;           size_t via_count;
} Lead;

typedef struct { Piece piece; double station; } Mark;
typedef struct { Piece piece; char *from_former, *to_former; } Bay;
typedef struct { Piece piece; double x, z, down, right; } Thrust;

typedef enum { PLAN_INK, PLAN_SCANNED, PLAN_HIDDEN, PLAN_SHOWN_COUNT } PlanShown;
typedef enum {
  VIEW_WING, VIEW_TAILPLANE, VIEW_FOREPLANE, VIEW_FIN, VIEW_BODY_TOP, VIEW_BODY_SIDE, VIEW_SHOWS_COUNT
} ViewShows;
typedef enum { VIEW_STARBOARD, VIEW_PORT, VIEW_BOTH, VIEW_SIDE_COUNT } ViewSide;

/* Places in a picture are px: x right, y down, (0, 0) the upper left corner of the first pixel, after its orientation. */

/** A known length: two ends, px, what lies between them on the paper, mm > 0, and how far off each end was clicked, px, one standard
 *  deviation; 0 not given: as usual. */
typedef struct { Point a, b; double mm, sigma_a, sigma_b; } PlanLength;
/** A line known to be straight goes through the next `count` of the plan's places. */
typedef struct { size_t count; } PlanStraight;
/** One of the views that a plan shows: its axis, and where what is traced in it stands on the aeroplane. */
typedef struct {
  char *id;
  ViewShows shows;
  Point fore, aft;                  /* the axis, px: its forward and its after end */
  double x, z;                      /* where the axis's forward end stands, mm: aft of the datum, and up */
  ViewSide side;                    /* which half is drawn */
  bool flipped;                     /* seen from below, or from port: the other way round */
  bool for_now;                     /* x is where such a thing usually stands: nobody has put it there yet */
} PlanView;

/** The plan beneath the sketch: one picture, or one page, and what is known of it. */
typedef struct {
  Piece piece;
  char *name;                       /* for people; NULL not given */
  char *file;                       /* of the picture, as a path from the document's folder; NULL: none beside it. See plan-file.h */
  char *checksum;                   /* of that file, "sha256:" and 64 hexadecimal digits; NULL not given */
  double page;                      /* from 1; of a file with pages */
  double dpi;                       /* at which pages are drawn; NAN not given */
  double width, height;             /* of the picture, px; NAN not given */
  PlanShown shown;
  double strength;                  /* how strongly it is shown, 0 to 100 % */
  bool cling, locked;               /* whether a trace clings to its lines; whether it cannot be moved by accident */
  GBytes *image;                    /* the picture itself, an encoded file of at most PLAN_IMAGE_MOST bytes; NULL: in the file */
  char *image_type;                 /* its MIME type as the document has it; NULL not given */
  bool has_corners;                 /* of a rectangle whose size is known */
  Point corners[4];                 /* px, one after the other in either sense */
  double corners_width, corners_height;     /* mm */
  bool has_level;
  Point level[2];                   /* a line that runs level or upright, px */
  PlanLength *lengths;    size_t length_count;
  PlanStraight *straight; size_t straight_count;
  Point *places;          size_t place_count;       /* of all straight lines, one line behind the other, px */
  PlanView *views;        size_t view_count;
} Plan;

/** The largest picture that a document holds within itself, bytes of its file. */
#define PLAN_IMAGE_MOST (8u * 1024 * 1024)

typedef struct { Piece piece; char *text; } Foreign;       /* XML text; kind PIECE_FOREIGN */

/** A fresh piece with the defaults of its kind (numbers that may be missing are NAN, the rest 0, aboard true). Nobody else holds
 *  it yet, so the caller fills it in. Strings and arrays in it belong to it (g_malloc family). */
Surface   *surface_new   (const char *id, SurfaceRole role, Outline *takes);      /* the outline's reference is taken */
Body      *body_new      (const char *id);                                        /* no outline yet */
Structure *structure_new (const char *id, const char *of, double mass);           /* g; `of` may be NULL */
/** A line with the defaults of its kind; the name is copied and may be NULL. To be put into a structure, or given to structure_item_clear. */
StructureItem structure_item  (const char *name);
void       structure_item_clear (StructureItem *item);        /* frees its texts */
Part      *part_new      (const char *id, const char *class_name);                /* class NULL: none; no mass, no size yet */
Lead      *lead_new      (const char *from, const char *to);                      /* ids of parts */
Mark      *mark_new      (double station);                                        /* x, mm aft of the datum */
Bay       *bay_new       (const char *id, const char *from_former, const char *to_former);    /* names of formers */
Thrust    *thrust_new    (void);                                                  /* at the datum, straight ahead */
Plan      *plan_new      (const char *id);                                        /* no picture yet; id may be NULL */
Foreign   *foreign_new   (const char *text);                                      /* XML text of one element or comment */

/** A fresh copy to be changed before anybody else sees it. Cast the result to its kind. */
Piece *piece_dup   (const Piece *piece);
Piece *piece_ref   (const Piece *piece);                      /* one reference more, the caller's; not NULL */
void   piece_unref (Piece *piece);                            /* gives one back, the last frees; NULL is fine */
bool   piece_equal (const Piece *a, const Piece *b);          /* by value; the line does not count */
/** What is kept of an inner element, the first of possibly several entries that follow each other; NULL when nothing is. */
const Kept *piece_kept (const Piece *piece, InnerKind inner, size_t index);

/** A passed click goes along with its outline, which is moved by so much as a whole, mm. */
void passed_click_move (PassedClick *self, double dx, double dy);

const char *surface_role_word (SurfaceRole role);             /* as in the file: "wing" */
bool        surface_role_from_word (const char *word, SurfaceRole *role);      /* false when it is none; *role then untouched */
const char *surface_role_name (SurfaceRole role);             /* for people, translated: "Wing" */
const char *section_class_name (SectionClass section);        /* for people, translated: "Flat plate" */
const char *control_kind_word (ControlKind kind);             /* as in the file: "aileron" */
const char *control_kind_name (ControlKind kind);             /* for people, translated: "Aileron" */
/** Makes a two-into-one lead a plain one, without bends, its length not given: of the servo that is left when `without`, one of its two, goes;
 *  of the first with NULL. To be called before anybody else sees it. */
void        lead_become_plain (Lead *lead, const char *without);
bool        lead_is_joined (const Lead *lead);                /* it is a two-into-one lead: with three legs */
double      lead_leg_length (const Lead *lead, LeadLeg leg);  /* mm; NAN not given */
double     *lead_leg_length_in (Lead *lead, LeadLeg leg);     /* the same, to be filled in before anybody else sees it */
const char *lead_leg_part (const Lead *lead, LeadLeg leg);    /* the id of the part at the leg's end; of a plain one LEG_FROM, or LEG_TO */
const char *view_shows_name (ViewShows shows);                /* for people, translated: "Body from above" */
double      surface_pressure_ratio (const Surface *surface);  /* the ratio given, or by role */
bool        surface_covers        (const Surface *surface, Point place);    /* seen from above, on either side, carried to the centre line
                                                                             unless its root is open; a fin nothing. NULL: false */
bool        body_covers           (const Body *body, Point place);      /* as long and as wide as it is anywhere; NULL: false */
bool        surface_is_horizontal (const Surface *surface);   /* all but fins */
bool        structure_is_given    (const Structure *structure);      /* it has a mass above 0, or items that tell one */
