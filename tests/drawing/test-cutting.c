/* Files for cutting, as other programs read them. */
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>
#include <glib/gstdio.h>
#include "document/brought.h"
#include "drawing/cutting-dxf.h"
#include "drawing/cutting-name.h"
#include "drawing/cutting-place.h"
#include "drawing/cutting-size.h"
#include "drawing/cutting-svg.h"
#include "drawing/export.h"
#include "drawing/flat-pieces.h"
#include "geometry/stretch.h"
#include "support/comma-locale.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/sheets.h"

static const double true_to_size = 0.01;      /* mm */

/* Half a wing: two quarters of ellipses, curves at its tip, straight at its root. */
static FlatPiece *
half_wing (void)
{
  const Segment outline[] = { segment_arc ((Point) { 0, 45 }, 280, 40, (Point) { 280, 45 }),
                              segment_curve ((Point) { 290, 46 }, (Point) { 296, 60 }, (Point) { 290, 71 }), segment_line ((Point) { 285, 80 }),
                              segment_arc ((Point) { 285, 90 }, 10, 10, (Point) { 275, 90 }), segment_line ((Point) { 0, 121.5 }) };
  FlatPiece *piece = flat_piece_new ("Wing, starboard", "developed flat at 5° & so on");
  const FlatWord word = { FLAT_MARK, (char *) "Flügel < 5°", { 40, 38 }, 2.5, 0.5, 90, 0 };

  flat_piece_add_line (piece, FLAT_CUT, true, (Point) { 0, 5 }, outline, G_N_ELEMENTS (outline));
  flat_piece_add_straight (piece, FLAT_HINGE, (Point) { 120, 100 }, (Point) { 260, 85.25 });
  flat_piece_add_straight (piece, FLAT_STATION, (Point) { 120, 9 }, (Point) { 120, 107 });
  flat_piece_add_box (piece, FLAT_ROOM, (Box) { { 130, 50 }, { 153, 62 } });
  flat_piece_add_straight (piece, FLAT_MARK, (Point) { 40, 30 }, (Point) { 40, 50 });
  flat_piece_add_word (piece, &word);
  return piece;
}

/* Round holes, an arc alone, half a turn that bulges to the left. */
static FlatPiece *
former (void)
{
  const Segment hole[] = { segment_arc ((Point) { 0, 0 }, 3, 3, (Point) { -3, 0 }), segment_arc ((Point) { 0, 0 }, 3, 3, (Point) { 0, -3 }),
                           segment_arc ((Point) { 0, 0 }, 3, 3, (Point) { 3, 0 }) };
  const Segment bow = segment_arc ((Point) { 0, 0 }, 12, 12, (Point) { 0, -12 });
  const Segment outline[] = { segment_line ((Point) { 20, -18 }), segment_arc ((Point) { 20, 0 }, 18, 18, (Point) { 20, 18 }), segment_line ((Point) { -20, 18 }) };
  FlatPiece *piece = flat_piece_new ("Former 2", NULL);

  flat_piece_add_line (piece, FLAT_CUT, true, (Point) { -20, -18 }, outline, G_N_ELEMENTS (outline));
  flat_piece_add_line (piece, FLAT_OPENING, false, (Point) { 3, 0 }, hole, G_N_ELEMENTS (hole));
  flat_piece_add_line (piece, FLAT_LIMIT, false, (Point) { -12, 0 }, &bow, 1);
  return piece;
}

static Cutting *
sheet_of_both (double kerf)
{
  g_autoptr (GPtrArray) pieces = g_ptr_array_new_with_free_func ((GDestroyNotify) flat_piece_free);
  FlatPiece *right = former ();

  g_ptr_array_add (pieces, half_wing ());
  g_ptr_array_add (pieces, right);
  g_ptr_array_add (pieces, flat_piece_mirrored (right, "Former 2, turned over"));
  return cutting_new (pieces, kerf, "Saltmarsh <Racer>");
}

static const struct { const char *ending; GBytes *(*make) (const Cutting *cutting); } formats[] = { { ".svg", cutting_svg }, { ".dxf", cutting_dxf } };
enum { SVG, DXF, FORMATS };

