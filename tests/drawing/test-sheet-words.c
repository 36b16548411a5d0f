#include <math.h>
#include "drawing/part-symbols.h"
#include "drawing/sheet-draft.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static Easel *easel;
static Canvas canvas;
static SheetDraft draft;

/* A sheet under way: everything is taken that words keep off. */
static void
begin (Aeroplane *takes)
{
  easel = easel_new (takes);
  canvas = canvas_new (easel->view.width, easel->view.height, 1, easel->look.sheet);
  draft = (SheetDraft) {
    .cr = canvas.cr, .scene = &easel->scene, .look = &easel->look, .view = &easel->view, .figures = easel->figures,
    .aeroplane = easel->figures->aeroplane, .selection = &easel->selection };
  draft.lettering = lettering_begin (canvas.cr, &easel->look);
  sheet_take_all (&draft);
}

static void
end (void)
{
  canvas_clear (&canvas);
  easel_free (easel);
}

static Box
around (Point at, double half)
{
  return (Box) { { at.x - half, at.y - half }, { at.x + half, at.y + half } };
}

static Aeroplane *
with_propeller_and_motor (void)
{
  Part *propeller = part_new ("fan", "propeller"), *motor = part_new ("engine", "motor");

  propeller->x = -20;
  propeller->length = 10;
  propeller->width = 160;
  motor->x = 30;
  motor->length = motor->width = 28;
  return with_piece (with_piece (racer (), propeller), motor);
}

START_TEST (words_keep_off_signs_axes_bodies_and_the_scale_bar)
{
  Box motor;

  begin (with_propeller_and_motor ());
  motor = part_symbol_box (&easel->look, box_to_screen (&easel->view, (Box) { { 16, -14 }, { 44, 14 } }));
  ck_assert (!sheet_is_free (&draft, around ((Point) { 60, easel->view.origin_y }, 1)));                       /* the datum */
  ck_assert (!sheet_is_free (&draft, around ((Point) { easel->view.origin_x, motor.min.y - 5 }, 1)));         /* the shaft */
  ck_assert (!sheet_is_free (&draft, around (sheet_px (&easel->view, -20, 70), 1)));                          /* a blade */
  ck_assert (!sheet_is_free (&draft, around (sheet_px (&easel->view, 300, sheet_half_width (draft.aeroplane, 300)), 4)));
  ck_assert (!sheet_is_free (&draft, around ((Point) { 60, easel->view.height - 18 }, 1)));                    /* the scale bar */
  ck_assert (sheet_is_free (&draft, around (sheet_px (&easel->view, 300, 200), 4)));
  end ();
}
END_TEST

/* However many places a detailed outline takes, words that come after it still keep off one another. */
START_TEST (names_keep_off_one_another_on_a_sheet_full_of_lines)
{
  const Letters there = { .text = "Servo", .place = { 500, 600 } }, other = { .text = "Switch", .place = { 503, 603 } };

  begin (racer_in_full ());
  for (int i = 0; i < 1500; i++)
    sheet_take (&draft, (Box) { { i % 20, i / 20 % 20 }, { i % 20 + 1, i / 20 % 20 + 1 } });
  for (int i = 0; i < 4000; i++)
    sheet_take (&draft, (Box) { { -50 - i, -50 }, { -40 - i, -40 } });      /* outside the window: it takes nothing from what is seen */
  ck_assert_int_eq (sheet_put_word (&draft, &there, 1), 0);
  ck_assert_int_eq (sheet_put_word (&draft, &other, 1), -1);
  end ();
}
END_TEST

/* At the window's edge, with every place taken: it stands on the side where it fits, not pushed over the thing that it speaks of. */
START_TEST (a_word_that_must_be_said_does_not_cover_what_it_speaks_of)
{
  Point node;

  begin (racer_in_full ());
  node = (Point) { easel->view.width - 20, 600 };
  sheet_take (&draft, (Box) { { 0, 0 }, { easel->view.width, easel->view.height } });
  sheet_put_word_anyway (&draft, (Letters[]) {
    { .text = "the outline is open here", .place = { node.x + 16, node.y }, .rise = LETTERS_AT_MIDDLE },
    { .text = "the outline is open here", .place = { node.x - 16, node.y }, .across = 1, .rise = LETTERS_AT_MIDDLE } }, 2);
  ck_assert_double_eq (canvas_share (&canvas, around (node, 12), easel->look.sheet), 1);
  ck_assert_double_lt (canvas_share (&canvas, (Box) { { node.x - 100, node.y - 6 }, { node.x - 20, node.y + 6 } }, easel->look.sheet), 0.95);
  end ();
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sheet words");

  tcase_add_test (tests, words_keep_off_signs_axes_bodies_and_the_scale_bar);
  tcase_add_test (tests, names_keep_off_one_another_on_a_sheet_full_of_lines);
  tcase_add_test (tests, a_word_that_must_be_said_does_not_cover_what_it_speaks_of);
  return run_suite (suite_create ("drawing sheet words"), tests);
}
