#include "app/plan/labels.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>

#include "app/plan/text.h"
#include "tests/support/random.h"

namespace stopwalk::plan {
namespace {

constexpr QRectF kVisible(0, 0, 900, 700);

std::vector<Label> someLabels(support::Random& random, int count) {
  std::vector<Label> labels;
  for (int i = 0; i < count; ++i) {
    Label label;
    label.text = QStringLiteral("Machine %1").arg(i) + (random.chance(0.3) ? "\nsecond line" : "");
    label.importance = random.below(4);
    for (int k = random.below(4); k >= 0; --k)
      label.middles.push_back({random.between(-50, 950), random.between(-50, 750)});
    labels.push_back(label);
  }
  return labels;
}

QFontMetricsF metrics() {
  return QFontMetricsF(labelFont());
}

TEST(Labels, NeverOverlapAndStayInView) {
  std::size_t placed = 0;
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    support::Random random(seed);
    std::vector<Covered> covered;
    for (int i = 0; i < 40; ++i)
      covered.push_back({QRectF(random.between(0, 900), random.between(0, 700), 30, 30), ItemLayer::Device});
    const auto labels = placeLabels(someLabels(random, 300), metrics(), kVisible, covered);
    placed += labels.size();
    for (std::size_t i = 0; i < labels.size(); ++i) {
      EXPECT_TRUE(kVisible.contains(labels[i].box));
      for (std::size_t k = 0; k < i; ++k) EXPECT_FALSE(labels[i].box.intersects(labels[k].box)) << seed;
      for (const Covered& c : covered) EXPECT_FALSE(labels[i].box.intersects(c.box)) << seed;
    }
  }
  EXPECT_GT(placed, 1000u);
}

TEST(Labels, SameEveryTime) {
  support::Random once(7), again(7);
  const auto a = placeLabels(someLabels(once, 300), metrics(), kVisible);
  const auto b = placeLabels(someLabels(again, 300), metrics(), kVisible);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(a[i].box, b[i].box);
}

TEST(Labels, MoreImportantGoesFirst) {
  const Label minor{"minor", {{100, 100}}, 1}, major{"major", {{100, 100}}, 2};
  const auto placed = placeLabels({minor, major}, metrics(), kVisible);
  ASSERT_EQ(placed.size(), 1u);
  EXPECT_EQ(placed[0].text, "major");
}

TEST(Labels, TakesTheFirstPlaceThatIsFree) {
  const Label label{"name", {{100, 100}, {300, 300}}, 1};
  const Covered machine{QRectF(50, 50, 100, 100), ItemLayer::Machine};
  const auto placed = placeLabels({label}, metrics(), kVisible, {machine});
  ASSERT_EQ(placed.size(), 1u);
  EXPECT_EQ(placed[0].box.center(), QPointF(300, 300));
}

TEST(Labels, CoversAWallOnlyWhereThereIsNoOtherPlace) {
  const Covered wall{QRectF(50, 50, 100, 100), ItemLayer::Wall};
  EXPECT_EQ(placeLabels({{"name", {{100, 100}, {300, 300}}, 1}}, metrics(), kVisible, {wall})[0].box.center(),
            QPointF(300, 300));
  EXPECT_EQ(placeLabels({{"name", {{100, 100}}, 1}}, metrics(), kVisible, {wall}).size(), 1u);
}

TEST(Labels, NeverUnderNinePoints) {
  EXPECT_GE(labelFont().pointSizeF(), 9);
}

TEST(Text, NumberStaysWithItsName) {
  EXPECT_EQ(wrapped("Engine lathe 1", 1, metrics()), "Engine\nlathe 1");
}

TEST(Text, LinesAreNoWiderThanAsked) {
  const QFontMetricsF m = metrics();
  const QString text = wrapped("Vertical metal band saw with table", 120, m);
  EXPECT_LE(textSize(text, m).width(), 120);
  EXPECT_NEAR(textSize(text, m).height(), m.height() * static_cast<double>(1 + text.count('\n')), 1e-9);
}

}  // namespace
}  // namespace stopwalk::plan
