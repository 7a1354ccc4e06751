#include "tests/app/documents/faults.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdarg>
#include <cstring>
#include <filesystem>
#include <map>
#include <set>
#include <vector>

namespace stopwalk::documents {
namespace {

namespace fs = std::filesystem;

struct Shared {
  int calls;
  bool reached;
  char call[32];
};

// What a folder that was not synced may fall back to: `backup` back at `path`, or nothing there.
struct Unsynced {
  fs::path path;
  fs::path backup;  // empty: there was nothing
};

struct State {
  bool on = false;
  std::string folder;
  Fault fault;
  Shared* shared = nullptr;
  std::set<int> handles;     // open ones of files under the folder
  std::set<ino_t> unsynced;  // files with bytes that were not synced
  std::set<ino_t> lost;      // and of which a sync failed: a later one that succeeds does not bring them back
  std::map<ino_t, off_t> synced_bytes;  // of what a file holds, those that nothing can take back
  std::vector<Unsynced> changes;
  int backups = 0;
};
State state;

// The function of the C library that one here stands before.
template <class F>
F real(const char* name) {
  return reinterpret_cast<F>(::dlsym(RTLD_NEXT, name));
}

bool isWatched(const char* path) {
  return state.on && path != nullptr && std::string_view(path).starts_with(state.folder);
}
bool isWatched(int handle) {
  return state.on && state.handles.contains(handle);
}

// While the shim itself works with files.
struct Off {
  Off() { state.on = false; }
  ~Off() { state.on = true; }
};

ino_t inodeOf(int handle) {
  struct stat s {};
  return ::fstat(handle, &s) == 0 ? s.st_ino : 0;
}

// Half of what was added since the last sync is lost.
off_t leftOf(const struct stat& s) {
  const auto synced = state.synced_bytes.find(s.st_ino);
  const off_t kept = synced == state.synced_bytes.end() ? 0 : std::min(synced->second, s.st_size);
  return kept + (s.st_size - kept) / 2;
}

void loseHalf(const std::set<ino_t>& files) {
  for (const auto& entry : fs::recursive_directory_iterator(state.folder)) {
    struct stat s {};
    if (entry.is_regular_file() && ::stat(entry.path().c_str(), &s) == 0 && files.contains(s.st_ino))
      fs::resize_file(entry.path(), static_cast<std::uintmax_t>(leftOf(s)));
  }
}

void cutPower() {
  const Off off;
  if (state.fault.manner == Manner::PowerCutUndone) {
    for (auto change = state.changes.rbegin(); change != state.changes.rend(); ++change) {
      std::error_code none;
      fs::remove_all(change->path, none);
      if (!change->backup.empty()) fs::rename(change->backup, change->path, none);
    }
  }
  loseHalf(state.unsynced);
}

bool isPowerCut() {
  return state.fault.manner == Manner::PowerCutKept || state.fault.manner == Manner::PowerCutUndone;
}

[[noreturn]] void stop() {
  if (isPowerCut()) cutPower();
  ::_exit(kStopped);
}

// Counts a call; true: it is to fail, with errno set.
bool fails(const char* call, bool stops = true) {
  const int number = ++state.shared->calls;
  const bool at = number == state.fault.at;
  if (at) {
    state.shared->reached = true;
    std::strncpy(state.shared->call, call, sizeof state.shared->call - 1);
  }
  errno = state.fault.error;
  switch (state.fault.manner) {
    case Manner::FailOnce:
      return at;
    case Manner::FailEverAfter:
      return state.fault.at > 0 && number >= state.fault.at;
    case Manner::WriteShort:
      return false;
    default:
      if (at && stops) stop();
      return false;
  }
}

// Remembers what `path` was, before it becomes another.
void remember(const char* path) {
  if (!isPowerCut()) return;
  const Off off;
  Unsynced change{path, {}};
  std::error_code none;
  if (fs::is_regular_file(path, none)) {
    change.backup = state.folder + ".before-" + std::to_string(++state.backups);
    fs::create_hard_link(path, change.backup, none);
  }
  state.changes.push_back(change);
}

void synced(int handle) {
  struct stat s {};
  if (::fstat(handle, &s) != 0) return;
  state.unsynced.erase(s.st_ino);
  state.synced_bytes[s.st_ino] = s.st_size;
  if (!S_ISDIR(s.st_mode)) return;
  std::erase_if(state.changes, [&](const Unsynced& change) {
    struct stat folder {};
    return ::stat(change.path.parent_path().c_str(), &folder) == 0 && folder.st_ino == s.st_ino;
  });
}

int openAs(const char* name, const char* path, int flags, mode_t mode) {
  using Open = int (*)(const char*, int, ...);
  const bool watched = isWatched(path);
  bool fresh = false;
  if (watched) {
    if (state.fault.named_temporary && (flags & O_TMPFILE) == O_TMPFILE) {
      errno = EOPNOTSUPP;
      return -1;
    }
    if (fails("open")) return -1;
    fresh = (flags & O_TMPFILE) == O_TMPFILE || ((flags & O_CREAT) != 0 && ::access(path, F_OK) != 0);
    if (fresh && (flags & O_CREAT) != 0) remember(path);
  }
  const int handle = real<Open>(name)(path, flags, mode);
  if (watched && handle >= 0) {
    state.handles.insert(handle);
    if (fresh) {  // its number may have been that of a file that is gone
      state.unsynced.erase(inodeOf(handle));
      state.lost.erase(inodeOf(handle));
      state.synced_bytes.erase(inodeOf(handle));
    } else if (struct stat s{}; ::fstat(handle, &s) == 0 && !state.unsynced.contains(s.st_ino)) {
      state.synced_bytes.emplace(s.st_ino, (flags & O_TRUNC) != 0 ? 0 : s.st_size);
    }
    if ((flags & O_TRUNC) != 0) state.unsynced.insert(inodeOf(handle));
  }
  return handle;
}

mode_t modeFrom(int flags, va_list more) {
  return (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE ? va_arg(more, mode_t) : 0;
}

// In the books alone: the disk would take its time, and nobody cuts the power.
int syncAs(const char* name, int handle) {
  if (!isWatched(handle)) return 0;
  if (fails(name)) {
    if (state.unsynced.contains(inodeOf(handle))) state.lost.insert(inodeOf(handle));
    return -1;
  }
  synced(handle);
  return 0;
}

int runInside(const QString& folder, const Fault& fault, Shared* shared, const std::function<int()>& run) {
  state.folder = folder.toStdString();
  state.fault = fault;
  state.shared = shared;
  state.on = true;
  const int status = run();
  if (isPowerCut() && !shared->reached) cutPower();
  state.on = false;
  loseHalf(state.lost);
  return status;
}

void removeBackups(const QString& folder) {
  const fs::path path = folder.toStdString();
  std::vector<fs::path> backups;
  for (const auto& entry : fs::directory_iterator(path.parent_path()))
    if (entry.path().string().starts_with(path.string() + ".before-")) backups.push_back(entry.path());
  for (const fs::path& backup : backups) fs::remove(backup);
}

}  // namespace

FaultyRun runWithFault(const QString& folder, const Fault& fault, const std::function<int()>& run) {
  void* const page =
      ::mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
  auto* const shared = new (page) Shared{};
  const pid_t child = ::fork();
  if (child == 0) ::_exit(runInside(folder, fault, shared, run));
  int status = 0;
  ::waitpid(child, &status, 0);
  removeBackups(folder);
  const FaultyRun result{WIFEXITED(status) ? WEXITSTATUS(status) : -1, shared->calls, shared->reached,
                         shared->call};
  ::munmap(page, sizeof(Shared));
  return result;
}

}  // namespace stopwalk::documents

using namespace stopwalk::documents;

extern "C" {

int open(const char* path, int flags, ...) {
  va_list more;
  va_start(more, flags);
  const mode_t mode = modeFrom(flags, more);
  va_end(more);
  return openAs("open", path, flags, mode);
}

int open64(const char* path, int flags, ...) {
  va_list more;
  va_start(more, flags);
  const mode_t mode = modeFrom(flags, more);
  va_end(more);
  return openAs("open64", path, flags, mode);
}

ssize_t read(int handle, void* bytes, size_t size) {
  if (isWatched(handle) && fails("read")) return -1;
  return real<ssize_t (*)(int, void*, size_t)>("read")(handle, bytes, size);
}

ssize_t write(int handle, const void* bytes, size_t size) {
  const auto write_real = real<ssize_t (*)(int, const void*, size_t)>("write");
  if (!isWatched(handle)) return write_real(handle, bytes, size);
  state.unsynced.insert(inodeOf(handle));
  if (fails("write", false)) return -1;
  const bool at = state.shared->calls == state.fault.at;
  if (!at || size < 2 || state.fault.manner < Manner::WriteShort) return write_real(handle, bytes, size);
  const ssize_t half = write_real(handle, bytes, size / 2);
  if (state.fault.manner != Manner::WriteShort) stop();
  return half;
}

int ftruncate(int handle, off_t size) noexcept {
  if (isWatched(handle)) {
    if (fails("ftruncate")) return -1;
    state.unsynced.insert(inodeOf(handle));
  }
  return real<int (*)(int, off_t)>("ftruncate")(handle, size);
}

int fsync(int handle) {
  return syncAs("fsync", handle);
}

int fdatasync(int handle) {
  return syncAs("fdatasync", handle);
}

// The handle is closed even when closing fails, as Linux does.
int close(int handle) {
  const bool watched = isWatched(handle);
  const bool failing = watched && fails("close");
  state.handles.erase(handle);
  const int error = errno;
  const int result = real<int (*)(int)>("close")(handle);
  if (!failing) return result;
  errno = error;
  return -1;
}

int rename(const char* from, const char* to) noexcept {
  if (isWatched(to)) {
    if (fails("rename")) return -1;
    remember(from);
    remember(to);
  }
  return real<int (*)(const char*, const char*)>("rename")(from, to);
}

int renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags) noexcept {
  if (isWatched(to)) {
    if (fails("renameat2")) return -1;
    remember(from);
    remember(to);
  }
  return real<int (*)(int, const char*, int, const char*, unsigned)>("renameat2")(from_folder, from,
                                                                                  to_folder, to, flags);
}

int link(const char* from, const char* to) noexcept {
  if (isWatched(to)) {
    if (fails("link")) return -1;
    if (::access(to, F_OK) != 0) remember(to);
  }
  return real<int (*)(const char*, const char*)>("link")(from, to);
}

int linkat(int from_folder, const char* from, int to_folder, const char* to, int flags) noexcept {
  if (isWatched(to)) {
    if (fails("linkat")) return -1;
    if (::access(to, F_OK) != 0) remember(to);
  }
  return real<int (*)(int, const char*, int, const char*, int)>("linkat")(from_folder, from, to_folder, to,
                                                                          flags);
}

int unlink(const char* path) noexcept {
  if (isWatched(path)) {
    if (fails("unlink")) return -1;
    remember(path);
  }
  return real<int (*)(const char*)>("unlink")(path);
}

int mkdir(const char* path, mode_t mode) noexcept {
  if (isWatched(path)) {
    if (fails("mkdir")) return -1;
    if (::access(path, F_OK) != 0) remember(path);
  }
  return real<int (*)(const char*, mode_t)>("mkdir")(path, mode);
}

int fchmod(int handle, mode_t mode) noexcept {
  if (isWatched(handle) && fails("fchmod")) return -1;
  return real<int (*)(int, mode_t)>("fchmod")(handle, mode);
}

int flock(int handle, int operation) noexcept {
  if (isWatched(handle) && fails("flock")) return -1;
  return real<int (*)(int, int)>("flock")(handle, operation);
}
}
