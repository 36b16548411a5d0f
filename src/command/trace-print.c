#include "command/trace-print.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/json-text.h"
#include "figures/text-table.h"

enum { SCALE_DIGITS = 5 };
/* Below this share of its length nobody needs to hear that the line has gaps; above the other it is what they need to hear first. */
static const double LOST_SAID = 0.01, LOST_SAID_FIRST = 0.2;

static const char *const kinds[] = { [SEGMENT_LINE] = "line", [SEGMENT_CURVE] = "curve", [SEGMENT_ARC] = "arc" };

/* Why some figures are missing; lent, NULL where none is. */
static const char *
missing_because (const Traced *traced)
{
  return traced->words->has_centre_line ? NULL
                                        : _("There are no areas and no chords, because they are measured from the centre line: add --centre-line.");
}

/* What the outline encloses, all NAN without a centre line that it could be measured from. */
static Planform
planform_of (const Traced *traced)
{
  Planform planform;

  if (traced->words->has_centre_line && !planform_measure (traced->trace->outline, PLANFORM_CARRIED, &planform))
    return planform;
  return (Planform) { NAN, NAN, NAN, NAN, NAN, NAN, NAN };
}

static double
root_chord (const Traced *traced)
{
  const Outline *outline = traced->trace->outline;

  return traced->words->has_centre_line ? outline_node (outline, outline_segment_count (outline)).x - outline_node (outline, 0).x : NAN;
}

/* A number for people with a point as decimal sign, as the places named have it. */
static char *
fixed (double value, int decimals)
{
  char room[G_ASCII_DTOSTR_BUF_SIZE], format[8];

  g_snprintf (format, sizeof format, "%%.%df", decimals);
  return g_strdup (g_ascii_formatd (room, sizeof room, format, value));
}

static void
row (TextTable *table, const char *name, double value, int decimals, const char *unit)
{
  if (!isfinite (value))
    return;
  text_table_cell (table, g_strdup (name));
  text_table_cell (table, fixed (value, decimals));
  text_table_cell (table, g_strdup (unit));
}

static void
print_lost (const Traced *traced, GString *text)
{
  g_autofree char *lost = fixed (100 * traced->trace->lost, 0);

  g_string_append_printf (text, _("  Along %s %% of its length no line is to be seen.\n"), lost);
}

static void
print_passed (const Traced *traced, GString *text)
{
  g_autofree char *x = fixed (traced->trace->astray_at.x, 1), *y = fixed (traced->trace->astray_at.y, 1), *off = fixed (traced->passed, 1);

  g_string_append_printf (text, _("  The outline passes the place named at x %s mm, y %s mm by %s mm: it may have taken another line. Look at the "
                                  "plan there, and name more places along its line.\n"), x, y, off);
}

static void
print_aside (const Traced *traced, GString *text)
{
  const Trace *trace = traced->trace;
  g_autofree char *x = fixed (trace->aside_at.x, 1), *y = fixed (trace->aside_at.y, 1), *off = fixed (trace->aside, 1);

  g_string_append_printf (text, _("  The outline goes aside at x %s mm, y %s mm by %s mm over bare paper: it may have taken another line. Look "
                                  "at the plan there, and name more places along its line.\n"), x, y, off);
}

/* What stands before all figures: they may be of something else. */
static void
print_doubts (const Traced *traced, GString *text)
{
  const bool lost = traced->trace->lost > LOST_SAID_FIRST;

  if (!lost && !(traced->passed > 0) && !(traced->trace->aside > 0))
    return;
  g_string_append_printf (text, "%s\n", _("Look at this first"));
  if (lost)
    print_lost (traced, text);
  if (traced->passed > 0)
    print_passed (traced, text);
  if (traced->trace->aside > 0)
    print_aside (traced, text);
  g_string_append_c (text, '\n');
}

