#pragma once

#include <cstdint>
#include <cstdlib>

#if __has_include(<malloc.h>)
#include <malloc.h>
#endif
#if __has_include(<sys/mman.h>) && __has_include(<unistd.h>)
#include <sys/mman.h>
#include <sys/resource.h>
#include <unistd.h>
#endif

namespace stopwalk::app {

// Memory that was used once is kept for the next audit. Given back each time, it is had again page by page,
// and an audit of many machines takes up to a third longer. What is kept is no more than was used at once,
// nor than half a gigabyte. For the same reason as much is had in large pages from the first audit on, where
// the system gives such: it is reserved here, and used only when it is needed.
inline void keepMemory() {
#ifdef M_TRIM_THRESHOLD
  constexpr int kKept = 512 << 20, kReserved = 500 << 20;
  mallopt(M_MMAP_THRESHOLD, 32 << 20);  // the most that it takes
  mallopt(M_TRIM_THRESHOLD, kKept);
#ifdef MADV_HUGEPAGE
  constexpr std::uintptr_t kLargePage = 2 << 20;
  for (const auto limit : {RLIMIT_AS, RLIMIT_DATA})  // what is reserved would count
    if (rlimit allowed{}; getrlimit(limit, &allowed) != 0 || allowed.rlim_cur != RLIM_INFINITY) return;
  mallopt(M_TOP_PAD, kReserved);
  void* const first = std::malloc(kLargePage);  // grows the heap, by what is reserved above it
  const std::uintptr_t begin =
                           (reinterpret_cast<std::uintptr_t>(first) + kLargePage) / kLargePage * kLargePage,
                       end = reinterpret_cast<std::uintptr_t>(sbrk(0));
  if (first && begin < end) madvise(reinterpret_cast<void*>(begin), end - begin, MADV_HUGEPAGE);
  std::free(first);
  mallopt(M_TOP_PAD, 128 << 10);
#endif
#endif
}

}  // namespace stopwalk::app
