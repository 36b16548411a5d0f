#include "command/subcommand.h"

#include "trammel-config.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdio.h>
#include <unistd.h>
#include "command/trace-print.h"
#include "command/trace-words.h"
#include "command/usage.h"
#include "plan/decode.h"
#include "plan/printed-sides.h"

/* px: how far a place named is usually off the line, one standard deviation. */
static const double CLICK_SIGMA = 2;
/* Where no line is to be seen along more of the way than this, the places are not on one: what lies between was crossed by chance. */
static const double MOST_LOST = 0.6;

static CommandStatus
image_problem (const TraceWords *words, const char *sentence)
{
  fprintf (stderr, "%s: %s.\n", words->image, sentence);
  return COMMAND_PROBLEM;
}

static CommandStatus
open_image (const TraceWords *words, DecodeFacts *facts, Ink **ink)
{
  const int file = open (words->image, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  const DecodeRequest request = { .file = file, .page = words->page, .dpi = words->dpi };
  Raster *raster;

  if (file < 0)
    return image_problem (words, g_strerror (errno));
  const DecodeStatus decoded = decode (&request, NULL, facts, &raster);
  close (file);
  if (decoded)
    return image_problem (words, _(decode_status_sentence (decoded)));
  const CoreStatus status = ink_new (raster, NULL, NULL, ink);
  raster_unref (raster);
  return status ? image_problem (words, _(core_status_sentence (status))) : COMMAND_DONE;
}

static CommandStatus
refuse_places (const TraceWords *words, double lost)
{
  g_autofree char *sentence = g_strdup_printf (_("Along %.0f %% of the way through the places named no printed line is to be seen: name "
                                                 "places on the line itself, in pixels from the upper left corner"), 100 * lost);

  return image_problem (words, sentence);
}

/* What corners alone can be wrong about is said of them; all else by its own name. */
static CommandStatus
refuse_known (const TraceWords *words, CoreStatus status)
{
  if (status == CORE_NO_MEMORY || status == CORE_CANCELLED)
    return image_problem (words, _(core_status_sentence (status)));
  if (!words->has_corners)
    return usage_error ("trace", _("--known: %s."), _(core_status_sentence (status)));
  if (status != CORE_CROSSES_ITSELF && status != CORE_SINGULAR)
    return usage_error ("trace", _("--corners: %s."), _(core_status_sentence (status)));
  if (status == CORE_CROSSES_ITSELF)
    return usage_error ("trace", "%s",
                        _("The sides of --corners cross each other: name the corners one after the other, round the rectangle."));
  return usage_error ("trace", "%s",
                      _("Three places of --corners lie on one line, or one inside the others: no rectangle looks like that."));
}

/* How the picture is made true, by whatever is known of it. */
static CommandStatus
make_true (const TraceWords *words, const Ink *ink, const DecodeFacts *facts, Mapping *mapping, MappingMisfit *misfit)
{
  const double own = facts->page_width_mm / facts->width_px;
  const Knowns knowns = {
    .lengths = (const KnownLength *) words->known->data, .length_count = words->known->len,
    .rectangle = words->has_corners ? &words->corners : NULL,
    .mm_per_px = isfinite (words->mm_per_px) ? words->mm_per_px : own,
    .width_px = facts->width_px, .height_px = facts->height_px,
  };

  if (!words->has_corners && !words->known->len && !isfinite (knowns.mm_per_px))
    return usage_error ("trace", "%s", _("This picture does not say how large it is: add --known, --corners or --mm-per-pixel."));
  const CoreStatus status = mapping_solve_printed (ink, &knowns, NULL, NULL, mapping, misfit);
  return status ? refuse_known (words, status) : COMMAND_DONE;
}

/* The side that is traced is where the place furthest from the centre line lies. */
static double
side_traced (const TraceWords *words, const Mapping *mapping, const AxisFrame *frame)
{
  double furthest = 0;

  for (guint i = 0; i < words->through->len; i++)
    {
      const double off = axis_frame_own (frame, mapping_to_mm (mapping, g_array_index (words->through, Point, i))).y;

      if (fabs (off) > fabs (furthest))
        furthest = off;
    }
  return furthest < 0 ? -1 : 1;
}

static CommandStatus
find_frame (const TraceWords *words, const Ink *ink, const Mapping *mapping, AxisFrame *frame)
{
  ViewAxis axis = words->centre_line;
  const double mm_per_px = mapping_mm_per_px (mapping, axis.fore, point_sub (axis.aft, axis.fore));
  const AxisClicks clicked = { .axis = axis, .sigma = 1, .px_per_mm = 1 / mm_per_px };

  *frame = (AxisFrame) { .fore = mapping_to_mm (mapping, g_array_index (words->through, Point, 0)), .along = { 0, 1 }, .side = 1 };
  if (!words->has_centre_line)
    return COMMAND_DONE;
  printed_axis (ink, &clicked, NULL, NULL, &axis);
  if (axis_frame_on (mapping, axis, 1, frame))
    return usage_error ("trace", "%s", _("An end of --centre-line lies beyond what the picture shows of the paper."));
  frame->side = side_traced (words, mapping, frame);
  return COMMAND_DONE;
}

static Traced
traced_of (const TraceWords *words, const Mapping *mapping, const MappingMisfit *misfit, const DecodeFacts *facts, const Trace *trace)
{
  const Point middle = words->has_corners ? mapping_to_px (mapping, (Point) { words->corners.width / 2, words->corners.height / 2 })
                                          : (Point) { facts->width_px / 2, facts->height_px / 2 };

  return (Traced) {
    .words = words, .trace = trace, .misfit = misfit, .reduced = facts->reduced,
    .passed = trace_astray (trace->astray, CLICK_SIGMA * trace->mm_per_px),
    .mm_per_px_x = mapping_mm_per_px (mapping, middle, (Point) { 1, 0 }),
    .mm_per_px_y = mapping_mm_per_px (mapping, middle, (Point) { 0, 1 }),
  };
}

static CommandStatus
follow_and_print (const TraceWords *words, const Ink *ink, const Mapping *mapping, const MappingMisfit *misfit, const DecodeFacts *facts)
{
  TraceRequest request = {
    .mapping = mapping, .clicks = (const Point *) words->through->data, .click_count = words->through->len, .click_sigma = CLICK_SIGMA,
    .ends_on_axis = words->has_centre_line, .tolerance = NAN,
  };
  CommandStatus result = find_frame (words, ink, mapping, &request.frame);
  Trace trace;

  if (result)
    return result;
  const CoreStatus status = trace_outline (ink, &request, &trace);
  if (status)
    return image_problem (words, _(core_status_sentence (status)));
  if (trace.lost > MOST_LOST)
    result = refuse_places (words, trace.lost);
  else
    {
      const Traced traced = traced_of (words, mapping, misfit, facts, &trace);
      g_autofree char *text = words->json ? trace_json (&traced) : trace_text (&traced);

      fputs (text, stdout);
    }
  trace_clear (&trace);
  return result;
}

static CommandStatus
trace_image (const TraceWords *words)
{
  DecodeFacts facts;
  MappingMisfit misfit;
  Mapping mapping;
  Ink *ink;
  CommandStatus status = open_image (words, &facts, &ink);

  if (status)
    return status;
  if (trace_words_inside (words, facts.width_px, facts.height_px, &status))
    status = make_true (words, ink, &facts, &mapping, &misfit);
  if (!status)
    status = follow_and_print (words, ink, &mapping, &misfit, &facts);
  ink_unref (ink);
  return status;
}

CommandStatus
trace_command (int argc, char **argv)
{
  TraceWords words;
  CommandStatus status;

  if (!trace_words_read (argc, argv, &words, &status))
    return status;
  status = trace_image (&words);
  trace_words_clear (&words);
  return status;
}
