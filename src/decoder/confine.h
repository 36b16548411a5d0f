#pragma once
#include <stdbool.h>
#include <stddef.h>

/** Binds this process, for good, before it reads a byte of what it was given: its memory, its processor's time, its files, its
 *  privileges, its calls of the system. One that the kernel refuses leaves the others in force.
 *  most_bytes  of address space; not held in a build with sanitizers, which need more of it than any machine has
 *  seconds     of the processor, >= 1
 *  returns     DecodeLimit bits of what could not be had; 0 when all holds */
unsigned confine_process (size_t most_bytes, unsigned seconds);

/** The last of them: from here on the process may read and reckon, and all else fails with EPERM. No socket, no program, no
 *  process (threads may be), no opening for writing, no signal to anybody else, no looking into others.
 *  returns whether the kernel took it */
bool confine_calls (void);
