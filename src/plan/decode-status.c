#include "plan/decode.h"

/* Marks a sentence for the translators; the room itself links no gettext. */
#define N_(sentence) sentence

static const char *const sentences[DECODE_STATUS_END] = {
  [DECODE_OK]              = N_("The plan was read"),
  [DECODE_NOT_A_PICTURE]   = N_("The file is neither a picture (PNG, JPEG, TIFF, WebP, BMP, GIF, SVG) nor a PDF"),
  [DECODE_EMPTY]           = N_("The file is empty"),
  [DECODE_TRUNCATED]       = N_("The file breaks off in the middle of its picture: copy it again from where it came"),
  [DECODE_DAMAGED]         = N_("The file is damaged: open it in a picture program and save it anew"),
  [DECODE_NO_PIXELS]       = N_("The picture has no width or no height"),
  [DECODE_TOO_LARGE]       = N_("The picture is too large: scan it at fewer dots to the inch, or cut it to the part that is needed"),
  [DECODE_NO_LOADER]       = N_("This computer has no loader for pictures of this kind: save it as PNG or JPEG"),
  [DECODE_NEEDS_PASSWORD]  = N_("The PDF is locked with a password: save a copy without one and open that"),
  [DECODE_NO_SUCH_PAGE]    = N_("The file has no such page"),
  [DECODE_TOOK_TOO_LONG]   = N_("Reading the plan took too long and was given up: save it as a plain PNG and open that"),
  [DECODE_TOO_MUCH_MEMORY] = N_("Reading the plan needs more memory than it may take: save it smaller, or as a plain PNG"),
  [DECODE_HELPER_MISSING]  = N_("The part of Trammel that reads plans is missing: install Trammel anew"),
  [DECODE_HELPER_DIED]     = N_("The file upset the part of Trammel that reads plans, which was ended: save it anew as PNG"),
  [DECODE_CANCELLED]       = N_("Reading the plan was cancelled"),
  [DECODE_CANNOT_READ]     = N_("The file cannot be read"),
};

const char *
decode_status_sentence (DecodeStatus status)
{
  const char *sentence = (size_t) status < DECODE_STATUS_END ? sentences[status] : NULL;

  return sentence ? sentence : N_("The reason is not known");
}
