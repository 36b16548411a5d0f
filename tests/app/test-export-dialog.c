/* What the dialog of exports shows before, what it writes, and what is said then. */
#include <string.h>
#include "app/export-sheets.h"
#include "app/strip.h"
#include "support/export-stage.h"

/* Chosen where another format without pages to lay out stands, or (NULL) where nothing was chosen yet. */
static char *
exported (TrammelWindow *window, const char *format, const char *name, gsize *length)
{
  const ExportFormat other = g_str_has_suffix (name, ".csv") ? EXPORT_JSON : EXPORT_CSV;
  GtkWindow *dialog = format != NULL ? export_dialog_at (window, EXPORT_WALL_SHEET, other) : export_dialog (window);
  g_autofree char *toast = g_strdup_printf ("Exported %s", name);
  char *bytes = NULL;

  if (format != NULL)
    stage_pick (dialog, "Format", format);
  export_to (dialog, stage_path (name));
  gui_await (GTK_WIDGET (window), toast);
  gui_await (GTK_WIDGET (window), "Open Folder");
  ck_assert (g_file_get_contents (stage_path (name), &bytes, length, NULL));
  return bytes;
}

static const struct { const char *format, *name, *begins; } formats[] = {
  { .format = NULL,               .name = "sheet.png",  .begins = "\x89PNG\r\n" },
  { .format = "Document (PDF)",   .name = "sheet.pdf",  .begins = "%PDF-" },
  { .format = "Drawing (SVG)",    .name = "sheet.svg",  .begins = "<?xml" },
  { .format = "List (CSV)",       .name = "parts.csv",  .begins = "" },
  { .format = "Figures (JSON)",   .name = "all.json",   .begins = "{" },
};

START_TEST (each_format_is_written_and_said_in_a_toast)
{
  TrammelWindow *window = stage_racer ();
  gsize length = 0;
  g_autofree char *bytes = exported (window, formats[_i].format, formats[_i].name, &length);

  ck_assert_uint_gt (length, 100);
  ck_assert_msg (g_str_has_prefix (bytes, formats[_i].begins), "%s begins otherwise", formats[_i].name);
  if (g_str_has_suffix (formats[_i].name, "csv"))
    ck_assert_ptr_nonnull (strstr (bytes, "Battery 2S 450"));
}
END_TEST

START_TEST (the_export_dialog_begins_at_its_first_choice_and_export_is_its_default)
{
  GtkWindow *dialog = export_dialog (stage_racer ());
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (dialog)), *first = gui_await (GTK_WIDGET (dialog), "Sheet");

  ck_assert_ptr_nonnull (focus);
  ck_assert (focus == first || gtk_widget_is_ancestor (focus, first) || gtk_widget_is_ancestor (first, focus));
  ck_assert_ptr_eq (gtk_window_get_default_widget (dialog), gui_await (GTK_WIDGET (dialog), "Export…"));
}
END_TEST

static const struct { ExportFormat format; const char *row, *key, *line; } lists[] = {
  { EXPORT_CSV, "Sheet", "Return", "Wall Sheet" }, { EXPORT_CSV, "Sheet", "space", "Wall Sheet" }, { EXPORT_PDF, "Paper", "KP_Enter", "ANSI D" },
};

/* At the line that is chosen, which a second Return so chooses again. */
START_TEST (a_row_that_has_the_keyboard_opens_its_list_by_return_and_by_space)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_PARTS_SHEET, lists[_i].format);
  GtkWidget *row = gui_await (GTK_WIDGET (dialog), lists[_i].row);
  const guint chosen = adw_combo_row_get_selected (ADW_COMBO_ROW (row));

  gtk_widget_grab_focus (row);
  gui_key (lists[_i].key);
  gui_await (GTK_WIDGET (dialog), lists[_i].line);
  ck_assert (!gui_window_is_there ("Export"));
  ck_assert (chosen + 1 < g_list_model_get_n_items (adw_combo_row_get_model (ADW_COMBO_ROW (row))));
  gui_key ("Return");
  ck_assert_uint_eq (adw_combo_row_get_selected (ADW_COMBO_ROW (row)), chosen);
  gui_key ("Return");
  gui_key ("Down");
  gui_key ("Return");
  ck_assert_uint_eq (adw_combo_row_get_selected (ADW_COMBO_ROW (row)), chosen + 1);
}
END_TEST

