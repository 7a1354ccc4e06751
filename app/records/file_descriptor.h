#pragma once

#include <sys/types.h>

#include <string>
#include <string_view>

namespace stopwalk::records {

// An open file of the system, closed with it. The functions return 0, or `errno`.
class FileDescriptor {
 public:
  FileDescriptor() = default;
  // Check isOpen(); if not, `errno` says why.
  FileDescriptor(const std::string& path, int flags, mode_t mode = 0);
  ~FileDescriptor() { close(); }
  FileDescriptor(FileDescriptor&& other) noexcept;
  FileDescriptor& operator=(FileDescriptor&& other) noexcept;

  bool isOpen() const { return handle_ >= 0; }
  int handle() const { return handle_; }
  void close();

  // Not of a folder, a pipe or a device.
  bool isFile() const;
  int readAll(std::string& text) const;
  int writeAll(std::string_view bytes) const;
  int sync() const;
  int truncate(std::size_t bytes) const;

 private:
  int handle_ = -1;
};

// Makes what was made or removed in the folder of `path` survive a power cut. A file system that has no such
// thing for folders is taken at its word.
int syncFolderOf(const std::string& path);

std::string reasonOf(int error);
// Of what is a folder, a pipe or a device.
inline constexpr const char* kIsNoFile = "it is no file, but a folder, a pipe or a device";

}  // namespace stopwalk::records
