#include "core/files/inspection_log.h"

#include <algorithm>
#include <set>
#include <thread>
#include <utility>
#include <vector>

#include "core/files/failures_in_text.h"
#include "core/files/in_order.h"
#include "core/files/inspection_record_json.h"
#include "core/files/printable.h"
#include "core/files/rewritten.h"
#include "core/files/sha256.h"

namespace stopwalk::files {
namespace {

// Each line ends with its own hash: over all that stands before this.
constexpr std::string_view kHashKey = ",\"sha256\":\"";
constexpr std::string_view kEnd = "\"}";
constexpr std::size_t kHashDigits = 64, kTail = kHashKey.size() + kHashDigits + kEnd.size();

// A line taken apart. What has no hash at its end is hashed whole.
struct Line {
  std::string_view body;
  std::string_view stated;  // empty: there is none
  std::string hash;
  bool isWhole() const { return stated == hash; }
};

Line takeApart(std::string_view line) {
  if (line.size() < kTail || !line.ends_with(kEnd) ||
      line.substr(line.size() - kTail, kHashKey.size()) != kHashKey)
    return {line, {}, sha256(line)};
  const std::string_view body = line.substr(0, line.size() - kTail);
  return {body, line.substr(line.size() - kEnd.size() - kHashDigits, kHashDigits), sha256(body)};
}

// What can be read of what may have lost its end only.
ReadRecord readToItsEnd(std::string_view line) {
  ReadRecord read = readRecord(line);
  const std::size_t brace = line.rfind('}'), quoted = line.rfind(kEnd);
  for (const std::size_t size : {brace + 1, quoted + kEnd.size()}) {  // 0 or 1: there is none
    const std::string object(line.substr(0, size));
    if (!read.record) read = readRecord(object);
    if (!read.record && size >= kTail) read = readRecord(object.substr(0, size - kTail) + "}");
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

// How a line of the log ends. A record that begins within one has lost the break before it.
enum class Ends { WithBreak, WithoutBreak };

// Calls `line(text, ends)` for each line, or what a formatter made of one; returns what is torn behind the
// last.
template <class Each>
std::string_view eachLine(std::string_view text, Each each) {
  while (!text.empty()) {
    if (const std::size_t laid = laidOverLines(text)) {
      each(text.substr(0, laid - (text[laid - 1] == '\n' ? 1 : 0)), Ends::WithBreak);
      text.remove_prefix(laid);
      continue;
    }
    const std::size_t size = std::min(text.find('\n'), text.size());
    const std::size_t brace = std::min(text.find('{'), size);
    const std::size_t next = text.substr(0, size).find(kRecordBegins, brace + 1);
    if (next == std::string_view::npos && size == text.size()) break;
    const bool has_break = next == std::string_view::npos;
    each(text.substr(0, has_break ? size : next), has_break ? Ends::WithBreak : Ends::WithoutBreak);
    text.remove_prefix(has_break ? size + 1 : next);
  }
  if (text.empty() || isTorn(text)) return text;
  each(text, Ends::WithBreak);  // only the last break of all is missing
  return {};
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

// Whether it is as it was written but for the blanks, or over several lines.
bool isReformatted(std::string_view text) {
  if (text.find('\n') != std::string_view::npos) return true;
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

struct Told {
  std::string_view text;
  Ends ends;
};

// What a line says, whatever stands before it.
struct LineRead {
  Line line;
  Ends ends = Ends::WithBreak;
  ReadRecord read = {};
  std::vector<ReadRecord> failures = {};  // besides, or instead
  std::optional<Bad> rewritten = {};
  bool is_of_nobody = false;  // it says fail, and not of which device
};

// Of what was changed later nobody knows that it was no stop.
void takeForStop(ReadRecord& read) {
  if (!read.record) return;
  if (auto* check = std::get_if<inspection::Check>(&*read.record)) check->no_stop = false;
}

// `known`: devices, where a line may have lost which one it is of.
LineRead readTold(const Told& told, const std::set<std::string>& known) {
  std::string_view text = told.text;
  LineRead it{takeApart(text), told.ends};
  const bool is_whole = it.line.isWhole();
  const std::string said = !is_whole && isUtf16(text) ? fromUtf16(text) : std::string();
  if (!said.empty()) text = said;
  it.read = readLine(it.line, text);
  it.failures = failuresIn(text, known);
  if (addFailures(it.read, it.failures) && it.read.why.empty()) it.read.why = "it says more than one result";
  if (is_whole) return it;
  if (!said.empty()) it.rewritten = Bad{Wrong::Utf16, kUtf16};
  if (isReformatted(text)) it.rewritten = Bad{Wrong::Reformatted, kReformatted};
  takeForStop(it.read);
  it.is_of_nobody = saysFailOfNobody(text);
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
    is_of_nobody_ = is_of_nobody_ || it.is_of_nobody;
  }
  bool isOfNobody() const { return is_of_nobody_; }
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
    if (it.ends == Ends::WithoutBreak) return Bad{Wrong::NoBreak, "the line break behind it is missing"};
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
  bool is_of_nobody_ = false;
  InspectionLog log_;
  inspection::Moment written_ = {inspection::Date(std::chrono::sys_days{})};  // when the last record was
};

constexpr std::size_t kAtOnce = 256;  // lines that a core reads before it asks for more

// The lines are read on all cores: each says by itself what it says. Where one says fail of nobody, once
// more, with the devices that the others name.
InspectionLog logOf(const std::vector<Told>& lines, std::string_view torn,
                    const std::set<std::string>& known = {}) {
  using Batch = std::vector<LineRead>;
  LogOfLines log(lines.size());
  const auto readBatch = [&](std::size_t i) {
    Batch batch;
    const std::size_t from = i * kAtOnce, to = std::min(from + kAtOnce, lines.size());
    batch.reserve(to - from);
    for (std::size_t line = from; line < to; ++line) batch.push_back(readTold(lines[line], known));
    return batch;
  };
  const auto takeBatch = [&](Batch batch) {
    for (LineRead& it : batch) log.take(std::move(it));
    return true;
  };
  inOrder<Batch>((lines.size() + kAtOnce - 1) / kAtOnce, std::thread::hardware_concurrency(), readBatch,
                 takeBatch);
  const bool is_to_be_read_again = log.isOfNobody() && known.empty();
  InspectionLog read = log.finish(torn);
  if (!is_to_be_read_again) return read;
  const std::set<std::string> named = devicesNamed(read.records);
  return named.empty() ? read : logOf(lines, torn, named);
}

}  // namespace

std::string recordLine(const inspection::Record& record, std::size_t number, const std::string& before) {
  const std::string body = recordBody(record, number, before);
  return body + std::string(kHashKey) + sha256(body) + std::string(kEnd) + "\n";
}

InspectionLog readInspectionLog(std::string_view text) {
  std::vector<Told> lines;
  const std::string_view torn = eachLine(text, [&](std::string_view line, Ends ends) {
    lines.push_back({line, ends});
  });
  InspectionLog log = logOf(lines, torn);
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
  LogEnd end;
  std::string_view last;
  const std::string_view torn = eachLine(text, [&](std::string_view line, Ends) {
    last = line;
    ++end.lines;
  });
  end.whole_bytes = text.size() - torn.size();
  end.ends_line = end.whole_bytes == 0 || text[end.whole_bytes - 1] == '\n';
  end.head = end.lines == 0 ? kNoLineBefore : takeApart(last).hash;
  return end;
}

}  // namespace stopwalk::files