static bool
dialog_complains (gpointer nothing)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    if (gtk_widget_get_mapped (each->data) && gui_find_named (each->data, "complaint") != NULL)
      return true;
  return false;
}

/* The system's own folder of processes takes no files. */
START_TEST (an_export_that_failed_comes_back_with_the_reason_and_what_was_chosen)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_WALL_SHEET, EXPORT_JSON), *chooser;

  stage_pick (dialog, "Format", "Document (PDF)");
  stage_pick (dialog, "Paper", "A3");
  stage_pick (dialog, "Orientation", "Portrait");
  gui_click (gui_await (GTK_WIDGET (dialog), "Export…"));
  chooser = gui_await_window_type (GTK_TYPE_FILE_CHOOSER_DIALOG);
  gui_present (chooser);
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (chooser), "/proc/sheet.pdf");
  gui_wait_ms (300);              /* it looks the name up */
  gui_key ("Return");
  ck_assert (gui_wait (dialog_complains, NULL));
  dialog = gui_await_window ("Print or Export");
  gui_present (dialog);
  ck_assert_ptr_nonnull (strstr (gtk_label_get_text (GTK_LABEL (gui_find_named (GTK_WIDGET (dialog), "complaint"))), "/proc/sheet.pdf"));
  gui_await (GTK_WIDGET (dialog), "Document (PDF)");
  gui_await (GTK_WIDGET (dialog), "A3");
  gui_await (GTK_WIDGET (dialog), "Portrait");
}
END_TEST

START_TEST (a_nameless_document_exports_under_its_files_name_without_its_ending)
{
  const char *path = stage_path ("Plover.trammel");
  TrammelWindow *window;
  GtkWindow *dialog, *chooser;

  ck_assert (g_file_set_contents (path, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">"
                                  "<part id=\"battery\" class=\"battery\" mass=\"20\" x=\"30\"/></aeroplane>", -1, NULL));
  window = stage_open (path);
  dialog = export_dialog (window);
  gui_click (gui_await (GTK_WIDGET (dialog), "Export…"));
  chooser = gui_await_window_type (GTK_TYPE_FILE_CHOOSER_DIALOG);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (gui_find_type (GTK_WIDGET (chooser), GTK_TYPE_ENTRY))), "Plover.png");
}
END_TEST

/* A picture of the largest paper at 300 dots an inch takes some seconds. */
static void
export_for_long (TrammelWindow *window, const char *path)
{
  GtkWindow *dialog = export_dialog (window);

  stage_pick (dialog, "Paper", "A1");
  gtk_widget_grab_focus (gui_find_type (GTK_WIDGET (dialog), GTK_TYPE_SPIN_BUTTON));
  gui_key ("<Control>a");
  gui_type ("300\t");
  export_to (dialog, path);
}

START_TEST (a_long_export_says_so_and_can_be_cancelled)
{
  TrammelWindow *window = stage_racer ();
  const char *path = stage_path ("large.png");

  export_for_long (window, path);
  stage_await_strip (window, "Exporting large.png…");
  gui_click (gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), "Cancel"));
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
  gui_wait_ms (12000);
  ck_assert (!g_file_test (path, G_FILE_TEST_EXISTS));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Exported large.png"));
}
END_TEST

