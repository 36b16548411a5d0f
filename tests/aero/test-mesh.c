#include <stdlib.h>
#include "aero/mesh.h"
#include "support/run-suite.h"
#include "wings.h"

static Mesh
mesh_of (const LatticeSurface surfaces[], size_t count)
{
  Mesh mesh = { 0 };

  ck_assert_int_eq (mesh_build (&mesh, surfaces, count, lattice_default_options (), 1), CORE_OK);
  return mesh;
}

static bool
has_edge (const Mesh *mesh, size_t surface, double station)
{
  const MeshStrip *strips = mesh->strips + mesh->surfaces[surface].strip;

  for (size_t i = 0; i < mesh->surfaces[surface].strip_count; i++)
    if (fabs (strips[i].outer_y - station) < 1e-9 * station)
      return true;
  return false;
}

static Outline *
cranked_wing (void)
{
  Outline *made = NULL;

  ck_assert_int_eq (shape_taper ((double[]) { 0, 171.3, 400 }, (double[]) { 0, 7, 50 }, (double[]) { 150, 140, 75 }, 3, &made), CORE_OK);
  return made;
}

START_TEST (a_crank_and_a_bend_are_edges_of_strips)
{
  const LatticeBend bend = { .station = 288.9, .angle = 0.4 };
  Outline *outline = cranked_wing ();
  const LatticeSurface wing = { .outline = outline, .bends = &bend, .bend_count = 1, .pressure_ratio = 1 };
  Mesh mesh = mesh_of (&wing, 1);

  ck_assert (has_edge (&mesh, 0, 171.3));
  ck_assert (has_edge (&mesh, 0, 288.9));
  mesh_clear (&mesh);
  outline_unref (outline);
}
END_TEST

/* Outboard of the bend the surface rises by the bend's own angle, inboard by the dihedral, from the height of its root. */
START_TEST (height_follows_dihedral_and_bend)
{
  const LatticeBend bend = { .station = 200, .angle = 0.4 };
  Outline *outline = wing_trapezium ((Trapezium) { 400, 0, 150, 30, 90 });
  const LatticeSurface wing = { .outline = outline, .z = -13, .dihedral = 0.05, .bends = &bend, .bend_count = 1, .pressure_ratio = 1 };
  Mesh mesh = mesh_of (&wing, 1);
  const MeshStrip *tip = &mesh.strips[mesh.strip_count - 1];

  ck_assert_double_eq_tol (mesh.strips[0].inner_z, -13, 1e-12);
  ck_assert_double_eq_tol (tip->outer_z, -13 + 200 * tan (0.05) + 200 * tan (0.4), 1e-9);
  ck_assert_double_eq_tol (tip->sine, sin (0.4), 1e-9);
  ck_assert_double_eq_tol (tip->cosine, cos (0.4), 1e-9);
  ck_assert_double_eq_tol (mesh.strips[0].sine, sin (0.05), 1e-9);
  mesh_clear (&mesh);
  outline_unref (outline);
}
END_TEST

/* A carried root runs flat through the body; an open one leaves its gap. */
START_TEST (a_root_beside_the_centre_is_carried_flat_or_left_open)
{
  Outline *outline = NULL;

  ck_assert_int_eq (shape_taper ((double[]) { 31, 400 }, (double[]) { 0, 20 }, (double[]) { 140, 90 }, 2, &outline), CORE_OK);
  const LatticeSurface carried = { .outline = outline, .z = 5, .dihedral = 0.1, .pressure_ratio = 1 };
  const LatticeSurface open = { .outline = outline, .sides = PLANFORM_OPEN, .pressure_ratio = 1 };
  Mesh whole = mesh_of (&carried, 1), gapped = mesh_of (&open, 1);

  ck_assert_double_eq (whole.strips[0].inner_y, 0);
  ck_assert_double_eq_tol (whole.strips[0].control_z, 5, 1e-12);
  ck_assert_double_eq_tol (whole.strips[0].trailing_x - whole.strips[0].leading_x, 140, 1e-9);
  ck_assert_double_eq_tol (gapped.strips[0].inner_y, 31, 1e-12);
  mesh_clear (&whole);
  mesh_clear (&gapped);
  outline_unref (outline);
}
END_TEST

