#pragma once
#include <stddef.h>
#include <stdint.h>

/** Reads `size` bytes as a document. Whatever they are, either they are refused with problems that are sentences, or what is read is
 *  written, read again the same and written again byte for byte; anything else ends the process. libFuzzer's entry, and so its name:
 *  clang -fsanitize=fuzzer,address with fuzz-reader.c and the document room runs it for as long as one likes. Always 0. */
int LLVMFuzzerTestOneInput (const uint8_t *data, size_t size);
