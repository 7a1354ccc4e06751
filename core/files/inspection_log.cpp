#include "core/files/inspection_log.h"

#include <algorithm>

#include "core/files/inspection_record_json.h"
#include "core/files/sha256.h"

namespace stopwalk::files {
namespace {

// Each line ends with its own hash: over all that stands before this.
constexpr std::string_view kHashKey = ",\"sha256\":\"";
constexpr std::string_view kEnd = "\"}";
constexpr std::size_t kHashDigits = 64;

// A line taken apart. What has no hash at its end is hashed whole.
struct Line {
  std::string_view body;
  std::string_view stated;  // empty: there is none
  std::string hash;
  bool isWhole() const { return stated == hash; }
};

Line takeApart(std::string_view line) {
  const std::size_t tail = kHashKey.size() + kHashDigits + kEnd.size();
  if (line.size() < tail || !line.ends_with(kEnd) ||
      line.substr(line.size() - tail, kHashKey.size()) != kHashKey)
    return {line, {}, sha256(line)};
  const std::string_view body = line.substr(0, line.size() - tail);
  return {body, line.substr(line.size() - kEnd.size() - kHashDigits, kHashDigits), sha256(body)};
}

// Calls `line(text)` for each whole line; returns how many bytes they are, and what is behind them.
template <class Each>
std::string_view eachLine(std::string_view text, Each each) {
  for (std::size_t end = text.find('\n'); end != std::string_view::npos; end = text.find('\n')) {
    each(text.substr(0, end));
    text.remove_prefix(end + 1);
  }
  return text;
}

class LogReader {
 public:
  void take(std::string_view text) {
    const Line line = takeApart(text);
    const std::size_t number = ++log_.lines;
    ReadRecord read = readRecord(line.body);
    const std::string why = whyBad(line, read, number);
    if (!why.empty()) {
      log_.bad.push_back({number, why});
      log_.records.unsure_to = number;
    }
    log_.hashes.push_back(line.hash);
    if (read.record) keep(std::move(*read.record), number);
  }
  void leave(std::string_view torn) { log_.torn = torn; }
  InspectionLog finish() { return std::move(log_); }

 private:
  std::string whyBad(const Line& line, const ReadRecord& read, std::size_t number) const {
    if (line.stated.empty()) return "it does not end as a record does";
    if (!line.isWhole()) return "it was changed after it was written";
    if (!read.record) return read.why;
    if (read.before != log_.head())
      return number == 1 ? "it does not begin a log: lines before it are missing"
                         : "it does not follow line " + std::to_string(number - 1) +
                               ": lines were changed, removed, put in or moved here";
    if (read.number != number)
      return "it was written as line " + std::to_string(read.number) +
             ": lines were removed or put in before it";
    return {};
  }
  void keep(inspection::Record record, std::size_t number) {
    std::visit([&](auto& r) { r.number = number; }, record);
    if (auto* round = std::get_if<inspection::Round>(&record))
      log_.records.rounds.push_back(std::move(*round));
    else
      log_.records.checks.push_back(std::move(std::get<inspection::Check>(record)));
  }
  InspectionLog log_;
};

}  // namespace

std::string recordLine(const inspection::Record& record, std::size_t number, const std::string& before) {
  const std::string body = recordBody(record, number, before);
  return body + std::string(kHashKey) + sha256(body) + std::string(kEnd) + "\n";
}

InspectionLog readInspectionLog(std::string_view text) {
  LogReader reader;
  const std::string_view rest = eachLine(text, [&](std::string_view line) { reader.take(line); });
  // A whole record that lost its line break only is still a record.
  if (!rest.empty() && takeApart(rest).isWhole())
    reader.take(rest);
  else
    reader.leave(rest);
  return reader.finish();
}

std::string faultText(const InspectionLog& log) {
  std::string text;
  if (!log.bad.empty())
    text = "Line " + std::to_string(log.bad.front().line) +
           " of the inspection records is not as it was written: " + log.bad.front().why +
           ". No pass counts up to line " + std::to_string(log.records.unsure_to) + ".";
  if (!log.torn.empty())
    text += std::string(text.empty() ? "" : " ") + "The inspection records end torn: line " +
            std::to_string(log.lines + 1) + " was never finished, or cut or changed later, and is left out.";
  return text;
}

LogVerdict verifyLog(const InspectionLog& log, const std::string& head) {
  if (!log.bad.empty()) return {log.bad.front().line, log.bad.front().why, 0};
  if (!log.torn.empty())
    return {log.lines + 1, "it is no whole record: it was never finished, or cut or changed later", 0};
  if (head.empty()) return {};
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
  const std::string_view rest = eachLine(text, [&](std::string_view line) {
    last = line;
    ++end.lines;
  });
  end.whole_bytes = text.size() - rest.size();
  if (!rest.empty() && takeApart(rest).isWhole()) {
    last = rest;
    ++end.lines;
    end.whole_bytes = text.size();
    end.ends_line = false;
  }
  end.head = end.lines == 0 ? kNoLineBefore : takeApart(last).hash;
  return end;
}

}  // namespace stopwalk::files
