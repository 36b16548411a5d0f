/* The window against an empty one of the same size, in turns: time to the first frame, memory, frames while a node is pulled, and what an
 * idle window does. Run without arguments but the example's path it starts itself over and over; with a second argument it is one of the
 * two windows and prints one line: seconds to the first frame, Pss in KiB, median and 99th percentile of a frame in ms, idle frames. */
#include <adwaita.h>
#include <stdio.h>
#include <string.h>
#include "app/application.h"
#include "app/window.h"
#include "benchmark/process.h"
#include "benchmark/timing.h"
#include "document/changes.h"

enum { rounds = 7, pulled_frames = 120, idle_ms = 2000, rest_ms = 1000, end_ms = 250 };

typedef struct {
  GtkWindow *window;
  TrammelSession *session;      /* NULL: the empty window */
  const char *path;
  GMainLoop *loop;
  double frames[pulled_frames], frame_began, first_frame;
  int pulled, idle_frames;
  bool pulling, counting_idle;
} Stage;

/* Since this process was started, as the kernel has it. */
static double
seconds_alive (void)
{
  g_autofree char *stat = NULL, *uptime = NULL;
  const char *fields;
  double up;
  long long started = 0;

  g_file_get_contents ("/proc/self/stat", &stat, NULL, NULL);
  g_file_get_contents ("/proc/uptime", &uptime, NULL, NULL);
  fields = strrchr (stat, ')');
  for (int i = 0; i < 20 && fields != NULL; i++)
    fields = strchr (fields + 1, ' ');
  started = fields != NULL ? g_ascii_strtoll (fields, NULL, 10) : 0;
  up = g_ascii_strtod (uptime, NULL);
  return up - (double) started / (double) sysconf (_SC_CLK_TCK);
}

/* Frames before this show the pull's end: the one that draws it, and one in which what slides in and out beside the sheet has its style
 * looked up again, as after whatever lays out the window. */
static gboolean
stage_idle_begins (gpointer data)
{
  Stage *stage = data;

  stage->counting_idle = true;
  return G_SOURCE_REMOVE;
}

static gboolean
stage_idle_over (gpointer data)
{
  Stage *stage = data;

  qsort (stage->frames, pulled_frames, sizeof *stage->frames, compare_times);
  printf ("%.4f %ld %.3f %.3f %d\n", stage->first_frame, pss_kib (), 1e3 * stage->frames[pulled_frames / 2],
          1e3 * stage->frames[pulled_frames * 99 / 100], stage->idle_frames);
  g_main_loop_quit (stage->loop);
  return G_SOURCE_REMOVE;
}

/* One pull of the wing's tip, as the pointer's motion does it; the empty window only draws again. */
static void
stage_pull (Stage *stage)
{
  const Surface *wing;
  Outline *next = NULL;
  Point tip;

  if (stage->session == NULL) {
    gtk_widget_queue_draw (adw_application_window_get_content (ADW_APPLICATION_WINDOW (stage->window)));
    return;
  }
  wing = aeroplane_reference_wing (trammel_session_aeroplane (stage->session));
  tip = outline_node (wing->outline, 1);
  tip.y += stage->pulled % 2 == 0 ? 1 : -1;
  if (outline_with_node_at (wing->outline, 1, tip, &next) == CORE_OK)
    trammel_session_preview (stage->session, change_surface_outline (trammel_session_aeroplane (stage->session), wing->piece.id, next));
}

/* When what the first frame did without has come. */
static gboolean
stage_begin_pulling (gpointer data)
{
  Stage *stage = data;

  stage->pulling = true;
  gdk_frame_clock_begin_updating (gtk_widget_get_frame_clock (GTK_WIDGET (stage->window)));
  return G_SOURCE_REMOVE;
}

static void
stage_before_paint (GdkFrameClock *clock, Stage *stage)
{
  stage->frame_began = cpu_now ();
  if (stage->pulling && stage->pulled < pulled_frames)
    stage_pull (stage);
}

static void
stage_after_paint (GdkFrameClock *clock, Stage *stage)
{
  if (stage->first_frame <= 0) {
    if (stage->session != NULL && aeroplane_reference_wing (trammel_session_aeroplane (stage->session)) == NULL)
      return;                     /* the document is still being read */
    stage->first_frame = seconds_alive ();
    g_timeout_add (rest_ms, stage_begin_pulling, stage);
    return;
  }
  if (!stage->pulling)
    return;
  if (stage->pulled < pulled_frames) {
    stage->frames[stage->pulled++] = cpu_now () - stage->frame_began;
    if (stage->pulled == pulled_frames) {
      gdk_frame_clock_end_updating (clock);
      if (stage->session != NULL)
        trammel_session_abandon (stage->session);
      g_timeout_add (end_ms, stage_idle_begins, stage);
      g_timeout_add (end_ms + idle_ms, stage_idle_over, stage);
    }
    return;
  }
  stage->idle_frames += stage->counting_idle;
}

