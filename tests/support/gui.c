#include "support/gui.h"
#include <string.h>
#include <adwaita.h>
#include <gdk/x11/gdkx.h>
#include <X11/XKBlib.h>
#include <X11/extensions/XTest.h>

enum { PAUSE_MS = 25, LONGEST_WAIT_MS = 30000, DRAG_STEPS = 12, DOUBLE_CLICK_MS = 450 };

static Display *
gui_display (void)
{
  return gdk_x11_display_get_xdisplay (gdk_display_get_default ());
}

void
gui_begin (void)
{
  g_setenv ("GDK_BACKEND", "x11", TRUE);
  g_setenv ("GTK_A11Y", "test", TRUE);           /* names can be asked for, and no bus is needed */
  adw_init ();
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, "gtk-cursor-blink", FALSE,
                "gtk-dialogs-use-header", TRUE,
                "gtk-recent-files-enabled", FALSE,           /* the toolkit leaks with each; who asks for them switches them on */
                NULL);
}

int
gui_run (Suite *takes)
{
  SRunner *runner = srunner_create (takes);
  int failed;

  srunner_set_fork_status (runner, CK_NOFORK);
  srunner_run_all (runner, CK_ENV);
  failed = srunner_ntests_failed (runner);
  srunner_free (runner);
  return failed == 0 ? 0 : 1;
}

void
gui_wait_ms (int milliseconds)
{
  const gint64 end = g_get_monotonic_time () + milliseconds * 1000;

  while (g_get_monotonic_time () < end)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (500);
}

void
gui_settle (void)
{
  XSync (gui_display (), False);
  gui_wait_ms (PAUSE_MS);
  for (int i = 0; i < 200 && g_main_context_pending (NULL); i++)
    g_main_context_iteration (NULL, FALSE);
}

bool
gui_wait (bool (*met) (gpointer data), gpointer data)
{
  const gint64 end = g_get_monotonic_time () + LONGEST_WAIT_MS * 1000;

  while (!met (data)) {
    if (g_get_monotonic_time () > end)
      return false;
    gui_wait_ms (5);
  }
  gui_settle ();
  return true;
}

static bool
window_is_active (gpointer window)
{
  return gtk_window_is_active (window);
}

void
gui_present (GtkWindow *window)
{
  gtk_window_present (window);
  ck_assert_msg (gui_wait (window_is_active, window), "the keyboard does not come to “%s”", gtk_window_get_title (window));
}

/* Pointer. */

static void
widget_place_on_screen (GtkWidget *widget, double x, double y, int screen[2])
{
  GtkNative *native = gtk_widget_get_native (widget);
  GdkSurface *surface = gtk_native_get_surface (native);
  const int scale = gdk_surface_get_scale_factor (surface);
  double in_native_x, in_native_y, dx, dy;
  Window child;

  gtk_widget_translate_coordinates (widget, GTK_WIDGET (native), x, y, &in_native_x, &in_native_y);
  gtk_native_get_surface_transform (native, &dx, &dy);
  XTranslateCoordinates (gui_display (), gdk_x11_surface_get_xid (surface), DefaultRootWindow (gui_display ()),
                         (int) ((in_native_x + dx) * scale), (int) ((in_native_y + dy) * scale), &screen[0], &screen[1], &child);
}

static void
pointer_to (int x, int y)
{
  XTestFakeMotionEvent (gui_display (), -1, x, y, CurrentTime);
  gui_settle ();
}

void
gui_move_to (GtkWidget *widget, double x, double y)
{
  int at[2];

  widget_place_on_screen (widget, x, y, at);
  /* One px more makes sure of a motion event where the pointer stood there already. */
  pointer_to (at[0] - 1, at[1]);
  pointer_to (at[0], at[1]);
}

void
gui_press (int button)
{
  XTestFakeButtonEvent (gui_display (), (unsigned) button, True, CurrentTime);
  gui_settle ();
}

void
gui_release (int button)
{
  XTestFakeButtonEvent (gui_display (), (unsigned) button, False, CurrentTime);
  gui_settle ();
}

