#include "drawing/wall-sheet.h"
#include <math.h>
#include <string.h>
#include "drawing/lettering-font.h"
#include "drawing/wall-sheet-frame.h"
#include "drawing/wall-sheet-layout.h"
#include "drawing/wall-sheet-section.h"
#include "drawing/wall-sheet-title.h"
#include "support/canvas.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/sheets.h"

/* A sheet laid out by hand, so that its arrangement can be looked at. */
typedef struct {
  WallSheet sheet;
  Look look;
  SheetBlocks blocks[2];
  SheetArrangement arrangement;
} LaidSheet;

static LaidSheet *
laid_new (Aeroplane *takes, const char *paper, bool portrait, LengthUnit length)
{
  LaidSheet *self = g_new0 (LaidSheet, 1);

  lettering_font_add ();
  self->sheet = (WallSheet) {
    .figures = figures_once (takes), .units = { length, length == LENGTH_MM ? MASS_G : MASS_OZ }, .paper = paper_find (paper),
    .portrait = portrait, .date = "" };
  aeroplane_unref (takes);
  self->look = look_for_paper ();
  ck_assert (layout_arrange (&self->sheet, &self->look, self->blocks, &self->arrangement));
  return self;
}

static void
laid_free (LaidSheet *self)
{
  plan_notes_clear (&self->arrangement.notes);
  sheet_blocks_clear (self->blocks);
  figures_unref ((Figures *) self->sheet.figures);
  g_free (self);
}

static const struct { const char *paper; bool portrait; LengthUnit length; } papers[] = {
  { "a4", false, LENGTH_MM }, { "a4", true, LENGTH_INCH }, { "a3", false, LENGTH_INCH }, { "letter", false, LENGTH_INCH },
  { "letter", true, LENGTH_MM }, { "tabloid", false, LENGTH_MM }, { "a3", true, LENGTH_MM } };
enum { PAPERS = G_N_ELEMENTS (papers) };

static void
check_blocks_apart (const LaidSheet *laid, const char *what)
{
  const BlockPlace *blocks = laid->arrangement.blocks;
  const Box frame = wall_frame_box (&laid->sheet);

  for (int i = 0; i < BLOCK_COUNT; i++)
    {
      const Box a = blocks[i].box;

      if (blocks[i].form < 0)
        continue;
      ck_assert_msg (!boxes_meet (a, wall_title_box (&laid->sheet)), "%s: block %d is in the title block", what, i);
      ck_assert_msg (a.min.x > frame.min.x && a.min.y > frame.min.y && a.max.x < frame.max.x && a.max.y < frame.max.y,
                     "%s: block %d is clipped by the frame", what, i);
      for (int j = 0; j < i; j++)
        ck_assert_msg (blocks[j].form < 0 || !boxes_meet (a, blocks[j].box), "%s: blocks %d and %d overlap", what, i, j);
    }
}

static const Colour white = { 1, 1, 1, 1 };

static bool
is_white (const Canvas *canvas, Box box)
{
  return canvas_share (canvas, box, white) == 1;
}

/* The views alone, painted finer than the layout looked at them, leave blocks, title block and margin white. */
static void
check_views_clear (const LaidSheet *laid, const char *what)
{
  const Box frame = wall_frame_box (&laid->sheet);
  double width, height;
  Canvas canvas;
  SheetPen pen;

  wall_sheet_size (&laid->sheet, &width, &height);
  canvas = canvas_new (width, height, 4, white);
  pen = pen_begin (canvas.cr, &laid->sheet, &laid->look);
  views_draw (&pen, &laid->arrangement);
  for (int i = 0; i < BLOCK_COUNT; i++)
    if (laid->arrangement.blocks[i].form >= 0)
      ck_assert_msg (is_white (&canvas, laid->arrangement.blocks[i].box), "%s: something of the views lies in block %d", what, i);
  ck_assert_msg (is_white (&canvas, wall_title_box (&laid->sheet)), "%s: the title block", what);
  ck_assert_msg (is_white (&canvas, (Box) { { 0, 0 }, { width, frame.min.y } }), "%s: above the frame", what);
  ck_assert_msg (is_white (&canvas, (Box) { { 0, 0 }, { frame.min.x, height } }), "%s: left of the frame", what);
  ck_assert_msg (is_white (&canvas, (Box) { { frame.max.x, 0 }, { width, height } }), "%s: right of the frame", what);
  ck_assert_msg (is_white (&canvas, (Box) { { 0, frame.max.y }, { width, height } }), "%s: below the frame", what);
  canvas_clear (&canvas);
}

