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
void reckoning_length  (Reckoning *self, const char *label, double mm);
/** With a decimal, for what is less than a deviation. */
void reckoning_fine_length (Reckoning *self, const char *label, double mm);
void reckoning_mass    (Reckoning *self, const char *label, double grams);
void reckoning_area    (Reckoning *self, const char *label, double mm2);
void reckoning_percent (Reckoning *self, const char *label, double percent);
/** unit  "" for a pure number */
void reckoning_number  (Reckoning *self, const char *label, double value, int decimals, const char *unit);
void reckoning_words   (Reckoning *self, const char *label, const char *words);
/** Two numbers in one text, which is taken. */
void reckoning_pair    (Reckoning *self, const char *label, char *takes, double value, double second);

/* What they give; sigma NAN or too small to be shown: without a deviation. */
void reckoning_gives_length (Reckoning *self, double mm, double sigma);
void reckoning_gives_mass   (Reckoning *self, double grams, double sigma);
void reckoning_gives_number (Reckoning *self, double value, double sigma, int decimals, const char *unit);
/** In any other form; the text is taken. */
void reckoning_gives        (Reckoning *self, char *takes, double value);
/** The sentence on what the deviation is owed to: to one list or two. */
void reckoning_owes (Reckoning *self, const Contributions *owed, const Contributions *more);
/** Another formula or source than the usual one. Lent. */
void reckoning_by   (Reckoning *self, const char *formula);
void reckoning_from (Reckoning *self, const char *source);
/** Puts a name in the title's “%s”. Lent. */
void reckoning_about (Reckoning *self, const char *name);

/** What is always the same of a figure, each marked for translation. */
typedef struct { const char *title, *formula, *source, *limits; } ReckoningWords;
const ReckoningWords *reckoning_words_of (ExplainedFigure what);

/** The one who explains each, by themes. */
bool reckon_static_margin (Reckoning *self);
bool reckon_aim           (Reckoning *self);
bool reckon_mark          (Reckoning *self);
bool reckon_solution      (Reckoning *self);
bool reckon_ballast       (Reckoning *self);

bool reckon_balance_point  (Reckoning *self);
bool reckon_balance_across (Reckoning *self);
bool reckon_balance_height (Reckoning *self);
bool reckon_mass           (Reckoning *self);
bool reckon_inertia_roll   (Reckoning *self);
bool reckon_inertia_pitch  (Reckoning *self);
bool reckon_inertia_yaw    (Reckoning *self);

bool reckon_neutral_point (Reckoning *self);
bool reckon_section_shift (Reckoning *self);
bool reckon_lattice       (Reckoning *self);
bool reckon_body_shift    (Reckoning *self);
bool reckon_handbook      (Reckoning *self);
bool reckon_downwash      (Reckoning *self);
bool reckon_propeller     (Reckoning *self);

bool reckon_area         (Reckoning *self);
bool reckon_aspect_ratio (Reckoning *self);
bool reckon_mac          (Reckoning *self);
bool reckon_section      (Reckoning *self);
bool reckon_lift_slope   (Reckoning *self);
bool reckon_tail_arm     (Reckoning *self);
bool reckon_tail_volume  (Reckoning *self);
bool reckon_control_area (Reckoning *self);

bool reckon_wing_loading  (Reckoning *self);
bool reckon_cubic_loading (Reckoning *self);
bool reckon_stall_speed   (Reckoning *self);
bool reckon_reynolds      (Reckoning *self);
bool reckon_greatest_lift (Reckoning *self);

bool reckon_balance_deviation (Reckoning *self);
bool reckon_neutral_deviation (Reckoning *self);

bool reckon_aeroplane_lift  (Reckoning *self);
bool reckon_roll_damping    (Reckoning *self);
bool reckon_pitch_damping   (Reckoning *self);
bool reckon_span_efficiency (Reckoning *self);
bool reckon_first_stall     (Reckoning *self);
