// Records that were read, and are there no longer or cannot be read, are missed: plainly, and without another
// log begun in their place by a check.
#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QListWidget>

#include "app/panels/poster/room_chooser.h"
#include "app/rounds/device_history.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/poster_place.h"
#include "app/window/records_beside.h"
#include "tests/app/poster/pdf_words.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;

class MissedRecords : public Inspecting {
 protected:
  // A round with one check, failed, at the card of the next device.
  void failOne() {
    openAndCome();
    startRound();
    device = round().device();
    type("3f");
    enter();
    ASSERT_EQ(onDisk().checks.size(), 1u);
  }
  void choose(const QString& words) {
    for (auto* action : window->findChildren<QAction*>())
      if (action->text() == words) return action->trigger();
    FAIL() << "no action " << words.toStdString();
  }
  // What is missed is told first.
  void startAnew() {
    key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    type(inspector());
    key(Qt::Key_2);
    place().start().startButton()->setFocus();
    key(Qt::Key_Return);
    place().start().startButton()->click();
    ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
  }
  QString told() { return window->notices().text(); }
  std::vector<inspection::FailedDevice> failed() { return window->records().failed({}); }

  const QString log = QString::fromStdString(file);
  std::string device;
};

TEST_F(MissedRecords, NoCheckIsWrittenIntoAnotherLogThanTheOneOfItsRound) {
  failOne();
  type("123p");
  const rounds::Entered entered = card().entered();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  enter();  // sooner than the window looks by itself
  EXPECT_FALSE(QFile::exists(log));
  EXPECT_FALSE(round().round().has_value());
  EXPECT_TRUE(told().contains("are gone")) << told().toStdString();
  ASSERT_EQ(failed().size(), 1u) << "it does not work any better for it";
  EXPECT_EQ(failed()[0].device, device);

  ASSERT_TRUE(QFile::rename(log + ".away", log));
  window->records().lookNow();
  EXPECT_FALSE(told().contains("are gone"));
  goOnWithRound();
  EXPECT_EQ(card().entered(), entered);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
}

