#include "trammel-config.h"
#include "app/brought-strip.h"
#include <glib/gi18n-lib.h>
#include "app/brought-offer.h"
#include "app/brought-words.h"
#include "app/caption.h"
#include "app/choice-list.h"
#include "app/first-frame.h"

struct _TrammelBroughtStrip {
  GtkWidget parent;
  TrammelSession *session;
  GtkWidget *revealer, *shows, *line, *next_line, *unit, *half_only, *another, *use, *note;
  Brought *brought;              /* on offer; NULL: nothing is */
  Aeroplane *base;               /* what the outline is added to */
  const Aeroplane *proposed;     /* what we last put on the sheet; never looked into */
  OfferChoice choice;
  char *id;                      /* the piece that has the outline on offer; NULL where it does not fit */
  char *selected;                /* as it was when it began; NULL none */
  bool filling;                  /* the controls are being set, not used */
};

G_DEFINE_FINAL_TYPE (TrammelBroughtStrip, trammel_brought_strip, GTK_TYPE_WIDGET)

enum { SIGNAL_USED, SIGNAL_GONE, SIGNAL_COUNT };
static guint signals[SIGNAL_COUNT];

/* What is on offer */

static void
strip_forget (TrammelBroughtStrip *self)
{
  g_clear_pointer (&self->brought, brought_free);
  g_clear_pointer (&self->base, aeroplane_unref);
  g_clear_pointer (&self->id, g_free);
  g_clear_pointer (&self->selected, g_free);
  self->proposed = NULL;
}

static void
strip_fold (TrammelBroughtStrip *self)
{
  strip_forget (self);
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), FALSE);
  g_signal_emit (self, signals[SIGNAL_GONE], 0);
}

void
trammel_brought_strip_leave (TrammelBroughtStrip *self)
{
  if (self->brought == NULL)
    return;
  strip_forget (self);
  trammel_session_abandon (self->session);
  strip_fold (self);
}

static void
strip_say (TrammelBroughtStrip *self, const Offer *offer)
{
  const Units units = trammel_session_units (self->session);
  g_autofree char *line = brought_words_line (self->brought, self->choice.line, offer, units);
  g_autofree char *fits = brought_words_note (&self->choice, offer, units), *left_out = brought_words_left_out (self->brought);
  /* Translators: two whole sentences. */
  g_autofree char *note = left_out == NULL ? g_strdup (fits) : g_strdup_printf (_("%s %s"), fits, left_out);

  gtk_label_set_text (GTK_LABEL (self->line), line);
  gtk_label_set_text (GTK_LABEL (self->note), note);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->revealer), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, note, -1);
  gtk_widget_set_sensitive (self->use, offer->next != NULL);
  gtk_widget_set_sensitive (self->next_line, self->brought->count > 1);
  gtk_widget_set_visible (self->another, offer->replaces || self->choice.another);
  gtk_widget_set_visible (self->half_only, brought_words_asks_for_half (&self->choice, offer));
}

/* Puts the choice on the sheet; where it does not fit, the sheet is as before. */
static void
strip_propose (TrammelBroughtStrip *self)
{
  Offer offer = offer_make (self->brought, self->base, self->selected, &self->choice);
  Aeroplane *next = offer.next != NULL ? aeroplane_ref (offer.next) : aeroplane_ref (self->base);

  g_free (self->id);
  self->id = g_strdup (offer.id);
  strip_say (self, &offer);
  offer_clear (&offer);
  self->proposed = next;
  trammel_session_propose (self->session, next);
}

/* Another hand at work, an undo, another document: what was on offer goes without a word. */
static void
strip_session_changed (TrammelBroughtStrip *self)
{
  if (self->brought != NULL && trammel_session_aeroplane (self->session) != self->proposed)
    strip_fold (self);
}

/* The controls */

static void
strip_fill (TrammelBroughtStrip *self)
{
  self->filling = true;
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->shows), self->choice.shows);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->half_only), self->choice.half_only);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->another), self->choice.another);
  self->filling = false;
}

static void
strip_shows_chosen (TrammelBroughtStrip *self)
{
  if (self->filling || self->brought == NULL)
    return;
  self->choice.shows = (ViewShows) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->shows));
  self->choice.another = false;
  offer_lay (self->brought, &self->choice);
  strip_fill (self);
  strip_propose (self);
}

/* What the numbers of a file may be that does not say: the first where they count pixels. */
enum { UNIT_PIXEL, UNIT_MM, UNIT_INCH };

