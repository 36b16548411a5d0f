/* What the dialog of prints and exports offers of each sheet and remembers, and what goes to a printer. */
#include "support/export-stage.h"
#include "support/print-stage.h"

/* Sheets */

/* Which rows each sheet shows in its usual format. */
static const struct { const char *sheet; const char *format; const char *there[5], *not_there[6]; bool printed; } sheets[] = {
  { "Wall Sheet", "Picture (PNG)", { "Paper", "Orientation", "Masses", "Dots to the inch" }, { "Halves", "Kerf, how wide a cut is", "100 mm on the short side" }, true },
  { "Template", "Document (PDF)", { "Paper", "Orientation", "Halves", "100 mm on the short side", "100 mm on the long side" },
    { "Masses", "Dots to the inch", "Kerf, how wide a cut is" }, true },
  { "Parts Sheet", "Document (PDF)", { "Paper", "Lengths", "Masses" }, { "Orientation", "Halves", "Kerf, how wide a cut is", "100 mm on the short side" }, true },
  { "Files for Cutting", "Drawing (SVG)", { "Halves", "Kerf, how wide a cut is" }, { "Paper", "Orientation", "Masses", "100 mm on the short side" }, false },
};

START_TEST (each_sheet_shows_the_rows_that_have_an_effect_on_it)
{
  TrammelWindow *window = stage_racer ();
  /* The wall sheet as it stands at first, the others chosen where a list stands, which has nothing to lay out. */
  GtkWindow *dialog = _i == 0 ? export_dialog (window) : export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV);

  if (_i > 0)
    stage_pick (dialog, "Sheet", sheets[_i].sheet);
  gui_await (GTK_WIDGET (dialog), sheets[_i].format);
  for (size_t i = 0; i < G_N_ELEMENTS (sheets[_i].there) && sheets[_i].there[i] != NULL; i++)
    ck_assert_msg (export_row (dialog, sheets[_i].there[i]) != NULL, "%s has no %s", sheets[_i].sheet, sheets[_i].there[i]);
  for (size_t i = 0; i < G_N_ELEMENTS (sheets[_i].not_there) && sheets[_i].not_there[i] != NULL; i++)
    ck_assert_msg (export_row (dialog, sheets[_i].not_there[i]) == NULL, "%s has %s", sheets[_i].sheet, sheets[_i].not_there[i]);
  ck_assert (gtk_widget_get_sensitive (export_row (dialog, "Print…")) == sheets[_i].printed);
}
END_TEST

START_TEST (a_file_for_cutting_says_what_its_colours_mean_and_how_large_it_is)
{
  GtkWindow *dialog = export_dialog (stage_racer ());
  GtkWidget *foot = gui_find_named (GTK_WIDGET (dialog), "preview-foot");

  ck_assert_ptr_null (gui_find (GTK_WIDGET (dialog), "Edges: cut, last"));
  stage_pick (dialog, "Sheet", "Files for Cutting");
  gui_await (GTK_WIDGET (dialog), "Edges: cut, last");
  gui_await (GTK_WIDGET (dialog), "Names of pieces: not cut");
  ck_assert_ptr_nonnull (strstr (gtk_label_get_text (GTK_LABEL (foot)), "\u00A0mm over all: it fits on a sheet of "));
  stage_pick (dialog, "Sheet", "Wall Sheet");
  gui_await (GTK_WIDGET (dialog), "Print at 100 %, without fitting to the page.");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (dialog), "Edges: cut, last"));
}
END_TEST

START_TEST (a_template_on_one_page_of_its_own_size_has_no_orientation)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);

  ck_assert_ptr_nonnull (export_row (dialog, "Orientation"));
  stage_pick (dialog, "Paper", "One large page");
  ck_assert_ptr_null (export_row (dialog, "Orientation"));
  stage_pick (dialog, "Sheet", "Wall Sheet");
  gui_await (GTK_WIDGET (dialog), "A4");
  stage_pick (dialog, "Sheet", "Template");
  gui_await (GTK_WIDGET (dialog), "One large page");
}
END_TEST

START_TEST (what_was_chosen_last_stands_there_when_the_dialog_opens_again)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV);

  stage_pick (dialog, "Sheet", "Template");
  stage_pick (dialog, "Paper", "A3");
  stage_pick (dialog, "Halves", "Port");
  gui_key ("Escape");
  gui_settle ();
  dialog = export_dialog (window);
  gui_await (GTK_WIDGET (dialog), "Template");
  gui_await (GTK_WIDGET (dialog), "A3");
  gui_await (GTK_WIDGET (dialog), "Port");
}
END_TEST

