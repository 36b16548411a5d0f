#include "trammel-config.h"
#include "app/brought-words.h"
#include <glib/gi18n-lib.h>

/* mm: chords that differ by less are the same */
static const double SAME = 0.05;

char *
brought_words_line (const Brought *brought, size_t line, const Offer *offer, Units units)
{
  g_autofree char *across = units_length_figure (units, offer->across), *along = units_length (units, offer->along);
  const char *name = brought->lines[line].name;

  if (name == NULL)
    /* Translators: the how-manieth of how many lines, and its size: "2 of 5: 640 × 130 mm". */
    return g_strdup_printf (_("%zu of %zu: %s × %s"), line + 1, brought->count, across, along);
  /* Translators: the how-manieth of how many lines, its name, and its size: "2 of 5: CUT, 640 × 130 mm". */
  return g_strdup_printf (_("%zu of %zu: %s, %s × %s"), line + 1, brought->count, name, across, along);
}

static char *
words_drawn (const Offer *offer, Units units)
{
  g_autofree char *apart = NULL;

  if (offer->drawn == HALF_DRAWN_WITH_ROOT)
    return g_strdup (_("One half is drawn, closed along its root."));
  if (offer->drawn == HALF_DRAWN_OPEN)
    return g_strdup (_("One half is drawn, open at its root."));
  if (!(offer->asymmetry > SAME))
    return g_strdup (_("Both halves are drawn, and are the same."));
  apart = g_strdup_printf (units.length == LENGTH_INCH ? _("%.3f in") : _("%.1f mm"),
                           units.length == LENGTH_INCH ? offer->asymmetry / 25.4 : offer->asymmetry);
  /* Translators: %s is a length with its unit. */
  return g_strdup_printf (_("Both halves are drawn, and their chords differ by up to %s: the right one is taken."), apart);
}

static const char *
words_fault (OfferStatus status)
{
  switch (status) {
  case OFFER_OPEN:      return _("This line does not close: turn it, or take the next line.");
  case OFFER_NO_ROOT:   return _("This line is neither the same on both sides nor straight along a root: turn it, or take the next line.");
  case OFFER_CROSSES:   return _("This line crosses itself: take the next line.");
  case OFFER_TOO_LARGE: return _("This line is longer than 10 m or in more than 20,000 pieces: look at its unit, or take the next line.");
  default:              return _("This line encloses nothing: take the next line.");
  }
}

char *
brought_words_note (const OfferChoice *choice, const Offer *offer, Units units)
{
  g_autofree char *drawn = NULL;

  if (offer->status != OFFER_FITS)
    return g_strdup (words_fault (offer->status));
  drawn = choice->shows == VIEW_BODY_SIDE ? g_strdup (_("Its nose is where the line begins at the left: mirror it where the tail does."))
                                          : words_drawn (offer, units);
  /* Translators: %s is one sentence. */
  return offer->replaces ? g_strdup_printf (_("%s It takes the place of the outline that is there."), drawn) : g_steal_pointer (&drawn);
}

char *
brought_words_left_out (const Brought *brought)
{
  if (brought->left_out == 0)
    return NULL;
  /* Translators: %zu is how many things of a drawing that was brought in are no lines. */
  return g_strdup_printf (ngettext ("%zu thing in the file is no line, such as text, a picture or hatching, and was left out.",
                                    "%zu things in the file are no lines, such as text, pictures or hatching, and were left out.",
                                    brought->left_out), brought->left_out);
}

bool
brought_words_asks_for_half (const OfferChoice *choice, const Offer *offer)
{
  return choice->half_only || (offer->next != NULL && choice->shows <= VIEW_FOREPLANE && offer->drawn == HALF_DRAWN_WHOLE);
}
