#include "drawing/side-view.h"
#include <math.h>
#include "drawing/side-places.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;
static SideScene side;

static void
put_up (Aeroplane *takes)
{
  easel = easel_new (takes);
  side = (SideScene) { .scene = &easel->scene, .width = 163, .height = 704 };
}

static void set_up (void) { put_up (racer_in_full ()); }
static void tear_down (void) { easel_free (easel); }

static Point
px (double x, double z)
{
  return (Point) { side_view_px_of_z (&side, z), view_to_screen (&easel->view, (Point) { x, 0 }).y };
}

static Hit
hit_at (double x, double z, double dx, double dy)
{
  return side_view_hit (&side, px (x, z).x + dx, px (x, z).y + dy, 12);
}

static Canvas
painted (double scale)
{
  Canvas canvas = canvas_new (side.width, side.height, scale, (Colour) { 1, 0, 1, 1 });

  draw_side_view (canvas.cr, &side);
  return canvas;
}

START_TEST (height_runs_to_the_right_at_the_sheets_scale)
{
  ck_assert_double_eq_tol (side_view_px_of_z (&side, 30) - side_view_px_of_z (&side, -12), 42 * easel->view.scale, 1e-9);
  for (double z = -60; z < 90; z += 13.7)
    ck_assert_double_eq_tol (side_view_z_at_px (&side, side_view_px_of_z (&side, z)), z, 1e-9);
}
END_TEST

START_TEST (the_strip_is_as_wide_as_it_needs_within_bounds)
{
  /* body from -27, fin to 70 above z = 0 */
  ck_assert_double_eq_tol (side_view_wanted_width (&easel->scene), 97 * easel->view.scale + 48, 1);
  easel->view.scale = 0.1;
  ck_assert_double_eq (side_view_wanted_width (&easel->scene), 110);
  easel->view.scale = 20;
  ck_assert_double_eq (side_view_wanted_width (&easel->scene), 320);
}
END_TEST

START_TEST (every_look_paints_the_whole_strip)
{
  Canvas canvas;

  easel_take_look (easel, _i);
  canvas = painted (2);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { side.width, side.height } }, (Colour) { 1, 0, 1, 1 }), 0);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 0, 0 }, { side.width, side.height } }, easel->look.graphite), 0.002);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_balance_disc_stands_at_its_height)
{
  const Point at = px (easel->figures->mass.x_mm, easel->figures->mass.z_mm);
  Canvas canvas = painted (2);

  ck_assert (colour_distance (canvas_at (&canvas, at.x + 3.5, at.y - 3.5), easel->look.balance) < 0.02);
  canvas_clear (&canvas);
}
END_TEST

/* Incidence is nose-up positive about the root's leading edge. */
START_TEST (incidence_puts_the_trailing_edge_lower)
{
  SideSection section;

  ck_assert (side_section (aeroplane_surface_by_id (easel->figures->aeroplane, "wing"), &section));
  ck_assert_double_eq_tol (section.leading.x, 112, 0.01);      /* measured a thousandth of a millimetre off the centre line */
  ck_assert_double_eq_tol (section.leading.y, -12, 1e-9);
  ck_assert_double_eq_tol (section.trailing.y, -12 - 130 * sin (2 * M_PI / 180), 0.01);
  ck_assert_double_eq (section.thickness, 0.10);
}
END_TEST

typedef struct { const char *because; double x, z; HitKind kind; const char *id; } Expected;

static const Expected expected[] = {
  { "the motor",                  .x = 30, .z = 5,    .kind = HIT_PART, .id = "motor" },
  { "the wing's section",         .x = 230, .z = -15, .kind = HIT_SURFACE, .id = "wing" },
  { "the fin",                    .x = 430, .z = 50,  .kind = HIT_SURFACE, .id = "fin" },
  { "the body",                   .x = 250, .z = -10, .kind = HIT_BODY, .id = "body" },
  { "the datum",                  .x = 1, .z = 60,    .kind = HIT_DATUM },
  { "nothing",                    .x = 300, .z = 80,  .kind = HIT_NOTHING } };

