#include "app/records/file_descriptor.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>
#include <utility>

namespace stopwalk::records {
namespace {

// Again as long as a signal comes between.
template <class Call>
int status(Call call) {
  int result = 0;
  do result = call();
  while (result != 0 && errno == EINTR);
  return result == 0 ? 0 : errno;
}

}  // namespace

FileDescriptor::FileDescriptor(const std::string& path, int flags, mode_t mode)
    : handle_(::open(path.c_str(), flags | O_CLOEXEC, mode)) {}

FileDescriptor::FileDescriptor(FileDescriptor&& other) noexcept : handle_(std::exchange(other.handle_, -1)) {}

FileDescriptor& FileDescriptor::operator=(FileDescriptor&& other) noexcept {
  std::swap(handle_, other.handle_);
  return *this;
}

void FileDescriptor::close() {
  if (handle_ >= 0) ::close(std::exchange(handle_, -1));
}

bool FileDescriptor::isFile() const {
  struct stat found {};
  return ::fstat(handle_, &found) == 0 && S_ISREG(found.st_mode);
}

int FileDescriptor::readAll(std::string& text) const {
  struct stat found {};
  if (::fstat(handle_, &found) == 0 && S_ISREG(found.st_mode))
    text.reserve(text.size() + static_cast<std::size_t>(found.st_size));  // once, and not as it grows
  char buffer[1 << 16];
  for (;;) {
    const ssize_t n = ::read(handle_, buffer, sizeof buffer);
    if (n == 0) return 0;
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return errno;
    text.append(buffer, static_cast<std::size_t>(n));
  }
}

// One call as a rule. A file system that takes less is asked again; the caller takes back what is half there.
int FileDescriptor::writeAll(std::string_view bytes) const {
  while (!bytes.empty()) {
    const ssize_t n = ::write(handle_, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return n < 0 ? errno : ENOSPC;
    bytes.remove_prefix(static_cast<std::size_t>(n));
  }
  return 0;
}

int FileDescriptor::sync() const {
  return status([&] { return ::fsync(handle_); });
}

int FileDescriptor::truncate(std::size_t bytes) const {
  return status([&] { return ::ftruncate(handle_, static_cast<off_t>(bytes)); });
}

int syncFolderOf(const std::string& path) {
  const std::string folder = std::filesystem::path(path).parent_path().string();
  const FileDescriptor file(folder.empty() ? "." : folder, O_RDONLY | O_DIRECTORY);
  if (!file.isOpen()) return errno;
  const int error = file.sync();
  return error == EINVAL || error == ENOTSUP ? 0 : error;
}

std::string reasonOf(int error) {
  return std::generic_category().message(error);
}

}  // namespace stopwalk::records
