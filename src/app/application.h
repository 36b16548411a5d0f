#pragma once
#include <adwaita.h>
#include "app/settings.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_APPLICATION (trammel_application_get_type ())
G_DECLARE_FINAL_TYPE (TrammelApplication, trammel_application, TRAMMEL, APPLICATION, AdwApplication)

/** The windowed program: its windows, one a document, and what belongs to none of them (actions of group "app"). */
TrammelApplication *trammel_application_new (void);
/** The person's choices, one object for all windows; lent. NULL before startup. */
TrammelSettings    *trammel_application_settings (TrammelApplication *self);

/** Runs the windowed program on the files named; returns the exit status. */
int application_main (int argc, char **argv);

G_END_DECLS
