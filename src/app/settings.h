#pragma once
#include <glib-object.h>
#include "document/units.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SETTINGS (trammel_settings_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSettings, trammel_settings, TRAMMEL, SETTINGS, GObject)

/** The person's own choices, kept in the configuration folder (trammel/settings.ini) as they are made. One object for the
 *  application, handed to whoever needs it. Emits "changed" after each. Units follow the locale's measurement until chosen. */
TrammelSettings *trammel_settings_new (void);

Units trammel_settings_units       (TrammelSettings *self);      /* as chosen; before that inches and ounces where the locale measures so */
void  trammel_settings_set_units   (TrammelSettings *self, Units units);      /* kept from now on */

typedef enum {
  SHOW_GRID, SHOW_NAMES, SHOW_FIGURES, SHOW_SIDE_VIEW, SHOW_PANEL, SNAPPING, ENLARGED_VIEW, CAUTIONS_READ, SETTINGS_FLAG_COUNT
} SettingsFlag;
bool  trammel_settings_flag        (TrammelSettings *self, SettingsFlag flag);      /* as set, else as it is at first */
void  trammel_settings_set_flag    (TrammelSettings *self, SettingsFlag flag, bool on);      /* kept from now on */

/** How long the printer at hand draws 100 mm along the short and the long side of its paper, mm; 90 to 110, 100 until it was measured. */
typedef struct { double short_side, long_side; } PrinterReading;
PrinterReading trammel_settings_printer_reading     (TrammelSettings *self);      /* in mm */
/** Kept like a choice, but told to nobody. */
void           trammel_settings_set_printer_reading (TrammelSettings *self, PrinterReading reading);

/** How the last window stood when it was closed: its size without maximising, px. */
typedef struct { int width, height; bool maximized; } WindowPlace;
/** 1280 × 800 until a window has been closed. */
WindowPlace trammel_settings_window_place     (TrammelSettings *self);
/** Kept like a choice, but told to nobody. */
void        trammel_settings_set_window_place (TrammelSettings *self, WindowPlace place);

G_END_DECLS
