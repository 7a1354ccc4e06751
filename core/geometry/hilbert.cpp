#include "core/geometry/hilbert.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace stopwalk::geometry {

namespace {

// Place along the Hilbert curve of a 2^16 by 2^16 grid.
std::uint32_t alongCurve(std::uint32_t x, std::uint32_t y) {
  std::uint32_t d = 0;
  for (std::uint32_t s = 1u << 15; s > 0; s >>= 1) {
    const std::uint32_t rx = (x & s) != 0, ry = (y & s) != 0;
    d += s * s * ((3 * rx) ^ ry);
    // In the lower half the curve is turned: in bits, for a branch would be guessed wrong half the time.
    const std::uint32_t mirrored = 0xffff * (rx & ~ry), swapped = (x ^ y) & (ry - 1);
    x ^= swapped ^ mirrored;
    y ^= swapped ^ mirrored;
  }
  return d;
}

}  // namespace

std::vector<std::size_t> hilbertOrder(const std::vector<Point>& points) {
  if (points.empty()) return {};
  Point low = points.front(), high = low;
  for (Point p : points) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  const double size = std::max({high.x - low.x, high.y - low.y, 1e-9});
  std::vector<std::pair<std::uint32_t, std::size_t>> keyed(points.size());
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto cell = [&](double v, double from) {
      return static_cast<std::uint32_t>((v - from) / size * 65535.0);
    };
    const bool again = i > 0 && points[i] == points[i - 1];  // as where one line goes on from another
    keyed[i] = {again ? keyed[i - 1].first : alongCurve(cell(points[i].x, low.x), cell(points[i].y, low.y)),
                i};
  }
  std::sort(keyed.begin(), keyed.end());
  std::vector<std::size_t> order(points.size());
  for (std::size_t i = 0; i < keyed.size(); ++i) order[i] = keyed[i].second;
  return order;
}

}  // namespace stopwalk::geometry
