#include "app/records/append_record.h"

#include <fcntl.h>

#include <cerrno>
#include <filesystem>
#include <system_error>
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

// Which check corrected meanwhile what this one is to correct; 0: none.
std::size_t correctedMeanwhile(const inspection::Record& record, std::string_view text) {
  const auto* check = std::get_if<inspection::Check>(&record);
  if (!check || !check->corrects) return 0;
  const auto fault = inspection::correctionFault(files::readInspectionLog(text).records, *check->corrects,
                                                 check->device, check->round);
  return fault && fault->why == inspection::CannotCorrect::Corrected ? fault->by : 0;
}

// Which check found since that the device fails, which is now to be recorded as passed; 0: none. What was
// tried may have been tried before that.
std::size_t failedMeanwhile(const inspection::Record& record, std::string_view text, std::size_t read) {
  const auto* pass = std::get_if<inspection::Check>(&record);
  if (!pass || pass->result != inspection::Result::Pass || read == 0) return 0;
  for (const inspection::Check& check : files::readInspectionLog(text).records.checks)
    if (check.number > read && check.device == pass->device && check.result == inspection::Result::Fail)
      return check.number;
  return 0;
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

Appended append(const FileDescriptor& log, const std::string& records_file, const inspection::Record& record,
                std::size_t read) {
  std::string text;
  if (const int error = log.readAll(text)) return no(error);
  const files::LogEnd end = files::endOfLog(text);
  Appended done;
  if (end.lines < read)
    return no("it holds " + std::to_string(end.lines) + " records, and held " + std::to_string(read));
  if (const std::size_t by = correctedMeanwhile(record, text)) {
    Appended refused = no("that check was corrected meanwhile, by " + std::to_string(by));
    refused.corrected_by = by;
    return refused;
  }
  if (end.lines > read)
    if (const std::size_t by = failedMeanwhile(record, text, read))
      return no("the device failed meanwhile, by check " + std::to_string(by) +
                ": record a pass only if it was tried after that");
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
    done.why = "it is longer than a record may be (64 KiB)";
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
                      std::chrono::milliseconds wait, std::size_t read) {
  const RecordLock lock(records_file, wait);
  if (!lock.isHeld()) return lock.error() != 0 ? no(lock.error()) : busy(lock.holder());
  if (leadsNowhere(records_file)) return no(kLeadsNowhere);
  const FileDescriptor log(records_file, O_RDWR | O_APPEND | (read == 0 ? O_CREAT : 0), 0666);
  if (!log.isOpen()) return no(errno);
  return append(log, records_file, record, read);
}

}  // namespace stopwalk::records