/* Every block keeps to the box that was measured for it. */
static void
check_blocks_keep_within (const LaidSheet *laid, const char *what)
{
  const BlockPlace *blocks = laid->arrangement.blocks;
  const double hair = 0.3;      /* mm: a pixel's blur at this fineness */

  for (int i = 0; i < BLOCK_COUNT; i++)
    {
      Canvas canvas = canvas_new (450, 450, 4, white);
      SheetPen pen = pen_begin (canvas.cr, &laid->sheet, &laid->look);
      Box ink, box = blocks[i].box;

      if (blocks[i].form >= 0)
        {
          sheet_block_draw (&pen, &laid->blocks[laid->arrangement.small], i, blocks[i].form, box.min);
          ink = canvas_marked (&canvas, white);
          ck_assert_msg (ink.min.x > box.min.x - hair && ink.min.y > box.min.y - hair && ink.max.x < box.max.x + hair && ink.max.y < box.max.y + hair,
                         "%s: block %d outgrows its box", what, i);
        }
      canvas_clear (&canvas);
    }
}

START_TEST (nothing_on_a_sheet_lies_on_anything_else)
{
  const SheetCase *c = &sheet_cases ()[_i / 2];
  const int p = _i % 2 ? 1 + _i / 2 % (PAPERS - 1) : 0;      /* each on A4, where it is tightest, and on one other */
  g_autofree char *what = g_strdup_printf ("%s on %s%s", c->what, papers[p].paper, papers[p].portrait ? " portrait" : "");
  LaidSheet *laid = laid_new (c->make (), papers[p].paper, papers[p].portrait, papers[p].length);

  check_blocks_apart (laid, what);
  check_views_clear (laid, what);
  check_blocks_keep_within (laid, what);
  laid_free (laid);
}
END_TEST

/* The mark is what the sheet is for: on a desk's paper, either way up, it is there at full size with both limits before it is broken off. */
START_TEST (the_mark_stands_at_full_size_on_the_papers_of_a_desk)
{
  static Aeroplane *(*const make[]) (void) = { example_racer, example_tourer, of_700_mm };
  const char *paper = _i & 1 ? "letter" : "a4";
  LaidSheet *laid = laid_new (make[_i / 4] (), paper, _i & 2, LENGTH_MM);
  const MarkFigures *mark = section_mark (&laid->sheet);

  ck_assert_ptr_nonnull (mark);
  ck_assert_double_lt (mark->aft_mm, mark->chord_mm);
  ck_assert_msg (laid->arrangement.blocks[BLOCK_SECTION].form < SECTION_FORM_MISSING, "%s on %s", wall_sheet_title (&laid->sheet), paper);
  ck_assert_double_gt (box_width (laid->arrangement.blocks[BLOCK_SECTION].box), mark->aft_mm);
  check_blocks_apart (laid, paper);
  laid_free (laid);
}
END_TEST

START_TEST (findings_on_paper_ask_for_nothing_to_be_typed)
{
  LaidSheet *laid = laid_new (of_700_mm (), "a4", false, LENGTH_MM);
  const char *const *notes = (const char *const *) laid->blocks[0].notes;

  ck_assert (g_strv_contains (notes, "“tail” is not weighed yet."));
  for (size_t i = 0; notes[i] != NULL; i++)
    ck_assert_msg (strstr (notes[i], "under Structure") == NULL, "%s", notes[i]);
  laid_free (laid);
}
END_TEST

