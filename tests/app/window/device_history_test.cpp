// All checks of a device, and one of them corrected, by keyboard.
#include "app/rounds/device_history.h"

#include "app/rounds/run_down_timer.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Check;
using inspection::Result;
using rounds::DeviceHistory;

class OfADevice : public Inspecting {
 protected:
  DeviceHistory& checks() { return place().history(); }
  QString cell(int row, int column) { return checks().list()->topLevelItem(row)->text(column); }
  int rows() { return checks().list()->topLevelItemCount(); }

  // A round with one check, failed; at the card of that device again.
  void failOne() {
    openAndCome();
    startRound();
    device = round().device();
    type("1235f");
    card().timer().show({"2", "3.0"});
    typeInto(card().note(), "sticks");
    enter();
    ASSERT_EQ(onDisk().checks.size(), 1u);
    key(Qt::Key_PageUp, Qt::ControlModifier);
    ASSERT_EQ(round().device(), device);
  }
  // Opens the card on which the newest check is corrected.
  void beginCorrection() {
    type("h");
    ASSERT_EQ(QApplication::focusWidget(), checks().list());
    key(Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget(), &card());
    ASSERT_FALSE(card().entered().note.isEmpty());
  }

  std::string device;
};

TEST_F(OfADevice, SaysWhatEachCheckSaysAndEscapeGoesBackToTheCard) {
  failOne();
  type("h");
  ASSERT_EQ(QApplication::focusWidget(), checks().list());
  ASSERT_EQ(rows(), 1);
  EXPECT_TRUE(cell(0, DeviceHistory::What).contains("Fail"));
  EXPECT_EQ(cell(0, DeviceHistory::By), "Ada Example");
  EXPECT_TRUE(cell(0, DeviceHistory::RunDown).contains("2.50 s"));
  EXPECT_TRUE(cell(0, DeviceHistory::Found).contains("sticks"));
  EXPECT_FALSE(cell(0, DeviceHistory::When).contains("entered"));
  EXPECT_TRUE(checks().title().contains("stays failed until")) << checks().title().toStdString();
  key(Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), &card());
  EXPECT_EQ(round().device(), device);
}

TEST_F(OfADevice, ACheckOfAnotherProgramComesAboveAndTheOnePickedStays) {
  failOne();
  type("h");
  const std::size_t picked = checks().current();
  recordElsewhere(device, Result::Pass);
  ASSERT_TRUE(becomes([&] { return rows() == 2; }));
  EXPECT_EQ(checks().current(), picked);
  EXPECT_EQ(cell(0, DeviceHistory::By), "Grace Example");
  EXPECT_EQ(cell(1, DeviceHistory::By), "Ada Example");
  EXPECT_FALSE(checks().title().contains("stays failed until")) << checks().title().toStdString();
}

TEST_F(OfADevice, IsReachedFromTheListOfWhatIsDueAndFromAnywhereByItsKeys) {
  failOne();
  round().leave();
  place().due().tree()->setFocus();
  key(Qt::Key_Home);
  key(Qt::Key_Down);  // what failed comes first
  ASSERT_EQ(window->selection().ids(), std::vector<std::string>{device});
  key(Qt::Key_Return);
  ASSERT_EQ(QApplication::focusWidget(), checks().list());
  EXPECT_EQ(rows(), 1);
  key(Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), place().due().tree());
  plan().setFocus();
  key(Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(QApplication::focusWidget(), checks().list());
}

TEST_F(OfADevice, ThatWasNeverCheckedSaysSo) {
  openAndCome();
  key(Qt::Key_Home);
  key(Qt::Key_Down);
  ASSERT_TRUE(checks().isVisible());
  EXPECT_TRUE(checks().title().contains("no check")) << checks().title().toStdString();
  key(Qt::Key_Return);
  EXPECT_EQ(QApplication::focusWidget(), place().due().tree()) << "there is nothing to go to";
}

TEST_F(OfADevice, ACorrectionIsNotWrittenWithoutAResultChosenAnew) {
  failOne();
  beginCorrection();
  const rounds::Entered entered = card().entered();
  EXPECT_FALSE(entered.result.has_value());
  EXPECT_EQ(entered.run_down, (QStringList{"2", "3"}));
  key(Qt::Key_Return);
  EXPECT_EQ(onDisk().checks.size(), 1u);
  EXPECT_FALSE(card().told().isEmpty());
}

