// What is not recorded as one may think is told, where one is.
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "app/rounds/device_history.h"
#include "app/rounds/failure_form.h"
#include "app/rounds/words.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class RecordOrTell : public Inspecting {
 protected:
  // As long as it lives, somebody else writes.
  struct Held {
    explicit Held(const std::string& log) : lock(::open((log + ".lock").c_str(), O_RDWR | O_CREAT, 0666)) {
      EXPECT_EQ(::flock(lock, LOCK_EX | LOCK_NB), 0);
    }
    ~Held() { ::close(lock); }
    const int lock;
  };
};

TEST_F(RecordOrTell, AFailedDeviceSaysSoOnItsCardAndAPassThatDoesNotCloseItToo) {
  std::optional<plan::InspectedOnPlan> shown;
  QObject::connect(&place(), &InspectPlace::onPlan, &place(), [&](const auto& now) { shown = now; });
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("3f");
  enter();
  EXPECT_FALSE(card().told().contains("still failed"));
  EXPECT_EQ(card().failedText(), "") << "of the next device";
  key(Qt::Key_PageUp, Qt::ControlModifier);
  EXPECT_TRUE(card().failedText().contains("stays failed until")) << card().failedText().toStdString();
  type("12p");  // only looked at
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(card().told().contains("still failed")) << card().told().toStdString();
  EXPECT_EQ(shown->devices.at(device).mark.sign, plan::CheckSign::Failed);
  round().goTo(device);
  EXPECT_FALSE(card().failedText().isEmpty());
  type("3p");
  enter();
  EXPECT_FALSE(card().told().contains("still failed")) << card().told().toStdString();
  EXPECT_EQ(shown->devices.at(device).mark.sign, plan::CheckSign::Passed);
  round().goTo(device);
  EXPECT_EQ(card().failedText(), "");
}

TEST_F(RecordOrTell, NoTickStandsForAPassThatDoesNotCountAndItIsSaidWhy) {
  std::optional<plan::InspectedOnPlan> shown;
  QObject::connect(&place(), &InspectPlace::onPlan, &place(), [&](const auto& now) { shown = now; });
  openAndCome();
  startRound();
  const std::string device = round().device();
  const auto sign = [&] { return shown->devices.at(device).mark.sign; };
  const auto newest = [&] {
    window->selection().set(device);
    const QTreeWidgetItem* item = place().history().list()->topLevelItem(0);
    const QString found = item->text(rounds::DeviceHistory::Found);
    return item->text(rounds::DeviceHistory::What) + (found.isEmpty() ? "" : ": " + found);
  };
  const auto pass = [&](std::vector<std::string> machines) {
    inspection::Check check;
    check.round = onDisk().rounds.back().number;
    check.device = device;
    check.machines = std::move(machines);
    check.at = records::momentNow();
    check.inspector = "Grace Example";
    check.result = inspection::Result::Pass;
    ASSERT_EQ(records::appendRecord(file, check).written, records::Written::Yes);
    window->records().lookNow();
  };
  type("12p");
  enter();
  EXPECT_TRUE(card().told().contains("pass, only looked at.")) << card().told().toStdString();
  EXPECT_EQ(sign(), plan::CheckSign::Short);
  EXPECT_TRUE(newest().contains("Pass: only looked at")) << newest().toStdString();
  round().goTo(device);
  EXPECT_TRUE(card().findChild<QLabel*>("already")->text().contains("pass, only looked at"));
  const std::vector<std::string> machines = onDisk().checks.back().machines;
  ASSERT_FALSE(machines.empty());
  pass({});
  EXPECT_EQ(sign(), plan::CheckSign::Short);
  EXPECT_TRUE(newest().contains("Pass: not counted: it did not test")) << newest().toStdString();
  EXPECT_FALSE(newest().contains(QString::fromStdString(machines.back()))) << "by its name";
  pass(machines);
  EXPECT_EQ(sign(), plan::CheckSign::Passed);
  EXPECT_TRUE(newest().endsWith("Pass")) << newest().toStdString();
}

TEST_F(RecordOrTell, WhatWasTypedOfTheMendingIsRecordedOrSaidNotToBe) {
  openAndCome();
  startRound();
  type("3f");
  typeInto(card().failure().todo(), "Move the pallet");
  typeInto(card().failure().owner(), "Linus Example");
  card().setFocus();
  type("p");
  EXPECT_FALSE(card().failure().isVisible());
  EXPECT_TRUE(card().told().contains("not recorded")) << card().told().toStdString();
  type("r");
  EXPECT_TRUE(card().failure().isVisible());
  EXPECT_EQ(card().told(), "");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].result, inspection::Result::NotAccessible);
  ASSERT_TRUE(onDisk().checks[0].corrective.has_value());
  EXPECT_EQ(onDisk().checks[0].corrective->what, "Move the pallet");
}

