#pragma once
#include "convergence-findings.h"

/** Writes convergence.md, which tells the study and shows its plots, into the folder; false when that cannot be done. */
bool page_write (const StudyFindings *findings, const char *folder);
