// What the findings and the table hang on besides the drawing stands with them, and goes out with them.
#include <QApplication>
#include <QDir>
#include <QTimer>

#include "app/panels/findings/accepting.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/stations/station_table.h"
#include "app/window/audit_place.h"
#include "app/window/notice_bar.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class AuditCircumstances : public Inspecting {
 protected:
  AuditCircumstances() {
    window->openPath(path);
    window->goToPlace(WorkPlace::Audit);
    EXPECT_TRUE(becomes([&] { return stations().view()->model()->rowCount() > 0 && exports(); }));
    asker.asked.clear();
    asker.said.clear();
  }
  panels::StationTable& stations() { return window->auditPlace().stations(); }
  QString counted() { return window->auditPlace().findings().summary(); }
  bool exports() {
    QFile::remove(table);
    asker.file = table;
    emit window->auditPlace().exportWanted();
    asker.file.clear();
    return QFile::exists(table);
  }
  // What stands in their place is no file.
  void spoilRecords() { ASSERT_TRUE(QDir().mkdir(log)); }

  const QString log = QString::fromStdString(file);
  const QString table = pathOf("stations.csv");
};

TEST_F(AuditCircumstances, RecordsThatCannotBeReadAreToldWithTheFindingsAndTheCopiedTable) {
  const QString said = "The inspection records cannot be read.";
  EXPECT_FALSE(counted().contains(said));
  spoilRecords();
  window->records().lookNow();
  EXPECT_TRUE(counted().contains(said)) << counted().toStdString();
  EXPECT_TRUE(becomes([&] { return stations().asText().contains('\n' + said + '\n'); }))
      << stations().asText().toStdString();
  ASSERT_TRUE(QDir().rmdir(log));
  window->records().lookNow();
  EXPECT_FALSE(counted().contains(said)) << counted().toStdString();
  EXPECT_FALSE(stations().asText().contains(said));
}

TEST_F(AuditCircumstances, RecordsThatAreMissedAreToldWithTheFindings) {
  come();
  startRound();
  window->records().lookNow();
  window->goToPlace(WorkPlace::Audit);
  EXPECT_FALSE(counted().contains("records")) << counted().toStdString();
  ASSERT_TRUE(QFile::rename(log, log + ".away"));
  window->records().lookNow();
  EXPECT_TRUE(counted().contains("not as they were read before")) << counted().toStdString();
  EXPECT_TRUE(stations().asText().contains("not as they were read before"));
}

TEST_F(AuditCircumstances, RecordsOfWhichALineIsNoneAreToldWithTheFindings) {
  QFile records(log);
  ASSERT_TRUE(records.open(QFile::WriteOnly));
  records.write("no record\n");
  records.close();
  window->records().lookNow();
  EXPECT_TRUE(counted().contains("not all as they were written")) << counted().toStdString();
}

// As the command line, which refuses: a stop that failed would stand in the table as one that works.
// Another finding may be there by them, and the walk to the stop another.
TEST_F(AuditCircumstances, NothingIsAcceptedBeforeTheRecordsThatAreThereAreRead) {
  int opened = 0;
  QTimer leaves;
  leaves.callOnTimeout([&] {
    if (QWidget* modal = QApplication::activeModalWidget()) opened += modal->close();
  });
  leaves.start(10);
  auto& findings = window->auditPlace().findings();
  findings.tree()->setCurrentItem(findings.tree()->topLevelItem(0)->child(0));
  ASSERT_TRUE(findings.current());
  QFile records(log);
  ASSERT_TRUE(records.open(QFile::WriteOnly));
  records.write("no record\n");
  records.close();
  window->records().look();
  ASSERT_TRUE(window->records().isReading());
  window->auditPlace().accepting().acceptVerb().trigger();
  EXPECT_EQ(opened, 0);
  EXPECT_TRUE(becomes([&] { return opened == 1; })) << "as soon as they are read";
}

TEST_F(AuditCircumstances, NoTableIsExportedWhileTheRecordsCannotBeRead) {
  spoilRecords();
  EXPECT_FALSE(exports()) << "looked at sooner than the window looks by itself";
  ASSERT_EQ(asker.said.size(), 1);
  EXPECT_TRUE(asker.said[0].contains("cannot be read")) << asker.said[0].toStdString();
  ASSERT_TRUE(QDir().rmdir(log));
  EXPECT_TRUE(becomes([&] { return exports(); }));
}

TEST_F(AuditCircumstances, NoTableIsExportedOfRecordsThatWereSpoiltWhileItsNameWasChosen) {
  asker.meanwhile = [&] { spoilRecords(); };
  EXPECT_FALSE(exports());
  EXPECT_TRUE(asker.said.join(' ').contains("cannot be read"));
}

TEST_F(AuditCircumstances, AnAuditThatCouldNotBeComputedIsToldUntilOneIs) {
  const auto told = [&] { return window->notices().text().contains("could not be computed: no memory"); };
  emit window->findChild<LiveAudit*>()->failed("no memory");
  EXPECT_TRUE(told());
  layout::Layout other = layout();
  other.site.name = "Another shop";
  window->document().edited().apply({"Change the name", other});
  EXPECT_TRUE(becomes([&] { return !told(); }));
}

}  // namespace
}  // namespace stopwalk::window