START_TEST (structures_of_no_mass_are_as_good_as_none_on_paper_too)
{
  Aeroplane *made = example_racer ();

  for (size_t i = 0; i < aeroplane_count (made, PIECE_STRUCTURE); i++)
    {
      const Piece *old = aeroplane_nth (made, PIECE_STRUCTURE, i);
      Structure *nothing = (Structure *) piece_dup (old);
      Aeroplane *before = made;

      nothing->mass = 0;
      made = aeroplane_with_replaced (before, old, &nothing->piece);
      aeroplane_unref (before);
    }
  LaidSheet *laid = laid_new (made, "a4", false, LENGTH_MM);

  ck_assert (g_strv_contains ((const char *const *) laid->blocks[0].notes, "The structure has no mass yet."));
  laid_free (laid);
}
END_TEST

START_TEST (balloons_and_their_leaders_keep_clear_of_one_another)
{
  LaidSheet *laid = laid_new (_i ? example_tourer () : example_racer (), "a3", false, LENGTH_MM);
  const GArray *balloons = laid->arrangement.notes.balloons;

  ck_assert_uint_eq (balloons->len, 10);      /* as many as the example has parts */
  for (guint i = 0; i < balloons->len; i++)
    for (guint j = 0; j < i; j++)
      {
        const Balloon *a = &g_array_index (balloons, Balloon, i), *b = &g_array_index (balloons, Balloon, j);

        ck_assert_int_ne (a->number, b->number);
        ck_assert_double_gt (point_distance (a->at, b->at), 2 * 3.4);      /* circles of 6.8 mm */
      }
  laid_free (laid);
}
END_TEST

/* The views without the small names. */
static Canvas
views_without_names (const LaidSheet *laid)
{
  SheetArrangement bare = laid->arrangement;
  double width, height;
  Canvas canvas;
  SheetPen pen;

  bare.notes = plan_notes_copy (&laid->arrangement.notes);
  for (guint i = bare.notes.words->len; i-- > 0; )
    if (g_array_index (bare.notes.words, PlanWord, i).caps == caps_field)
      g_array_remove_index (bare.notes.words, i);
  wall_sheet_size (&laid->sheet, &width, &height);
  canvas = canvas_new (width, height, 4, white);
  pen = pen_begin (canvas.cr, &laid->sheet, &laid->look);
  views_draw (&pen, &bare);
  plan_notes_clear (&bare.notes);
  return canvas;
}

/* On a desk's paper some are hemmed in: a rib at the body, a former at the fin. */
static const struct { Aeroplane *(*make) (void); const char *paper; unsigned formers, ribs; } named[] = {
  { example_racer, "a4", 10, 12 }, { example_racer, "a3", 10, 13 }, { example_tourer, "letter", 9, 8 }, { example_tourer, "a3", 10, 8 } };

START_TEST (formers_and_ribs_are_named_where_nothing_else_stands)
{
  LaidSheet *laid = laid_new (named[_i].make (), named[_i].paper, false, LENGTH_MM);
  const GArray *words = laid->arrangement.notes.words;
  Canvas canvas = views_without_names (laid);
  const SheetPen pen = pen_begin (NULL, &laid->sheet, &laid->look);
  unsigned formers = 0, ribs = 0;

  for (guint i = 0; i < words->len; i++)
    {
      const PlanWord *word = &g_array_index (words, PlanWord, i);
      const Letters letters = { .text = word->text, .place = word->at, .size = look_em_of_caps (&laid->look, caps_field), .across = word->across,
                                .rise = word->rise, .turned = word->turned };

      if (word->caps != caps_field)
        continue;
      formers += word->text[0] == 'F';
      ribs += word->text[0] == 'R';
      ck_assert_msg (is_white (&canvas, lettering_box (&pen.lettering, &letters)), "%s lies on something", word->text);
    }
  ck_assert_uint_ge (formers, named[_i].formers);
  ck_assert_uint_ge (ribs, named[_i].ribs);
  canvas_clear (&canvas);
  laid_free (laid);
}
END_TEST

