#pragma once

#include <chrono>
#include <string>

#include "app/records/file_descriptor.h"

namespace stopwalk::records {

// Keeps a second writer from one log, by a file beside it, named as the log with `.lock` behind, that says
// who holds it; of a log that is reached by links there is one, beside the log itself. The system lets go of
// it when the process ends, however it ends; the file that is then left is taken over.
class RecordLock {
 public:
  static std::string fileOf(const std::string& log_file) { return log_file + ".lock"; }

  // Waits at most so long for another to give it back.
  RecordLock(const std::string& log_file, std::chrono::milliseconds wait);
  ~RecordLock();  // gives it back
  RecordLock(const RecordLock&) = delete;
  RecordLock& operator=(const RecordLock&) = delete;

  bool isHeld() const { return file_.isOpen(); }
  // Not held by us: `anna on bench-pc (process 4711), since 2026-03-02T09:15:00+01:00`; empty: it could not
  // be made, for `error()`.
  const std::string& holder() const { return holder_; }
  int error() const { return error_; }

 private:
  bool tryToTake();

  std::string path_;
  FileDescriptor file_;
  std::string holder_;
  int error_ = 0;
};

// Who we are, as a lock says it.
std::string ourselves();

}  // namespace stopwalk::records
