#include "app/plan/turn_marks.h"

#include <gtest/gtest.h>

#include <QImage>
#include <cmath>

#include "tests/support/random.h"

namespace stopwalk::plan {
namespace {

using Changes = std::vector<std::pair<QPointF, Turn>>;

TEST(TurnMarks, StandBesideTheirStationsWhereThereIsRoom) {
  const auto marks =
      turnMarks({{{100, 100}, Turn::Worse}, {{300, 100}, Turn::Better}, {{500, 100}, Turn::Other}});
  ASSERT_EQ(marks.size(), 2u);
  EXPECT_EQ(marks[0].at, QPointF(80, 100));
  EXPECT_EQ(marks[0].worse, 1);
  EXPECT_EQ(marks[0].better, 0);
  EXPECT_EQ(marks[1].better, 1);
}

TEST(TurnMarks, AreOneWithItsNumbersWhereManyStationsStandTogether) {
  Changes changes;
  for (int i = 0; i < 12; ++i)
    changes.push_back({{200.0 + 3 * i, 150.0 - i}, i < 5 ? Turn::Worse : Turn::Better});
  const auto marks = turnMarks(changes);
  ASSERT_EQ(marks.size(), 1u);
  EXPECT_EQ(marks[0].worse, 5);
  EXPECT_EQ(marks[0].better, 7);
}

// None lies over another, and none of the stations is left out.
TEST(TurnMarks, AreApartHoweverManyThereAre) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    support::Random random(seed);
    Changes changes;
    for (int i = random.below(300); i >= 0; --i)
      changes.push_back({{random.between(0, 900), random.between(0, 600)},
                         random.chance(0.5) ? Turn::Worse : Turn::Better});
    std::size_t counted = 0;
    const auto marks = turnMarks(changes);
    for (std::size_t i = 0; i < marks.size(); ++i) {
      counted += static_cast<std::size_t>(marks[i].worse + marks[i].better);
      for (std::size_t j = 0; j < i; ++j) {
        const QPointF apart = marks[i].at - marks[j].at;
        EXPECT_TRUE(std::abs(apart.x()) >= 36 || std::abs(apart.y()) >= 36) << seed;
      }
    }
    EXPECT_EQ(counted, changes.size()) << seed;
  }
}

TEST(TurnMarks, ShowHowMany) {
  const auto painted = [](int worse) {
    QImage image(120, 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintTurns(painter, Theme::light(), {{{30, 20}, worse, 0}}, true);
    painter.end();
    return image;
  };
  EXPECT_NE(painted(1), painted(2));
  EXPECT_NE(painted(2), painted(3));
}

}  // namespace
}  // namespace stopwalk::plan
