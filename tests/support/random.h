#pragma once

#include <cstdint>

namespace stopwalk::support {

// The same numbers from the same seed on every machine (splitmix64); the standard library's distributions are
// not.
class Random {
 public:
  explicit Random(std::uint64_t seed) : state_(seed) { state_ = bits() ^ (seed << 32); }

  std::uint64_t bits() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
  }
  // In [from, to).
  double between(double from, double to) {
    return from + (to - from) * (static_cast<double>(bits() >> 11) * 0x1p-53);
  }
  // 0 to count - 1.
  int below(int count) { return static_cast<int>(bits() % static_cast<std::uint64_t>(count)); }
  bool chance(double probability) { return between(0, 1) < probability; }

 private:
  std::uint64_t state_;
};

}  // namespace stopwalk::support
