#include "figures/names.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "document/material-class.h"
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
lead_name (const Lead *lead)
{
  if (lead->name && *lead->name)
    return lead->name;
  return lead_is_joined (lead) ? _("Two-into-one lead") : _("Lead");
}

/* "Wing structure", of what is called "wing". Kept for good: there are no more of them than of things that were drawn. */
static const char *
structure_of_name (const char *of)
{
  g_autofree char *first = g_utf8_substring (of, 0, 1), *capital = g_utf8_strup (first, -1);
  g_autofree char *name = g_strconcat (capital, of + strlen (first), NULL);
  /* Translators: %s is what a surface or a body is called: "Wing structure" */
  g_autofree char *whole = g_strdup_printf (_("%s structure"), name);

  return g_intern_string (whole);
}

/* An id that says no more than what it is the structure of is no name; any other is what somebody calls it. */
static const char *
structure_name (const Structure *structure)
{
  const char *id = structure->piece.id;

  if (structure->of && *structure->of && (!id || strstr (id, "-structure")))
    return structure_of_name (structure->of);
  if (id && g_str_equal (id, "finish"))
    return _("Finish");
  return id ? id : _("structure");
}

const char *
piece_name (const Piece *piece)
{
  switch (piece->kind)
    {
    case PIECE_PART:
      return part_name ((const Part *) piece);
    case PIECE_LEAD:
      return lead_name ((const Lead *) piece);
    case PIECE_STRUCTURE:
      return structure_name ((const Structure *) piece);
    case PIECE_SURFACE:
      return piece->id ? piece->id : surface_role_name (((const Surface *) piece)->role);
    default:
      return piece->id ? piece->id : _("body");
    }
}

const char *
structure_item_name (const StructureItem *item)
{
  const MaterialClass *material = material_class_find (item->material);

  if (item->name && *item->name)
    return item->name;
  return material ? _(material->name) : _("item");
}

bool
part_is_battery (const Part *part)
{
  return part_is_a (part, "battery");
}

static char *
thing_of_role (SurfaceRole role)
{
  switch (role)
    {
    case ROLE_WING:
      return g_strdup (C_("thing to weigh", "the wing"));
    case ROLE_TAILPLANE:
      return g_strdup (C_("thing to weigh", "the tailplane"));
    case ROLE_FOREPLANE:
      return g_strdup (C_("thing to weigh", "the foreplane"));
    default:
      return g_strdup (C_("thing to weigh", "the fin"));
    }
}

static char *
surface_thing (const Aeroplane *aeroplane, const Surface *surface)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i) != surface && aeroplane_surface (aeroplane, i)->role == surface->role)
      return g_strdup_printf (C_("thing to weigh", "“%s”"), piece_name (&surface->piece));
  return thing_of_role (surface->role);
}

static char *
body_thing (const Aeroplane *aeroplane, const Body *body)
{
  if (aeroplane_count (aeroplane, PIECE_BODY) > 1)
    return g_strdup_printf (C_("thing to weigh", "“%s”"), piece_name (&body->piece));
  return g_strdup (C_("thing to weigh", "the body"));
}

char *
piece_thing (const Aeroplane *aeroplane, const Piece *piece)
{
  const char *of = piece->kind == PIECE_STRUCTURE ? ((const Structure *) piece)->of : piece->id;
  const bool drawn = piece->kind == PIECE_STRUCTURE || piece->kind == PIECE_SURFACE || piece->kind == PIECE_BODY;

  if (piece->kind == PIECE_PART && part_is_battery ((const Part *) piece))
    return g_strdup (C_("thing to weigh", "the battery"));
  if (drawn && of && aeroplane_surface_by_id (aeroplane, of))
    return surface_thing (aeroplane, aeroplane_surface_by_id (aeroplane, of));
  if (drawn && of && aeroplane_body_by_id (aeroplane, of))
    return body_thing (aeroplane, aeroplane_body_by_id (aeroplane, of));
  return g_strdup_printf (C_("thing to weigh", "“%s”"), piece_name (piece));
}
