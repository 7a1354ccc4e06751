#include "app/records/copy_records.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"

namespace stopwalk::records {
namespace {

Copied no(int error) {
  return {Written::No, reasonOf(error)};
}

int read(const std::string& path, std::string& text) {
  const FileDescriptor file(path, O_RDONLY);
  return file.isOpen() ? file.readAll(text) : errno;
}

int writeNew(const std::string& path, std::string_view bytes) {
  const FileDescriptor file(path, O_WRONLY | O_CREAT | O_TRUNC, 0666);
  if (!file.isOpen()) return errno;
  if (const int error = file.writeAll(bytes)) return error;
  return file.sync();
}

// A link is never put over what is there. Where a file system has none, the locks keep other writers away.
int putInPlace(const std::string& made, const std::string& to) {
  if (::link(made.c_str(), to.c_str()) == 0) return 0;
  if (errno != EPERM && errno != EOPNOTSUPP) return errno;
  if (::access(to.c_str(), F_OK) == 0) return EEXIST;
  return ::rename(made.c_str(), to.c_str()) == 0 ? 0 : errno;
}

Copied busy(const RecordLock& lock) {
  return lock.error() != 0 ? no(lock.error()) : Copied{Written::Busy, lock.holder()};
}

}  // namespace

Copied copyRecords(const std::string& from, const std::string& to, std::chrono::milliseconds wait) {
  const RecordLock source(from, wait);
  if (!source.isHeld()) return busy(source);
  const RecordLock target(to, wait);
  if (!target.isHeld()) return busy(target);
  std::string text;
  if (const int error = read(from, text)) return no(error);
  const std::string made = to + ".new";
  int error = writeNew(made, text);
  if (error == 0) error = putInPlace(made, to);
  ::unlink(made.c_str());
  if (error != 0) return no(error);
  if (const int unsure = syncFolderOf(to)) return {Written::Unsure, reasonOf(unsure)};
  return {Written::Yes, {}};
}

}  // namespace stopwalk::records
