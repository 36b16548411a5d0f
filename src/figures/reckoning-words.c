#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const char no_source[] = N_("Common practice, no source.");
static const char drawn[] = N_("Measured on what is drawn.");
static const char lattice[] = N_("Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., chapter 12; spacing after Lan, J. Aircraft 11 "
                                 "(1974).");
static const char planform[] = N_("Etkin and Reid, Dynamics of Flight, 3rd ed., appendix C.");
static const char weighing[] = N_("FAA-H-8083-1, Weight and Balance Handbook.");
static const char mechanics[] = N_("Textbook mechanics: the parallel-axis theorem.");
static const char atmosphere[] = N_("Level flight in the standard atmosphere, ISO 2533:1975; the greatest lift is common practice, no "
                                    "source, with trends after NACA Report 586.");
static const char propellers[] = N_("Definition of the propeller's coefficients; their values are common practice after wind-tunnel "
                                    "data of small propellers, no source.");
static const char standing[] = N_("It is that of an aeroplane held still at full throttle, at sea level: in the air the propeller is "
                                  "unloaded. A meter between battery and controller tells more than any reckoning.");
static const char by_rule[] = N_("It is as good as sizes and places typed: measure parts with a calliper, and it is known to half a "
                                 "millimetre.");
static const char thin[] = N_("It holds for thin surfaces at small angles in smooth flow, well below the stall. Gaps, thick edges and "
                              "warped wood are not in it.");
static const char as_good_as_drawn[] = N_("It is as good as the drawing: trace the outline as it is built.");
static const char as_good_as_weighed[] = N_("It is as good as the masses and places typed. What is not weighed is taken from common "
                                            "practice and widens the deviation.");
static const char inertia_limits[] = N_("Parts count as solid boxes of their size, structures as thin even sheets; spars and blocks of "
                                        "another density are not known.");

