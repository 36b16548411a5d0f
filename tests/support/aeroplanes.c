#include "support/aeroplanes.h"

#include "support/shapes.h"

Aeroplane *
with_piece (Aeroplane *self, void *takes)
{
  Aeroplane *made = aeroplane_with_added (self, takes);

  aeroplane_unref (self);
  return made;
}

Aeroplane *
with_surface (Aeroplane *self, const char *id, SurfaceRole role, Outline *takes)
{
  return with_piece (self, surface_new (id, role, takes));
}

static Part *
exact_part (const char *id, const char *class_name, double mass, double x)
{
  Part *part = part_new (id, class_name);

  part->mass = mass;
  part->mass_sigma = 0;
  part->x = x;
  part->x_sigma = 0;
  return part;
}

Aeroplane *
with_part (Aeroplane *self, const char *id, double mass, double x)
{
  return with_piece (self, exact_part (id, NULL, mass, x));
}

Aeroplane *
with_battery (Aeroplane *self, double mass, double x, double rail_from, double rail_to)
{
  Part *battery = exact_part ("battery", "battery", mass, x);

  battery->has_rail = true;
  battery->rail_from = rail_from;
  battery->rail_to = rail_to;
  return with_piece (self, battery);
}

Aeroplane *
with_structure (Aeroplane *self, const char *id, const char *of, double mass)
{
  return with_piece (self, structure_new (id, of, mass));
}

Aeroplane *
with_mark (Aeroplane *self, double station)
{
  return with_piece (self, mark_new (station));
}

Outline *
rectangle (double x, double span, double chord)
{
  return taper_from ((double[]) { 0, span / 2 }, (double[]) { x, x }, (double[]) { chord, chord }, 2);
}

static Body *
racers_body (void)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 20, 13.5 }, { 138, 26 }, { 300, 15.5 }, { 463, 2.5 }, { 463, 0 } }, 6);
  return body;
}

static Aeroplane *
racers_parts (Aeroplane *made)
{
  static const struct { const char *id, *class_name; double mass, x, z; } parts[] = {
    { "propeller", "propeller", 6, 9, 0 },    { "motor", "motor", 17, 30, 0 },        { "controller", "controller", 9, 62, 11 },
    { "receiver", "receiver", 3, 163, 8 },    { "servo-elevator", "servo", 5, 186, 3 }, { "servo-left", "servo", 4.5, 176, -5 },
    { "servo-right", "servo", 4.5, 176, -5 }, { "pushrod", "pushrod", 3, 305, 9 },    { "wiring", NULL, 2.5, 160, -8 },
  };

  for (size_t i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      Part *part = part_new (parts[i].id, parts[i].class_name);

      part->mass = parts[i].mass;
      part->x = parts[i].x;
      part->z = parts[i].z;
      made = with_piece (made, part);
    }
  return with_battery (made, 27, 124, 82, 134);
}

Aeroplane *
racer (void)
{
  Aeroplane *made = aeroplane_new ();
  Surface *wing = surface_new ("wing", ROLE_WING, ellipse_from (112, 320, 45, 85));
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, ellipse_from (388, 118, 26, 40));

  wing->z = -12;
  wing->dihedral = 4;
  wing->incidence = 2;
  tail->z = 13;
  made = with_piece (with_piece (made, wing), tail);
  made = with_surface (made, "fin", ROLE_FIN,
                       polygon_from ((Point[]) { { 384, 0 }, { 421, 70 }, { 452, 70 }, { 463, 0 } }, 4));
  made = with_piece (made, racers_body ());
  made = with_structure (made, "wing-structure", "wing", 24);
  made = with_structure (made, "tail-structure", "tail", 4);
  made = with_structure (made, "fin-structure", "fin", 2);
  made = with_structure (made, "body-structure", "body", 34);
  return with_mark (racers_parts (made), 40);
}
