#include "app/pull.h"
#include "app/pointer-plate.h"

struct Pull {
  TrammelSheetCanvas *sheet;
  TrammelSession *session;
  TrammelPointerPlate *plate;
  Grip *grip;
  PullGround ground;
  Point offset;            /* from the pointer to the thing */
  Point pointer;           /* last */
  PullManner manner;
  bool held;               /* the button is down */
  char *label;             /* of the step; NULL: the grip's */
  gulong typed, entered, left;
};

static GdkRectangle
pull_keep_clear (const Pull *self)
{
  const Box box = grip_box (self->grip, trammel_session_aeroplane (self->session));
  double near[2], far[2];

  self->ground.px (self->ground.widget, box.min, near);
  self->ground.px (self->ground.widget, box.max, far);
  return (GdkRectangle) { (int) MIN (near[0], far[0]), (int) MIN (near[1], far[1]),
                          (int) fabs (far[0] - near[0]) + 1, (int) fabs (far[1] - near[1]) + 1 };
}

static void
pull_show (Pull *self)
{
  GripRow rows[GRIP_ROWS];
  const size_t count = grip_rows (self->grip, trammel_session_figures (self->session), rows);
  const GdkRectangle clear = pull_keep_clear (self);
  double px[2];

  self->ground.px (self->ground.widget, self->pointer, px);
  trammel_pointer_plate_show (self->plate, trammel_session_units (self->session), rows, count);
  trammel_pointer_plate_stand (self->plate, self->ground.widget, px, &clear);
}

static gboolean
pull_typed (Pull *self, guint row, double mm)
{
  Aeroplane *next = grip_with_row (self->grip, trammel_session_aeroplane (self->session), row, mm);

  if (next == NULL)
    return FALSE;
  trammel_session_preview (self->session, next);
  pull_show (self);
  return TRUE;
}

static void
pull_settle (Pull *self)
{
  g_autofree char *label = self->label != NULL ? g_strdup (self->label) : grip_label (self->grip);
  TrammelSession *session = self->session;

  /* Over before the step is told: what hears of it must not find a pull that another step has cut off. */
  trammel_sheet_canvas_end_pull (self->sheet);
  if (trammel_session_is_previewing (session))
    trammel_session_settle (session, label);
}

/* The field was left without a value: a drag goes on from where the hand is now, anything else stands as it is shown. */
static void
pull_left (Pull *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
  self->offset = point_sub (pull_place (self), self->pointer);
  if (!self->held)
    pull_settle (self);
}

static void
pull_entered (Pull *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->sheet));
  pull_settle (self);
}

Pull *
pull_new (TrammelSheetCanvas *sheet, Grip *takes, PullGround ground, Point pointer)
{
  Pull *self = g_new0 (Pull, 1);

  self->sheet = sheet;
  self->session = trammel_sheet_canvas_session (sheet);
  self->plate = trammel_sheet_canvas_plate (sheet);
  self->grip = takes;
  self->ground = ground;
  self->pointer = pointer;
  /* A mark that nobody has set yet stands nowhere: it comes to the hand. */
  self->offset = point_is_finite (grip_place (takes)) ? point_sub (grip_place (takes), pointer) : (Point) { 0, 0 };
  self->typed = g_signal_connect_swapped (self->plate, "typed", G_CALLBACK (pull_typed), self);
  self->entered = g_signal_connect_swapped (self->plate, "entered", G_CALLBACK (pull_entered), self);
  self->left = g_signal_connect_swapped (self->plate, "left", G_CALLBACK (pull_left), self);
  trammel_sheet_canvas_set_hint (sheet, grip_hint (takes));
  return self;
}

Pull *
pull_begin_on_sheet (TrammelSheetCanvas *sheet, Grip *takes, Point pointer)
{
  Pull *self = pull_new (sheet, takes, (PullGround) { GTK_WIDGET (sheet), trammel_sheet_canvas_px }, pointer);

  trammel_sheet_canvas_take_pull (sheet, self);
  return self;
}

