/* Linked with all that trammel is linked with, and ends at once: what starting costs by itself. */
#include "app/application.h"
#include "command/command.h"

int
main (int argc, char **argv)
{
  if (argc <= 1)
    return 0;
  return command_takes (argc, argv) ? command_main (argc, argv) : application_main (argc, argv);
}
