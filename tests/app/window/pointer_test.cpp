// The pointer on the plan: picking, dragging, turning, and looking about.
#include <QWheelEvent>

#include "app/edits/add_things.h"
#include "app/panels/gallery/gallery.h"
#include "core/files/machine_templates_reader.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using geometry::Point;

class AtAMachine : public AtTheWindow {
 protected:
  AtAMachine() {
    auto room = edits::addRoom(layout(), {{0, 0}, {10000, 0}, {10000, 8000}, {0, 8000}}, "Hall");
    window->document().edited().apply(room.edit);
    auto saw =
        edits::addMachine(layout(), *files::bundledMachineTemplates().find("table-saw"), {4000, 4000}, 0);
    window->document().edited().apply(saw.edit);
    plan().fit();
    plan().setFocus();
    steps_before = history().count();
  }
  const layout::Machine& saw() { return layout().machines.at(0); }
  int steps() { return history().count() - steps_before; }
  double pixel_mm() { return 1 / plan().transform().pixelsPerMm(); }

  int steps_before = 0;
};

TEST_F(AtAMachine, ADragIsOneStepAndUndoPutsItBack) {
  drag({4400, 4200}, {6400, 5200}, Qt::AltModifier);
  EXPECT_NEAR(saw().at.x, 6000, 2 * pixel_mm());
  EXPECT_NEAR(saw().at.y, 5000, 2 * pixel_mm());
  EXPECT_EQ(steps(), 1);
  EXPECT_EQ(history().undoText(), "Move Table saw");
  history().undo();
  EXPECT_EQ(saw().at, (Point{4000, 4000}));
}

TEST_F(AtAMachine, AClickThatSlipsMovesNothing) {
  drag({4400, 4200}, {4400 + 7 * pixel_mm(), 4200});
  EXPECT_EQ(saw().at, (Point{4000, 4000}));
  EXPECT_EQ(steps(), 0);
  drag({4400, 4200}, {4400 + 14 * pixel_mm(), 4200}, Qt::AltModifier);
  EXPECT_EQ(steps(), 1);
}

TEST_F(AtAMachine, ADragBringsTheMachineItselfToTheWallWhereverItWasGrabbed) {
  // Grabbed at a corner and dropped near the west wall: its own side comes to lie on the wall.
  drag({4800, 4400}, {1790, 4400});
  EXPECT_DOUBLE_EQ(saw().at.x, 950);
}

TEST_F(AtAMachine, OtherSourcesEndWhatIsDraggedAndTellSo) {
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({4400, 4200}));
  drive({5400, 4200}, Qt::AltModifier);
  drive({6400, 4200}, Qt::AltModifier);
  ASSERT_TRUE(plan().isPreviewing());
  bool told_of_none = false;
  QObject::connect(&plan(), &plan::PlanView::previewed, &plan(),
                   [&](const auto& preview) { told_of_none = !preview; });
  plan().setSources(window->document().catalogue(), window->document().folder());
  EXPECT_FALSE(plan().isPreviewing());
  EXPECT_TRUE(told_of_none);
  EXPECT_EQ(steps(), 0);
  EXPECT_EQ(saw().at, (Point{4000, 4000}));
}

TEST_F(AtAMachine, ADragIsAuditedWhileItLastsAndNoLonger) {
  window->document().edited().apply(edits::addPhone(layout(), "Phone", {0, 1000}, 0).edit);
  const auto says = [&](const QString& text) {
    return QTest::qWaitFor([&] { return plan().tellsOfChanges().contains(text); }, 10000);
  };
  QTest::qWait(300);  // the audit of the layout as it is
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({4400, 4200}));
  drive({6000, 5000}, Qt::AltModifier);
  drive({7400, 6200}, Qt::AltModifier);
  EXPECT_TRUE(says("Table saw, operator: phone")) << plan().tellsOfChanges().toStdString();
  key(Qt::Key_Escape);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({7400, 6200}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return plan().tellsOfChanges().isEmpty(); }, 10000));
}

// Else its stations would flicker between audited and being computed.
TEST_F(AtAMachine, EachPlaceOfADragIsPaintedWithItsAudit) {
  struct Paints : QObject {
    bool eventFilter(QObject* watched, QEvent* event) override {
      if (event->type() == QEvent::Paint) audited << static_cast<plan::PlanView*>(watched)->isAudited();
      return false;
    }
    QList<bool> audited;
  } paints;
  ASSERT_TRUE(QTest::qWaitFor([&] { return plan().isAudited(); }, 10000));
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({4400, 4200}));
  plan().installEventFilter(&paints);
  int computed = 0;
  for (int i = 1; i <= 20; ++i) {
    paints.audited.clear();
    drive({4600 + 100.0 * i, 4200}, Qt::AltModifier);
    EXPECT_FALSE(plan().isAudited());
    ASSERT_TRUE(QTest::qWaitFor([&] { return paints.audited.contains(true); }, 10000));
    computed += paints.audited.first();
  }
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({6600, 4200}));
  EXPECT_GT(computed, 0);  // a busy machine is late now and then
}

