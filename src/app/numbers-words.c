#include "trammel-config.h"
#include "app/numbers-words.h"
#include <glib/gi18n-lib.h>

static const char *const labels[NUMBER_COUNT] = {
  [NUMBER_AREA]          = N_("Area"),
  [NUMBER_SPAN]          = N_("Span"),
  [NUMBER_ARM]           = N_("Arm, from the wing's quarter chord"),
  [NUMBER_AHEAD]         = N_("Ahead of the widest line"),
  [NUMBER_BEHIND]        = N_("Behind the widest line"),
  [NUMBER_ROOT_CHORD]    = N_("Root chord"),
  [NUMBER_TIP_CHORD]     = N_("Tip chord"),
  [NUMBER_TIP_BACK]      = N_("Tip swept back by"),
  [NUMBER_CRANK_STATION] = N_("Crank at station"),
  [NUMBER_CRANK_CHORD]   = N_("Chord at the crank"),
  [NUMBER_CRANK_BACK]    = N_("Crank swept back by"),
  [NUMBER_LENGTH]        = N_("Length"),
  [NUMBER_WIDTH]         = N_("Greatest width"),
  [NUMBER_HEIGHT]        = N_("Greatest height"),
  [NUMBER_ROOT_X]        = N_("Front, aft of datum"),
};

const char *
numbers_label (NumbersThing thing, Number number)
{
  return number == NUMBER_SPAN && thing == NUMBERS_FIN ? _("Height") : _(labels[number]);
}

char *
numbers_fault (NumbersThing thing, Number number, const double values[NUMBER_COUNT])
{
  if (number == NUMBER_COUNT)
    return g_strdup (_("These numbers enclose nothing: a crank lies inside the tip."));
  if (number == NUMBER_AHEAD && values[number] == 0)
    /* Translators: the labels of two numbers. */
    return g_strdup_printf (_("“%s” and “%s” cannot both be zero."), numbers_label (thing, NUMBER_AHEAD), numbers_label (thing, NUMBER_BEHIND));
  /* Translators: the label of a number, such as "Span". */
  return g_strdup_printf (values[number] < 0 ? _("“%s” cannot be below zero.") : _("“%s” must be above zero."), numbers_label (thing, number));
}
