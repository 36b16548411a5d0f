#include "app/piece-edit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"
#include "document/part-class.h"
#include "figures/names.h"
#include "figures/servo-fittings.h"

static Aeroplane *
piece_edit_without_mark (const Aeroplane *aeroplane, size_t mark)
{
  return mark < aeroplane_count (aeroplane, PIECE_MARK) ? aeroplane_without (aeroplane, &aeroplane_mark (aeroplane, mark)->piece) : NULL;
}

Aeroplane *
piece_edit_removed (const Aeroplane *aeroplane, const Selection *selection)
{
  Aeroplane *left = NULL;

  if (selection->mark >= 0)
    return piece_edit_without_mark (aeroplane, (size_t) selection->mark);
  if (selection->control != NULL)
    return change_control_removed (aeroplane, selection->ids[0], selection->control);
  for (char **id = selection->ids; id != NULL && *id != NULL; id++) {
    const Aeroplane *before = left != NULL ? left : aeroplane;
    const Piece *piece = aeroplane_find (before, *id);
    Aeroplane *next = piece == NULL ? NULL : piece->kind == PIECE_PLAN ? change_plan_removed (before, *id)
                      : piece->kind == PIECE_BAY ? change_bay_removed (before, *id)
                      : aeroplane_without_dependents (before, piece);

    if (next == NULL)
      continue;
    aeroplane_unref (left);
    left = next;
  }
  return left;
}

Selection
piece_edit_with_fittings (const Aeroplane *aeroplane, const Selection *selection)
{
  Selection all = selection_copy (selection);

  for (char **id = selection->ids; selection->control == NULL && id != NULL && *id != NULL; id++) {
    const Part *part = aeroplane_part_by_id (aeroplane, *id);
    g_autoptr (GPtrArray) fittings = part != NULL ? servo_fittings (aeroplane, part) : g_ptr_array_new ();

    for (guint i = 0; i < fittings->len; i++) {
      const Part *fitting = g_ptr_array_index (fittings, i);

      if (fitting->piece.id != NULL && !selection_has (&all, fitting->piece.id))
        selection_toggle (&all, fitting->piece.id);
    }
  }
  return all;
}

const char *
piece_edit_name (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const PartClass *class = part != NULL ? part_class_find (part->class_name) : NULL;

  if (part != NULL && part->name != NULL)
    return part->name;
  if (class != NULL)
    return g_dgettext (GETTEXT_PACKAGE, class->name);
  if (part != NULL)
    return _("Part");
  if (aeroplane_lead_by_id (aeroplane, id) != NULL)
    return piece_name (aeroplane_find (aeroplane, id));
  if (aeroplane_plan_by_id (aeroplane, id) != NULL)
    return _("Plan");
  if (aeroplane_find (aeroplane, id) != NULL && aeroplane_find (aeroplane, id)->kind == PIECE_BAY)
    return _("Bay");
  return surface != NULL ? surface_role_name (surface->role) : _("Body");
}

char *
piece_edit_removed_label (const Aeroplane *aeroplane, const Selection *selection)
{
  if (selection->mark >= 0)
    return g_strdup (_("Delete Balance Mark"));
  if (selection->control != NULL)
    return g_strdup (_("Delete Hinge Line"));
  if (selection_single (selection) == NULL)
    return g_strdup (_("Delete Several"));
  /* Translators: %s is the name of a part, or what a surface is: "Delete Battery", "Delete Wing". */
  return g_strdup_printf (_("Delete %s"), piece_edit_name (aeroplane, selection_single (selection)));
}

Aeroplane *
piece_edit_rail_added (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);
  const double reach = 30;   /* mm each way: what a pack usually slides. Common practice, no source */

  return part != NULL ? change_part_rail (aeroplane, id, part->x - reach, part->x + reach) : NULL;
}

Aeroplane *
piece_edit_rail_removed (const Aeroplane *aeroplane, const char *id)
{
  const Part *old = aeroplane_part_by_id (aeroplane, id);
  Part *part;

  if (old == NULL || !old->has_rail)
    return NULL;
  part = (Part *) piece_dup (&old->piece);
  part->has_rail = false;
  part->rail_from = part->rail_to = 0;
  return aeroplane_with_replaced (aeroplane, &old->piece, &part->piece);
}
