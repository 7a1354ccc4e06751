#include <gtest/gtest.h>

#include <QImage>
#include <algorithm>
#include <map>
#include <set>

#include "app/edits/move_things.h"
#include "app/plan/catalogue.h"
#include "app/plan/picture.h"
#include "tests/app/plan/every_kind.h"
#include "tests/support/draw.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::plan {
namespace {

using edits::ThingKind;
using geometry::Point;

constexpr QSize kView(800, 600);
constexpr double kReach_px = 48;  // of what has a size in pixels; Picture looks no further

const layout::DeviceKinds& kinds() {
  static const Catalogue catalogue = bundledCatalogue();
  return catalogue.kinds;
}

QImage painted(const Picture& picture, const ViewTransform& view, const Marks& marks = {}) {
  QImage image(kView, QImage::Format_RGB32);
  image.fill(Theme::light().outside);
  QPainter painter(&image);
  picture.paint(painter, view, Theme::light(), QRectF(QPointF(), kView), marks);
  return image;
}

QImage painted(const layout::Layout& layout, const ViewTransform& view, const Marks& marks = {}) {
  return painted(Picture(layout, kinds()), view, marks);
}

ViewTransform viewOf(const layout::Layout& layout) {
  ViewTransform view;
  view.fit(Picture(layout, kinds()).bounds(), kView, 20);
  return view;
}

TEST(Items, OneForEveryThing) {
  const layout::Layout layout = everyKind();
  const Picture picture(layout, kinds());
  for (const edits::Thing& thing : edits::allThings(layout)) {
    const Item* item = picture.find(edits::idOf(layout, thing));
    ASSERT_TRUE(item) << edits::idOf(layout, thing);
    EXPECT_EQ(item->thing, thing);
  }
}

TEST(Items, FoundAtTheirOwnPlace) {
  const layout::Layout layout = everyKind();
  const Picture picture(layout, kinds());
  const std::pair<const char*, Point> places[] = {
      {"hall", {3000, 3000}},   {"door", {20200, 3000}},
      {"bench", {3500, 10000}}, {"lathe", {8000, 6100}},
      {"cut-off", {0, 6000}},   {"phone", {10000, 0}},
      {"note", {14000, 9000}},  {edits::kUnderlayId, {-6000, 2000}}};
  for (const double mm_per_pixel : {2.0, 10.0, 25.0})
    for (const auto& [id, place] : places) {
      const Item* item = picture.itemAt(place, mm_per_pixel, 3);
      ASSERT_TRUE(item) << id;
      EXPECT_EQ(item->id, id) << mm_per_pixel;
    }
  for (const char* id : {"lathe/operator", "lathe/bar", "lathe/start"}) {
    const auto place = edits::placeOf(layout, *edits::findThing(layout, id));
    EXPECT_EQ(picture.itemAt(*place, 2, 3)->id, id);
  }
  EXPECT_EQ(picture.itemAt({5000, 3000}, 10, 3)->id, "tape");  // half way from cut-off to phone
}

// A stop that hangs just where the sign is.
TEST(Items, NoSymbolHidesHowAStationStands) {
  layout::Layout layout = everyKind();
  layout::Machine& lathe = layout.machines[0];
  lathe.turn = 0;
  lathe.devices.resize(1);
  lathe.devices[0].kind = "mushroom-button";
  lathe.devices[0].length.reset();
  for (const double pixels_per_mm : {0.03, 0.06, 0.1}) {
    ViewTransform view;
    view.setScaleAt({}, pixels_per_mm);
    const double radius = std::clamp(240 * pixels_per_mm, 8.0, 22.0);
    lathe.devices[0].at = lathe.stations[0].at - (0.85 / pixels_per_mm) * Point{radius, radius};
    const auto place = *edits::placeOf(layout, {edits::ThingKind::Station, 0, 0});
    view.pan(QPointF(400, 300) - view.toPixels(place));
    const std::map<std::string, StationState> states{{"lathe/operator", StationState::Fails}};
    Marks marks;
    marks.states = &states;
    const QImage image = painted(layout, view, marks);
    const QPointF sign = QPointF(400, 300) + QPointF(-0.85, 0.85) * radius;
    EXPECT_EQ(image.pixelColor(sign.toPoint()), Theme::light().fails) << pixels_per_mm;
  }
}

TEST(Items, SymbolIsAtLeast24PixelsToHit) {
  const Picture picture(everyKind(), kinds());
  for (const double mm_per_pixel : {1.0, 4.0, 12.0})
    for (const char* id : {"phone", "cut-off", "lathe/operator"}) {
      const Item* item = picture.find(id);
      const Point middle = 0.5 * (item->bounds().low + item->bounds().high);
      EXPECT_EQ(item->distanceTo(middle + Point{11.9 * mm_per_pixel, 0}, mm_per_pixel), 0) << id;
    }
}

TEST(Items, BarIsFoundAlongItsWholeLength) {
  const layout::Layout layout = everyKind();
  const Picture picture(layout, kinds());
  const layout::Machine& lathe = layout.machines[0];
  for (const double x : {-899.0, -500.0, 899.0})
    EXPECT_NEAR(*picture.find("lathe/bar")->distanceTo(layout::toPlan(lathe.at, lathe.turn, {x, -475}), 1), 0,
                1e-6);
  EXPECT_NEAR(*picture.find("lathe/bar")->distanceTo(layout::toPlan(lathe.at, lathe.turn, {1000, -475}), 1),
              100, 1e-6);
}

TEST(Items, NothingIsMeantBeyondItsBounds) {
  int within = 0;
  for (std::uint64_t seed = 1; seed <= 80; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    support::Random random(seed);
    for (const auto& item : itemsOf(layout, kinds())) {
      const geometry::Box bounds = item->bounds();
      if (bounds.empty()) continue;
      const double mm_per_pixel = random.between(1, 60);
      const geometry::Box area = bounds.grown(2 * kReach_px * mm_per_pixel);
      for (int i = 0; i < 20; ++i) {
        const Point p{random.between(area.low.x, area.high.x), random.between(area.low.y, area.high.y)};
        const auto distance = item->distanceTo(p, mm_per_pixel);
        if (!distance || *distance > 0) continue;
        ++within;
        EXPECT_LE(geometry::distance(bounds, p), kReach_px * mm_per_pixel) << item->id << " seed " << seed;
      }
    }
  }
  EXPECT_GT(within, 1000);
}

TEST(Items, LieOnTheirOwnPlaceInRandomLayouts) {
  int seen = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    for (const auto& item : itemsOf(layout, kinds())) {
      const auto place = edits::placeOf(layout, item->thing);
      // A footprint drawn as an outline need not hold its own origin.
      if (!place || item->thing.kind == ThingKind::Machine || item->thing.kind == ThingKind::Fixture)
        continue;
      ++seen;
      EXPECT_LE(item->distanceTo(*place, 10).value_or(1e9), 1e-6) << item->id << " seed " << seed;
    }
  }
  EXPECT_GT(seen, 500);
}

