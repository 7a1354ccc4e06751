// What was done on paper is dated by the paper, and what is done now is not.
#include <QPushButton>

#include "app/rounds/device_history.h"
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
  type("12p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_FALSE(onDisk().checks[0].entered.has_value()) << "it was made now";
  EXPECT_EQ(paper(), "2026-03-02 09:15") << "the next follows from the paper";
  type("12p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(onDisk().checks[1].entered.has_value());
  EXPECT_EQ(onDisk().checks[1].at, walked);
  card().onPaper()->clear();
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(paper(), "2026-03-02 09:15");
}

// As on the command line: it is of the time of the check that it corrects.
TEST_F(FromPaper, ACorrectionIsOfNoTimeOfThePaper) {
  startOnPaper();
  const std::string device = round().device();
  card().onPaper()->setText("2026-03-02 10:15");
  type("12p");
  enter();
  const std::string next = round().device();
  EXPECT_EQ(paper(), "2026-03-02 10:15");
  place().history().correctWanted(onDisk().checks[0].number);
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
  place().history().correctWanted(onDisk().checks[1].number);
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

}  // namespace
}  // namespace stopwalk::window
