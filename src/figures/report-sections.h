#pragma once
#include <string.h>
#include "document/units.h"
#include "figures/figures.h"
#include "figures/text-table.h"

/** Whether a deviation so printed tells anything: not "–", and not "0.00", which would claim too much. */
static inline bool
deviation_is_told (const char *text)
{
  return strpbrk (text, "123456789") != NULL;
}

/* The sections of the report for people, each a table, the caller's until it is printed; empty where there is nothing to say. A figure
 * that cannot be had is "–". */
TextTable report_balance       (const Figures *figures, Units units);     /* marks, margin, balance point, limits and aim */
TextTable report_neutral_point (const Figures *figures, Units units);     /* by both methods, with every shift */
TextTable report_surfaces      (const Figures *figures, Units units);     /* a column each */
TextTable report_controls      (const Figures *figures, Units units);     /* a row each: area and share of the surface */
TextTable report_mass          (const Figures *figures, Units units);     /* all-up mass, its centre and moments of inertia */
TextTable report_parts         (const Figures *figures, Units units);     /* a row each part and structure, also what is left out */
TextTable report_stands        (const Figures *figures, Units units);     /* a row each part aboard that a rule on the body measures */
TextTable report_nose          (const Figures *figures, Units units);     /* propeller's plane, gap and firewall of each motor in a cowl */
TextTable report_power         (const Figures *figures, Units units);     /* what the motor takes and the propeller gives */
TextTable report_leads         (const Figures *figures, Units units);     /* a row each leg: its way, what it needs, what it has */
TextTable report_budget        (const Figures *figures, Units units);     /* what is left for the gear */
TextTable report_materials     (const Figures *figures, Units units);     /* what structures are made of: a row each line, the usual excess */
TextTable report_groups        (const Figures *figures, Units units);     /* mass by what it serves */
TextTable report_moments       (const Figures *figures, Units units);     /* a row each thing aboard; none without a balance point */
TextTable report_solutions     (const Figures *figures, Units units);     /* a row each part with a rail */
TextTable report_hatch         (const Figures *figures, Units units);     /* the hatch to cut, and the floor to leave */
TextTable report_movers        (const Figures *figures, Units units);     /* a row each part: what it can do for the balance */
TextTable report_flight        (const Figures *figures, Units units);     /* loadings and stall */
TextTable report_motion        (const Figures *figures, Units units);     /* lift slope, dampings, span efficiency, first stall */
