#include "drawing/part-symbols.h"
#include <math.h>
#include <string.h>
#include "document/part-class.h"
#include "support/canvas.h"
#include "support/run-suite.h"

static const Colour ground = { 0.7, 0.8, 0.9, 1 };      /* of no role, so that a fill shows */
static const Box box = { { 40.5, 30.5 }, { 70.5, 85.5 } };
static Look look;

static void set_up (void) { look = look_for_screen (LOOK_LIGHT, 1); }

static Canvas
painted (PartSymbol part)
{
  Canvas canvas = canvas_new (120, 120, 2, ground);

  draw_part_symbol (canvas.cr, &look, &part);
  return canvas;
}

static bool
same_picture (const Canvas *a, const Canvas *b)
{
  const size_t size = (size_t) cairo_image_surface_get_stride (a->surface) * cairo_image_surface_get_height (a->surface);

  cairo_surface_flush (a->surface);
  cairo_surface_flush (b->surface);
  return memcmp (cairo_image_surface_get_data (a->surface), cairo_image_surface_get_data (b->surface), size) == 0;
}

/* Loops over the classes; "other" is the plain box itself, cowl and canopy are shells alike. */
START_TEST (every_class_is_told_from_a_plain_box)
{
  const char *word = part_classes ()[_i].word;
  Canvas plain = painted ((PartSymbol) { .box = box }), own = painted ((PartSymbol) { .class_word = word, .box = box });

  ck_assert_msg (same_picture (&plain, &own) == (strcmp (word, "other") == 0), "%s", word);
  canvas_clear (&plain);
  canvas_clear (&own);
}
END_TEST

static const char *const boxes[] = { "motor", "battery", "controller", "receiver", "servo", "switch" };

/* A halo makes room round a filled box; what lies inside would be covered all the same. */
START_TEST (a_halo_is_spared_what_lies_within_a_filled_box)
{
  const bool reaches_out = strcmp (boxes[_i], "motor") == 0 || strcmp (boxes[_i], "receiver") == 0 || strcmp (boxes[_i], "servo") == 0;
  Canvas plain, own;

  look.halo = true;
  plain = painted ((PartSymbol) { .box = box });
  own = painted ((PartSymbol) { .class_word = boxes[_i], .box = box });
  if (strcmp (boxes[_i], "battery") == 0)      /* its corners are rounded */
    ck_assert (colour_distance (canvas_at (&own, 55, 37), canvas_at (&plain, 55, 37)) < 0.01);
  else
    ck_assert_msg (same_picture (&plain, &own) != reaches_out, "%s", boxes[_i]);
  canvas_clear (&plain);
  canvas_clear (&own);
}
END_TEST

START_TEST (below_fourteen_pixels_only_the_box_remains)
{
  const Box small = { { 40.5, 30.5 }, { 53, 43 } };
  Canvas plain = painted ((PartSymbol) { .box = small }), own = painted ((PartSymbol) { .class_word = boxes[_i], .box = small });

  if (strcmp (boxes[_i], "battery") == 0)      /* its corners are rounded at any size */
    ck_assert (colour_distance (canvas_at (&own, 46, 37), canvas_at (&plain, 46, 37)) < 0.01);
  else
    ck_assert_msg (same_picture (&plain, &own), "%s", boxes[_i]);
  canvas_clear (&plain);
  canvas_clear (&own);
}
END_TEST

START_TEST (a_part_without_size_is_six_pixels_about_its_middle)
{
  const Box grown = part_symbol_box (&look, (Box) { { 50, 60 }, { 50, 60 } });

  ck_assert_double_eq (grown.min.x, 47);
  ck_assert_double_eq (grown.max.x, 53);
  ck_assert_double_eq (grown.min.y, 57);
  ck_assert_double_eq (grown.max.y, 63);
}
END_TEST

