#include "app/documents/disk_watch.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>

#include "app/documents/file_bytes.h"
#include "core/files/sha256.h"

#ifdef Q_OS_UNIX
#include <sys/stat.h>
#endif

namespace stopwalk::documents {

DiskWatch::DiskWatch(QObject* parent) : QObject(parent) {
  worker_.setMaxThreadCount(1);
  settle_.setSingleShot(true);
  setPatience(150, 3000);
  connect(&settle_, &QTimer::timeout, this, &DiskWatch::startLook);
  connect(&poll_, &QTimer::timeout, this, &DiskWatch::lookIfStamped);
  const auto heard = [this] {
    listen();
    if (!path_.isEmpty() && !settle_.isActive()) settle_.start();
  };
  connect(&watcher_, &QFileSystemWatcher::fileChanged, this, heard);
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, heard);
}

DiskWatch::~DiskWatch() {
  worker_.waitForDone();
}

void DiskWatch::setPatience(int settle_ms, int look_every_ms) {
  settle_.setInterval(settle_ms);
  poll_.setInterval(look_every_ms);
}

void DiskWatch::watch(const QString& path, const std::string& sha256) {
  ++round_;
  path_ = path;
  known_ = found_ = sha256;
  stamp_ = {};
  state_ = DiskState::Same;
  saving_ = false;
  settle_.stop();
  listen();
  if (path.isEmpty())
    poll_.stop();
  else
    poll_.start();
  lookNow();
}

// A replaced file is another one to the system, and a removed one none: both are listened to anew.
void DiskWatch::listen() {
  const QStringList old = watcher_.files() + watcher_.directories();
  QStringList wanted;
  if (!path_.isEmpty()) {
    target_ = targetOf(path_);
    // The file itself too: writing in place is no change of its folder.
    for (const QString& path : {target_, QFileInfo(target_).absolutePath(), QFileInfo(path_).absolutePath()})
      if (QFileInfo::exists(path) && !wanted.contains(path)) wanted << path;
  }
  for (const QString& path : old)
    if (!wanted.contains(path)) watcher_.removePath(path);
  for (const QString& path : wanted)
    if (!old.contains(path)) watcher_.addPath(path);
}

void DiskWatch::beginOwnSave() {
  ++round_;
  saving_ = true;
  settle_.stop();
}

void DiskWatch::endOwnSave(const std::string& sha256) {
  saving_ = false;
  if (!sha256.empty()) {
    known_ = found_ = sha256;
    state_ = DiskState::Same;
  }
  listen();
  lookNow();
}

void DiskWatch::lookNow() {
  if (!path_.isEmpty()) startLook();
}

DiskWatch::Stamp DiskWatch::stampOf(const QString& path) {
  const QFileInfo info(path);
  if (!info.exists()) return {};
  Stamp stamp{info.size(), info.lastModified().toMSecsSinceEpoch(), 0};
#ifdef Q_OS_UNIX
  struct stat s {};
  if (::stat(QFile::encodeName(path).constData(), &s) == 0) stamp.inode = s.st_ino;
#endif
  return stamp;
}

void DiskWatch::lookIfStamped() {
  listen();
  if (!(stampOf(target_) == stamp_)) startLook();
}

void DiskWatch::startLook() {
  if (saving_ || path_.isEmpty()) return;
  if (looking_) {
    look_again_ = true;
    return;
  }
  looking_ = true;
  look_again_ = false;
  worker_.start([this, round = round_, path = path_] {
    // The stamp first: what changes during the reading is then looked at again.
    const Stamp stamp = stampOf(path);
    const FileBytes read = readBytes(path);
    const DiskState looked = read.presence == Presence::There     ? DiskState::Changed
                             : read.presence == Presence::Missing ? DiskState::Vanished
                                                                  : DiskState::Unreadable;
    const std::string hash = looked == DiskState::Changed ? files::sha256(read.bytes) : std::string();
    QMetaObject::invokeMethod(
        this, [this, round, looked, hash, stamp] { judge(round, looked, hash, stamp); },
        Qt::QueuedConnection);
  });
}

void DiskWatch::judge(int round, DiskState looked, const std::string& sha256, const Stamp& stamp) {
  looking_ = false;
  if (round != round_) look_again_ = true;
  if (look_again_) startLook();
  if (round != round_) return;
  stamp_ = stamp;
  const DiskState state = looked == DiskState::Changed && sha256 == known_ ? DiskState::Same : looked;
  const bool news = state != state_ || (state == DiskState::Changed && sha256 != found_);
  state_ = state;
  found_ = sha256;
  if (news) emit stateChanged(state);
}

}  // namespace stopwalk::documents