static void
print_figures (const Traced *traced, GString *text)
{
  const Planform planform = planform_of (traced);
  TextTable table = text_table_new (3, 1 << 2);

  row (&table, _("Area of the side traced"), planform.area / 2, 1, "mm²");
  row (&table, _("Area with its mirror image"), planform.area, 1, "mm²");
  row (&table, _("Span with its mirror image"), planform.span, 2, "mm");
  row (&table, _("Root chord"), root_chord (traced), 2, "mm");
  row (&table, _("Mean aerodynamic chord"), planform.mac, 2, "mm");
  row (&table, _("Its leading edge at x"), planform.mac_leading_edge_x, 2, "mm");
  row (&table, _("Pixel's width"), traced->mm_per_px_x, SCALE_DIGITS, "mm");
  row (&table, _("Pixel's height"), traced->mm_per_px_y, SCALE_DIGITS, "mm");
  text_table_print (&table, text);
  if (missing_because (traced))
    g_string_append_printf (text, "%s\n", missing_because (traced));
}

static void
print_segments (const Traced *traced, GString *text)
{
  const Outline *outline = traced->trace->outline;
  TextTable table = text_table_new (3, 0);

  g_string_append_printf (text, "\n%s\n", _("Outline (each segment's end, mm)"));
  for (size_t i = 0; i < outline_node_count (outline); i++)
    {
      const Point place = outline_node (outline, i);

      text_table_cell (&table, g_strdup (i ? kinds[outline_segment (outline, i - 1)->kind] : "start"));
      text_table_cell (&table, fixed (place.x, 2));
      text_table_cell (&table, fixed (place.y, 2));
    }
  text_table_print (&table, text);
}

static void
print_length (const Traced *traced, size_t index, GString *text)
{
  const LengthMisfit *misfit = &traced->misfit->lengths[index];
  g_autofree char *known = fixed (g_array_index (traced->words->known, KnownLength, index).mm, 1);
  g_autofree char *off = fixed (misfit->residual_mm, 2), *percent = fixed (misfit->residual_percent, 2);
  g_autofree char *explained = fixed (misfit->click_percent, 2);

  /* TRANSLATORS: a known length; by how much what was measured differs; what clicks that are a pixel or so off explain of that */
  g_string_append_printf (text, _("  The known %s mm: off by %s mm (%s %%); its ends' pixels explain %s %%.\n"), known, off, percent,
                          explained);
  if (misfit->disagrees)
    g_string_append_printf (text, "    %s\n",
                            _("They do not explain it: the figure or an end is wrong, or the paper has stretched unevenly."));
}

/* Whether lengths that run one way alone made the scale: of the other way nothing is known then. */
static bool
is_known_one_way (const MappingMisfit *misfit)
{
  return misfit->maker == MADE_BY_LENGTHS && (misfit->length_count == 1 || misfit->badly_conditioned);
}

static void
print_scales (const MappingMisfit *misfit, GString *text)
{
  g_autofree char *difference = fixed (misfit->difference_percent, 2);

  if (misfit->badly_conditioned)
    g_string_append_printf (text, "  %s\n", _("The known lengths cannot tell two scales apart: one is used both ways."));
  else if (is_known_one_way (misfit))
    /* TRANSLATORS: half a per cent is what paper and scanners usually differ by from one direction to the other */
    g_string_append_printf (text, "  %s\n", _("The scale is known one way only: paper and scanners stretch unevenly, so across that length "
                                              "figures may be half a per cent off. Add a known length at right angles."));
  else if (isfinite (misfit->difference_percent) && misfit->each_way)
    g_string_append_printf (text, _("  The known lengths give a scale each way; they differ by %s %%.\n"), difference);
}

static void
print_trust (const Traced *traced, GString *text)
{
  g_autofree char *sigma = fixed (traced->trace->sigma, 3);

  g_string_append_printf (text, "\n%s\n", _("How sure"));
  g_string_append_printf (text, _("  The printed line lies within %s mm of the outline (one standard deviation).\n"), sigma);
  if (traced->trace->lost > LOST_SAID && traced->trace->lost <= LOST_SAID_FIRST)
    print_lost (traced, text);
  if (traced->reduced > 1)
    g_string_append_printf (text, _("  The picture is large: each %d × %d pixels were read as one.\n"), traced->reduced, traced->reduced);
  print_scales (traced->misfit, text);
  for (size_t i = 0; i < traced->misfit->length_count; i++)
    print_length (traced, i, text);
}

char *
trace_text (const Traced *traced)
{
  GString *text = g_string_new (NULL);

  print_doubts (traced, text);
  print_figures (traced, text);
  print_segments (traced, text);
  print_trust (traced, text);
  return g_string_free (text, FALSE);
}

