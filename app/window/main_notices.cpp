// What the window says of its file: in the title, and above the plan.
#include <QFile>
#include <QFileInfo>
#include <QLabel>

#include "app/records/copy_records.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/records_beside.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

std::string recordsOf(const QString& layout_path) {
  return records::recordsFileOf(QFile::encodeName(layout_path).toStdString());
}

}  // namespace

void MainWindow::showTitle() {
  QString title = document_->name() + "[*]";
  if (document_->isReadOnly()) title += tr(" (for looking only)");
  setWindowTitle(title + " – Stopwalk");
  setWindowModified(!document_->isSaved());
  allowChanges();
  showNotices();
}

void MainWindow::showNotices() {
  const auto trouble = document_->lock().trouble();
  if (document_->path().isEmpty() || !trouble) return notices_->clear("read-only");
  notices_->show("read-only", trouble->text(), {{tr("Save as…"), [this] { files_->saveAs(); }}});
}

// What the reader had to say about a file that it could read all the same.
void MainWindow::showWarnings() {
  const auto& warnings = document_->diagnostics();
  if (warnings.empty()) return notices_->clear("reader");
  QString text = tr("%1, line %2: %3.")
                     .arg(document_->name())
                     .arg(warnings.front().line)
                     .arg(QString::fromStdString(warnings.front().text));
  if (warnings.size() > 1) text += " " + tr("And %n more.", nullptr, static_cast<int>(warnings.size()) - 1);
  const auto showAll = [this, name = document_->name(), lines = FileFlow::linesOf(warnings)] {
    asker_.ask({tr("What was noticed in %1").arg(name),
                tr("The layout was opened all the same. The lines are below."),
                {tr("OK")},
                lines});
  };
  notices_->show("reader", text, {{tr("Show them all"), showAll}, {tr("Close"), {}}});
}

// Records stay with the file that they were made by: what failed there would silently count as working here.
void MainWindow::showLeftRecords(const QString& was) {
  records_->lookNow();
  const records::ReadRecords left = records::readRecords(QFile::encodeName(was).toStdString());
  if (!left.there || left.file == recordsOf(document_->path())) return notices_->clear("left records");
  const QString old = QFileInfo(was).fileName();
  const auto failed = inspection::failedDevices(left.log.records, profile_.inspection,
                                                planning::asOf(*shown_, *kinds_, records::momentNow()))
                          .size();
  QString text =
      !left.unreadable.empty()
          ? tr("The inspection records of %1 stay with it, and cannot be read: what failed by them is "
               "not known here.")
                .arg(old)
          : tr("The inspection records of %1 stay with it. Failed by them, and not known here: %2 "
               "devices.")
                .arg(old)
                .arg(failed);
  std::vector<NoticeBar::Answer> answers;
  if (records_->read()->there) {
    text = tr("%1 %2 has records of its own.").arg(text, document_->name());
  } else {
    answers = {{tr("Copy the records"), [this, was] { doOrTell(asker_, [&] { copyRecords(was); }); }},
               {tr("Begin without them"), {}}};
  }
  notices_->show("left records", text, std::move(answers), NoticeBar::Weight::Grave);
}

void MainWindow::copyRecords(const QString& was) {
  records::Copied copied;
  const std::string from = recordsOf(was), to = recordsOf(document_->path());
  aside_([&] { copied = records::copyRecords(from, to); });
  records_->lookNow();
  if (copied.written == records::Written::Yes)
    return sentence_->setText(tr("The inspection records of %1 are copied. Each goes on by itself from here.")
                                  .arg(QFileInfo(was).fileName()));
  const QString why = QString::fromStdString(copied.why);
  if (copied.written == records::Written::Unsure)
    return notices_->show("left records",
                          tr("The records are copied, but perhaps not for good: %1.").arg(why), {},
                          NoticeBar::Weight::Grave);
  showLeftRecords(was);
  asker_.ask({tr("The records were not copied"), why, {tr("OK")}});
}

void MainWindow::showDiskState(documents::DiskState state) {
  const QString name = document_->name();
  switch (state) {
    case documents::DiskState::Same:
      return notices_->clear(kOnDisk);
    case documents::DiskState::Changed:
      return notices_->show(
          kOnDisk, tr("%1 was changed by another program.").arg(name),
          {{tr("Open it as it is now"), [this] { files_->revert(); }}, {tr("Keep mine"), {}}});
    case documents::DiskState::Vanished:
      return notices_->show(kOnDisk, tr("%1 is no longer on the disk.").arg(name),
                            {{tr("Save it again"), [this] { files_->save(); }}, {tr("Close"), {}}});
    case documents::DiskState::Unreadable:
      return notices_->show(kOnDisk, tr("%1 can no longer be read.").arg(name),
                            {{tr("Save as…"), [this] { files_->saveAs(); }}, {tr("Close"), {}}});
  }
}

}  // namespace stopwalk::window
