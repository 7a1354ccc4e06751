#include "app/documents/recovery_store.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <algorithm>
#include <string_view>

#include "app/documents/file_bytes.h"
#include "app/documents/recovery_file.h"
#include "app/documents/safe_write.h"
#include "app/documents/words.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "core/files/sha256.h"

namespace stopwalk::documents {
namespace {

constexpr auto kLock = ".lock";
// A lock is written at once. One that still says nothing after so long belongs to nobody.
constexpr qint64 kMuteLockSeconds = 60;

std::unique_ptr<QLockFile> lockOf(const QString& folder) {
  auto lock = std::make_unique<QLockFile>(folder + kLock);
  lock->setStaleLockTime(0);
  return lock;
}

SavedFile savedFileOf(const RecoveryFile& kept) {
  if (kept.layout_path.isEmpty()) return SavedFile::NeverSaved;
  const std::string now = sha256OnDisk(kept.layout_path);
  if (now.empty()) return SavedFile::IsMissing;
  if (now == files::sha256(kept.text)) return SavedFile::HoldsThis;
  return now == kept.base_sha256 ? SavedFile::AsBefore : SavedFile::WasChanged;
}

Trouble damaged(const QString& file, const QString& why) {
  const bool unfinished = !file.endsWith(".recovery");
  return {
      file,
      unfinished ? Words::tr("The program stopped while it kept this work, and a part is missing")
                 : Words::tr("This kept work is damaged and cannot be opened"),
      why,
      unfinished
          ? Words::tr("What was kept before it, if anything, is listed beside it. Throw this away, or keep "
                      "it and look at it with a text editor: from the third line on it is a layout.")
          : Words::tr("Throw it away, or keep it and look at it with a text editor: from the third line on "
                      "it is a layout.")};
}

Trouble heldBy(const QString& session, const Holder& holder) {
  if (!holder.readable)
    return {session, Words::tr("Unsaved work is kept here, and its lock is damaged"), holder.text(),
            Words::tr("Start the program again in a minute to have the work back.")};
  return {session, Words::tr("Unsaved work is kept here by a program on another computer"), holder.text(),
          Words::tr("If the program runs there no more, start it there once to have the work back.")};
}

// Whole, but not a layout by the kinds that there are now.
Trouble notReadable(const RecoveryFile& kept, const QString& file, const QString& why) {
  return {
      file, Words::tr("This kept work is whole, but cannot be opened as things are"), why,
      kept.layout_path.isEmpty()
          ? Words::tr("Keep it, and look at it with a text editor: from the third line on it is a layout.")
          : Words::tr("If the shop's own kinds of device were moved, put their file back beside %1 and start "
                      "the program again.")
                .arg(kept.layout_path)};
}

Found foundIn(const QString& file, const KindsFor& kinds_for) {
  Found found{file, {}, {}, QFileInfo(file).lastModified().toUTC(), {}, SavedFile::NeverSaved, {}, false};
  const FileBytes there = readBytes(file);
  if (there.presence != Presence::There) {
    found.trouble = damaged(file, there.why);
    return found;
  }
  const std::optional<RecoveryFile> kept = parseRecovery(there.bytes);
  if (!kept) {
    found.trouble = damaged(file, Words::tr("its bytes are not those that were written"));
    return found;
  }
  found.layout_path = kept->layout_path;
  found.base_sha256 = kept->base_sha256;
  found.stored = kept->stored;
  found.saved = savedFileOf(*kept);
  auto read = files::readLayout(kept->text, file.toStdString(), kinds_for(kept->layout_path));
  found.layout = std::move(read.value);
  if (!found.layout)
    found.trouble = notReadable(
        *kept, file,
        read.diagnostics.empty() ? QString() : QString::fromStdString(read.diagnostics.front().text));
  return found;
}

// Makes those that are missing, so that they survive a power cut.
bool makeFolders(const QString& folder) {
  if (QFileInfo(folder).isDir()) return true;
  const QString parent = QFileInfo(folder).absolutePath();
  if (parent == folder || !makeFolders(parent)) return false;
  return (QDir().mkdir(folder) || QFileInfo(folder).isDir()) && syncFolder(parent).isEmpty();
}

QStringList filesIn(const QString& folder) {
  QStringList files;
  for (const QString& name : QDir(folder).entryList(QDir::Files | QDir::Hidden | QDir::System, QDir::Name))
    if (name.contains(".recovery")) files << folder + "/" + name;
  return files;
}

std::optional<Trouble> removeKept(const QString& file) {
  QFile kept(file);
  if (!kept.exists()) return std::nullopt;
  if (!kept.remove())
    return Trouble{
        file, Words::tr("The kept work could not be thrown away"), kept.errorString(),
        Words::tr("It will be offered again at the next start. Mend the permissions of its folder.")};
  syncFolder(QFileInfo(file).absolutePath());  // lost, it is only offered once more
  return std::nullopt;
}

}  // namespace

QString RecoveryStore::usualRoot() {
  QString state = qEnvironmentVariable("XDG_STATE_HOME");
  if (!QDir::isAbsolutePath(state)) state = QDir::homePath() + "/.local/state";
  return QDir::cleanPath(state + "/stopwalk/recovery");
}

RecoveryStore::RecoveryStore(const QString& root) : root_(QDir::cleanPath(root)) {}

RecoveryStore::~RecoveryStore() {
  // Empty folders go; with anything in them they stay, and `rmdir` says no.
  for (const auto& [folder, lock] : held_) QDir().rmdir(folder);
  if (!own_.isEmpty()) QDir().rmdir(own_);
}

QString RecoveryStore::newId() {
  return "document-" + QString::number(next_id_++);
}

// The lock comes before the folder: a folder without a living lock is one that a process left.
std::optional<Trouble> RecoveryStore::begin() {
  if (!own_.isEmpty()) return std::nullopt;
  const auto trouble = [&](const QString& why) {
    return Trouble{root_, Words::tr("Your unsaved work cannot be kept for the case of a crash"), why,
                   Words::tr("Save often; make room or mend the permissions of this folder.")};
  };
  if (!makeFolders(root_)) return trouble(Words::tr("the folder cannot be made"));
  QFile::setPermissions(root_, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  const QString folder = root_ + "/" + QUuid::createUuid().toString(QUuid::Id128);
  auto lock = lockOf(folder);
  if (!lock->tryLock()) return trouble(Words::tr("the lock cannot be made"));
  if (!QDir().mkdir(folder)) return trouble(Words::tr("the folder cannot be made"));
  if (const QString why = syncFolder(root_); !why.isEmpty()) {
    QDir().rmdir(folder);
    return trouble(why);
  }
  own_lock_ = std::move(lock);
  own_ = folder;
  return std::nullopt;
}

std::optional<Trouble> RecoveryStore::store(const QString& id, const QString& layout_path,
                                            const std::string& base_sha256, const layout::Layout& layout) {
  const std::lock_guard guard(mutex_);
  if (auto trouble = begin()) return trouble;
  const RecoveryFile kept{layout_path.isEmpty() ? QString() : targetOf(layout_path), base_sha256,
                          QDateTime::currentDateTimeUtc(), files::writeLayout(layout)};
  const WriteResult result = writeWhole(fileOf(id), recoveryText(kept));
  if (result.written == Written::Yes) return std::nullopt;
  return Trouble{fileOf(id), Words::tr("Your last changes could not be kept for the case of a crash"),
                 result.why, Words::tr("Save now; make room or mend the permissions of this folder.")};
}

std::optional<Trouble> RecoveryStore::discard(const QString& id) {
  const std::lock_guard guard(mutex_);
  return own_.isEmpty() ? std::nullopt : removeKept(fileOf(id));
}

// Whether what is in `session` may be offered: its process is no more.
bool RecoveryStore::hold(const QString& session, std::vector<Found>& all) {
  if (held_.contains(session)) return true;
  const std::optional<Holder> holder = holderOf(session + kLock);
  // Damaged, not only out of reach just now.
  if (holder && !holder->readable && readBytes(session + kLock).presence == Presence::There &&
      holder->since.secsTo(QDateTime::currentDateTime()) > kMuteLockSeconds)
    QFile::remove(session + kLock);
  auto lock = lockOf(session);
  if (lock->tryLock()) {
    held_[session] = std::move(lock);
    return true;
  }
  if (lock->error() != QLockFile::LockFailedError) return true;  // no lock can be made: still to be seen
  if (holder && !holder->this_host) {
    Found found{session, {}, {}, holder->since.toUTC(), {}, SavedFile::NeverSaved, {}, true};
    found.trouble = heldBy(session, *holder);
    all.push_back(found);
  }
  return false;
}

// Locks that were made for a folder that never came to be.
void RecoveryStore::sweepLocks() {
  for (const QString& name : QDir(root_).entryList({QString("*") + kLock}, QDir::Files | QDir::Hidden)) {
    const QString session = root_ + "/" + name.chopped(static_cast<int>(std::string_view(kLock).size()));
    if (session == own_ || held_.contains(session) || QFileInfo::exists(session)) continue;
    lockOf(session)->tryLock();  // takes what a dead process left, and gives it back at once
  }
}

std::vector<Found> RecoveryStore::found() {
  return found([](const QString&) { return files::bundledDeviceKinds(); });
}

std::vector<Found> RecoveryStore::found(const KindsFor& kinds_for) {
  const std::lock_guard guard(mutex_);
  std::vector<Found> all;
  for (const QString& name : QDir(root_).entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
    const QString session = root_ + "/" + name;
    if (session == own_) continue;
    const QStringList files = filesIn(session);
    std::vector<Found> elsewhere;
    const bool held = hold(session, elsewhere);  // an empty folder too: it goes with this store
    if (files.isEmpty()) continue;
    all.insert(all.end(), elsewhere.begin(), elsewhere.end());
    if (!held) continue;
    for (const QString& file : filesIn(session)) all.push_back(foundIn(file, kinds_for));
  }
  sweepLocks();
  std::stable_sort(all.begin(), all.end(),
                   [](const Found& a, const Found& b) { return a.stored < b.stored; });
  return all;
}

std::optional<Trouble> RecoveryStore::discard(const Found& found) {
  const std::lock_guard guard(mutex_);
  return removeKept(found.file);
}

}  // namespace stopwalk::documents
