#include "trammel-config.h"
#include "app/export-preview.h"
#include <glib/gi18n-lib.h>
#include "app/cutting-legend.h"
#include "app/export-page.h"

struct _TrammelExportPreview {
  GtkWidget parent;
  GtkWidget *box, *stack, *frame, *picture, *text, *complaint, *pager, *place, *legend, *foot;
  Figures *figures;
  ExportOptions options;        /* with the page wished for */
  size_t count;                 /* pages of what was last shown */
  SheetPages *pages;            /* of what is wished for, laid out; NULL: not yet, or under way */
  bool running, outdated;
  bool renewed;                 /* what is under way is of another sheet, or of other figures */
};

G_DEFINE_FINAL_TYPE (TrammelExportPreview, trammel_export_preview, GTK_TYPE_WIDGET)

static void
trammel_export_preview_dispose (GObject *object)
{
  TrammelExportPreview *self = TRAMMEL_EXPORT_PREVIEW (object);

  self->stack = NULL;
  g_clear_pointer (&self->box, gtk_widget_unparent);
  G_OBJECT_CLASS (trammel_export_preview_parent_class)->dispose (object);
}

static void
trammel_export_preview_finalize (GObject *object)
{
  TrammelExportPreview *self = TRAMMEL_EXPORT_PREVIEW (object);

  g_clear_pointer (&self->figures, figures_unref);
  g_clear_pointer (&self->pages, sheet_pages_free);
  G_OBJECT_CLASS (trammel_export_preview_parent_class)->finalize (object);
}

static void
turn_back (GtkWidget *widget, const char *action, GVariant *parameter)
{
  trammel_export_preview_turn (TRAMMEL_EXPORT_PREVIEW (widget), -1);
}

static void
turn_on (GtkWidget *widget, const char *action, GVariant *parameter)
{
  trammel_export_preview_turn (TRAMMEL_EXPORT_PREVIEW (widget), 1);
}

static void
trammel_export_preview_class_init (TrammelExportPreviewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_export_preview_dispose;
  G_OBJECT_CLASS (klass)->finalize = trammel_export_preview_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "exportpreview");
  gtk_widget_class_install_action (widget_class, "preview.previous", NULL, turn_back);
  gtk_widget_class_install_action (widget_class, "preview.next", NULL, turn_on);
}

static void
widget_label (GtkWidget *widget, const char *label)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

static GtkWidget *
preview_scrolled (GtkWidget *child)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), child);
  widget_label (scrolled, _("The text as it will be exported"));
  return scrolled;
}

static void
preview_fill_stack (TrammelExportPreview *self)
{
  self->stack = gtk_stack_new ();
  self->picture = gtk_picture_new ();
  self->text = gtk_text_view_new ();
  self->complaint = gtk_label_new (NULL);
  gtk_widget_set_vexpand (self->stack, TRUE);
  gtk_widget_add_css_class (self->picture, "preview-page");
  /* Of the page's own shape: its edge is the paper's. */
  self->frame = gtk_aspect_frame_new (0.5, 0.5, 1, FALSE);
  gtk_aspect_frame_set_child (GTK_ASPECT_FRAME (self->frame), self->picture);
  gtk_text_view_set_editable (GTK_TEXT_VIEW (self->text), FALSE);
  gtk_text_view_set_monospace (GTK_TEXT_VIEW (self->text), TRUE);
  gtk_label_set_wrap (GTK_LABEL (self->complaint), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->complaint), 48);
  gtk_widget_set_name (self->complaint, "preview-complaint");
  widget_label (self->text, _("The text as it will be exported"));
  gtk_stack_add_named (GTK_STACK (self->stack), self->frame, "picture");
  gtk_stack_add_named (GTK_STACK (self->stack), preview_scrolled (self->text), "text");
  gtk_stack_add_named (GTK_STACK (self->stack), self->complaint, "complaint");
}

static GtkWidget *
pager_button (const char *icon, const char *label, const char *action)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_widget_set_tooltip_text (button, label);
  gtk_widget_add_css_class (button, "flat");
  widget_label (button, label);
  return button;
}

static GtkWidget *
preview_pager (TrammelExportPreview *self)
{
  GtkWidget *pager = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->place = gtk_label_new (NULL);
  gtk_widget_set_name (self->place, "page-place");
  gtk_widget_add_css_class (self->place, "numeric");
  gtk_widget_set_halign (pager, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (pager), pager_button ("go-previous-symbolic", _("Previous page"), "preview.previous"));
  gtk_box_append (GTK_BOX (pager), self->place);
  gtk_box_append (GTK_BOX (pager), pager_button ("go-next-symbolic", _("Next page"), "preview.next"));
  gtk_widget_set_visible (pager, FALSE);
  return pager;
}

static void
trammel_export_preview_init (TrammelExportPreview *self)
{
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 9);
  preview_fill_stack (self);
  self->pager = preview_pager (self);
  self->legend = cutting_legend_new ();
  self->foot = gtk_label_new (NULL);
  gtk_widget_set_name (self->foot, "preview-foot");
  gtk_widget_add_css_class (self->foot, "dim-label");
  gtk_label_set_wrap (GTK_LABEL (self->foot), TRUE);
  gtk_box_append (GTK_BOX (self->box), self->stack);
  gtk_box_append (GTK_BOX (self->box), self->pager);
  gtk_box_append (GTK_BOX (self->box), self->legend);
  gtk_box_append (GTK_BOX (self->box), self->foot);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

GtkWidget *
trammel_export_preview_new (void)
{
  return g_object_new (TRAMMEL_TYPE_EXPORT_PREVIEW, NULL);
}

