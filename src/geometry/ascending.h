#pragma once

/** For qsort(): the smaller number first. Of two doubles, or of two floats; none of them NAN. */
int ascending_doubles (const void *a, const void *b);
int ascending_floats  (const void *a, const void *b);      /* the same of two floats */
