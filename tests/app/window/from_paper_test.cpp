// What was done on paper is dated by the paper, and what is done now is not.
#include <QPushButton>

#include "app/rounds/device_history.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/run_down_timer.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class FromPaper : public Inspecting {
 protected:
  // At the first card of a round that was walked on paper.
  void startOnPaper() {
    openAndCome();
    key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    type(inspector());
    place().start().onPaper()->setText("2026-03-02 09:15");
    place().start().startButton()->click();
    ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
    walked = round().round()->at;
    card().setFocus();
  }
  QString paper() { return card().onPaper()->text(); }

  inspection::Moment walked;
};

TEST_F(FromPaper, ThePaperIsClearedForOneDeviceAlone) {
  startOnPaper();
  EXPECT_EQ(paper(), "2026-03-02 09:15");
  card().onPaper()->clear();
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_FALSE(onDisk().checks[0].entered.has_value()) << "it was made now";
  EXPECT_EQ(paper(), "2026-03-02 09:15") << "the next follows from the paper";
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(onDisk().checks[1].entered.has_value());
  EXPECT_EQ(onDisk().checks[1].at, walked);
  card().onPaper()->clear();
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(paper(), "2026-03-02 09:15");
}

TEST_F(FromPaper, TheTimeIsMetFirstAndByOneKey) {
  startOnPaper();
  settle();
  const auto isFirst = [&] {
    return card().onPaper()->mapTo(&card(), QPoint()).y() < card().tried().mapTo(&card(), QPoint()).y();
  };
  EXPECT_TRUE(isFirst()) << "as on the paper";
  for (const char* time : {"0931", "0944"}) {
    const std::size_t before = onDisk().checks.size();
    type("t");
    ASSERT_EQ(QApplication::focusWidget(), card().onPaper());
    type(time);
    EXPECT_EQ(card().onPaper()->text(), time) << "in the place of the last one";
    key(Qt::Key_Return);  // nothing is chosen yet: that is asked for, and keys choose again
    EXPECT_EQ(onDisk().checks.size(), before);
    EXPECT_TRUE(card().told().contains("Choose the result")) << card().told().toStdString();
    type("123p");
    enter();
    ASSERT_EQ(onDisk().checks.size(), before + 1) << card().told().toStdString();
  }
  EXPECT_EQ(onDisk().checks[1].at.second, 60 * (9 * 60 + 44));
  card().previousButton()->setFocus();
  card().nextButton()->setFocus();
  key(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), card().onPaper());
  round().leave();
  startRound();
  settle();
  EXPECT_FALSE(isFirst()) << "who walks it now has no time to give";
}

// As on the command line: it is of the time of the check that it corrects.
TEST_F(FromPaper, ACorrectionIsOfNoTimeOfThePaper) {
  startOnPaper();
  const std::string device = round().device();
  card().onPaper()->setText("2026-03-02 10:15");
  type("123p");
  enter();
  const std::string next = round().device();
  EXPECT_EQ(paper(), "2026-03-02 10:15");
  correct(onDisk().checks[0]);
  ASSERT_EQ(round().device(), device);
  EXPECT_TRUE(paper().isEmpty()) << paper().toStdString();
  type("f");
  signAs(inspector());
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[1].corrects, onDisk().checks[0].number);
  EXPECT_FALSE(onDisk().checks[1].entered.has_value());
  EXPECT_EQ(round().device(), next);
  EXPECT_EQ(paper(), "2026-03-02 10:15");
  correct(onDisk().checks[1]);
  ASSERT_EQ(round().device(), device);
  EXPECT_TRUE(paper().isEmpty());
  round().goTo(next);
  EXPECT_EQ(paper(), "2026-03-02 10:15") << "left for another card";
}

TEST_F(FromPaper, TheButtonSaysTheTimeAndIsNotCut) {
  startOnPaper();
  QPushButton& button = *card().recordButton();
  for (const QString& typed :
       {QString("2026-03-02 09:15"), QString("2025-11-26 09:00"), QString("2026-11-26T09:00:00+05:30")}) {
    card().onPaper()->setText(typed);
    settle();
    EXPECT_LE(button.fontMetrics().horizontalAdvance(button.text()), button.width() - 8)
        << button.text().toStdString();
    EXPECT_FALSE(button.text().contains('T')) << button.text().toStdString();
  }
  card().onPaper()->setText("2025-11-26 09:00");
  EXPECT_EQ(button.text(), "Record as of 26 Nov 2025, 09:00 (Enter)");
}

