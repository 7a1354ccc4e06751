// A manager who draws a whole workshop from nothing, with the mouse and typed numbers, and saves it.
#include "app/documents/layout_file.h"
#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/report_json.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using plan::Choice;

// The same workshop written by hand.
constexpr const char* kByHand = R"(stopwalk_layout: 1
units: mm
site: {name: Tin shed}
rooms:
  - {id: room-1, name: Room 1, outline: [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]}
  - {id: room-2, name: Room 2, outline: [[8200, 0], [13200, 0], [13200, 6000], [8200, 6000]]}
doors:
  - {id: door-1, joins: [room-1, room-2], at: [8000, 3000], width: 900, locked: never}
machines:
  - id: table-saw
    name: Table saw
    kind: table-saw
    at: [3000, 3000]
    footprint: {width: 1900, depth: 950}
    height: 870
    hazard: [[-150, -350], [150, -350], [150, 350], [-150, 350]]
    stations:
      - {id: operator, role: operator, at: [-300, -925]}
      - {id: helper, role: helper, at: [-300, 925]}
    devices:
      - {id: paddle, kind: paddle, at: [-350, -475], height: 725}
  - id: drill-press-floor
    name: Floor drill press
    kind: drill-press-floor
    at: [11000, 5000]
    turn: 90
    footprint: {width: 500, depth: 750}
    height: 1800
    hazard: [[-75, -125], [75, -125], [75, 125], [-75, 125]]
    stations:
      - {id: operator, role: operator, at: [0, -825]}
    devices:
      - {id: stop, kind: mushroom-button, at: [150, -375], height: 1350}
devices:
  - {id: room-cut-off, kind: room-cut-off, at: [8200, 1000], faces: 0, stops: [room-2]}
phones:
  - {id: emergency-phone, name: Emergency phone, at: [0, 1000], faces: 0}
...
)";

std::string reportOf(layout::Layout layout) {
  layout.site = {};  // named in the panel, not drawn
  const audit::Report report =
      audit::audit(layout, files::bundledDeviceKinds(), audit::defaultProfile(), floor::Hours::Open);
  files::FiledReport filed;
  filed.report = report;
  return files::reportJson(filed, inspection::kUnreadDay);
}

class DrawAShop : public AtTheWindow {
 protected:
  void drawIt() {
    // The first minutes: type two sides.
    auto* width = window->findChild<QLineEdit*>("first width");
    ASSERT_TRUE(width);
    width->setFocus();
    width->selectAll();
    type("8 m");
    key(Qt::Key_Tab);
    type("6 m");
    key(Qt::Key_Return);

    choose({Choice::What::Room});
    typeNumbers({"8200", "0", "5 m", "6000"});
    plan().fit();

    choose({Choice::What::Door});
    click({8000, 3000});
    choose({Choice::What::Machine, "table-saw"});
    typeNumbers({"3 m", "3000", "0"});
    choose({Choice::What::Machine, "drill-press-floor"});
    typeNumbers({"11000", "5000", "90"});
    choose({Choice::What::Device, "room-cut-off"});
    typeNumbers({"8300", "1000"});
    choose({Choice::What::Phone});
    typeNumbers({"100", "1000"});
  }
};

TEST_F(DrawAShop, GivesTheAuditOfTheSameShopWrittenByHand) {
  drawIt();
  const auto by_hand = files::readLayout(kByHand, "by hand", files::bundledDeviceKinds());
  ASSERT_TRUE(by_hand.value);
  // Where the door was clicked is as exact as a pixel: it is brought to its place by its number.
  ASSERT_EQ(layout().doors.size(), 1u);
  EXPECT_NEAR(layout().doors[0].at.y, 3000, 1 / plan().transform().pixelsPerMm());
  layout::Layout exact = layout();
  exact.doors[0].at.y = 3000;
  window->document().edited().apply({"Put the door in its place", exact});

  asker.file = pathOf("shed.layout.yaml");
  ASSERT_TRUE(window->files().save());
  const auto saved = documents::openLayout(pathOf("shed.layout.yaml"));
  ASSERT_TRUE(saved.read.value);
  EXPECT_EQ(reportOf(*saved.read.value), reportOf(*by_hand.value));
  EXPECT_EQ(asker.asked, QStringList());
}

TEST_F(DrawAShop, IsUndoneToNothingAndRedoneToTheSame) {
  drawIt();
  const layout::Layout drawn = layout();
  EXPECT_EQ(history().count(), 7);  // one step each
  while (history().canUndo()) history().undo();
  EXPECT_EQ(layout(), Document::emptyLayout());
  while (history().canRedo()) history().redo();
  EXPECT_EQ(layout(), drawn);
}

TEST_F(DrawAShop, HasItsNumbersWithNobodyAsking) {
  drawIt();
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        move({2700, 2075});
        return window->sentence().contains("Emergency phone");
      },
      10000))
      << window->sentence().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