static void
write_segment (JsonText *json, const char *kind, const Segment *segment, Point to)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "kind", kind);
  if (segment && segment->kind == SEGMENT_CURVE)
    {
      json_text_number (json, "x1", segment->control1.x);
      json_text_number (json, "y1", segment->control1.y);
      json_text_number (json, "x2", segment->control2.x);
      json_text_number (json, "y2", segment->control2.y);
    }
  if (segment && segment->kind == SEGMENT_ARC)
    {
      json_text_number (json, "cx", segment->centre.x);
      json_text_number (json, "cy", segment->centre.y);
      json_text_number (json, "rx", segment->rx);
      json_text_number (json, "ry", segment->ry);
    }
  json_text_number (json, "x", to.x);
  json_text_number (json, "y", to.y);
  json_text_close_object (json);
}

static void
write_segments (JsonText *json, const Outline *outline)
{
  json_text_open_array (json, "segments");
  write_segment (json, "start", NULL, outline_node (outline, 0));
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    write_segment (json, kinds[outline_segment (outline, i)->kind], outline_segment (outline, i), outline_node (outline, i + 1));
  json_text_close_array (json);
}

static void
write_polyline (JsonText *json, const char *name, const Point places[], size_t count)
{
  json_text_open_array (json, name);
  for (size_t i = 0; i < count; i++)
    json_text_pair (json, NULL, places[i].x, places[i].y);
  json_text_close_array (json);
}

static void
write_figures (JsonText *json, const Traced *traced)
{
  const Planform planform = planform_of (traced);

  json_text_number (json, "mm_per_px_x", traced->mm_per_px_x);
  json_text_number (json, "mm_per_px_y", traced->mm_per_px_y);
  json_text_number (json, "area_mm2", planform.area);
  json_text_number (json, "half_area_mm2", planform.area / 2);
  json_text_number (json, "span_mm", planform.span);
  json_text_number (json, "root_chord_mm", root_chord (traced));
  json_text_number (json, "mac_mm", planform.mac);
  json_text_number (json, "mac_station_mm", planform.mac_station);
  json_text_number (json, "mac_leading_edge_x_mm", planform.mac_leading_edge_x);
  json_text_number (json, "sigma_mm", traced->trace->sigma);
  json_text_number (json, "lost", traced->trace->lost);
  json_text_number (json, "passed_mm", traced->passed);
  if (traced->passed > 0)
    json_text_pair (json, "passed_at_mm", traced->trace->astray_at.x, traced->trace->astray_at.y);
  json_text_number (json, "aside_mm", traced->trace->aside);
  if (traced->trace->aside > 0)
    json_text_pair (json, "aside_at_mm", traced->trace->aside_at.x, traced->trace->aside_at.y);
  if (missing_because (traced))
    json_text_string (json, "missing_because", missing_because (traced));
  json_text_number (json, "reduced", traced->reduced);
}

static void
write_misfits (JsonText *json, const MappingMisfit *misfit)
{
  json_text_number (json, "scales_differ_percent", misfit->difference_percent);
  json_text_bool (json, "scale_each_way", misfit->each_way);
  json_text_bool (json, "scale_known_one_way", is_known_one_way (misfit));
  json_text_open_array (json, "misfits");
  for (size_t i = 0; i < misfit->length_count; i++)
    {
      json_text_open_object (json, NULL);
      json_text_number (json, "residual_mm", misfit->lengths[i].residual_mm);
      json_text_number (json, "residual_percent", misfit->lengths[i].residual_percent);
      json_text_number (json, "click_percent", misfit->lengths[i].click_percent);
      json_text_bool (json, "disagrees", misfit->lengths[i].disagrees);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

char *
trace_json (const Traced *traced)
{
  const Trace *trace = traced->trace;
  JsonText json = json_text_begin ();

  write_segments (&json, trace->outline);
  write_figures (&json, traced);
  write_misfits (&json, traced->misfit);
  write_polyline (&json, "polyline_mm", trace->polyline, trace->count);
  write_polyline (&json, "polyline_px", trace->polyline_px, trace->count);
  return json_text_end (&json);
}