TEST_F(AtAMachine, TwoDragsAreTwoSteps) {
  drag({4400, 4200}, {5400, 4200}, Qt::AltModifier);
  drag({5400, 4200}, {5400, 5200}, Qt::AltModifier);
  EXPECT_EQ(steps(), 2);
}

TEST_F(AtAMachine, EscapeLeavesADragWithoutATrace) {
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({4400, 4200}));
  drive({6000, 6000}, {});
  drive({6400, 6000}, {});
  key(Qt::Key_Escape);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({6400, 6000}));
  settle();
  EXPECT_EQ(saw().at, (Point{4000, 4000}));
  EXPECT_EQ(steps(), 0);
}

TEST_F(AtAMachine, UndoingWithTheButtonDownEndsTheDragAndCanBeRedone) {
  drag({4400, 4200}, {5400, 4200}, Qt::AltModifier);
  const Point there = saw().at;
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({5400, 4200}));
  drive({6000, 5000}, {});
  drive({6400, 5000}, {});
  key(Qt::Key_Z, Qt::ControlModifier);
  drive({6800, 5000}, {});
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({6800, 5000}));
  settle();
  EXPECT_EQ(saw().at, (Point{4000, 4000}));
  ASSERT_TRUE(history().canRedo());
  history().redo();
  EXPECT_EQ(saw().at, there);
}

TEST_F(AtAMachine, AHandleOfWhatGoesAwayIsLetGo) {
  click({4400, 4200});
  const Point handle = Point{4000, 4475} + Point{0, 28 * pixel_mm()};
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(handle));
  key(Qt::Key_Delete);
  EXPECT_TRUE(layout().machines.empty());
  drive({1500, 4020}, {});
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({1500, 4020}));
  EXPECT_TRUE(layout().machines.empty());
}

TEST_F(AtAMachine, LeavingThePlanWithSpaceDownDoesNotLeaveItPanning) {
  QTest::keyPress(&plan(), Qt::Key_Space);
  window->findChild<panels::Gallery*>()->search()->setFocus();
  plan().setFocus();
  drag({4400, 4200}, {5400, 4200}, Qt::AltModifier);
  EXPECT_EQ(steps(), 1);
}

TEST_F(AtAMachine, TheHandleTurnsInFifteens) {
  click({4400, 4200});
  // The handle stands 28 pixels behind the machine; dragged to its left it turns by a quarter.
  const Point handle = Point{4000, 4475} + Point{0, 28 * pixel_mm()};
  drag(handle, {1500, 4020});
  EXPECT_DOUBLE_EQ(saw().turn, 90);
  EXPECT_EQ(steps(), 1);
}

TEST_F(AtAMachine, ArrowsNudgeByTenAndWithShiftByAHundredAndMerge) {
  click({4400, 4200});
  for (int i = 0; i < 3; ++i) key(Qt::Key_Right);
  key(Qt::Key_Up, Qt::ShiftModifier);
  EXPECT_EQ(saw().at, (Point{4030, 4100}));
  EXPECT_EQ(steps(), 1);
}

TEST_F(AtAMachine, AFrameTakesWhatLiesWhollyInIt) {
  drag({2500, 2000}, {6000, 6000});
  EXPECT_EQ(window->selection().ids(), std::vector<std::string>{"table-saw"});
  drag({3500, 3900}, {3600, 6000}, Qt::ShiftModifier);
  EXPECT_EQ(saw().at, (Point{4000, 4000})) << "a frame moves nothing";
}

TEST_F(AtAMachine, AFrameAsksForNothingToBePutDown) {
  move({2500, 2000});
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({2500, 2000}));
  drive({5000, 5000}, {});
  drive({6000, 6000}, {});
  EXPECT_TRUE(window->sentence().endsWith("Release to pick what lies in the frame."))
      << window->sentence().toStdString();
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({6000, 6000}));
}

TEST_F(AtAMachine, CopiesGetIdsOfTheirOwn) {
  click({4400, 4200});
  key(Qt::Key_C, Qt::ControlModifier);
  key(Qt::Key_V, Qt::ControlModifier);
  ASSERT_EQ(layout().machines.size(), 2u);
  EXPECT_EQ(layout().machines[1].id, "table-saw-2");
  EXPECT_EQ(layout().machines[1].devices, saw().devices);
  EXPECT_EQ(window->selection().ids(), std::vector<std::string>{"table-saw-2"});
}

TEST_F(AtAMachine, ThePlaceUnderThePointerStaysThereInFiftyZooms) {
  const QPointF pointer(333, 277);
  const Point there = plan().transform().toPlan(pointer);
  const auto wheel = [&](int notches) {
    QWheelEvent event(pointer, plan().mapToGlobal(pointer), {}, {0, 120 * notches}, Qt::NoButton, {},
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&plan(), &event);
  };
  for (int step = 0; step < 50; ++step) {
    wheel(step % 10 < 6 ? 1 : -1);
    const QPointF now = plan().transform().toPixels(there);
    EXPECT_LT((now - pointer).manhattanLength(), 1) << step;
  }
}

