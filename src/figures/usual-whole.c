#include "figures/usual-whole.h"

#include <math.h>
#include "document/changes.h"
#include "figures/advice-state.h"
#include "figures/lead-need.h"
#include "figures/unweighed.h"
#include "figures/usual-lines.h"

static const PieceKind drawn[] = { PIECE_SURFACE, PIECE_BODY };

/* Takes the aeroplane; what has no lines of its own to lay down stays as it is. */
static Aeroplane *
with_lines (Aeroplane *takes, const char *of, bool *laid)
{
  Aeroplane *next = of ? usual_lines_laid (takes, of) : NULL;

  if (!next)
    return takes;
  *laid = true;
  aeroplane_unref (takes);
  return next;
}

Aeroplane *
usual_airframe (const Aeroplane *aeroplane)
{
  Aeroplane *made = aeroplane_ref (aeroplane);
  bool laid = false;

  if (!(aeroplane_traits (aeroplane).airframe > 0))
    for (size_t k = 0; k < G_N_ELEMENTS (drawn); k++)
      for (size_t i = 0; i < aeroplane_count (aeroplane, drawn[k]); i++)
        {
          const Piece *piece = aeroplane_nth (aeroplane, drawn[k], i);

          if (piece_is_unweighed (aeroplane, piece))
            made = with_lines (made, piece->id, &laid);
        }
  if (!laid)
    g_clear_pointer (&made, aeroplane_unref);
  return made;
}

/* Takes the aeroplane. */
static Aeroplane *
with_moved (Aeroplane *takes, const Part *part, double dx)
{
  Aeroplane *next = change_part_place (takes, part->piece.id, part->x + dx, part->y, part->z);

  if (!next)
    return takes;
  aeroplane_unref (takes);
  return next;
}

/* The part and all that is in its group. Takes the aeroplane; the part may be of another one. */
static Aeroplane *
with_group_moved (Aeroplane *takes, const Part *part, double dx)
{
  Aeroplane *made = takes;

  if (!part->group)
    return with_moved (made, part, dx);
  for (size_t i = 0; i < aeroplane_count (made, PIECE_PART); i++)
    if (g_strcmp0 (aeroplane_part (made, i)->group, part->group) == 0 && aeroplane_part (made, i)->piece.id)
      made = with_moved (made, aeroplane_part (made, i), dx);
  return made;
}

/* The solution is the part's alone: what goes along with it weighs less, so that a few steps leave nothing. */
Aeroplane *
part_at_advice (const Figures *figures, const Solution *solution)
{
  enum { STEPS = 4 };
  FiguresCache *cache;
  Aeroplane *made;

  if (!solution || isnan (solution->x_mm))
    return NULL;
  const char *id = solution->part->piece.id;
  cache = figures_cache_new ();
  made = with_group_moved (aeroplane_ref (figures->aeroplane), solution->part, advice_place_x_mm (solution) - solution->part->x);
  for (int step = 1; step < STEPS && solution->part->group; step++)
    {
      g_autoptr (Figures) now = figures_of (cache, made);
      const Solution *again = figures_solution (now, id);

      if (again && isfinite (again->x_mm))
        made = with_group_moved (made, again->part, advice_place_x_mm (again) - again->part->x);
    }
  figures_cache_free (cache);
  return made;
}

/* Made longer in whole centimetres, as the fit makes them: where the battery went away from what it feeds. Takes the aeroplane. */
static Aeroplane *
with_longer_leads (Aeroplane *takes, const char *id)
{
  Aeroplane *made = takes;

  for (size_t i = 0; i < aeroplane_count (made, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (made, i);
      const LeadNeed need = lead_need_of (made, lead, LEG_FROM);

      if (lead_is_joined (lead) || !(need.missing > 0) || (g_strcmp0 (lead->from, id) != 0 && g_strcmp0 (lead->to, id) != 0))
        continue;
      Lead *longer = (Lead *) piece_dup (&lead->piece);
      longer->length = 10 * ceil (need.needed / 10);
      Aeroplane *next = aeroplane_with_replaced (made, &lead->piece, &longer->piece);
      aeroplane_unref (made);
      made = next;
    }
  return made;
}

/* Takes the aeroplane. */
static Aeroplane *
balanced (Aeroplane *takes)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Figures) figures = figures_of (cache, takes);
  const AdviceMeans means = advice_means_of (figures);
  Aeroplane *moved = part_at_advice (figures, means.solution);

  figures_cache_free (cache);
  if (!moved)
    return takes;
  aeroplane_unref (takes);
  return with_longer_leads (moved, means.solution->part->piece.id);
}

Aeroplane *
usual_airframe_beneath (const Aeroplane *aeroplane)
{
  Aeroplane *built = usual_airframe (aeroplane);

  return built ? balanced (built) : NULL;
}

Aeroplane *
usual_fit_whole (const Aeroplane *aeroplane, const Catalogue *catalogue, UsualFit choice, bool airframe)
{
  g_autoptr (Aeroplane) built = airframe ? usual_airframe (aeroplane) : NULL;
  Aeroplane *made = usual_fit (built ? built : aeroplane, catalogue, choice, false);

  return airframe_is_weighed (made) ? balanced (made) : made;
}
