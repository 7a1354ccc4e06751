// What the window says of its file: in the title, and above the plan.
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"

namespace stopwalk::window {

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

void MainWindow::showDiskState(documents::DiskState state) {
  const QString name = document_->name();
  switch (state) {
    case documents::DiskState::Same:
      return notices_->clear("disk");
    case documents::DiskState::Changed:
      return notices_->show(
          "disk", tr("%1 was changed by another program.").arg(name),
          {{tr("Open it as it is now"), [this] { files_->revert(); }}, {tr("Keep mine"), {}}});
    case documents::DiskState::Vanished:
      return notices_->show("disk", tr("%1 is no longer on the disk.").arg(name),
                            {{tr("Save it again"), [this] { files_->save(); }}, {tr("Close"), {}}});
    case documents::DiskState::Unreadable:
      return notices_->show("disk", tr("%1 can no longer be read.").arg(name),
                            {{tr("Save as…"), [this] { files_->saveAs(); }}, {tr("Close"), {}}});
  }
}

}  // namespace stopwalk::window
