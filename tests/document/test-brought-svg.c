/* Drawings in SVG. The examples are those of the specification, Scalable Vector Graphics (SVG) 1.1 (Second Edition), W3C 2011, named by
 * their file or section. Its x runs to the right, our y; its y down the page, our x. */
#include "brought-read.h"
#include "support/run-suite.h"

/* User units are millimetres in these. */
#define DRAWING(inside) "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>" inside "</svg>"
#define PATH(d) DRAWING ("<path d='" d "'/>")

static void
assert_same_lines (const char *a, const char *b)
{
  Brought *one = brought_from (a), *other = brought_from (b);

  ck_assert_uint_eq (one->count, other->count);
  for (size_t i = 0; i < one->count; i++)
    {
      const BroughtLine *left = &one->lines[i], *right = &other->lines[i];
      ck_assert_uint_eq (left->count, right->count);
      ck_assert_int_eq (left->closed, right->closed);
      for (size_t k = 0; k <= left->count; k++)
        assert_near (brought_node (left, k), brought_node (right, k).x, brought_node (right, k).y, 1e-9);
      for (size_t k = 0; k < left->count; k++)
        {
          assert_near (left->segments[k].control1, right->segments[k].control1.x, right->segments[k].control1.y, 1e-9);
          assert_near (left->segments[k].control2, right->segments[k].control2.x, right->segments[k].control2.y, 1e-9);
        }
    }
  brought_free (one);
  brought_free (other);
}

