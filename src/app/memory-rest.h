#pragma once

/** Frames are painted in pictures of megabytes that come and go, and the C library keeps what they leave. Called with every frame: a second
 *  after the last of them it is given back to the system, once. For the main thread. */
void memory_rest_soon (void);
