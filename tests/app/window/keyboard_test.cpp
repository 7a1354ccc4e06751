// A person without a mouse.
#include <QTreeWidget>

#include "app/panels/gallery/gallery.h"
#include "app/panels/things/thing_list.h"
#include "tests/app/panels/accessible.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using Keyboard = AtTheWindow;

TEST_F(Keyboard, PlacesAndMovesAMachine) {
  choose({plan::Choice::What::Room});
  typeNumbers({"0", "0", "8 m", "6 m"});
  ASSERT_EQ(layout().rooms.size(), 1u);

  auto* gallery = window->findChild<panels::Gallery*>();
  gallery->search()->setFocus();
  type("table saw");
  key(Qt::Key_Return);
  ASSERT_EQ(QApplication::focusWidget(), &plan());
  typeNumbers({"3 m", "2500", "45"});
  ASSERT_EQ(layout().machines.size(), 1u);
  EXPECT_EQ(layout().machines[0].at, (geometry::Point{3000, 2500}));
  EXPECT_DOUBLE_EQ(layout().machines[0].turn, 45);

  plan().setFocus();
  key(Qt::Key_Left, Qt::ShiftModifier);
  EXPECT_EQ(layout().machines[0].at, (geometry::Point{2900, 2500}));
}

TEST_F(Keyboard, TypedNumbersAreNeverPulledToAGuide) {
  choose({plan::Choice::What::Room});
  typeNumbers({"3.5", "-7.25", "4321.5", "2' 3\""});
  ASSERT_EQ(layout().rooms.size(), 1u);
  EXPECT_EQ(layout().rooms[0].outline[0], (geometry::Point{3.5, -7.25}));
  EXPECT_EQ(layout().rooms[0].outline[2], (geometry::Point{4325, 678.55}));
}

TEST_F(Keyboard, ANumberThatCannotBeReadIsToldAndNothingIsDrawn) {
  choose({plan::Choice::What::Room});
  typeNumbers({"3 furlongs"});
  EXPECT_TRUE(layout().rooms.empty());
  key(Qt::Key_Escape);
  EXPECT_EQ(plan().choice().what, plan::Choice::What::Select);
}

TEST_F(Keyboard, FindsANameForEachControlOfTheWindow) {
  EXPECT_EQ(panels::namelessControls(*window).join("\n"), "");
}

}  // namespace
}  // namespace stopwalk::window
