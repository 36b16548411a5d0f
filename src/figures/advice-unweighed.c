#include "figures/advice-sentence.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/names.h"
#include "figures/unweighed.h"

/* Of one thing that has no mass: what to do about it, and the bare fact. */
static const struct { const char *sentence, *fact; } of_role[ROLE_COUNT] = {
  [ROLE_WING]      = { N_("The wing has no mass yet: type what it weighs."), N_("The wing has no mass yet.") },
  [ROLE_TAILPLANE] = { N_("The tailplane has no mass yet: type what it weighs."), N_("The tailplane has no mass yet.") },
  [ROLE_FOREPLANE] = { N_("The foreplane has no mass yet: type what it weighs."), N_("The foreplane has no mass yet.") },
  [ROLE_FIN]       = { N_("The fin has no mass yet: type what it weighs."), N_("The fin has no mass yet.") },
};

/* Whether it needs no name: the only body, the only wing. */
static bool
is_the_only_one (const Aeroplane *aeroplane, const Piece *piece)
{
  size_t alike = 0;

  if (piece->kind == PIECE_BODY)
    return aeroplane_count (aeroplane, PIECE_BODY) == 1;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    alike += aeroplane_surface (aeroplane, i)->role == ((const Surface *) piece)->role;
  return alike == 1;
}

static char *
sentence_of_one (const Aeroplane *aeroplane, const Piece *piece)
{
  if (!is_the_only_one (aeroplane, piece))
    return g_strdup_printf (_("“%s” has no mass yet: type what it weighs."), piece_name (piece));
  if (piece->kind == PIECE_BODY)
    return g_strdup (_("The body has no mass yet: type what it weighs."));
  return g_strdup (_(of_role[((const Surface *) piece)->role].sentence));
}

static char *
fact_of_one (const Aeroplane *aeroplane, const Piece *piece)
{
  if (!is_the_only_one (aeroplane, piece))
    return g_strdup_printf (_("“%s” has no mass yet."), piece_name (piece));
  if (piece->kind == PIECE_BODY)
    return g_strdup (_("The body has no mass yet."));
  return g_strdup (_(of_role[((const Surface *) piece)->role].fact));
}

/* Three fit the line; of more the first two stand for all. */
char *
advice_unweighed_sentence (const Aeroplane *aeroplane)
{
  const Piece *pieces[3];
  const size_t count = unweighed_pieces (aeroplane, pieces, G_N_ELEMENTS (pieces));

  g_return_val_if_fail (count > 0, g_strdup (""));
  if (count == 1)
    return sentence_of_one (aeroplane, pieces[0]);
  g_autofree char *first = piece_thing (aeroplane, pieces[0]), *second = piece_thing (aeroplane, pieces[1]);
  if (count == 2)
    return g_strdup_printf (_("Type what %s and %s weigh: they have no mass yet."), first, second);
  if (count > G_N_ELEMENTS (pieces))
    return g_strdup_printf (_("Type what %s, %s and the others weigh: they have no mass yet."), first, second);
  g_autofree char *third = piece_thing (aeroplane, pieces[2]);
  return g_strdup_printf (_("Type what %s, %s and %s weigh: they have no mass yet."), first, second, third);
}

char *
advice_weightless_sentence (const Part *part)
{
  if (part_is_battery (part))
    return g_strdup (_("The battery weighs nothing, so moving it balances nothing. Type its mass."));
  return g_strdup_printf (_("“%s” weighs nothing, so moving it balances nothing. Type its mass."), piece_name (&part->piece));
}

char *
advice_missing_mass (const Figures *figures)
{
  const Piece *first;
  const Part *part = weightless_slider (figures);
  const size_t count = unweighed_pieces (figures->aeroplane, &first, 1);

  if (!airframe_is_weighed (figures->aeroplane))
    return g_strdup (_("The airframe has no mass yet."));
  if (count == 1)
    return fact_of_one (figures->aeroplane, first);
  if (count > 1)
    return g_strdup (_("Some of what is drawn has no mass yet."));
  if (!part)
    return NULL;
  if (part_is_battery (part))
    return g_strdup (_("The battery weighs nothing."));
  return g_strdup_printf (_("“%s” weighs nothing."), piece_name (&part->piece));
}
