#include "figures/advice-sentence.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const char *const open_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("Carry the outline to the centre line; the wing then closes."),
  [ROLE_TAILPLANE] = N_("Carry the outline to the centre line; the tailplane then closes."),
  [ROLE_FOREPLANE] = N_("Carry the outline to the centre line; the foreplane then closes."),
  [ROLE_FIN]       = N_("Carry the outline back to the root; the fin then closes."),
};

static const char *const crossing_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("The wing's outline crosses itself. Drag one of its nodes away."),
  [ROLE_TAILPLANE] = N_("The tailplane's outline crosses itself. Drag one of its nodes away."),
  [ROLE_FOREPLANE] = N_("The foreplane's outline crosses itself. Drag one of its nodes away."),
  [ROLE_FIN]       = N_("The fin's outline crosses itself. Drag one of its nodes away."),
};

static const char *const beyond_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("The wing's outline crosses the centre line. Drag it back."),
  [ROLE_TAILPLANE] = N_("The tailplane's outline crosses the centre line. Drag it back."),
  [ROLE_FOREPLANE] = N_("The foreplane's outline crosses the centre line. Drag it back."),
  [ROLE_FIN]       = N_("The fin's outline goes below its root. Drag it up."),
};

static const char *const inboard_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("The wing's outline reaches inboard of its root. Drag it out."),
  [ROLE_TAILPLANE] = N_("The tailplane's outline reaches inboard of its root. Drag it out."),
  [ROLE_FOREPLANE] = N_("The foreplane's outline reaches inboard of its root. Drag it out."),
  [ROLE_FIN]       = N_("The fin's outline goes below its root. Drag it up."),
};

static const char *const empty_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("The wing encloses nothing yet. Give it a span and a chord."),
  [ROLE_TAILPLANE] = N_("The tailplane encloses nothing yet. Give it a span and a chord."),
  [ROLE_FOREPLANE] = N_("The foreplane encloses nothing yet. Give it a span and a chord."),
  [ROLE_FIN]       = N_("The fin encloses nothing yet. Give it a height and a chord."),
};

static const char *const unmeasured_sentences[ROLE_COUNT] = {
  [ROLE_WING]      = N_("The wing cannot be measured. See what Findings say of it."),
  [ROLE_TAILPLANE] = N_("The tailplane cannot be measured. See what Findings say of it."),
  [ROLE_FOREPLANE] = N_("The foreplane cannot be measured. See what Findings say of it."),
  [ROLE_FIN]       = N_("The fin cannot be measured. See what Findings say of it."),
};

static const char *const *const sentences[STATE_OUTLINE_LAST + 1] = {
  [STATE_OUTLINE_OPEN]       = open_sentences,
  [STATE_OUTLINE_CROSSES]    = crossing_sentences,
  [STATE_OUTLINE_BEYOND]     = beyond_sentences,
  [STATE_OUTLINE_INBOARD]    = inboard_sentences,
  [STATE_OUTLINE_EMPTY]      = empty_sentences,
  [STATE_OUTLINE_UNMEASURED] = unmeasured_sentences,
};

char *
advice_outline_sentence (AdviceState state, SurfaceRole role)
{
  return g_strdup (_(sentences[state][role]));
}
