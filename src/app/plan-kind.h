#pragma once
#include <glib.h>
#include "plan/decode.h"

/** Whether a file is to be opened as a plan, not as a document: by its first bytes, else by how its name ends. Whether it can be
 *  decoded is another matter. Reads at most a kilobyte. */
bool        plan_kind_of_file (const char *path);
/** The MIME type of a kind; never NULL. */
const char *plan_kind_type    (DecodeKind kind);
/** How the names of pictures and pages end, without the dot; NULL ends them. */
const char *const *plan_kind_endings (void);
