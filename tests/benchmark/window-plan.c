/* The window with a plan of 24 megapixels beneath an aeroplane, against an empty one of the same size, in turns: the worst frame of forty
 * zooms with the sheet turned three ways, and what memory the plan adds. Run with the example's path (and a picture's, else one is drawn
 * here) it starts itself over and over; with a third argument it is one of the two windows and prints one line. */
#include <adwaita.h>
#include <math.h>
#include <stdio.h>
#include <string.h>
#include "app/application.h"
#include "app/plan-store.h"
#include "app/sheet-canvas.h"
#include "app/window.h"
#include "benchmark/process.h"
#include "benchmark/timing.h"
#include "document/changes.h"

enum { rounds = 5, zooms = 40, turns = 3, frames = zooms * turns, picture_width = 6000, picture_height = 4000, rest_ms = 2500 };

typedef struct {
  GtkWindow *window;
  TrammelSheetCanvas *canvas;   /* NULL: the empty window */
  TrammelSession *session;
  const char *picture;
  GMainLoop *loop;
  double times[frames], began, bytes;
  long pss_before;
  int shown;                    /* frames so far; -1: the plan is still being read */
  int rehearsed;                /* frames before there was a plan */
  bool turned, uncounted;       /* a turn is an edit: the frame in which it was made is not one of a zoom */
} Stage;

/* A wing with its ribs on yellowed paper, as a scanner gives it. */
static char *
draw_picture (void)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, picture_width, picture_height);
  cairo_t *cr = cairo_create (surface);
  char *path = g_build_filename (g_get_tmp_dir (), "benchmark-plan.png", NULL);

  cairo_set_source_rgb (cr, 0.93, 0.88, 0.72);
  cairo_paint (cr);
  cairo_set_source_rgb (cr, 0.2, 0.2, 0.3);
  cairo_set_line_width (cr, 4);
  for (int i = 0; i < 40; i++) {
    cairo_move_to (cr, 200 + 140 * i, 600);
    cairo_rel_line_to (cr, 20, 2800);
  }
  cairo_move_to (cr, 200, 600);
  cairo_curve_to (cr, 4000, 500, 5700, 1200, 5700, 2000);
  cairo_curve_to (cr, 5700, 2800, 4000, 3500, 200, 3400);
  cairo_stroke (cr);
  cairo_destroy (cr);
  cairo_surface_write_to_png (surface, path);
  cairo_surface_destroy (surface);
  return path;
}

static GtkWidget *
find_canvas (GtkWidget *widget)
{
  GtkWidget *found = TRAMMEL_IS_SHEET_CANVAS (widget) ? widget : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = find_canvas (child);
  return found;
}

/* Where the sheet is looked at from goes in even factors from all of it to a line's width. */
static void
stage_zoom (Stage *stage, int zoom)
{
  SheetView view = *trammel_sheet_canvas_view (stage->canvas);

  view.scale = 1.5 * pow (1.09, zoom);
  view.origin_x = view.width / 2 + zoom;
  view.origin_y = view.height / 2 - 60 * view.scale - zoom;
  trammel_sheet_canvas_set_view (stage->canvas, view);
}

/* The plan's axis turned upright, aslant and across. */
static void
stage_look (Stage *stage)
{
  const int turn = stage->shown / zooms, zoom = stage->shown % zooms;
  const Plan *plan = trammel_plan_store_plan (trammel_sheet_canvas_plan_store (stage->canvas));
  static const double angles[turns] = { 0, 0.12, G_PI / 2 };

  if (zoom == 0 && !stage->turned) {
    Plan *next = (Plan *) piece_dup (&plan->piece);
    const Point middle = { plan->width / 2, plan->height / 2 };

    next->views[0].fore = (Point) { middle.x - 1000 * sin (angles[turn]), middle.y - 1000 * cos (angles[turn]) };
    next->views[0].aft = (Point) { middle.x + 1000 * sin (angles[turn]), middle.y + 1000 * cos (angles[turn]) };
    trammel_session_do (stage->session, change_plan (trammel_session_aeroplane (stage->session), plan->piece.id, next), "turn");
    stage->uncounted = true;
  }
  stage->turned = zoom != zooms - 1;
  stage_zoom (stage, zoom);
}

