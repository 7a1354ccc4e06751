#include "app/window/file_flow.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/shop_files/shop_files.h"
#include "core/files/layout_reader.h"

namespace stopwalk::window {

QString FileFlow::linesOf(const std::vector<files::Diagnostic>& diagnostics) {
  std::string text;
  for (const auto& d : diagnostics) text += files::format(d);
  return QString::fromStdString(text);
}

std::pair<plan::Catalogue, QString> FileFlow::catalogueFor(const QString& path) {
  app::ShopFiles files = app::readShopFiles(path.toStdString());
  QString trouble;
  if (!files.good) {
    trouble = FileFlow::linesOf(files.diagnostics);
    if (!files.unreadable.empty()) trouble += QString::fromStdString(files.unreadable);
    return {plan::bundledCatalogue(), trouble};
  }
  return {{std::move(files.kinds), std::move(files.templates)}, trouble};
}

FileFlow::FileFlow(Document& document, documents::RecoveryStore& store, Asker& asker, QSettings& settings,
                   QObject* parent)
    : QObject(parent), document_(document), store_(store), asker_(asker), recent_(settings) {}

void FileFlow::tell(const documents::Trouble& trouble, const QString& title, const QString& details) {
  asker_.ask({title, trouble.text(), {tr("OK")}, details});
}

void FileFlow::startNew() {
  if (mayLeave()) document_.start();
}

void FileFlow::open() {
  const QString path = asker_.fileToOpen(document_.folder());
  if (!path.isEmpty()) openPath(path);
}

Document::Lock FileFlow::lockToOpen(const QString& path) {
  Document::Lock lock = document_.lockFor(path);
  while (lock->state() == documents::LockState::Others) {
    const documents::Holder holder = *lock->holder();
    const int answer = asker_.ask(
        {tr("%1 is open elsewhere").arg(QFileInfo(path).fileName()),
         tr("It is being worked on by %1. Two people who save over each other lose work.").arg(holder.text()),
         {tr("Open for looking only"), tr("Take it over"), tr("Do not open it")}});
    if (answer == 0) return lock;
    if (answer != 1) return nullptr;
    lock->breakAndTake(holder);  // where somebody else came meanwhile, that is asked anew
  }
  return lock;
}

void FileFlow::openPath(const QString& asked) {
  if (mayLeave()) openNow(QFileInfo(asked).absoluteFilePath());
}

// The work in the window is let go last, when nothing can go wrong any more.
void FileFlow::openNow(const QString& path) {
  auto [catalogue, trouble] = catalogueFor(path);
  documents::OpenResult opened = documents::openLayout(path, catalogue.kinds);
  if (opened.trouble) {
    tell(*opened.trouble, tr("%1 could not be opened").arg(QFileInfo(path).fileName()),
         linesOf(opened.read.diagnostics));
    return;
  }
  Document::Lock lock = lockToOpen(path);
  if (!lock) return;
  if (!trouble.isEmpty())
    asker_.ask({tr("The shop's own files beside it could not be read"),
                tr("The kinds of device and machines that come with the program are used instead."),
                {tr("OK")},
                trouble});
  document_.take(std::move(opened), std::move(catalogue), std::move(lock));
  recent_.add(path);
  emit recentChanged();
}

QStringList FileFlow::samples() {
  return QDir(":/sample-layouts").entryList({"*.layout.yaml"}, QDir::Files, QDir::Name);
}

void FileFlow::openSample(const QString& name) {
  QFile file(":/sample-layouts/" + name);
  if (!file.open(QIODevice::ReadOnly) || !mayLeave()) return;
  plan::Catalogue catalogue = plan::bundledCatalogue();
  auto read = files::readLayout(file.readAll().toStdString(), name.toStdString(), catalogue.kinds);
  if (read.value) document_.start(std::move(*read.value), std::move(catalogue));
}

void FileFlow::revert() {
  if (document_.path().isEmpty()) return;
  emit typingEnds();
  if (document_.isSaving()) document_.waitForSave();
  const bool sure = document_.isSaved() || asker_.ask({tr("Go back to the file as it was saved?"),
                                                       tr("What was changed since then is lost."),
                                                       {tr("Keep working"), tr("Go back to the file")}}) == 1;
  if (sure) openNow(document_.path());
}

bool FileFlow::mayLeave() {
  emit typingEnds();
  if (document_.isSaving()) document_.waitForSave();
  if (document_.isSaved()) return true;
  const int answer = asker_.ask({tr("Save the changes to %1?").arg(document_.name()),
                                 tr("Without saving, they are lost."),
                                 {tr("Save"), tr("Do not save"), tr("Keep working")}});
  return answer == 0 ? save() : answer == 1;
}

bool FileFlow::mayClose() {
  if (!mayLeave()) return false;
  document_.letGo();
  return true;
}

layout::DeviceKinds FileFlow::kindsFor(const QString& layout_path) {
  return layout_path.isEmpty() ? plan::bundledCatalogue().kinds : catalogueFor(layout_path).first.kinds;
}

void FileFlow::recover(const documents::Found& found) {
  if (!found.layout || !mayLeave()) return;
  Document::Lock lock;
  plan::Catalogue catalogue = plan::bundledCatalogue();
  if (!found.layout_path.isEmpty()) {
    lock = lockToOpen(found.layout_path);
    if (!lock) return;
    catalogue = catalogueFor(found.layout_path).first;
  }
  document_.recover(found, std::move(catalogue), std::move(lock));
  // Only now is it kept anew; what was found may go.
  if (!document_.keepNow()) throwAway(found);
}

void FileFlow::discard(const documents::Found& found) {
  const bool sure =
      found.saved == documents::SavedFile::HoldsThis ||
      asker_.ask({tr("Throw away the work that was kept?"),
                  tr("It was never saved, and cannot be brought back afterwards. %1")
                      .arg(found.layout_path.isEmpty() ? QString()
                                                       : tr("%1 stays as it is.").arg(found.layout_path)),
                  {tr("Keep it"), tr("Throw it away")}}) == 1;
  if (sure) throwAway(found);
}

void FileFlow::throwAway(const documents::Found& found) {
  if (const auto trouble = store_.discard(found)) tell(*trouble, tr("The kept work is still there"));
}

}  // namespace stopwalk::window