/* Each pair draws the same. */
static const struct { const char *because, *a, *b; } same[] = {
  { "8.3.1: blanks go where they are not needed", PATH ("M 100 100 L 200 200"), PATH ("M100 100L200 200") },
  { "8.3.1: a command that comes again need not be named", PATH ("M 100 200 L 200 100 L -100 -200"),
    PATH ("M 100 200 L 200 100 -100 -200") },
  { "8.3.2: pairs behind a move are lines", PATH ("M 100 200 L 200 100 L 5 6"), PATH ("M 100 200 200 100 5 6") },
  { "8.3.2: and relative behind a relative one", PATH ("M 100 200 L 110 210 L 115 216"), PATH ("m 100 200 10 10 5 6") },
  { "8.3.9: M 0.6.5 is 0.6 and 0.5", PATH ("M 0.6 0.5 L 9 9"), PATH ("M 0.6.5L9 9") },
  { "8.3.9: M 100-200 is 100 and -200", PATH ("M 100 -200 L 9 9"), PATH ("M 100-200L9 9") },
  { "8.3.9: exponents", PATH ("M 100 0.02 L 30 4"), PATH ("M 1e2,2E-2L.3e+2 4.") },
  { "8.3.4: across and down", PATH ("M 10 20 L 50 20 L 50 90 L 45 90 L 45 97"), PATH ("M10 20H50V90h-5v7") },
  { "8.3.3: behind a close the next part begins where the last did", PATH ("M10 10L50 10L50 60zM10 10L90 95"),
    PATH ("M10 10L50 10L50 60zL90 95") },
  { "8.3.3: so does a relative move", PATH ("M10 10L50 10L50 60zM13 14L90 95"), PATH ("M10 10L50 10L50 60z m3 4L90 95") },
  { "8.3.6: S goes on in the last handle's direction", PATH ("M0 0C0 40 30 50 60 50C90 50 100 30 100 0"),
    PATH ("M0 0C0 40 30 50 60 50S100 30 100 0") },
  { "8.3.6: S without a curve before it has its first handle at home", PATH ("M0 0L60 50C60 50 100 30 100 0"),
    PATH ("M0 0L60 50S100 30 100 0") },
  { "8.3.7: T mirrors the last handle", PATH ("M200,300 Q400,50 600,300 Q800,550 1000,300"), PATH ("M200,300 Q400,50 600,300 T1000,300") },
  { "8.3.7: T again and again", PATH ("M0 0Q10 20 20 0Q30 -20 40 0Q50 20 60 0"), PATH ("M0 0q10 20 20 0t20 0t20 0") },
  { "8.3.7: T without one before it is straight", PATH ("M0 0L20 0Q20 0 40 10"), PATH ("M0 0L20 0T40 10") },
  { "8.3.8: flags may stand right before numbers", PATH ("M10 10A 5 5 0 0 1 20 20"), PATH ("M10 10a5 5 0 0110 10") },
  { "8.3.8: several arcs behind one letter", PATH ("M10 10A5 5 0 0 1 20 20A5 5 0 0 1 30 30"), PATH ("M10 10a5 5 0 0110 10 5 5 0 0110 10") },
  { "F.6.2: without a radius an arc is straight", PATH ("M10 10L20 20"), PATH ("M10 10A0 5 0 0 1 20 20") },
  { "F.6.2: a radius below zero is its size", PATH ("M10 10A9 12 30 0 1 20 20"), PATH ("M10 10A-9 -12 30 0 1 20 20") },
  { "F.6.2: an arc to where it is draws nothing", PATH ("M10 10L20 20"), PATH ("M10 10A5 5 0 0 1 10 10L20 20") },
  { "F.6.6: radii too small grow until they reach", PATH ("M0 0A50 50 0 0 1 100 0"), PATH ("M0 0A5 5 0 0 1 100 0") },
  { "8.3.9: what was read before an error stays", PATH ("M0 0L10 10L20 30"), PATH ("M0 0L10 10L20 30L40") },
  { "8.3.9: a number in hexadecimal is none", PATH ("M0 0L10 10"), PATH ("M0 0L10 10L0x20 5") },
  { "7.4: transforms nest", DRAWING ("<path d='M150 260L151 260'/>"),
    DRAWING ("<g transform='translate(50,90)'><g transform='translate(100 170)'><path d='M0 0L1 0'/></g></g>") },
  { "7.6: a list is applied from the right", DRAWING ("<path d='M50 90L50 91'/>"),
    DRAWING ("<path transform='translate(50,90) rotate(90)' d='M0 0L1 0'/>") },
  { "7.6: a turn about a place", DRAWING ("<path d='M10 20L10 30'/>"), DRAWING ("<path transform='rotate(90,10,20)' d='M10 20L20 20'/>") },
  { "7.6: matrix", DRAWING ("<path d='M12 15L14 18'/>"), DRAWING ("<path transform='matrix(2 3 4 5 6 7)' d='M1 1L2 1'/>") },
  { "7.6: one factor scales both ways", DRAWING ("<path d='M20 40L60 80'/>"), DRAWING ("<path transform='scale(2)' d='M10 20L30 40'/>") },
  { "7.6: skewX moves x by y", DRAWING ("<path d='M40 30L30 20'/>"), DRAWING ("<path transform='skewX(45)' d='M10 30L10 20'/>") },
  { "7.6: skewY moves y by x", DRAWING ("<path d='M10 40L20 40'/>"), DRAWING ("<path transform='skewY(45)' d='M10 30L20 20'/>") },
  { "9.2: a box", DRAWING ("<path d='M10 20h30v40h-30z'/>"), DRAWING ("<rect x='10' y='20' width='30' height='40'/>") },
  { "9.5: a line", DRAWING ("<path d='M10 20L30 40'/>"), DRAWING ("<line x1='10' y1='20' x2='30' y2='40'/>") },
  { "9.6 and 9.7: corners", DRAWING ("<path d='M10 20L30 40L5 60z'/>"), DRAWING ("<polygon points='10,20 30,40 5,60'/>") },
  { "9.6: a polyline stays open", DRAWING ("<path d='M10 20L30 40L5 60'/>"), DRAWING ("<polyline points='10,20 30,40,5 60'/>") },
  { "a drawing within the drawing has its own place and scale", DRAWING ("<path d='M110 220L150 260'/>"),
    DRAWING ("<svg x='100' y='200' width='100' height='100' viewBox='0 0 50 50'><path d='M5 10L25 30'/></svg>") },
};

START_TEST (different_words_for_the_same_drawing_bring_the_same_lines)
{
  assert_same_lines (same[_i].a, same[_i].b);
}
END_TEST

