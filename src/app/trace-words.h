#pragma once
#include "app/trace-work.h"
#include "document/units.h"
#include "plan/compare.h"

/** A length finer than the sheet's whole millimetres, rounded up to what can be stood for: "0.2 mm", "0.01 in". A new string. mm */
char *trace_words_fine  (Units units, double mm);
/** Whether a stretch ahead of the pointer is worth the word that its line is lost: NULL where none was to be had. `mm` is how far it goes;
 *  over a few millimetres nothing is lost yet. */
bool  trace_words_is_lost (const Stretch *stretch, double mm);
/** How sure a stretch is, one sentence; NULL: nothing is to be said. A new string. mm
 *  astray   by how much it passes the pointer, mm, as trace_astray; such a one is sure of nothing */
char *trace_words_sure  (Units units, const Stretch *stretch, double mm, double astray);
/** What is to be said of a trace that is done, one sentence; NULL: nothing. A new string.
 *  ground   what it was traced on */
char *trace_words_done  (Units units, const TraceGround *ground, const TraceResult *result);
/** Why there is no outline, one sentence, translated. */
const char *trace_words_fault (CoreStatus status);
/** The question about a root that stands off the centre line. A new string. mm */
char *trace_words_root  (Units units, double root);
/** How an outline lies over its line: one sentence; NULL when there is none to compare. A new string.
 *  shows   what its view shows
 *  worst   where it is off most, mm from the datum */
char *trace_words_compared (Units units, const Comparison *comparison, ViewShows shows, Point worst);