START_TEST (each_sheet_keeps_the_format_that_was_chosen_for_it)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV);

  stage_pick (dialog, "Sheet", "Template");
  stage_pick (dialog, "Format", "Picture (PNG)");
  stage_pick (dialog, "Sheet", "Files for Cutting");
  stage_pick (dialog, "Format", "Drawing (DXF)");
  stage_pick (dialog, "Sheet", "Template");
  gui_await (GTK_WIDGET (dialog), "Picture (PNG)");
  gui_key ("Escape");
  gui_settle ();
  dialog = export_dialog (window);
  gui_await (GTK_WIDGET (dialog), "Picture (PNG)");
  stage_pick (dialog, "Sheet", "Files for Cutting");
  gui_await (GTK_WIDGET (dialog), "Drawing (DXF)");
}
END_TEST

START_TEST (what_a_printer_draws_is_kept_for_the_next_time_the_program_runs)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);
  g_autoptr (TrammelSettings) next = NULL;

  export_type (dialog, "100 mm on the short side", "99.4");
  export_type (dialog, "100 mm on the long side", "100.5");
  next = trammel_settings_new ();
  ck_assert_double_eq (trammel_settings_printer_reading (next).short_side, 99.4);
  ck_assert_double_eq (trammel_settings_printer_reading (next).long_side, 100.5);
  trammel_settings_set_printer_reading (settings, (PrinterReading) { 100, 100 });
}
END_TEST

START_TEST (a_printer_that_is_off_by_more_than_a_tenth_is_not_believed)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);

  export_type (dialog, "100 mm on the short side", "89");
  gui_await (GTK_WIDGET (dialog), "A printer that is off draws 100 mm between 90 and 110 mm long; measure the lines on the page again.");
  ck_assert (!gtk_widget_get_sensitive (export_row (dialog, "Export…")));
  ck_assert (!gtk_widget_get_sensitive (export_row (dialog, "Print…")));
  ck_assert_double_eq (trammel_settings_printer_reading (settings).short_side, 100);
  export_type (dialog, "100 mm on the short side", "100");
  ck_assert (gtk_widget_get_sensitive (export_row (dialog, "Export…")));
}
END_TEST

static guint
count_of_choosers (void)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();
  guint count = 0;

  for (GList *each = windows; each != NULL; each = each->next)
    count += GTK_IS_FILE_CHOOSER_DIALOG (each->data);
  return count;
}

static bool
is_in_sight (gpointer widget)
{
  GtkWidget *scroller = gtk_widget_get_ancestor (widget, GTK_TYPE_SCROLLED_WINDOW);
  graphene_rect_t place;

  return gtk_widget_compute_bounds (widget, scroller, &place) && place.origin.y >= 0
         && place.origin.y + place.size.height <= gtk_widget_get_height (scroller);
}

START_TEST (what_is_wrong_with_a_length_comes_into_sight_and_export_leads_to_it)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);
  GtkWidget *across, *sentence;

  across = gui_await (GTK_WIDGET (dialog), "100 mm on the short side");
  export_type (dialog, "100 mm on the short side", "89");
  sentence = gui_await (GTK_WIDGET (dialog), "A printer that is off draws 100 mm between 90 and 110 mm long; measure the lines on the page again.");
  ck_assert (gui_wait (is_in_sight, sentence));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (dialog), "Sheet"));
  gui_wait_ms (200);
  ck_assert (!is_in_sight (sentence));
  gui_key ("<Control>e");
  ck_assert (gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (dialog)), across));
  ck_assert (gui_wait (is_in_sight, sentence));
  ck_assert_uint_eq (count_of_choosers (), 0);
}
END_TEST

/* "9" and "99" are on the way to "99.5". */
START_TEST (the_page_before_stays_until_a_length_is_typed_to_its_end)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);
  GdkPaintable *before;

  before = g_object_ref (preview_page (dialog));
  export_type (dialog, "100 mm on the short side", "9");
  gui_wait_ms (1000);
  ck_assert_ptr_eq (preview_page (dialog), before);
  gui_type ("9.5");
  ck_assert_ptr_eq (preview_page (dialog), before);
  gui_wait_ms (1000);
  ck_assert_ptr_ne (preview_page (dialog), before);
  export_type (dialog, "100 mm on the short side", "100");
  g_object_unref (before);
}
END_TEST

START_TEST (the_key_for_help_opens_the_page_of_sheets_beside_the_dialog)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_WALL_SHEET, EXPORT_CSV), *help;

  gui_key ("F1");
  help = gui_await_window ("Help");
  gui_present (help);
  gui_await (gui_await (GTK_WIDGET (help), "Page"), "Sheets for the Shop");
  gui_click (gui_await (GTK_WIDGET (help), "Cautions"));
  gui_await (GTK_WIDGET (help), "Keep clear of propellers; take the propeller off for bench work.");
  gui_key ("Escape");
  gui_settle ();
  gui_present (dialog);
}
END_TEST

