#pragma once
#include "app/sheet-canvas.h"

/** What keys, menus and actions do to what is selected, each one undo step. All return whether there was anything to do. */
bool sheet_command_add_node     (TrammelSheetCanvas *sheet);      /* on the line last clicked, else behind the selected node */
bool sheet_command_bend         (TrammelSheetCanvas *sheet, const char *id, Point place);      /* that lead, there; mm */
void sheet_command_select_bend  (TrammelSheetCanvas *sheet, const char *id, Point near);       /* selects that lead's place nearest there */
bool sheet_command_node_kind    (TrammelSheetCanvas *sheet, NodeKind kind);
bool sheet_command_segment_kind (TrammelSheetCanvas *sheet, SegmentKind kind);      /* of the line last clicked, else behind the selected node */
bool sheet_command_split_node   (TrammelSheetCanvas *sheet);      /* cuts the selected node's corner, 10 mm each way */
bool sheet_command_join_nodes   (TrammelSheetCanvas *sheet);      /* the selected node and the next */
bool sheet_command_add_rail     (TrammelSheetCanvas *sheet);      /* to the selected part */
bool sheet_command_remove_rail  (TrammelSheetCanvas *sheet);      /* of the selected part */
bool sheet_command_aboard       (TrammelSheetCanvas *sheet);      /* takes the selected part aboard, or leaves it out */
bool sheet_command_turn          (TrammelSheetCanvas *sheet);      /* each selected part by a quarter, its forward end to port */
bool sheet_command_group         (TrammelSheetCanvas *sheet);      /* the selected parts, or takes their group apart */
bool sheet_command_mirror        (TrammelSheetCanvas *sheet);      /* copies the selected parts to the other side, and selects the copies */
/** Selects the next thing, or the one before. */
bool sheet_command_walk         (TrammelSheetCanvas *sheet, bool back);
