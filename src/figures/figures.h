#pragma once
#include "document/aeroplane.h"
#include "figures/explained-figure.h"
#include "figures/hatch-figures.h"
#include "figures/power-figures.h"
#include "figures/room-faults.h"
#include "geometry/planform.h"

/** Everything that follows from an aeroplane. Millimetres, grams, degrees and percent as the names say; NAN wherever a figure
 *  cannot be had, and then a note says why. Never changed once made; counted references, safe across threads. */

typedef enum { NOTE_NOTE, NOTE_LOOK, NOTE_ACT } NoteSeverity;

typedef struct {
  NoteSeverity severity;
  bool problem;                 /* an error in the sense of `check`: the figures are not sound */
  const Piece *piece;           /* what it is about; may be NULL. Lives as long as the figures */
  char *text;                   /* a whole sentence, translated, without full-stop-less fragments; lengths and loadings in it are metric: see note_words */
  ExplainedFigure explained;    /* the figure that it speaks of, about the piece; EXPLAIN_NONE when of none */
  const RoomFault *room;        /* what has no room, of the figures' own, when it speaks of that; else NULL */
  const PassedClick *passed;    /* the click that the piece's outline passes, its own, when it speaks of that; else NULL */
  double loading_g_dm2, most_loading_g_dm2;     /* the wing loading and the most for its span, when it speaks of those; else 0 */
} Note;

typedef struct {
  const Surface *surface;
  CoreStatus status;            /* of its outline; the rest is NAN when it gives no planform */
  OutlineFault fault;
  Planform planform;
  double quarter_mac_x_mm;
  double lift_slope_per_rad;    /* of the surface alone on its own area, with its section's slope; NAN for a fin */
  double lift_slope_sigma;
  double section_factor, section_factor_sigma;     /* what its section leaves of a thin plate's lift; NAN without a solve */
  double company_lift_per_rad;  /* among the others, on the reference's area, section and pressure ratio counted; NAN likewise */
  double company_lift_x_mm;     /* where that acts */
  double downwash_gradient;     /* at this surface; negative where the flow rises */
  double reynolds, reynolds_sigma;      /* of its MAC at the stalling speed; NAN without one */
  double section_slope, section_slope_sigma;   /* the section's lift slope over 2π and its deviation: given, or by its class */
  double tail_arm_mm;           /* quarter MAC of the reference wing to its own, signed; NAN for the reference */
  double volume_coefficient, volume_sigma;
  double area_mm2;              /* = planform.area */
} SurfaceFigures;

/** What a deviation owes to what: where the neutral point lies, then where the masses do. */
typedef enum {
  CONTRIBUTION_SECTION,         /* a surface's section: its lift slope */
  CONTRIBUTION_PRESSURE,        /* the dynamic pressure at a tail */
  CONTRIBUTION_DOWNWASH,        /* the downwash at a surface that stands behind another */
  CONTRIBUTION_BODY,            /* the body's shift, drawn or not */
  CONTRIBUTION_PROPELLER,
  CONTRIBUTION_METHODS,         /* lattice and handbook do not agree */
  CONTRIBUTION_REST,            /* what no method here knows */
  CONTRIBUTION_MASS, CONTRIBUTION_PLACE,       /* of a part or structure */
  CONTRIBUTION_SHAPE,           /* how the mass of a part or structure lies about its own middle */
  CONTRIBUTION_LATTICE,         /* how near the lattice's panels come to their own limit */
  CONTRIBUTION_OUTLINE,         /* how well a surface is traced */
  CONTRIBUTION_GREATEST_LIFT,
  CONTRIBUTION_BALANCE_POINT,   /* where it lies, of what turns about it */
} ContributionKind;

/** One share: what it alone would move the figure by, one standard deviation, in the figure's unit (mm of a point). */
typedef struct { ContributionKind kind; const Piece *piece; double sigma; } Contribution;
enum { CONTRIBUTIONS_KEPT = 8 };
/** The greatest shares of one deviation, falling; the variance is of all of them. */
typedef struct { Contribution of[CONTRIBUTIONS_KEPT]; size_t count; double variance; } Contributions;

/** One thing aboard that weighs something: where its middle is, with deviations, and its inertia about that. */
typedef struct {
  const Piece *piece;
  double mass_g, mass_sigma_g, x_mm, y_mm, z_mm, x_sigma_mm;      /* x_sigma 0 where it is not known;
                                                                             across and in height it is taken as well */
  double own_roll_kgm2, own_pitch_kgm2, own_yaw_kgm2;
} LoadFigures;

