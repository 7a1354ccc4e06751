#include "app/poster/call_outs.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <algorithm>
#include <cmath>
#include <random>

// The promises of placeCallOuts over thousands of random rooms, looked at by means of Qt's own geometry and
// not by the rules that the placing itself uses.
namespace stopwalk::poster {
namespace {

struct Case {
  std::vector<CallOut> call_outs;
  CallOutArea area;
};

// A room of random sides with a ring round it; some things in clusters, as on a row of machines.
Case randomCase(unsigned seed, std::size_t most) {
  std::mt19937 random(seed);
  const auto part = [&] { return static_cast<double>(random()) / static_cast<double>(random.max()); };
  Case c;
  const double width = 80 + 180 * part(), height = 80 + 120 * part(), ring_x = 24, ring_y = 18;
  c.area.room = QRectF(ring_x, ring_y, width, height);
  c.area.all = QRectF(0, 0, width + 2 * ring_x, height + 2 * ring_y);
  const std::size_t count = 1 + random() % most;
  QPointF near = c.area.room.center();
  for (std::size_t i = 0; i < count; ++i) {
    if (i == 0 || random() % 3 > 0)
      near = {ring_x + width * part(), ring_y + height * part()};
    else
      near += QPointF(6 * part() - 3, 6 * part() - 3);
    near = {std::clamp(near.x(), c.area.room.left(), c.area.room.right()),
            std::clamp(near.y(), c.area.room.top(), c.area.room.bottom())};
    const bool large = random() % 8 == 0;
    c.call_outs.push_back({near, large ? QSizeF(16, 10) : QSizeF(13.2, 7.14)});
  }
  for (int k = 0; k < 2; ++k)
    c.area.kept.push_back(QRectF(ring_x + part() * (width - 30), ring_y - 8, 30, 5));
  return c;
}

bool cross(const QLineF& a, const QLineF& b) {
  return a.intersects(b, nullptr) == QLineF::BoundedIntersection;
}

bool crossesBox(const QLineF& line, const QRectF& box) {
  const QLineF sides[] = {{box.topLeft(), box.topRight()},
                          {box.topRight(), box.bottomRight()},
                          {box.bottomRight(), box.bottomLeft()},
                          {box.bottomLeft(), box.topLeft()}};
  return std::ranges::any_of(sides, [&](const QLineF& s) { return cross(line, s); });
}

void expectPromises(const Case& c, const std::vector<PlacedCallOut>& placed) {
  ASSERT_EQ(placed.size(), c.call_outs.size());
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const PlacedCallOut& p = placed[i];
    EXPECT_EQ(p.box.size(), c.call_outs[i].size);
    EXPECT_TRUE(c.area.all.contains(p.box));
    if (p.led()) {
      EXPECT_EQ(p.leader.p1(), c.call_outs[i].anchor);
      EXPECT_TRUE(p.box.adjusted(-0.01, -0.01, 0.01, 0.01).contains(p.leader.p2()));
    } else {
      EXPECT_TRUE(p.box.contains(c.call_outs[i].anchor));
    }
    for (const QRectF& kept : c.area.kept) EXPECT_FALSE(p.box.intersects(kept));
    for (std::size_t k = 0; k < placed.size(); ++k) {
      if (k == i) continue;
      EXPECT_FALSE(p.box.intersects(placed[k].box)) << i << " " << k;
      EXPECT_FALSE(p.box.contains(c.call_outs[k].anchor)) << i << " covers " << k;
      if (!p.led()) continue;
      EXPECT_FALSE(crossesBox(p.leader, placed[k].box)) << i << " " << k;
      if (c.call_outs[k].anchor == c.call_outs[i].anchor) continue;  // they part there
      EXPECT_FALSE(placed[k].led() && cross(p.leader, placed[k].leader)) << i << " " << k;
    }
  }
}

TEST(CallOuts, KeepTheirPromisesInThousandsOfRandomRooms) {
  constexpr unsigned kRooms = 2000;
  unsigned placed = 0;
  for (unsigned seed = 1; seed <= kRooms; ++seed) {
    const Case c = randomCase(seed, 30);
    const auto found = placeCallOuts(c.call_outs, c.area);
    if (!found) continue;
    ++placed;
    SCOPED_TRACE("seed " + std::to_string(seed));
    expectPromises(c, *found);
    if (HasFailure()) return;
  }
  RecordProperty("placed", static_cast<int>(placed));
  // The rest have more things than walls; a poster then tries another arrangement. Measured: 98 in a hundred.
  EXPECT_GE(placed, kRooms * 97 / 100);
}

TEST(CallOuts, SixtyThingsFindPlaces) {
  unsigned placed = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    Case c = randomCase(seed, 1);
    std::mt19937 random(seed);
    c.area.room = QRectF(24, 18, 260, 200);
    c.area.all = QRectF(0, 0, 308, 236);
    c.area.kept.clear();
    c.call_outs.clear();
    for (int i = 0; i < 60; ++i)
      c.call_outs.push_back(
          {QPointF(24 + static_cast<double>(random() % 261), 18 + static_cast<double>(random() % 201)),
           QSizeF(13.2, 7.14)});
    const auto found = placeCallOuts(c.call_outs, c.area);
    if (!found) continue;
    ++placed;
    expectPromises(c, *found);
  }
  EXPECT_GE(placed, 54u);
}

TEST(CallOuts, OneAloneStandsOnItsPlace) {
  const Case c{{{QPointF(50, 50), QSizeF(10, 8)}}, {QRectF(0, 0, 100, 100), QRectF(20, 20, 60, 60), {}, {}}};
  const auto placed = placeCallOuts(c.call_outs, c.area);
  ASSERT_TRUE(placed);
  EXPECT_FALSE(placed->front().led());
  EXPECT_EQ(placed->front().box.center(), QPointF(50, 50));
}

TEST(CallOuts, TwoInOnePlaceAreLedApart) {
  const Case c{{{QPointF(50, 50), QSizeF(10, 8)}, {QPointF(50, 50), QSizeF(10, 8)}},
               {QRectF(0, 0, 100, 100), QRectF(20, 20, 60, 60), {}, {}}};
  const auto placed = placeCallOuts(c.call_outs, c.area);
  ASSERT_TRUE(placed);
  EXPECT_FALSE((*placed)[0].box.intersects((*placed)[1].box));
  EXPECT_TRUE((*placed)[0].led() && (*placed)[1].led());
}

TEST(CallOuts, TooManyAreNotSqueezedIn) {
  Case c{{}, {QRectF(0, 0, 60, 60), QRectF(20, 20, 20, 20), {}, {}}};
  for (int i = 0; i < 60; ++i) c.call_outs.push_back({QPointF(20 + i % 20, 20 + i / 20), QSizeF(13, 7)});
  EXPECT_FALSE(placeCallOuts(c.call_outs, c.area));
}

TEST(CallOuts, AreTheSameEachTime) {
  const Case c = randomCase(7, 25);
  const auto first = placeCallOuts(c.call_outs, c.area), second = placeCallOuts(c.call_outs, c.area);
  ASSERT_TRUE(first && second);
  for (std::size_t i = 0; i < first->size(); ++i) EXPECT_EQ((*first)[i].box, (*second)[i].box);
}

}  // namespace
}  // namespace stopwalk::poster