START_TEST (a_place_is_asked_for_once_however_often_export_is_pressed)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_WALL_SHEET, EXPORT_CSV), *chooser;

  gtk_widget_activate_action (GTK_WIDGET (dialog), "export.choose-place", NULL);
  gtk_widget_activate_action (GTK_WIDGET (dialog), "export.choose-place", NULL);
  chooser = gui_await_window_type (GTK_TYPE_FILE_CHOOSER_DIALOG);
  gui_present (chooser);
  ck_assert_uint_eq (count_of_choosers (), 1);
  gui_key ("Escape");
  gui_settle ();
  gui_present (dialog);
  ck_assert (gtk_widget_get_sensitive (export_row (dialog, "Export…")));
}
END_TEST

START_TEST (a_document_that_goes_takes_its_dialog_along)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = g_object_ref (export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV));

  gtk_window_destroy (GTK_WINDOW (window));
  gui_settle ();
  ck_assert (!gui_window_is_there ("Print or Export"));
  g_object_unref (dialog);        /* now the last owner of its document's window */
  gui_settle ();
}
END_TEST

/* The template of a wing of 640 mm takes several pages of A4: the first tells how they are put together, the others hold it. */
static void
await_page (GtkWindow *dialog, int page)
{
  enum { PAGES = 7 };
  g_autofree char *words = g_strdup_printf ("Page %d of %d", page, PAGES);

  gui_await (GTK_WIDGET (dialog), words);
}

START_TEST (the_page_keys_turn_the_pages_of_a_template)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);
  GdkPaintable *first;

  await_page (dialog, 1);
  ck_assert (!gtk_widget_get_sensitive (export_row (dialog, "Previous page")));
  first = g_object_ref (preview_page (dialog));
  gui_key ("Page_Down");
  await_page (dialog, 2);
  ck_assert_ptr_ne (preview_page (dialog), first);
  gui_click (export_row (dialog, "Next page"));
  await_page (dialog, 3);
  gui_key ("Page_Up");
  await_page (dialog, 2);
  g_object_unref (first);
}
END_TEST

/* Printing */

START_TEST (ctrl_p_opens_the_dialog_with_print_as_its_default_and_a_sheet_that_can_be_printed)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *dialog = export_dialog_at (window, EXPORT_WALL_SHEET, EXPORT_CSV);

  stage_pick (dialog, "Format", "Figures (JSON)");
  ck_assert (!gtk_widget_get_sensitive (export_row (dialog, "Print…")));
  gui_key ("Escape");
  gui_settle ();
  gui_key ("<Control>p");
  dialog = gui_await_window ("Print or Export");
  ck_assert_ptr_eq (gtk_window_get_default_widget (dialog), gui_await (GTK_WIDGET (dialog), "Print…"));
  ck_assert (gtk_widget_get_sensitive (export_row (dialog, "Print…")));
  gui_await (GTK_WIDGET (dialog), "Document (PDF)");
}
END_TEST

static GtkWindow *
print_dialog (GtkWindow *dialog)
{
  gui_click (gui_await (GTK_WIDGET (dialog), "Print…"));
  return gui_await_window ("Print");
}

START_TEST (the_desktops_print_dialog_left_again_leaves_the_sheet_as_it_was)
{
  GtkWindow *dialog = export_dialog_at (stage_racer (), EXPORT_TEMPLATE, EXPORT_PDF);

  gui_present (print_dialog (dialog));
  ck_assert (!gtk_widget_get_sensitive (export_row (dialog, "Print…")));
  gui_key ("Escape");
  gui_settle ();
  ck_assert (!gui_window_is_there ("Print"));
  gui_present (dialog);
  ck_assert (gtk_widget_get_sensitive (export_row (dialog, "Print…")));
}
END_TEST

/* ISO 216 and ANSI/ASME Y14.1 (from memory), mm as printed; a point is 1/72 in. */
static const struct { const char *paper; bool portrait; double width, height; } prints[] = {
  { "a4", false, 297, 210 }, { "a4", true, 210, 297 }, { "letter", true, 215.9, 279.4 }, { "a3", false, 420, 297 }, { "ansi-c", false, 558.8, 431.8 },
};

START_TEST (a_print_is_one_page_of_the_papers_size)
{
  ExportOptions options = export_default_options ("wall.pdf");
  PopplerDocument *document;
  PopplerPage *page;
  double width, height;

  g_strlcpy (options.paper, prints[_i].paper, sizeof options.paper);
  options.portrait = prints[_i].portrait;
  document = print_read_again (stage_racer (), &options);
  ck_assert_int_eq (poppler_document_get_n_pages (document), 1);
  page = poppler_document_get_page (document, 0);
  poppler_page_get_size (page, &width, &height);
  ck_assert_double_eq_tol (MAX (width, height) / 72 * 25.4, MAX (prints[_i].width, prints[_i].height), 0.2);
  ck_assert_double_eq_tol (MIN (width, height) / 72 * 25.4, MIN (prints[_i].width, prints[_i].height), 0.2);
  g_object_unref (page);
  g_object_unref (document);
}
END_TEST