/* A line as a library read it; y down. */
typedef struct { char layer[16], kind[64]; bool closed; GArray *places; } ReadLine;
typedef struct { double width, height; GArray *lines; char *all; } ReadSheet;

static void
clear_read_line (gpointer line)
{
  g_array_unref (((ReadLine *) line)->places);
}

static void
read_places (ReadLine *line, char **words, double foot)
{
  for (char **word = words; *word != NULL; word++)
    {
      char *comma;
      const double x = g_ascii_strtod (*word, &comma), y = g_ascii_strtod (comma + 1, NULL);
      const Point place = { x, foot > 0 ? foot - y : y };
      g_array_append_val (line->places, place);
    }
}

static void
read_told (ReadSheet *sheet, const char *told, bool y_up)
{
  g_auto (GStrv) words = g_strsplit (told, " ", -1);

  if (g_strcmp0 (words[0], "sheet") == 0)
    {
      sheet->width = g_ascii_strtod (words[1], NULL);
      sheet->height = g_ascii_strtod (words[2], NULL);
    }
  if (g_strcmp0 (words[0], "line") != 0)
    return;
  ReadLine line = { .closed = words[3][0] == '1', .places = g_array_new (FALSE, FALSE, sizeof (Point)) };
  g_autofree char *layer = g_ascii_strdown (words[1], -1);
  g_strlcpy (line.layer, layer, sizeof line.layer);
  g_strlcpy (line.kind, words[2], sizeof line.kind);
  read_places (&line, words + 4, y_up ? sheet->height : 0);
  g_array_append_val (sheet->lines, line);
}

/* What a general library finds in the file. */
static ReadSheet
read_back (GBytes *bytes, int format)
{
  g_autofree char *script = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "tests/drawing/read-cutting.py", NULL), *complaint = NULL;
  g_autofree char *path = g_strdup_printf ("%s/trammel-cutting-%d%s", g_get_tmp_dir (), (int) getpid (), formats[format].ending);
  const char *const command[] = { script, path, NULL };
  ReadSheet sheet = { .lines = g_array_new (FALSE, FALSE, sizeof (ReadLine)) };
  int status = -1;
  size_t length;
  const char *data = g_bytes_get_data (bytes, &length);

  g_array_set_clear_func (sheet.lines, clear_read_line);
  ck_assert (g_file_set_contents (path, data, (gssize) length, NULL));
  ck_assert (g_spawn_sync (NULL, (char **) command, NULL, 0, NULL, NULL, &sheet.all, &complaint, &status, NULL));
  g_unlink (path);
  ck_assert_msg (g_spawn_check_wait_status (status, NULL), "%s", complaint);
  g_auto (GStrv) told = g_strsplit (sheet.all, "\n", -1);
  for (char **line = told; *line != NULL; line++)
    read_told (&sheet, *line, format == DXF);
  return sheet;
}

static void
read_sheet_clear (ReadSheet *sheet)
{
  g_array_unref (sheet->lines);
  g_free (sheet->all);
}

static double
distance_to_places (const GArray *places, Point place)
{
  double least = INFINITY;

  for (guint i = 0; i + 1 < places->len; i++)
    {
      const Point a = g_array_index (places, Point, i), way = point_sub (g_array_index (places, Point, i + 1), a);
      const double square = point_dot (way, way), t = square > 0 ? point_dot (point_sub (place, a), way) / square : 0;
      least = fmin (least, point_distance (place, point_add (a, point_scale (way, CLAMP (t, 0, 1)))));
    }
  return least;
}

static double
distance_to_line (const FlatLine *line, Point place)
{
  double least = INFINITY, distance;
  Point from = line->start;

  for (size_t i = 0; i < line->count; i++)
    {
      segment_nearest (from, &line->segments[i], place, &distance);
      least = fmin (least, distance);
      from = line->segments[i].to;
    }
  const Segment closing = segment_line (line->start);
  segment_nearest (from, &closing, place, &distance);
  return line->closed ? fmin (least, distance) : least;
}

