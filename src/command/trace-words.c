#include "command/trace-words.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "command/usage.h"
#include "figures/digits.h"

enum { LEAST_DPI = 30, MOST_DPI = 2400, USUAL_DPI = 300, MOST_PAGE = 1000000 };

/* What is known of a picture may end a little beyond its edge, where a line on it is only thought on. */
static const double MARGIN = 0.1;

/* As the option parser hands them over. */
typedef struct { char **known, **corners, **through; char *mm_per_px, *centre_line; int page, dpi; gboolean json; } Given;

static void
given_clear (Given *given)
{
  g_strfreev (given->known);
  g_strfreev (given->corners);
  g_strfreev (given->through);
  g_free (given->mm_per_px);
  g_free (given->centre_line);
}

/* A word that begins like a negative number is none. */
static bool
is_option (const char *word)
{
  return word[0] == '-' && word[1] && !g_ascii_isdigit (word[1]) && word[1] != '.';
}

static bool
begins_list (const char *word)
{
  return g_str_equal (word, "--through") || g_str_equal (word, "--corners") || g_str_has_prefix (word, "--through=")
         || g_str_has_prefix (word, "--corners=");
}

/* The option parser knows no lists: the words of one, up to the next option, are made a single word, “--through=1,2 3,4”. */
static GPtrArray *
gather_lists (int argc, char **argv)
{
  GPtrArray *line = g_ptr_array_new_with_free_func (g_free);

  for (int i = 0; i < argc; i++)
    {
      GString *word = g_string_new (argv[i]);

      if (begins_list (argv[i]))
        {
          if (!strchr (argv[i], '='))
            g_string_append_c (word, '=');
          while (i + 1 < argc && !is_option (argv[i + 1]))
            g_string_append_printf (word, " %s", argv[++i]);
        }
      g_ptr_array_add (line, g_string_free (word, FALSE));
    }
  return line;
}

static bool
parse (GPtrArray *line, Given *given, const char **image, CommandStatus *status)
{
  const GOptionEntry entries[] = {
    { .long_name = "known", .arg = G_OPTION_ARG_STRING_ARRAY, .arg_data = &given->known,
      .description = N_("two places and the length between them; may stand several times"), .arg_description = "X1,Y1,X2,Y2=MM" },
    { .long_name = "corners", .arg = G_OPTION_ARG_STRING_ARRAY, .arg_data = &given->corners,
      .description = N_("a rectangle's corners, its width and height in mm"), .arg_description = "X,Y X,Y X,Y X,Y=WxH" },
    { .long_name = "mm-per-pixel", .arg = G_OPTION_ARG_STRING, .arg_data = &given->mm_per_px,
      .description = N_("the length of a pixel in mm"), .arg_description = "S" },
    { .long_name = "centre-line", .arg = G_OPTION_ARG_STRING, .arg_data = &given->centre_line,
      .description = N_("the centre line, its forward end first"), .arg_description = "X1,Y1,X2,Y2" },
    { .long_name = "through", .arg = G_OPTION_ARG_STRING_ARRAY, .arg_data = &given->through,
      .description = N_("places along the printed line, from end to end"), .arg_description = "X,Y X,Y …" },
    { .long_name = "page", .arg = G_OPTION_ARG_INT, .arg_data = &given->page,
      .description = N_("the page of a PDF or TIFF (1)"), .arg_description = "N" },
    { .long_name = "dpi", .arg = G_OPTION_ARG_INT, .arg_data = &given->dpi,
      .description = N_("pixels an inch of a PDF or SVG, 30 to 2400 (300)"), .arg_description = "N" },
    { .long_name = "json", .arg = G_OPTION_ARG_NONE, .arg_data = &given->json, .description = N_("print JSON for programs") },
    { .long_name = NULL }
  };
  const Usage usage = {
    .word = "trace", .entries = entries, .takes_image = true,
    .summary = _("Follows the printed line of a plan through the places named, from one end to the other, and prints\n"
                 "the outline fitted to it. Places are pixels from the upper left corner of the picture. A PDF is true to\n"
                 "size; a picture wants lengths known on it, a rectangle's corners, or the size of a pixel."),
    .examples = _("With a centre line x runs aft along it and y away from it on the side traced, and the outline's ends are\n"
                  "carried to it; without, x runs down the picture and y to the right from the first place named.\n\n"
                  "Examples:\n"
                  "  trammel trace wing.png --known 237,970,1851,980=205 --centre-line 241,292,237,875 \\\n"
                  "    --through 243,292 876,324 1502,358 1820,500 1480,791 239,873\n"
                  "  trammel trace sheet.pdf --page 2 --through 1200,800 1900,850 2400,1000 --json"),
  };
  g_autofree char **copy = g_memdup2 (line->pdata, line->len * sizeof *line->pdata);

  return usage_parse (&usage, (int) line->len, copy, image, status);
}