/* Memory is what the window holds when it has come to rest. */
static gboolean
stage_end (gpointer data)
{
  Stage *stage = data;
  const long added = pss_kib () - stage->pss_before;

  qsort (stage->times, frames, sizeof *stage->times, compare_times);
  printf ("%.3f %.3f %.4f\n", 1e3 * stage->times[frames / 2], 1e3 * stage->times[frames - 1], stage->bytes > 0 ? 1024.0 * (double) added / stage->bytes : 0);
  g_main_loop_quit (stage->loop);
  return G_SOURCE_REMOVE;
}

static gboolean stage_open_plan (gpointer data);

static void
stage_before_paint (GdkFrameClock *clock, Stage *stage)
{
  stage->began = cpu_now ();
  if (stage->canvas != NULL && stage->rehearsed < zooms)
    stage_zoom (stage, stage->rehearsed);
  if (stage->shown < 0 || stage->shown >= frames)
    return;
  if (stage->canvas != NULL)
    stage_look (stage);
  else
    gtk_widget_queue_draw (adw_application_window_get_content (ADW_APPLICATION_WINDOW (stage->window)));
}

static void
stage_after_paint (GdkFrameClock *clock, Stage *stage)
{
  if (stage->canvas != NULL && stage->rehearsed < zooms && ++stage->rehearsed == zooms) {
    gdk_frame_clock_end_updating (clock);
    g_timeout_add (rest_ms, stage_open_plan, stage);
    return;
  }
  if (stage->shown < 0 || stage->shown >= frames)
    return;
  if (stage->uncounted) {
    stage->uncounted = false;
    return;
  }
  stage->times[stage->shown++] = cpu_now () - stage->began;
  if (stage->shown == frames) {
    gdk_frame_clock_end_updating (clock);
    g_timeout_add (rest_ms, stage_end, stage);
  }
}

static void
stage_go (Stage *stage)
{
  stage->shown = 0;
  gdk_frame_clock_begin_updating (gtk_widget_get_frame_clock (GTK_WIDGET (stage->window)));
}

static gboolean
stage_begin (gpointer data)
{
  stage_go (data);
  return G_SOURCE_REMOVE;
}

/* The plan has come: when its strip has slid in, frames are counted. */
static void
stage_plan_changed (TrammelPlanStore *store, Stage *stage)
{
  const InkLevels *levels = trammel_plan_store_ink (store);
  const Plan *plan = trammel_plan_store_plan (store);
  Plan *next;

  if (levels == NULL || stage->shown >= 0 || plan->view_count > 0)
    return;
  stage->bytes = (double) ink_width (ink_levels_ink (levels)) * ink_height (ink_levels_ink (levels));
  next = (Plan *) piece_dup (&plan->piece);
  next->view_count = 1;
  next->views = g_new0 (PlanView, 1);
  next->views[0] = (PlanView) { .fore = { 0, 0 }, .aft = { 0, 1000 }, .side = VIEW_BOTH };
  trammel_session_do (stage->session, change_plan (trammel_session_aeroplane (stage->session), plan->piece.id, next), "view");
  g_timeout_add (rest_ms, stage_begin, stage);
}

static gboolean
stage_open_plan (gpointer data)
{
  Stage *stage = data;

  stage->pss_before = pss_kib ();
  g_signal_connect_after (trammel_sheet_canvas_plan_store (stage->canvas), "changed", G_CALLBACK (stage_plan_changed), stage);
  trammel_window_open_plan (TRAMMEL_WINDOW (stage->window), stage->picture);
  return G_SOURCE_REMOVE;
}

/* What zooming by itself takes, be it in the display's buffers, is not the plan's. */
static gboolean
stage_rehearse (gpointer data)
{
  Stage *stage = data;

  stage->canvas = TRAMMEL_SHEET_CANVAS (find_canvas (GTK_WIDGET (stage->window)));
  gdk_frame_clock_begin_updating (gtk_widget_get_frame_clock (GTK_WIDGET (stage->window)));
  return G_SOURCE_REMOVE;
}

