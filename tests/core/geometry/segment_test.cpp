#include "core/geometry/segment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/geometry/box_tree.h"

namespace stopwalk::geometry {
namespace {

class RandomSegments {
 public:
  explicit RandomSegments(unsigned seed) : random_(seed) {}
  Point point() { return {coordinate_(random_), coordinate_(random_)}; }
  Segment segment() { return {point(), point()}; }
  double upTo(double most) { return std::uniform_real_distribution<double>(0, most)(random_); }

 private:
  std::mt19937 random_;
  std::uniform_real_distribution<double> coordinate_{-100, 100};
};

TEST(Segment, NearestPointIsNearerThanAnyOther) {
  RandomSegments random(1);
  for (int i = 0; i < 500; ++i) {
    const Segment s = random.segment();
    const Point p = random.point();
    for (int k = 0; k <= 20; ++k) EXPECT_LE(distance(s, p), distance(at(s, k / 20.0), p) + 1e-9);
  }
}

TEST(Segment, DistanceOfTwoIsThatOfTheirNearestPoints) {
  RandomSegments random(2);
  for (int i = 0; i < 200; ++i) {
    const Segment s = random.segment(), t = random.segment();
    double least = 1e300;
    for (int k = 0; k <= 400; ++k) least = std::min(least, distance(t, at(s, k / 400.0)));
    EXPECT_LE(distance(s, t), least + 1e-9);
    EXPECT_NEAR(distance(s, t), least, distance(s.a, s.b) / 800 + 1e-9);
  }
}

TEST(Segment, StretchWithinAgreesWithDistances) {
  RandomSegments random(3);
  for (int i = 0; i < 500; ++i) {
    const Segment s = random.segment(), t = i % 7 ? random.segment() : Segment{random.point(), {}};
    const double radius = random.upTo(30);
    const auto near = stretchWithin(s, t, radius);
    for (int k = 0; k <= 100; ++k) {
      const double away = distance(t, at(s, k / 100.0));
      const bool in = near && near->from <= k / 100.0 && k / 100.0 <= near->to;
      if (std::abs(away - radius) > 1e-9) {
        EXPECT_EQ(in, away < radius) << i << " " << k;
      }
    }
  }
}

TEST(Segment, TouchingIsNotCrossing) {
  const Segment s{{0, 0}, {100, 0}};
  EXPECT_TRUE(crossProperly(s, {{50, -50}, {50, 50}}));
  EXPECT_FALSE(crossProperly(s, {{50, 0}, {50, 50}}));
  EXPECT_FALSE(crossProperly(s, {{50, -0.0005}, {50, 50}}));
  EXPECT_FALSE(crossProperly(s, {{100, -50}, {100, 50}}));
  EXPECT_FALSE(crossProperly(s, {{20, 0}, {80, 0}}));
}

TEST(Segment, EndsAreMetExactly) {
  const Segment s{{0.1, 0.2}, {1e6 + 0.3, -7.7}};
  EXPECT_EQ(at(s, 0), s.a);
  EXPECT_EQ(at(s, 1), s.b);
}

TEST(BoxTree, FindsWhatASearchThroughAllFinds) {
  RandomSegments random(4);
  std::vector<Segment> segments;
  std::vector<Box> boxes;
  for (int i = 0; i < 700; ++i) {
    const Point p = random.point();
    segments.push_back(i % 50 == 0 ? random.segment() : Segment{p, p + 0.05 * random.point()});
    boxes.push_back(i % 97 == 0 ? Box{} : boxOf(segments.back()));
  }
  const BoxTree tree(boxes);
  for (int i = 0; i < 200; ++i) {
    const Box area = boxOf(random.segment());
    std::vector<std::size_t> found, all;
    EXPECT_FALSE(tree.any(area, [&](std::size_t k) { return found.push_back(k), false; }));
    for (std::size_t k = 0; k < boxes.size(); ++k)
      if (overlap(boxes[k], area)) all.push_back(k);
    std::sort(found.begin(), found.end());
    EXPECT_EQ(found, all);

    const Segment line = random.segment();
    std::vector<bool> on(boxes.size(), false);
    tree.any(line, 1.0, [&](std::size_t k) { return on[k] = true, false; });
    for (std::size_t k = 0; k < boxes.size(); ++k)
      if (!boxes[k].empty() && distance(segments[k], line) <= 1.0) {
        EXPECT_TRUE(on[k]);
      }

    const Point p = random.point();
    double least = 1e300;
    for (std::size_t k = 0; k < boxes.size(); ++k)
      if (!boxes[k].empty()) least = std::min(least, distance(segments[k], p));
    EXPECT_EQ(tree.least(p, [&](std::size_t k) { return distance(segments[k], p); }), least);
  }
}

TEST(BoxTree, OfNothingFindsNothing) {
  const std::vector<Box> empty(3);
  EXPECT_FALSE(BoxTree(empty).any(Box{{-1, -1}, {1, 1}}, [](std::size_t) { return true; }));
  EXPECT_EQ(BoxTree().least({0, 0}, [](std::size_t) { return 0.0; }), std::nullopt);
}

}  // namespace
}  // namespace stopwalk::geometry