START_TEST (a_window_closed_during_an_export_is_closed)
{
  TrammelWindow *window = stage_racer ();

  export_for_long (window, stage_path ("large.png"));
  stage_await_strip (window, "Exporting large.png…");
  gui_key ("<Control>w");
  gui_settle ();
  ck_assert_int_eq (stage_window_count (), 0);
  gui_wait_ms (12000);            /* what is still written must not touch the window */
}
END_TEST

static bool
no_chooser_is_left (gpointer nothing)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    if (GTK_IS_FILE_CHOOSER_DIALOG (each->data))
      return false;
  return true;
}

/* A name that makes pictures of a document has them counted first. */
START_TEST (a_window_closed_while_its_pages_are_counted_is_closed_and_writes_nothing)
{
  TrammelWindow *window = stage_racer ();
  const char *path = stage_path ("template.png");
  g_autofree char *first = g_strdup (stage_path ("template-1.png"));

  export_to (export_dialog_at (window, EXPORT_TEMPLATE, EXPORT_PDF), path);
  ck_assert (!no_chooser_is_left (NULL));
  gtk_window_close (GTK_WINDOW (window));
  ck_assert_int_eq (stage_window_count (), 0);
  ck_assert (gui_wait (no_chooser_is_left, NULL));
  ck_assert (!g_file_test (first, G_FILE_TEST_EXISTS) && !g_file_test (path, G_FILE_TEST_EXISTS));
}
END_TEST

/* The desktop's part is played by a program that notes what it was asked to open. */
static void
desktop_opens_folders_with (const char *note)
{
  g_autofree char *applications = g_build_filename (g_get_user_data_dir (), "applications", NULL);
  g_autofree char *entry = g_build_filename (applications, "folders.desktop", NULL);
  g_autofree char *choices = g_build_filename (g_get_user_config_dir (), "mimeapps.list", NULL);
  g_autofree char *text = g_strdup_printf ("[Desktop Entry]\nType=Application\nName=Folders\nExec=sh -c 'echo \"$1\" > \"%s\"' sh %%u\n"
                                           "MimeType=inode/directory;\n", note);

  ck_assert_int_eq (g_mkdir_with_parents (applications, 0700), 0);
  ck_assert (g_file_set_contents (entry, text, -1, NULL));
  ck_assert (g_file_set_contents (choices, "[Default Applications]\ninode/directory=folders.desktop\n", -1, NULL));
}

static bool
file_has_words (gpointer path)
{
  g_autofree char *text = NULL;

  return g_file_get_contents (path, &text, NULL, NULL) && *text != '\0';
}

START_TEST (open_folder_opens_the_folder_of_the_export)
{
  const char *note = stage_path ("opened");
  g_autofree char *folder = g_path_get_dirname (note);
  g_autofree char *text = NULL;
  TrammelWindow *window = stage_racer ();
  gsize length;

  desktop_opens_folders_with (note);
  g_free (exported (window, "List (CSV)", "parts.csv", &length));
  gui_click (gui_await (GTK_WIDGET (window), "Open Folder"));
  ck_assert (gui_wait (file_has_words, (gpointer) note));
  ck_assert (g_file_get_contents (note, &text, NULL, NULL));
  ck_assert_ptr_nonnull (strstr (text, folder));
}
END_TEST

START_TEST (the_preview_is_the_page_and_turns_with_the_orientation)
{
  GtkWindow *dialog = export_dialog (stage_racer ());

  /* ISO 216: the sides of A4 are 297 and 210 mm; a preview's pixels round by less than one. */
  ck_assert_double_eq_tol (gdk_paintable_get_intrinsic_aspect_ratio (preview_page (dialog)), 297.0 / 210, 0.005);
  stage_pick (dialog, "Orientation", "Portrait");
  ck_assert_double_eq_tol (gdk_paintable_get_intrinsic_aspect_ratio (preview_page (dialog)), 210.0 / 297, 0.005);
}
END_TEST

