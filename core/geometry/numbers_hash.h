#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <span>
#include <vector>

#include "core/geometry/segment.h"

namespace stopwalk::geometry {

// For tables by place: the same to the last bit is the same (0 and -0 are told apart).
struct NumbersHash {
  std::size_t operator()(std::span<const double> numbers) const {
    std::size_t h = numbers.size();
    for (const double v : numbers) {
      std::uint64_t bits = 0;
      std::memcpy(&bits, &v, sizeof bits);
      h = (h ^ bits) * 0x9e3779b97f4a7c15ULL;
      h ^= h >> 29;
    }
    return h;
  }
  std::size_t operator()(const std::vector<double>& numbers) const {
    return (*this)(std::span<const double>(numbers));
  }
  std::size_t operator()(Point p) const {
    const double numbers[] = {p.x, p.y};
    return (*this)(std::span<const double>(numbers));
  }
  std::size_t operator()(const Segment& s) const {
    const double numbers[] = {s.a.x, s.a.y, s.b.x, s.b.y};
    return (*this)(std::span<const double>(numbers));
  }
};

}  // namespace stopwalk::geometry