TEST_F(OfADevice, ACorrectionUndoesNoFailureAndWhatWasCorrectedIsNotCorrectedTwice) {
  failOne();
  const Check before = onDisk().checks[0];
  beginCorrection();
  type("n");
  signAs("Bo Example");
  enter();
  const files::InspectionLog log = records::readRecords(path.toStdString()).log;
  ASSERT_EQ(log.records.checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(log.records.checks[0], before);
  EXPECT_EQ(log.records.checks[1].corrects, before.number);
  EXPECT_EQ(log.records.checks[1].round, before.round);
  EXPECT_EQ(log.records.checks[1].result, Result::NotTested);
  EXPECT_EQ(log.records.checks[1].note, before.note);
  EXPECT_EQ(files::verifyLog(log).line, 0u);

  window->selection().set(device);
  ASSERT_EQ(rows(), 2);
  EXPECT_TRUE(checks().title().contains("stays failed until")) << checks().title().toStdString();
  checks().list()->setCurrentItem(checks().list()->topLevelItem(1));
  EXPECT_EQ(checks().current(), before.number);
  EXPECT_FALSE(checks().correctButton()->isEnabled());
  checks().list()->setFocus();
  key(Qt::Key_Return);
  EXPECT_EQ(QApplication::focusWidget(), checks().list());
}

TEST_F(OfADevice, EscapeLeavesACorrectionWhichIsKeptApartFromTheCardOfTheRound) {
  failOne();
  type("12");
  const rounds::Entered of_round = card().entered();
  beginCorrection();
  type("r");
  typeInto(card().note(), "x");
  const rounds::Entered entered = card().entered();
  key(Qt::Key_Escape);
  EXPECT_EQ(card().entered(), entered) << "first out of the line";
  key(Qt::Key_Escape);
  EXPECT_EQ(card().entered(), of_round);
  beginCorrection();
  EXPECT_EQ(card().entered(), entered);
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

TEST_F(OfADevice, WhatAnotherCorrectedMeanwhileStaysOnItsCard) {
  failOne();
  beginCorrection();
  type("r");
  const rounds::Entered entered = card().entered();
  Check meanwhile = onDisk().checks[0];
  meanwhile.corrects = meanwhile.number;
  ASSERT_EQ(records::appendRecord(file, meanwhile).written, records::Written::Yes);
  ASSERT_TRUE(becomes([&] { return window->records().records().checks.size() == 2; }));
  signAs("Bo Example");
  enter();
  EXPECT_TRUE(card().told().contains("corrected already")) << card().told().toStdString();
  EXPECT_EQ(card().entered(), entered);
  EXPECT_EQ(onDisk().checks.size(), 2u);
}

// As logs may hold it: a correction that names another round than the check that it corrects.
TEST_F(OfADevice, ACorrectionInAnotherRoundIsCorrectedWhereItsFirstStands) {
  failOne();
  const std::size_t first = onDisk().rounds[0].number;
  inspection::Round second = onDisk().rounds[0];
  const std::size_t other = records::appendRecord(file, second).number;
  Check crossed = onDisk().checks[0];
  crossed.corrects = crossed.number;
  crossed.round = other;
  crossed.result = Result::NotTested;
  const std::size_t number = records::appendRecord(file, crossed).number;
  window->records().lookNow();
  correct(onDisk().checks.back());
  ASSERT_TRUE(round().round().has_value());
  EXPECT_EQ(round().round()->number, first);
  type("r");
  signAs("Bo Example");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 3u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks.back().corrects, number);
}

// Whatever is picked on the plan by then.
TEST_F(OfADevice, TheCheckOfAnotherIsNotCorrectedInItsPlace) {
  failOne();
  round().leave();
  settle();
  place().history().correctWanted(onDisk().checks[0].number, "no-such/device");
  EXPECT_FALSE(round().round().has_value());
  correct(onDisk().checks[0]);
  EXPECT_TRUE(round().round().has_value());
}

TEST(DeviceHistoryOf, SaysOfWhichDeviceTheCheckIsThatIsToBeCorrected) {
  inspection::Records records;
  Check check;
  check.number = 7;
  check.device = "saw/stop";
  check.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  records.checks.push_back(check);
  DeviceHistory history;
  std::pair<std::size_t, std::string> wanted;
  QObject::connect(&history, &DeviceHistory::correctWanted,
                   [&](std::size_t number, const std::string& device) {
                     wanted = {number, device};
                   });
  const inspection::OnRecord on_record(records, {}, {});
  history.show("saw/stop", "Saw: stop", on_record.of("saw/stop"), {}, {}, {});
  history.list()->setCurrentItem(history.list()->topLevelItem(0));
  history.correctButton()->click();
  EXPECT_EQ(wanted, std::pair(std::size_t{7}, std::string("saw/stop")));
}

// What was entered later from paper stands where it was made.
TEST(DeviceHistoryOf, IsByTheTimeThatEachCheckGives) {
  inspection::Records records;
  const auto add = [&](const char* device, const char* at) {
    Check check;
    check.number = records.checks.size() + 2;
    check.device = device;
    check.at = *inspection::parseMoment(at);
    check.inspector = "Ada Example";
    check.result = Result::Pass;
    records.checks.push_back(check);
  };
  add("saw/stop", "2026-03-02T09:15:00+01:00");
  add("saw/stop", "2026-03-01T09:15:00+01:00");
  records.checks.back().entered = inspection::parseMoment("2026-03-03T08:00:00+01:00");
  add("saw/stop", "2026-03-02T09:00:00+00:00");
  add("saw/other", "2026-03-02T09:00:00+00:00");
  DeviceHistory history;
  const inspection::OnRecord on_record(records, {}, {*inspection::parseDate("2026-06-01")});
  history.show("saw/stop", "Saw", on_record.of("saw/stop"), on_record.states(), {}, {});
  ASSERT_EQ(history.list()->topLevelItemCount(), 3);
  const auto number = [&](int row) { return history.list()->topLevelItem(row)->text(0).section('.', 0, 0); };
  EXPECT_EQ(number(0), "4") << "09:00 in UTC is after 09:15 at +01:00";
  EXPECT_EQ(number(1), "2");
  EXPECT_EQ(number(2), "3");
  EXPECT_TRUE(
      history.list()->topLevelItem(2)->text(DeviceHistory::When).contains("entered 3 Mar 2026, 08:00"));
}

}  // namespace
}  // namespace stopwalk::window
