#include "trammel-config.h"
#include "drawing/wall-sheet-notes.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "drawing/wall-sheet-battery.h"
#include "figures/cautions.h"
#include "figures/names.h"
#include "figures/report-hatch.h"
#include "figures/unweighed.h"

enum { FINDINGS = 5 };      /* at most: what is gravest stands first */

/* On paper nothing can be typed or looked at: what the window asks for is said as it is. */
static char *
paper_finding (const Note *note, Units units)
{
  const char *name = note->piece != NULL ? piece_name (note->piece) : "";
  g_autofree char *off = note->passed != NULL ? units_length_known (units, note->passed->by) : NULL;
  g_autofree char *asked = g_strdup_printf (_("“%s” has no mass yet: type what it weighs, under Structure."), name);

  if (off != NULL)
    return g_strdup_printf (_("The outline of “%s” may be of another line: it passes a click on the plan by %s."), name, off);
  return strcmp (note->text, asked) == 0 ? g_strdup_printf (_("“%s” is not weighed yet."), name) : g_strdup (note->text);
}

static void
add_findings (GPtrArray *lines, const Figures *figures, Units units)
{
  for (guint i = 0, taken = 0; i < figures->notes->len && taken < FINDINGS; i++)
    {
      const Note *note = g_ptr_array_index (figures->notes, i);

      if (note->severity == NOTE_NOTE)
        continue;
      g_ptr_array_add (lines, paper_finding (note, units));
      taken++;
    }
}

static bool
has_anything (const Aeroplane *aeroplane, PieceKind kind)
{
  return aeroplane_count (aeroplane, kind) > 0;
}

static bool
has_side_outline (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->side_outline != NULL)
      return true;
  return false;
}

/* What a finished drawing would have besides. */
static void
add_missing (GPtrArray *lines, const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  const bool has_mass = figures->mass.total_g > 0;      /* without any, a finding says so */

  if (!has_anything (aeroplane, PIECE_BODY))
    g_ptr_array_add (lines, g_strdup (_("No body is drawn yet.")));
  else if (!has_side_outline (aeroplane))
    g_ptr_array_add (lines, g_strdup (_("The body's side outline is not drawn yet.")));
  if (has_mass && !has_anything (aeroplane, PIECE_PART))
    g_ptr_array_add (lines, g_strdup (_("No parts are placed yet.")));
  if (has_mass && !airframe_is_weighed (aeroplane))
    g_ptr_array_add (lines, g_strdup (_("The structure has no mass yet.")));
}

static void
add_rigging (GPtrArray *lines, const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  g_autofree char *dihedral = NULL, *incidence = NULL, *washout = NULL;

  if (wing == NULL)
    return;
  dihedral = units_angle (wing->dihedral);
  incidence = units_angle (wing->incidence);
  washout = units_angle (wing->washout);
  /* Translators: three angles, "Dihedral 4° each side, incidence of the wing 2°, washout 1°." */
  g_ptr_array_add (lines, g_strdup_printf (_("Dihedral %s each side, incidence of the wing %s, washout %s."), dihedral, incidence, washout));
}

char **
wall_notes_of (const WallSheet *sheet)
{
  GPtrArray *lines = g_ptr_array_new ();
  BatteryWords battery = battery_words_of (sheet);

  add_findings (lines, sheet->figures, sheet->units);
  add_missing (lines, sheet->figures);
  if (battery.note != NULL)
    g_ptr_array_add (lines, g_strdup (battery.note));
  battery_words_clear (&battery);
  if (sheet->figures->hatch.part != NULL)
    g_ptr_array_add (lines, hatch_place_text (sheet->figures));
  add_rigging (lines, sheet->figures->aeroplane);
  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    g_ptr_array_add (lines, g_strdup (cautions_sentence (i)));
  g_ptr_array_add (lines, NULL);
  return (char **) g_ptr_array_free (lines, FALSE);
}

void
wall_notes_draw (const SheetPen *pen, char *const notes[], Point at, double width)
{
  const double pitch = 1.75 * caps_small, indent = 5.5;
  double y = at.y + caps_figure;

  pen_write (pen, (Script) { { at.x, y }, caps_figure, 0 }, _("Notes"));
  y += 1;
  for (size_t i = 0; notes[i] != NULL; i++)
    {
      g_auto (GStrv) lines = pen_wrapped (pen, caps_small, width - indent, notes[i]);
      g_autofree char *number = g_strdup_printf ("%d", (int) i + 1);

      y += 0.6;
      for (size_t j = 0; lines[j] != NULL; j++)
        {
          y += pitch;
          if (j == 0)
            pen_write (pen, (Script) { { at.x, y }, caps_small, 0 }, number);
          pen_write (pen, (Script) { { at.x + indent, y }, caps_small, 0 }, lines[j]);
        }
    }
}
