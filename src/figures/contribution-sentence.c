#include "figures/contribution-sentence.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/names.h"

/* Shares of the variance from which on something is "most", "about half" and worth naming besides. */
static const double most = 0.6, half = 0.35, worth_naming = 0.12;

/* What can be done about a share. */
typedef enum { REMEDY_NONE, REMEDY_WEIGH, REMEDY_MEASURE } Remedy;

static Remedy
remedy_for (ContributionKind kind)
{
  return kind == CONTRIBUTION_MASS ? REMEDY_WEIGH : kind == CONTRIBUTION_PLACE || kind == CONTRIBUTION_OUTLINE ? REMEDY_MEASURE : REMEDY_NONE;
}

/* A share as a thing in a sentence; where it has a piece, “%s” is a thing itself: "the mass of the battery". */
static const char *const shares[] = {
  [CONTRIBUTION_SECTION]   = NC_("owed to", "the section of %s"),
  [CONTRIBUTION_PRESSURE]  = NC_("owed to", "the speed of the air at %s"),
  [CONTRIBUTION_DOWNWASH]  = NC_("owed to", "the downwash at %s"),
  [CONTRIBUTION_BODY]      = NC_("owed to", "the shift by the body"),
  [CONTRIBUTION_PROPELLER] = NC_("owed to", "the propeller"),
  [CONTRIBUTION_METHODS]   = NC_("owed to", "the difference of the two methods"),
  [CONTRIBUTION_REST]      = NC_("owed to", "what no method knows (gaps, thick edges, warped wood)"),
  [CONTRIBUTION_MASS]      = NC_("owed to", "the mass of %s"),
  [CONTRIBUTION_PLACE]     = NC_("owed to", "the place of %s"),
  [CONTRIBUTION_SHAPE]     = NC_("owed to", "how the mass of %s is spread"),
  [CONTRIBUTION_LATTICE]   = NC_("owed to", "the panels of the lattice"),
  [CONTRIBUTION_OUTLINE]   = NC_("owed to", "the outline of %s"),
  [CONTRIBUTION_GREATEST_LIFT] = NC_("owed to", "the greatest lift coefficient"),
  [CONTRIBUTION_BALANCE_POINT] = NC_("owed to", "where it balances"),
};

char *
contribution_text (const Contribution *share, const Aeroplane *aeroplane)
{
  g_auto (GStrv) around = g_strsplit (g_dpgettext2 (GETTEXT_PACKAGE, "owed to", shares[share->kind]), "%s", 2);
  g_autofree char *thing = share->piece ? piece_thing (aeroplane, share->piece) : g_strdup ("");

  return g_strjoinv (thing, around);
}

static const char *
sentence_of_most (Remedy remedy)
{
  switch (remedy)
    {
    case REMEDY_WEIGH:
      /* TRANSLATORS: what a deviation is owed to, e.g. "the mass of the body" */
      return _("Most of it is %s: weigh it.");
    case REMEDY_MEASURE:
      return _("Most of it is %s: measure it.");
    default:
      return _("Most of it is %s.");
    }
}

static const char *
sentence_of_half (Remedy remedy)
{
  switch (remedy)
    {
    case REMEDY_WEIGH:
      return _("About half of it is %s: weigh it.");
    case REMEDY_MEASURE:
      return _("About half of it is %s: measure it.");
    default:
      return _("About half of it is %s.");
    }
}

/* The sentences above hold one “%s”, whatever the language. */
static char *
filled (const char *sentence, const char *share)
{
  g_auto (GStrv) around = g_strsplit (sentence, "%s", 2);

  return g_strjoinv (share, around);
}

static char *
with_next (char *takes, const char *next)
{
  g_autofree char *sentence = takes, *second = g_strdup_printf (_("Next comes %s."), next);

  /* TRANSLATORS: one whole sentence after another */
  return g_strdup_printf (_("%s %s"), sentence, second);
}

char *
contributions_sentence (const Contributions *owed, const Aeroplane *aeroplane)
{
  double part[2] = { 0, 0 };
  char *text[2] = { NULL, NULL }, *made = NULL;

  for (size_t i = 0; i < MIN (owed->count, G_N_ELEMENTS (part)); i++)
    {
      part[i] = owed->of[i].sigma * owed->of[i].sigma / owed->variance;
      text[i] = contribution_text (&owed->of[i], aeroplane);
    }
  if (part[0] >= half)
    {
      const Remedy remedy = remedy_for (owed->of[0].kind);

      made = filled (part[0] >= most ? sentence_of_most (remedy) : sentence_of_half (remedy), text[0]);
      if (part[1] >= worth_naming)
        made = with_next (made, text[1]);
    }
  else if (owed->count > 1)
    made = g_strdup_printf (_("It is shared by many; the greatest shares are %s and %s."), text[0], text[1]);
  g_free (text[0]);
  g_free (text[1]);
  return made;
}