static guint
first_unit (const Brought *brought)
{
  return brought->unit_mm == 1 ? UNIT_MM : UNIT_PIXEL;
}

static void
strip_unit_chosen (TrammelBroughtStrip *self)
{
  const double units[] = { [UNIT_PIXEL] = 25.4 / 96, [UNIT_MM] = 1, [UNIT_INCH] = 25.4 };

  if (self->filling || self->brought == NULL)
    return;
  self->choice.unit_mm = units[first_unit (self->brought) + gtk_drop_down_get_selected (GTK_DROP_DOWN (self->unit))];
  strip_propose (self);
}

static void
strip_checks_changed (TrammelBroughtStrip *self)
{
  if (self->filling || self->brought == NULL)
    return;
  self->choice.half_only = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->half_only));
  self->choice.another = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->another));
  strip_propose (self);
}

static void
strip_next_line (TrammelBroughtStrip *self)
{
  self->choice.line = (self->choice.line + 1) % self->brought->count;
  self->choice.half_only = false;
  offer_lay (self->brought, &self->choice);
  strip_fill (self);
  strip_propose (self);
}

static void
strip_turn (TrammelBroughtStrip *self)
{
  self->choice.quarter_turns = (self->choice.quarter_turns + 1) % 4;
  strip_propose (self);
}

static void
strip_mirror (TrammelBroughtStrip *self)
{
  self->choice.mirrored = !self->choice.mirrored;
  strip_propose (self);
}

static void
strip_use (TrammelBroughtStrip *self)
{
  g_autofree char *id = g_strdup (self->id);

  if (self->brought == NULL || id == NULL)
    return;
  strip_forget (self);
  trammel_session_settle (self->session, _("Bring In Outline"));
  trammel_session_select (self->session, selection_of (id));
  strip_fold (self);
  g_signal_emit (self, signals[SIGNAL_USED], 0);
}

static gboolean
strip_key (TrammelBroughtStrip *self, guint key, guint code, GdkModifierType state)
{
  if (key != GDK_KEY_Escape || self->brought == NULL)
    return FALSE;
  trammel_brought_strip_leave (self);
  return TRUE;
}

/* Building */

static GtkWidget *
button (TrammelBroughtStrip *self, const char *label, void (*pressed) (TrammelBroughtStrip *))
{
  GtkWidget *made = gtk_button_new_with_mnemonic (label);

  gtk_widget_set_valign (made, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (made, "clicked", G_CALLBACK (pressed), self);
  return made;
}

static GtkWidget *
choice_of (TrammelBroughtStrip *self, const char *name, void (*chosen) (TrammelBroughtStrip *))
{
  GtkWidget *made = choice_list_new (G_LIST_MODEL (gtk_string_list_new (NULL)));

  gtk_widget_set_valign (made, GTK_ALIGN_CENTER);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (made)), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (made, "notify::selected", G_CALLBACK (chosen), self);
  return made;
}

static GtkStringList *
words_of (GtkWidget *choice)
{
  return GTK_STRING_LIST (gtk_drop_down_get_model (GTK_DROP_DOWN (choice)));
}

static void
strip_build_controls (TrammelBroughtStrip *self, GtkBox *row)
{
  self->filling = true;
  self->shows = choice_of (self, _("What it is"), strip_shows_chosen);
  for (ViewShows shows = 0; shows < VIEW_SHOWS_COUNT; shows++)
    gtk_string_list_append (words_of (self->shows), view_shows_name (shows));
  self->unit = choice_of (self, _("What the file’s numbers are in"), strip_unit_chosen);
  self->filling = false;
  self->line = gtk_label_new (NULL);
  gtk_label_set_ellipsize (GTK_LABEL (self->line), PANGO_ELLIPSIZE_END);
  gtk_label_set_xalign (GTK_LABEL (self->line), 0);
  gtk_label_set_width_chars (GTK_LABEL (self->line), 12);
  gtk_widget_set_hexpand (self->line, TRUE);
  self->next_line = button (self, _("_Next Line"), strip_next_line);
  self->half_only = gtk_check_button_new_with_mnemonic (_("One _Half Only"));
  g_signal_connect_swapped (self->half_only, "notify::active", G_CALLBACK (strip_checks_changed), self);
  self->another = gtk_check_button_new_with_mnemonic (_("As _Another"));
  g_signal_connect_swapped (self->another, "notify::active", G_CALLBACK (strip_checks_changed), self);
  self->use = button (self, _("_Use This"), strip_use);
  gtk_widget_add_css_class (self->use, "suggested-action");
  gtk_box_append (row, self->shows);
  gtk_box_append (row, self->line);
  gtk_box_append (row, self->another);
  gtk_box_append (row, self->half_only);
  gtk_box_append (row, self->unit);
  gtk_box_append (row, self->next_line);
  gtk_box_append (row, button (self, _("_Turn"), strip_turn));
  gtk_box_append (row, button (self, _("_Mirror"), strip_mirror));
  gtk_box_append (row, button (self, _("_Cancel"), trammel_brought_strip_leave));
  gtk_box_append (row, self->use);
}

