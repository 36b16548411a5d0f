#pragma once

/** Where a file that comes with the program lies: "fonts/routed-gothic.ttf". Looked for in the folder that the environment's
 *  TRAMMEL_DATA_DIR names, in the data folder of the source tree the program was built from (so that a build runs without being
 *  installed), and in the installed one. A new string, never NULL: the first place where the file is, else the installed one. */
char *data_path (const char *relative);
