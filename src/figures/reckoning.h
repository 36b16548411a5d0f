#pragma once
#include "figures/explanation.h"

/** An explanation being made: who explains a figure adds what it was made of, then says what it gives. */
typedef struct {
  const Figures *figures;
  const char *id;               /* what it is about; NULL for the aeroplane */
  Units units;
  Explanation *made;            /* title, formula, source and limits stand already */
  GArray *inputs;               /* of ExplanationInput */
} Reckoning;

/** Explains one figure; false when it cannot be had. */
typedef bool (*Reckon) (Reckoning *self);

/* One more input. Labels and words are lent. A number that is not finite adds nothing. */
void reckoning_length  (Reckoning *self, const char *label, double mm);           /* mm, shown in the person's unit */
/** The same with one deviation; NAN or too small to be shown: without. */
void reckoning_length_known (Reckoning *self, const char *label, double mm, double sigma);
/** mm, shown with a decimal (an inch with three), for what is less than a deviation. */
void reckoning_fine_length (Reckoning *self, const char *label, double mm);
void reckoning_mass    (Reckoning *self, const char *label, double grams);        /* grams, shown in the person's unit */
void reckoning_area    (Reckoning *self, const char *label, double mm2);          /* mm², shown as square dm or inches */
void reckoning_percent (Reckoning *self, const char *label, double percent);      /* percent, every digit shown */
/** In any other unit, which is named behind it; "" when it has no unit. */
void reckoning_number  (Reckoning *self, const char *label, double value, int decimals, const char *unit);
void reckoning_words   (Reckoning *self, const char *label, const char *words);   /* no number: its values are NAN */
/** Two numbers in one text, which is taken; both as the text's kind: mm, grams, percent … */
void reckoning_pair    (Reckoning *self, const char *label, char *takes, double value, double second);

/* What they give; sigma NAN or too small to be shown: without a deviation. The last one called counts. */
void reckoning_gives_length (Reckoning *self, double mm, double sigma);           /* both mm */
void reckoning_gives_mass   (Reckoning *self, double grams, double sigma);        /* both grams */
void reckoning_gives_number (Reckoning *self, double value, double sigma, int decimals, const char *unit);   /* unit "": no unit */
/** In any other form; the text is taken, value is in the unit of the figures (mm, mm², percent …). */
void reckoning_gives        (Reckoning *self, char *takes, double value);
/** A figure and its deviation as one text: "151 ± 4 mm", where the deviation bears the unit for both. `plain` instead where the deviation
 *  is not known or reads as `nothing`. All four are taken. */
char *reckoning_deviating (char *figure, char *sigma, char *nothing, char *plain);
/** What the deviation of the all-up mass is made of, grams. */
Contributions reckoning_mass_owed (const Figures *figures);
/** The sentence on what the deviation is owed to: to one list or two. */
void reckoning_owes (Reckoning *self, const Contributions *owed, const Contributions *more);
/** The same where it is no list of pieces: a sentence, lent. */
void reckoning_owes_words (Reckoning *self, const char *sentence);
void reckoning_by   (Reckoning *self, const char *formula);      /* another formula than the usual one; lent */
void reckoning_from (Reckoning *self, const char *source);       /* another source than the usual one; lent */
/** Puts a name in the title's “%s”. Lent. */
void reckoning_about (Reckoning *self, const char *name);

/** What is always the same of a figure, each marked for translation. */
typedef struct { const char *title, *formula, *source, *limits; } ReckoningWords;
/** Those of one figure, untranslated; what < EXPLAIN_COUNT, EXPLAIN_NONE excepted. */
const ReckoningWords *reckoning_words_of (ExplainedFigure what);

/* The one who explains each, by themes, and in which unit it says the value. Of the aeroplane unless it says about what self->id is. */
bool reckon_static_margin (Reckoning *self);      /* percent of MAC, negative when tail-heavy */
bool reckon_aim           (Reckoning *self);      /* with both limits; mm aft of datum */
bool reckon_mark          (Reckoning *self);      /* about a mark, by its number; mm aft of the leading edge there */
bool reckon_solution      (Reckoning *self);      /* about a part with a rail; mm aft of datum */
bool reckon_ballast       (Reckoning *self);      /* about a part with a rail, or with nothing to slide; grams */

