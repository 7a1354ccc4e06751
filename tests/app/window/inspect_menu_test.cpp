// All that can be done on the card of a device is in the menu, shows its key there, is found by its name, and
// says why where it cannot be done.
#include <QMenuBar>

#include "app/panels/actions/action_finder.h"
#include "app/panels/actions/verb.h"
#include "app/rounds/device_history.h"
#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;
using inspection::Tried;

class InspectMenu : public Inspecting {
 protected:
  QMenu* menu() {
    for (QMenu* menu : window->menuBar()->findChildren<QMenu*>())
      if (menu->title().remove('&') == "Inspect") return menu;
    return nullptr;
  }
  QAction* action(const QString& text) {
    QList<QAction*> all = menu()->actions();
    for (const QMenu* below : menu()->findChildren<QMenu*>()) all << below->actions();
    for (QAction* action : all)
      if (action->text().remove('&').remove("…") == text) return action;
    ADD_FAILURE() << "there is no " << text.toStdString();
    return menu()->menuAction();
  }
  QStringList found() {
    panels::ActionFinder finder(window.get());
    QStringList lines;
    for (int i = 0; i < finder.list()->count(); ++i) lines << finder.list()->item(i)->text();
    return lines;
  }
};

TEST_F(InspectMenu, AllThatItHoldsIsFoundByItsNameWithItsKey) {
  const QStringList lines = found();
  for (const char* line :
       {"Inspect: What is due", "Inspect: Start a round… (Ctrl+Shift+I)",
        "Inspect: Continue the round (Ctrl+Shift+C)", "Inspect: Checks of the device (Ctrl+Shift+H)",
        "Inspect: Next device (Ctrl+PgDown)", "Inspect: Previous device (Ctrl+PgUp)",
        "Inspect: Record the check (Ctrl+Return)", "What was tried: Nothing in its way (1)",
        "What was tried: Marking legible (2)", "What was tried: Stays stopped when power returns (7)",
        "What came of it: Pass (P)", "What came of it: Fail (F)", "What came of it: Not tested (N)",
        "What came of it: Could not reach (R)", "Inspect: Time the run-down (Space)",
        "Inspect: Give the time on paper (T)", "Inspect: Correct the check that is picked…"})
    EXPECT_TRUE(lines.contains(QString(line))) << line << "\nis none of\n" << lines.join('\n').toStdString();
}

TEST_F(InspectMenu, WhatCannotBeDoneSaysWhy) {
  openAndCome();
  EXPECT_TRUE(menu()->toolTipsVisible());
  for (const char* text :
       {"Pass", "Nothing in its way", "Time the run-down", "Correct the check that is picked"}) {
    EXPECT_FALSE(action(text)->isEnabled()) << text;
    EXPECT_TRUE(action(text)->toolTip().endsWith('.')) << text;
    EXPECT_EQ(action(text)->statusTip(), action(text)->toolTip());
  }
  EXPECT_TRUE(action("Pass")->toolTip().contains("round")) << action("Pass")->toolTip().toStdString();
  startRound();
  EXPECT_TRUE(action("Pass")->isEnabled());
  const auto start = std::ranges::find_if(round().order(), [](auto& id) { return id.ends_with("/start"); });
  ASSERT_TRUE(start != round().order().end());
  round().goTo(*start);
  EXPECT_FALSE(action("Time the run-down")->isEnabled()) << "it is only looked at";
  EXPECT_FALSE(action("Pressed, and it worked")->isEnabled());
  round().leave();
  EXPECT_FALSE(action("Pass")->isEnabled());
}

TEST_F(InspectMenu, ACardIsFilledFromItAndShowsWhatIsChosen) {
  openAndCome();
  startRound();
  window->goToPlace(WorkPlace::Draw);
  action("Marking legible")->trigger();
  EXPECT_EQ(window->workPlace(), WorkPlace::Inspect) << "nothing is chosen out of sight";
  EXPECT_TRUE(action("Marking legible")->isChecked());
  action("Latches: it stays as it was pressed")->trigger();
  action("Latches: it stays as it was pressed")->trigger();
  EXPECT_FALSE(action("No: Latches: it stays as it was pressed")->isChecked());
  EXPECT_EQ(card().entered().tested,
            (std::vector<std::pair<Tried, bool>>{{Tried::Legible, true}, {Tried::Latches, false}}));
  action("Pass")->trigger();
  action("Fail")->trigger();
  EXPECT_EQ(card().entered().result, Result::Fail);
  EXPECT_TRUE(action("Fail")->isChecked());
  EXPECT_FALSE(action("Pass")->isChecked());
  type("r");
  EXPECT_TRUE(action("Could not reach")->isChecked()) << "whichever way it was chosen";
  action("Time the run-down")->trigger();
  EXPECT_TRUE(card().timer().isRunning());
  action("At rest: stop the clock")->trigger();
  EXPECT_FALSE(card().timer().isRunning());
  EXPECT_EQ(card().entered().run_down.size(), 1);
  action("Next device")->trigger();
  EXPECT_FALSE(action("Could not reach")->isChecked()) << "of the next card";
}

TEST_F(InspectMenu, TheCheckThatIsPickedIsCorrectedFromIt) {
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("123p");
  enter();
  key(Qt::Key_PageUp, Qt::ControlModifier);
  key(Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(action("Correct the check that is picked")->isEnabled());
  action("Correct the check that is picked")->trigger();
  type("n");
  signAs(inspector());
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[1].corrects, onDisk().checks[0].number);
}

// Letters and digits are of the card alone: in a list or a line they are typed.
TEST_F(InspectMenu, ItsKeysDoNothingWhereTheyAreTyped) {
  openAndCome();
  startRound();
  typeInto(card().note(), "1pT 2");
  EXPECT_EQ(card().note()->text(), "1pT 2");
  window->plan().setFocus();
  type("1p");
  EXPECT_TRUE(card().entered().tested.empty());
  EXPECT_FALSE(card().entered().result);
}

}  // namespace
}  // namespace stopwalk::window
