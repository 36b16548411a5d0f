#include "trammel-config.h"
#include "app/cutting-legend.h"
#include <glib/gi18n-lib.h>
#include "drawing/cutting.h"

enum { CHIP_WIDTH = 26, CHIP_HEIGHT = 12, MOST_IN_A_ROW = 3 };

/* On white, as the file is: a black line would not be seen on a dark window. */
static void
draw_chip (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  const CuttingLayer *layer = data;
  GdkRGBA colour;

  gdk_rgba_parse (&colour, layer->rgb);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  gdk_cairo_set_source_rgba (cr, &colour);
  cairo_set_line_width (cr, 2);
  cairo_move_to (cr, 3, height / 2.0);
  cairo_line_to (cr, width - 3, height / 2.0);
  cairo_stroke (cr);
}

static GtkWidget *
entry_new (const CuttingLayer *layer)
{
  GtkWidget *entry = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6), *chip = gtk_drawing_area_new (), *words = gtk_label_new (_(layer->title));

  gtk_widget_set_size_request (chip, CHIP_WIDTH, CHIP_HEIGHT);
  gtk_widget_set_valign (chip, GTK_ALIGN_CENTER);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (chip), draw_chip, (gpointer) layer, NULL);
  gtk_accessible_update_state (GTK_ACCESSIBLE (chip), GTK_ACCESSIBLE_STATE_HIDDEN, TRUE, -1);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_widget_add_css_class (words, "caption");
  gtk_box_append (GTK_BOX (entry), chip);
  gtk_box_append (GTK_BOX (entry), words);
  return entry;
}

GtkWidget *
cutting_legend_new (void)
{
  GtkWidget *legend = gtk_grid_new ();

  gtk_grid_set_column_spacing (GTK_GRID (legend), 12);
  gtk_grid_set_row_spacing (GTK_GRID (legend), 3);
  gtk_widget_set_halign (legend, GTK_ALIGN_CENTER);
  gtk_widget_set_name (legend, "cutting-legend");
  gtk_widget_set_visible (legend, FALSE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (legend), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What the colours mean"), -1);
  return legend;
}

/* What is cut stands first: the file's order turned round. */
void
cutting_legend_fill (GtkWidget *legend, unsigned layers)
{
  int shown = 0;

  for (GtkWidget *entry = gtk_widget_get_first_child (legend); entry != NULL; entry = gtk_widget_get_first_child (legend))
    gtk_grid_remove (GTK_GRID (legend), entry);
  for (int i = CUTTING_LAYER_COUNT - 1; i >= 0; i--) {
    const int layer = cutting_layer_order (i);

    if (layers & 1u << layer) {
      gtk_grid_attach (GTK_GRID (legend), entry_new (cutting_layer (layer)), shown % MOST_IN_A_ROW, shown / MOST_IN_A_ROW, 1, 1);
      shown++;
    }
  }
  gtk_widget_set_visible (legend, shown > 0);
}
