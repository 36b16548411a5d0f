#pragma once
#include "app/session.h"

/** What the rows of the selection's page depend on: which of them there are, not what they show. While it stays the same they need not be
 *  made anew. A new string.
 *  has_plan  whether a plan lies beneath the sheet */
char *selection_key (TrammelSession *session, bool has_plan);