/* One page under way; the figures it is made of are its own, and so are the pages that are laid out (NULL: none). */
typedef struct { Figures *figures; SheetPages *pages; ExportOptions options; } Wish;

static void
wish_free (gpointer data)
{
  Wish *wish = data;

  figures_unref (wish->figures);
  sheet_pages_free (wish->pages);
  g_free (wish);
}

static void
preview_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Wish *wish = data;
  GError *error = NULL;
  ExportPage *page = wish->pages != NULL ? export_page_among (g_steal_pointer (&wish->pages), &wish->options, &error)
                                         : export_page_new (wish->figures, &wish->options, &error);

  if (page == NULL)
    g_task_return_error (task, error);
  else
    g_task_return_pointer (task, page, (GDestroyNotify) export_page_free);
}

static void
preview_show_place (TrammelExportPreview *self, size_t page, size_t count)
{
  /* Translators: the first is the number of the page that is shown, the second how many there are. */
  g_autofree char *place = g_strdup_printf (_("Page %1$zu of %2$zu"), page + 1, count);

  self->count = count;
  gtk_label_set_text (GTK_LABEL (self->place), place);
  gtk_widget_set_visible (self->pager, count > 1);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "preview.previous", page > 0);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "preview.next", page + 1 < count);
}

/* What a screen reader says of a page that it cannot read. */
static void
preview_tell_picture (TrammelExportPreview *self, const ExportPage *page)
{
  /* Translators: what the page is, "Wall sheet with the balance mark", and which one of how many. */
  g_autofree char *label = g_strdup_printf (_("%1$s, page %2$zu of %3$zu as it will be exported"), page->subject, page->page + 1, page->count);

  widget_label (self->picture, label);
}

static void
preview_show_text (TrammelExportPreview *self, GBytes *bytes)
{
  gsize length;
  const char *text = g_bytes_get_data (bytes, &length);

  gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->text)), text, (int) length);
}

static const char *
foot_words (TrammelExportPreview *self, const ExportPage *page)
{
  if (page->size != NULL)
    return page->size;
  return self->options.sheet == EXPORT_PARTS_SHEET ? _("Nothing is measured on this sheet: it may be printed at any size.")
                                                   : _("Print at 100 %, without fitting to the page.");
}

static void
preview_show (TrammelExportPreview *self, const ExportPage *page)
{
  preview_show_place (self, page->page, page->count);
  if (page->picture != NULL) {
    gtk_picture_set_paintable (GTK_PICTURE (self->picture), GDK_PAINTABLE (page->picture));
    gtk_aspect_frame_set_ratio (GTK_ASPECT_FRAME (self->frame), gdk_paintable_get_intrinsic_aspect_ratio (GDK_PAINTABLE (page->picture)));
    preview_tell_picture (self, page);
  } else
    preview_show_text (self, page->text);
  self->options.page = page->page;
  cutting_legend_fill (self->legend, page->layers);
  gtk_label_set_text (GTK_LABEL (self->foot), foot_words (self, page));
  gtk_widget_set_visible (self->foot, page->picture != NULL);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), page->picture != NULL ? "picture" : "text");
}

static void
preview_complain (TrammelExportPreview *self, const char *sentence)
{
  preview_show_place (self, 0, 1);
  gtk_label_set_text (GTK_LABEL (self->complaint), sentence);
  cutting_legend_fill (self->legend, 0);
  gtk_widget_set_visible (self->foot, FALSE);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "complaint");
}

static void preview_start (TrammelExportPreview *self);

static void
preview_arrived (GObject *object, GAsyncResult *result, gpointer data)
{
  TrammelExportPreview *self = TRAMMEL_EXPORT_PREVIEW (object);
  g_autoptr (GError) error = NULL;
  g_autoptr (ExportPage) page = g_task_propagate_pointer (G_TASK (result), &error);

  self->running = false;
  if (self->stack == NULL)
    return;
  if (page != NULL && !self->renewed)
    self->pages = g_steal_pointer (&page->pages);
  if (self->outdated)
    preview_start (self);
  else if (page != NULL)
    preview_show (self, page);
  else
    preview_complain (self, error->message);
}

static void
preview_start (TrammelExportPreview *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, preview_arrived, NULL);
  Wish *wish = g_new0 (Wish, 1);

  wish->figures = figures_ref (self->figures);
  wish->pages = g_steal_pointer (&self->pages);
  wish->options = self->options;
  self->running = true;
  self->outdated = self->renewed = false;
  g_task_set_task_data (task, wish, wish_free);
  g_task_run_in_thread (task, preview_in_thread);
}

static void
preview_renew (TrammelExportPreview *self)
{
  if (self->running)
    self->outdated = true;
  else
    preview_start (self);
}

void
trammel_export_preview_set (TrammelExportPreview *self, const Figures *figures, const ExportOptions *options)
{
  Figures *kept = figures_ref (figures);
  const size_t page = self->options.sheet == options->sheet ? self->options.page : 0;

  g_clear_pointer (&self->figures, figures_unref);
  g_clear_pointer (&self->pages, sheet_pages_free);
  self->renewed = true;
  self->figures = kept;
  self->options = *options;
  self->options.page = page;
  preview_renew (self);
}

bool
trammel_export_preview_turn (TrammelExportPreview *self, int by)
{
  const bool there = by < 0 ? self->options.page >= (size_t) -by : self->options.page + by < self->count;

  if (there) {
    self->options.page += by;
    preview_renew (self);
  }
  return there;
}

size_t
trammel_export_preview_count (TrammelExportPreview *self)
{
  return !self->running && gtk_stack_get_visible_child (GTK_STACK (self->stack)) == self->frame ? self->count : 0;
}

bool
trammel_export_preview_is_settled (TrammelExportPreview *self)
{
  return !self->running;
}
