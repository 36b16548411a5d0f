#include "odd-aeroplanes.h"

#include <glib.h>
#include <math.h>
#include "support/aeroplanes.h"
#include "support/shapes.h"

static Aeroplane *
plain_wing (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
}

static Aeroplane *
wing_and_tail (void)
{
  return with_surface (plain_wing (), "tail", ROLE_TAILPLANE, rectangle (400, 200, 60));
}

static Outline *
open_outline (void)
{
  return polygon_from ((Point[]) { { 300, 0 }, { 310, 100 }, { 350, 80 } }, 3);
}

static Aeroplane *empty_sheet (void) { return aeroplane_new (); }

static Aeroplane *
fin_alone (void)
{
  Outline *upright = polygon_from ((Point[]) { { 384, 0 }, { 421, 70 }, { 452, 70 }, { 463, 0 } }, 4);

  return with_battery (with_surface (aeroplane_new (), "fin", ROLE_FIN, upright), 20, 50, 10, 90);
}

static Aeroplane *
structure_without_wing (void)
{
  Structure *boom = structure_new ("boom", NULL, 12);

  boom->x = 100;
  return with_piece (fin_alone (), boom);
}

static Aeroplane *
open_tail (void)
{
  return with_battery (with_surface (plain_wing (), "stab", ROLE_TAILPLANE, open_outline ()), 20, 50, 10, 90);
}

static Aeroplane *
open_wing_with_ailerons (void)
{
  Surface *wing = surface_new ("main", ROLE_WING, open_outline ());

  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("ailerons"), .kind = CONTROL_AILERON, .inner = 30, .outer = 70,
                                  .hinge_inner_x = 320, .hinge_outer_x = 320, .up = NAN, .down = NAN };
  return with_part (with_piece (aeroplane_new (), wing), "motor", 17, 30);
}

static Aeroplane *
crossing_fin (void)
{
  return with_surface (wing_and_tail (), "fin", ROLE_FIN, polygon_from ((Point[]) { { 0, 0 }, { 90, 80 }, { 0, 80 }, { 90, 0 } }, 4));
}

static Aeroplane *
wing_over_the_centre (void)
{
  return with_surface (aeroplane_new (), "main", ROLE_WING, polygon_from ((Point[]) { { 0, -9 }, { 0, 80 }, { 50, 80 }, { 50, -9 } }, 4));
}

static Aeroplane *
empty_foreplane (void)
{
  return with_surface (plain_wing (), "nose", ROLE_FOREPLANE, polygon_from ((Point[]) { { 0, 0 }, { 50, 0 } }, 2));
}

static Aeroplane *
wing_alone_with_rail (void)
{
  return with_battery (with_mark (plain_wing (), 40), 27, 110, 80, 130);
}

static Aeroplane *
two_in_one_place (void)
{
  return with_battery (with_surface (plain_wing (), "again", ROLE_WING, rectangle (100, 600, 100)), 27, 110, 80, 130);
}

static Aeroplane *
mass_without_place (void)
{
  return with_battery (with_structure (wing_and_tail (), "boom", "nowhere", 12), 27, 110, 80, 130);
}

Aeroplane *
weightless_lead (void)
{
  Part *lead = part_new ("lead", NULL);

  lead->x = 100, lead->has_rail = true, lead->rail_from = 80, lead->rail_to = 120;
  return with_piece (racer (), lead);
}

static Aeroplane *
nothing_weighs (void)
{
  return with_battery (wing_and_tail (), 0, 110, 80, 130);
}

/* The wing lies far ahead of the body's nose at 900 mm, and with it the aim. */
Aeroplane *
aim_ahead_of_the_nose (void)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 900, 0 }, { 950, 10 }, { 1000, 0 } }, 3);
  return with_battery (with_part (with_piece (wing_and_tail (), body), "motor", 50, 950), 20, 940, 920, 960);
}

Aeroplane *
aim_behind_the_tail (void)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 50, 10 }, { 100, 0 } }, 3);
  return with_battery (with_part (with_piece (wing_and_tail (), body), "motor", 50, 20), 20, 40, 10, 60);
}

Aeroplane *
control_without_width (void)
{
  Surface *wing = surface_new ("main", ROLE_WING, rectangle (100, 600, 100));

  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("flaps"), .kind = CONTROL_FLAP, .inner = 110, .outer = 110,
                                  .hinge_inner_x = 180, .hinge_outer_x = 180, .up = NAN, .down = NAN };
  return with_piece (aeroplane_new (), wing);
}

static Aeroplane *
body_from_the_side (void)
{
  Body *body = body_new ("pod");

  body->side_outline = polygon_from ((Point[]) { { 0, 0 }, { 50, 20 }, { 400, 5 }, { 400, -5 }, { 50, -25 } }, 5);
  return with_piece (wing_and_tail (), body);
}

static Aeroplane *
mark_beyond_the_tip (void)
{
  return with_mark (racer (), 333);
}

/* The handbook knows no downwash for a tail higher than the wing is wide. */
static Aeroplane *
tail_on_a_mast (void)
{
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (400, 200, 60));

  tail->z = 700;
  return with_piece (plain_wing (), tail);
}

static Aeroplane *
battery_ashore (void)
{
  Part *battery = part_new ("battery", "battery");

  battery->mass = 20, battery->x = 100, battery->has_rail = true, battery->rail_from = 50, battery->rail_to = 120, battery->aboard = false;
  return with_piece (wing_and_tail (), battery);
}

static Aeroplane *
ribs_without_stations (void)
{
  Structure *frame = structure_new ("frame", "wing", NAN);

  frame->items = g_new (StructureItem, 1);
  frame->item_count = 1;
  frame->items[0] = structure_item (NULL);
  frame->items[0].material = g_strdup ("balsa-light");
  frame->items[0].of = TRACED_RIBS;
  frame->items[0].thickness = 1.6;
  return with_piece (plain_wing (), frame);
}

const OddAeroplane odd_aeroplanes[ODD_AEROPLANES] = {
  { "the racer", racer }, { "an empty sheet", empty_sheet }, { "a fin alone", fin_alone },
  { "a structure without a wing", structure_without_wing }, { "an open tail", open_tail },
  { "an open wing with ailerons", open_wing_with_ailerons }, { "a crossing fin", crossing_fin },
  { "a wing over the centre line", wing_over_the_centre }, { "an empty foreplane", empty_foreplane },
  { "a wing alone", wing_alone_with_rail }, { "two in one place", two_in_one_place }, { "a mass without a place", mass_without_place },
  { "a weightless part", weightless_lead }, { "nothing that weighs", nothing_weighs },
  { "an aim ahead of the nose", aim_ahead_of_the_nose }, { "an aim behind the tail", aim_behind_the_tail },
  { "a control without width", control_without_width }, { "a body from the side", body_from_the_side },
  { "a mark beyond the tip", mark_beyond_the_tip }, { "a tail on a mast", tail_on_a_mast }, { "a battery ashore", battery_ashore },
  { "ribs without stations", ribs_without_stations },
};
