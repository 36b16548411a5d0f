#include "drawing/room-edges.h"
#include <math.h>
#include "drawing/side-places.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"

/* Which edges of parts stand out in the colour of warnings, where a part has no room. */

/* The racer with its battery moved to starboard and up. */
static Easel *
racer_with_battery (double y, double z)
{
  g_autoptr (Aeroplane) racer = racer_in_full ();
  const Part *battery = aeroplane_part_by_id (racer, "battery");
  Part *moved = (Part *) piece_dup (&battery->piece);

  moved->y = y;
  moved->z = z;
  return easel_new (aeroplane_with_replaced (racer, &battery->piece, &moved->piece));
}

static double
warning_at (const Easel *easel, const SheetView *view, Point mm, bool side)
{
  Canvas canvas = canvas_new (800, 800, 2, easel->look.sheet);
  const Point at = view_to_screen (view, mm);

  draw_room_edges (canvas.cr, &easel->look, view, easel->figures, side);
  const double share = canvas_share (&canvas, (Box) { { at.x - 2, at.y - 2 }, { at.x + 2, at.y + 2 } }, easel->look.warning);
  canvas_clear (&canvas);
  return share;
}

START_TEST (a_part_through_the_side_shows_the_edge_that_reaches_out)
{
  Easel *easel = racer_with_battery (14, 0);
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");

  ck_assert_double_gt (warning_at (easel, &easel->view, (Point) { battery->x, 14 + battery->width / 2 }, false), 0.3);
  ck_assert_double_eq (warning_at (easel, &easel->view, (Point) { battery->x, 14 - battery->width / 2 }, false), 0);
  easel_free (easel);
}
END_TEST

START_TEST (a_part_through_the_top_shows_it_in_the_side_view_alone)
{
  Easel *easel = racer_with_battery (0, 24);
  const SideScene side = { .scene = &easel->scene, .width = 163, .height = 704 };
  const SheetView view = side_view_of (&side);
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");

  ck_assert_double_gt (warning_at (easel, &view, (Point) { battery->x, 24 + battery->height / 2 }, true), 0.3);
  ck_assert_double_eq (warning_at (easel, &view, (Point) { battery->x, 24 - battery->height / 2 }, true), 0);
  ck_assert_double_eq (warning_at (easel, &easel->view, (Point) { battery->x, battery->width / 2 }, false), 0);
  easel_free (easel);
}
END_TEST

START_TEST (the_edges_are_on_the_sheet)
{
  Easel *easel = racer_with_battery (14, 0);
  const Part *battery = aeroplane_part_by_id (easel->figures->aeroplane, "battery");
  const Point at = view_to_screen (&easel->view, (Point) { battery->x + battery->length / 4, 14 + battery->width / 2 });
  Canvas canvas = easel_painted (easel, 2);

  ck_assert_double_gt (canvas_share (&canvas, (Box) { { at.x - 2, at.y - 2 }, { at.x + 2, at.y + 2 } }, easel->look.warning), 0.3);
  canvas_clear (&canvas);
  easel_free (easel);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("edges");

  tcase_add_test (tests, a_part_through_the_side_shows_the_edge_that_reaches_out);
  tcase_add_test (tests, a_part_through_the_top_shows_it_in_the_side_view_alone);
  tcase_add_test (tests, the_edges_are_on_the_sheet);
  return run_suite (suite_create ("room edges"), tests);
}
