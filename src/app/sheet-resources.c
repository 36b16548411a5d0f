#include "app/sheet-resources.h"
#include <gtk/gtk.h>
#include "sheet-area-resources.h"

void
sheet_resources_ensure (void)
{
  static gsize done;
  GdkDisplay *display = gdk_display_get_default ();
  g_autoptr (GtkCssProvider) style = NULL;

  if (!g_once_init_enter (&done))
    return;
  sheet_area_register_resource ();
  gtk_icon_theme_add_resource_path (gtk_icon_theme_get_for_display (display), "/org/trammel/sheet-area/icons");
  style = gtk_css_provider_new ();
  gtk_css_provider_load_from_resource (style, "/org/trammel/sheet-area/sheet-area.css");
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (style), GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
  g_once_init_leave (&done, 1);
}