/* How far the two are apart at most, whichever is asked. */
static double
apart (const FlatLine *line, const ReadLine *read)
{
  double most = 0;
  Point from = line->start;

  for (guint i = 0; i < read->places->len; i++)
    most = fmax (most, distance_to_line (line, g_array_index (read->places, Point, i)));
  for (size_t i = 0; i < line->count; i++)
    {
      for (int k = 0; k <= 100; k++)
        most = fmax (most, distance_to_places (read->places, segment_at (from, &line->segments[i], k / 100.0)));
      from = line->segments[i].to;
    }
  return most;
}

static bool
goes_round (const FlatLine *line)
{
  return line->closed || point_distance (line->start, line->segments[line->count - 1].to) < 1e-6;
}

/* The line, read from its layer. */
static const ReadLine *
read_line_of (const ReadSheet *sheet, const FlatLine *line)
{
  const char *layer = cutting_layer (line->purpose)->id;
  double nearest = INFINITY;

  for (guint i = 0; i < sheet->lines->len; i++)
    {
      const ReadLine *read = &g_array_index (sheet->lines, ReadLine, i);
      const double off = strcmp (read->layer, layer) == 0 ? apart (line, read) : INFINITY;
      nearest = fmin (nearest, off);
      if (off <= true_to_size && read->closed == goes_round (line))
        return read;
    }
  ck_abort_msg ("no line of layer %s is nearer than %g mm", layer, nearest);
  return NULL;
}

static guint
line_count (const Cutting *cutting)
{
  guint count = 0;

  for (guint i = 0; i < cutting->pieces->len; i++)
    count += ((const FlatPiece *) cutting->pieces->pdata[i])->lines->len;
  return count;
}

static void
assert_same_lines (const Cutting *cutting, const ReadSheet *sheet)
{
  ck_assert_uint_eq (sheet->lines->len, line_count (cutting));
  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatPiece *piece = cutting->pieces->pdata[i];
      for (guint k = 0; k < piece->lines->len; k++)
        read_line_of (sheet, &g_array_index (piece->lines, FlatLine, k));
    }
}

static const double kerfs[] = { 0, 0.2 };

START_TEST (another_program_reads_every_line_within_a_hundredth_of_a_millimetre_on_its_layer)
{
  const int format = _i % FORMATS;
  g_autoptr (Cutting) cutting = sheet_of_both (kerfs[_i / FORMATS]);
  g_autoptr (GBytes) bytes = formats[format].make (cutting);
  ReadSheet sheet = read_back (bytes, format);

  ck_assert_double_eq_tol (sheet.width, cutting->width, 0.001);
  ck_assert_double_eq_tol (sheet.height, cutting->height, 0.001);
  assert_same_lines (cutting, &sheet);
  read_sheet_clear (&sheet);
}
END_TEST

static bool
has_kind (const ReadSheet *sheet, const char *layer, const char *kind)
{
  for (guint i = 0; i < sheet->lines->len; i++)
    if (strcmp (g_array_index (sheet->lines, ReadLine, i).layer, layer) == 0 && strcmp (g_array_index (sheet->lines, ReadLine, i).kind, kind) == 0)
      return true;
  return false;
}

START_TEST (curves_and_arcs_stay_what_they_are)
{
  g_autoptr (Cutting) cutting = sheet_of_both (0);
  g_autoptr (GBytes) svg = cutting_svg (cutting), dxf = cutting_dxf (cutting);
  ReadSheet drawn = read_back (svg, SVG), released = read_back (dxf, DXF);

  ck_assert (has_kind (&drawn, "cut", "Arc/Close/CubicBezier/Line"));
  ck_assert (has_kind (&drawn, "hinge", "Line"));
  ck_assert (has_kind (&released, "hinge", "LINE"));
  ck_assert (has_kind (&released, "opening", "CIRCLE"));
  ck_assert (has_kind (&released, "limit", "ARC"));
  ck_assert (has_kind (&released, "cut", "POLYLINE"));
  ck_assert (has_kind (&released, "room", "POLYLINE"));
  read_sheet_clear (&drawn);
  read_sheet_clear (&released);
}
END_TEST

