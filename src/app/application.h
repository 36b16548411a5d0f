#pragma once

/** Runs the windowed program on the files named; returns the exit status. */
int application_main (int argc, char **argv);