/* A title's %s is the name of what it is about. */
static const ReckoningWords words[EXPLAIN_COUNT] = {
  [EXPLAIN_STATIC_MARGIN] = {
    N_("Static margin"), N_("(neutral point − balance point) / mean chord"),
    N_("Etkin and Reid, Dynamics of Flight, 3rd ed., chapter 2; the wanted band is common practice, no source."),
    N_("It holds for small disturbances with the controls held and the flow attached. Check the balance on the bench and begin at the "
       "forward limit.") },
  [EXPLAIN_AIM] = {
    N_("Aim and limits"), N_("neutral point − wanted margin × mean chord"),
    no_source,
    N_("The band of margins is a builder's choice: more margin is calmer, less is livelier. It is as good as the neutral point.") },
  [EXPLAIN_MARK] = {
    N_("Balance mark at station %s"), N_("aim − leading edge at the station"),
    drawn,
    N_("It holds at this station only: elsewhere the leading edge lies elsewhere. Measure along the chord, parallel to the centre "
       "line.") },
  [EXPLAIN_BALANCE_POINT] = {
    N_("Balance point, aft of datum"), N_("x = Σ m x / Σ m"),
    weighing, as_good_as_weighed },
  [EXPLAIN_BALANCE_DEVIATION] = {
    N_("Deviation of the balance point"), N_("√ Σ s², s what each mass and place moves it by"),
    N_("Textbook statistics: independent errors. Deviations that are not typed are common practice, no source."),
    N_("It is one standard deviation: two times out of three the balance point lies within it. Weigh what comes first, and it shrinks.") },
  [EXPLAIN_BALANCE_ACROSS] = {
    N_("Balance point, off centre"), N_("y = Σ m y / Σ m, positive to starboard"),
    weighing, as_good_as_weighed },
  [EXPLAIN_BALANCE_HEIGHT] = {
    N_("Balance point, above the side view's line"), N_("z = Σ m z / Σ m"),
    weighing, as_good_as_weighed },
  [EXPLAIN_SOLUTION] = {
    N_("Where “%s” must be"), N_("place now + (aim − balance point) × all-up mass / mass of the part"),
    weighing,
    N_("It holds when nothing else moves. A light part must go far: its deviation grows with all-up mass over its own.") },
  [EXPLAIN_BALLAST] = {
    N_("Ballast beside “%s”"),
    N_("(all-up mass × (balance point − aim) + mass of the part × (end of the rail − its place)) / (aim − place of the ballast)"),
    weighing,
    N_("The part stands at the nearer end of its rail and nothing else moves. Ballast goes where least of it is needed and it has "
       "room; nearer to the aim it must be more.") },
  [EXPLAIN_NEUTRAL_POINT] = {
    N_("Neutral point, aft of datum"), N_("vortex lattice + shift by the body"),
    N_("Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., chapter 12; Multhopp, NACA TM 1036 (1942). Parts of the deviation are common "
       "practice, no source."),
    N_("It holds for small angles and attached flow, controls held. The propeller's shift and what no method knows are held in the "
       "deviation.") },
  [EXPLAIN_NEUTRAL_DEVIATION] = {
    N_("Deviation of the neutral point"), N_("√ Σ s², s what each moves it by"),
    N_("Downwash after Glauert, Elements of Aerofoil and Airscrew Theory, chapter XII; Ribner, NACA Report 820 (1945); sections as their "
       "own. The rest is common practice, no source."),
    N_("It is one standard deviation: two times out of three the neutral point lies within it.") },
  [EXPLAIN_LATTICE] = {
    N_("Neutral point by the vortex lattice"), N_("x = Σ κL x / Σ κL"), lattice, thin },
  [EXPLAIN_SECTION_SHIFT] = {
    N_("Shift by the sections"), N_("neutral point with the sections − neutral point of thin plates"),
    N_("Polhamus; USAF DATCOM, section 4.1.3.2; slopes as for the sections themselves."),
    N_("It counts how steeply the sections lift, not where along the chord they do.") },
  [EXPLAIN_BODY_SHIFT] = {
    N_("Shift by the body"), N_("− M′ / (S a), with M′ = π/2 ∫ w² (dε/dα) dx over the width w"),
    N_("Multhopp, Zur Aerodynamik des Flugzeugrumpfes (1941), NACA TM 1036 (1942)."),
    N_("It holds for slender bodies at small angles. A body that is not drawn from above is not counted, only its deviation is.") },
  [EXPLAIN_HANDBOOK] = {
    N_("Neutral point by handbook formulas"),
    N_("x = Σ a S q (1 − dε/dα) x / Σ a S q (1 − dε/dα) + shifts, with a = 2πA / (2 + √(A² (1 + tan²Λ) + 4)) and "
       "dε/dα = 4.44 (K_A K_λ K_H √cos Λ)^1.19 behind the wing"),
    N_("Polhamus; USAF DATCOM, section 4.1.3.2; Etkin and Reid, Dynamics of Flight, 3rd ed., appendix B."),
    N_("The formulas were fitted to straight-tapered wings of aspect ratio 4 and more with the tail well behind. It is a second opinion: "
       "the figure is the lattice's.") },
  [EXPLAIN_DOWNWASH] = {
    N_("Downwash gradient at the tailplane"), N_("1 − L S / (L₀ Sₜ q)"), lattice,
    N_("The wing's wake is taken as flat and straight. A tail close above or below it feels the rolled-up wake otherwise.") },
  [EXPLAIN_PROPELLER] = {
    N_("Shift by the propeller"),
    N_("force across the shaft × (its place − neutral point) × cross flow / (S a), without and at full power"),
    N_("Ribner, NACA Report 819 and NACA Report 820 (1945); blades' width, pitch and power are common practice, no source."),
    N_("These are bounds for two usual blades. They are held in the deviation, not in the neutral point.") },
  [EXPLAIN_AREA] = { N_("Area of “%s”"), N_("S = 2 ∫ c dy = b × average chord"), planform, as_good_as_drawn },
  [EXPLAIN_ASPECT_RATIO] = { N_("Aspect ratio of “%s”"), N_("b² / S"), planform, as_good_as_drawn },
  [EXPLAIN_MAC] = {
    N_("Mean chord (MAC) of “%s”"), N_("MAC = 2/S ∫ c² dy, c the chord at station y, over one half"), planform, as_good_as_drawn },
  [EXPLAIN_SECTION] = {
    N_("Lift slope of the section of “%s”, over 2π"), N_("from a table of sections by their class and Reynolds number"),
    N_("Cautious values after Gutierrez-Castillo et al., J. Wind Eng. Ind. Aerodyn. 208 (2021); Winslow et al., J. Aircraft 55 (2018); "
       "Jacobs and Sherman, NACA Report 586 (1937)."),
    N_("The table reaches from 20 000 to 200 000 and is held at its ends. A section that somebody has measured is better typed.") },
  [EXPLAIN_LIFT_SLOPE] = {
    N_("Lift slope of “%s” alone"), N_("thin plate × κ, κ by Polhamus' formula with the section's slope and without"),
    N_("Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., chapter 12; Polhamus; USAF DATCOM, section 4.1.3.2."), thin },
  [EXPLAIN_TAIL_ARM] = {
    N_("Tail arm of “%s”"), N_("its quarter MAC − quarter MAC of the wing"), planform, as_good_as_drawn },
  [EXPLAIN_TAIL_VOLUME] = {
    N_("Tail volume of “%s”"), N_("area × arm / (area of the wing × mean chord of the wing)"),
    N_("Etkin and Reid, Dynamics of Flight, 3rd ed., chapters 2 and 3; the bands that findings hold it against are common practice, no "
       "source."),
    N_("It compares aeroplanes of usual proportions. The neutral point does not use it.") },
  [EXPLAIN_CONTROL_AREA] = {
    N_("Area of “%s”"), N_("2 ∫ (trailing edge − hinge line) dy, from the inner to the outer station"),
    N_("Measured on what is drawn, by quadrature after Abramowitz and Stegun, table 25.4."), as_good_as_drawn },
  [EXPLAIN_MASS] = {
    N_("All-up mass"), N_("Σ m of all that is aboard"), weighing, as_good_as_weighed },
  [EXPLAIN_INERTIA_ROLL] = {
    N_("Moment of inertia in roll"), N_("Σ (own + m (y² + z²)), from the balance point"),
    mechanics, inertia_limits },
  [EXPLAIN_INERTIA_PITCH] = {
    N_("Moment of inertia in pitch"), N_("Σ (own + m (x² + z²)), from the balance point"),
    mechanics, inertia_limits },
  [EXPLAIN_INERTIA_YAW] = {
    N_("Moment of inertia in yaw"), N_("Σ (own + m (x² + y²)), from the balance point"),
    mechanics, inertia_limits },
  [EXPLAIN_WING_LOADING] = {
    N_("Wing loading"), N_("all-up mass / area of all wings"), no_source,
    N_("It compares aeroplanes of one size; a larger one bears more. Tails do not count.") },
  [EXPLAIN_CUBIC_LOADING] = {
    N_("Cubic loading"), N_("all-up mass / (area of all wings)^1.5"), no_source,
    N_("It compares aeroplanes of any size by how lively they fly. Tails do not count.") },
  [EXPLAIN_STALL_SPEED] = {
    N_("Stalling speed"), N_("V = √(2 m g / (ρ S C))"), atmosphere,
    N_("It is that of level flight at sea level, without power. Turns stall earlier, and the lift is only as well known as the section.") },
  [EXPLAIN_REYNOLDS] = {
    N_("Reynolds number of “%s” at the stall"), N_("ρ V c / μ"),
    N_("Level flight in the standard atmosphere, ISO 2533:1975."),
    N_("It is that of the mean chord; at the tips it is less.") },
  [EXPLAIN_GREATEST_LIFT] = {
    N_("Greatest lift coefficient of “%s”"), N_("from a table of sections by their class and Reynolds number"),
    N_("Common practice, no source; trends after NACA Report 586."),
    N_("It is that of the whole wing, without flaps. Its deviation is half of the trade's band.") },
  [EXPLAIN_AEROPLANE_LIFT] = {
    N_("Lift slope of the aeroplane, per radian"), N_("Σ κL of all surfaces, on the area of the first wing"), lattice, thin },
  [EXPLAIN_ROLL_DAMPING] = {
    N_("Damping in roll"), N_("Σ κ dC_l / d(p b / 2V), C_l = moment / (½ ρ V² S b)"), lattice, thin },
  [EXPLAIN_PITCH_DAMPING] = {
    N_("Damping in pitch"), N_("Σ κ dC_m / d(q c / 2V), C_m = moment / (½ ρ V² S c)"),
    N_("Vortex lattice; definition after Etkin and Reid, Dynamics of Flight, 3rd ed., section 5.4."),
    N_("It is that of steady turning: what the downwash's delay adds is not in it. Thin surfaces at small angles.") },
  [EXPLAIN_SPAN_EFFICIENCY] = {
    N_("Span efficiency of the wing"), N_("e = L² / (½ ρ V² π b² D), the drag D from the flow far behind"),
    N_("Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., section 8.4."),
    N_("It is the wing's alone and knows no friction; with it, a small aeroplane's is lower.") },
  [EXPLAIN_FIRST_STALL] = {
    N_("Where the wing stalls first, station"),
    /* xgettext:no-c-format */
    N_("the station of the greatest lift coefficient, 95 % of the half-span looked at"),
    lattice,
    N_("It is that of an untwisted wing with one section throughout; washout moves it inboard.") },
  [EXPLAIN_WANTED_MASS] = {
    N_("Wanted all-up mass"), N_("wing loading × area of all wings"), no_source,
    N_("It is what is wanted, not what is aboard. What is usual for the span suits a calm sport model; type another, and that counts.") },
  [EXPLAIN_AIRFRAME] = {
    N_("Bare airframe"), N_("Σ m of structures, cowl, canopy, pilot, wheels and undercarriage"), no_source,
    N_("What the scale says counts before what is reckoned. On it belongs all that is fixed to the aeroplane when it is bare, "
       "and no gear.") },
  [EXPLAIN_AIRFRAME_PLACE] = {
    N_("Where the bare airframe balances"), N_("Σ m x / Σ m of structures, cowl, canopy, pilot, wheels and undercarriage"), weighing,
    N_("What was found by lifting it counts before what is reckoned. It is the airframe's alone, without gear: where the whole "
       "aeroplane balances is another place.") },
  [EXPLAIN_LEFT_FOR_GEAR] = {
    N_("Left for gear"), N_("wanted all-up mass − bare airframe"), no_source,
    N_("It is for motor, battery, controller, receiver, servos, linkages and ballast together.") },
  [EXPLAIN_GEAR] = {
    N_("Gear aboard"), N_("Σ m of the parts that are no airframe"), weighing, as_good_as_weighed },
  [EXPLAIN_REVOLUTIONS] = { N_("Revolutions"), N_("n = ∛(η P / (C ρ D⁵)), a second"), propellers, standing },
  [EXPLAIN_INPUT] = { N_("Input"), N_("usual share × greatest input of the motor"), propellers, standing },
  [EXPLAIN_THRUST] = { N_("Thrust, standing"), N_("T = C ρ n² D⁴ / g"), propellers, standing },
  [EXPLAIN_PITCH_SPEED] = {
    N_("Pitch speed"), N_("pitch × n"), no_source,
    N_("It is how fast the propeller would screw forward without slip; the aeroplane flies slower.") },
  [EXPLAIN_CURRENT] = { N_("Current"), N_("input / (volts of a cell × cells)"), no_source, standing },
  [EXPLAIN_MINUTES] = {
    N_("Time in the air"), N_("share used × capacity / (share at half throttle × greatest current)"), no_source,
    N_("It is a rule of thumb for mixed flying with a fifth of the pack kept back. Time the first flights short.") },
  [EXPLAIN_PROPELLER_PLANE] = {
    N_("Propeller's plane of “%s”"), N_("front of the cowl − middle of the propeller; without a cowl the front of the body"),
    drawn, by_rule },
  [EXPLAIN_NOSE_GAP] = {
    N_("Gap before “%s”"), N_("front of the cowl − rear face of spinner or hub"),
    N_("Measured on what is drawn; what is usual is common practice, no source."), by_rule },
  [EXPLAIN_FIREWALL] = {
    N_("Firewall of “%s”"), N_("rear of motor and mount − front of the cowl + what the motor is too far out"),
    N_("Measured on what is drawn; the usual gap, and 3 mm for a mount that is not among the parts, are common practice, no source."),
    by_rule },
  [EXPLAIN_SHAFT_OFFSET] = {
    N_("Offset of the shaft of “%s”"), N_("depth of the firewall × tan of the thrust line's angle"),
    N_("Geometry of a straight line."), by_rule },
  [EXPLAIN_STAND] = {
    N_("Where “%s” stands"), N_("middle − half of its length − line of the former"),
    drawn,
    N_("A former counts from its line as drawn, a box as turned. The underside is held against the bottom line of the side view.") },
};

const ReckoningWords *
reckoning_words_of (ExplainedFigure what)
{
  return &words[what];
}
