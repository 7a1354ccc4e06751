// What is entered in a round by keyboard is what stands in the records, whatever comes between.
#include <sys/resource.h>

#include <csignal>
#include <filesystem>

#include "app/rounds/failure_form.h"
#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Check;
using inspection::Result;
using inspection::Tried;

// A disk that is full beyond so many bytes of a file, for as long as it lives.
class FullDisk {
 public:
  explicit FullDisk(std::uintmax_t bytes) {
    ::getrlimit(RLIMIT_FSIZE, &was_);
    signal_ = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit now{bytes, was_.rlim_max};
    EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &now), 0);
  }
  ~FullDisk() {
    ::setrlimit(RLIMIT_FSIZE, &was_);
    std::signal(SIGXFSZ, signal_);
  }
  FullDisk(const FullDisk&) = delete;
  FullDisk& operator=(const FullDisk&) = delete;

 private:
  rlimit was_{};
  void (*signal_)(int) = SIG_DFL;
};

class WholeRound : public Inspecting {
 protected:
  void timeRuns(int runs) {
    for (int i = 0; i < runs; ++i) {
      key(Qt::Key_Space);
      EXPECT_TRUE(card().timer().isRunning());
      QTest::qWait(20 + 5 * i);
      key(Qt::Key_Space);
    }
  }
};

TEST_F(WholeRound, EachDeviceIsRecordedAsItWasEntered) {
  openAndCome();
  startRound();
  const std::vector<std::string> order = round().order();
  ASSERT_GT(order.size(), 5u);
  std::vector<Check> expected(order.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    ASSERT_EQ(round().device(), order[i]);
    Check& check = expected[i];
    check.device = order[i];
    check.result = Result::Pass;
    check.tested = {{Tried::Clear, true}, {Tried::Legible, true}, {Tried::Pressed, true}};
    if (i > 1) check.second = "Grace Example";  // who came along stays on the cards that follow
    switch (i) {
      case 0:
        type("1234567p");
        timeRuns(3);
        check.tested = {{Tried::Clear, true},
                        {Tried::Legible, true},
                        {Tried::Pressed, true},
                        {Tried::PressedRunning, true},
                        {Tried::Latches, true},
                        {Tried::StaysStoppedReleased, true},
                        {Tried::StaysStoppedPower, true}};
        check.run_down_s = card().timer().runs();
        ASSERT_EQ(check.run_down_s.size(), 3u);
        break;
      case 1:
        type("35566f");
        typeInto(card().failure().taggedBy(), "Grace Example");
        typeInto(card().failure().action(), "Isolator locked");
        typeInto(card().failure().todo(), "Mend the latch");
        typeInto(card().failure().owner(), "Linus Example");
        typeInto(card().failure().until(), "2027-01-15");
        typeInto(card().second(), "Grace Example");
        check.result = Result::Fail;
        check.tested = {
            {Tried::Pressed, true}, {Tried::Latches, false}, {Tried::StaysStoppedReleased, false}};
        check.tagged_out = inspection::TagOut{"Grace Example", {}};
        check.action = "Isolator locked";
        check.corrective =
            inspection::Corrective{"Mend the latch", "Linus Example", inspection::parseDate("2027-01-15")};
        check.second = "Grace Example";
        break;
      case 2:
        type("r");
        typeInto(card().note(), "Pallet before it, 1 of 2 fr p");
        check.result = Result::NotAccessible;
        check.tested.clear();
        check.note = "Pallet before it, 1 of 2 fr p";
        break;
      case 3:
        type("n");
        check.result = Result::NotTested;
        check.tested.clear();
        break;
      default:
        type("123p");
        if (order[i].ends_with("/start")) check.tested = {{Tried::Seen, true}};  // it is never pressed
    }
    enter();
    ASSERT_EQ(onDisk().checks.size(), i + 1) << card().told().toStdString();
  }
  EXPECT_TRUE(round().isFinished());
  EXPECT_TRUE(card().told().contains("All devices of this round are checked"));

  const files::InspectionLog log = records::readRecords(path.toStdString()).log;
  ASSERT_EQ(log.records.checks.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    const Check& check = log.records.checks[i];
    EXPECT_EQ(check.device, expected[i].device);
    EXPECT_EQ(check.result, expected[i].result) << check.device;
    EXPECT_EQ(check.tested, expected[i].tested) << check.device;
    EXPECT_EQ(check.run_down_s, expected[i].run_down_s) << check.device;
    EXPECT_EQ(check.note, expected[i].note) << check.device;
    EXPECT_EQ(check.second, expected[i].second) << check.device;
    EXPECT_EQ(check.tagged_out, expected[i].tagged_out) << check.device;
    EXPECT_EQ(check.action, expected[i].action) << check.device;
    EXPECT_EQ(check.corrective, expected[i].corrective) << check.device;
    EXPECT_EQ(check.inspector, inspector().toStdString());
    EXPECT_EQ(check.round, log.records.rounds.front().number);
    EXPECT_EQ(check.layout, log.records.rounds.front().layout);
    EXPECT_FALSE(check.corrects.has_value());
  }
  EXPECT_EQ(files::verifyLog(log).line, 0u) << files::verifyLog(log).why;
  EXPECT_EQ(log.lines, expected.size() + 1);
}

