// The tools besides rooms and machines.
#include <QImage>

#include "app/edits/add_things.h"
#include "core/files/machine_templates_reader.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using geometry::Point;
using plan::Choice;

class Tools : public AtTheWindow {
 protected:
  Tools() {
    add(edits::addRoom(layout(), {{0, 0}, {10000, 0}, {10000, 8000}, {0, 8000}}, "Hall"));
    add(edits::addRoom(layout(), {{10200, 0}, {14000, 0}, {14000, 8000}, {10200, 8000}}, "Store"));
    add(edits::addMachine(layout(), *files::bundledMachineTemplates().find("table-saw"), {4000, 4000}, 0));
    plan().fit();
    plan().setFocus();
  }
  void add(edits::Added added) { window->document().edited().apply(std::move(added.edit)); }
  const layout::Machine& saw() { return layout().machines.at(0); }
};

TEST_F(Tools, ADoorFindsTheRoomBehindAndOutside) {
  choose({Choice::What::Door});
  click({10000, 2000});
  choose({Choice::What::Door});
  click({5000, 8000});
  ASSERT_EQ(layout().doors.size(), 2u);
  EXPECT_EQ(layout().doors[0].first, "hall");
  EXPECT_EQ(layout().doors[0].second, "store");
  EXPECT_EQ(layout().doors[0].at.x, 10000);
  EXPECT_EQ(layout().doors[1].second, "outside");
}

TEST_F(Tools, ADoorDraggedStaysInAWallAndChangesItsRoomsWithIt) {
  choose({Choice::What::Door});
  click({10000, 2000});
  drag({10000, 2000}, {14000, 5000});
  EXPECT_EQ(layout().doors[0].first, "store");
  EXPECT_EQ(layout().doors[0].second, "outside");
  EXPECT_EQ(layout().doors[0].at.x, 14000);
}

TEST_F(Tools, AStopGoesOntoTheMachineThatIsClicked) {
  const auto devices = saw().devices.size();
  choose({Choice::What::Device, "mushroom-button"});
  click({4000, 4500});
  ASSERT_EQ(saw().devices.size(), devices + 1);
  const layout::Device& stop = saw().devices.back();
  EXPECT_DOUBLE_EQ(stop.at.y, 475);  // on its far side
  EXPECT_DOUBLE_EQ(stop.faces, 90);  // looking away from it
  EXPECT_FALSE(stop.stops) << "it stops the machine it is on";
}

TEST_F(Tools, ACutOffOnAWallStopsItsRoomAndLooksIntoIt) {
  choose({Choice::What::Device, "room-cut-off"});
  click({150, 6000});
  ASSERT_EQ(layout().devices.size(), 1u);
  EXPECT_EQ(layout().devices[0].at.x, 0);
  EXPECT_DOUBLE_EQ(layout().devices[0].faces, 0);
  EXPECT_EQ(layout().devices[0].stops, (layout::Stops{false, {"hall"}}));
}

TEST_F(Tools, APhoneDraggedTakesTheFacingOfItsNewWall) {
  choose({Choice::What::Phone});
  click({100, 6000});
  drag({0, 6000}, {5000, 7900});
  ASSERT_EQ(layout().phones.size(), 1u);
  EXPECT_EQ(layout().phones[0].at.y, 8000);
  EXPECT_DOUBLE_EQ(layout().phones[0].faces, 270);
}

TEST_F(Tools, ADragEndsWhereWhatIsDraggedGoesAway) {
  const std::pair<Choice, Point> all[] = {{{Choice::What::Phone}, {0, 6000}},
                                          {{Choice::What::Door}, {0, 2000}},
                                          {{Choice::What::Device, "room-cut-off"}, {0, 4000}}};
  for (const auto& [choice, at] : all) {
    const layout::Layout before = layout();
    choose(choice);
    click(at);
    ASSERT_NE(layout(), before);
    QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(at));
    drive(at + Point{300, 300}, {});
    drive(at + Point{600, 600}, {});
    key(Qt::Key_Delete);
    EXPECT_EQ(layout(), before);
    drive(at + Point{900, 900}, {});
    QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(at + Point{900, 900}));
    EXPECT_EQ(layout(), before);
  }
}

TEST_F(Tools, AStationIsPutInTheMachinesFrame) {
  const auto stations = saw().stations.size();
  choose({Choice::What::Station, "setter"});
  typeNumbers({"5500", "4000"});
  ASSERT_EQ(saw().stations.size(), stations + 1);
  EXPECT_EQ(saw().stations.back().role, layout::Role::Setter);
  EXPECT_EQ(saw().stations.back().at, (Point{1500, 0}));
}