TEST_F(MissedRecords, ARoundThatIsStartedAnewGoesOnFromWhatIsThere) {
  failOne();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  key(Qt::Key_2);
  place().start().startButton()->setFocus();
  key(Qt::Key_Return);
  EXPECT_TRUE(place().start().told().contains("no longer there")) << place().start().told().toStdString();
  EXPECT_FALSE(QFile::exists(log)) << "first it is told";
  EXPECT_TRUE(place().start().told().contains(QString::fromStdString(device))) << "what is forgotten by it";
  place().start().startButton()->click();
  ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
  EXPECT_FALSE(told().contains("are gone")) << told().toStdString();
  ASSERT_EQ(failed().size(), 1u) << "nobody has passed it since";
  round().goTo(device);
  EXPECT_TRUE(card().failedText().contains("stays failed")) << card().failedText().toStdString();
  type("12p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(failed().size(), 1u) << "it was not pressed";
  round().goTo(device);
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(failed().empty());
}

// As everywhere: the failure is open again.
TEST_F(MissedRecords, APassThatIsTakenBackClosesNothingThatFailedByThem) {
  failOne();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  window->records().lookNow();
  startAnew();
  round().goTo(device);
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_TRUE(failed().empty());
  inspection::Check taken_back = onDisk().checks.front();
  taken_back.corrects = taken_back.number;
  taken_back.result = Result::NotTested;
  ASSERT_EQ(records::appendRecord(file, taken_back).written, records::Written::Yes);
  window->records().lookNow();
  ASSERT_EQ(failed().size(), 1u);
  EXPECT_EQ(failed()[0].device, device);
}

TEST_F(MissedRecords, ARoundIsNotStartedAnewByOneEnterWhereTheyAreMissedAlready) {
  failOne();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  window->records().lookNow();
  ASSERT_TRUE(window->records().areMissed());
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  key(Qt::Key_2);
  place().start().startButton()->setFocus();
  key(Qt::Key_Return);
  EXPECT_FALSE(QTest::qWaitFor([&] { return QFile::exists(log); }, 300));
  EXPECT_TRUE(place().start().told().contains(QString::fromStdString(device)))
      << place().start().told().toStdString();
}

TEST_F(MissedRecords, ALogThatLostItsLastRecordsIsNotAddedTo) {
  failOne();
  type("123p");
  enter();
  QFile records(log);
  ASSERT_TRUE(records.open(QFile::ReadWrite));
  const QByteArray all = records.readAll();
  ASSERT_TRUE(records.resize(all.lastIndexOf('\n', all.size() - 2) + 1));
  records.close();
  type("123p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
  EXPECT_TRUE(card().told().contains("no longer there")) << card().told().toStdString();
  EXPECT_TRUE(told().contains("it held 3, now 2")) << told().toStdString();
}

TEST_F(MissedRecords, AFailureThatIsChangedIntoAPassInTheMiddleOfTheLogStillCounts) {
  failOne();
  type("123p");
  enter();
  ASSERT_EQ(failed().size(), 1u);
  QFile records(log);
  ASSERT_TRUE(records.open(QFile::ReadWrite));
  const QByteArray all = records.readAll();
  ASSERT_EQ(all.count("\"fail\""), 1);
  records.seek(all.indexOf("\"fail\""));
  records.write("\"pass\"");
  ASSERT_TRUE(records.flush());
  records.setFileTime(QDateTime::currentDateTime().addSecs(5), QFileDevice::FileModificationTime);
  records.close();
  window->records().lookNow();
  EXPECT_TRUE(window->records().areMissed());
  EXPECT_EQ(failed().size(), 1u);
  EXPECT_TRUE(told().contains("not as they were")) << told().toStdString();
}

TEST_F(MissedRecords, AnEndThatWasNeverFinishedIsTold) {
  failOne();
  QFile records(log);
  ASSERT_TRUE(records.open(QFile::Append));
  records.write("{\"stopwalk_inspections\":1,\"n\":");
  records.close();
  window->records().lookNow();
  EXPECT_TRUE(told().contains("never finished")) << told().toStdString();
}

// Yesterday's copy of the log is put back, such as by a backup: it knows only of the pass.
TEST_F(MissedRecords, WhatFailedByThemIsFailedOnThePlanInTheListInTheHistoryAndInTheBundle) {
  std::optional<plan::InspectedOnPlan> shown;
  QObject::connect(&place(), &InspectPlace::onPlan, &place(), [&](const auto& now) { shown = now; });
  openAndCome();
  startRound();
  device = round().device();
  type("1234567p");
  enter();
  ASSERT_TRUE(QFile::copy(log, log + ".yesterday"));
  key(Qt::Key_PageUp, Qt::ControlModifier);
  type("3f");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  ASSERT_TRUE(QFile::remove(log));
  ASSERT_TRUE(QFile::rename(log + ".yesterday", log));
  window->records().lookNow();
  ASSERT_TRUE(window->records().areMissed());

  EXPECT_EQ(shown->devices.at(device).mark.sign, plan::CheckSign::Failed) << "in the round";
  round().goTo(device);
  EXPECT_TRUE(card().failedText().contains("stays failed")) << card().failedText().toStdString();
  round().leave();
  EXPECT_EQ(shown->devices.at(device).mark.sign, plan::CheckSign::Failed);
  const QTreeWidget& due = *place().due().tree();
  EXPECT_EQ(due.topLevelItem(0)->text(0), "Failed: 1");
  window->selection().set(device);
  EXPECT_TRUE(place().history().title().contains("stays failed until"))
      << place().history().title().toStdString();

  asker.answers = {"All there is"};
  asker.file = pathOf("records.pdf");
  choose("Save the &bundle of a period…");
  const QString bundle = poster::textOfPdf(pathOf("records.pdf")).simplified();
  const qsizetype list = bundle.indexOf("Failed and not passed since");
  ASSERT_GE(list, 0) << bundle.left(2000).toStdString();
  EXPECT_TRUE(bundle.mid(list, 400).contains(QString::fromStdString(device)))
      << bundle.mid(list, 400).toStdString();
}

TEST_F(MissedRecords, OfALogThatIsGoneNobodySaysThatNothingWasInspected) {
  failOne();
  round().leave();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  window->records().lookNow();
  EXPECT_EQ(place().due().tree()->topLevelItem(0)->text(0), "Failed: 1");
  asker.answers = {"All there is"};
  choose("Save the &bundle of a period…");
  ASSERT_FALSE(asker.said.isEmpty());
  EXPECT_TRUE(asker.said.last().contains("are gone")) << asker.said.last().toStdString();
  ASSERT_TRUE(QFile::rename(log + ".away", log));
}

// As the command line, which refuses: a stop that failed would be shown as working.
TEST_F(MissedRecords, NoPosterIsMadeWhileTheRecordsCannotBeRead) {
  failOne();
  PosterPlace& poster = window->posterPlace();
  window->goToPlace(WorkPlace::Poster);
  ASSERT_TRUE(becomes([&] { return poster.isCurrent() && poster.page().document(); }));
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  ASSERT_TRUE(QDir().mkdir(log));
  window->records().lookNow();
  EXPECT_TRUE(becomes([&] { return !poster.page().document(); }));
  EXPECT_TRUE(poster.page().sentence().contains("cannot be read")) << poster.page().sentence().toStdString();
  poster.room().choose("metal");
  QTest::qWait(1000);
  EXPECT_FALSE(poster.page().document());
  using As = PosterFiles::As;
  using Rooms = PosterFiles::Rooms;
  for (const auto& make : std::vector<std::function<void()>>{
           [&] { poster.files().save(As::Pdf, Rooms::This); },
           [&] { poster.files().save(As::Pdf, Rooms::All); }, [&] { poster.files().print(); }}) {
    asker.said.clear();
    asker.file = pathOf("poster.pdf");
    make();
    ASSERT_EQ(asker.said.size(), 1);
    EXPECT_TRUE(asker.said[0].contains("cannot be read")) << asker.said[0].toStdString();
    EXPECT_FALSE(QFile::exists(pathOf("poster.pdf")));
  }
  asker.file.clear();
  ASSERT_TRUE(QDir().rmdir(log));
  ASSERT_TRUE(QFile::rename(log + ".away", log));
  window->records().lookNow();
  EXPECT_TRUE(becomes([&] { return poster.isCurrent() && poster.page().document(); }));
}

TEST_F(MissedRecords, WhatIsGraveStaysInSightWhateverElseIsTold) {
  failOne();
  window->notices().show("language", "The language changes at the next start.", {});
  const QStringList lines = told().split('\n');
  ASSERT_EQ(lines.size(), 2) << told().toStdString();
  EXPECT_TRUE(lines[0].contains(QString::fromStdString(device)));
  EXPECT_TRUE(lines[1].contains("language"));
}

}  // namespace
}  // namespace stopwalk::window