/* triangle01: width="4cm" height="4cm" viewBox="0 0 400 400" */
START_TEST (the_triangle_of_the_specification_has_its_size_and_is_closed)
{
  Brought *read = brought_from ("<?xml version=\"1.0\" standalone=\"no\"?>\n"
    "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n"
    "<svg width=\"4cm\" height=\"4cm\" viewBox=\"0 0 400 400\" xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\">"
    "<path id=\"t\" d=\"M 100 100 L 300 100 L 200 300 z\"/></svg>");
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (read->count, 1);
  ck_assert (read->unit_known && line->closed);
  ck_assert_str_eq (line->name, "t");
  ck_assert_uint_eq (line->count, 3);
  assert_near (line->start, 10, 10, 1e-12);
  assert_near (brought_node (line, 1), 10, 30, 1e-12);
  assert_near (brought_node (line, 2), 30, 20, 1e-12);
  ck_assert (line->segments[2].to.x == line->start.x && line->segments[2].to.y == line->start.y);
  brought_free (read);
}
END_TEST

/* cubic01: the second handle is the first curve's last one, mirrored at (250, 200). */
START_TEST (the_cubic_example_keeps_its_handles_exactly)
{
  Brought *read = brought_from ("<svg width='5cm' height='4cm' viewBox='0 0 500 400' xmlns='http://www.w3.org/2000/svg'>"
    "<path d='M100,200 C100,100 250,100 250,200 S400,300 400,200'/></svg>");
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (line->count, 2);
  ck_assert_int_eq (line->segments[0].kind, SEGMENT_CURVE);
  assert_near (line->segments[0].control1, 10, 10, 1e-12);
  assert_near (line->segments[0].control2, 10, 25, 1e-12);
  assert_near (line->segments[1].control1, 30, 25, 1e-12);
  assert_near (line->segments[1].to, 20, 40, 1e-12);
  brought_free (read);
}
END_TEST

/* quad01: half-way along a quadratic curve it is at a quarter of each end and half of its handle. */
START_TEST (a_quadratic_curve_is_the_cubic_that_it_is)
{
  Brought *read = brought_from (PATH ("M200,300 Q400,50 600,300"));

  assert_near (segment_at (read->lines[0].start, &read->lines[0].segments[0], 0.5), 0.25 * 300 + 0.5 * 50 + 0.25 * 300,
               0.25 * 200 + 0.5 * 400 + 0.25 * 600, 1e-9);
  brought_free (read);
}
END_TEST

/* Largest difference between a line's distance from `centre` and `radius`. */
static double
off_circle (const BroughtLine *line, size_t from, size_t to, Point centre, double radius)
{
  double most = 0;

  for (size_t i = from; i < to; i++)
    for (int k = 0; k <= 16; k++)
      most = fmax (most, fabs (point_distance (segment_at (brought_node (line, i), &line->segments[i], k / 16.0), centre) - radius));
  return most;
}

/* arcs01: M300,200 h-150 a150,150 0 1,0 150,-150 z: three quarters of a circle about (300, 200). */
START_TEST (the_pie_of_the_specification_is_three_quarters_of_its_circle)
{
  Brought *read = brought_from (PATH ("M300,200 h-150 a150,150 0 1,0 150,-150 z"));
  const BroughtLine *line = &read->lines[0];
  const double round = brought_line_length (line) - 2 * 150;

  ck_assert (line->closed);
  ck_assert_double_eq_tol (off_circle (line, 1, line->count - 1, (Point) { 200, 300 }, 150), 0, 3e-4 * 150);
  ck_assert_double_eq_tol (round, 1.5 * M_PI * 150, 3e-4 * round);
  brought_free (read);
}
END_TEST

/* arcs01's second piece: M275,175 v-150 a150,150 0 0,0 -150,150 z, a quarter about (275, 175). */
START_TEST (the_slice_of_the_specification_is_the_quarter_that_its_flags_choose)
{
  Brought *read = brought_from (PATH ("M275,175 v-150 a150,150 0 0,0 -150,150 z"));
  const BroughtLine *line = &read->lines[0];

  ck_assert_double_eq_tol (off_circle (line, 1, line->count - 1, (Point) { 175, 275 }, 150), 0, 3e-4 * 150);
  ck_assert_double_eq_tol (brought_line_length (line), 2 * 150 + M_PI / 2 * 150, 0.1);
  assert_near (brought_node (line, 2), 175, 125, 1e-9);
  brought_free (read);
}
END_TEST

