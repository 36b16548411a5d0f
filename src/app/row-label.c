#include "app/row-label.h"
#include <adwaita.h>

static GtkSizeRequestMode
row_label_mode (GtkWidget *self)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
row_label_measure (GtkWidget *self, GtkOrientation orientation, int for_size, int *minimum, int *natural, int *minimum_baseline,
                   int *natural_baseline)
{
  gtk_widget_measure (adw_bin_get_child (ADW_BIN (self)), orientation, orientation == GTK_ORIENTATION_HORIZONTAL ? -1 : for_size,
                      minimum, natural, minimum_baseline, natural_baseline);
}

static void
row_label_allocate (GtkWidget *self, int width, int height, int baseline)
{
  gtk_widget_allocate (adw_bin_get_child (ADW_BIN (self)), width, height, baseline, NULL);
}

GtkWidget *
row_label_new (const char *text)
{
  GtkWidget *self = adw_bin_new (), *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  adw_bin_set_child (ADW_BIN (self), label);
  gtk_widget_set_layout_manager (self, gtk_custom_layout_new (row_label_mode, row_label_measure, row_label_allocate));
  return self;
}