/* Span 640, length 463, and what stands round them: on A3 the drawing is 1 : 2.5, with the section whole. */
START_TEST (the_racer_on_a3_is_drawn_1_to_2_5_with_its_section)
{
  LaidSheet *laid = laid_new (example_racer (), "a3", false, LENGTH_MM);

  ck_assert_double_eq_tol (1 / laid->arrangement.scale, 2.5, 1e-9);
  ck_assert_int_eq (laid->arrangement.blocks[BLOCK_SECTION].form, SECTION_FORM_WHOLE);
  ck_assert (laid->arrangement.has_side);
  laid_free (laid);
}
END_TEST

START_TEST (a_larger_paper_never_has_a_smaller_drawing)
{
  static const char *const sizes[] = { "a4", "a3", "a2", "a1", "a0" };
  double before = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      LaidSheet *laid = laid_new (example_racer (), sizes[i], false, LENGTH_MM);

      ck_assert_double_ge (laid->arrangement.scale, before);
      before = laid->arrangement.scale;
      laid_free (laid);
    }
  ck_assert_double_eq (before, 1);      /* at least on A0 it stands at full size, and never above */
}
END_TEST

START_TEST (both_views_share_scale_and_axis)
{
  LaidSheet *laid = laid_new (example_racer (), "tabloid", false, LENGTH_INCH);
  const SheetArrangement *made = &laid->arrangement;

  ck_assert_double_eq (made->plan.scale, made->scale);
  ck_assert_double_eq (made->side.scale, made->scale);
  ck_assert_double_eq (made->plan.origin_y, made->side.origin_y);
  ck_assert_double_gt (made->side.origin_x, made->plan.origin_x);      /* first angle: the port side stands at the right */
  laid_free (laid);
}
END_TEST

/* ISO 5457, from memory: 20 mm at the left for filing, 10 mm elsewhere; ISO 7200: a title block of 180 mm. */
START_TEST (frame_and_title_block_have_their_sizes)
{
  const WallSheet sheet = { .paper = paper_find ("a4"), .portrait = true, .date = "" };
  const Box frame = wall_frame_box (&sheet), title = wall_title_box (&sheet);

  ck_assert_double_eq (frame.min.x, 20);
  ck_assert_double_eq (frame.min.y, 10);
  ck_assert_double_eq_tol (frame.max.x, 200, 1e-9);
  ck_assert_double_eq_tol (frame.max.y, 287, 1e-9);
  ck_assert_double_eq_tol (title.max.x - title.min.x, 180, 1e-9);
  ck_assert_double_eq_tol (title.max.y - title.min.y, 40, 1e-9);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("wall sheet");
  int cases = 0;

  while (sheet_cases ()[cases].what != NULL)
    cases++;
  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, nothing_on_a_sheet_lies_on_anything_else, 0, 2 * cases);
  tcase_add_loop_test (tests, the_mark_stands_at_full_size_on_the_papers_of_a_desk, 0, 12);
  tcase_add_test (tests, structures_of_no_mass_are_as_good_as_none_on_paper_too);
  tcase_add_test (tests, findings_on_paper_ask_for_nothing_to_be_typed);
  tcase_add_loop_test (tests, balloons_and_their_leaders_keep_clear_of_one_another, 0, 2);
  tcase_add_loop_test (tests, formers_and_ribs_are_named_where_nothing_else_stands, 0, G_N_ELEMENTS (named));
  tcase_add_test (tests, the_racer_on_a3_is_drawn_1_to_2_5_with_its_section);
  tcase_add_test (tests, a_larger_paper_never_has_a_smaller_drawing);
  tcase_add_test (tests, both_views_share_scale_and_axis);
  tcase_add_test (tests, frame_and_title_block_have_their_sizes);
  return run_suite (suite_create ("drawing wall sheet"), tests);
}