START_TEST (each_sheet_keeps_its_paper_and_the_first_time_takes_over_the_one_before)
{
  GtkWindow *dialog = export_dialog (stage_racer ());

  stage_pick (dialog, "Paper", "A3");
  stage_pick (dialog, "Orientation", "Portrait");
  stage_pick (dialog, "Sheet", "Parts Sheet");
  gui_await (GTK_WIDGET (dialog), "A3");
  stage_pick (dialog, "Paper", "Letter");
  stage_pick (dialog, "Sheet", "Wall Sheet");
  gui_await (GTK_WIDGET (dialog), "A3");
  gui_await (GTK_WIDGET (dialog), "Portrait");
  stage_pick (dialog, "Sheet", "Parts Sheet");
  gui_await (GTK_WIDGET (dialog), "Letter");
}
END_TEST

/* ANSI/ASME Y14.1 (from memory): D is 34 × 22 in, as it lies. */
START_TEST (every_paper_that_is_known_is_offered)
{
  GtkWindow *dialog = export_dialog (stage_racer ());

  stage_pick (dialog, "Paper", "A0");
  ck_assert_double_eq_tol (gdk_paintable_get_intrinsic_aspect_ratio (preview_page (dialog)), 1189.0 / 841, 0.005);
  stage_pick (dialog, "Paper", "ANSI D");
  ck_assert_double_eq_tol (gdk_paintable_get_intrinsic_aspect_ratio (preview_page (dialog)), 34.0 / 22, 0.005);
}
END_TEST

START_TEST (a_list_has_neither_paper_nor_dots)
{
  GtkWindow *dialog = export_dialog (stage_racer ());

  stage_pick (dialog, "Format", "Document (PDF)");
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (dialog), "Paper"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (dialog), "Dots to the inch"));
  stage_pick (dialog, "Format", "List (CSV)");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (dialog), "Paper"));
  gui_key ("Escape");
  gui_settle ();
  ck_assert (!gui_window_is_there ("Print or Export"));
}
END_TEST

static bool
file_holds (const char *path, const char *text)
{
  g_autofree char *held = NULL;

  return g_file_get_contents (path, &held, NULL, NULL) && g_str_equal (held, text);
}

static bool
is_png (const char *path)
{
  g_autofree char *bytes = NULL;
  gsize length;

  return g_file_get_contents (path, &bytes, &length, NULL) && length > 8 && memcmp (bytes, "\x89PNG", 4) == 0;
}

/* The template's pages as pictures, where the first and the third of that name are there and no pictures. */
static GtkWindow *
template_over_others (TrammelWindow *window)
{
  GtkWindow *dialog = export_dialog_at (window, EXPORT_TEMPLATE, EXPORT_PNG);

  ck_assert (g_file_set_contents (stage_path ("template-1.png"), "other", -1, NULL));
  ck_assert (g_file_set_contents (stage_path ("template-3.png"), "other", -1, NULL));
  export_to (dialog, stage_path ("template.png"));
  return dialog;
}

START_TEST (several_pages_replace_what_is_there_once_that_is_answered)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = template_over_others (window);
  GtkWidget *replace = stage_answer ("Replace Files?", "Replace");

  gui_await (gtk_widget_get_ancestor (replace, GTK_TYPE_WINDOW),
             "There are files called “template-1.png” to “template-3.png” already. Replacing them loses what they hold.");
  ck_assert (gtk_widget_get_mapped (GTK_WIDGET (dialog)));
  ck_assert (!is_png (stage_path ("template-1.png")) && !g_file_test (stage_path ("template-2.png"), G_FILE_TEST_EXISTS));
  gui_click (replace);
  gui_await (GTK_WIDGET (window), "Open Folder");
  ck_assert (!gui_window_is_there ("Print or Export"));
  ck_assert (is_png (stage_path ("template-1.png")) && is_png (stage_path ("template-2.png")) && is_png (stage_path ("template-3.png")));
}
END_TEST