START_TEST (all_surfaces_share_their_edges)
{
  Outline *outlines[2] = { cranked_wing (), wing_ellipse (600, 131, 30, 50) };
  const LatticeSurface surfaces[2] = { { .outline = outlines[0], .pressure_ratio = 1 }, { .outline = outlines[1], .pressure_ratio = 1 } };
  Mesh mesh = mesh_of (surfaces, 2);

  ck_assert_uint_eq (mesh.surfaces[0].strip_count, 20);
  ck_assert_uint_eq (mesh.strips[0].panel_count, 6);
  ck_assert_uint_eq (mesh.strips[20].panel_count, 4);
  for (size_t i = 0; i < mesh.surfaces[1].strip_count; i++)
    ck_assert (has_edge (&mesh, 0, mesh.strips[mesh.surfaces[1].strip + i].outer_y));
  ck_assert (has_edge (&mesh, 1, 131));
  mesh_clear (&mesh);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

/* A hair between two tips is no strip: both surfaces end at their own tips, on as many strips as one alone. */
START_TEST (tips_a_hair_apart_are_one_edge)
{
  Outline *outlines[2] = { wing_ellipse (0, 320, 45, 85), wing_ellipse (400, 320.02, 26, 40) };
  const LatticeSurface surfaces[2] = { { .outline = outlines[0], .pressure_ratio = 1 }, { .outline = outlines[1], .pressure_ratio = 1 } };
  Mesh mesh = mesh_of (surfaces, 2);

  ck_assert_uint_eq (mesh.surfaces[0].strip_count, 20);
  ck_assert_uint_eq (mesh.surfaces[1].strip_count, 20);
  ck_assert_double_eq (mesh.strips[19].outer_y, 320);
  ck_assert_double_eq (mesh.strips[39].outer_y, 320.02);
  mesh_clear (&mesh);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

/* Control points and vortices of a strip lie in one plane panel, at a round tip too: at the control station the bound vortex crosses
 * the quarter of each panel's chord of the true outline. */
START_TEST (bound_vortices_cross_the_control_station_at_a_quarter_of_the_panels)
{
  Outline *outline = wing_ellipse (0, 320, 45, 85);
  const LatticeSurface wing = { .outline = outline, .pressure_ratio = 1 };
  Mesh mesh = mesh_of (&wing, 1);

  for (size_t s = 0; s < mesh.strip_count; s++)
    {
      const MeshStrip *strip = &mesh.strips[s];
      const double share = (strip->control_y - strip->inner_y) / (strip->outer_y - strip->inner_y);
      const double root = sqrt (1 - strip->control_y * strip->control_y / (320 * 320));

      for (size_t i = 0; i < strip->panel_count; i++)
        {
          const size_t panel = strip->panel + i;
          const double x = mesh.inner_x[panel] + share * (mesh.outer_x[panel] - mesh.inner_x[panel]);

          ck_assert_double_eq_tol (x, 45 - 45 * root + (i + 0.25) / 6 * 130 * root, 1e-9);
          ck_assert_double_eq_tol (mesh.x[panel], 45 - 45 * root + (i + 0.75) / 6 * 130 * root, 1e-9);
        }
    }
  mesh_clear (&mesh);
  outline_unref (outline);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("mesh");

  tcase_add_test (tests, a_crank_and_a_bend_are_edges_of_strips);
  tcase_add_test (tests, height_follows_dihedral_and_bend);
  tcase_add_test (tests, a_root_beside_the_centre_is_carried_flat_or_left_open);
  tcase_add_test (tests, all_surfaces_share_their_edges);
  tcase_add_test (tests, tips_a_hair_apart_are_one_edge);
  tcase_add_test (tests, bound_vortices_cross_the_control_station_at_a_quarter_of_the_panels);
  return run_suite (suite_create ("mesh"), tests);
}
