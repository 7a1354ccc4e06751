#include "app/plan/reach_layer.h"

#include <gtest/gtest.h>

#include "app/plan/catalogue.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::plan {
namespace {

using What = audit::ReachTarget::What;

ReachLayer layerOf(const layout::Layout& layout, const audit::ReachTarget& target) {
  return {std::make_shared<const audit::Reach>(
              audit::reachOf(layout, bundledCatalogue().kinds, floor::Hours::Open, target, 2000)),
          layout};
}

TEST(ReachLayer, SaysWhatItShowsInTheUnitOfTheLayout) {
  layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  EXPECT_EQ(layerOf(layout, {What::Phone, ""}).title(), "Walk to the phone, metres");
  layout.machines[0].name = "Wide planer";
  layout.unit = layout::LengthUnit::Foot;
  EXPECT_EQ(layerOf(layout, {What::MachineStop, layout.machines[0].id}).title(),
            "Walk to the stop of Wide planer, feet");
}

TEST(ReachLayer, TheScaleEndsBeyondTheLongestWalk) {
  const ReachLayer layer = layerOf(support::shopLayout(support::kShopSizes[0]), {What::Phone, ""});
  EXPECT_GE(layer.top_mm(), *layer.reach()->map.longest_mm());
  EXPECT_LT(layer.top_mm(), *layer.reach()->map.longest_mm() + 10000);
}

// While something is dragged.
TEST(ReachLayer, TheScaleIsHeldWhereOneIsGiven) {
  const layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  const auto reach = layerOf(layout, {What::Phone, ""}).reach();
  for (const double top_mm : {5000.0, 90000.0}) EXPECT_EQ(ReachLayer(reach, layout, top_mm).top_mm(), top_mm);
}

// The floor at a sample has the colour of its length, whatever stands beside it.
TEST(ReachLayer, ColoursTheFloorByTheWalk) {
  const layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  const ReachLayer layer = layerOf(layout, {What::Phone, ""});
  const floor::ReachMap& map = layer.reach()->map;
  for (const Theme& theme : {Theme::light(), Theme::darkened()}) {
    ViewTransform view;
    geometry::Box box;
    for (const auto& room : layout.rooms) box.add(geometry::boxOf(room.outline));
    view.fit(box, QSizeF(1600, 900), 10);
    QImage image(1600, 900, QImage::Format_ARGB32_Premultiplied);
    image.fill(theme.floor);
    QPainter painter(&image);
    layer.paint(painter, {view, theme, image.size()}, true);
    painter.end();
    int seen = 0, like = 0;
    for (int row = 1; row + 1 < map.rows(); ++row)
      for (int column = 1; column + 1 < map.columns(); ++column) {
        const auto length = map.length_mm(column, row);
        if (!length) continue;
        const QColor is = image.pixelColor(view.toPixels(map.at(column, row)).toPoint());
        const QColor wanted = theme.reachAt(*length / layer.top_mm());
        ++seen;
        like += std::abs(is.red() - wanted.red()) < 12 && std::abs(is.blue() - wanted.blue()) < 12;
      }
    EXPECT_GT(seen, 300);
    EXPECT_GT(like, 0.8 * seen);  // the others lie under a contour or its label
  }
}

// As it would be painted now, where the plan is seen as it was; and never what was meant for another view.
TEST(ReachLayer, PaintedAheadLooksTheSame) {
  const layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  const ReachLayer now = layerOf(layout, {What::Phone, ""});
  ReachLayer ahead = now;
  AsSeen seen{{}, Theme::light(), {800, 450}};
  seen.view.fit({{0, 0}, {20000, 12000}}, seen.size, 10);
  AsSeen panned = seen, larger = seen, finer = seen, dark = seen;
  panned.view.pan({7, 3});
  larger.size = {900, 450};
  finer.device_pixels = 2;
  dark.theme = Theme::darkened();
  for (const AsSeen& as : {panned, larger, finer, dark, seen}) {
    ahead.paintAhead(as);
    for (const AsSeen& other : {panned, larger, finer, dark, seen})
      EXPECT_EQ(ahead.isPaintedFor(other), other == as);
    const auto imageOf = [&](const ReachLayer& layer) {
      QImage image(as.size * as.device_pixels, QImage::Format_RGB32);
      image.setDevicePixelRatio(as.device_pixels);
      image.fill(as.theme.floor);
      QPainter painter(&image);
      painter.setRenderHint(QPainter::Antialiasing);
      layer.paint(painter, as, true);
      return image;
    };
    const QImage one = imageOf(now), other = imageOf(ahead);
    int unlike = 0, coloured = 0;
    for (int y = 0; y < one.height(); ++y)
      for (int x = 0; x < one.width(); ++x) {
        const QColor a = one.pixelColor(x, y), b = other.pixelColor(x, y);
        coloured += a != as.theme.floor;
        unlike +=
            std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue()) > 6;
      }
    EXPECT_GT(coloured, one.width() * one.height() / 10);
    EXPECT_EQ(unlike, 0);
  }
}