static const struct { ExportSheet sheet; const char *paper; bool portrait; } shop_prints[] = {
  { EXPORT_TEMPLATE, "a4", false }, { EXPORT_TEMPLATE, "letter", true }, { EXPORT_PARTS_SHEET, "a4", true },
};

START_TEST (a_print_of_a_template_or_of_the_parts_is_what_is_exported_page_by_page)
{
  TrammelWindow *window = stage_racer ();
  ExportOptions options = export_default_options ("sheet.pdf");
  PopplerDocument *print, *file;
  g_autoptr (GBytes) bytes = NULL;

  options.sheet = shop_prints[_i].sheet;
  options.portrait = shop_prints[_i].portrait;
  g_strlcpy (options.paper, shop_prints[_i].paper, sizeof options.paper);
  bytes = export_bytes (trammel_session_figures (trammel_window_session (window)), &options, NULL);
  file = poppler_document_new_from_bytes (bytes, NULL, NULL);
  print = print_read_again (window, &options);
  ck_assert_int_gt (poppler_document_get_n_pages (file), 1);
  ck_assert_int_eq (poppler_document_get_n_pages (print), poppler_document_get_n_pages (file));
  for (int i = 0; i < poppler_document_get_n_pages (file); i++)
    pages_read_alike (print, file, i);
  g_object_unref (print);
  g_object_unref (file);
}
END_TEST

START_TEST (a_print_is_named_after_the_aeroplane_and_its_sheet)
{
  TrammelWindow *window = stage_racer ();
  const ExportOptions options = export_default_options ("wall.pdf");
  SheetPages *pages = sheet_pages_new (trammel_session_figures (trammel_window_session (window)), &options, NULL);
  g_autoptr (GtkPrintOperation) operation = print_job_operation (pages);
  g_autofree char *name = NULL;

  g_object_get (operation, "job-name", &name, NULL);
  ck_assert_str_eq (name, "Saltmarsh Racer: Wall sheet with the balance mark");
}
END_TEST

static TCase *
case_of_sheets (void)
{
  TCase *tests = tcase_create ("sheets");

  tcase_add_loop_test (tests, each_sheet_shows_the_rows_that_have_an_effect_on_it, 0, G_N_ELEMENTS (sheets));
  tcase_add_test (tests, a_file_for_cutting_says_what_its_colours_mean_and_how_large_it_is);
  tcase_add_test (tests, a_template_on_one_page_of_its_own_size_has_no_orientation);
  tcase_add_test (tests, what_was_chosen_last_stands_there_when_the_dialog_opens_again);
  tcase_add_test (tests, each_sheet_keeps_the_format_that_was_chosen_for_it);
  tcase_add_test (tests, what_a_printer_draws_is_kept_for_the_next_time_the_program_runs);
  tcase_add_test (tests, a_printer_that_is_off_by_more_than_a_tenth_is_not_believed);
  tcase_add_test (tests, what_is_wrong_with_a_length_comes_into_sight_and_export_leads_to_it);
  tcase_add_test (tests, the_page_before_stays_until_a_length_is_typed_to_its_end);
  tcase_add_test (tests, the_key_for_help_opens_the_page_of_sheets_beside_the_dialog);
  tcase_add_test (tests, the_page_keys_turn_the_pages_of_a_template);
  tcase_add_test (tests, a_place_is_asked_for_once_however_often_export_is_pressed);
  tcase_add_test (tests, a_document_that_goes_takes_its_dialog_along);
  return tests;
}

static TCase *
case_of_prints (void)
{
  TCase *tests = tcase_create ("prints");

  tcase_add_test (tests, ctrl_p_opens_the_dialog_with_print_as_its_default_and_a_sheet_that_can_be_printed);
  tcase_add_test (tests, the_desktops_print_dialog_left_again_leaves_the_sheet_as_it_was);
  tcase_add_loop_test (tests, a_print_is_one_page_of_the_papers_size, 0, G_N_ELEMENTS (prints));
  tcase_add_loop_test (tests, a_print_of_a_template_or_of_the_parts_is_what_is_exported_page_by_page, 0, G_N_ELEMENTS (shop_prints));
  tcase_add_test (tests, a_print_is_named_after_the_aeroplane_and_its_sheet);
  return tests;
}

int
main (void)
{
  TCase *cases[] = { case_of_sheets (), case_of_prints () };

  return stage_run ("print-export", cases, G_N_ELEMENTS (cases));
}