// On that day, and before its end.
TEST_F(RecordOrTell, NothingIsSaidNotToBeDueWhileAnActionIsOrADeviceFailedThatIsGone) {
  openAndCome();
  startRound();
  const std::size_t devices = round().order().size();
  for (std::size_t i = 0; i < devices; ++i) {
    type("1234567p");
    enter();
  }
  round().leave();
  const inspection::Date today = records::momentNow().date;
  const QString summary = place().due().summary();
  ASSERT_TRUE(summary.startsWith("Nothing is due until")) << summary.toStdString();
  inspection::Check check = onDisk().checks.front();
  const auto append = [&] {
    check.at = records::momentNow();
    ASSERT_EQ(records::appendRecord(file, check).written, records::Written::Yes);
    window->records().lookNow();
  };
  check.result = inspection::Result::NotAccessible;
  check.corrective = inspection::Corrective{"move the pallet", "Bo Example", inspection::daysAfter(today, 3)};
  append();
  EXPECT_EQ(place().due().summary(),
            "Nothing is due until " + rounds::dayText(inspection::daysAfter(today, 3)) + ".");
  check.corrective->due = inspection::daysAfter(today, -1);
  append();
  EXPECT_EQ(place().due().summary(), "To be done by today: 1, overdue: 1.");
  check.corrective.reset();
  check.device = "lathe-of-before/stop";
  check.result = inspection::Result::Fail;
  append();
  EXPECT_EQ(place().due().summary(),
            "Failed, and no longer on the plan: 1. To be done by today: 1, overdue: 1.");
  const QTreeWidget& tree = *place().due().tree();
  EXPECT_EQ(tree.topLevelItem(0)->text(0), "Failed: 1");
  EXPECT_TRUE(tree.topLevelItem(0)->child(0)->text(0).startsWith("lathe-of-before/stop: failed on"));
}

TEST_F(RecordOrTell, ARoundThatIsNotStartedDatesNoOther) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  place().start().onPaper()->setText("2026-03-02 09:15");
  place().start().name()->setFocus();
  key(Qt::Key_Escape);
  startRound();
  EXPECT_FALSE(round().round()->entered.has_value());
}

TEST_F(RecordOrTell, ACardThatWaitsForAnotherToBeWrittenSaysSo) {
  openAndCome();
  startRound();
  type("123p");
  {
    const Held held(file);
    key(Qt::Key_Return);
    ASSERT_TRUE(place().isWriting());
    key(Qt::Key_PageDown, Qt::ControlModifier);
    type("123p");
    key(Qt::Key_Return);
    EXPECT_TRUE(card().told().contains("still being written")) << card().told().toStdString();
  }
  ASSERT_TRUE(becomes([&] { return !place().isWriting(); }));
  EXPECT_TRUE(card().told().startsWith("Recorded as")) << card().told().toStdString();
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
}

TEST_F(RecordOrTell, TheWindowClosesOnceWhatIsBeingWrittenIsOnTheDisk) {
  openAndCome();
  startRound();
  type("123p");
  {
    const Held held(file);
    key(Qt::Key_Return);
    ASSERT_TRUE(place().isWriting());
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(window->sentence().contains("is being written")) << window->sentence().toStdString();
    EXPECT_TRUE(window->isVisible());
  }
  EXPECT_TRUE(becomes([&] { return !window->isVisible(); }));
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

TEST_F(RecordOrTell, TheWindowStaysOpenWhereNothingCameOntoTheDisk) {
  openAndCome();
  startRound();
  type("123p");
  const Held held(file);
  key(Qt::Key_Return);
  EXPECT_FALSE(window->close());
  ASSERT_TRUE(becomes([&] { return !place().isWriting(); }));
  QTest::qWait(50);
  EXPECT_TRUE(window->isVisible());
  EXPECT_TRUE(card().told().startsWith("Not recorded")) << card().told().toStdString();
}

TEST_F(RecordOrTell, NothingIsRecordedOutOfSight) {
  openAndCome();
  startRound();
  type("123p");
  key(Qt::Key_1, Qt::AltModifier);
  key(Qt::Key_Return, Qt::ControlModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Inspect);
  QTest::qWait(100);
  EXPECT_TRUE(onDisk().checks.empty());
  key(Qt::Key_Return, Qt::ControlModifier);
  EXPECT_TRUE(becomes([&] { return onDisk().checks.size() == 1; }));
}

TEST_F(RecordOrTell, TheLineOfTheStartFormGoesByItsOwnName) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  place().start().onPaper()->setText("yesterday");
  key(Qt::Key_Return);
  EXPECT_TRUE(place().start().told().startsWith("Walked on paper on yesterday:"))
      << place().start().told().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