START_TEST (words_are_words_on_a_layer_of_their_own_and_the_file_says_what_it_is)
{
  g_autoptr (Cutting) cutting = sheet_of_both (0.2);
  g_autoptr (GBytes) svg = cutting_svg (cutting), dxf = cutting_dxf (cutting);
  ReadSheet drawn = read_back (svg, SVG), released = read_back (dxf, DXF);
  g_autofree char *remarks = g_strndup (g_bytes_get_data (dxf, NULL), 600);

  /* 40, 38 of the wing, whose outline begins at 0, 5; 2.5 mm capitals are seven tenths of a letter's size */
  ck_assert_ptr_nonnull (strstr (drawn.all, "\ntext words 45.100 38.100 3.571 90.000 Flügel < 5°\n"));
  g_autofree char *told = g_strdup_printf ("\ntext WORDS 45.100 %.3f 2.500 270.000 Flügel < 5°\n", cutting->height - 38.1);
  ck_assert_ptr_nonnull (strstr (released.all, told));
  ck_assert_ptr_nonnull (strstr (drawn.all, "\nwords Saltmarsh <Racer>\n"));
  ck_assert_ptr_nonnull (strstr (drawn.all, "stand off for a cut 0.2 mm wide"));
  ck_assert_ptr_nonnull (strstr (drawn.all, "Wing, starboard: developed flat at 5° & so on\n"));
  ck_assert_ptr_nonnull (strstr (remarks, "999\r\nSaltmarsh <Racer>\r\n"));
  ck_assert_ptr_nonnull (strstr (drawn.all, "\nlayer cut #000000\n"));
  ck_assert_ptr_nonnull (strstr (released.all, "\nlayer CUT 7\n"));
  read_sheet_clear (&drawn);
  read_sheet_clear (&released);
}
END_TEST

START_TEST (with_a_kerf_edges_lie_half_of_it_outside_and_openings_inside)
{
  g_autoptr (Cutting) plain = sheet_of_both (0), wide = sheet_of_both (0.4);
  const FlatPiece *was = plain->pieces->pdata[1], *is = wide->pieces->pdata[1];
  const FlatLine *edge = &g_array_index (is->lines, FlatLine, 0), *hole = &g_array_index (is->lines, FlatLine, 1);
  const Box before = flat_piece_bounds (was), after = flat_piece_bounds (is);
  const Point centre = { before.min.x + 20, before.min.y + 18 }, now = { after.min.x + 20.2, after.min.y + 18.2 };

  ck_assert_double_eq_tol (after.max.x - after.min.x, before.max.x - before.min.x + 0.4, 0.005);
  ck_assert_double_eq_tol (after.max.y - after.min.y, before.max.y - before.min.y + 0.4, 0.005);
  ck_assert_double_eq_tol (point_distance (hole->start, now), 2.8, 0.005);
  ck_assert_double_eq_tol (point_distance (g_array_index (was->lines, FlatLine, 1).start, centre), 3, 1e-9);
  ck_assert_int_eq (edge->segments[0].kind, SEGMENT_LINE);
}
END_TEST

/* Our own way in. Its axes are the sheet's turned: x down, y to the right. */
START_TEST (our_own_reader_takes_the_file_back_as_the_same_outline)
{
  g_autoptr (Cutting) cutting = sheet_of_both (0);
  g_autoptr (GBytes) bytes = formats[_i].make (cutting);
  size_t length;
  const char *data = g_bytes_get_data (bytes, &length);
  GError *error = NULL;
  Brought *read = brought_read (data, length, "sheet", &error);
  const FlatLine *edge = &g_array_index (((const FlatPiece *) cutting->pieces->pdata[0])->lines, FlatLine, 0);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "");
  ck_assert (read->unit_known);
  ck_assert_uint_eq (read->count, line_count (cutting));
  ck_assert (read->lines[0].closed);           /* the longest first: the wing */
  for (size_t i = 0; i < read->lines[0].count; i++)
    {
      const Point to = read->lines[0].segments[i].to;
      const Point place = { to.y, _i == DXF ? cutting->height + to.x : to.x };
      ck_assert_double_le (distance_to_line (edge, place), true_to_size);
    }
  brought_free (read);
}
END_TEST