TEST(Items, EveryThingLeavesAMark) {
  const layout::Layout whole = everyKind();
  const ViewTransform view = viewOf(whole);
  const QImage before = painted(whole, view);
  const auto differs = [&](auto change) {
    layout::Layout less = whole;
    change(less);
    return painted(less, view) != before;
  };
  EXPECT_TRUE(differs([](layout::Layout& l) { l.rooms.pop_back(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.doors.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.doors[0].locked = layout::Locked::Never; }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.fixtures.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.machines[0].hazard.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.machines[0].stations.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.machines[0].devices.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.devices[0].faces = 180; }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.phones.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.notes.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.tape_checks.clear(); }));
  EXPECT_TRUE(differs([](layout::Layout& l) { l.underlay.reset(); }));
}

TEST(Items, RolesDiffer) {
  layout::Layout layout = everyKind();
  ViewTransform view = viewOf(layout);
  view.zoomAt(view.toPixels(*edits::placeOf(layout, *edits::findThing(layout, "lathe/operator"))), 4);
  std::vector<QImage> pictures;
  for (int role = 0; role < 4; ++role) {
    layout.machines[0].stations[0].role = static_cast<layout::Role>(role);
    pictures.push_back(painted(layout, view));
    for (int other = 0; other < role; ++other) EXPECT_NE(pictures[other], pictures[role]) << role;
  }
}

