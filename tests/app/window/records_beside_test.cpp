// The inspection records beside the layout are taken into account at the window.
#include "app/window/records_beside.h"

#include <QFile>
#include <QListWidget>
#include <QPushButton>
#include <QTimer>
#include <fstream>
#include <functional>

#include "app/edits/rename_id.h"
#include "app/panels/poster/room_chooser.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/stations/station_table.h"
#include "app/records/append_record.h"
#include "app/window/audit_place.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/poster_place.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

class WithRecords : public AtTheWindow {
 protected:
  WithRecords() {
    QFile::copy(":/sample-layouts/tram-depot.layout.yaml", path);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
  }
  void openLayout() {
    window->openPath(path);
    window->goToPlace(WorkPlace::Audit);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !stopOf("table-saw/operator").isEmpty(); }, 10000));
    QTest::qWait(400);
  }
  QString stopOf(const QString& station) {
    const auto* model = window->auditPlace().stations().view()->model();
    for (int row = 0; row < model->rowCount(); ++row)
      if (model->index(row, 0).data(panels::StationModel::kIdRole).toString() == station)
        return model->index(row, panels::StationModel::Stop).data().toString();
    return "";
  }
  bool becomes(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 10000); }
  void record(const std::string& device, inspection::Result result) {
    const auto now = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
    const std::string hash(64, '0');
    if (!QFile::exists(QString::fromStdString(file))) {
      ASSERT_EQ(
          records::appendRecord(file, inspection::Round{0, now, "Ada Example", "all", {device}, {1, hash}})
              .written,
          records::Written::Yes);
    }
    inspection::Check check;
    check.round = 1;
    check.device = device;
    check.machines = {device.substr(0, device.find('/'))};
    check.at = now;
    check.inspector = "Ada Example";
    check.result = result;
    check.layout = {1, hash};
    ASSERT_EQ(records::appendRecord(file, check).written, records::Written::Yes);
  }

  // As another program would have, over ten years; the last of them failed.
  void writeYears(std::size_t checks) {
    const std::string hash(64, '0'), device = "table-saw/paddle";
    const auto now = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
    std::string text, head;
    const auto add = [&](const inspection::Record& record, std::size_t number) {
      const std::string line = files::recordLine(record, number, head);
      head = files::endOfLog(line).head;
      text += line;
    };
    add(inspection::Round{0, now, "Ada Example", "all", {device}, {1, hash}}, 1);
    inspection::Check check;
    check.round = 1;
    check.device = device;
    check.machines = {"table-saw"};
    check.at = now;
    check.inspector = "Ada Example";
    check.layout = {1, hash};
    check.note = std::string(200, 'n');
    for (std::size_t i = 1; i <= checks; ++i) {
      check.result = i == checks ? inspection::Result::Fail : inspection::Result::NotTested;
      add(check, i + 1);
    }
    std::ofstream(file) << text;
  }

  const QString path = pathOf("shop.layout.yaml");
  const std::string file = records::recordsFileOf(path.toStdString());
};

TEST_F(WithRecords, DeviceThatFailedIsNoStopUntilItPasses) {
  openLayout();
  const QString before = stopOf("table-saw/operator");
  record("table-saw/paddle", inspection::Result::Fail);
  EXPECT_TRUE(becomes([&] { return stopOf("table-saw/operator") != before; }))
      << "found when another program writes";
  EXPECT_TRUE(window->notices().text().contains("table-saw/paddle"));
  EXPECT_TRUE(window->notices().text().contains("counted as no stop"));

  record("table-saw/paddle", inspection::Result::Pass);
  EXPECT_TRUE(becomes([&] { return stopOf("table-saw/operator") == before; }));
  EXPECT_FALSE(window->notices().text().contains("counted as no stop"));
}

// Each time that the records were read there is more of them.
TEST_F(WithRecords, OneThatWritesOftenerThanItIsReadIsNotWaitedForForEver) {
  openLayout();
  record("table-saw/paddle", inspection::Result::Fail);
  int times = 0;
  const auto again = QObject::connect(&window->records(), &RecordsBeside::changed, window.get(), [&] {
    if (++times > 20) return;
    record("table-saw/paddle", inspection::Result::Fail);
    window->records().look();
  });
  window->records().lookNow();
  QObject::disconnect(again);
  EXPECT_GE(window->records().records().checks.size(), 1u) << "what was there when it was asked";
  EXPECT_LE(times, 2);
}

// No event is done any more, so no answer would come.
TEST_F(WithRecords, TheEndOfTheProgramIsNotHeldUpByReading) {
  openLayout();
  record("table-saw/paddle", inspection::Result::Fail);
  QCoreApplication::exit();
  window->records().lookNow();
  QTimer::singleShot(0, qApp, &QCoreApplication::quit);
  qApp->exec();  // as if it had not ended
  window->records().lookNow();
  EXPECT_EQ(window->records().records().checks.size(), 1u);
}