START_TEST (the_same_pieces_give_the_same_bytes_whatever_the_locale)
{
  g_autoptr (Cutting) one = sheet_of_both (0.15);
  g_autoptr (GBytes) first = formats[_i].make (one);
  char *folder = comma_locale_enter ();
  g_autoptr (Cutting) other = sheet_of_both (0.15);
  g_autoptr (GBytes) second = formats[_i].make (other);

  comma_locale_leave (folder);
  ck_assert (g_bytes_equal (first, second));
}
END_TEST

START_TEST (pieces_lie_in_rows_and_nowhere_nearer_than_the_gap)
{
  g_autoptr (GPtrArray) pieces = g_ptr_array_new_with_free_func ((GDestroyNotify) flat_piece_free);
  double width, height;

  for (int i = 0; i < 4; i++)
    g_ptr_array_add (pieces, half_wing ());
  g_ptr_array_add (pieces, flat_piece_new ("Nothing", NULL));
  g_ptr_array_add (pieces, former ());
  g_autoptr (GPtrArray) placed = cutting_place (pieces, &width, &height);
  ck_assert_uint_eq (placed->len, 5);
  for (guint i = 0; i < placed->len; i++)
    {
      const Box a = flat_piece_bounds (placed->pdata[i]);
      ck_assert (a.min.x >= 5 - 1e-9 && a.min.y >= 5 - 1e-9 && a.max.x <= width - 5 + 1e-9 && a.max.y <= height - 5 + 1e-9);
      for (guint k = 0; k < i; k++)
        {
          const Box b = flat_piece_bounds (placed->pdata[k]);
          ck_assert (fmax (fmax (a.min.x - b.max.x, b.min.x - a.max.x), fmax (a.min.y - b.max.y, b.min.y - a.max.y)) >= 5 - 1e-9);
        }
    }
  ck_assert_double_eq_tol (flat_piece_bounds (placed->pdata[2]).min.x, 5, 1e-9);       /* two wings fill a row */
}
END_TEST

static ExportOptions
options_for (int format, ExportHalves halves)
{
  g_autofree char *path = g_strconcat ("parts", formats[format].ending, NULL);
  ExportOptions options = export_default_options (path);

  options.sheet = EXPORT_CUTTING;
  options.halves = halves;
  return options;
}

/* An aeroplane's halves, hatch, jig and all, from the file that is exported. */
START_TEST (what_is_exported_of_an_aeroplane_is_its_flat_pieces_within_a_hundredth_of_a_millimetre)
{
  const int format = _i % FORMATS;
  const ExportOptions options = options_for (format, _i / FORMATS == 0 ? EXPORT_BOTH_HALVES : EXPORT_PORT);
  Aeroplane *racer = example_racer ();
  Figures *figures = figures_once (racer);
  GError *error = NULL;
  g_autoptr (GBytes) bytes = export_bytes (figures, &options, &error);
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, options.units, options.halves);
  g_autoptr (Cutting) cutting = cutting_new (pieces, 0, NULL);

  ck_assert_msg (bytes != NULL, "%s", error ? error->message : "");
  ReadSheet sheet = read_back (bytes, format);
  ck_assert_double_eq_tol (sheet.width, cutting->width, 0.001);
  assert_same_lines (cutting, &sheet);
  read_sheet_clear (&sheet);
  figures_unref (figures);
  aeroplane_unref (racer);
}
END_TEST

static const FlatWord *
name_of (const FlatPiece *piece)
{
  for (guint i = 0; i < piece->words->len; i++)
    if (g_array_index (piece->words, FlatWord, i).purpose == FLAT_NAME)
      return &g_array_index (piece->words, FlatWord, i);
  return NULL;
}

