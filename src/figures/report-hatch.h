#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/json-text.h"

/** Where an edge at x, mm aft of the datum, lies from the nearest former with a name: "8 mm aft of F2". A new string, translated; NULL without
 *  a former. */
char *hatch_edge_text (const Aeroplane *aeroplane, double x, Units units);
/** What a person chooses of: "Not chosen yet", "Top", "Bottom". Translated. */
const char *hatch_side_name (HatchSide side);
/** On which side it opens, which formers it stands between and which it cuts through, and what stands across it (hatch_bar_texts), in sentences. A
 *  new string, translated; NULL without a hatch. */
char *hatch_place_text (const Figures *figures);
/** How the hole narrows with the body, or that a pack does not go through it, and what to do. A new string, translated; NULL where there is nothing
 *  to tell, and without a hatch. */
char *hatch_through_text (const Figures *figures, Units units);
/** Says what of these keeps the hatch from being built as it is: that the pack does not go through, what stands across it. */
void  hatch_note (const Figures *figures, GPtrArray *notes);
/** The same as hatch_place_text, how large hole and lid are, and hatch_through_text. */
char *hatch_opening_text (const Figures *figures, Units units);
/** That what carries the load at the formers it cuts has to be made up for. A new string, translated; NULL where none of those has a name. */
char *hatch_carry_text (const Figures *figures);
/** The formers that lie within it, of all bodies, from ahead aft: const NamedPlace, lent by the aeroplane. A new array; of no hatch, empty. */
GPtrArray *hatch_formers_cut (const Figures *figures);
/** What its length is made of, and what the rail has to do with it, in sentences. A new string, translated; NULL without a hatch. */
char *hatch_length_text (const Figures *figures, Units units);
/** Writes the member "hatch", nothing without a hatch; in it no former where there is none. */
void  report_write_hatch (JsonText *json, const Figures *figures);
