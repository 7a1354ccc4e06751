#include "app/records/append_record.h"

#include <fcntl.h>

#include <cerrno>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"
#include "app/records/records_file.h"
#include "core/files/inspection_log.h"

namespace stopwalk::records {
namespace {

Appended no(int error) {
  return {Written::No, 0, {}, reasonOf(error), {}};
}

// Adds to a file, and is sure that it is there.
int keep(const std::string& path, std::string_view bytes) {
  const FileDescriptor file(path, O_WRONLY | O_CREAT | O_APPEND, 0666);
  if (!file.isOpen()) return errno;
  if (const int error = file.writeAll(bytes)) return error;
  if (const int error = file.sync()) return error;
  return syncFolderOf(path);
}

// Keeps what stands behind the last whole line elsewhere before it is cut off.
int putAside(const FileDescriptor& log, const std::string& records_file, std::string_view torn,
             std::size_t whole_bytes) {
  if (const int error = keep(tornFileOf(records_file), std::string(torn) + "\n")) return error;
  if (const int error = log.truncate(whole_bytes)) return error;
  return log.sync();
}

// Takes back what was written of a record that failed. Only if that fails too is it unsure.
Appended takeBack(const FileDescriptor& log, std::size_t bytes, int why) {
  const bool back = log.truncate(bytes) == 0 && log.sync() == 0;
  return {back ? Written::No : Written::Unsure, 0, {}, reasonOf(why), {}};
}

Appended append(const FileDescriptor& log, const std::string& records_file, const inspection::Record& record,
                std::size_t read) {
  std::string text;
  if (const int error = log.readAll(text)) return no(error);
  const files::LogEnd end = files::endOfLog(text);
  Appended done;
  if (end.lines < read)
    return {Written::No,
            0,
            {},
            "it holds " + std::to_string(end.lines) + " records, and held " + std::to_string(read),
            {}};
  if (end.whole_bytes < text.size()) {
    if (const int error =
            putAside(log, records_file, std::string_view(text).substr(end.whole_bytes), end.whole_bytes))
      return no(error);
    done.set_aside = tornFileOf(records_file);
  }
  done.number = end.lines + 1;
  const std::string line = files::recordLine(record, done.number, end.head);
  if (line.size() > files::kMostRecordBytes)
    return {Written::No, 0, {}, "it is longer than a record may be (64 KiB)", done.set_aside};
  int error = log.writeAll(end.ends_line ? line : "\n" + line);
  if (error == 0) error = log.sync();
  // Each time: whoever made the file may have been stopped before its folder was synced.
  if (error == 0) error = syncFolderOf(records_file);
  if (error != 0) {
    Appended failed = takeBack(log, end.whole_bytes, error);
    failed.set_aside = done.set_aside;
    return failed;
  }
  done.written = Written::Yes;
  done.head = files::endOfLog(line).head;
  return done;
}

}  // namespace

Appended appendRecord(const std::string& records_file, const inspection::Record& record,
                      std::chrono::milliseconds wait, std::size_t read) {
  const RecordLock lock(records_file, wait);
  if (!lock.isHeld())
    return lock.error() != 0 ? no(lock.error()) : Appended{Written::Busy, 0, {}, lock.holder(), {}};
  const FileDescriptor log(records_file, O_RDWR | O_APPEND | (read == 0 ? O_CREAT : 0), 0666);
  if (!log.isOpen()) return no(errno);
  return append(log, records_file, record, read);
}

}  // namespace stopwalk::records
