#pragma once
#include <glib.h>

/** What cairo cannot say in a PDF: that it is printed at its own size, shown under its title, and in which language its words are. Added behind
 *  its end as an incremental update; what was there stays byte for byte.
 *  takes     a PDF with a cross-reference table, as cairo writes up to version 1.4; taken
 *  language  "en": a tag of BCP 47
 *  returns   the finished file; the one handed in where its end is not understood
 *  source    ISO 32000-1:2008, 7.5.6 (incremental updates), 7.7.2 (catalogue), 12.2 (PrintScaling, DisplayDocTitle), 14.9.2 (Lang) */
GBytes *pdf_finished (GBytes *takes, const char *language);
