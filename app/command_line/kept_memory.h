#pragma once

#if __has_include(<malloc.h>)
#include <malloc.h>
#endif

namespace stopwalk::app {

// Memory that was used once is kept for the next audit. Given back each time, it is had again page by page,
// and an audit of many machines takes up to a third longer. What is kept is no more than was used at once,
// nor than 128 MB.
inline void keepMemory() {
#ifdef M_TRIM_THRESHOLD
  mallopt(M_MMAP_THRESHOLD, 32 << 20);  // the most that it takes
  mallopt(M_TRIM_THRESHOLD, 128 << 20);
#endif
}

}  // namespace stopwalk::app