TEST_F(WithRecords, WhatFailedIsNamedOnOpeningAndWhenItsIdIsGone) {
  record("table-saw/paddle", inspection::Result::Fail);
  openLayout();
  EXPECT_TRUE(window->notices().text().contains("counted as no stop: table-saw/paddle"))
      << window->notices().text().toStdString();
  window->document().edited().apply(edits::renameId(layout(), "table-saw/paddle", "halt"));
  ASSERT_TRUE(edits::findThing(layout(), "table-saw/halt"));
  EXPECT_TRUE(window->notices().text().contains("under this id: table-saw/paddle"))
      << window->notices().text().toStdString();
  window->document().edited().history().undo();
  EXPECT_TRUE(window->notices().text().contains("counted as no stop: table-saw/paddle"));
}

// The poster on the screen follows what is recorded while it is looked at.
TEST_F(WithRecords, ThePosterShowsWhatFailedAsOutOfOrderUntilItPasses) {
  openLayout();
  window->goToPlace(WorkPlace::Poster);
  PosterPlace& place = window->posterPlace();
  place.room().choose("wood");
  const auto page_says = [&](const QString& text) {
    if (!place.isCurrent() || !place.page().document()) return false;
    for (const poster::Page& page : place.page().document()->pages)
      for (const poster::Mark& mark : page.marks)
        if (const auto* words = std::get_if<poster::Text>(&mark); words && words->text.contains(text))
          return true;
    return false;
  };
  const auto told = [&] {
    for (int row = 0; row < place.shortfalls()->count(); ++row)
      if (place.shortfalls()->item(row)->text().contains(
              "The check of table-saw/paddle on 2026-03-02 failed, and it has not passed since"))
        return true;
    return false;
  };
  ASSERT_TRUE(becomes([&] { return page_says("Wood room"); }));
  EXPECT_FALSE(page_says("Out of order"));
  record("table-saw/paddle", inspection::Result::Fail);
  EXPECT_TRUE(becomes([&] { return page_says("Out of order") && told(); }));
  record("table-saw/paddle", inspection::Result::Pass);
  EXPECT_TRUE(becomes([&] { return page_says("Wood room") && !page_says("Out of order") && !told(); }));
}

// What is shown until then is of before, and says so.
TEST_F(WithRecords, ALongLogIsReadWhileTheWindowGoesOn) {
  openLayout();
  const QString before = stopOf("table-saw/operator");
  ASSERT_TRUE(becomes([&] { return plan().isAudited(); }));
  writeYears(24000);
  int turns = 0;
  QTimer turn;
  QObject::connect(&turn, &QTimer::timeout, &turn, [&] { ++turns; });
  turn.start(0);
  int of_reading = -1;
  QObject::connect(&window->records(), &RecordsBeside::changed, &turn, [&] { of_reading = turns; });
  window->records().look();
  EXPECT_TRUE(window->records().isReading());
  EXPECT_FALSE(plan().isAudited()) << "a stop may have failed";
  EXPECT_TRUE(window->records().records().checks.empty());
  ASSERT_TRUE(becomes([&] { return of_reading >= 0; }));
  EXPECT_GT(of_reading, 3) << "nothing else was done while it was read";
  EXPECT_EQ(window->records().records().checks.size(), 24000u);
  EXPECT_TRUE(becomes([&] { return plan().isAudited() && stopOf("table-saw/operator") != before; }));
}

// What failed by them is walked past: until they are read no map is the one of what stops a machine.
TEST_F(WithRecords, NoReachMapIsCurrentWhileTheyAreRead) {
  openLayout();
  window->auditPlace().reach().whatBox()->setCurrentIndex(1);
  ASSERT_TRUE(becomes([&] { return plan().isReachCurrent(); }));
  writeYears(24000);
  window->records().look();
  ASSERT_TRUE(window->records().isReading());
  EXPECT_FALSE(plan().isReachCurrent()) << "the one that is shown";
  window->auditPlace().reach().whatBox()->setCurrentIndex(2);
  int answered = 0, current = 0;
  ASSERT_TRUE(becomes([&] {
    if (!window->records().isReading()) return true;
    answered += plan().reach() && plan().reach()->reach()->target.what == audit::ReachTarget::What::AnyStop;
    current += plan().isReachCurrent();
    return false;
  }));
  EXPECT_GT(answered, 0) << "one was found meanwhile";
  EXPECT_EQ(current, 0);
  EXPECT_TRUE(becomes([&] { return plan().isReachCurrent(); }));
}

TEST_F(WithRecords, WhoNeedsThemAtOnceWaitsForWhatIsBeingRead) {
  openLayout();
  writeYears(3000);
  window->records().look();
  ASSERT_TRUE(window->records().isReading());
  window->records().lookNow();
  EXPECT_FALSE(window->records().isReading());
  EXPECT_EQ(window->records().records().checks.size(), 3000u);
  EXPECT_TRUE(window->notices().text().contains("table-saw/paddle")) << "and all is told of them";
}

