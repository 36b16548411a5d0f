#include "figures/cautions.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const char *const sentences[] = {
  N_("The figures are estimates. Check the balance on the bench before every first flight, and begin at the forward limit."),
  N_("Keep clear of propellers; take the propeller off for bench work."),
  N_("Charge and store lithium batteries as their makers say."),
  N_("Blades, adhesives, dust and heating irons hurt."),
  N_("Fly where and how local rules and the flying field allow."),
};

const char *
cautions_sentence (size_t index)
{
  return index < G_N_ELEMENTS (sentences) ? _(sentences[index]) : NULL;
}
