#pragma once
#include <check.h>
#include "document/aeroplane.h"
#include "support/shapes.h"

/* A piece of every kind with every list and text filled in, and an aeroplane of them: nothing in it is round. */

static inline Outline *
any_outline (double shift)
{
  return polygon_from ((const Point[]) { { 101.3 + shift, 0 }, { 117.1 + shift, 318.7 }, { 181.9 + shift, 318.7 }, { 223.6 + shift, 0 } }, 4);
}

static inline void
piece_keep (Piece *piece, InnerKind inner)
{
  piece->foreign_attributes = g_strdup (" later=\"1\"");
  piece->foreign_children = g_strdup ("<later/>");
  piece->kept = g_new0 (Kept, 1);
  piece->kept_count = 1;
  piece->kept[0] = (Kept) { .inner = inner, .before = g_strdup ("<!-- b -->"), .attributes = g_strdup (" c=\"d\""), .inside = g_strdup ("<e/>") };
}

static inline Piece *
any_surface (void)
{
  Surface *made = surface_new ("wing", ROLE_WING, any_outline (0));

  made->z = -11.7;
  made->dihedral = 4.1;
  made->section = SECTION_CURVED_PLATE;
  made->section_slope = 0.91;
  made->section_slope_sigma = 0.021;
  made->lift_max = 1.13;
  made->lift_max_sigma = 0.044;
  made->pressure_ratio = 0.87;
  made->pressure_ratio_sigma = 0.017;
  made->traced = g_strdup ("wing-view");
  made->passed = (PassedClick) { 4.3, { 119.7, 211.3 }, true };
  made->ribs = g_new0 (NamedPlace, 2);
  made->rib_count = 2;
  made->ribs[0] = (NamedPlace) { g_strdup ("R1"), 26.3 };
  made->ribs[1] = (NamedPlace) { g_strdup ("R2"), 48.9 };
  made->breaks = g_new0 (DihedralBreak, 1);
  made->break_count = 1;
  made->breaks[0] = (DihedralBreak) { 160.7, 9.3 };
  made->controls = g_new0 (Control, 1);
  made->control_count = 1;
  made->controls[0] = (Control) { g_strdup ("ailerons"), CONTROL_AILERON, 161.3, 289.9, 197.3, 173.1, 12.1, NAN };
  piece_keep (&made->piece, INNER_RIB);
  return &made->piece;
}

static inline Piece *
any_body (void)
{
  Body *made = body_new ("body");

  made->outline = any_outline (1.1);
  made->side_outline = any_outline (2.3);
  made->passed = (PassedClick) { 2.7, { 121.9, 31.1 }, false };
  made->side_passed = (PassedClick) { 3.9, { 167.3, -17.9 }, true };
  made->formers = g_new0 (NamedPlace, 1);
  made->former_count = 1;
  made->formers[0] = (NamedPlace) { g_strdup ("F1"), 61.7 };
  return &made->piece;
}

static inline Piece *
any_structure (void)
{
  Structure *made = structure_new ("wing-frame", "wing", 31.3);

  made->excess = 0.137;
  made->items = g_new0 (StructureItem, 2);
  made->item_count = 2;
  made->items[0] = structure_item ("Ribs");
  made->items[0].material = g_strdup ("balsa-light");
  made->items[0].of = TRACED_RIBS;
  made->items[0].thickness = 1.57;
  made->items[0].share = 0.943;
  made->items[1] = structure_item ("Glue");
  made->items[1].of_others = 0.079;
  piece_keep (&made->piece, INNER_ITEM);
  return &made->piece;
}

static inline Piece *
any_part (void)
{
  Part *made = part_new ("battery", "battery");

  made->name = g_strdup ("Pack");
  made->mass = 27.3;
  made->x = 61.9;
  made->length = 55.1;
  made->has_rail = true;
  made->rail_from = 50.3;
  made->rail_to = 81.7;
  made->bays = g_strdup ("bay");
  made->turn = 31.7;
  made->to_come = true;
  made->of = g_strdup ("spare");
  made->group = g_strdup ("servos");
  made->kind = g_strdup ("battery-2s-450");
  return &made->piece;
}

