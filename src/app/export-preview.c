#include "trammel-config.h"
#include "app/export-preview.h"
#include <glib/gi18n-lib.h>

struct _TrammelExportPreview {
  GtkWidget parent;
  GtkWidget *stack, *picture, *text, *complaint;
  Figures *figures;
  ExportOptions options;
  bool running, outdated;
};

G_DEFINE_FINAL_TYPE (TrammelExportPreview, trammel_export_preview, GTK_TYPE_WIDGET)

/* Twice what is seen: shrinking smooths the thin lines. */
static const double preview_px_wide = 1200;

static void
trammel_export_preview_dispose (GObject *object)
{
  g_clear_pointer (&TRAMMEL_EXPORT_PREVIEW (object)->stack, gtk_widget_unparent);
  G_OBJECT_CLASS (trammel_export_preview_parent_class)->dispose (object);
}

static void
trammel_export_preview_finalize (GObject *object)
{
  g_clear_pointer (&TRAMMEL_EXPORT_PREVIEW (object)->figures, figures_unref);
  G_OBJECT_CLASS (trammel_export_preview_parent_class)->finalize (object);
}

static void
trammel_export_preview_class_init (TrammelExportPreviewClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_export_preview_dispose;
  G_OBJECT_CLASS (klass)->finalize = trammel_export_preview_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "exportpreview");
}

static GtkWidget *
preview_scrolled (GtkWidget *child)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), child);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scrolled), GTK_ACCESSIBLE_PROPERTY_LABEL, _("The text as it will be exported"), -1);
  return scrolled;
}

static void
trammel_export_preview_init (TrammelExportPreview *self)
{
  self->stack = gtk_stack_new ();
  self->picture = gtk_picture_new ();
  self->text = gtk_text_view_new ();
  self->complaint = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->picture, "preview-page");
  gtk_widget_set_halign (self->picture, GTK_ALIGN_CENTER);
  gtk_widget_set_valign (self->picture, GTK_ALIGN_CENTER);
  gtk_text_view_set_editable (GTK_TEXT_VIEW (self->text), FALSE);
  gtk_text_view_set_monospace (GTK_TEXT_VIEW (self->text), TRUE);
  gtk_label_set_wrap (GTK_LABEL (self->complaint), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->picture), GTK_ACCESSIBLE_PROPERTY_LABEL, _("The page as it will be exported"), -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->text), GTK_ACCESSIBLE_PROPERTY_LABEL, _("The text as it will be exported"), -1);
  gtk_stack_add_named (GTK_STACK (self->stack), self->picture, "picture");
  gtk_stack_add_named (GTK_STACK (self->stack), preview_scrolled (self->text), "text");
  gtk_stack_add_named (GTK_STACK (self->stack), self->complaint, "complaint");
  gtk_widget_set_parent (self->stack, GTK_WIDGET (self));
}

GtkWidget *
trammel_export_preview_new (void)
{
  return g_object_new (TRAMMEL_TYPE_EXPORT_PREVIEW, NULL);
}

/* One picture under way; the figures it is made of are its own. */
typedef struct { Figures *figures; ExportOptions options; } Wish;

static void
wish_free (gpointer data)
{
  Wish *wish = data;

  figures_unref (wish->figures);
  g_free (wish);
}

static void
preview_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Wish *wish = data;
  GError *error = NULL;
  GBytes *bytes = export_bytes (wish->figures, &wish->options, &error);

  if (bytes == NULL)
    g_task_return_error (task, error);
  else
    g_task_return_pointer (task, bytes, (GDestroyNotify) g_bytes_unref);
}

static bool
format_is_page (ExportFormat format)
{
  return format == EXPORT_PNG || format == EXPORT_PDF || format == EXPORT_SVG;
}

static void
preview_show_bytes (TrammelExportPreview *self, GBytes *bytes, GError **error)
{
  if (format_is_page (self->options.format)) {
    g_autoptr (GdkTexture) page = gdk_texture_new_from_bytes (bytes, error);
    if (page == NULL)
      return;
    gtk_picture_set_paintable (GTK_PICTURE (self->picture), GDK_PAINTABLE (page));
    gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "picture");
  } else {
    gsize length;
    const char *text = g_bytes_get_data (bytes, &length);
    gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->text)), text, (int) length);
    gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "text");
  }
}

static void preview_start (TrammelExportPreview *self);

static void
preview_arrived (GObject *object, GAsyncResult *result, gpointer data)
{
  TrammelExportPreview *self = TRAMMEL_EXPORT_PREVIEW (object);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = g_task_propagate_pointer (G_TASK (result), &error);

  self->running = false;
  if (self->stack == NULL)
    return;
  if (self->outdated) {
    preview_start (self);
    return;
  }
  if (bytes != NULL)
    preview_show_bytes (self, bytes, &error);
  if (error == NULL)
    return;
  gtk_label_set_text (GTK_LABEL (self->complaint), error->message);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "complaint");
}

/* A page is shown as a picture whatever it will be saved as: what is drawn is the same. */
static ExportOptions
preview_options (const ExportOptions *options)
{
  ExportOptions preview = *options;
  double width, height;

  if (!format_is_page (options->format) || !export_paper_size (options->paper, &width, &height))
    return preview;
  preview.format = EXPORT_PNG;
  preview.dpi = CLAMP ((int) (preview_px_wide / (width / 25.4)), 30, 150);
  return preview;
}

static void
preview_start (TrammelExportPreview *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, preview_arrived, NULL);
  Wish *wish = g_new0 (Wish, 1);

  wish->figures = figures_ref (self->figures);
  wish->options = preview_options (&self->options);
  self->running = true;
  self->outdated = false;
  g_task_set_task_data (task, wish, wish_free);
  g_task_run_in_thread (task, preview_in_thread);
}

void
trammel_export_preview_set (TrammelExportPreview *self, const Figures *figures, const ExportOptions *options)
{
  Figures *kept = figures_ref (figures);

  g_clear_pointer (&self->figures, figures_unref);
  self->figures = kept;
  self->options = *options;
  if (self->running)
    self->outdated = true;
  else
    preview_start (self);
}

bool
trammel_export_preview_is_settled (TrammelExportPreview *self)
{
  return !self->running;
}