TEST_F(WholeRound, GoesOnAnotherDayWhereItWasWithTheHalfEnteredCard) {
  openAndCome();
  startRound();
  const std::vector<std::string> order = round().order();
  type("123p");
  enter();
  ASSERT_EQ(round().device(), order[1]);
  type("1255f");
  timeRuns(2);
  typeInto(card().failure().todo(), "Mend the latch");
  typeInto(card().failure().owner(), "Linus Example");
  typeInto(card().note(), "sticks");
  const rounds::Entered entered = card().entered();
  again();
  ASSERT_FALSE(round().round().has_value());
  goOnWithRound();
  EXPECT_EQ(round().order(), order);
  EXPECT_EQ(round().device(), order[1]);
  EXPECT_EQ(round().checked(), 1u);
  EXPECT_EQ(card().entered(), entered);
  EXPECT_EQ(card().entered().run_down.size(), 2);
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks.back().note, "sticks");
}

TEST_F(WholeRound, EachCardKeepsWhatWasEnteredOnIt) {
  openAndCome();
  startRound();
  type("123p");
  const rounds::Entered first = card().entered();
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(card().entered(), rounds::Entered());
  type("r");
  key(Qt::Key_PageUp, Qt::ControlModifier);
  EXPECT_EQ(card().entered(), first);
  key(Qt::Key_1, Qt::AltModifier);
  come();
  EXPECT_EQ(card().entered(), first);
  EXPECT_TRUE(onDisk().checks.empty());
}

TEST_F(WholeRound, WhatCannotBeWrittenStaysOnItsCardAndIsTold) {
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("123f");
  typeInto(card().note(), "sticks");
  const rounds::Entered entered = card().entered();
  const auto bytes = std::filesystem::file_size(file);
  {
    const FullDisk full(bytes + 20);
    enter();
  }
  EXPECT_TRUE(card().told().contains("Not recorded")) << card().told().toStdString();
  EXPECT_EQ(round().device(), device);
  EXPECT_EQ(card().entered(), entered);
  EXPECT_FALSE(round().resultOf(device).has_value());
  EXPECT_EQ(std::filesystem::file_size(file), bytes) << "nothing is half written";

  again();
  goOnWithRound();
  EXPECT_EQ(card().entered(), entered);
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].note, "sticks");
  EXPECT_EQ(files::verifyLog(records::readRecords(path.toStdString()).log).line, 0u);
}

TEST_F(WholeRound, ARecordOfAnotherProgramAppearsAndLeavesTheCardAsItIs) {
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("123");
  const rounds::Entered entered = card().entered();
  recordElsewhere(device, Result::Fail);
  EXPECT_TRUE(becomes([&] { return round().resultOf(device) == Result::Fail; }));
  EXPECT_EQ(round().device(), device);
  EXPECT_EQ(card().entered(), entered);
  EXPECT_EQ(round().checked(), 1u);
}

TEST_F(WholeRound, TheMeanIsOfTenRunsAndThereIsNoEleventh) {
  openAndCome();
  startRound();
  timeRuns(static_cast<int>(rounds::kRuns));
  const std::vector<double> runs = card().timer().runs();
  ASSERT_EQ(runs.size(), 10u);
  double sum = 0;
  for (const double run_s : runs) {
    EXPECT_GE(run_s, 0.02);
    sum += run_s;
  }
  const QString mean = QString::number(sum / 10, 'f', 2);
  EXPECT_TRUE(card().timer().said().contains("10 of 10")) << card().timer().said().toStdString();
  EXPECT_TRUE(card().timer().said().contains(mean)) << card().timer().said().toStdString();
  key(Qt::Key_Space);
  EXPECT_FALSE(card().timer().isRunning());
  type("1234p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].run_down_s, runs);
}

TEST_F(WholeRound, NothingIsRecordedWhileTheClockRuns) {
  openAndCome();
  startRound();
  type("1234p");
  key(Qt::Key_Space);
  enter();
  EXPECT_TRUE(onDisk().checks.empty());
  EXPECT_TRUE(card().timer().isRunning());
  EXPECT_TRUE(card().told().contains("clock")) << card().told().toStdString();
  key(Qt::Key_Space);
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].run_down_s.size(), 1u);
}

TEST_F(WholeRound, KeysTypedInALineGoIntoTheLine) {
  openAndCome();
  startRound();
  typeInto(card().note(), "1 2 pfnr 6");
  EXPECT_EQ(card().note()->text(), "1 2 pfnr 6");
  rounds::Entered only_note;
  only_note.note = "1 2 pfnr 6";
  EXPECT_EQ(card().entered(), only_note);
  EXPECT_FALSE(card().timer().isRunning());
}

}  // namespace
}  // namespace stopwalk::window