static void
await_chooser_at (const char *folder, const char *name)
{
  GtkWindow *chooser = gui_await_window_type (GTK_TYPE_FILE_CHOOSER_DIALOG);
  g_autoptr (GFile) shown = gtk_file_chooser_get_current_folder (GTK_FILE_CHOOSER (chooser));
  g_autofree char *path = shown != NULL ? g_file_get_path (shown) : NULL;

  ck_assert_pstr_eq (path, folder);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (gui_find_type (GTK_WIDGET (chooser), GTK_TYPE_ENTRY))), name);
}

START_TEST (several_pages_get_another_name_in_the_same_folder_and_leave_what_is_there)
{
  TrammelWindow *window = stage_racer ();
  g_autofree char *folder = g_path_get_dirname (stage_path ("template.png"));

  template_over_others (window);
  gui_click (stage_answer ("Replace Files?", "Choose Another Name…"));
  await_chooser_at (folder, "template.png");
  stage_choose ("Export", stage_path ("elsewhere.png"), true);
  gui_await (GTK_WIDGET (window), "Open Folder");
  ck_assert (is_png (stage_path ("elsewhere-1.png")) && is_png (stage_path ("elsewhere-3.png")));
  ck_assert (!is_png (stage_path ("template-1.png")) && !is_png (stage_path ("template-3.png")));
}
END_TEST

START_TEST (pages_that_are_to_replace_nothing_leave_the_dialog_as_it_was)
{
  GtkWindow *dialog = template_over_others (stage_racer ());

  gui_click (stage_answer ("Replace Files?", "Cancel"));
  gui_settle ();
  ck_assert_ptr_eq (gui_await_window ("Print or Export"), dialog);
  gui_await (GTK_WIDGET (dialog), "Picture (PNG)");
  ck_assert (gtk_widget_get_sensitive (gui_await (GTK_WIDGET (dialog), "Export…")));
  ck_assert (!is_png (stage_path ("template-1.png")) && !g_file_test (stage_path ("template-2.png"), G_FILE_TEST_EXISTS));
}
END_TEST

/* A key that leaves the question as it begins, or once the hand has gone from button to button. */
static const struct { const char *key; int tabs; bool replaced; } answers_by_keys[] = {
  { "Return", 0, false }, { "Escape", 2, false }, { "Return", 2, true } };

START_TEST (the_question_before_files_are_replaced_begins_on_cancel)
{
  TrammelWindow *window = stage_racer ();
  GtkWidget *cancel;

  ck_assert (g_file_set_contents (stage_path ("list.csv"), "other", -1, NULL));
  export_to (export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV), stage_path ("list"));
  cancel = stage_answer ("Replace File?", "Cancel");
  ck_assert_ptr_eq (gtk_window_get_focus (GTK_WINDOW (gtk_widget_get_root (cancel))), cancel);
  for (int tab = 0; tab < answers_by_keys[_i].tabs; tab++)
    gui_key ("<Shift>Tab");
  gui_key (answers_by_keys[_i].key);
  if (answers_by_keys[_i].replaced)
    gui_await (GTK_WIDGET (window), "Exported list.csv");
  ck_assert (file_holds (stage_path ("list.csv"), "other") != answers_by_keys[_i].replaced);
  ck_assert (gui_window_is_there ("Print or Export") != answers_by_keys[_i].replaced);
}
END_TEST

START_TEST (an_ending_completed_onto_a_file_asks_before_the_dialog_goes)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV);
  g_autofree char *folder = g_path_get_dirname (stage_path ("list.csv"));

  ck_assert (g_file_set_contents (stage_path ("list.csv"), "other", -1, NULL));
  export_to (dialog, stage_path ("list"));
  gui_click (stage_answer ("Replace File?", "Choose Another Name…"));
  ck_assert (gtk_widget_get_mapped (GTK_WIDGET (dialog)));
  await_chooser_at (folder, "list.csv");
  stage_choose ("Export", stage_path ("other-list"), true);
  gui_await (GTK_WIDGET (window), "Exported other-list.csv");
}
END_TEST

