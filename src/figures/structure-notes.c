#include "figures/structure-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/notes.h"

/* What is missing, for a line that goes by what is traced. */
static void
note_item (const Structure *structure, const StructureItem *item, GPtrArray *notes)
{
  const char *name = structure_item_name (item), *within = piece_name (&structure->piece), *of = structure->of;
  const Piece *piece = &structure->piece;

  switch (of ? item->of : TRACED_NONE)
    {
    case TRACED_NONE:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing: give it a size, or what it weighs."), name, within);
      break;
    case TRACED_RIBS:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until the ribs of “%s” have their stations."), name, within, of);
      break;
    case TRACED_FORMERS:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until “%s” has formers within its outline."), name, within, of);
      break;
    case TRACED_LENGTH:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until “%s” is a body whose outline is traced."), name, within, of);
      break;
    case TRACED_SPAN:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until “%s” is a surface whose outline encloses an area."), name,
                 within, of);
      break;
    default:
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until the outline of “%s” encloses an area."), name, within, of);
      break;
    }
}

void
structure_note (const StructureFigures *figures, GPtrArray *notes)
{
  if (!isnan (figures->structure->mass))      /* the scale has the word */
    return;
  for (size_t i = 0; figures->items_g && i < figures->structure->item_count; i++)
    if (isnan (g_array_index (figures->items_g, double, i)))
      note_item (figures->structure, &figures->structure->items[i], notes);
}

/* A weighed sheet, and what it is in. */
typedef struct { double density; const Structure *structure; } Sheet;

/* A tailplane or a fin: far behind the balance point, where each gram asks two to four in the nose. */
static bool
is_tail (const Aeroplane *aeroplane, const Structure *structure)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, structure->of);

  return surface && (surface->role == ROLE_TAILPLANE || surface->role == ROLE_FIN);
}

static void
meet_sheets (const Structure *structure, bool tail, Sheet *lightest, Sheet *heaviest_behind)
{
  for (size_t i = 0; i < structure->item_count; i++)
    {
      const StructureItem *item = &structure->items[i];

      if (!item->density_weighed || !isnan (item->weighed))
        continue;
      const Sheet sheet = { structure_item_density (item), structure };
      if (isnan (sheet.density))
        continue;
      if (tail && (!heaviest_behind->structure || sheet.density > heaviest_behind->density))
        *heaviest_behind = sheet;
      else if (!tail && (!lightest->structure || sheet.density < lightest->density))
        *lightest = sheet;
    }
}

void
structure_note_sheets (const Aeroplane *aeroplane, GPtrArray *notes)
{
  const double differ = 1.1;      /* less is not worth a change */
  Sheet lightest = { 0 }, behind = { 0 };

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    meet_sheets (aeroplane_structure (aeroplane, i), is_tail (aeroplane, aeroplane_structure (aeroplane, i)), &lightest, &behind);
  if (lightest.structure && behind.structure && behind.density > differ * lightest.density)
    notes_add (notes, NOTE_LOOK, &behind.structure->piece,
               _("The lightest sheet belongs in the tail: “%s” has one of %.0f kg/m³ while “%s” has one of %.0f. Exchange them; a gram "
                 "saved behind saves two to four in the nose."),
               piece_name (&behind.structure->piece), behind.density, piece_name (&lightest.structure->piece), lightest.density);
}