/* A narrow window scrolls the row sideways; what the keyboard reaches is scrolled into sight. */
static GtkWidget *
strip_build (TrammelBroughtStrip *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *inner = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *scrolled = gtk_scrolled_window_new ();

  strip_build_controls (self, GTK_BOX (row));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_AUTOMATIC, GTK_POLICY_NEVER);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), row);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scrolled), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Bring In Outline"), -1);
  self->note = caption_new (NULL);
  gtk_box_append (GTK_BOX (inner), scrolled);
  gtk_box_append (GTK_BOX (inner), self->note);
  gtk_box_append (GTK_BOX (column), inner);
  return column;
}

static void
strip_leave_when_folded (TrammelBroughtStrip *self)
{
  gtk_widget_set_visible (GTK_WIDGET (self), gtk_revealer_get_reveal_child (GTK_REVEALER (self->revealer)));
}

static void
trammel_brought_strip_dispose (GObject *object)
{
  TrammelBroughtStrip *self = TRAMMEL_BROUGHT_STRIP (object);

  strip_forget (self);
  g_clear_pointer (&self->revealer, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_brought_strip_parent_class)->dispose (object);
}

static void
trammel_brought_strip_class_init (TrammelBroughtStripClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_brought_strip_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "strip");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
  signals[SIGNAL_USED] = g_signal_new ("used", TRAMMEL_TYPE_BROUGHT_STRIP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_GONE] = g_signal_new ("gone", TRAMMEL_TYPE_BROUGHT_STRIP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_brought_strip_init (TrammelBroughtStrip *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->revealer = gtk_revealer_new ();
  gtk_revealer_set_transition_duration (GTK_REVEALER (self->revealer), 150);
  gtk_revealer_set_child (GTK_REVEALER (self->revealer), strip_build (self));
  g_signal_connect_swapped (self->revealer, "notify::child-revealed", G_CALLBACK (strip_leave_when_folded), self);
  gtk_widget_set_parent (self->revealer, GTK_WIDGET (self));
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (strip_key), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

/* When it is seen: before, nothing in it can have the keyboard, and a window that has just been opened gives it to the sheet. */
static void
strip_take_focus (GtkWidget *widget)
{
  TrammelBroughtStrip *self = TRAMMEL_BROUGHT_STRIP (widget);

  if (self->brought != NULL)
    gtk_widget_grab_focus (gtk_widget_get_sensitive (self->use) ? self->use : self->next_line);
}

GtkWidget *
trammel_brought_strip_new (TrammelSession *session)
{
  TrammelBroughtStrip *self = g_object_new (TRAMMEL_TYPE_BROUGHT_STRIP, NULL);

  self->session = g_object_ref (session);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Bring In Outline"), -1);
  g_signal_connect_object (session, "changed", G_CALLBACK (strip_session_changed), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

/* A file that says its unit is believed; one whose numbers count pixels may mean anything. */
static void
strip_fill_units (TrammelBroughtStrip *self)
{
  GtkStringList *words = words_of (self->unit);
  const char *const names[] = { _("Pixels, 96 to the inch"), _("Millimetres"), _("Inches"), NULL };

  self->filling = true;
  gtk_string_list_splice (words, 0, g_list_model_get_n_items (G_LIST_MODEL (words)), names + first_unit (self->brought));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->unit), 0);
  gtk_widget_set_visible (self->unit, !self->brought->unit_known);
  self->filling = false;
}

void
trammel_brought_strip_offer (TrammelBroughtStrip *self, Brought *takes)
{
  trammel_brought_strip_leave (self);
  self->brought = takes;
  self->base = aeroplane_ref (trammel_session_settled (self->session));
  self->selected = g_strdup (selection_single (trammel_session_selection (self->session)));
  self->choice = offer_first (takes, self->base, self->selected);
  strip_fill_units (self);
  strip_fill (self);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), TRUE);
  strip_propose (self);
  first_frame_then (GTK_WIDGET (self), strip_take_focus);
}
