#include "drawing/side-places.h"
#include <math.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "drawing/sheet-places.h"
#include "geometry/planform.h"

static const double narrowest = 110, widest = 320, margin = 24;      /* px */

static bool
is_propeller (const Part *part)
{
  return part_is_a (part, "propeller");
}

/* A propeller turns: its disc is as high as it is wide. */
Box
side_part_box (const Part *part)
{
  const Point half = { part_extent (part).x / 2, (is_propeller (part) ? fmax (part->width, part->height) : part->height) / 2 };

  return (Box) { { part->x - half.x, part->z - half.y }, { part->x + half.x, part->z + half.y } };
}

/* Thinner than anything drawn is a plate: a sheet tail. Incidence turns the chord about the leading edge, nose up. */
bool
side_section (const Surface *surface, SideSection *section)
{
  const Point first = outline_node (surface->outline, 0);
  const double station = fmax (first.y, 1e-3), turn = surface->incidence * G_PI / 180;
  StationCut cut;

  if (planform_cut (surface->outline, surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED, station, &cut) != CORE_OK)
    return false;
  section->leading = (Point) { cut.leading_x, surface->z };
  section->trailing = (Point) { cut.leading_x + (cut.trailing_x - cut.leading_x) * cos (turn),
                                surface->z - (cut.trailing_x - cut.leading_x) * sin (turn) };
  section->thickness = isnan (surface->thickness) || surface->thickness < 4 ? 0 : surface->thickness / 100;
  return cut.trailing_x > cut.leading_x;
}

Outline *
side_fin_outline (const Surface *fin)
{
  Outline *lifted = NULL;

  if (outline_mapped (fin->outline, (Point) { 1, 1 }, (Point) { 0, fin->z }, &lifted) != CORE_OK)
    return NULL;
  return lifted;
}

static Box
side_surface_box (const Surface *surface)
{
  Box box = box_empty ();
  SideSection section;

  if (!surface_is_horizontal (surface))
    {
      box = outline_bounds (surface->outline);
      box.min.y += surface->z;
      box.max.y += surface->z;
    }
  else if (side_section (surface, &section))
    box = box_with (box_with (box, section.leading), section.trailing);
  return box;
}

Box
side_shapes_box (const Aeroplane *aeroplane)
{
  Box box = box_empty ();

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    box = box_joined (box, side_surface_box (aeroplane_surface (aeroplane, i)));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->side_outline)
      box = box_joined (box, outline_bounds (aeroplane_body (aeroplane, i)->side_outline));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (!is_propeller (aeroplane_part (aeroplane, i)))
      box = box_joined (box, side_part_box (aeroplane_part (aeroplane, i)));
  return box;
}

static double
side_middle (const SideScene *side)
{
  const Box box = side_shapes_box (side->scene->figures->aeroplane);

  return box_is_empty (box) ? 0 : (fmin (box.min.y, 0) + fmax (box.max.y, 0)) / 2;
}

double
side_view_px_of_z (const SideScene *side, double z)
{
  return side->width / 2 + (z - side_middle (side)) * side->scene->view->scale;
}

double
side_view_z_at_px (const SideScene *side, double px)
{
  return (px - side->width / 2) / side->scene->view->scale + side_middle (side);
}

double
side_view_wanted_width (const SheetScene *scene)
{
  const Box box = side_shapes_box (scene->figures->aeroplane);
  const double height = box_is_empty (box) ? 0 : fmax (box.max.y, 0) - fmin (box.min.y, 0);

  return round (fmin (widest, fmax (narrowest, height * scene->view->scale + 2 * margin)));
}

SheetView
side_view_of (const SideScene *side)
{
  SheetView view = *side->scene->view;

  view.origin_x = side_view_px_of_z (side, 0);
  view.width = side->width;
  view.height = side->height;
  return view;
}
