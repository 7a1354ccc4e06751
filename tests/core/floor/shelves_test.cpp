#include "core/floor/shelves.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <vector>

#include "tests/support/rough_plan.h"

namespace stopwalk::floor {
namespace {

using support::Numbers;

constexpr double kNothing = std::numeric_limits<double>::infinity();
// What lies on one shelf differs by less.
constexpr double kOneShelf_mm = 25;

// What was put away and not yet taken, kept as a plain list beside the shelves. The things are held by
// pointers that cannot be copied, so that none is there twice.
class Kept {
 public:
  void put(double length) {
    shelves.put(length, std::make_unique<int>(static_cast<int>(lengths_.size())));
    lengths_.push_back(length);
    there_.push_back(true);
    ++count;
  }
  // The length of what is taken; it must have been there.
  double take() {
    const std::unique_ptr<int> thing = shelves.take();
    EXPECT_TRUE(thing && there_[*thing]);
    there_[*thing] = false;
    --count;
    return lengths_[*thing];
  }
  void clear() {
    shelves.clear();
    there_.assign(there_.size(), false);
    count = 0;
  }
  double shortest() const {
    double least = kNothing;
    for (std::size_t i = 0; i < lengths_.size(); ++i)
      if (there_[i]) least = std::min(least, lengths_[i]);
    return least;
  }

  Shelves<std::unique_ptr<int>> shelves;
  int count = 0;

 private:
  std::vector<double> lengths_;
  std::vector<bool> there_;
};

TEST(Shelves, GiveBackAllOnceAndTheLowestShelfFirst) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    Numbers n(seed);
    Kept kept;
    const double longest = seed % 2 ? 100 : 100000;
    const auto look = [&] {
      const double shortest = kept.shortest(), least = kept.shelves.least();
      EXPECT_LE(least, shortest) << seed;
      EXPECT_EQ(std::isinf(least), kept.count == 0) << seed;
      EXPECT_TRUE(kept.count == 0 || shortest - least < kOneShelf_mm) << seed;
    };
    const auto take = [&] {
      const double shortest = kept.shortest(), floor = kept.shelves.least();
      const double length = kept.take();
      EXPECT_GE(length, floor) << seed;
      EXPECT_LT(length, floor + kOneShelf_mm) << seed;
      EXPECT_LT(length - shortest, kOneShelf_mm) << seed;
      look();
    };
    look();
    for (int step = 0; step < 300; ++step) {
      if (n.below(60) == 0) kept.clear();
      if (kept.count > 0 && n.below(5) < 2) {
        take();
      } else {
        kept.put(n.below(4) ? n.in(0, longest) : kOneShelf_mm * n.below(8));
        look();
      }
    }
    while (kept.count > 0) take();
  }
}

TEST(Shelves, AreEmptyOnceCleared) {
  Shelves<int> shelves;
  EXPECT_EQ(shelves.least(), kNothing);
  shelves.put(10, 1);
  shelves.put(1000, 2);
  shelves.clear();
  EXPECT_EQ(shelves.least(), kNothing);
  shelves.put(500, 3);
  EXPECT_EQ(shelves.least(), 500);
  EXPECT_EQ(shelves.take(), 3);
  EXPECT_EQ(shelves.least(), kNothing);
}

// Where one shelf ends, the next begins.
TEST(Shelves, TakeWhatLiesAtTheirEdgesInOrder) {
  Shelves<double> shelves;
  const double edge = 4 * kOneShelf_mm;
  for (const double length : {edge, std::nextafter(edge, 0.0), 0.0}) shelves.put(length, length);
  EXPECT_EQ(shelves.take(), 0);
  EXPECT_EQ(shelves.take(), std::nextafter(edge, 0.0));
  EXPECT_EQ(shelves.least(), edge);
  EXPECT_EQ(shelves.take(), edge);
}

}  // namespace
}  // namespace stopwalk::floor
