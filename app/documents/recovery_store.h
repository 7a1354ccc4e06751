#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "app/documents/lock_holder.h"
#include "app/documents/trouble.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::documents {

// How the saved file stands to the work that was kept of it.
enum class SavedFile {
  NeverSaved,  // the document had no file
  AsBefore,    // as the document was opened or last saved: the kept work is what is newer
  HoldsThis,   // the kept work was saved after all
  WasChanged,  // another program or another session wrote it since
  IsMissing
};

// The kinds of device that a layout of this path is read with; of one never saved the path is empty.
using KindsFor = std::function<layout::DeviceKinds(const QString& layout_path)>;

// Work that a process left which is no more.
struct Found {
  QString file;         // where it is kept
  QString layout_path;  // empty: never saved, or not known
  std::string base_sha256;
  QDateTime stored;                      // of a damaged one: when the file was written
  std::optional<layout::Layout> layout;  // empty: there is a trouble
  SavedFile saved = SavedFile::NeverSaved;
  std::optional<Trouble> trouble;  // damaged, unreadable, or held by another computer
  bool elsewhere = false;          // held by another computer: not to be thrown away here
};

// Keeps the unsaved state of each open document, the untitled too, for the case that the program or the
// computer stops. Each process has a folder of its own in `root`, locked for as long as it lives. `store` and
// `discard` may run on any one thread at a time; see Autosave.
class RecoveryStore {
 public:
  // `$XDG_STATE_HOME/stopwalk/recovery`, or in `~/.local/state` where that is not set to a full path.
  static QString usualRoot();

  explicit RecoveryStore(const QString& root = usualRoot());
  ~RecoveryStore();  // what is still kept stays, and is found by the next start
  RecoveryStore(const RecoveryStore&) = delete;
  RecoveryStore& operator=(const RecoveryStore&) = delete;

  // A name for a document, good for as long as this store.
  QString newId();

  // Replaces what is kept of the document. Nothing: it is on the disk. Else the state kept before still is.
  std::optional<Trouble> store(const QString& id, const QString& layout_path, const std::string& base_sha256,
                               const layout::Layout& layout);
  // After a save, or when the person lets the work go.
  std::optional<Trouble> discard(const QString& id);

  // What ended processes left, oldest first. What of it cannot be read is listed too. Their folders are then
  // held by this store, so that another window does not offer the same.
  std::vector<Found> found(const KindsFor& kinds_for);
  std::vector<Found> found();  // with the bundled kinds
  std::optional<Trouble> discard(const Found& found);

 private:
  std::optional<Trouble> begin();
  QString fileOf(const QString& id) const { return own_ + "/" + id + ".recovery"; }
  bool hold(const QString& session, std::vector<Found>& all);
  void sweepLocks();

  std::mutex mutex_;
  QString root_;
  QString own_;  // the folder of this process; empty: not made yet
  std::unique_ptr<QLockFile> own_lock_;
  std::map<QString, std::unique_ptr<QLockFile>> held_;  // by the folder of an ended process
  int next_id_ = 1;
};

}  // namespace stopwalk::documents