TEST_F(Tools, ANoteIsDraggedToWhatItPointsTo) {
  choose({Choice::What::Note});
  drag({6000, 6500}, {4500, 4400});
  ASSERT_EQ(layout().notes.size(), 1u);
  ASSERT_TRUE(layout().notes[0].points_to);
  EXPECT_NEAR(layout().notes[0].points_to->y, 4400, 2 / plan().transform().pixelsPerMm());
  drag({4500, 4400}, {3000, 6000});
  EXPECT_NEAR(layout().notes[0].points_to->y, 6000, 2 / plan().transform().pixelsPerMm());
  EXPECT_NEAR(layout().notes[0].at.y, 6500, 2 / plan().transform().pixelsPerMm());
  choose({Choice::What::Note});
  typeNumbers({"1000", "1000"});
  EXPECT_EQ(layout().notes.at(1).at, (Point{1000, 1000}));
  EXPECT_FALSE(layout().notes[1].points_to);
}

TEST_F(Tools, ATapeCheckJoinsTwoPlacesWithTheLengthThatIsTyped) {
  choose({Choice::What::Phone});
  typeNumbers({"0", "6000"});
  choose({Choice::What::TapeCheck});
  click({3700, 3075});
  click({0, 6000});
  typeNumbers({"4 m"});
  ASSERT_EQ(layout().tape_checks.size(), 1u);
  EXPECT_EQ(layout().tape_checks[0].from, "table-saw/operator");
  EXPECT_EQ(layout().tape_checks[0].to, layout().phones.at(0).id);
  EXPECT_DOUBLE_EQ(layout().tape_checks[0].taped, 4000);
}

TEST_F(Tools, AnUnderlayIsBroughtToScaleByTwoPlacesAndTheirDistance) {
  QImage(200, 100, QImage::Format_RGB32).save(pathOf("scan.png"));
  layout::Underlay underlay;
  underlay.image = pathOf("scan.png").toStdString();
  underlay.mm_per_pixel = 50;
  window->document().edited().apply(edits::setUnderlay(layout(), underlay));
  choose({Choice::What::ScaleUnderlay});
  click({1000, 1000});
  click({9000, 1000});
  typeNumbers({"4 m"});
  EXPECT_NEAR(layout().underlay->mm_per_pixel, 25, 0.2);
  EXPECT_NEAR(layout().underlay->at.x, 500, 20);
}

TEST_F(Tools, ABenchIsTurnedByKeyBeforeItIsPutDown) {
  choose({Choice::What::Fixture, "bench"});
  move({7000, 2000});
  key(Qt::Key_R);
  key(Qt::Key_R);
  click({7000, 2000}, Qt::AltModifier);
  ASSERT_EQ(layout().fixtures.size(), 1u);
  EXPECT_DOUBLE_EQ(layout().fixtures[0].turn, 30);
}

TEST_F(Tools, EscapeGoesBackToPickingAndDrawsNothing) {
  const int steps = history().count();
  for (const Choice& choice : {Choice{Choice::What::Room}, Choice{Choice::What::RoomByCorners},
                               Choice{Choice::What::Door}, Choice{Choice::What::Note},
                               Choice{Choice::What::TapeCheck}, Choice{Choice::What::Machine, "table-saw"}}) {
    choose(choice);
    move({5000, 6000});
    key(Qt::Key_Escape);
    EXPECT_EQ(plan().choice().what, Choice::What::Select);
  }
  EXPECT_EQ(history().count(), steps);
}

// With Alt everything stands exactly where the pointer was, whatever is near.
TEST_F(Tools, WithAltNothingIsPulledOrRounded) {
  const auto expectAt = [&](Point is, Point wanted, const char* what) {
    EXPECT_NEAR(is.x, wanted.x, 2e-6) << what;
    EXPECT_NEAR(is.y, wanted.y, 2e-6) << what;
  };
  const auto placed = [&](const plan::Choice& choice, Point near) {
    choose(choice);
    click(near, Qt::AltModifier);
    return plan().transform().toPlan(QPointF(pixel(near)));
  };
  Point at = placed({Choice::What::Machine, "jointer"}, {7003, 2111});
  ASSERT_EQ(layout().machines.size(), 2u);
  expectAt(layout().machines[1].at, at, "machine");
  at = placed({Choice::What::Fixture, "bench"}, {8003, 6111});
  expectAt(layout().fixtures.at(0).at, at, "bench");
  at = placed({Choice::What::Phone}, {2003, 133});
  expectAt(layout().phones.at(0).at, at, "phone");
  EXPECT_EQ(layout().phones[0].faces, 90) << "into the room, from the wall beside it";
  at = placed({Choice::What::Device, "room-cut-off"}, {9811, 3003});
  expectAt(layout().devices.at(0).at, at, "cut-off");
  window->selection().set("table-saw");
  at = placed({Choice::What::Station, "helper"}, {3003, 5777});
  expectAt(
      edits::placeOf(layout(), *edits::findThing(layout(), "table-saw/" + saw().stations.back().id)).value(),
      at, "station");
  at = placed({Choice::What::Device, "mushroom-button"}, {4111, 4555});
  expectAt(
      edits::placeOf(layout(), *edits::findThing(layout(), "table-saw/" + saw().devices.back().id)).value(),
      at, "stop on a machine");
}

}  // namespace
}  // namespace stopwalk::window
