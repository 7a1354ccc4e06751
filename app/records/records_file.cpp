#include "app/records/records_file.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <ctime>
#include <filesystem>
#include <ranges>
#include <system_error>
#include <thread>

#include "app/records/file_descriptor.h"
#include "app/records/record_lock.h"

namespace stopwalk::records {
namespace {

constexpr std::string_view kLayoutEnd = ".layout.yaml", kRecordsEnd = ".inspections.jsonl";
constexpr int kLooks = 5;
constexpr std::size_t kMostLinks = 40;
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
  const FileDescriptor file(read.file, O_RDONLY | O_NONBLOCK);  // a pipe would be waited for
  const int closed = file.isOpen() ? 0 : errno;
  read.there = closed != ENOENT || isThere(read.file);
  if (!read.there) return;
  if (file.isOpen() && !file.isFile()) {
    read.unreadable = kIsNoFile;
    return;
  }
  std::string text;
  const int error = closed == 0 ? file.readAll(text) : closed;
  if (error != 0)
    read.unreadable = error == ENOENT ? kLeadsNowhere : reasonOf(error);
  else
    read.log = files::readInspectionLog(text);
}

// The name itself, and where one link after another leads.
std::vector<std::string> alongLinks(const std::string& path) {
  std::vector<std::string> all = {path};
  std::error_code error;
  while (all.size() <= kMostLinks && fs::is_symlink(all.back(), error)) {
    const fs::path to = fs::read_symlink(all.back(), error);
    if (error) break;
    all.push_back((fs::path(all.back()).parent_path() / to).string());  // or `to`, if that is a whole path
  }
  return all;
}

// Two logs of one layout: beside it, and beside a link by which it was opened.
void lookBesideLinks(const std::string& layout_file, ReadRecords& read) {
  std::error_code error;
  for (const std::string& name : alongLinks(layout_file)) {
    const std::string other = logBeside(name);
    if (other == read.file || !isThere(other) || fs::equivalent(other, read.file, error)) continue;
    read.unreadable = "the layout was opened by a link, and " + other +
                      " stands beside that or what it leads to: put together or away what is not to count";
    return;
  }
}

}  // namespace

std::string behindLinks(const std::string& path) {
  return alongLinks(path).back();
}

std::string recordsFileOf(const std::string& layout_file) {
  if (layout_file.empty() || layout_file == "-") return {};
  const std::vector<std::string> names = alongLinks(layout_file);
  for (const std::string& name : std::views::reverse(names))
    if (const std::string beside = logBeside(name); isThere(beside)) return beside;
  return logBeside(names.back());
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
  lookBesideLinks(layout_file, read);
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