/* arcs02 draws the four arcs that join two places; 8.3.8 says which is which: the second flag turns from x
 * towards y, down the page. Radii 100 and 50 about (225, 75) and (125, 125) do it. */
static const struct { const char *flags; double x, y; bool large; } four_arcs[] = {
  { "0,0", 225, 75, false }, { "0,1", 125, 125, false }, { "1,0", 125, 125, true }, { "1,1", 225, 75, true },
};

START_TEST (each_pair_of_flags_chooses_its_own_of_four_arcs)
{
  g_autofree char *text = g_strdup_printf (PATH ("M 125,75 a100,50 0 %s 100,50"), four_arcs[_i].flags);
  Brought *read = brought_from (text);
  const BroughtLine *line = &read->lines[0];

  for (size_t i = 0; i < line->count; i++)
    for (int k = 0; k <= 16; k++)
      {
        const Point place = segment_at (brought_node (line, i), &line->segments[i], k / 16.0);
        const double size = hypot ((place.y - four_arcs[_i].x) / 100, (place.x - four_arcs[_i].y) / 50);
        ck_assert_double_eq_tol (size, 1, 3e-4);
      }
  /* Both ends are the ellipse's own vertices: the smaller way is a quarter of it, the larger three. */
  ck_assert_uint_eq (line->count, four_arcs[_i].large ? 3 : 1);
  brought_free (read);
}
END_TEST

/* F.6.6: both ends of a half circle, whose radius is half their distance. */
START_TEST (an_arc_too_small_to_reach_is_a_half_circle)
{
  Brought *read = brought_from (PATH ("M600,350 a 3,3 0 0 1 80,60"));

  ck_assert_double_eq_tol (off_circle (&read->lines[0], 0, read->lines[0].count, (Point) { 380, 640 }, 50), 0, 3e-4 * 50);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), M_PI * 50, 0.1);
  brought_free (read);
}
END_TEST

/* 9.3, 9.4 */
START_TEST (circles_and_ellipses_are_closed_and_round)
{
  Brought *read = brought_from (DRAWING ("<circle id='c' cx='50' cy='60' r='40'/><ellipse id='e' cx='0' cy='0' rx='20' ry='10'/>"));
  const BroughtLine *circle = brought_named (read, "c"), *ellipse = brought_named (read, "e");

  ck_assert (circle->closed && ellipse->closed);
  ck_assert_uint_eq (circle->count, 4);
  ck_assert_double_eq_tol (off_circle (circle, 0, 4, (Point) { 60, 50 }, 40), 0, 3e-4 * 40);
  /* Ramanujan's second formula for the circumference of an ellipse, good to 1e-9 at this shape. */
  ck_assert_double_eq_tol (brought_line_length (ellipse), 96.8844822, 0.02);
  brought_free (read);
}
END_TEST

/* Where (100, 50) of a view box of 200 by 100 comes to lie, mm: section 7.8, meet unless told; CSS 2.1 section 4.3.2 for the units. */
static const struct { const char *root; double x, y; bool known; } sizes[] = {
  { "width='100mm' height='50mm' viewBox='0 0 200 100'", 50, 25, true },
  { "width='10cm' height='5cm' viewBox='0 0 200 100'", 50, 25, true },
  { "width='2in' height='1in' viewBox='0 0 200 100'", 25.4, 12.7, true },
  { "width='144pt' height='72pt' viewBox='0 0 200 100'", 25.4, 12.7, true },
  { "width='12pc' height='6pc' viewBox='0 0 200 100'", 25.4, 12.7, true },
  { "width='192px' height='96px' viewBox='0 0 200 100'", 25.4, 12.7, false },
  { "width='192' height='96' viewBox='0 0 200 100'", 25.4, 12.7, false },
  { "width='192' height='96'", 100 * 25.4 / 96, 50 * 25.4 / 96, false },
  { "viewBox='0 0 200 100'", 100 * 25.4 / 96, 50 * 25.4 / 96, false },
  { "width='100%' height='100%' viewBox='0 0 200 100'", 100 * 25.4 / 96, 50 * 25.4 / 96, false },
  { "width='100mm' viewBox='0 0 200 100'", 50, 25, true },
  { "height='50mm' viewBox='0 0 200 100'", 50, 25, true },
  { "width='100mm' height='50mm' viewBox='20 10 200 100'", 40, 20, true },
  { "width='100mm' height='90mm' viewBox='0 0 200 100'", 50, 45, true },
  { "width='100mm' height='90mm' viewBox='0 0 200 100' preserveAspectRatio='xMinYMin meet'", 50, 25, true },
  { "width='100mm' height='90mm' viewBox='0 0 200 100' preserveAspectRatio='xMaxYMax'", 50, 65, true },
  { "width='100mm' height='90mm' viewBox='0 0 200 100' preserveAspectRatio='none'", 50, 45, true },
  { "width='100mm' height='100mm' viewBox='0 0 200 100' preserveAspectRatio='xMidYMid slice'", 50, 50, true },
};

