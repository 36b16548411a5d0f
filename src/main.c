#include "trammel-config.h"
#include <libintl.h>
#include <locale.h>
#include "app/application.h"
#include "command/command.h"
#include "plan/build-tree.h"

int
main (int argc, char **argv)
{
  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, runs_from_build_tree () ? TRAMMEL_BUILD_DIR "/po" : TRAMMEL_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  return command_takes (argc, argv) ? command_main (argc, argv) : application_main (argc, argv);
}
