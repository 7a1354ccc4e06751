// What goes out of the window as files for others: tables of the layout as it is, whatever is supposed.
#include <QDir>
#include <QFileInfo>
#include <QLabel>

#include "app/documents/safe_write.h"
#include "app/panels/actions/plain_text.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/stations/station_table.h"
#include "app/records/records_file.h"
#include "app/window/audit_place.h"
#include "app/window/main_window.h"
#include "app/window/records_beside.h"
#include "app/window/tell_written.h"
#include "core/files/report_csv.h"

namespace stopwalk::window {

// Not by records that cannot be read, as the command line: a stop that failed would stand there as one.
bool MainWindow::mayExport() {
  records_->lookNow();
  if (const QString why = records_->unreadable(); !why.isEmpty()) {
    asker_.ask({tr("No table is exported"), why, {tr("OK")}});
    return false;
  }
  return true;
}

// Time may pass before, and while a name is chosen.
void MainWindow::exportTable(const QString& what, const QString& name, TableOf table, const QString& said) {
  files_->endTyping();
  if (!mayExport()) return;
  onceAudited(what, [this, what, name, table, said] {
    const QString path = asker_.tableToSave(QDir(document_->folder()).filePath(name + ".csv"));
    if (path.isEmpty() || !mayExport()) return;
    onceAudited(tr("%1, into %2").arg(what, QFileInfo(path).fileName()),
                [this, path, table, said] { writeTable(path, table, said); });
  });
}

void MainWindow::writeTable(const QString& path, TableOf table, const QString& said) {
  const files::FiledReport filed{document_->name().toStdString(), "", *answer_->report};
  documents::WriteResult result;
  const QStringList read_from = document_->readFrom();
  aside_([&] { result = documents::writeExport(path, table(filed), read_from); });
  tellWritten(path, result, said.arg(path));
}

void MainWindow::tellWritten(const QString& path, const documents::WriteResult& result, const QString& said) {
  window::tellWritten(asker_, path, result, said, [this](const QString& told) { sentence_->setText(told); });
}

// As the command line writes it.
void MainWindow::exportStations() {
  const QString stem = document_->path().isEmpty() ? tr("stations") : QFileInfo(document_->path()).baseName();
  exportTable(
      panels::nameOf(audit_place_->stations().exportVerb()), stem,
      [](const files::FiledReport& filed) {
        return files::csvHead() + files::reportCsv(filed, records::momentNow().date);
      },
      tr("All stations, as the layout is, are in %1."));
}

void MainWindow::exportFindings() {
  const QString stem = document_->path().isEmpty()
                           ? tr("findings")
                           : tr("%1-findings").arg(QFileInfo(document_->path()).baseName());
  exportTable(
      panels::nameOf(audit_place_->findings().exportVerb()), stem,
      [](const files::FiledReport& filed) {
        return files::findingsCsvHead() + files::findingsCsv(filed, records::momentNow().date);
      },
      tr("All findings, as the layout is, are in %1."));
}

}  // namespace stopwalk::window