/* Numbers with these marks between them and nothing else: the marks ",,,=" read five. A point is the decimal sign everywhere. */
static bool
read_numbers (const char *word, const char *marks, double numbers[])
{
  for (;; marks++, word++, numbers++)
    {
      const size_t length = strspn (word, "+-.0123456789eE");
      g_autofree char *text = g_strndup (word, length);
      char *end;

      *numbers = g_ascii_strtod (text, &end);
      if (end == text || *end || !isfinite (*numbers) || word[length] != *marks)
        return false;
      if (!*marks)
        return true;
      word += length;
    }
}

/* All words of a list, however often it stands. */
static GPtrArray *
words_of (char **lists)
{
  GPtrArray *words = g_ptr_array_new_with_free_func (g_free);

  for (; lists && *lists; lists++)
    {
      g_auto (GStrv) parts = g_strsplit (*lists, " ", -1);

      for (char **part = parts; *part; part++)
        if (**part)
          g_ptr_array_add (words, g_strdup (*part));
    }
  return words;
}

static bool
read_known (const Given *given, TraceWords *words, CommandStatus *status)
{
  for (char **word = given->known; word && *word; word++)
    {
      double n[5];

      if (!read_numbers (*word, ",,,=", n) || n[4] <= 0 || (n[0] == n[2] && n[1] == n[3]))
        {
          *status = usage_error ("trace", _("--known is X1,Y1,X2,Y2=MM, two places apart and the millimetres between them, not “%s”."),
                                 *word);
          return false;
        }
      g_array_append_vals (words->known, &(KnownLength) { { n[0], n[1] }, { n[2], n[3] }, n[4], 0 }, 1);
    }
  if (words->known->len <= KNOWN_LENGTHS_MOST)
    return true;
  *status = usage_error ("trace", _("--known may stand %d times, not %u."), KNOWN_LENGTHS_MOST, words->known->len);
  return false;
}

static bool
read_corners (const Given *given, TraceWords *words, CommandStatus *status)
{
  g_autoptr (GPtrArray) list = words_of (given->corners);

  if (!given->corners)
    return true;
  if (list->len != 4)
    {
      *status = usage_error ("trace", _("--corners is four places, X,Y X,Y X,Y X,Y=WxH, not %u."), list->len);
      return false;
    }
  for (guint i = 0; i < 4; i++)
    {
      const char *word = g_ptr_array_index (list, i);
      double n[4] = { 0, 0, 1, 1 };

      if (!read_numbers (word, i == 3 ? ",=x" : ",", n) || n[2] <= 0 || n[3] <= 0)
        {
          *status = usage_error ("trace", _("--corners is X,Y X,Y X,Y X,Y=WxH in pixels and millimetres; “%s” does not fit."), word);
          return false;
        }
      words->corners.corners[i] = (Point) { n[0], n[1] };
      words->corners.width = n[2];
      words->corners.height = n[3];
    }
  words->has_corners = true;
  return true;
}

static bool
read_through (const Given *given, TraceWords *words, CommandStatus *status)
{
  g_autoptr (GPtrArray) list = words_of (given->through);
  Point last = { NAN, NAN };

  for (guint i = 0; i < list->len; i++)
    {
      const char *word = g_ptr_array_index (list, i);
      double n[2];

      if (!read_numbers (word, ",", n))
        *status = usage_error ("trace", _("“%s” after --through is no place: write X,Y in pixels."), word);
      else if (n[0] == last.x && n[1] == last.y)
        *status = usage_error ("trace", _("“%s” stands twice in a row after --through."), word);
      else
        {
          last = (Point) { n[0], n[1] };
          g_array_append_val (words->through, last);
          continue;
        }
      return false;
    }
  if (words->through->len >= 2)
    return true;
  *status = usage_error ("trace", "%s", _("Name two places or more that the printed line runs through: --through X,Y X,Y …"));
  return false;
}