TEST_F(FromPaper, ATimeAloneIsOfTheDayOfTheRound) {
  startOnPaper();
  typeInto(card().onPaper(), "9:20");
  EXPECT_TRUE(card().recordButton()->text().contains("09:20")) << card().recordButton()->text().toStdString();
  card().setFocus();
  EXPECT_EQ(paper(), "2026-03-02 09:20") << "what it is taken as is seen";
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  inspection::Moment expected = walked;
  expected.second = 60 * (9 * 60 + 20);
  EXPECT_EQ(onDisk().checks[0].at, expected);
  card().onPaper()->setText("0931");
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  expected.second = 60 * (9 * 60 + 31);
  EXPECT_EQ(onDisk().checks[1].at, expected);
  type("123p");
  for (const QString& typed : QStringList{"2026", "1931", "931", "24:00", "9:60", "9"}) {
    card().onPaper()->setText(typed);
    enter();
    EXPECT_EQ(onDisk().checks.size(), 2u) << typed.toStdString();
    EXPECT_TRUE(card().told().contains("a time as 09:15")) << card().told().toStdString();
  }
}

// The round's own, or the clock of this place would be taken for that of another.
TEST_F(FromPaper, ATimeAloneHasTheZoneThatTheRoundWasTypedWith) {
  inspection::Round round;
  round.at = *inspection::parseMoment("2026-03-02T09:15:30+05:30");
  round.entered = round.at;
  EXPECT_EQ(rounds::withDay("9:40", round), "2026-03-02T09:40:00+05:30");
  EXPECT_EQ(rounds::withDay("2026-03-02 09:40", round), "2026-03-02 09:40");
  round.entered.reset();
  EXPECT_EQ(rounds::withDay("9:40", round), "9:40") << "a round that is walked now may go on for days";
}

TEST_F(FromPaper, TheRunDownTimesAreTypedAsOnTheSheetAndComeFirst) {
  startOnPaper();
  auto& timer = card().timer();
  const auto isAbove = [&] { return timer.fields().y() < timer.button()->mapTo(&timer, QPoint()).y(); };
  settle();
  EXPECT_TRUE(isAbove());
  EXPECT_TRUE(timer.button()->text().contains("dated by the paper")) << timer.button()->text().toStdString();
  typeInto(timer.fields().field(0), "2.4");
  key(Qt::Key_Tab);
  type("2,62 s");
  EXPECT_EQ(QApplication::focusWidget(), timer.fields().field(1));
  key(Qt::Key_Tab);
  type("2x");
  key(Qt::Key_Tab);
  EXPECT_TRUE(timer.fields().trouble()->isVisible());
  EXPECT_TRUE(timer.fields().trouble()->text().contains("2x: seconds")) << "which, and what is accepted";
  EXPECT_TRUE(timer.said().startsWith("2 of 10, mean 2.51 s")) << timer.said().toStdString();
  card().setFocus();
  type("1234p");
  enter();
  EXPECT_TRUE(onDisk().checks.empty()) << "what cannot be read is not left out";
  EXPECT_TRUE(card().told().contains("2x")) << card().told().toStdString();
  const std::string device = round().device();
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_TRUE(card().entered().run_down.isEmpty());
  key(Qt::Key_PageUp, Qt::ControlModifier);
  ASSERT_EQ(round().device(), device);
  EXPECT_EQ(card().entered().run_down, (QStringList{"2.4", "2,62 s", "2x"})) << "nor lost from the card";
  timer.fields().field(2)->setText("2.5");
  EXPECT_TRUE(timer.fields().trouble()->isHidden());
  card().setFocus();
  key(Qt::Key_Space);
  EXPECT_TRUE(timer.isRunning()) << "the clock is there still";
  QTest::qWait(20);
  key(Qt::Key_Space);
  EXPECT_EQ(timer.runs().size(), 4u);
  timer.fields().field(3)->clear();
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].run_down_s, (std::vector<double>{2.4, 2.62, 2.5}));
  card().onPaper()->clear();
  settle();
  EXPECT_FALSE(isAbove()) << "what is tried now is timed";
  EXPECT_FALSE(timer.button()->text().contains("paper")) << timer.button()->text().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