// Two rooms with a wall of 400 mm between them, and a door in it.
layout::Layout twoRooms() {
  layout::Layout layout;
  layout::Room first, second;
  first.id = "first";
  first.outline = {{0, 0}, {6000, 0}, {6000, 5000}, {0, 5000}};
  second.id = "second";
  second.outline = {{6400, 0}, {12000, 0}, {12000, 5000}, {6400, 5000}};
  layout.rooms = {first, second};
  layout::Door door;
  door.id = "door";
  door.first = "first";
  door.second = "second";
  door.at = {6000, 2500};
  door.width = 900;
  layout.doors = {door};
  layout::Phone phone;
  phone.id = "phone";
  phone.at = {0, 2500};
  phone.faces = 0;
  layout.phones = {phone};
  return layout;
}

TEST(ReachLayer, ADoorwayThroughAThickWallIsColouredUnlessItIsShut) {
  layout::Layout layout = twoRooms();
  ViewTransform view;
  view.fit({{0, 0}, {12000, 5000}}, QSizeF(1200, 500), 0);
  const auto colourInDoorway = [&] {
    const ReachLayer layer = layerOf(layout, {What::Phone, ""});
    QImage image(1200, 500, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::black);
    QPainter painter(&image);
    layer.paint(painter, {view, Theme::light(), image.size()}, true);
    painter.end();
    return std::pair(image.pixelColor(view.toPixels(geometry::Point{6150, 2400}).toPoint()),
                     Theme::light().reachAt((6150 - 450) / layer.top_mm()));
  };
  const auto [is, wanted] = colourInDoorway();
  EXPECT_NEAR(is.red(), wanted.red(), 6);
  EXPECT_NEAR(is.blue(), wanted.blue(), 6);
  layout.doors[0].locked = layout::Locked::Always;
  EXPECT_EQ(colourInDoorway().first, QColor(Qt::black));
}

TEST(ReachLayer, TheLegendLiesWhereItHidesNoFloorIfThereIsSuchACorner) {
  const ReachLayer layer = layerOf(twoRooms(), {What::Phone, ""});
  const QRectF visible(0, 0, 1000, 800);
  ViewTransform view;
  view.fit({{0, 0}, {12000, 5000}}, QSizeF(600, 400), 0);
  for (const QPointF at : {QPointF(0, 0), QPointF(400, 0), QPointF(400, 400)}) {
    ViewTransform moved = view;
    moved.pan(at);
    const QRectF box = layer.legendBox(layer.legendPlace(moved, visible), visible, true);
    EXPECT_TRUE(visible.contains(box));
    EXPECT_FALSE(box.intersects(moved.toPixels(geometry::Box{{0, 0}, {12000, 5000}}))) << at.x() << at.y();
  }
}

