#include "app/plan/routes.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>

#include "app/plan/audit_marks.h"
#include "app/plan/catalogue.h"
#include "core/audit/audit.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::plan {
namespace {

const QRectF kWindow(0, 0, 1200, 800);

struct Audited {
  layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  AuditMarks marks;
  ViewTransform view;
  edits::Selection selection;

  Audited() {
    audit();
    geometry::Box box;
    for (const auto& room : layout.rooms) box.add(geometry::boxOf(room.outline));
    view.fit(box, kWindow.size(), 40);
  }
  void audit(bool with_narrow_places = true) {
    const auto report = std::make_shared<const audit::Report>(stopwalk::audit::audit(
        layout, bundledCatalogue().kinds, audit::defaultProfile(), floor::Hours::Open));
    const auto narrow =
        std::make_shared<const floor::NarrowPlaces>(floor::buildPlan(layout, floor::Hours::Open));
    marks.set({report, true, false, nullptr, with_narrow_places ? narrow : nullptr});
  }
  RoutesOnPlan routes() const { return marks.routes(view, selection); }
};

TEST(Routes, ThereAreNoneUnlessSomethingIsPicked) {
  EXPECT_TRUE(Audited().routes().lengthBoxes().empty());
}

TEST(Routes, NoLengthLiesOnAnother) {
  Audited audited;
  std::size_t seen = 0;
  for (const auto& machine : audited.layout.machines) {
    audited.selection.set(machine.id);
    const auto boxes = audited.routes().lengthBoxes();
    seen += boxes.size();
    for (std::size_t i = 0; i < boxes.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) EXPECT_FALSE(boxes[i].intersects(boxes[k])) << machine.id;
  }
  EXPECT_GT(seen, audited.layout.machines.size());
}

// Of hundreds nobody sees which line is whose, and each length is held against all others.
TEST(Routes, OfVeryManyPickedTheFirstAreDrawnAndTheOthersCounted) {
  Audited audited;
  const std::size_t most = AuditMarks::kMostWalked;
  layout::Machine machine = audited.layout.machines[0];
  for (std::size_t i = 0; i < 3 * most; ++i) {
    machine.id = "copy-" + std::to_string(i);
    audited.layout.machines.push_back(machine);
  }
  audited.audit(false);
  std::vector<std::string> all;
  for (const auto& m : audited.layout.machines) all.push_back(m.id);
  audited.selection.set(all);
  const std::size_t stations = audited.marks.report()->stations.size();
  ASSERT_GT(stations, most);
  const auto routes = audited.routes().lengthBoxes().size();
  EXPECT_GT(routes, 0u);
  EXPECT_LE(routes, 2 * most);
  EXPECT_EQ(audited.marks.walksLeftOut(audited.selection), stations - most);
  audited.selection.set({all[0], all[1]});
  EXPECT_EQ(audited.marks.walksLeftOut(audited.selection), 0u);
}

TEST(Selection, HoldsWhatIsInItHoweverMuchThatIs) {
  edits::Selection selection;
  std::vector<std::string> ids;
  for (int i = 0; i < 60000; ++i) ids.push_back("machine-of-the-shop-" + std::to_string(i));
  selection.set(ids);
  QElapsedTimer timer;
  timer.start();
  std::size_t held = 0;
  for (const std::string& id : ids) held += selection.contains(id);
  EXPECT_EQ(held, ids.size());
  EXPECT_LT(timer.elapsed(), 4000) << "asked at each painting, for each thing: each by itself takes no time";
  selection.toggle(ids[7]);
  EXPECT_FALSE(selection.contains(ids[7]));
  EXPECT_EQ(selection.ids().size(), ids.size() - 1);
  selection.toggle(ids[7]);
  EXPECT_TRUE(selection.contains(ids[7]));
  EXPECT_EQ(selection.ids().back(), ids[7]);
  selection.clear();
  EXPECT_FALSE(selection.contains(ids[8]));
}

// One station, a way to its phone through a gap: the walk and the width, and no width where it is wide.
TEST(Routes, AWidthIsDrawnWhereTheWayIsNarrow) {
  const auto lengthsAt = [](double gap_mm, bool with_narrow_places = true) {
    Audited audited;
    layout::Layout& layout = audited.layout;
    layout = {};
    layout::Room room;
    room.id = "room";
    room.outline = {{0, 0}, {10000, 0}, {10000, 4000}, {0, 4000}};
    layout.rooms = {room};
    layout::Machine saw;
    saw.id = "saw";
    saw.at = {2000, 2000};
    saw.footprint = layout::Rectangle{800, 800};
    layout::Station station;
    station.id = "operator";
    station.at = {0, -800};
    saw.stations = {station};
    layout.machines = {saw};
    layout::Fixture rack;
    rack.id = "rack";
    rack.at = {6000, gap_mm + 2000};
    rack.footprint = layout::Rectangle{500, 4000};
    layout.fixtures = {rack};
    layout::Phone phone;
    phone.id = "phone";
    phone.at = {10000, 1000};
    phone.faces = 180;
    layout.phones = {phone};
    audited.audit(with_narrow_places);
    audited.selection.set("saw/operator");
    return audited.routes().lengthBoxes().size();
  };
  EXPECT_EQ(lengthsAt(900), 2u);
  EXPECT_EQ(lengthsAt(900, false), 1u) << "nothing is computed where it is painted";
  EXPECT_EQ(lengthsAt(floor::kTwoBodies_mm + 1), 1u);
}

}  // namespace
}  // namespace stopwalk::plan