/** What a structure weighs, and how that comes about. NAN where it cannot be had. */
typedef struct {
  const Structure *structure;
  double mass_g, mass_sigma_g;              /* what counts: what the scale says, else its items with the usual excess */
  double estimate_g, estimate_sigma_g;      /* its items with the usual excess, also where the scale says otherwise; NAN without items */
  double excess_g;                          /* of the estimate, on what is not weighed */
  GArray *items_g;                          /* of double, each item's mass; NAN of one whose size is not known yet; NULL without items */
} StructureFigures;

/** The bare airframe as it is reckoned from structures and parts, before a scale has its say; `weighed` when one had. */
typedef struct { bool weighed, balanced; double reckoned_g, reckoned_sigma_g, reckoned_x_mm, reckoned_x_sigma_mm; } AirframeFigures;

typedef struct {
  double total_g, x_mm, y_mm, z_mm, x_sigma_mm;
  double inertia_roll_kgm2, inertia_pitch_kgm2, inertia_yaw_kgm2;
  double total_sigma_g;         /* one standard deviation of the total */
  Contributions owed;           /* what x_sigma_mm is made of */
  double y_sigma_mm, z_sigma_mm, inertia_roll_sigma_kgm2, inertia_pitch_sigma_kgm2, inertia_yaw_sigma_kgm2;
} MassFigures;

typedef struct {
  double x_mm, percent_mac;     /* the lattice's with the body's shift */
  double lattice_x_mm;          /* without body */
  double handbook_x_mm;         /* with the body's shift too */
  double body_shift_mm;         /* negative forward; 0 without a body, NAN when it could not be had */
  double body_moment_mm3;       /* of the bodies, nose up, per radian and unit of dynamic pressure; NAN likewise */
  double downwash_gradient;     /* effective, at the first tailplane; the lattice's, less as the sections ahead lift less */
  double section_shift_mm;      /* how much of lattice_x_mm is owed to the sections' lift slopes; 0 where none is stated */
  double propeller_from_mm, propeller_to_mm;   /* shift by the propellers, not counted in x_mm: without power and at full power, negative
                                                  forward; 0 without a propeller */
  double lift_slope_per_rad;    /* of the aeroplane on the reference area, the sections' slopes counted */
  double nose_flow;             /* cross flow at the foremost point over that of free flow */
  double sigma_mm;
  Contributions owed;           /* what sigma_mm is made of */
  double lattice_sigma_mm, handbook_sigma_mm, body_shift_sigma_mm, downwash_gradient_sigma, lift_slope_sigma;
  double body_own_sigma_mm;     /* of body_shift_sigma_mm what is not the lift slope's */
  Contributions lattice_owed, downwash_owed, lift_owed;        /* what these are made of */
  bool wing_alone;              /* the aeroplane has no second horizontal surface and is not tailless */
  CoreStatus status;            /* CORE_OK when there is a neutral point, else what stood in the way; CORE_NO_AREA when it is withheld */
  const Surface *at_fault[2];   /* the surface that stood in the way, or the two together; NULL where none can be named */
} NeutralPointFigures;

/** The mark at one station, aft of the local leading edge there. */
typedef struct { double station_mm, target_mm, forward_mm, aft_mm, leading_edge_x_mm, chord_mm, sigma_mm; } MarkFigures;

typedef struct {
  double percent_mac;           /* where the balance point is */
  double static_margin_percent, static_margin_sigma_percent;
  double target_x_mm, forward_limit_x_mm, aft_limit_x_mm;
  double advised_x_mm;          /* the target, or further forward by what keeps it one deviation clear of the aft limit */
  MarkFigures *marks;  size_t mark_count;      /* of the document's marks; of a usual station when it has none */
} BalanceFigures;

/** What one part with a rail does for the aim itself, whatever is advised. */
typedef struct { double x_mm; bool reachable; double ballast_g, ballast_x_mm; } AimSolution;

/** Where one part with a rail must be, so that all balances at the advised place. */
typedef struct {
  const Part *part;
  AimSolution at_aim;           /* the same as below where the aim is what is advised */
  double x_mm;  bool reachable;
  double ballast_g, ballast_x_mm;
  double band_from_mm, band_to_mm;
  double x_sigma_mm;            /* one standard deviation of x_mm, by the masses and the neutral point */
  double band_from_sigma_mm, band_to_sigma_mm;      /* likewise; 0 where the rail ends before the limit does */
  double ballast_sigma_g;       /* 0 where none is needed */
  Contributions ballast_owed;   /* what it is made of */
} Solution;

typedef struct {
  double wing_loading_g_dm2, cube_loading_kg_m3, stall_speed_m_s, pitch_speed_m_s, reynolds_mac;
  double lift_max;              /* the greatest lift coefficient that the stall is reckoned with */
  double lift_max_sigma, wing_loading_sigma_g_dm2, stall_speed_sigma_m_s, cube_loading_sigma_kg_m3, reynolds_mac_sigma;
} FlightFigures;

