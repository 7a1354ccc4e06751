// A check bears the name of who made it, whoever began the round.
#include "app/rounds/device_history.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class InspectedBy : public Inspecting {
 protected:
  // A round with one check, left.
  void checkOne() {
    openAndCome();
    startRound();
    EXPECT_EQ(card().inspector()->text(), inspector()) << "who starts a round walks it";
    device = round().device();
    type("123p");
    enter();
    EXPECT_EQ(onDisk().checks.back().inspector, inspector().toStdString());
    round().leave();
  }
  std::string device;
};

TEST_F(InspectedBy, WhoeverGoesOnWithARoundIsAskedForANameWhichTheFurtherChecksBear) {
  checkOne();
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(round().round().has_value());
  EXPECT_TRUE(card().inspector()->text().isEmpty());
  type("123p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
  EXPECT_TRUE(card().told().contains("Inspected by")) << card().told().toStdString();
  ASSERT_EQ(QApplication::focusWidget(), card().inspector());
  type(" Grace  Example ");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 3u) << card().told().toStdString();
  for (const std::size_t i : {1u, 2u}) EXPECT_EQ(onDisk().checks[i].inspector, "Grace Example");

  round().leave();
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(card().inspector()->text().isEmpty()) << "it may be another one again";
}

TEST_F(InspectedBy, WhatIsMissingElseIsSaidFirstAndWhatIsTypedNextIsNoName) {
  checkOne();
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  typeInto(card().inspector(), "Grace Example");
  enter();
  ASSERT_EQ(QApplication::focusWidget(), &card()) << card().told().toStdString();
  type("123p");
  EXPECT_EQ(card().inspector()->text(), "Grace Example");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
}

TEST_F(InspectedBy, ACorrectionAsksForItsOwnNameAndTheRoundKeepsIts) {
  openAndCome();
  startRound();
  type("123p");
  enter();
  const std::string next = round().device();
  for (const bool leaves : {true, false}) {
    correct(onDisk().checks.front());
    EXPECT_TRUE(card().inspector()->text().isEmpty());
    type("r");
    enter();
    EXPECT_EQ(onDisk().checks.size(), 1u);
    if (leaves) {
      card().setFocus();
      key(Qt::Key_Escape);
    } else {
      signAs("Grace Example");
      enter();
      ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
      EXPECT_EQ(onDisk().checks.back().inspector, "Grace Example");
    }
    EXPECT_EQ(round().device(), next);
    EXPECT_EQ(card().inspector()->text(), inspector());
  }
  correct(onDisk().checks.back());
  signAs("Grace Example");
  window->selection().set(next);  // left for another card
  EXPECT_EQ(card().inspector()->text(), inspector());
}

TEST_F(InspectedBy, ACorrectionBegunFromWhatIsDueEndsThereAtItsDevice) {
  checkOne();
  correct(onDisk().checks.front());
  ASSERT_TRUE(round().round().has_value());
  type("r");
  signAs("Grace Example");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_FALSE(round().round().has_value());
  EXPECT_EQ(window->selection().ids(), std::vector<std::string>{device});
  EXPECT_EQ(QApplication::focusWidget(), place().due().tree());
}

// The log was put away, and another one begun: its first round is not the one of the drafts.
TEST_F(InspectedBy, WhatWasEnteredInARoundIsNotShownInAnotherOneOfTheSameNumber) {
  openAndCome();
  startRound();
  type("1256f");
  inspection::Round other = *round().round();
  const std::size_t number = other.number;
  round().leave();
  const QString log = QString::fromStdString(file);
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  other.at.second = (other.at.second + 60) % 86400;
  ASSERT_EQ(records::appendRecord(file, other).written, records::Written::Yes);
  ASSERT_TRUE(becomes([&] { return window->records().records().findRound(number)->at == other.at; }));
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(round().round().has_value());
  EXPECT_EQ(round().round()->number, number);
  EXPECT_EQ(card().entered(), rounds::Entered());
}

}  // namespace
}  // namespace stopwalk::window