static void
click_with (GtkWidget *widget, double x, double y, int button)
{
  static gint64 last_click;
  const gint64 since = (g_get_monotonic_time () - last_click) / 1000;

  /* Two clicks within 400 ms at one place would be a double click. */
  if (since < DOUBLE_CLICK_MS)
    gui_wait_ms ((int) (DOUBLE_CLICK_MS - since));
  gui_move_to (widget, x, y);
  gui_press (button);
  gui_release (button);
  last_click = g_get_monotonic_time ();
}

void
gui_click_at (GtkWidget *widget, double x, double y)
{
  click_with (widget, x, y, 1);
}

void
gui_context_click_at (GtkWidget *widget, double x, double y)
{
  click_with (widget, x, y, 3);
}

void
gui_click (GtkWidget *widget)
{
  gui_click_at (widget, gtk_widget_get_width (widget) / 2.0, gtk_widget_get_height (widget) / 2.0);
}

void
gui_drag (GtkWidget *widget, GuiDrag drag)
{
  int from[2], to[2];

  gui_wait_ms (DOUBLE_CLICK_MS);
  widget_place_on_screen (widget, drag.from_x, drag.from_y, from);
  widget_place_on_screen (widget, drag.to_x, drag.to_y, to);
  pointer_to (from[0] - 1, from[1]);
  pointer_to (from[0], from[1]);
  gui_press (1);
  for (int i = 1; i <= DRAG_STEPS; i++)
    pointer_to (from[0] + (to[0] - from[0]) * i / DRAG_STEPS, from[1] + (to[1] - from[1]) * i / DRAG_STEPS);
  gui_release (1);
}

void
gui_scroll (GtkWidget *widget, double x, double y, int steps)
{
  gui_move_to (widget, x, y);
  for (int i = 0; i < ABS (steps); i++) {
    gui_press (steps > 0 ? 5 : 4);
    gui_release (steps > 0 ? 5 : 4);
  }
}

/* Keys. */

static const struct { GdkModifierType held; KeySym symbol; } held_keys[] = {
  { GDK_CONTROL_MASK, XK_Control_L }, { GDK_SHIFT_MASK, XK_Shift_L }, { GDK_ALT_MASK, XK_Alt_L },
};

static void
fake_key (KeySym symbol, bool down)
{
  const KeyCode code = XKeysymToKeycode (gui_display (), symbol);

  ck_assert_msg (code != 0, "this keyboard has no key 0x%lx", symbol);
  XTestFakeKeyEvent (gui_display (), code, down, CurrentTime);
}

static void
fake_modifiers (GdkModifierType held, bool down)
{
  for (size_t i = 0; i < G_N_ELEMENTS (held_keys); i++)
    if (held & held_keys[i].held)
      fake_key (held_keys[i].symbol, down);
}

static void
fake_keystroke (KeySym symbol, GdkModifierType held)
{
  const KeyCode code = XKeysymToKeycode (gui_display (), symbol);

  if (XkbKeycodeToKeysym (gui_display (), code, 0, 0) != symbol && XkbKeycodeToKeysym (gui_display (), code, 0, 1) == symbol)
    held |= GDK_SHIFT_MASK;
  /* Press and release at once: a key held while the loop is busy would repeat. */
  fake_modifiers (held, true);
  fake_key (symbol, true);
  fake_key (symbol, false);
  fake_modifiers (held, false);
  gui_settle ();
}

void
gui_key (const char *accelerator)
{
  guint key;
  GdkModifierType held;

  ck_assert_msg (gtk_accelerator_parse (accelerator, &key, &held), "%s is no key", accelerator);
  fake_keystroke (key, held);
}

static void
key_hold (const char *key, bool down)
{
  const KeySym symbol = XStringToKeysym (key);

  ck_assert_msg (symbol != NoSymbol, "%s is no key", key);
  fake_key (symbol, down);
  gui_settle ();
}

void
gui_key_down (const char *key)
{
  key_hold (key, true);
}

void
gui_key_up (const char *key)
{
  key_hold (key, false);
}

void
gui_type (const char *text)
{
  for (; *text != '\0'; text++)
    fake_keystroke (*text == '\n' ? XK_Return : *text == '\t' ? XK_Tab : (KeySym) *text, 0);
}

/* Finding. */

static bool
reads_like (const char *shown, const char *text)
{
  if (shown == NULL)
    return false;
  for (; *shown != '\0' && *text != '\0'; shown++) {
    if (*shown == '_' && *text != '_')
      continue;
    if (*shown != *text)
      return false;
    text++;
  }
  return *shown == '\0' && *text == '\0';
}