bool reckon_balance_point  (Reckoning *self);     /* mm aft of datum */
bool reckon_balance_across (Reckoning *self);     /* mm to starboard */
bool reckon_balance_height (Reckoning *self);     /* mm above the datum line */
bool reckon_mass           (Reckoning *self);     /* grams of all aboard */
bool reckon_inertia_roll   (Reckoning *self);     /* kg cm² about the balance point, along x */
bool reckon_inertia_pitch  (Reckoning *self);     /* … along y */
bool reckon_inertia_yaw    (Reckoning *self);     /* … along z */

bool reckon_neutral_point (Reckoning *self);      /* with everything counted; mm aft of datum */
bool reckon_section_shift (Reckoning *self);      /* mm, negative forward; not where there is none */
bool reckon_lattice       (Reckoning *self);      /* without bodies; mm aft of datum */
bool reckon_body_shift    (Reckoning *self);      /* mm, negative forward */
bool reckon_handbook      (Reckoning *self);      /* the second opinion, with bodies; mm aft of datum */
bool reckon_downwash      (Reckoning *self);      /* at the first tailplane; no unit */
bool reckon_propeller     (Reckoning *self);      /* bounds without power and at full power; mm, negative forward */

bool reckon_area         (Reckoning *self);       /* about a surface; mm² */
bool reckon_aspect_ratio (Reckoning *self);       /* about a surface; no unit */
bool reckon_mac          (Reckoning *self);       /* about a surface; mm */
bool reckon_section      (Reckoning *self);       /* about a surface: its section's lift slope over 2π */
bool reckon_lift_slope   (Reckoning *self);       /* about a surface, alone on its own area; per radian */
bool reckon_tail_arm     (Reckoning *self);       /* about a surface; mm, positive aft of the wing */
bool reckon_tail_volume  (Reckoning *self);       /* about a surface; no unit */
bool reckon_control_area (Reckoning *self);       /* about a control, by its number; mm², both sides */

bool reckon_wing_loading  (Reckoning *self);      /* g/dm² */
bool reckon_cubic_loading (Reckoning *self);      /* kg/m³ */
bool reckon_stall_speed   (Reckoning *self);      /* m/s */
bool reckon_reynolds      (Reckoning *self);      /* about a surface, without one the first wing, at the stall; no unit */
bool reckon_greatest_lift (Reckoning *self);      /* likewise; no unit */

bool reckon_balance_deviation (Reckoning *self);  /* mm, one standard deviation */
bool reckon_neutral_deviation (Reckoning *self);  /* mm, one standard deviation */

bool reckon_aeroplane_lift  (Reckoning *self);    /* per radian, on the first wing's area */
bool reckon_roll_damping    (Reckoning *self);    /* dC_l / d(p b / 2V); no unit */
bool reckon_pitch_damping   (Reckoning *self);    /* dC_m / d(q c / 2V); no unit */
bool reckon_span_efficiency (Reckoning *self);    /* of the first wing alone; no unit */
bool reckon_first_stall     (Reckoning *self);    /* the station, mm, of the first wing */

bool reckon_wanted_mass   (Reckoning *self);      /* grams */
bool reckon_airframe      (Reckoning *self);      /* grams */
bool reckon_airframe_place (Reckoning *self);     /* mm aft of datum, of the bare airframe */
bool reckon_left_for_gear (Reckoning *self);      /* grams, negative when the airframe alone is too heavy */
bool reckon_gear          (Reckoning *self);      /* grams */

bool reckon_revolutions (Reckoning *self);        /* turns a minute, of the first motor's propeller */
bool reckon_input       (Reckoning *self);        /* W, of all motors */
bool reckon_thrust      (Reckoning *self);        /* grams, of all propellers, standing */
bool reckon_pitch_speed (Reckoning *self);        /* m/s, of the first propeller */
bool reckon_current     (Reckoning *self);        /* A, of all motors */
bool reckon_minutes     (Reckoning *self);        /* minutes at half throttle */

bool reckon_propeller_plane (Reckoning *self);    /* about a motor; mm ahead of the cowl's front */
bool reckon_nose_gap        (Reckoning *self);    /* about a motor; mm, negative within the cowl */
bool reckon_firewall        (Reckoning *self);    /* about a motor; mm behind the cowl's front, where the gap is as usual */
bool reckon_shaft_offset    (Reckoning *self);    /* about a motor; mm to port; not without a thrust line */

bool reckon_stand (Reckoning *self);              /* about a part; mm that its front edge is behind its former */