/* The racer's file: with that kerf, and its hatch opening on that side. */
static Cutting *
cutting_of_racer (double kerf, HatchSide side)
{
  g_autoptr (Aeroplane) racer = example_racer ();
  AeroplaneTraits traits = aeroplane_traits (racer);
  Cutting *cutting;

  traits.hatch = side;
  g_autoptr (Aeroplane) opened = aeroplane_with_traits (racer, traits);
  g_autoptr (Figures) figures = figures_once (opened);
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, (Units) { LENGTH_MM, MASS_G }, EXPORT_BOTH_HALVES);
  cutting = cutting_new (pieces, kerf, "Saltmarsh Racer");
  return cutting;
}

static const FlatPiece *
piece_named (const Cutting *cutting, const char *name)
{
  for (guint i = 0; i < cutting->pieces->len; i++)
    if (g_str_equal (((const FlatPiece *) cutting->pieces->pdata[i])->name, name))
      return cutting->pieces->pdata[i];
  ck_abort_msg ("no piece is called %s", name);
  return NULL;
}

/* Where a word was read: of that layer, and of nothing else. */
static bool
read_word_at (const ReadSheet *sheet, const char *layer, const char *text, Point *at)
{
  g_auto (GStrv) told = g_strsplit (sheet->all, "\n", -1);
  g_autofree char *begin = g_strdup_printf ("text %s ", layer), *end = g_strdup_printf (" %s", text);

  for (char **line = told; *line != NULL; line++)
    if (g_str_has_prefix (*line, begin) && g_str_has_suffix (*line, end))
      {
        char *rest;
        at->x = g_ascii_strtod (*line + strlen (begin), &rest);
        at->y = g_ascii_strtod (rest, NULL);
        return true;
      }
  return false;
}

/* Wing, tail, fin, hatch, floor, strip and stand, read by another program. */
START_TEST (each_piece_has_its_name_on_a_layer_that_is_not_cut)
{
  static const char *const layers[] = { [SVG] = "names", [DXF] = "NAMES" }, *const told[] = { [SVG] = "\nlayer names #007f00\n", [DXF] = "\nlayer NAMES 94\n" };
  g_autoptr (Cutting) cutting = cutting_of_racer (0.2, HATCH_ON_TOP);
  g_autoptr (GBytes) bytes = formats[_i].make (cutting);
  ReadSheet sheet = read_back (bytes, _i);

  ck_assert_ptr_nonnull (strstr (sheet.all, told[_i]));
  ck_assert_uint_ge (cutting->pieces->len, 8);
  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatWord *name = name_of (cutting->pieces->pdata[i]);
      Point at;

      ck_assert_msg (read_word_at (&sheet, layers[_i], name->text, &at), "%s is not named", name->text);
      ck_assert_double_eq_tol (at.x, name->at.x, true_to_size);
      ck_assert_double_eq_tol (_i == DXF ? cutting->height - at.y : at.y, name->at.y, true_to_size);
    }
  piece_named (cutting, "Base of a balancing stand");
  piece_named (cutting, "Marking strip for station 40\u00A0mm");
  read_sheet_clear (&sheet);
}
END_TEST

static bool
box_has (Box box, Point place)
{
  return place.x > box.min.x && place.x < box.max.x && place.y > box.min.y && place.y < box.max.y;
}

START_TEST (a_name_stands_clear_within_its_piece_or_else_above_it_and_is_never_small)
{
  g_autoptr (Cutting) cutting = cutting_of_racer (0, HATCH_NOT_CHOSEN);

  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatPiece *piece = cutting->pieces->pdata[i];
      const FlatWord *name = name_of (piece);
      const Box box = cutting_word_box (name), bounds = flat_piece_bounds (piece);

      ck_assert_double_ge (name->caps, 3);
      ck_assert (box.max.y < bounds.min.y ? bounds.min.y - box.max.y < 2 && box.min.x < bounds.max.x
                                          : box_has (bounds, box.min) && box_has (bounds, box.max));
      for (guint k = 0; k < piece->lines->len; k++)
        {
          const FlatLine *line = &g_array_index (piece->lines, FlatLine, k);
          Point from = line->start;
          for (size_t s = 0; s < line->count; from = line->segments[s++].to)
            for (int t = 0; t <= 200; t++)
              ck_assert (!box_has (box, segment_at (from, &line->segments[s], t / 200.0)));
        }
    }
  ck_assert (box_has (flat_piece_bounds (piece_named (cutting, "Hatch lid")), name_of (piece_named (cutting, "Hatch lid"))->at));
}
END_TEST

