#include "app/tools-column.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/tool.h"

enum { TOOL_ROOM = 16 };

struct _TrammelToolsColumn {
  GtkWidget parent;
  TrammelSheetCanvas *sheet;
  GtkWidget *buttons[TOOL_ROOM], *rules[TOOL_ROOM];     /* a rule stands before a group's first button */
  guint idle;
};

G_DEFINE_FINAL_TYPE (TrammelToolsColumn, trammel_tools_column, GTK_TYPE_WIDGET)

static void
trammel_tools_column_dispose (GObject *object)
{
  TrammelToolsColumn *self = TRAMMEL_TOOLS_COLUMN (object);
  GtkWidget *child;

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_object (&self->sheet);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (trammel_tools_column_parent_class)->dispose (object);
}

static void
trammel_tools_column_class_init (TrammelToolsColumnClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_tools_column_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "tools");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_TOOLBAR);
}

static void
trammel_tools_column_init (TrammelToolsColumn *self)
{
  GtkLayoutManager *box = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (box), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (box), 2);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Drawing Tools"),
                                  GTK_ACCESSIBLE_PROPERTY_ORIENTATION, GTK_ORIENTATION_VERTICAL, -1);
}

static GtkWidget *
tools_column_button (const ToolKind *kind)
{
  GtkWidget *button = gtk_toggle_button_new ();
  g_autofree char *icon = g_strdup_printf ("trammel-%s-symbolic", kind->word);
  /* Translators: a tool's name and, in brackets, its key. */
  g_autofree char *tooltip = g_strdup_printf (_("%s (%s)"), _(kind->name), _(kind->letter));

  gtk_button_set_icon_name (GTK_BUTTON (button), icon);
  gtk_widget_set_tooltip_text (button, tooltip);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_focus_on_click (button, FALSE);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "sheet.tool");
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", kind->word);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, _(kind->name), -1);
  return button;
}

static void
tools_column_refresh (TrammelToolsColumn *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (trammel_sheet_canvas_session (self->sheet));
  const ToolKind *const *kinds = tool_kinds ();

  for (size_t i = 0; kinds[i] != NULL; i++) {
    bool group = false;

    gtk_widget_set_visible (self->buttons[i], tool_kind_is_useful (kinds[i], aeroplane));
    if (self->rules[i] == NULL)
      continue;
    for (size_t j = i; kinds[j] != NULL && kinds[j]->group == kinds[i]->group; j++)
      group = group || tool_kind_is_useful (kinds[j], aeroplane);
    gtk_widget_set_visible (self->rules[i], group);
  }
}

static gboolean
tools_column_idle (gpointer data)
{
  TrammelToolsColumn *self = data;

  self->idle = 0;
  tools_column_refresh (self);
  return G_SOURCE_REMOVE;
}

/* Which tools are of use changes with whole steps; a drag need not ask at each frame. */
static void
tools_column_changed (TrammelToolsColumn *self)
{
  if (self->idle == 0 && !trammel_session_is_previewing (trammel_sheet_canvas_session (self->sheet)))
    self->idle = g_idle_add (tools_column_idle, self);
}

GtkWidget *
trammel_tools_column_new (TrammelSheetCanvas *sheet)
{
  TrammelToolsColumn *self = g_object_new (TRAMMEL_TYPE_TOOLS_COLUMN, NULL);
  const ToolKind *const *kinds = tool_kinds ();

  self->sheet = g_object_ref (sheet);
  for (size_t i = 0; kinds[i] != NULL && i < TOOL_ROOM; i++) {
    if (i > 0 && kinds[i]->group != kinds[i - 1]->group) {
      self->rules[i] = gtk_separator_new (GTK_ORIENTATION_HORIZONTAL);
      gtk_widget_set_parent (self->rules[i], GTK_WIDGET (self));
    }
    self->buttons[i] = tools_column_button (kinds[i]);
    gtk_widget_set_parent (self->buttons[i], GTK_WIDGET (self));
  }
  g_signal_connect_object (trammel_sheet_canvas_session (sheet), "changed", G_CALLBACK (tools_column_changed), self, G_CONNECT_SWAPPED);
  tools_column_refresh (self);
  return GTK_WIDGET (self);
}

bool
trammel_tools_column_focus (TrammelToolsColumn *self)
{
  for (size_t i = 0; i < TOOL_ROOM && self->buttons[i] != NULL; i++)
    if (gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->buttons[i])))
      return gtk_widget_grab_focus (self->buttons[i]);
  return gtk_widget_grab_focus (self->buttons[0]);
}
