#include "app/poster/block.h"

#include <gtest/gtest.h>

namespace stopwalk::poster {
namespace {

enum Kind { Plain, Opens, Heading };

std::vector<Block> blocks(const std::vector<std::pair<double, Kind>>& heights) {
  std::vector<Block> all;
  for (const auto& [height, kind] : heights) all.push_back({height, {}, kind != Plain, kind == Heading});
  return all;
}

using Counts = std::vector<std::size_t>;

TEST(Flow, FillsColumnsInOrder) {
  EXPECT_EQ(flow(blocks({{10, Plain}, {10, Plain}, {10, Plain}}), {25, 25}), (Counts{2, 1}));
}

TEST(Flow, KeepsAHeadingWithWhatFollows) {
  EXPECT_EQ(flow(blocks({{10, Plain}, {5, Heading}, {10, Plain}}), {20, 20}), (Counts{1, 2}));
}

TEST(Flow, KeepsWhatBelongsTogether) {
  EXPECT_EQ(flow(blocks({{10, Plain}, {5, Opens}, {5, Opens}, {8, Plain}}), {25, 25}), (Counts{1, 3}));
}

TEST(Flow, DividesWhatIsLongerThanAColumn) {
  EXPECT_EQ(flow(blocks({{5, Heading}, {8, Opens}, {8, Opens}, {8, Plain}}), {22, 22}), (Counts{3, 1}));
}

TEST(Flow, NeverLeavesAHeadingAlone) {
  EXPECT_EQ(flow(blocks({{5, Heading}, {5, Heading}, {8, Opens}, {8, Opens}, {8, Plain}}), {12, 20, 20}),
            (Counts{0, 3, 2}));
}

TEST(Flow, LeavesWhatDoesNotFit) {
  EXPECT_EQ(flow(blocks({{10, Plain}, {30, Plain}}), {25}), (Counts{1}));
  EXPECT_EQ(flow(blocks({{30, Plain}}), {25, 25}), (Counts{0, 0}));
}

}  // namespace
}  // namespace stopwalk::poster
