#include "app/sheet-actions.h"
#include "app/part-group.h"
#include "app/sheet-command.h"
#include "app/tool.h"
#include "app/traced.h"

static const double zoom_step = 1.25;

static void
sheet_actions_zoom_in (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_sheet_canvas_zoom_middle (sheet, zoom_step);
}

static void
sheet_actions_zoom_out (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_sheet_canvas_zoom_middle (sheet, 1 / zoom_step);
}

static void
sheet_actions_fit_sheet (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_sheet_canvas_fit (sheet, true);
}

static void
sheet_actions_fit_selection (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_sheet_canvas_fit_selection (sheet);
}

static void
sheet_actions_true_size (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_sheet_canvas_true_size (sheet);
}

static void
sheet_actions_add_node (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_add_node (sheet);
}

static void
sheet_actions_split_node (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_split_node (sheet);
}

static void
sheet_actions_join_nodes (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_join_nodes (sheet);
}

static void
sheet_actions_add_rail (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_add_rail (sheet);
}

static void
sheet_actions_remove_rail (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_remove_rail (sheet);
}

static void
sheet_actions_turn (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_turn (sheet);
}

static void
sheet_actions_group (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_group (sheet);
}

static void
sheet_actions_mirror (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  sheet_command_mirror (sheet);
}

/* Words as they stand in an action's target. */
static int
sheet_actions_word (GVariant *parameter, const char *const words[])
{
  for (int i = 0; words[i] != NULL; i++)
    if (g_str_equal (g_variant_get_string (parameter, NULL), words[i]))
      return i;
  return -1;
}

static void
sheet_actions_node_kind (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  static const char *const words[] = { [NODE_CORNER] = "corner", [NODE_SMOOTH] = "smooth", [NODE_SYMMETRIC] = "symmetric", NULL };
  const int kind = sheet_actions_word (parameter, words);

  if (kind >= 0)
    sheet_command_node_kind (sheet, (NodeKind) kind);
}

static void
sheet_actions_segment_kind (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  static const char *const words[] = { [SEGMENT_LINE] = "line", [SEGMENT_CURVE] = "curve", [SEGMENT_ARC] = "arc", NULL };
  const int kind = sheet_actions_word (parameter, words);

  if (kind >= 0)
    sheet_command_segment_kind (sheet, (SegmentKind) kind);
}

static void
sheet_actions_root_carried (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_traced_set_root_open (trammel_traced_of (trammel_sheet_canvas_session (sheet)), false);
}

static void
sheet_actions_root_open (GSimpleAction *action, GVariant *parameter, gpointer sheet)
{
  trammel_traced_set_root_open (trammel_traced_of (trammel_sheet_canvas_session (sheet)), true);
}

static void
sheet_actions_tool (GSimpleAction *action, GVariant *state, gpointer sheet)
{
  trammel_sheet_canvas_set_tool (sheet, g_variant_get_string (state, NULL));
}

static void
sheet_actions_snapping (GSimpleAction *action, GVariant *state, gpointer sheet)
{
  trammel_settings_set_flag (trammel_session_settings (trammel_sheet_canvas_session (sheet)), SNAPPING, g_variant_get_boolean (state));
}

static void
sheet_actions_aboard (GSimpleAction *action, GVariant *state, gpointer sheet)
{
  sheet_command_aboard (sheet);
}

static const char key[] = "trammel-sheet-actions";

static void
sheet_actions_show (GActionMap *group, const char *name, GVariant *state)
{
  g_simple_action_set_state (G_SIMPLE_ACTION (g_action_map_lookup_action (group, name)), state);
}

static void
sheet_actions_allow (GActionMap *group, const char *name, bool can)
{
  g_simple_action_set_enabled (G_SIMPLE_ACTION (g_action_map_lookup_action (group, name)), can);
}

/* What the buttons and menus show follows the sheet and the settings, whoever changed them. */
static void
sheet_actions_follow (TrammelSheetCanvas *sheet)
{
  GActionMap *group = g_object_get_data (G_OBJECT (sheet), key);
  TrammelSession *session = trammel_sheet_canvas_session (sheet);
  const Part *part = trammel_session_selected_part (session);
  const Selection *selection = trammel_session_selection (session);
  const bool parts = part_group_is_parts (trammel_session_aeroplane (session), selection);

  sheet_actions_show (group, "tool", g_variant_new_string (trammel_sheet_canvas_tool (sheet)->kind->word));
  sheet_actions_show (group, "snapping", g_variant_new_boolean (trammel_settings_flag (trammel_session_settings (session), SNAPPING)));
  sheet_actions_allow (group, "group", parts && selection->ids[1] != NULL);
  sheet_actions_allow (group, "mirror", parts);
  sheet_actions_show (group, "aboard", g_variant_new_boolean (part != NULL && part->aboard));
}

static void
sheet_actions_connect (TrammelSheetCanvas *sheet, gpointer source, const char *signal)
{
  g_signal_connect_object (source, signal, G_CALLBACK (sheet_actions_follow), sheet, G_CONNECT_SWAPPED);
}

GActionGroup *
sheet_actions_new (TrammelSheetCanvas *sheet)
{
  static const GActionEntry entries[] = {
    { .name = "zoom-in",       .activate = sheet_actions_zoom_in },
    { .name = "zoom-out",      .activate = sheet_actions_zoom_out },
    { .name = "fit-sheet",     .activate = sheet_actions_fit_sheet },
    { .name = "fit-selection", .activate = sheet_actions_fit_selection },
    { .name = "true-size",     .activate = sheet_actions_true_size },
    { .name = "add-node",      .activate = sheet_actions_add_node },
    { .name = "split-node",    .activate = sheet_actions_split_node },
    { .name = "join-nodes",    .activate = sheet_actions_join_nodes },
    { .name = "add-rail",      .activate = sheet_actions_add_rail },
    { .name = "remove-rail",   .activate = sheet_actions_remove_rail },
    { .name = "turn",          .activate = sheet_actions_turn },
    { .name = "group",         .activate = sheet_actions_group },
    { .name = "mirror",        .activate = sheet_actions_mirror },
    { .name = "node-kind",     .activate = sheet_actions_node_kind, .parameter_type = "s" },
    { .name = "segment-kind",  .activate = sheet_actions_segment_kind, .parameter_type = "s" },
    { .name = "root-carried",  .activate = sheet_actions_root_carried },
    { .name = "root-open",     .activate = sheet_actions_root_open },
    { .name = "tool",          .parameter_type = "s", .state = "'select'", .change_state = sheet_actions_tool },
    { .name = "snapping",      .state = "true", .change_state = sheet_actions_snapping },
    { .name = "aboard",        .state = "false", .change_state = sheet_actions_aboard },
  };
  GSimpleActionGroup *group = g_simple_action_group_new ();
  TrammelSession *session = trammel_sheet_canvas_session (sheet);

  g_action_map_add_action_entries (G_ACTION_MAP (group), entries, G_N_ELEMENTS (entries), sheet);
  g_object_set_data_full (G_OBJECT (sheet), key, g_object_ref (group), g_object_unref);
  sheet_actions_connect (sheet, sheet, "tool-changed");
  sheet_actions_connect (sheet, session, "changed");
  sheet_actions_connect (sheet, session, "selection-changed");
  sheet_actions_connect (sheet, trammel_session_settings (session), "changed");
  sheet_actions_follow (sheet);
  return G_ACTION_GROUP (group);
}