START_TEST (a_part_is_drawn_true_to_its_box)
{
  Canvas canvas = painted ((PartSymbol) { .box = box });
  const Box marked = canvas_marked (&canvas, ground);

  /* half its line, 0.6 px, and the pixel it is put on */
  ck_assert_double_eq_tol (marked.min.x, box.min.x, 1.1);
  ck_assert_double_eq_tol (marked.max.x, box.max.x, 1.1);
  ck_assert_double_eq_tol (marked.min.y, box.min.y, 1.1);
  ck_assert_double_eq_tol (marked.max.y, box.max.y, 1.1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (ballast_is_solid)
{
  Canvas canvas = painted ((PartSymbol) { .class_word = "ballast", .box = box });

  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 42, 32 }, { 69, 84 } }, look.graphite), 0.999);
  canvas_clear (&canvas);
}
END_TEST

static const char *const shells[] = { "spinner", "cowl", "canopy", "pushrod" };

START_TEST (shells_and_sticks_hide_nothing_behind_them)
{
  Canvas canvas = painted ((PartSymbol) { .class_word = shells[_i], .box = box });

  ck_assert (!part_symbol_is_solid (shells[_i]));
  ck_assert_msg (canvas_share (&canvas, box, ground) > 0.7, "%s", shells[_i]);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (a_proposal_and_a_part_left_out_are_broken_and_empty)
{
  const PartState states[] = { PART_PROPOSED, PART_LEFT_OUT };

  for (int i = 0; i < 2; i++)
    {
      Canvas canvas = painted ((PartSymbol) { .class_word = "other", .box = box, .state = states[i] });
      const Colour ink = i == 0 ? look.selection : look.construction;
      const double edge = canvas_share (&canvas, (Box) { { 40, 36 }, { 41, 80 } }, ink);

      ck_assert (colour_distance (canvas_at (&canvas, 55, 55), ground) < 0.01);
      ck_assert_double_gt (edge, 0.3);
      ck_assert_double_lt (edge, 0.8);
      canvas_clear (&canvas);
    }
}
END_TEST

START_TEST (selected_is_thicker_and_in_its_colour)
{
  Canvas settled = painted ((PartSymbol) { .box = box }), selected = painted ((PartSymbol) { .box = box, .state = PART_SELECTED });
  const Box around = { { 38, 28 }, { 73, 88 } };

  ck_assert_double_gt (canvas_share (&selected, around, look.selection), 1.3 * canvas_share (&settled, around, look.graphite));
  ck_assert_double_eq (canvas_share (&selected, around, look.graphite), 0);
  canvas_clear (&settled);
  canvas_clear (&selected);
}
END_TEST

START_TEST (from_the_side_a_propeller_is_the_line_of_its_disc)
{
  Canvas canvas = painted ((PartSymbol) { .class_word = "propeller", .box = { { 10, 55 }, { 110, 65 } }, .side = true });
  const Box marked = canvas_marked (&canvas, ground);

  ck_assert_double_lt (marked.max.y - marked.min.y, 3);
  ck_assert_double_gt (marked.max.x - marked.min.x, 90);
  canvas_clear (&canvas);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part symbols");
  int classes = 0;

  while (part_classes ()[classes].word)
    classes++;
  tcase_add_checked_fixture (tests, set_up, NULL);
  tcase_add_loop_test (tests, every_class_is_told_from_a_plain_box, 0, classes);
  tcase_add_loop_test (tests, below_fourteen_pixels_only_the_box_remains, 0, 6);
  tcase_add_loop_test (tests, a_halo_is_spared_what_lies_within_a_filled_box, 0, 6);
  tcase_add_test (tests, a_part_without_size_is_six_pixels_about_its_middle);
  tcase_add_test (tests, a_part_is_drawn_true_to_its_box);
  tcase_add_test (tests, ballast_is_solid);
  tcase_add_loop_test (tests, shells_and_sticks_hide_nothing_behind_them, 0, 4);
  tcase_add_test (tests, a_proposal_and_a_part_left_out_are_broken_and_empty);
  tcase_add_test (tests, selected_is_thicker_and_in_its_colour);
  tcase_add_test (tests, from_the_side_a_propeller_is_the_line_of_its_disc);
  return run_suite (suite_create ("drawing part-symbols"), tests);
}
