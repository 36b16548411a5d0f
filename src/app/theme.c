#include "app/theme.h"
#include <adwaita.h>

/* The size the drawing's lettering is made for: 13.5 px is Cantarell 10 at 96 dpi, rounded as the desktop does. */
static const double usual_font_px = 13.5;

static double
theme_text_factor (GtkWidget *widget)
{
  const PangoFontDescription *font = pango_context_get_font_description (gtk_widget_get_pango_context (widget));
  const double dpi = pango_cairo_context_get_resolution (gtk_widget_get_pango_context (widget));
  double px;

  if (font == NULL || pango_font_description_get_size (font) == 0)
    return 1;
  px = pango_font_description_get_size (font) / (double) PANGO_SCALE;
  if (!pango_font_description_get_size_is_absolute (font))
    px *= (dpi > 0 ? dpi : 96) / 72;
  return CLAMP (px / usual_font_px, 0.7, 3);
}

static Look
theme_look_of (GtkWidget *widget, gboolean dark)
{
  const gboolean contrast = adw_style_manager_get_high_contrast (adw_style_manager_get_default ());

  return look_for_screen (dark ? (contrast ? LOOK_DARK_CONTRAST : LOOK_DARK) : (contrast ? LOOK_LIGHT_CONTRAST : LOOK_LIGHT),
                          theme_text_factor (widget));
}

Look
theme_look (GtkWidget *widget)
{
  return theme_look_of (widget, adw_style_manager_get_dark (adw_style_manager_get_default ()));
}

Look
theme_look_over_scan (GtkWidget *widget)
{
  return theme_look_of (widget, FALSE);
}

void
theme_follow (GtkWidget *widget)
{
  AdwStyleManager *style = adw_style_manager_get_default ();

  g_signal_connect_object (style, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), widget, G_CONNECT_SWAPPED);
  g_signal_connect_object (style, "notify::high-contrast", G_CALLBACK (gtk_widget_queue_draw), widget, G_CONNECT_SWAPPED);
}
