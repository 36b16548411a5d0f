#pragma once

/** Why the core gave no answer. Zero is success, so a caller writes
 *  `if ((status = planform_measure (outline, sides, &planform))) return status;`.
 *  Codes are only ever appended; a test asks a sentence for each up to CORE_STATUS_END. */
typedef enum {
  CORE_OK = 0,
  CORE_TOO_FEW_NODES,     /* an outline needs two nodes */
  CORE_NOT_FINITE,        /* a coordinate is NaN or infinite */
  CORE_OFF_ITS_ARC,       /* an arc's end does not lie on its ellipse, or the ellipse has no size */
  CORE_OPEN,              /* the ends of a half-outline do not stand at one station: it does not close along a root */
  CORE_CROSSES_ITSELF,    /* two segments meet away from their shared node */
  CORE_NO_SPAN,           /* every node stands at one station */
  CORE_NO_AREA,           /* the outline encloses nothing */
  CORE_MULTI_VALUED,      /* some station line meets the outline more than twice: allowed, but told apart */
  CORE_SINGULAR,          /* the equations have no single solution */
  CORE_OUT_OF_RANGE,      /* a value lies outside what the method holds for */
  CORE_NO_MEMORY,
  CORE_TOO_MANY,          /* more than can be reckoned while a person waits */
  CORE_CANCELLED,         /* whoever asked did not want to wait for it */
  CORE_STATUS_END
} CoreStatus;

/** A sentence for people, without a full stop, marked for translation (the caller passes it through gettext).
 *  Never NULL; owned by the core. */
const char *core_status_sentence (CoreStatus status);