START_TEST (a_drawing_comes_in_at_its_true_size)
{
  g_autofree char *text = g_strdup_printf ("<svg xmlns='http://www.w3.org/2000/svg' %s><path d='M100 50L0 0'/></svg>", sizes[_i].root);
  Brought *read = brought_from (text);

  assert_near (read->lines[0].start, sizes[_i].y, sizes[_i].x, 1e-9);
  ck_assert_int_eq (read->unit_known, sizes[_i].known);
  ck_assert_double_eq (read->unit_mm, 25.4 / 96);
  brought_free (read);
}
END_TEST

START_TEST (what_is_no_line_is_left_out_and_counted)
{
  Brought *read = brought_from (DRAWING ("<defs><path id='kept' d='M0 0L900 900'/></defs><text x='1' y='2'>words</text><image/>"
    "<path id='hidden' display='none' d='M0 0L900 900'/><g style='fill:none;display:none'><path id='layer' d='M0 0L900 900'/></g>"
    "<path id='one' d='M0 0L5 5'/><path id='unread' transform='turn(5)' d='M0 0L5 5'/><path id='nothing' d='M 4 4'/><path/>"));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_str_eq (read->lines[0].name, "one");
  ck_assert_uint_eq (read->left_out, 3);
  brought_free (read);
}
END_TEST

START_TEST (what_follows_an_error_in_a_path_is_left_out_and_counted)
{
  Brought *read = brought_from (DRAWING ("<path d='M0 0L10 10L20 30L40'/><path d='10 10L20 20'/><path d='M0 0L5 5z'/>"));

  ck_assert_uint_eq (read->count, 2);
  ck_assert_uint_eq (read->left_out, 2);
  brought_free (read);
}
END_TEST

START_TEST (the_longest_line_comes_first)
{
  Brought *read = brought_from (PATH ("M0 0L5 5M0 0L90 0M0 0L20 0"));

  ck_assert_uint_eq (read->count, 3);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), 90, 1e-9);
  ck_assert_double_eq_tol (brought_line_length (&read->lines[2]), 5 * sqrt (2), 1e-9);
  brought_free (read);
}
END_TEST

/* Hostile files */

static const struct { const char *because; BroughtError code; const char *text; } refused[] = {
  { "cut short", BROUGHT_ERROR_FOREIGN, "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0L5" },
  { "no root of that name", BROUGHT_ERROR_FOREIGN, "<?xml version='1.0'?><drawing><svg/></drawing>" },
  { "nothing in it", BROUGHT_ERROR_EMPTY, DRAWING ("") },
  { "words alone", BROUGHT_ERROR_EMPTY, DRAWING ("<text>20 30</text>") },
  { "not a number", BROUGHT_ERROR_EMPTY, PATH ("Mnan nanLinf 5") },
  { "no move at its beginning", BROUGHT_ERROR_EMPTY, PATH ("L5 5") },
  { "a number behind a close", BROUGHT_ERROR_EMPTY, PATH ("z 5 5") },
  { "further than a model goes", BROUGHT_ERROR_VALUE, PATH ("M0 0L1e6 5") },
  { "a start further than that", BROUGHT_ERROR_VALUE, PATH ("M1e6 0L1 5") },
  { "beyond what a number holds", BROUGHT_ERROR_VALUE, DRAWING ("<path transform='scale(1e300) scale(1e300)' d='M0 0L1 5'/>") },
};

