#include "app/sheet-canvas-private.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/part-group.h"
#include "app/pull.h"

/* A row: what it says, what it does, and the sheet's key for it, if any. */
typedef struct { const char *label, *action, *keys; } MenuRow;

static void
sheet_menu_section (GMenu *menu, const char *heading, const MenuRow rows[])
{
  g_autoptr (GMenu) section = g_menu_new ();

  for (; rows->label != NULL; rows++) {
    g_autoptr (GMenuItem) item = g_menu_item_new (_(rows->label), rows->action);

    if (rows->keys != NULL)
      g_menu_item_set_attribute (item, "accel", "s", rows->keys);
    g_menu_append_item (section, item);
  }
  g_menu_append_section (menu, heading, G_MENU_MODEL (section));
}

static void
sheet_menu_add_node (GMenu *menu)
{
  static const MenuRow kinds[] = {
    { .label = N_("_Smooth"), .action = "sheet.node-kind::smooth", .keys = "<Shift>s" },
    { .label = N_("S_ymmetric"), .action = "sheet.node-kind::symmetric", .keys = "<Shift>y" },
    { .label = N_("_Corner"), .action = "sheet.node-kind::corner", .keys = "<Shift>c" },
    { .label = NULL },
  };
  static const MenuRow edits[] = {
    { .label = N_("Cu_t Corner"), .action = "sheet.split-node" },
    { .label = N_("_Join with Next"), .action = "sheet.join-nodes" },
    { .label = N_("_Delete Node"), .action = "win.delete", .keys = "Delete" },
    { .label = NULL },
  };

  sheet_menu_section (menu, _("Node"), kinds);
  sheet_menu_section (menu, NULL, edits);
}

static void
sheet_menu_add_segment (GMenu *menu)
{
  static const MenuRow kinds[] = {
    { .label = N_("_Add Node"), .action = "sheet.add-node", .keys = "Insert" },
    { .label = N_("_Line"), .action = "sheet.segment-kind::line" },
    { .label = N_("_Curve"), .action = "sheet.segment-kind::curve" },
    { .label = N_("A_rc"), .action = "sheet.segment-kind::arc" },
    { .label = NULL },
  };

  sheet_menu_section (menu, _("Line Here"), kinds);
}

static void
sheet_menu_add_part (GMenu *menu, const Part *part)
{
  const MenuRow rows[] = {
    { .label = N_("_Aboard"), .action = "sheet.aboard" },
    { .label = N_("_Turn by a Quarter"), .action = "sheet.turn", .keys = "<Shift>r" },
    { .label = N_("Duplicate on the _Other Side"), .action = "sheet.mirror" },
    { .label = part->has_rail ? N_("Remove _Rail") : N_("Add _Rail"), .action = part->has_rail ? "sheet.remove-rail" : "sheet.add-rail" },
    { .label = N_("A_rrange…"), .action = "win.arrange" },
    { .label = N_("_Delete"), .action = "win.delete", .keys = "Delete" },
    { .label = NULL },
  };

  sheet_menu_section (menu, NULL, rows);
}

static void
sheet_menu_add_parts (GMenu *menu, bool grouped)
{
  const MenuRow rows[] = {
    { .label = grouped ? N_("Take _Group Apart") : N_("_Group"), .action = "sheet.group", .keys = "<Control>j" },
    { .label = N_("_Turn by a Quarter"), .action = "sheet.turn", .keys = "<Shift>r" },
    { .label = N_("Duplicate on the _Other Side"), .action = "sheet.mirror" },
    { .label = N_("_Delete"), .action = "win.delete", .keys = "Delete" },
    { .label = NULL },
  };

  sheet_menu_section (menu, NULL, rows);
}

static GMenuModel *
sheet_menu_model (TrammelSheetCanvas *self)
{
  static const MenuRow delete[] = { { .label = N_("_Delete"), .action = "win.delete", .keys = "Delete" }, { .label = NULL } };
  static const MenuRow lead[] = { { .label = N_("_Add Bend"), .action = "sheet.add-node", .keys = "Insert" },
                                  { .label = N_("_Delete"), .action = "win.delete", .keys = "Delete" }, { .label = NULL } };
  static const MenuRow bend[] = { { .label = N_("_Add Bend"), .action = "sheet.add-node", .keys = "Insert" },
                                  { .label = N_("_Take Out Bend"), .action = "win.delete", .keys = "Delete" }, { .label = NULL } };
  static const MenuRow views[] = {
    { .label = N_("_Fit Sheet"), .action = "sheet.fit-sheet", .keys = "Home" },
    { .label = N_("Fit S_election"), .action = "sheet.fit-selection", .keys = "<Shift>Home" },
    { .label = NULL },
  };
  const Selection *selection = trammel_session_selection (self->session);
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);
  const Part *part = trammel_session_selected_part (self->session);
  GMenu *menu = g_menu_new ();

  if (aeroplane_lead_by_id (aeroplane, selection_single (selection)) != NULL)
    sheet_menu_section (menu, NULL, selection->node_count > 0 ? bend : lead);
  else if (selection->node_count > 0)
    sheet_menu_add_node (menu);
  if (outline_spot_exists (trammel_session_aeroplane (self->session), &self->spot))
    sheet_menu_add_segment (menu);
  if (part != NULL)
    sheet_menu_add_part (menu, part);
  else if (part_group_is_parts (aeroplane, selection))
    sheet_menu_add_parts (menu, part_group_is_one (aeroplane, selection));
  else if (!selection_is_empty (selection) && selection->node_count == 0 && aeroplane_lead_by_id (aeroplane, selection_single (selection)) == NULL)
    sheet_menu_section (menu, NULL, delete);
  sheet_menu_section (menu, NULL, views);
  return G_MENU_MODEL (menu);
}

