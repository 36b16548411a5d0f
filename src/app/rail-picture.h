#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_RAIL_PICTURE (trammel_rail_picture_get_type ())
G_DECLARE_FINAL_TYPE (TrammelRailPicture, trammel_rail_picture, TRAMMEL, RAIL_PICTURE, GtkWidget)

/** The selected part's rail: stops, places in the band, the aim; the part can be pulled along it, or moved by the arrow keys. */
GtkWidget *trammel_rail_picture_new (TrammelSession *session);

G_END_DECLS
