#pragma once
#include "convergence-findings.h"

/** Writes the plots of the study into convergence/ of the folder; false when that cannot be done. */
bool plots_write (const StudyFindings *findings, const char *folder);
