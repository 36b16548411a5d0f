#include "geometry/status.h"

#include <stddef.h>

/* Marks a sentence for the translators; the core itself links no gettext. */
#define N_(sentence) sentence

static const char *const sentences[CORE_STATUS_END] = {
  [CORE_OK]              = N_("Everything is in order"),
  [CORE_TOO_FEW_NODES]   = N_("An outline needs at least two nodes"),
  [CORE_NOT_FINITE]      = N_("A coordinate is not a finite number"),
  [CORE_OFF_ITS_ARC]     = N_("An end of an arc does not lie on its ellipse, or the ellipse has no size"),
  [CORE_OPEN]            = N_("The two ends of the outline do not stand at the same station, so it does not close along a root"),
  [CORE_CROSSES_ITSELF]  = N_("The outline crosses itself"),
  [CORE_NO_SPAN]         = N_("The outline has no span: all of it stands at one station"),
  [CORE_NO_AREA]         = N_("The outline encloses no area"),
  [CORE_MULTI_VALUED]    = N_("At some stations the outline is met more than twice"),
  [CORE_SINGULAR]        = N_("The equations have no single solution"),
  [CORE_OUT_OF_RANGE]    = N_("A value lies outside the range the method holds for"),
  [CORE_NO_MEMORY]       = N_("There is not enough memory"),
  [CORE_TOO_MANY]        = N_("There are too many surfaces to be reckoned together"),
  [CORE_CANCELLED]       = N_("It was stopped before it was done"),
};

const char *
core_status_sentence (CoreStatus status)
{
  const char *sentence = (size_t) status < CORE_STATUS_END ? sentences[status] : NULL;

  return sentence ? sentence : N_("The reason is not known");
}
