#include "app/records/records_file.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <cerrno>
#include <chrono>
#include <ctime>
#include <filesystem>
#include <thread>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"

namespace stopwalk::records {
namespace {

constexpr std::string_view kLayoutEnd = ".layout.yaml", kRecordsEnd = ".inspections.jsonl";
constexpr int kLooks = 5;
constexpr auto kPause = std::chrono::milliseconds(20);

void look(ReadRecords& read) {
  const FileDescriptor file(read.file, O_RDONLY);
  read.there = file.isOpen() || errno != ENOENT;
  if (!read.there) return;
  std::string text;
  const int error = file.isOpen() ? file.readAll(text) : errno;
  if (error != 0)
    read.unreadable = reasonOf(error);
  else
    read.log = files::readInspectionLog(text);
}

}  // namespace

std::string recordsFileOf(const std::string& layout_file) {
  if (layout_file.empty() || layout_file == "-") return {};
  std::string_view stem = layout_file;
  if (stem.ends_with(kLayoutEnd))
    stem.remove_suffix(kLayoutEnd.size());
  else if (stem.ends_with(".yaml"))
    stem.remove_suffix(5);
  return std::string(stem) + std::string(kRecordsEnd);
}

std::string tornFileOf(const std::string& records_file) {
  return records_file + ".torn";
}

std::vector<std::string> recordFilesOf(const std::string& layout_file) {
  const std::string log = recordsFileOf(layout_file);
  if (log.empty()) return {};
  return {log, RecordLock::fileOf(log), tornFileOf(log)};
}

ReadRecords readRecords(const std::string& layout_file) {
  ReadRecords read;
  read.file = recordsFileOf(layout_file);
  if (read.file.empty()) return read;
  look(read);
  for (int i = 1; i < kLooks && !read.log.torn.empty(); ++i) {
    std::this_thread::sleep_for(kPause);
    look(read);
  }
  return read;
}

inspection::Moment momentNow() {
  using namespace std::chrono;
  const std::time_t now = system_clock::to_time_t(system_clock::now());
  std::tm local{};
  ::localtime_r(&now, &local);
  return {inspection::Date(year(local.tm_year + 1900), month(static_cast<unsigned>(local.tm_mon + 1)),
                           day(static_cast<unsigned>(local.tm_mday))),
          std::min(local.tm_sec, 59) + 60 * (local.tm_min + 60 * local.tm_hour),
          static_cast<int>(local.tm_gmtoff / 60)};
}

}  // namespace stopwalk::records
