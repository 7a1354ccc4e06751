#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "core/geometry/box.h"
#include "core/geometry/segment.h"

namespace stopwalk::geometry {

// Finds which of many boxes lie near a place, whatever their sizes and however crowded. Built once, in n log
// n; a question costs what it finds and a logarithm. Boxes that are empty are never found.
class BoxTree {
 public:
  BoxTree() = default;
  explicit BoxTree(std::span<const Box> boxes);

  // Puts one that is not empty elsewhere. It stays in its place in the tree: meant for few, or not far.
  void move(std::size_t index, const Box& box);

  // Calls `found(index)` for each box that meets `area`, in no particular order, until it returns true.
  // Whether it did.
  template <class Found>
  bool any(const Box& area, Found&& found) const {
    return search([&](const Box& b) { return overlap(b, area); }, found);
  }
  // The same for the boxes within `margin` of the line: far fewer than in its box, where the line is long and
  // slanting.
  template <class Found>
  bool any(Segment line, double margin, Found&& found) const {
    const Box area = boxOf(line).grown(margin);
    const Point d = line.b - line.a;
    const double size = length(d);
    const Point n = size > 0 ? (1 / size) * leftOf(d) : Point{};
    return search(
        [&](const Box& b) {
          if (!overlap(b, area)) return false;
          const Point middle = 0.5 * (b.low + b.high), half = 0.5 * (b.high - b.low);
          const double reach = std::abs(n.x) * half.x + std::abs(n.y) * half.y + margin;
          return std::abs(dot(n, middle - line.a)) <= reach;
        },
        found);
  }

  // The least `distanceTo(index)` of all, which must not be less than the distance from `p` to the box of
  // that index.
  template <class Distance>
  std::optional<double> least(Point p, Distance&& distanceTo) const {
    if (nodes_.empty()) return std::nullopt;
    double best = std::numeric_limits<double>::infinity();
    search([&](const Box& b) { return distance(b, p) < best; },
           [&](std::size_t i) { return best = std::min(best, distanceTo(i)), false; });
    return best;
  }

 private:
  struct Node {
    Box box;
    std::uint32_t begin = 0, end = 0;  // of order_, in a leaf
    std::uint32_t right = 0;           // the left child follows its parent; 0: a leaf
  };
  struct Item {
    Box box;
    std::uint32_t index = 0;
  };

  std::uint32_t build(std::uint32_t begin, std::uint32_t end);
  Box fit(std::uint32_t at, std::uint32_t item);

  template <class Meets, class Found>
  bool search(Meets&& meets, Found&& found) const {
    std::uint32_t waiting[64];
    int count = 0;
    if (!nodes_.empty()) waiting[count++] = 0;
    while (count > 0) {
      const std::uint32_t at = waiting[--count];
      const Node& node = nodes_[at];
      if (!meets(node.box)) continue;
      if (node.right != 0) {
        waiting[count++] = node.right;
        waiting[count++] = at + 1;
        continue;
      }
      for (std::uint32_t i = node.begin; i < node.end; ++i)
        if (meets(items_[i].box) && found(static_cast<std::size_t>(items_[i].index))) return true;
    }
    return false;
  }

  std::vector<Node> nodes_;
  std::vector<Item> items_;
};

}  // namespace stopwalk::geometry
