#pragma once
#include "document/hinge.h"
#include "document/units.h"

/** What is wrong with a hinge line, where, and what to do: one sentence, translated, a new string; NULL for HINGE_SOUND.
 *  station  mm, as hinge_check gives it */
char *hinge_words_fault (Units units, const Surface *surface, HingeFault fault, double station);
/** What a group of the panel about it is headed: "Ailerons". Translated. */
const char *hinge_words_heading (ControlKind kind);
/** The step's name: "Add Aileron". Translated. */
const char *hinge_words_added (ControlKind kind);
