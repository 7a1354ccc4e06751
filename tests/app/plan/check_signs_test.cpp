#include "app/plan/check_signs.h"

#include <gtest/gtest.h>

#include <QImage>
#include <algorithm>
#include <map>

#include "tests/support/random.h"

namespace stopwalk::plan {
namespace {

using Devices = std::vector<std::pair<QRectF, CheckMark>>;

QRectF symbolAt(QPointF at, double side = 24) {
  return {at - QPointF(side / 2, side / 2), QSizeF(side, side)};
}

TEST(CheckSigns, StandAtTheirDevicesWhereThereIsRoom) {
  const Devices devices = {{symbolAt({100, 100}), {CheckSign::Passed, CheckAge::Fresh}},
                           {symbolAt({200, 100}), {CheckSign::Failed, CheckAge::Overdue}},
                           {symbolAt({300, 100}), {}}};
  const auto signs = layCheckSigns(devices);
  ASSERT_EQ(signs.size(), 2u) << "none of what is not checked yet";
  EXPECT_EQ(signs[0].device, 1u);
  EXPECT_EQ(signs[0].box, checkMarkBox(devices[1].first));
  EXPECT_EQ(signs[1].box, checkMarkBox(devices[0].first));
  EXPECT_EQ(signs[1].rows[0].mark, devices[0].second);
}

TEST(CheckSigns, OfNeighboursStandApartEachNearestToItsOwn) {
  for (const QPointF beside :
       {QPointF(14, 0), QPointF(-14, 0), QPointF(0, 14), QPointF(0, -14), QPointF(16, -16)}) {
    const Devices devices = {{symbolAt({100, 100}, 12), {CheckSign::Failed}},
                             {symbolAt(QPointF(100, 100) + beside, 12), {CheckSign::Passed}}};
    const auto signs = layCheckSigns(devices);
    ASSERT_EQ(signs.size(), 2u) << beside.x() << " " << beside.y();
    for (const LaidSign& sign : signs) {
      const QPointF at = sign.box.center();
      EXPECT_LT(QLineF(at, devices[sign.device].first.center()).length(),
                QLineF(at, devices[1 - sign.device].first.center()).length())
          << beside.x() << " " << beside.y();
    }
  }
}

TEST(CheckSigns, AreOneWithItsNumbersWhereDevicesStandTogetherAtTheOneThatFailed) {
  Devices devices;
  for (int i = 0; i < 9; ++i)
    devices.push_back({symbolAt({200.0 + i, 150.0}, 8),
                       {i == 4  ? CheckSign::Failed
                        : i % 2 ? CheckSign::Never
                                : CheckSign::Passed,
                        i == 2 ? CheckAge::Overdue : CheckAge::Fresh}});
  const auto signs = layCheckSigns(devices);
  const auto joined = std::ranges::find_if(signs, [](const LaidSign& s) { return s.count() > 1; });
  ASSERT_NE(joined, signs.end());
  EXPECT_EQ(joined->rows[0].mark.sign, CheckSign::Failed);
  EXPECT_EQ(joined->device, 4u);
  EXPECT_EQ(joined->rows.back().mark.age, CheckAge::Overdue) << "the one whose time has gone the furthest";
}

// None lies over another, no result is left out, and whatever has a failed one among it says so first.
TEST(CheckSigns, AreApartAndCountEachResultHoweverCloseDevicesStand) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    support::Random random(seed);
    const double wide = random.between(10, 900), side = random.between(6, 40);
    Devices devices;
    std::map<CheckSign, int> of;
    for (int i = random.below(120); i >= 0; --i) {
      const CheckSign sign = kSignsGravestFirst[static_cast<std::size_t>(random.below(6))];
      ++of[sign];
      devices.push_back({symbolAt({random.between(0, wide), random.between(0, wide)}, side),
                         {sign, static_cast<CheckAge>(1 + random.below(4))}});
    }
    const auto signs = layCheckSigns(devices);
    std::map<CheckSign, int> counted;
    for (std::size_t i = 0; i < signs.size(); ++i) {
      for (const LaidSign::Row& row : signs[i].rows) counted[row.mark.sign] += row.count;
      EXPECT_TRUE(std::ranges::is_sorted(signs[i].rows, {}, [](const LaidSign::Row& row) {
        return std::ranges::find(kSignsGravestFirst, row.mark.sign);
      })) << seed;
      EXPECT_EQ(signs[i].symbol, devices[signs[i].device].first) << seed;
      EXPECT_EQ(signs[i].rows[0].mark.sign, devices[signs[i].device].second.sign)
          << seed << ": it stands at the gravest";
      for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(signs[i].box.intersects(signs[j].box)) << seed;
    }
    EXPECT_EQ(counted, of) << seed;
  }
}

// In grey: the number and each result is in ink of its own.
TEST(CheckSigns, ShowHowManyOfEach) {
  const auto painted = [](int passed, int failed) {
    Devices devices;
    for (int i = 0; i < passed; ++i) devices.push_back({symbolAt({60, 60}, 8), {CheckSign::Passed}});
    for (int i = 0; i < failed; ++i) devices.push_back({symbolAt({60, 60}, 8), {CheckSign::Failed}});
    QImage image(160, 120, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintCheckSigns(painter, Theme::light(), layCheckSigns(devices));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
  };
  EXPECT_NE(painted(1, 1), painted(2, 0));
  EXPECT_NE(painted(1, 1), painted(1, 2));
  EXPECT_NE(painted(2, 1), painted(1, 1));
}

}  // namespace
}  // namespace stopwalk::plan
