#include "app/records/record_lock.h"

#include <fcntl.h>
#include <pwd.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <thread>

#include "app/records/records_file.h"

namespace stopwalk::records {
namespace {

constexpr auto kLook = std::chrono::milliseconds(2);

std::string userName() {
  const passwd* entry = ::getpwuid(::geteuid());
  return entry && entry->pw_name ? entry->pw_name : "user " + std::to_string(::geteuid());
}

std::string hostName() {
  char name[256] = {};
  return ::gethostname(name, sizeof name - 1) == 0 && *name ? name : "an unknown computer";
}

// One that another user left behind can be locked, though not written to. None is waited for. Returns 0, or
// why it can be neither made nor opened: that what may not be made is not there either says nothing.
int openLock(const std::string& path, FileDescriptor& file) {
  int first = 0;
  for (const int flags : {O_RDWR | O_CREAT, O_RDWR, O_RDONLY}) {
    file = FileDescriptor(path, flags | O_NONBLOCK, 0666);
    if (file.isOpen()) return 0;
    const int error = errno;
    if (first == 0) first = error;
    if (!(error == EACCES || error == EPERM || error == EROFS)) break;
  }
  return first;
}

// Whether `path` still is the file that is open: who gives a lock back removes it.
bool isStillThere(const FileDescriptor& file, const std::string& path) {
  struct stat ours {
  }, there{};
  return ::fstat(file.handle(), &ours) == 0 && ::stat(path.c_str(), &there) == 0 &&
         ours.st_ino == there.st_ino && ours.st_dev == there.st_dev;
}

}  // namespace

std::string ourselves() {
  return userName() + " on " + hostName() + " (process " + std::to_string(::getpid()) + "), since " +
         inspection::momentText(momentNow());
}

RecordLock::RecordLock(const std::string& log_file, std::chrono::milliseconds wait)
    : path_(fileOf(behindLinks(log_file))) {
  const auto until = std::chrono::steady_clock::now() + wait;
  while (!tryToTake() && error_ == 0 && std::chrono::steady_clock::now() < until)
    std::this_thread::sleep_for(kLook);
  if (!isHeld() && error_ == 0 && holder_.empty()) holder_ = "somebody";  // one after another
}

// False with an error: it cannot be had at all.
bool RecordLock::tryToTake() {
  FileDescriptor file;
  if ((error_ = openLock(path_, file)) != 0) return false;
  if (::flock(file.handle(), LOCK_EX | LOCK_NB) != 0) {
    if (errno != EWOULDBLOCK && errno != EINTR) {
      error_ = errno;
      return false;
    }
    holder_.clear();
    if (file.readAll(holder_) != 0 || holder_.empty()) holder_ = "somebody";
    if (holder_.ends_with('\n')) holder_.pop_back();
    return false;
  }
  if (!isStillThere(file, path_)) return false;  // given back meanwhile: it is no longer the lock
  // Only for others to read; the lock holds without it.
  if (file.truncate(0) == 0) static_cast<void>(file.writeAll(ourselves() + "\n"));
  file_ = std::move(file);
  holder_.clear();
  return true;
}

RecordLock::~RecordLock() {
  if (isHeld()) ::unlink(path_.c_str());
}

}  // namespace stopwalk::records