TEST_F(AtAMachine, ZeroShowsEverything) {
  plan().zoomBy(8);
  key(Qt::Key_0);
  EXPECT_TRUE(QRectF(plan().rect()).contains(plan().transform().toPixels({{0, 0}, {10000, 8000}})));
}

TEST_F(AtAMachine, WhatIsSeenWholeStaysWholeWhateverRoomTheWindowLeavesIt) {
  const auto isWhole = [&] {
    return QRectF(plan().rect()).contains(plan().transform().toPixels({{0, 0}, {10000, 8000}}));
  };
  for (const QSize size : {QSize(900, 640), QSize(1500, 900), QSize(1000, 700)}) {
    window->resize(size);
    QTest::qWait(50);
    EXPECT_TRUE(isWhole()) << size.width();
  }
  window->goToPlace(WorkPlace::Audit);
  QTest::qWait(50);
  EXPECT_TRUE(isWhole());
}

// A corner that was looked at closely, in a window that becomes small.
TEST_F(AtAMachine, ThePlanIsNeverLeftEmpty) {
  const auto isSeen = [&] {
    return QRectF(plan().rect()).intersects(plan().transform().toPixels({{0, 0}, {10000, 8000}}));
  };
  window->resize(1500, 1000);
  QTest::qWait(50);
  const QPointF corner(plan().width() - 4, plan().height() - 4);
  QWheelEvent out(corner, plan().mapToGlobal(corner), {}, {0, -120}, Qt::NoButton, {}, Qt::NoScrollPhase,
                  false);
  for (int i = 0; i < 40; ++i) QApplication::sendEvent(&plan(), &out);  // the hall is small, in that corner
  ASSERT_TRUE(isSeen());
  window->goToPlace(WorkPlace::Audit);
  window->resize(900, 640);
  QTest::qWait(50);
  EXPECT_TRUE(isSeen());

  drag({4400, 4200}, {6400, 5200}, Qt::AltModifier);
  layout::Layout elsewhere = layout();
  for (Point& p : elsewhere.rooms[0].outline) p = p + Point{500000, 0};
  elsewhere.machines[0].at = elsewhere.machines[0].at + Point{500000, 0};
  window->document().edited().apply({"Move all", elsewhere});
  QTest::qWait(50);
  EXPECT_TRUE(QRectF(plan().rect()).intersects(plan().transform().toPixels({{500000, 0}, {510000, 8000}})));
}

TEST_F(AtAMachine, SavingInMidDragPutsDownWhatIsDragged) {
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel({4400, 4200}));
  drive({5400, 4200}, Qt::AltModifier);
  drive({6400, 5200}, Qt::AltModifier);
  asker.file = pathOf("shop.layout.yaml");
  key(Qt::Key_S, Qt::ControlModifier);
  ASSERT_TRUE(QTest::qWaitFor([&] { return window->document().isSaved(); }, 10000));
  EXPECT_EQ(steps(), 1);
  EXPECT_NEAR(saw().at.x, 6000, 2 * pixel_mm()) << "where it was shown, though Alt is let go of";
  QFile file(pathOf("shop.layout.yaml"));
  ASSERT_TRUE(file.open(QFile::ReadOnly));
  EXPECT_FALSE(file.readAll().contains("at: [4000, 4000]")) << "where it was before";
  drive({7000, 5200}, {});
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel({7000, 5200}));
  settle();
  EXPECT_NEAR(saw().at.x, 6000, 2 * pixel_mm());
  EXPECT_EQ(steps(), 1);
}

TEST_F(AtAMachine, ARoomsCornerIsDraggedAndItsSideGetsANewCorner) {
  click({8000, 7000});
  ASSERT_EQ(window->selection().ids(), std::vector<std::string>{"hall"});
  drag({10000, 8000}, {9000, 8000});
  EXPECT_LT(geometry::distance(layout().rooms[0].outline[2], {9000, 8000}), 2 * pixel_mm());
  QTest::mouseDClick(&plan(), Qt::LeftButton, {}, pixel({5000, 0}));
  settle();
  EXPECT_EQ(layout().rooms[0].outline.size(), 5u);
}

TEST_F(AtAMachine, ACopyThatCannotBeIsNotPickedAndTheBottomLineSaysWhy) {
  choose({plan::Choice::What::Phone});
  typeNumbers({"9999.9 m", "0"});
  ASSERT_EQ(layout().phones.size(), 1u);
  const auto picked = window->selection().ids();
  ASSERT_EQ(picked, std::vector<std::string>{layout().phones[0].id});
  const auto copies = [&](Qt::Key which) {
    window->document().edited().changed();  // the line says nothing of before
    key(which, Qt::ControlModifier);
    EXPECT_EQ(layout().phones.size(), 1u);
    EXPECT_EQ(window->selection().ids(), picked);
    EXPECT_TRUE(window->sentence().contains("10 km")) << window->sentence().toStdString();
  };
  copies(Qt::Key_D);
  key(Qt::Key_C, Qt::ControlModifier);
  copies(Qt::Key_V);
}

}  // namespace
}  // namespace stopwalk::window
