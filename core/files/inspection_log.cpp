#include "core/files/inspection_log.h"

#include <algorithm>
#include <set>
#include <thread>
#include <utility>
#include <vector>

#include "core/files/failures_in_text.h"
#include "core/files/in_order.h"
#include "core/files/inspection_record_json.h"
#include "core/files/log_lines.h"
#include "core/files/printable.h"
#include "core/files/rewritten.h"
#include "core/files/sha256.h"

namespace stopwalk::files {
namespace {

// A line taken apart. What has no hash at its end is hashed whole.
struct Line {
  std::string_view body;
  std::string_view stated;  // empty: there is none
  std::string hash;
  bool isWhole() const { return stated == hash; }
};

Line takeApart(std::string_view line) {
  const std::string_view stated = hashStated(line);
  const std::string_view body = line.substr(0, line.size() - (stated.empty() ? 0 : kTailBytes));
  return {body, stated, sha256(body)};
}

// What can be read of what may have lost its end only.
ReadRecord readToItsEnd(std::string_view line) {
  ReadRecord read = readRecord(line);
  const std::size_t brace = line.rfind('}'), quoted = line.rfind(kRecordEnds);
  for (const std::size_t size : {brace + 1, quoted + kRecordEnds.size()}) {  // 0 or 1: there is none
    const std::string object(line.substr(0, size));
    if (!read.record) read = readRecord(object);
    if (!read.record && size >= kTailBytes) read = readRecord(object.substr(0, size - kTailBytes) + "}");
  }
  return read;
}

// What can be read of a line that is not as it was written, be it without what is no text in it.
ReadRecord readChanged(std::string_view line) {
  line.remove_prefix(std::min(line.find('{'), line.size()));
  ReadRecord read = readToItsEnd(line);
  if (read.record) return read;
  const std::string cleaned = printable(line, "");
  return cleaned == line ? read : readToItsEnd(cleaned);
}

ReadRecord readLine(const Line& line, std::string_view text) {
  return line.isWhole() ? readRecord(std::string(line.body) + "}") : readChanged(text);
}

// Holds what was read of a line against the failures that its text says: a key may stand there twice, or the
// line have become one with others. Leaves in `failures` those that are none of `read`; false: all are.
bool addFailures(ReadRecord& read, std::vector<ReadRecord>& failures) {
  if (failures.empty()) return false;
  auto* check = read.record ? std::get_if<inspection::Check>(&*read.record) : nullptr;
  const bool failed = check && check->result == inspection::Result::Fail;
  const auto isOfCheck = [&](const ReadRecord& failure) {
    return check && std::get<inspection::Check>(*failure.record).device == check->device;
  };
  if (std::erase_if(failures, isOfCheck) > 0 && !failed)
    check->result = inspection::Result::Fail, check->removed = false;
  return !failed || !failures.empty();
}

const std::string kFromACopy = ": one record a line is expected, as UTF-8; take the file back from a copy";
const std::string kReformatted = "the file was rewritten by a formatter" + kFromACopy;
const std::string kUtf16 = "the file was saved as UTF-16" + kFromACopy;

// Whether it is as it was written but for the blanks, or laid over several lines.
bool isReformatted(std::string_view text) {
  if (text.find('\n') != std::string_view::npos && text.find(kRecordBegins) == std::string_view::npos)
    return true;
  const auto as_written = unformatted(text);
  return as_written && takeApart(*as_written).isWhole();
}

// By any record.
std::set<std::string> devicesNamed(const inspection::Records& records) {
  std::set<std::string> ids;
  for (const inspection::Round& r : records.rounds) ids.insert(r.devices.begin(), r.devices.end());
  for (const inspection::Check& c : records.checks) ids.insert(c.device);
  return ids;
}

struct Bad {
  Wrong what;
  std::string why;
};

// What a line says, whatever stands before it.
struct LineRead {
  Line line;
  bool has_break = true;
  ReadRecord read = {};
  std::vector<ReadRecord> failures = {};  // besides, or instead
  std::optional<Bad> rewritten = {};
  bool wants_known = false;  // something failed, and its key does not say which device
};

// Of what was changed later nobody knows that it was no stop.
void takeForStop(ReadRecord& read) {
  if (!read.record) return;
  if (auto* check = std::get_if<inspection::Check>(&*read.record)) check->no_stop = false;
}

// How a log is read: what of a line stands elsewhere.
struct Reading {
  bool is_big_endian = false;        // where it is UTF-16
  std::set<std::string> known = {};  // devices, where a line may have lost which one it is of
};

LineRead readTold(const LogLine& told, const Reading& reading) {
  std::string_view text = told.text;
  LineRead it{takeApart(text), told.has_break};
  const bool is_whole = it.line.isWhole();
  const std::string said =
      !is_whole && isUtf16(text) ? fromUtf16(text, reading.is_big_endian) : std::string();
  if (!said.empty()) text = said;
  it.read = readLine(it.line, text);
  it.failures = failuresIn(text, reading.known);
  if (addFailures(it.read, it.failures) && it.read.why.empty()) it.read.why = "it says more than one result";
  if (is_whole) return it;
  if (!said.empty()) it.rewritten = Bad{Wrong::Utf16, kUtf16};
  if (isReformatted(text)) it.rewritten = Bad{Wrong::Reformatted, kReformatted};
  takeForStop(it.read);
  it.wants_known = wantsKnown(text);
  return it;
}

// Puts lines together to a log, one after another.
class LogOfLines {
 public:
  explicit LogOfLines(std::size_t lines) {
    log_.records.checks.reserve(lines);
    log_.hashes.reserve(lines);
  }
  void take(LineRead it) {
    const std::size_t number = ++log_.lines;
    auto bad = it.rewritten ? std::move(it.rewritten) : badOf(it, number);
    if (bad) {
      log_.bad.push_back({number, bad->why, !it.read.record && it.failures.empty(), bad->what});
      log_.records.unsure_to = number;
    }
    log_.hashes.push_back(std::move(it.line.hash));
    if (it.read.record) keep(it.read, number);
    for (ReadRecord& failure : it.failures) keep(failure, number);
    wants_known_ = wants_known_ || it.wants_known;
  }
  bool wantsKnown() const { return wants_known_; }
  InspectionLog finish(std::string_view torn) {
    log_.torn = torn;
    return std::move(log_);
  }