START_TEST (the_folder_of_the_last_export_is_proposed_for_the_next)
{
  TrammelWindow *window = stage_racer ();
  g_autofree char *folder = g_strdup (stage_path ("shop"));
  g_autofree char *path = g_build_filename (folder, "first.csv", NULL);

  ck_assert_int_eq (g_mkdir_with_parents (folder, 0700), 0);
  export_to (export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV), path);
  gui_await (GTK_WIDGET (window), "Exported first.csv");
  gui_click (gui_await (GTK_WIDGET (export_dialog (window)), "Export…"));
  await_chooser_at (folder, "Saltmarsh Racer.csv");
}
END_TEST

static const struct { ExportSheet sheet; ExportFormat format; const char *typed, *meant; } endings[] = {
  { EXPORT_CUTTING, EXPORT_SVG, "/shop/cut", "/shop/cut.svg" },           { EXPORT_CUTTING, EXPORT_SVG, "/shop/cut.svg", "/shop/cut.svg" },
  { EXPORT_CUTTING, EXPORT_SVG, "/shop/cut.dxf", "/shop/cut.dxf" },       { EXPORT_CUTTING, EXPORT_SVG, "/shop/CUT.DXF", "/shop/CUT.DXF" },
  { EXPORT_CUTTING, EXPORT_SVG, "/shop/cut.png", "/shop/cut.svg" },       { EXPORT_TEMPLATE, EXPORT_PDF, "/shop/racer.png", "/shop/racer.png" },
  { EXPORT_TEMPLATE, EXPORT_PDF, "/shop/racer.json", "/shop/racer.pdf" }, { EXPORT_TEMPLATE, EXPORT_PDF, "/shop/racer 1.5", "/shop/racer 1.5.pdf" },
  { EXPORT_TEMPLATE, EXPORT_PDF, "/a.png/racer", "/a.png/racer.pdf" },    { EXPORT_TEMPLATE, EXPORT_PDF, "/shop/.json", "/shop/.json.pdf" },
};

START_TEST (an_ending_of_ours_is_never_doubled)
{
  for (size_t i = 0; i < G_N_ELEMENTS (endings); i++) {
    const ExportOptions options = { .sheet = endings[i].sheet, .format = endings[i].format };
    g_autofree char *meant = export_sheet_path (&options, endings[i].typed);
    ck_assert_str_eq (meant, endings[i].meant);
  }
}
END_TEST

START_TEST (an_ending_that_is_typed_tells_the_format_and_the_dialog_remembers_it)
{
  TrammelWindow *window = stage_racer ();
  g_autofree char *text = NULL;

  export_to (export_dialog_at (window, EXPORT_CUTTING, EXPORT_SVG), stage_path ("cut.dxf"));
  gui_await (GTK_WIDGET (window), "Exported cut.dxf");
  ck_assert (g_file_get_contents (stage_path ("cut.dxf"), &text, NULL, NULL));
  ck_assert_ptr_nonnull (strstr (text, "SECTION"));
  ck_assert (!g_file_test (stage_path ("cut.dxf.svg"), G_FILE_TEST_EXISTS));
  gui_await (GTK_WIDGET (export_dialog (window)), "Drawing (DXF)");
}
END_TEST

START_TEST (an_ending_that_the_sheet_has_not_is_exchanged_and_that_is_said)
{
  TrammelWindow *window = stage_racer ();

  export_to (export_dialog_at (window, EXPORT_CUTTING, EXPORT_SVG), stage_path ("cut.png"));
  gui_await (GTK_WIDGET (window), "Exported cut.svg");
  gui_await (GTK_WIDGET (window), "The export is called “cut.svg”, not “cut.png”: that sheet has no .png files.");
  ck_assert (g_file_test (stage_path ("cut.svg"), G_FILE_TEST_EXISTS) && !g_file_test (stage_path ("cut.png"), G_FILE_TEST_EXISTS));
}
END_TEST

