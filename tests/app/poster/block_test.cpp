#include "app/poster/block.h"

#include <gtest/gtest.h>

namespace stopwalk::poster {
namespace {

std::vector<Block> blocks(const std::vector<std::pair<double, bool>>& heights) {
  std::vector<Block> all;
  for (const auto& [height, opens] : heights) all.push_back({height, {}, opens});
  return all;
}

using Counts = std::vector<std::size_t>;

TEST(Flow, FillsColumnsInOrder) {
  EXPECT_EQ(flow(blocks({{10, false}, {10, false}, {10, false}}), {25, 25}), (Counts{2, 1}));
}

TEST(Flow, KeepsAHeadingWithWhatFollows) {
  EXPECT_EQ(flow(blocks({{10, false}, {5, true}, {10, false}}), {20, 20}), (Counts{1, 2}));
}

TEST(Flow, KeepsWhatBelongsTogether) {
  EXPECT_EQ(flow(blocks({{10, false}, {5, true}, {5, true}, {8, false}}), {25, 25}), (Counts{1, 3}));
}

TEST(Flow, DividesWhatIsLongerThanAColumn) {
  EXPECT_EQ(flow(blocks({{5, true}, {8, true}, {8, true}, {8, false}}), {22, 22}), (Counts{3, 1}));
}

TEST(Flow, LeavesWhatDoesNotFit) {
  EXPECT_EQ(flow(blocks({{10, false}, {30, false}}), {25}), (Counts{1}));
  EXPECT_EQ(flow(blocks({{30, false}}), {25, 25}), (Counts{0, 0}));
}

}  // namespace
}  // namespace stopwalk::poster
