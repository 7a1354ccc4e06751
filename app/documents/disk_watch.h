#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <string>

namespace stopwalk::documents {

enum class DiskState {
  Same,       // as it was read or last saved, or not watched
  Changed,    // other bytes
  Vanished,   // no file
  Unreadable  // something is there that cannot be read
};

// Notices that a layout was changed, removed or brought back by another program, whether that writes in place
// or beside and renames. Compares bytes by their hash, on a thread of its own: a touched file is no change.
// Listens to the system and looks itself now and then, as network folders tell nothing.
class DiskWatch : public QObject {
  Q_OBJECT

 public:
  explicit DiskWatch(QObject* parent = nullptr);
  ~DiskWatch() override;

  // `sha256` is what the document was read from; an empty path ends the watch.
  void watch(const QString& path, const std::string& sha256);
  // Around each save of ours, so that it is not taken for another's. `sha256`: of the file now in place, by
  // which the state is Same at once and without a signal; empty when the save failed.
  void beginOwnSave();
  void endOwnSave(const std::string& sha256);

  DiskState state() const { return state_; }
  std::string sha256OnDisk() const { return found_; }
  void lookNow();
  void setPatience(int settle_ms, int look_every_ms);

 signals:
  // Also when a file that changed changes once more.
  void stateChanged(stopwalk::documents::DiskState state);

 private:
  struct Stamp {
    qint64 size = -1;
    qint64 modified_ms = -1;
    quint64 inode = 0;
    bool operator==(const Stamp&) const = default;
  };
  static Stamp stampOf(const QString& path);

  void listen();
  void lookIfStamped();
  void startLook();
  void judge(int round, DiskState looked, const std::string& sha256, const Stamp& stamp);

  QString path_;
  QString target_;
  std::string known_;
  std::string found_;
  Stamp stamp_;
  DiskState state_ = DiskState::Same;
  bool saving_ = false;
  bool looking_ = false;
  bool look_again_ = false;
  int round_ = 0;  // looks begun for an earlier path or before a save are not judged
  QFileSystemWatcher watcher_;
  QTimer settle_;
  QTimer poll_;
  QThreadPool worker_;
};

}  // namespace stopwalk::documents