void
pull_free (Pull *self)
{
  if (self == NULL)
    return;
  g_clear_signal_handler (&self->typed, self->plate);
  g_clear_signal_handler (&self->entered, self->plate);
  g_clear_signal_handler (&self->left, self->plate);
  trammel_pointer_plate_hide (self->plate);
  grip_free (self->grip);
  g_free (self->label);
  g_free (self);
}

void
pull_set_label (Pull *self, const char *label)
{
  g_free (self->label);
  self->label = g_strdup (label);
}

/* Straight along or across, whichever the hand has gone further. */
static Point
pull_straightened (Point from, Point to)
{
  return fabs (to.x - from.x) >= fabs (to.y - from.y) ? (Point) { to.x, from.y } : (Point) { from.x, to.y };
}

static Point
pull_snapped (Pull *self, Point place, bool loose)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);
  double step;

  if (!grip_is_of_side (self->grip))
    return trammel_sheet_canvas_snapped (self->sheet, place, grip_id (self->grip), grip_index (self->grip), loose);
  if (loose || !trammel_settings_flag (trammel_session_settings (self->session), SNAPPING))
    return place;
  step = sheet_snap_step (&scene);
  return (Point) { round (place.x / step) * step, round (place.y / step) * step };
}

/* A guide that the thing did not follow, held back by its rail or the centre line, would be a lie; one that it stood on anyway says
 * nothing. */
static void
pull_trim_guides (Pull *self, Point wanted, Point got)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->sheet);
  const Point start = grip_place (self->grip);
  const double near = 1e-6;   /* mm; well below what a screen shows, well above rounding */

  if (fabs (wanted.x - got.x) > near || fabs (start.x - got.x) < near)
    overlay->guide_x = NAN;
  if (fabs (wanted.y - got.y) > near || fabs (start.y - got.y) < near)
    overlay->guide_y = NAN;
}

void
pull_to (Pull *self, Point pointer, PullManner manner)
{
  const Point start = grip_place (self->grip);
  Point place = point_add (pointer, self->offset);
  const bool rests = self->held && point_distance (pointer, self->pointer) == 0
                     && manner.straight == self->manner.straight && manner.loose == self->manner.loose;
  Aeroplane *next;

  self->held = true;
  self->pointer = pointer;
  self->manner = manner;
  /* A hand that rests changes nothing, least of all what was typed meanwhile. */
  if (rests || pull_is_typing (self))
    return;
  place = pull_snapped (self, place, manner.loose);
  if (manner.straight && point_is_finite (start))
    place = pull_straightened (start, place);
  next = grip_moved (self->grip, place, manner.loose);
  if (next == NULL)
    return;
  trammel_session_preview (self->session, next);
  pull_trim_guides (self, place, grip_place_in (self->grip, trammel_session_aeroplane (self->session)));
  pull_show (self);
}

void
pull_drop (Pull *self)
{
  self->held = false;
  if (!pull_is_typing (self))
    pull_settle (self);
}

void
pull_cancel (Pull *self)
{
  TrammelSession *session = self->session;

  trammel_sheet_canvas_end_pull (self->sheet);
  if (trammel_session_is_previewing (session))
    trammel_session_abandon (session);
}

void
pull_accept (Pull *self)
{
  trammel_pointer_plate_accept (self->plate);
  pull_settle (self);
}

void
pull_type (Pull *self, const char *text)
{
  pull_show (self);
  trammel_pointer_plate_type (self->plate, text);
}

bool
pull_is_typing (const Pull *self)
{
  return trammel_pointer_plate_is_typing (self->plate);
}

bool
pull_is_of_side (const Pull *self)
{
  return grip_is_of_side (self->grip);
}

Point
pull_place (const Pull *self)
{
  return grip_place_in (self->grip, trammel_session_aeroplane (self->session));
}
