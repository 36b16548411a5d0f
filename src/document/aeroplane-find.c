#include "document/aeroplane.h"

static const Piece *
find_of_kind (const Aeroplane *self, const char *id, PieceKind kind)
{
  const Piece *piece = aeroplane_find (self, id);

  return piece && piece->kind == kind ? piece : NULL;
}

const Surface *
aeroplane_surface_by_id (const Aeroplane *self, const char *id)
{
  return (const Surface *) find_of_kind (self, id, PIECE_SURFACE);
}

const Body *
aeroplane_body_by_id (const Aeroplane *self, const char *id)
{
  return (const Body *) find_of_kind (self, id, PIECE_BODY);
}

const Structure *
aeroplane_structure_by_id (const Aeroplane *self, const char *id)
{
  return (const Structure *) find_of_kind (self, id, PIECE_STRUCTURE);
}

const Structure *
aeroplane_structure_of (const Aeroplane *self, const char *id)
{
  for (size_t i = 0; i < aeroplane_count (self, PIECE_STRUCTURE); i++)
    if (id && g_strcmp0 (aeroplane_structure (self, i)->of, id) == 0)
      return aeroplane_structure (self, i);
  return NULL;
}

const Part *
aeroplane_part_by_id (const Aeroplane *self, const char *id)
{
  return (const Part *) find_of_kind (self, id, PIECE_PART);
}

const Surface *
aeroplane_reference_wing (const Aeroplane *self)
{
  const size_t count = aeroplane_count (self, PIECE_SURFACE);

  for (size_t i = 0; i < count; i++)
    if (aeroplane_surface (self, i)->role == ROLE_WING)
      return aeroplane_surface (self, i);
  return NULL;
}

const Plan *
aeroplane_plan_by_id (const Aeroplane *self, const char *id)
{
  return (const Plan *) find_of_kind (self, id, PIECE_PLAN);
}

const Lead *
aeroplane_lead_by_id (const Aeroplane *self, const char *id)
{
  return (const Lead *) find_of_kind (self, id, PIECE_LEAD);
}

const PlanView *
aeroplane_view_by_id (const Aeroplane *self, const char *id, const Plan **plan)
{
  const size_t count = aeroplane_count (self, PIECE_PLAN);

  for (size_t i = 0; id && i < count; i++)
    for (size_t k = 0; k < aeroplane_plan (self, i)->view_count; k++)
      if (g_strcmp0 (aeroplane_plan (self, i)->views[k].id, id) == 0)
        {
          if (plan)
            *plan = aeroplane_plan (self, i);
          return &aeroplane_plan (self, i)->views[k];
        }
  return NULL;
}

const Control *
aeroplane_control_by_id (const Aeroplane *self, const char *surface, const char *control)
{
  const Surface *found = aeroplane_surface_by_id (self, surface);

  for (size_t i = 0; found && control && i < found->control_count; i++)
    if (g_strcmp0 (found->controls[i].id, control) == 0)
      return &found->controls[i];
  return NULL;
}

/* A control's id is one too: a person who selects by id must not meet two. */
static bool
control_has_id (const Aeroplane *self, const char *id)
{
  const size_t count = aeroplane_count (self, PIECE_SURFACE);

  for (size_t i = 0; i < count; i++)
    for (size_t k = 0; k < aeroplane_surface (self, i)->control_count; k++)
      if (g_strcmp0 (aeroplane_surface (self, i)->controls[k].id, id) == 0)
        return true;
  return false;
}

char *
aeroplane_free_id (const Aeroplane *self, const char *stem)
{
  char *id = g_strdup (stem);

  for (unsigned number = 2; aeroplane_find (self, id) || control_has_id (self, id) || aeroplane_view_by_id (self, id, NULL); number++)
    {
      g_free (id);
      id = g_strdup_printf ("%s-%u", stem, number);
    }
  return id;
}

static bool
group_is_used (const Aeroplane *self, const char *name)
{
  for (size_t i = 0; i < aeroplane_count (self, PIECE_PART); i++)
    if (g_strcmp0 (aeroplane_part (self, i)->group, name) == 0)
      return true;
  return false;
}

char *
aeroplane_free_group (const Aeroplane *self, const char *stem)
{
  char *name = g_strdup (stem);

  for (unsigned number = 2; group_is_used (self, name); number++)
    {
      g_free (name);
      name = g_strdup_printf ("%s-%u", stem, number);
    }
  return name;
}
