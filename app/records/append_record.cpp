#include "app/records/append_record.h"

#include <fcntl.h>
#include <sys/file.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <ranges>
#include <system_error>
#include <thread>
#include <utility>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"
#include "app/records/records_file.h"
#include "core/files/inspection_log.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::records {
namespace {

Appended no(std::string why) {
  Appended refused;
  refused.why = std::move(why);
  return refused;
}
Appended no(int error) {
  return no(reasonOf(error));
}

// Adds to a file, and is sure that it is there.
int keep(const std::string& path, std::string_view bytes) {
  const FileDescriptor file(path, O_WRONLY | O_CREAT | O_APPEND, 0666);
  if (!file.isOpen()) return errno;
  if (const int error = file.writeAll(bytes)) return error;
  if (const int error = file.sync()) return error;
  return syncFolderOf(path);
}

Appended busy(const std::string& holder) {
  Appended refused = no(holder);
  refused.written = Written::Busy;
  return refused;
}

Appended noLock(const std::string& records_file, const RecordLock& lock) {
  const std::string file = RecordLock::fileOf(behindLinks(records_file)), why = reasonOf(lock.error());
  const bool is_refused = lock.error() == EACCES || lock.error() == EPERM || lock.error() == EROFS;
  std::error_code error;
  if (!is_refused) return no("its lock " + file + " can be neither made nor opened (" + why + ")");
  if (!std::filesystem::exists(std::filesystem::symlink_status(file, error)))
    return no("its lock " + file + " cannot be made (" + why +
              "): nothing is recorded in a folder that cannot be written to");
  return no("its lock " + file + " cannot be opened (" + why + "): remove that file if nobody is recording");
}

bool isKept(const std::string& path, std::string_view piece) {
  std::string text;
  const FileDescriptor file(path, O_RDONLY);
  return file.isOpen() && file.readAll(text) == 0 && text.ends_with(piece);
}

// Keeps what is torn behind the last line elsewhere before it is cut off; once only, if that cannot be done.
int putAside(const FileDescriptor& log, const std::string& records_file, std::string_view torn,
             std::size_t whole_bytes) {
  const std::string file = tornFileOf(records_file), piece = std::string(torn) + "\n";
  if (const int error = keep(file, isKept(file, piece) ? "" : piece)) return error;
  if (const int error = log.truncate(whole_bytes)) return error;
  return log.sync();
}

// Which check found last, behind the lines that were known, that the device fails, which is now to be
// recorded as passed; 0: none. What was tried may have been tried before that.
std::size_t failedMeanwhile(const inspection::Check& pass, const inspection::Records& records,
                            const ReadTo& read) {
  if (pass.result != inspection::Result::Pass || read.lines == 0) return 0;
  for (const inspection::Check& check : std::views::reverse(records.checks))
    if (check.number > std::min(read.known, read.lines) && check.device == pass.device &&
        check.result == inspection::Result::Fail)
      return check.number;
  return 0;
}

// Why nothing can be written to a log that was read before; an empty `why`: it can.
Appended changedMeanwhile(const inspection::Record& record, std::string_view text, const files::LogEnd& end,
                          const ReadTo& read) {
  if (end.lines < read.lines)
    return no("it holds " + std::to_string(end.lines) + " records, and held " + std::to_string(read.lines));
  const auto* check = std::get_if<inspection::Check>(&record);
  const bool corrects = check && check->corrects;
  const bool is_as_read = end.lines == read.lines && (read.head.empty() || end.head == read.head);
  const bool is_all_known = is_as_read && read.known >= read.lines;
  if (!corrects && (is_all_known || read.lines == 0)) return {};
  const files::InspectionLog log = files::readInspectionLog(text);
  if (read.lines > 0 && !read.head.empty() && log.hashes[read.lines - 1] != read.head)
    return no("it is not the log that was read: line " + std::to_string(read.lines) + " is another now");
  if (!check) return {};
  if (const std::size_t by = failedMeanwhile(*check, log.records, read)) {
    Appended refused = no("the device failed meanwhile, by check " + std::to_string(by) +
                          ": record a pass only if it was tried after that");
    refused.failed_by = by;
    return refused;
  }
  if (!corrects) return {};
  const auto fault = inspection::correctionFault(log.records, *check->corrects, check->device, check->round);
  if (fault && fault->why == inspection::CannotCorrect::Corrected) {
    Appended refused = no("that check was corrected meanwhile, by " + std::to_string(fault->by));
    refused.corrected_by = fault->by;
    return refused;
  }
  if (!fault || read.lines == 0) return {};  // what was never read is no other log
  return no("it is not the log that was read: check " + std::to_string(*check->corrects) + " is another now");
}

// The log itself, for the lock file may have been removed while it was held. False: another writes, and went
// on for as long as we waited. Where there are no such locks that file must do.
bool isOurs(const FileDescriptor& log, std::chrono::milliseconds wait) {
  constexpr auto kLook = std::chrono::milliseconds(2);
  const auto until = std::chrono::steady_clock::now() + wait;
  while (::flock(log.handle(), LOCK_EX | LOCK_NB) != 0 && (errno == EWOULDBLOCK || errno == EINTR)) {
    if (std::chrono::steady_clock::now() >= until) return false;
    std::this_thread::sleep_for(kLook);
  }
  return true;
}

// Such a file would begin a log where none was.
bool leadsNowhere(const std::string& path) {
  std::error_code error;
  return std::filesystem::is_symlink(path, error) && !std::filesystem::exists(path, error);
}

// Takes back what was written of a record that failed. Only if that fails too is it unsure.
Appended takeBack(const FileDescriptor& log, std::size_t bytes, int why) {
  const bool back = log.truncate(bytes) == 0 && log.sync() == 0;
  Appended failed = no(why);
  if (!back) failed.written = Written::Unsure;
  return failed;
}

std::string whyTooLong(const inspection::Record& record) {
  const auto* round = std::get_if<inspection::Round>(&record);
  return "it is longer than a record may be (64 KiB): " +
         (round ? "open a round for each room in place of one over " + std::to_string(round->devices.size()) +
                      " devices"
                : std::string("say less in its texts"));
}

Appended append(const FileDescriptor& log, const std::string& records_file, const inspection::Record& record,
                const ReadTo& read) {
  std::string text;
  if (const int error = log.readAll(text)) return no(error);
  const files::LogEnd end = files::endOfLog(text);
  Appended done;
  if (Appended refused = changedMeanwhile(record, text, end, read); !refused.why.empty()) return refused;
  if (end.whole_bytes < text.size()) {
    if (const int error =
            putAside(log, records_file, std::string_view(text).substr(end.whole_bytes), end.whole_bytes))
      return no(error);
    done.set_aside = tornFileOf(records_file);
  }
  done.number = end.lines + 1;
  const std::string line = files::recordLine(record, done.number, end.head);
  if (line.size() > files::kMostRecordBytes) {
    done.number = 0;
    done.why = whyTooLong(record);
    return done;
  }
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
                      std::chrono::milliseconds wait, const ReadTo& read) {
  const RecordLock lock(records_file, wait);
  if (!lock.isHeld()) return lock.error() != 0 ? noLock(records_file, lock) : busy(lock.holder());
  if (leadsNowhere(records_file)) return no(kLeadsNowhere);
  const FileDescriptor log(records_file, O_RDWR | O_APPEND | O_NONBLOCK | (read.lines == 0 ? O_CREAT : 0),
                           0666);
  if (!log.isOpen()) return no(errno);
  if (!log.isFile()) return no(kIsNoFile);
  if (!isOurs(log, wait)) return busy("another program, whose lock file was removed");
  return append(log, records_file, record, read);
}

}  // namespace stopwalk::records
