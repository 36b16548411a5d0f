#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/json-text.h"

/** The budget of mass: what is left for motor, battery and all other gear of a wanted all-up mass when the airframe is taken off. Grams. */

typedef enum { WANTED_USUAL, WANTED_ALL_UP, WANTED_LOADING } BudgetWanted;        /* by the span, typed, typed by wing area */
typedef enum { AIRFRAME_USUAL, AIRFRAME_RECKONED, AIRFRAME_WEIGHED } BudgetAirframe;      /* share of all-up, structures, the scale */

typedef struct {
  BudgetWanted wanted_by;
  double wanted_g, loading_g_dm2;               /* the same twice */
  BudgetAirframe airframe_by;
  double airframe_g, airframe_sigma_g;          /* structures, cowl, canopy, pilot, wheels, undercarriage; one standard deviation */
  double reckoned_g;                            /* what those come to in the document, whatever the scale says; 0 when none has a mass */
  double airframe_x_mm, reckoned_x_mm;          /* where it balances, aft of the datum: as found, else as reckoned; as reckoned. NAN without */
  double left_g, left_sigma_g;                  /* wanted less airframe; negative when the airframe alone is too heavy */
  double gear_g, gear_sigma_g;                  /* all other parts aboard, ballast too */
  double over_g;                                /* gear less what is left: positive is too much */
} Budget;

/** False without a wing whose area is known.
 *  method  the airframe as weighed (deviation 0.5 g where none is typed); else the structures and the parts that belong to them; without a
 *          structure's mass 48 % of all-up, known to a quarter; wanted by a usual loading for the span where nothing is typed
 *  source  common practice, no source */
bool  budget_of    (const Figures *figures, Budget *budget);
/** Whether a piece counts as the airframe: structures and the parts that belong to them; those to come not when it is weighed. */
bool  budget_counts_as_airframe (const Piece *piece, bool weighed);
/** What the airframe is taken for where nothing tells: so much of the wanted all-up mass, known to so much of itself. */
#define BUDGET_AIRFRAME_SHARE 0.48
#define BUDGET_AIRFRAME_KNOWN_TO 0.25
/** "Of 180 g all-up, 82 g ± 6 for the airframe leave 98 g; the gear aboard weighs 105 g, 7 g ± 9 too much." A new string. */
char *budget_text  (const Budget *budget, Units units);
/** Adds `budget`, an object, where there is one. */
void  budget_write (JsonText *json, const Figures *figures);
