#include "app/steady-words.h"

/* A word, and how wide it is: measured again when it or its font changes. */
typedef struct { GtkWidget *shown; char *text; guint font; int width; } Word;

struct _TrammelSteadyWords {
  GtkWidget parent;
  int count;
  double align;
  Word words[STEADY_WORDS_MOST];
  int widest;                   /* of all so far, px */
  guint font;                   /* in which it was */
};

G_DEFINE_FINAL_TYPE (TrammelSteadyWords, trammel_steady_words, GTK_TYPE_WIDGET)

enum { GAP = 6, STEP = 8 };     /* px: between two words, and in which it grows */

static void
trammel_steady_words_dispose (GObject *object)
{
  TrammelSteadyWords *self = TRAMMEL_STEADY_WORDS (object);

  for (int i = 0; i < self->count; i++) {
    g_clear_pointer (&self->words[i].shown, gtk_widget_unparent);
    g_clear_pointer (&self->words[i].text, g_free);
  }
  self->count = 0;
  G_OBJECT_CLASS (trammel_steady_words_parent_class)->dispose (object);
}

/* With figures of one width, as the style sheet has them. */
static int
steady_words_measure_text (GtkWidget *widget, const char *text)
{
  g_autoptr (PangoLayout) layout = gtk_widget_create_pango_layout (widget, text);
  PangoAttrList *attributes = pango_attr_list_new ();
  int width;

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum"));
  pango_layout_set_attributes (layout, attributes);
  pango_attr_list_unref (attributes);
  pango_layout_get_pixel_size (layout, &width, NULL);
  return width;
}

static int
steady_words_width_of (Word *word)
{
  const guint font = pango_context_get_serial (gtk_widget_get_pango_context (word->shown));

  if (word->font != font) {
    word->width = word->text[0] == '\0' ? 0 : steady_words_measure_text (word->shown, word->text);
    word->font = font;
  }
  return word->width;
}

static int
steady_words_present_width (TrammelSteadyWords *self)
{
  int width = 0;

  for (int i = 0; i < self->count; i++)
    width += steady_words_width_of (&self->words[i]) + (i > 0 ? GAP : 0);
  return width;
}

int
trammel_steady_words_width (TrammelSteadyWords *self)
{
  const guint font = pango_context_get_serial (gtk_widget_get_pango_context (self->words[0].shown));
  const int width = steady_words_present_width (self);

  if (self->font != font)
    self->widest = 0;
  self->font = font;
  if (width > self->widest)
    self->widest = (width + STEP - 1) / STEP * STEP;
  return self->widest;
}

static void
trammel_steady_words_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                              int *minimum_baseline, int *natural_baseline)
{
  TrammelSteadyWords *self = TRAMMEL_STEADY_WORDS (widget);

  *minimum_baseline = *natural_baseline = -1;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *minimum = *natural = trammel_steady_words_width (self);
  else
    gtk_widget_measure (self->words[0].shown, orientation, -1, minimum, natural, NULL, NULL);
}

/* One after the other in the direction of reading. */
static void
trammel_steady_words_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  TrammelSteadyWords *self = TRAMMEL_STEADY_WORDS (widget);
  const bool leftward = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  double along = (width - steady_words_present_width (self)) * self->align;

  for (int i = 0; i < self->count; i++) {
    const int wide = steady_words_width_of (&self->words[i]);
    const double left = leftward ? width - along - wide : along;

    /* A px to spare, lest a share of one breaks the line. */
    gtk_widget_size_allocate (self->words[i].shown, &(GtkAllocation) { (int) left, 0, wide + 1, height }, baseline);
    along += wide + GAP;
  }
}

static void
trammel_steady_words_class_init (TrammelSteadyWordsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_steady_words_dispose;
  widget_class->measure = trammel_steady_words_measure;
  widget_class->size_allocate = trammel_steady_words_size_allocate;
}

static void
trammel_steady_words_init (TrammelSteadyWords *self)
{
}

GtkWidget *
trammel_steady_words_new (int count, double align, bool dim)
{
  TrammelSteadyWords *self = g_object_new (TRAMMEL_TYPE_STEADY_WORDS, NULL);

  self->count = count;
  self->align = align;
  for (int i = 0; i < count; i++) {
    Word *word = &self->words[i];

    word->shown = gtk_inscription_new (NULL);
    word->text = g_strdup ("");
    gtk_inscription_set_min_chars (GTK_INSCRIPTION (word->shown), 0);
    gtk_inscription_set_nat_chars (GTK_INSCRIPTION (word->shown), 0);
    gtk_widget_add_css_class (word->shown, "figure");
    if (dim)
      gtk_widget_add_css_class (word->shown, "dim-label");
    gtk_widget_set_parent (word->shown, GTK_WIDGET (self));
  }
  return GTK_WIDGET (self);
}

void
trammel_steady_words_set (TrammelSteadyWords *self, int which, const char *text)
{
  Word *word = &self->words[which];
  const int before = self->widest;
  int wide;

  if (g_str_equal (word->text, text))
    return;
  wide = steady_words_width_of (word);
  g_free (word->text);
  word->text = g_strdup (text);
  word->font = 0;
  gtk_inscription_set_text (GTK_INSCRIPTION (word->shown), text);
  if (trammel_steady_words_width (self) != before)
    gtk_widget_queue_resize (GTK_WIDGET (self));
  else if (word->width != wide)   /* as wide as before, each word stands where it is, and the window lays nothing out */
    gtk_widget_queue_allocate (GTK_WIDGET (self));
}