 private:
  std::optional<Bad> badOf(const LineRead& it, std::size_t number) const {
    const ReadRecord& read = it.read;
    if (it.line.stated.empty()) return Bad{Wrong::NoEnd, "it does not end as a record does"};
    if (!it.line.isWhole()) return Bad{Wrong::Changed, "it was changed after it was written"};
    if (!read.why.empty()) return Bad{Wrong::NoRecord, read.why};
    if (read.before != log_.head())
      return Bad{Wrong::OutOfPlace, number == 1 ? "it does not begin a log: lines before it are missing"
                                                : "it does not follow line " + std::to_string(number - 1) +
                                                      ": lines were changed, removed, put in or moved here"};
    if (read.number != number)
      return Bad{Wrong::OutOfPlace, "it was written as line " + std::to_string(read.number) +
                                        ": lines were removed or put in before it"};
    if (!it.has_break) return Bad{Wrong::NoBreak, "the line break behind it is missing"};
    return std::nullopt;
  }
  // What has no time that can be read was written after the record before it.
  void keep(ReadRecord& read, std::size_t number) {
    if (auto* check = std::get_if<inspection::Check>(&*read.record); check && read.has_no_time)
      check->at = written_;
    std::visit(
        [&](auto& r) {
          r.number = number;
          written_ = writtenAt(r);
        },
        *read.record);
    if (auto* round = std::get_if<inspection::Round>(&*read.record))
      log_.records.rounds.push_back(std::move(*round));
    else
      log_.records.checks.push_back(std::move(std::get<inspection::Check>(*read.record)));
  }
  bool wants_known_ = false;
  InspectionLog log_;
  inspection::Moment written_ = {inspection::Date(std::chrono::sys_days{})};  // when the last record was
};

constexpr std::size_t kAtOnce = 256;  // lines that a core reads before it asks for more

// The lines are read on all cores: each says by itself what it says. Where one does not say by its key which
// device failed, once more, with the devices that the others name.
InspectionLog logOf(const LogLines& told, const Reading& reading) {
  using Batch = std::vector<LineRead>;
  const std::vector<LogLine>& lines = told.lines;
  LogOfLines log(lines.size());
  const auto readBatch = [&](std::size_t i) {
    Batch batch;
    const std::size_t from = i * kAtOnce, to = std::min(from + kAtOnce, lines.size());
    batch.reserve(to - from);
    for (std::size_t line = from; line < to; ++line) batch.push_back(readTold(lines[line], reading));
    return batch;
  };
  const auto takeBatch = [&](Batch batch) {
    for (LineRead& it : batch) log.take(std::move(it));
    return true;
  };
  inOrder<Batch>((lines.size() + kAtOnce - 1) / kAtOnce, std::thread::hardware_concurrency(), readBatch,
                 takeBatch);
  const bool is_to_be_read_again = log.wantsKnown() && reading.known.empty();
  InspectionLog read = log.finish(told.torn);
  if (!is_to_be_read_again) return read;
  const std::set<std::string> named = devicesNamed(read.records);
  return named.empty() ? read : logOf(told, {reading.is_big_endian, named});
}

}  // namespace

std::string recordLine(const inspection::Record& record, std::size_t number, const std::string& before) {
  const std::string body = recordBody(record, number, before);
  return body + std::string(kHashKey) + sha256(body) + std::string(kRecordEnds) + "\n";
}

InspectionLog readInspectionLog(std::string_view text) {
  InspectionLog log = logOf(logLines(text), {isBigEndian(text.substr(0, text.find('\n')))});
  log.ends_line = text.empty() || text.ends_with('\n');
  const bool is_half_a_break = log.torn == std::string_view("\0", 1);
  if (is_half_a_break && !log.bad.empty() && log.bad.back().what == Wrong::Utf16) log.torn.clear();
  return log;
}

std::string unreadText(const InspectionLog& log) {
  const auto count = std::ranges::count_if(log.bad, &BadLine::unread);
  if (count == 0) return {};
  return count == 1 ? "One line can no longer be read: it may have been a failure."
                    : std::to_string(count) + " lines can no longer be read: a failure may be among them.";
}

std::string faultText(const InspectionLog& log) {
  std::string text;
  if (!log.bad.empty())
    text = "Line " + std::to_string(log.bad.front().line) +
           " of the inspection records is not as it was written: " + log.bad.front().why +
           ". No pass counts up to line " + std::to_string(log.records.unsure_to) + ".";
  if (const std::string unread = unreadText(log); !unread.empty()) text += " " + unread;
  if (!log.torn.empty())
    text += std::string(text.empty() ? "" : " ") + "The inspection records end torn: line " +
            std::to_string(log.lines + 1) +
            " was never finished, or cut or changed later, and is left out. A failure may be in it.";
  return text;
}

bool isEmpty(const InspectionLog& log) {
  return log.lines == 0 && log.bad.empty() && log.torn.empty();
}

LogVerdict verifyLog(const InspectionLog& log, const std::string& head) {
  if (!log.bad.empty()) return {log.bad.front().line, log.bad.front().why, 0};
  if (!log.torn.empty())
    return {log.lines + 1, "it is no whole record: it was never finished, or cut or changed later", 0};
  if (head.empty()) return {};
  if (head == kNoLineBefore) return {0, "", log.lines};  // kept when there was no record yet
  if (log.lines == 0)
    return {1, "the log is empty: all that was recorded up to the head that was kept is gone", 0};
  const auto at = std::ranges::find(log.hashes, head);
  if (at == log.hashes.end())
    return {
        log.lines + 1,
        "no line has the head hash that was kept: lines were cut from the end, or the log was written anew",
        0};
  return {0, "", static_cast<std::size_t>(log.hashes.end() - at) - 1};
}

LogEnd endOfLog(std::string_view text) {
  const LogLines told = logLines(text);
  LogEnd end;
  end.lines = told.lines.size();
  end.whole_bytes = text.size() - told.torn.size();
  end.ends_line = end.whole_bytes == 0 || text[end.whole_bytes - 1] == '\n';
  end.head = told.lines.empty() ? kNoLineBefore : takeApart(told.lines.back().text).hash;
  return end;
}

}  // namespace stopwalk::files
