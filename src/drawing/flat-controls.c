#include "drawing/flat-half.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/hinge.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/wing-depth.h"

static const double words_wide = 50;  /* about how wide the words at a control are, mm */
static const double line = 3.5;       /* from one line of words to the next, mm */
static const double on_centre = 0.5;  /* mm: a control that begins nearer to the centre line than that is not cut off there */

/* Through how much it swings away from the face that is bevelled: a wing's or tail's hinge is at the upper face, so that its lower edge needs
 * air when it goes down; a fin's is in the middle, with half the depth on both sides. Common practice, no source. */
static double
bevelled_swing (const FlatHalf *half, const Control *control)
{
  if (!surface_is_horizontal (half->surface))
    return fmax (control->up, control->down);
  return isfinite (control->down) ? control->down : control->up;
}

/* How far the bevelled edge goes back at an end: the depth there by the tangent of the swing. NAN where no thickness is known. */
static double
bevel_at (const FlatHalf *half, const Control *control, double station)
{
  const double depth = wing_depth (half->surface, station, hinge_x_at (control, station));
  const double share = surface_is_horizontal (half->surface) ? 1 : 0.5;

  return share * depth * tan (bevelled_swing (half, control) * (G_PI / 180));
}

/* One end of a control, cut off from the hinge to the trailing edge. */
static void
add_end (const FlatHalf *half, const Control *control, double station)
{
  const double x = hinge_x_at (control, station);
  double leading, trailing;

  if (fabs (station) >= on_centre && hinge_edges (half->surface, station, &leading, &trailing) && trailing > x)
    flat_add_way (half->piece, half->surface, FLAT_HINGE, (Point) { x, station }, (Point) { trailing, station });
}

/* "up 12°, 11 mm"; NULL where it is not given. */
static char *
throw_words (const FlatHalf *half, const Control *control, bool up)
{
  const double degrees = up ? control->up : control->down;
  g_autofree char *angle = units_angle (degrees);
  g_autofree char *travel = paper_length (half->units, hinge_travel (half->surface, control, degrees));

  if (!isfinite (degrees))
    return NULL;
  /* Translators: how far a control swings: an angle, and a length at its trailing edge */
  if (surface_is_horizontal (half->surface))
    return g_strdup_printf (up ? _("up %s, %s") : _("down %s, %s"), angle, travel);
  return g_strdup_printf (up ? _("to port %s, %s") : _("to starboard %s, %s"), angle, travel);
}

static char *
bevel_words (const FlatHalf *half, const Control *control, double bevel)
{
  const bool fin = !surface_is_horizontal (half->surface);
  g_autofree char *angle = units_angle (bevelled_swing (half, control)), *length = paper_length (half->units, bevel);

  if (!(bevelled_swing (half, control) > 0))
    return g_strdup (fin ? _("bevel both sides") : _("bevel the underside"));
  if (!isfinite (bevel))
    return g_strdup_printf (fin ? _("bevel both sides by %s") : _("bevel the underside by %s"), angle);
  /* Translators: by which angle the hinge edge is bevelled, and how far that goes back where it is deepest */
  return g_strdup_printf (fin ? _("bevel both sides by %s, %s") : _("bevel the underside by %s, %s"), angle, length);
}

/* Where the first line's foot is, and on which side of it the words are: in the control at its inner end; ahead of the hinge where it is
 * narrower than they are high, and in a fin. */
static Point
words_place (const FlatHalf *half, const Control *control, size_t lines, double *across)
{
  const bool fin = !surface_is_horizontal (half->surface), narrow = hinge_chord (half->surface, control, false) < (lines + 0.5) * line;
  const double beside = fmin (control->outer, control->inner + words_wide);      /* the hinge line may run forward there */
  const double x = narrow ? fmin (control->hinge_inner_x, hinge_x_at (control, beside)) : control->hinge_inner_x;
  const Point at = flat_place (half->surface, (Point) { fin ? control->hinge_inner_x : x, control->inner });

  *across = fin ? 1 : 0;
  if (fin)
    return point_add (at, (Point) { -2, -(double) lines * line });
  return point_add (at, (Point) { 3, narrow ? 2 - (double) lines * line : line + 1 });
}

static void
add_words (const FlatHalf *half, const Control *control, double bevel)
{
  g_autofree char *up = throw_words (half, control, true), *down = throw_words (half, control, false), *bevelled = bevel_words (half, control, bevel);
  const char *name = control->id ? control->id : control_kind_name (control->kind);
  /* Translators: a control's name; below it stands how far it swings */
  g_autofree char *measured = g_strdup_printf (_("%s, at the trailing edge"), name);
  const char *words[] = { up || down ? measured : name, up, down, bevelled };
  const size_t lines = 2 + (up != NULL) + (down != NULL);
  FlatWord word = { .purpose = FLAT_HINGE, .caps = caps_small };

  word.at = words_place (half, control, lines, &word.across);
  for (size_t i = 0; i < G_N_ELEMENTS (words); i++)
    if (words[i])
      {
        word.text = (char *) words[i];
        flat_piece_add_word (half->piece, &word);
        word.at.y += line;
      }
}

static void
add_control (const FlatHalf *half, const Control *control)
{
  const Point inner = { control->hinge_inner_x, control->inner }, outer = { control->hinge_outer_x, control->outer };
  const double bevels[] = { bevel_at (half, control, control->inner), bevel_at (half, control, control->outer) };

  flat_add_way (half->piece, half->surface, FLAT_HINGE, inner, outer);
  add_end (half, control, control->inner);
  add_end (half, control, control->outer);
  if (bevels[0] > 0 && bevels[1] > 0)
    flat_add_way (half->piece, half->surface, FLAT_BEVEL, point_add (inner, (Point) { bevels[0], 0 }), point_add (outer, (Point) { bevels[1], 0 }));
  add_words (half, control, fmax (bevels[0], bevels[1]));
}

void
flat_half_add_controls (const FlatHalf *half)
{
  for (size_t i = 0; i < half->surface->control_count; i++)
    if (hinge_check (half->surface, &half->surface->controls[i], NULL) == HINGE_SOUND)
      add_control (half, &half->surface->controls[i]);
}