// A floor under it can be done without, a machine cannot.
TEST(ReachLayer, TheLegendLeavesInSightWhatStandsOnTheFloors) {
  const ReachLayer layer = layerOf(twoRooms(), {What::Phone, ""});
  const QRectF visible(0, 0, 1000, 800);
  ViewTransform view;
  view.fit({{0, 0}, {12000, 5000}}, QSizeF(1000, 800), 0);
  std::vector<QRectF> marks;
  for (const auto place : {LegendPlace{1, 0}, LegendPlace{0, 0}}) {
    marks.push_back(QRectF(layer.legendBox(place, visible, true).center(), QSizeF(5, 5)));
    const QRectF box = layer.legendBox(layer.legendPlace(view, visible, marks), visible, true);
    for (const QRectF& mark : marks) EXPECT_FALSE(box.intersects(mark));
  }
  const QRectF now = layer.legendBox(LegendPlace{1, 0}, visible, true),
               before = layer.legendBox(LegendPlace{1, 0}, visible, false);
  EXPECT_EQ(now.topRight(), before.topRight());
  EXPECT_LT(now.height(), before.height()) << "it says that it is of the layout before";
}

// Such as under a tall bar of notices, where the plan lies in the middle of a view that is wide and low.
TEST(ReachLayer, WhereEachCornerHidesSomethingTheLegendLiesInTheRoomThatIsLeft) {
  const QRectF visible(0, 0, 1000, 400);
  const QSizeF size(270, 90);
  // Three rooms, one in each corner, and the scale in the fourth.
  const KeptInSight kept{{}, {{0, 0, 400, 150}, {600, 0, 400, 150}, {500, 250, 500, 150}}};
  const QRectF box = boxIn(freestPlace(size, visible, kept), size, visible);
  EXPECT_TRUE(visible.contains(box));
  for (const QRectF& ground : kept.grounds) EXPECT_FALSE(box.intersects(ground)) << ground.x();
  EXPECT_FALSE(box.intersects(QRectF(0, 352, 220, 48))) << "there the scale is";
  // Where there is no room, a corner.
  const KeptInSight all{{}, {visible}};
  EXPECT_EQ(freestPlace(size, visible, all), (LegendPlace{1, 0}));
}

TEST(ReachLayer, EveryLabelHasItsPlacesOnTheLineOfItsLength) {
  const ReachLayer layer = layerOf(twoRooms(), {What::Phone, ""});
  ViewTransform view;
  view.fit({{0, 0}, {12000, 5000}}, QSizeF(1200, 500), 0);
  const auto labels = layer.labels(view);
  ASSERT_GT(labels.size(), 5u);
  for (const Label& label : labels) {
    const double metres = label.text.section(' ', 0, 0).toDouble();
    EXPECT_GE(label.middles.size(), 9u);
    if (metres > 5) continue;  // beyond the door the walk is not straight
    for (const QPointF at : label.middles) {
      const geometry::Point p = view.toPlan(at);
      if (p.y < 400 || p.y > 4600) continue;  // near a wall one steps out first
      EXPECT_NEAR(geometry::distance(p, {450, 2500}), metres * 1000, 60) << metres;
    }
  }
}

TEST(ReachLayer, OfAnEmptyLayoutPaintsNothing) {
  QImage image(100, 100, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  layerOf({}, {What::AnyStop, ""}).paint(painter, {ViewTransform(), Theme::light(), image.size()}, true);
  EXPECT_EQ(image.pixelColor(50, 50), QColor(Qt::white));
}

// Whether another comes or could not be found: it does not promise one.
TEST(ReachLayer, OneOfAMomentAgoSaysSoAndPromisesNoOther) {
  const ReachLayer layer = layerOf(twoRooms(), {What::Phone, ""});
  const auto saysOfAge = [&](bool is_current) {
    return layer.legendLines(is_current)
        .join(' ')
        .replace('\n', ' ')
        .contains("Of a moment ago: what changed since is not in it.");
  };
  EXPECT_TRUE(saysOfAge(false));
  EXPECT_FALSE(saysOfAge(true));
}

TEST(ReachLayer, OfAMachineThatNothingStopsSaysSo) {
  const auto says = [](const audit::ReachTarget& target) {
    layout::Layout layout = twoRooms();
    layout.machines.clear();
    layout.phones.clear();
    return layerOf(layout, target).legendLines(true).join(' ').replace('\n', ' ');
  };
  EXPECT_TRUE(says({What::MachineStop, "saw"})
                  .contains("There is no stop of this machine to walk to, or none that works."));
  EXPECT_TRUE(says({What::Phone, ""}).contains("There is none in this layout, or none that works."));
}

}  // namespace
}  // namespace stopwalk::plan
