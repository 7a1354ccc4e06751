#include "core/geometry/box_tree.h"

namespace stopwalk::geometry {

namespace {

constexpr std::uint32_t kLeaf = 6;

}  // namespace

BoxTree::BoxTree(std::span<const Box> boxes) {
  items_.reserve(boxes.size());
  for (std::size_t i = 0; i < boxes.size(); ++i)
    if (!boxes[i].empty()) items_.push_back({boxes[i], static_cast<std::uint32_t>(i)});
  if (items_.empty()) return;
  nodes_.reserve(2 * items_.size() / kLeaf * 2 + 2);
  build(0, static_cast<std::uint32_t>(items_.size()));
}

// Halves by number along the longer side, so the depth is a logarithm even when all boxes are equal.
std::uint32_t BoxTree::build(std::uint32_t begin, std::uint32_t end) {
  const auto at = static_cast<std::uint32_t>(nodes_.size());
  nodes_.emplace_back();
  Box all, middles;
  for (std::uint32_t i = begin; i < end; ++i) {
    all.add(items_[i].box);
    middles.add(items_[i].box.low + items_[i].box.high);
  }
  nodes_[at].box = all;
  nodes_[at].begin = begin;
  nodes_[at].end = end;
  if (end - begin <= kLeaf) return at;
  const bool by_x = middles.high.x - middles.low.x >= middles.high.y - middles.low.y;
  const std::uint32_t half = begin + (end - begin) / 2;
  std::nth_element(items_.begin() + begin, items_.begin() + half, items_.begin() + end,
                   [by_x](const Item& a, const Item& b) {
                     const double va = by_x ? a.box.low.x + a.box.high.x : a.box.low.y + a.box.high.y;
                     const double vb = by_x ? b.box.low.x + b.box.high.x : b.box.low.y + b.box.high.y;
                     return va != vb ? va < vb : a.index < b.index;
                   });
  build(begin, half);
  const std::uint32_t right = build(half, end);
  nodes_[at].right = right;
  return at;
}

void BoxTree::move(std::size_t index, const Box& box) {
  const auto item = std::ranges::find(items_, static_cast<std::uint32_t>(index), &Item::index);
  if (item == items_.end()) return;
  item->box = box;
  fit(0, static_cast<std::uint32_t>(item - items_.begin()));
}

// The box of a node again, whose item is another.
Box BoxTree::fit(std::uint32_t at, std::uint32_t item) {
  Node& node = nodes_[at];
  Box all;
  if (node.right == 0) {
    for (std::uint32_t i = node.begin; i < node.end; ++i) all.add(items_[i].box);
  } else {
    for (const std::uint32_t child : {at + 1, node.right}) {
      const bool holds = nodes_[child].begin <= item && item < nodes_[child].end;
      all.add(holds ? fit(child, item) : nodes_[child].box);
    }
  }
  return node.box = all;
}

}  // namespace stopwalk::geometry