/* Plain paper that must be painted anew each time: without a change nothing would be. */
static void
empty_draw (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer stage)
{
  cairo_set_source_rgb (cr, 1, 1, ((Stage *) stage)->shown % 2 == 0 ? 1 : 0.99);
  cairo_paint (cr);
}

static int
run_stage (const char *example, const char *picture)
{
  GtkApplication *application = picture != NULL ? GTK_APPLICATION (trammel_application_new ())
                                                : GTK_APPLICATION (adw_application_new ("org.trammel.Benchmark", G_APPLICATION_NON_UNIQUE));
  Stage stage = { .picture = picture, .loop = g_main_loop_new (NULL, FALSE), .shown = -1 };
  GdkFrameClock *clock;

  if (!g_application_register (G_APPLICATION (application), NULL, NULL))
    return 1;
  if (picture != NULL) {
    TrammelSettings *settings = trammel_application_settings (TRAMMEL_APPLICATION (application));

    trammel_settings_set_flag (settings, CAUTIONS_READ, true);    /* the first run's card lies over the sheet only once */
    stage.window = GTK_WINDOW (trammel_window_new (application, settings));
    stage.session = trammel_window_session (TRAMMEL_WINDOW (stage.window));
    trammel_window_open_file (TRAMMEL_WINDOW (stage.window), example);
  } else {
    GtkWidget *paper = gtk_drawing_area_new ();

    stage.window = GTK_WINDOW (adw_application_window_new (application));
    gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (paper), empty_draw, &stage, NULL);
    adw_application_window_set_content (ADW_APPLICATION_WINDOW (stage.window), paper);
  }
  gtk_window_set_default_size (stage.window, 1280, 800);
  gtk_window_present (stage.window);
  clock = gtk_widget_get_frame_clock (GTK_WIDGET (stage.window));
  g_signal_connect (clock, "before-paint", G_CALLBACK (stage_before_paint), &stage);
  g_signal_connect (clock, "after-paint", G_CALLBACK (stage_after_paint), &stage);
  g_timeout_add (rest_ms, picture != NULL ? stage_rehearse : stage_begin, &stage);
  g_main_loop_run (stage.loop);
  return 0;
}

typedef struct { double middle, worst, memory; } Measured;

static bool
measure (const char *self, const char *example, const char *picture, const char *which, Measured *measured)
{
  const char *arguments[] = { self, example, picture, which, NULL };
  g_autofree char *said = NULL;

  return g_spawn_sync (NULL, (char **) arguments, NULL, G_SPAWN_STDERR_TO_DEV_NULL, NULL, NULL, &said, NULL, NULL, NULL)
         && sscanf (said, "%lf %lf %lf", &measured->middle, &measured->worst, &measured->memory) == 3;
}

int
main (int argc, char **argv)
{
  double empty[rounds], middle[rounds], worst[rounds], memory[rounds];
  g_autofree char *picture = NULL;

  if (argc == 4)
    return run_stage (argv[1], g_str_equal (argv[3], "plan") ? argv[2] : NULL);
  if (argc < 2)
    return 2;
  picture = argc > 2 ? g_strdup (argv[2]) : draw_picture ();
  for (int i = 0; i < rounds; i++) {
    Measured nothing, ours;

    if (!measure (argv[0], argv[1], picture, "empty", &nothing) || !measure (argv[0], argv[1], picture, "plan", &ours))
      return 1;
    empty[i] = nothing.middle;
    middle[i] = ours.middle;
    worst[i] = ours.worst;
    memory[i] = ours.memory;
  }
  const double against = median (empty, rounds);

  printf ("whole frame over a plan of 24 megapixels, processor ms, an empty window: %.2f\n", against);
  printf ("the middle one of %d zooms and %d turns: %.2f; ratio %.2f\n", zooms, turns, median (middle, rounds), median (middle, rounds) / against);
  printf ("the worst (bound 2.0, aim 1.6): %.2f; ratio %.2f\n", median (worst, rounds), median (worst, rounds) / against);
  printf ("memory that the plan adds, Pss, of its pixels at a byte each (bound 1.5, aim 1.4): %.2f\n", median (memory, rounds));
  return 0;
}
