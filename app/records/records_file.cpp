#include "app/records/records_file.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <ctime>
#include <filesystem>
#include <system_error>
#include <thread>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"

namespace stopwalk::records {
namespace {

constexpr std::string_view kLayoutEnd = ".layout.yaml", kRecordsEnd = ".inspections.jsonl";
constexpr int kLooks = 5, kMostLinks = 40;
constexpr auto kPause = std::chrono::milliseconds(20);

namespace fs = std::filesystem;

bool isThere(const std::string& path) {
  std::error_code error;
  return fs::exists(fs::symlink_status(path, error));
}

std::string stemOf(std::string_view layout_file) {
  for (const std::string_view end : {kLayoutEnd, std::string_view(".yaml")})
    if (layout_file.ends_with(end))
      return std::string(layout_file.substr(0, layout_file.size() - end.size()));
  return std::string(layout_file);
}

std::string logBeside(const std::string& layout_file) {
  return stemOf(layout_file) + std::string(kRecordsEnd);
}

// Another layout in the folder that has the same log.
std::string otherOf(const std::string& layout_file) {
  const std::string real = behindLinks(layout_file), stem = stemOf(real);
  std::error_code error;
  for (const std::string_view end : {kLayoutEnd, std::string_view(".yaml")}) {
    const std::string other = stem + std::string(end);
    if (other != real && fs::is_regular_file(other, error) && !fs::equivalent(other, real, error))
      return other;
  }
  return {};
}

void look(ReadRecords& read) {
  const FileDescriptor file(read.file, O_RDONLY);
  const int closed = file.isOpen() ? 0 : errno;
  read.there = closed != ENOENT || isThere(read.file);
  if (!read.there) return;
  std::string text;
  const int error = closed == 0 ? file.readAll(text) : closed;
  if (error != 0)
    read.unreadable = error == ENOENT ? kLeadsNowhere : reasonOf(error);
  else
    read.log = files::readInspectionLog(text);
}

// Two logs of one layout: beside it, and beside the link by which it was opened.
void lookBesideLink(const std::string& layout_file, ReadRecords& read) {
  const std::string beside_link = logBeside(layout_file);
  std::error_code error;
  if (beside_link == read.file || !isThere(beside_link) || fs::equivalent(beside_link, read.file, error))
    return;
  read.unreadable = "the layout was opened by a link, and " + beside_link +
                    " stands beside that: put together or away what is not to count";
}

}  // namespace

std::string behindLinks(const std::string& path) {
  fs::path at = path;
  std::error_code error;
  for (int links = 0; links < kMostLinks && fs::is_symlink(at, error); ++links) {
    const fs::path to = fs::read_symlink(at, error);
    if (error) return path;
    at = at.parent_path() / to;  // or where it leads alone, if that is a whole path
  }
  return at.string();
}

std::string recordsFileOf(const std::string& layout_file) {
  if (layout_file.empty() || layout_file == "-") return {};
  const std::string beside_link = logBeside(layout_file), beside = logBeside(behindLinks(layout_file));
  return !isThere(beside) && isThere(beside_link) ? beside_link : beside;
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
  if (!read.there) return read;
  read.also_of = otherOf(layout_file);
  lookBesideLink(layout_file, read);
  if (!read.unreadable.empty()) return read;
  for (int i = 1; i < kLooks && !read.log.ends_line; ++i) {
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
