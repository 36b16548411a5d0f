#pragma once
#include <stdbool.h>

/** Whether what runs lies in the folder it was built in, and finds what goes with it there; else it is installed, and must never start or read
 *  anything out of a folder that anybody might make. */
bool runs_from_build_tree (void);
