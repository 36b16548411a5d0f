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
      notes_add (notes, NOTE_LOOK, piece, _("“%s” in “%s” weighs nothing until “%s” is a surface whose outline encloses an area."), name, within, of);
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