/** How a wing carries its lift: at a station the section's lift coefficient over the wing's own, untwisted. */
typedef struct { double station_mm, lift_ratio; } SpanLoading;

/** How the lattice says it answers to being turned, the sections counted, and how it carries its lift. */
typedef struct {
  double lift_slope_per_rad;    /* of the aeroplane on the reference area, the sections' slopes counted */
  double roll_damping;          /* dC_l / d(p b / 2V), of all horizontal surfaces */
  double pitch_damping;         /* dC_m / d(q c / 2V) about the balance point, without one about the neutral point */
  double span_efficiency;       /* of the reference wing alone */
  double first_stall_station_mm;/* where the reference wing's section carries the greatest lift coefficient, flat; NAN without */
  double first_stall_ratio;     /* that coefficient over the wing's own */
  GArray *loading;              /* of SpanLoading, the reference wing's, root to tip; NULL without a neutral point */
  double lift_slope_sigma, roll_damping_sigma, pitch_damping_sigma, span_efficiency_sigma;
  Contributions roll_owed, pitch_owed, span_owed;       /* what these are made of; the lift slope's is the neutral point's lift_owed */
} MotionFigures;

typedef struct {
  const Surface *surface;  const Control *control;
  double area_mm2;              /* both sides */
  double area_share_percent;    /* of its surface */
  double roll_rate_deg_s;       /* NAN: comes with the flight checks */
} ControlFigures;

typedef struct Figures {
  gatomicrefcount references;
  Aeroplane *aeroplane;         /* what they were made of */
  SurfaceFigures *surfaces;  size_t surface_count;      /* in the document's order */
  const SurfaceFigures *reference;                      /* the first wing; NULL without one that has an area */
  MassFigures mass;
  AirframeFigures airframe;
  StructureFigures *structures;  size_t structure_count;   /* in the document's order */
  LoadFigures *loads;  size_t load_count;               /* all aboard that has a place, in the document's order */
  NeutralPointFigures neutral_point;
  BalanceFigures balance;
  Solution *solutions;  size_t solution_count;          /* one for each part with a rail; one left out as if it came aboard */
  HatchFigures hatch;
  FlightFigures flight;
  PowerFigures power;
  MotionFigures motion;
  ControlFigures *controls;  size_t control_count;
  double wing_area_mm2;         /* of all surfaces of role wing */
  double tail_volume_sigma;
  double tail_volume;           /* of all tailplanes on all wings' area and the reference's MAC; NAN without, or with a foreplane */
  double nose_x_mm, tail_x_mm;  /* foremost and aftmost place of the bodies, without one of the outlines: where ballast goes */
  const Piece *weigh_first[2];  /* parts or structures to which the balance point's deviation owes most; NULL without */
  GArray *room;                 /* of RoomFault: what has no room where it stands */
  GPtrArray *notes;             /* of Note, the gravest first */
} Figures;

/** Three memos, aerodynamics (surfaces, bodies), balance (the rest) and the bodies' insides, each with references to the pieces it was made
 *  from, so that a moved part solves nothing. One thread at a time. */
typedef struct FiguresCache FiguresCache;
FiguresCache *figures_cache_new  (void);                      /* remembers nothing yet */
void          figures_cache_free (FiguresCache *cache);       /* figures made with it live on; NULL is fine */

/** The figures of an aeroplane; one reference, the caller's. The same bits as from a fresh cache, whatever came before. */
Figures *figures_of    (FiguresCache *cache, const Aeroplane *aeroplane);
Figures *figures_ref   (const Figures *figures);      /* one reference more, the caller's; not NULL */
void     figures_unref (Figures *figures);            /* gives one back, the last frees; NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Figures, figures_unref)

/** Whether the wing, untwisted, stalls at one place before others: its greatest lift ratio is 1.03 at least (common practice, no source). */
bool motion_stalls_somewhere (const MotionFigures *motion);
/** Whether `check` would pass: no note is a problem and no margin negative. */
bool figures_are_sound (const Figures *figures);
/** The surface's entry, NULL when it is not there. */
const SurfaceFigures *figures_of_surface (const Figures *figures, const char *id);
/** The entry of a surface's control, NULL when it is not there. */
const ControlFigures *figures_of_control (const Figures *figures, const char *surface, const char *control);
/** The entry of that structure of the document, NULL when it is not there. */
const StructureFigures *figures_of_structure (const Figures *figures, const Structure *structure);
/** The entry of the part with a rail of that id, NULL when it is not there. */
const Solution       *figures_solution   (const Figures *figures, const char *part_id);