TEST(Items, SelectionAndHoverShowOnEverything) {
  const layout::Layout layout = everyKind();
  const ViewTransform view = viewOf(layout);
  const QImage plain = painted(layout, view);
  for (const edits::Thing& thing : edits::allThings(layout)) {
    const std::string id = edits::idOf(layout, thing);
    const QImage selected =
        painted(layout, view, {[&](const std::string& i) { return i == id; }, "", nullptr});
    const QImage hovered = painted(layout, view, {{}, id, nullptr});
    EXPECT_NE(selected, plain) << id;
    EXPECT_NE(hovered, plain) << id;
    EXPECT_NE(selected, hovered) << id;
  }
}

TEST(Items, AMissingPinIsMarked) {
  layout::Layout layout = everyKind();
  const ViewTransform view = viewOf(layout);
  const auto withPin = [&](std::optional<layout::Pin> pin, const Marks& marks = {}) {
    edits::Thing start = *edits::findThing(layout, "lathe/start");
    layout.machines[start.index].devices[start.part].pin = pin;
    return painted(layout, view, marks);
  };
  EXPECT_EQ(withPin(layout::Pin::Fitted), withPin(std::nullopt));
  EXPECT_NE(withPin(layout::Pin::Fitted), withPin(layout::Pin::Missing));
  Marks marks;
  const std::map<std::string, CheckMark> checks;
  marks.checks = &checks;
  EXPECT_EQ(withPin(layout::Pin::Fitted, marks), withPin(layout::Pin::Missing, marks)) << "the check's sign";
}

// Of the floors only: neither what stands on them nor the walls round them are crossed by it.
TEST(Items, TheGridLiesOnTheFloorsAlone) {
  const layout::Layout layout = everyKind();
  const ViewTransform view = viewOf(layout);
  Marks marks;
  const QImage plain = painted(layout, view, marks);
  marks.grid = layout::LengthUnit::Metre;
  const QImage with_grid = painted(layout, view, marks);
  int lines = 0;
  for (int x = 0; x < plain.width(); ++x)
    for (int y = 0; y < plain.height(); ++y) {
      if (plain.pixel(x, y) == with_grid.pixel(x, y)) continue;
      ++lines;
      const int was = plain.pixelColor(x, y).lightness(), is = with_grid.pixelColor(x, y).lightness();
      EXPECT_LT(std::abs(is - was), 40) << x << " " << y;  // across ink it would be 200
    }
  EXPECT_GT(lines, 500);
}

// The shape alone tells the states apart: the pictures differ when all colour is taken away.
TEST(Items, StationStatesDifferInGrey) {
  const layout::Layout layout = everyKind();
  const ViewTransform view = viewOf(layout);
  std::vector<QImage> pictures;
  for (int state = 0; state < 7; ++state) {
    const std::map<std::string, StationState> states{{"lathe/operator", static_cast<StationState>(state)}};
    pictures.push_back(painted(layout, view, {{}, "", &states}).convertToFormat(QImage::Format_Mono));
  }
  for (std::size_t i = 0; i < pictures.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) EXPECT_NE(pictures[i], pictures[k]) << i << " " << k;
}