static bool
widget_reads (GtkWidget *widget, const char *text)
{
  g_autofree char *mismatch = NULL;

  if (GTK_IS_LABEL (widget) && reads_like (gtk_label_get_text (GTK_LABEL (widget)), text))
    return true;
  if (GTK_IS_BUTTON (widget) && reads_like (gtk_button_get_label (GTK_BUTTON (widget)), text))
    return true;
  if (ADW_IS_PREFERENCES_ROW (widget) && reads_like (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), text))
    return true;
  if (!gtk_test_accessible_has_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL))
    return false;
  mismatch = gtk_test_accessible_check_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, text);
  return mismatch == NULL;
}

typedef struct { const char *text, *name; GType type; } Sought;

static bool
widget_is_sought (GtkWidget *widget, const Sought *sought)
{
  if (sought->text != NULL)
    return widget_reads (widget, sought->text);
  if (sought->name != NULL)
    return g_strcmp0 (gtk_widget_get_name (widget), sought->name) == 0;
  return g_type_is_a (G_OBJECT_TYPE (widget), sought->type);
}

static GtkWidget *
find_below (GtkWidget *root, const Sought *sought)
{
  GtkWidget *found = NULL;

  if (!gtk_widget_get_mapped (root))
    return NULL;
  if (widget_is_sought (root, sought))
    return root;
  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = find_below (child, sought);
  return found;
}

GtkWidget *
gui_find (GtkWidget *root, const char *text)
{
  return find_below (root, &(Sought) { .text = text });
}

GtkWidget *
gui_find_type (GtkWidget *root, GType type)
{
  return find_below (root, &(Sought) { .type = type });
}

GtkWidget *
gui_find_named (GtkWidget *root, const char *widget_name)
{
  return find_below (root, &(Sought) { .name = widget_name });
}

typedef struct { GtkWidget *root; const char *text; } Awaited;

static bool
awaited_is_there (gpointer data)
{
  const Awaited *awaited = data;

  return gui_find (awaited->root, awaited->text) != NULL;
}

GtkWidget *
gui_await (GtkWidget *root, const char *text)
{
  Awaited awaited = { root, text };

  ck_assert_msg (gui_wait (awaited_is_there, &awaited), "nothing reads “%s”", text);
  return gui_find (root, text);
}

static GtkWindow *
window_titled (const char *title)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    if (gtk_widget_get_mapped (each->data) && g_strcmp0 (gtk_window_get_title (each->data), title) == 0)
      return each->data;
  return NULL;
}

static bool
titled_is_there (gpointer title)
{
  return window_titled (title) != NULL;
}

GtkWindow *
gui_await_window (const char *title)
{
  ck_assert_msg (gui_wait (titled_is_there, (gpointer) title), "no window is called “%s”", title);
  return window_titled (title);
}

static GtkWindow *
window_of_type (GType type)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    if (gtk_widget_get_mapped (each->data) && g_type_is_a (G_OBJECT_TYPE (each->data), type))
      return each->data;
  return NULL;
}

static bool
type_is_there (gpointer type)
{
  return window_of_type (*(GType *) type) != NULL;
}

GtkWindow *
gui_await_window_type (GType type)
{
  ck_assert_msg (gui_wait (type_is_there, &type), "no %s comes", g_type_name (type));
  return window_of_type (type);
}

bool
gui_window_is_there (const char *title)
{
  return window_titled (title) != NULL;
}

void
gui_photograph (GtkWidget *widget, const char *path)
{
  g_autoptr (GdkPaintable) paintable = gtk_widget_paintable_new (widget);
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  const int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  g_autoptr (GskRenderNode) node = NULL;
  g_autoptr (GdkTexture) texture = NULL;

  gui_settle ();
  gdk_paintable_snapshot (paintable, snapshot, width, height);
  node = gtk_snapshot_free_to_node (snapshot);
  ck_assert_msg (node != NULL, "nothing to photograph");
  texture = gsk_renderer_render_texture (gtk_native_get_renderer (gtk_widget_get_native (widget)), node,
                                         &GRAPHENE_RECT_INIT (0, 0, width, height));
  ck_assert (gdk_texture_save_to_png (texture, path));
}
