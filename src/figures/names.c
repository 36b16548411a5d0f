#include "figures/names.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/part-class.h"

static const char *
part_name (const Part *part)
{
  const PartClass *class = part_class_find (part->class_name);

  if (part->name && *part->name)
    return part->name;
  if (class)
    return _(class->name);
  return part->piece.id ? part->piece.id : _("part");
}

static const char *
structure_name (const Structure *structure)
{
  if (structure->piece.id)
    return structure->piece.id;
  return structure->of ? structure->of : _("structure");
}

const char *
piece_name (const Piece *piece)
{
  switch (piece->kind)
    {
    case PIECE_PART:
      return part_name ((const Part *) piece);
    case PIECE_STRUCTURE:
      return structure_name ((const Structure *) piece);
    case PIECE_SURFACE:
      return piece->id ? piece->id : surface_role_name (((const Surface *) piece)->role);
    default:
      return piece->id ? piece->id : _("body");
    }
}