static void
sheet_menu_show (TrammelSheetCanvas *self, double x, double y)
{
  g_autoptr (GMenuModel) model = sheet_menu_model (self);

  if (self->menu == NULL) {
    self->menu = gtk_popover_menu_new_from_model (NULL);
    gtk_widget_set_parent (self->menu, GTK_WIDGET (self));
    gtk_popover_set_has_arrow (GTK_POPOVER (self->menu), FALSE);
    gtk_widget_set_halign (self->menu, GTK_ALIGN_START);
  }
  gtk_popover_menu_set_menu_model (GTK_POPOVER_MENU (self->menu), model);
  gtk_popover_set_pointing_to (GTK_POPOVER (self->menu), &(GdkRectangle) { (int) x, (int) y, 1, 1 });
  gtk_popover_popup (GTK_POPOVER (self->menu));
}

/* What is pointed at becomes selected, unless it is already among what is. */
static void
sheet_menu_select (TrammelSheetCanvas *self, const Hit *hit)
{
  const Selection *selection = trammel_session_selection (self->session);

  outline_spot_clear (&self->spot);
  if (hit->kind == HIT_SEGMENT)
    self->spot = (OutlineSpot) { .id = g_strdup (hit->id), .segment = hit->index, .t = hit->t };
  if (hit->kind == HIT_LEAD_POINT)
    trammel_session_select (self->session, selection_of_node (hit->id, false, hit->index));
  else if (hit->kind == HIT_LEAD)
    trammel_session_select (self->session, selection_of (hit->id));
  else if (hit->kind == HIT_NODE && !selection_has_node (selection, hit->id, false, hit->index))
    trammel_session_select (self->session, selection_of_node (hit->id, false, hit->index));
  else if (hit->kind == HIT_MARK)
    trammel_session_select (self->session, selection_of_mark ((int) hit->index));
  else if (hit->kind == HIT_POINT)
    trammel_session_select (self->session, selection_of_point ((SheetPoint) hit->index));
  else if (hit->kind == HIT_CONTROL)
    trammel_session_select (self->session, selection_of_control (hit->id, hit->control));
  else if (hit->kind == HIT_NOTHING)
    trammel_session_select (self->session, selection_none ());
  else if (hit->kind == HIT_SEGMENT || (hit->id != NULL && !selection_has (selection, hit->id)))
    trammel_session_select (self->session, selection_of (hit->id));
}

static void
sheet_menu_at (TrammelSheetCanvas *self, double x, double y, bool finger)
{
  const ToolEvent event = { .x = x, .y = y, .place = view_from_screen (&self->view, x, y), .finger = finger };
  const Hit hit = tool_hit (self->tool, &event);

  if (self->pressed)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (self));
  if (self->pull != NULL)
    pull_accept (self->pull);
  sheet_menu_select (self, &hit);
  sheet_menu_show (self, x, y);
}

/* On the release: one that came over the open menu would confuse GTK about which button is down where. */
static void
sheet_menu_clicked (GtkGestureClick *click, int count, double x, double y, TrammelSheetCanvas *self)
{
  sheet_menu_at (self, x, y, false);
}

static void
sheet_menu_long_press (GtkGestureLongPress *press, double x, double y, TrammelSheetCanvas *self)
{
  self->pressed = false;
  sheet_menu_at (self, x, y, true);
}

void
sheet_canvas_menu_by_key (TrammelSheetCanvas *self)
{
  const Box box = sheet_selection_extent (trammel_session_figures (self->session), trammel_session_selection (self->session));
  Point px = { self->view.width / 2, self->view.height / 2 };

  if (box.min.x <= box.max.x && box.min.y <= box.max.y)
    px = view_to_screen (&self->view, point_mix (box.min, box.max, 0.5));
  sheet_menu_show (self, CLAMP (px.x, 0, self->view.width), CLAMP (px.y, 0, self->view.height));
}

void
sheet_canvas_add_menu (TrammelSheetCanvas *self)
{
  GtkGesture *click = gtk_gesture_click_new (), *press = gtk_gesture_long_press_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), GDK_BUTTON_SECONDARY);
  g_signal_connect (click, "released", G_CALLBACK (sheet_menu_clicked), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_gesture_single_set_touch_only (GTK_GESTURE_SINGLE (press), TRUE);
  g_signal_connect (press, "pressed", G_CALLBACK (sheet_menu_long_press), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (press));
}