START_TEST (a_drawing_that_cannot_be_used_is_one_sentence)
{
  g_autofree char *sentence = brought_refusal (refused[_i].text, refused[_i].code);

  ck_assert_msg (g_str_has_prefix (sentence, "drawing: ") && g_str_has_suffix (sentence, "."), "%s: %s", refused[_i].because, sentence);
}
END_TEST

START_TEST (entities_are_not_unfolded)
{
  g_autoptr (GString) text = g_string_new ("<!DOCTYPE svg [<!ENTITY a0 'L1 1L2 2L3 3L4 4'>");

  for (int i = 1; i < 12; i++)
    g_string_append_printf (text, "<!ENTITY a%d '&a%d;&a%d;&a%d;&a%d;&a%d;&a%d;&a%d;&a%d;'>", i, i - 1, i - 1, i - 1, i - 1, i - 1, i - 1,
                            i - 1, i - 1);
  g_string_append (text, "<!ENTITY file SYSTEM 'file:///etc/passwd'>]>"
                   "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm' viewBox='0 0 10 10'>&file;<path id='bomb' d='M0 0&a1;'/><path id='plain' d='M0 0L5 0'/></svg>");
  Brought *read = brought_from (text->str);
  ck_assert_uint_eq (read->count, 1);
  ck_assert_str_eq (read->lines[0].name, "plain");
  brought_free (read);
}
END_TEST

START_TEST (deep_nesting_ends_neither_the_program_nor_its_patience)
{
  g_autoptr (GString) text = g_string_new ("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0L5 0'/>");

  for (int i = 0; i < 200; i++)
    g_string_append (text, "<g>");
  g_string_append (text, "<path d='M0 0L500 0'/>");
  for (int i = 0; i < 200; i++)
    g_string_append (text, "</g>");
  g_string_append (text, "</svg>");
  Brought *read = brought_from (text->str);
  ck_assert_uint_eq (read->count, 1);
  brought_free (read);
}
END_TEST

START_TEST (more_pieces_than_an_outline_has_are_refused)
{
  g_autoptr (GString) text = g_string_new ("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0");

  for (int i = 0; i < 200001; i++)
    g_string_append (text, i % 2 ? "h1" : "v1");
  g_string_append (text, "'/></svg>");
  g_autofree char *sentence = brought_refusal (text->str, BROUGHT_ERROR_VALUE);
  ck_assert_ptr_nonnull (strstr (sentence, "200,000"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought svg");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, different_words_for_the_same_drawing_bring_the_same_lines, 0, G_N_ELEMENTS (same));
  tcase_add_test (tests, the_triangle_of_the_specification_has_its_size_and_is_closed);
  tcase_add_test (tests, the_cubic_example_keeps_its_handles_exactly);
  tcase_add_test (tests, a_quadratic_curve_is_the_cubic_that_it_is);
  tcase_add_test (tests, the_pie_of_the_specification_is_three_quarters_of_its_circle);
  tcase_add_test (tests, the_slice_of_the_specification_is_the_quarter_that_its_flags_choose);
  tcase_add_loop_test (tests, each_pair_of_flags_chooses_its_own_of_four_arcs, 0, G_N_ELEMENTS (four_arcs));
  tcase_add_test (tests, an_arc_too_small_to_reach_is_a_half_circle);
  tcase_add_test (tests, circles_and_ellipses_are_closed_and_round);
  tcase_add_loop_test (tests, a_drawing_comes_in_at_its_true_size, 0, G_N_ELEMENTS (sizes));
  tcase_add_test (tests, what_is_no_line_is_left_out_and_counted);
  tcase_add_test (tests, what_follows_an_error_in_a_path_is_left_out_and_counted);
  tcase_add_test (tests, the_longest_line_comes_first);
  tcase_add_loop_test (tests, a_drawing_that_cannot_be_used_is_one_sentence, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, entities_are_not_unfolded);
  tcase_add_test (tests, deep_nesting_ends_neither_the_program_nor_its_patience);
  tcase_add_test (tests, more_pieces_than_an_outline_has_are_refused);
  return run_suite (suite_create ("brought svg"), tests);
}