// What is taken over from the picture of an earlier layout looks as if all were made anew.
TEST(Items, AreTheSameWhetherTakenOverOrMadeAnew) {
  int taken_over = 0, made = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    support::Random random(seed);
    const layout::Layout before = support::randomLayout(seed);
    layout::Layout after = before;
    const auto things = edits::allThings(after);
    for (int i = 0; i < 3 && !things.empty(); ++i)
      edits::moveThing(after, things[static_cast<std::size_t>(random.below(static_cast<int>(things.size())))],
                       {random.between(-900, 900), 450});
    if (seed % 4 == 0 && !after.machines.empty()) after.machines.pop_back();
    if (seed % 4 == 1 && !after.machines.empty()) after.machines[0].stations.clear();
    const Picture first(before, kinds());
    const Picture anew(after, kinds()), next(after, kinds(), {}, EarlierItems{before, first.items()});
    ASSERT_EQ(next.items().size(), anew.items().size()) << "seed " << seed;
    for (const auto& item : next.items())
      ++(std::ranges::find(first.items(), item) == first.items().end() ? made : taken_over);
    const ViewTransform view = viewOf(after);
    EXPECT_EQ(painted(next, view), painted(anew, view)) << "seed " << seed;
    for (const auto& item : anew.items()) EXPECT_TRUE(item->id.empty() || next.find(item->id)) << item->id;
  }
  EXPECT_GT(taken_over, 200);
  EXPECT_GT(made, 100);
}

TEST(Items, BrokenOutlinesStillPaint) {
  for (const geometry::Polygon& outline :
       {geometry::Polygon{{0, 0}, {6000, 4000}, {6000, 0}, {0, 4000}},  // crosses itself
        geometry::Polygon{{0, 0}, {3000, 0}, {6000, 0}},                // no area
        geometry::Polygon{{0, 0}, {6000, 0}, {6000, 0}, {0, 4000}}}) {
    layout::Layout layout;
    layout.rooms.push_back(draw::room("broken", outline));
    layout.machines.push_back(draw::machine("m", {1000, 1000}, 100, 100));
    layout.machines[0].footprint = outline;
    layout.machines[0].hazard = outline;
    layout.doors.push_back(draw::door("d", "broken", "outside", {3000, 0}, 900));
    const ViewTransform view = viewOf(layout);
    const QPoint corner = view.toPixels(Point{0, 0}).toPoint();
    std::set<QRgb> colours;
    const QImage image = painted(layout, view);
    for (int x = -30; x <= 30; ++x)
      for (int y = -30; y <= 30; ++y) colours.insert(image.pixel(corner + QPoint(x, y)));
    EXPECT_GT(colours.size(), 1u);
  }
}

TEST(Items, WallBetweenRoomsIsSolidAndItsDoorOpen) {
  const layout::Layout layout = everyKind();
  ViewTransform view = viewOf(layout);
  const QImage image = painted(layout, view);
  const auto colourAt = [&](Point p) { return image.pixelColor(view.toPixels(p).toPoint()); };
  for (const double y : {500.0, 6000.0, 11500.0})
    for (const double x : {20100.0, 20200.0, 20300.0}) EXPECT_EQ(colourAt({x, y}), Theme::light().ink) << y;
  EXPECT_EQ(colourAt({20080, 3500}), Theme::light().floor);
  EXPECT_EQ(colourAt({-60, 9000}), Theme::light().ink);
}

TEST(Items, UnderlayPictureIsPaintedWhereItLies) {
  layout::Layout layout;
  layout.underlay = layout::Underlay{"scan.png", {0, 0}, 10, 0, 1, {}};
  QImage scan(100, 60, QImage::Format_RGB32);
  scan.fill(Qt::red);
  for (int x = 0; x < 100; ++x)
    for (int y = 0; y < 30; ++y) scan.setPixelColor(x, y, Qt::blue);
  const Picture picture(layout, kinds(), [&](const std::string&) { return scan; });
  ViewTransform view;
  view.fit(picture.bounds(), kView, 20);
  QImage image(kView, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  picture.paint(painter, view, Theme::light(), QRectF(QPointF(), kView), {});
  EXPECT_EQ(image.pixelColor(view.toPixels(Point{500, 100}).toPoint()), QColor(Qt::red));
  EXPECT_EQ(image.pixelColor(view.toPixels(Point{500, 500}).toPoint()), QColor(Qt::blue));
  EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
}

}  // namespace
}  // namespace stopwalk::plan