/* Plain paper that must be painted anew each time: without a change nothing would be. */
static void
empty_draw (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer stage)
{
  cairo_set_source_rgb (cr, 1, 1, ((Stage *) stage)->pulled % 2 == 0 ? 1 : 0.99);
  cairo_paint (cr);
}

static GtkWindow *
empty_window (GtkApplication *application, Stage *stage)
{
  GtkWidget *window = adw_application_window_new (application), *paper = gtk_drawing_area_new ();

  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (paper), empty_draw, stage, NULL);
  adw_application_window_set_content (ADW_APPLICATION_WINDOW (window), paper);
  return GTK_WINDOW (window);
}

static void
stage_activate (GtkApplication *application, Stage *stage)
{
  GdkFrameClock *clock;

  if (stage->path != NULL) {
    TrammelSettings *settings = trammel_application_settings (TRAMMEL_APPLICATION (application));
    TrammelWindow *window;

    trammel_settings_set_flag (settings, CAUTIONS_READ, true);    /* the first run's card lies over the sheet only once */
    window = trammel_window_new (application, settings);
    stage->window = GTK_WINDOW (window);
    stage->session = trammel_window_session (window);
  } else {
    stage->window = empty_window (application, stage);
  }
  gtk_window_set_default_size (stage->window, 1280, 800);
  gtk_window_present (stage->window);
  if (stage->path != NULL)
    trammel_window_open_file (TRAMMEL_WINDOW (stage->window), stage->path);
  clock = gtk_widget_get_frame_clock (GTK_WIDGET (stage->window));
  g_signal_connect (clock, "before-paint", G_CALLBACK (stage_before_paint), stage);
  g_signal_connect (clock, "after-paint", G_CALLBACK (stage_after_paint), stage);
}

static int
run_stage (const char *path)
{
  GtkApplication *application = path != NULL ? GTK_APPLICATION (trammel_application_new ())
                                             : GTK_APPLICATION (adw_application_new ("org.trammel.Benchmark", G_APPLICATION_NON_UNIQUE));
  Stage stage = { .path = path, .loop = g_main_loop_new (NULL, FALSE) };

  if (!g_application_register (G_APPLICATION (application), NULL, NULL))
    return 1;
  stage_activate (application, &stage);
  g_main_loop_run (stage.loop);
  return 0;
}

typedef struct { double start, pss, frame, slow_frame, idle; } Measured;

static bool
measure (char **argv, Measured *measured)
{
  g_autofree char *said = NULL;

  return g_spawn_sync (NULL, argv, NULL, G_SPAWN_STDERR_TO_DEV_NULL, NULL, NULL, &said, NULL, NULL, NULL)
         && sscanf (said, "%lf %lf %lf %lf %lf", &measured->start, &measured->pss, &measured->frame, &measured->slow_frame, &measured->idle) == 5;
}

static double
median_of (const Measured measured[], size_t offset)
{
  double values[rounds];

  for (int i = 0; i < rounds; i++)
    values[i] = *(const double *) ((const char *) &measured[i] + offset);
  return median (values, rounds);
}

static void
compare (const char *what, const Measured ours[], const Measured empty[], size_t offset)
{
  const double mine = median_of (ours, offset), against = median_of (empty, offset);

  printf ("%s: %.4g; an empty window: %.4g; ratio %.2f\n", what, mine, against, mine / against);
}

int
main (int argc, char **argv)
{
  Measured ours[rounds], empty[rounds];

  if (argc == 3)
    return run_stage (g_str_equal (argv[2], "example") ? argv[1] : NULL);
  if (argc != 2)
    return 2;
  for (int i = 0; i < rounds; i++)
    if (!measure ((char *[]) { argv[0], argv[1], (char[]) { "empty" }, NULL }, &empty[i])
        || !measure ((char *[]) { argv[0], argv[1], (char[]) { "example" }, NULL }, &ours[i]))
      return 1;
  compare ("start to first frame, example open, s (bound 1.4, aim 1.2)", ours, empty, offsetof (Measured, start));
  compare ("memory, example open, Pss KiB (bound 1.35, aim 1.2)", ours, empty, offsetof (Measured, pss));
  compare ("whole frame while a node is pulled, processor ms (bound 2.0, aim 1.6)", ours, empty, offsetof (Measured, frame));
  printf ("99 of 100 such frames within %.2f ms of processor time (a frame at 60 Hz has 16.7)\n", median_of (ours, offsetof (Measured, slow_frame)));
  printf ("idle for %g s: %g frames (wanted 0)\n", idle_ms / 1e3, median_of (ours, offsetof (Measured, idle)));
  return 0;
}