START_TEST (names_that_stand_above_lie_on_no_other_piece)
{
  g_autoptr (Cutting) cutting = cutting_of_racer (0.2, HATCH_ON_BOTTOM);

  for (guint i = 0; i < cutting->pieces->len; i++)
    for (guint k = 0; k < i; k++)
      {
        const Box a = cutting_name_bounds (cutting->pieces->pdata[i]), b = cutting_name_bounds (cutting->pieces->pdata[k]);
        ck_assert (fmax (fmax (a.min.x - b.max.x, b.min.x - a.max.x), fmax (a.min.y - b.max.y, b.min.y - a.max.y)) >= 5 - 1e-9);
      }
}
END_TEST

static Box
read_bounds (const ReadLine *line)
{
  Box box = { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };

  for (guint i = 0; i < line->places->len; i++)
    {
      const Point at = g_array_index (line->places, Point, i);
      box = (Box) { { fmin (box.min.x, at.x), fmin (box.min.y, at.y) }, { fmax (box.max.x, at.x), fmax (box.max.y, at.y) } };
    }
  return box;
}

static double
length_of (const FlatLine *line)
{
  double least = line->start.y, most = line->start.y;

  for (size_t i = 0; i < line->count; i++)
    {
      least = fmin (least, line->segments[i].to.y);
      most = fmax (most, line->segments[i].to.y);
    }
  return most - least;
}

static const FlatLine *
line_at (const Cutting *cutting, const char *name, guint i)
{
  return &g_array_index (piece_named (cutting, name)->lines, FlatLine, i);
}

/* The racer's hatch is 34 mm wide; its lid has 0.5 mm of play on each side: cut 0.4 mm wide, the lid's path is 33.4 mm wide, the hole's 33.6. */
START_TEST (the_lid_is_cut_outside_of_its_edge_and_the_hole_inside_of_its_own)
{
  const int format = _i;
  g_autoptr (Cutting) cutting = cutting_of_racer (0.4, HATCH_ON_TOP), drawn = cutting_of_racer (0, HATCH_ON_TOP);
  g_autoptr (GBytes) bytes = formats[format].make (cutting);
  ReadSheet sheet = read_back (bytes, format);
  const FlatPiece *lid = piece_named (cutting, "Hatch lid"), *frame = piece_named (cutting, "Hatch frame");
  const FlatLine *edge = &g_array_index (lid->lines, FlatLine, 0), *hole = &g_array_index (frame->lines, FlatLine, 1);
  const Box path = read_bounds (read_line_of (&sheet, edge)), opening = read_bounds (read_line_of (&sheet, hole));

  ck_assert_int_eq (edge->purpose, FLAT_CUT);
  ck_assert_int_eq (hole->purpose, FLAT_OPENING);
  ck_assert_double_eq_tol (path.max.x - path.min.x, 33.4, 0.002);
  ck_assert_double_eq_tol (opening.max.x - opening.min.x, 33.6, 0.002);
  ck_assert_double_eq_tol (path.max.y - path.min.y, length_of (line_at (drawn, "Hatch lid", 0)) + 0.4, 0.002);
  ck_assert_double_eq_tol (opening.max.y - opening.min.y, length_of (line_at (drawn, "Hatch frame", 1)) - 0.4, 0.002);
  ck_assert_ptr_nonnull (strstr (sheet.all, " opens on the top\n"));
  read_sheet_clear (&sheet);
}
END_TEST

