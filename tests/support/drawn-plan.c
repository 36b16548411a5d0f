#include "support/drawn-plan.h"
#include <cairo.h>
#include <check.h>
#include <stdlib.h>
#include "support/drawn-ink.h"

enum { WIDTH = 900, HEIGHT = 260, INNER_ROOM = 8 };
static const double SCALE = 4, LINE = 2.4, INNER_LINE = 1.8;
static const Point AXIS = { 450, 40 };

static cairo_status_t
append (void *bytes, const unsigned char *data, unsigned length)
{
  g_byte_array_append (bytes, data, length);
  return CAIRO_STATUS_SUCCESS;
}

static GBytes *
png_of (const unsigned char *paper)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, WIDTH, HEIGHT);
  guint32 *pixels = (guint32 *) (void *) cairo_image_surface_get_data (surface);
  GByteArray *bytes = g_byte_array_new ();

  for (int i = 0; i < WIDTH * HEIGHT; i++)
    pixels[i] = (guint32) paper[i] * 0x010101u;
  cairo_surface_mark_dirty (surface);
  cairo_surface_write_to_png_stream (surface, append, bytes);
  cairo_surface_destroy (surface);
  return g_byte_array_free_to_bytes (bytes);
}

/* Where a place of the upright picture is. */
static Point
turned (const DrawnPlan *plan, Point px)
{
  return plan->upside_down ? (Point) { WIDTH - px.x, HEIGHT - px.y } : px;
}

/* Where a place of the half, mm, is: `across` is how it is stretched, negative to port. */
static Point
px_of (const DrawnPlan *plan, double across, Point own)
{
  const double side = across > 0 ? 1 : -1;

  return turned (plan, (Point) { AXIS.x + side * SCALE * plan->root + across * SCALE * own.y, AXIS.y + SCALE * own.x });
}

static size_t
add_inner_lines (const DrawnPlan *plan, double across, DrawnLine *lines)
{
  static Point places[2][INNER_ROOM][2];

  ck_assert_uint_le (plan->inner_count, INNER_ROOM);
  for (size_t i = 0; i < plan->inner_count; i++) {
    Point *ends = places[across < 0][i];

    ends[0] = px_of (plan, across, plan->inner[i][0]);
    ends[1] = px_of (plan, across, plan->inner[i][1]);
    lines[i] = (DrawnLine) { ends, 2, INNER_LINE };
  }
  return plan->inner_count;
}

static GBytes *
picture_of (const DrawnPlan *plan)
{
  static Point places[2][DRAWN_ROOM];
  const double across[] = { plan->starboard, -plan->port };
  DrawnLine lines[2 + 2 * INNER_ROOM];
  size_t count = 0;
  unsigned char *paper;
  GBytes *png;

  for (int half = 0; half < 2; half++) {
    if (across[half] == 0)
      continue;
    lines[count] = (DrawnLine) { places[half], places_of_outline (plan->outline, SCALE, (Point) { 0, 0 }, places[half]), LINE };
    for (size_t i = 0; i < lines[count].count; i++) {
      Point *at = &places[half][i];

      *at = px_of (plan, across[half], (Point) { at->y / SCALE, at->x / SCALE });
    }
    count++;
    count += add_inner_lines (plan, across[half], lines + count);
  }
  paper = paper_with_lines (WIDTH, HEIGHT, lines, count);
  png = png_of (paper);
  free (paper);
  return png;
}

Aeroplane *
aeroplane_on_plan (const DrawnPlan *drawn)
{
  Aeroplane *empty = aeroplane_new (), *made;
  Plan *plan = plan_new ("plan");

  plan->image = picture_of (drawn);
  plan->image_type = g_strdup ("image/png");
  plan->width = WIDTH;
  plan->height = HEIGHT;
  plan->lengths = g_new0 (PlanLength, plan->length_count = 1);
  plan->lengths[0] = (PlanLength) { .a = { 50, 20 }, .b = { 850, 20 }, .mm = 800 / SCALE };
  plan->views = g_new0 (PlanView, plan->view_count = 1);
  plan->views[0] = (PlanView) { .id = g_strdup ("view"), .shows = drawn->shows, .fore = turned (drawn, AXIS),
                                .aft = turned (drawn, (Point) { AXIS.x, AXIS.y + 150 }), .x = 100,
                                .side = drawn->side, .flipped = drawn->flipped };
  made = aeroplane_with_added (empty, &plan->piece);
  aeroplane_unref (empty);
  return made;
}
