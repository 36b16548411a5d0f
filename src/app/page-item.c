#include "trammel-config.h"
#include "app/page-item.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <unistd.h>
#include "plan/decode.h"

/* Small enough to be quick, large enough to be told apart: an A4 page becomes 165 × 234 px, an A1 page is reduced to about as much. */
static const double SMALL_DPI = 20;
enum { MOST_PIXELS = 60000, MOST_SECONDS = 10 };

struct PageDrawer {
  int file;
  Units units;
  int stopped;                  /* atomic */
  GThreadPool *pool;            /* of one thread */
};

struct _TrammelPageItem {
  GObject parent;
  PageDrawer *drawer;           /* lent: the chooser's */
  int page;
  int shown;                    /* atomic: somebody looks at it */
  GdkTexture *picture;
  char *words;
};

G_DEFINE_FINAL_TYPE (TrammelPageItem, trammel_page_item, G_TYPE_OBJECT)

enum { PICTURE = 1, WORDS, PROPERTY_COUNT };
static GParamSpec *properties[PROPERTY_COUNT];

static void
trammel_page_item_finalize (GObject *object)
{
  TrammelPageItem *self = TRAMMEL_PAGE_ITEM (object);

  g_clear_object (&self->picture);
  g_free (self->words);
  G_OBJECT_CLASS (trammel_page_item_parent_class)->finalize (object);
}

static void
trammel_page_item_get_property (GObject *object, guint property, GValue *value, GParamSpec *spec)
{
  TrammelPageItem *self = TRAMMEL_PAGE_ITEM (object);

  if (property == PICTURE)
    g_value_set_object (value, self->picture);
  else
    g_value_set_string (value, self->words);
}

static void
trammel_page_item_class_init (TrammelPageItemClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->finalize = trammel_page_item_finalize;
  object_class->get_property = trammel_page_item_get_property;
  properties[PICTURE] = g_param_spec_object ("picture", NULL, NULL, GDK_TYPE_PAINTABLE, G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  properties[WORDS] = g_param_spec_string ("words", NULL, NULL, NULL, G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, PROPERTY_COUNT, properties);
}

static void
trammel_page_item_init (TrammelPageItem *self)
{
}

TrammelPageItem *
trammel_page_item_new (PageDrawer *drawer, int page)
{
  TrammelPageItem *self = g_object_new (TRAMMEL_TYPE_PAGE_ITEM, NULL);

  self->drawer = drawer;
  self->page = page;
  self->words = g_strdup_printf (_("Page %d"), page);
  return self;
}

int
trammel_page_item_page (TrammelPageItem *self)
{
  return self->page;
}

/* Drawing */

typedef struct { TrammelPageItem *item; GdkTexture *picture; char *words; } Drawn;

static gboolean
item_take (gpointer data)
{
  Drawn *drawn = data;
  TrammelPageItem *item = drawn->item;

  if (g_atomic_int_get (&item->shown)) {
    g_set_object (&item->picture, drawn->picture);
    g_free (item->words);
    item->words = g_steal_pointer (&drawn->words);
    g_object_notify_by_pspec (G_OBJECT (item), properties[PICTURE]);
    g_object_notify_by_pspec (G_OBJECT (item), properties[WORDS]);
  }
  g_clear_object (&drawn->picture);
  g_object_unref (item);
  g_free (drawn->words);
  g_free (drawn);
  return G_SOURCE_REMOVE;
}

static GdkTexture *
texture_of (const Raster *raster)
{
  const int width = raster_width (raster), height = raster_height (raster), channels = raster_channels (raster);
  const gsize size = 3 * (gsize) width * (gsize) height;
  guchar *pixels = g_malloc (size);
  g_autoptr (GBytes) bytes = NULL;

  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      for (int i = 0; i < 3; i++)
        pixels[3 * ((gsize) y * (gsize) width + (gsize) x) + (gsize) i] = raster_row (raster, y)[x * channels + (channels == 3 ? i : 0)];
  bytes = g_bytes_new_take (pixels, size);
  return gdk_memory_texture_new (width, height, GDK_MEMORY_R8G8B8, bytes, 3 * (gsize) width);
}

static char *
words_of (const PageDrawer *drawer, int page, const DecodeFacts *facts)
{
  g_autofree char *width = units_length_figure (drawer->units, facts->page_width_mm);
  g_autofree char *height = units_length (drawer->units, facts->page_height_mm);

  /* Translators: a page's number, its width and its height with the unit: "Page 3, 594 × 420 mm". */
  return isnan (facts->page_width_mm) ? g_strdup_printf (_("Page %d"), page) : g_strdup_printf (_("Page %d, %s × %s"), page, width, height);
}

static bool
drawing_goes_on (double done, void *data)
{
  TrammelPageItem *item = data;

  return g_atomic_int_get (&item->shown) && !g_atomic_int_get (&item->drawer->stopped);
}

static void
draw_in_thread (gpointer data, gpointer user_data)
{
  TrammelPageItem *item = data;
  PageDrawer *drawer = user_data;
  const DecodeRequest request = { .file = drawer->file, .page = item->page, .dpi = SMALL_DPI, .most_pixels = MOST_PIXELS, .seconds = MOST_SECONDS };
  const DecodeWatch watch = { .go_on = drawing_goes_on, .data = item };
  Drawn *drawn = g_new0 (Drawn, 1);
  Raster *raster = NULL;
  DecodeFacts facts;

  drawn->item = item;
  drawn->words = g_strdup_printf (_("Page %d"), item->page);
  if (drawing_goes_on (0, item) && decode (&request, &watch, &facts, &raster) == DECODE_OK) {
    g_free (drawn->words);
    drawn->words = words_of (drawer, item->page, &facts);
    drawn->picture = texture_of (raster);
    raster_unref (raster);
  }
  g_idle_add (item_take, drawn);
}

void
trammel_page_item_show (TrammelPageItem *self, bool shown)
{
  if (g_atomic_int_get (&self->shown) == (shown ? 1 : 0))
    return;
  g_atomic_int_set (&self->shown, shown ? 1 : 0);
  if (shown && self->picture == NULL)
    g_thread_pool_push (self->drawer->pool, g_object_ref (self), NULL);
  if (!shown)
    g_clear_object (&self->picture);
}

PageDrawer *
page_drawer_new (int takes_file, Units units)
{
  PageDrawer *self = g_new0 (PageDrawer, 1);

  self->file = takes_file;
  self->units = units;
  self->pool = g_thread_pool_new (draw_in_thread, self, 1, FALSE, NULL);
  return self;
}

/* What waits is still run through, but nothing is drawn any more; the page under way ends within a blink. */
static gpointer
drawer_end (gpointer data)
{
  PageDrawer *self = data;

  g_thread_pool_free (self->pool, FALSE, TRUE);
  close (self->file);
  g_free (self);
  return NULL;
}

void
page_drawer_stop (PageDrawer *self)
{
  g_atomic_int_set (&self->stopped, 1);
  g_thread_unref (g_thread_new ("pages", drawer_end, self));
}