static inline Piece *
any_lead (void)
{
  Lead *made = lead_new ("battery", "motor");

  made->piece.id = g_strdup ("lead");
  made->length = 91.3;
  made->also_length = 83.1;
  made->to_length = 57.7;
  made->joint_x = 40.3;
  made->joint_y = -0.7;
  made->slack = 1.13;
  made->unplugs = UNPLUGS_YES;
  made->allowance = 33.3;
  made->mass = 4.3;
  made->mass_sigma = 0.4;
  made->name = g_strdup ("Y");
  made->kind = g_strdup ("lead-two-into-one");
  made->via = g_memdup2 (((const LeadVia[]) { { { 31.1, 4.7 }, LEG_FROM }, { { 47.3, -3.9 }, LEG_TO } }), 2 * sizeof (LeadVia));
  made->via_count = 2;
  return &made->piece;
}

static inline Piece *
any_plan (void)
{
  Plan *made = plan_new ("sheet");

  made->file = g_strdup ("plans/sheet.png");
  made->checksum = g_strdup ("sha256:00");
  made->width = 3369;
  made->strength = 61.3;
  made->image = g_bytes_new ("\x89PNG and more", 13);
  made->image_type = g_strdup ("image/png");
  made->has_corners = true;
  made->corners[0] = (Point) { 101.3, 87.9 };
  made->corners[2] = (Point) { 3268.1, 2318.7 };
  made->corners_width = 404.3;
  made->corners_height = 281.7;
  made->lengths = g_memdup2 (((const PlanLength[]) { { { 512.3, 701.9 }, { 2126.7, 709.1 }, 205.3, 4.2, 1.7 } }), sizeof (PlanLength));
  made->length_count = 1;
  made->straight = g_memdup2 (((const PlanStraight[]) { { 1 }, { 2 } }), 2 * sizeof (PlanStraight));
  made->straight_count = 2;
  made->places = g_memdup2 (((const Point[]) { { 401.3, 88.7 }, { 1690.1, 96.7 }, { 2900.9, 104.3 } }), 3 * sizeof (Point));
  made->place_count = 3;
  made->views = g_new0 (PlanView, 1);
  made->view_count = 1;
  made->views[0] = (PlanView) { g_strdup ("wing-view"), VIEW_WING, { 501.3, 701.7 }, { 508.1, 1303.3 }, 109.7, -11.7, VIEW_PORT, true, true };
  piece_keep (&made->piece, INNER_VIEW);
  return &made->piece;
}

static inline Piece *
piece_of (PieceKind kind)
{
  switch (kind)
    {
    case PIECE_SURFACE:   return any_surface ();
    case PIECE_BODY:      return any_body ();
    case PIECE_STRUCTURE: return any_structure ();
    case PIECE_PART:      return any_part ();
    case PIECE_LEAD:      return any_lead ();
    case PIECE_MARK:      return &mark_new (30.7)->piece;
    case PIECE_BAY:       return &bay_new ("bay", "F1", "F2")->piece;
    case PIECE_THRUST:    return &thrust_new ()->piece;
    case PIECE_PLAN:      return any_plan ();
    case PIECE_FOREIGN:   return &foreign_new ("<!-- a word -->")->piece;
    default:              ck_abort_msg ("no such kind"); return NULL;
    }
}

/* One of each kind in the order of the kinds, then the motor that the lead goes to. */
static inline Aeroplane *
aeroplane_of_every_piece (void)
{
  Piece *pieces[PIECE_KIND_COUNT + 1];

  for (int kind = 0; kind < PIECE_KIND_COUNT; kind++)
    pieces[kind] = piece_of (kind);
  pieces[PIECE_KIND_COUNT] = &part_new ("motor", "motor")->piece;
  return aeroplane_from_pieces ((AeroplaneTraits) { .name = "Reed Bunting", .target = { 5.3, 14.9, 11.7 } }, pieces, G_N_ELEMENTS (pieces));
}