/* The page shown is a document's: how many pictures there will be is counted first. */
START_TEST (the_question_names_the_pages_that_will_be_written_and_no_others)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_PARTS_SHEET, EXPORT_PDF);
  GtkWidget *cancel;

  ck_assert (g_file_set_contents (stage_path ("parts-1.png"), "other", -1, NULL));
  ck_assert (g_file_set_contents (stage_path ("parts-90.png"), "other", -1, NULL));
  export_to (dialog, stage_path ("parts.png"));
  cancel = stage_answer ("Replace File?", "Cancel");
  gui_await (gtk_widget_get_ancestor (cancel, GTK_TYPE_WINDOW), "There is a file called “parts-1.png” already. Replacing it loses what it holds.");
  gui_key ("Return");
}
END_TEST

static TCase *
case_of_exports (void)
{
  TCase *tests = tcase_create ("exports");

  tcase_add_loop_test (tests, each_format_is_written_and_said_in_a_toast, 0, G_N_ELEMENTS (formats));
  tcase_add_test (tests, an_export_that_failed_comes_back_with_the_reason_and_what_was_chosen);
  tcase_add_test (tests, a_long_export_says_so_and_can_be_cancelled);
  tcase_add_test (tests, a_window_closed_during_an_export_is_closed);
  tcase_add_test (tests, a_window_closed_while_its_pages_are_counted_is_closed_and_writes_nothing);
  tcase_add_test (tests, open_folder_opens_the_folder_of_the_export);
  return tests;
}

static TCase *
case_of_names (void)
{
  TCase *tests = tcase_create ("names");

  tcase_add_test (tests, a_nameless_document_exports_under_its_files_name_without_its_ending);
  tcase_add_test (tests, several_pages_replace_what_is_there_once_that_is_answered);
  tcase_add_test (tests, several_pages_get_another_name_in_the_same_folder_and_leave_what_is_there);
  tcase_add_test (tests, pages_that_are_to_replace_nothing_leave_the_dialog_as_it_was);
  tcase_add_loop_test (tests, the_question_before_files_are_replaced_begins_on_cancel, 0, G_N_ELEMENTS (answers_by_keys));
  tcase_add_test (tests, an_ending_completed_onto_a_file_asks_before_the_dialog_goes);
  tcase_add_test (tests, the_folder_of_the_last_export_is_proposed_for_the_next);
  tcase_add_test (tests, an_ending_of_ours_is_never_doubled);
  tcase_add_test (tests, an_ending_that_the_sheet_has_not_is_exchanged_and_that_is_said);
  tcase_add_test (tests, the_question_names_the_pages_that_will_be_written_and_no_others);
  tcase_add_test (tests, an_ending_that_is_typed_tells_the_format_and_the_dialog_remembers_it);
  return tests;
}

static TCase *
case_of_choices (void)
{
  TCase *tests = tcase_create ("choices");

  tcase_add_test (tests, the_export_dialog_begins_at_its_first_choice_and_export_is_its_default);
  tcase_add_loop_test (tests, a_row_that_has_the_keyboard_opens_its_list_by_return_and_by_space, 0, G_N_ELEMENTS (lists));
  tcase_add_test (tests, the_preview_is_the_page_and_turns_with_the_orientation);
  tcase_add_test (tests, every_paper_that_is_known_is_offered);
  tcase_add_test (tests, each_sheet_keeps_its_paper_and_the_first_time_takes_over_the_one_before);
  tcase_add_test (tests, a_list_has_neither_paper_nor_dots);
  return tests;
}

int
main (void)
{
  TCase *cases[] = { case_of_exports (), case_of_names (), case_of_choices () };

  return stage_run ("export-dialog", cases, G_N_ELEMENTS (cases));
}
