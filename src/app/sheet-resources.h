#pragma once

/** Makes the sheet's icons and style known to the display; once is enough, more does no harm. Needs GTK's display. */
void sheet_resources_ensure (void);
