#pragma once

/** The figures of which a person can ask how they came about, in the order of the report. */
typedef enum {
  EXPLAIN_NONE,
  EXPLAIN_STATIC_MARGIN, EXPLAIN_AIM,            /* with both limits */
  EXPLAIN_MARK,                                  /* about a mark: its place among the figures' marks, "0" */
  EXPLAIN_BALANCE_POINT, EXPLAIN_BALANCE_DEVIATION, EXPLAIN_BALANCE_ACROSS, EXPLAIN_BALANCE_HEIGHT,
  EXPLAIN_SOLUTION, EXPLAIN_BALLAST,             /* about a part with a rail; ballast also about none: with nothing to slide */
  EXPLAIN_NEUTRAL_POINT, EXPLAIN_NEUTRAL_DEVIATION, EXPLAIN_LATTICE, EXPLAIN_SECTION_SHIFT, EXPLAIN_BODY_SHIFT, EXPLAIN_HANDBOOK,
  EXPLAIN_DOWNWASH, EXPLAIN_PROPELLER,
  /* About a surface; the last two without one about the first wing. */
  EXPLAIN_AREA, EXPLAIN_ASPECT_RATIO, EXPLAIN_MAC, EXPLAIN_SECTION, EXPLAIN_LIFT_SLOPE, EXPLAIN_TAIL_ARM, EXPLAIN_TAIL_VOLUME,
  EXPLAIN_REYNOLDS, EXPLAIN_GREATEST_LIFT,
  EXPLAIN_CONTROL_AREA,                          /* about a control: its place among the figures' controls, "0" */
  EXPLAIN_MASS, EXPLAIN_INERTIA_ROLL, EXPLAIN_INERTIA_PITCH, EXPLAIN_INERTIA_YAW,
  EXPLAIN_WING_LOADING, EXPLAIN_CUBIC_LOADING, EXPLAIN_STALL_SPEED,
  EXPLAIN_AEROPLANE_LIFT, EXPLAIN_ROLL_DAMPING, EXPLAIN_PITCH_DAMPING, EXPLAIN_SPAN_EFFICIENCY, EXPLAIN_FIRST_STALL,
  EXPLAIN_COUNT
} ExplainedFigure;
