// Rounds that are stopped and gone on with, writing that fails, others who write, and corrections.
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <QDir>
#include <QListWidget>
#include <QScrollArea>
#include <QScrollBar>

#include "app/records/append_record.h"
#include "app/rounds/device_history.h"
#include "app/rounds/failure_form.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/words.h"
#include "app/window/notice_bar.h"
#include "app/window/records_beside.h"
#include "tests/app/panels/accessible.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;

TEST_F(Inspecting, WhatMeetsNoRecordsIsNotCalledRecordedAndStaysOnItsCard) {
  openAndCome();
  startRound();
  const std::string first = round().device();
  type("123p");
  const rounds::Entered entered = card().entered();
  // A folder in the place of the log: nobody can write it, root neither.
  const QString log = QString::fromStdString(file);
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  ASSERT_TRUE(QDir().mkdir(log));
  enter();
  EXPECT_FALSE(window->sentence().contains("Recorded")) << window->sentence().toStdString();
  EXPECT_TRUE(window->notices().text().contains("cannot be read")) << window->notices().text().toStdString();
  ASSERT_TRUE(QDir().rmdir(log));
  ASSERT_TRUE(QFile::rename(log + ".away", log));
  window->records().lookNow();
  if (!round().round()) goOnWithRound();
  EXPECT_EQ(round().device(), first);
  EXPECT_EQ(card().entered(), entered);
  card().setFocus();
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

TEST_F(Inspecting, TheNextCardBeginsAtItsTop) {
  openAndCome();
  window->resize(1100, 640);
  startRound();
  settle();
  QScrollBar* bar = card().findChild<QScrollArea*>()->verticalScrollBar();
  ASSERT_GT(bar->maximum(), 0) << "all of it is in sight: nothing is tried here";
  bar->setValue(bar->maximum());
  type("12p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(bar->value(), 0);
}

TEST_F(Inspecting, TwoRoundsOfOneDayAreToldApart) {
  openAndCome();
  startRound();
  type("12p");
  enter();
  const std::size_t devices = round().order().size();
  round().leave();
  settle();
  startRound();
  round().leave();
  settle();
  const QListWidget& open = *place().due().openRounds();
  ASSERT_EQ(open.count(), 2);
  const std::vector<inspection::Round> rounds = onDisk().rounds;
  for (int i = 0; i < 2; ++i) {
    const inspection::Round& round =
        rounds[static_cast<std::size_t>(open.item(i)->data(Qt::UserRole).toInt()) == rounds[0].number ? 0
                                                                                                      : 1];
    EXPECT_EQ(open.item(i)->text(), QString("Round %1, %2, Ada Example: %3 of %4 checked")
                                        .arg(round.number)
                                        .arg(rounds::shortMomentText(round.at))
                                        .arg(round.number == rounds[0].number ? 1 : 0)
                                        .arg(devices));
  }
}

TEST_F(Inspecting, AnotherWhoWritesIsWaitedForWithoutBlockingTheWindowAndThenNamed) {
  openAndCome();
  startRound();
  type("123p");
  const int lock = ::open((file + ".lock").c_str(), O_RDWR | O_CREAT, 0666);
  ASSERT_EQ(::flock(lock, LOCK_EX | LOCK_NB), 0);
  ASSERT_EQ(::write(lock, "bo on bench-pc\n", 15), 15);
  QElapsedTimer clock;
  clock.start();
  key(Qt::Key_Return);
  EXPECT_LT(clock.elapsed(), 1000);
  EXPECT_TRUE(place().isWriting());
  EXPECT_FALSE(card().recordButton()->isEnabled());
  EXPECT_TRUE(becomes([&] { return !place().isWriting(); }));
  EXPECT_TRUE(card().told().contains("bo on bench-pc")) << card().told().toStdString();
  EXPECT_TRUE(onDisk().checks.empty());
  ::close(lock);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

TEST_F(Inspecting, AFailureAsksWhatWasDoneAndWhoMendsIt) {
  openAndCome();
  startRound();
  type("3f");
  EXPECT_TRUE(card().failure().isVisible());
  const auto fill = [&](QLineEdit* line, const QString& text) {
    line->setFocus();
    type(text);
  };
  fill(card().failure().taggedBy(), "Bo Example");
  fill(card().failure().taggedUntil(), "2026-12-10");
  fill(card().failure().todo(), "new contactor");
  enter();
  EXPECT_TRUE(onDisk().checks.empty()) << "nobody does it";
  fill(card().failure().owner(), "Cy Example");
  fill(card().failure().until(), "2026-12-03");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u);
  const inspection::Check check = onDisk().checks.front();
  EXPECT_EQ(check.result, Result::Fail);
  EXPECT_EQ(check.tagged_out, (inspection::TagOut{"Bo Example", inspection::parseDate("2026-12-10")}));
  EXPECT_EQ(check.action, "") << "no word of the window's language is in a record";
  EXPECT_EQ(check.corrective,
            (inspection::Corrective{"new contactor", "Cy Example", inspection::parseDate("2026-12-03")}));
}

TEST_F(Inspecting, TheRunDownIsTimedByTheSpaceBarAndItsMeanIsOfTheRunsThatAreLeft) {
  openAndCome();
  startRound();
  for (const int ms : {120, 240, 60}) {
    key(Qt::Key_Space);
    ASSERT_TRUE(card().timer().isRunning());
    QTest::qWait(ms);
    key(Qt::Key_Space);
  }
  ASSERT_EQ(card().timer().runs().size(), 3u);
  EXPECT_GE(card().timer().runs()[1], 0.24);
  card().timer().fields().field(0)->clear();
  const auto runs = card().timer().runs();
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_TRUE(card().timer().said().startsWith("2 of 10, mean")) << card().timer().said().toStdString();
  EXPECT_TRUE(card().timer().said().contains(QString::number((runs[0] + runs[1]) / 2, 'f', 2)));
  type("34p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u);
  EXPECT_EQ(onDisk().checks[0].run_down_s, runs);
}

TEST_F(Inspecting, ACheckIsCorrectedByAnotherAndBothStandInTheHistory) {
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("1235p");
  enter();
  key(Qt::Key_PageUp, Qt::ControlModifier);
  ASSERT_EQ(round().device(), device);
  ASSERT_EQ(place().history().list()->topLevelItemCount(), 1);
  place().history().list()->setCurrentItem(place().history().list()->topLevelItem(0));
  place().history().correctButton()->click();
  EXPECT_FALSE(card().entered().result.has_value()) << "the result is chosen anew";
  EXPECT_EQ(card().tried().tested().size(), 4u);
  type("f");
  signAs("Bo Example");
  enter();
  const inspection::Records records = onDisk();
  ASSERT_EQ(records.checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(records.checks[1].corrects, records.checks[0].number);
  EXPECT_EQ(records.checks[1].result, Result::Fail);
  window->selection().set(device);
  ASSERT_EQ(place().history().list()->topLevelItemCount(), 2);
  EXPECT_TRUE(place().history().list()->topLevelItem(0)->text(0).contains("in place of"));
  EXPECT_TRUE(place().history().list()->topLevelItem(1)->text(0).contains("corrected by"));
}

TEST_F(Inspecting, EveryControlHasANameAndIsMetByAFinger) {
  openAndCome();
  EXPECT_EQ(panels::namelessControls(*window).join("\n"), "");
  startRound();
  type("f");
  EXPECT_EQ(panels::namelessControls(*window).join("\n"), "");
  for (const QWidget* control : card().findChildren<QWidget*>())
    if (control->focusPolicy() != Qt::NoFocus && control->isVisible()) {
      EXPECT_GE(std::min(control->width(), control->height()), rounds::kTouch_px)
          << control->accessibleName().toStdString() << " " << control->metaObject()->className();
    }
}

TEST_F(AtTheWindow, ALayoutWithoutAFileIsToBeSavedBeforeItIsInspected) {
  window->files().openSample("tram-depot.layout.yaml");
  window->goToPlace(WorkPlace::Inspect);
  EXPECT_TRUE(window->inspectPlace().due().summary().contains("Save the layout first"));
  EXPECT_FALSE(window->inspectPlace().due().startButton()->isEnabled());
}

}  // namespace
}  // namespace stopwalk::window
