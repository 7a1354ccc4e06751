#include "app/window/document.h"

#include <QCoreApplication>
#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/documents/file_bytes.h"
#include "app/shop_files/shop_files.h"

namespace stopwalk::window {

Document::Document(documents::RecoveryStore& store, QThreadPool& recovery_worker, QObject* parent)
    : QObject(parent), autosave_(store, recovery_worker, store.newId(), [this] {
        return documents::Draft{path_, sha256_, edited_.layout()};
      }) {
  saver_.setMaxThreadCount(1);
  edited_.reset(emptyLayout());
  saved_ = edited_.snapshot();
  connect(&edited_, &edits::EditedLayout::changed, this, [this] {
    if (isSaved())
      autosave_.discard();
    else
      autosave_.edited();
    emit stateChanged();
  });
  connect(&watch_, &documents::DiskWatch::stateChanged, this, &Document::onDisk);
  connect(&autosave_, &documents::Autosave::failed, this, &Document::notKept);
  connect(&autosave_, &documents::Autosave::kept, this, &Document::kept);
}

Document::~Document() {
  saver_.waitForDone();
  if (!isSaved()) autosave_.flush();
}

QString Document::folder() const {
  if (!path_.isEmpty()) return QFileInfo(path_).absolutePath();
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

QString Document::name() const {
  return path_.isEmpty() ? tr("New layout") : QFileInfo(path_).fileName();
}

bool Document::isSaved() const {
  return edited_.snapshot() == saved_ || edited_.layout() == *saved_;
}

std::string Document::fileHash() const {
  const bool holds = !path_.isEmpty() && watch_.state() == documents::DiskState::Same && isSaved();
  return holds ? sha256_ : std::string();
}

bool Document::isAt(const QString& path) const {
  return !path_.isEmpty() && documents::targetOf(path) == documents::targetOf(path_);
}

QStringList Document::readFrom() const {
  QStringList paths;
  if (!path_.isEmpty()) paths << path_;
  for (const std::string& file : app::madeWith(edited_.layout(), folder().toStdString()))
    paths << QString::fromStdString(file);
  return paths;
}

Document::Lock Document::lockFor(const QString& path) {
  if (lock_->isFor(path) && lock_->isStillHeld()) return lock_;
  auto lock = std::make_shared<documents::LayoutLock>();
  lock->take(path);
  return lock;
}

void Document::setFile(const QString& path, const std::string& sha256, Lock lock) {
  path_ = path;
  sha256_ = sha256;
  lock_ = lock ? std::move(lock) : std::make_shared<documents::LayoutLock>();
  using enum documents::LockState;
  read_only_ = lock_->state() == Others || lock_->state() == ReadOnly;
  watch_.watch(path, sha256);
  emit sourcesChanged();
}

void Document::setCatalogue(plan::Catalogue catalogue) {
  catalogue_ = std::move(catalogue);
  emit sourcesChanged();
}

layout::Layout Document::emptyLayout() {
  layout::Layout empty;
  empty.site.name = tr("New workshop").toStdString();
  return empty;
}

void Document::start(layout::Layout layout, plan::Catalogue catalogue) {
  catalogue_ = std::move(catalogue);
  diagnostics_.clear();
  setFile({}, {}, {});
  saved_ = std::make_shared<layout::Layout>(layout);
  edited_.reset(std::move(layout));
  emit stateChanged();
  emit opened();
}

void Document::take(documents::OpenResult opened_layout, plan::Catalogue catalogue, Lock lock) {
  catalogue_ = std::move(catalogue);
  diagnostics_ = std::move(opened_layout.read.diagnostics);
  setFile(opened_layout.path, opened_layout.sha256, std::move(lock));
  saved_ = std::make_shared<layout::Layout>(*opened_layout.read.value);
  edited_.reset(std::move(*opened_layout.read.value));
  emit stateChanged();
  emit opened();
}

void Document::recover(const documents::Found& found, plan::Catalogue catalogue, Lock lock) {
  catalogue_ = std::move(catalogue);
  diagnostics_.clear();
  setFile(found.layout_path, found.base_sha256, std::move(lock));
  saved_ = std::make_shared<layout::Layout>();
  edited_.reset(*found.layout);
  autosave_.edited();
  emit stateChanged();
  emit opened();
}

void Document::save(Target target) {
  if (saving_) return;
  saving_ = true;
  const bool same_file = target.path == path_;
  if (same_file) watch_.beginOwnSave();
  const auto what = edited_.snapshot();
  documents::SaveRequest request{target.path, *what, same_file ? sha256_ : std::string(), target.overwrite};
  saver_.start([this, what, request = std::move(request), target = std::move(target)] {
    const documents::SaveResult result = documents::saveLayout(request, target.catalogue.kinds);
    QMetaObject::invokeMethod(
        this, [this, result, what, target] { finishSave(result, what, target); }, Qt::QueuedConnection);
  });
}

void Document::finishSave(const documents::SaveResult& result, std::shared_ptr<const layout::Layout> what,
                          const Target& target) {
  saving_ = false;
  const bool same_file = result.path == path_;
  if (same_file) watch_.endOwnSave(result.inPlace() ? result.sha256 : std::string());
  if (result.inPlace()) {
    // Where it is not sure to survive a power cut, it is not called saved.
    if (result.outcome == documents::SaveOutcome::Saved) saved_ = std::move(what);
    if (same_file) {
      sha256_ = result.sha256;
      lock_ = target.lock;
    } else {
      catalogue_ = target.catalogue;
      setFile(result.path, result.sha256, target.lock);
    }
    if (isSaved())
      autosave_.discard();
    else
      autosave_.edited();
  }
  emit stateChanged();
  emit saved(result);
}

void Document::waitForSave() {
  saver_.waitForDone();
  QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);  // how it ended
}

void Document::letGo() {
  saved_ = edited_.snapshot();
  autosave_.discard();
  emit stateChanged();
}

}  // namespace stopwalk::window
