#pragma once
#include <adwaita.h>
#include "app/panel.h"
#include "document/reader.h"
#include "support/gui.h"

/* The side panel in a window of its own, for tests that use it with a real hand. */

static struct { GtkWindow *window; TrammelSettings *settings; TrammelSession *session; GtkWidget *panel; } stage;

/** The racer that comes with the program; one reference. */
static inline Aeroplane *
example (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", "saltmarsh-racer.trammel", NULL);
  Aeroplane *aeroplane = reader_read_file (path, NULL, NULL);

  ck_assert_ptr_nonnull (aeroplane);
  return aeroplane;
}

/** In millimetres and grams. */
static inline void
stage_raise_with (Aeroplane *takes)
{
  stage.settings = trammel_settings_new ();
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_MM, MASS_G });
  stage.session = trammel_session_new (stage.settings);
  trammel_session_open (stage.session, takes, NULL);
  stage.panel = trammel_panel_new (stage.session);
  stage.window = GTK_WINDOW (gtk_window_new ());
  gtk_window_set_child (stage.window, stage.panel);
  gtk_window_set_default_size (stage.window, 380, 720);
  gtk_window_set_title (stage.window, "Panel");
  gui_present (stage.window);
}

static inline void stage_raise (void)       { stage_raise_with (example ()); }
static inline void stage_raise_empty (void) { stage_raise_with (aeroplane_new ()); }

static inline void
stage_strike (void)
{
  gtk_window_destroy (stage.window);
  gui_settle ();
  g_object_unref (stage.session);
  g_object_unref (stage.settings);
}

/** What reads so; the test ends when nothing does. */
static inline GtkWidget *
find (const char *words)
{
  return gui_await (GTK_WIDGET (stage.window), words);
}

/** What stands beside that label in its row. */
static inline GtkWidget *
beside (const char *label)
{
  GtkWidget *words = find (label), *next = gtk_widget_get_next_sibling (words);

  return next != NULL ? next : gtk_widget_get_next_sibling (gtk_widget_get_parent (words));
}

/** A click. What lies below the fold is brought into view first, as the keyboard does. */
static inline void
press (const char *words)
{
  GtkWidget *widget = find (words);

  gtk_widget_grab_focus (widget);
  gui_settle ();
  gui_click (widget);
}

/** Replaces what a field holds, by keys. */
static inline void
retype (const char *field, const char *text)
{
  gtk_widget_grab_focus (find (field));
  gui_settle ();
  gui_key ("<Control>a");
  gui_type (text);
  gui_key ("Return");
}

static inline const Surface *
wing (void)
{
  return aeroplane_reference_wing (trammel_session_aeroplane (stage.session));
}

static inline const Part *
battery (void)
{
  return aeroplane_part_by_id (trammel_session_aeroplane (stage.session), "battery");
}

static inline const Structure *
structure_of (const char *id)
{
  return aeroplane_structure_of (trammel_session_aeroplane (stage.session), id);
}

/** Selects the piece of that id, as a click on the sheet does. */
static inline void
choose (const char *id)
{
  trammel_session_select (stage.session, selection_of (id));
  gui_settle ();
}

/** Deletes a piece, and what is nothing without it. */
static inline void
take_away (const Piece *piece)
{
  trammel_session_do (stage.session, aeroplane_without_dependents (trammel_session_aeroplane (stage.session), piece), "Delete");
  gui_settle ();
}