static bool
read_singles (const Given *given, TraceWords *words, CommandStatus *status)
{
  double n[4];

  if (given->mm_per_px && (!read_numbers (given->mm_per_px, "", &words->mm_per_px) || words->mm_per_px <= 0))
    *status = usage_error ("trace", _("--mm-per-pixel is a number above 0, not “%s”."), given->mm_per_px);
  else if (given->centre_line && (!read_numbers (given->centre_line, ",,,", n) || (n[0] == n[2] && n[1] == n[3])))
    *status = usage_error ("trace", _("--centre-line is X1,Y1,X2,Y2, two places apart, not “%s”."), given->centre_line);
  else if (given->page < 1 || given->page > MOST_PAGE)
    *status = usage_error ("trace", _("--page counts from 1; there is no page %d."), given->page);
  else if (given->dpi < LEAST_DPI || given->dpi > MOST_DPI)
    *status = usage_error ("trace", _("--dpi is from %d to %d, not %d."), LEAST_DPI, MOST_DPI, given->dpi);
  else if (given->mm_per_px && (given->known || given->corners))
    *status = usage_error ("trace", "%s", _("--mm-per-pixel goes with neither --known nor --corners: choose one."));
  else
    {
      words->has_centre_line = given->centre_line;
      if (given->centre_line)
        words->centre_line = (ViewAxis) { { n[0], n[1] }, { n[2], n[3] } };
      return true;
    }
  return false;
}

bool
trace_words_read (int argc, char **argv, TraceWords *words, CommandStatus *status)
{
  Given given = { .page = 1, .dpi = USUAL_DPI };
  bool good;

  *words = (TraceWords) { .mm_per_px = NAN, .line = gather_lists (argc, argv), .known = g_array_new (FALSE, FALSE, sizeof (KnownLength)),
                          .through = g_array_new (FALSE, FALSE, sizeof (Point)) };
  good = parse (words->line, &given, &words->image, status) && read_known (&given, words, status) && read_corners (&given, words, status)
         && read_singles (&given, words, status) && read_through (&given, words, status);
  words->page = given.page;
  words->dpi = given.dpi;
  words->json = given.json;
  given_clear (&given);
  if (!good)
    trace_words_clear (words);
  return good;
}

void
trace_words_clear (TraceWords *words)
{
  g_clear_pointer (&words->known, g_array_unref);
  g_clear_pointer (&words->through, g_array_unref);
  g_clear_pointer (&words->line, g_ptr_array_unref);
}

/* The picture, and how far beyond its edges a place may lie, as a part of its size. */
typedef struct { double width, height, margin; } Bounds;

static bool
lies_inside (const Bounds *bounds, const char *option, Point at, CommandStatus *status)
{
  const double x_margin = bounds->margin * bounds->width, y_margin = bounds->margin * bounds->height;
  char x[G_ASCII_DTOSTR_BUF_SIZE], y[G_ASCII_DTOSTR_BUF_SIZE];

  if (at.x >= -x_margin && at.x <= bounds->width + x_margin && at.y >= -y_margin && at.y <= bounds->height + y_margin)
    return true;
  /* Translators: a place, then an option such as --through. */
  *status = usage_error ("trace", _("“%s,%s” after %s lies outside the picture, which is %.0f × %.0f pixels."),
                         digits_of (x, at.x), digits_of (y, at.y), option, ceil (bounds->width), ceil (bounds->height));
  return false;
}

bool
trace_words_inside (const TraceWords *words, double width_px, double height_px, CommandStatus *status)
{
  const Bounds picture = { width_px, height_px, 0 }, around = { width_px, height_px, MARGIN };
  bool inside = true;

  for (guint i = 0; inside && i < words->through->len; i++)
    inside = lies_inside (&picture, "--through", g_array_index (words->through, Point, i), status);
  for (guint i = 0; inside && i < words->known->len; i++)
    {
      const KnownLength *known = &g_array_index (words->known, KnownLength, i);

      inside = lies_inside (&around, "--known", known->a, status) && lies_inside (&around, "--known", known->b, status);
    }
  for (int i = 0; inside && words->has_corners && i < 4; i++)
    inside = lies_inside (&around, "--corners", words->corners.corners[i], status);
  if (inside && words->has_centre_line)
    inside = lies_inside (&around, "--centre-line", words->centre_line.fore, status)
             && lies_inside (&around, "--centre-line", words->centre_line.aft, status);
  return inside;
}
