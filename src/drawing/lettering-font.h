#pragma once
#include <stdbool.h>

/** Makes the drawing's own lettering (Routed Gothic, open font licence, among the program's data) known to this process, so that a sheet
 *  looks the same where it is not installed. To be called before the first layout on paper; calling it again changes nothing. False when
 *  the file is missing or unreadable: fontconfig then falls back to what the look names next. */
bool lettering_font_add (void);
