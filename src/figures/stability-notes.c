#include "figures/stability.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/notes.h"

/* What usually parts the two methods, the likeliest first. Bounds: common practice, no source, except that the formulas were fitted to
 * aspect ratios of 4 and more. */
typedef enum { APART_SEVERAL_WINGS, APART_CLOSE_TAIL, APART_LOW_ASPECT_RATIO, APART_SWEEP, APART_DOWNWASH } Apart;

static bool
has_several_wings (const Figures *figures)
{
  size_t wings = 0;

  for (size_t i = 0; i < figures->surface_count; i++)
    wings += figures->surfaces[i].surface->role == ROLE_WING;
  return wings > 1;
}

static bool
has_close_tail (const Figures *figures)
{
  const double close = 2 * figures->reference->planform.mac;

  for (size_t i = 0; i < figures->surface_count; i++)
    {
      const SurfaceFigures *surface = &figures->surfaces[i];

      if (surface->surface->role != ROLE_FIN && surface != figures->reference && fabs (surface->tail_arm_mm) < close)
        return true;
    }
  return false;
}

/* How far the quarter of the MAC stands behind the root's, over the MAC's station: the mean sweep's tangent. */
static bool
is_swept (const SurfaceFigures *wing)
{
  const double least_tangent = 0.27;            /* 15 degrees */
  StationCut root;

  if (planform_cut (wing->surface->outline, PLANFORM_CARRIED, 0, &root) != CORE_OK)
    return false;
  return fabs (wing->quarter_mac_x_mm - root.leading_x - root.chord / 4) > least_tangent * wing->planform.mac_station;
}

static Apart
apart_by (const Figures *figures)
{
  if (has_several_wings (figures))
    return APART_SEVERAL_WINGS;
  if (has_close_tail (figures))
    return APART_CLOSE_TAIL;
  if (figures->reference->planform.aspect_ratio < 4)
    return APART_LOW_ASPECT_RATIO;
  return is_swept (figures->reference) ? APART_SWEEP : APART_DOWNWASH;
}

static const char *
apart_sentence (Apart apart)
{
  static const char *const sentences[] = {
    [APART_SEVERAL_WINGS]    = N_("The handbook does not know what wings near each other take from one another; stay at the forward limit."),
    [APART_CLOSE_TAIL]       = N_("The handbook's downwash does not hold for a tail this close to the wing; stay at the forward limit."),
    [APART_LOW_ASPECT_RATIO] = N_("The handbook's formulas are for wings of more span for their chord; stay at the forward limit."),
    [APART_SWEEP]            = N_("The handbook takes a quarter of the mean chord for a swept wing's centre of lift; stay at the forward limit."),
    [APART_DOWNWASH]         = N_("The handbook's downwash does not know how high and how wide this tail is; stay at the forward limit."),
  };

  return _(sentences[apart]);
}

static void
note_methods (const Figures *figures, GPtrArray *notes)
{
  const NeutralPointFigures *point = &figures->neutral_point;
  const double apart = fabs (point->x_mm - point->handbook_x_mm);

  if (!isfinite (point->handbook_x_mm))
    notes_add (notes, NOTE_NOTE, NULL, _("The handbook's formulas do not hold for this planform: the lattice stands alone."));
  else if (apart > point->sigma_mm)
    /* TRANSLATORS: two sentences; the second says what usually causes it */
    notes_add (notes, NOTE_LOOK, NULL, _("The two methods put the neutral point %.0f %% of the mean chord apart, more than the deviation "
                                         "shown. %s"), 100 * apart / figures->reference->planform.mac, apart_sentence (apart_by (figures)));
}

void
stability_note (const Figures *figures, GPtrArray *notes)
{
  const NeutralPointFigures *point = &figures->neutral_point;
  guint from = notes->len;

  if (point->status != CORE_OK)
    return;
  note_methods (figures, notes);
  notes_explain (notes, from, EXPLAIN_HANDBOOK);
  from = notes->len;
  if (point->propeller_to_mm != 0)
    notes_add (notes, NOTE_NOTE, NULL,
               point->propeller_to_mm < 0
                 ? _("The propeller shifts the neutral point too, forward by %.0f to %.0f %% of the mean chord without power and at full power; "
                     "this is held in the deviation, not in the figure.")
                 : _("The propeller shifts the neutral point too, aft by %.0f to %.0f %% of the mean chord without power and at full power; "
                     "this is held in the deviation, not in the figure."),
               100 * fabs (point->propeller_from_mm) / figures->reference->planform.mac,
               100 * fabs (point->propeller_to_mm) / figures->reference->planform.mac);
  notes_explain (notes, from, EXPLAIN_PROPELLER);
}
