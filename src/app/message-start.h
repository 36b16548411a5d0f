#pragma once
#include <adwaita.h>

/** Where a question begins that is not shown yet: the keyboard stands on the button of this response, which Return then presses, wherever
 *  that button comes to stand. To be called after the responses were added. */
void message_start_at (AdwMessageDialog *dialog, const char *response);