START_TEST (each_thing_is_found_where_it_is_drawn)
{
  const Expected *e = &expected[_i];
  const Hit hit = hit_at (e->x, e->z, 0, 0);

  ck_assert_msg (hit.kind == e->kind && g_strcmp0 (hit.id, e->id) == 0, "%s: kind %d, id %s", e->because, hit.kind, hit.id ? hit.id : "none");
}
END_TEST

/* Between a pack low in the nose and a receiver high over it: half-way along, half-way up. */
START_TEST (a_lead_is_drawn_and_found_from_the_side)
{
  Aeroplane *made = aeroplane_new ();
  Lead *lead = lead_new ("pack", "receiver");

  for (int i = 0; i < 2; i++)
    {
      Part *part = part_new (i == 0 ? "pack" : "receiver", i == 0 ? "battery" : "receiver");

      part->x = i == 0 ? 50 : 150;
      part->z = i == 0 ? -20 : 20;
      part->length = part->width = part->height = 10;
      made = with_piece (made, part);
    }
  lead->piece.id = g_strdup ("wire");
  tear_down ();
  put_up (with_piece (made, lead));
  ck_assert_int_eq (hit_at (100, 0, 1, 0).kind, HIT_LEAD);
  ck_assert_str_eq (hit_at (100, 0, 1, 0).id, "wire");
  ck_assert_int_ne (hit_at (100, 0, 20, 0).kind, HIT_LEAD);
  Canvas canvas = painted (1);
  const Point at = px (110, 4);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { at.x - 6, at.y - 6 }, { at.x + 6, at.y + 6 } }, easel->look.construction), 0.01);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (nodes_of_the_selected_side_outline_and_fin_are_caught)
{
  Hit hit;

  ck_assert_int_ne (hit_at (160, 34, 2, 2).kind, HIT_NODE);
  easel_select (easel, selection_of ("body"));
  hit = hit_at (160, 34, 2, 2);
  ck_assert_int_eq (hit.kind, HIT_NODE);
  ck_assert_uint_eq (hit.index, 2);
  easel_select (easel, selection_of ("fin"));
  hit = hit_at (421, 70, -4, 2);
  ck_assert_int_eq (hit.kind, HIT_NODE);
  ck_assert_str_eq (hit.id, "fin");
  ck_assert_uint_eq (hit.index, 1);
}
END_TEST

START_TEST (without_a_side_outline_parts_wing_and_fin_still_stand)
{
  Canvas canvas;

  easel_free (easel);
  put_up (racer ());
  canvas = painted (1);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 0, 0 }, { side.width, side.height } }, easel->look.graphite), 0.002);
  canvas_clear (&canvas);
  ck_assert_int_eq (hit_at (430, 50, 0, 0).kind, HIT_SURFACE);
  ck_assert_double_ge (side_view_wanted_width (&easel->scene), 110);
}
END_TEST

START_TEST (an_empty_aeroplane_leaves_an_empty_strip)
{
  Canvas canvas;

  easel_free (easel);
  put_up (aeroplane_new ());
  canvas = painted (1);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { side.width, side.height } }, easel->look.graphite), 0);
  canvas_clear (&canvas);
  ck_assert_double_eq (side_view_wanted_width (&easel->scene), 110);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("side view");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, height_runs_to_the_right_at_the_sheets_scale);
  tcase_add_test (tests, the_strip_is_as_wide_as_it_needs_within_bounds);
  tcase_add_loop_test (tests, every_look_paints_the_whole_strip, 0, LOOK_DARK_CONTRAST + 1);
  tcase_add_test (tests, the_balance_disc_stands_at_its_height);
  tcase_add_test (tests, incidence_puts_the_trailing_edge_lower);
  tcase_add_loop_test (tests, each_thing_is_found_where_it_is_drawn, 0, G_N_ELEMENTS (expected));
  tcase_add_test (tests, a_lead_is_drawn_and_found_from_the_side);
  tcase_add_test (tests, nodes_of_the_selected_side_outline_and_fin_are_caught);
  tcase_add_test (tests, without_a_side_outline_parts_wing_and_fin_still_stand);
  tcase_add_test (tests, an_empty_aeroplane_leaves_an_empty_strip);
  return run_suite (suite_create ("drawing side-view"), tests);
}
