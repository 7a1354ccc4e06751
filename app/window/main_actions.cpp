// What the actions of the menus do with the things that are selected.
#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QImageReader>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>

#include "app/edits/add_things.h"
#include "app/edits/copy_things.h"
#include "app/edits/remove_things.h"
#include "app/panels/actions/action_finder.h"
#include "app/panels/things/thing_list.h"
#include "app/plan/plan_view.h"
#include "app/window/main_window.h"

namespace stopwalk::window {
namespace {

constexpr geometry::Point kBeside_mm{500, -500};  // where a copy goes: not on top of what it copies
constexpr double kUnderlayWidth_mm = 10000;       // until it is brought to scale

}  // namespace

bool MainWindow::apply(edits::Edit edit) {
  document_->edited().pause();
  return document_->edited().apply(std::move(edit));
}

void MainWindow::copy() {
  const edits::Clip clip = edits::copyThings(document_->edited().layout(), selection_.ids());
  if (clip.empty()) return;
  const QByteArray text = QByteArray::fromStdString(edits::clipText(clip));
  auto* copied = new QMimeData;
  copied->setData(edits::kClipType, text);
  copied->setText(QString::fromUtf8(text));
  QApplication::clipboard()->setMimeData(copied);
}

void MainWindow::paste() {
  const QMimeData* clipboard = QApplication::clipboard()->mimeData();
  if (!clipboard || !clipboard->hasFormat(edits::kClipType))
    return sentence_->setText(tr("There is nothing to paste."));
  const auto clip =
      edits::readClip(clipboard->data(edits::kClipType).toStdString(), document_->catalogue().kinds);
  if (!clip) return sentence_->setText(tr("There is nothing to paste."));
  edits::Pasted pasted = edits::paste(document_->edited().layout(), *clip, kBeside_mm);
  if (apply(std::move(pasted.edit))) selection_.set(pasted.ids);
}

void MainWindow::duplicate() {
  edits::Pasted pasted = edits::duplicateThings(document_->edited().layout(), selection_.ids(), kBeside_mm);
  if (apply(std::move(pasted.edit))) selection_.set(pasted.ids);
}

void MainWindow::remove() {
  apply(edits::removeThings(document_->edited().layout(), selection_.ids(), document_->catalogue().kinds));
}

void MainWindow::selectAll(std::optional<edits::ThingKind> kind) {
  using enum edits::ThingKind;
  const layout::Layout& layout = document_->edited().layout();
  std::vector<std::string> ids;
  for (const edits::Thing& thing : edits::allThings(layout)) {
    const bool stands = thing.kind != Station && thing.kind != MachineDevice && thing.kind != Underlay;
    if (kind ? thing.kind == *kind : stands) ids.push_back(edits::idOf(layout, thing));
  }
  selection_.set(std::move(ids));
}

void MainWindow::chooseUnderlay() {
  const QString path = asker_.pictureToOpen(document_->folder());
  if (path.isEmpty()) return;
  const QSize size = QImageReader(path).size();
  if (!size.isValid()) {
    asker_.ask({tr("%1 is not a picture that can be read").arg(QFileInfo(path).fileName()),
                tr("Choose a PNG or JPEG file, such as a scan or a photo of a plan."),
                {tr("OK")}});
    return;
  }
  const bool is_beside = QFileInfo(path).absolutePath() == document_->folder();
  layout::Underlay underlay;
  underlay.image = (is_beside ? QFileInfo(path).fileName() : path).toStdString();
  underlay.mm_per_pixel = kUnderlayWidth_mm / size.width();
  underlay.at = plan_->middle();
  if (apply(edits::setUnderlay(document_->edited().layout(), underlay)))
    choose({plan::Choice::What::ScaleUnderlay});
}

void MainWindow::showMenu(const QPoint& global) {
  QMenu menu;
  menu.addAction(tr("Copy"), this, &MainWindow::copy);
  menu.addAction(tr("Paste"), this, &MainWindow::paste);
  menu.addAction(tr("Duplicate"), this, &MainWindow::duplicate);
  menu.addAction(tr("Remove"), this, &MainWindow::remove);
  menu.addSeparator();
  menu.addActions(things_->verbs());
  menu.exec(global);
}

void MainWindow::findAction() {
  panels::ActionFinder(this).exec();
}

void MainWindow::showCaution() {
  QMessageBox::information(
      this, tr("What Stopwalk does not do"),
      tr("Stopwalk checks a drawing against chosen rules. It does not certify a machine, a stop or a room. "
         "Local codes, the machine's maker, the authority having jurisdiction and licensed people come "
         "first.\n\n"
         "Never rely on a stop as a guard. Test a stop only as the maker and the shop's procedure say, with "
         "the "
         "work clear. Anyone may press any stop."));
}

}  // namespace stopwalk::window
