#include "figures/usual-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "balance/materials.h"
#include "figures/surface-figures.h"
#include "figures/usual-lines-private.h"

/* Covering takes more than it covers: overlaps. */
static const double overlaps = 1.05;

StructureItem *
usual_line (GArray *lines, const char *name, const char *material, ItemTraced of)
{
  StructureItem item = structure_item (name);

  item.material = g_strdup (material);
  item.of = of;
  g_array_append_val (lines, item);
  return &g_array_index (lines, StructureItem, lines->len - 1);
}

static StructureItem *
add_stick (GArray *lines, const char *name, double count, double width, double thickness)
{
  StructureItem *stick = usual_line (lines, name, "balsa-medium", TRACED_SPAN);

  stick->count = count;
  stick->width = width;
  stick->thickness = thickness;
  return stick;
}

static void
add_glue_and_covering (GArray *lines, double glue)
{
  usual_line (lines, _("Glue"), NULL, TRACED_NONE)->of_others = glue;
  usual_line (lines, _("Covering"), "iron-on-light", TRACED_SKIN)->share = overlaps;
}

/* Whole square millimetres: no more of it is known. Ribs without stations are taken a rib each 30 mm. */
static void
add_ribs (GArray *lines, const Surface *surface, const Planform *planform)
{
  const double apart = 30, thickness = isnan (surface->thickness) ? 0.10 : surface->thickness / 100;
  StructureItem *ribs = usual_line (lines, _("Ribs"), "balsa-medium", surface->rib_count ? TRACED_RIBS : TRACED_NONE);

  if (!surface->rib_count)
    ribs->area = round (rib_side_area (1, thickness) * planform->area * planform->mac / apart);
  ribs->thickness = sixteenth;
  ribs->share = 0.95;
}

/* Sticks grow with the span: 3/32 in below 450 mm, 1/8 to 900, 3/16 beyond. */
static void
lay_frame (GArray *lines, const Surface *surface, const Planform *planform)
{
  const double stick = planform->span < 450 ? 1.5 * sixteenth : planform->span > 900 ? 3 * sixteenth : 2 * sixteenth;
  const double size = planform->span / 680;
  StructureItem *item;

  add_ribs (lines, surface, planform);
  add_stick (lines, _("Spars"), 2, stick, stick);
  add_stick (lines, _("Leading edge"), 1, stick, stick);
  add_stick (lines, _("Trailing edge"), 1, round (planform->mean_chord / 8), stick)->share = 0.5;      /* a triangle */
  item = usual_line (lines, _("Tips"), NULL, TRACED_NONE);
  item->count = 2;
  item->mass = round (55 * size * size) / 100;
  item = usual_line (lines, _("Centre sheet"), "balsa-medium", TRACED_NONE);
  item->count = 2;
  item->length = 60;
  item->width = round (planform->mac);
  item->thickness = sixteenth;
  usual_line (lines, _("Gussets and plates"), NULL, TRACED_NONE)->mass = round (240 * size * size) / 100;
  add_glue_and_covering (lines, 0.08);
}

/* The lightest sheet belongs in the tail; 1/16 in below 2 dm², 3/32 beyond. */
static void
lay_sheet (GArray *lines, const Planform *planform)
{
  StructureItem *sheet = usual_line (lines, _("Sheet"), "balsa-light", TRACED_PLAN);

  sheet->thickness = planform->area < 2e4 ? sixteenth : 1.5 * sixteenth;
  usual_line (lines, _("Hinges and horn"), NULL, TRACED_NONE)->mass = 0.6;
  add_glue_and_covering (lines, 0.06);
}

static bool
is_plate (const Surface *surface)
{
  return surface->role != ROLE_WING || surface->section == SECTION_FLAT_PLATE || surface->section == SECTION_CURVED_PLATE;
}

static bool
lay_surface (const Surface *surface, GArray *lines, double *centre)
{
  Planform planform;

  if (planform_measure (surface->outline, surface_sides (surface), &planform) != CORE_OK)
    return false;
  *centre = is_plate (surface) ? 0.45 : 0.44;
  if (is_plate (surface))
    lay_sheet (lines, &planform);
  else
    lay_frame (lines, surface, &planform);
  return true;
}

static bool
lay_lines (const Piece *of, GArray *lines, double *centre)
{
  if (of->kind == PIECE_SURFACE)
    return lay_surface ((const Surface *) of, lines, centre);
  return of->kind == PIECE_BODY && usual_body ((const Body *) of, lines, centre);
}

static Structure *
without_items (const Structure *old)
{
  Structure *next = (Structure *) piece_dup (&old->piece);

  for (size_t i = 0; i < next->item_count; i++)
    structure_item_clear (&next->items[i]);
  g_clear_pointer (&next->items, g_free);
  next->item_count = 0;
  return next;
}

Aeroplane *
usual_lines_laid (const Aeroplane *aeroplane, const char *of)
{
  const Piece *piece = aeroplane_find (aeroplane, of);
  const Structure *old = aeroplane_structure_of (aeroplane, of);
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (StructureItem));
  Structure *next;
  double centre;

  if (!piece || !lay_lines (piece, lines, &centre))
    return NULL;
  next = old ? without_items (old) : structure_new (NULL, of, NAN);
  next->mass = next->mass > 0 ? next->mass : NAN;
  next->centre = isnan (next->centre) ? centre : next->centre;
  next->item_count = lines->len;
  next->items = g_memdup2 (lines->data, lines->len * sizeof (StructureItem));
  if (old)
    return aeroplane_with_replaced (aeroplane, &old->piece, &next->piece);
  g_autofree char *stem = g_strdup_printf ("%s-structure", of);
  next->piece.id = aeroplane_free_id (aeroplane, stem);
  return aeroplane_with_added (aeroplane, &next->piece);
}
