#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/text-table.h"

/* The sections of the report for people, each a table; empty where there is nothing to say. A figure that cannot be had is "–". */
TextTable report_balance       (const Figures *figures, Units units);
TextTable report_neutral_point (const Figures *figures, Units units);
TextTable report_surfaces      (const Figures *figures, Units units);
TextTable report_controls      (const Figures *figures, Units units);
TextTable report_mass          (const Figures *figures, Units units);
TextTable report_parts         (const Figures *figures, Units units);
TextTable report_solutions     (const Figures *figures, Units units);
TextTable report_flight        (const Figures *figures, Units units);

TextTable report_motion        (const Figures *figures, Units units);

/** A speed as people read it: "6.5 m/s", with inches "14.5 mph"; "–" unless finite. A new string. */
char *report_speed (Units units, double m_s);