TEST_F(WithRecords, RecordsOfOneLayoutAreNotThoseOfAnother) {
  record("table-saw/paddle", inspection::Result::Fail);
  openLayout();
  EXPECT_EQ(window->records().records().checks.size(), 1u);
  const QString other = pathOf("other.layout.yaml");
  QFile::copy(path, other);
  window->openPath(other);
  EXPECT_TRUE(becomes([&] { return window->records().records().checks.empty(); }));
  EXPECT_FALSE(window->notices().text().contains("counted as no stop"));
}

TEST_F(WithRecords, OfALineThatNobodyCanReadItIsToldThatAFailureMayBeInIt) {
  record("table-saw/paddle", inspection::Result::Pass);
  QFile log(QString::fromStdString(file));
  ASSERT_TRUE(log.open(QFile::Append));
  log.write("something else\n");
  log.close();
  record("table-saw/paddle", inspection::Result::Pass);
  openLayout();
  EXPECT_TRUE(window->notices().text().contains("cannot be read any more: 1."))
      << window->notices().text().toStdString();
}

TEST_F(WithRecords, ALogThatIsALinkToWhatIsNotThereIsToldOnOpeningAndNoPosterIsMade) {
  ASSERT_TRUE(QFile::link(pathOf("not-mounted.jsonl"), QString::fromStdString(file)));
  openLayout();
  EXPECT_TRUE(window->notices().text().contains("cannot be read")) << window->notices().text().toStdString();
  window->goToPlace(WorkPlace::Poster);
  EXPECT_TRUE(becomes([&] { return window->posterPlace().page().sentence().contains("cannot be read"); }))
      << window->posterPlace().page().sentence().toStdString();
  EXPECT_FALSE(window->posterPlace().page().document());
}

TEST_F(WithRecords, ALogThatIsMadeALinkToWhatIsNotThereIsTold) {
  openLayout();
  ASSERT_TRUE(QFile::link(pathOf("not-mounted.jsonl"), QString::fromStdString(file)));
  window->records().lookNow();
  EXPECT_TRUE(window->notices().text().contains("cannot be read")) << window->notices().text().toStdString();
}

// As that of what is supposed out of order: the eye finds it without reading the line above the plan.
TEST_F(WithRecords, WhatFailedBearsACrossOnThePlanInDrawAndAuditUntilItPasses) {
  record("table-saw/paddle", inspection::Result::Pass);
  openLayout();
  const auto red = [&](WorkPlace at) {
    window->goToPlace(at);
    plan().goTo("table-saw");
    settle();
    const auto thing = *edits::findThing(layout(), "table-saw/paddle");
    const QPoint middle = pixel(*edits::placeOf(layout(), thing));
    const QImage image = plan().grab(QRect(middle - QPoint(16, 16), QSize(33, 33))).toImage();
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        count += image.pixelColor(x, y) == plan::Theme::of(plan().palette()).fails;
    return count;
  };
  const int before = red(WorkPlace::Audit);  // of the station beside it
  record("table-saw/paddle", inspection::Result::Fail);
  window->records().lookNow();
  for (const WorkPlace place : {WorkPlace::Draw, WorkPlace::Audit}) EXPECT_GT(red(place), before + 40);
  record("table-saw/paddle", inspection::Result::Pass);
  window->records().lookNow();
  // But for a few pixels: the plan may lie a little otherwise in the room that the notice left it.
  for (const WorkPlace place : {WorkPlace::Draw, WorkPlace::Audit}) EXPECT_LT(red(place), before + 10);
}

TEST_F(WithRecords, TheLineThatNamesWhatFailedCannotBeClosed) {
  record("table-saw/paddle", inspection::Result::Fail);
  openLayout();
  ASSERT_TRUE(window->notices().text().contains("table-saw/paddle"));
  for (const auto* button : window->notices().findChildren<QPushButton*>())
    EXPECT_FALSE(button->isVisible()) << button->text().toStdString();
  record("table-saw/paddle", inspection::Result::Pass);
  window->records().lookNow();
  EXPECT_FALSE(window->notices().text().contains("table-saw/paddle"));
}

TEST_F(WithRecords, LineThatWasChangedIsTold) {
  record("table-saw/paddle", inspection::Result::Pass);
  QFile log(QString::fromStdString(file));
  ASSERT_TRUE(log.open(QFile::ReadWrite));
  QByteArray text = log.readAll();
  text.replace("Ada", "Eve");
  log.seek(0);
  log.write(text);
  log.close();
  openLayout();
  EXPECT_TRUE(window->notices().text().contains("is not as it was written"))
      << window->notices().text().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
