// A device that failed and was taken away need not stay failed for good.
#include <QTreeWidget>

#include "app/window/notice_bar.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class TakenAway : public Inspecting {
 protected:
  // A round with one check, failed, of a device that is then taken off the plan; at what is due.
  void failAndTakeAway() {
    openAndCome();
    on_paper ? startOnPaper() : startRound();
    ASSERT_TRUE(round().round().has_value());
    device = round().device();
    type("3f");
    enter();
    ASSERT_EQ(onDisk().checks.size(), 1u);
    if (!note_then.isEmpty()) {
      round().goTo(device);
      type(entered_then);
      typeInto(card().note(), note_then);
      card().setFocus();
    }
    round().leave();
    layout::Layout without = layout();
    std::erase_if(without.devices, [&](const auto& d) { return d.id == device; });
    for (layout::Machine& m : without.machines)
      std::erase_if(m.devices, [&](const auto& d) { return m.id + "/" + d.id == device; });
    window->goToPlace(WorkPlace::Draw);  // where one inspects the plan is only looked at
    window->document().edited().apply({"Take it away", without});
    ASSERT_TRUE(window->files().save());
    window->goToPlace(WorkPlace::Inspect);
    ASSERT_TRUE(becomes([&] { return gone().contains("no longer on the plan"); })) << gone().toStdString();
  }
  void startOnPaper() {
    key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    type(inspector());
    key(Qt::Key_2);
    place().start().onPaper()->setText("2026-03-02 09:15");
    place().start().startButton()->click();
    ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
    card().setFocus();
  }
  QString gone() {
    const QTreeWidget& tree = *place().due().tree();
    return tree.topLevelItemCount() > 0 ? tree.topLevelItem(0)->child(0)->text(0) : QString();
  }
  QString told() { return window->notices().text(); }

  std::string device;
  bool on_paper = false;
  QString entered_then, note_then;  // on its card, and not recorded
};

TEST_F(TakenAway, IsSaidOnItsCardByEnterTwiceUnderAName) {
  failAndTakeAway();
  EXPECT_TRUE(told().contains(QString::fromStdString(device))) << told().toStdString();
  place().due().tree()->setFocus();
  key(Qt::Key_Home);
  key(Qt::Key_Down);
  key(Qt::Key_Return);
  ASSERT_TRUE(round().round().has_value());
  ASSERT_EQ(round().device(), device);
  EXPECT_TRUE(card().recordButton()->text().contains("taken away"));
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u) << "Enter alone goes from card to card";
  EXPECT_TRUE(card().told().contains("once more")) << card().told().toStdString();
  key(Qt::Key_PageDown, Qt::ControlModifier);
  key(Qt::Key_PageUp, Qt::ControlModifier);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u) << "it is asked anew";
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u) << "nobody says so";
  ASSERT_EQ(QApplication::focusWidget(), card().inspector());
  type(inspector());
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  const inspection::Check check = onDisk().checks.back();
  EXPECT_EQ(check.device, device);
  EXPECT_TRUE(check.removed);
  EXPECT_EQ(check.result, inspection::Result::NotTested);
  EXPECT_EQ(check.machines, onDisk().checks.front().machines);
  EXPECT_EQ(check.inspector, inspector().toStdString());
  EXPECT_FALSE(told().contains(QString::fromStdString(device))) << told().toStdString();
  round().leave();
  EXPECT_FALSE(gone().contains("no longer on the plan")) << gone().toStdString();
}

// The failure may be of any time until it was entered; that it is no longer there is said now.
TEST_F(TakenAway, InARoundFromPaperIsOfNow) {
  on_paper = true;
  failAndTakeAway();
  place().due().historyWanted(QString::fromStdString(device));
  ASSERT_EQ(round().device(), device);
  EXPECT_FALSE(card().onPaper()->isVisible());
  signAs(inspector());
  enter();
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(onDisk().checks.back().removed);
  EXPECT_FALSE(onDisk().checks.back().entered.has_value());
  EXPECT_FALSE(told().contains(QString::fromStdString(device))) << told().toStdString();
  round().goTo(device);
  enter();
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << "it is said already";
}

// What was typed before it was known to be gone, or is typed then, is of the record that says so.
TEST_F(TakenAway, TheNoteOfItsCardIsRecordedWithItAndWhatIsNotIsTold) {
  entered_then = "12";
  note_then = "scrapped with its machine";
  failAndTakeAway();
  place().due().historyWanted(QString::fromStdString(device));
  ASSERT_EQ(round().device(), device);
  EXPECT_EQ(card().note()->text(), note_then);
  EXPECT_TRUE(card().note()->isEnabled());
  signAs(inspector());
  enter();
  EXPECT_TRUE(card().told().contains("only the note")) << card().told().toStdString();
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  const inspection::Check check = onDisk().checks.back();
  EXPECT_TRUE(check.removed);
  EXPECT_EQ(check.note, note_then.toStdString());
  EXPECT_TRUE(check.tested.empty());
}

TEST_F(TakenAway, IsFailedAgainWhereThePlanHasItAgain) {
  failAndTakeAway();
  place().due().historyWanted(QString::fromStdString(device));
  signAs(inspector());
  enter();
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  round().leave();
  window->goToPlace(WorkPlace::Draw);
  window->document().edited().history().undo();
  ASSERT_TRUE(window->files().save());
  EXPECT_TRUE(told().contains("counted as no stop: " + QString::fromStdString(device)))
      << told().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