START_TEST (how_large_a_file_is_and_on_what_sheet_it_fits_is_told_in_the_readers_units)
{
  static const struct { double width, height; LengthUnit unit; const char *told; } sizes[] = {
    { 600, 347, LENGTH_MM, "600 by 347\u00A0mm over all: it fits on a sheet of 600 by 400\u00A0mm." },
    { 190, 300, LENGTH_MM, "190 by 300\u00A0mm over all: it fits on a sheet of 300 by 200\u00A0mm." },
    { 610, 300, LENGTH_MM, "610 by 300\u00A0mm over all: it fits on a sheet of 900 by 600\u00A0mm." },
    { 1400, 300, LENGTH_MM, "1400 by 300\u00A0mm over all: larger than a sheet of 1300 by 900\u00A0mm. Cut it in several goes." },
    { 609.6, 304.8, LENGTH_INCH, "24 by 12\u00A0in over all: it fits on a sheet of 24 by 12\u00A0in." } };
  Cutting cutting = { .width = sizes[_i].width, .height = sizes[_i].height };
  g_autofree char *told = cutting_size_text (&cutting, (Units) { sizes[_i].unit, MASS_G });

  ck_assert_str_eq (told, sizes[_i].told);
}
END_TEST

START_TEST (the_layers_of_a_file_are_those_that_have_something)
{
  g_autoptr (Cutting) both = sheet_of_both (0), racer = cutting_of_racer (0, HATCH_NOT_CHOSEN);
  const unsigned of_both = 1u << FLAT_CUT | 1u << FLAT_OPENING | 1u << FLAT_HINGE | 1u << FLAT_STATION | 1u << FLAT_MARK | 1u << FLAT_LIMIT
                           | 1u << FLAT_ROOM | 1u << FLAT_NAME | 1u << CUTTING_WORDS;

  ck_assert_uint_eq (cutting_layers_used (both), of_both);
  ck_assert_uint_eq (cutting_layers_used (racer), (1u << CUTTING_LAYER_COUNT) - 1);
}
END_TEST

/* By its colour a cutter's program tells a layer. */
START_TEST (no_two_layers_have_one_colour)
{
  for (int i = 0; i < CUTTING_LAYER_COUNT; i++)
    for (int k = 0; k < i; k++)
      {
        ck_assert_str_ne (cutting_layer (i)->rgb, cutting_layer (k)->rgb);
        ck_assert_int_ne (cutting_layer (i)->index, cutting_layer (k)->index);
      }
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("cutting");
  TCase *tests = tcase_create ("cutting");

  tcase_add_loop_test (tests, another_program_reads_every_line_within_a_hundredth_of_a_millimetre_on_its_layer, 0, 2 * FORMATS);
  tcase_add_loop_test (tests, what_is_exported_of_an_aeroplane_is_its_flat_pieces_within_a_hundredth_of_a_millimetre, 0, 2 * FORMATS);
  tcase_add_test (tests, curves_and_arcs_stay_what_they_are);
  tcase_add_test (tests, words_are_words_on_a_layer_of_their_own_and_the_file_says_what_it_is);
  tcase_add_test (tests, with_a_kerf_edges_lie_half_of_it_outside_and_openings_inside);
  tcase_add_loop_test (tests, our_own_reader_takes_the_file_back_as_the_same_outline, 0, FORMATS);
  tcase_add_loop_test (tests, the_same_pieces_give_the_same_bytes_whatever_the_locale, 0, FORMATS);
  tcase_add_test (tests, pieces_lie_in_rows_and_nowhere_nearer_than_the_gap);
  tcase_add_loop_test (tests, each_piece_has_its_name_on_a_layer_that_is_not_cut, 0, FORMATS);
  tcase_add_test (tests, a_name_stands_clear_within_its_piece_or_else_above_it_and_is_never_small);
  tcase_add_test (tests, names_that_stand_above_lie_on_no_other_piece);
  tcase_add_loop_test (tests, the_lid_is_cut_outside_of_its_edge_and_the_hole_inside_of_its_own, 0, FORMATS);
  tcase_add_loop_test (tests, how_large_a_file_is_and_on_what_sheet_it_fits_is_told_in_the_readers_units, 0, 5);
  tcase_add_test (tests, the_layers_of_a_file_are_those_that_have_something);
  tcase_add_test (tests, no_two_layers_have_one_colour);
  return run_suite (suite, tests);
}
